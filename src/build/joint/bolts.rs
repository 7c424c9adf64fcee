//! Bolts into threaded inserts: a joint that comes apart.

use super::bench::{Bench, Passing, moved};
use super::holes::Bore;
use crate::build::drilling::{bolt_clearance, insert_hole};
use crate::build::types::{Fastener, HardwareKind};
use crate::model::HolePurpose;
use crate::units::Length;

/// Room under an insert (ref: fasteners#M10 [P]: depth of the hole = insert + 1 to 2 mm).
const UNDER_INSERT: Length = Length::from_mm(1);

/// Drills both pieces, sets inserts and bolts.
pub(super) fn make(bench: &mut Bench<'_, '_>) {
    let (Some((bolt_id, bolt)), Some((insert_id, insert))) = (
        bench.item(HardwareKind::Bolt),
        bench.item(HardwareKind::Insert),
    ) else {
        return;
    };
    let Passing {
        through_part,
        driven,
        thickness,
    } = bench.passing();
    let hole = insert_hole(insert);
    let Some(points) = bench.points_along(hole) else {
        return;
    };
    let heads: Vec<[Length; 3]> = points
        .iter()
        .map(|point| moved(*point, driven.opposite(), thickness))
        .collect();
    let (bolt_length, insert_length) = (
        bolt.length.unwrap_or_default(),
        insert.length.unwrap_or_default(),
    );
    for (head, point) in heads.iter().zip(&points) {
        bench.fasteners.push(Fastener {
            hardware: bolt_id,
            from: *head,
            to: moved(*head, driven, bolt_length),
            driven,
        });
        bench.fasteners.push(Fastener {
            hardware: insert_id,
            from: *point,
            to: moved(*point, driven, insert_length),
            driven,
        });
    }
    let span = bench.join.span;
    let (first, second) = if through_part {
        (&mut *bench.part, &mut *bench.to)
    } else {
        (&mut *bench.to, &mut *bench.part)
    };
    let clearance = Bore::plain(HolePurpose::Bolt, bolt_clearance(bolt), None);
    let row = clearance.row(first, driven.opposite(), &heads);
    first.cut(row, span);
    // The bolt's end needs its room behind the insert.
    let reach = insert_length.max(bolt_length - thickness) + UNDER_INSERT;
    let depth = reach.min(second.depth_along(driven) - UNDER_INSERT);
    let row =
        Bore::plain(HolePurpose::Insert, hole, Some(depth)).row(second, driven.opposite(), &points);
    second.cut(row, span);
}
