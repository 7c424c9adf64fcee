//! A drawer does not leave its runners the room they need.

use crate::build::JointKind;
use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;
use crate::units::Length;

finding_pages! {
    /// Beside a drawer there is less room than its runners are thick, or over 1 mm more.
    ///
    /// Steel runners give nothing: too wide a drawer does not go in, too narrow a one falls off them.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part drawer from ply { length 380 mm; width 120 mm }
    /// hardware runner is runner { length 350 mm; thickness 12.7 mm }
    /// place left = side { length back; width up; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place box = drawer { length back; width up; left at left.right + 10 mm; front at 0 mm; bottom at 20 mm; removable }
    /// join box to left by runners using runner
    /// step "Hang" { add left, box; say "Hang the drawer." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part drawer from ply { length 380 mm; width 120 mm }
    /// hardware runner is runner { length 350 mm; thickness 12.7 mm }
    /// place left = side { length back; width up; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place box = drawer { length back; width up; left at left.right + 13 mm; front at 0 mm; bottom at 20 mm; removable }
    /// join box to left by runners using runner
    /// step "Hang" { add left, box; say "Hang the drawer." }
    /// ```
    ///
    /// Source: common practice, no source (ref: layout-practice#P24 [P]: 12.7 mm a side, up to 1 mm more); the runner's own drawing wins.
    F010 RUNNER_WITHOUT_ROOM Error "a drawer that does not fit its runners" "it does not go in, or falls off";
}

/// So much more room a runner still bridges (ref: layout-practice#P24 [P]).
const MORE: Length = Length::from_mm(1);

/// Looks at every joint on runners.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    let joints = facts.build.joints.iter();
    for joint in joints.filter(|joint| joint.kind == JointKind::Runners) {
        let item = joint.fasteners.first();
        let item = item.and_then(|runner| facts.build.hardware.get(runner.hardware.0));
        let Some((item, needed)) = item.and_then(|item| Some((item, item.thickness?))) else {
            continue;
        };
        let gap = joint.contact.gap;
        if (needed..=needed + MORE).contains(&gap) {
            continue;
        }
        let word = if gap < needed { "less" } else { "more" };
        let message = format!(
            "there are {} beside the drawer, {word} than `{}` needs",
            gap.in_both(),
            item.name
        );
        findings.push(
            Finding::new(&RUNNER_WITHOUT_ROOM, joint.span, message)
                .figure("gap", gap)
                .figure("runner", needed)
                .figure("at most", needed + MORE)
                .remedy("size the drawer from the opening less two runners"),
        );
    }
}
