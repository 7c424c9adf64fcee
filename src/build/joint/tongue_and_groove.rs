//! Tongue and groove: an edge cut back to a tongue along its whole length, in a groove.

use super::bench::Bench;
use crate::build::findings::{JOINT_LIE, JOINT_SIZES};
use crate::build::spacing::long_and_short;
use crate::finding::Finding;
use crate::geometry::{Interval, PartAxis, Side};
use crate::model::{FeatureShape, Pocket, PocketKind, plane_axes};
use crate::units::{Area, Length};

/// Cuts the tongue and its groove.
pub(super) fn make(bench: &mut Bench<'_, '_>) {
    let towards = bench.contact.direction;
    let edge = bench.part.side(towards);
    if edge.axis() == PartAxis::Thickness {
        let message = "a tongue is cut on an edge or an end, and this is a broad side";
        bench
            .findings
            .push(Finding::new(&JOINT_LIE, bench.join.kind_span, message));
        return;
    }
    let Some([(_, long), (short_axis, short)]) = long_and_short(&bench.contact) else {
        return;
    };
    let receiving = bench.to.depth_along(towards);
    let (Some((depth, depth_span)), Some((tongue, tongue_span))) =
        (bench.join.depth, bench.join.thickness)
    else {
        let message = "a tongue and groove needs the tongue's depth and thickness";
        bench.findings.push(
            Finding::new(&JOINT_SIZES, bench.join.kind_span, message).remedy(format!(
                "add `{{ depth …; thickness … }}`; a third of the thickness, {}, is usual",
                (short.size() / 3).in_both()
            )),
        );
        return;
    };
    let (span, size, room) = if tongue >= short.size() {
        (tongue_span, tongue, short.size())
    } else {
        (depth_span, depth, receiving)
    };
    if size >= room {
        let message = format!(
            "this is {}, and there is room for {}",
            size.in_both(),
            room.in_both()
        );
        bench.findings.push(
            Finding::new(&JOINT_SIZES, span, message)
                .figure("size", size)
                .figure("room", room),
        );
        return;
    }
    let mut area = bench.contact.area;
    if let Some(slot) = area.get_mut(short_axis.index()) {
        *slot = Interval::of(tongue).shifted(short.middle() - tongue.half());
    }
    let span = bench.join.span;
    for cheek in cheeks(bench, edge, &area, depth) {
        bench.part.cut(FeatureShape::Pocket(cheek), span);
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
    bench.to.cut(FeatureShape::Pocket(groove), span);
    bench.glue_area = Area::from_nm2(bench.contact.size().nm2() + (long.size() * depth * 2).nm2());
}

/// The two steps that leave the tongue between them, on both broad sides of the coming piece.
fn cheeks(bench: &Bench<'_, '_>, edge: Side, tongue: &[Interval; 3], depth: Length) -> Vec<Pocket> {
    let axis = edge.axis();
    let size = bench.part.design.size.get(axis.index()).copied();
    let size = size.unwrap_or_default();
    let beyond = if edge.is_high() {
        Interval::new(size, size + depth)
    } else {
        Interval::new(-depth, Length::ZERO)
    };
    let middle = bench.part.in_part_frame(PartAxis::Thickness, tongue);
    let [_, _, thickness] = bench.part.design.size;
    [
        (Side::Back, middle.low),
        (Side::Face, thickness - middle.high),
    ]
    .into_iter()
    .filter(|(_, cut)| cut.is_positive())
    .map(|(side, cut)| {
        let stretches = plane_axes(side).map(|along| {
            if along == axis {
                beyond
            } else {
                bench
                    .part
                    .extent
                    .get(along.index())
                    .copied()
                    .unwrap_or_default()
            }
        });
        let [first, second] = stretches;
        Pocket {
            kind: PocketKind::Rabbet,
            side,
            first,
            second,
            depth: cut,
            round_ends: false,
        }
    })
    .collect()
}
