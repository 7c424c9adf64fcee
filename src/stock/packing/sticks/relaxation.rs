//! The linear programme of all contents of a bar, its columns made as they are wanted.
//!
//! Rows: every length, then every kind of bar of which there are few. Columns: contents of a bar,
//! and what a row has over. Only contents that the open demand can use are let in, which makes
//! the bound the sharper the less is left.

use super::Work;
use super::knapsack::{Knapsack, Offer, Table};
use super::proof;
use super::simplex::{BETTER, Basis, Column};
use super::task::{Content, Task};

/// What a price of one becomes in whole numbers.
const SCALE: f64 = 4_294_967_296.0;
/// Cost of a content that the open demand cannot use, while it is still in the basis.
const UNUSABLE: f64 = 1_000.0;
/// How far prices are pulled towards those that gave the best bound (smoothing: P. Wentges,
/// International Transactions in Operational Research, 1997).
const PULL: f64 = 0.7;
/// Columns looked at again before the whole pool is.
const HOPEFUL: usize = 16;
/// Steps of a search for a content before a table is made for it.
const QUICK_STEPS: usize = 3_000;
/// By how much a demand is made larger, at least.
const LEAN: f64 = 1e-4;
/// Steps of one search for a content with that table.
const FILL_STEPS: usize = 200_000;

/// A column of the pool.
#[derive(Clone, Debug)]
pub(super) enum Kind {
    /// A content of a bar of that stock.
    Content(usize, Content),
    /// What a row has over, or does not take.
    Rest,
}

/// All columns found so far.
#[derive(Clone, Debug)]
pub(super) struct Pool {
    columns: Vec<Column>,
    kinds: Vec<Kind>,
    /// Row of each kind of stock of which there are few.
    limit_rows: Vec<Option<usize>>,
    rows: usize,
    /// Room for the search of contents.
    table: Table,
}

/// What is still to be cut, and the basis of its programme.
#[derive(Clone, Debug)]
pub(super) struct Open {
    pub(super) demand: Vec<i64>,
    /// How many bars there are still, by kind.
    pub(super) limits: Vec<Option<i64>>,
    /// Columns not to be taken.
    pub(super) shut: Vec<usize>,
    basis: Basis,
}

/// How the programme of an open demand ended.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Ending {
    /// Solved, at that cost.
    Cost(f64),
    /// Proven to cost no less than was given.
    TooDear,
    /// No steps left, or no way on.
    Stuck,
}

/// What prices of the rows call for.
struct Offered {
    /// Contents worth more than their bar.
    found: Vec<(usize, Content)>,
    /// Proven least cost.
    bound: i128,
    /// By how much the prices must be scaled to claim nothing too much, about.
    scale: f64,
}

impl Pool {
    pub(super) fn new(task: &Task) -> Self {
        let mut rows = task.lengths.len();
        let mut limit_rows = Vec::new();
        for stock in &task.stock {
            limit_rows.push(stock.limit.map(|_| rows));
            rows += usize::from(stock.limit.is_some());
        }
        let mut pool = Self {
            columns: Vec::new(),
            kinds: Vec::new(),
            limit_rows,
            rows,
            table: Table::default(),
        };
        for row in 0..rows {
            let entry = if row < task.lengths.len() { -1.0 } else { 1.0 };
            pool.columns.push(Column {
                cost: 0.0,
                entries: vec![(row, entry)],
                size: 1.0,
            });
            pool.kinds.push(Kind::Rest);
        }
        pool
    }

    pub(super) fn kind(&self, column: usize) -> &Kind {
        self.kinds.get(column).unwrap_or(&Kind::Rest)
    }

    /// All contents: the column, the stock and the content.
    pub(super) fn contents(&self) -> impl Iterator<Item = (usize, usize, &Content)> {
        let content = |(id, kind)| match kind {
            &Kind::Content(stock, ref content) => Some((id, stock, content)),
            Kind::Rest => None,
        };
        self.kinds.iter().enumerate().filter_map(content)
    }

    /// Takes a content in.
    pub(super) fn add(&mut self, task: &Task, stock: usize, content: Content) -> usize {
        let mut entries: Vec<(usize, f64)> = content
            .iter()
            .map(|(row, count)| (*row, *count as f64))
            .collect();
        let limit_row = self.limit_rows.get(stock).copied().flatten();
        entries.extend(limit_row.map(|row| (row, 1.0)));
        self.columns.push(Column {
            cost: task.stock.get(stock).map_or(1.0, |stock| stock.price),
            size: entries.iter().map(|(_, e)| e * e).sum::<f64>().sqrt(),
            entries,
        });
        self.kinds.push(Kind::Content(stock, content));
        self.columns.len() - 1
    }

    /// A demand with a basis to begin with: every length by itself on the longest bar.
    pub(super) fn open(&mut self, task: &Task, demand: Vec<i64>, limits: Vec<Option<i64>>) -> Open {
        let longest = task
            .stock
            .iter()
            .enumerate()
            .filter(|(_, stock)| stock.limit.is_none())
            .max_by_key(|(k, stock)| (stock.length, std::cmp::Reverse((stock.cost, *k))))
            .map_or(0, |(k, _)| k);
        let capacity = task.stock.get(longest).map_or(0, |stock| stock.length);
        let mut heads: Vec<usize> = (0..self.rows).collect();
        for (row, head) in heads.iter_mut().enumerate() {
            let needed = demand.get(row).copied().unwrap_or(0);
            if needed > 0 {
                let fits = (capacity / task.length(row).max(1)).max(1);
                *head = self.add(task, longest, vec![(row, fits.min(needed))]);
            }
        }
        let right = leaning(&demand, &limits);
        let basis = Basis::diagonal(heads, &self.columns, &right);
        Open {
            demand,
            limits,
            shut: Vec::new(),
            basis,
        }
    }

    /// Solves the programme of an open demand, making columns as they are wanted. Ends early
    /// where it is proven to cost `too_dear` (in [`super::task::Stock::cost`]) or more.
    pub(super) fn solve(
        &mut self,
        task: &Task,
        open: &mut Open,
        too_dear: i128,
        work: &mut Work,
    ) -> (Ending, i128) {
        let mut proven = 0;
        if !self.settle(open, work) {
            let mut fresh = self.open(task, open.demand.clone(), open.limits.clone());
            fresh.shut.clone_from(&open.shut);
            *open = fresh;
        }
        let mut centre: Option<(f64, Vec<f64>)> = None;
        let mut pull = PULL;
        loop {
            let Some(moves) = self.exhaust(open, work).filter(|_| !work.is_spent()) else {
                return (Ending::Stuck, proven);
            };
            if moves == 0 {
                pull = 0.0;
            }
            let prices = match &centre {
                Some((_, kept)) if pull > 0.0 => kept
                    .iter()
                    .zip(&open.basis.prices)
                    .map(|(kept, price)| pull * kept + (1.0 - pull) * price)
                    .collect(),
                _ => open.basis.prices.clone(),
            };
            let offer = self.price(task, open, &prices, work);
            proven = proven.max(offer.bound);
            if proven >= too_dear {
                return (Ending::TooDear, proven);
            }
            let cost = open.worth(&open.basis.prices);
            let is_sharp = proven as f64 * task.unit() >= cost - 1e-6;
            if (offer.found.is_empty() && (pull == 0.0 || centre.is_none())) || is_sharp {
                return (Ending::Cost(cost), proven);
            }
            let about = open.worth(&prices) * offer.scale;
            if centre.as_ref().is_none_or(|(best, _)| about > *best) {
                centre = Some((about, prices));
            }
            pull = if offer.found.is_empty() { 0.0 } else { PULL };
            for (stock, content) in offer.found {
                self.add(task, stock, content);
            }
        }
    }

    /// Proven least cost of an open demand at its present prices, and contents that better it.
    fn price(&mut self, task: &Task, open: &Open, prices: &[f64], work: &mut Work) -> Offered {
        let values: Vec<i64> = prices
            .iter()
            .zip(&open.demand)
            .map(|(price, demand)| {
                if *demand > 0 {
                    whole(*price * SCALE)
                } else {
                    0
                }
            })
            .collect();
        let offers = values
            .iter()
            .zip(&open.demand)
            .enumerate()
            .map(|(row, (value, demand))| Offer {
                row,
                length: task.length(row),
                value: *value,
                most: *demand,
            });
        let sack = Knapsack::new(offers.collect());
        let mut scale: f64 = 1.0;
        let mut found = Vec::new();
        let mut most = Vec::new();
        let longest = task.stock.iter().map(|stock| stock.length).max();
        let longest = longest.unwrap_or(0);
        let mut tabulated = false;
        for (k, stock) in task.stock.iter().enumerate() {
            let limit_row = self.limit_rows.get(k).copied().flatten();
            let claim = limit_row
                .and_then(|row| prices.get(row))
                .map_or(0.0, |price| -price.min(0.0));
            let floor = whole((stock.price + claim + BETTER) * SCALE);
            let shut: Vec<&Content> = open
                .shut
                .iter()
                .filter_map(|id| match self.kinds.get(*id) {
                    Some(Kind::Content(of, content)) if *of == k => Some(content),
                    Some(Kind::Content(..) | Kind::Rest) | None => None,
                })
                .collect();
            let asked = (stock.length, floor);
            let mut fill = sack.best(None, asked, &shut, QUICK_STEPS, work);
            if fill.content.is_none() && fill.at_most > floor {
                if !tabulated {
                    sack.tabulate(longest, &mut self.table, work);
                    tabulated = true;
                }
                fill = sack.best(Some(&self.table), asked, &shut, FILL_STEPS, work);
            }
            most.push(fill.at_most);
            let bears = (stock.price + claim) * SCALE / fill.at_most.max(1) as f64;
            scale = scale.min(bears);
            found.extend(fill.content.map(|content| (k, content)));
        }
        let bound = proof::least_cost(task, &open.demand, &open.limits, &values, &most);
        Offered {
            found,
            bound,
            scale,
        }
    }

    /// Right side and costs of a changed demand; false where no basis comes of that.
    fn settle(&self, open: &mut Open, work: &mut Work) -> bool {
        let right = leaning(&open.demand, &open.limits);
        open.basis.refresh(&self.columns, &right, work);
        open.basis.set_right(&right, work);
        if !open.basis.mend(&self.columns, work) {
            return false;
        }
        let costs = self.costs(open);
        open.basis.set_costs(&costs, work);
        true
    }

    /// Takes in columns of the pool until none betters the programme; how many were taken. None
    /// where the programme has no end.
    fn exhaust(&self, open: &mut Open, work: &mut Work) -> Option<usize> {
        let right = leaning(&open.demand, &open.limits);
        let mut moves = 0;
        loop {
            // The whole pool is looked through now and then, the best of it again and again.
            let mut hopeful = self.hopeful(open, work);
            if hopeful.is_empty() || work.is_spent() {
                return Some(moves);
            }
            while let Some(id) = self.best_of(&mut hopeful, open, work) {
                open.basis.enter(id, self.columns.get(id)?, work)?;
                open.basis.refresh(&self.columns, &right, work);
                moves += 1;
            }
        }
    }

    /// The columns that better the programme most.
    fn hopeful(&self, open: &Open, work: &mut Work) -> Vec<usize> {
        work.spend(self.columns.len() * 8);
        let mut found: Vec<(f64, usize)> = Vec::new();
        for (id, column) in self.columns.iter().enumerate() {
            let reduced = open.basis.reduced(column);
            if reduced < -BETTER && self.is_usable(open, id) {
                found.push((reduced / column.size, id));
            }
        }
        found.sort_by(|a, b| a.0.total_cmp(&b.0).then(a.1.cmp(&b.1)));
        found.into_iter().map(|(_, id)| id).take(HOPEFUL).collect()
    }

    /// The best of some columns; those that no longer better anything are dropped.
    fn best_of(&self, ids: &mut Vec<usize>, open: &Open, work: &mut Work) -> Option<usize> {
        work.spend(ids.len() * 8);
        let mut best: Option<(f64, usize)> = None;
        ids.retain(|id| {
            let Some(column) = self.columns.get(*id) else {
                return false;
            };
            let reduced = open.basis.reduced(column);
            let by_size = reduced / column.size;
            if reduced < -BETTER && best.is_none_or(|(least, _)| by_size < least) {
                best = Some((by_size, *id));
            }
            reduced < -BETTER
        });
        best.map(|(_, id)| id)
    }

    /// Costs of the columns in the basis.
    fn costs(&self, open: &Open) -> Vec<f64> {
        let cost = |id: &usize| {
            if self.is_usable(open, *id) {
                self.columns.get(*id).map_or(0.0, |column| column.cost)
            } else {
                UNUSABLE
            }
        };
        open.basis.heads.iter().map(cost).collect()
    }

    /// True for a content that the open demand can use whole.
    pub(super) fn is_usable(&self, open: &Open, id: usize) -> bool {
        match self.kind(id) {
            Kind::Rest => true,
            Kind::Content(_, content) => {
                let fits = |(row, count): &(usize, i64)| {
                    open.demand.get(*row).is_some_and(|left| left >= count)
                };
                content.iter().all(fits) && !open.shut.contains(&id)
            }
        }
    }
}

impl Open {
    /// What demand and limits are worth at the prices of the rows.
    fn worth(&self, prices: &[f64]) -> f64 {
        let limits = self.limits.iter().filter_map(|limit| *limit);
        self.demand
            .iter()
            .copied()
            .chain(limits)
            .zip(prices)
            .map(|(right, price)| right as f64 * price)
            .sum()
    }

    /// The contents taken and how much of each.
    pub(super) fn taken(&self) -> impl Iterator<Item = (usize, f64)> {
        let heads = self.basis.heads.iter().copied();
        heads.zip(self.basis.amounts.iter().copied())
    }

    /// True where nothing is left to cut.
    pub(super) fn is_done(&self) -> bool {
        self.demand.iter().all(|left| *left == 0)
    }
}

/// Demands and limits as the right side of the programme, every demand a little larger and none
/// alike, so that no two columns are forced out at once and the method goes on.
fn leaning(demand: &[i64], limits: &[Option<i64>]) -> Vec<f64> {
    let more = |(row, value): (usize, &i64)| {
        if *value > 0 {
            *value as f64 + LEAN * (1.0 + (row * 7919 % 1009) as f64 / 1009.0)
        } else {
            0.0
        }
    };
    let limits = limits.iter().filter_map(|limit| *limit);
    let demand = demand.iter().enumerate().map(more);
    demand.chain(limits.map(|limit| limit as f64)).collect()
}

/// The whole part of a number.
#[expect(
    clippy::cast_possible_truncation,
    reason = "a cast of a float saturates"
)]
pub(super) fn whole(value: f64) -> i64 {
    value.max(0.0).floor() as i64
}
