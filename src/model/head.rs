//! What the plan block says: title, revisions and settings.

use serde::Serialize;

use super::paper::Paper;
use crate::source::Span;
use crate::units::Precision;

/// What the plan block says.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct PlanHead {
    /// The printed title.
    pub title: String,
    /// Who made it.
    pub author: String,
    /// Revisions, newest first as written.
    pub revisions: Vec<Revision>,
    /// How figures are printed.
    pub precision: Precision,
    /// The paper.
    pub paper: Paper,
    /// How the views of a part drawing stand to each other, where the author says it.
    pub projection: Option<Projection>,
    /// Who can build it.
    pub level: String,
    /// What it is.
    pub about: String,
    /// The language of what the plan says by itself, as a BCP 47 tag; empty for English.
    pub words: String,
    /// So many fasteners more are bought for every so many used.
    pub spares: Option<(i64, i64)>,
    /// Relative humidity where the piece will stand, in per cent: driest and dampest.
    pub humidity: Option<(i64, i64)>,
    /// Who or what the piece must suit beside its builder.
    pub users: Vec<User>,
    /// Where the block is.
    #[serde(skip)]
    pub span: Span,
}

impl PlanHead {
    /// The newest revision: dates sort as text, and of one day the first written is the newest.
    pub fn newest(&self) -> Option<&Revision> {
        let revisions = self.revisions.iter().rev();
        revisions.max_by(|a, b| a.date.cmp(&b.date))
    }
}

/// Who or what a piece must suit beside its builder.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum User {
    /// Children use it.
    Children,
    /// Food touches it.
    Food,
}

/// A revision of the plan.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Revision {
    /// Its letter or number.
    pub mark: String,
    /// Its date, YYYY-MM-DD.
    pub date: String,
    /// What changed.
    pub note: String,
    /// Where its mark is written.
    #[serde(skip)]
    pub span: Span,
}

/// How the views of a drawing stand to each other (ISO 5456-2, ref: units-and-paper,
/// "Projection" [V]).
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub enum Projection {
    /// What is seen from a side stands on the opposite side: usual with A4.
    FirstAngle,
    /// What is seen from a side stands on that side: usual with Letter.
    ThirdAngle,
}

impl PlanHead {
    /// How the views of a part drawing stand to each other: as the author says, or as readers
    /// of the plan's paper are used to; on a screen, as those of the author's unit system are.
    pub fn projection(&self) -> Projection {
        self.projection.unwrap_or(match self.paper {
            Paper::A4 | Paper::A3 => Projection::FirstAngle,
            Paper::Letter | Paper::Tabloid => Projection::ThirdAngle,
            Paper::Phone | Paper::Tablet if self.precision.metric_first => Projection::FirstAngle,
            Paper::Phone | Paper::Tablet => Projection::ThirdAngle,
        })
    }
}
