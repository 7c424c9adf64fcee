//! A clearance is held more finely than a shop can.

use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;
use crate::units::Length;

finding_pages! {
    /// A clearance may be only so large that both parts would have to be cut to better than half a millimetre.
    ///
    /// Panels are cut to half a millimetre each: a range narrower than 0.5 mm asks for luck.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 400 mm; width 198 mm }
    /// place left = side { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place slide = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at left.top; removable }
    /// clearance slide.back to left.back from 1.9 mm to 2.1 mm
    /// step "Lay" { add left, slide; say "Lay it on." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 400 mm; width 198 mm }
    /// place left = side { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place slide = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at left.top; removable }
    /// clearance slide.back to left.back from 1.5 mm to 3 mm
    /// step "Lay" { add left, slide; say "Lay it on." }
    /// ```
    ///
    /// Source: common practice, no source (ref: layout-practice#P20, P21 [P]: panels and joints to half a millimetre).
    C007 FINER_THAN_A_SHOP Warning "finer than a shop can hold" "the next one comes out otherwise";
}

/// What a shop can hold (ref: layout-practice#P20 [P]).
const HELD: Length = Length::from_nm(500_000);

/// Looks at every clearance.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for clearance in &facts.model.clearances {
        let range = clearance.high - clearance.low;
        if range >= HELD {
            continue;
        }
        let message = format!("this clearance may vary by {} only", range.in_both());
        findings.push(
            Finding::new(&FINER_THAN_A_SHOP, clearance.span, message)
                .figure("from", clearance.low)
                .figure("to", clearance.high)
                .remedy("allow a wider range, or let a step plane one part to fit"),
        );
    }
}
