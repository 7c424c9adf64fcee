//! Points, directions, frames and plane shapes, without knowledge of wood.
//!
//! World axes: x runs from left to right, y from front to back, z from bottom to top, a
//! right-handed frame. A part's own axes are its length (from foot to head), its width (from near
//! to far) and its thickness (from back to face), right-handed unless the part is mirrored.

pub mod frame;
pub mod outline;

pub use frame::{Axis, Direction, Handedness, Interval, Orientation, PartAxis, Side};
pub use outline::{Contour, ContourPiece, PlanePoint};
