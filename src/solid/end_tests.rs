//! Slopes, tenons, centres of mass and parts in pieces, against closed formulas.

use std::f64::consts::{PI, SQRT_2};

use super::flat_measures;
use super::samples::{at, holes, mm, part, pocket, span};
use super::tests::{AROUND, BLOCK, block, check, found, solid};
use crate::build::Part;
use crate::geometry::{Interval, Side};
use crate::model::{ArrisForm, FeatureShape, PocketKind, Slope, SlopeKind, SplineSlot, Tenon};

/// A slope of the block of 200 by 100 by 20 mm.
pub(super) fn slope(kind: SlopeKind, side: Side, deep: Side, inset: f64, run: f64) -> FeatureShape {
    let level = |side: Side| {
        let size = [200.0, 100.0, 20.0][side.axis().index()];
        mm(if side.is_high() { size } else { 0.0 })
    };
    FeatureShape::Slope(Slope {
        kind,
        side,
        level: level(side),
        deep,
        deep_level: level(deep),
        inset: mm(inset),
        run: mm(run),
    })
}

fn mitre(inset: f64) -> FeatureShape {
    slope(SlopeKind::Mitre, Side::Head, Side::Far, inset, 100.0)
}

/// The block with a slope and a slot in its slanting face.
fn slotted(cut: FeatureShape, [across, along]: [Interval; 2], depth: f64) -> Part {
    let FeatureShape::Slope(slope) = cut else {
        return block(cut);
    };
    let depth = mm(depth);
    let slot = SplineSlot {
        slope,
        across,
        along,
        depth,
    };
    block(cut).cut(FeatureShape::SplineSlot(slot))
}

#[test]
fn a_slot_along_a_bevelled_end_is_a_block() {
    // 45 degrees through 20 mm; 4 wide, 9 deep, a third of the slant from the inner edge.
    let bevel = || slope(SlopeKind::Bevel, Side::Head, Side::Back, 20.0, 20.0);
    let slant = 20.0 * SQRT_2;
    let (volume, around) = (
        BLOCK - 20_000.0,
        AROUND - 2_000.0 - 2.0 * 200.0 - 2_000.0 + slant * 100.0,
    );
    check(block(bevel()), volume, around);
    let third = slant / 3.0;
    let through = slotted(
        bevel(),
        [span(third - 2.0, third + 2.0), span(0.0, 100.0)],
        9.0,
    );
    // Two walls more, and the slot’s section gone from both edges.
    check(
        through,
        volume - 4.0 * 9.0 * 100.0,
        around + 2.0 * 9.0 * 100.0 - 2.0 * 4.0 * 9.0,
    );
    let stopped = slotted(
        bevel(),
        [span(third - 2.0, third + 2.0), span(30.0, 70.0)],
        9.0,
    );
    check(
        stopped,
        volume - 4.0 * 9.0 * 40.0,
        around + 2.0 * 9.0 * 40.0 + 2.0 * 4.0 * 9.0,
    );
}

#[test]
fn a_slot_up_a_frames_mitre_leaves_by_both_edges() {
    let slant = 100.0 * SQRT_2;
    let (volume, around) = (
        BLOCK - 100_000.0,
        AROUND - 10_000.0 - 2_000.0 - 2_000.0 + slant * 20.0,
    );
    // 4 of the 20 thick, 10 deep square to the slant: a parallelogram over the width of 100.
    let section = 100.0 * 10.0 * SQRT_2;
    check(
        slotted(mitre(100.0), [span(0.0, slant), span(8.0, 12.0)], 10.0),
        volume - section * 4.0,
        // Two walls more; its floor is as large as its mouth; both edges lose 10 by the root of 2.
        around + 2.0 * section - 2.0 * 10.0 * SQRT_2 * 4.0,
    );
}

/// The centre of mass, against volumes with known centres.
fn check_centre(part: Part, pieces: &[(f64, [f64; 3])]) {
    let title = format!("{:?}", part.features);
    let centre = solid(part).measures.centre_mm().unwrap();
    let volume: f64 = pieces.iter().map(|piece| piece.0).sum();
    for (k, found) in centre.into_iter().enumerate() {
        let wanted = pieces.iter().map(|(v, at)| v * at[k]).sum::<f64>() / volume;
        assert!(
            (found - wanted).abs() < 1e-5,
            "{title}: {found} is not {wanted} along axis {k}"
        );
    }
}

const WHOLE: (f64, [f64; 3]) = (BLOCK, [100.0, 50.0, 10.0]);

#[test]
fn a_mitre_takes_a_triangle() {
    let root = 100.0 * SQRT_2;
    check(
        block(mitre(100.0)),
        BLOCK - 100_000.0,
        AROUND - 10_000.0 - 2_000.0 - 2_000.0 + root * 20.0,
    );
    check_centre(
        block(mitre(100.0)),
        &[
            WHOLE,
            (-100_000.0, [200.0 - 100.0 / 3.0, 200.0 / 3.0, 10.0]),
        ],
    );
    let FeatureShape::Slope(slope) = mitre(100.0) else {
        panic!("a slope")
    };
    assert!((slope.degrees() - 45.0).abs() < 1e-9);
    assert_eq!(slope.long(), Side::Near);
}

#[test]
fn bevels_and_tapers_take_wedges() {
    // 20 mm through and 5 mm back, over a width of 100 mm.
    check(
        block(slope(SlopeKind::Bevel, Side::Head, Side::Back, 5.0, 20.0)),
        BLOCK - 5_000.0,
        AROUND - 100.0 - 500.0 - 2_000.0 + 100.0 * 425f64.sqrt(),
    );
    // A rip at an angle along the far edge.
    check(
        block(slope(SlopeKind::Bevel, Side::Far, Side::Face, 8.0, 20.0)),
        BLOCK - 80.0 * 200.0,
        AROUND - 160.0 - 1_600.0 - 4_000.0 + 200.0 * 464f64.sqrt(),
    );
    // A leg: 10 mm off at the foot, out to nothing after 150 mm.
    let taper = || slope(SlopeKind::Taper, Side::Near, Side::Foot, 10.0, 150.0);
    check(
        block(taper()),
        BLOCK - 750.0 * 20.0,
        AROUND - 1_500.0 - 200.0 - 3_000.0 + 20.0 * 22_600f64.sqrt(),
    );
    check_centre(
        block(taper()),
        &[WHOLE, (-15_000.0, [50.0, 10.0 / 3.0, 10.0])],
    );
}

#[test]
fn a_slope_through_holes_leaves_a_closed_shell() {
    let through = FeatureShape::Holes(holes(Side::Face, 16.0, None, &[at(150.0, 50.0)]));
    let along = FeatureShape::Holes(holes(Side::Head, 8.0, Some(80.0), &[at(34.0, 10.0)]));
    let groove = FeatureShape::Pocket(pocket(
        PocketKind::Groove,
        Side::Face,
        span(0.0, 200.0),
        span(20.0, 26.0),
        6.0,
    ));
    for features in [
        vec![through.clone(), mitre(100.0)],
        vec![along.clone(), mitre(40.0)],
        vec![
            along.clone(),
            slope(SlopeKind::Bevel, Side::Head, Side::Face, 12.0, 20.0),
        ],
        vec![groove, through, along, mitre(70.0)],
    ] {
        let plain = part("Block", [200.0, 100.0, 20.0]);
        let drilled = features.into_iter().fold(plain, Part::cut);
        let solid = solid(drilled);
        let exact = solid.measures;
        let flat = flat_measures::of(&solid.fine);
        // Chords make each hole smaller by no more than 0.7 %.
        assert!((flat.volume_mm3 - exact.volume_mm3).abs() < 0.007 * 8_100.0);
        assert!((flat.surface_mm2 - exact.surface_mm2).abs() < 15.0);
        assert!(super::tests::open_mm2(&solid.fine) < 0.01);
    }
}

#[test]
fn a_tenon_keeps_its_section() {
    let tenon = |width: Interval| {
        FeatureShape::Tenon(Tenon {
            end: Side::Head,
            along: span(170.0, 200.0),
            width,
            thickness: span(4.0, 16.0),
        })
    };
    check(
        block(tenon(span(20.0, 80.0))),
        BLOCK - 30.0 * (2_000.0 - 720.0),
        // Shoulders and end together are the old end; round the tenon less than round the part.
        AROUND - 30.0 * (240.0 - 144.0),
    );
    check(
        block(tenon(span(0.0, 100.0))),
        BLOCK - 30.0 * 100.0 * 8.0,
        AROUND - 30.0 * (240.0 - 224.0),
    );
    check_centre(
        block(tenon(span(20.0, 80.0))),
        &[
            (170.0 * 2_000.0, [85.0, 50.0, 10.0]),
            (30.0 * 720.0, [185.0, 50.0, 10.0]),
        ],
    );
}

#[test]
fn centres_of_mass_follow_what_is_cut() {
    let disc = PI * 100.0;
    check_centre(
        block(FeatureShape::Holes(holes(
            Side::Face,
            20.0,
            Some(12.0),
            &[at(150.0, 30.0)],
        ))),
        &[WHOLE, (-disc * 12.0, [150.0, 30.0, 14.0])],
    );
    check_centre(
        block(FeatureShape::Holes(holes(
            Side::Head,
            10.0,
            Some(60.0),
            &[at(30.0, 10.0)],
        ))),
        &[WHOLE, (-PI * 25.0 * 60.0, [170.0, 30.0, 10.0])],
    );
    let mut sunk = holes(Side::Back, 6.0, None, &[at(40.0, 60.0)]);
    sunk.countersink = Some(mm(14.0));
    // A frustum from 7 to 3 over 4 mm, its centre by the textbook, and the bore above it.
    let frustum = PI * 4.0 * (49.0 + 21.0 + 9.0) / 3.0;
    let deep = (49.0 + 42.0 + 27.0) / (49.0 + 21.0 + 9.0);
    check_centre(
        block(FeatureShape::Holes(sunk)),
        &[
            WHOLE,
            (-frustum, [40.0, 60.0, deep]),
            (-PI * 9.0 * 16.0, [40.0, 60.0, 12.0]),
        ],
    );
    // A quarter round of radius 8: a square less a quarter of a disc.
    let arris = FeatureShape::Arris {
        sides: [Side::Far, Side::Face],
        size: mm(8.0),
        form: ArrisForm::Round,
    };
    let arm = 8.0 - 4.0 * 8.0 / (3.0 * PI);
    let quarter = PI * 16.0;
    let away = (64.0 * 4.0 - quarter * arm) / (64.0 - quarter);
    check_centre(
        block(arris),
        &[
            WHOLE,
            (
                -(64.0 - quarter) * 200.0,
                [100.0, 100.0 - away, 20.0 - away],
            ),
        ],
    );
}

#[test]
fn parts_in_pieces_are_found() {
    let groove = |side: Side, depth: f64| {
        let along = [span(0.0, 200.0), span(45.0, 55.0)];
        FeatureShape::Pocket(pocket(PocketKind::Groove, side, along[0], along[1], depth))
    };
    let both = |depth: f64| block(groove(Side::Face, depth)).cut(groove(Side::Back, depth));
    assert!(found(both(9.0)).is_empty());
    assert_eq!(found(both(10.0)), ["D005"]);
    let across = FeatureShape::Notch {
        along_length: span(90.0, 110.0),
        along_width: span(0.0, 100.0),
    };
    assert_eq!(found(block(across)), ["D005"]);
    // A slot that two tapers open at both its ends.
    let slot = FeatureShape::Notch {
        along_length: span(20.0, 200.0),
        along_width: span(40.0, 60.0),
    };
    let end = slope(SlopeKind::Mitre, Side::Foot, Side::Far, 90.0, 100.0);
    assert!(found(block(slot.clone())).is_empty());
    assert_eq!(found(block(slot).cut(end)), ["D005"]);
}

#[test]
fn slopes_stay_within_their_part() {
    let long = slope(SlopeKind::Taper, Side::Near, Side::Foot, 10.0, 250.0);
    assert_eq!(found(block(long)), ["D001"]);
    let steep = slope(SlopeKind::Mitre, Side::Head, Side::Far, 210.0, 100.0);
    assert_eq!(found(block(steep)), ["D002"]);
    assert!(found(block(mitre(200.0))).is_empty());
}

/// Every side of a part, in the order foot, head, near, far, back, face.
fn check_sides(part: Part, wanted: [f64; 6]) {
    let found = solid(part.clone()).side_areas_mm2(&part);
    for (side, (found, wanted)) in Side::ALL.into_iter().zip(found.into_iter().zip(wanted)) {
        assert!(
            (found - wanted).abs() < 1e-3,
            "{:?}: {found} is not {wanted} at the {}",
            part.features,
            side.word()
        );
    }
}

#[test]
fn sides_keep_what_is_not_cut() {
    assert_eq!(
        Side::ALL.map(Side::word),
        ["foot", "head", "near", "far", "back", "face"]
    );
    let plain = [2_000.0, 2_000.0, 4_000.0, 4_000.0, 20_000.0, 20_000.0];
    check_sides(part("Block", [200.0, 100.0, 20.0]), plain);
    let mut bored = holes(Side::Face, 20.0, None, &[at(60.0, 50.0), at(140.0, 50.0)]);
    bored.counterbore = Some((mm(32.0), mm(6.0)));
    let mut wanted = plain;
    wanted[4] -= 2.0 * PI * 100.0;
    wanted[5] -= 2.0 * PI * 256.0;
    check_sides(block(FeatureShape::Holes(bored)), wanted);
    let mut wanted = plain;
    wanted[1] -= PI * 16.0;
    let dowel = holes(Side::Head, 8.0, Some(30.0), &[at(50.0, 10.0)]);
    check_sides(block(FeatureShape::Holes(dowel)), wanted);
    // A mitre leaves no head and shortens the far edge, both broad sides lose a triangle.
    let mitred = [2_000.0, 0.0, 4_000.0, 2_000.0, 15_000.0, 15_000.0];
    check_sides(block(mitre(100.0)), mitred);
    // A rounded corner: four sides lose, two of them a square less a quarter of a disc.
    let corner = FeatureShape::Arris {
        sides: [Side::Head, Side::Far],
        size: mm(30.0),
        form: ArrisForm::Round,
    };
    let bite = 900.0 * (1.0 - PI / 4.0);
    let rounded = [
        2_000.0,
        1_400.0,
        4_000.0,
        3_400.0,
        20_000.0 - bite,
        20_000.0 - bite,
    ];
    check_sides(block(corner), rounded);
    let rabbet = pocket(
        PocketKind::Rabbet,
        Side::Face,
        span(0.0, 200.0),
        span(90.0, 100.0),
        8.0,
    );
    let stepped = [1_920.0, 1_920.0, 4_000.0, 2_400.0, 20_000.0, 18_000.0];
    check_sides(block(FeatureShape::Pocket(rabbet)), stepped);
}
