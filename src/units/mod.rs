//! Measures: lengths, areas, volumes, masses, money, and their printing in both unit systems.
//!
//! Takes nothing from any stage. A [`Length`] is a whole number of nanometres, so that every
//! 1/64 in and every 0.001 mm is exact; everything an author computes is an exact [`Quantity`]
//! until it becomes a `Length`, and [`rounding`] is the one place where a figure loses anything.

mod dimension;
mod in_words;
mod length;
mod measures;
pub mod printed;
mod quantity;
pub mod rounding;

pub use dimension::Dimension;
pub use in_words::lengths_in;
pub use length::{Length, NM_PER_FOOT, NM_PER_INCH, NM_PER_MM};
pub use measures::{
    Area, Mass, Money, Volume, newtons_in_both, square_metres_in_both, tenths_in_both,
};
pub use printed::{Precision, PrintedLength};
pub use quantity::{ArithmeticFault, Number, Quantity, Unit};
