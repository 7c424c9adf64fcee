//! The names of a plan: what each one declares, and the nearest name to a misspelt one.

use std::collections::BTreeMap;

use super::findings::NAME_TWICE;
use crate::finding::{Finding, Findings};
use crate::source::Span;
use crate::syntax::tree::{
    Clearance, Continuous, Hardware, Hold, Join, Let, Load, Material, Name, Param, Part, Place,
    PlanBlock, Require, Statement, Step, Supply, Tree,
};

/// The statements of a tree, sorted by kind, each in the order of the text.
#[derive(Debug, Default)]
pub(super) struct Declarations<'t> {
    pub(super) plans: Vec<&'t PlanBlock>,
    pub(super) params: Vec<&'t Param>,
    pub(super) lets: Vec<&'t Let>,
    pub(super) materials: Vec<&'t Material>,
    pub(super) parts: Vec<&'t Part>,
    pub(super) hardware: Vec<&'t Hardware>,
    pub(super) places: Vec<&'t Place>,
    pub(super) joins: Vec<&'t Join>,
    pub(super) steps: Vec<&'t Step>,
    pub(super) requires: Vec<&'t Require>,
    pub(super) loads: Vec<&'t Load>,
    pub(super) clearances: Vec<&'t Clearance>,
    pub(super) holds: Vec<&'t Hold>,
    pub(super) continuous: Vec<&'t Continuous>,
    pub(super) supplies: Vec<&'t Supply>,
    names: BTreeMap<&'t str, (Declared, Span)>,
}

/// What a name declares: its place among the declarations of its kind.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Declared {
    Param(usize),
    Let(usize),
    Material(usize),
    Part(usize),
    Hardware(usize),
    Supply(usize),
    Place(usize),
}

impl<'t> Declarations<'t> {
    /// Sorts the statements of a tree; a name that is declared twice keeps its first meaning.
    pub(super) fn collect(tree: &'t Tree, findings: &mut Findings) -> Self {
        let mut all = Self::default();
        for statement in &tree.statements {
            match statement {
                Statement::Plan(plan) => all.plans.push(plan),
                Statement::Param(param) => {
                    all.declare(&param.name, Declared::Param(all.params.len()), findings);
                    all.params.push(param);
                }
                Statement::Let(constant) => {
                    all.declare(&constant.name, Declared::Let(all.lets.len()), findings);
                    all.lets.push(constant);
                }
                Statement::Material(material) => {
                    all.declare(
                        &material.name,
                        Declared::Material(all.materials.len()),
                        findings,
                    );
                    all.materials.push(material);
                }
                Statement::Part(part) => {
                    all.declare(&part.name, Declared::Part(all.parts.len()), findings);
                    all.parts.push(part);
                }
                Statement::Hardware(item) => {
                    all.declare(&item.name, Declared::Hardware(all.hardware.len()), findings);
                    all.hardware.push(item);
                }
                Statement::Supply(supply) => {
                    all.declare(&supply.name, Declared::Supply(all.supplies.len()), findings);
                    all.supplies.push(supply);
                }
                Statement::Place(place) => {
                    all.declare(&place.name, Declared::Place(all.places.len()), findings);
                    all.places.push(place);
                }
                Statement::Join(join) => all.joins.push(join),
                Statement::Step(step) => all.steps.push(step),
                Statement::Require(require) => all.requires.push(require),
                Statement::Load(load) => all.loads.push(load),
                Statement::Clearance(clearance) => all.clearances.push(clearance),
                Statement::Hold(hold) => all.holds.push(hold),
                Statement::Continuous(run) => all.continuous.push(run),
            }
        }
        all
    }

    fn declare(&mut self, name: &'t Name, declared: Declared, findings: &mut Findings) {
        if let Some((_, first)) = self.names.get(name.value.as_str()) {
            let message = format!("`{}` is declared a second time", name.value);
            findings.push(
                Finding::new(&NAME_TWICE, name.span, message)
                    .related(*first, "first declared here")
                    .remedy("give one of the two another name"),
            );
            return;
        }
        self.names.insert(&name.value, (declared, name.span));
    }

    /// What a name declares.
    pub(super) fn find(&self, name: &str) -> Option<Declared> {
        self.names.get(name).map(|(declared, _)| *declared)
    }

    /// The declared names that a place may mean, in the order of the alphabet.
    pub(super) fn names_of(&self, meant: Meant) -> Vec<&'t str> {
        self.names
            .iter()
            .filter(|(_, (declared, _))| match meant {
                Meant::Anything => true,
                Meant::Material => matches!(declared, Declared::Material(_)),
                Meant::Part => matches!(declared, Declared::Part(_)),
                Meant::Hardware => matches!(declared, Declared::Hardware(_)),
                Meant::Used => matches!(declared, Declared::Hardware(_) | Declared::Supply(_)),
                Meant::Placed => matches!(declared, Declared::Place(_)),
            })
            .map(|(name, _)| *name)
            .collect()
    }
}

/// What a name at some place must be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Meant {
    /// Any declared name.
    Anything,
    /// A material.
    Material,
    /// A part.
    Part,
    /// An item of hardware.
    Hardware,
    /// An item of hardware or a supply.
    Used,
    /// A placed part.
    Placed,
}

/// The candidate nearest to a misspelt word, if one is near: at most a third of it is different.
pub(super) fn nearest_of<'c>(
    word: &str,
    candidates: impl Iterator<Item = &'c str>,
) -> Option<&'c str> {
    let limit = (word.chars().count() / 3).max(1);
    candidates
        .map(|candidate| (strsim::damerau_levenshtein(word, candidate), candidate))
        .filter(|(distance, _)| *distance <= limit)
        .min()
        .map(|(_, candidate)| candidate)
}
