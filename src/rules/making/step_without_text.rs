//! A step says nothing.

use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;

finding_pages! {
    /// A step has no `say`: a picture and no word of what to do.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Stand it up" { add left }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Stand it up" { add left; say "Stand it up." }
    /// ```
    ///
    /// Source: common practice, no source.
    C003 STEP_WITHOUT_TEXT Warning "a step without a word" "a stranger does not see in a picture what glue, what force, what order";
}

/// Looks for steps without text.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for step in facts.model.steps.iter().filter(|step| step.says.is_empty()) {
        let message = format!("the step \u{201c}{}\u{201d} says nothing", step.title);
        findings.push(
            Finding::new(&STEP_WITHOUT_TEXT, step.span, message)
                .remedy("add a line `say \"…\"` with what to do"),
        );
    }
}
