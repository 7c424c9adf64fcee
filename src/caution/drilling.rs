//! Holes drilled in loose work.

use super::sign::Sign;
use super::types::{Caution, Operation, plain};
use super::work::Work;
use crate::build::SignalWord;
use crate::model::FeatureShape;

// ref: safety, "Operations", drill [P]; gloves never near turning bits.
pub(super) fn check(work: &Work) -> Option<Caution> {
    let occasions = work.occasions(|shape| matches!(shape, FeatureShape::Holes(_)));
    (!occasions.is_empty()).then(|| Caution {
        id: "drilling",
        name: "drill",
        signal: SignalWord::Caution,
        hazard: plain("Work that spins with the drill, and chips that fly."),
        consequence: plain("Hands and wrists are struck or cut, eyes are hurt."),
        avoidance: plain(
            "Clamp the work on a backing board that the bit may run into, and set a depth stop. \
             Wear no gloves, loose sleeves or open hair near a turning bit.",
        ),
        signs: vec![Sign::Eyes, Sign::NoGloves],
        operation: Operation::Drilling,
        occasions,
    })
}
