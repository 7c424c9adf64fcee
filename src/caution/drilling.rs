//! Holes drilled in loose work.

use super::sign::Sign;
use super::types::{Caution, Operation, told};
use super::work::Work;
use crate::build::SignalWord;
use crate::model::FeatureShape;

// ref: safety, "Operations", drill [P]; gloves never near turning bits.
pub(super) fn check(work: &Work) -> Option<Caution> {
    let occasions = work.occasions(|shape| matches!(shape, FeatureShape::Holes(_)));
    (!occasions.is_empty()).then(|| Caution {
        id: "drilling",
        signal: SignalWord::Caution,
        hazard: told("caution-drilling-hazard"),
        consequence: told("caution-drilling-consequence"),
        avoidance: told("caution-drilling-avoidance"),
        signs: vec![Sign::Eyes, Sign::NoGloves],
        operation: Operation::Drilling,
        occasions,
    })
}
