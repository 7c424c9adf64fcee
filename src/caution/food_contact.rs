//! Surfaces that food touches.

use super::types::{Caution, Occasion, Operation, plain};
use super::work::Work;
use crate::build::{SignalWord, User};

// ref: safety, "Operations", food contact [P].
pub(super) fn check(work: &Work) -> Option<Caution> {
    let meant = work.build.plan.users.contains(&User::Food);
    meant.then(|| Caution {
        id: "food-contact",
        name: "contact with food",
        signal: SignalWord::Notice,
        hazard: plain("Not every wood, glue and finish is fit for food."),
        consequence: plain("Taste, stains or harmful traces go into what is eaten."),
        avoidance: plain(
            "Take close-grained wood, and glue and finish whose makers state that they are fit for \
             food once cured. Let them cure as long as the label says.",
        ),
        signs: Vec::new(),
        operation: Operation::Using,
        occasions: vec![Occasion::Use],
    })
}
