//! The hardware list: what the joints and placements use, and where.

use serde::Serialize;

use super::context::Facts;
use super::measure::Measure;
use crate::build::{Hardware, HardwareId, HardwareKind};

/// An item of hardware and where it is used.
#[derive(Clone, Debug, Serialize)]
pub(super) struct HardwareRow {
    title: String,
    kind: HardwareKind,
    size: HardwareSize,
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
pub(super) fn size(facts: &Facts, item: &Hardware) -> HardwareSize {
    let measure = |length: Option<_>| length.map(|length| facts.fine_measure(length));
    HardwareSize {
        diameter: measure(item.diameter),
        length: measure(item.length),
        width: measure(item.width),
        thickness: measure(item.thickness),
    }
}

pub(super) fn of(facts: &Facts) -> Vec<HardwareRow> {
    let items = facts.build.hardware.iter().enumerate();
    let used = items.filter(|(_, item)| item.count > 0);
    let rows = used.map(|(index, item)| HardwareRow {
        title: item.title.clone(),
        kind: item.kind,
        size: size(facts, item),
        count: item.count,
        steps: steps_with(facts, HardwareId(index)),
        pilot: item.pilot.map(|pilot| facts.fine_measure(pilot)),
        clearance: item
            .clearance
            .map(|clearance| facts.fine_measure(clearance)),
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
