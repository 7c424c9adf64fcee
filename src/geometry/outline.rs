//! Closed plane outlines of straight lines and circular arcs, in whole nanometres.

use serde::Serialize;

use crate::units::Length;

/// A point of a plane.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Serialize)]
pub struct PlanePoint {
    /// Along the first axis of the plane (a part's length).
    pub x: Length,
    /// Along the second axis of the plane (a part's width).
    pub y: Length,
}

impl PlanePoint {
    /// The point at `x`, `y`.
    pub const fn new(x: Length, y: Length) -> Self {
        Self { x, y }
    }
}

/// How an outline goes on from the point before.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub enum ContourPiece {
    /// Straight to a point.
    Line {
        /// Where the line ends.
        to: PlanePoint,
    },
    /// On a circle to a point, through another.
    Arc {
        /// A point on the arc, between its ends.
        through: PlanePoint,
        /// Where the arc ends.
        to: PlanePoint,
    },
}

impl ContourPiece {
    /// Where the piece ends.
    pub const fn end(self) -> PlanePoint {
        match self {
            Self::Line { to } | Self::Arc { to, .. } => to,
        }
    }
}

/// A closed outline; the last piece ends where the first began.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Contour {
    /// Where it begins.
    pub start: PlanePoint,
    /// Its pieces, in order.
    pub pieces: Vec<ContourPiece>,
}
