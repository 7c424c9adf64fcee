//! The part of the syntax tree that describes parts: sizes, and what is cut into them.

use super::tree::{Allow, Expr, Name, Text};
use crate::source::Span;

/// `part name from material "Printed name" { … }`
#[derive(Clone, Debug, PartialEq)]
pub struct Part {
    /// Its name.
    pub name: Name,
    /// The name of its material.
    pub material: Name,
    /// The printed name.
    pub title: Option<Text>,
    /// Sizes, features and the rest, in order.
    pub lines: Vec<PartLine>,
    /// The whole statement.
    pub span: Span,
}

/// A line of a part.
#[derive(Clone, Debug, PartialEq)]
pub struct PartLine {
    /// What it says.
    pub kind: PartLineKind,
    /// Where.
    pub span: Span,
}

/// What a line of a part says.
#[derive(Clone, Debug, PartialEq)]
#[expect(
    clippy::large_enum_variant,
    reason = "a part has few lines, and each is read once"
)]
pub enum PartLineKind {
    /// `length 300 mm grain`, `width from left.right to right.left`, `thickness 20 mm`
    Size {
        /// `length`, `width` or `thickness`.
        axis: Name,
        /// The size.
        size: SizeExpr,
        /// Where the word `grain` stands, if it does.
        grain: Option<Span>,
    },
    /// `layers 2 oversize 5 mm`
    Layers {
        /// How many.
        count: Expr,
        /// How much larger the blanks are cut, on each edge.
        oversize: Option<Expr>,
    },
    /// `extra 1`: made and not placed.
    Extra(Expr),
    /// `call back inner`: another word for a side of this part.
    Call {
        /// The side.
        side: Name,
        /// The word for it.
        word: Name,
    },
    /// `note "…"`, printed in the cut list.
    Note(Text),
    /// `hole on face diameter 20 mm depth 12 mm at 40 mm from foot, 30 mm from near`,
    /// with `counterbore 30 mm depth 5 mm` and `countersink 30 mm` before `grid` and `at`,
    /// and `holes … grid 8 by 5 pitch 96 mm by 96 mm at …` (the position of the first hole).
    Holes {
        /// The side drilled into.
        side: Name,
        /// Diameter.
        diameter: Expr,
        /// Depth; through where none is given.
        depth: Option<Expr>,
        /// Counterbore: diameter and depth.
        counterbore: Option<(Expr, Expr)>,
        /// Countersink: diameter.
        countersink: Option<Expr>,
        /// Counts along the first and second reference, and the pitches.
        grid: Option<HoleGrid>,
        /// Two distances from two sides.
        at: Vec<Offset>,
    },
    /// `groove on face at 10 mm from near width 6 mm depth 6 mm [from 20 mm to 200 mm]`, and
    /// `dado` alike, across.
    Channel {
        /// `groove` or `dado`.
        word: Name,
        /// The side cut into.
        side: Name,
        /// Distance of the channel's nearer wall from a side.
        at: Offset,
        /// Width.
        width: Expr,
        /// Depth.
        depth: Expr,
        /// Where a stopped channel begins and ends, measured along it from foot or near.
        stopped: Option<(Expr, Expr)>,
    },
    /// `rabbet on face along far width 9 mm depth 6 mm`
    Rabbet {
        /// The side cut into.
        side: Name,
        /// The edge or end it runs along.
        along: Name,
        /// Width, measured from that edge.
        width: Expr,
        /// Depth.
        depth: Expr,
    },
    /// `notch at foot.near 30 mm by 40 mm` (along the length by along the width), or
    /// `notch in near at 100 mm from foot 50 mm by 20 mm` (along the edge by into the part).
    Notch {
        /// Two sides for a corner, one for an edge.
        sides: Vec<Name>,
        /// Where a notch in an edge begins.
        at: Option<Offset>,
        /// First size.
        first: Expr,
        /// Second size.
        second: Expr,
    },
    /// `outline { start 0 mm, 0 mm; line to …; arc to … through … }`
    Outline {
        /// The first point: from foot, from near.
        start: (Expr, Expr),
        /// The rest; closed with a straight line where it does not end at the start.
        pieces: Vec<OutlinePiece>,
    },
    /// `round near.face radius 3 mm`, `chamfer near.face by 2 mm`, `round foot.near radius 30 mm`
    Edge {
        /// `round` or `chamfer`.
        word: Name,
        /// Two sides whose common edge is shaped.
        sides: Vec<Name>,
        /// Radius, or the width of the chamfer on both sides.
        size: Expr,
    },
    /// `mitre at head 45 deg long near`, `bevel at head 15 deg long face`
    Angled {
        /// `mitre` or `bevel`.
        word: Name,
        /// The end or edge that is cut at an angle.
        side: Name,
        /// How far from square the cut is.
        angle: Expr,
        /// The side on which the part stays as long as it is.
        long: Name,
    },
    /// `taper near by 15 mm at foot over 600 mm`
    Taper {
        /// The side wood is taken off.
        side: Name,
        /// How much where it is most.
        by: Expr,
        /// Where it is most.
        at: Name,
        /// How far from there it runs out; over the whole part where it is not said.
        over: Option<Expr>,
    },
    /// `tenon at head length 30 mm thickness 12 mm width 60 mm`
    Tenon {
        /// The end that becomes a tenon.
        end: Name,
        /// From the shoulder on, within the part's own length.
        length: Expr,
        /// Along the part's thickness.
        thickness: Expr,
        /// Along the part's width; as wide as the part where it is not said.
        width: Option<Expr>,
    },
    /// `band near, far with tape`: edges covered with a strip of edge band.
    Band {
        /// The edges and ends.
        sides: Vec<Name>,
        /// The band, an item of hardware.
        hardware: Name,
    },
    /// `allow D004 because "…"`
    Allow(Allow),
}

/// A size: given, or spanned between two placed faces.
#[derive(Clone, Debug, PartialEq)]
pub enum SizeExpr {
    /// `900 mm`
    Given(Expr),
    /// `from left.right to right.left`
    Span(Expr, Expr),
}

/// `grid 8 by 5 pitch 96 mm by 96 mm`
#[derive(Clone, Debug, PartialEq)]
pub struct HoleGrid {
    /// How many along the axis of the first reference.
    pub first_count: Expr,
    /// How many along the axis of the second reference.
    pub second_count: Expr,
    /// Pitch along the first.
    pub first_pitch: Expr,
    /// Pitch along the second.
    pub second_pitch: Expr,
}

/// `40 mm from foot`
#[derive(Clone, Debug, PartialEq)]
pub struct Offset {
    /// How far.
    pub distance: Expr,
    /// From which side.
    pub from: Name,
}

/// A piece of an outline.
#[derive(Clone, Debug, PartialEq)]
pub struct OutlinePiece {
    /// Where it ends: from foot, from near.
    pub to: (Expr, Expr),
    /// A point on the way, for an arc.
    pub through: Option<(Expr, Expr)>,
    /// Where it is written.
    pub span: Span,
}
