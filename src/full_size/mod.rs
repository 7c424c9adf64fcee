//! Full-size templates: a side of a part as it is seen, laid on sheets of paper.
//!
//! In: a [`Build`] and its [`Solids`]. Out: for each template the outline of the side with its arcs,
//! what is marked on it, and the windows of the sheets it is printed through. All of it is whole
//! nanometres of the part: nothing is scaled. Never: anything drawn, pages, findings.

mod laid;
mod outline;
mod seen;
mod tiling;

use crate::units::Length;

pub use laid::{Cross, Laid, is_too_large, lay, templates};
pub use seen::Seen;
pub use tiling::{
    CLEAR, EDGE, FOOT, HEAD, OVERLAP, Page, Sheets, Tile, smallest_sheet, window_size,
};

/// Templates that are put together of sheets are no longer: where two sheets meet by eye, half a
/// millimetre is lost (common practice, no source), and eight sheets of A4 are 2 m.
pub const LONGEST: Length = Length::from_mm(2_000);
/// And their sheets cover no more than this, in square millimetres: 1 m², some 24 sheets of A4.
pub const LARGEST_MM2: f64 = 1e6;
