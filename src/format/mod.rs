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
/// What was found where a text, a bracket or a block is left open, or the source is too large.
pub fn format(sources: &Sources, file: FileId) -> Result<String, Findings> {
    let cut = syntax::cut(sources, file);
    if cut.findings.has_errors() {
        return Err(cut.findings);
    }
    Ok(printer::print(sources.text(file), &cut.value))
}
