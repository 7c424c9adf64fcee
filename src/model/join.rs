//! Joints as the author asks for them, before their contacts are known.

use serde::Serialize;

use super::hardware::HardwareId;
use super::place::PlacedId;
use crate::geometry::Direction;
use crate::source::Span;
use crate::units::Length;

/// How two pieces are joined.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum JointKind {
    /// Glue alone.
    Glue,
    /// Screws through one piece into the other.
    Screws,
    /// Screws through slanted holes.
    PocketScrews,
    /// A channel across the grain of the receiving piece.
    Dado,
    /// A channel along the grain of the receiving piece.
    Groove,
    /// A step along an edge of the receiving piece.
    Rabbet,
    /// Dowels, half in each piece.
    Dowels,
    /// Loose tenons, half in each piece.
    LooseTenons,
}

impl JointKind {
    /// All kinds, in the order they are explained.
    pub const ALL: [Self; 8] = [
        Self::Glue,
        Self::Screws,
        Self::PocketScrews,
        Self::Dado,
        Self::Groove,
        Self::Rabbet,
        Self::Dowels,
        Self::LooseTenons,
    ];

    /// The author's word.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Glue => "glue",
            Self::Screws => "screws",
            Self::PocketScrews => "pocket_screws",
            Self::Dado => "dado",
            Self::Groove => "groove",
            Self::Rabbet => "rabbet",
            Self::Dowels => "dowels",
            Self::LooseTenons => "loose_tenons",
        }
    }
}

/// A `join` statement with its values worked out: one joint for each pair that is to meet.
#[derive(Clone, Debug, PartialEq)]
pub struct JoinDesign {
    /// How.
    pub kind: JointKind,
    /// The pieces that come, and where each is named.
    pub parts: Vec<(PlacedId, Span)>,
    /// The pieces they come to, and where each is named.
    pub to: Vec<(PlacedId, Span)>,
    /// The hardware used, and where it is named.
    pub using: Option<(HardwareId, Span)>,
    /// Where the word `glue` stands; a joint of kind glue is glued without it.
    pub glue: Option<Span>,
    /// Depth of a channel, and where it is written.
    pub depth: Option<(Length, Span)>,
    /// Fasteners in each contact, and where it is written.
    pub count: Option<(i64, Span)>,
    /// Distance of the first and last fastener from the ends of the contact.
    pub inset: Option<(Length, Span)>,
    /// The face that is drilled into.
    pub from: Option<(Direction, Span)>,
    /// The pieces a screw passes through first.
    pub through: Vec<PlacedId>,
    /// The kind's word.
    pub kind_span: Span,
    /// The whole statement.
    pub span: Span,
}
