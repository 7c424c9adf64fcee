//! What must fit: parts beside each other, and what the author asks of them.

pub mod part_floats_free;
pub mod parts_overlap;
pub mod requirement_not_met;
mod sweep;
