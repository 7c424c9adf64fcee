//! What must hold: screws that bite and do not come through.

pub mod screw_comes_through;
pub mod screw_too_short;
mod screwed;

super::rules! {
    Always screw_comes_through
    Always screw_too_short
}
