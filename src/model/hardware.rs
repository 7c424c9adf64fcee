//! Items of hardware as the author describes them.

use serde::Serialize;

use crate::source::Span;
use crate::units::{Length, Money};

/// Index of a hardware item.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(transparent)]
pub struct HardwareId(pub usize);

/// An item of hardware and how many of it the build uses.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Hardware {
    /// The name in the source.
    pub name: String,
    /// The printed name.
    pub title: String,
    /// What it is.
    pub kind: HardwareKind,
    /// Diameter of shank, dowel or bolt.
    pub diameter: Option<Length>,
    /// Length.
    pub length: Option<Length>,
    /// Width of a tenon.
    pub width: Option<Length>,
    /// Thickness of a tenon.
    pub thickness: Option<Length>,
    /// Diameter of a screw's head.
    pub head: Option<Length>,
    /// Diameter of the hole a screw bites in.
    pub pilot: Option<Length>,
    /// Diameter of the hole a screw passes through.
    pub clearance: Option<Length>,
    /// Pieces in a pack.
    pub pack: Option<i64>,
    /// Price of a pack, or of a piece where no pack is stated.
    pub price: Option<Money>,
    /// How many the build uses: in the model what `use` says, in the build joints and steps too.
    pub count: i64,
    /// Where it is written.
    #[serde(skip)]
    pub span: Span,
}

/// What an item of hardware is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum HardwareKind {
    /// A countersunk wood screw.
    WoodScrew,
    /// A screw for slanted pocket holes.
    PocketScrew,
    /// A dowel.
    Dowel,
    /// A loose tenon.
    LooseTenon,
    /// A nail or a brad.
    Nail,
    /// A machine bolt.
    Bolt,
    /// A threaded insert that a bolt goes into.
    Insert,
    /// A wooden plug over a screw's head.
    Plug,
    /// A strip across a mitre: a spline, or keys let in from outside.
    Spline,
    /// A hinge.
    Hinge,
    /// A pair of runners, one on each piece.
    Runner,
    /// A pin a shelf lies on.
    ShelfPin,
    /// A disc magnet.
    Magnet,
    /// A roll of edge band.
    EdgeBand,
    /// What ties the piece to a wall: strap, bracket, cleat.
    WallFixing,
    /// Anything counted: feet, handles, brackets.
    Goods,
}

impl HardwareKind {
    /// All kinds.
    pub const ALL: [Self; 16] = [
        Self::WoodScrew,
        Self::PocketScrew,
        Self::Dowel,
        Self::LooseTenon,
        Self::Nail,
        Self::Bolt,
        Self::Insert,
        Self::Plug,
        Self::Spline,
        Self::Hinge,
        Self::Runner,
        Self::ShelfPin,
        Self::Magnet,
        Self::EdgeBand,
        Self::WallFixing,
        Self::Goods,
    ];

    /// The author's word.
    pub const fn word(self) -> &'static str {
        match self {
            Self::WoodScrew => "wood_screw",
            Self::PocketScrew => "pocket_screw",
            Self::Dowel => "dowel",
            Self::LooseTenon => "loose_tenon",
            Self::Nail => "nail",
            Self::Bolt => "bolt",
            Self::Insert => "insert",
            Self::Plug => "plug",
            Self::Spline => "spline",
            Self::Hinge => "hinge",
            Self::Runner => "runner",
            Self::ShelfPin => "shelf_pin",
            Self::Magnet => "magnet",
            Self::EdgeBand => "edge_band",
            Self::WallFixing => "wall_fixing",
            Self::Goods => "goods",
        }
    }
}
