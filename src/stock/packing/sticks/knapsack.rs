//! The content of one bar that is worth most: the bounded knapsack problem, in whole numbers.
//!
//! A search in depth over the offers in falling worth by length, cut short by the worth that the
//! rest of the bar could have at most: first by the best offer alone (S. Martello and P. Toth,
//! Knapsack Problems, 1990), and where that takes long by a table of all rests, on a grid that
//! rounds every length down.

use super::Work;
use super::task::Content;

/// A length on offer to a bar.
#[derive(Clone, Copy, Debug)]
pub(super) struct Offer {
    /// Which row.
    pub(super) row: usize,
    /// Its length.
    pub(super) length: i64,
    /// What one is worth.
    pub(super) value: i64,
    /// How many may be taken.
    pub(super) most: i64,
}

/// What fills a bar best.
#[derive(Clone, Debug, Default)]
pub(super) struct Fill {
    /// The content, where one was found that is worth more than was asked.
    pub(super) content: Option<Content>,
    /// No content is worth more than this.
    pub(super) at_most: i64,
}

/// Offers in falling worth by length.
#[derive(Clone, Debug, Default)]
pub(super) struct Knapsack {
    offers: Vec<Offer>,
    /// The shortest length of an offer and all behind it.
    shortest: Vec<i64>,
}

/// What an offer and all behind it are worth at most, by the rest of the bar.
#[derive(Clone, Debug, Default)]
pub(super) struct Table {
    /// What parts two points of the grid.
    unit: i64,
    /// Points of the grid.
    width: usize,
    /// One row an offer, and one for none.
    entries: Vec<i64>,
}

/// Multiplications that a step of the search costs.
const STEP: usize = 20;
/// Entries of a table.
const MOST_ENTRIES: i64 = 1_500_000;
/// Points of a grid that rounds lengths.
const COARSE_POINTS: i64 = 7_000;
/// Multiplications that an entry of a table costs.
const ENTRY: usize = 2;

impl Knapsack {
    /// Sorts the offers; those worth nothing are left out.
    pub(super) fn new(mut offers: Vec<Offer>) -> Self {
        offers.retain(|offer| offer.value > 0 && offer.length > 0 && offer.most > 0);
        offers.sort_by(|a, b| {
            let left = i128::from(b.value) * i128::from(a.length);
            let right = i128::from(a.value) * i128::from(b.length);
            left.cmp(&right)
                .then(b.length.cmp(&a.length))
                .then(a.row.cmp(&b.row))
        });
        let mut shortest = vec![i64::MAX; offers.len()];
        let mut least = i64::MAX;
        for (offer, shortest) in offers.iter().zip(&mut shortest).rev() {
            least = least.min(offer.length);
            *shortest = least;
        }
        Self { offers, shortest }
    }

    /// A content worth more than `floor` and none of `shut`, the best that `steps` steps find.
    pub(super) fn best(
        &self,
        table: Option<&Table>,
        (capacity, floor): (i64, i64),
        shut: &[&Content],
        steps: usize,
        work: &mut Work,
    ) -> Fill {
        let known = table.map(|table| table.at_most(0, capacity));
        let mut search = Search {
            sack: self,
            table,
            shut: shut.iter().map(|content| self.places(content)).collect(),
            taken: Vec::new(),
            best: None,
            best_value: floor,
            steps,
        };
        // On a grid that rounds nothing the best worth is known, and is looked for first.
        if let Some(worth) = known.filter(|_| table.is_some_and(Table::is_exact)) {
            search.best_value = floor.max(worth - 1);
            search.go(0, capacity, 0);
        }
        if search.best.is_none() {
            search.best_value = floor;
            search.go(0, capacity, 0);
        }
        work.spend((steps - search.steps) * STEP);
        let content = search.best.map(|taken| {
            let mut content: Content = taken
                .iter()
                .filter_map(|(place, count)| Some((self.offers.get(*place)?.row, *count)))
                .collect();
            content.sort_unstable();
            content
        });
        let at_most = if search.steps > 0 && shut.is_empty() {
            search.best_value
        } else {
            self.ceiling(capacity).max(floor)
        };
        Fill {
            content,
            at_most: known.map_or(at_most, |known| at_most.min(known.max(floor))),
        }
    }

    /// A content by the places of its offers.
    fn places(&self, content: &Content) -> Vec<(usize, i64)> {
        let place = |(row, count): &(usize, i64)| {
            let place = self.offers.iter().position(|offer| offer.row == *row);
            (place.unwrap_or(usize::MAX), *count)
        };
        let mut places: Vec<(usize, i64)> = content.iter().map(place).collect();
        places.sort_unstable();
        places
    }

    /// What a capacity is worth at most, lengths being divisible.
    fn ceiling(&self, capacity: i64) -> i64 {
        let mut rest = i128::from(capacity);
        let mut value: i128 = 0;
        for offer in &self.offers {
            let length = i128::from(offer.length);
            let whole = (rest / length).min(i128::from(offer.most));
            value += whole * i128::from(offer.value);
            rest -= whole * length;
            if whole < i128::from(offer.most) {
                value += (rest * i128::from(offer.value)) / length + 1;
                break;
            }
        }
        i64::try_from(value).unwrap_or(i64::MAX)
    }

    /// Makes the table of these offers for bars up to `capacity`.
    pub(super) fn tabulate(&self, capacity: i64, table: &mut Table, work: &mut Work) {
        let passes = |offer: &Offer| {
            let most = offer.most.min(capacity / offer.length);
            i64::from(i64::BITS - most.leading_zeros())
        };
        let passes: i64 = self.offers.iter().map(passes).sum::<i64>().max(1);
        table.unit = if capacity.saturating_mul(passes) <= MOST_ENTRIES {
            1
        } else {
            capacity / (MOST_ENTRIES / passes).clamp(1, COARSE_POINTS) + 1
        };
        table.width = table.point(capacity) + 1;
        let width = table.width;
        work.spend(usize::try_from(passes).unwrap_or(0) * width * ENTRY);
        let bottom = width * self.offers.len();
        table.entries.resize(bottom + width, 0);
        table.entries.get_mut(bottom..).unwrap_or_default().fill(0);
        for (place, offer) in self.offers.iter().enumerate().rev() {
            let (above, row) = table.entries.split_at_mut((place + 1) * width);
            let row = row.get(..width).unwrap_or_default();
            let fresh = above.get_mut(place * width..).unwrap_or_default();
            let mut left = offer.most.min(capacity / offer.length);
            let mut count = 1;
            let first = usize::try_from(offer.length / table.unit).unwrap_or(0);
            for (best, before) in fresh.iter_mut().zip(row).take(first) {
                *best = *before;
            }
            while left > 0 {
                let taken = count.min(left);
                left -= taken;
                let value = offer.value.saturating_mul(taken);
                let length = usize::try_from(offer.length * taken / table.unit).unwrap_or(0);
                if count == 1 {
                    let shorter_row = row;
                    let longer = fresh.iter_mut().zip(row).skip(length);
                    for ((best, before), shorter) in longer.zip(shorter_row) {
                        *best = (*before).max(shorter + value);
                    }
                } else {
                    lay_over(fresh, length, value);
                }
                count *= 2;
            }
        }
    }
}

/// Betters every entry by the one `length` before it and `value`, the last first.
fn lay_over(row: &mut [i64], length: usize, value: i64) {
    for at in (length..row.len()).rev() {
        let shorter = row.get(at - length).copied().unwrap_or(0) + value;
        if let Some(best) = row.get_mut(at) {
            *best = (*best).max(shorter);
        }
    }
}

impl Table {
    /// True where the grid rounds no length.
    fn is_exact(&self) -> bool {
        self.unit == 1
    }

    /// The point of a length, rounded down: what fits on a bar still does.
    fn point(&self, length: i64) -> usize {
        usize::try_from(length / self.unit.max(1)).unwrap_or(0)
    }

    fn at_most(&self, place: usize, rest: i64) -> i64 {
        let at = place * self.width + self.point(rest);
        self.entries.get(at).copied().unwrap_or(i64::MAX)
    }
}

struct Search<'a> {
    sack: &'a Knapsack,
    table: Option<&'a Table>,
    /// What is not to be taken.
    shut: Vec<Vec<(usize, i64)>>,
    /// Which offers are taken, and how many.
    taken: Vec<(usize, i64)>,
    best: Option<Vec<(usize, i64)>>,
    best_value: i64,
    steps: usize,
}

impl Search<'_> {
    fn go(&mut self, from: usize, rest: i64, value: i64) {
        if value > self.best_value && !self.shut.contains(&self.taken) {
            self.best_value = value;
            self.best = Some(self.taken.clone());
        }
        let mut place = from;
        while let (Some(offer), Some(shortest)) =
            (self.sack.offers.get(place), self.sack.shortest.get(place))
        {
            if self.steps == 0 || rest < *shortest {
                return;
            }
            self.steps -= 1;
            // The rest filled with nothing but the best offer: no better than the best known?
            let wanted = self.best_value - value;
            let worth = i128::from(rest) * i128::from(offer.value);
            if worth <= i128::from(wanted) * i128::from(offer.length)
                || self
                    .table
                    .is_some_and(|table| table.at_most(place, rest) <= wanted)
            {
                return;
            }
            if offer.length <= rest {
                let most = (rest / offer.length).min(offer.most);
                for count in (1..=most).rev() {
                    self.taken.push((place, count));
                    self.go(
                        place + 1,
                        rest - count * offer.length,
                        value.saturating_add(offer.value.saturating_mul(count)),
                    );
                    self.taken.pop();
                }
            }
            place += 1;
        }
    }
}
