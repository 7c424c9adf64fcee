//! Outlines and notches sawn with a band saw or a jigsaw.

use super::types::{Caution, Operation, Sign, plain};
use super::work::Work;
use crate::build::SignalWord;
use crate::model::FeatureShape;

/// Shapes that a straight saw does not make.
pub(super) const fn is_curve(shape: &FeatureShape) -> bool {
    matches!(shape, FeatureShape::Outline(_) | FeatureShape::Notch { .. })
}

// ref: safety, "Operations", band saw [P].
pub(super) fn check(work: &Work) -> Option<Caution> {
    let occasions = work.occasions(is_curve);
    (!occasions.is_empty()).then(|| Caution {
        id: "curves",
        signal: SignalWord::Warning,
        hazard: plain("Fingers near the blade when outlines and notches are sawn."),
        consequence: plain("The blade cuts deep, and a bent one breaks."),
        avoidance: plain(
            "Clamp the work for a jigsaw and keep the other hand off its underside. On a band saw \
             set the guide just over the work, make relief cuts first, and do not back out of a \
             curve while the blade runs.",
        ),
        signs: vec![Sign::EARS, Sign::EYES, Sign::MASK],
        operation: Operation::Sawing,
        occasions,
    })
}
