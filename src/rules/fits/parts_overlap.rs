//! Two parts are in one place.

use super::sweep::{common, near_pairs};
use std::collections::BTreeSet;

use crate::build::{Part, PlacedId, PlacedPart};
use crate::finding::{Finding, Findings, finding_pages};
use crate::geometry::{Axis, Interval, PartAxis};
use crate::model::{FeatureShape, Holes, Pocket, plane_axes};
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
        FeatureShape::Arris { .. } | FeatureShape::PocketScrewHole(_) => false,
    })
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
