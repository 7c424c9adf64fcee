//! Screws driven by machine.

use super::sign::Sign;
use super::types::{Caution, Operation, plain};
use super::work::Work;
use crate::build::{JointKind, SignalWord};

// Common practice, no source; eye protection as for drills (ref: safety, "Operations" [P]).
pub(super) fn check(work: &Work) -> Option<Caution> {
    let kinds = [JointKind::Screws, JointKind::PocketScrews];
    let occasions = work.steps(|step| work.makes(step, &kinds));
    (!occasions.is_empty()).then(|| Caution {
        id: "driving-screws",
        name: "driving screws",
        signal: SignalWord::Caution,
        hazard: plain("A driver bit that slips, and a screw point where a hand holds the parts."),
        consequence: plain("Point or bit goes into the hand."),
        avoidance: plain(
            "Clamp the parts instead of holding them. Keep hands away from where the points go. \
             Bore the holes the plan gives, press straight on the screw, and set the clutch low.",
        ),
        signs: vec![Sign::Eyes],
        operation: Operation::Screwing,
        occasions,
    })
}
