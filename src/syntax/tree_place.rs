//! The syntax tree of what is placed and what is chosen: placements, references to them,
//! sub-assemblies, options.

use super::tree::{Allow, Expr, Name, Statement, Text};
use crate::source::Span;

/// `place name[i in 1..count] = part mirrored { … }`
#[derive(Clone, Debug, PartialEq)]
pub struct Place {
    /// Its name.
    pub name: Name,
    /// `[i in first..last]`
    pub repeat: Option<Repeat>,
    /// The part or sub-assembly placed.
    pub part: Name,
    /// `(depth = 300 mm, box = ply)`: what a sub-assembly is given.
    pub given: Vec<Given>,
    /// Where the word `mirrored` stands, if it does.
    pub mirrored: Option<Span>,
    /// Orientation and location.
    pub lines: Vec<PlaceLine>,
    /// The whole statement.
    pub span: Span,
}

/// `[i in first..last]`
#[derive(Clone, Debug, PartialEq)]
pub struct Repeat {
    /// The counting name.
    pub index: Name,
    /// First value.
    pub first: Expr,
    /// Last value, included.
    pub last: Expr,
}

/// A line of a placement.
#[derive(Clone, Debug, PartialEq)]
pub struct PlaceLine {
    /// What it says.
    pub kind: PlaceLineKind,
    /// Where.
    pub span: Span,
}

/// What a line of a placement says.
#[derive(Clone, Debug, PartialEq)]
pub enum PlaceLineKind {
    /// `length up`, `width back`: where an axis of the part runs.
    Runs {
        /// `length` or `width` or `thickness`.
        axis: Name,
        /// A direction.
        direction: Name,
    },
    /// `left at left.right`: where a face of the part is.
    At {
        /// `left`, `right`, `front`, `back`, `bottom` or `top`.
        face: Name,
        /// Where it is.
        position: Expr,
    },
    /// `front faces left`: where a face of a sub-assembly looks.
    Faces {
        /// `left`, `right`, `front`, `back`, `bottom` or `top` of the sub-assembly.
        face: Name,
        /// A direction.
        direction: Name,
    },
    /// `centre across at 450 mm`: where the middle of the part is.
    Centre {
        /// `across`, `deep` or `high`.
        axis: Name,
        /// Where it is.
        position: Expr,
    },
    /// `removable`: held by its place alone, taken out in use.
    Removable,
    /// `allow F002 because "…"`
    Allow(Allow),
}

/// A placed part or all of a repeated one: `left`, `shelves`, `shelves[2]`, `drawer.side`.
#[derive(Clone, Debug, PartialEq)]
pub struct PlacedRef {
    /// Its name.
    pub name: Name,
    /// Which of a repeated one.
    pub index: Option<Expr>,
    /// What is meant inside of a sub-assembly, from outside to inside.
    pub inner: Vec<InnerRef>,
    /// Where.
    pub span: Span,
}

/// `.side[2]`: something placed inside of a sub-assembly.
#[derive(Clone, Debug, PartialEq)]
pub struct InnerRef {
    /// Its name there.
    pub name: Name,
    /// Which of a repeated one.
    pub index: Option<Expr>,
}

/// `depth = 300 mm`: a value for one of a sub-assembly's parameters.
#[derive(Clone, Debug, PartialEq)]
pub struct Given {
    /// The parameter.
    pub name: Name,
    /// Its value.
    pub value: Expr,
}

/// `subassembly name(depth: length = 300 mm, box: material) "Printed name" { … }`
#[derive(Clone, Debug, PartialEq)]
pub struct Subassembly {
    /// Its name.
    pub name: Name,
    /// What it is given where it is placed.
    pub formals: Vec<Formal>,
    /// The printed name.
    pub title: Option<Text>,
    /// With what values its library tries and draws it.
    pub shown: Vec<Given>,
    /// What it is made of and how.
    pub statements: Vec<Statement>,
    /// The whole statement.
    pub span: Span,
}

/// `depth: length = 300 mm from 200 mm to 500 mm`: a parameter of a sub-assembly.
#[derive(Clone, Debug, PartialEq)]
pub struct Formal {
    /// Its name.
    pub name: Name,
    /// `length`, `count`, `angle`, `mass`, `material` or `hardware`.
    pub kind: Name,
    /// Its value where none is given.
    pub preset: Option<Expr>,
    /// Smallest and largest value allowed.
    pub range: Option<(Expr, Expr)>,
    /// Where.
    pub span: Span,
}

/// `option joint "Shelf joint" { choice … }`
#[derive(Clone, Debug, PartialEq)]
pub struct OptionBlock {
    /// Its name.
    pub name: Name,
    /// The printed name.
    pub title: Text,
    /// What there is to choose from, in order.
    pub choices: Vec<Choice>,
    /// The whole statement.
    pub span: Span,
}

/// `choice dado "Dado" default { … }`
#[derive(Clone, Debug, PartialEq)]
pub struct Choice {
    /// Its name.
    pub name: Name,
    /// The printed name.
    pub title: Text,
    /// Where the word `default` stands, if it does.
    pub default: Option<Span>,
    /// What the plan holds with this choice alone.
    pub statements: Vec<Statement>,
    /// The whole statement.
    pub span: Span,
}
