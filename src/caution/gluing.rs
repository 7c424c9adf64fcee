//! Joints and layers glued up.

use std::collections::BTreeSet;

use super::sign::Sign;
use super::types::{Caution, Occasion, Operation, told};
use super::work::Work;
use crate::build::SignalWord;

/// When glue is used: in the steps with glued joints, and before the steps that add glued-up
/// parts.
pub(super) fn occasions(work: &Work) -> Vec<Occasion> {
    let glued = work.steps(|step| {
        let joints = step.joints.iter();
        joints
            .filter_map(|index| work.build.joints.get(*index))
            .any(|joint| joint.glued)
    });
    let layered = work
        .parts()
        .filter(|(_, part)| part.layers > 1)
        .map(|(id, _)| work.machined(id));
    let all: BTreeSet<Occasion> = glued.into_iter().chain(layered).collect();
    all.into_iter().collect()
}

// ref: safety, "Operations", adhesive [P].
pub(super) fn check(work: &Work) -> Option<Caution> {
    let occasions = occasions(work);
    (!occasions.is_empty()).then(|| Caution {
        id: "gluing",
        signal: SignalWord::Caution,
        hazard: told("caution-gluing-hazard"),
        consequence: told("caution-gluing-consequence"),
        avoidance: told("caution-gluing-avoidance"),
        signs: vec![Sign::Manual, Sign::Eyes, Sign::Gloves],
        operation: Operation::Gluing,
        occasions,
    })
}
