//! Steps of the work as the author tells them, and texts with values in them.

use serde::Serialize;

use super::groups::{GroupId, InstanceId};
use super::hardware::HardwareId;
use super::part::PartId;
use super::place::PlacedId;
use super::supply::SupplyId;
use crate::geometry::Direction;
use crate::source::{Span, Spanned};
use crate::units::Length;

/// A step as told.
#[derive(Clone, Debug, PartialEq)]
pub struct StepDesign {
    /// The sub-assemblies that are put together in it; none for the plan's own steps.
    pub group: Option<GroupId>,
    /// Its title.
    pub title: String,
    /// Pieces that come in, and where each is named.
    pub adds: Vec<(PlacedId, Span)>,
    /// How the exploded view draws pieces away.
    pub pulls: Vec<Pull>,
    /// Where the reader looks from: up to three directions, one on each axis; empty if not said.
    pub look: Vec<Direction>,
    /// What to do, in order.
    pub says: Vec<Said>,
    /// What to check.
    pub checks: Vec<Said>,
    /// Tools the author names.
    pub tools: Vec<Spanned<String>>,
    /// Counted goods that go on here.
    pub uses: Vec<(HardwareId, i64)>,
    /// Supplies that are used here.
    pub supplies: Vec<SupplyId>,
    /// The author's own cautions.
    pub cautions: Vec<(SignalWord, Said)>,
    /// Time in seconds; none if not said.
    pub seconds: Option<i64>,
    /// Where it is written.
    pub span: Span,
}

/// How an exploded view draws a piece away from its place.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Pull {
    /// Which piece.
    pub piece: PlacedId,
    /// Where to.
    pub direction: Direction,
    /// How far; chosen by the drawing if not said.
    pub distance: Option<Length>,
}

/// A text with values in it, before the build has numbered its parts.
pub type Said = Vec<SaidPiece>;

/// A piece of a text.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum SaidPiece {
    /// As it stands.
    Plain(String),
    /// A length, printed in both systems.
    Length(Length),
    /// A value that is not a length, already in words.
    Value(String),
    /// A part, wherever it is placed.
    Part(PartId),
    /// Placed pieces.
    Pieces(Vec<PlacedId>),
    /// Placed sub-assemblies.
    Wholes(Vec<InstanceId>),
}

/// A signal word (ANSI Z535.6; ref: safety, "Signal words" [V]), worst first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum SignalWord {
    /// Will kill or seriously injure.
    Danger,
    /// Could kill or seriously injure.
    Warning,
    /// Could cause minor or moderate injury.
    Caution,
    /// No injury: damage, waste, a practice to follow.
    Notice,
}

impl SignalWord {
    /// All four, worst first.
    pub const ALL: [Self; 4] = [Self::Danger, Self::Warning, Self::Caution, Self::Notice];

    /// The author's word.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Danger => "danger",
            Self::Warning => "warning",
            Self::Caution => "caution",
            Self::Notice => "notice",
        }
    }
}
