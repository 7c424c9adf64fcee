//! A mitre is held by glue alone.

use crate::build::JointKind;
use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;

finding_pages! {
    /// A mitre has neither spline nor keys.
    ///
    /// Both faces of a mitre are half end grain, which drinks the glue and lets go. A spline along the joint or
    /// keys across it give long grain to hold on.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material oak is board { section 20 mm by 80 mm; stock 2000 mm; species white_oak }
    /// part rail from oak { length 300 mm }
    ///
    /// place low = rail { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place right = rail { length back; width left; right at low.right; front at low.back; bottom at 0 mm }
    /// join right to low by mitre { glue }
    /// step "Glue" { add low, right; say "Glue them." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material oak is board { section 20 mm by 80 mm; stock 2000 mm; species white_oak }
    /// part rail from oak { length 300 mm }
    /// hardware key is spline { width 20 mm; thickness 4 mm }
    ///
    /// place low = rail { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place right = rail { length back; width left; right at low.right; front at low.back; bottom at 0 mm }
    /// join right to low by mitre using key { glue }
    /// step "Glue" { add low, right; say "Glue them." }
    /// ```
    ///
    /// Source: common practice, no source.
    H012 MITRE_WITHOUT_SPLINE Warning "a mitre without spline or key" "end grain and glue alone do not hold";
}

/// Looks at every mitre.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    let mitres = facts.build.joints.iter();
    for joint in mitres.filter(|joint| joint.kind == JointKind::Mitre) {
        if joint.fasteners.is_empty() {
            let message = "this mitre is held by glue alone";
            findings.push(
                Finding::new(&MITRE_WITHOUT_SPLINE, joint.span, message).remedy(
                    "write `by mitre using …` with a spline, `hardware … is spline { width …; thickness … }`",
                ),
            );
        }
    }
}
