//! A plan with the libraries it imports, each file read once.

use std::collections::BTreeMap;

use super::findings::IMPORT_LOOP;
use super::parse;
use super::tree::{Import, ImportSource, Statement, Tree};
use crate::finding::{Finding, Findings, Outcome};
use crate::source::{FileId, Sources, Span};

/// A plan and the libraries it imports.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Forest {
    /// The plan.
    pub plan: Tree,
    /// Libraries, each after those it imports itself.
    pub libraries: Vec<(FileId, Tree)>,
    /// Which file an import names, by the file it stands in and as it is written.
    links: BTreeMap<(FileId, String), FileId>,
}

impl Forest {
    /// A plan without imports.
    pub fn alone(plan: Tree) -> Self {
        Self {
            plan,
            ..Self::default()
        }
    }

    /// The library that something is imported from; none where it could not be read.
    pub fn linked(&self, file: FileId, from: &ImportSource) -> Option<FileId> {
        self.links.get(&(file, from.key())).copied()
    }

    /// Where sub-assemblies are described: what is wrong there is told once.
    pub fn described(&self) -> Vec<Span> {
        let libraries = self.libraries.iter().map(|(_, tree)| tree);
        let trees = std::iter::once(&self.plan).chain(libraries);
        trees.flat_map(Tree::described).collect()
    }
}

/// The imports of a tree.
pub fn imports(tree: &Tree) -> impl Iterator<Item = &Import> {
    tree.statements.iter().filter_map(|statement| {
        if let Statement::Import(import) = statement {
            Some(import)
        } else {
            None
        }
    })
}

/// Reads a file and, over its links, all it imports.
pub fn parse_all(sources: &Sources, file: FileId) -> Outcome<Forest> {
    let plan = parse(sources, file);
    let mut reading = Reading {
        sources,
        forest: Forest::default(),
        findings: plan.findings,
        open: vec![file],
    };
    reading.follow(file, &plan.value);
    reading.forest.plan = plan.value;
    Outcome {
        value: reading.forest,
        findings: reading.findings,
    }
}

struct Reading<'s> {
    sources: &'s Sources,
    forest: Forest,
    findings: Findings,
    /// Files whose imports are being read, each imported by the one before.
    open: Vec<FileId>,
}

impl Reading<'_> {
    fn follow(&mut self, file: FileId, tree: &Tree) {
        for import in imports(tree) {
            let key = (file, import.from.key());
            let Some(library) = self.sources.linked(file, &key.1) else {
                continue;
            };
            if self.open.contains(&library) {
                self.tell_loop(import, library);
                continue;
            }
            self.forest.links.insert(key, library);
            let known = self
                .forest
                .libraries
                .iter()
                .any(|(other, _)| *other == library);
            if known {
                continue;
            }
            let read = parse(self.sources, library);
            self.findings.append(read.findings);
            self.open.push(library);
            self.follow(library, &read.value);
            self.open.pop();
            self.forest.libraries.push((library, read.value));
        }
    }

    fn tell_loop(&mut self, import: &Import, library: FileId) {
        let start = self.open.iter().position(|file| *file == library);
        let round = self.open.iter().skip(start.unwrap_or(0)).chain([&library]);
        let names: Vec<String> = round
            .map(|file| format!("`{}`", self.sources.name(*file)))
            .collect();
        let message = format!("a circle of imports: {}", names.join(" imports "));
        self.findings.push(
            Finding::new(&IMPORT_LOOP, import.from.span(), message)
                .remedy("move what both need into a library of its own"),
        );
    }
}
