//! Strips so narrow that a hand on them comes near the blade.

use super::sign::Sign;
use super::types::{Caution, Occasion, Operation, Phrase, plain};
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
        name: "narrow strips at the blade",
        signal: SignalWord::Warning,
        hazard: Phrase::new("Ripping strips down to ")
            .length(narrowest)
            .then(" wide.")
            .done(),
        consequence: plain("The hand that guides a narrow strip is drawn into the blade."),
        avoidance: Phrase::new("Use a push stick or push block where a hand would pass within ")
            .length(HAND_FROM_BLADE)
            .then(
                " of the blade. Where you can, let the narrow strip fall on the side away from the fence, or clamp \
                 a straight edge and use a hand-held saw. Stand out of line with the strip.",
            )
            .done(),
        signs: vec![Sign::Ears, Sign::Eyes],
        operation: Operation::Sawing,
        occasions: vec![Occasion::Cutting],
    })
}
