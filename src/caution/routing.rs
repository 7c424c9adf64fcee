//! Channels cut and edges shaped with a router.

use super::curves;
use super::sign::Sign;
use super::types::{Caution, Operation, Phrase, plain};
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
        name: "router",
        signal: SignalWord::Warning,
        hazard: plain("The router bit grabs when it is fed the wrong way or too deep."),
        consequence: plain(
            "The machine jumps, the bit breaks or cuts the hand that holds the work.",
        ),
        avoidance: Phrase::new(
            "Clamp the work and its fence. Feed against the turning of the bit, in passes of at \
             most ",
        )
        .length(DEEPEST_PASS)
        .then(
            ". Put the shank in the collet for three quarters of its length and tighten it well; \
             run large bits slowly. Unplug before you change a bit.",
        )
        .done(),
        signs: vec![Sign::Manual, Sign::Ears, Sign::Eyes, Sign::Mask],
        operation: Operation::Routing,
        occasions,
    })
}
