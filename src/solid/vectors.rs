//! Sums and products of vectors in a part's frame, and points as vectors.

use super::types::Point;
use crate::units::Length;

#[expect(
    clippy::cast_precision_loss,
    reason = "parts are below 2^53 nm, nine thousand kilometres"
)]
pub(super) fn floats(point: &Point) -> [f64; 3] {
    point.map(|part| part as f64)
}

/// The nearest whole nanometre.
pub(super) fn whole(nm: f64) -> i64 {
    Length::from_mm_f64(nm / 1e6).nm()
}

pub(super) fn dot(a: [f64; 3], b: [f64; 3]) -> f64 {
    a.iter().zip(b).map(|(a, b)| a * b).sum()
}

pub(super) fn plus([ax, ay, az]: [f64; 3], [bx, by, bz]: [f64; 3]) -> [f64; 3] {
    [ax + bx, ay + by, az + bz]
}

pub(super) fn minus([ax, ay, az]: [f64; 3], [bx, by, bz]: [f64; 3]) -> [f64; 3] {
    [ax - bx, ay - by, az - bz]
}

pub(super) fn scaled(vector: [f64; 3], by: f64) -> [f64; 3] {
    vector.map(|part| part * by)
}

pub(super) fn cross([ax, ay, az]: [f64; 3], [bx, by, bz]: [f64; 3]) -> [f64; 3] {
    [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx]
}
