//! Slots for splines sawn across a glued mitre.

use super::sign::Sign;
use super::types::{Caution, Operation, told};
use super::work::Work;
use crate::build::{HardwareKind, JointKind, SignalWord};

// Common practice, no source.
pub(super) fn check(work: &Work) -> Option<Caution> {
    let occasions = work.steps(|step| {
        work.makes(step, &[JointKind::Mitre]) && work.uses(step, HardwareKind::Spline)
    });
    (!occasions.is_empty()).then(|| Caution {
        id: "splines",
        signal: SignalWord::Warning,
        hazard: told("caution-splines-hazard"),
        consequence: told("caution-splines-consequence"),
        avoidance: told("caution-splines-avoidance"),
        signs: vec![Sign::Manual, Sign::Ears, Sign::Eyes],
        operation: Operation::Sawing,
        occasions,
    })
}
