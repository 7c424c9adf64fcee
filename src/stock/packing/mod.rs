//! Layouts as a problem of bare rectangles: items, bins and guillotine cuts.
//!
//! Takes a [`Problem`] in whole nanometres with the saw cut folded into every size, gives one
//! cut tree a bin. The saw cut is folded in by adding one kerf to every item and to every bin:
//! an item that ends at the bin's edge then needs no cut, and every other item carries the kerf
//! that parts it from its neighbour. Knows no part, no material and no money, only costs.
//!
//! `search.rs` leads: `constructions.rs` gives a first layout (`guillotine.rs` and `strips.rs` each
//! fill one bin after the other), `goal.rs` looks for cheaper ones, `shop.rs` for one of the same
//! cost that is better to cut; `bound.rs` says what nobody can do better. `lengthwise.rs` takes the
//! problems of one dimension to `sticks/`.

mod bound;
mod chance;
mod constructions;
mod goal;
mod guillotine;
mod lengthwise;
mod search;
mod sheet;
mod shop;
mod state;
mod sticks;
mod strips;
mod subset;
mod tree;

pub(super) use bound::Bound;
pub(super) use shop::Shop;
pub(super) use sticks::{Bar, Cutting, Part, Sticks, cut};
pub(super) use tree::{Cell, Piece, Tree, Way};

/// A kind of rectangle and how many of it are needed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Item {
    /// Along the bin's length, kerf included.
    pub(super) along: i64,
    /// Across it, kerf included.
    pub(super) across: i64,
    /// How many.
    pub(super) count: usize,
    /// Whether it may lie the other way.
    pub(super) may_turn: bool,
}

impl Item {
    /// Its area, kerf included.
    fn area(self) -> i128 {
        i128::from(self.along) * i128::from(self.across)
    }

    /// The ways it may lie: sizes along and across, and whether it is turned.
    fn poses(self) -> impl Iterator<Item = (i64, i64, bool)> {
        let turned = self.may_turn && self.along != self.across;
        let second = turned.then_some((self.across, self.along, true));
        std::iter::once((self.along, self.across, false)).chain(second)
    }

    /// True where it fits in a bin.
    pub(super) fn fits(self, bin: Bin) -> bool {
        self.poses()
            .any(|(along, across, _)| along <= bin.along && across <= bin.across)
    }
}

/// A size of stock.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Bin {
    /// Its length that can be used, one kerf added.
    pub(super) along: i64,
    /// Its width that can be used, one kerf added.
    pub(super) across: i64,
    /// What one costs, in any one unit.
    pub(super) cost: i128,
    /// How many there are; none where any number can be had.
    pub(super) limit: Option<usize>,
    /// On hand already: a bound on what is bought does not count it.
    pub(super) on_hand: bool,
}

impl Bin {
    fn area(self) -> i128 {
        i128::from(self.along) * i128::from(self.across)
    }
}

/// What is to be cut out of what. Every item fits in at least one bin.
#[derive(Clone, Debug, Default)]
pub(super) struct Problem {
    /// What is needed.
    pub(super) items: Vec<Item>,
    /// What it may be cut from.
    pub(super) bins: Vec<Bin>,
    /// At most how many stages of cuts, each of the other way than the one before, free a
    /// piece; none where any number may.
    pub(super) most_stages: Option<u8>,
    /// A piece shorter than that along the fence is dangerous to hold.
    pub(super) small: i64,
}

impl Problem {
    /// What bins cost together, given by number.
    pub(super) fn cost(&self, bins: impl Iterator<Item = usize>) -> i128 {
        let bins = bins.filter_map(|bin| self.bins.get(bin));
        bins.map(|bin| bin.cost).fold(0, i128::saturating_add)
    }
}

/// A bin and how it is cut.
#[derive(Clone, Debug)]
pub(super) struct Packed {
    /// Which of [`Problem::bins`].
    pub(super) bin: usize,
    /// How it is cut.
    pub(super) tree: Tree,
}

/// What a problem came to.
#[derive(Clone, Debug, Default)]
pub(super) struct Packing {
    /// The bins.
    pub(super) bins: Vec<Packed>,
    /// How many copies of each item lie on none of them: too large, or more than the bins hold.
    pub(super) unpacked: Vec<usize>,
    /// No layout of everything takes fewer bins, or costs less.
    pub(super) at_least: Bound,
    /// What a shop thinks of the layout.
    pub(super) shop: Shop,
    /// And of the first one found at that cost; never less of the one above.
    pub(super) first: Shop,
}

/// Packs every item at the least cost that can be found. Items that take the whole width of the
/// bins are cut to length and nothing else; items that fit in no bin are left out.
pub(super) fn pack(problem: &Problem) -> Packing {
    lengthwise::pack(problem).unwrap_or_else(|| search::pack(problem))
}

/// How an item lies: sizes along and across, and whether it is turned.
type Pose = (i64, i64, bool);

/// How much is still to be placed, by item.
type Remaining = Vec<usize>;

/// Items one by one, each as often as it is counted.
fn one_by_one(counts: impl Iterator<Item = usize>) -> Vec<u32> {
    (0..)
        .zip(counts)
        .flat_map(|(item, count)| std::iter::repeat_n(item, count))
        .collect()
}
