//! What is known about wood: its figures, and the formulas of its science.
//!
//! Pure data and pure functions; no stage is known here, and none asks back. Formulas take and
//! give `f64` with the unit in the name; they are defined for positive finite sizes, and give an
//! infinite or not-a-number result, never a panic, for others. Sizes that people buy or drill are
//! [`Length`](crate::units::Length)s, so that they print exactly.
//!
//! Loads that hold a joint are averages at failure: divide by [`fastening::LOAD_DIVISOR`].

pub mod bending;
pub mod fastening;
mod hardware;
mod kind;
pub mod moisture;
mod panels;
mod species;
pub mod stability;

pub use hardware::{COMMON_NAILS, WOOD_SCREWS, WoodScrew, insert_hole, pocket_screw_lengths};
pub use kind::{Tree, Wood};
pub use panels::{PANELS, PanelProduct, PanelStrength};
pub use species::{SPECIES, Species};
