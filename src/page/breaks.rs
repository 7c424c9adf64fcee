//! Where pages end.

use super::flow::{BOX_PAD, BreakCost, Flow, SLACK, Slab};

/// Where the slabs of a page stand.
#[derive(Debug, PartialEq)]
pub(super) struct Sheet {
    /// The first slab.
    pub(super) first: usize,
    /// Top of each slab, from the top of the text area.
    pub(super) tops: Vec<f64>,
}

/// Slabs on pages of `room` points: each page ends at the least bad place, and as late as that
/// allows.
pub(super) fn break_pages(flow: &Flow<'_>, room: f64) -> Vec<Sheet> {
    let mut sheets = Vec::new();
    let mut first = 0;
    while first < flow.slabs.len() {
        let mut sheet = fill(flow, first, room);
        let end = end_of(flow, first, first + sheet.tops.len());
        sheet.tops.truncate(end - first);
        sheets.push(sheet);
        first = end;
    }
    sheets
}

/// As many slabs as fit, at least one.
fn fill(flow: &Flow<'_>, first: usize, room: f64) -> Sheet {
    let mut tops = Vec::new();
    let mut down = 0.0;
    for (i, slab) in flow.slabs.iter().enumerate().skip(first) {
        let top = if i == first {
            start_of_page(flow, slab, first)
        } else {
            if slab.cost == BreakCost::Forced {
                break;
            }
            slab.top_after(down)
        };
        let bottom = top + slab.height;
        // Where a box goes on over the page's end, its frame needs room below.
        let goes_on = flow
            .slabs
            .get(i + 1)
            .is_some_and(|next| next.boxes.iter().any(|b| slab.boxes.contains(b)));
        let inset = if goes_on { BOX_PAD } else { 0.0 };
        if i > first && bottom + inset > room + SLACK {
            break;
        }
        tops.push(top);
        down = bottom;
    }
    Sheet { first, tops }
}

/// Where the first slab of a page begins: below a repeated head, inside a frame that goes on.
fn start_of_page(flow: &Flow<'_>, slab: &Slab<'_>, number: usize) -> f64 {
    let head = slab.head.and_then(|head| flow.heads.get(head));
    let (height, inset) = head.map_or((0.0, BOX_PAD), |head| (head.height, head.inset));
    let before = number.checked_sub(1).and_then(|n| flow.slabs.get(n));
    let continued =
        before.is_some_and(|before| before.boxes.iter().any(|b| slab.boxes.contains(b)));
    height + if continued { inset } else { 0.0 }
}

/// The slab that begins the next page, given the first one that does not fit on this.
fn end_of(flow: &Flow<'_>, first: usize, overflow: usize) -> usize {
    let cost = |i: usize| flow.slabs.get(i).map_or(BreakCost::Free, |slab| slab.cost);
    if overflow >= flow.slabs.len() || cost(overflow) == BreakCost::Forced {
        return overflow;
    }
    let mut best = overflow;
    for i in (first + 1..overflow).rev() {
        if cost(i) < cost(best) {
            best = i;
        }
    }
    best
}

#[cfg(test)]
mod tests {
    use super::*;

    fn flow(slabs: &[(f64, BreakCost)]) -> Flow<'static> {
        let mut flow = Flow::default();
        for (height, cost) in slabs {
            let mut slab = Slab::new(*height);
            slab.cost = *cost;
            flow.push(slab);
        }
        flow
    }

    fn firsts(flow: &Flow<'_>, room: f64) -> Vec<usize> {
        break_pages(flow, room)
            .iter()
            .map(|sheet| sheet.first)
            .collect()
    }

    #[test]
    fn pages_fill_up_and_forced_breaks_hold() {
        use BreakCost::{Forced, Free};
        let flow = flow(&[(40.0, Free), (40.0, Free), (40.0, Free), (10.0, Forced)]);
        assert_eq!(firsts(&flow, 100.0), [0, 2, 3]);
    }

    #[test]
    fn tied_slabs_move_together() {
        use BreakCost::{Free, Tied};
        let flow = flow(&[(60.0, Free), (20.0, Free), (30.0, Tied), (10.0, Free)]);
        assert_eq!(firsts(&flow, 100.0), [0, 1]);
    }

    #[test]
    fn what_is_kept_breaks_before_what_is_tied() {
        use BreakCost::{Kept, Tied};
        let flow = flow(&[(40.0, Kept), (30.0, Kept), (20.0, Tied), (20.0, Tied)]);
        assert_eq!(firsts(&flow, 100.0), [0, 1]);
    }

    #[test]
    fn a_slab_higher_than_a_page_still_gets_one() {
        let flow = flow(&[(300.0, BreakCost::Free), (10.0, BreakCost::Tied)]);
        assert_eq!(firsts(&flow, 100.0), [0, 1]);
    }
}
