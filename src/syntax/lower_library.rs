//! Imports, and what a library says of itself.

use super::layout::Item;
use super::lower::Reader;
use super::pairs::Rule;
use super::tree::{Import, ImportSource, Imported, LibraryBlock, LibrarySetting};
use super::words::{BlockKind, Opening};

impl Reader<'_> {
    /// `import a, b as c from "file.wright"`
    pub(super) fn import(&mut self, item: &Item) -> Option<Import> {
        let mut head = self.head(Rule::only_import, item, Opening::Import)?;
        let mut names = Vec::new();
        while let Some(node) = head.take(Rule::imported) {
            let mut parts = node.parts();
            names.push(Imported {
                name: parts.name()?,
                alias: parts.name(),
            });
        }
        let from = match self.optional_text(&mut head) {
            Some(path) => ImportSource::File(path),
            None => ImportSource::Named(head.name()?),
        };
        Some(Import {
            names,
            from,
            span: self.span(&item.whole()),
        })
    }

    /// `library "…" { … }`
    pub(super) fn library(&mut self, item: &Item) -> Option<LibraryBlock> {
        let head = self.head(Rule::only_library_head, item, Opening::Library);
        let settings = self.library_lines(item);
        Some(LibraryBlock {
            title: self.next_text(&mut head?)?,
            settings,
            span: self.span(&item.whole()),
        })
    }

    /// The lines of a library block.
    pub(super) fn library_lines(&mut self, item: &Item) -> Vec<LibrarySetting> {
        self.lines(item, BlockKind::Library, Self::library_line)
    }

    #[expect(
        clippy::wildcard_enum_match_arm,
        reason = "of all rules of the grammar, a line of a library is one of these four"
    )]
    fn library_line(&mut self, item: &Item) -> Option<LibrarySetting> {
        let node = self.line(Rule::only_library_line, item, BlockKind::Library)?;
        let rule = node.rule();
        let mut parts = node.parts();
        Some(match rule {
            Rule::version => LibrarySetting::Version(self.next_text(&mut parts)?),
            Rule::language => LibrarySetting::Language(self.next_expr(&mut parts)?),
            Rule::author => LibrarySetting::Author(self.next_text(&mut parts)?),
            Rule::about => LibrarySetting::About(self.slotted(&parts.value()?)),
            _ => return None,
        })
    }
}
