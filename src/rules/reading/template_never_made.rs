//! A full-size template of a part that is never made.

use crate::finding::{Finding, Findings, finding_pages};
use crate::geometry::PartAxis;
use crate::rules::Facts;
use crate::units::Length;

finding_pages! {
    /// A full-size template is asked for of a part that is neither placed nor made as an extra: the build has
    /// no such piece, so nothing is printed.
    ///
    /// ```wright,bad
    /// plan "Board" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part board from ply { length 400 mm; width 300 mm }
    /// part jig from ply { length 200 mm; width 100 mm; round head.near radius 50 mm }
    /// place low = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// template jig
    /// step "Lay" { add low; say "Lay it down." }
    /// ```
    /// ```wright,good
    /// plan "Board" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part board from ply { length 400 mm; width 300 mm }
    /// part jig from ply { length 200 mm; width 100 mm; round head.near radius 50 mm; extra 1 }
    /// place low = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// template jig
    /// step "Lay" { add low; say "Lay it down." }
    /// ```
    ///
    /// Source: the language itself.
    R008 TEMPLATE_NEVER_MADE Warning "a template of a part that is never made" "it would be cut and go nowhere";
}

/// Looks at every template that is asked for.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for wish in &facts.model.templates {
        let Some(design) = facts.model.parts.get(wish.part.0) else {
            continue;
        };
        if facts
            .build
            .parts
            .iter()
            .any(|made| made.span == design.span)
        {
            continue;
        }
        let size = |axis: PartAxis| {
            let size: Option<&Length> = design.size.get(axis.index());
            size.copied().unwrap_or_default().in_both()
        };
        let message = format!(
            "`{}`, {} by {}, is neither placed nor made as an extra",
            design.name,
            size(PartAxis::Length),
            size(PartAxis::Width)
        );
        findings.push(
            Finding::new(&TEMPLATE_NEVER_MADE, wish.span, message)
                .related(design.span, "the part")
                .remedy("place it, say `extra 1` if it is made and not placed, or leave the template out"),
        );
    }
}
