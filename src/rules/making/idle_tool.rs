//! A tool is named for work that the build has none of.

use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;

finding_pages! {
    /// A step names a bit of a size that no hole, channel or edge has, or a router, a jigsaw, a countersink
    /// or a guide for pocket holes in a build that needs none.
    ///
    /// The reader buys or borrows it, and looks for the work that was forgotten.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm; hole on face diameter 10 mm at 50 mm from foot, 50 mm from near }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Stand" { add left; tools "Drill bit 12 mm"; say "Drill and stand it up." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm; hole on face diameter 10 mm at 50 mm from foot, 50 mm from near }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Stand" { add left; tools "Drill bit 10 mm"; say "Drill and stand it up." }
    /// ```
    ///
    /// Source: the language itself.
    C010 IDLE_TOOL Note "a tool that nothing uses" "it is looked for in vain, or a hole was forgotten";
}

/// Looks at the tools that steps name.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for tool in &facts.cautions.idle_tools {
        let message = format!("nothing in the build takes \"{}\"", tool.value);
        findings.push(
            Finding::new(&IDLE_TOOL, tool.span, message)
                .remedy("leave it out, or describe the cut it is for"),
        );
    }
}
