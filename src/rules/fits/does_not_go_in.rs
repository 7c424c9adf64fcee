//! A thing that must go in does not.

use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;

finding_pages! {
    /// A thing named by `hold` has no room between the faces it is to go between.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 600 mm; width 200 mm }
    /// place low = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place left = side { length up; width back; left at low.left; front at 0 mm; bottom at low.top }
    /// place right = side { length up; width back; right at low.right; front at 0 mm; bottom at low.top }
    /// join left, right to low by glue
    /// hold "Tray" 600 mm by 180 mm by 60 mm between left.right and right.left, low.front and low.back, low.top and left.top
    /// step "Glue" { add low, left, right; say "Glue them." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 600 mm; width 200 mm }
    /// place low = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place left = side { length up; width back; left at low.left; front at 0 mm; bottom at low.top }
    /// place right = side { length up; width back; right at low.right; front at 0 mm; bottom at low.top }
    /// join left, right to low by glue
    /// hold "Tray" 560 mm by 180 mm by 60 mm between left.right and right.left, low.front and low.back, low.top and left.top
    /// step "Glue" { add low, left, right; say "Glue them." }
    /// ```
    ///
    /// Source: the plan itself.
    F005 DOES_NOT_GO_IN Error "a thing that must go in does not" "the piece is built for it";
}

/// Looks at every thing on each of its three ways.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for held in &facts.model.holds {
        for (axis, size, room) in held.ways {
            let needed = size + held.clear;
            if room >= needed {
                continue;
            }
            let message = format!(
                "\u{201c}{}\u{201d} does not go in {}: {} are lacking",
                held.title,
                axis.way(),
                (needed - room).in_both()
            );
            let mut finding = Finding::new(&DOES_NOT_GO_IN, held.span, message)
                .figure("its size", size)
                .figure("room", room);
            if held.clear.is_positive() {
                finding = finding.figure("room left over", held.clear);
            }
            findings.push(finding);
        }
    }
}
