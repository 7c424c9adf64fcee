//! What to buy: whole sheets and boards, whole packs, and a sum for each currency.

use std::collections::BTreeMap;

use super::supplies;
use super::types::{HardwareLine, LumberLine, Purchases, Stock, StockLine};
use crate::build::{Build, Hardware, HardwareId, HardwareKind};
use crate::geometry::PartAxis;
use crate::model::MaterialId;
use crate::solid::Solids;
use crate::units::{Area, Length, Money};

/// Counts the layouts' sheets and boards and the build's hardware.
pub(super) fn count(
    build: &Build,
    solids: &Solids,
    stock: &Stock,
    lumber: Vec<LumberLine>,
) -> Purchases {
    let bought = bought(build, stock);
    let hardware: Vec<HardwareLine> = build
        .hardware
        .iter()
        .enumerate()
        .filter_map(|(index, item)| line(build, HardwareId(index), item))
        .collect();
    let supplies = supplies::lines(build, solids);
    let sums = || {
        let to_buy = bought.iter().filter(|line| !line.on_hand);
        let of_stock = to_buy.map(|line| line.total.as_ref());
        let of_lumber = lumber.iter().map(|line| line.total.as_ref());
        let of_hardware = hardware.iter().map(|line| line.total.as_ref());
        let of_supplies = supplies.iter().map(|line| line.total.as_ref());
        of_stock
            .chain(of_lumber)
            .chain(of_hardware)
            .chain(of_supplies)
    };
    let totals = totals(sums().flatten());
    let unpriced = sums().filter(Option::is_none).count();
    Purchases {
        stock: bought,
        lumber,
        hardware,
        supplies,
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
            let sold = material.stock.get(piece)?;
            let each = sold.price.clone();
            let more = if sold.on_hand {
                0
            } else {
                let (more, of) = material.defects.unwrap_or((0, 1));
                whole_packs(count, of).saturating_mul(more)
            };
            let [length, width] = size((id, piece));
            let whole = (length * width).nm2().saturating_mul(i128::from(count));
            let share = area.nm2().saturating_mul(1_000) / whole.max(1);
            Some(StockLine {
                material: id,
                stock: piece,
                size: [length, width, material.thickness()],
                count,
                more,
                on_hand: sold.on_hand,
                total: each.as_ref().map(|price| price.times(count + more)),
                each,
                yield_per_mille: i64::try_from(share).unwrap_or(0),
            })
        })
        .collect()
}

/// Edge band hangs over at either end until it is trimmed. Common practice, no source.
const BAND_OVERHANG: Length = Length::from_mm(20);

/// An item that the build uses, in whole packs: 70 screws from packs of 50 are two packs and 30
/// left over.
fn line(build: &Build, id: HardwareId, item: &Hardware) -> Option<HardwareLine> {
    let run = banded(build, id);
    let roll = item.length.filter(|roll| roll.is_positive());
    let rolls = roll
        .zip(run)
        .map_or(0, |(roll, run)| whole_packs(run.nm(), roll.nm()));
    let needed = item.count.saturating_add(rolls);
    if needed <= 0 {
        return None;
    }
    let spares = if is_fastener(item.kind) {
        let (more, of) = build.plan.spares.unwrap_or((0, 1));
        whole_packs(needed, of).saturating_mul(more)
    } else {
        0
    };
    let pack = item.pack.unwrap_or(1).max(1);
    let packs = whole_packs(needed.saturating_add(spares), pack);
    Some(HardwareLine {
        hardware: id,
        needed,
        spares,
        run,
        pack,
        packs,
        left_over: packs.saturating_mul(pack).saturating_sub(needed),
        each: item.price.clone(),
        total: item.price.as_ref().map(|price| price.times(packs)),
    })
}

/// How many packs of `pack` hold `count`.
fn whole_packs(count: i64, pack: i64) -> i64 {
    let pack = pack.max(1);
    count / pack + i64::from(count % pack > 0)
}

/// What is lost, bent or split while a piece is built: that much more of it is bought.
fn is_fastener(kind: HardwareKind) -> bool {
    match kind {
        HardwareKind::WoodScrew
        | HardwareKind::PocketScrew
        | HardwareKind::Dowel
        | HardwareKind::LooseTenon
        | HardwareKind::Nail
        | HardwareKind::Bolt
        | HardwareKind::Insert
        | HardwareKind::Plug
        | HardwareKind::ShelfPin
        | HardwareKind::Magnet => true,
        HardwareKind::Spline
        | HardwareKind::Hinge
        | HardwareKind::Runner
        | HardwareKind::EdgeBand
        | HardwareKind::WallFixing
        | HardwareKind::Goods => false,
    }
}

/// How much of an edge band all parts take; none of what is no edge band.
fn banded(build: &Build, id: HardwareId) -> Option<Length> {
    let mut whole = None;
    for part in &build.parts {
        let [length, width, _] = part.size();
        for band in part.bands.iter().filter(|band| band.hardware == id) {
            let run = match band.side.axis() {
                PartAxis::Length => width,
                PartAxis::Width | PartAxis::Thickness => length,
            };
            let all = (run + BAND_OVERHANG * 2) * part.pieces().max(0);
            whole = Some(whole.unwrap_or(Length::ZERO) + all);
        }
    }
    whole
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
