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
    /// A tenon on the end of one piece in a mortise of the other.
    MortiseAndTenon,
    /// Two pieces cross, each cut half away.
    HalfLap,
    /// Fingers on the ends of both pieces, in one another.
    BoxJoint,
    /// Two ends cut at half the angle they meet at.
    Mitre,
    /// A tongue along an edge in a groove of the other piece.
    TongueAndGroove,
    /// Broad sides glued together.
    Lamination,
    /// Bolts through one piece into threaded inserts in the other.
    Bolts,
    /// Nails or brads through one piece into the other.
    Nails,
    /// Hinges: one piece swings on the other.
    Hinges,
    /// Runners: one piece slides on the other.
    Runners,
    /// A strip of the one in a groove of the other, which slides on it.
    Strips,
    /// Pins in one piece that the other lies on.
    ShelfPins,
    /// Magnets in facing pairs.
    Magnets,
}

impl JointKind {
    /// All kinds, in the order they are explained.
    pub const ALL: [Self; 21] = [
        Self::Glue,
        Self::Screws,
        Self::PocketScrews,
        Self::Dado,
        Self::Groove,
        Self::Rabbet,
        Self::Dowels,
        Self::LooseTenons,
        Self::MortiseAndTenon,
        Self::HalfLap,
        Self::BoxJoint,
        Self::Mitre,
        Self::TongueAndGroove,
        Self::Lamination,
        Self::Bolts,
        Self::Nails,
        Self::Hinges,
        Self::Runners,
        Self::Strips,
        Self::ShelfPins,
        Self::Magnets,
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
            Self::MortiseAndTenon => "mortise_and_tenon",
            Self::HalfLap => "half_lap",
            Self::BoxJoint => "box_joint",
            Self::Mitre => "mitre",
            Self::TongueAndGroove => "tongue_and_groove",
            Self::Lamination => "lamination",
            Self::Bolts => "bolts",
            Self::Nails => "nails",
            Self::Hinges => "hinges",
            Self::Runners => "runners",
            Self::Strips => "strips",
            Self::ShelfPins => "shelf_pins",
            Self::Magnets => "magnets",
        }
    }

    /// The kind in plain words: `mortise and tenon`.
    pub fn in_words(self) -> String {
        self.word().replace('_', " ")
    }

    /// True where one piece moves on the other, or is taken off it: the pieces keep a gap.
    pub const fn moves(self) -> bool {
        matches!(
            self,
            Self::Hinges | Self::Runners | Self::Strips | Self::ShelfPins | Self::Magnets
        )
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
    /// The hardware used, and where each is named.
    pub using: Vec<(HardwareId, Span)>,
    /// Where the word `glue` stands; a joint of kind glue is glued without it.
    pub glue: Option<Span>,
    /// Depth of a channel, length of a tenon, and where it is written.
    pub depth: Option<(Length, Span)>,
    /// Width of a tenon or a finger.
    pub width: Option<(Length, Span)>,
    /// Thickness of a tenon or a tongue.
    pub thickness: Option<(Length, Span)>,
    /// How much looser than the strip a groove is that slides on it.
    pub play: Option<(Length, Span)>,
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
