//! Fine dust of wood and glue, at every machine.

use super::sign::Sign;
use super::types::{Caution, Operation, plain};
use super::work::Work;
use crate::build::SignalWord;

// ref: safety, "Operations", dust in general [P]; limits #L01 to #L06 (OSHA 15 and 5 mg/m3 [V],
// EU 2 mg/m3 [V]); oak and beech dust cause cancer: #L08 [V].
pub(super) fn check(work: &Work) -> Option<Caution> {
    let is_cut = work.parts().next().is_some();
    is_cut.then(|| Caution {
        id: "dust",
        name: "dust",
        signal: SignalWord::Warning,
        hazard: plain("Fine dust from sawing, routing and sanding."),
        consequence: plain(
            "Breathed in for years it harms lungs and can cause cancer; in the air or in a bag it \
             can burn.",
        ),
        avoidance: plain(
            "Extract at the machine, wear a mask that seals, sand outdoors or with suction. \
             Vacuum, do not sweep or blow. Empty the collector away from sparks. Never sand old \
             paint or treated wood of unknown kind.",
        ),
        signs: vec![Sign::Eyes, Sign::Mask],
        operation: Operation::Sanding,
        occasions: Vec::new(),
    })
}
