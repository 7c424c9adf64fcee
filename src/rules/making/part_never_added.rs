//! A part never comes in.

use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;

finding_pages! {
    /// A placed part is added by no step.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Nothing yet" { say "Fetch the part." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Stand it up" { add left; say "Stand it up." }
    /// ```
    ///
    /// Source: the language itself.
    C002 PART_NEVER_ADDED Error "a part is never added" "the reader is left with a part and no word about it";
}

/// Looks for pieces without a step.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for piece in facts
        .build
        .placed
        .iter()
        .filter(|piece| piece.step.is_none())
    {
        let message = format!("no step adds `{}`", piece.name);
        findings.push(
            Finding::new(&PART_NEVER_ADDED, piece.span, message).remedy(format!(
                "write `add {}` in the step in which it comes in",
                piece.name
            )),
        );
    }
}
