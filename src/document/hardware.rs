//! The hardware list: what the joints and placements use, and where.

use serde::Serialize;

use super::context::Facts;
use super::measure::Measure;
use crate::build::{Hardware, HardwareId, HardwareKind};
use crate::units::Precision;

/// An item of hardware and where it is used.
#[derive(Clone, Debug, Serialize)]
pub(super) struct HardwareRow {
    title: String,
    kind: HardwareKind,
    size: HardwareSize,
    /// Pieces that joints, steps and the author use; rolls of edge band.
    count: i64,
    /// Steps that use it, counted from 1.
    steps: Vec<usize>,
    /// Hole a screw bites in.
    pilot: Option<Measure>,
    /// Hole a screw passes through.
    clearance: Option<Measure>,
}

/// Sizes of an item, as far as they are stated.
#[derive(Clone, Debug, Serialize)]
pub(super) struct HardwareSize {
    diameter: Option<Measure>,
    length: Option<Measure>,
    width: Option<Measure>,
    thickness: Option<Measure>,
}

/// The sizes of an item.
pub(super) fn size(item: &Hardware, fine: Precision) -> HardwareSize {
    let measure = |length: Option<_>| length.map(|length| Measure::of(length, fine));
    HardwareSize {
        diameter: measure(item.diameter),
        length: measure(item.length),
        width: measure(item.width),
        thickness: measure(item.thickness),
    }
}

pub(super) fn of(facts: &Facts) -> Vec<HardwareRow> {
    let lines = facts.stock.purchases.hardware.iter();
    let rows = lines.filter_map(|line| {
        let item = facts.build.hardware.get(line.hardware.0)?;
        Some(HardwareRow {
            title: item.title.clone(),
            kind: item.kind,
            size: size(item, facts.fine()),
            count: line.needed,
            steps: steps_with(facts, line.hardware),
            pilot: item.pilot.map(|pilot| facts.fine_measure(pilot)),
            clearance: item
                .clearance
                .map(|clearance| facts.fine_measure(clearance)),
        })
    });
    rows.collect()
}

fn steps_with(facts: &Facts, id: HardwareId) -> Vec<usize> {
    let steps = facts.build.steps.iter().enumerate();
    steps
        .filter(|(_, step)| step.hardware.iter().any(|(used, _)| *used == id))
        .map(|(number, _)| number + 1)
        .collect()
}
