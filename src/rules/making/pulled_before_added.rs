//! A step draws away a part that it does not add.

use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;

finding_pages! {
    /// A step names by `pull` a part that comes in later, or came in before.
    ///
    /// What a step draws away from its place is what comes in in it. The reader looks in vain for the other.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place second = side { length up; width back; left at left.right; front at 0 mm; bottom at 0 mm }
    /// join second to left by glue
    /// step "First" { add left; pull second right; say "Stand it up." }
    /// step "Second" { add second; say "Glue it on." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place second = side { length up; width back; left at left.right; front at 0 mm; bottom at 0 mm }
    /// join second to left by glue
    /// step "First" { add left; say "Stand it up." }
    /// step "Second" { add second; pull second right; say "Glue it on." }
    /// ```
    ///
    /// Source: the language itself.
    C004 PULLED_BEFORE_ADDED Warning "a part drawn away in another step" "the reader looks for a part that is not there yet";
}

/// Looks at the pulls of every step.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for (index, step) in facts.build.steps.iter().enumerate() {
        for pull in &step.pulls {
            let Some(piece) = facts.build.piece(pull.piece) else {
                continue;
            };
            let comes = facts.build.comes(pull.piece, facts.build.shown_in(step));
            let Some(comes) = comes.filter(|comes| *comes != index) else {
                continue;
            };
            let when = if comes > index { "later" } else { "earlier" };
            let message = format!("`{}` comes in {when}, in step {}", piece.name, comes + 1);
            findings.push(
                Finding::new(&PULLED_BEFORE_ADDED, step.span, message)
                    .related(piece.span, "placed here")
                    .remedy("move the line into the step that adds it"),
            );
        }
    }
}
