//! The document: what the plan says, in order, before anyone knows how wide a page is.
//!
//! Takes what the earlier [`Stages`] gave and the drawn figures, gives a [`tree::Document`]. All figures are worked out and rounded here, once, in
//! both systems; the words around them stand in templates, which a user may replace. A template
//! computes nothing and reads nothing: it has a budget of work and sees only what it is handed.
//!
//! - one file for each part of the plan (`cover.rs`, `cut_list.rs`, …) makes its figures;
//! - `render.rs` runs the templates, `markup.rs` and `inline.rs` read the text they write
//!   (described in `templates/README.md`), `references.rs` checks what refers to what.

mod buy;
mod changes;
#[cfg(test)]
mod checks;
mod context;
mod cover;
mod cut_list;
mod drilling;
mod errata;
mod figures;
mod final_checks;
pub mod findings;
mod full_size;
mod hardware;
mod inline;
mod layouts;
mod library;
mod locate;
mod markup;
mod measure;
mod messages;
mod options;
pub mod outline;
mod parts;
mod read_first;
mod references;
mod render;
mod signs;
mod speech;
mod steps;
mod sums;
mod templates;
mod tools;
pub mod tree;
mod wording;

pub use templates::Templates;

use std::collections::BTreeMap;

use crate::behaviour::Behaviour;
use crate::build::Build;
use crate::caution::Cautions;
use crate::display::Figure;
use crate::finding::Outcome;
use crate::model::{Load, PlanHead};
use crate::options::OptionChanges;
use crate::rules::Allowed;
use crate::solid::Solids;
use crate::stock::Stock;
use context::{Facts, PlanContext};

pub use changes::mark_changes;
pub use errata::errata;
pub use full_size::template_sheets;
pub use library::{FormalShown, LibraryHead, WholeShown, library};
use tree::Document;

/// What the earlier stages gave.
#[derive(Clone, Copy, Debug)]
pub struct Stages<'a> {
    /// The build.
    pub build: &'a Build,
    /// The shapes of its parts.
    pub solids: &'a Solids,
    /// What it is cut from.
    pub stock: &'a Stock,
    /// What is dangerous in it.
    pub cautions: &'a Cautions,
    /// What it is meant to carry.
    pub loads: &'a [Load],
    /// What it weighs, how it bends, moves and stands.
    pub behaviour: &'a Behaviour,
    /// What was found in it and is meant to be so.
    pub allowed: &'a [Allowed],
    /// What other choices change.
    pub options: &'a [OptionChanges],
    /// The earlier plan, where what is other than in that one is to be marked.
    pub since: Option<&'a PlanHead>,
}

/// The document of a plan.
///
/// `figures` are named `cover`, `overview`, `exploded`, `step-1`, …, `layout-1`, …, `sign-M004`,
/// …. Findings: the P family in [`findings`]; with an error among them the document holds what
/// could still be made.
pub fn compose(
    stages: Stages<'_>,
    figures: BTreeMap<String, Figure>,
    templates: &Templates,
) -> Outcome<Document> {
    let build = stages.build;
    let facts = Facts::new(stages, &figures, templates.words());
    let document = templates.document(&build.plan.title, &build.plan.author);
    let read = render::blocks(templates, &facts, &PlanContext::of(&facts));
    render::filled(document, read, figures, build.plan.span)
}
