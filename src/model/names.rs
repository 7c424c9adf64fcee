//! The names of a plan: what each one declares, and the nearest name to a misspelt one.

use std::cell::RefCell;
use std::collections::BTreeMap;

use super::findings::{NAME_TWICE, UNKNOWN_NAME};
use super::scopes::{Scope, ScopeId};
use crate::finding::{Finding, Findings};
use crate::source::Span;
use crate::syntax::tree::{
    Clearance, Continuous, Formal, Hardware, Hold, ImportSource, Imported, Join, Let, Load,
    Material, Name, Param, Part, Place, PlanBlock, Require, Statement, Step, Subassembly, Supply,
    Template,
};
use crate::syntax::{Forest, imports};

/// The statements of one kind, each with the scope it stands in, in the order in which the scopes
/// were opened. A sub-assembly that is placed often has a row for every time.
#[derive(Debug)]
pub(super) struct Table<'t, T> {
    rows: RefCell<Vec<(&'t T, ScopeId)>>,
}

impl<T> Default for Table<'_, T> {
    fn default() -> Self {
        Self {
            rows: RefCell::default(),
        }
    }
}

impl<'t, T> Table<'t, T> {
    fn push(&self, statement: &'t T, scope: ScopeId) -> usize {
        let mut rows = self.rows.borrow_mut();
        rows.push((statement, scope));
        rows.len() - 1
    }

    /// A statement.
    pub(super) fn get(&self, index: usize) -> Option<&'t T> {
        let rows = self.rows.borrow();
        rows.get(index).map(|(statement, _)| *statement)
    }

    /// The scope a statement stands in.
    pub(super) fn scope(&self, index: usize) -> ScopeId {
        let rows = self.rows.borrow();
        rows.get(index).map_or(ScopeId::PLAN, |(_, scope)| *scope)
    }

    /// All statements so far.
    pub(super) fn rows(&self) -> Vec<(&'t T, ScopeId)> {
        self.rows.borrow().clone()
    }

    /// The scopes of all statements so far.
    pub(super) fn scopes(&self) -> Vec<ScopeId> {
        self.rows.borrow().iter().map(|(_, scope)| *scope).collect()
    }

    /// How many there are so far.
    pub(super) fn len(&self) -> usize {
        self.rows.borrow().len()
    }
}

/// The statements that are worked out, sorted by kind.
#[derive(Debug, Default)]
pub(super) struct Declarations<'t> {
    pub(super) plans: Table<'t, PlanBlock>,
    pub(super) params: Table<'t, Param>,
    pub(super) lets: Table<'t, Let>,
    pub(super) materials: Table<'t, Material>,
    pub(super) parts: Table<'t, Part>,
    pub(super) hardware: Table<'t, Hardware>,
    pub(super) places: Table<'t, Place>,
    pub(super) joins: Table<'t, Join>,
    pub(super) steps: Table<'t, Step>,
    pub(super) requires: Table<'t, Require>,
    pub(super) loads: Table<'t, Load>,
    pub(super) clearances: Table<'t, Clearance>,
    pub(super) holds: Table<'t, Hold>,
    pub(super) continuous: Table<'t, Continuous>,
    pub(super) templates: Table<'t, Template>,
    pub(super) supplies: Table<'t, Supply>,
    pub(super) subassemblies: Table<'t, Subassembly>,
    pub(super) formals: Table<'t, Formal>,
    pub(super) scopes: RefCell<Vec<Scope<'t>>>,
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
    Subassembly(usize),
    /// A parameter of a sub-assembly.
    Formal(usize),
    /// Something that could not be worked out and was told.
    Missing,
}

impl Declared {
    /// True for what a sub-assembly sees of the file it is described in: everything but places.
    const fn is_seen_inside(self) -> bool {
        !matches!(self, Self::Place(_))
    }
}

impl<'t> Declarations<'t> {
    /// Sorts the statements of a plan and of its libraries; a name that is declared twice keeps its
    /// first meaning.
    pub(super) fn collect(
        forest: &'t Forest,
        statements: &[&'t Statement],
        findings: &mut Findings,
    ) -> Self {
        let all = Self::default();
        let plan = all.open(Scope::default());
        let mut files = BTreeMap::from([(forest.plan.span.file, plan)]);
        let mut told = all.declare_all(plan, statements.iter().copied());
        for (file, tree) in &forest.libraries {
            let library = all.open(Scope {
                is_library: true,
                ..Scope::default()
            });
            files.insert(*file, library);
            let inside = tree.statements.iter().filter(|it| belongs_in_library(it));
            told.extend(all.declare_all(library, inside));
        }
        let libraries = forest.libraries.iter().map(|(file, tree)| (*file, tree));
        for (file, tree) in std::iter::once((forest.plan.span.file, &forest.plan)).chain(libraries)
        {
            for import in imports(tree) {
                let library = forest.linked(file, &import.from);
                let library = library.and_then(|library| files.get(&library).copied());
                let here = files.get(&file).copied().unwrap_or_default();
                for imported in &import.names {
                    told.extend(all.import(here, library, imported, &import.from));
                }
            }
        }
        for finding in told {
            findings.push(finding);
        }
        all
    }

    /// Takes a name of a library in. What could not be read was told: its names mean nothing, and
    /// nothing complains about them.
    fn import(
        &self,
        here: ScopeId,
        library: Option<ScopeId>,
        imported: &'t Imported,
        from: &ImportSource,
    ) -> Option<Finding> {
        let name = &imported.name;
        let found = match library {
            None => Some(Declared::Missing),
            Some(library) => self.own(library, &name.value),
        };
        let Some(found) = found else {
            let message = format!("{} has no `{}`", from.key(), name.value);
            let mut finding = Finding::new(&UNKNOWN_NAME, name.span, message);
            let known = library.map(|library| self.names_of(library, Meant::Anything));
            let known = known.unwrap_or_default();
            if let Some(near) = nearest_of(&name.value, known.iter().copied()) {
                let text = format!("did you mean `{near}`?");
                finding = finding.edit(text, name.span, near.to_owned());
            }
            self.declare_in(here, imported.here(), Declared::Missing, Names::Imported);
            return Some(finding);
        };
        self.declare_in(here, imported.here(), found, Names::Imported)
    }

    /// A new scope, empty.
    pub(super) fn open(&self, scope: Scope<'t>) -> ScopeId {
        let mut scopes = self.scopes.borrow_mut();
        scopes.push(scope);
        ScopeId(scopes.len() - 1)
    }

    /// Declares the statements of a scope, and tells of names that are there twice.
    pub(super) fn declare_all(
        &self,
        scope: ScopeId,
        statements: impl IntoIterator<Item = &'t Statement>,
    ) -> Vec<Finding> {
        let mut told = Vec::new();
        for statement in statements {
            let declared = match statement {
                Statement::Plan(plan) => {
                    self.plans.push(plan, scope);
                    None
                }
                Statement::Param(it) => {
                    Some((&it.name, Declared::Param(self.params.push(it, scope))))
                }
                Statement::Let(it) => Some((&it.name, Declared::Let(self.lets.push(it, scope)))),
                Statement::Material(it) => {
                    Some((&it.name, Declared::Material(self.materials.push(it, scope))))
                }
                Statement::Part(it) => Some((&it.name, Declared::Part(self.parts.push(it, scope)))),
                Statement::Hardware(it) => {
                    Some((&it.name, Declared::Hardware(self.hardware.push(it, scope))))
                }
                Statement::Supply(it) => {
                    Some((&it.name, Declared::Supply(self.supplies.push(it, scope))))
                }
                Statement::Place(it) => {
                    Some((&it.name, Declared::Place(self.places.push(it, scope))))
                }
                Statement::Subassembly(it) => Some((
                    &it.name,
                    Declared::Subassembly(self.subassemblies.push(it, scope)),
                )),
                Statement::Join(_)
                | Statement::Step(_)
                | Statement::Require(_)
                | Statement::Load(_)
                | Statement::Clearance(_)
                | Statement::Hold(_)
                | Statement::Continuous(_)
                | Statement::Template(_)
                | Statement::Choose(_)
                | Statement::Import(_)
                | Statement::Library(_) => {
                    self.push_nameless(statement, scope);
                    None
                }
            };
            if let Some((name, declared)) = declared {
                told.extend(self.declare(scope, name, declared));
            }
        }
        told
    }

    /// A parameter of the sub-assembly that a scope is of.
    pub(super) fn declare_formal(&self, scope: ScopeId, formal: &'t Formal) -> Option<Finding> {
        let declared = Declared::Formal(self.formals.push(formal, scope));
        self.declare(scope, &formal.name, declared)
    }

    fn push_nameless(&self, statement: &'t Statement, scope: ScopeId) {
        match statement {
            Statement::Join(join) => drop(self.joins.push(join, scope)),
            Statement::Step(step) => drop(self.steps.push(step, scope)),
            Statement::Require(require) => drop(self.requires.push(require, scope)),
            Statement::Load(load) => drop(self.loads.push(load, scope)),
            Statement::Clearance(it) => drop(self.clearances.push(it, scope)),
            Statement::Hold(hold) => drop(self.holds.push(hold, scope)),
            Statement::Continuous(run) => drop(self.continuous.push(run, scope)),
            Statement::Template(it) => drop(self.templates.push(it, scope)),
            Statement::Plan(_)
            | Statement::Param(_)
            | Statement::Let(_)
            | Statement::Material(_)
            | Statement::Part(_)
            | Statement::Hardware(_)
            | Statement::Supply(_)
            | Statement::Place(_)
            | Statement::Subassembly(_)
            | Statement::Choose(_)
            | Statement::Import(_)
            | Statement::Library(_) => {}
        }
    }

    fn declare(&self, scope: ScopeId, name: &'t Name, declared: Declared) -> Option<Finding> {
        self.declare_in(scope, name, declared, Names::Own)
    }

    fn declare_in(
        &self,
        scope: ScopeId,
        name: &'t Name,
        declared: Declared,
        names: Names,
    ) -> Option<Finding> {
        let mut scopes = self.scopes.borrow_mut();
        let scope = scopes.get_mut(scope.0)?;
        let word = name.value.as_str();
        if let Some((_, first)) = scope.names.get(word).or(scope.imported.get(word)) {
            let message = format!("`{}` is declared a second time", name.value);
            return Some(
                Finding::new(&NAME_TWICE, name.span, message)
                    .related(*first, "first declared here")
                    .remedy(match names {
                        Names::Own => "give one of the two another name",
                        Names::Imported => "import it under another name: `import … as …`",
                    }),
            );
        }
        let list = match names {
            Names::Own => &mut scope.names,
            Names::Imported => &mut scope.imported,
        };
        list.insert(word, (declared, name.span));
        None
    }

    /// What a name declares that is used in a scope: there, or in the file the scope's
    /// sub-assembly is described in.
    pub(super) fn find(&self, scope: ScopeId, name: &str) -> Option<Declared> {
        let file = self.scopes.borrow().get(scope.0).and_then(|own| own.file);
        let known = |scope: ScopeId| self.own(scope, name).or_else(|| self.imported(scope, name));
        known(scope).or_else(|| known(file?).filter(|declared| declared.is_seen_inside()))
    }

    fn imported(&self, scope: ScopeId, name: &str) -> Option<Declared> {
        let scopes = self.scopes.borrow();
        let (declared, _) = scopes.get(scope.0)?.imported.get(name)?;
        Some(*declared)
    }

    /// What the plan imports, with the names it has there.
    pub(super) fn imported_in_plan(&self) -> Vec<(&'t str, Declared, Span)> {
        let scopes = self.scopes.borrow();
        let plan = scopes.get(ScopeId::PLAN.0);
        let imported = plan.into_iter().flat_map(|plan| &plan.imported);
        imported
            .map(|(name, (declared, span))| (*name, *declared, *span))
            .collect()
    }

    /// True for the scope of a library.
    pub(super) fn is_library(&self, scope: ScopeId) -> bool {
        let scopes = self.scopes.borrow();
        scopes.get(scope.0).is_some_and(|scope| scope.is_library)
    }

    /// What a name declares in a scope itself.
    pub(super) fn own(&self, scope: ScopeId, name: &str) -> Option<Declared> {
        let scopes = self.scopes.borrow();
        let (declared, _) = scopes.get(scope.0)?.names.get(name)?;
        Some(*declared)
    }

    /// The names in a scope that a place may mean, in the order of the alphabet.
    pub(super) fn names_of(&self, scope: ScopeId, meant: Meant) -> Vec<&'t str> {
        let scopes = self.scopes.borrow();
        let file = scopes.get(scope.0).and_then(|own| own.file);
        let names = |of: Option<ScopeId>| {
            let found = of.and_then(|scope| scopes.get(scope.0));
            found
                .into_iter()
                .flat_map(|scope| scope.names.iter().chain(&scope.imported))
        };
        let outer = names(file).filter(|(_, (declared, _))| declared.is_seen_inside());
        let mut all: Vec<&'t str> = names(Some(scope))
            .chain(outer)
            .filter(|(_, (declared, _))| self.is_meant(*declared, meant))
            .map(|(name, _)| *name)
            .collect();
        all.sort_unstable();
        all.dedup();
        all
    }

    fn is_meant(&self, declared: Declared, meant: Meant) -> bool {
        let kind = if let Declared::Formal(index) = declared {
            self.formals.get(index).map(|it| it.kind.value.as_str())
        } else {
            None
        };
        match meant {
            Meant::Anything => true,
            Meant::Material => {
                matches!(declared, Declared::Material(_)) || kind == Some("material")
            }
            Meant::Part => matches!(declared, Declared::Part(_) | Declared::Subassembly(_)),
            Meant::OnePart => matches!(declared, Declared::Part(_)),
            Meant::Hardware => {
                matches!(declared, Declared::Hardware(_)) || kind == Some("hardware")
            }
            Meant::Used => {
                matches!(declared, Declared::Hardware(_) | Declared::Supply(_))
                    || kind == Some("hardware")
            }
            Meant::Placed => matches!(declared, Declared::Place(_)),
        }
    }
}

/// Which names of a scope.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Names {
    /// Declared in it.
    Own,
    /// Taken from a library.
    Imported,
}

/// True for what a library may hold: what others can use, placed nowhere yet.
pub(super) const fn belongs_in_library(statement: &Statement) -> bool {
    matches!(
        statement,
        Statement::Library(_)
            | Statement::Import(_)
            | Statement::Let(_)
            | Statement::Material(_)
            | Statement::Part(_)
            | Statement::Hardware(_)
            | Statement::Supply(_)
            | Statement::Subassembly(_)
    )
}

/// What a name at some place must be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Meant {
    /// Any declared name.
    Anything,
    /// A material.
    Material,
    /// A part or a sub-assembly.
    Part,
    /// A part.
    OnePart,
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
