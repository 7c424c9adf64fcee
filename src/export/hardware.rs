//! The hardware: a row for every item that is used.

use super::measure::mm;
use crate::build::{Build, HardwareId};
use crate::stock::Stock;
use crate::units::Length;

super::row! {
    /// An item of hardware.
    struct Row {
        /// Its name in the source.
        hardware: String,
        /// Its printed name.
        title: String,
        /// What it is, in the word of the language.
        kind: String,
        /// Its sizes in millimetres, as far as they are stated.
        diameter_mm: Option<f64>,
        length_mm: Option<f64>,
        width_mm: Option<f64>,
        thickness_mm: Option<f64>,
        /// The hole it bites in, and the hole it passes through.
        pilot_mm: Option<f64>,
        clearance_mm: Option<f64>,
        /// Pieces the build uses; rolls of edge band.
        used: i64,
        /// Pieces bought beside them.
        spares: i64,
        /// Steps that use it, parted by blanks.
        steps: String,
    }
}

pub(super) fn rows(build: &Build, stock: &Stock) -> Vec<Row> {
    let lines = stock.purchases.hardware.iter();
    let rows = lines.filter_map(|line| {
        let item = build.hardware.get(line.hardware.0)?;
        let size = |length: Option<Length>| length.map(mm);
        Some(Row {
            hardware: item.name.clone(),
            title: item.title.clone(),
            kind: item.kind.word().to_owned(),
            diameter_mm: size(item.diameter),
            length_mm: size(item.length),
            width_mm: size(item.width),
            thickness_mm: size(item.thickness),
            pilot_mm: size(item.pilot),
            clearance_mm: size(item.clearance),
            used: line.needed,
            spares: line.spares,
            steps: steps_with(build, line.hardware),
        })
    });
    rows.collect()
}

fn steps_with(build: &Build, id: HardwareId) -> String {
    let steps = build.steps.iter().enumerate();
    let numbers: Vec<String> = steps
        .filter(|(_, step)| step.hardware.iter().any(|(used, _)| *used == id))
        .map(|(index, _)| (index + 1).to_string())
        .collect();
    numbers.join(" ")
}
