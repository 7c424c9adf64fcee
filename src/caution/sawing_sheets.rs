//! Sheets sawn to size: the board that is thrown back and the blade itself.

use super::sign::Sign;
use super::types::{Caution, Occasion, Operation, told};
use super::work::Work;
use crate::build::SignalWord;

// ref: safety, "Operations" (table saw; track or circular saw) [P]; #L32 [V] asks for a spreader
// and for guards; #S08 [P] makes WARNING the word for running blades.
pub(super) fn check(work: &Work) -> Option<Caution> {
    (!work.stock.sheets.is_empty()).then(|| Caution {
        id: "sawing-sheets",
        signal: SignalWord::Warning,
        hazard: told("caution-sawing-sheets-hazard"),
        consequence: told("caution-sawing-sheets-consequence"),
        avoidance: told("caution-sawing-sheets-avoidance"),
        signs: vec![Sign::Manual, Sign::Ears, Sign::Eyes, Sign::Mask],
        operation: Operation::Sawing,
        occasions: vec![Occasion::Cutting],
    })
}
