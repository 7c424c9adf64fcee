//! The canonical form of a source: the same plan, written one way.
//!
//! Takes a source, gives its text anew, or the findings where something is left open in it. Reads the
//! cut of the text, not the tree: comments and the author's own line ends are kept, and a draft with
//! faults inside its statements can be written anew as well. Changes nothing but blanks, line ends
//! and semicolons, so the text means what it meant before, faults included.

mod printer;
mod spacing;

use crate::finding::Findings;
use crate::source::{FileId, Sources};
use crate::syntax;

/// A source in its canonical form.
///
/// # Errors
/// What was found where a text, a bracket or a block is left open, the source is too large, or a merge
/// is not finished.
pub fn format(sources: &Sources, file: FileId) -> Result<String, Findings> {
    let text = sources.text(file);
    if text.lines().any(is_conflict_mark) {
        // What two people wrote is not one text yet.
        let findings = syntax::parse(sources, file).findings;
        if findings.has_errors() {
            return Err(findings);
        }
    }
    let cut = syntax::cut(sources, file);
    if cut.findings.has_errors() {
        return Err(cut.findings);
    }
    Ok(printer::print(text, &cut.value))
}

/// True for a line with which git marks a merge that it left to people.
fn is_conflict_mark(line: &str) -> bool {
    let marks = ["<<<<<<<", "=======", ">>>>>>>"];
    marks.iter().any(|mark| line.starts_with(mark))
}
