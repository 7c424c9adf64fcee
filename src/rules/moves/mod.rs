//! What must be free to move: solid wood, which swells and shrinks across its grain.

pub mod fixed_across_movement;
pub mod grain_at_odds;
pub mod panel_without_room;

super::rules! {
    Always fixed_across_movement
    Always panel_without_room
    Always grain_at_odds
}
