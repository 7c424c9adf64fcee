//! Libraries: what they say of themselves, and what of them a plan needs.

use std::collections::{BTreeMap, BTreeSet};

use super::evaluate::Evaluator;
use super::findings::{LACKING, NEWER_LANGUAGE, NOT_A_LIBRARY, TWO_VERSIONS};
use super::names::{Declared, belongs_in_library};
use crate::finding::{Finding, Findings};
use crate::source::{FileId, Span};
use crate::syntax::tree::{
    LibraryBlock, LibrarySetting, PartLineKind, Statement, StepLineKind, Text, Tree,
};
use crate::syntax::{Forest, LANGUAGE, imports};

/// What is declared in libraries and used in the plan, by its place among its kind.
#[derive(Debug, Default)]
pub(super) struct Needed {
    pub(super) materials: BTreeSet<usize>,
    pub(super) hardware: BTreeSet<usize>,
    pub(super) supplies: BTreeSet<usize>,
    pub(super) parts: BTreeSet<usize>,
}

impl Needed {
    fn add(&mut self, declared: Declared) {
        let _ = match declared {
            Declared::Material(index) => self.materials.insert(index),
            Declared::Hardware(index) => self.hardware.insert(index),
            Declared::Supply(index) => self.supplies.insert(index),
            Declared::Part(index) => self.parts.insert(index),
            Declared::Param(_)
            | Declared::Let(_)
            | Declared::Place(_)
            | Declared::Subassembly(_)
            | Declared::Formal(_)
            | Declared::Missing => false,
        };
    }
}

impl<'t> Evaluator<'t> {
    /// What the plan's own statements declare, what it imports, and what is used of the rest.
    pub(super) fn needed(&self) -> Needed {
        let mut needed = Needed::default();
        for (_, declared, _) in self.all.imported_in_plan() {
            needed.add(declared);
        }
        let own = |scopes: Vec<super::scopes::ScopeId>, list: &mut BTreeSet<usize>| {
            let rows = scopes.into_iter().enumerate();
            list.extend(
                rows.filter(|(_, scope)| !self.all.is_library(*scope))
                    .map(|(index, _)| index),
            );
        };
        own(self.all.materials.scopes(), &mut needed.materials);
        own(self.all.hardware.scopes(), &mut needed.hardware);
        own(self.all.supplies.scopes(), &mut needed.supplies);
        own(self.all.parts.scopes(), &mut needed.parts);
        for place in 0..self.all.places.len() {
            if self.subassembly_of(place).is_none() {
                needed.parts.extend(self.part_of_place(place));
            }
        }
        for (template, scope) in self.all.templates.rows() {
            // What it names wrongly is told where it is worked out.
            let found = self.inside(scope, || self.find(&template.part.value));
            if let Some(Declared::Part(part)) = found {
                needed.parts.insert(part);
            }
        }
        for part in needed.parts.clone() {
            self.needed_by_part(part, &mut needed);
        }
        for (join, scope) in self.all.joins.rows() {
            for name in &join.using {
                let found = self.inside(scope, || self.find(&name.value));
                found.into_iter().for_each(|found| needed.add(found));
            }
        }
        for (step, scope) in self.all.steps.rows() {
            for line in &step.lines {
                if let StepLineKind::Uses { name, .. } = &line.kind {
                    let found = self.inside(scope, || self.find(&name.value));
                    found.into_iter().for_each(|found| needed.add(found));
                }
            }
        }
        needed
    }

    fn needed_by_part(&self, index: usize, needed: &mut Needed) {
        let Some(part) = self.all.parts.get(index) else {
            return;
        };
        self.inside(self.all.parts.scope(index), || {
            needed.materials.extend(self.material_of(part));
            for line in &part.lines {
                if let PartLineKind::Band { hardware, .. } = &line.kind {
                    let found = self.find(&hardware.value);
                    found.into_iter().for_each(|found| needed.add(found));
                }
            }
        });
    }
}

/// What a library says of itself.
struct Library<'t> {
    block: &'t LibraryBlock,
    version: Option<&'t Text>,
}

/// Looks at what the files of a plan say of themselves.
pub(super) fn check(forest: &Forest, findings: &mut Findings) {
    for statement in &forest.plan.statements {
        if let Statement::Library(block) = statement {
            let message = "this file is a plan, not a library";
            findings.push(
                Finding::new(&NOT_A_LIBRARY, block.title.span, message)
                    .remedy("move it into a file of its own and import what the plan needs of it"),
            );
        }
    }
    let mut known: BTreeMap<&str, Library<'_>> = BTreeMap::new();
    for (file, tree) in &forest.libraries {
        let Some(library) = library(tree, named_at(forest, *file), findings) else {
            continue;
        };
        let title = library.block.title.value.as_str();
        if let Some(first) = known.get(title) {
            let versions = [first.version, library.version].map(|it| it.map(|text| &text.value));
            if versions.first() != versions.last() {
                let shown = versions.map(|it| it.map_or("none", String::as_str));
                let message = format!(
                    "two versions of `{title}` are used: {}",
                    shown.join(" and ")
                );
                findings.push(
                    Finding::new(&TWO_VERSIONS, library.block.title.span, message)
                        .related(first.block.title.span, "the other one")
                        .remedy("let all imports name one of the two files"),
                );
            }
            continue;
        }
        known.insert(title, library);
    }
}

/// Where a file is imported first.
fn named_at(forest: &Forest, library: FileId) -> Span {
    let libraries = forest.libraries.iter().map(|(file, tree)| (*file, tree));
    let trees = std::iter::once((forest.plan.span.file, &forest.plan)).chain(libraries);
    trees
        .flat_map(|(file, tree)| imports(tree).map(move |import| (file, import)))
        .find(|(file, import)| forest.linked(*file, &import.from) == Some(library))
        .map_or(Span::default(), |(_, import)| import.from.span())
}

fn library<'t>(tree: &'t Tree, at: Span, findings: &mut Findings) -> Option<Library<'t>> {
    let mut blocks = tree.statements.iter().filter_map(|statement| {
        if let Statement::Library(block) = statement {
            Some(block)
        } else {
            None
        }
    });
    let Some(block) = blocks.next() else {
        let message = "this file is not a library: it has no library block";
        findings.push(
            Finding::new(&NOT_A_LIBRARY, at, message).remedy(
                "begin it with `library \"…\" { version \"1\"; language 1 }`, and leave out what it places",
            ),
        );
        return None;
    };
    for statement in tree.statements.iter().filter(|it| !belongs_in_library(it)) {
        let message = "a library declares what others use, and places and makes nothing itself";
        findings.push(
            Finding::new(&NOT_A_LIBRARY, head_of(statement), message)
                .remedy("put it into a sub-assembly, or into a plan that imports the library"),
        );
    }
    let mut version = None;
    for setting in &block.settings {
        match setting {
            LibrarySetting::Version(text) => version = Some(text),
            LibrarySetting::Language(needs) => check_language(needs, findings),
            LibrarySetting::Author(_) | LibrarySetting::About(_) => {}
        }
    }
    if version.is_none() {
        let message = format!("`{}` does not say which version it is", block.title.value);
        findings.push(
            Finding::new(&LACKING, block.title.span, message).remedy("add a line `version \"1\"`"),
        );
    }
    Some(Library { block, version })
}

fn check_language(needs: &crate::syntax::tree::Expr, findings: &mut Findings) {
    use crate::syntax::tree::ExprKind;
    let number = if let ExprKind::Number(number) = &needs.kind
        && number.is_integer()
    {
        i64::try_from(number.to_integer()).ok()
    } else {
        None
    };
    let finding = match number {
        Some(number) if (1..=LANGUAGE).contains(&number) => return,
        Some(number) if number > LANGUAGE => {
            let message =
                format!("this library needs language {number}; this is language {LANGUAGE}");
            Finding::new(&NEWER_LANGUAGE, needs.span, message)
                .remedy("use a newer version of the tool, or an older one of the library")
        }
        _ => {
            let message = "the language is a whole number from 1 on";
            Finding::new(&NEWER_LANGUAGE, needs.span, message).remedy("write `language 1`")
        }
    };
    findings.push(finding);
}

/// Where a statement that stands in the wrong place is quoted.
fn head_of(statement: &Statement) -> Span {
    match statement {
        Statement::Plan(it) => it.title.span,
        Statement::Param(it) => it.name.span,
        Statement::Let(it) => it.name.span,
        Statement::Material(it) => it.name.span,
        Statement::Part(it) => it.name.span,
        Statement::Place(it) => it.name.span,
        Statement::Join(it) => it.kind.span,
        Statement::Hardware(it) => it.name.span,
        Statement::Step(it) => it.title.span,
        Statement::Require(it) => it.span,
        Statement::Load(it) => it.span,
        Statement::Clearance(it) => it.span,
        Statement::Hold(it) => it.title.span,
        Statement::Supply(it) => it.name.span,
        Statement::Continuous(it) => it.span,
        Statement::Template(it) => it.part.span,
        Statement::Subassembly(it) => it.name.span,
        Statement::Choose(it) => it.name.span,
        Statement::Import(it) => it.span,
        Statement::Library(it) => it.title.span,
    }
}
