//! Wood strips: a strip stands in a groove of the other piece, which slides on it. Both are placed
//! as they are: the strip reaches into the other piece as deep as the groove is to hold it.

use super::bench::Bench;
use crate::build::contact::crossing;
use crate::build::findings::{JOINT_SIZES, NOT_TOUCHING};
use crate::build::spacing::long_and_short;
use crate::build::types::Contact;
use crate::finding::{Finding, Findings};
use crate::geometry::{Axis, Interval};
use crate::model::{FeatureShape, Placement, Pocket, PocketKind};
use crate::source::Span;
use crate::units::Length;

/// How much wider than the strip the groove is where nothing else is said (ref:
/// layout-practice#P26 [P]: 2 to 3 mm of play in height on wooden runners).
const USUAL_PLAY: Length = Length::from_mm(2);
/// Room between the strip and the floor of its groove (ref: layout-practice#P26 [P]: 1.5 to 2 mm
/// of play from side to side, halved).
const BESIDE: Length = Length::from_mm(1);

/// The mouth of the groove: where the strip enters the other piece.
pub(in crate::build) fn meeting(
    [strip, to]: [&Placement; 2],
    span: Span,
    findings: &mut Findings,
) -> Option<Contact> {
    let mut entered: Option<(Length, Contact)> = None;
    for axis in Axis::ALL {
        let (Some(own), Some(other)) = (strip.body.get(axis.index()), to.body.get(axis.index()))
        else {
            continue;
        };
        // It stands out on one side.
        let (direction, position) = if own.low < other.low && own.high < other.high {
            (axis.high(), other.low)
        } else if own.high > other.high && own.low > other.low {
            (axis.low(), other.high)
        } else {
            continue;
        };
        let (Some(mut contact), Some(depth)) = (
            crossing(&strip.body, &to.body, direction),
            own.overlap(*other).map(Interval::size),
        ) else {
            continue;
        };
        contact.position = position;
        if let Some(flat) = contact.area.get_mut(axis.index()) {
            (flat.low, flat.high) = (position, position);
        }
        if entered.is_none_or(|(least, _)| depth < least) {
            entered = Some((depth, contact));
        }
    }
    if entered.is_none() {
        let message = format!("`{}` does not reach into `{}`", strip.name, to.name);
        findings.push(
            Finding::new(&NOT_TOUCHING, span, message)
                .related(strip.span, format!("`{}` is placed here", strip.name))
                .related(to.span, format!("`{}` is placed here", to.name))
                .because("a part slides on a strip that stands in its groove")
                .remedy(
                    "place the strip so that it stands a third of the thickness in the other part",
                ),
        );
    }
    entered.map(|(_, contact)| contact)
}

/// Cuts the groove, wider than the strip by its play and a little deeper than it reaches.
pub(super) fn make(bench: &mut Bench<'_, '_>) {
    let towards = bench.contact.direction;
    let thickness = bench.to.depth_along(towards);
    let strip = bench.part.placement.body;
    let Some(tip) = strip.get(towards.axis().index()).map(|reach| {
        if towards.is_positive() {
            reach.high - bench.contact.position
        } else {
            bench.contact.position - reach.low
        }
    }) else {
        return;
    };
    let depth = tip + BESIDE;
    if depth >= thickness {
        let message = "the strip's groove would go through the part";
        bench.findings.push(
            Finding::new(&JOINT_SIZES, bench.join.kind_span, message)
                .figure("depth of the groove", depth)
                .figure("thickness there", thickness)
                .remedy("let the strip reach less deep; half the thickness at most"),
        );
        return;
    }
    let play = bench.join.play.map_or(USUAL_PLAY, |(play, _)| play);
    let Some([_, (axis, short)]) = long_and_short(&bench.contact) else {
        return;
    };
    let mut area = bench.contact.area;
    if let Some(slot) = area.get_mut(axis.index()) {
        slot.low = short.low - play.half();
        slot.high = short.high + (play - play.half());
    }
    let side = bench.to.side(towards.opposite());
    let [first, second] = bench.to.on_side(side, &area);
    let groove = Pocket {
        kind: PocketKind::Groove,
        side,
        first,
        second,
        depth,
        round_ends: false,
    };
    bench.to.cut(FeatureShape::Pocket(groove), bench.join.span);
}
