//! Nails and brads driven by hand or by a nailer.

use super::sign::Sign;
use super::types::{Caution, Operation, Told, told};
use super::work::Work;
use crate::build::{JointKind, SignalWord};
use crate::units::Length;

/// No hand is nearer to a nailer's nose (ref: safety, "Operations", nailer: 100 mm, 4 in [P]).
const HAND_CLEAR: Length = Length::from_mm(100);

pub(super) fn check(work: &Work) -> Option<Caution> {
    let occasions = work.steps(|step| work.makes(step, &[JointKind::Nails]));
    (!occasions.is_empty()).then(|| Caution {
        id: "nailing",
        signal: SignalWord::Warning,
        hazard: told("caution-nailing-hazard"),
        consequence: told("caution-nailing-consequence"),
        avoidance: Told::new("caution-nailing-avoidance")
            .length("hand-clear", HAND_CLEAR)
            .done(),
        signs: vec![Sign::Manual, Sign::Ears, Sign::Eyes],
        operation: Operation::Nailing,
        occasions,
    })
}
