//! Many constructions, one kept: least cost, then fewest bins, then fewest fence settings, then
//! the largest offcut.
//!
//! Work is counted in places looked at, never in time, so that the same problem has the same
//! answer on every machine.

use std::collections::BTreeSet;

use super::bound::at_least;
use super::guillotine::{self, Choice, Rules, SplitRule};
use super::goal::Goal;
use super::sheet::Sheet;
use super::strips::{self, Lie};
use super::tree::{Piece, Tree, Way};
use super::{Packed, Problem, Remaining};

/// Places looked at before no further construction begins. About 0.1 s of a release build.
const MOST_WORK: u64 = 16_000_000;
/// Work on shuffled orders, for each item and bin of the problem, once all constructions are
/// tried and more bins are used than are proven to be needed.
const SHUFFLE_WORK: u64 = 20_000;

/// In which order items are looked at.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Order {
    Area,
    LongSide,
    Across,
    Along,
    Perimeter,
    ShortSide,
}

impl Order {
    const ALL: [Self; 6] = [
        Self::Area,
        Self::Across,
        Self::LongSide,
        Self::Along,
        Self::Perimeter,
        Self::ShortSide,
    ];

    /// Items by number, largest first in this sense.
    fn of(self, problem: &Problem) -> Vec<usize> {
        let mut order: Vec<usize> = (0..problem.items.len()).collect();
        order.sort_by_key(|index| {
            let key = problem.items.get(*index).map(|item| {
                let (along, across) = (i128::from(item.along), i128::from(item.across));
                let (long, short) = (along.max(across), along.min(across));
                match self {
                    Self::Area => (long * short, long),
                    Self::LongSide => (long, short),
                    Self::Across => (across, along),
                    Self::Along => (along, across),
                    Self::Perimeter => (long + short, long),
                    Self::ShortSide => (short, long),
                }
            });
            (std::cmp::Reverse(key), *index)
        });
        order
    }
}

/// How one bin is filled.
#[derive(Clone, Debug)]
enum Method {
    /// Item by item.
    Items(Vec<usize>, Rules),
    /// Strip by strip, and the rest item by item or not at all.
    Strips((Way, Lie), Option<(Vec<usize>, Rules)>),
}

/// What bins are taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Bins {
    /// Each time the one whose filled area costs least.
    Cheapest,
    /// This one wherever something fits in it.
    Only(usize),
}

/// What is compared: the smaller the better.
type Score = (i128, usize, usize, std::cmp::Reverse<i128>);

/// Packs every item. Items that fit in no bin are left out.
pub(in crate::stock) fn pack(problem: &Problem) -> Vec<Packed> {
    let mut work = 0;
    let mut best: Option<(Score, Vec<Packed>, Method, Bins)> = None;
    let keep = |packed: Vec<Packed>, method: &Method, bins, best: &mut Option<_>| {
        let score = score(problem, &packed);
        let better = best
            .as_ref()
            .is_none_or(|(least, _, _, _): &(Score, Vec<Packed>, Method, Bins)| score < *least);
        if better {
            *best = Some((score, packed, method.clone(), bins));
        }
    };
    let policies = policies(problem);
    for (tried, method) in methods(problem).iter().enumerate() {
        for &bins in &policies {
            if tried >= 2 && work > MOST_WORK {
                break;
            }
            let packed = run(problem, method, bins, &mut work);
            keep(packed, method, bins, &mut best);
        }
    }
    let least = usize::try_from(at_least(problem)).unwrap_or(usize::MAX);
    let Some((_, packed, method, bins)) = best.clone() else {
        return Vec::new();
    };
    if packed.len() > least && work < MOST_WORK {
        let size = (problem.items.len() + packed.len()) as u64;
        let most = (work + size * SHUFFLE_WORK).min(MOST_WORK);
        let mut shuffle = Shuffle::of(method, problem);
        while work < most {
            let method = shuffle.next();
            let packed = run(problem, &method, bins, &mut work);
            keep(packed, &method, bins, &mut best);
            if best
                .as_ref()
                .is_none_or(|(_, kept, ..)| kept.len() <= least)
            {
                break;
            }
        }
    }
    let mut packed = best.map_or_else(Vec::new, |(_, packed, ..)| packed);
    packed = searched(problem, packed);
    for one in &mut packed {
        one.tree.favour_large_offcuts();
    }
    packed
}

fn searched(problem: &Problem, packed: Vec<Packed>) -> Vec<Packed> {
    let bound = i128::from(at_least(problem));
    let unit = problem.bins.iter().map(|bin| bin.cost).min().unwrap_or(0);
    let mut sheets: Vec<Sheet> = packed
        .iter()
        .map(|one| Sheet::of_tree(one.bin, &one.tree))
        .collect();
    let mut goal = Goal::new(problem);
    let budget: u64 = std::env::var("WORK").ok().and_then(|w| w.parse().ok()).unwrap_or(10_000_000);
    loop {
        let cost: i128 = sheets
            .iter()
            .filter_map(|sheet| problem.bins.get(sheet.bin))
            .map(|bin| bin.cost)
            .sum();
        if cost <= bound * unit {
            break;
        }
        match goal.reach(&sheets, cost - 1, budget) {
            Some(better) => sheets = better,
            None => break,
        }
    }
    sheets
        .iter()
        .map(|sheet| Packed {
            bin: sheet.bin,
            tree: sheet.tree(),
        })
        .collect()
}

/// One size of stock needs one policy, several all.
fn policies(problem: &Problem) -> Vec<Bins> {
    match problem.bins.len() {
        0 => Vec::new(),
        1 => vec![Bins::Only(0)],
        several => std::iter::once(Bins::Cheapest)
            .chain((0..several).map(Bins::Only))
            .collect(),
    }
}

/// All constructions, the ones that saw best first.
fn methods(problem: &Problem) -> Vec<Method> {
    let by_area = Order::Area.of(problem);
    let rest = Rules {
        choice: Choice::ShortSide,
        split: SplitRule::LargestRest,
    };
    let turns = problem.items.iter().any(|item| item.may_turn);
    let lies = if turns {
        &Lie::ALL[..]
    } else {
        &[Lie::AsDescribed][..]
    };
    let mut methods = Vec::new();
    for way in [Way::Rip, Way::Crosscut] {
        for &lie in lies {
            methods.push(Method::Strips((way, lie), None));
            methods.push(Method::Strips((way, lie), Some((by_area.clone(), rest))));
        }
    }
    for order in Order::ALL.map(|order| order.of(problem)) {
        for split in SplitRule::ALL {
            for choice in Choice::ALL {
                methods.push(Method::Items(order.clone(), Rules { choice, split }));
            }
        }
    }
    methods
}

/// Packs all items by one method.
fn run(problem: &Problem, method: &Method, bins: Bins, work: &mut u64) -> Vec<Packed> {
    let mut remaining: Remaining = problem.items.iter().map(|item| item.count).collect();
    let mut packed = Vec::new();
    while remaining.iter().any(|left| *left > 0) {
        let filled = match bins {
            Bins::Only(bin) => {
                let filled = fill(problem, method, bin, &remaining, work);
                filled.or_else(|| cheapest(problem, method, &remaining, work))
            }
            Bins::Cheapest => cheapest(problem, method, &remaining, work),
        };
        let Some((one, left)) = filled else {
            break;
        };
        let one = downgraded(problem, method, one, work);
        packed.push(one);
        remaining = left;
    }
    packed
}

/// One bin filled and what then remains; none where nothing fits in it.
fn fill(
    problem: &Problem,
    method: &Method,
    bin: usize,
    remaining: &Remaining,
    work: &mut u64,
) -> Option<(Packed, Remaining)> {
    let size = problem.bins.get(bin)?;
    let mut left = remaining.clone();
    let mut tree = Tree::new(size.along, size.across);
    *work += 1;
    match method {
        Method::Items(order, rules) => {
            let mut free = vec![0];
            guillotine::fill(
                problem, order, *rules, &mut free, &mut tree, &mut left, work,
            );
        }
        Method::Strips(how, rest) => {
            let mut free = strips::fill(problem, *how, &mut tree, &mut left, work);
            if let Some((order, rules)) = rest {
                guillotine::fill(
                    problem, order, *rules, &mut free, &mut tree, &mut left, work,
                );
            }
        }
    }
    (tree.filled() > 0).then_some((Packed { bin, tree }, left))
}

/// The bin whose filled area costs least.
fn cheapest(
    problem: &Problem,
    method: &Method,
    remaining: &Remaining,
    work: &mut u64,
) -> Option<(Packed, Remaining)> {
    let mut best: Option<(i128, i128, Packed, Remaining)> = None;
    for (bin, size) in problem.bins.iter().enumerate() {
        let Some((packed, left)) = fill(problem, method, bin, remaining, work) else {
            continue;
        };
        let filled = packed.tree.filled();
        let better = best.as_ref().is_none_or(|(cost, area, _, _)| {
            // cost / filled, compared crosswise.
            size.cost.saturating_mul(*area) < cost.saturating_mul(filled)
        });
        if better {
            best = Some((size.cost, filled, packed, left));
        }
    }
    best.map(|(_, _, packed, left)| (packed, left))
}

/// The same items in a bin that costs less, where they fit in one.
fn downgraded(problem: &Problem, method: &Method, packed: Packed, work: &mut u64) -> Packed {
    let Some(cost) = problem.bins.get(packed.bin).map(|bin| bin.cost) else {
        return packed;
    };
    let mut cheaper: Vec<(i128, usize)> = problem
        .bins
        .iter()
        .enumerate()
        .filter(|(_, bin)| bin.cost < cost)
        .map(|(index, bin)| (bin.cost, index))
        .collect();
    cheaper.sort_unstable();
    if cheaper.is_empty() {
        return packed;
    }
    let mut items: Remaining = vec![0; problem.items.len()];
    for item in packed.tree.items() {
        if let Some(count) = items.get_mut(item) {
            *count += 1;
        }
    }
    for (_, bin) in cheaper {
        if let Some((smaller, left)) = fill(problem, method, bin, &items, work)
            && left.iter().all(|count| *count == 0)
        {
            return smaller;
        }
    }
    packed
}

/// How good a packing is.
fn score(problem: &Problem, packed: &[Packed]) -> Score {
    let cost = packed
        .iter()
        .filter_map(|one| problem.bins.get(one.bin))
        .map(|bin| bin.cost)
        .sum();
    let mut settings = BTreeSet::new();
    let mut largest = 0;
    for (cell, piece) in packed.iter().flat_map(|one| one.tree.walk()) {
        match piece {
            Piece::Divided { way, at, .. } => {
                settings.insert((way, at));
            }
            Piece::Free => largest = largest.max(cell.area()),
            Piece::Item { .. } => {}
        }
    }
    (
        cost,
        packed.len(),
        settings.len(),
        std::cmp::Reverse(largest),
    )
}

/// Orders near a given one, from a fixed seed.
struct Shuffle {
    order: Vec<usize>,
    rules: Rules,
    state: u64,
}

impl Shuffle {
    fn of(method: Method, problem: &Problem) -> Self {
        let (order, rules) = match method {
            Method::Items(order, rules) | Method::Strips(_, Some((order, rules))) => (order, rules),
            Method::Strips(_, None) => {
                let rules = Rules {
                    choice: Choice::Area,
                    split: SplitRule::LargestRest,
                };
                (Order::Area.of(problem), rules)
            }
        };
        Self {
            order,
            rules,
            state: 0x9e37_79b9_7f4a_7c15,
        }
    }

    /// A number below `limit`: xorshift64* (S. Vigna, 2016), seeded once for all runs.
    fn below(&mut self, limit: usize) -> usize {
        self.state ^= self.state >> 12;
        self.state ^= self.state << 25;
        self.state ^= self.state >> 27;
        let drawn = self.state.wrapping_mul(0x2545_f491_4f6c_dd1d) >> 33;
        usize::try_from(drawn).unwrap_or(0) % limit.max(1)
    }

    /// The order with a few neighbours of neighbours exchanged, and some rule of splitting.
    fn next(&mut self) -> Method {
        let mut order = self.order.clone();
        let count = order.len();
        for _ in 0..=count / 4 {
            let from = self.below(count);
            let to = (from + 1 + self.below(4)).min(count.saturating_sub(1));
            order.swap(from, to);
        }
        let rules = if self.below(2) == 0 {
            self.rules
        } else {
            let split = self.below(SplitRule::ALL.len());
            let choice = self.below(Choice::ALL.len());
            Rules {
                split: SplitRule::ALL
                    .get(split)
                    .copied()
                    .unwrap_or(self.rules.split),
                choice: Choice::ALL
                    .get(choice)
                    .copied()
                    .unwrap_or(self.rules.choice),
            }
        };
        Method::Items(order, rules)
    }
}
