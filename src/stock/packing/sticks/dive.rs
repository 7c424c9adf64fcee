//! Search for the least cost: contents of the linear programme are fixed one by one, the
//! programme being solved again for what is left, and a few of these choices are taken back
//! (diving with limited discrepancies: R. Sadykov, F. Vanderbeck, A. Pessoa, I. Tahiri and
//! E. Uchoa, INFORMS Journal on Computing, 2019).

use super::Work;
use super::greedy::{Left, Worths};
use super::relaxation::{Ending, Kind, Open, Pool, whole};
use super::task::{Fixed, Found, Task};

/// Steps of the whole search; about 0.3 s of a release build.
const MOST_WORK: u64 = 700_000_000;
/// Rounds of cutting bar by bar before the linear programme is asked.
const ROUNDS: i64 = 12;
/// Amounts that far from a whole number are that number.
const SURE: f64 = 1e-3;
/// Choices taken back in one dive, at most.
const MOST_DISCREPANCIES: usize = 6;

/// The cheapest cutting that the work allows, and a bound.
pub(super) fn search(task: &Task) -> Found {
    let mut work = Work { left: MOST_WORK };
    let mut search = Search {
        task,
        pool: Pool::new(task),
        best: Vec::new(),
        cost: i128::MAX,
        bound: by_length(task),
    };
    let mut worths = Worths::plain(task);
    for round in 0..ROUNDS {
        let bars = worths.cut(task, Left::all(task), round, &mut work);
        search.keep(bars);
        if search.is_proven() {
            break;
        }
    }
    if !search.is_proven() {
        search.dive(&mut work);
    }
    Found {
        bars: search.best,
        bound: search.bound,
    }
}

/// Least cost by length alone.
fn by_length(task: &Task) -> i128 {
    let limits: Vec<Option<i64>> = task.stock.iter().map(|stock| stock.limit).collect();
    let most: Vec<i64> = task.stock.iter().map(|stock| stock.length).collect();
    super::proof::least_cost(task, &task.demand, &limits, &task.lengths, &most)
}

struct Search<'a> {
    task: &'a Task,
    pool: Pool,
    best: Vec<Fixed>,
    cost: i128,
    bound: i128,
}

/// A node of the search: what is fixed and what is open.
#[derive(Clone)]
struct Node {
    open: Open,
    fixed: Vec<Fixed>,
    cost: i128,
}

impl Search<'_> {
    fn is_proven(&self) -> bool {
        self.cost <= self.bound
    }

    fn keep(&mut self, bars: Vec<Fixed>) {
        let cost = self.task.cost(&bars);
        if cost < self.cost {
            self.cost = cost;
            self.best = bars;
        }
    }

    fn dive(&mut self, work: &mut Work) {
        let left = Left::all(self.task);
        let mut root = Node {
            open: self.pool.open(self.task, left.demand, left.limits),
            fixed: Vec::new(),
            cost: 0,
        };
        for bars in std::iter::once(self.best.clone()) {
            for fixed in bars {
                self.pool.add(self.task, fixed.stock, fixed.content);
            }
        }
        let (ending, bound) = self
            .pool
            .solve(self.task, &mut root.open, self.cost, work);
        self.bound = self.bound.max(bound);
        eprintln!("root {ending:?} bound {bound} cost {} work {} pool {} piv {:?} pri {:?}", self.cost, work.left, self.pool.size(), super::relaxation::PIV, super::relaxation::PRI);
        if self.is_proven() || matches!(ending, Ending::Stuck | Ending::TooDear) {
            return;
        }
        for discrepancies in 0..=MOST_DISCREPANCIES {
            self.explore(root.clone(), discrepancies, work);
            eprintln!("disc {discrepancies} cost {} work {} pool {} piv {:?} pri {:?}", self.cost, work.left, self.pool.size(), super::relaxation::PIV, super::relaxation::PRI);
            if self.is_proven() || work.is_spent() {
                return;
            }
        }
    }

    /// Fixes what the programme of a node takes, solves again and goes on.
    fn explore(&mut self, mut node: Node, mut discrepancies: usize, work: &mut Work) {
        loop {
            let allowed = self.cost - node.cost;
            let (ending, _) = self.pool.solve(self.task, &mut node.open, allowed, work);
            let Ending::Cost(cost) = ending else {
                return;
            };
            let unit = self.task.unit();
            if cost > (allowed - 1) as f64 * unit + 1e-6 {
                return;
            }
            self.complete(&node, work);
            if self.is_proven() || work.is_spent() || node.open.is_done() {
                return;
            }
            let Some(id) = self.choose(&node) else {
                return;
            };
            let mut child = node.clone();
            self.fix(&mut child, id);
            self.explore(child, discrepancies, work);
            if self.is_proven() || work.is_spent() || discrepancies == 0 {
                return;
            }
            discrepancies -= 1;
            node.open.shut.push(id);
        }
    }

    /// Cuts the rest of a node bar by bar.
    fn complete(&mut self, node: &Node, work: &mut Work) {
        let left = Left {
            demand: node.open.demand.clone(),
            limits: node.open.limits.clone(),
        };
        let mut bars = Worths::plain(self.task).cut(self.task, left, 0, work);
        bars.extend(node.fixed.iter().cloned());
        self.keep(bars);
    }

    /// The content to fix: the one that the programme takes most surely.
    fn choose(&self, node: &Node) -> Option<usize> {
        let mut best: Option<(f64, usize)> = None;
        for (id, amount) in node.open.taken() {
            let is_content = matches!(self.pool.kind(id), Kind::Content(..));
            if !is_content || amount < SURE || !self.pool.is_usable(&node.open, id) {
                continue;
            }
            let sure = if amount >= 1.0 - SURE {
                1.0 + amount
            } else {
                amount
            };
            if best.is_none_or(|(most, kept)| sure > most + 1e-9 || (sure > most - 1e-9 && id < kept)) {
                best = Some((sure, id));
            }
        }
        best.map(|(_, id)| id)
    }

    /// Fixes a content, and with one taken whole all others taken whole.
    fn fix(&self, node: &mut Node, id: usize) {
        let chosen = node.open.taken().find(|(head, _)| *head == id);
        let whole_ones: Vec<(usize, f64)> = match chosen {
            Some((_, amount)) if amount >= 1.0 - SURE => node
                .open
                .taken()
                .filter(|(_, amount)| *amount >= 1.0 - SURE)
                .collect(),
            Some(_) | None => vec![(id, 1.0)],
        };
        for (id, amount) in whole_ones {
            let Kind::Content(stock, content) = self.pool.kind(id) else {
                continue;
            };
            let mut left = Left {
                demand: std::mem::take(&mut node.open.demand),
                limits: std::mem::take(&mut node.open.limits),
            };
            let times = left.times(*stock, content).min(whole(amount + SURE));
            let fixed = Fixed {
                stock: *stock,
                content: content.clone(),
                times,
            };
            left.take(&fixed);
            node.open.demand = left.demand;
            node.open.limits = left.limits;
            if times > 0 {
                node.cost += self.task.cost(std::slice::from_ref(&fixed));
                node.fixed.push(fixed);
            }
        }
    }
}
