//! Dowels: a row of blind holes in each piece, facing each other.

use super::bench::{Bench, moved};
use super::holes::Bore;
use super::inserted::{GLUE_ROOM, halve};
use crate::build::types::{Fastener, HardwareKind};
use crate::model::HolePurpose;

/// Drills both pieces and sets the dowels.
pub(super) fn make(bench: &mut Bench<'_, '_>) {
    let Some((id, dowel)) = bench.item(HardwareKind::Dowel) else {
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
    let hole = |depth| Bore::plain(HolePurpose::Dowel, diameter, Some(depth + GLUE_ROOM));
    let in_part = hole(insertion.part).row(bench.part, towards, &points);
    bench.part.cut(in_part, span);
    let in_to = hole(insertion.to).row(bench.to, towards.opposite(), &points);
    bench.to.cut(in_to, span);
}
