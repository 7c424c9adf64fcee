//! What to buy: whole sheets and boards, whole packs, and a sum for each currency.

use std::collections::BTreeMap;

use super::types::{HardwareLine, Purchases, Stock, StockLine};
use crate::build::{Build, Hardware, HardwareId};
use crate::model::MaterialId;
use crate::units::{Area, Length, Money};

/// Counts the layouts' sheets and boards and the build's hardware.
pub(super) fn count(build: &Build, stock: &Stock) -> Purchases {
    let bought = bought(build, stock);
    let hardware: Vec<HardwareLine> = build
        .hardware
        .iter()
        .enumerate()
        .filter(|(_, item)| item.count > 0)
        .map(|(index, item)| packs(HardwareId(index), item))
        .collect();
    let sums = || {
        let of_stock = bought.iter().map(|line| line.total.as_ref());
        of_stock.chain(hardware.iter().map(|line| line.total.as_ref()))
    };
    let totals = totals(sums().flatten());
    let unpriced = sums().filter(Option::is_none).count();
    Purchases {
        stock: bought,
        hardware,
        totals,
        unpriced: i64::try_from(unpriced).unwrap_or(i64::MAX),
    }
}

/// One line for each size of stock that a layout uses.
fn bought(build: &Build, stock: &Stock) -> Vec<StockLine> {
    let mut used: BTreeMap<(MaterialId, usize), (i64, Area)> = BTreeMap::new();
    for layout in stock.plans().flat_map(|plan| &plan.layouts) {
        let cut: Area = layout
            .placements
            .iter()
            .map(|placement| placement.length * placement.width)
            .sum();
        let (count, area) = used.entry((layout.material, layout.stock)).or_default();
        *count += 1;
        *area = *area + cut;
    }
    let size = |wanted: (MaterialId, usize)| {
        let layout = stock
            .plans()
            .flat_map(|plan| &plan.layouts)
            .find(|layout| (layout.material, layout.stock) == wanted);
        layout.map_or([Length::ZERO; 2], |layout| layout.size)
    };
    used.into_iter()
        .filter_map(|((id, piece), (count, area))| {
            let material = build.material(id)?;
            let each = material.stock.get(piece)?.price.clone();
            let [length, width] = size((id, piece));
            let whole = (length * width).nm2().saturating_mul(i128::from(count));
            let share = area.nm2().saturating_mul(1_000) / whole.max(1);
            Some(StockLine {
                material: id,
                stock: piece,
                size: [length, width, material.thickness()],
                count,
                total: each.as_ref().map(|price| price.times(count)),
                each,
                yield_per_mille: i64::try_from(share).unwrap_or(0),
            })
        })
        .collect()
}

/// Whole packs: 70 screws from packs of 50 are two packs and 30 left over.
fn packs(id: HardwareId, item: &Hardware) -> HardwareLine {
    let pack = item.pack.unwrap_or(1).max(1);
    let packs = (item.count / pack) + i64::from(item.count % pack > 0);
    HardwareLine {
        hardware: id,
        needed: item.count,
        pack,
        packs,
        left_over: packs.saturating_mul(pack) - item.count,
        each: item.price.clone(),
        total: item.price.as_ref().map(|price| price.times(packs)),
    }
}

/// A sum for each currency: two are never added.
fn totals<'a>(prices: impl Iterator<Item = &'a Money>) -> Vec<Money> {
    let mut sums: BTreeMap<&str, i64> = BTreeMap::new();
    for price in prices {
        let sum = sums.entry(price.currency.as_str()).or_default();
        *sum = sum.saturating_add(price.cents);
    }
    sums.into_iter()
        .map(|(currency, cents)| Money {
            currency: currency.to_owned(),
            cents,
        })
        .collect()
}
