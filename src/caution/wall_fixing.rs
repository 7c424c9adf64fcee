//! What hangs on a wall, or is tied to one.

use super::sign::Sign;
use super::types::{Caution, Operation, Told, told};
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
        signal: SignalWord::Warning,
        hazard: told("caution-wall-fixing-hazard"),
        consequence: told("caution-wall-fixing-consequence"),
        avoidance: match carried {
            Some(kg) => Told::new("caution-wall-fixing-avoidance-mass")
                .value("mass", Mass::from_kg_f64(kg).in_both())
                .done(),
            None => told("caution-wall-fixing-avoidance"),
        },
        signs: vec![Sign::Electricity, Sign::Eyes],
        operation: Operation::Hanging,
        occasions,
    })
}
