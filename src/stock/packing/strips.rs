//! Fills a bin the way most people saw: strips of one width off the whole bin, on few fence
//! settings, and then the items off each strip (ref: layout-practice#P12, #P14 [P]).

use std::cmp::Reverse;
use std::collections::BTreeMap;

use super::subset::{Lot, fullest};
use super::tree::{Tree, Way};
use super::{Item, Problem, Remaining};

/// How items that may turn lie.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Lie {
    /// As described.
    AsDescribed,
    /// With their longer side along the strip.
    LongAlong,
    /// With their shorter side along the strip.
    ShortAlong,
}

impl Lie {
    pub(super) const ALL: [Self; 3] = [Self::AsDescribed, Self::LongAlong, Self::ShortAlong];

    /// Size along the strip, width of the strip, and whether the item is turned.
    fn pose(self, item: Item, way: Way) -> (i64, i64, bool) {
        let along_strip = |turned: bool| {
            let swapped = turned != (way == Way::Crosscut);
            if swapped {
                (item.across, item.along, turned)
            } else {
                (item.along, item.across, turned)
            }
        };
        let (plain, turned) = (along_strip(false), along_strip(true));
        let turn = item.may_turn
            && match self {
                Self::AsDescribed => false,
                Self::LongAlong => turned.0 > plain.0,
                Self::ShortAlong => turned.0 < plain.0,
            };
        if turn { turned } else { plain }
    }
}

/// An item that goes in a strip of its own width.
#[derive(Clone, Copy)]
struct Candidate {
    along: i64,
    item: usize,
    turned: bool,
}

/// Fills an uncut bin with strips that `way` cuts off. Gives the cells that stay free.
pub(super) fn fill(
    problem: &Problem,
    (way, lie): (Way, Lie),
    tree: &mut Tree,
    remaining: &mut Remaining,
    work: &mut u64,
) -> Vec<usize> {
    let whole = tree.cell(0);
    let strip_length = whole.divided_by(way.other());
    let classes = classes(
        problem,
        (way, lie),
        (strip_length, whole.divided_by(way)),
        remaining,
    );
    *work += remaining.len() as u64 + 20 * classes.len() as u64;
    let lots: Vec<Lot> = classes
        .iter()
        .map(|(Reverse(width), candidates)| Lot {
            length: *width,
            count: strips_needed(candidates, strip_length, remaining),
        })
        .collect();
    let taken = fullest(&lots, whole.divided_by(way));
    let mut free = Vec::new();
    let mut rest = 0;
    for ((Reverse(width), candidates), strips) in classes.iter().zip(taken) {
        for _ in 0..strips {
            let (strip, far) = tree.divide(rest, way, *width);
            fill_strip(candidates, strip, way.other(), tree, remaining, &mut free);
            *work += 50 + candidates.len() as u64;
            let Some(far) = far else {
                return free;
            };
            rest = far;
        }
    }
    free.push(rest);
    free
}

/// Items by width of their strip, widest first; in each the longest first.
fn classes(
    problem: &Problem,
    (way, lie): (Way, Lie),
    (strip_length, widest): (i64, i64),
    remaining: &Remaining,
) -> BTreeMap<Reverse<i64>, Vec<Candidate>> {
    let mut classes: BTreeMap<Reverse<i64>, Vec<Candidate>> = BTreeMap::new();
    for (index, item) in problem.items.iter().enumerate() {
        if remaining.get(index).is_none_or(|left| *left == 0) {
            continue;
        }
        let fitting = [lie, Lie::LongAlong, Lie::ShortAlong]
            .into_iter()
            .map(|lie| lie.pose(*item, way))
            .find(|(along, width, _)| *along <= strip_length && *width <= widest);
        if let Some((along, width, turned)) = fitting {
            classes.entry(Reverse(width)).or_default().push(Candidate {
                along,
                item: index,
                turned,
            });
        }
    }
    for candidates in classes.values_mut() {
        candidates.sort_by_key(|candidate| (Reverse(candidate.along), candidate.item));
    }
    classes
}

/// At most how many strips a class can fill.
fn strips_needed(candidates: &[Candidate], length: i64, remaining: &Remaining) -> usize {
    let sum: i128 = candidates
        .iter()
        .map(|candidate| {
            let left = remaining.get(candidate.item).copied().unwrap_or(0);
            i128::from(candidate.along) * left as i128
        })
        .sum();
    let strips = num_integer::div_ceil(sum, i128::from(length.max(1)));
    usize::try_from(strips).unwrap_or(usize::MAX)
}

/// Cuts items off one strip, the best filling choice of its class.
fn fill_strip(
    candidates: &[Candidate],
    strip: usize,
    way: Way,
    tree: &mut Tree,
    remaining: &mut Remaining,
    free: &mut Vec<usize>,
) {
    let lots: Vec<Lot> = candidates
        .iter()
        .map(|candidate| Lot {
            length: candidate.along,
            count: remaining.get(candidate.item).copied().unwrap_or(0),
        })
        .collect();
    let cell = tree.cell(strip);
    let width = cell.divided_by(way.other());
    let mut rest = strip;
    for (candidate, count) in candidates.iter().zip(fullest(&lots, cell.divided_by(way))) {
        for _ in 0..count {
            let pose = match way {
                Way::Crosscut => (candidate.along, width, candidate.turned),
                Way::Rip => (width, candidate.along, candidate.turned),
            };
            let [far, _] = tree.place(rest, candidate.item, pose, way);
            if let Some(left) = remaining.get_mut(candidate.item) {
                *left = left.saturating_sub(1);
            }
            let Some(far) = far else {
                return;
            };
            rest = far;
        }
    }
    free.push(rest);
}
