//! Two parts touch too little to be joined.

use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;
use crate::units::Length;

finding_pages! {
    /// A glued joint's parts touch over less than 1 cm² (0.16 sq in), or in a strip narrower than 5 mm.
    ///
    /// Most often one part is a little beside its place. Fasteners that do not fit have a finding of their own.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place second = side { length up; width back; left at left.right; front at left.back - 3 mm; bottom at 0 mm }
    /// join second to left by glue
    /// step "Glue" { add left, second; say "Glue them." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place second = side { length up; width back; left at left.right; front at left.back - 60 mm; bottom at 0 mm }
    /// join second to left by glue
    /// step "Glue" { add left, second; say "Glue them." }
    /// ```
    ///
    /// Source: common practice, no source.
    F006 CONTACT_TOO_SMALL Warning "parts that touch too little" "a line of glue as thin as that breaks at the first knock";
}

/// Less breadth than this holds nothing (common practice, no source).
const NARROW: Length = Length::from_mm(5);
/// Less area than this, likewise: 10 mm by 10 mm.
const SMALL: Length = Length::from_mm(10);

/// Looks at every glued joint.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for joint in facts.build.joints.iter().filter(|joint| joint.glued) {
        let axis = joint.contact.direction.axis().index();
        let sizes = joint.contact.area.iter().enumerate();
        let breadth = sizes
            .filter(|(index, _)| *index != axis)
            .map(|(_, reach)| reach.size())
            .min()
            .unwrap_or_default();
        let area = joint.glue_area;
        if breadth >= NARROW && area >= SMALL * SMALL {
            continue;
        }
        let names = [joint.part, joint.to].map(|id| {
            let piece = facts.build.piece(id);
            piece.map_or("", |piece| piece.name.as_str())
        });
        let [part, to] = names;
        let message = format!(
            "`{part}` and `{to}` touch in a strip {} wide",
            breadth.in_both()
        );
        findings.push(
            Finding::new(&CONTACT_TOO_SMALL, joint.span, message)
                .figure("breadth", breadth)
                .figure("at least", NARROW)
                .remedy("move one along until they lie on each other"),
        );
    }
}
