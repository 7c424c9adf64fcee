//! Mitre: both pieces are cut at an angle, so that no end grain shows; a spline or keys across
//! the joint hold what end grain and glue cannot.

use super::bench::{Bench, moved};
use super::corner::{Corner, corner};
use crate::build::piece::Piece;
use crate::build::types::{Fastener, HardwareKind};
use crate::geometry::{Axis, Direction, Interval, PartAxis, Side};
use crate::model::{FeatureShape, Slope, SlopeKind, SplineSlot};
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
    bench.part.cut(FeatureShape::Slope(coming), span);
    let receiving = slope(
        bench.to,
        corner.outward,
        towards.opposite(),
        [corner.coming, corner.receiving],
        Length::ZERO,
    );
    bench.to.cut(FeatureShape::Slope(receiving), span);
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
    splines(bench, corner, [coming, receiving]);
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
) -> Slope {
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
    Slope {
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
    }
}

/// Each half of a slot is deeper than half of its spline by this, for glue. Common practice, no source.
const ROOM_FOR_GLUE: Length = Length::from_nm(500_000);

/// One spline along the corner, or as many keys as the author wants, each in a slot that is cut into both
/// slanting faces.
///
/// In the corner of a case it lies along the corner, a third of the slant from the inside, where the wood
/// behind the face is the deepest; in a frame it lies up the slant in the middle of the thickness. Common
/// practice, no source.
fn splines(bench: &mut Bench<'_, '_>, corner: Corner, slopes: [Slope; 2]) {
    let Some((id, item)) = bench.item(HardwareKind::Spline) else {
        return;
    };
    let along = corner.along;
    let count = bench.join.count.map_or(1, |(count, _)| count);
    let Some(stretch) = bench.contact.area.get(along.index()).copied() else {
        return;
    };
    let thick = item.thickness.unwrap_or_default();
    let depth = item.width.unwrap_or_default().half() + ROOM_FOR_GLUE;
    let slant = Length::from_mm_f64(libm::hypot(corner.coming.mm(), corner.receiving.mm()));
    let inner = inner_edge(bench, corner);
    let each = stretch.size() / count;
    let up_the_slant = slopes.iter().all(|slope| slope.kind == SlopeKind::Mitre);
    let lies_in = |middle: Length| Interval::new(middle - thick.half(), middle + thick.half());
    let third = slant / 3;
    if !up_the_slant {
        // They lie end to end in one slot.
        slot(bench, slopes, [lies_in(third), stretch], depth, along);
    }
    for number in 0..count {
        let own = Interval::of(each).shifted(stretch.low + each * number);
        let [from, to] = if up_the_slant {
            let slanting = [Interval::of(slant), lies_in(own.middle())];
            slot(bench, slopes, slanting, depth, along);
            [0, 3].map(|thirds| inner.up(thirds, own.middle()))
        } else {
            [own.low, own.high].map(|at| inner.up(1, at))
        };
        bench.fasteners.push(Fastener {
            hardware: id,
            from,
            to,
            driven: along.high(),
        });
    }
}

/// Cuts the two halves of a slot: up the slant from its inner edge, and along the corner.
fn slot(
    bench: &mut Bench<'_, '_>,
    slopes: [Slope; 2],
    [across, run]: [Interval; 2],
    depth: Length,
    along: Axis,
) {
    let mut stretch = bench.contact.area;
    if let Some(place) = stretch.get_mut(along.index()) {
        *place = run;
    }
    let span = bench.join.span;
    for (piece, slope) in [&mut *bench.part, &mut *bench.to].into_iter().zip(slopes) {
        let axis = piece.orientation().part_axis(along);
        let half = SplineSlot {
            slope,
            across,
            along: piece.in_part_frame(axis, &stretch),
            depth,
        };
        piece.cut(FeatureShape::SplineSlot(half), span);
    }
}

/// The inner edge of the slanting faces, and the way from it to the outer one.
struct InnerEdge {
    at: [Length; 3],
    corner: Corner,
    towards: Direction,
}

fn inner_edge(bench: &Bench<'_, '_>, corner: Corner) -> InnerEdge {
    let area = bench.contact.area;
    let mut at = area.map(|reach| reach.middle());
    let outward = corner.outward;
    if let (Some(slot), Some(reach)) = (
        at.get_mut(outward.axis().index()),
        area.get(outward.axis().index()),
    ) {
        *slot = if outward.is_positive() {
            reach.low
        } else {
            reach.high
        };
    }
    InnerEdge {
        at,
        corner,
        towards: bench.contact.direction,
    }
}

impl InnerEdge {
    /// A point so many thirds up the slant, at a place along the corner.
    fn up(&self, thirds: i64, place: Length) -> [Length; 3] {
        let corner = self.corner;
        let on = moved(self.at, self.towards, corner.receiving * thirds / 3);
        let mut on = moved(on, corner.outward, corner.coming * thirds / 3);
        if let Some(slot) = on.get_mut(corner.along.index()) {
            *slot = place;
        }
        on
    }
}
