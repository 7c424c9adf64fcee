//! The corner that box joints and mitres are made at: both pieces end there.

use super::bench::Bench;
use crate::build::findings::JOINT_LIE;
use crate::finding::Finding;
use crate::geometry::{Axis, Direction};
use crate::units::Length;

/// A corner: the coming piece meets the inside of the other piece at that one's end.
#[derive(Clone, Copy, Debug)]
pub(super) struct Corner {
    /// Towards the outside of the corner, along the receiving piece.
    pub(super) outward: Direction,
    /// The axis the corner runs along.
    pub(super) along: Axis,
    /// Breadth of the coming piece there: how much of the receiving piece it covers.
    pub(super) coming: Length,
    /// Depth of the receiving piece there: how much the coming piece grows.
    pub(super) receiving: Length,
}

/// The corner of a joint, or the finding that the pieces make none.
pub(super) fn corner(bench: &mut Bench<'_, '_>) -> Option<Corner> {
    let towards = bench.contact.direction;
    let body = bench.to.placement.body;
    let mut found: Option<(Axis, Direction, Length)> = None;
    for axis in Axis::ALL.into_iter().filter(|axis| *axis != towards.axis()) {
        let (Some(area), Some(whole)) =
            (bench.contact.area.get(axis.index()), body.get(axis.index()))
        else {
            continue;
        };
        let rest = whole.size() - area.size();
        let outward = match (area.low == whole.low, area.high == whole.high) {
            (true, false) => axis.low(),
            (false, true) => axis.high(),
            _ => continue,
        };
        // The piece goes on the farthest along its own length.
        if found.is_none_or(|(_, _, most)| rest > most) {
            found = Some((axis, outward, rest));
        }
    }
    let Some((axis, outward, _)) = found else {
        let message = "these two make no corner: the second part goes on at both sides";
        bench.findings.push(
            Finding::new(&JOINT_LIE, bench.join.kind_span, message)
                .because("both parts of this joint end in the corner")
                .remedy("place the end of the first against the inside of the second, flush with its end"),
        );
        return None;
    };
    let along = Axis::ALL
        .into_iter()
        .find(|other| *other != axis && *other != towards.axis())?;
    let area = bench.contact.area;
    Some(Corner {
        outward,
        along,
        coming: area.get(axis.index())?.size(),
        receiving: bench.to.depth_along(towards),
    })
}
