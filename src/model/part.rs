//! Parts as the author describes them, before joints: sizes and the author's own features.
//!
//! A part's frame: x along its length from the foot, y along its width from the near edge, z
//! along its thickness from the back. The origin is the foot-near-back corner of the part *as
//! the author sizes it*; a joint that makes the part longer (a shelf that enters a dado) lets it
//! reach below zero or beyond its size, and no feature moves.

use serde::Serialize;

use super::hardware::HardwareId;
use super::material::MaterialId;
use crate::geometry::{Contour, Interval, PartAxis, PlanePoint, Side};
use crate::source::Span;
use crate::units::Length;

/// Index of a part in its plan.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(transparent)]
pub struct PartId(pub usize);

/// A part as described.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct PartDesign {
    /// The name in the source.
    pub name: String,
    /// The printed name.
    pub title: String,
    /// What it is cut from.
    pub material: MaterialId,
    /// Length, width and thickness between joints, as the author sizes it.
    pub size: [Length; 3],
    /// Which of length (true) or width (false) runs along the grain.
    pub grain_along_length: bool,
    /// Layers glued up to its thickness; 1 for a part of one piece.
    pub layers: i64,
    /// How much larger on every edge the layers are cut.
    pub oversize: Length,
    /// Made and not placed.
    pub extra: i64,
    /// Printed in the cut list.
    pub note: Option<String>,
    /// The author's own features.
    pub features: Vec<Feature>,
    /// Edges and ends covered with edge band.
    pub bands: Vec<Band>,
    /// Where it is written.
    #[serde(skip)]
    pub span: Span,
}

/// An edge or end covered with a strip of edge band.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Band {
    /// Which.
    pub side: Side,
    /// The band.
    pub hardware: HardwareId,
    /// Its thickness, which is part of the finished size.
    pub thickness: Length,
    /// Where it is written.
    #[serde(skip)]
    pub span: Span,
}

/// Something cut into a part or off it, in the part's frame.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Feature {
    /// What.
    pub shape: FeatureShape,
    /// Where it comes from: a line of the part, or a joint.
    #[serde(skip)]
    pub span: Span,
}

impl Feature {
    /// The side that it is made from; none for what goes all the way through or round.
    pub const fn opens_on(&self) -> Option<Side> {
        match &self.shape {
            FeatureShape::Holes(holes) => Some(holes.side),
            FeatureShape::Pocket(pocket) => Some(pocket.side),
            FeatureShape::PocketScrewHole(hole) => Some(hole.side),
            FeatureShape::Notch { .. }
            | FeatureShape::Outline(_)
            | FeatureShape::Arris { .. }
            | FeatureShape::Slope(_)
            | FeatureShape::SplineSlot(_)
            | FeatureShape::Tenon(_) => None,
        }
    }
}

/// The shape of a feature.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub enum FeatureShape {
    /// Round holes of one kind, drilled square to one side.
    Holes(Holes),
    /// A block taken out of one side, open at that side: dado, groove, rabbet, mortise.
    Pocket(Pocket),
    /// A rectangle taken out of the outline, through the whole thickness.
    Notch {
        /// Along the length.
        along_length: Interval,
        /// Along the width.
        along_width: Interval,
    },
    /// The part's outline seen on its face, in place of the rectangle.
    Outline(Contour),
    /// The edge between two sides rounded or cut at 45 degrees.
    Arris {
        /// The two sides.
        sides: [Side; 2],
        /// Radius, or the width taken off both sides.
        size: Length,
        /// Round or flat.
        form: ArrisForm,
    },
    /// A slanted, stepped hole for a pocket screw.
    PocketScrewHole(PocketScrewHole),
    /// An end or an edge that is not square: mitred, bevelled or tapered.
    Slope(Slope),
    /// A slot for a spline in the slanting face of a mitre.
    SplineSlot(SplineSlot),
    /// An end cut back to a tenon.
    Tenon(Tenon),
}

/// How a slope is called in the shop.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
pub enum SlopeKind {
    /// An end cut at an angle across the face.
    Mitre,
    /// An end or an edge cut at an angle through the thickness.
    Bevel,
    /// A side that leans in along the part.
    Taper,
}

/// A side cut by a plane that leans towards another side.
///
/// In the plane of both sides' axes the cut runs from `inset` inside of `side`, at the level of
/// `deep`, to the level of `side` itself, `run` away from `deep`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Slope {
    /// How it is called.
    pub kind: SlopeKind,
    /// The side that wood is taken off.
    pub side: Side,
    /// Where `side` is along its axis.
    pub level: Length,
    /// The side at which most is taken off.
    pub deep: Side,
    /// Where `deep` is along its axis.
    pub deep_level: Length,
    /// How much is taken off at `deep`.
    pub inset: Length,
    /// How far from `deep` nothing is taken off any more.
    pub run: Length,
}

impl Slope {
    /// Its angle to the side it is cut from, in degrees; for an end, how far from square.
    pub fn degrees(&self) -> f64 {
        libm::atan2(self.inset.mm(), self.run.mm()).to_degrees()
    }

    /// The same as a protractor and a saw's scale can hold it: to a tenth of a degree.
    pub fn printed_degrees(&self) -> String {
        let text = format!("{:.1}", self.degrees());
        format!("{}\u{b0}", text.strip_suffix(".0").unwrap_or(&text))
    }

    /// The side on which nothing is taken off.
    pub fn long(&self) -> Side {
        self.deep.opposite()
    }
}

/// A slot for a spline, square to the slanting face that a slope leaves.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct SplineSlot {
    /// The cut whose face it is sunk into.
    pub slope: Slope,
    /// Up the slanting face, from its inner edge: where the slope is the deepest.
    pub across: Interval,
    /// Along the axis that the slope does not lean over.
    pub along: Interval,
    /// Square to the slanting face.
    pub depth: Length,
}

impl SplineSlot {
    /// The axis that the slope does not lean over.
    pub fn axis(&self) -> PartAxis {
        let leaning = [self.slope.side.axis(), self.slope.deep.axis()];
        PartAxis::ALL
            .into_iter()
            .find(|axis| !leaning.contains(axis))
            .unwrap_or(PartAxis::Width)
    }

    /// True where it runs up the whole slanting face, as in the mitres of a frame.
    pub fn runs_up(&self) -> bool {
        let slant = libm::hypot(self.slope.inset.mm(), self.slope.run.mm());
        self.across.size().mm() > slant - 0.001
    }

    /// A point of the part's frame in millimetres: `up` the slanting face from its inner edge, `along` the
    /// axis that it does not lean over, `deep` in the wood.
    pub fn point_mm(&self, up: f64, along: f64, deep: f64) -> [f64; 3] {
        let slope = &self.slope;
        let (inset, run) = (slope.inset.mm(), slope.run.mm());
        let slant = libm::hypot(inset, run).max(f64::MIN_POSITIVE);
        let (across_side, across_deep) = (inset / slant, run / slant);
        let inner = slope.side.inward(slope.level, slope.inset).mm();
        // Up the face it nears `side` and leaves `deep`; into the wood it leaves both.
        let outward = |side: Side| if side.is_high() { 1.0 } else { -1.0 };
        let mut point = [along; 3];
        let places = [
            (
                slope.side,
                inner + outward(slope.side) * (up * across_side - deep * across_deep),
            ),
            (
                slope.deep,
                slope.deep_level.mm()
                    - outward(slope.deep) * (up * across_deep + deep * across_side),
            ),
        ];
        for (side, value) in places {
            if let Some(slot) = point.get_mut(side.axis().index()) {
                *slot = value;
            }
        }
        point
    }
}

/// A tenon: what an end is cut back to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Tenon {
    /// The end.
    pub end: Side,
    /// From shoulder to tip, along the part's length.
    pub along: Interval,
    /// Along the part's width.
    pub width: Interval,
    /// Along the part's thickness.
    pub thickness: Interval,
}

/// How an edge between two sides is broken.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub enum ArrisForm {
    /// A quarter of a circle.
    Round,
    /// A flat at 45 degrees.
    Chamfer,
}

/// Round holes of one kind.
///
/// Positions lie in the plane of the side: x along the first, y along the second of the two part
/// axes that are not the side's, in the order length, width, thickness.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Holes {
    /// The side drilled into.
    pub side: Side,
    /// Diameter.
    pub diameter: Length,
    /// Depth from that side; none for a hole through the part.
    pub depth: Option<Length>,
    /// Wider mouth with a flat floor: diameter and depth.
    pub counterbore: Option<(Length, Length)>,
    /// Conical mouth of 90 degrees: its diameter at the surface.
    pub countersink: Option<Length>,
    /// Where each is.
    pub positions: Vec<PlanePoint>,
    /// The regular grid they form, if they do.
    pub grid: Option<GridPattern>,
    /// What they are for.
    pub purpose: HolePurpose,
}

/// A regular grid of holes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct GridPattern {
    /// The first hole, nearest to both reference sides.
    pub first: PlanePoint,
    /// Counts along x and y.
    pub counts: (i64, i64),
    /// Pitches along x and y.
    pub pitches: (Length, Length),
    /// The sides positions are measured from, for x and y.
    pub references: [Side; 2],
}

/// What a hole is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
pub enum HolePurpose {
    /// The author's own.
    Described,
    /// A screw passes through freely.
    Clearance,
    /// A screw bites.
    Pilot,
    /// Half of a dowel.
    Dowel,
    /// A bolt passes through freely.
    Bolt,
    /// A threaded insert is screwed or pressed in.
    Insert,
    /// A shelf pin is put in.
    Pin,
    /// A magnet is glued in.
    Magnet,
}

/// What a pocket is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
pub enum PocketKind {
    /// A channel across the grain.
    Dado,
    /// A channel along the grain.
    Groove,
    /// A channel along an edge or end, open to it.
    Rabbet,
    /// A closed pocket for a tenon.
    Mortise,
    /// Half of a piece's thickness, where another crosses it.
    Lap,
    /// A shallow recess for the leaf of a hinge.
    Recess,
}

/// A block taken out of one side.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Pocket {
    /// What it is.
    pub kind: PocketKind,
    /// The side it is open to.
    pub side: Side,
    /// Along the first of the two part axes that are not the side's.
    pub first: Interval,
    /// Along the second.
    pub second: Interval,
    /// Depth from the side.
    pub depth: Length,
    /// Ends are half round (a mortise from a router) of the pocket's smaller width.
    pub round_ends: bool,
}

/// A slanted hole for a pocket screw: enters at `side`, leaves through the middle of `end`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct PocketScrewHole {
    /// The broad side it is drilled into.
    pub side: Side,
    /// The end or edge the screw comes out of.
    pub end: Side,
    /// Where the axis leaves the end, along the axis that is neither the side's nor the end's.
    pub position: Length,
    /// Diameter of the pocket (about 9.5 mm, ref: fasteners#M01 [P]).
    pub diameter: Length,
    /// Diameter of the pilot that runs on to the end.
    pub pilot: Length,
    /// How far from the end the axis meets the side.
    pub entry: Length,
}
