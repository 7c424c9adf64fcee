//! Hinges along an edge; with a depth, their leaves are let into both pieces.

use super::bench::{Bench, moved};
use crate::build::findings::JOINT_SIZES;
use crate::build::spacing::long_and_short;
use crate::build::types::{Fastener, HardwareKind};
use crate::finding::Finding;
use crate::geometry::{Direction, Interval};
use crate::model::{FeatureShape, Pocket, PocketKind};
use crate::units::Length;

/// A door longer than this gets a third hinge (common practice, no source).
const THIRD_HINGE: Length = Length::from_mm(1_000);

/// Sets the hinges and lets their leaves in.
pub(super) fn make(bench: &mut Bench<'_, '_>) {
    let Some((id, hinge)) = bench.item(HardwareKind::Hinge) else {
        return;
    };
    let Some([(axis, long), (short_axis, short)]) = long_and_short(&bench.contact) else {
        return;
    };
    let length = hinge.length.unwrap_or_default();
    if length * 2 > long.size() {
        let message = "two hinges do not fit along this edge";
        bench.findings.push(
            Finding::new(&JOINT_SIZES, bench.join.kind_span, message)
                .figure("length of a hinge", length)
                .figure("length of the edge", long.size())
                .remedy("use shorter hinges"),
        );
        return;
    }
    let count = bench.join.count.map_or_else(
        || if long.size() > THIRD_HINGE { 3 } else { 2 },
        |(count, _)| count,
    );
    let inset = bench.join.inset.map_or_else(
        || length.max(long.size() / 8).min(long.size() / 4),
        |(inset, _)| inset,
    );
    let between = long.size() - inset * 2;
    let middle = bench.contact.area.map(|area| area.middle());
    let towards = bench.contact.direction;
    let span = bench.join.span;
    let places = [bench.part.place(), bench.to.place()];
    let at_high = bench.contact.swings_at_high(&places, short_axis);
    for number in 0..count {
        let at = if count == 1 {
            long.middle()
        } else {
            long.low + inset + between * number / (count - 1)
        };
        let mut centre = middle;
        if let Some(slot) = centre.get_mut(axis.index()) {
            *slot = at;
        }
        bench.fasteners.push(Fastener {
            hardware: id,
            from: moved(centre, axis.low(), length.half()),
            to: moved(centre, axis.high(), length.half()),
            driven: towards,
        });
        let Some((depth, _)) = bench.join.depth else {
            continue;
        };
        let mut leaf = bench.contact.area;
        let width = hinge.width.unwrap_or(short.size()).min(short.size());
        let from = if at_high {
            short.high - width
        } else {
            short.low
        };
        for (along, stretch) in [
            (axis, Interval::of(length).shifted(at - length.half())),
            (short_axis, Interval::of(width).shifted(from)),
        ] {
            if let Some(slot) = leaf.get_mut(along.index()) {
                *slot = stretch;
            }
        }
        let sides: [(_, Direction); 2] = [
            (&mut *bench.part, towards),
            (&mut *bench.to, towards.opposite()),
        ];
        for (piece, facing) in sides {
            let side = piece.side(facing);
            let [first, second] = piece.on_side(side, &leaf);
            let recess = Pocket {
                kind: PocketKind::Recess,
                side,
                first,
                second,
                depth,
                round_ends: false,
            };
            piece.cut(FeatureShape::Pocket(recess), span);
        }
    }
}
