//! The build: what the model describes, put together.
//!
//! Takes a [`Model`], gives a [`Build`]: every piece in its place, every joint with its contact,
//! what it cuts into both pieces and the hardware it uses, the parts that come out of it, every
//! step with what it needs. Draws nothing, prints nothing, and knows no text.

mod assemble;
mod contact;
mod drilling;
pub mod findings;
mod joint;
mod parts;
mod piece;
mod spacing;
mod steps;
mod types;
mod variant;

use crate::finding::Outcome;
use crate::model::Model;

pub use types::*;

/// Puts a model together.
///
/// Pure: the same model gives the same build and findings.
pub fn assemble(model: &Model) -> Outcome<Build> {
    assemble::assemble(model)
}
