//! The content of one bar that is worth most: the bounded knapsack problem, in whole numbers.
//!
//! A search in depth over the offers in falling worth by length, cut short by the worth that the
//! rest of the bar could have at most (as in S. Martello and P. Toth, Knapsack Problems, 1990).

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
    /// The content, where one is worth more than was asked.
    pub(super) content: Option<Content>,
    /// No content is worth more than this or what was asked, whichever is more.
    pub(super) at_most: i64,
    /// Worth of the content.
    pub(super) value: i64,
}

/// Offers in falling worth by length.
#[derive(Clone, Debug, Default)]
pub(super) struct Knapsack {
    offers: Vec<Offer>,
    /// The shortest length of an offer and all behind it.
    shortest: Vec<i64>,
}

struct Search<'a> {
    sack: &'a Knapsack,
    /// Which offers are taken, and how many.
    taken: Vec<(usize, i64)>,
    best: Option<Vec<(usize, i64)>>,
    best_value: i64,
    steps: usize,
}

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

    /// The content worth most of those worth more than `floor`, within `steps` steps.
    pub(super) fn best(&self, capacity: i64, floor: i64, steps: usize, work: &mut Work) -> Fill {
        let mut search = Search {
            sack: self,
            taken: Vec::new(),
            best: None,
            best_value: floor,
            steps,
        };
        search.go(0, capacity, 0);
        work.spend((steps - search.steps) * STEP);
        let content = search.best.map(|taken| {
            let mut content: Content = taken
                .iter()
                .filter_map(|(place, count)| Some((self.offers.get(*place)?.row, *count)))
                .collect();
            content.sort_unstable();
            content
        });
        Fill {
            at_most: if search.steps > 0 {
                search.best_value
            } else {
                self.ceiling(capacity).max(search.best_value)
            },
            value: search.best_value,
            content,
        }
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
}

/// Multiplications that a step of the search costs.
const STEP: usize = 12;

impl Search<'_> {
    fn go(&mut self, from: usize, rest: i64, value: i64) {
        if value > self.best_value {
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
            let wanted = i128::from(self.best_value - value) * i128::from(offer.length);
            if i128::from(rest) * i128::from(offer.value) <= wanted {
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
