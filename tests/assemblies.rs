//! Sub-assemblies: where their parts come to stand, what is alike, and in which steps it is made.

use leafwright::build::Build;
use leafwright::geometry::{Handedness, Interval};
use leafwright::model::Overrides;
use leafwright::road;
use leafwright::source::Sources;

const HEAD: &str = r#"plan "Test piece" { revision "A" on 2026-01-15 }
material ply is sheet { thickness 20 mm; stock 2440 mm by 1220 mm }
material thin is sheet { thickness 10 mm; stock 2440 mm by 1220 mm }
hardware screw is wood_screw "Wood screw 4 x 45" { diameter 4 mm; length 45 mm }
part board from ply "Board" { length 1000 mm; width 500 mm }
subassembly corner(high: length = 300 mm from 100 mm to 600 mm, wood: material, held: hardware) "Corner" {
    part plate from wood "Plate" { length 400 mm; width 200 mm }
    part post from wood "Post" { length high - wood.thickness; width 100 mm; chamfer head.near by 5 mm }
    place foot = plate { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    place upright = post { length up; width back; left at 0 mm; front at 0 mm; bottom at foot.top }
    join foot to upright by screws using held { count 2 }
    step "Screw the corner" { add foot, upright; say "Screw {upright} on {foot}."; time 10 min }
}
"#;

fn checked(text: &str) -> Result<Build, Vec<String>> {
    let (sources, file) = Sources::single("test.wright", &format!("{HEAD}{text}"));
    let outcome = road::check(&sources, file, &Overrides::default());
    let found = outcome.findings.iter();
    let found: Vec<String> = found
        .map(|finding| format!("{} {}", finding.page.code, finding.message))
        .collect();
    let sound = outcome.value.sound;
    sound.map(|sound| sound.build().clone()).ok_or(found)
}

fn build(text: &str) -> Build {
    checked(text).unwrap()
}

/// Where a piece is, in millimetres: left, right, front, back, bottom, top.
fn place(build: &Build, name: &str) -> [f64; 6] {
    let piece = build.placed.iter().find(|piece| piece.name == name);
    let [x, y, z] = piece.unwrap().body;
    let ends = |stretch: Interval| [stretch.low.mm(), stretch.high.mm()];
    let ([a, b], [c, d], [e, f]) = (ends(x), ends(y), ends(z));
    [a, b, c, d, e, f]
}

const BASE: &str = r#"place base = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
"#;

#[test]
fn parts_stand_where_their_sub_assembly_does() {
    let build = build(&format!(
        r#"{BASE}
place one = corner(wood = ply, held = screw) {{ left at 100 mm; front at 50 mm; bottom at base.top }}
join one.foot to base by glue
step "All" {{ add base, one; say "Put {{one}} on {{base}}." }}"#
    ));
    assert_eq!(
        place(&build, "one.foot"),
        [100.0, 500.0, 50.0, 250.0, 20.0, 40.0]
    );
    // 300 mm high in all, 20 mm of it the plate.
    assert_eq!(
        place(&build, "one.upright"),
        [100.0, 120.0, 50.0, 150.0, 40.0, 320.0]
    );
}

#[test]
fn a_mirrored_one_is_turned_left_for_right_and_its_parts_share_their_letters() {
    let build = build(&format!(
        r#"{BASE}
place one = corner(wood = ply, held = screw) {{ left at 0 mm; front at 0 mm; bottom at base.top }}
place other = corner(wood = ply, held = screw) mirrored {{ right at base.right; front at 0 mm; bottom at base.top }}
join one.foot, other.foot to base by glue
step "All" {{ add base, one, other; say "Put them on." }}"#
    ));
    assert_eq!(
        place(&build, "other.foot"),
        [600.0, 1000.0, 0.0, 200.0, 20.0, 40.0]
    );
    assert_eq!(
        place(&build, "other.upright"),
        [980.0, 1000.0, 0.0, 100.0, 40.0, 320.0]
    );
    let part = |name: &str| build.placed.iter().find(|it| it.name == name).unwrap().part;
    assert_eq!(part("one.upright"), part("other.upright"));
    assert_eq!(part("one.foot"), part("other.foot"));
    assert_eq!(build.instances.len(), 2);
    assert_eq!(build.instances[0].group, build.instances[1].group);
    assert_eq!(build.instances[1].handedness, Handedness::Mirrored);
}

#[test]
fn a_turned_one_is_measured_in_the_frame_around_it() {
    let build = build(&format!(
        r#"{BASE}
place one = corner(wood = ply, held = screw) {{ front faces left; left at 0 mm; front at 0 mm; bottom at base.top }}
require one.right - one.left = 200 mm
require one.width = 400 mm because "its own width, however it stands"
require gap(one.upright.front, one.foot.back) = 20 mm
join one.foot to base by glue
step "All" {{ add base, one; say "Put {{one}} on {{base}}." }}"#
    ));
    // Its front looks left, so its left looks back: what was 400 mm across is 400 mm deep.
    assert_eq!(
        place(&build, "one.foot"),
        [0.0, 200.0, 0.0, 400.0, 20.0, 40.0]
    );
    assert_eq!(
        place(&build, "one.upright"),
        [0.0, 100.0, 380.0, 400.0, 40.0, 320.0]
    );
}

#[test]
fn what_is_alike_is_made_in_one_step_and_counted_for_all() {
    let build = build(&format!(
        r#"{BASE}
place corners[i in 1..2] = corner(wood = ply, held = screw) {{ left at (i - 1) * 420 mm; front at 0 mm; bottom at base.top }}
place tall = corner(high = 500 mm, wood = ply, held = screw) {{ left at 0 mm; front at 250 mm; bottom at base.top }}
join corners[1].foot, corners[2].foot, tall.foot to base by glue
step "First" {{ add base; say "Lay {{base}} down." }}
step "All" {{ add corners, tall; say "Put {{corners}} on." }}"#
    ));
    let titles: Vec<&str> = build.steps.iter().map(|step| step.title.as_str()).collect();
    assert_eq!(
        titles,
        ["First", "Screw the corner", "Screw the corner", "All"]
    );
    let (two, one, all) = (&build.steps[1], &build.steps[2], &build.steps[3]);
    assert_eq!((build.times(two), build.times(one)), (2, 1));
    assert_eq!((two.adds.len(), build.shown_adds(two).len()), (4, 2));
    assert_eq!((two.joints.len(), build.shown_joints(two).len()), (2, 1));
    // Two screws a corner; ten minutes each.
    let screws =
        |step: &leafwright::build::Step| step.hardware.iter().map(|(_, n)| *n).sum::<i64>();
    assert_eq!((screws(two), screws(one), screws(all)), (4, 2, 0));
    assert_eq!((two.seconds, one.seconds), (Some(1200), Some(600)));
    assert_eq!(build.hardware[0].count, 6);
    assert_eq!(all.adds.len(), 6);
    let labels: Vec<&str> = build
        .groups
        .iter()
        .map(|group| group.label.as_str())
        .collect();
    assert_eq!(labels, ["S1", "S2"]);
    // The foot is the same part in all three, the taller post another one.
    let counts: Vec<(&str, i64)> = build
        .parts
        .iter()
        .map(|part| (part.title.as_str(), part.pieces()))
        .collect();
    assert_eq!(
        counts,
        [("Board", 1), ("Plate", 3), ("Post", 2), ("Post", 1)]
    );
}

#[test]
fn one_in_another_is_made_first() {
    let build = build(
        r#"subassembly pair(wood: material, held: hardware) "Pair" {
    part tie from wood "Tie" { length 600 mm; width 60 mm }
    place near = corner(wood = wood, held = held) { left at 0 mm; front at 0 mm; bottom at 0 mm }
    place off = corner(wood = wood, held = held) mirrored { right at 1000 mm; front at 0 mm; bottom at 0 mm }
    place bar = tie { length right; width up; centre across at 500 mm; front at near.back; bottom at 0 mm }
    join bar to near.foot, off.foot by glue
    step "Join the pair" { add near, off, bar; say "Glue {bar} to {near} and {off}." }
}
place whole = pair(wood = ply, held = screw) { left at 0 mm; front at 0 mm; bottom at 0 mm }
place top = board { length right; width back; left at 0 mm; front at 0 mm; bottom at whole.top }
join top to whole.near.upright, whole.off.upright by glue
step "All" { add whole, top; say "Glue {top} on {whole}." }"#,
    );
    let titles: Vec<&str> = build.steps.iter().map(|step| step.title.as_str()).collect();
    assert_eq!(titles, ["Screw the corner", "Join the pair", "All"]);
    assert_eq!(
        place(&build, "whole.off.foot"),
        [600.0, 1000.0, 0.0, 200.0, 0.0, 20.0]
    );
    assert_eq!(
        place(&build, "top"),
        [0.0, 1000.0, 0.0, 500.0, 300.0, 320.0]
    );
    let inner = build
        .placed
        .iter()
        .find(|it| it.name == "whole.off.foot")
        .unwrap();
    let steps: Vec<Option<usize>> = inner.comings.iter().map(|it| it.step).collect();
    assert_eq!(steps, [Some(2), Some(1), Some(0)]);
}

#[test]
fn one_without_steps_comes_in_part_by_part() {
    let build = build(&format!(
        r#"{BASE}
subassembly stack(wood: material) "Stack" {{
    part block from wood "Block" {{ length 200 mm; width 100 mm }}
    place low = block {{ length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }}
    place high = block {{ length right; width back; left at 0 mm; front at 0 mm; bottom at low.top }}
    join high to low by glue
}}
place pile = stack(wood = thin) {{ left at 0 mm; front at 0 mm; bottom at base.top }}
join pile.low to base by glue
step "First" {{ add base, pile.low; say "Glue {{pile.low}} on {{base}}." }}
step "Second" {{ add pile.high; say "Glue {{pile.high}} on." }}"#
    ));
    assert_eq!(build.steps.len(), 2);
    assert_eq!(build.steps[1].adds.len(), 1);
    assert_eq!(build.steps[1].joints.len(), 1);
}

#[test]
fn what_is_wrong_with_what_is_given_is_told() {
    let cases = [
        ("corner(held = screw)", "N012 `one` is not given its `wood`"),
        (
            "corner(wood = ply, held = screw, hight = 200 mm)",
            "N002 `corner` takes no `hight`",
        ),
        (
            "corner(wood = ply, wood = thin, held = screw)",
            "N013 `wood` is given twice",
        ),
        (
            "corner(wood = screw, held = screw)",
            "N004 a material is needed here, this is an item of hardware",
        ),
        (
            "corner(wood = ply, held = screw, high = 3)",
            "N004 a length is needed here, this is a plain number",
        ),
        (
            "corner(wood = ply, held = screw, high = 900 mm)",
            "N010 `high` is 900 mm (about 35-7/16 in), and must be from 100 mm (about 3-15/16 in) to 600 mm (about 23-5/8 in)",
        ),
    ];
    for (placed, wanted) in cases {
        let found = checked(&format!(
            r#"place one = {placed} {{ left at 0 mm; front at 0 mm; bottom at 0 mm }}
step "All" {{ add one; say "Stand it there." }}"#
        ));
        assert_eq!(found.unwrap_err(), [wanted], "{placed}");
    }
}

#[test]
fn what_is_inside_stays_inside() {
    let standing = r#"place one = corner(wood = ply, held = screw) { left at 0 mm; front at 0 mm; bottom at base.top }"#;
    let cases = [
        (
            "let x = foot.top",
            "N002 `foot`: nothing is declared under this name",
        ),
        (
            "join one to base by glue",
            "N004 `one` is a sub-assembly; which of its parts is meant?",
        ),
        ("let x = one.leg", "N007 a placed part has no `leg`"),
    ];
    for (line, wanted) in cases {
        let found = checked(&format!(
            r#"{BASE}{standing}
{line}
step "All" {{ add base, one; say "Stand it there." }}"#
        ));
        let found = found.unwrap_err();
        assert!(
            found.iter().any(|told| told.starts_with(wanted)),
            "{line}: {found:?}"
        );
    }
    let found = checked(&format!(
        r#"{BASE}{standing}
join one.foot to base by glue
step "All" {{ add base, one.foot; say "Stand it there." }}"#
    ));
    assert!(
        found
            .unwrap_err()
            .iter()
            .any(|told| told.contains("comes in as a whole"))
    );
}

#[test]
fn a_sub_assembly_that_never_comes_in_is_told_once() {
    let found = checked(&format!(
        r#"{BASE}
place one = corner(wood = ply, held = screw) {{ left at 0 mm; front at 0 mm; bottom at base.top }}
step "All" {{ add base; say "Lay {{base}} down." }}"#
    ));
    let found = found.unwrap_err();
    let told: Vec<&String> = found
        .iter()
        .filter(|told| told.starts_with("C002"))
        .collect();
    assert_eq!(told, ["C002 no step adds `one`"]);
}
