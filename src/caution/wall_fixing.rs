//! What hangs on a wall, or is tied to one.

use super::sign::Sign;
use super::types::{Caution, Operation, Phrase, plain};
use super::work::Work;
use crate::build::{HardwareKind, SignalWord};
use crate::units::Mass;

// ref: safety, "Operations", wall hanging [P]: fixings rated for four times the load.
const RATED_FOR: f64 = 4.0;

pub(super) fn check(work: &Work) -> Option<Caution> {
    let occasions = work.fitted(HardwareKind::WallFixing);
    let carried = work.behaviour.total_kg().map(|kg| kg * RATED_FOR);
    (!occasions.is_empty()).then(|| Caution {
        id: "wall-fixing",
        name: "fixing to the wall",
        signal: SignalWord::Warning,
        hazard: plain("A fixing that the wall does not hold, and cables and pipes in it."),
        consequence: plain("The piece falls on someone; a drill in a cable kills."),
        avoidance: match carried {
            Some(kg) => Phrase::new(
                "Find studs, cables and pipes first. Use fixings made for this wall that hold at \
                 least four times what hangs on them: for the empty piece alone ",
            )
            .value(Mass::from_kg_f64(kg).in_both())
            .then(". In doubt ask someone licensed."),
            None => Phrase::new(
                "Find studs, cables and pipes first. Use fixings made for this wall that hold at \
                 least four times what hangs on them. In doubt ask someone licensed.",
            ),
        }
        .done(),
        signs: vec![Sign::Electricity, Sign::Eyes],
        operation: Operation::Hanging,
        occasions,
    })
}
