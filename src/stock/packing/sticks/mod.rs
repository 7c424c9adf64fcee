//! Boards and bars cut to length: the one-dimensional cutting stock problem.
//!
//! Takes [`Sticks`], lengths and bars in whole nanometres with one kerf added to each of both,
//! gives a [`Cutting`]: which lengths come out of which bar, what the bars cost, and a proof of
//! how little they could cost. Counts are kept as counts: ten thousand equal lengths are one.
//!
//! - `task.rs` merges equal lengths and takes common divisors out;
//! - `greedy.rs` cuts bar by bar, and betters itself by what it wasted;
//! - `knapsack.rs` finds the best content of one bar;
//! - `simplex.rs` and `relaxation.rs` solve the linear programme of all contents of a bar, adding
//!   contents as they are wanted (P. C. Gilmore and R. E. Gomory, Operations Research, 1961);
//! - `proof.rs` makes a bound of its prices, in integers;
//! - `dive.rs` fixes contents one by one, and goes back a few times where that led nowhere.
//!
//! Work is counted in steps, never in time. Floating point only chooses what is tried: what is
//! cut, what it costs and the bound are whole numbers.

mod dive;
mod greedy;
mod knapsack;
mod proof;
mod relaxation;
mod simplex;
mod task;

use task::Task;

/// A length and how many of it are needed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::stock) struct Part {
    /// Its length, kerf included.
    pub(in crate::stock) length: i64,
    /// How many.
    pub(in crate::stock) count: usize,
}

/// A length of stock.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::stock) struct Bar {
    /// Its length that can be used, one kerf added.
    pub(in crate::stock) length: i64,
    /// What one costs, in any one unit.
    pub(in crate::stock) cost: i128,
    /// How many there are; any number where nothing is said.
    pub(in crate::stock) limit: Option<usize>,
}

/// What is to be cut out of what.
#[derive(Clone, Debug, Default)]
pub(in crate::stock) struct Sticks {
    /// What is needed.
    pub(in crate::stock) parts: Vec<Part>,
    /// What it may be cut from.
    pub(in crate::stock) bars: Vec<Bar>,
}

/// Bars that are cut alike.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(in crate::stock) struct CutBars {
    /// Which of [`Sticks::bars`].
    pub(in crate::stock) bar: usize,
    /// Which of [`Sticks::parts`] come out of one of them, and how many of each; longest first.
    pub(in crate::stock) parts: Vec<(usize, usize)>,
    /// How many bars.
    pub(in crate::stock) times: usize,
}

/// How everything is cut.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(in crate::stock) struct Cutting {
    /// The bars, those that are cut alike together.
    pub(in crate::stock) bars: Vec<CutBars>,
    /// What they cost.
    pub(in crate::stock) cost: i128,
    /// No cutting of all the parts costs less.
    pub(in crate::stock) at_least: i128,
    /// How many of each of [`Sticks::parts`] stay uncut: longer than every bar, or more than the
    /// bars at hand yield.
    pub(in crate::stock) uncut: Vec<usize>,
}

/// Cuts every part that fits, at the least cost that can be found.
pub(in crate::stock) fn cut(sticks: &Sticks) -> Cutting {
    let task = Task::of(sticks);
    let found = dive::search(&task);
    task.cutting(sticks, &found)
}

/// Steps left of those that may be taken. A step is about as much as one multiplication.
#[derive(Clone, Copy, Debug)]
struct Work {
    left: u64,
}

impl Work {
    fn spend(&mut self, steps: usize) {
        self.left = self.left.saturating_sub(steps as u64);
    }

    fn is_spent(self) -> bool {
        self.left == 0
    }
}
