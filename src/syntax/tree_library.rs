//! The syntax tree of what is shared between plans: imports, and what a library says of itself.

use super::tree::{Expr, Name, SlottedText, Text};
use crate::source::Span;

/// `import drawer, rail as bar from "parts/drawers.wright"`
#[derive(Clone, Debug, PartialEq)]
pub struct Import {
    /// What is imported.
    pub names: Vec<Imported>,
    /// From where.
    pub from: ImportSource,
    /// The whole statement.
    pub span: Span,
}

/// `rail as bar`: a name of a library, and what it is called here.
#[derive(Clone, Debug, PartialEq)]
pub struct Imported {
    /// Its name in the library.
    pub name: Name,
    /// Its name here, where that is another one.
    pub alias: Option<Name>,
}

impl Imported {
    /// The name it has here.
    pub fn here(&self) -> &Name {
        self.alias.as_ref().unwrap_or(&self.name)
    }
}

/// Where something is imported from.
#[derive(Clone, Debug, PartialEq)]
pub enum ImportSource {
    /// A file, by its path from the folder of the one that imports it.
    File(Text),
    /// `std`, or a library that the project gives a name.
    Named(Name),
}

impl ImportSource {
    /// As it is written: what a file's links are found by.
    pub fn key(&self) -> String {
        match self {
            Self::File(path) => format!("\"{}\"", path.value),
            Self::Named(name) => name.value.clone(),
        }
    }

    /// Where it is written.
    pub const fn span(&self) -> Span {
        match self {
            Self::File(path) => path.span,
            Self::Named(name) => name.span,
        }
    }
}

/// `library "Drawers" { version "1.2"; language 1 }`
#[derive(Clone, Debug, PartialEq)]
pub struct LibraryBlock {
    /// What it is called, whatever its file is.
    pub title: Text,
    /// Its lines.
    pub settings: Vec<LibrarySetting>,
    /// The whole statement.
    pub span: Span,
}

/// A line of a library block.
#[derive(Clone, Debug, PartialEq)]
pub enum LibrarySetting {
    /// `version "1.2"`
    Version(Text),
    /// `language 1`: the first language that has all it is written in.
    Language(Expr),
    /// `author "…"`
    Author(Text),
    /// `about "…"`
    About(SlottedText),
}
