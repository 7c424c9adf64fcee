//! What to buy: a row for every size of stock, item of hardware and supply.

use super::measure::{mm, sum};
use crate::build::Build;
use crate::stock::Stock;
use crate::units::{Length, Money};

super::row! {
    /// Something to buy.
    struct Row {
        /// `stock`, `offcut` (on hand already), `lumber`, `hardware` or `supply`.
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
        /// Lumber in cubic metres, square metres and board feet, what is lost included.
        cubic_metres: Option<f64>,
        square_metres: Option<f64>,
        board_feet: Option<f64>,
        /// Price of one pack, sheet, board or measure of lumber, and of all.
        each: String,
        total: String,
        /// The letters of the currency.
        currency: String,
        /// What lumber is priced by: `m3`, `m2` or `board_foot`.
        price_per: String,
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
            kind: if line.on_hand { "offcut" } else { "stock" }.to_owned(),
            name: material.name.clone(),
            title: material.title.clone(),
            length_mm: Some(mm(length)),
            width_mm: Some(mm(width)),
            thickness_mm: Some(mm(thickness)),
            needed: line.count,
            spares: line.more,
            pack: 1,
            buy: if line.on_hand {
                0
            } else {
                line.count.saturating_add(line.more)
            },
            used_percent: Some(f64::from(per_mille) / 10.0),
            ..Row::default()
        };
        Some(priced(row, line.each.as_ref(), line.total.as_ref()))
    });
    let of_lumber = stock.purchases.lumber.iter().filter_map(|line| {
        let material = build.material(line.material)?;
        let parts = |count: i64, one: f64| Some(f64::from(i32::try_from(count).ok()?) / one);
        let row = Row {
            kind: "lumber".to_owned(),
            name: material.name.clone(),
            title: material.title.clone(),
            thickness_mm: Some(mm(line.thickness)),
            cubic_metres: parts(line.litres, 1_000.0),
            square_metres: parts(line.square_metre_hundredths, 100.0),
            board_feet: parts(line.board_foot_tenths, 10.0),
            price_per: line
                .each
                .as_ref()
                .map(|(_, measure)| measure.word().to_owned())
                .unwrap_or_default(),
            ..Row::default()
        };
        let each = line.each.as_ref().map(|(each, _)| each);
        Some(priced(row, each, line.total.as_ref()))
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
    of_stock
        .chain(of_lumber)
        .chain(of_hardware)
        .chain(of_supplies)
        .collect()
}
