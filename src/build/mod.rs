//! The build: what the model describes, put together.
//!
//! Takes a [`Model`](crate::model::Model), gives a [`Build`]: every piece in its place, every
//! joint with its contact, what it cuts into both pieces and the hardware it uses, every step
//! with what it needs. Draws nothing, prints nothing, and knows no text.

mod types;

pub use types::*;
