//! Many constructions, one kept: least cost, then what a shop likes best.

use super::guillotine::{self, Choice, Rules, SplitRule};
use super::sheet::Sheet;
use super::shop::Shop;
use super::strips::{self, Lie};
use super::tree::{Tree, Way};
use super::{Packed, Problem, Remaining, one_by_one};

/// Places looked at before no further construction begins. About 0.1 s of a release build.
const MOST_WORK: u64 = 16_000_000;

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

/// The best of the constructions as sheets, and the items that lie on none of them.
pub(super) fn best(problem: &Problem) -> (Vec<Sheet>, Vec<u32>) {
    let mut work = 0;
    let mut best: Option<((usize, i128, Shop), Layout)> = None;
    let policies = policies(problem);
    for (tried, method) in methods(problem).iter().enumerate() {
        for &bins in &policies {
            if tried >= 2 && work > MOST_WORK {
                break;
            }
            let layout = run(problem, method, bins, &mut work);
            if let Some(most) = problem.most_stages
                && layout.sheets.iter().any(|sheet| sheet.most_stages() > most)
            {
                continue;
            }
            let left = layout.remaining.iter().sum::<usize>();
            let cost = problem.cost(layout.sheets.iter().map(|sheet| sheet.bin));
            let worth = |best: &(usize, i128, Shop)| (left, cost) <= (best.0, best.1);
            if best.as_ref().is_none_or(|(least, _)| worth(least)) {
                let badness = (left, cost, Shop::of(problem, &layout.sheets));
                if best.as_ref().is_none_or(|(least, _)| badness < *least) {
                    best = Some((badness, layout));
                }
            }
        }
    }
    let Some((_, layout)) = best else {
        let all = problem.items.iter().map(|item| item.count);
        return (Vec::new(), one_by_one(all));
    };
    (layout.sheets, one_by_one(layout.remaining.into_iter()))
}

/// What one construction came to.
struct Layout {
    sheets: Vec<Sheet>,
    remaining: Remaining,
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
fn run(problem: &Problem, method: &Method, bins: Bins, work: &mut u64) -> Layout {
    let mut remaining: Remaining = problem.items.iter().map(|item| item.count).collect();
    let mut stock: Vec<Option<usize>> = problem.bins.iter().map(|bin| bin.limit).collect();
    let mut sheets = Vec::new();
    while remaining.iter().any(|left| *left > 0) {
        let filled = match bins {
            Bins::Only(bin) if stock.get(bin).is_some_and(|left| *left != Some(0)) => {
                let filled = fill(problem, method, bin, &remaining, work);
                filled.or_else(|| cheapest(problem, method, &stock, &remaining, work))
            }
            Bins::Only(_) | Bins::Cheapest => cheapest(problem, method, &stock, &remaining, work),
        };
        let Some((one, left)) = filled else {
            break;
        };
        let one = downgraded(problem, method, one, &stock, work);
        if let Some(Some(left)) = stock.get_mut(one.bin) {
            *left -= 1;
        }
        sheets.push(Sheet::of_tree(one.bin, &one.tree));
        remaining = left;
    }
    Layout { sheets, remaining }
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
    stock: &[Option<usize>],
    remaining: &Remaining,
    work: &mut u64,
) -> Option<(Packed, Remaining)> {
    let mut best: Option<(i128, i128, Packed, Remaining)> = None;
    let in_stock = problem.bins.iter().zip(stock).enumerate();
    for (bin, (size, _)) in in_stock.filter(|(_, (_, left))| **left != Some(0)) {
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
fn downgraded(
    problem: &Problem,
    method: &Method,
    packed: Packed,
    stock: &[Option<usize>],
    work: &mut u64,
) -> Packed {
    let Some(cost) = problem.bins.get(packed.bin).map(|bin| bin.cost) else {
        return packed;
    };
    let mut cheaper: Vec<(i128, usize)> = problem
        .bins
        .iter()
        .enumerate()
        .zip(stock)
        .filter(|((_, bin), left)| bin.cost < cost && **left != Some(0))
        .map(|(bin, _)| bin)
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
