//! How a side of a part is seen on paper.

use crate::geometry::{PartAxis, PlanePoint, Side};
use crate::model::plane_axes;
use crate::solid::Point;
use crate::units::Length;

/// A side as it is looked at square to it: which way of the part runs to the right on paper and
/// which one up. Of each vector one number is 1 or -1, the others are zero.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Seen {
    /// The side.
    pub side: Side,
    /// Along length, width and thickness.
    pub right: [i64; 3],
    /// Along length, width and thickness.
    pub up: [i64; 3],
}

impl Seen {
    /// Of broad sides and edges the length runs to the right, of ends the width does, one way or
    /// the other: the thickness or the width then runs up as it is seen from outside.
    pub const fn of(side: Side) -> Self {
        // Right × up points out of the side.
        let (right, up) = match side {
            Side::Face => ([1, 0, 0], [0, 1, 0]),
            Side::Back => ([1, 0, 0], [0, -1, 0]),
            Side::Near => ([1, 0, 0], [0, 0, 1]),
            Side::Far => ([1, 0, 0], [0, 0, -1]),
            Side::Head => ([0, 1, 0], [0, 0, 1]),
            Side::Foot => ([0, -1, 0], [0, 0, 1]),
        };
        Self { side, right, up }
    }

    /// The same turned by a quarter, counter-clockwise.
    #[must_use]
    pub fn turned(self) -> Self {
        Self {
            side: self.side,
            right: self.up.map(|part| -part),
            up: self.right,
        }
    }

    /// A point of the part as it is seen.
    pub fn point(&self, point: Point) -> PlanePoint {
        let along = |way: [i64; 3]| {
            let parts = point.iter().zip(way);
            Length::from_nm(parts.map(|(at, way)| at * way).sum())
        };
        PlanePoint::new(along(self.right), along(self.up))
    }

    /// A point of the side, along the side's two axes, as it is seen.
    pub fn on_side(&self, at: PlanePoint) -> PlanePoint {
        let mut point = [0; 3];
        for (axis, value) in plane_axes(self.side).into_iter().zip([at.x, at.y]) {
            if let Some(slot) = point.get_mut(axis.index()) {
                *slot = value.nm();
            }
        }
        self.point(point)
    }

    /// How far a vector points towards the reader, as a part of its length.
    pub fn towards(&self, vector: [f64; 3]) -> f64 {
        let along = vector.get(self.side.axis().index()).copied();
        let along = along.unwrap_or_default();
        if self.side.is_high() { along } else { -along }
    }

    /// Which way an axis of the part runs on paper: to the right and up; none where it runs
    /// towards the reader.
    pub fn way(&self, axis: PartAxis) -> Option<[i64; 2]> {
        let along = |way: [i64; 3]| way.get(axis.index()).copied().unwrap_or_default();
        let way = [along(self.right), along(self.up)];
        (way != [0, 0]).then_some(way)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sides_are_seen_from_outside() {
        for side in Side::ALL {
            for seen in [Seen::of(side), Seen::of(side).turned()] {
                let ([ax, ay, az], [bx, by, bz]) = (seen.right, seen.up);
                let out = [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx];
                let mut expected = [0; 3];
                expected[side.axis().index()] = if side.is_high() { 1 } else { -1 };
                assert_eq!(out, expected, "{side:?}");
            }
        }
    }

    #[test]
    fn the_face_lies_as_its_part_is_described() {
        let at = |x, y| PlanePoint::new(Length::from_mm(x), Length::from_mm(y));
        assert_eq!(Seen::of(Side::Face).on_side(at(30, 7)), at(30, 7));
        assert_eq!(Seen::of(Side::Back).on_side(at(30, 7)), at(30, -7));
        assert_eq!(Seen::of(Side::Face).turned().on_side(at(30, 7)), at(-7, 30));
        assert_eq!(Seen::of(Side::Face).way(PartAxis::Thickness), None);
        assert_eq!(Seen::of(Side::Back).way(PartAxis::Width), Some([0, -1]));
    }
}
