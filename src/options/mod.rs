//! Options: which selections of a plan there are, and what a choice changes.
//!
//! Takes what the stages gave for two selections, gives [`Changes`] as plain data: parts, hardware,
//! tools, cost, mass and time. Judges nothing and draws nothing; what is found in a selection is
//! found by the road.

mod changes;
mod combinations;

pub use changes::{Change, Changes, PartKind, Selected, changes};
pub use combinations::{MOST, Selection, combinations};

use crate::model::PlanOption;

/// An option with what each of its choices changes.
#[derive(Clone, Debug, PartialEq)]
pub struct OptionChanges {
    /// The option, with the choice that the plan is made for.
    pub option: PlanOption,
    /// For each choice, what it changes; none for the one that is taken.
    pub changes: Vec<Option<Changes>>,
}
