//! Chisels and hand saws: shoulders, mortise corners, beds of hinges.

use super::sign::Sign;
use super::types::{Caution, Operation, told};
use super::work::Work;
use crate::build::SignalWord;
use crate::model::{FeatureShape, PocketKind};

/// Shapes that are pared by hand.
fn is_pared(shape: &FeatureShape) -> bool {
    match shape {
        FeatureShape::Tenon(_) => true,
        FeatureShape::Pocket(pocket) => match pocket.kind {
            PocketKind::Mortise | PocketKind::Lap | PocketKind::Recess => true,
            PocketKind::Dado | PocketKind::Groove | PocketKind::Rabbet => false,
        },
        FeatureShape::Holes(_)
        | FeatureShape::Notch { .. }
        | FeatureShape::Arris { .. }
        | FeatureShape::PocketScrewHole(_)
        | FeatureShape::Slope(_)
        | FeatureShape::SplineSlot(_)
        | FeatureShape::Outline(_) => false,
    }
}

// ref: safety, "Operations", hand tools and chisels [P].
pub(super) fn check(work: &Work) -> Option<Caution> {
    let occasions = work.occasions(is_pared);
    (!occasions.is_empty()).then(|| Caution {
        id: "chiselling",
        signal: SignalWord::Caution,
        hazard: told("caution-chiselling-hazard"),
        consequence: told("caution-chiselling-consequence"),
        avoidance: told("caution-chiselling-avoidance"),
        signs: vec![Sign::Eyes],
        operation: Operation::Carving,
        occasions,
    })
}
