//! A panel of solid wood has no room in its frame.

use crate::build::JointKind;
use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;
use crate::units::Length;

finding_pages! {
    /// A panel of solid wood lies in grooves across its grain, and swells in a year by more than the room the
    /// grooves leave it, or is glued into them.
    ///
    /// It pushes its frame apart, or splits. `play` in a groove is the room above the panel's edge.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material oak is board { section 20 mm by 200 mm; stock 2000 mm; species white_oak }
    /// part stile from oak { length 300 mm; width 60 mm }
    /// part panel from oak { length 300 mm; width 180 mm }
    /// place left = stile { length up; width right; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place infill = panel { length up; width right; left at left.right; front at 0 mm; bottom at 0 mm }
    /// place right = stile { length up; width right; left at infill.right; front at 0 mm; bottom at 0 mm }
    /// join infill to left, right by groove { depth 6 mm }
    /// step "Fit" { add left, infill, right; say "Fit the panel." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material oak is board { section 20 mm by 200 mm; stock 2000 mm; species white_oak }
    /// part stile from oak { length 300 mm; width 60 mm }
    /// part panel from oak { length 300 mm; width 180 mm }
    /// place left = stile { length up; width right; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place infill = panel { length up; width right; left at left.right; front at 0 mm; bottom at 0 mm }
    /// place right = stile { length up; width right; left at infill.right; front at 0 mm; bottom at 0 mm }
    /// join infill to left, right by groove { depth 8 mm; play 3 mm }
    /// step "Fit" { add left, infill, right; say "Fit the panel." }
    /// ```
    ///
    /// Source: Wood Handbook ch. 13, eq. 13-2 (ref: formulas#F12 [V]); 2 to 3 mm in each groove is common practice, no
    /// source (ref: layout-practice#P42 [P]).
    M002 PANEL_WITHOUT_ROOM Warning "a panel without room" "it pushes its frame apart or splits";
}

/// So much a frame gives (common practice, no source).
const GIVES_MM: f64 = 0.5;

/// Looks at every moving piece that is let into others along its movement.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for movement in &facts.behaviour.movements {
        let axis = movement.along.axis();
        let joints = facts.build.joints.iter().filter(|joint| {
            joint.part == movement.piece
                && joint.contact.direction.axis() == axis
                && matches!(
                    joint.kind,
                    JointKind::Groove | JointKind::Dado | JointKind::Rabbet
                )
        });
        let joints: Vec<_> = joints.collect();
        let sides = |positive: bool| {
            joints
                .iter()
                .any(|joint| joint.contact.direction.is_positive() == positive)
        };
        let (Some(first), true) = (joints.first(), sides(true) && sides(false)) else {
            continue;
        };
        let glued = joints.iter().any(|joint| joint.glued);
        let room: Length = joints
            .iter()
            .map(|joint| joint.play)
            .fold(Length::ZERO, |a, b| a + b);
        let change = movement.change_mm;
        if change <= GIVES_MM || (!glued && room.mm() >= change) {
            continue;
        }
        let piece = facts.build.piece(movement.piece);
        let name = piece.map_or("", |piece| &piece.name);
        let moves = Length::from_mm_f64(change);
        let message = if glued {
            format!(
                "`{name}` is glued in, and moves {} in a year",
                moves.in_both()
            )
        } else {
            format!(
                "`{name}` moves {} in a year, and has {} of room",
                moves.in_both(),
                room.in_both()
            )
        };
        findings.push(
            Finding::new(&PANEL_WITHOUT_ROOM, first.span, message)
                .figure("movement in a year", moves)
                .figure("room in both grooves", room)
                .remedy("leave it dry in its grooves, with `play` in each"),
        );
    }
}
