//! Small strong magnets.

use super::types::{Caution, Occasion, Operation, told};
use super::work::Work;
use crate::build::{JointKind, SignalWord};

// From memory: rules on loose magnets (16 CFR 1262) are about those that children swallow.
pub(super) fn check(work: &Work) -> Option<Caution> {
    let fitted = work.steps(|step| work.makes(step, &[JointKind::Magnets]));
    let used = work.has_joint(JointKind::Magnets).then_some(Occasion::Use);
    let occasions: Vec<Occasion> = fitted.into_iter().chain(used).collect();
    (!occasions.is_empty()).then(|| Caution {
        id: "magnets",
        signal: SignalWord::Warning,
        hazard: told("caution-magnets-hazard"),
        consequence: told("caution-magnets-consequence"),
        avoidance: told("caution-magnets-avoidance"),
        signs: Vec::new(),
        operation: Operation::Using,
        occasions,
    })
}
