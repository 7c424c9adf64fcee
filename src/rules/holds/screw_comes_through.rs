//! A screw's point comes out on the far side.

use super::screwed::screwed;
use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;
use crate::units::Length;

finding_pages! {
    /// A screw reaches through the second part, or leaves less than 3 mm (1/8 in) of wood there.
    ///
    /// The point comes out or bulges the face: hands and clothes are torn on it, and the surface
    /// is spoilt.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// hardware screw is wood_screw { diameter 4 mm; length 40 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place second = side { length up; width back; left at left.right; front at 0 mm; bottom at 0 mm }
    /// join second to left by screws using screw
    /// step "Screw" { add left, second; say "Screw them together." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// hardware screw is wood_screw { diameter 4 mm; length 30 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place second = side { length up; width back; left at left.right; front at 0 mm; bottom at 0 mm }
    /// join second to left by screws using screw
    /// step "Screw" { add left, second; say "Screw them together." }
    /// ```
    ///
    /// Source: common practice, no source (ref: fasteners#M18 [P]).
    H001 SCREW_COMES_THROUGH Error "a screw comes through" "its point tears hands and spoils the face";
}

/// Wood that must be left before the point (ref: fasteners#M18 [P]).
const LEFT: Length = Length::from_mm(3);

/// Measures every screw against the second part.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for screw in screwed(facts.build) {
        let left = screw.beyond - screw.bite;
        if left >= LEFT {
            continue;
        }
        let longest = screw.before + screw.beyond - LEFT;
        let message = if left.is_positive() {
            format!(
                "`{}` leaves only {} of wood",
                screw.item.name,
                left.in_both()
            )
        } else {
            format!("`{}` comes out by {}", screw.item.name, (-left).in_both())
        };
        findings.push(
            Finding::new(&SCREW_COMES_THROUGH, screw.joint.span, message)
                .figure("wood it passes first", screw.before)
                .figure("wood it bites in", screw.beyond)
                .figure("longest screw that fits", longest)
                .related(screw.item.span, "the screw is described here")
                .remedy(format!("use a screw of at most {}", longest.in_both())),
        );
    }
}
