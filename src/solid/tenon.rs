//! Tenons: what stands beside them is cut away to the shoulder.

use super::layers::Cutter;
use super::stack::Stack;
use crate::geometry::{Interval, PartAxis, Region};
use crate::model::Tenon;

/// What an end loses all round its tenon.
pub(super) fn shoulders(tenon: &Tenon, stack: &Stack, cutters: &mut Vec<Cutter>) {
    let [_, width, thickness] = stack.extent;
    if stack.axis == PartAxis::Length {
        let section = Region::rectangle(tenon.width, tenon.thickness);
        cutters.push(Cutter {
            region: stack.base.without(&[&section]),
            reach: tenon.along,
        });
        return;
    }
    let whole = stack.reach(stack.axis);
    let mut take = |across: Interval, reach: Interval| {
        if across.low < across.high && reach.low < reach.high {
            cutters.push(Cutter {
                region: Region::rectangle(tenon.along, across),
                reach,
            });
        }
    };
    // Cheeks over the whole width, then what is beside the tenon.
    take(
        width,
        Interval::new(whole.low, tenon.thickness.low.max(thickness.low)),
    );
    take(
        width,
        Interval::new(tenon.thickness.high.min(thickness.high), whole.high),
    );
    take(
        Interval::new(width.low, tenon.width.low.max(width.low)),
        whole,
    );
    take(
        Interval::new(tenon.width.high.min(width.high), width.high),
        whole,
    );
}
