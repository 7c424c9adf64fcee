//! Strips so narrow that a hand on them comes near the blade.

use super::sign::Sign;
use super::types::{Caution, Occasion, Operation, Told, told};
use super::work::Work;
use crate::build::SignalWord;
use crate::stock::CutDirection;
use crate::units::Length;

/// Nearer than that a push stick does the work.
// ref: safety, "Operations", table saw: 150 mm (6 in) [P].
const HAND_FROM_BLADE: Length = Length::from_mm(150);

pub(super) fn check(work: &Work) -> Option<Caution> {
    let rips = work
        .stock
        .plans()
        .flat_map(|plan| &plan.layouts)
        .flat_map(|layout| &layout.cuts)
        .filter(|cut| cut.direction == CutDirection::Rip);
    let narrowest = rips.map(|cut| cut.setting).min()?;
    (narrowest < HAND_FROM_BLADE).then(|| Caution {
        id: "narrow-strips",
        signal: SignalWord::Warning,
        hazard: Told::new("caution-narrow-strips-hazard")
            .length("narrowest", narrowest)
            .done(),
        consequence: told("caution-narrow-strips-consequence"),
        avoidance: Told::new("caution-narrow-strips-avoidance")
            .length("hand-from-blade", HAND_FROM_BLADE)
            .done(),
        signs: vec![Sign::Ears, Sign::Eyes],
        operation: Operation::Sawing,
        occasions: vec![Occasion::Cutting],
    })
}
