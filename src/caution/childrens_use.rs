//! Pieces that children use.

use super::types::{Caution, Occasion, Operation, Told, told};
use super::work::Work;
use crate::build::{SignalWord, User};
use crate::units::Length;

/// Gaps that do not catch fingers: narrower than the first, or from the second to the third
/// (ref: safety, "Operations", children's furniture [M], after EN practice).
const FINGERS: [Length; 3] = [Length::from_mm(7), Length::from_mm(12), Length::from_mm(25)];
/// Openings that catch a head: from the one to the other (ref: safety, likewise [M]; 3.5 in at
/// #L24 [M]).
const HEADS: [Length; 2] = [Length::from_mm(89), Length::from_mm(229)];

pub(super) fn check(work: &Work) -> Option<Caution> {
    let [narrow, wide, widest] = FINGERS;
    let [small, large] = HEADS;
    let meant = work.build.plan.users.contains(&User::Children);
    meant.then(|| Caution {
        id: "childrens-use",
        signal: SignalWord::Warning,
        hazard: told("caution-childrens-use-hazard"),
        consequence: told("caution-childrens-use-consequence"),
        avoidance: Told::new("caution-childrens-use-avoidance")
            .length("narrow", narrow)
            .length("wide", wide)
            .length("widest", widest)
            .length("small", small)
            .length("large", large)
            .done(),
        signs: Vec::new(),
        operation: Operation::Using,
        occasions: vec![Occasion::Use],
    })
}
