//! The plan does not say which revision it is.

use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;

finding_pages! {
    /// The plan block has no `revision` line.
    ///
    /// ```wright,bad
    /// plan "Box" { author "Example Workshop" }
    /// ```
    /// ```wright,good
    /// plan "Box" {
    ///     author "Example Workshop"
    ///     revision "A" on 2026-01-15 "First issue"
    /// }
    /// ```
    ///
    /// Source: ISO 7200 asks for a date of issue on every drawing (ref: units-and-paper, "ISO 7200
    /// title-block fields" [V]).
    R001 NO_REVISION Warning "no revision" "when an error is found, nobody can tell which print has it";
}

/// Looks at the plan block; a file without one has a finding of its own.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    let head = &facts.model.head;
    if head.revisions.is_empty() && !head.title.is_empty() {
        findings.push(
            Finding::new(
                &NO_REVISION,
                head.span,
                "this plan does not say which revision it is",
            )
            .remedy("add a line `revision \"A\" on 2026-01-15 \"First issue\"`"),
        );
    }
}
