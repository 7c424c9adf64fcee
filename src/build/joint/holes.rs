//! Rows of holes that joints drill.

use super::bench::on_plane;
use crate::build::piece::Piece;
use crate::geometry::Direction;
use crate::model::{FeatureShape, HolePurpose, Holes};
use crate::units::Length;

/// What a row of holes is like.
#[derive(Clone, Copy, Debug)]
pub(super) struct Bore {
    pub(super) purpose: HolePurpose,
    pub(super) diameter: Length,
    /// None for holes through the piece.
    pub(super) depth: Option<Length>,
    /// Diameter and depth of a wider mouth.
    pub(super) counterbore: Option<(Length, Length)>,
    /// Diameter of a conical mouth.
    pub(super) countersink: Option<Length>,
}

impl Bore {
    /// Plain holes.
    pub(super) fn plain(purpose: HolePurpose, diameter: Length, depth: Option<Length>) -> Self {
        Self {
            purpose,
            diameter,
            depth,
            counterbore: None,
            countersink: None,
        }
    }

    /// A row of these into the face of a piece that looks towards `facing`, at points of the world.
    pub(super) fn row(
        self,
        piece: &Piece<'_>,
        facing: Direction,
        points: &[[Length; 3]],
    ) -> FeatureShape {
        let side = piece.side(facing);
        FeatureShape::Holes(Holes {
            side,
            diameter: self.diameter,
            depth: self.depth,
            counterbore: self.counterbore,
            countersink: self.countersink,
            positions: on_plane(side, points.iter().map(|point| piece.point_in_part(point))),
            grid: None,
            purpose: self.purpose,
        })
    }
}
