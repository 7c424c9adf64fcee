//! Dowels: a row of blind holes in each piece, facing each other.

use super::inserted::{GLUE_ROOM, halve};
use super::screws::on_plane;
use super::{Bench, moved};
use crate::build::piece::Piece;
use crate::build::types::Fastener;
use crate::geometry::Direction;
use crate::model::{FeatureShape, HolePurpose, Holes};
use crate::units::Length;

/// Drills both pieces and sets the dowels.
pub(super) fn make(bench: &mut Bench<'_, '_>) {
    let Some((id, dowel)) = bench.item else {
        return;
    };
    let (diameter, length) = (
        dowel.diameter.unwrap_or_default(),
        dowel.length.unwrap_or_default(),
    );
    let Some(points) = bench.points_along(diameter) else {
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
    let span = bench.join.span;
    let row = |piece: &Piece<'_>, facing: Direction, depth: Length| {
        let side = piece.side(facing);
        FeatureShape::Holes(Holes {
            side,
            diameter,
            depth: Some(depth + GLUE_ROOM),
            counterbore: None,
            countersink: None,
            positions: on_plane(side, points.iter().map(|point| piece.point_in_part(point))),
            grid: None,
            purpose: HolePurpose::Dowel,
        })
    };
    let in_part = row(bench.part, towards, insertion.part);
    bench.part.cut(in_part, span);
    let in_to = row(bench.to, towards.opposite(), insertion.to);
    bench.to.cut(in_to, span);
}
