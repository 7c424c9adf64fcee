//! Loose tenons: a row of mortises in each piece, facing each other.

use super::bench::{Bench, moved};
use super::inserted::{GLUE_ROOM, halve};
use crate::build::findings::FASTENERS_DO_NOT_FIT;
use crate::build::piece::Piece;
use crate::build::spacing::long_and_short;
use crate::build::types::{Fastener, HardwareKind};
use crate::finding::Finding;
use crate::geometry::{Direction, Interval};
use crate::model::{FeatureShape, Pocket, PocketKind};
use crate::units::Length;

/// Cuts the mortises and sets the tenons, broad side along the contact.
pub(super) fn make(bench: &mut Bench<'_, '_>) {
    let Some((id, tenon)) = bench.item(HardwareKind::LooseTenon) else {
        return;
    };
    let sizes = [tenon.width, tenon.thickness, tenon.length].map(Option::unwrap_or_default);
    let [width, thickness, length] = sizes;
    let Some([(long_axis, long), (short_axis, short)]) = long_and_short(&bench.contact) else {
        return;
    };
    if thickness >= short.size() || width >= long.size() {
        let message = "the tenon is larger than what the two parts have in common";
        bench.findings.push(
            Finding::new(&FASTENERS_DO_NOT_FIT, bench.join.kind_span, message)
                .figure("breadth of the tenon", width)
                .figure("length of the contact", long.size())
                .figure("thickness of the tenon", thickness)
                .figure("breadth of the contact", short.size()),
        );
        return;
    }
    let Some(points) = bench.points_on(long_axis, long, width / 2) else {
        return;
    };
    let Some(insertion) = halve(bench, length) else {
        return;
    };
    let towards = bench.contact.direction;
    bench.fasteners.extend(points.iter().map(|point| Fastener {
        hardware: id,
        from: moved(*point, towards.opposite(), insertion.part),
        to: moved(*point, towards, insertion.to),
        driven: towards,
    }));
    let around = |point: &[Length; 3]| {
        let mut area = bench.contact.area;
        for (axis, size) in [(long_axis, width), (short_axis, thickness)] {
            let at = point.get(axis.index()).copied().unwrap_or_default();
            if let Some(slot) = area.get_mut(axis.index()) {
                *slot = Interval::of(size).shifted(at - size.half());
            }
        }
        area
    };
    let areas: Vec<[Interval; 3]> = points.iter().map(around).collect();
    let span = bench.join.span;
    for area in &areas {
        let in_part = mortise(bench.part, towards, area, insertion.part);
        bench.part.cut(in_part, span);
        let in_to = mortise(bench.to, towards.opposite(), area, insertion.to);
        bench.to.cut(in_to, span);
    }
}

/// A mortise in the side of a piece that faces a direction.
fn mortise(
    piece: &Piece<'_>,
    facing: Direction,
    area: &[Interval; 3],
    depth: Length,
) -> FeatureShape {
    let side = piece.side(facing);
    let [first, second] = piece.on_side(side, area);
    FeatureShape::Pocket(Pocket {
        kind: PocketKind::Mortise,
        side,
        first,
        second,
        depth: depth + GLUE_ROOM,
        round_ends: true,
    })
}
