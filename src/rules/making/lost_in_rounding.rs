//! Rounded inches take up a clearance.

use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;
use crate::units::Length;

finding_pages! {
    /// A reader who cuts by the printed inches may be half a step off in each of two parts, and that is more
    /// than a clearance may vary.
    ///
    /// Half of 1/32 in is 0.4 mm; two parts make 0.8 mm, and the plan's clearance is gone.
    ///
    /// ```wright,bad
    /// plan "Box" {
    ///     revision "A" on 2026-01-15
    ///     round inches to 1/16 in
    /// }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 400 mm; width 198 mm }
    /// place left = side { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place slide = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at left.top; removable }
    /// clearance slide.back to left.back from 1.5 mm to 2.5 mm
    /// step "Lay" { add left, slide; say "Lay it on." }
    /// ```
    /// ```wright,good
    /// plan "Box" {
    ///     revision "A" on 2026-01-15
    ///     round inches to 1/64 in
    /// }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 400 mm; width 198 mm }
    /// place left = side { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place slide = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at left.top; removable }
    /// clearance slide.back to left.back from 1.5 mm to 2.5 mm
    /// step "Lay" { add left, slide; say "Lay it on." }
    /// ```
    ///
    /// Source: arithmetic of the rounding (ref: units-and-paper, "Factors" [V]).
    C008 LOST_IN_ROUNDING Warning "a clearance lost in rounding" "who cuts by the inches gets another fit";
}

/// Ranges below this are told as finer than a shop can hold (ref: layout-practice#P20 [P]).
const HELD: Length = Length::from_nm(500_000);

/// Looks at every clearance.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    let denominator = facts.model.head.precision.inch_denominator;
    let step = Length::from_inch(1, denominator);
    for clearance in &facts.model.clearances {
        let range = clearance.high - clearance.low;
        // Half a step in each of two parts; finer than a shop can hold is a finding of its own.
        if step <= range || range < HELD {
            continue;
        }
        let message = format!(
            "inches are rounded to 1/{denominator} in, and this clearance may vary by {}",
            range.in_both()
        );
        findings.push(
            Finding::new(&LOST_IN_ROUNDING, clearance.span, message)
                .figure("rounding of two parts", step)
                .figure("range of the clearance", range)
                .remedy("round inches more finely in the plan block, or allow a wider range"),
        );
    }
}
