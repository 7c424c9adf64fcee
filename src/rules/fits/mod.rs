//! What must fit: parts beside each other, and what the author asks of them.

pub mod clearance_out_of_range;
pub mod does_not_go_in;
pub mod part_floats_free;
pub mod parts_overlap;
pub mod requirement_not_met;
mod sweep;

super::rules! {
    Always parts_overlap
    Complete part_floats_free
    Always requirement_not_met
    Always clearance_out_of_range
    Always does_not_go_in
}
