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
pub mod moves;
pub mod reading;

use crate::behaviour::Behaviour;
use crate::build::{Build, Paper};
use crate::caution::Cautions;
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
    /// What it weighs, how far it bends and moves.
    pub behaviour: &'f Behaviour,
    /// What is dangerous in it, and the tools it takes.
    pub cautions: &'f Cautions,
}

/// A build in which no rule found an error: the only kind that is drawn.
#[derive(Clone, Debug)]
pub struct SoundBuild(Build);

impl SoundBuild {
    /// The build.
    pub fn build(&self) -> &Build {
        &self.0
    }

    /// The same build on other pages than its plan names: no rule looks at them.
    #[must_use]
    pub fn on(&self, paper: Paper) -> Self {
        let mut build = self.0.clone();
        build.plan.paper = paper;
        Self(build)
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

/// The rules of a group, by the names of their files.
macro_rules! rules {
    ($( $when:ident $file:ident )+) => {
        pub(super) static RULES: &[$crate::rules::Rule] = &[
            $( ($crate::rules::When::$when, $file::PAGES, $file::check) ),+
        ];
    };
}
use rules;

/// Every rule, in the order of the folders.
fn all() -> impl Iterator<Item = &'static Rule> {
    let groups = [
        fits::RULES,
        holds::RULES,
        moves::RULES,
        making::RULES,
        reading::RULES,
    ];
    groups.into_iter().flatten()
}

/// The pages of every rule.
pub fn pages() -> impl Iterator<Item = &'static Page> {
    let rules = all().flat_map(|(_, pages, _)| pages.iter().copied());
    rules.chain(allowed::PAGES.iter().copied())
}

/// Applies the rules; a build without errors comes out as sound.
///
/// `earlier` is what the stages before found: where they found an error, something is missing.
pub fn check(facts: &Facts<'_>, earlier: &Findings) -> Outcome<Option<SoundBuild>> {
    let mut findings = Findings::new();
    let complete = !earlier.has_errors();
    for (when, _, rule) in all() {
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
