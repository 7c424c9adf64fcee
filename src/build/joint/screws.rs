//! Screws through one piece into the other: a clearance hole with a countersink in the first, a
//! pilot hole in the second.

use super::{Bench, moved};
use crate::build::drilling::drilling;
use crate::build::types::Fastener;
use crate::geometry::{PlanePoint, Side};
use crate::model::{FeatureShape, HolePurpose, Holes, plane_axes};
use crate::units::Length;

/// Drills both pieces and sets the screws.
pub(super) fn make(bench: &mut Bench<'_, '_>) {
    let Some((id, screw)) = bench.item else {
        return;
    };
    let holes = drilling(screw);
    let length = screw.length.unwrap_or_default();
    let towards = bench.contact.direction;
    let (part_depth, to_depth) = (
        bench.part.depth_along(towards),
        bench.to.depth_along(towards),
    );
    // The thinner piece is the one a screw passes through, unless the author says otherwise.
    let through_part = if bench.join.through.contains(&bench.part_id) {
        true
    } else if bench.join.through.contains(&bench.to_id) {
        false
    } else {
        part_depth <= to_depth
    };
    let (driven, thickness) = if through_part {
        (towards, part_depth)
    } else {
        (towards.opposite(), to_depth)
    };
    let Some(points) = bench.points_along(holes.clearance) else {
        return;
    };
    let heads: Vec<[Length; 3]> = points
        .iter()
        .map(|point| moved(*point, driven.opposite(), thickness))
        .collect();
    bench.fasteners.extend(heads.iter().map(|head| Fastener {
        hardware: id,
        from: *head,
        to: moved(*head, driven, length),
        driven,
    }));
    let span = bench.join.span;
    let (first, second) = if through_part {
        (&mut *bench.part, &mut *bench.to)
    } else {
        (&mut *bench.to, &mut *bench.part)
    };
    let entry = first.side(driven.opposite());
    let positions = on_plane(entry, heads.iter().map(|head| first.point_in_part(head)));
    first.cut(
        FeatureShape::Holes(Holes {
            side: entry,
            diameter: holes.clearance,
            depth: None,
            counterbore: None,
            countersink: Some(holes.head),
            positions,
            grid: None,
            purpose: HolePurpose::Clearance,
        }),
        span,
    );
    let bite = length - thickness;
    if bite.is_positive() {
        let entry = second.side(driven.opposite());
        let positions = on_plane(entry, points.iter().map(|at| second.point_in_part(at)));
        let limit = second.depth_along(driven);
        second.cut(
            FeatureShape::Holes(Holes {
                side: entry,
                diameter: holes.pilot,
                depth: Some(bite.min(limit)),
                counterbore: None,
                countersink: None,
                positions,
                grid: None,
                purpose: HolePurpose::Pilot,
            }),
            span,
        );
    }
}

/// Points of the part's frame as positions in the plane of a side.
pub(super) fn on_plane(side: Side, points: impl Iterator<Item = [Length; 3]>) -> Vec<PlanePoint> {
    let [x, y] = plane_axes(side);
    points
        .map(|point| {
            let at = |index: usize| point.get(index).copied().unwrap_or_default();
            PlanePoint::new(at(x.index()), at(y.index()))
        })
        .collect()
}
