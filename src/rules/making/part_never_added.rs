//! A part never comes in.

use std::collections::BTreeSet;

use crate::build::InstanceId;
use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;

finding_pages! {
    /// A placed part is added by no step, or a sub-assembly that is put together in steps of its own
    /// never comes into the build.
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

/// Looks for pieces and sub-assemblies without a step.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    let mut told: BTreeSet<InstanceId> = BTreeSet::new();
    for piece in &facts.build.placed {
        let Some(level) = piece.comings.iter().position(|it| it.step.is_none()) else {
            continue;
        };
        // A sub-assembly that never comes in is told once, and not piece by piece.
        let whole = piece.comings.get(level + 1).and_then(|it| it.into);
        let whole = whole.and_then(|id| Some((id, facts.build.instances.get(id.0)?)));
        let (name, span) = match whole {
            Some((id, _)) if !told.insert(id) => continue,
            Some((_, it)) => (&it.name, it.span),
            None => (&piece.name, piece.span),
        };
        let message = format!("no step adds `{name}`");
        findings.push(
            Finding::new(&PART_NEVER_ADDED, span, message).remedy(format!(
                "write `add {name}` in the step in which it comes in"
            )),
        );
    }
}
