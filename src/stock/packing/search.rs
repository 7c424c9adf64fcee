//! A first layout, cheaper ones as long as work is left, and the one of them that is best to cut.
//!
//! Work is counted in places looked at, never in time, so that the same problem has the same
//! answer on every machine.

use super::goal::Goal;
use super::sheet::Sheet;
use super::shop::Shop;
use super::{Bound, Packed, Packing, Problem, bound, constructions};

/// Work on a layout that costs less, for each piece to lay; about 6 ms of a release build.
const WORK_A_PIECE: u64 = 200_000;
/// At most so much of it, about a second: what 500 pieces get.
const MOST_WORK: u64 = 100_000_000;
/// Work on a layout of the same cost that is better to cut, likewise.
const SHOP_WORK_A_PIECE: u64 = 10_000;
/// At most so much of that.
const MOST_SHOP_WORK: u64 = 1_500_000;

/// Packs every item that fits.
pub(super) fn pack(problem: &Problem) -> Packing {
    let at_least = bound::of(problem);
    let pieces = problem
        .items
        .iter()
        .fold(0_u64, |sum, item| sum.saturating_add(item.count as u64));
    let (counted, least) = count_bins(problem, at_least, pieces);
    let mut goal = Goal::new(&counted);

    let (mut sheets, mut pool) = first(&counted, &mut goal);
    let limit = goal.work + pieces.saturating_mul(WORK_A_PIECE).min(MOST_WORK);
    if !pool.is_empty() && all_fit(&counted) {
        let reached = goal.reach(&sheets, pool, i128::MAX, limit);
        (sheets, pool) = (reached.sheets, reached.pool);
    }
    while pool.is_empty() && cost(&counted, &sheets) > least {
        let most = cost(&counted, &sheets) - 1;
        let reached = goal.reach(&sheets, Vec::new(), most, limit);
        if !reached.pool.is_empty() {
            break;
        }
        sheets = reached.sheets;
    }
    let first = Shop::of(problem, &sheets);
    let limit = goal.work + pieces.saturating_mul(SHOP_WORK_A_PIECE).min(MOST_SHOP_WORK);
    let most = cost(&counted, &sheets);
    sheets = goal.rearrange(&sheets, most, limit);

    let mut unpacked = vec![0; problem.items.len()];
    for item in pool {
        if let Some(count) = unpacked.get_mut(item as usize) {
            *count += 1;
        }
    }
    Packing {
        shop: Shop::of(problem, &sheets),
        bins: in_order(problem, &sheets),
        unpacked,
        at_least,
        first,
    }
}

/// The same problem with one more for every bin that is not on hand, so that of two layouts of one cost the one with
/// fewer bins is the cheaper; and the least that a layout of it costs.
fn count_bins(problem: &Problem, at_least: Bound, pieces: u64) -> (Problem, i128) {
    let scale = i128::from(pieces) + 1;
    let mut counted = problem.clone();
    for bin in &mut counted.bins {
        let one = i128::from(!bin.on_hand);
        bin.cost = bin.cost.saturating_mul(scale).saturating_add(one);
    }
    let least = at_least.cost.saturating_mul(scale) + i128::from(at_least.bought);
    (counted, least)
}

fn cost(problem: &Problem, sheets: &[Sheet]) -> i128 {
    problem.cost(sheets.iter().map(|sheet| sheet.bin))
}

/// True where every item fits in some bin.
fn all_fit(problem: &Problem) -> bool {
    let mut needed = problem.items.iter().filter(|item| item.count > 0);
    needed.all(|item| problem.bins.iter().any(|bin| item.fits(*bin)))
}

/// The first layout and what it leaves: the best of many constructions, or one piece after the
/// other where that is better.
fn first(problem: &Problem, goal: &mut Goal<'_>) -> (Vec<Sheet>, Vec<u32>) {
    let one_by_one = goal.begin();
    let (sheets, pool) = constructions::best(problem);
    let badness = |sheets: &[Sheet], pool: &[u32]| {
        let cost = cost(problem, sheets);
        (pool.len(), cost, Shop::of(problem, sheets))
    };
    let is_worse = badness(&one_by_one.sheets, &one_by_one.pool) < badness(&sheets, &pool);
    if is_worse {
        (one_by_one.sheets, one_by_one.pool)
    } else {
        (sheets, pool)
    }
}

/// Fullest bins first; those cut alike stand together.
fn in_order(problem: &Problem, sheets: &[Sheet]) -> Vec<Packed> {
    let mut bins: Vec<(i128, Vec<usize>, Packed)> = sheets
        .iter()
        .map(|sheet| {
            let tree = sheet.tree();
            let whole = problem.bins.get(sheet.bin).map_or(1, |bin| bin.area());
            let mut items: Vec<usize> = tree.items().collect();
            items.sort_unstable();
            let left = whole - tree.filled();
            let bin = sheet.bin;
            (left, items, Packed { bin, tree })
        })
        .collect();
    bins.sort_by(|a, b| (a.0, &a.1).cmp(&(b.0, &b.1)));
    bins.into_iter().map(|(_, _, packed)| packed).collect()
}
