//! Closed lines of points in a view, in micrometres.

use super::grid::Bounds;

/// A closed line; the last point is not the first one again.
pub(super) type Ring = Vec<[f64; 2]>;
/// An outline with its holes.
pub(super) type Rings = Vec<Ring>;

/// The sides of a ring, each from where it begins to where it ends.
pub(super) fn sides(ring: &[[f64; 2]]) -> impl Iterator<Item = (&[f64; 2], &[f64; 2])> {
    ring.iter().zip(ring.iter().cycle().skip(1))
}

/// The area a ring encloses: positive counter-clockwise.
pub(super) fn area(ring: &[[f64; 2]]) -> f64 {
    let twice: f64 = sides(ring)
        .map(|([ax, ay], [bx, by])| ax * by - bx * ay)
        .sum();
    twice / 2.0
}

/// How long the way around a ring is.
pub(super) fn girth(ring: &[[f64; 2]]) -> f64 {
    sides(ring)
        .map(|(a, b)| libm::hypot(b[0] - a[0], b[1] - a[1]))
        .sum()
}

/// The part of a ring where `gap` is positive; bridges along the cut enclose nothing
/// (Sutherland and Hodgman 1974, Reentrant polygon clipping).
pub(super) fn keep_positive(ring: &[[f64; 2]], gap: impl Fn(f64, f64) -> f64) -> Ring {
    let mut kept = Vec::with_capacity(ring.len() + 2);
    for (a, b) in sides(ring) {
        let (at_a, at_b) = (gap(a[0], a[1]), gap(b[0], b[1]));
        if at_a > 0.0 {
            kept.push(*a);
        }
        if (at_a > 0.0) != (at_b > 0.0) {
            let t = at_a / (at_a - at_b);
            kept.push([a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t]);
        }
    }
    kept
}

/// The part of a ring inside of a rectangle that is `spare` larger on each side.
pub(super) fn inside(ring: &[[f64; 2]], bounds: &Bounds, spare: f64) -> Ring {
    let ([left, low], [right, high]) = (bounds.low, bounds.high);
    let kept = keep_positive(ring, |x, _| x - left + spare);
    let kept = keep_positive(&kept, |x, _| right - x + spare);
    let kept = keep_positive(&kept, |_, y| y - low + spare);
    keep_positive(&kept, |_, y| high - y + spare)
}
