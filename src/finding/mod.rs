//! Findings: what is wrong in a plan, told as a service to its author.
//!
//! Every stage collects findings and returns them with its value in an [`Outcome`]; nothing is
//! printed on the way. A finding points at a [`Page`]: its stable code, its severity and the text
//! that `explain` prints. Drawing them for people is [`print`], for programs [`json`].

pub mod catalogue;
pub mod json;
mod lines;
mod page;
pub mod print;

use serde::Serialize;

use crate::source::Span;
use crate::units::Length;

pub use page::Page;
pub(crate) use page::finding_pages;

/// How much a finding matters.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Severity {
    /// No plan is made.
    Error,
    /// The plan is made; its builder may run into trouble.
    Warning,
    /// Worth knowing.
    Note,
}

impl Severity {
    /// The word for it.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Error => "error",
            Self::Warning => "warning",
            Self::Note => "note",
        }
    }
}

/// A length that a finding is about, printed in both systems.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Figure {
    /// What the length is: "depth of the dado".
    pub label: String,
    /// The length.
    pub length: Length,
}

/// A change of the source that would help.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Remedy {
    /// What to do, in words.
    pub text: String,
    /// The edit, where one can be named: what to write, and in place of what.
    pub edit: Option<(Span, String)>,
}

/// Another place that belongs to a finding.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Related {
    /// Where.
    pub span: Span,
    /// What is there: "first placed here".
    pub text: String,
}

/// One thing that is wrong, or worth knowing.
#[derive(Clone, Debug)]
pub struct Finding {
    /// The page that explains its kind; gives code and severity.
    pub page: &'static Page,
    /// Where.
    pub span: Span,
    /// The fault in the author's words, without a full stop.
    pub message: String,
    /// The lengths it is about.
    pub figures: Vec<Figure>,
    /// Why it matters in the shop: the page's one line where the finding says nothing closer.
    pub reason: String,
    /// What would help, best first.
    pub remedies: Vec<Remedy>,
    /// Other places that belong to it.
    pub related: Vec<Related>,
}

impl Finding {
    /// A finding of the kind `page` at `span`, with the page's reason and nothing more.
    pub fn new(page: &'static Page, span: Span, message: impl Into<String>) -> Self {
        Self {
            page,
            span,
            message: message.into(),
            figures: Vec::new(),
            reason: page.why.to_owned(),
            remedies: Vec::new(),
            related: Vec::new(),
        }
    }

    /// With a length that it is about.
    #[must_use]
    pub fn figure(mut self, label: impl Into<String>, length: Length) -> Self {
        self.figures.push(Figure {
            label: label.into(),
            length,
        });
        self
    }

    /// With advice in words.
    #[must_use]
    pub fn remedy(mut self, text: impl Into<String>) -> Self {
        self.remedies.push(Remedy {
            text: text.into(),
            edit: None,
        });
        self
    }

    /// With an edit of the source: write `replacement` in place of `span`.
    #[must_use]
    pub fn edit(mut self, text: impl Into<String>, span: Span, replacement: String) -> Self {
        self.remedies.push(Remedy {
            text: text.into(),
            edit: Some((span, replacement)),
        });
        self
    }

    /// With another place that belongs to it.
    #[must_use]
    pub fn related(mut self, span: Span, text: impl Into<String>) -> Self {
        self.related.push(Related {
            span,
            text: text.into(),
        });
        self
    }

    /// With a reason closer than its page's.
    #[must_use]
    pub fn because(mut self, reason: impl Into<String>) -> Self {
        self.reason = reason.into();
        self
    }
}

/// Findings in the order of the road; see [`sorted`](Findings::sorted) for the order of the text.
#[derive(Clone, Debug, Default)]
pub struct Findings {
    list: Vec<Finding>,
}

impl Findings {
    /// None yet.
    pub fn new() -> Self {
        Self::default()
    }

    /// One more.
    pub fn push(&mut self, finding: Finding) {
        self.list.push(finding);
    }

    /// All of another stage's.
    pub fn append(&mut self, mut others: Self) {
        self.list.append(&mut others.list);
    }

    /// Those whose page passes `wanted`.
    #[must_use]
    pub fn keep(mut self, wanted: impl Fn(&Page) -> bool) -> Self {
        self.list.retain(|finding| wanted(finding.page));
        self
    }

    /// Of findings in the order of the text, one of each kind at each place within `described`:
    /// what is made several times from one description is wrong once.
    #[must_use]
    pub fn once_within(mut self, described: &[Span]) -> Self {
        let is_within = |span: Span| {
            described.iter().any(|whole| {
                whole.file == span.file && whole.start <= span.start && span.end <= whole.end
            })
        };
        self.list
            .dedup_by(|a, b| a.span == b.span && a.page.code == b.page.code && is_within(a.span));
        self
    }

    /// True where nothing was found.
    pub fn is_empty(&self) -> bool {
        self.list.is_empty()
    }

    /// True where no plan can be made.
    pub fn has_errors(&self) -> bool {
        self.list
            .iter()
            .any(|finding| finding.page.severity == Severity::Error)
    }

    /// In the order found.
    pub fn iter(&self) -> impl Iterator<Item = &Finding> {
        self.list.iter()
    }

    /// In the order of the text, one of each kind at each place.
    pub fn sorted(mut self) -> Self {
        self.list.sort_by(|a, b| {
            (a.span, a.page.severity, a.page.code, &a.message).cmp(&(
                b.span,
                b.page.severity,
                b.page.code,
                &b.message,
            ))
        });
        self.list.dedup_by(|a, b| {
            a.span == b.span && a.page.code == b.page.code && a.message == b.message
        });
        self
    }
}

/// What a stage gives: its value, as far as it could be made, and what it found.
#[derive(Clone, Debug)]
pub struct Outcome<T> {
    /// The value; parts that could not be made are missing from it.
    pub value: T,
    /// What was found on the way.
    pub findings: Findings,
}

impl<T> Outcome<T> {
    /// A value and nothing found.
    pub fn clean(value: T) -> Self {
        Self {
            value,
            findings: Findings::new(),
        }
    }
}
