//! Slanted holes: a stepped bit that reaches out of the work.

use super::sign::Sign;
use super::types::{Caution, Operation, told};
use super::work::Work;
use crate::build::SignalWord;
use crate::model::FeatureShape;

// ref: safety, "Operations", drill [P].
pub(super) fn check(work: &Work) -> Option<Caution> {
    let occasions = work.occasions(|shape| matches!(shape, FeatureShape::PocketScrewHole(_)));
    (!occasions.is_empty()).then(|| Caution {
        id: "pocket-holes",
        signal: SignalWord::Caution,
        hazard: told("caution-pocket-holes-hazard"),
        consequence: told("caution-pocket-holes-consequence"),
        avoidance: told("caution-pocket-holes-avoidance"),
        signs: vec![Sign::Eyes],
        operation: Operation::Drilling,
        occasions,
    })
}
