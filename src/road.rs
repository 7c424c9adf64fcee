//! The road of the data, one call a stage.
//!
//! Everything here is a function of its arguments: no clock, no disk, no state. `cli/` hands in
//! texts and writes what comes out.

use std::collections::BTreeMap;

use crate::behaviour::{self, Behaviour};
use crate::build::{self, Build, Paper};
use crate::caution::{self, Cautions};
use crate::display::Figure;
use crate::document::{self, Stages, Templates, tree::Document};
use crate::drawing;
use crate::finding::{Findings, Outcome};
use crate::model::{self, Load, Overrides};
use crate::page;
use crate::pdf;
use crate::rules::{self, Allowed, Facts, SoundBuild};
use crate::solid::{self, Solids};
use crate::source::{FileId, Sources};
use crate::stock::{self, Stock};
use crate::syntax;
use crate::text::Fonts;

/// A source that was read, worked out and checked; sound where no error was found.
#[derive(Clone, Debug, Default)]
pub struct Checked {
    /// The build, if no stage found an error.
    pub sound: Option<SoundBuild>,
    /// The shapes of its parts.
    pub solids: Solids,
    /// Its cut list, layouts and purchases.
    pub stock: Stock,
    /// What it is meant to carry.
    pub loads: Vec<Load>,
    /// What it weighs, how far it bends and moves.
    pub behaviour: Behaviour,
    /// What is dangerous in it, and the tools it takes.
    pub cautions: Cautions,
    /// What was found and is meant to be so.
    pub allowed: Vec<Allowed>,
}

/// Kinds of finding of the model that may be consequences of a line that could not be read.
const HANGS_ON_OTHERS: [&str; 7] = ["N001", "N002", "N007", "N012", "N015", "N017", "N018"];

/// Reads, works out and checks a source: everything before the first figure.
pub fn check(sources: &Sources, file: FileId, overrides: &Overrides) -> Outcome<Checked> {
    let tree = syntax::parse(sources, file);
    let mut findings = tree.findings;
    let model = model::resolve(&tree.value, overrides);
    if findings.has_errors() {
        // A line that could not be read declares nothing: whatever is missing may stand in it.
        findings.append(
            model
                .findings
                .keep(|page| !HANGS_ON_OTHERS.contains(&page.code)),
        );
        return Outcome {
            value: Checked::default(),
            findings: findings.sorted(),
        };
    }
    findings.append(model.findings);
    let built = build::assemble(&model.value);
    findings.append(built.findings);
    let solids = solid::shape(&built.value);
    findings.append(solids.findings);
    let stock = stock::lay_out(&built.value, &solids.value);
    findings.append(stock.findings);
    let behaviour = behaviour::work_out(&model.value, &built.value, &solids.value);
    let cautions = caution::gather(&built.value, &stock.value, &behaviour);
    let facts = Facts {
        model: &model.value,
        build: &built.value,
        solids: &solids.value,
        stock: &stock.value,
        behaviour: &behaviour,
        cautions: &cautions,
    };
    let sound = rules::check(&facts, &findings);
    findings.append(sound.findings);
    if let Some(sound) = &sound.value {
        findings.append(drawing::examine(sound.build(), &solids.value));
    }
    let set_aside = rules::set_aside(&findings.sorted(), &model.value.allowances);
    let findings = set_aside
        .findings
        .sorted()
        .once_within(&tree.value.described());
    let value = Checked {
        // An allowance may be an error of its own.
        sound: sound.value.filter(|_| !findings.has_errors()),
        solids: solids.value,
        stock: stock.value,
        loads: model.value.loads.clone(),
        behaviour,
        cautions,
        allowed: set_aside.value,
    };
    Outcome { value, findings }
}

/// The drawings of a sound build and the safety signs, by name.
pub fn draw(checked: &Checked, sound: &SoundBuild, fonts: &Fonts) -> BTreeMap<String, Figure> {
    let build = sound.build();
    let mut figures = drawing::draw(sound, &checked.solids, fonts).figures;
    figures.extend(drawing::cutting_layouts(fonts, build, &checked.stock));
    figures.extend(drawing::signs());
    figures
}

/// The document of a sound build.
pub fn compose(
    checked: &Checked,
    sound: &SoundBuild,
    figures: BTreeMap<String, Figure>,
    templates: &Templates,
) -> Outcome<Document> {
    let build = sound.build();
    let stages = Stages {
        build,
        stock: &checked.stock,
        cautions: &checked.cautions,
        loads: &checked.loads,
        behaviour: &checked.behaviour,
        allowed: &checked.allowed,
    };
    document::compose(stages, figures, templates)
}

/// The pages of a document as a PDF.
pub fn print(document: &Document, build: &Build, fonts: &Fonts, paper: Paper) -> Outcome<Vec<u8>> {
    let mut findings = Findings::new();
    let pages = page::paginate(document, fonts, paper);
    findings.append(pages.findings);
    let written = pdf::write(&pages.value, fonts, issue_date(build));
    findings.append(written.findings);
    Outcome {
        value: written.value,
        findings,
    }
}

/// The day of the newest revision, which dates the file; none where there is no revision.
fn issue_date(build: &Build) -> Option<pdf::Date> {
    pdf::Date::parse(&build.plan.revisions.first()?.date)
}
