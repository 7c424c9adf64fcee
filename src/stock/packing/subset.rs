//! Which lengths fill a bar best: a bounded search for the least waste.
//!
//! The minimum bin slack idea of J. N. D. Gupta and J. C. Ho (Production Planning and Control,
//! 1999): fill one bin at a time as fully as it goes, the largest item always in it, so that
//! awkward long pieces never pile up at the end.

/// Steps of the search for one bar. Bars of the trade hold few pieces, and most are filled
/// within 1 % after a few dozen steps.
const MOST_STEPS: usize = 3_000;

/// A length and how many of it there are.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Lot {
    /// The length.
    pub(super) length: i64,
    /// How many.
    pub(super) count: usize,
}

struct Search<'a> {
    lots: &'a [Lot],
    chosen: Vec<usize>,
    best: Vec<usize>,
    best_rest: i64,
    steps: usize,
}

/// How many of each lot to take so that their sum comes as close to `capacity` as possible and
/// never over it. `lots` are sorted, longest first; one of the first lot that fits is always
/// taken.
pub(super) fn fullest(lots: &[Lot], capacity: i64) -> Vec<usize> {
    let mut search = Search {
        lots,
        chosen: vec![0; lots.len()],
        best: vec![0; lots.len()],
        best_rest: capacity,
        steps: 0,
    };
    let first = lots
        .iter()
        .position(|lot| lot.count > 0 && lot.length > 0 && lot.length <= capacity);
    let Some(first) = first else {
        return search.best;
    };
    search.from(first, capacity, Must::TakeOne);
    search.best
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum Must {
    TakeOne,
    Choose,
}

impl Search<'_> {
    /// Tries every count of the lot `index`, most first, and what fits behind it.
    fn from(&mut self, index: usize, rest: i64, must: Must) {
        self.steps += 1;
        if rest < self.best_rest {
            self.best_rest = rest;
            self.best.clone_from(&self.chosen);
        }
        if self.best_rest == 0 || self.steps > MOST_STEPS {
            return;
        }
        // Lots are sorted, so that those too long for the rest are skipped at once.
        let skipped = self
            .lots
            .get(index..)
            .map_or(0, |lots| lots.partition_point(|lot| lot.length > rest));
        let index = index + skipped;
        let Some(lot) = self.lots.get(index).copied() else {
            return;
        };
        let fits = usize::try_from(rest / lot.length.max(1)).unwrap_or(0);
        let most = fits.min(lot.count);
        let least = usize::from(must == Must::TakeOne && most > 0);
        for take in (least..=most).rev() {
            if let Some(count) = self.chosen.get_mut(index) {
                *count = take;
            }
            let taken = i64::try_from(take).unwrap_or(0).saturating_mul(lot.length);
            self.from(index + 1, rest - taken, Must::Choose);
            if self.best_rest == 0 || self.steps > MOST_STEPS {
                break;
            }
        }
        if let Some(count) = self.chosen.get_mut(index) {
            *count = 0;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn lots(pairs: &[(i64, usize)]) -> Vec<Lot> {
        pairs
            .iter()
            .map(|&(length, count)| Lot { length, count })
            .collect()
    }

    #[test]
    fn a_bar_is_filled_to_the_end_where_that_is_possible() {
        // 700 + 3 * 100 = 1000, while taking the two longest first would leave 1000-700-250 = 50.
        let counts = fullest(&lots(&[(700, 1), (250, 1), (100, 3)]), 1000);
        assert_eq!(counts, vec![1, 0, 3]);
    }

    #[test]
    fn the_longest_that_fits_is_always_taken() {
        // 600 + 300 = 900 leaves 100; three times 330 would leave 10.
        let counts = fullest(&lots(&[(1200, 1), (600, 1), (330, 3), (300, 1)]), 1000);
        assert_eq!(counts.first(), Some(&0));
        assert_eq!(counts.get(1), Some(&1));
        assert_eq!(counts.get(2), Some(&1));
    }

    #[test]
    fn many_lots_end_in_bounded_work() {
        let many: Vec<Lot> = (0..2_000)
            .rev()
            .map(|i| Lot {
                length: 1_001 + 2 * i,
                count: 3,
            })
            .collect();
        let counts = fullest(&many, 1_000_000);
        let sum: i64 = many
            .iter()
            .zip(&counts)
            .map(|(lot, count)| lot.length * i64::try_from(*count).unwrap())
            .sum();
        assert!(sum > 999_000 && sum <= 1_000_000);
    }
}
