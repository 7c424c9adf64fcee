//! Slanted holes: a stepped bit that reaches out of the work.

use super::sign::Sign;
use super::types::{Caution, Operation, plain};
use super::work::Work;
use crate::build::SignalWord;
use crate::model::FeatureShape;

// ref: safety, "Operations", drill [P].
pub(super) fn check(work: &Work) -> Option<Caution> {
    let occasions = work.occasions(|shape| matches!(shape, FeatureShape::PocketScrewHole(_)));
    (!occasions.is_empty()).then(|| Caution {
        id: "pocket-holes",
        name: "pocket-hole bit",
        signal: SignalWord::Caution,
        hazard: plain(
            "The stepped bit grabs in a slanted hole and comes near the end of the part.",
        ),
        consequence: plain(
            "The jig twists in the hand, and the bit cuts what lies behind the part.",
        ),
        avoidance: plain(
            "Clamp jig and part together. Set the stop collar on a scrap of the same thickness \
             first. Keep hands off the end the screw will come out of, and drill with the bit at \
             full speed before it touches.",
        ),
        signs: vec![Sign::Eyes],
        operation: Operation::Drilling,
        occasions,
    })
}
