//! Pieces too small to hold while they are machined.

use super::sign::Sign;
use super::types::{Caution, Occasion, Operation, Told, told};
use super::work::Work;
use crate::build::SignalWord;
use crate::units::Length;

/// Pieces under that in both directions are not held by hand.
// ref: layout-practice#P14 [P]: keep parts above 300 mm where possible; safety, "Operations",
// planer: no stock shorter than 300 mm (12 in) [P].
const SAFE_LENGTH: Length = Length::from_mm(300);

pub(super) fn check(work: &Work) -> Option<Caution> {
    let small = work.rows(|row| {
        let [length, width, _] = row.blank.as_ref().map_or(row.size, |blank| blank.size);
        length < SAFE_LENGTH && width < SAFE_LENGTH
    });
    (!small.is_empty()).then(|| Caution {
        id: "small-pieces",
        signal: SignalWord::Warning,
        hazard: Told::new("caution-small-pieces-hazard")
            .parts("small", &small)
            .done(),
        consequence: told("caution-small-pieces-consequence"),
        avoidance: Told::new("caution-small-pieces-avoidance")
            .length("safe-length", SAFE_LENGTH)
            .done(),
        signs: vec![Sign::Eyes],
        operation: Operation::Sawing,
        occasions: vec![Occasion::Cutting],
    })
}
