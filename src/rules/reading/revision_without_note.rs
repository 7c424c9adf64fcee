//! A revision does not say what it changes.

use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;

finding_pages! {
    /// A plan has had more than one revision, and one of the later ones does not say what changed.
    ///
    /// Whoever owns the earlier print wants to know whether a part already cut still serves.
    ///
    /// ```wright,bad
    /// plan "Box" {
    ///     revision "B" on 2026-03-01
    ///     revision "A" on 2026-01-15 "First issue"
    /// }
    /// ```
    /// ```wright,good
    /// plan "Box" {
    ///     revision "B" on 2026-03-01 "Shelf raised by 20 mm"
    ///     revision "A" on 2026-01-15 "First issue"
    /// }
    /// ```
    ///
    /// Source: ISO 7200 keeps revisions with their date and index (ref: units-and-paper, "ISO 7200 title-block fields" [V]); the note is common practice, no source.
    R005 REVISION_WITHOUT_NOTE Warning "a revision without a note" "who owns the earlier print does not know what changed";
}

/// Looks at every revision but the first issue.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    let revisions = &facts.model.head.revisions;
    let Some(first) = revisions.iter().map(|revision| &revision.date).min() else {
        return;
    };
    for revision in revisions {
        if revision.date != *first && revision.note.is_empty() {
            let message = format!("revision {} does not say what it changes", revision.mark);
            findings.push(
                Finding::new(&REVISION_WITHOUT_NOTE, revision.span, message)
                    .remedy("write it behind the date: `\"Shelf raised by 20 mm\"`"),
            );
        }
    }
}
