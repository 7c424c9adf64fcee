//! Boards and bars cut to length.

use super::sign::Sign;
use super::types::{Caution, Occasion, Operation, plain};
use super::work::Work;
use crate::build::SignalWord;

// ref: safety, "Operations", mitre saw [P].
pub(super) fn check(work: &Work) -> Option<Caution> {
    (!work.stock.boards.is_empty()).then(|| Caution {
        id: "crosscutting-boards",
        name: "saw for cutting to length",
        signal: SignalWord::Warning,
        hazard: plain("A hand in the path of the saw when boards are cut to length."),
        consequence: plain("The blade cuts to the bone, and a loose off-cut is thrown."),
        avoidance: plain(
            "Hold the board against the fence, both hands well clear and never crossed. Clamp \
             short pieces. When the cut is through, let the blade stop before you lift it.",
        ),
        signs: vec![Sign::Manual, Sign::Ears, Sign::Eyes],
        operation: Operation::Sawing,
        occasions: vec![Occasion::Cutting],
    })
}
