//! A screw does not bite deep enough.

use super::screwed::screwed;
use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;

finding_pages! {
    /// A screw reaches less than six of its diameters into the second part.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 600 mm; width 200 mm }
    /// hardware screw is wood_screw { diameter 4 mm; length 30 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 100 mm }
    /// join low to left by screws using screw
    /// step "Screw" { add left, low; say "Screw them together." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 600 mm; width 200 mm }
    /// hardware screw is wood_screw { diameter 4 mm; length 45 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 100 mm }
    /// join low to left by screws using screw
    /// step "Screw" { add left, low; say "Screw them together." }
    /// ```
    ///
    /// Where the second part is too thin for six diameters, as when two boards are screwed face to
    /// face, the rule asks for two thirds of that part's thickness instead (common practice, no
    /// source).
    ///
    /// Source: NDS 2018 12.1.5.6, least penetration of a wood screw 6 D (ref: fasteners#M13 [V]);
    /// for screws in furniture it is a sound rule, not a code's demand.
    H002 SCREW_TOO_SHORT Warning "a screw bites too little" "it is pulled out when the piece is moved or loaded";
}

/// Measures every screw against six diameters.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for screw in screwed(facts.build) {
        let Some(diameter) = screw.item.diameter else {
            continue;
        };
        // A smooth nail needs more: ref: fasteners#M17 [M], EN 1995-1-1 8.3.1.
        let times = if screw.joint.kind == crate::build::JointKind::Nails {
            8
        } else {
            6
        };
        let needed = (diameter * times).min(screw.beyond * 2 / 3);
        if screw.bite >= needed
            || screw.joint.kind == crate::build::JointKind::PocketScrews
                && screw.bite >= diameter * 3
        {
            continue;
        }
        let name = &screw.item.name;
        let message = if screw.bite.is_positive() {
            format!(
                "`{name}` reaches only {} into the second part",
                screw.bite.in_both()
            )
        } else {
            format!("`{name}` does not reach the second part")
        };
        let least = screw.before + needed;
        findings.push(
            Finding::new(&SCREW_TOO_SHORT, screw.joint.span, message)
                .figure("reaches", screw.bite)
                .figure("needed", needed)
                .related(screw.item.span, "the screw is described here")
                .remedy(format!("use a screw of at least {}", least.in_both())),
        );
    }
}
