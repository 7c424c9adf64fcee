//! Screws driven by machine.

use super::sign::Sign;
use super::types::{Caution, Operation, told};
use super::work::Work;
use crate::build::{JointKind, SignalWord};

// Common practice, no source; eye protection as for drills (ref: safety, "Operations" [P]).
pub(super) fn check(work: &Work) -> Option<Caution> {
    let kinds = [JointKind::Screws, JointKind::PocketScrews];
    let occasions = work.steps(|step| work.makes(step, &kinds));
    (!occasions.is_empty()).then(|| Caution {
        id: "driving-screws",
        signal: SignalWord::Caution,
        hazard: told("caution-driving-screws-hazard"),
        consequence: told("caution-driving-screws-consequence"),
        avoidance: told("caution-driving-screws-avoidance"),
        signs: vec![Sign::Eyes],
        operation: Operation::Screwing,
        occasions,
    })
}
