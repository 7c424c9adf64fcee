//! A caution, a tool: plain data for the plan.

use serde::Serialize;

use super::sign::Sign;
use crate::build::{Given, Message, SignalWord, Wording, WordingPiece};
use crate::model::PartId;
use crate::source::Spanned;
use crate::units::Length;

/// What the caution stage gives.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct Cautions {
    /// Worst first.
    pub list: Vec<Caution>,
    /// The signs of all of them, once each.
    pub signs: Vec<Sign>,
    /// Tools, in the order of the work: the author's and those the operations need.
    pub tools: Vec<Tool>,
    /// Tools the author names for work that the build has none of.
    pub idle_tools: Vec<Spanned<String>>,
}

/// A hazard and how to keep clear of it (ref: safety#S01 [V], #S02 [M]).
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Caution {
    /// The name of the hazard, for links: `narrow-strips`. The message `caution-narrow-strips` tells it in a
    /// word or two, for a reminder.
    pub id: &'static str,
    /// How bad it is.
    pub signal: SignalWord,
    /// What is dangerous.
    pub hazard: Wording,
    /// What can happen.
    pub consequence: Wording,
    /// What to do about it.
    pub avoidance: Wording,
    /// Signs that belong to it.
    pub signs: Vec<Sign>,
    /// The kind of work.
    pub operation: Operation,
    /// When it concerns the reader; empty for all the time.
    pub occasions: Vec<Occasion>,
}

impl Caution {
    /// True where it concerns a step, counted from zero.
    pub fn concerns_step(&self, step: usize) -> bool {
        self.occasions.contains(&Occasion::Step(step))
    }
}

/// A kind of work.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Operation {
    /// Cutting stock to size.
    Sawing,
    /// Carrying and lifting.
    Lifting,
    /// Making boards thinner.
    Planing,
    /// Cutting channels and shaping edges.
    Routing,
    /// Making holes.
    Drilling,
    /// Driving screws.
    Screwing,
    /// Driving nails.
    Nailing,
    /// Cutting with hand tools.
    Carving,
    /// Gluing and clamping.
    Gluing,
    /// Putting on oil, varnish or paint.
    Finishing,
    /// Fixing to a wall.
    Hanging,
    /// Making dust of any kind.
    Sanding,
    /// Using the finished piece.
    Using,
}

/// When a caution or a tool is needed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Occasion {
    /// While the parts are cut, before the first step.
    Cutting,
    /// In a step, counted from zero.
    Step(usize),
    /// When the piece is done and used.
    Use,
}

/// A tool of the plan.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Tool {
    /// What it is, with its figures.
    pub name: Wording,
    /// What it is for.
    pub purpose: Purpose,
    /// When it is needed, in order.
    pub occasions: Vec<Occasion>,
}

/// What a tool is for, in the order of the work.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Purpose {
    /// Measuring and marking.
    Measure,
    /// Sawing.
    Saw,
    /// Planing, filing, paring.
    Shape,
    /// Making holes.
    Drill,
    /// Cutting channels and edges with a router.
    Rout,
    /// Putting together.
    Join,
    /// Gluing and clamping.
    Clamp,
    /// Sanding and finishing.
    Finish,
    /// Keeping dust out of lungs.
    Protect,
    /// What no other purpose fits.
    Other,
}

/// A message of the catalogues of words, with its figures.
#[derive(Clone, Debug)]
pub(super) struct Told(Message);

impl Told {
    /// The message of that name.
    pub(super) const fn new(id: &'static str) -> Self {
        let given = Vec::new();
        Self(Message { id, given })
    }

    fn with(mut self, place: &'static str, given: Given) -> Self {
        self.0.given.push((place, given));
        self
    }

    /// A length stands in a place of it, printed in both systems.
    pub(super) fn length(self, place: &'static str, length: Length) -> Self {
        self.with(place, Given::Length(length))
    }

    /// A figure with its unit stands in a place of it.
    pub(super) fn value(self, place: &'static str, figure: String) -> Self {
        self.with(place, Given::Figure(figure))
    }

    /// Parts stand in a place of it.
    pub(super) fn parts(self, place: &'static str, parts: &[PartId]) -> Self {
        self.with(place, Given::Parts(parts.to_vec()))
    }

    /// The finished text.
    pub(super) fn done(self) -> Wording {
        Wording {
            pieces: vec![WordingPiece::Message(self.0)],
        }
    }
}

/// A message without figures.
pub(super) fn told(id: &'static str) -> Wording {
    Told::new(id).done()
}
