//! Channels cut and edges shaped with a router.

use super::curves;
use super::sign::Sign;
use super::types::{Caution, Operation, Told, told};
use super::work::Work;
use crate::build::SignalWord;
use crate::model::FeatureShape;
use crate::units::Length;

/// A deeper cut takes more passes.
// ref: safety, "Operations", router: passes 3-6 mm deep [P].
const DEEPEST_PASS: Length = Length::from_mm(6);

/// Shapes that a router makes: channels, and edges along a broad side.
pub(super) fn is_routed(shape: &FeatureShape) -> bool {
    matches!(shape, FeatureShape::Pocket(_) | FeatureShape::Arris { .. })
        && curves::corner(shape).is_none()
}

pub(super) fn check(work: &Work) -> Option<Caution> {
    let occasions = work.occasions(is_routed);
    (!occasions.is_empty()).then(|| Caution {
        id: "routing",
        signal: SignalWord::Warning,
        hazard: told("caution-routing-hazard"),
        consequence: told("caution-routing-consequence"),
        avoidance: Told::new("caution-routing-avoidance")
            .length("deepest-pass", DEEPEST_PASS)
            .done(),
        signs: vec![Sign::Manual, Sign::Ears, Sign::Eyes, Sign::Mask],
        operation: Operation::Routing,
        occasions,
    })
}
