//! Sheets sawn to size: the board that is thrown back and the blade itself.

use super::sign::Sign;
use super::types::{Caution, Occasion, Operation, plain};
use super::work::Work;
use crate::build::SignalWord;

// ref: safety, "Operations" (table saw; track or circular saw) [P]; #L32 [V] asks for a spreader
// and for guards; #S08 [P] makes WARNING the word for running blades.
pub(super) fn check(work: &Work) -> Option<Caution> {
    (!work.stock.sheets.is_empty()).then(|| Caution {
        id: "sawing-sheets",
        name: "saw blade and kickback",
        signal: SignalWord::Warning,
        hazard: plain("Kickback and contact with the blade when sheets are sawn."),
        consequence: plain(
            "A sheet that pinches the blade is thrown at you; a blade takes fingers in an instant.",
        ),
        avoidance: plain(
            "Keep riving knife and guard on. Support both sides so that the kerf cannot close; set \
             the blade a little deeper than the sheet. Stand beside the line of \
             the blade, use a push stick, and let the blade stop before you clear anything away.",
        ),
        signs: vec![Sign::Manual, Sign::Ears, Sign::Eyes, Sign::Mask],
        operation: Operation::Sawing,
        occasions: vec![Occasion::Cutting],
    })
}
