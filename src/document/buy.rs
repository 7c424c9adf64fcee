//! What to buy: sheets and boards from the layouts, hardware in whole packs.

use serde::Serialize;

use super::context::Facts;
use super::hardware::{HardwareSize, size};
use super::measure::{Measure, money};
use crate::build::SupplyKind;
use crate::model::MaterialForm;
use crate::units::square_metres_in_both;

/// The figures of the chapter.
#[derive(Clone, Debug, Serialize)]
pub(super) struct Buy {
    stock: Vec<StockRow>,
    hardware: Vec<PackRow>,
    supplies: Vec<SupplyRow>,
    /// One sum for each currency.
    totals: Vec<String>,
    /// Lines without a price.
    without_price: i64,
}

#[derive(Clone, Debug, Serialize)]
struct StockRow {
    title: String,
    /// `sheet`, `board` or `bar`: which word the template takes.
    form: &'static str,
    /// Length, width and thickness of a sheet or board; length and diameter of a bar.
    size: Vec<Measure>,
    count: i64,
    each: Option<String>,
    total: Option<String>,
    /// Per cent of what is bought that ends up in parts.
    used_percent: i64,
}

#[derive(Clone, Debug, Serialize)]
struct PackRow {
    title: String,
    size: HardwareSize,
    needed: i64,
    /// Bought beside them, in case.
    spares: i64,
    /// How much of rolls of edge band is stuck on.
    run: Option<Measure>,
    pack: i64,
    packs: i64,
    left_over: i64,
    each: Option<String>,
    total: Option<String>,
}

/// Glue, finish or abrasive.
#[derive(Clone, Debug, Serialize)]
struct SupplyRow {
    title: String,
    kind: SupplyKind,
    coats: i64,
    /// The surface it goes on, each coat counted.
    area: String,
    packs: i64,
    total: Option<String>,
}

pub(super) fn of(facts: &Facts) -> Buy {
    let purchases = &facts.stock.purchases;
    let stock = purchases.stock.iter().filter_map(|line| {
        let material = facts.build.material(line.material)?;
        let [length, width, thickness] = line.size;
        let size = match material.form {
            MaterialForm::Sheet { .. } | MaterialForm::Board { .. } => {
                vec![length, width, thickness]
            }
            MaterialForm::Round { .. } => vec![length, thickness],
        };
        Some(StockRow {
            title: material.title.clone(),
            form: form(material.form),
            size: Measure::all(&size, facts.precision()),
            count: line.count,
            each: line.each.as_ref().map(money),
            total: line.total.as_ref().map(money),
            used_percent: (line.yield_per_mille + 5) / 10,
        })
    });
    let hardware = purchases.hardware.iter().filter_map(|line| {
        let item = facts.build.hardware.get(line.hardware.0)?;
        Some(PackRow {
            title: item.title.clone(),
            size: size(facts, item),
            needed: line.needed,
            spares: line.spares,
            run: line.run.map(|run| facts.measure(run)),
            pack: line.pack,
            packs: line.packs,
            left_over: line.left_over,
            each: line.each.as_ref().map(money),
            total: line.total.as_ref().map(money),
        })
    });
    let supplies = purchases.supplies.iter().filter_map(|line| {
        let supply = facts.build.supplies.get(line.supply.0)?;
        Some(SupplyRow {
            title: supply.title.clone(),
            kind: supply.kind,
            coats: supply.coats,
            area: square_metres_in_both(line.area_m2),
            packs: line.packs,
            total: line.total.as_ref().map(money),
        })
    });
    Buy {
        stock: stock.collect(),
        supplies: supplies.collect(),
        hardware: hardware.collect(),
        totals: purchases.totals.iter().map(money).collect(),
        without_price: purchases.unpriced,
    }
}

/// The word for a piece of a material.
pub(super) const fn form(form: MaterialForm) -> &'static str {
    match form {
        MaterialForm::Sheet { .. } => "sheet",
        MaterialForm::Board { .. } => "board",
        MaterialForm::Round { .. } => "bar",
    }
}
