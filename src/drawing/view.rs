//! Where the reader looks from: an exact basis for parallel projection.
//!
//! For the direction d = (a, b, c) from the build towards the eye, X = (−b, a, 0) runs to the
//! right, Y = (−ac, −bc, a² + b²) up and d towards the eye. With whole numbers in d and whole
//! micrometres in the points the products are exact, so what coincides in the view coincides in
//! its numbers too; lengths are divided out once, at the end, by the same three factors.

use crate::geometry::{Axis, Direction};

/// A point of the world in micrometres: across, deep, high.
pub type WorldPoint = [f64; 3];
/// A point of a view in micrometres: right, up, towards the eye.
pub type ViewPoint = [f64; 3];

/// Faces whose normal makes a smaller cosine with the line of sight are seen edge-on.
pub(super) const EDGE_ON: f64 = 1e-4;

/// A parallel projection.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct View {
    axes: [[f64; 3]; 3],
    lengths: [f64; 3],
}

impl View {
    /// From the right, the front and above in equal parts: isometric axes at 30° to the
    /// horizontal (ISO 5456-3, ref: units-and-paper, "Axonometry" [V]).
    pub const ISOMETRIC: [i64; 3] = [1, -1, 1];

    /// The view towards the eye in direction `towards`, in whole numbers; from the front where
    /// it is no direction at all.
    pub fn from_direction(towards: [i64; 3]) -> Self {
        #[expect(
            clippy::cast_precision_loss,
            reason = "directions of the world are small whole numbers"
        )]
        let d = towards.map(|part| part as f64);
        Self::from_vector(d)
    }

    /// The view towards the eye along any vector.
    pub fn from_vector(d: [f64; 3]) -> Self {
        let [a, b, c] = d;
        let flat = a * a + b * b;
        let axes = if flat > 0.0 {
            [[-b, a, 0.0], [-a * c, -b * c, flat], d]
        } else if c != 0.0 {
            // Straight from above or below: the back of the world is up, or down.
            [[1.0, 0.0, 0.0], [0.0, c.signum(), 0.0], d]
        } else {
            return Self::from_vector([0.0, -1.0, 0.0]);
        };
        Self {
            axes,
            lengths: axes.map(|axis| dot(axis, axis).sqrt()),
        }
    }

    /// The view in which `right` runs to the right and `up` upwards: two unit vectors square to
    /// each other.
    pub(super) fn from_axes(right: WorldPoint, up: WorldPoint) -> Self {
        let ([ax, ay, az], [bx, by, bz]) = (right, up);
        let towards = [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx];
        Self {
            axes: [right, up, towards],
            lengths: [1.0; 3],
        }
    }

    /// The view for an author's words: up to three directions the reader looks from.
    pub fn from_looks(looks: &[Direction]) -> Self {
        Self::from_direction(Self::towards_looks(looks))
    }

    /// The direction towards the eye for the same words.
    pub(super) fn towards_looks(looks: &[Direction]) -> [i64; 3] {
        let mut towards = [0_i64; 3];
        for look in looks {
            if let Some(part) = towards.get_mut(look.axis().index()) {
                *part = look.sign();
            }
        }
        towards
    }

    /// Right, up and towards the eye, in the world and of any length.
    pub(super) const fn axes(&self) -> [[f64; 3]; 3] {
        self.axes
    }

    /// A point as seen.
    pub fn project(&self, point: WorldPoint) -> ViewPoint {
        let [x, y, w] = self.axes;
        let [lx, ly, lw] = self.lengths;
        [dot(x, point) / lx, dot(y, point) / ly, dot(w, point) / lw]
    }

    /// A direction as seen: for a unit vector its last part is the cosine towards the eye.
    pub fn turn(&self, vector: [f64; 3]) -> ViewPoint {
        self.project(vector)
    }

    /// How far along the line of sight a unit vector points: 1 straight at the eye.
    pub fn towards_eye(&self, vector: [f64; 3]) -> f64 {
        let [_, _, w] = self.axes;
        let [_, _, lw] = self.lengths;
        dot(w, vector) / lw
    }

    /// How much of a length along `axis` is seen.
    pub fn foreshortening(&self, axis: Axis) -> f64 {
        let mut unit = [0.0; 3];
        if let Some(part) = unit.get_mut(axis.index()) {
            *part = 1.0;
        }
        let [x, y, _] = self.turn(unit);
        libm::hypot(x, y)
    }
}

/// The scalar product.
pub(super) fn dot(a: [f64; 3], b: [f64; 3]) -> f64 {
    let ([ax, ay, az], [bx, by, bz]) = (a, b);
    ax * bx + ay * by + az * bz
}

/// The vector square to two others, as long as the area they span.
pub(super) fn cross(a: [f64; 3], b: [f64; 3]) -> [f64; 3] {
    let ([ax, ay, az], [bx, by, bz]) = (a, b);
    [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx]
}

/// The vector from `a` to `b`.
pub(super) fn minus(b: [f64; 3], a: [f64; 3]) -> [f64; 3] {
    let ([ax, ay, az], [bx, by, bz]) = (a, b);
    [bx - ax, by - ay, bz - az]
}

/// The sum of two vectors.
pub(super) fn plus(a: [f64; 3], b: [f64; 3]) -> [f64; 3] {
    let ([ax, ay, az], [bx, by, bz]) = (a, b);
    [ax + bx, ay + by, az + bz]
}

/// A vector `factor` times as long.
pub(super) fn times(a: [f64; 3], factor: f64) -> [f64; 3] {
    a.map(|part| part * factor)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn isometric_axes_run_at_thirty_degrees() {
        // ISO 5456-3: the axes of an isometric view make 30° with the horizontal and equal
        // foreshortening, √(2/3) (ref: units-and-paper, "Axonometry" [V]).
        let view = View::from_direction(View::ISOMETRIC);
        for axis in Axis::ALL {
            let factor = view.foreshortening(axis);
            assert!((factor - (2.0_f64 / 3.0).sqrt()).abs() < 1e-12);
        }
        let [x, y, _] = view.turn([1.0, 0.0, 0.0]);
        assert!((libm::atan2(-y, x).to_degrees() - 30.0).abs() < 1e-9);
        let [x, y, _] = view.turn([0.0, 1.0, 0.0]);
        assert!((libm::atan2(y, x).to_degrees() - 30.0).abs() < 1e-9);
    }

    #[test]
    fn dimetric_axes_run_at_seven_and_forty_two_degrees() {
        // ISO 5456-3: a dimetric view has axes at 7° and 42° to the horizontal and scales of
        // 1 to ½ to 1 (ref: units-and-paper, "Axonometry" [V], both angles rounded there).
        let view = View::from_vector([1.0, -7.0_f64.sqrt(), 1.0]);
        let [across, deep, high] = Axis::ALL.map(|axis| view.foreshortening(axis));
        assert!((across - high).abs() < 1e-12 && (deep / high - 0.5).abs() < 1e-12);
        let slant = |axis: [f64; 3]| {
            let [x, y, _] = view.turn(axis);
            libm::atan2(y.abs(), x.abs()).to_degrees()
        };
        assert!((slant([1.0, 0.0, 0.0]) - 7.0).abs() < 0.7);
        assert!((slant([0.0, 1.0, 0.0]) - 42.0).abs() < 0.7);
    }

    #[test]
    fn plain_views_stand_upright() {
        let front = View::from_looks(&[Direction::Front]);
        assert_eq!(front.project([3.0, 5.0, 7.0]), [3.0, 7.0, -5.0]);
        let top = View::from_looks(&[Direction::Top]);
        assert_eq!(top.project([3.0, 5.0, 7.0]), [3.0, 5.0, 7.0]);
        let right = View::from_looks(&[Direction::Right]);
        assert_eq!(right.project([3.0, 5.0, 7.0]), [5.0, 7.0, 3.0]);
    }
}
