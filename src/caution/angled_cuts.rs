//! Mitres and bevels, sawn with the blade or the fence at an angle.

use super::sign::Sign;
use super::types::{Caution, Operation, told};
use super::work::Work;
use crate::build::SignalWord;
use crate::model::{FeatureShape, SlopeKind};

fn is_angled(shape: &FeatureShape) -> bool {
    matches!(shape, FeatureShape::Slope(slope) if slope.kind != SlopeKind::Taper)
}

// ref: safety, "Operations", mitre saw and table saw [P].
pub(super) fn check(work: &Work) -> Option<Caution> {
    let occasions = work.occasions(is_angled);
    (!occasions.is_empty()).then(|| Caution {
        id: "angled-cuts",
        signal: SignalWord::Warning,
        hazard: told("caution-angled-cuts-hazard"),
        consequence: told("caution-angled-cuts-consequence"),
        avoidance: told("caution-angled-cuts-avoidance"),
        signs: vec![Sign::Manual, Sign::Ears, Sign::Eyes],
        operation: Operation::Sawing,
        occasions,
    })
}
