//! A part comes in twice.

use std::collections::BTreeMap;

use crate::build::{GroupId, PlacedId};
use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;
use crate::source::Span;

finding_pages! {
    /// A placed part is added by two steps, or twice by one.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Stand it up" { add left; say "Stand it up." }
    /// step "Again" { add left; say "Stand it up again." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Stand it up" { add left; say "Stand it up." }
    /// step "Measure" { say "Measure it." }
    /// ```
    ///
    /// Source: the language itself.
    C001 STEP_ADDS_TWICE Error "a part is added twice" "the reader looks for a part that is built in already";
}

/// Follows the steps and remembers what is there.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    // A piece comes into its sub-assembly, and with that into the build.
    let mut added: BTreeMap<(PlacedId, Option<GroupId>), Span> = BTreeMap::new();
    for step in &facts.model.steps {
        for (piece, span) in &step.adds {
            let Some(first) = added.insert((*piece, step.group), *span) else {
                continue;
            };
            let name = facts.build.piece(*piece).map_or("", |piece| &piece.name);
            let message = format!("`{name}` is added a second time");
            findings.push(
                Finding::new(&STEP_ADDS_TWICE, *span, message)
                    .related(first, "added here first")
                    .remedy("add it in the step in which it comes in, and only there"),
            );
        }
    }
}
