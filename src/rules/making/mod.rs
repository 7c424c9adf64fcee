//! What can be made: steps in which every part comes in once, and says how.

pub mod cut_too_small;
pub mod finer_than_a_shop;
pub mod idle_tool;
pub mod lost_in_rounding;
pub mod named_before_added;
pub mod out_of_reach;
pub mod part_never_added;
pub mod pulled_before_added;
pub mod sizes_do_not_add_up;
pub mod step_adds_twice;
pub mod step_without_text;
pub mod template_of_nothing;
pub mod template_too_large;
pub mod too_short_to_plane;

super::rules! {
    Always step_adds_twice
    Complete part_never_added
    Always step_without_text
    Complete pulled_before_added
    Always too_short_to_plane
    Always cut_too_small
    Always out_of_reach
    Always finer_than_a_shop
    Always lost_in_rounding
    Always sizes_do_not_add_up
    Complete named_before_added
    Complete idle_tool
    Complete template_too_large
    Complete template_of_nothing
}
