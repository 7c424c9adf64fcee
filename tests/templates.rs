//! Full-size templates measured in the PDF, as a reader with a rule would measure the print: from the
//! coordinates of its content streams, which are read with another program's eyes (`lopdf`).

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use leafwright::build::Sheet;
use lopdf::content::Content;

use crate::shell::{self, at_home as leafwright, stderr, text};

const BENCH: &str = "examples/potting-bench/potting-bench.wright";

/// An arch of two arcs, with three holes; a leg with a taper and a rounded corner.
const ARCH: &str = r#"
plan "Arch" { author "Example Workshop"; revision "A" on 2026-01-15 "First issue" }
material ply is sheet { name "Birch plywood 18 mm"; thickness 18 mm; stock 2440 mm by 1220 mm; species birch_plywood }
hardware strap is wall_fixing "Strap" { use 2 }
part arch from ply "Arch" {
    length 900 mm grain
    width 420 mm
    outline {
        start 0 mm, 0 mm
        line to 120 mm, 0 mm
        arc to 780 mm, 0 mm through 450 mm, 250 mm
        line to 900 mm, 0 mm
        line to 900 mm, 60 mm
        arc to 0 mm, 60 mm through 450 mm, 420 mm
    }
    hole on face diameter 20 mm at 450 mm from foot, 330 mm from near
    hole on face diameter 8 mm depth 10 mm at 60 mm from foot, 40 mm from near
    hole on face diameter 8 mm depth 10 mm at 60 mm from head, 40 mm from near
}
part leg from ply "Leg" {
    length 700 mm grain
    width 90 mm
    taper near by 30 mm at foot over 500 mm
    round head.near radius 40 mm
}
place top = arch { length right; width up; left at 0 mm; front at 0 mm; bottom at 0 mm }
place post = leg { length up; width right; left at 0 mm; back at top.front; bottom at 100 mm }
join post to top by glue
template arch
template leg on face sheet A1
step "Glue" { add top, post; say "Glue {post} to {top}." }
"#;

/// A folder of a test's own with the arch in it.
fn folder(name: &str) -> PathBuf {
    let folder = shell::folder(name);
    fs::write(folder.join("arch.wright"), ARCH).unwrap();
    folder
}

/// Millimetres, x to the right and y upwards from the lower left corner of a page.
type Spot = [f64; 2];

/// A line or a cubic Bézier curve by its four points.
type Piece = [Spot; 4];

/// A stroked path.
struct Stroke {
    /// Width of its line in millimetres.
    width: f64,
    pieces: Vec<Piece>,
}

/// A page as it is printed.
struct Page {
    /// Width and height in millimetres.
    size: Spot,
    strokes: Vec<Stroke>,
    text: String,
}

/// A point is 127/360 mm (ref: units-and-paper, "Factors" [D]).
const MM: f64 = 127.0 / 360.0;

fn pages(path: &Path) -> Vec<Page> {
    let bytes = fs::read(path).unwrap();
    let document = lopdf::Document::load_mem(&bytes).unwrap();
    let texts = pdf_extract::extract_text_from_mem_by_pages(&bytes).unwrap();
    let pages = document.get_pages().into_values();
    pages
        .zip(texts)
        .map(|(id, text)| {
            let page = document.get_dictionary(id).unwrap();
            let media = page.get(b"MediaBox").unwrap().as_array().unwrap();
            let media: Vec<f64> = media
                .iter()
                .map(|it| f64::from(it.as_float().unwrap()))
                .collect();
            let content = document.get_page_content(id);
            Page {
                size: [media[2] * MM, media[3] * MM],
                strokes: strokes(&Content::decode(&content).unwrap()),
                text,
            }
        })
        .collect()
}

/// Every subpath that is stroked. The streams hold one transformation, before anything else: it
/// says how large the unit of all that follows is.
fn strokes(content: &Content) -> Vec<Stroke> {
    let (mut strokes, mut width) = (Vec::new(), 0.0);
    let mut subpaths: Vec<Vec<Piece>> = Vec::new();
    let (mut start, mut at): (Spot, Spot) = Default::default();
    let (first, rest) = content.operations.split_first().unwrap();
    assert_eq!(first.operator, "cm");
    let matrix: Vec<f32> = first
        .operands
        .iter()
        .map(|it| it.as_float().unwrap())
        .collect();
    assert_eq!(matrix, [0.01, 0.0, 0.0, 0.01, 0.0, 0.0]);
    for operation in rest {
        assert_ne!(operation.operator, "cm", "a second transformation");
        let number = |i: usize| f64::from(operation.operands[i].as_float().unwrap()) * 0.01 * MM;
        let spot = |i: usize| [number(i), number(i + 1)];
        match operation.operator.as_str() {
            "w" => width = number(0),
            "m" => {
                (start, at) = (spot(0), spot(0));
                subpaths.push(Vec::new());
            }
            "l" => {
                let to = spot(0);
                subpaths.last_mut().unwrap().push([at, at, to, to]);
                at = to;
            }
            "c" => {
                subpaths
                    .last_mut()
                    .unwrap()
                    .push([at, spot(0), spot(2), spot(4)]);
                at = spot(4);
            }
            "h" => {
                subpaths.last_mut().unwrap().push([at, at, start, start]);
                at = start;
            }
            "S" => {
                let stroked = subpaths.drain(..);
                strokes.extend(stroked.map(|pieces| Stroke { width, pieces }));
            }
            "f" | "f*" | "B" | "B*" | "n" => subpaths.clear(),
            _ => {}
        }
    }
    strokes
}

fn along([a, b, c, d]: Piece, t: f64) -> Spot {
    let u = 1.0 - t;
    let mix = |axis: usize| {
        u * u * u * a[axis]
            + 3.0 * u * u * t * b[axis]
            + 3.0 * u * t * t * c[axis]
            + t * t * t * d[axis]
    };
    [mix(0), mix(1)]
}

fn far(a: Spot, b: Spot) -> f64 {
    (a[0] - b[0]).hypot(a[1] - b[1])
}

/// Points every half millimetre along pieces.
fn sampled(pieces: &[Piece]) -> Vec<Spot> {
    let mut spots = Vec::new();
    for piece in pieces {
        let length = far(piece[0], piece[1]) + far(piece[1], piece[2]) + far(piece[2], piece[3]);
        let mut part = 0.0;
        while part < length {
            spots.push(along(*piece, part / length));
            part += 0.5;
        }
        spots.push(piece[3]);
    }
    spots
}

impl Page {
    /// The lines to cut along: 0.5 mm wide.
    fn outline(&self) -> Vec<Piece> {
        let wide = |stroke: &&Stroke| (stroke.width - 0.5).abs() < 0.01;
        let wide = self.strokes.iter().filter(wide);
        wide.flat_map(|stroke| stroke.pieces.clone()).collect()
    }

    /// The sides of squares, of four sides alike.
    fn squares(&self) -> Vec<f64> {
        let side = |piece: &Piece| far(piece[0], piece[3]);
        let squares = self.strokes.iter().filter(|stroke| {
            stroke.pieces.len() == 4 && {
                let first = side(&stroke.pieces[0]);
                first > 50.0
                    && stroke
                        .pieces
                        .iter()
                        .all(|it| (side(it) - first).abs() < 0.02)
            }
        });
        squares.map(|stroke| side(&stroke.pieces[0])).collect()
    }

    /// The middles of register marks: thin rings of a radius of 2.5 mm.
    fn registers(&self) -> Vec<Spot> {
        let mut found = Vec::new();
        for stroke in &self.strokes {
            // Of a ring four curves are drawn, and no way back.
            let curves: Vec<&Piece> = stroke.pieces.iter().take(4).collect();
            if curves.len() < 4 || (stroke.width - 0.18).abs() > 0.01 {
                continue;
            }
            let opposite = [curves[0][0], curves[2][0]];
            let middle = [
                (opposite[0][0] + opposite[1][0]) / 2.0,
                (opposite[0][1] + opposite[1][1]) / 2.0,
            ];
            let on_ring = |spot: Spot| (far(spot, middle) - 2.5).abs() < 0.02;
            if curves
                .iter()
                .all(|curve| on_ring(curve[0]) && on_ring(along(**curve, 0.5)))
            {
                found.push(middle);
            }
        }
        found
    }

    /// The row and the column that the foot names.
    fn place(&self) -> (usize, usize) {
        let words: Vec<&str> = self.text.split_whitespace().collect();
        let after = |word: &str| {
            let at = words.iter().position(|it| *it == word).unwrap();
            words[at + 1].parse::<usize>().unwrap()
        };
        (after("row"), after("column"))
    }
}

/// The outline of sheets put together so that their register marks meet, in the frame of the first.
fn put_together(pages: &[Page]) -> Vec<Piece> {
    let by_place: BTreeMap<(usize, usize), &Page> =
        pages.iter().map(|page| (page.place(), page)).collect();
    assert_eq!(by_place.len(), pages.len());
    let first = *by_place.keys().next().unwrap();
    let mut moved: BTreeMap<(usize, usize), Spot> = BTreeMap::from([(first, [0.0, 0.0])]);
    // From sheet to sheet over their joints, until every one has its place.
    for _ in 0..pages.len() {
        for ((row, column), page) in &by_place {
            let Some(own) = moved.get(&(*row, *column)).copied() else {
                continue;
            };
            for (next, axis, forward) in [
                ((*row, column + 1), 0, true),
                ((*row, column.wrapping_sub(1)), 0, false),
                ((row + 1, *column), 1, false),
                ((row.wrapping_sub(1), *column), 1, true),
            ] {
                let Some(other) = by_place.get(&next) else {
                    continue;
                };
                let here = on_joint(page, axis, forward);
                let there = on_joint(other, axis, !forward);
                assert_eq!(
                    (here.len(), there.len()),
                    (3, 3),
                    "{row} {column} to {next:?}"
                );
                let shift = [here[0][0] - there[0][0], here[0][1] - there[0][1]];
                for (a, b) in here.iter().zip(&there) {
                    // All three marks meet at once.
                    assert!(far(*a, [b[0] + shift[0], b[1] + shift[1]]) < 0.02);
                }
                let place = [own[0] + shift[0], own[1] + shift[1]];
                let known = moved.entry(next).or_insert(place);
                // Whichever way a sheet is reached, it lies in one place.
                assert!(far(*known, place) < 0.05, "{known:?} {place:?}");
            }
        }
    }
    let mut pieces = Vec::new();
    for (place, page) in by_place {
        let [dx, dy] = moved[&place];
        let outline = page.outline();
        pieces.extend(
            outline
                .into_iter()
                .map(|it| it.map(|[x, y]| [x + dx, y + dy])),
        );
    }
    pieces
}

/// The register marks of the joint that lies farthest along an axis, or nearest, in order.
fn on_joint(page: &Page, axis: usize, high: bool) -> Vec<Spot> {
    let marks = page.registers();
    // Three to a joint: those of an upright joint share x, those of a level one y.
    let mut levels: Vec<f64> = marks.iter().map(|mark| mark[axis]).collect();
    levels.sort_by(f64::total_cmp);
    let shared: Vec<f64> = levels
        .windows(3)
        .filter(|three| three[2] - three[0] < 0.02)
        .map(|three| three[1])
        .collect();
    let level = if high { shared.last() } else { shared.first() };
    let level = *level.unwrap();
    let mut found: Vec<Spot> = marks
        .into_iter()
        .filter(|mark| (mark[axis] - level).abs() < 0.02)
        .collect();
    found.sort_by(|a, b| a[1 - axis].total_cmp(&b[1 - axis]));
    // A mark of another joint may lie on the same line: the joint's own are an eighth from its
    // ends and in its middle.
    found.dedup_by(|a, b| far(*a, *b) < 0.02);
    found
}

/// A circle through three points.
fn circle([a, b, c]: [Spot; 3]) -> (Spot, f64) {
    let d = 2.0 * (a[0] * (b[1] - c[1]) + b[0] * (c[1] - a[1]) + c[0] * (a[1] - b[1]));
    let square = |p: Spot| p[0] * p[0] + p[1] * p[1];
    let x = (square(a) * (b[1] - c[1]) + square(b) * (c[1] - a[1]) + square(c) * (a[1] - b[1])) / d;
    let y = (square(a) * (c[0] - b[0]) + square(b) * (a[0] - c[0]) + square(c) * (b[0] - a[0])) / d;
    ([x, y], far([x, y], a))
}

/// How far a spot is from the arch as its source describes it, worked out from the three points of
/// each arc.
fn off_arch(spot: Spot) -> f64 {
    let line = |a: Spot, b: Spot| {
        let length = far(a, b);
        let t = ((spot[0] - a[0]) * (b[0] - a[0]) + (spot[1] - a[1]) * (b[1] - a[1]))
            / (length * length);
        let t = t.clamp(0.0, 1.0);
        far(spot, [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t])
    };
    let arc = |from: Spot, through: Spot, to: Spot| {
        let (middle, radius) = circle([from, through, to]);
        // Both arcs bulge upwards: their own side of the chord.
        if spot[1] >= from[1] - 0.1 {
            (far(spot, middle) - radius).abs()
        } else {
            f64::INFINITY
        }
    };
    let hole = |middle: Spot, radius: f64| (far(spot, middle) - radius).abs();
    [
        line([0.0, 0.0], [120.0, 0.0]),
        arc([120.0, 0.0], [450.0, 250.0], [780.0, 0.0]),
        line([780.0, 0.0], [900.0, 0.0]),
        line([900.0, 0.0], [900.0, 60.0]),
        arc([900.0, 60.0], [450.0, 420.0], [0.0, 60.0]),
        line([0.0, 60.0], [0.0, 0.0]),
        hole([450.0, 330.0], 10.0),
    ]
    .into_iter()
    .fold(f64::INFINITY, f64::min)
}

fn bounds(spots: &[Spot]) -> [Spot; 2] {
    let fold = |axis: usize, start: f64, pick: fn(f64, f64) -> f64| {
        spots
            .iter()
            .fold(start, |so_far, spot| pick(so_far, spot[axis]))
    };
    [
        [fold(0, f64::MAX, f64::min), fold(1, f64::MAX, f64::min)],
        [fold(0, f64::MIN, f64::max), fold(1, f64::MIN, f64::max)],
    ]
}

/// Checks that pieces are the arch, lying as it is described or turned by a quarter.
fn is_arch(pieces: &[Piece]) {
    let spots = sampled(pieces);
    let [low, high] = bounds(&spots);
    let size = [high[0] - low[0], high[1] - low[1]];
    let turned = size[1] > size[0];
    let spots: Vec<Spot> = spots
        .into_iter()
        .map(|[x, y]| {
            if turned {
                // Turned back by a quarter.
                [y - low[1], high[0] - x]
            } else {
                [x - low[0], y - low[1]]
            }
        })
        .collect();
    let [_, high] = bounds(&spots);
    assert!(
        (high[0] - 900.0).abs() < 0.1 && (high[1] - 420.0).abs() < 0.1,
        "{high:?}"
    );
    let worst = spots.iter().map(|spot| off_arch(*spot)).fold(0.0, f64::max);
    assert!(worst < 0.1, "{worst} mm off");
    // And nothing of it is missing: every place on it has a printed one next to it.
    for step in 0..=1800 {
        let x = f64::from(step) / 2.0;
        let (middle, radius) = circle([[900.0, 60.0], [450.0, 420.0], [0.0, 60.0]]);
        let y = middle[1] + (radius * radius - (x - middle[0]) * (x - middle[0])).sqrt();
        let near = spots
            .iter()
            .map(|spot| far(*spot, [x, y]))
            .fold(f64::MAX, f64::min);
        assert!(near < 0.6, "nothing is printed at {x}, {y}");
    }
}

#[test]
fn sheets_put_together_are_the_part_to_a_tenth_of_a_millimetre() {
    let folder = folder("tiles");
    let source = folder.join("arch.wright");
    for (paper, size, count) in [("A4", [210.0, 297.0], 9), ("Letter", [215.9, 279.4], 9)] {
        let path = folder.join(paper).with_extension("pdf");
        let arguments = [
            "template",
            text(&source),
            "--part",
            "arch",
            "--paper",
            paper,
            "-o",
        ];
        let output = leafwright(&[&arguments[..], &[text(&path)]].concat());
        assert!(output.status.success(), "{}", stderr(&output));
        let pages = pages(&path);
        assert_eq!(pages.len(), count, "sheets of {paper} that are printed");
        for page in &pages {
            assert!(far(page.size, size) < 0.02);
            let squares = page.squares();
            assert_eq!(squares.len(), 2);
            // 4 in are 101.6 mm (ref: units-and-paper, "Factors" [D]).
            assert!((squares[0] - 100.0).abs() < 0.02 && (squares[1] - 101.6).abs() < 0.02);
            let printed: Vec<&str> = page.text.split_whitespace().collect();
            let printed = printed.join(" ");
            assert!(
                printed.contains("Arch") && printed.contains("Print at 100"),
                "{printed}"
            );
            assert!(printed.contains("Measure the square before you cut"));
            assert!(printed.contains("grain"));
        }
        is_arch(&put_together(&pages));
    }
    fs::remove_dir_all(folder).unwrap();
}

#[test]
fn one_large_sheet_is_the_part_too() {
    let folder = folder("one-sheet");
    let source = folder.join("arch.wright");
    // What each sheet must have room for: ISO 216 and ANSI/ASME Y14.1.
    for (sheet, size) in [("A0", [1189.0, 841.0]), ("ANSI_E", [1117.6, 863.6])] {
        let path = folder.join(sheet).with_extension("pdf");
        let output = leafwright(&[
            "template",
            text(&source),
            "--part",
            "arch",
            "--sheet",
            sheet,
            "-o",
            text(&path),
        ]);
        assert!(output.status.success(), "{}", stderr(&output));
        let pages = pages(&path);
        assert_eq!(pages.len(), 1);
        assert!(far(pages[0].size, size) < 0.02, "{:?}", pages[0].size);
        assert_eq!(pages[0].squares().len(), 2);
        is_arch(&pages[0].outline());
    }
    fs::remove_dir_all(folder).unwrap();
}

#[test]
fn a_rounded_corner_and_a_taper_are_true() {
    let folder = folder("leg");
    let (source, path) = (folder.join("arch.wright"), folder.join("leg.pdf"));
    let output = leafwright(&[
        "template",
        text(&source),
        "--part",
        "B",
        "--sheet",
        "A1",
        "-o",
        text(&path),
    ]);
    assert!(output.status.success(), "{}", stderr(&output));
    let page = &pages(&path)[0];
    let spots = sampled(&page.outline());
    let [low, high] = bounds(&spots);
    assert!((high[0] - low[0] - 700.0).abs() < 0.1 && (high[1] - low[1] - 90.0).abs() < 0.1);
    // Its length runs to the right, its far edge is at the top: the round is at the lower right.
    let middle = [high[0] - 40.0, low[1] + 40.0];
    let corner: Vec<f64> = spots
        .iter()
        .filter(|spot| spot[0] > middle[0] && spot[1] < middle[1])
        .map(|spot| far(*spot, middle))
        .collect();
    assert!(corner.len() > 100);
    assert!(corner.iter().all(|radius| (radius - 40.0).abs() < 0.1));
    // 30 mm off at the foot, nothing any more 500 mm on.
    for spot in &spots {
        let (x, y) = (spot[0] - low[0], spot[1] - low[1]);
        if x < 499.0 && x > 0.5 && y < 80.0 {
            assert!((y - 30.0 * (1.0 - x / 500.0)).abs() < 0.1, "{x}, {y}");
        }
    }
    fs::remove_dir_all(folder).unwrap();
}

#[test]
fn the_plan_holds_its_templates_and_tells_of_sheets_left_out() {
    let folder = folder("in-plan");
    let (source, path) = (folder.join("arch.wright"), folder.join("arch.pdf"));
    let output = leafwright(&["build", text(&source), "-o", text(&path)]);
    assert!(output.status.success(), "{}", stderr(&output));
    let pages = pages(&path);
    let said: Vec<String> = pages
        .iter()
        .map(|page| page.text.split_whitespace().collect::<Vec<_>>().join(" "))
        .collect();
    let chapter = said
        .iter()
        .find(|text| text.contains("What has a curve or many holes"));
    let chapter = chapter.unwrap();
    assert!(
        chapter.contains("9 sheets of A4: 2 × 5 less 1 that is empty"),
        "{chapter}"
    );
    assert!(chapter.contains("one sheet of A1"), "{chapter}");
    // Nine of A4, which together are the arch, and one of A1 that lies across.
    let tiles: Vec<Page> = pages
        .into_iter()
        .filter(|page| page.registers().len() >= 3)
        .collect();
    assert_eq!(tiles.len(), 9);
    is_arch(&put_together(&tiles));
    let document = lopdf::Document::load(&path).unwrap();
    let a1 = document.get_pages().into_values().filter(|id| {
        let page = document.get_dictionary(*id).unwrap();
        let media = page.get(b"MediaBox").unwrap().as_array().unwrap();
        (media[2].as_float().unwrap() - 2383.937).abs() < 0.02
    });
    assert_eq!(a1.count(), 1);
    fs::remove_dir_all(folder).unwrap();
}

#[test]
fn the_cheek_of_the_bench_is_true_on_every_paper() {
    let folder = folder("cheek");
    let path = folder.join("bench.pdf");
    for paper in ["A4", "Letter", "A3", "Tabloid", "phone", "tablet"] {
        let output = leafwright(&["build", BENCH, "-o", text(&path), "--paper", paper]);
        assert!(output.status.success(), "{}", stderr(&output));
        let pages = pages(&path);
        let sheets: Vec<Page> = pages
            .into_iter()
            .filter(|page| page.text.contains("Full size,"))
            .collect();
        let pieces = if sheets.len() == 1 {
            sheets[0].outline()
        } else {
            put_together(&sheets)
        };
        for page in &sheets {
            assert_eq!(page.squares().len(), 2, "{paper}");
            // Nothing to be printed is as small as a phone.
            assert!(page.size[0] > 205.0, "{paper}");
        }
        let [low, high] = bounds(&sampled(&pieces));
        let mut size = [high[0] - low[0], high[1] - low[1]];
        // On some papers it lies turned by a quarter.
        size.sort_by(f64::total_cmp);
        let off = (size[0] - 200.0).abs().max((size[1] - 250.0).abs());
        assert!(off < 0.1, "{paper}: {size:?}");
    }
    fs::remove_dir_all(folder).unwrap();
}

#[test]
fn what_cannot_be_printed_is_told() {
    let folder = folder("no-template");
    let (source, path) = (folder.join("arch.wright"), folder.join("out.pdf"));
    let told = |arguments: &[&str]| {
        let before = ["template", text(&source)];
        let output = leafwright(&[&before[..], arguments, &["-o", text(&path)]].concat());
        assert_eq!(output.status.code(), Some(1), "{}", stderr(&output));
        assert!(!path.exists());
        stderr(&output)
    };
    let unknown = told(&["--part", "roof"]);
    assert!(
        unknown.contains("X014") && unknown.contains("`arch` (A), `leg` (B)"),
        "{unknown}"
    );
    let side = told(&["--part", "arch", "--side", "top"]);
    assert!(
        side.contains("X014") && side.contains("`top` is not a side"),
        "{side}"
    );
    let small = told(&["--part", "arch", "--sheet", "A3"]);
    assert!(
        small.contains("C013") && small.contains("900 mm (about 35-7/16 in)"),
        "{small}"
    );
    fs::write(
        &source,
        ARCH.replace("template arch\n", "")
            .replace("template leg on face sheet A1\n", ""),
    )
    .unwrap();
    let none = told(&[]);
    assert!(
        none.contains("X014") && none.contains("asks for no template"),
        "{none}"
    );
    fs::remove_dir_all(folder).unwrap();
}

/// ISO 216: each size is the one before halved across its long side, rounded down; ANSI/ASME Y14.1:
/// each is the one before with its short side doubled (ref: units-and-paper, "Paper" [V, M]).
#[test]
fn sheets_are_those_of_the_standards() {
    let mm = |sheet: Sheet| {
        let (width, height) = sheet.size();
        [width.mm(), height.mm()]
    };
    let (mut short, mut long) = (841_i32, 1189_i32);
    for sheet in [Sheet::A0, Sheet::A1, Sheet::A2, Sheet::A3, Sheet::A4] {
        assert_eq!(
            mm(sheet),
            [f64::from(short), f64::from(long)],
            "{}",
            sheet.word()
        );
        (short, long) = (long / 2, short);
    }
    let (mut short, mut long) = (17_i32, 22_i32);
    for sheet in [
        Sheet::Letter,
        Sheet::Tabloid,
        Sheet::AnsiC,
        Sheet::AnsiD,
        Sheet::AnsiE,
    ] {
        let halves = mm(sheet).map(|side| side / 12.7);
        assert_eq!(
            halves,
            [f64::from(short), f64::from(long)],
            "{}",
            sheet.word()
        );
        (short, long) = (long, short * 2);
    }
}
