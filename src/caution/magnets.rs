//! Small strong magnets.

use super::types::{Caution, Occasion, Operation, plain};
use super::work::Work;
use crate::build::{JointKind, SignalWord};

// From memory: rules on loose magnets (16 CFR 1262) are about those that children swallow.
pub(super) fn check(work: &Work) -> Option<Caution> {
    let fitted = work.steps(|step| work.makes(step, &[JointKind::Magnets]));
    let used = work.has_joint(JointKind::Magnets).then_some(Occasion::Use);
    let occasions: Vec<Occasion> = fitted.into_iter().chain(used).collect();
    (!occasions.is_empty()).then(|| Caution {
        id: "magnets",
        name: "strong magnets",
        signal: SignalWord::Warning,
        hazard: plain("Small strong magnets that come loose are swallowed by children."),
        consequence: plain("Two of them pinch the gut between them, which can kill."),
        avoidance: plain(
            "Glue each magnet in with epoxy, below the surface, and pull at it once the glue is \
             hard. Keep spare ones away from children and from heart pacemakers.",
        ),
        signs: Vec::new(),
        operation: Operation::Using,
        occasions,
    })
}
