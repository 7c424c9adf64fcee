//! Mitres and bevels, sawn with the blade or the fence at an angle.

use super::sign::Sign;
use super::types::{Caution, Operation, plain};
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
        name: "saw set to an angle",
        signal: SignalWord::Warning,
        hazard: plain("Work that creeps along the fence, and a tilted blade under the hand."),
        consequence: plain("The blade reaches the hand, or catches the point and throws it."),
        avoidance: plain(
            "Clamp the work to the fence or the mitre gauge; keep both hands well clear on the \
             side away from the tilt. Check the path of the blade with the power off. Never trap \
             the off-cut between blade and fence, and let the blade stop before you take it away.",
        ),
        signs: vec![Sign::Manual, Sign::Ears, Sign::Eyes],
        operation: Operation::Sawing,
        occasions,
    })
}
