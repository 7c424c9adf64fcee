//! What must fit: parts beside each other, and what the author asks of them.

pub mod clearance_out_of_range;
pub mod contact_too_small;
pub mod does_not_go_in;
pub mod fasteners_collide;
pub mod grid_near_edge;
pub mod groove_meets_hole;
pub mod part_floats_free;
pub mod parts_overlap;
pub mod requirement_not_met;
pub mod runner_without_room;
mod sweep;

super::rules! {
    Always parts_overlap
    Complete part_floats_free
    Always requirement_not_met
    Always clearance_out_of_range
    Always does_not_go_in
    Always contact_too_small
    Complete fasteners_collide
    Always groove_meets_hole
    Always grid_near_edge
    Always runner_without_room
}
