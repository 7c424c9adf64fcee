//! Fine dust of wood and glue, at every machine.

use super::sign::Sign;
use super::types::{Caution, Operation, told};
use super::work::Work;
use crate::build::SignalWord;

// ref: safety, "Operations", dust in general [P]; limits #L01 to #L06 (OSHA 15 and 5 mg/m3 [V],
// EU 2 mg/m3 [V]); oak and beech dust cause cancer: #L08 [V].
pub(super) fn check(work: &Work) -> Option<Caution> {
    let is_cut = work.parts().next().is_some();
    is_cut.then(|| Caution {
        id: "dust",
        signal: SignalWord::Warning,
        hazard: told("caution-dust-hazard"),
        consequence: told("caution-dust-consequence"),
        avoidance: told("caution-dust-avoidance"),
        signs: vec![Sign::Eyes, Sign::Mask],
        operation: Operation::Sanding,
        occasions: Vec::new(),
    })
}
