//! The canonical form of a source: the same plan, written one way.
//!
//! Takes a source, gives its text anew, or the findings where it cannot be read. Reads the cut of
//! the text, not the tree: comments and the author's own line ends are kept. Changes nothing but
//! blanks, line ends and semicolons, so the text means what it meant before.

mod printer;
mod spacing;

use crate::finding::Findings;
use crate::source::{FileId, Sources};
use crate::syntax;

/// A source in its canonical form.
///
/// # Errors
/// What was found where the source cannot be read.
pub fn format(sources: &Sources, file: FileId) -> Result<String, Findings> {
    let findings = syntax::parse(sources, file).findings;
    if findings.has_errors() {
        return Err(findings);
    }
    Ok(printer::print(
        sources.text(file),
        &syntax::cut(sources, file),
    ))
}
