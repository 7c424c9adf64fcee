//! Lengths and sums as cells.

use crate::units::{Length, Money, Precision};

/// Exact millimetres.
pub(super) fn mm(length: Length) -> f64 {
    length.mm()
}

/// Inches as the plan prints them: `11-21/32`.
pub(super) fn inch(length: Length, precision: Precision) -> String {
    length.printed(precision).inch
}

/// How much the printed inches are too long, in millimetres; below zero where they are too short.
pub(super) fn inch_error_mm(length: Length, precision: Precision) -> f64 {
    length.printed(precision).inch_error.mm()
}

/// The figure of a sum, with two decimals.
pub(super) fn sum(money: &Money) -> String {
    let printed = money.printed();
    let figure = printed.split(' ').next();
    figure.unwrap_or_default().to_owned()
}
