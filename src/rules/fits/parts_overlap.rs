//! Two parts are in one place.

use super::sweep::{common, near_pairs};
use std::collections::BTreeSet;

use crate::build::{Part, PlacedId, PlacedPart};
use crate::finding::{Finding, Findings, finding_pages};
use crate::geometry::{Axis, HalfSpace, Interval, PartAxis, clipped_volume_mm3};
use crate::model::{Feature, FeatureShape, Holes, Pocket, plane_axes};
use crate::rules::Facts;
use crate::units::Length;

finding_pages! {
    /// Two placed parts are in one place, and no joint, notch, channel or hole makes room.
    ///
    /// In the shop the second part does not go in. A joint that lets one part into another takes
    /// care of its own room: the parts are placed so that they touch.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place second = side { length up; width back; left at 10 mm; front at 0 mm; bottom at 0 mm }
    /// step "Stand them up" { add left, second; say "Stand both up." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place second = side { length up; width back; left at left.right; front at 0 mm; bottom at 0 mm }
    /// step "Stand them up" { add left, second; say "Stand both up." }
    /// ```
    ///
    /// Source: common practice, no source.
    F001 PARTS_OVERLAP Error "two parts in one place" "the second part does not go in";
}

/// Less than this in common is touching: ten micrometres, far below what a shop can measure.
const TOUCHING: Length = Length::from_nm(10_000);

/// Less than this in common is the play of a saw cut, in cubic millimetres.
const CLEAR_MM3: f64 = 1.0;

/// Compares every two pieces that are near each other.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    let build = facts.build;
    // Pairs that a joint names are measured where the joint is made.
    let joined: BTreeSet<(PlacedId, PlacedId)> = facts
        .model
        .joins
        .iter()
        .flat_map(|join| {
            join.parts
                .iter()
                .flat_map(|part| join.to.iter().map(|to| (part.0, to.0)))
        })
        .map(|(part, to)| (part.min(to), part.max(to)))
        .collect();
    near_pairs(&build.placed, Length::ZERO, |a, b| {
        let (Some(first), Some(second)) = (build.piece(a), build.piece(b)) else {
            return;
        };
        if joined.contains(&(a, b)) {
            return;
        }
        let Some(shared) = common(&first.body, &second.body) else {
            return;
        };
        let least = Axis::ALL
            .into_iter()
            .filter_map(|axis| Some((shared.get(axis.index())?.size(), axis)))
            .min();
        let Some((depth, axis)) = least.filter(|(depth, _)| *depth > TOUCHING) else {
            return;
        };
        let (Some(one), Some(two)) = (build.part_of(a), build.part_of(b)) else {
            return;
        };
        if makes_room(one, first, &shared) || makes_room(two, second, &shared) {
            return;
        }
        let mut cuts = slopes(one, first);
        cuts.extend(slopes(two, second));
        if !cuts.is_empty() && clipped_volume_mm3(&shared, &cuts) < CLEAR_MM3 {
            return;
        }
        let message = format!(
            "`{}` stands {} deep in `{}` {}",
            second.name,
            depth.in_both(),
            first.name,
            axis.way()
        );
        let middle = |piece: &PlacedPart| {
            piece
                .body
                .get(axis.index())
                .copied()
                .unwrap_or_default()
                .middle()
        };
        let (own, other) = if middle(second) >= middle(first) {
            (axis.low(), axis.high())
        } else {
            (axis.high(), axis.low())
        };
        findings.push(
            Finding::new(&PARTS_OVERLAP, second.span, message)
                .figure("overlap", depth)
                .related(first.span, format!("`{}` is here", first.name))
                .remedy(format!(
                    "locate it by a face: `{} at {}.{}`",
                    own.word(),
                    first.name,
                    other.word()
                )),
        );
    });
}

/// Whether a feature of a part takes away all of a stretch of the world.
fn makes_room(part: &Part, piece: &PlacedPart, shared: &[Interval; 3]) -> bool {
    let own = PartAxis::ALL.map(|axis| in_part_frame(part, piece, axis, shared));
    part.features.iter().any(|feature| match &feature.shape {
        FeatureShape::Notch {
            along_length,
            along_width,
        } => {
            let [length, width, _] = own;
            holds(*along_length, length) && holds(*along_width, width)
        }
        FeatureShape::Pocket(pocket) => pocket_holds(part, pocket, &own),
        FeatureShape::Holes(drilled) => drilled_away(drilled, &own),
        // Whether a curved outline leaves the place free is a question to its solid.
        FeatureShape::Outline(_) => true,
        // What slopes leave free is measured for both parts together.
        FeatureShape::Slope(_) | FeatureShape::SplineSlot(_) => false,
        FeatureShape::Tenon(tenon) => {
            let [length, width, thickness] = own;
            // Beside the tenon: past the shoulder, and clear of it across or through.
            holds(tenon.along, length)
                && (width.overlap(tenon.width).is_none()
                    || thickness.overlap(tenon.thickness).is_none())
        }
        FeatureShape::Arris { .. } | FeatureShape::PocketScrewHole(_) => false,
    })
}

/// What the slopes of a piece leave of the world.
fn slopes(part: &Part, piece: &PlacedPart) -> Vec<HalfSpace> {
    let of = |feature: &Feature| {
        let FeatureShape::Slope(slope) = &feature.shape else {
            return None;
        };
        let (inset, run) = (slope.inset.mm(), slope.run.mm());
        let length = libm::hypot(inset, run);
        let lines = [
            (slope.side, slope.level, run / length, inset),
            (slope.deep, slope.deep_level, inset / length, 0.0),
        ];
        let mut plane = HalfSpace {
            normal: [0.0; 3],
            offset: 0.0,
        };
        for (side, level, share, inside) in lines {
            let along = piece.orientation.direction(side.axis());
            let high = along.is_positive() == side.is_high();
            let position = in_world(part, piece, side.axis(), level).mm();
            let outward = if high { position } else { -position };
            if let Some(slot) = plane.normal.get_mut(along.axis().index()) {
                *slot = if high { share } else { -share };
            }
            plane.offset += (outward - inside) * share;
        }
        Some(plane)
    };
    part.features.iter().filter_map(of).collect()
}

/// Where a position along an axis of a part is in the world.
fn in_world(part: &Part, piece: &PlacedPart, axis: PartAxis, position: Length) -> Length {
    let direction = piece.orientation.direction(axis);
    let place = piece.place.get(direction.axis().index());
    let place = place.copied().unwrap_or_default();
    let start = part
        .extent
        .get(axis.index())
        .map_or(Length::ZERO, |extent| extent.low);
    if direction.is_positive() {
        place.low + (position - start)
    } else {
        place.high - (position - start)
    }
}

fn in_part_frame(
    part: &Part,
    piece: &PlacedPart,
    axis: PartAxis,
    shared: &[Interval; 3],
) -> Interval {
    let direction = piece.orientation.direction(axis);
    let index = direction.axis().index();
    let (Some(place), Some(world)) = (piece.place.get(index), shared.get(index)) else {
        return Interval::default();
    };
    let start = part
        .extent
        .get(axis.index())
        .map_or(Length::ZERO, |extent| extent.low);
    if direction.is_positive() {
        world.shifted(start - place.low)
    } else {
        Interval::new(place.high - world.high, place.high - world.low).shifted(start)
    }
}

fn holds(room: Interval, stretch: Interval) -> bool {
    room.low <= stretch.low + TOUCHING && stretch.high <= room.high + TOUCHING
}

fn pocket_holds(part: &Part, pocket: &Pocket, own: &[Interval; 3]) -> bool {
    let [x, y] = plane_axes(pocket.side);
    let stretch = |axis: PartAxis| own.get(axis.index()).copied().unwrap_or_default();
    let across = pocket.side.axis();
    let whole = part.extent.get(across.index()).copied().unwrap_or_default();
    let depth = if pocket.side.is_high() {
        Interval::new(whole.high - pocket.depth, whole.high)
    } else {
        Interval::new(whole.low, whole.low + pocket.depth)
    };
    holds(pocket.first, stretch(x))
        && holds(pocket.second, stretch(y))
        && holds(depth, stretch(across))
}

/// Whether a bar goes through one of the holes: a round section is given by the square around it.
fn drilled_away(holes: &Holes, own: &[Interval; 3]) -> bool {
    let [x, y] = plane_axes(holes.side);
    let stretch = |axis: PartAxis| own.get(axis.index()).copied().unwrap_or_default();
    let around = |at: Length| {
        let radius = holes.diameter.half();
        Interval::new(at - radius, at + radius)
    };
    holes
        .positions
        .iter()
        .any(|at| holds(around(at.x), stretch(x)) && holds(around(at.y), stretch(y)))
}
