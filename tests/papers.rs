//! Plans on every page they can be set on: sizes against the standards, and what stands where.

use std::fs;
use std::path::Path;

use leafwright::build::Paper;
use leafwright::display::{Mark, PT_PER_MM, Spot};
use leafwright::document::Templates;
use leafwright::model::Overrides;
use leafwright::page::{Placed, paginate};
use leafwright::road::{self, Checked};
use leafwright::source::Sources;
use leafwright::text::Fonts;
use leafwright::words::Words;

use crate::shell::{at_home as leafwright, folder, stderr, text};

const BENCH: &str = "examples/potting-bench/potting-bench.wright";
const CABINET: &str = "examples/seed-cabinet/seed-cabinet.wright";
const EXAMPLES: [&str; 4] = [
    BENCH,
    CABINET,
    "examples/hall-set/shoe-chest.wright",
    "examples/hall-set/slat-bench.wright",
];

fn checked(name: &str) -> Checked {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join(name);
    let (sources, file) = Sources::single(name, &fs::read_to_string(path).unwrap());
    road::check(&sources, file, &Overrides::default()).value
}

/// Sizes of the pages of a PDF, in points.
fn media(path: &Path) -> Vec<[f32; 2]> {
    let document = lopdf::Document::load(path).unwrap();
    let size = |page| {
        let page = document.get_dictionary(page).unwrap();
        let bounds = page.get(b"MediaBox").unwrap().as_array().unwrap();
        let bounds: Vec<f32> = bounds.iter().map(|it| it.as_float().unwrap()).collect();
        [bounds[2] - bounds[0], bounds[3] - bounds[1]]
    };
    document.get_pages().into_values().map(size).collect()
}

/// ISO 216: A0 is 841 by 1189 mm, and every smaller size is the one before it halved across its
/// long side, rounded down to the millimetre (ref: units-and-paper, "Paper" [V]).
#[test]
fn a_sizes_are_those_of_iso_216() {
    let (mut short, mut long) = (841, 1189);
    let mut sizes = Vec::new();
    for _ in 0..=4 {
        sizes.push((short, long));
        (short, long) = (long / 2, short);
    }
    let mm = |paper: Paper| (paper.size().0.mm(), paper.size().1.mm());
    let size = |number: usize| (f64::from(sizes[number].0), f64::from(sizes[number].1));
    assert_eq!(mm(Paper::A4), size(4));
    assert_eq!(mm(Paper::A3), size(3));
}

/// ANSI/ASME Y14.1: A is 8-1/2 by 11 in, and every larger size is the one before it with its short
/// side doubled (ref: units-and-paper, "Paper" [M]).
#[test]
fn letter_and_tabloid_are_those_of_ansi_y14_1() {
    let halves = |paper: Paper| [paper.size().0.mm(), paper.size().1.mm()].map(|mm| mm / 12.7);
    assert_eq!(halves(Paper::Letter), [17.0, 22.0]);
    assert_eq!(halves(Paper::Tabloid), [22.0, 34.0]);
}

#[test]
fn the_plan_is_printed_on_the_paper_that_is_asked_for() {
    let folder = folder("papers");
    for (word, size) in [
        // ref: units-and-paper, "Paper" [V, M], in points.
        ("A4", [595.276, 841.89]),
        ("Letter", [612.0, 792.0]),
        ("A3", [841.89, 1190.551]),
        ("Tabloid", [792.0, 1224.0]),
        // 90 by 180 and 165 by 220 mm.
        ("phone", [255.118, 510.236]),
        ("tablet", [467.717, 623.622]),
    ] {
        let path = folder.join(word).with_extension("pdf");
        // One without full-size templates, whose sheets are of paper in any plan.
        let output = leafwright(&["build", CABINET, "-o", text(&path), "--paper", word]);
        assert!(output.status.success(), "{}", stderr(&output));
        for page in media(&path) {
            let off = (page[0] - size[0]).abs().max((page[1] - size[1]).abs());
            assert!(off < 0.02, "{word}: {page:?}");
        }
    }
    fs::remove_dir_all(folder).unwrap();
}

#[test]
fn the_plan_names_its_paper() {
    let folder = folder("own-paper");
    let (source, plan) = (folder.join("lid.wright"), folder.join("lid.pdf"));
    let lid = |paper: &str| {
        format!(
            "plan \"Lid\" {{\n    revision \"A\" on 2026-01-15 \"First issue\"\n    paper {paper}\n}}\n\
             material ply is sheet {{ thickness 12 mm; stock 1220 mm by 610 mm; density 680 kg/m3 }}\n\
             part board from ply \"Board\" {{ length 400 mm grain; width 300 mm; round near.face radius 3 mm }}\n\
             place lid = board {{ length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }}\n\
             step \"Oil it\" {{ add lid; say \"Oil {{lid}}.\" }}\n"
        )
    };
    for paper in Paper::ALL {
        fs::write(&source, lid(paper.word())).unwrap();
        let output = leafwright(&["build", text(&source), "-o", text(&plan)]);
        assert!(output.status.success(), "{}", stderr(&output));
        let width = paper.size().0.mm() * PT_PER_MM;
        assert!((f64::from(media(&plan)[0][0]) - width).abs() < 0.02);
        // Figures and tables stand in both systems on the smallest page too.
        let printed = pdf_extract::extract_text_from_mem(&fs::read(&plan).unwrap()).unwrap();
        assert!(
            printed.contains("400") && printed.contains("15\u{202f}3\u{2044}4"),
            "{printed}"
        );
        let is_screen = printed.contains("This edition is for a screen");
        assert_eq!(is_screen, paper.is_screen(), "{paper:?}");
        assert_eq!(printed.contains("Solid square"), !paper.is_screen());
    }
    fs::write(&source, lid("A5")).unwrap();
    let output = leafwright(&["build", text(&source), "-o", text(&plan)]);
    assert!(stderr(&output).contains("expected A4, Letter, A3, Tabloid, phone or tablet"));
    fs::remove_dir_all(folder).unwrap();
}

#[test]
fn both_papers_are_two_files() {
    let folder = folder("both");
    let path = folder.join("plan.pdf");
    let output = leafwright(&["build", BENCH, "-o", text(&path), "--paper", "both"]);
    assert!(output.status.success(), "{}", stderr(&output));
    assert!(!path.exists());
    let (a4, letter) = (folder.join("plan-A4.pdf"), folder.join("plan-Letter.pdf"));
    assert!((media(&a4)[0][1] - 841.89).abs() < 0.02);
    assert_eq!(media(&letter)[0], [612.0, 792.0]);
    // Each is what the same command writes for its paper alone.
    for (paper, both) in [("A4", &a4), ("Letter", &letter)] {
        let output = leafwright(&["build", BENCH, "-o", text(&path), "--paper", paper]);
        assert!(output.status.success(), "{}", stderr(&output));
        assert!(
            fs::read(&path).unwrap() == fs::read(both).unwrap(),
            "{paper}"
        );
    }
    fs::remove_dir_all(folder).unwrap();
}

#[test]
fn where_one_of_both_cannot_be_written_neither_is() {
    let folder = folder("neither");
    let path = folder.join("plan.pdf");
    let a4 = folder.join("plan-A4.pdf");
    // A folder stands where the second file is to go.
    fs::create_dir(folder.join("plan-Letter.pdf")).unwrap();
    for before in [None, Some("the last good plan")] {
        if let Some(before) = before {
            fs::write(&a4, before).unwrap();
        }
        let output = leafwright(&["build", BENCH, "-o", text(&path), "--paper", "both"]);
        assert_eq!(output.status.code(), Some(3), "{}", stderr(&output));
        assert!(stderr(&output).contains("plan-Letter.pdf"));
        let after = fs::read_to_string(&a4).ok();
        assert_eq!(after.as_deref(), before);
        // Nothing that was prepared is left over.
        let left = fs::read_dir(&folder).unwrap().count();
        assert_eq!(left, 1 + usize::from(before.is_some()));
    }
    fs::remove_dir_all(folder).unwrap();
}

#[test]
fn no_example_has_a_figure_that_is_too_small_on_any_page() {
    let folder = folder("every-page");
    let path = folder.join("plan.pdf");
    for example in EXAMPLES {
        for paper in Paper::ALL {
            let arguments = ["build", example, "-o", text(&path), "--paper", paper.word()];
            let output = leafwright(&arguments);
            assert!(output.status.success(), "{}", stderr(&output));
            assert_eq!(stderr(&output), "", "{example} on {paper:?}");
        }
    }
    fs::remove_dir_all(folder).unwrap();
}

/// The ends of what is placed on a page: spots of paths, both ends of texts.
fn spots(mark: &Mark, take: &mut impl FnMut(Spot)) {
    match mark {
        Mark::Stroke { path, .. } | Mark::Fill { path, .. } | Mark::Sealed { path, .. } => {
            path.each_extreme(take);
        }
        Mark::Text(run) => {
            let width: f64 = run.glyphs.iter().map(|glyph| glyph.advance).sum();
            take(run.origin);
            take(run.origin.shifted(width, -run.size * 0.7));
        }
        Mark::Link { .. } => {}
    }
}

#[test]
fn everything_keeps_off_the_edges_of_every_page() {
    let fonts = Fonts::shipped().unwrap();
    for example in [BENCH, CABINET] {
        let checked = checked(example);
        for paper in Paper::ALL {
            let sound = checked.sound.as_ref().unwrap().on(paper);
            let words = Words::english();
            let figures = road::draw(&checked, &sound, &fonts, &words);
            let templates = Templates::shipped();
            let document = road::compose(&checked, &sound, figures, &templates, None);
            assert!(document.findings.is_empty());
            let pages = paginate(&document.value, &fonts, paper);
            assert!(pages.findings.is_empty(), "{example} on {paper:?}");
            // Nothing nearer to an edge than half of the margin there, but for a hair.
            let margins = paper.margins();
            let half = |length: leafwright::units::Length| length.mm() * PT_PER_MM / 2.0;
            let (left, right) = (half(margins.left), half(margins.right));
            for (number, page) in pages.value.pages.iter().enumerate() {
                let mut check = |spot: Spot| {
                    let inside = spot.x >= left
                        && spot.x <= page.width - right
                        && spot.y >= 4.0 * PT_PER_MM / 2.0
                        && spot.y <= page.height - half(margins.bottom);
                    assert!(
                        inside,
                        "{example}, {paper:?}, page {}: {spot:?}",
                        number + 1
                    );
                };
                for placed in &page.content {
                    match placed {
                        Placed::Mark(mark) | Placed::Content { mark, .. } => {
                            spots(mark, &mut check)
                        }
                        // The sheet of a template fills its page, and keeps off its edges by itself.
                        Placed::Figure { figure, scale, .. }
                            if (figure.width * scale - page.width).abs() < 0.01 =>
                        {
                            assert!((scale - 1.0).abs() < 1e-9);
                            let edge = 9.0 * PT_PER_MM;
                            for mark in &figure.marks {
                                spots(mark, &mut |spot| {
                                    assert!(spot.x >= edge && spot.x <= page.width - edge);
                                    assert!(spot.y >= edge && spot.y <= page.height - edge);
                                });
                            }
                        }
                        Placed::Figure {
                            figure, at, scale, ..
                        } => {
                            check(*at);
                            check(at.shifted(figure.width * scale, figure.height * scale));
                        }
                    }
                }
            }
        }
    }
}
