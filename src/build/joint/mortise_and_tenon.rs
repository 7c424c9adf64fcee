//! Mortise and tenon: the coming piece's end is cut back to a tenon, which fills a mortise.

use super::bench::Bench;
use super::inserted::GLUE_ROOM;
use crate::build::findings::{JOINT_LIE, JOINT_SIZES};
use crate::build::spacing::long_and_short;
use crate::finding::Finding;
use crate::geometry::{Interval, PartAxis};
use crate::model::{FeatureShape, Pocket, PocketKind, Tenon};
use crate::units::{Area, Length};

/// Cuts the tenon and its mortise.
pub(super) fn make(bench: &mut Bench<'_, '_>) {
    let towards = bench.contact.direction;
    let end = bench.part.side(towards);
    if end.axis() != PartAxis::Length {
        let message = format!(
            "a tenon is cut on an end, and this is the {} side",
            end.word()
        );
        bench.findings.push(
            Finding::new(&JOINT_LIE, bench.join.kind_span, message)
                .because("a tenon whose grain runs across it breaks off at the shoulder")
                .remedy(
                    "let the part's length run into the other part, or join by tongue_and_groove",
                ),
        );
        return;
    }
    let Some((depth, (width, thickness))) = sizes(bench) else {
        return;
    };
    let Some([(long_axis, long), (short_axis, short)]) = long_and_short(&bench.contact) else {
        return;
    };
    // In the middle of what the pieces have in common.
    let mut area = bench.contact.area;
    for (axis, stretch, size) in [(long_axis, long, width), (short_axis, short, thickness)] {
        if let Some(slot) = area.get_mut(axis.index()) {
            *slot = Interval::of(size).shifted(stretch.middle() - size.half());
        }
    }
    let [first, second] = bench.part.on_side(end, &area);
    let size = bench.part.design.size[0];
    let along = if end.is_high() {
        Interval::new(size, size + depth)
    } else {
        Interval::new(-depth, Length::ZERO)
    };
    let span = bench.join.span;
    let tenon = Tenon {
        end,
        along,
        width: first,
        thickness: second,
    };
    bench.part.cut(FeatureShape::Tenon(tenon), span);
    let side = bench.to.side(towards.opposite());
    let [first, second] = bench.to.on_side(side, &area);
    let mortise = if depth == bench.to.depth_along(towards) {
        FeatureShape::Notch {
            along_length: first,
            along_width: second,
        }
    } else {
        FeatureShape::Pocket(Pocket {
            kind: PocketKind::Mortise,
            side,
            first,
            second,
            depth: depth + GLUE_ROOM,
            round_ends: false,
        })
    };
    bench.to.cut(mortise, span);
    // Cheeks and edges of the tenon, and the shoulders.
    let round: Length = (width + thickness) * 2;
    let shoulders = bench.contact.size().nm2() - (width * thickness).nm2();
    bench.glue_area = Area::from_nm2((round * depth).nm2() + shoulders.max(0));
}

/// Length, width and thickness of the tenon, or the finding that they are lacking or too large.
fn sizes(bench: &mut Bench<'_, '_>) -> Option<(Length, (Length, Length))> {
    let towards = bench.contact.direction;
    let receiving = bench.to.depth_along(towards);
    let [(_, long), (_, short)] = long_and_short(&bench.contact)?;
    let (Some((depth, depth_span)), Some((thickness, thickness_span))) =
        (bench.join.depth, bench.join.thickness)
    else {
        let message = "a mortise and tenon needs the tenon's depth and thickness";
        bench.findings.push(
            Finding::new(&JOINT_SIZES, bench.join.kind_span, message)
                .figure("thickness of the part with the mortise", receiving)
                .figure("breadth of the contact", short.size())
                .remedy(format!(
                    "add `{{ depth …; thickness … }}`; a third of the breadth, {}, is usual",
                    (short.size() / 3).in_both()
                )),
        );
        return None;
    };
    let width = bench.join.width.map_or(long.size(), |(width, _)| width);
    let width_span = bench
        .join
        .width
        .map_or(bench.join.kind_span, |(_, span)| span);
    let blind = depth + GLUE_ROOM;
    // Through the thickness of the other part, or not through.
    let facing = bench.to.side(towards.opposite());
    let goes_through = depth == receiving && facing.axis() == PartAxis::Thickness;
    let fault = if thickness >= short.size() {
        Some((thickness_span, "thickness", thickness, short.size()))
    } else if width > long.size() {
        Some((width_span, "width", width, long.size()))
    } else if !goes_through && blind >= receiving {
        Some((depth_span, "depth", depth, receiving))
    } else {
        None
    };
    if let Some((span, what, size, room)) = fault {
        let message = format!(
            "the tenon's {what} is {}, and there is room for {}",
            size.in_both(),
            room.in_both()
        );
        bench.findings.push(
            Finding::new(&JOINT_SIZES, span, message)
                .figure(what, size)
                .figure("room", room),
        );
        return None;
    }
    Some((depth, (width, thickness)))
}
