//! A pocket screw does not suit the thickness of its part.

use super::screwed::screwed;
use crate::build::JointKind;
use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;
use crate::units::Length;
use crate::wood::pocket_screw_lengths;

finding_pages! {
    /// A pocket screw is shorter or longer than is usual for the part whose slanted hole it sits in.
    ///
    /// The drill guide and its stop are set by that thickness: a longer screw comes out of the other part's
    /// face, a shorter one hardly reaches it.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 600 mm; width 200 mm }
    /// hardware pocket is pocket_screw { diameter 4 mm; length 25 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 100 mm }
    /// join low to left by pocket_screws using pocket { from bottom }
    /// step "Join" { add left, low; say "Join them." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 600 mm; width 200 mm }
    /// hardware pocket is pocket_screw { diameter 4 mm; length 32 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 100 mm }
    /// join low to left by pocket_screws using pocket { from bottom }
    /// step "Join" { add left, low; say "Join them." }
    /// ```
    ///
    /// Source: common practice, no source (ref: fasteners, "Pocket screws by stock thickness" [P]).
    H006 POCKET_SCREW_LENGTH Warning "a pocket screw of an unusual length" "the stop of the drill guide is set by the thickness";
}

/// Screws are sold in steps; this much more or less is the same length.
const STEP: Length = Length::from_mm(2);

/// Looks at every joint by pocket screws.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for screw in screwed(facts.build) {
        if screw.joint.kind != JointKind::PocketScrews {
            continue;
        }
        let (Some(length), Some(part)) = (screw.item.length, facts.build.part_of(screw.joint.part))
        else {
            continue;
        };
        let [_, _, thickness] = part.size();
        let (low, high) = pocket_screw_lengths(thickness);
        if length + STEP >= low && length <= high + STEP {
            continue;
        }
        let usual = if low == high {
            low.in_both()
        } else {
            format!("{} to {}", low.in_both(), high.in_both())
        };
        let message = format!(
            "`{}` is {} long, and {usual} is usual for a part {} thick",
            screw.item.name,
            length.in_both(),
            thickness.in_both()
        );
        findings.push(
            Finding::new(&POCKET_SCREW_LENGTH, screw.joint.span, message)
                .figure("length", length)
                .figure("thickness", thickness)
                .related(screw.item.span, "the screw is described here")
                .remedy(format!("use a screw of {usual}")),
        );
    }
}
