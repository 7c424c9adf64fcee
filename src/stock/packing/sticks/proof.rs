//! A bound out of prices: what all parts cost at least.
//!
//! Whatever a part is said to be worth: if no content of a bar is worth more than the bar costs,
//! then the parts together cost at least what they are worth (linear programming duality). Worths
//! that claim too much are scaled down until that holds (A. A. Farley, Operations Research,
//! 1990). A bar of which there are few may claim more than it costs: each of them then takes the
//! difference off the bound.

use super::task::Task;

/// Least cost of a demand out of limited bars, where a part is worth `values` and no content of a
/// bar is worth more than `most`, given by kind of bar.
pub(super) fn least_cost(
    task: &Task,
    demand: &[i64],
    limits: &[Option<i64>],
    values: &[i64],
    most: &[i64],
) -> i128 {
    let worth: i128 = demand
        .iter()
        .zip(values)
        .map(|(demand, value)| i128::from(*demand).saturating_mul(i128::from(*value)))
        .fold(0, i128::saturating_add);
    // Scales to try: cost by worth of a bar, none more than bars without limit bear.
    let scale = |k: usize| {
        let most = most.get(k).copied().filter(|most| *most > 0)?;
        Some((task.stock.get(k)?.cost, i128::from(most)))
    };
    let less = |a: (i128, i128), b: (i128, i128)| a.0.saturating_mul(b.1) < b.0.saturating_mul(a.1);
    let mut cap: Option<(i128, i128)> = None;
    for (k, stock) in task.stock.iter().enumerate() {
        if stock.limit.is_none()
            && let Some(scale) = scale(k)
            && cap.is_none_or(|cap| less(scale, cap))
        {
            cap = Some(scale);
        }
    }
    let Some(cap) = cap else { return 0 };
    let limited = (0..task.stock.len())
        .filter_map(scale)
        .filter(|scale| less(*scale, cap));
    std::iter::once(cap)
        .chain(limited)
        .map(|scale| scaled(task, limits, (worth, most), scale))
        .max()
        .unwrap_or(0)
        .max(0)
}

/// The bound with worths scaled by `cost / claim`, rounded up: costs are whole numbers.
fn scaled(
    task: &Task,
    limits: &[Option<i64>],
    (worth, most): (i128, &[i64]),
    (cost, claim): (i128, i128),
) -> i128 {
    let mut bound = worth.saturating_mul(cost);
    for ((stock, most), limit) in task.stock.iter().zip(most).zip(limits) {
        if let Some(limit) = limit {
            let over = i128::from(*most).saturating_mul(cost) - stock.cost.saturating_mul(claim);
            bound = bound.saturating_sub(over.max(0).saturating_mul(i128::from(*limit)));
        }
    }
    // A saturated product is no proof.
    if bound >= i128::MAX / 2 {
        return 0;
    }
    num_integer::div_ceil(bound.max(0), claim)
}
