//! Nails and brads: driven through one piece into the other, with a pilot hole where the nail
//! states one.

use super::bench::{Bench, Passing, moved};
use super::holes::Bore;
use crate::build::types::{Fastener, HardwareKind};
use crate::model::HolePurpose;
use crate::units::Length;

/// Sets the nails, and drills for them where the author wants it.
pub(super) fn make(bench: &mut Bench<'_, '_>) {
    let Some((id, nail)) = bench.item(HardwareKind::Nail) else {
        return;
    };
    let length = nail.length.unwrap_or_default();
    let Passing {
        through_part,
        driven,
        thickness,
    } = bench.passing();
    let Some(points) = bench.points_along(nail.diameter.unwrap_or_default()) else {
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
    let Some(pilot) = nail.pilot else { return };
    let span = bench.join.span;
    let (first, second) = if through_part {
        (&mut *bench.part, &mut *bench.to)
    } else {
        (&mut *bench.to, &mut *bench.part)
    };
    let row = Bore::plain(HolePurpose::Pilot, pilot, None).row(first, driven.opposite(), &heads);
    first.cut(row, span);
    let bite = length - thickness;
    if bite.is_positive() {
        let depth = bite.min(second.depth_along(driven));
        let row = Bore::plain(HolePurpose::Pilot, pilot, Some(depth)).row(
            second,
            driven.opposite(),
            &points,
        );
        second.cut(row, span);
    }
}
