//! Runners: a pair of them between a drawer's side and the case.

use super::bench::Bench;
use crate::build::spacing::long_and_short;
use crate::build::types::{Fastener, HardwareKind};

/// Sets one pair, from the front of the contact on.
pub(super) fn make(bench: &mut Bench<'_, '_>) {
    let Some((id, runner)) = bench.item(HardwareKind::Runner) else {
        return;
    };
    let Some([(axis, long), _]) = long_and_short(&bench.contact) else {
        return;
    };
    let length = runner.length.unwrap_or_default().min(long.size());
    let [mut from, mut to] = [bench.contact.area.map(|area| area.middle()); 2];
    for (end, at) in [(&mut from, long.low), (&mut to, long.low + length)] {
        if let Some(slot) = end.get_mut(axis.index()) {
            *slot = at;
        }
    }
    bench.fasteners.push(Fastener {
        hardware: id,
        from,
        to,
        driven: bench.contact.direction,
    });
}
