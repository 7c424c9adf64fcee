//! Options: what there is to choose, and what a run chooses.

use std::collections::BTreeMap;

use serde::Serialize;

use super::findings::{CHOICES, NAME_TWICE};
use crate::finding::{Finding, Findings};
use crate::source::Span;
use crate::syntax::tree::{OptionBlock, Statement, Tree};

/// An option of a plan.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct PlanOption {
    /// The name in the source.
    pub name: String,
    /// The printed name.
    pub title: String,
    /// What there is to choose from, in order.
    pub choices: Vec<PlanChoice>,
    /// Which of them this build is of.
    pub chosen: usize,
    /// Where its name is written.
    #[serde(skip)]
    pub span: Span,
}

/// A choice of an option.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct PlanChoice {
    /// The name in the source.
    pub name: String,
    /// The printed name.
    pub title: String,
    /// Where its name is written.
    #[serde(skip)]
    pub span: Span,
}

/// Which choice of an option is taken: the one asked for, else the default.
fn taken(option: &OptionBlock, choices: &BTreeMap<String, String>) -> usize {
    let asked = choices.get(&option.name.value);
    let named = asked.and_then(|name| {
        let mut all = option.choices.iter();
        all.position(|choice| choice.name.value == *name)
    });
    let preset = || option.choices.iter().position(|it| it.default.is_some());
    named.or_else(preset).unwrap_or(0)
}

/// The statements of a plan with those of the choices that are taken, in the order of the text.
pub(super) fn chosen<'t>(tree: &'t Tree, choices: &BTreeMap<String, String>) -> Vec<&'t Statement> {
    let mut statements = Vec::with_capacity(tree.statements.len());
    for statement in &tree.statements {
        if let Statement::Choose(option) = statement {
            let choice = option.choices.get(taken(option, choices));
            statements.extend(choice.into_iter().flat_map(|choice| &choice.statements));
        } else {
            statements.push(statement);
        }
    }
    statements
}

/// The options of a plan.
pub(super) fn options(
    tree: &Tree,
    choices: &BTreeMap<String, String>,
    findings: &mut Findings,
) -> Vec<PlanOption> {
    let mut options: Vec<PlanOption> = Vec::new();
    for statement in &tree.statements {
        let Statement::Choose(option) = statement else {
            continue;
        };
        check(option, findings);
        let name = &option.name;
        if let Some(first) = options.iter().find(|known| known.name == name.value) {
            let message = format!("the option `{}` is declared a second time", name.value);
            findings.push(
                Finding::new(&NAME_TWICE, name.span, message)
                    .related(first.span, "first declared here")
                    .remedy("give one of the two another name"),
            );
            continue;
        }
        let all = option.choices.iter().map(|choice| PlanChoice {
            name: choice.name.value.clone(),
            title: choice.title.value.clone(),
            span: choice.name.span,
        });
        options.push(PlanOption {
            name: name.value.clone(),
            title: option.title.value.clone(),
            choices: all.collect(),
            chosen: taken(option, choices),
            span: name.span,
        });
    }
    options
}

fn check(option: &OptionBlock, findings: &mut Findings) {
    let name = &option.name.value;
    let mut known: BTreeMap<&str, Span> = BTreeMap::new();
    for choice in &option.choices {
        if let Some(first) = known.insert(&choice.name.value, choice.name.span) {
            let message = format!("`{}` is declared a second time", choice.name.value);
            findings.push(
                Finding::new(&NAME_TWICE, choice.name.span, message)
                    .related(first, "first declared here")
                    .remedy("give one of the two another name"),
            );
        }
    }
    let preset: Vec<Span> = option.choices.iter().filter_map(|it| it.default).collect();
    let at = option.name.span;
    let finding = match preset.as_slice() {
        _ if option.choices.len() < 2 => {
            let message = format!("`{name}` leaves no choice");
            Finding::new(&CHOICES, at, message).remedy("give it two choices or more")
        }
        [] => {
            let message = format!("no choice of `{name}` is the usual one");
            Finding::new(&CHOICES, at, message)
                .remedy("write `default` after the name of the one that most readers take")
        }
        [_] => return,
        [first, second, ..] => {
            let message = format!("two choices of `{name}` are the usual one");
            Finding::new(&CHOICES, *second, message)
                .related(*first, "the first one")
                .remedy("keep `default` at one of them")
        }
    };
    findings.push(finding);
}
