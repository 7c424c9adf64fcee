//! Revisions are not in order.

use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;

finding_pages! {
    /// Revisions do not stand newest first, or a mark is used twice.
    ///
    /// The first one stands on every page of the plan, and a reader compares marks.
    ///
    /// ```wright,bad
    /// plan "Box" {
    ///     revision "A" on 2026-01-15 "First issue"
    ///     revision "B" on 2026-03-01 "Shelf raised by 20 mm"
    /// }
    /// ```
    /// ```wright,good
    /// plan "Box" {
    ///     revision "B" on 2026-03-01 "Shelf raised by 20 mm"
    ///     revision "A" on 2026-01-15 "First issue"
    /// }
    /// ```
    ///
    /// Source: the language itself; common practice, no source.
    R006 REVISIONS_OUT_OF_ORDER Warning "revisions out of order" "readers compare marks, not dates";
}

/// Compares each revision with the next.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    let revisions = &facts.model.head.revisions;
    for (newer, older) in revisions.iter().zip(revisions.iter().skip(1)) {
        let message = if newer.mark == older.mark {
            format!("mark {} is used twice", older.mark)
        } else if newer.date < older.date {
            format!(
                "revision {} is newer than {} above it",
                older.mark, newer.mark
            )
        } else {
            continue;
        };
        findings.push(
            Finding::new(&REVISIONS_OUT_OF_ORDER, older.span, message)
                .related(newer.span, "this one stands above it")
                .remedy("write the newest first, each with a mark of its own"),
        );
    }
}
