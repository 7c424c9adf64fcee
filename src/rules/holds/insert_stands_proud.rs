//! A threaded insert is longer than the wood it goes into.

use crate::build::{HardwareKind, JointKind};
use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;
use crate::units::Length;

finding_pages! {
    /// A threaded insert is longer than the part it is let into is thick, less a millimetre: it stands proud of
    /// the face, and the parts do not close.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// hardware bolt is bolt { diameter 6 mm; length 30 mm }
    /// hardware insert is insert { diameter 6 mm; length 20 mm; pilot 8 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = side { length up; width back; left at left.right; front at 0 mm; bottom at 0 mm }
    /// join low to left by bolts using bolt, insert { count 2; through low }
    /// step "Join" { add left, low; say "Join them." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// hardware bolt is bolt { diameter 6 mm; length 30 mm }
    /// hardware insert is insert { diameter 6 mm; length 13 mm; pilot 8 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = side { length up; width back; left at left.right; front at 0 mm; bottom at 0 mm }
    /// join low to left by bolts using bolt, insert { count 2; through low }
    /// step "Join" { add left, low; say "Join them." }
    /// ```
    ///
    /// Source: common practice, no source (ref: fasteners#M10 [P]: the hole is 1 to 2 mm deeper than the insert; follow
    /// the supplier's drawing).
    H009 INSERT_STANDS_PROUD Error "an insert proud of its face" "the joint does not close";
}

/// Room under an insert (ref: fasteners#M10 [P]).
const UNDER: Length = Length::from_mm(1);

/// Looks at every bolted joint.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    let bolted = facts.build.joints.iter();
    for joint in bolted.filter(|joint| joint.kind == JointKind::Bolts) {
        let insert = joint.fasteners.iter().find_map(|fastener| {
            let item = facts.build.hardware.get(fastener.hardware.0)?;
            (item.kind == HardwareKind::Insert).then_some((fastener, item))
        });
        let Some((fastener, item)) = insert else {
            continue;
        };
        let second = if fastener.driven == joint.contact.direction {
            joint.to
        } else {
            joint.part
        };
        let axis = joint.contact.direction.axis().index();
        let room = facts
            .build
            .piece(second)
            .and_then(|piece| piece.body.get(axis))
            .map_or(Length::ZERO, |reach| reach.size());
        let length = item.length.unwrap_or_default();
        if length + UNDER <= room {
            continue;
        }
        let message = format!(
            "`{}` is {} long, and the wood {} thick",
            item.name,
            length.in_both(),
            room.in_both()
        );
        findings.push(
            Finding::new(&INSERT_STANDS_PROUD, joint.span, message)
                .figure("length of the insert", length)
                .figure("thickness of the wood", room)
                .related(item.span, "the insert is described here")
                .remedy("use a shorter one, or bolt the other way round with `through`"),
        );
    }
}
