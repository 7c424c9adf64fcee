//! The rules: what must be true of a build before it is drawn.
//!
//! Takes a build, its stock layout and what the author requires; gives a [`SoundBuild`], which is
//! made nowhere else, where no rule found an error. A rule is one file, named by the fault it
//! finds: its doc comment is the page `explain` prints, its `check` reads the [`Facts`]. Rules
//! change nothing and know of no other rule.

pub mod allowed;
pub mod fits;
pub mod holds;
pub mod making;
pub mod reading;

use crate::build::Build;
use crate::finding::{Findings, Outcome, Page};
use crate::model::Model;
use crate::solid::Solids;
use crate::stock::Stock;

pub use allowed::{Allowed, set_aside};

/// What rules look at.
#[derive(Clone, Copy, Debug)]
pub struct Facts<'f> {
    /// What the author described.
    pub model: &'f Model,
    /// What comes out of it.
    pub build: &'f Build,
    /// The shapes of its parts.
    pub solids: &'f Solids,
    /// Its cut list, layouts and purchases.
    pub stock: &'f Stock,
}

/// A build in which no rule found an error: the only kind that is drawn.
#[derive(Clone, Debug)]
pub struct SoundBuild(Build);

impl SoundBuild {
    /// The build.
    pub fn build(&self) -> &Build {
        &self.0
    }
}

/// A rule: when it applies, its pages and its check.
type Rule = (
    When,
    &'static [&'static Page],
    fn(&Facts<'_>, &mut Findings),
);

/// When a rule applies.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum When {
    /// Whatever else is wrong: it looks at what is there.
    Always,
    /// Only where nothing is missing: it looks for what is not there, and would complain about
    /// the consequences of another fault.
    Complete,
}

/// Every rule, in the order of the folders.
static RULES: &[Rule] = &[
    (
        When::Always,
        fits::parts_overlap::PAGES,
        fits::parts_overlap::check,
    ),
    (
        When::Complete,
        fits::part_floats_free::PAGES,
        fits::part_floats_free::check,
    ),
    (
        When::Always,
        fits::requirement_not_met::PAGES,
        fits::requirement_not_met::check,
    ),
    (
        When::Always,
        holds::screw_comes_through::PAGES,
        holds::screw_comes_through::check,
    ),
    (
        When::Always,
        holds::screw_too_short::PAGES,
        holds::screw_too_short::check,
    ),
    (
        When::Always,
        making::step_adds_twice::PAGES,
        making::step_adds_twice::check,
    ),
    (
        When::Complete,
        making::part_never_added::PAGES,
        making::part_never_added::check,
    ),
    (
        When::Always,
        making::step_without_text::PAGES,
        making::step_without_text::check,
    ),
    (
        When::Always,
        reading::no_revision::PAGES,
        reading::no_revision::check,
    ),
    (
        When::Complete,
        reading::unused_name::PAGES,
        reading::unused_name::check,
    ),
];

/// The pages of every rule.
pub fn pages() -> impl Iterator<Item = &'static Page> {
    let rules = RULES.iter().flat_map(|(_, pages, _)| pages.iter().copied());
    rules.chain(allowed::PAGES.iter().copied())
}

/// Applies the rules; a build without errors comes out as sound.
///
/// `earlier` is what the stages before found: where they found an error, something is missing.
pub fn check(facts: &Facts<'_>, earlier: &Findings) -> Outcome<Option<SoundBuild>> {
    let mut findings = Findings::new();
    let complete = !earlier.has_errors();
    for (when, _, rule) in RULES {
        if complete || *when == When::Always {
            rule(facts, &mut findings);
        }
    }
    let sound = complete && !findings.has_errors();
    Outcome {
        value: sound.then(|| SoundBuild(facts.build.clone())),
        findings,
    }
}
