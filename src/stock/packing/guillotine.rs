//! Fills a bin item by item: each goes where it fits best, and the rest of that place is divided
//! by one of several rules.

use super::tree::{Cell, Tree, Way};
use super::{Item, Problem, Remaining};

/// Which of several places an item takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Choice {
    /// Least area left.
    Area,
    /// Least left on the tighter side.
    ShortSide,
    /// Least left on the looser side.
    LongSide,
}

impl Choice {
    pub(super) const ALL: [Self; 3] = [Self::Area, Self::ShortSide, Self::LongSide];

    /// How badly an item fits a cell: the smaller the better, and a second figure for ties.
    fn badness(self, cell: Cell, along: i64, across: i64) -> (i128, i128) {
        let (left_along, left_across) = (cell.along - along, cell.across - across);
        let short = i128::from(left_along.min(left_across));
        let long = i128::from(left_along.max(left_across));
        match self {
            Self::Area => {
                let area = i128::from(along) * i128::from(across);
                (cell.area() - area, short)
            }
            Self::ShortSide => (short, long),
            Self::LongSide => (long, short),
        }
    }
}

/// Which cut frees an item in the corner of its place first.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum SplitRule {
    /// Always a rip.
    RipFirst,
    /// Always a crosscut.
    CrosscutFirst,
    /// Keeps the shorter leftover short.
    ShorterLeftover,
    /// Keeps the longer leftover short.
    LongerLeftover,
    /// Keeps the largest single rectangle.
    LargestRest,
}

impl SplitRule {
    pub(super) const ALL: [Self; 5] = [
        Self::RipFirst,
        Self::LargestRest,
        Self::ShorterLeftover,
        Self::LongerLeftover,
        Self::CrosscutFirst,
    ];

    fn first_cut(self, cell: Cell, along: i64, across: i64) -> Way {
        let (left_along, left_across) = (cell.along - along, cell.across - across);
        let rip_if = |yes: bool| if yes { Way::Rip } else { Way::Crosscut };
        match self {
            Self::RipFirst => Way::Rip,
            Self::CrosscutFirst => Way::Crosscut,
            Self::ShorterLeftover => rip_if(left_along <= left_across),
            Self::LongerLeftover => rip_if(left_along > left_across),
            Self::LargestRest => {
                let product = |a: i64, b: i64| i128::from(a) * i128::from(b);
                let rip = product(cell.along, left_across).max(product(left_along, across));
                let crosscut = product(left_along, cell.across).max(product(along, left_across));
                rip_if(rip >= crosscut)
            }
        }
    }
}

/// How a bin is filled.
#[derive(Clone, Copy, Debug)]
pub(super) struct Rules {
    /// Where an item goes.
    pub(super) choice: Choice,
    /// How the rest is divided.
    pub(super) split: SplitRule,
}

/// Fills the free cells of a tree with what remains, items in `order`. Charges `work` with the
/// places looked at.
pub(super) fn fill(
    problem: &Problem,
    order: &[usize],
    rules: Rules,
    free: &mut Vec<usize>,
    tree: &mut Tree,
    remaining: &mut Remaining,
    work: &mut u64,
) {
    for &index in order {
        let Some(&item) = problem.items.get(index) else {
            continue;
        };
        while remaining.get(index).is_some_and(|left| *left > 0) {
            *work += 1 + free.len() as u64;
            let Some((place, pose)) = best_place(item, rules.choice, free, tree) else {
                break;
            };
            let id = free.swap_remove(place);
            let first = rules.split.first_cut(tree.cell(id), pose.0, pose.1);
            free.extend(tree.place(id, index, pose, first).into_iter().flatten());
            if let Some(left) = remaining.get_mut(index) {
                *left -= 1;
            }
        }
        if free.is_empty() {
            return;
        }
    }
}

/// The free cell an item takes and how it lies there.
fn best_place(
    item: Item,
    choice: Choice,
    free: &[usize],
    tree: &Tree,
) -> Option<(usize, (i64, i64, bool))> {
    let mut best = None;
    for (place, id) in free.iter().enumerate() {
        let cell = tree.cell(*id);
        for pose in item.poses() {
            if pose.0 > cell.along || pose.1 > cell.across {
                continue;
            }
            // Cells are told apart by their number, so that equal fits always fall alike.
            let badness = (choice.badness(cell, pose.0, pose.1), *id, pose.2);
            if best.as_ref().is_none_or(|(least, _, _)| badness < *least) {
                best = Some((badness, place, pose));
            }
        }
    }
    best.map(|(_, place, pose)| (place, pose))
}
