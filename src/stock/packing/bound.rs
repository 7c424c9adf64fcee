//! How few bins could do: bounds that hold for every layout.

use num_integer::div_ceil;

use super::{Bin, Item, Problem};

/// Widths and lengths tried as thresholds; more would sharpen the bound little and cost time.
const MOST_THRESHOLDS: usize = 24;

/// What no layout of a problem does better.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(in crate::stock) struct Bound {
    /// No layout takes fewer bins.
    pub(in crate::stock) bins: i64,
    /// No layout takes fewer that are not on hand already.
    pub(in crate::stock) bought: i64,
    /// No layout costs less.
    pub(in crate::stock) cost: i128,
}

/// Bounds of a problem.
///
/// Area alone, and, where all bins to buy are of one size, dual feasible functions (S. P. Fekete
/// and J. Schepers, Mathematical Methods of Operations Research, 2004): a size over `1 - e` of the
/// bin counts as the whole of it and a size under `e` as nothing, since nothing wider than `e`
/// fits beside the former. Items that may turn count in the orientation that claims less. What is
/// on hand and no larger than a bin to buy holds at most what such a bin would.
pub(super) fn of(problem: &Problem) -> Bound {
    let needed = |item: &&Item| item.count > 0;
    let items: Vec<Item> = problem.items.iter().filter(needed).copied().collect();
    let area: i128 = items
        .iter()
        .map(|item| item.area() * item.count as i128)
        .sum();
    let bins = usable(problem, &items);
    if area == 0 || bins.is_empty() {
        return Bound::default();
    }
    let mut bound = Bound {
        bins: whole(cheapest(&bins, area, |_| 1)).max(1),
        bought: whole(cheapest(&bins, area, |bin| i128::from(!bin.on_hand))),
        cost: cheapest(&bins, area, |bin| bin.cost),
    };
    let mut bought = bins.iter().filter(|bin| !bin.on_hand);
    if let (Some(bin), None) = (bought.next(), bought.next()) {
        let on_hand = || bins.iter().filter(|bin| bin.on_hand);
        let is_smaller = |other: &Bin| other.along <= bin.along && other.across <= bin.across;
        if on_hand().all(is_smaller) {
            let limits = on_hand().map(|bin| bin.limit.unwrap_or(usize::MAX));
            let there = limits.fold(0, usize::saturating_add);
            let claimed = claimed_bins(&items, bin);
            bound.bins = bound.bins.max(claimed);
            let rest = claimed.saturating_sub(i64::try_from(there).unwrap_or(i64::MAX));
            bound.bought = bound.bought.max(rest);
            bound.cost = bound.cost.max(bin.cost * i128::from(bound.bought));
        }
    }
    // Every cost is a whole number of these.
    let unit = bins.iter().map(|bin| bin.cost).fold(0, num_integer::gcd);
    if unit > 0 {
        bound.cost = div_ceil(bound.cost, unit) * unit;
    }
    bound
}

/// The bins that hold something at all: a sheet narrower than its two trims has no area.
fn usable(problem: &Problem, items: &[Item]) -> Vec<Bin> {
    let holds = |bin: &Bin| bin.along > 0 && bin.across > 0;
    let bins = problem.bins.iter().copied().filter(holds);
    bins.filter(|bin| items.iter().any(|item| item.fits(*bin)))
        .collect()
}

fn whole(bins: i128) -> i64 {
    i64::try_from(bins).unwrap_or(i64::MAX)
}

/// Choices of bins looked at before the bound is left as good as it is.
const MOST_CHOICES: usize = 20_000;

/// What bins of so much area cost at least: whole bins, as far as all choices of them can be
/// looked at.
fn cheapest(bins: &[Bin], area: i128, cost: impl Fn(&Bin) -> i128) -> i128 {
    let mut order: Vec<(i128, &Bin)> = bins.iter().map(|bin| (cost(bin), bin)).collect();
    order.sort_by(|(a, one), (b, other)| {
        // cost / area, compared crosswise.
        let left = a.saturating_mul(other.area());
        left.cmp(&b.saturating_mul(one.area()))
    });
    let mut cover = Cover {
        bins: &order,
        best: None,
        choices: 0,
    };
    cover.choose(0, area, 0);
    let in_part = in_part(&order, area);
    match cover.best {
        Some(best) if cover.choices < MOST_CHOICES => best.max(in_part),
        Some(_) | None => in_part,
    }
}

/// The same with the last bin in part, rounded up: the cheapest for their area first.
fn in_part(bins: &[(i128, &Bin)], area: i128) -> i128 {
    let (mut rest, mut sum) = (area, 0_i128);
    for (cost, bin) in bins {
        let all = bin.limit.map(|limit| bin.area() * limit as i128);
        let taken = rest.min(all.unwrap_or(rest));
        sum = sum.saturating_add(div_ceil(cost.saturating_mul(taken), bin.area()));
        rest -= taken;
        if rest <= 0 {
            break;
        }
    }
    sum
}

/// The search for the cheapest whole bins that have so much area.
struct Cover<'a> {
    /// With their costs, the cheapest for their area first.
    bins: &'a [(i128, &'a Bin)],
    best: Option<i128>,
    choices: usize,
}

impl Cover<'_> {
    fn choose(&mut self, from: usize, rest: i128, paid: i128) {
        self.choices += 1;
        if self.choices >= MOST_CHOICES {
            return;
        }
        if rest <= 0 {
            self.best = Some(self.best.map_or(paid, |best| best.min(paid)));
            return;
        }
        let Some((cost, bin)) = self.bins.get(from) else {
            return;
        };
        let needed = div_ceil(rest, bin.area());
        let there = bin.limit.map_or(needed, |limit| limit as i128);
        for count in (0..=needed.min(there)).rev() {
            let paid = paid.saturating_add(cost.saturating_mul(count));
            let rest = rest - bin.area() * count;
            let more = in_part(self.bins.get(from + 1..).unwrap_or_default(), rest.max(0));
            if self
                .best
                .is_none_or(|best| paid.saturating_add(more) < best)
            {
                self.choose(from + 1, rest, paid);
            }
        }
    }
}

/// How many bins of one size do, by dual feasible functions.
fn claimed_bins(items: &[Item], bin: &Bin) -> i64 {
    let along = thresholds(items, bin.along);
    let across = thresholds(items, bin.across);
    let mut bound = 0;
    for &e in &along {
        for &f in &across {
            let claimed = claims(items, (bin.along, e), (bin.across, f));
            bound = bound.max(div_ceil(claimed, bin.area()));
        }
    }
    whole(bound)
}

/// What a size claims of a bin's side, with the threshold `e`.
fn claim(size: i64, (side, e): (i64, i64)) -> i64 {
    if size > side - e {
        side
    } else if size < e {
        0
    } else {
        size
    }
}

fn claims(items: &[Item], along: (i64, i64), across: (i64, i64)) -> i128 {
    let product = |a: i64, b: i64| i128::from(claim(a, along)) * i128::from(claim(b, across));
    items
        .iter()
        .map(|item| {
            let plain = product(item.along, item.across);
            let fits_turned = item.across <= along.0 && item.along <= across.0;
            let fits_plain = item.along <= along.0 && item.across <= across.0;
            let one = match (item.may_turn && fits_turned, fits_plain) {
                (true, true) => plain.min(product(item.across, item.along)),
                (true, false) => product(item.across, item.along),
                (false, _) => plain,
            };
            one * item.count as i128
        })
        .sum()
}

/// Thresholds worth trying: none (0) and sizes up to half the bin, spread over those there are.
fn thresholds(items: &[Item], side: i64) -> Vec<i64> {
    let mut sizes: Vec<i64> = items
        .iter()
        .flat_map(|item| {
            let turned = item.may_turn.then_some([item.along, item.across]);
            [item.along, item.across]
                .into_iter()
                .chain(turned.into_iter().flatten())
        })
        // A size over half the side sets the threshold at what is left beside it.
        .map(|size| {
            if size * 2 > side {
                side - size + 1
            } else {
                size
            }
        })
        .filter(|e| *e > 0 && *e * 2 <= side)
        .collect();
    sizes.sort_unstable();
    sizes.dedup();
    let step = sizes.len() / MOST_THRESHOLDS + 1;
    std::iter::once(0)
        .chain(sizes.into_iter().step_by(step))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at_least(problem: &Problem) -> i64 {
        of(problem).bins
    }

    fn problem(items: &[(i64, i64, usize)], may_turn: bool) -> Problem {
        Problem {
            items: items
                .iter()
                .map(|&(along, across, count)| Item {
                    along,
                    across,
                    count,
                    may_turn,
                })
                .collect(),
            bins: vec![Bin {
                along: 100,
                across: 100,
                cost: 1,
                limit: None,
                on_hand: false,
            }],
            ..Problem::default()
        }
    }

    #[test]
    fn items_over_half_a_sheet_take_a_sheet_each() {
        // Area alone says two: 4 x 60 x 60 = 14400.
        assert_eq!(at_least(&problem(&[(60, 60, 4)], true)), 4);
    }

    #[test]
    fn whole_sheets_are_paid_for() {
        // 1.5 large sheets by area: one large and one small, or three small at 44 each.
        let mut mixed = problem(&[(10, 10, 150)], false);
        mixed.bins = [(100, 79), (50, 44)]
            .map(|(across, cost)| Bin {
                across,
                cost,
                ..mixed.bins[0]
            })
            .to_vec();
        let bound = of(&mixed);
        assert_eq!((bound.bins, bound.bought, bound.cost), (2, 2, 79 + 44));
        // A half sheet on hand leaves one to buy.
        mixed.bins.push(Bin {
            cost: 0,
            limit: Some(1),
            on_hand: true,
            ..mixed.bins[1]
        });
        let bound = of(&mixed);
        assert_eq!((bound.bought, bound.cost), (1, 79));
    }

    #[test]
    fn area_counts_where_items_are_small() {
        assert_eq!(at_least(&problem(&[(10, 10, 101)], false)), 2);
        assert_eq!(at_least(&problem(&[(10, 10, 100)], false)), 1);
    }

    #[test]
    fn an_item_that_turns_claims_the_less() {
        // Two of 100 by 40 fit on one sheet, three do not.
        assert_eq!(at_least(&problem(&[(100, 40, 3)], true)), 2);
        assert_eq!(at_least(&problem(&[(40, 100, 2)], true)), 1);
    }

    #[test]
    fn a_threshold_is_what_fits_beside_a_large_item() {
        // 55 + 46 = 101 do not share a width of 100, though all three are but 156 % of a sheet.
        assert_eq!(at_least(&problem(&[(100, 55, 2), (100, 46, 1)], false)), 3);
        assert_eq!(at_least(&problem(&[(100, 55, 2), (100, 45, 1)], false)), 2);
        // 51, 51, 51 are 153 % by area; no two share.
        assert_eq!(at_least(&problem(&[(100, 51, 3)], false)), 3);
    }
}
