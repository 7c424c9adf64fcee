//! Files handed in as text, and places in them.
//!
//! Nothing here reads a disk: the command line (or a test) hands over names and texts, every
//! later stage speaks of a [`Span`].

use std::collections::BTreeMap;

use serde::Serialize;

/// The largest source file that is read, in bytes.
pub const LARGEST_SOURCE: usize = 8 * 1024 * 1024;
/// The deepest nesting of parentheses, calls and blocks that is read.
pub const DEEPEST_NESTING: usize = 128;

/// One of the files handed in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(transparent)]
pub struct FileId(pub u32);

/// A stretch of a file, in bytes from its start; `end` is the first byte after it.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
pub struct Span {
    /// The file.
    pub file: FileId,
    /// First byte.
    pub start: u32,
    /// First byte after it.
    pub end: u32,
}

impl Span {
    /// A stretch of `file`; offsets past 4 GiB are cut there (sources are limited far below).
    pub fn new(file: FileId, start: usize, end: usize) -> Self {
        let offset = |bytes: usize| u32::try_from(bytes).unwrap_or(u32::MAX);
        Self {
            file,
            start: offset(start),
            end: offset(end),
        }
    }

    /// From the start of this to the end of `other`.
    pub fn to(self, other: Self) -> Self {
        Self {
            file: self.file,
            start: self.start.min(other.start),
            end: self.end.max(other.end),
        }
    }

    /// The bytes it covers, as a range for slicing.
    pub fn range(self) -> std::ops::Range<usize> {
        self.start as usize..self.end as usize
    }
}

/// A name or a value and the place where it is written.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Spanned<T> {
    /// What is written there.
    pub value: T,
    /// Where.
    #[serde(skip)]
    pub span: Span,
}

impl<T> Spanned<T> {
    /// `value`, written at `span`.
    pub const fn new(value: T, span: Span) -> Self {
        Self { value, span }
    }
}

/// A file handed in.
#[derive(Clone, Debug)]
pub struct SourceFile {
    /// Its path as the user wrote it, for messages alone.
    pub name: String,
    /// Its text.
    pub text: String,
}

/// All files of one run.
#[derive(Clone, Debug, Default)]
pub struct Sources {
    files: Vec<SourceFile>,
    /// Which file an import names, by the file it stands in and as it is written.
    links: BTreeMap<(FileId, String), FileId>,
}

impl Sources {
    /// No files yet.
    pub fn new() -> Self {
        Self::default()
    }

    /// One file, the common case of tests and small plans.
    pub fn single(name: &str, text: &str) -> (Self, FileId) {
        let mut sources = Self::new();
        let file = sources.add(name, text);
        (sources, file)
    }

    /// Takes a file in.
    pub fn add(&mut self, name: &str, text: &str) -> FileId {
        let id = FileId(u32::try_from(self.files.len()).unwrap_or(u32::MAX));
        self.files.push(SourceFile {
            name: name.to_owned(),
            text: text.to_owned(),
        });
        id
    }

    /// Says which file an import names that stands in `file` and reads `written`: `std`, or a path
    /// in quotes.
    pub fn link(&mut self, file: FileId, written: &str, to: FileId) {
        self.links.insert((file, written.to_owned()), to);
    }

    /// The file that an import names; none where it was not handed in.
    pub fn linked(&self, file: FileId, written: &str) -> Option<FileId> {
        self.links.get(&(file, written.to_owned())).copied()
    }

    /// The file's text; empty for a file that was never handed in.
    pub fn text(&self, file: FileId) -> &str {
        self.files
            .get(file.0 as usize)
            .map_or("", |file| &file.text)
    }

    /// The file's name; empty for a file that was never handed in.
    pub fn name(&self, file: FileId) -> &str {
        self.files
            .get(file.0 as usize)
            .map_or("", |file| &file.name)
    }

    /// The text of a place; empty where the place is not in the file.
    pub fn snippet(&self, span: Span) -> &str {
        self.text(span.file).get(span.range()).unwrap_or("")
    }

    /// Line and column of a byte, both from 1; the column counts characters.
    pub fn line_and_column(&self, file: FileId, offset: u32) -> (usize, usize) {
        let text = self.text(file);
        let before = text
            .get(..(offset as usize).min(text.len()))
            .unwrap_or(text);
        let line_start = before.rfind('\n').map_or(0, |at| at + 1);
        let column = before.get(line_start..).unwrap_or("").chars().count() + 1;
        (before.matches('\n').count() + 1, column)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lines_and_columns_count_from_one() {
        let (sources, file) = Sources::single("a.wright", "plan\n  größe x\n");
        assert_eq!(sources.line_and_column(file, 0), (1, 1));
        assert_eq!(sources.line_and_column(file, 15), (2, 9));
        assert_eq!(sources.line_and_column(file, 9_999), (3, 1));
    }
}
