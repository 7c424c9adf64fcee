//! The model and the build against figures worked out by hand.

use leafwright::build::{self, Build};
use leafwright::geometry::PartAxis;
use leafwright::model::{self, Overrides};
use leafwright::source::Sources;
use leafwright::syntax::{self, Forest};
use leafwright::units::{Length, Number, Quantity, Unit};

fn made(text: &str, overrides: &Overrides) -> Build {
    let (sources, file) = Sources::single("test.wright", text);
    let tree = syntax::parse(&sources, file);
    let model = model::resolve(&Forest::alone(tree.value), overrides);
    let made = build::assemble(&model.value);
    let mut findings = tree.findings;
    findings.append(model.findings);
    findings.append(made.findings);
    let found: Vec<&str> = findings
        .iter()
        .map(|finding| finding.message.as_str())
        .collect();
    assert!(found.is_empty(), "{found:?}");
    made.value
}

/// Length, width and thickness of a part, in millimetres.
fn size(build: &Build, name: &str) -> [f64; 3] {
    let part = build.parts.iter().find(|part| part.name == name).unwrap();
    part.size().map(Length::mm)
}

const SHELF: &str = r#"
plan "Shelf" { revision "A" on 2026-01-15 }
param width = 900 mm from 300 mm to 1200 mm
param count = 3 from 1 to 5
let height = 720 mm
let rise = (height - 2 * ply.thickness) / (count + 1)
material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
part side from ply { length height; width 300 mm }
part shelf from ply { length from left.right to right.left; width 280 mm }
place left  = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
place right = side { length up; width back; right at width; front at 0 mm; bottom at 0 mm }
place shelves[i in 1..count] = shelf { length right; width back; left at left.right; front at left.front; bottom at i * rise }
join shelves to left, right by dado { depth 6 mm; glue }
step "Build" { add left, right, shelves; say "Build it." }
"#;

#[test]
fn housed_shelves_grow_by_the_depth_of_their_dadoes() {
    let build = made(SHELF, &Overrides::default());
    // 900 - 2 * 18 between the sides, 6 more at either end.
    assert_eq!(size(&build, "shelf"), [876.0, 280.0, 18.0]);
    assert_eq!(
        build.parts.len(),
        2,
        "both sides are one part, all shelves another"
    );
    // (720 - 36) / 4 = 171: bottoms at 171, 342, 513.
    let bottoms: Vec<f64> = build
        .placed
        .iter()
        .filter(|piece| piece.name.starts_with("shelves"))
        .map(|piece| piece.body[2].low.mm())
        .collect();
    assert_eq!(bottoms, [171.0, 342.0, 513.0]);
}

#[test]
fn a_build_is_made_again_with_other_values() {
    let mut overrides = Overrides::default();
    let unit = Unit::by_symbol("mm").unwrap();
    let wide = Quantity::of_unit(Number::from_integer(1000), &unit).unwrap();
    overrides.values.insert("width".to_owned(), wide);
    assert_eq!(size(&made(SHELF, &overrides), "shelf")[0], 976.0);

    // The sheet at hand measures 17.5 mm: the shelf grows by twice the half millimetre, and its
    // dadoes by as much as it is thinner.
    let mut overrides = Overrides::default();
    overrides
        .thicknesses
        .insert("ply".to_owned(), Length::from_nm(17_500_000));
    let build = made(SHELF, &overrides);
    assert_eq!(size(&build, "shelf"), [877.0, 280.0, 17.5]);

    // What a reader really cuts: the sides a little short.
    let mut overrides = Overrides::default();
    overrides
        .sizes
        .insert(("side".to_owned(), PartAxis::Length), Length::from_mm(719));
    assert_eq!(size(&made(SHELF, &overrides), "side")[0], 719.0);
    assert_eq!(
        made(SHELF, &Overrides::default()).parts,
        made(SHELF, &Overrides::default()).parts
    );
}

#[test]
fn inches_are_exact_to_the_sixty_fourth() {
    let text = r#"
plan "Stool" { revision "A" on 2026-01-15; units in; round inches to 1/64 in }
material oak is board { section 3/4 in by 5-1/2 in; stock 8 ft }
part seat from oak { length 1 ft 2-3/64 in }
part rail from oak { length 3 * (2 ft - 1/64 in) / 2; width 1-1/2 in }
place top = seat { length right; width back; left at 0 in; front at 0 in; bottom at 0 in }
place low = rail { length right; width back; left at top.right; front at 0 in; bottom at 0 in }
join low to top by glue
step "Glue" { add top, low; say "Glue it." }
"#;
    let build = made(text, &Overrides::default());
    let part = |name: &str| build.parts.iter().find(|part| part.name == name).unwrap();
    assert_eq!(part("seat").size()[0], Length::from_inch(14 * 64 + 3, 64));
    // 3 * (24 - 1/64) / 2 = 36 - 3/128 in = 913.8046875 mm: the half nanometre goes away from zero,
    // as does the half of a sixty-fourth in print.
    assert_eq!(part("rail").size()[0], Length::from_nm(913_804_688));
    let printed = part("rail").size()[0].printed(build.plan.precision);
    assert_eq!(printed.inch, "35-63/64");
    assert_eq!(part("seat").size()[1], Length::from_inch(11, 2));
}

#[test]
fn a_panel_let_in_all_round_fills_its_grooves() {
    let text = r#"
plan "Tray" { revision "A" on 2026-01-15 }
material ply is sheet { thickness 12 mm; stock 2440 mm by 1220 mm }
material thin is sheet { thickness 6 mm; stock 2440 mm by 1220 mm }
part long from ply { length 400 mm; width 80 mm }
part end from ply { length from front.back to rear.front; width 80 mm }
part floor from thin { length from left.right to right.left; width from front.back to rear.front }
place front = long { length right; width up; left at 0 mm; front at 0 mm; bottom at 0 mm }
place rear  = long { length right; width up; left at 0 mm; back at 300 mm; bottom at 0 mm }
place left  = end { length back; width up; left at 0 mm; front at front.back; bottom at 0 mm }
place right = end { length back; width up; right at 400 mm; front at front.back; bottom at 0 mm }
place base  = floor { length right; width back; left at left.right; front at front.back; bottom at 10 mm }
join left, right to front, rear by glue
join base to front, rear, left, right by groove { depth 4 mm }
step "Glue" { add front, rear, left, right, base; say "Glue it." }
"#;
    let build = made(text, &Overrides::default());
    // 400 - 24 and 300 - 24 clear, 4 more on each edge.
    assert_eq!(size(&build, "floor"), [384.0, 284.0, 6.0]);
    let long = build.parts.iter().find(|part| part.name == "long").unwrap();
    let mut grooves = long.features.iter().filter_map(|feature| {
        if let model::FeatureShape::Pocket(pocket) = &feature.shape {
            return Some(*pocket);
        }
        None
    });
    let groove = grooves.next();
    // From 12 - 4 to 388 + 4 along the front, as long as the floor is there.
    let groove = groove.unwrap();
    assert_eq!(groove.first.low.mm(), 8.0);
    assert_eq!(groove.first.size().mm(), 384.0);
    assert_eq!(
        (groove.second.low.mm(), groove.second.size().mm()),
        (10.0, 6.0)
    );
}

#[test]
fn fasteners_are_counted_from_the_contacts() {
    let text = SHELF.replace(
        "by dado { depth 6 mm; glue }",
        "by screws using screw { count 4 }",
    ) + r#"hardware screw is wood_screw "Screw 4 x 50" { diameter 4 mm; length 50 mm }"#;
    let build = made(&text, &Overrides::default());
    // Three shelves, two sides, four screws each.
    assert_eq!(build.hardware[0].count, 24);
    let joint = &build.joints[0];
    let screw = joint.fasteners[0];
    // Through the side from its outer face, 50 mm long.
    let reach = (screw.to[0] - screw.from[0]).abs();
    assert_eq!(reach.mm(), 50.0);
    assert_eq!(screw.from[0].mm(), 0.0);
    // 280 mm of contact, 40 mm in from its ends.
    let along: Vec<f64> = joint
        .fasteners
        .iter()
        .map(|screw| screw.from[1].mm())
        .collect();
    assert_eq!(along.first().copied(), Some(40.0));
    assert_eq!(along.last().copied(), Some(240.0));
}
