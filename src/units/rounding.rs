//! The one place where a figure is rounded.

use num_traits::Signed;

use super::length::{Length, NM_PER_INCH};
use super::quantity::Number;

/// The nearest whole number; halves go away from zero (ref: units-and-paper#R16 [P]).
pub fn round_ratio(number: &Number) -> i128 {
    number.round().to_integer()
}

/// `length` as the nearest whole count of `step`; halves go away from zero.
///
/// A step of zero or less counts nanometres.
pub fn round_to_step(length: Length, step: Length) -> i64 {
    let step = step.nm().max(1);
    let twice = i128::from(length.nm()).abs() * 2 + i128::from(step);
    let count = twice / (2 * i128::from(step));
    let signed = if length.nm().is_negative() {
        -count
    } else {
        count
    };
    i64::try_from(signed).unwrap_or(i64::MAX)
}

/// The nearest multiple of an inch's `denominator`-th part.
pub fn round_to_inch_part(length: Length, denominator: i64) -> i64 {
    round_to_step(length, Length::from_nm(NM_PER_INCH / denominator.max(1)))
}

/// True where `number` is below zero.
pub fn is_negative(number: &Number) -> bool {
    number.is_negative()
}
