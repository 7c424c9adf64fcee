//! Slots for splines sawn across a glued mitre.

use super::sign::Sign;
use super::types::{Caution, Operation, plain};
use super::work::Work;
use crate::build::{HardwareKind, JointKind, SignalWord};

// Common practice, no source.
pub(super) fn check(work: &Work) -> Option<Caution> {
    let occasions = work.steps(|step| {
        work.makes(step, &[JointKind::Mitre]) && work.uses(step, HardwareKind::Spline)
    });
    (!occasions.is_empty()).then(|| Caution {
        id: "splines",
        name: "slots across mitres",
        signal: SignalWord::Warning,
        hazard: plain("A mitred end or corner tips while its slot is cut."),
        consequence: plain("The blade grabs it, throws it and takes the hand along."),
        avoidance: plain(
            "Cut the slots with the end or corner clamped in a jig that runs along the fence, never \
             held by hand. Keep fingers out of the path of the blade, also where it comes out.",
        ),
        signs: vec![Sign::Manual, Sign::Ears, Sign::Eyes],
        operation: Operation::Sawing,
        occasions,
    })
}
