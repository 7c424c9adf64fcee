//! The gap between two parts of which one moves is too small or too large.

use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;

finding_pages! {
    /// A gap that the author states by `clearance` is outside of its range.
    ///
    /// Too small, and a door or drawer binds as soon as the air is damp; too large, and it rattles,
    /// leans or shows a gap.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 400 mm; width 190 mm }
    /// place left = side { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place slide = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at left.top; removable }
    /// clearance slide.back to left.back from 1.5 mm to 3 mm
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
    /// Source: the plan itself; usual gaps of doors and drawers are common practice, no source
    /// (ref: layout-practice#P23, P24, P26 [P]).
    F004 CLEARANCE_OUT_OF_RANGE Error "a clearance outside its range" "what moves binds or rattles";
}

/// Looks at every gap the author states.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for clearance in &facts.model.clearances {
        let (gap, low, high) = (clearance.gap, clearance.low, clearance.high);
        if (low..=high).contains(&gap) {
            continue;
        }
        let (word, by) = if gap < low {
            ("small", low - gap)
        } else {
            ("large", gap - high)
        };
        let message = format!(
            "this clearance is {}, {} too {word}",
            gap.in_both(),
            by.in_both()
        );
        let mut finding = Finding::new(&CLEARANCE_OUT_OF_RANGE, clearance.span, message)
            .figure("clearance", gap)
            .figure("at least", low)
            .figure("at most", high);
        if let Some(because) = &clearance.because {
            finding = finding.because(because.clone());
        }
        findings.push(finding);
    }
}
