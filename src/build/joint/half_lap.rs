//! Half lap: two pieces cross in one plane, and each loses what the other fills.

use super::bench::Bench;
use crate::build::contact::crossing;
use crate::build::findings::{JOINT_LIE, NOT_TOUCHING};
use crate::build::types::Contact;
use crate::finding::{Finding, Findings};
use crate::geometry::{Axis, Direction, Interval, Side};
use crate::model::{FeatureShape, JoinDesign, Placement, Pocket, PocketKind};
use crate::source::Span;
use crate::units::Length;

/// Where two pieces cross, halved; the first lies on the side that its wood is not taken from.
pub(in crate::build) fn meeting(
    join: &JoinDesign,
    [part, to]: [&Placement; 2],
    span: Span,
    findings: &mut Findings,
) -> Option<Contact> {
    let towards = match join.from {
        Some((face, _)) => face,
        None => flush_way(&part.body, &to.body).low(),
    };
    let contact = crossing(&part.body, &to.body, towards);
    if contact.is_none() {
        let message = format!("`{}` and `{}` do not cross", part.name, to.name);
        findings.push(
            Finding::new(&NOT_TOUCHING, span, message)
                .related(part.span, format!("`{}` is placed here", part.name))
                .related(to.span, format!("`{}` is placed here", to.name))
                .because("each piece of a half lap takes the place of half of the other")
                .remedy("place both in one plane, so that each runs through the other"),
        );
    }
    contact
}

/// The axis along which each of two boxes loses half: the one whose faces are most nearly flush.
/// Flat pieces in one plane are halved through their thickness, pieces on edge through their
/// width.
fn flush_way(first: &[Interval; 3], second: &[Interval; 3]) -> Axis {
    let apart = |axis: &Axis| {
        let stretches = first.get(axis.index()).zip(second.get(axis.index()));
        stretches.map_or(Length::ZERO, |(a, b)| {
            (a.low - b.low).abs() + (a.high - b.high).abs()
        })
    };
    // Of equal ones the last, which for pieces that lie flat is the height.
    Axis::ALL
        .into_iter()
        .rev()
        .min_by_key(apart)
        .unwrap_or(Axis::High)
}

/// Halves both pieces where they cross.
pub(super) fn make(bench: &mut Bench<'_, '_>) {
    let towards = bench.contact.direction;
    let span = bench.join.span;
    let depths = [
        to_plane(&bench.part.placement.body, towards, &bench.contact),
        to_plane(&bench.to.placement.body, towards.opposite(), &bench.contact),
    ];
    let thicknesses = [
        bench.part.depth_along(towards),
        bench.to.depth_along(towards),
    ];
    if depths
        .iter()
        .zip(thicknesses)
        .any(|(depth, whole)| *depth >= whole)
    {
        let message = "one of these is cut away whole where they cross";
        bench.findings.push(
            Finding::new(&JOINT_LIE, bench.join.kind_span, message)
                .figure("depth of the cut in the first", depths[0])
                .figure("its thickness there", thicknesses[0])
                .figure("depth of the cut in the second", depths[1])
                .figure("its thickness there", thicknesses[1])
                .remedy("say `from …` with the face of the first piece that is cut"),
        );
        return;
    }
    let [in_part, in_to] = depths;
    let side = bench.part.side(towards);
    let cut = lap(side, bench.part.on_side(side, &bench.contact.area), in_part);
    bench.part.cut(cut, span);
    let side = bench.to.side(towards.opposite());
    let cut = lap(side, bench.to.on_side(side, &bench.contact.area), in_to);
    bench.to.cut(cut, span);
}

/// From the face of a box that looks towards `facing` to the plane in which the pieces meet.
fn to_plane(body: &[Interval; 3], facing: Direction, contact: &Contact) -> Length {
    let stretch = body.get(facing.axis().index()).copied().unwrap_or_default();
    if facing.is_positive() {
        stretch.high - contact.position
    } else {
        contact.position - stretch.low
    }
}

fn lap(side: Side, [first, second]: [Interval; 2], depth: Length) -> FeatureShape {
    FeatureShape::Pocket(Pocket {
        kind: PocketKind::Lap,
        side,
        first,
        second,
        depth,
        round_ends: false,
    })
}
