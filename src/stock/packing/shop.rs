//! What a shop asks of layouts that cost the same: no small piece at the saw, what is on hand used
//! first, few settings of the fence, one large offcut.

use std::cmp::Reverse;
use std::collections::BTreeMap;

use super::sheet::Sheet;
use super::tree::{Piece, Way};
use super::{Problem, Tree};

/// What a shop thinks of a layout; the smaller the better.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub(in crate::stock) struct Shop {
    /// Cuts of a piece that is too small to hold.
    pub(in crate::stock) small_pieces: usize,
    /// Area cut out of bins on hand: the more of them, the more is left of what is bought.
    pub(in crate::stock) on_hand: Reverse<i128>,
    /// Settings of the fence or the stop, each counted once however many bins need it.
    pub(in crate::stock) settings: usize,
    /// Area of the largest offcut that is of use.
    pub(in crate::stock) offcut: Reverse<i128>,
}

impl Shop {
    /// Of all bins together.
    pub(super) fn of(problem: &Problem, sheets: &[Sheet]) -> Self {
        Tally::of(problem, sheets).shop()
    }
}

/// The same of one bin.
#[derive(Clone, Debug, Default)]
pub(super) struct Summary {
    small_pieces: usize,
    on_hand: i128,
    settings: Vec<(Way, i64)>,
    offcut: i128,
}

impl Summary {
    fn of(problem: &Problem, bin: usize, tree: &Tree) -> Self {
        let mut summary = Self::default();
        if problem.bins.get(bin).is_some_and(|bin| bin.on_hand) {
            summary.on_hand = tree.filled();
        }
        for (cell, piece) in tree.walk() {
            match piece {
                Piece::Divided { way, at, .. } => {
                    summary.settings.push((way, at));
                    let is_small = match way {
                        Way::Rip => cell.along < problem.small,
                        Way::Crosscut => cell.along.max(cell.across) < problem.small,
                    };
                    summary.small_pieces += usize::from(is_small);
                }
                Piece::Free if cell.along.min(cell.across) >= problem.small / USE => {
                    summary.offcut = summary.offcut.max(cell.area());
                }
                Piece::Free | Piece::Item { .. } => {}
            }
        }
        summary.settings.sort_unstable();
        summary.settings.dedup();
        summary
    }
}

/// An offcut is of use where it is as wide as this part of what is long enough to hold.
const USE: i64 = 3;

/// A shop's view of bins that change one by one.
#[derive(Debug, Default)]
pub(super) struct Tally {
    bins: Vec<Summary>,
    /// In how many bins each setting is needed.
    settings: BTreeMap<(Way, i64), usize>,
    small_pieces: usize,
}

impl Tally {
    pub(super) fn of(problem: &Problem, sheets: &[Sheet]) -> Self {
        let mut tally = Self::default();
        for (place, sheet) in sheets.iter().enumerate() {
            tally.replace(problem, place, sheet);
        }
        tally
    }

    /// The whole.
    pub(super) fn shop(&self) -> Shop {
        let offcuts = self.bins.iter().map(|bin| bin.offcut);
        Shop {
            small_pieces: self.small_pieces,
            on_hand: Reverse(self.bins.iter().map(|bin| bin.on_hand).sum()),
            settings: self.settings.len(),
            offcut: Reverse(offcuts.max().unwrap_or(0)),
        }
    }

    /// A bin has changed; gives what was known of it before.
    pub(super) fn replace(&mut self, problem: &Problem, place: usize, sheet: &Sheet) -> Summary {
        let summary = if sheet.is_empty() {
            Summary::default()
        } else {
            Summary::of(problem, sheet.bin, &sheet.tree())
        };
        self.put(place, summary)
    }

    /// Puts a bin's summary in its place; gives the one that was there.
    pub(super) fn put(&mut self, place: usize, summary: Summary) -> Summary {
        if place >= self.bins.len() {
            self.bins.resize_with(place + 1, Summary::default);
        }
        for setting in &summary.settings {
            *self.settings.entry(*setting).or_default() += 1;
        }
        self.small_pieces += summary.small_pieces;
        let old = self
            .bins
            .get_mut(place)
            .map_or_else(Summary::default, |bin| std::mem::replace(bin, summary));
        for setting in &old.settings {
            if let Some(bins) = self.settings.get_mut(setting) {
                *bins -= 1;
                if *bins == 0 {
                    self.settings.remove(setting);
                }
            }
        }
        self.small_pieces -= old.small_pieces;
        old
    }
}
