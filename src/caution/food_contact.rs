//! Surfaces that food touches.

use super::types::{Caution, Occasion, Operation, told};
use super::work::Work;
use crate::build::{SignalWord, User};

// ref: safety, "Operations", food contact [P].
pub(super) fn check(work: &Work) -> Option<Caution> {
    let meant = work.build.plan.users.contains(&User::Food);
    meant.then(|| Caution {
        id: "food-contact",
        signal: SignalWord::Notice,
        hazard: told("caution-food-contact-hazard"),
        consequence: told("caution-food-contact-consequence"),
        avoidance: told("caution-food-contact-avoidance"),
        signs: Vec::new(),
        operation: Operation::Using,
        occasions: vec![Occasion::Use],
    })
}
