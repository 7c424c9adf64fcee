//! Points, directions, frames and plane shapes, without knowledge of wood.
//!
//! World axes: x runs from left to right, y from front to back, z from bottom to top, a
//! right-handed frame. A part's own axes are its length (from foot to head), its width (from near
//! to far) and its thickness (from back to face), right-handed unless the part is mirrored.
//!
//! Plane shapes are exact on a grid of whole nanometres: [`region`] cuts and joins them and knows
//! of every edge whether it is a chord of a circle, [`circle`] lays those chords.

pub mod circle;
pub mod convex;
pub mod frame;
pub mod outline;
pub mod region;

pub use circle::Circle;
pub use convex::{HalfSpace, clipped_volume_mm3};
pub use frame::{Axis, Direction, Handedness, Interval, Orientation, PartAxis, Side};
pub use outline::{Contour, ContourPiece, PlanePoint};
pub use region::{BoundaryEdge, Region, Ring, Shape};
