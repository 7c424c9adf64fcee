//! A finished piece too heavy for one person.

use super::heavy_sheet::ONE_PERSON_KG;
use super::sign::Sign;
use super::types::{Caution, Occasion, Operation, Told, told};
use super::work::Work;
use crate::build::SignalWord;
use crate::units::Mass;

// ref: safety#L15 [M] (NIOSH lifting equation).
pub(super) fn check(work: &Work) -> Option<Caution> {
    let kilograms = work
        .behaviour
        .total_kg()
        .filter(|kilograms| *kilograms > ONE_PERSON_KG)?;
    let last = work.build.steps.len().checked_sub(1);
    Some(Caution {
        id: "heavy-piece",
        signal: SignalWord::Caution,
        hazard: Told::new("caution-heavy-piece-hazard")
            .value("mass", Mass::from_kg_f64(kilograms).in_both())
            .done(),
        consequence: told("caution-heavy-piece-consequence"),
        avoidance: told("caution-heavy-piece-avoidance"),
        signs: vec![Sign::CrushedHands, Sign::Feet],
        operation: Operation::Lifting,
        occasions: last
            .map(Occasion::Step)
            .into_iter()
            .chain([Occasion::Use])
            .collect(),
    })
}
