//! Nails and brads driven by hand or by a nailer.

use super::sign::Sign;
use super::types::{Caution, Operation, Phrase, plain};
use super::work::Work;
use crate::build::{JointKind, SignalWord};
use crate::units::Length;

/// No hand is nearer to a nailer's nose (ref: safety, "Operations", nailer: 100 mm, 4 in [P]).
const HAND_CLEAR: Length = Length::from_mm(100);

pub(super) fn check(work: &Work) -> Option<Caution> {
    let occasions = work.steps(|step| work.makes(step, &[JointKind::Nails]));
    (!occasions.is_empty()).then(|| Caution {
        id: "nailing",
        name: "nails",
        signal: SignalWord::Warning,
        hazard: plain("A nail turns aside in the grain and comes out where it should not."),
        consequence: plain("It goes through the hand that holds the work."),
        avoidance: Phrase::new("Clamp the work instead of holding it; no hand nearer than ")
            .length(HAND_CLEAR)
            .then(
                " to a nailer’s nose. Use its single-shot trigger, keep it pointed at the work, and \
                 cut off air or battery before you clear a jam.",
            )
            .done(),
        signs: vec![Sign::Manual, Sign::Ears, Sign::Eyes],
        operation: Operation::Nailing,
        occasions,
    })
}
