//! The problem as the search sees it: equal lengths merged, the longest first, common divisors
//! taken out of lengths and costs.

use std::cmp::Reverse;

use num_integer::gcd;

use super::{CutBars, Cutting, Sticks};

/// What a bar that does not exist costs, in dearest bars: it takes what limited stock does not
/// yield, so that every search begins with an answer.
const MISSING_COST: i128 = 1_000;

/// A kind of bar.
#[derive(Clone, Copy, Debug)]
pub(super) struct Stock {
    /// Which of [`Sticks::bars`]; none for a bar that does not exist.
    pub(super) bar: Option<usize>,
    /// Its length.
    pub(super) length: i64,
    /// Its cost, common divisors taken out.
    pub(super) cost: i128,
    /// Its cost, the dearest one that exists being 1.
    pub(super) price: f64,
    /// How many there are.
    pub(super) limit: Option<i64>,
}

/// The reduced problem.
#[derive(Clone, Debug)]
pub(super) struct Task {
    /// The lengths, longest first, no two alike.
    pub(super) lengths: Vec<i64>,
    /// How many of each.
    pub(super) demand: Vec<i64>,
    /// What they are cut from.
    pub(super) stock: Vec<Stock>,
    /// Which of [`Sticks::parts`] have each length.
    parts: Vec<Vec<usize>>,
}

/// Content of a bar: rows of [`Task::lengths`] and how many of each.
pub(super) type Content = Vec<(usize, i64)>;

/// Bars that are cut alike: which of [`Task::stock`], what comes out, how many.
#[derive(Clone, Debug)]
pub(super) struct Fixed {
    pub(super) stock: usize,
    pub(super) content: Content,
    pub(super) times: i64,
}

/// An answer and the bound of its cost, in the reduced costs.
#[derive(Clone, Debug, Default)]
pub(super) struct Found {
    pub(super) bars: Vec<Fixed>,
    pub(super) bound: i128,
}

impl Task {
    pub(super) fn of(sticks: &Sticks) -> Self {
        let longest = sticks.bars.iter().map(|bar| bar.length).max().unwrap_or(0);
        let mut order: Vec<usize> = (0..sticks.parts.len()).collect();
        let part = |index: &usize| sticks.parts.get(*index).copied();
        order.retain(|index| {
            part(index).is_some_and(|p| p.count > 0 && p.length > 0 && p.length <= longest)
        });
        order.sort_by_key(|index| (Reverse(part(index).map(|part| part.length)), *index));
        let mut task = Self {
            lengths: Vec::new(),
            demand: Vec::new(),
            stock: Vec::new(),
            parts: Vec::new(),
        };
        for index in order {
            let Some(part) = part(&index) else { continue };
            let count = i64::try_from(part.count).unwrap_or(i64::MAX);
            if task.lengths.last() == Some(&part.length) {
                if let Some(demand) = task.demand.last_mut() {
                    *demand = demand.saturating_add(count);
                }
                if let Some(parts) = task.parts.last_mut() {
                    parts.push(index);
                }
            } else {
                task.lengths.push(part.length);
                task.demand.push(count);
                task.parts.push(vec![index]);
            }
        }
        task.stock_of(sticks, longest);
        task.take_divisor_out();
        task
    }

    /// The same with some of its lengths alone and another demand of them.
    pub(super) fn narrowed(&self, rows: &[usize], demand: &[i64]) -> Self {
        Self {
            lengths: rows.iter().map(|row| self.length(*row)).collect(),
            demand: demand.to_vec(),
            stock: self.stock.clone(),
            parts: Vec::new(),
        }
    }

    /// Bars that something fits on, and one that does not exist where stock is limited.
    fn stock_of(&mut self, sticks: &Sticks, longest: i64) {
        let shortest = self.lengths.last().copied().unwrap_or(0);
        let bars =
            sticks.bars.iter().enumerate().filter(|(_, bar)| {
                bar.length >= shortest && bar.length > 0 && bar.limit != Some(0)
            });
        let dearest = bars.clone().map(|(_, bar)| bar.cost).max().unwrap_or(1);
        // Bars that all cost nothing are counted.
        let cost = |cost: i128| if dearest <= 0 { 1 } else { cost.max(0) };
        let divisor = bars.clone().fold(0, |d, (_, bar)| gcd(d, cost(bar.cost)));
        let (divisor, dearest) = (divisor.max(1), cost(dearest));
        for (index, bar) in bars {
            self.stock.push(Stock {
                bar: Some(index),
                length: bar.length,
                cost: cost(bar.cost) / divisor,
                price: cost(bar.cost) as f64 / dearest as f64,
                limit: bar
                    .limit
                    .map(|limit| i64::try_from(limit).unwrap_or(i64::MAX)),
            });
        }
        let is_enough = |stock: &Stock| stock.limit.is_none() && stock.length == longest;
        if !self.stock.iter().any(is_enough) {
            self.stock.push(Stock {
                bar: None,
                length: longest,
                cost: (dearest / divisor).saturating_mul(MISSING_COST),
                price: MISSING_COST as f64,
                limit: None,
            });
        }
    }

    /// Divides all lengths by what divides all parts: a bar's rest is cut off none of them.
    fn take_divisor_out(&mut self) {
        let divisor = self
            .lengths
            .iter()
            .fold(0, |d, length| gcd(d, i128::from(*length)));
        let divisor = i64::try_from(divisor).unwrap_or(1).max(1);
        for length in &mut self.lengths {
            *length /= divisor;
        }
        for stock in &mut self.stock {
            stock.length /= divisor;
        }
    }

    /// A length by its row.
    pub(super) fn length(&self, row: usize) -> i64 {
        self.lengths.get(row).copied().unwrap_or(0)
    }

    /// What a cost of one is as a price.
    pub(super) fn unit(&self) -> f64 {
        let priced = |stock: &Stock| {
            (stock.cost > 0 && stock.price > 0.0).then(|| stock.price / stock.cost as f64)
        };
        self.stock.iter().find_map(priced).unwrap_or(1.0)
    }

    /// Cost of bars, in the reduced costs.
    pub(super) fn cost(&self, bars: &[Fixed]) -> i128 {
        bars.iter()
            .filter_map(|fixed| {
                let stock = self.stock.get(fixed.stock)?;
                Some(stock.cost.saturating_mul(i128::from(fixed.times)))
            })
            .fold(0, i128::saturating_add)
    }

    /// The answer in the parts and bars it was asked in.
    pub(super) fn cutting(&self, sticks: &Sticks, found: &Found) -> Cutting {
        let mut uncut: Vec<usize> = sticks.parts.iter().map(|part| part.count).collect();
        let mut bars = Vec::new();
        for fixed in &found.bars {
            let Some(bar) = self.stock.get(fixed.stock).and_then(|stock| stock.bar) else {
                continue;
            };
            let mut left = fixed.times;
            while left > 0 {
                let Some((parts, times)) = self.hand_out(&fixed.content, left, &mut uncut) else {
                    break;
                };
                left -= i64::try_from(times).unwrap_or(left).max(1);
                bars.push(CutBars { bar, parts, times });
            }
        }
        merge(sticks, &mut bars);
        let cost_of = |cut: &CutBars| {
            let cost = sticks.bars.get(cut.bar).map_or(0, |bar| bar.cost);
            cost.saturating_mul(cut.times as i128)
        };
        let cost = bars.iter().map(cost_of).fold(0, i128::saturating_add);
        Cutting {
            at_least: self.bound(sticks, found.bound).min(cost),
            bars,
            cost,
            uncut,
        }
    }

    /// A reduced cost as it was asked.
    fn bound(&self, sticks: &Sticks, bound: i128) -> i128 {
        let real = |stock: &Stock| {
            let cost = stock.bar.and_then(|bar| sticks.bars.get(bar))?.cost;
            (stock.cost > 0 && cost > 0).then_some((cost, stock.cost))
        };
        self.stock
            .iter()
            .find_map(real)
            .map_or(0, |(cost, reduced)| bound.saturating_mul(cost / reduced))
    }

    /// Gives a content of rows to parts that have these lengths: as many bars alike as the parts
    /// allow, at most `most`.
    fn hand_out(
        &self,
        content: &Content,
        most: i64,
        uncut: &mut [usize],
    ) -> Option<(Vec<(usize, usize)>, usize)> {
        let mut parts: Vec<(usize, usize)> = Vec::new();
        for (row, count) in content {
            let mut wanted = usize::try_from(*count).unwrap_or(0);
            for part in self.parts.get(*row)? {
                let left = uncut.get(*part).copied().unwrap_or(0);
                let taken = left.min(wanted);
                if taken > 0 {
                    parts.push((*part, taken));
                    wanted -= taken;
                }
            }
        }
        let times = parts
            .iter()
            .map(|(part, taken)| uncut.get(*part).map_or(0, |left| left / taken))
            .min()?
            .min(usize::try_from(most).unwrap_or(usize::MAX));
        for (part, taken) in &parts {
            if let Some(left) = uncut.get_mut(*part) {
                *left = left.saturating_sub(taken * times);
            }
        }
        Some((parts, times))
    }
}

/// Bars alike next to each other: by kind of bar, then those of the longest parts first.
fn merge(sticks: &Sticks, bars: &mut Vec<CutBars>) {
    let key = |cut: &CutBars| {
        let part = |(part, count): &(usize, usize)| {
            let length = sticks.parts.get(*part).map_or(0, |part| part.length);
            (Reverse(length), *part, Reverse(*count))
        };
        (cut.bar, cut.parts.iter().map(part).collect::<Vec<_>>())
    };
    bars.sort_by_cached_key(key);
    bars.dedup_by(|next, kept| {
        let alike = next.bar == kept.bar && next.parts == kept.parts;
        if alike {
            kept.times += next.times;
        }
        alike
    });
}
