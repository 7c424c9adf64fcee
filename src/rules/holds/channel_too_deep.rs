//! A dado, groove or rabbet takes more than half of the wood.

use crate::build::JointKind;
use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;
use crate::units::Length;

finding_pages! {
    /// A joint cuts a dado, groove or rabbet deeper than half of the part's thickness.
    ///
    /// A third is usual for dadoes, half at most for rabbets: what is left under the floor carries the part.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 600 mm; width 200 mm }
    ///
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 100 mm }
    /// join low to left by dado { depth 12 mm; glue }
    /// step "Join" { add left, low; say "Join them." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 600 mm; width 200 mm }
    ///
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 100 mm }
    /// join low to left by dado { depth 6 mm; glue }
    /// step "Join" { add left, low; say "Join them." }
    /// ```
    ///
    /// Source: common practice, no source (ref: layout-practice#P32, P33 [P]).
    H008 CHANNEL_TOO_DEEP Warning "a channel deeper than half" "the part breaks along its floor";
}

/// Looks at every joint that cuts a channel.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    let channels = [JointKind::Dado, JointKind::Groove, JointKind::Rabbet];
    for join in &facts.model.joins {
        let (true, Some((depth, span))) = (channels.contains(&join.kind), join.depth) else {
            continue;
        };
        let joints = facts.build.joints.iter();
        let thinnest = joints
            .filter(|joint| joint.span == join.span)
            .filter_map(|joint| {
                let axis = joint.contact.direction.axis().index();
                Some(facts.build.piece(joint.to)?.body.get(axis)?.size())
            })
            .min();
        // As deep as the part or deeper is an error of its own.
        let too_deep = |thickness: &Length| depth * 2 > *thickness && depth < *thickness;
        let Some(thickness) = thinnest.filter(too_deep) else {
            continue;
        };
        let message = format!(
            "this {} is {} deep in wood that is {} thick",
            join.kind.word(),
            depth.in_both(),
            thickness.in_both()
        );
        findings.push(
            Finding::new(&CHANNEL_TOO_DEEP, span, message)
                .figure("depth", depth)
                .figure("thickness", thickness)
                .remedy(format!("a third, {}, is usual", (thickness / 3).in_both())),
        );
    }
}
