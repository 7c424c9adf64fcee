//! Mitre: both pieces are cut at an angle, so that no end grain shows; a spline or keys across
//! the joint hold what end grain and glue cannot.

use super::bench::Bench;
use super::corner::corner;
use crate::build::piece::Piece;
use crate::build::types::{Fastener, HardwareKind};
use crate::geometry::{Axis, Direction, PartAxis, Side};
use crate::model::{FeatureShape, Slope, SlopeKind};
use crate::units::{Area, Length};

/// Cuts both pieces along the diagonal of the corner and sets the splines.
pub(super) fn make(bench: &mut Bench<'_, '_>) {
    let Some(corner) = corner(bench) else { return };
    let towards = bench.contact.direction;
    let span = bench.join.span;
    let inward = corner.outward.opposite();
    // Each piece is long on the outside of the corner.
    let coming = slope(
        bench.part,
        towards,
        inward,
        [corner.receiving, corner.coming],
        corner.receiving,
    );
    bench.part.cut(coming, span);
    let receiving = slope(
        bench.to,
        corner.outward,
        towards.opposite(),
        [corner.coming, corner.receiving],
        Length::ZERO,
    );
    bench.to.cut(receiving, span);
    let Some(run) = bench
        .contact
        .area
        .get(corner.along.index())
        .map(|s| s.size())
    else {
        return;
    };
    let slant = libm::hypot(corner.coming.mm(), corner.receiving.mm());
    bench.glue_area = area_mm2(slant * run.mm());
    splines(bench, corner.along, run);
}

fn area_mm2(mm2: f64) -> Area {
    let whole = Length::from_mm_f64(mm2.min(1e6));
    Area::from_nm2(i128::from(whole.nm()) * 1_000_000)
}

/// The cut of a piece whose end looks towards `end` and that is short towards `short`.
fn slope(
    piece: &Piece<'_>,
    end: Direction,
    short: Direction,
    [inset, run]: [Length; 2],
    grown: Length,
) -> FeatureShape {
    let (side, deep) = (piece.side(end), piece.side(short));
    let level = |of: Side, beyond: Length| {
        let size = piece.design.size.get(of.axis().index()).copied();
        if of.is_high() {
            size.unwrap_or_default() + beyond
        } else {
            -beyond
        }
    };
    let through = side.axis() == PartAxis::Thickness || deep.axis() == PartAxis::Thickness;
    FeatureShape::Slope(Slope {
        kind: if through {
            SlopeKind::Bevel
        } else {
            SlopeKind::Mitre
        },
        side,
        level: level(side, grown),
        deep,
        deep_level: level(deep, Length::ZERO),
        inset,
        run,
    })
}

/// One spline along the corner, or as many keys as the author wants; they lie across the cut.
fn splines(bench: &mut Bench<'_, '_>, along: Axis, run: Length) {
    let Some((id, _)) = bench.item(HardwareKind::Spline) else {
        return;
    };
    let count = bench.join.count.map_or(1, |(count, _)| count);
    let Some(stretch) = bench.contact.area.get(along.index()).copied() else {
        return;
    };
    let each = run / count;
    for number in 0..count {
        let [mut from, mut to] = [bench.contact.area.map(|area| area.middle()); 2];
        let low = stretch.low + each * number;
        for (end, at) in [(&mut from, low), (&mut to, low + each)] {
            if let Some(slot) = end.get_mut(along.index()) {
                *slot = at;
            }
        }
        bench.fasteners.push(Fastener {
            hardware: id,
            from,
            to,
            driven: along.high(),
        });
    }
}
