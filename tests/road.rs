//! The whole road, run as people run it: the command on files.

use std::fs;
use std::path::Path;

use leafwright::display::{Area, Face, Figure, Mark, PT_PER_MM, PathPiece, Spot, Tone};
use leafwright::geometry::{Axis, Interval};
use leafwright::model::Overrides;
use leafwright::road::{self, Checked};
use leafwright::source::Sources;
use leafwright::text::Fonts;
use leafwright::units::{Length, Precision};
use leafwright::words::Words;

use crate::shell::{at_home as leafwright, folder, stderr, text};

const BENCH: &str = "examples/potting-bench/potting-bench.wright";

fn bench() -> Checked {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join(BENCH);
    let (sources, file) = Sources::single(BENCH, &fs::read_to_string(path).unwrap());
    let outcome = road::check(&sources, file, &Overrides::default());
    assert!(outcome.findings.is_empty(), "the example is clean");
    outcome.value
}

#[test]
fn the_example_gives_the_same_plan_twice_and_its_text_holds_the_cut_list() {
    let folder = folder("twice");
    let (first, second) = (folder.join("first.pdf"), folder.join("second.pdf"));
    for path in [&first, &second] {
        let output = leafwright(&["build", BENCH, "-o", text(path)]);
        assert!(output.status.success(), "{}", stderr(&output));
    }
    let bytes = fs::read(&first).unwrap();
    assert_eq!(bytes, fs::read(&second).unwrap(), "two builds, one plan");
    let printed = pdf_extract::extract_text_from_mem(&bytes).unwrap();
    // A cell's figure may be set over two lines; white space is no part of it.
    let printed: String = printed.chars().filter(|c| !c.is_whitespace()).collect();
    let sound = bench().sound.unwrap();
    let precision = Precision::default();
    for part in &sound.build().parts {
        for size in part.size() {
            let figure = size.printed(precision);
            let inch: String = figure
                .inch_set
                .chars()
                .filter(|c| !c.is_whitespace())
                .collect();
            assert!(
                printed.contains(&figure.mm),
                "{}: {}",
                part.title,
                figure.mm
            );
            assert!(printed.contains(&inch), "{}: {inch}", part.title);
        }
    }
    fs::remove_dir_all(folder).unwrap();
}

#[test]
fn a_failed_build_leaves_the_last_plan_as_it_was() {
    let folder = folder("failed");
    let (source, plan) = (folder.join("shelf.wright"), folder.join("shelf.pdf"));
    fs::write(&plan, "the last good plan").unwrap();
    for (name, bytes, code) in [
        ("errors", b"plan \"Shelf\" { }\nlet a = b\n".as_slice(), 1),
        ("not UTF-8", b"plan \"Sch\xe4ferei\" { }\n".as_slice(), 3),
        ("empty", b"".as_slice(), 1),
    ] {
        fs::write(&source, bytes).unwrap();
        let output = leafwright(&["build", text(&source), "-o", text(&plan)]);
        assert_eq!(
            output.status.code(),
            Some(code),
            "{name}: {}",
            stderr(&output)
        );
        assert_eq!(fs::read(&plan).unwrap(), b"the last good plan", "{name}");
    }
    fs::remove_dir_all(folder).unwrap();
}

#[test]
fn files_that_cannot_be_used_are_findings() {
    let output = leafwright(&["check", "examples/no-such-plan.wright"]);
    assert_eq!(output.status.code(), Some(3));
    assert!(stderr(&output).contains("X001"), "{}", stderr(&output));

    let folder = folder("files");
    let source = folder.join("latin.wright");
    fs::write(&source, b"# caf\xe9\n").unwrap();
    let output = leafwright(&["check", text(&source)]);
    assert_eq!(output.status.code(), Some(3));
    assert!(stderr(&output).contains("X002"), "{}", stderr(&output));
    assert!(
        stderr(&output).contains("byte 6 in line 1"),
        "{}",
        stderr(&output)
    );

    // A source without end is read no further than a source may go.
    #[cfg(unix)]
    {
        let output = leafwright(&["check", "/dev/zero"]);
        assert_eq!(output.status.code(), Some(3));
        assert!(
            stderr(&output).contains("larger than 8 MiB"),
            "{}",
            stderr(&output)
        );
    }

    let nowhere = folder.join("no-such-folder").join("plan.pdf");
    let output = leafwright(&["build", BENCH, "-o", text(&nowhere)]);
    assert_eq!(output.status.code(), Some(3));
    assert!(stderr(&output).contains("X003"), "{}", stderr(&output));
    assert!(!nowhere.exists());

    // A folder in place of the file cannot be overwritten, whoever runs this.
    let taken = folder.join("taken.pdf");
    fs::create_dir(&taken).unwrap();
    let output = leafwright(&["build", BENCH, "-o", text(&taken)]);
    assert_eq!(output.status.code(), Some(3));
    assert!(stderr(&output).contains("X003"), "{}", stderr(&output));
    let left = fs::read_dir(&folder).unwrap().count();
    assert_eq!(left, 2, "nothing half written is left behind");
    fs::remove_dir_all(folder).unwrap();
}

#[test]
fn settings_on_the_command_line_take_the_place_of_params() {
    let output = leafwright(&["check", BENCH, "--set", "width=1300 mm"]);
    assert_eq!(output.status.code(), Some(0), "{}", stderr(&output));
    for (setting, code) in [
        ("width=3 m", "N010"),
        ("widht=1 m", "X004"),
        ("width", "X004"),
        ("width=1", "N009|N004"),
        ("width=1 mmm", "S004"),
    ] {
        let output = leafwright(&["check", BENCH, "--set", setting]);
        assert_eq!(output.status.code(), Some(1), "{setting}");
        let found = code.split('|').any(|code| stderr(&output).contains(code));
        assert!(found, "{setting}: {}", stderr(&output));
    }
}

#[test]
fn findings_are_printed_for_programs_too() {
    let folder = folder("json");
    let source = folder.join("shelf.wright");
    fs::write(
        &source,
        "plan \"Shelf\" { revision \"A\" on 2026-01-15 }\nlet a = b\n",
    )
    .unwrap();
    let output = leafwright(&["check", text(&source), "--format", "json"]);
    assert_eq!(output.status.code(), Some(1));
    let printed: serde_json::Value = serde_json::from_slice(&output.stdout).unwrap();
    let printed = printed.to_string();
    assert!(printed.contains("\"N002\""), "{printed}");
    fs::remove_dir_all(folder).unwrap();
}

#[test]
fn every_code_is_explained_and_a_wrong_one_is_refused() {
    let output = leafwright(&["explain", "--list"]);
    let listed = String::from_utf8(output.stdout).unwrap();
    for page in leafwright::finding::catalogue::pages() {
        assert!(listed.contains(page.code), "{} is not listed", page.code);
    }
    let output = leafwright(&["explain", "h001"]);
    assert!(
        String::from_utf8(output.stdout)
            .unwrap()
            .contains("wright,bad")
    );
    assert_eq!(leafwright(&["explain", "Z999"]).status.code(), Some(1));
}

#[test]
fn one_drawing_is_written_as_svg() {
    let output = leafwright(&["draw", BENCH, "--step", "3"]);
    assert!(output.status.success(), "{}", stderr(&output));
    let svg = String::from_utf8(output.stdout).unwrap();
    assert!(svg.starts_with("<svg") || svg.starts_with("<?xml"), "{svg}");
    // A part by its name and by its letter; a plain one has no drawing.
    let by_name = leafwright(&["draw", BENCH, "--part", "ledge"]).stdout;
    let by_letter = leafwright(&["draw", BENCH, "--part", "L"]).stdout;
    assert!(by_name.starts_with(b"<svg"));
    assert_eq!(by_name, by_letter);
    assert!(String::from_utf8(by_name).unwrap().contains("Scale 1:10"));
    let grid = leafwright(&["draw", BENCH, "--part", "shelf", "--setting-out"]).stdout;
    // Ten by five holes 96 mm apart: their triangle of four and three pitches has five, 480 mm.
    assert!(String::from_utf8(grid).unwrap().contains(">480\u{a0}mm<"));
    let output = leafwright(&["draw", BENCH, "--part", "tray_bottom"]);
    assert_eq!(output.status.code(), Some(1));
    assert!(
        stderr(&output).contains("its sizes say all"),
        "{}",
        stderr(&output)
    );
    let output = leafwright(&["draw", BENCH, "--figure", "no-such"]);
    assert_eq!(output.status.code(), Some(1));
    assert!(stderr(&output).contains("X005"), "{}", stderr(&output));
}

/// Blind features of every kind: in faces, an edge and an end, stepped, stopped, in grids.
const STAND: &str = r#"
plan "Stand" {
    revision "A" on 2026-01-15
}
material ply is sheet {
    thickness 18 mm
    stock     2440 mm by 1220 mm
    kerf      3.2 mm
    density   685 kg/m3
}
material post is board {
    section 45 mm by 70 mm
    stock   2400 mm
    kerf    3.2 mm
    density 450 kg/m3
}
part door from ply {
    length 600 mm grain
    width  300 mm
    hole   on face diameter 35 mm depth 12 mm at 80 mm from foot, 24 mm from near
    hole   on face diameter 35 mm depth 12 mm at 80 mm from head, 24 mm from near
    holes  on face diameter 5 mm depth 10 mm grid 5 by 4 pitch 32 mm by 32 mm at 236 mm from foot, 56 mm from near
    hole   on back diameter 8 mm depth 11 mm counterbore 20 mm depth 4 mm at 500 mm from foot, 56 mm from near
}
part rack from ply {
    length 400 mm grain
    width  240 mm
    holes  on face diameter 20 mm depth 9 mm grid 3 by 3 pitch 60 mm by 50 mm at 70 mm from head, 40 mm from far
    holes  on back diameter 6 mm grid 4 by 6 pitch 40 mm by 30 mm at 40 mm from foot, 30 mm from near
    groove on face at 220 mm from near width 8 mm depth 6 mm from 60 mm to 330 mm
}
part leg from post {
    length 700 mm grain
    hole   on near diameter 10 mm depth 30 mm at 50 mm from foot, 22 mm from back
    hole   on face diameter 12 mm depth 20 mm at 50 mm from foot, 20 mm from far
    hole   on foot diameter 8 mm depth 40 mm at 20 mm from near, 22 mm from back
    hole   on back diameter 4 mm countersink 9 mm at 400 mm from foot, 35 mm from far
}
part rail from post {
    length 500 mm grain
    mitre  at foot 45 deg long near
    mitre  at head 30 deg long near
    bevel  at far 10 deg long face
}
part foot from post {
    length 400 mm grain
    tenon  at head length 25 mm thickness 12 mm width 30 mm
    taper  near by 15 mm at foot over 300 mm
    taper  face by 12 mm at foot over 250 mm
}
place d = door { length up; width right; left at 0 mm; front at 0 mm; bottom at 0 mm }
place r = rack { length up; width right; left at 400 mm; front at 0 mm; bottom at 0 mm }
place l = leg  { length up; width right; left at 800 mm; front at 0 mm; bottom at 0 mm }
place a = rail { length right; width up; left at 0 mm; front at 500 mm; bottom at 0 mm }
place f = foot { length up; width right; left at 800 mm; front at 500 mm; bottom at 0 mm }
step "Stand them up" {
    add d, r, l, a, f
    say "Stand {d} up."
}
"#;

fn stand() -> Checked {
    let (sources, file) = Sources::single("stand.wright", STAND);
    road::check(&sources, file, &Overrides::default()).value
}

/// A line of a figure, and whether it is a dimension line or an extension of one.
struct Drawn {
    ends: [Spot; 2],
    dimension: bool,
}

/// A text of a figure: a number in a box may lie over edges, a figure over nothing.
struct Figured {
    text: String,
    area: Area,
    boxed: bool,
}

/// True where a line runs through an area, by the signs of its corners and its bounds.
fn runs_through([p, q]: [Spot; 2], area: &Area) -> bool {
    let (right, bottom) = (area.x + area.width, area.y + area.height);
    let beside = p.x.max(q.x) <= area.x
        || p.x.min(q.x) >= right
        || p.y.max(q.y) <= area.y
        || p.y.min(q.y) >= bottom;
    let side = |x: f64, y: f64| (q.x - p.x) * (y - p.y) - (q.y - p.y) * (x - p.x);
    let corners = [
        side(area.x, area.y),
        side(right, area.y),
        side(right, bottom),
        side(area.x, bottom),
    ];
    let one_side = corners.iter().all(|side| *side >= 0.0) || corners.iter().all(|s| *s <= 0.0);
    !beside && !one_side
}

fn overlap(a: &Area, b: &Area) -> bool {
    a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height
}

/// ISO 129-1 (ref: units-and-paper, "Dimensioning" [V]): no figure on a line, none on another;
/// in part drawings, their sections and setting-out drawings.
#[test]
fn no_figure_of_a_part_drawing_stands_on_a_line_or_on_another() {
    let fonts = Fonts::shipped().unwrap();
    let (mut sizes, mut titles, mut set_out) = (0, 0, 0);
    for checked in [bench(), stand()] {
        let figures = road::draw(
            &checked,
            checked.sound.as_ref().unwrap(),
            &fonts,
            &Words::english(),
        );
        let of_parts = |name: &str| name.starts_with("part-") || name.starts_with("setting-out-");
        for (name, figure) in figures.iter().filter(|(name, _)| of_parts(name)) {
            assert!(figure.width <= 175.0 * PT_PER_MM, "{name} is too wide");
            assert!(figure.height <= 235.0 * PT_PER_MM, "{name} is too high");
            set_out += usize::from(name.starts_with("setting-out-"));
            let texts = check_figure(name, figure);
            sizes += texts.iter().filter(|text| text.ends_with("mm")).count();
            titles += texts.iter().filter(|text| text.starts_with("A–A")).count();
        }
    }
    assert!(sizes > 100, "{sizes} sizes");
    // Of the stand the door, the rack and the leg; of the bench what is dowelled or countersunk.
    assert!(titles > 6, "{titles} sections");
    // The door's, both of the rack's, the drain holes of the bench.
    assert_eq!(set_out, 4);
}

/// Checks a figure; gives its texts.
fn check_figure(name: &str, figure: &Figure) -> Vec<String> {
    let mut texts: Vec<Figured> = Vec::new();
    let mut lines: Vec<Drawn> = Vec::new();
    for mark in &figure.marks {
        match mark {
            Mark::Text(run) => texts.push(Figured {
                text: run.glyphs.iter().map(|glyph| glyph.text.as_str()).collect(),
                area: Area {
                    x: run.origin.x,
                    y: run.origin.y - run.size * 0.7,
                    width: run.glyphs.iter().map(|glyph| glyph.advance).sum(),
                    height: run.size * 0.7,
                },
                boxed: run.face == Face::Bold && run.size == 8.0,
            }),
            Mark::Stroke { path, pen } => {
                let dimension = pen.width < 0.3 * PT_PER_MM && pen.dashes.is_empty();
                let single = path.pieces.len() == 2;
                let (mut start, mut at) = (Spot::default(), Spot::default());
                for piece in &path.pieces {
                    let to = match *piece {
                        PathPiece::Move(to) => {
                            (start, at) = (to, to);
                            continue;
                        }
                        PathPiece::Line(to) | PathPiece::Curve(_, _, to) => to,
                        PathPiece::Close => start,
                    };
                    lines.push(Drawn {
                        ends: [at, to],
                        dimension: dimension && single,
                    });
                    at = to;
                }
            }
            // Boxes of numbers, which are drawn last, hide no text.
            Mark::Fill { path, tone } if *tone == Tone::WHITE => {
                let spots: Vec<Spot> = path.pieces.iter().filter_map(PathPiece::end).collect();
                for text in &texts {
                    let (a, b) = (spots[0], spots[2]);
                    let own = Area {
                        x: a.x,
                        y: a.y,
                        width: b.x - a.x,
                        height: b.y - a.y,
                    };
                    let hidden = overlap(&own, &text.area);
                    assert!(!hidden, "{name}: a number hides {}", text.text);
                }
            }
            Mark::Fill { .. } | Mark::Sealed { .. } | Mark::Link { .. } => {}
        }
    }
    for (number, one) in texts.iter().enumerate() {
        for other in texts.iter().skip(number + 1) {
            let apart = !overlap(&one.area, &other.area);
            assert!(apart, "{name}: {} stands on {}", one.text, other.text);
        }
        for line in lines.iter().filter(|line| line.dimension || !one.boxed) {
            let through = runs_through(line.ends, &one.area);
            assert!(!through, "{name}: {} stands on a line", one.text);
        }
    }
    texts.into_iter().map(|text| text.text).collect()
}

/// The bench worked out by hand from its params: 1200 wide, 600 deep, top at 900, two layers of
/// 18 mm, legs 45 by 70 set in 60 mm from the sides and 30 mm from the front.
#[test]
fn the_example_is_the_size_its_params_say() {
    let sound = bench().sound.unwrap();
    let build = sound.build();
    let mm = |name: &str| {
        let part = build.parts.iter().find(|part| part.name == name).unwrap();
        (part.size().map(Length::mm), part.count, part.mirrored)
    };
    // 900 - 2 * 18; 600 - 30 - 2 * 70; 1200 - 2 * 60 - 2 * 45.
    assert_eq!(mm("front_leg"), ([864.0, 70.0, 45.0], 2, 0));
    assert_eq!(mm("end_rail"), ([430.0, 95.0, 27.0], 4, 0));
    assert_eq!(mm("top_rail"), ([990.0, 95.0, 27.0], 2, 0));
    // 1200 - 2 * 60 - 2 * 18, and 6 mm let into each cheek.
    assert_eq!(mm("ledge"), ([1056.0, 130.0, 18.0], 1, 0));
    // 180 mm under the ledge and 6 mm into it.
    assert_eq!(mm("divider"), ([186.0, 120.0, 18.0], 2, 0));
    // One cheek is the other's mirror image, the tray's ends are not.
    assert_eq!(mm("cheek"), ([250.0, 200.0, 18.0], 1, 1));
    // 360 - 2 * 18, and 9 mm into each rabbet.
    assert_eq!(mm("tray_end"), ([342.0, 90.0, 18.0], 2, 0));
    // 480 - 2 * 18 and 6 mm into each groove; 360 - 2 * 18 likewise.
    assert_eq!(mm("tray_bottom"), ([456.0, 336.0, 6.5], 1, 0));
    let overall = build.overall.unwrap().map(Interval::size).map(Length::mm);
    assert_eq!(overall, [1200.0, 600.0, 1150.0]);
    // Eight rail ends with two dowels each; pocket screws: four rails of four, two cleats of two,
    // four along each top rail.
    let count = |name: &str| {
        build
            .hardware
            .iter()
            .find(|item| item.name == name)
            .unwrap()
            .count
    };
    assert_eq!(count("peg"), 16);
    assert_eq!(count("pocket"), 16 + 4 + 8);
    assert_eq!(count("foot"), 4);
}

#[test]
fn pieces_stand_where_faces_were_asked_to_meet() {
    let sound = bench().sound.unwrap();
    let build = sound.build();
    let at = |name: &str, axis: Axis| {
        let piece = build
            .placed
            .iter()
            .find(|piece| piece.name == name)
            .unwrap();
        piece.body[axis.index()]
    };
    assert_eq!(at("work_top", Axis::High).high, Length::from_mm(900));
    assert_eq!(
        at("left_high", Axis::Deep).low,
        at("left_front", Axis::Deep).high
    );
    assert_eq!(
        at("right_high", Axis::Deep).high,
        at("right_back", Axis::Deep).low
    );
    // Thirds of the clear width between the cheeks, exact to the nanometre.
    let clear = at("right_cheek", Axis::Across).low - at("left_cheek", Axis::Across).high;
    let first = at("dividers[1]", Axis::Across).middle() - at("left_cheek", Axis::Across).high;
    assert_eq!(first, clear / 3);
}
