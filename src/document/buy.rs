//! What to buy: sheets and boards from the layouts, hardware in whole packs.

use serde::Serialize;

use super::context::Facts;
use super::hardware::{HardwareSize, size};
use super::measure::Measure;
use crate::build::SupplyKind;
use crate::model::{LumberMeasure, MaterialForm};
use crate::stock::{LumberLine, StockLine};
use crate::units::square_metres_in_both;

/// The figures of the chapter.
#[derive(Clone, Debug, Serialize)]
pub(super) struct Buy {
    stock: Vec<StockRow>,
    /// Offcuts that are there already.
    on_hand: Vec<StockRow>,
    lumber: Vec<LumberRow>,
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
    /// Bought beside them, for boards with defects.
    more: i64,
    each: Option<String>,
    total: Option<String>,
    /// Per cent of what is bought that ends up in parts.
    used_percent: i64,
}

/// Boards of random width.
#[derive(Clone, Debug, Serialize)]
struct LumberRow {
    title: String,
    /// Cubic metres, square metres and board feet, without their units.
    cubic_metres: String,
    square_metres: String,
    board_feet: String,
    /// What is lost in per cent of what stays.
    waste_percent: i64,
    /// Price of one measure, and which: `cubic_metre`, …
    each: Option<(String, LumberMeasure)>,
    total: Option<String>,
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
    let row = |line: &StockLine| {
        let material = facts.build.material(line.material)?;
        let [length, width, thickness] = line.size;
        let size = match material.form {
            MaterialForm::Sheet { .. }
            | MaterialForm::Board { .. }
            | MaterialForm::Lumber { .. } => {
                vec![length, width, thickness]
            }
            MaterialForm::Round { .. } => vec![length, thickness],
        };
        Some(StockRow {
            title: material.title.clone(),
            form: form(material.form),
            size: Measure::all(&size, facts.precision()),
            count: line.count,
            more: line.more,
            each: line.each.as_ref().map(|sum| facts.money(sum)),
            total: line.total.as_ref().map(|sum| facts.money(sum)),
            used_percent: (line.yield_per_mille + 5) / 10,
        })
    };
    let (on_hand, bought): (Vec<&StockLine>, Vec<&StockLine>) =
        purchases.stock.iter().partition(|line| line.on_hand);
    let lumber = purchases
        .lumber
        .iter()
        .filter_map(|line| lumber_row(facts, line));
    let hardware = purchases.hardware.iter().filter_map(|line| {
        let item = facts.build.hardware.get(line.hardware.0)?;
        Some(PackRow {
            title: item.title.clone(),
            size: size(item, facts.fine()),
            needed: line.needed,
            spares: line.spares,
            run: line.run.map(|run| facts.measure(run)),
            pack: line.pack,
            packs: line.packs,
            left_over: line.left_over,
            each: line.each.as_ref().map(|sum| facts.money(sum)),
            total: line.total.as_ref().map(|sum| facts.money(sum)),
        })
    });
    let supplies = purchases.supplies.iter().filter_map(|line| {
        let supply = facts.build.supplies.get(line.supply.0)?;
        Some(SupplyRow {
            title: supply.title.clone(),
            kind: supply.kind,
            coats: supply.coats,
            area: facts.figure(&square_metres_in_both(line.area_m2)),
            packs: line.packs,
            total: line.total.as_ref().map(|sum| facts.money(sum)),
        })
    });
    Buy {
        stock: bought.into_iter().filter_map(row).collect(),
        on_hand: on_hand.into_iter().filter_map(row).collect(),
        lumber: lumber.collect(),
        supplies: supplies.collect(),
        hardware: hardware.collect(),
        totals: purchases
            .totals
            .iter()
            .map(|sum| facts.money(sum))
            .collect(),
        without_price: purchases.unpriced,
    }
}

fn lumber_row(facts: &Facts, line: &LumberLine) -> Option<LumberRow> {
    let material = facts.build.material(line.material)?;
    let (lost, of) = line.waste;
    Some(LumberRow {
        title: material.title.clone(),
        cubic_metres: facts.figure(&decimal(line.litres, 3)),
        square_metres: facts.figure(&decimal(line.square_metre_hundredths, 2)),
        board_feet: facts.figure(&decimal(line.board_foot_tenths, 1)),
        waste_percent: (lost * 100 + of / 2) / of.max(1),
        each: line
            .each
            .as_ref()
            .map(|(price, measure)| (facts.money(price), *measure)),
        total: line.total.as_ref().map(|sum| facts.money(sum)),
    })
}

/// A number of tenths, hundredths or thousandths with its point.
fn decimal(parts: i64, places: u32) -> String {
    let one = 10_i64.pow(places);
    let width = places as usize;
    format!("{}.{:0width$}", parts / one, parts % one)
}

/// The word for a piece of a material.
pub(super) const fn form(form: MaterialForm) -> &'static str {
    match form {
        MaterialForm::Sheet { .. } => "sheet",
        MaterialForm::Board { .. } => "board",
        MaterialForm::Lumber { .. } => "lumber",
        MaterialForm::Round { .. } => "bar",
    }
}
