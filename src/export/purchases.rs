//! What to buy: a row for every size of stock, item of hardware and supply.

use super::measure::{mm, sum};
use crate::build::Build;
use crate::stock::Stock;
use crate::units::{Length, Money};

super::row! {
    /// Something to buy.
    struct Row {
        /// `stock`, `hardware` or `supply`.
        kind: String,
        /// Its name in the source.
        name: String,
        /// Its printed name.
        title: String,
        /// Its sizes in millimetres, as far as they are stated.
        length_mm: Option<f64>,
        width_mm: Option<f64>,
        thickness_mm: Option<f64>,
        diameter_mm: Option<f64>,
        /// Pieces the build uses, and those bought beside them.
        needed: i64,
        spares: i64,
        /// Pieces in a pack.
        pack: i64,
        /// Packs, sheets or boards to buy.
        buy: i64,
        /// Pieces left over.
        left_over: i64,
        /// Per cent of a sheet or board that ends up in parts.
        used_percent: Option<f64>,
        /// Price of one pack, sheet or board, and of all.
        each: String,
        total: String,
        /// The letters of the currency.
        currency: String,
    }
}

/// The cells of a price and of its total.
fn priced(row: Row, each: Option<&Money>, total: Option<&Money>) -> Row {
    Row {
        each: each.map(sum).unwrap_or_default(),
        total: total.map(sum).unwrap_or_default(),
        currency: each.map(|each| each.currency.clone()).unwrap_or_default(),
        ..row
    }
}

pub(super) fn rows(build: &Build, stock: &Stock) -> Vec<Row> {
    let size = |length: Option<Length>| length.map(mm);
    let of_stock = stock.purchases.stock.iter().filter_map(|line| {
        let material = build.material(line.material)?;
        let [length, width, thickness] = line.size;
        let per_mille = i32::try_from(line.yield_per_mille).ok()?;
        let row = Row {
            kind: "stock".to_owned(),
            name: material.name.clone(),
            title: material.title.clone(),
            length_mm: Some(mm(length)),
            width_mm: Some(mm(width)),
            thickness_mm: Some(mm(thickness)),
            needed: line.count,
            pack: 1,
            buy: line.count,
            used_percent: Some(f64::from(per_mille) / 10.0),
            ..Row::default()
        };
        Some(priced(row, line.each.as_ref(), line.total.as_ref()))
    });
    let of_hardware = stock.purchases.hardware.iter().filter_map(|line| {
        let item = build.hardware.get(line.hardware.0)?;
        let row = Row {
            kind: "hardware".to_owned(),
            name: item.name.clone(),
            title: item.title.clone(),
            length_mm: size(item.length),
            width_mm: size(item.width),
            thickness_mm: size(item.thickness),
            diameter_mm: size(item.diameter),
            needed: line.needed,
            spares: line.spares,
            pack: line.pack,
            buy: line.packs,
            left_over: line.left_over,
            ..Row::default()
        };
        Some(priced(row, line.each.as_ref(), line.total.as_ref()))
    });
    let of_supplies = stock.purchases.supplies.iter().filter_map(|line| {
        let supply = build.supplies.get(line.supply.0)?;
        let row = Row {
            kind: "supply".to_owned(),
            name: supply.name.clone(),
            title: supply.title.clone(),
            needed: line.packs,
            pack: 1,
            buy: line.packs,
            ..Row::default()
        };
        Some(priced(row, line.each.as_ref(), line.total.as_ref()))
    });
    of_stock.chain(of_hardware).chain(of_supplies).collect()
}
