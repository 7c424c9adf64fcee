//! The road of the data, one call a stage.
//!
//! Everything here is a function of its arguments: no clock, no disk, no state. `cli/` hands in
//! texts and writes what comes out.

use std::collections::BTreeMap;

use rayon::iter::{IntoParallelRefIterator, ParallelIterator};

use crate::behaviour::{self, Behaviour};
use crate::build::{self, Build};
use crate::caution::{self, Cautions};
use crate::display::Figure;
use crate::document::{self, Stages, Templates, tree::Document};
use crate::drawing;
use crate::finding::{Finding, Findings, Outcome};
use crate::model::{self, Load, Overrides, PlanHead, PlanOption};
use crate::options::{self, Changes, OptionChanges, Selected, Selection};
use crate::page;
use crate::pdf;
use crate::rules::{self, Allowed, Facts, SoundBuild};
use crate::solid::{self, Solids};
use crate::source::{FileId, Sources};
use crate::stock::{self, Stock};
use crate::syntax::{self, Forest};
use crate::text::Fonts;
use crate::web;
use crate::words::Words;

/// A source that was read, worked out and checked; sound where no error was found.
#[derive(Clone, Debug, Default)]
pub struct Checked {
    /// The build, if no stage found an error.
    pub sound: Option<SoundBuild>,
    /// The shapes of its parts.
    pub solids: Solids,
    /// Its cut list, layouts and purchases.
    pub stock: Stock,
    /// What there is to choose, and what is chosen.
    pub options: Vec<PlanOption>,
    /// What other choices change; empty where they were not checked.
    pub changes: Vec<OptionChanges>,
    /// What it is meant to carry.
    pub loads: Vec<Load>,
    /// What it weighs, how far it bends and moves.
    pub behaviour: Behaviour,
    /// What is dangerous in it, and the tools it takes.
    pub cautions: Cautions,
    /// What was found and is meant to be so.
    pub allowed: Vec<Allowed>,
}

impl Checked {
    /// What is compared with other selections and revisions; none where the build is not sound.
    pub fn selected(&self) -> Option<Selected<'_>> {
        Some(Selected {
            build: self.sound.as_ref()?.build(),
            stock: &self.stock,
            behaviour: &self.behaviour,
            cautions: &self.cautions,
        })
    }
}

/// Kinds of finding of the model that may be consequences of a line that could not be read.
const HANGS_ON_OTHERS: [&str; 7] = ["N001", "N002", "N007", "N012", "N015", "N017", "N018"];

/// Reads, works out and checks a source in the selection that `overrides` make: everything before
/// the first figure.
pub fn check(sources: &Sources, file: FileId, overrides: &Overrides) -> Outcome<Checked> {
    check_tree(&syntax::parse_all(sources, file), overrides)
}

/// Checks a source as [`check`] does, and what it would be with every other choice: all selections
/// of its options, or so many that any two choices meet.
///
/// What is found in another selection alone says in which. What seems not to be needed may be
/// needed there, and is told only where it is needed nowhere.
pub fn check_choices(sources: &Sources, file: FileId, overrides: &Overrides) -> Outcome<Checked> {
    let tree = syntax::parse_all(sources, file);
    let mut own = check_tree(&tree, overrides);
    let options = own.value.options.clone();
    if options.is_empty() {
        return own;
    }
    let others: Vec<Selection> = options::combinations(&options).split_off(1);
    let checked: Vec<Outcome<Checked>> = others
        .par_iter()
        .map(|selection| check_tree(&tree, &selecting(&options, selection, overrides)))
        .collect();
    let needed = |finding: &Finding| {
        UNNEEDED.contains(&finding.page.code)
            && !checked
                .iter()
                .all(|other| is_among(finding, &other.findings))
    };
    let mut findings = Findings::new();
    for finding in own.findings.iter().filter(|finding| !needed(finding)) {
        findings.push(finding.clone());
    }
    let mut told = own.findings.clone();
    for (selection, other) in others.iter().zip(&checked) {
        for finding in other.findings.iter() {
            if !UNNEEDED.contains(&finding.page.code) && !is_among(finding, &told) {
                told.push(finding.clone());
                findings.push(in_selection(finding.clone(), &options, selection));
            }
        }
    }
    own.value.changes = what_choices_change(&own.value, &others, &checked);
    if findings.has_errors() {
        own.value.sound = None;
    }
    Outcome {
        value: own.value,
        findings: findings.sorted(),
    }
}

/// Codes of what is declared or allowed and not needed.
const UNNEEDED: [&str; 3] = ["R002", "R004", "R008"];

fn is_among(finding: &Finding, others: &Findings) -> bool {
    others.iter().any(|other| {
        other.page.code == finding.page.code
            && other.span == finding.span
            && other.message == finding.message
    })
}

/// The finding, with the choices that it is found with.
fn in_selection(finding: Finding, options: &[PlanOption], selection: &Selection) -> Finding {
    let mut finding = finding;
    for (option, choice) in options.iter().zip(selection) {
        if *choice != option.chosen
            && let Some(choice) = option.choices.get(*choice)
        {
            let text = format!("with the choice `{}` of `{}`", choice.name, option.name);
            finding = finding.related(choice.span, text);
        }
    }
    finding
}

/// The overrides that take a selection.
fn selecting(options: &[PlanOption], selection: &Selection, overrides: &Overrides) -> Overrides {
    let mut selecting = overrides.clone();
    for (option, choice) in options.iter().zip(selection) {
        if let Some(choice) = option.choices.get(*choice) {
            let (name, choice) = (option.name.clone(), choice.name.clone());
            selecting.choices.insert(name, choice);
        }
    }
    selecting
}

/// What each choice changes that is not taken, all others as they are.
fn what_choices_change(
    own: &Checked,
    others: &[Selection],
    checked: &[Outcome<Checked>],
) -> Vec<OptionChanges> {
    let Some(before) = own.selected() else {
        return Vec::new();
    };
    let taken: Selection = own.options.iter().map(|option| option.chosen).collect();
    let of = |place: usize, choice: usize| -> Option<Changes> {
        let wanted = |one: &Selection| {
            let all = one.iter().zip(&taken).enumerate();
            all.fold(true, |fits, (number, (a, b))| {
                fits && if number == place {
                    *a == choice
                } else {
                    a == b
                }
            })
        };
        let number = others.iter().position(wanted)?;
        let after = checked.get(number)?.value.selected()?;
        Some(options::changes(&before, &after))
    };
    let all = own.options.iter().enumerate();
    all.map(|(place, option)| OptionChanges {
        option: option.clone(),
        changes: (0..option.choices.len())
            .map(|choice| of(place, choice))
            .collect(),
    })
    .collect()
}

/// Works out and checks a plan with its libraries.
fn check_tree(tree: &Outcome<Forest>, overrides: &Overrides) -> Outcome<Checked> {
    let mut findings = tree.findings.clone();
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
        options: model.value.options.clone(),
        changes: Vec::new(),
        loads: model.value.loads.clone(),
        behaviour,
        cautions,
        allowed: set_aside.value,
    };
    Outcome { value, findings }
}

/// The drawings of a sound build and the safety signs, by name.
pub fn draw(
    checked: &Checked,
    sound: &SoundBuild,
    fonts: &Fonts,
    words: &Words,
) -> BTreeMap<String, Figure> {
    let build = sound.build();
    let mut figures = drawing::draw(sound, &checked.solids, fonts, words).figures;
    figures.extend(drawing::cutting_layouts(
        fonts,
        build,
        &checked.stock,
        words,
    ));
    figures.extend(drawing::signs(words));
    figures
}

/// The document of a sound build; `since` is an earlier plan, where what is other than in that one is
/// to be marked.
pub fn compose(
    checked: &Checked,
    sound: &SoundBuild,
    figures: BTreeMap<String, Figure>,
    templates: &Templates,
    since: Option<&PlanHead>,
) -> Outcome<Document> {
    let build = sound.build();
    let stages = Stages {
        build,
        solids: &checked.solids,
        stock: &checked.stock,
        cautions: &checked.cautions,
        loads: &checked.loads,
        behaviour: &checked.behaviour,
        allowed: &checked.allowed,
        options: &checked.changes,
        since,
    };
    document::compose(stages, figures, templates)
}

/// The document of a sound build with what is other than in an earlier, sound one marked.
pub fn compose_since(
    [earlier, later]: [(&Checked, &SoundBuild); 2],
    fonts: &Fonts,
    templates: &Templates,
) -> Outcome<Document> {
    let [was, is] = [earlier, later].map(|(_, sound)| &sound.build().plan);
    let made = |(checked, sound): (&Checked, &SoundBuild)| {
        let figures = draw(checked, sound, fonts, templates.words());
        compose(checked, sound, figures, templates, Some(was))
    };
    let (before, after) = rayon::join(|| made(earlier), || made(later));
    let newest = |plan: &PlanHead| plan.newest().map(|revision| revision.mark.clone());
    // A change without a revision of its own has no mark.
    let mark = newest(is).filter(|mark| Some(mark) != newest(was).as_ref());
    let marked = document::mark_changes(&before.value, after.value, &mark.unwrap_or_default());
    Outcome {
        value: marked,
        findings: after.findings,
    }
}

/// The pages of a document as a PDF, on the paper of its plan.
pub fn print(document: &Document, build: &Build, fonts: &Fonts) -> Outcome<Vec<u8>> {
    let mut findings = Findings::new();
    let pages = page::paginate(document, fonts, build.plan.paper);
    findings.append(pages.findings);
    let written = pdf::write(&pages.value, fonts, issue_date(build));
    findings.append(written.findings);
    Outcome {
        value: written.value,
        findings,
    }
}

/// The document as a page for browsers.
pub fn publish(document: &Document, build: &Build) -> String {
    let newest = build.plan.newest();
    let issue = newest.map(|revision| format!("{} {}", revision.mark, revision.date));
    web::write(document, &issue.unwrap_or_default())
}

/// The day of the newest revision, which dates the file; none where there is no revision.
fn issue_date(build: &Build) -> Option<pdf::Date> {
    pdf::Date::parse(&build.plan.newest()?.date)
}
