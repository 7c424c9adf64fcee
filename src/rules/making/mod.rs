//! What can be made: steps in which every part comes in once, and says how.

pub mod part_never_added;
pub mod step_adds_twice;
pub mod step_without_text;

super::rules! {
    Always step_adds_twice
    Complete part_never_added
    Always step_without_text
}
