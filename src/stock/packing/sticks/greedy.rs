//! Bar by bar: each holds the longest length that is left, and what fills its rest best.
//!
//! The first round takes what leaves least (J. N. D. Gupta and J. C. Ho, Production Planning and
//! Control, 1999). In further rounds a length is worth the more the more was wasted where it was
//! cut before (sequential value correction: E. A. Mukhacheva and A. S. Mukhacheva; G. Belov and
//! G. Scheithauer, European Journal of Operational Research, 2006).

use super::Work;
use super::knapsack::{Knapsack, Offer};
use super::task::{Content, Fixed, Task};

/// Steps of the search for one bar.
const FILL_STEPS: usize = 1_000;
/// What a length is worth at first, by the unit.
const WORTH: i64 = 1_024;

/// What is still to be cut and how many bars there are for it.
#[derive(Clone, Debug)]
pub(super) struct Left {
    pub(super) demand: Vec<i64>,
    pub(super) limits: Vec<Option<i64>>,
}

impl Left {
    /// All of a task.
    pub(super) fn all(task: &Task) -> Self {
        Self {
            demand: task.demand.clone(),
            limits: task.stock.iter().map(|stock| stock.limit).collect(),
        }
    }

    fn is_at_hand(&self, stock: usize) -> bool {
        self.limits.get(stock).is_some_and(|l| *l != Some(0))
    }

    /// How many bars can be cut so.
    pub(super) fn times(&self, stock: usize, content: &Content) -> i64 {
        let bars = self.limits.get(stock).copied().flatten();
        content
            .iter()
            .map(|(row, count)| self.demand.get(*row).map_or(0, |left| left / count.max(&1)))
            .chain(bars)
            .min()
            .unwrap_or(0)
    }

    /// Takes bars away.
    pub(super) fn take(&mut self, fixed: &Fixed) {
        for (row, count) in &fixed.content {
            if let Some(left) = self.demand.get_mut(*row) {
                *left -= count * fixed.times;
            }
        }
        if let Some(Some(bars)) = self.limits.get_mut(fixed.stock) {
            *bars -= fixed.times;
        }
    }
}

/// Worths of lengths, bettered from round to round.
pub(super) struct Worths(Vec<i64>);

impl Worths {
    /// A length is worth its length.
    pub(super) fn plain(task: &Task) -> Self {
        Self(
            task.lengths
                .iter()
                .map(|l| l.saturating_mul(WORTH))
                .collect(),
        )
    }

    /// What was cut from a bar becomes worth what it took of that bar, waste and all; the long
    /// ones bear more of it.
    fn correct(&mut self, task: &Task, fixed: &Fixed, round: i64) {
        let bar = task.stock.get(fixed.stock).map_or(0, |stock| stock.length);
        let used: i64 = used(task, &fixed.content).max(1);
        for (row, _) in &fixed.content {
            let length = i128::from(task.length(*row));
            let plain = length * i128::from(WORTH) * i128::from(bar) / i128::from(used);
            let longer = plain * length * i128::from(round % 8) / i128::from(bar.max(1)) / 64;
            let fresh = i64::try_from(plain + longer).unwrap_or(i64::MAX);
            if let Some(worth) = self.0.get_mut(*row) {
                let kept = 1 + round % 3;
                *worth = worth.saturating_mul(kept).saturating_add(fresh) / (kept + 1);
            }
        }
    }

    /// Cuts all that is left, bar by bar. Corrects worths on the way.
    pub(super) fn cut(
        &mut self,
        task: &Task,
        mut left: Left,
        round: i64,
        work: &mut Work,
    ) -> Vec<Fixed> {
        let mut bars = Vec::new();
        while let Some(fixed) = self.next(task, &left, work) {
            left.take(&fixed);
            self.correct(task, &fixed, round);
            bars.push(fixed);
        }
        bars
    }

    /// The next bar: of those that could be, the one whose filled length costs least.
    fn next(&self, task: &Task, left: &Left, work: &mut Work) -> Option<Fixed> {
        let longest = left.demand.iter().position(|demand| *demand > 0)?;
        let mut best: Option<(i128, i64, usize, Content)> = None;
        for (k, stock) in task.stock.iter().enumerate() {
            if !left.is_at_hand(k) || stock.length < task.length(longest) {
                continue;
            }
            let content = self.fill(task, left, longest, stock.length, work);
            let used = used(task, &content);
            let better = best.as_ref().is_none_or(|(cost, filled, _, _)| {
                stock.cost.saturating_mul(i128::from(*filled))
                    < cost.saturating_mul(i128::from(used))
            });
            if better {
                best = Some((stock.cost, used, k, content));
            }
        }
        let (_, _, stock, content) = best?;
        let times = left.times(stock, &content);
        (times > 0).then_some(Fixed {
            stock,
            content,
            times,
        })
    }

    /// The longest length and what is worth most beside it.
    fn fill(
        &self,
        task: &Task,
        left: &Left,
        longest: usize,
        capacity: i64,
        work: &mut Work,
    ) -> Content {
        let rest = capacity - task.length(longest);
        let rows = task.lengths.iter().zip(&left.demand).zip(&self.0);
        work.spend(task.lengths.len() * 24);
        let offers = rows
            .enumerate()
            .filter(|(_, ((length, demand), _))| **demand > 0 && **length <= rest)
            .map(|(row, ((length, demand), value))| Offer {
                row,
                length: *length,
                value: *value,
                most: demand - i64::from(row == longest),
            });
        let fill = Knapsack::new(offers.collect()).best(None, (rest, 0), &[], FILL_STEPS, work);
        let mut content = fill.content.unwrap_or_default();
        match content.iter_mut().find(|(row, _)| *row == longest) {
            Some((_, count)) => *count += 1,
            None => content.insert(0, (longest, 1)),
        }
        content
    }
}

/// Length of a content.
pub(super) fn used(task: &Task, content: &Content) -> i64 {
    content
        .iter()
        .map(|(row, count)| task.length(*row).saturating_mul(*count))
        .fold(0, i64::saturating_add)
}
