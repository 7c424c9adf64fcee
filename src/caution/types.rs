//! A caution, a tool: plain data for the plan.

use serde::Serialize;

use super::sign::Sign;
use crate::build::{SignalWord, Wording, WordingPiece};
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
    /// The statement every plan carries.
    pub statement: String,
    /// Tools, in the order of the work: the author's and those the operations need.
    pub tools: Vec<Tool>,
    /// Tools the author names for work that the build has none of.
    pub idle_tools: Vec<Spanned<String>>,
}

/// A hazard and how to keep clear of it (ref: safety#S01 [V], #S02 [M]).
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Caution {
    /// The name of the hazard, for links: `narrow-strips`.
    pub id: &'static str,
    /// The hazard in a word or two, for a reminder: `router`.
    pub name: &'static str,
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

/// A text put together from words and figures.
#[derive(Clone, Debug, Default)]
pub(super) struct Phrase(Vec<WordingPiece>);

impl Phrase {
    /// Begins with words.
    pub(super) fn new(text: &str) -> Self {
        Self(Vec::new()).then(text)
    }

    /// Goes on with words.
    pub(super) fn then(mut self, text: &str) -> Self {
        self.0.push(WordingPiece::Plain(text.to_owned()));
        self
    }

    /// Goes on with a length, printed in both systems.
    pub(super) fn length(mut self, length: Length) -> Self {
        self.0.push(WordingPiece::Length(length));
        self
    }

    /// Goes on with a figure already in words.
    pub(super) fn value(mut self, value: String) -> Self {
        self.0.push(WordingPiece::Value(value));
        self
    }

    /// Goes on with parts: "A, B and C", and how many more where there are many.
    pub(super) fn parts(mut self, parts: &[PartId]) -> Self {
        const MOST: usize = 6;
        for (index, part) in parts.iter().take(MOST).enumerate() {
            let last = index + 1 == parts.len();
            self = match index {
                0 => self,
                _ if last => self.then(" and "),
                _ => self.then(", "),
            };
            self.0.push(WordingPiece::Part(*part, 1));
        }
        match parts.len().saturating_sub(MOST) {
            0 => self,
            more => self.then(&format!(" and {more} more")),
        }
    }

    /// The finished text.
    pub(super) fn done(self) -> Wording {
        Wording { pieces: self.0 }
    }
}

/// A text of words alone.
pub(super) fn plain(text: &str) -> Wording {
    Phrase::new(text).done()
}
