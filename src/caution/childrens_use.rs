//! Pieces that children use.

use super::types::{Caution, Occasion, Operation, Phrase, plain};
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
        name: "use by children",
        signal: SignalWord::Warning,
        hazard: plain("Children climb, put things into their mouths, and get stuck."),
        consequence: plain("They can choke, be caught by head or fingers, or fall."),
        avoidance: Phrase::new("Make no gap for fingers but under ")
            .length(narrow)
            .then(" or from ")
            .length(wide)
            .then(" to ")
            .length(widest)
            .then(", and no opening from ")
            .length(small)
            .then(" to ")
            .length(large)
            .then(
                ", which catches a head. Round all edges, leave nothing small that comes off, and \
                 use a finish whose maker says it is safe for children’s goods. The rules where you \
                 live go first.",
            )
            .done(),
        signs: Vec::new(),
        operation: Operation::Using,
        occasions: vec![Occasion::Use],
    })
}
