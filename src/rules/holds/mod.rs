//! What must hold: screws that bite and do not come through, joints and shelves that bear, a piece
//! that stands.

pub mod channel_too_deep;
pub mod end_grain_only;
pub mod insert_stands_proud;
pub mod inserted_too_thick;
pub mod load_not_judged;
pub mod mitre_without_spline;
pub mod pilot_too_wide;
pub mod pocket_screw_length;
pub mod screw_comes_through;
pub mod screw_near_edge;
pub mod screw_too_short;
mod screwed;
pub mod screws_overloaded;
pub mod screws_too_close;
pub mod shelf_sags;
pub mod short_grain;
pub mod tips_over;

super::rules! {
    Always screw_comes_through
    Always screw_too_short
    Always screw_near_edge
    Always screws_too_close
    Always pilot_too_wide
    Always pocket_screw_length
    Always inserted_too_thick
    Always channel_too_deep
    Always insert_stands_proud
    Always short_grain
    Complete end_grain_only
    Complete mitre_without_spline
    Always shelf_sags
    Complete load_not_judged
    Always screws_overloaded
    Complete tips_over
}
