//! Boards and bars cut to length.

use super::sign::Sign;
use super::types::{Caution, Occasion, Operation, told};
use super::work::Work;
use crate::build::SignalWord;

// ref: safety, "Operations", mitre saw [P].
pub(super) fn check(work: &Work) -> Option<Caution> {
    (!work.stock.boards.is_empty()).then(|| Caution {
        id: "crosscutting-boards",
        signal: SignalWord::Warning,
        hazard: told("caution-crosscutting-boards-hazard"),
        consequence: told("caution-crosscutting-boards-consequence"),
        avoidance: told("caution-crosscutting-boards-avoidance"),
        signs: vec![Sign::Manual, Sign::Ears, Sign::Eyes],
        operation: Operation::Sawing,
        occasions: vec![Occasion::Cutting],
    })
}
