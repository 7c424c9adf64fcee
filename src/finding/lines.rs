//! Where the lines of the sources begin, found once for many findings.

use std::collections::BTreeMap;
use std::ops::Range;

use super::Findings;
use crate::source::{FileId, Sources, Span};

/// The sources, and where the lines of those that findings speak of begin.
pub(super) struct Lines<'a> {
    pub(super) sources: &'a Sources,
    starts: BTreeMap<FileId, Vec<usize>>,
}

impl<'a> Lines<'a> {
    /// Of all files that `findings` have places in.
    pub(super) fn new(findings: &Findings, sources: &'a Sources) -> Self {
        let mut starts = BTreeMap::new();
        for finding in findings.iter() {
            let related = finding.related.iter().map(|related| related.span);
            let edits = finding.remedies.iter().filter_map(|r| r.edit.as_ref());
            let edits = edits.map(|(span, _)| *span);
            for span in std::iter::once(finding.span).chain(related).chain(edits) {
                let entry = starts.entry(span.file);
                entry.or_insert_with(|| line_starts(sources.text(span.file)));
            }
        }
        Self { sources, starts }
    }

    /// Line and column of a byte, both from 1; the column counts characters.
    pub(super) fn line_and_column(&self, file: FileId, offset: u32) -> (usize, usize) {
        let at = boundary(self.sources.text(file), offset as usize);
        let line = self.line(file, at);
        let start = self.start(file, line);
        let before = self.sources.text(file).get(start..at).unwrap_or("");
        (line, before.chars().count() + 1)
    }

    /// The line of a byte, from 1.
    pub(super) fn line(&self, file: FileId, at: usize) -> usize {
        let starts = self.starts.get(&file).map_or(&[][..], Vec::as_slice);
        starts.partition_point(|&start| start <= at).max(1)
    }

    /// Where a line begins; the end of the text for a line behind it.
    pub(super) fn start(&self, file: FileId, line: usize) -> usize {
        let starts = self.starts.get(&file).map_or(&[][..], Vec::as_slice);
        let start = starts.get(line.saturating_sub(1));
        start.copied().unwrap_or(self.sources.text(file).len())
    }

    /// A span as a range that is safe to slice its text with.
    pub(super) fn range(&self, span: Span) -> Range<usize> {
        let text = self.sources.text(span.file);
        let start = boundary(text, span.start as usize);
        let end = boundary(text, span.end as usize).max(start);
        start..end
    }
}

fn line_starts(text: &str) -> Vec<usize> {
    let ends = text.bytes().enumerate().filter(|(_, byte)| *byte == b'\n');
    std::iter::once(0)
        .chain(ends.map(|(at, _)| at + 1))
        .collect()
}

/// The offset, or the nearest before it that does not split a character.
fn boundary(text: &str, offset: usize) -> usize {
    let mut at = offset.min(text.len());
    while !text.is_char_boundary(at) {
        at = at.saturating_sub(1);
    }
    at
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::finding::Finding;
    use crate::syntax::findings::EXPECTED;

    #[test]
    fn lines_agree_with_the_sources() {
        let text = "plan\n  größe x\n\n";
        let (sources, file) = Sources::single("a.wright", text);
        let mut findings = Findings::new();
        findings.push(Finding::new(&EXPECTED, Span::new(file, 0, 1), ""));
        let lines = Lines::new(&findings, &sources);
        for (offset, _) in text.char_indices() {
            let offset = u32::try_from(offset).unwrap();
            assert_eq!(
                lines.line_and_column(file, offset),
                sources.line_and_column(file, offset)
            );
        }
        assert_eq!(
            lines.line_and_column(file, 9_999),
            sources.line_and_column(file, 9_999)
        );
        assert_eq!(lines.range(Span::new(file, 10, 9_999)), 9..text.len());
    }
}
