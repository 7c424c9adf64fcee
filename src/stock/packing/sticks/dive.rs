//! Search for the least cost: contents of the linear programme are fixed one by one, the
//! programme being solved again for what is left, and a few of these choices are taken back
//! (diving with limited discrepancies: R. Sadykov, F. Vanderbeck, A. Pessoa, I. Tahiri and
//! E. Uchoa, INFORMS Journal on Computing, 2019).

use std::collections::BTreeSet;

use super::Work;
use super::greedy::{Left, Worths};
use super::relaxation::{Ending, Kind, Open, Pool, whole};
use super::task::{Content, Fixed, Found, Task};

/// Steps of the whole search; about 0.3 s of a release build.
const MOST_WORK: u64 = 450_000_000;
/// Steps for each length and each bar of a problem, at most.
const SIZE_WORK: u64 = 2_000_000;
/// Rounds of cutting bar by bar before the linear programme is asked.
const ROUNDS: i64 = 20;
/// Amounts that far from a whole number are that number.
const SURE: f64 = 1e-3;
/// A rest that the programme says costs less, in dearest bars, is also cut bar by bar.
const COMPLETED: f64 = 16.0;
/// What a programme may cost more than it should, for rounding.
const PRUNED: f64 = 1e-4;
/// Work of a node that is not counted elsewhere.
const NODE: usize = 60_000;
/// Lengths up to which a problem is solved as a programme: its room grows with their square.
const MOST_ROWS: usize = 700;
/// Lengths up to which nodes are kept to come back to.
const MOST_KEPT_ROWS: usize = 250;
/// Choices taken back in one dive, at most.
const MOST_DISCREPANCIES: usize = 6;

/// The cheapest cutting that the work allows, and a bound.
pub(super) fn search(task: &Task) -> Found {
    let mut work = Work { left: MOST_WORK };
    let mut search = Search {
        task,
        best: Vec::new(),
        cost: i128::MAX,
        bound: by_length(task),
    };
    let mut worths = Worths::plain(task);
    let mut tried: BTreeSet<(usize, Content)> = BTreeSet::new();
    for round in 0..ROUNDS {
        let bars = worths.cut(task, Left::all(task), round, &mut work);
        tried.extend(
            bars.iter()
                .map(|fixed| (fixed.stock, fixed.content.clone())),
        );
        search.keep(bars);
        if search.is_proven() || work.is_spent() {
            break;
        }
    }
    if !search.is_proven() && task.lengths.len() <= MOST_ROWS {
        let bars: i64 = search.best.iter().map(|fixed| fixed.times).sum();
        let size = u64::try_from(bars).unwrap_or(0) + task.lengths.len() as u64;
        work.left = work.left.min(size.saturating_mul(SIZE_WORK));
        search.dive(tried, &mut work);
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
    best: Vec<Fixed>,
    cost: i128,
    bound: i128,
}

/// The rows that are open in a part of the search, and their programme.
struct Frame {
    task: Task,
    pool: Pool,
    /// Which rows of the whole task they are.
    rows: Vec<usize>,
}

/// A node of the search: what is open, and what is fixed in rows of the whole task.
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

    fn dive(&mut self, tried: BTreeSet<(usize, Content)>, work: &mut Work) {
        let mut frame = Frame {
            task: self.task.clone(),
            pool: Pool::new(self.task),
            rows: (0..self.task.lengths.len()).collect(),
        };
        for (stock, content) in tried {
            frame.pool.add(self.task, stock, content);
        }
        let left = Left::all(self.task);
        let mut root = Node {
            open: frame.pool.open(self.task, left.demand, left.limits),
            fixed: Vec::new(),
            cost: 0,
        };
        let (ending, bound) = frame.pool.solve(self.task, &mut root.open, self.cost, work);
        self.bound = self.bound.max(bound);
        if self.is_proven() || matches!(ending, Ending::Stuck | Ending::TooDear) {
            return;
        }
        for discrepancies in 0..=MOST_DISCREPANCIES {
            self.explore(&mut frame, root.clone(), discrepancies, work);
            if self.is_proven() || work.is_spent() {
                return;
            }
        }
    }

    /// Fixes what the programme of a node takes, solves again and goes on.
    fn explore(
        &mut self,
        frame: &mut Frame,
        mut node: Node,
        mut discrepancies: usize,
        work: &mut Work,
    ) {
        loop {
            let allowed = self.cost - node.cost;
            work.spend(NODE);
            let (ending, _) = frame.pool.solve(&frame.task, &mut node.open, allowed, work);
            let Ending::Cost(cost) = ending else {
                return;
            };
            if cost > (allowed - 1) as f64 * self.task.unit() + PRUNED {
                return;
            }
            if cost < COMPLETED {
                self.complete(frame, &node, work);
            }
            if self.is_proven() || work.is_spent() || node.open.is_done() {
                return;
            }
            let Some(id) = frame.choose(&node) else {
                return;
            };
            if discrepancies == 0 || frame.rows.len() > MOST_KEPT_ROWS {
                frame.fix(&mut node, id, true);
                self.go_on(frame, node, discrepancies, work);
                return;
            }
            let mut child = node.clone();
            frame.fix(&mut child, id, false);
            self.go_on(frame, child, discrepancies, work);
            if self.is_proven() || work.is_spent() {
                return;
            }
            discrepancies -= 1;
            node.open.shut.push(id);
        }
    }

    /// Explores a node in which something was fixed, in a frame of its own where that pays.
    fn go_on(&mut self, frame: &mut Frame, mut node: Node, discrepancies: usize, work: &mut Work) {
        node.cost = self.task.cost(&node.fixed);
        if frame.is_wide(&node) {
            let (mut narrow, node) = frame.narrowed(node);
            self.explore(&mut narrow, node, discrepancies, work);
        } else {
            self.explore(frame, node, discrepancies, work);
        }
    }

    /// Cuts the rest of a node bar by bar.
    fn complete(&mut self, frame: &Frame, node: &Node, work: &mut Work) {
        let left = Left {
            demand: node.open.demand.clone(),
            limits: node.open.limits.clone(),
        };
        let bars = Worths::plain(&frame.task).cut(&frame.task, left, 0, work);
        let bars = bars.into_iter().map(|fixed| frame.in_whole(fixed));
        self.keep(bars.chain(node.fixed.iter().cloned()).collect());
    }
}

impl Frame {
    /// Bars in rows of the whole task.
    fn in_whole(&self, mut fixed: Fixed) -> Fixed {
        for (row, _) in &mut fixed.content {
            *row = self.rows.get(*row).copied().unwrap_or(usize::MAX);
        }
        fixed
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
            let better = best
                .is_none_or(|(most, kept)| sure > most + 1e-9 || (sure > most - 1e-9 && id < kept));
            if better {
                best = Some((sure, id));
            }
        }
        best.map(|(_, id)| id)
    }

    /// Fixes a content, and with one taken whole all others taken whole.
    fn fix(&self, node: &mut Node, id: usize, all: bool) {
        let is_whole = |amount: &f64| *amount >= 1.0 - SURE;
        let mut taken: Vec<(usize, f64)> = node.open.taken().collect();
        let chosen = taken
            .iter()
            .find(|(head, _)| *head == id)
            .map_or(1.0, |(_, a)| *a);
        if all && is_whole(&chosen) {
            taken.retain(|(_, amount)| is_whole(amount));
        } else {
            taken = vec![(id, chosen.max(1.0))];
        }
        for (id, amount) in taken {
            let Kind::Content(stock, content) = self.pool.kind(id) else {
                continue;
            };
            let mut left = Left {
                demand: std::mem::take(&mut node.open.demand),
                limits: std::mem::take(&mut node.open.limits),
            };
            let fixed = Fixed {
                stock: *stock,
                content: content.clone(),
                times: left.times(*stock, content).min(whole(amount + SURE)),
            };
            left.take(&fixed);
            node.open.demand = left.demand;
            node.open.limits = left.limits;
            if fixed.times > 0 {
                node.fixed.push(self.in_whole(fixed));
            }
        }
    }

    /// True where a quarter of the rows has nothing open: worth a programme of its own.
    fn is_wide(&self, node: &Node) -> bool {
        let open = node.open.demand.iter().filter(|left| **left > 0).count();
        open > 0 && open * 4 <= self.rows.len() * 3
    }

    /// A frame of the open rows alone, and the node in it.
    fn narrowed(&self, node: Node) -> (Self, Node) {
        let open = &node.open;
        let kept: Vec<usize> = (0..self.rows.len())
            .filter(|row| open.demand.get(*row).is_some_and(|left| *left > 0))
            .collect();
        let demand: Vec<i64> = kept
            .iter()
            .filter_map(|row| open.demand.get(*row).copied())
            .collect();
        let task = self.task.narrowed(&kept, &demand);
        let mut pool = Pool::new(&task);
        let mut shut = Vec::new();
        for (id, stock, content) in self.pool.contents() {
            let is_shut = open.shut.contains(&id);
            if !is_shut && !self.pool.is_usable(open, id) {
                continue;
            }
            let place =
                |(row, count): &(usize, i64)| kept.binary_search(row).ok().map(|row| (row, *count));
            let Some(content) = content.iter().map(place).collect() else {
                continue;
            };
            let id = pool.add(&task, stock, content);
            if is_shut {
                shut.push(id);
            }
        }
        let mut fresh = pool.open(&task, demand, open.limits.clone());
        fresh.shut = shut;
        let whole_row = |row: &usize| self.rows.get(*row).copied();
        let frame = Self {
            rows: kept.iter().filter_map(whole_row).collect(),
            task,
            pool,
        };
        let node = Node {
            open: fresh,
            fixed: node.fixed,
            cost: node.cost,
        };
        (frame, node)
    }
}
