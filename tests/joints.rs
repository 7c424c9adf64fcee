//! What each kind of joint makes of its parts: sizes, cuts, fasteners, glue, worked by hand.
#![expect(
    clippy::wildcard_enum_match_arm,
    reason = "a test looks for the one shape it asks for"
)]

use leafwright::build::Build;
use leafwright::model::{FeatureShape, HolePurpose, Overrides, PocketKind};
use leafwright::road::{self, Checked};
use leafwright::source::Sources;

const HEAD: &str = r#"plan "Test piece" { revision "A" on 2026-01-15 }
material oak is board { section 20 mm by 60 mm; stock 2000 mm; species white_oak }
material ply is sheet { thickness 12 mm; stock 2440 mm by 1220 mm; species birch_plywood }
part stile from oak { length 400 mm }
part rail from oak { length 300 mm }
part panel from ply { length 300 mm; width 200 mm }
"#;

/// A rail with its end against the edge of an upright stile, both flat in one plane.
const FRAME: &str = "
place left = stile { length up; width right; left at 0 mm; front at 0 mm; bottom at 0 mm }
place low = rail { length right; width down; left at left.right; front at 0 mm; bottom at 100 mm }
step \"All\" { add left, low; say \"Join them.\" }
";

/// Two panels that meet in a corner of a box, the second against the first.
const CORNER: &str = "
place left = panel { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
place low = panel { length right; width back; left at left.right; front at 0 mm; bottom at 0 mm }
step \"All\" { add left, low; say \"Join them.\" }
";

fn made(text: &str) -> Checked {
    let (sources, file) = Sources::single("joint.wright", &format!("{HEAD}{text}"));
    let outcome = road::check(&sources, file, &Overrides::default());
    let errors: Vec<&str> = outcome
        .findings
        .iter()
        .map(|finding| finding.message.as_str())
        .collect();
    assert!(!outcome.findings.has_errors(), "{errors:?}");
    outcome.value
}

fn build(checked: &Checked) -> &Build {
    checked.sound.as_ref().unwrap().build()
}

/// Finished length, width and thickness of a placed piece's part, mm.
fn size(build: &Build, name: &str) -> [f64; 3] {
    let piece = build.placed.iter().find(|piece| piece.name == name);
    build
        .part(piece.unwrap().part)
        .unwrap()
        .size()
        .map(|length| length.mm())
}

fn features<'b>(build: &'b Build, name: &str) -> Vec<&'b FeatureShape> {
    let piece = build.placed.iter().find(|piece| piece.name == name);
    let part = build.part(piece.unwrap().part).unwrap();
    part.features.iter().map(|feature| &feature.shape).collect()
}

/// Volume of a placed piece's part in cubic millimetres, to the whole one.
#[expect(
    clippy::cast_possible_truncation,
    reason = "a few thousand cubic centimetres"
)]
fn volume(checked: &Checked, name: &str) -> i64 {
    let piece = build(checked)
        .placed
        .iter()
        .find(|piece| piece.name == name)
        .unwrap();
    let measures = checked.solids.part(piece.part).unwrap().measures;
    measures.volume_mm3.round() as i64
}

/// Square centimetres of glue of the one joint.
fn glue_cm2(build: &Build) -> f64 {
    build.joints[0].glue_area.mm2() / 100.0
}

/// Holes of a purpose: count, diameter and depth, mm.
fn holes(build: &Build, name: &str, purpose: HolePurpose) -> Vec<(usize, f64, Option<f64>)> {
    let of = |shape: &&FeatureShape| match shape {
        FeatureShape::Holes(holes) if holes.purpose == purpose => Some((
            holes.positions.len(),
            holes.diameter.mm(),
            holes.depth.map(|depth| depth.mm()),
        )),
        _ => None,
    };
    features(build, name).iter().filter_map(of).collect()
}

#[test]
fn a_tenon_adds_length_and_its_mortise_is_a_little_deeper() {
    let checked = made(&format!(
        "{FRAME}join low to left by mortise_and_tenon {{ depth 30 mm; thickness 7 mm; width 40 mm; glue }}"
    ));
    let build = build(&checked);
    assert_eq!(size(build, "low"), [330.0, 60.0, 20.0]);
    assert_eq!(size(build, "left"), [400.0, 60.0, 20.0]);
    // The rail and a tenon of 30 x 40 x 7.
    assert_eq!(volume(&checked, "low"), 300 * 60 * 20 + 30 * 40 * 7);
    let mortise = features(build, "left")
        .into_iter()
        .find_map(|shape| match shape {
            FeatureShape::Pocket(pocket) => Some(pocket),
            _ => None,
        })
        .unwrap();
    assert_eq!(mortise.kind, PocketKind::Mortise);
    assert!(mortise.depth.mm() > 30.0 && mortise.depth.mm() <= 33.0);
    // Cheeks and edges of the tenon, 2 x (40 + 7) x 30, and the shoulders, 60 x 20 - 40 x 7.
    assert!((glue_cm2(build) - (28.2 + 9.2)).abs() < 1e-9);
}

#[test]
fn a_half_lap_takes_half_of_each_whichever_way_they_lie() {
    // Flat rails, 60 wide and 20 thick, crossing: half of the thickness.
    let flat = made(
        "place a = stile { length right; width back; left at 0 mm; front at 100 mm; bottom at 0 mm }
         place b = stile { length back; width right; left at 150 mm; front at 0 mm; bottom at 0 mm }
         join a to b by half_lap { glue }
         step \"All\" { add a, b; say \"Cross them.\" }",
    );
    for name in ["a", "b"] {
        assert_eq!(volume(&flat, name), 400 * 60 * 20 - 60 * 60 * 10, "{name}");
    }
    // On edge: a slot as wide as the other is thick, half of the width deep.
    let on_edge = made(
        "place a = stile { length right; width up; left at 0 mm; front at 100 mm; bottom at 0 mm }
         place b = stile { length back; width up; left at 150 mm; front at 0 mm; bottom at 0 mm }
         join a to b by half_lap
         step \"All\" { add a, b; say \"Cross them.\" }",
    );
    for name in ["a", "b"] {
        assert_eq!(
            volume(&on_edge, name),
            400 * 60 * 20 - 20 * 20 * 30,
            "{name}"
        );
    }
}

#[test]
fn fingers_fill_each_others_gaps() {
    let checked = made(&format!(
        "{CORNER}join low to left by box_joint {{ width 20 mm; glue }}"
    ));
    let build = build(&checked);
    // 200 mm at 20 mm: nine fingers, the first and the last the coming piece's.
    let gaps = |name| {
        features(build, name)
            .iter()
            .filter(|shape| matches!(shape, FeatureShape::Notch { .. }))
            .count()
    };
    assert_eq!((gaps("low"), gaps("left")), (4, 5));
    assert_eq!(size(build, "low")[0], 312.0);
    // Together they are the two panels and the corner, filled once.
    let both = volume(&checked, "low") + volume(&checked, "left");
    assert_eq!(both, 2 * 300 * 200 * 12);
}

#[test]
fn a_mitre_reaches_to_the_outside_and_carries_its_splines() {
    let checked = made(&format!(
        "{CORNER}hardware strip is spline \"Spline\" {{ width 16 mm; thickness 4 mm }}
         join low to left by mitre using strip {{ count 2; glue }}"
    ));
    let build = build(&checked);
    assert_eq!(size(build, "low")[0], 312.0);
    // Each loses half of the corner, 12 x 12 x 200, and a slot 4 wide and half a millimetre deeper than half
    // of the spline.
    let slot = 4 * (16 + 1) / 2 * 200;
    assert_eq!(
        volume(&checked, "low"),
        300 * 200 * 12 + 12 * 12 * 200 / 2 - slot
    );
    assert_eq!(
        volume(&checked, "left"),
        300 * 200 * 12 - 12 * 12 * 200 / 2 - slot
    );
    assert_eq!(build.joints[0].fasteners.len(), 2);
    // The slant of 12 by 12 along 200.
    let slant = 12.0 * 2.0_f64.sqrt() * 200.0 / 100.0;
    assert!((glue_cm2(build) - slant).abs() < 0.01);
}

#[test]
fn a_tongue_adds_width_and_layers_only_glue() {
    // Narrower than its board by the tongue.
    let boards = "part slat from oak { length 400 mm; width 50 mm }
        place a = slat { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
        place b = slat { length right; width back; left at 0 mm; front at a.back; bottom at 0 mm }
        step \"All\" { add a, b; say \"Edge to edge.\" }";
    let checked = made(&format!(
        "{boards}\njoin b to a by tongue_and_groove {{ depth 8 mm; thickness 6 mm; glue }}"
    ));
    let build_of = build(&checked);
    assert_eq!(size(build_of, "b"), [400.0, 58.0, 20.0]);
    assert_eq!(volume(&checked, "b"), 400 * 50 * 20 + 400 * 8 * 6);
    // The edge, 400 x 20, and both cheeks of the tongue.
    assert!((glue_cm2(build_of) - (80.0 + 64.0)).abs() < 1e-9);
    let layers = made(
        "place a = stile { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
         place b = stile { length right; width back; left at 0 mm; front at 0 mm; bottom at a.top }
         join b to a by lamination
         step \"All\" { add a, b; say \"On each other.\" }",
    );
    assert!((glue_cm2(build(&layers)) - 240.0).abs() < 1e-9);
    assert_eq!(size(build(&layers), "b"), [400.0, 60.0, 20.0]);
}

#[test]
fn bolts_pass_the_one_and_turn_into_inserts_in_the_other() {
    let checked = made(
        "hardware bolt is bolt { diameter 6 mm; length 35 mm }
         hardware nut is insert { diameter 6 mm; length 15 mm; pilot 8.5 mm }
         place leg = stile { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
         place apron = stile { length up; width back; left at leg.right; front at 0 mm; bottom at 0 mm }
         join apron to leg by bolts using bolt, nut { count 2; through apron }
         step \"All\" { add leg, apron; say \"Bolt them.\" }",
    );
    let build = build(&checked);
    let passing = holes(build, "apron", HolePurpose::Bolt);
    let taking = holes(build, "leg", HolePurpose::Insert);
    assert_eq!((passing.len(), taking.len()), (1, 1));
    assert_eq!((passing[0].0, passing[0].2), (2, None));
    assert!(passing[0].1 > 6.0 && passing[0].1 <= 7.0);
    assert_eq!((taking[0].0, taking[0].1), (2, 8.5));
    assert!(taking[0].2.unwrap() >= 15.0);
    // Two bolts and two inserts on the hardware list.
    let counts: Vec<i64> = build.hardware.iter().map(|item| item.count).collect();
    assert_eq!(counts, [2, 2]);
}

#[test]
fn magnets_face_each_other_in_pairs() {
    let checked = made(
        "hardware disc is magnet { diameter 10 mm; thickness 3 mm }
         place leg = stile { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
         place door = stile { length up; width back; left at leg.right; front at 0 mm; bottom at 0 mm }
         join door to leg by magnets using disc { count 2 }
         step \"All\" { add leg, door; say \"Glue the magnets in.\" }",
    );
    let build = build(&checked);
    for name in ["leg", "door"] {
        let drilled = holes(build, name, HolePurpose::Magnet);
        assert_eq!(drilled.len(), 1, "{name}");
        let (count, diameter, depth) = drilled[0];
        assert_eq!(count, 2);
        // As wide as the magnet with room for glue, and deep enough to lie below the surface.
        assert!((10.0..=10.5).contains(&diameter));
        assert!((3.0..=4.0).contains(&depth.unwrap()));
    }
    assert_eq!(build.hardware[0].count, 4);
}

#[test]
fn a_shelf_on_pins_uses_the_holes_that_are_there() {
    let shelf = |grid: &str| {
        made(&format!(
            "hardware pin is shelf_pin {{ diameter 5 mm; length 16 mm }}
             part side from ply {{ length 600 mm; width 200 mm; {grid} }}
             place left = side mirrored {{ length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }}
             place right = side {{ length up; width back; left at board.right; front at 0 mm; bottom at 0 mm }}
             place board = panel {{ length right; width back; left at left.right; front at 0 mm; bottom at 302.5 mm }}
             join board to left, right by shelf_pins using pin {{ inset 40 mm }}
             step \"All\" {{ add left, board, right; say \"Lay it on.\" }}"
        ))
    };
    let drilled = shelf("");
    assert_eq!(
        holes(build(&drilled), "left", HolePurpose::Pin),
        [(2, 5.0, Some(8.0))]
    );
    assert_eq!(build(&drilled).hardware[0].count, 4);
    // Pins lie under the shelf: at 302.5 less half of 5 mm, 40 mm from front and back.
    let there = shelf(
        "holes on face diameter 5 mm depth 8 mm grid 2 by 3 pitch 120 mm by 32 mm at 40 mm from near, 268 mm from foot",
    );
    assert_eq!(holes(build(&there), "left", HolePurpose::Pin), []);
    assert_eq!(build(&there).hardware[0].count, 4);
}

#[test]
fn nails_are_counted_and_hinges_let_in() {
    let nailed = made(&format!(
        "{CORNER}hardware brad is nail {{ diameter 1.5 mm; length 30 mm }}
         join low to left by nails using brad {{ count 4 }}"
    ));
    assert_eq!(build(&nailed).joints[0].fasteners.len(), 4);
    assert_eq!(build(&nailed).hardware[0].count, 4);
    let hung = made(
        "hardware butt is hinge { length 50 mm; width 18 mm; thickness 2 mm }
         place side = panel { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
         place door = stile { length up; width right; left at 0 mm; back at side.front - 1 mm; bottom at 0 mm }
         join door to side by hinges using butt { depth 1 mm }
         step \"All\" { add side, door; say \"Hang it.\" }",
    );
    for name in ["side", "door"] {
        let beds: Vec<f64> = features(build(&hung), name)
            .into_iter()
            .filter_map(|shape| match shape {
                FeatureShape::Pocket(pocket) if pocket.kind == PocketKind::Recess => {
                    Some(pocket.depth.mm())
                }
                _ => None,
            })
            .collect();
        assert_eq!(beds, [1.0, 1.0], "{name}");
    }
    assert_eq!(build(&hung).hardware[0].count, 2);
}

#[test]
fn runners_take_the_gap_beside_a_drawer() {
    let checked = made(
        "hardware slide is runner { length 250 mm; thickness 12.5 mm }
         place wall = panel { length back; width up; left at 0 mm; front at 0 mm; bottom at 0 mm }
         place side = panel { length back; width up; left at wall.right + 12.5 mm; front at 0 mm; bottom at 0 mm }
         join side to wall by runners using slide
         step \"All\" { add wall, side; say \"Screw the runners on.\" }",
    );
    let joint = &build(&checked).joints[0];
    assert_eq!(joint.contact.gap.mm(), 12.5);
    assert_eq!(build(&checked).hardware[0].count, 1);
}

#[test]
fn a_drawer_side_is_grooved_for_its_strip() {
    let checked = made(
        "part strip from oak { length 200 mm; width 12 mm; thickness 8 mm }
         place side = panel { length back; width up; left at 0 mm; front at 0 mm; bottom at 0 mm }
         place runner = strip { length back; width up; right at side.right + 1 mm; front at 50 mm; bottom at 60 mm }
         place carcase = panel { length back; width up; left at runner.right; front at 0 mm; bottom at 0 mm }
         join runner to carcase by glue
         join runner to side by strips
         step \"All\" { add side, runner, carcase; say \"Let it run.\" }",
    );
    let groove = features(build(&checked), "side")
        .into_iter()
        .find_map(|shape| match shape {
            FeatureShape::Pocket(pocket) => Some(*pocket),
            _ => None,
        })
        .unwrap();
    assert_eq!(groove.kind, PocketKind::Groove);
    // 7 of the strip's 8 mm are in the side; the groove has room beside and above it.
    assert!((7.0..=9.0).contains(&groove.depth.mm()));
    let width = groove.first.size().min(groove.second.size()).mm();
    assert!((12.0..=14.0).contains(&width), "{width}");
}
