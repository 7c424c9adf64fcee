//! Change marks: bars and triangles in the margin of a plan that is compared with an earlier one.

use std::fs;

use leafwright::build::Paper;
use leafwright::display::{Mark, PathPiece};
use leafwright::document::Templates;
use leafwright::document::tree::{Block, Change, Document};
use leafwright::model::Overrides;
use leafwright::page;
use leafwright::road;
use leafwright::source::Sources;
use leafwright::text::Fonts;

use crate::shell::{folder, git, leafwright, stderr};

const BOX: &str = r#"plan "Box" { revision "A" on 2026-01-15 "First issue" }
material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
let long = 400 mm
part board from ply "Board" { length long grain; width 200 mm }
part lid from ply "Lid" { length 300 mm grain; width 200 mm }
place low = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
place high = lid { length right; width back; left at 0 mm; front at 0 mm; bottom at low.top }
step "Lay it down" { add low; say "Lay {low} down."; say "Dust it."; time 10 min }
step "Close it" { add high; say "Put {high} on."; time 5 min }
"#;

/// The document of the later text, with what is other than in the earlier one marked.
fn marked(before: &str, after: &str) -> Document {
    let fonts = Fonts::shipped().unwrap();
    let [before, after] = [before, after].map(|text| {
        let (sources, file) = Sources::single("plan.wright", text);
        let outcome = road::check_choices(&sources, file, &Overrides::default());
        assert!(!outcome.findings.has_errors(), "{:?}", outcome.findings);
        outcome.value
    });
    let pair = [
        (&before, before.sound.as_ref().unwrap()),
        (&after, after.sound.as_ref().unwrap()),
    ];
    road::compose_since(pair, &fonts, &Templates::shipped()).value
}

/// What is marked, a line each.
fn told(blocks: &[Block]) -> Vec<String> {
    let mut lines = Vec::new();
    for block in blocks {
        match block {
            Block::Marked { change, block } => lines.push(format!("{change:?} {block:?}")),
            Block::List { items, .. } => items.iter().for_each(|item| lines.extend(told(item))),
            Block::Table(table) => {
                let rows = table.groups.iter().flatten();
                let marked = rows.filter(|row| row.change != Change::None);
                lines.extend(marked.map(|row| format!("{:?} {:?}", row.change, row.cells)));
            }
            Block::Beside { blocks, .. }
            | Block::Framed { blocks, .. }
            | Block::Together { blocks } => lines.extend(told(blocks)),
            Block::Heading { .. }
            | Block::Paragraph { .. }
            | Block::Figure { .. }
            | Block::Legend { .. }
            | Block::Contents
            | Block::ScaleCheck
            | Block::Sheet { .. }
            | Block::PageBreak => {}
        }
    }
    lines
}

fn replaced(from: &str, to: &str) -> String {
    assert!(BOX.contains(from), "{from}");
    BOX.replace(from, to)
}

#[test]
fn the_same_plan_has_no_marks() {
    assert_eq!(told(&marked(BOX, BOX).blocks), Vec::<String>::new());
}

#[test]
fn a_sentence_that_changed_is_marked_and_nothing_else() {
    let document = marked(BOX, &replaced("Dust it.", "Wipe it."));
    let lines = told(&document.blocks);
    assert_eq!(lines.len(), 1, "{lines:#?}");
    assert!(lines[0].starts_with("Other ") && lines[0].contains("Wipe it"));
    // No revision tells of it.
    assert_eq!(document.change_mark, "");
}

#[test]
fn a_sentence_that_is_gone_leaves_its_mark_where_it_stood() {
    let with_a_third = replaced("say \"Dust it.\";", "say \"Dust it.\"; say \"Turn it.\";");
    let lines = told(&marked(&with_a_third, BOX).blocks);
    assert_eq!(lines.len(), 1, "{lines:#?}");
    assert!(lines[0].starts_with("GoneBelow ") || lines[0].starts_with("GoneAbove "));
    let lines = told(&marked(BOX, &replaced("say \"Lay {low} down.\";", "")).blocks);
    assert_eq!(lines.len(), 1, "{lines:#?}");
    assert!(lines[0].starts_with("GoneAbove ") && lines[0].contains("Dust it"));
}

#[test]
fn a_longer_board_is_marked_where_it_is_told_and_drawn() {
    let text = replaced("long = 400 mm", "long = 420 mm").replace(
        "{ revision \"A\"",
        "{ revision \"B\" on 2026-02-01 \"Longer board\"\nrevision \"A\"",
    );
    let document = marked(BOX, &text);
    assert_eq!(document.change_mark, "B");
    let lines = told(&document.blocks);
    let has = |what: &str| lines.iter().any(|line| line.contains(what));
    for figure in ["cover", "overview", "exploded", "layout-1", "step-1"] {
        assert!(has(&format!("name: \"{figure}\"")), "{figure}: {lines:#?}");
    }
    assert!(has("Longer board"), "{lines:#?}");
    let rows = lines.iter().filter(|line| line.starts_with("Other [Cell"));
    // In no row of the lid alone.
    for row in rows {
        assert!(!row.contains("\"Lid\""), "{row}");
    }
    assert!(
        lines
            .iter()
            .any(|line| line.contains("Board") && line.contains("420")),
        "{lines:#?}"
    );
}

#[test]
fn a_step_put_in_between_marks_itself_and_the_numbers_after_it() {
    let text = replaced(
        "step \"Close it\"",
        "step \"Wait\" { say \"Let it rest.\"; time 5 min }\nstep \"Close it\"",
    );
    let lines = told(&marked(BOX, &text).blocks);
    let of = |what: &str| lines.iter().any(|line| line.contains(what));
    assert!(of("Let it rest"), "{lines:#?}");
    // The lid goes on as before, under another number.
    assert!(!of("Put "), "{lines:#?}");
}

#[test]
fn bars_and_triangles_stand_in_the_margin() {
    let fonts = Fonts::shipped().unwrap();
    let document = marked(
        BOX,
        &replaced("Dust it.", "Wipe it.").replace(
            "{ revision \"A\"",
            "{ revision \"B\" on 2026-02-01 \"Wipe\"\nrevision \"A\"",
        ),
    );
    for paper in Paper::ALL {
        let left = page::text_area(paper).x;
        let pages = page::paginate(&document, &fonts, paper).value;
        let mut letters = 0;
        let mut bars = 0;
        for placed in pages.pages.iter().flat_map(|page| &page.content) {
            let Some(mark) = placed.mark() else { continue };
            match mark {
                Mark::Text(run) if run.origin.x < left - 3.0 => {
                    let least = if paper.is_screen() { 3.0 } else { 15.0 };
                    assert!(run.origin.x > least);
                    let text: String = run.glyphs.iter().map(|it| it.text.as_str()).collect();
                    assert_eq!(text, "B");
                    letters += 1;
                }
                Mark::Fill { path, .. } => {
                    let xs = path.pieces.iter().filter_map(PathPiece::end);
                    bars += usize::from(xs.fold(f64::MIN, |x, spot| x.max(spot.x)) < left - 3.0);
                }
                Mark::Text(_) | Mark::Stroke { .. } | Mark::Sealed { .. } | Mark::Link { .. } => {}
            }
        }
        // The sentence, the edition on the cover, the line of the revision.
        assert_eq!((bars, letters), (3, 3), "{paper:?}");
    }
}

#[test]
fn a_plan_is_marked_since_a_revision_in_git() {
    let root = folder("since");
    git(&root, &["init", "-q", "-b", "main"]);
    fs::write(root.join("box.wright"), BOX).unwrap();
    git(&root, &["add", "."]);
    git(&root, &["commit", "-q", "-m", "First issue"]);
    git(&root, &["tag", "v1"]);
    fs::write(root.join("box.wright"), replaced("Dust it.", "Wipe it.")).unwrap();
    let build = |since: &str| {
        leafwright(
            &root,
            &["build", "box.wright", "-o", "box.pdf", "--since", since],
        )
    };
    let output = build("v9");
    assert!(stderr(&output).contains("X008"), "{}", stderr(&output));
    assert_eq!(output.status.code(), Some(1));
    assert!(!root.join("box.pdf").exists());
    let output = build("v1");
    assert_eq!(output.status.code(), Some(0), "{}", stderr(&output));
    let printed = pdf_extract::extract_text(root.join("box.pdf")).unwrap();
    let words: Vec<&str> = printed.split_whitespace().collect();
    let text = words.join(" ");
    assert!(
        text.contains("other than in revision A of 15 January 2026"),
        "{text}"
    );
}
