//! What dadoes, grooves and rabbets have in common: a channel of the contact's shape, and a
//! coming piece that grows by its depth.

use super::Bench;
use crate::build::findings::{CHANNEL_DEPTH, RABBET_OFF_EDGE};
use crate::build::piece::Piece;
use crate::build::types::Contact;
use crate::finding::Finding;
use crate::geometry::{Axis, Interval, Side};
use crate::model::{FeatureShape, JoinDesign, Pocket, PocketKind, plane_axes};
use crate::units::Length;

/// Where the channel must lie.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Reach {
    /// Wherever the pieces touch.
    AsTouching,
    /// Along an edge or end of the receiving piece.
    AlongAnEdge,
}

/// Lets the coming piece reach the floor of its channel.
pub(super) fn grow(join: &JoinDesign, contact: &Contact, part: &mut Piece<'_>) {
    if let Some((depth, _)) = join.depth {
        // A panel that must be free to swell stays short of the floor of its groove.
        let play = join.play.map_or(Length::ZERO, |(play, _)| play);
        let reach = (depth - play).max(Length::ZERO);
        part.grow(part.side(contact.direction), reach + contact.gap);
    }
}

/// Cuts the channel into the receiving piece.
pub(super) fn cut(bench: &mut Bench<'_, '_>, kind: PocketKind, reach: Reach) {
    let direction = bench.contact.direction;
    let thickness = bench.to.depth_along(direction);
    let Some((depth, depth_span)) = bench.join.depth else {
        let message = format!("a {} needs a depth", bench.join.kind.word());
        bench.findings.push(
            Finding::new(&CHANNEL_DEPTH, bench.join.kind_span, message)
                .figure("thickness there", thickness)
                .because("the depth says how far the part is let in, and how much longer it is cut")
                .remedy("add `{ depth 6 mm }`; a third of the thickness is usual"),
        );
        return;
    };
    if depth >= thickness {
        let message = format!(
            "this is {} deep, and the part is {} thick there",
            depth.in_both(),
            thickness.in_both()
        );
        bench.findings.push(
            Finding::new(&CHANNEL_DEPTH, depth_span, message)
                .figure("depth", depth)
                .figure("thickness there", thickness)
                .remedy("a third of the thickness is usual"),
        );
        return;
    }
    let side = bench.to.side(direction.opposite());
    let touching = bench.to.on_side(side, &bench.contact.area);
    if reach == Reach::AlongAnEdge && !reaches_an_edge(bench, side, touching) {
        return;
    }
    let [first, second] = bench.to.on_side(side, &shared_as_made(bench));
    let pocket = Pocket {
        kind,
        side,
        first,
        second,
        depth,
        round_ends: false,
    };
    bench.to.cut(FeatureShape::Pocket(pocket), bench.join.span);
}

/// What the pieces have in common as they are made: the contact, and beyond it what other joints
/// add to the coming piece.
fn shared_as_made(bench: &Bench<'_, '_>) -> [Interval; 3] {
    let mut area = bench.contact.area;
    let (part, to) = (bench.part.place(), bench.to.place());
    for axis in Axis::ALL
        .into_iter()
        .filter(|axis| *axis != bench.contact.direction.axis())
    {
        let stretches = part.get(axis.index()).zip(to.get(axis.index()));
        let shared = stretches.and_then(|(a, b)| a.overlap(*b));
        if let (Some(shared), Some(slot)) = (shared, area.get_mut(axis.index())) {
            *slot = shared;
        }
    }
    area
}

/// Whether a channel lies along an edge of the receiving piece, or the finding that it does not.
fn reaches_an_edge(bench: &mut Bench<'_, '_>, side: Side, stretches: [Interval; 2]) -> bool {
    // The narrow way across the channel is the one that must end at an edge.
    let across = plane_axes(side)
        .into_iter()
        .zip(stretches)
        .min_by_key(|(_, s)| s.size());
    let Some((axis, stretch)) = across else {
        return false;
    };
    let size = bench
        .to
        .design
        .size
        .get(axis.index())
        .copied()
        .unwrap_or_default();
    let distance = stretch.low.min(size - stretch.high);
    if !distance.is_positive() {
        return true;
    }
    let message = format!(
        "this rabbet would lie {} from the nearest edge",
        distance.in_both()
    );
    bench.findings.push(
        Finding::new(&RABBET_OFF_EDGE, bench.join.kind_span, message)
            .figure("distance from the edge", distance)
            .remedy("let the part touch along the edge, or join by dado or groove"),
    );
    false
}
