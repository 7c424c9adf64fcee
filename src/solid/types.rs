//! Solids as plane faces and straight edges.

use super::measures::Measures;
use super::stack::{place, place_vector};
use crate::geometry::{Circle, PartAxis};
use crate::model::PartId;
use crate::units::Length;

/// A point of a part's frame, in nanometres along length, width and thickness.
pub type Point = [i64; 3];

/// A face of the wood as it was made: the chords of one round wall share theirs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct SurfaceId(pub u32);

/// A plane face: its outer ring, then holes in it.
#[derive(Clone, Debug, PartialEq)]
pub struct BodyFace {
    /// Which surface it is part of.
    pub surface: SurfaceId,
    /// Unit vector square to it, out of the wood.
    pub normal: [f64; 3],
    /// Its rings; the largest is the outer one.
    pub rings: Vec<Vec<Point>>,
}

/// How two faces meet in an edge.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Joining {
    /// At an angle.
    Sharp,
    /// As facets of one round wall, or where a round runs out into a flat.
    Smooth,
    /// Not at all: a line on one face, the seam between two layers or the mark of a small hole.
    Seam,
}

/// A circle or an ellipse that chords stand for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Round {
    /// Its middle.
    pub centre: Point,
    /// Two conjugate half diameters, in nanometres: for a circle two radii square to each other.
    pub radii: [[f64; 3]; 2],
}

/// A straight edge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BodyEdge {
    /// How its faces meet.
    pub joining: Joining,
    /// Its ends.
    pub ends: [Point; 2],
    /// Unit vectors square to the faces that meet in it.
    pub normals: [[f64; 3]; 2],
    /// Which of the shell's rounds it is a chord of.
    pub round: Option<u32>,
    /// Between two facets of one round wall: the rounds that its ends lie on, each at the same
    /// angle.
    pub stands: Option<[u32; 2]>,
}

/// The surface of a solid.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Shell {
    /// Faces, closed all round.
    pub faces: Vec<BodyFace>,
    /// Edges; some are there in pieces, and facets of round walls have theirs too.
    pub edges: Vec<BodyEdge>,
    /// What edges that are chords stand for.
    pub rounds: Vec<Round>,
}

impl Shell {
    /// The number of a round, which is added unless it is the last one.
    pub(super) fn round(&mut self, round: Round) -> Option<u32> {
        if self.rounds.last() != Some(&round) {
            self.rounds.push(round);
        }
        u32::try_from(self.rounds.len() - 1).ok()
    }

    /// The numbers of a circle at two levels, for the edges that stand on it.
    pub(super) fn standing(
        &mut self,
        circle: Option<Circle>,
        plane: [PartAxis; 2],
        levels: [Length; 2],
    ) -> Option<[u32; 2]> {
        let [one, two] = levels.map(|level| self.circle(circle, plane, level));
        Some([one?, two?])
    }

    /// The number of a circle in a plane of two axes at a level along the third.
    pub(super) fn circle(
        &mut self,
        circle: Option<Circle>,
        plane: [PartAxis; 2],
        level: Length,
    ) -> Option<u32> {
        self.round(Round::of(circle?, plane, level))
    }
}

impl Round {
    /// A circle in a plane of two axes at a level along the third.
    pub(super) fn of(circle: Circle, plane: [PartAxis; 2], level: Length) -> Self {
        let radius = circle.radius.mm() * 1e6;
        Self {
            centre: place(plane, circle.centre, level),
            radii: [[radius, 0.0], [0.0, radius]].map(|radii| place_vector(plane, radii)),
        }
    }
}

/// A part's solid, in the part's frame.
#[derive(Clone, Debug, PartialEq)]
pub struct PartSolid {
    /// With every feature.
    pub fine: Shell,
    /// As it is seen from afar, for views of many parts: small holes are marks on the surface.
    pub coarse: Shell,
    /// Volume and surface.
    pub measures: Measures,
}

/// The solids of all parts.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Solids {
    /// By [`PartId`].
    pub parts: Vec<PartSolid>,
}

impl Solids {
    /// The solid of a part.
    pub fn part(&self, id: PartId) -> Option<&PartSolid> {
        self.parts.get(id.0)
    }
}
