//! Solid wood is held fast across its movement.

use crate::behaviour::Movement;
use crate::build::{Joint, JointKind, PlacedId};
use crate::finding::{Finding, Findings, finding_pages};
use crate::geometry::{Axis, PartAxis};
use crate::rules::Facts;
use crate::units::Length;

finding_pages! {
    /// A piece of solid wood is glued or screwed across its grain to something that does not move with it, over
    /// such a length that it wants to change by more than 2 mm in a year.
    ///
    /// The damp of summer swells it, the dry air of winter shrinks it, and nothing holds that: it splits, or
    /// breaks what holds it. A panel, or wood whose grain runs the other way, does not move with it.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material oak is board { section 20 mm by 200 mm; stock 2000 mm; species white_oak }
    /// part board from oak { length 800 mm; width 200 mm }
    /// part batten from oak { length 200 mm; width 60 mm }
    /// place top = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 20 mm }
    /// place left = batten { length back; width right; left at 50 mm; front at 0 mm; top at top.bottom }
    /// join left to top by glue
    /// step "Glue" { add top, left; say "Glue it under the top." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material oak is board { section 20 mm by 200 mm; stock 2000 mm; species white_oak }
    /// part board from oak { length 800 mm; width 200 mm }
    /// part batten from oak { length 600 mm; width 60 mm }
    /// place top = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 20 mm }
    /// place left = batten { length right; width back; left at 50 mm; front at 0 mm; top at top.bottom }
    /// join left to top by glue
    /// step "Glue" { add top, left; say "Glue it under the top." }
    /// ```
    ///
    /// Source: Wood Handbook ch. 13, eq. 13-2, with Table 13-5; moisture by eq. 4-5 from the humidity of the plan (ref:
    /// formulas#F12, F16 [V]); the limit: common practice, no source.
    M001 FIXED_ACROSS_MOVEMENT Warning "solid wood fixed across its movement" "it splits in the first dry winter";
}

/// So much a joint gives (common practice, no source).
const GIVES_MM: f64 = 2.0;

/// Looks at every rigid joint of every moving piece.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    let mut moving: Vec<Option<&Movement>> = vec![None; facts.build.placed.len()];
    for movement in &facts.behaviour.movements {
        if let Some(slot) = moving.get_mut(movement.piece.0) {
            *slot = Some(movement);
        }
    }
    for joint in facts.build.joints.iter().filter(|joint| holds_fast(joint)) {
        for (piece, other) in [(joint.part, joint.to), (joint.to, joint.part)] {
            let Some(Some(movement)) = moving.get(piece.0) else {
                continue;
            };
            let axis = movement.along.axis();
            if moves_along(facts, other, axis) || axis == joint.contact.direction.axis() {
                continue;
            }
            let Some(held) = joint
                .contact
                .area
                .get(axis.index())
                .map(|reach| reach.size())
            else {
                continue;
            };
            let change = movement.change_mm * held.mm() / movement.size.mm();
            if change <= GIVES_MM {
                continue;
            }
            let names = [piece, other].map(|id| {
                let piece = facts.build.piece(id);
                piece.map_or("", |piece| piece.name.as_str())
            });
            let [own, fixed] = names;
            let message = format!(
                "`{own}` wants to move {} on `{fixed}`, and is held over {}",
                Length::from_mm_f64(change).in_both(),
                held.in_both()
            );
            findings.push(
                Finding::new(&FIXED_ACROSS_MOVEMENT, joint.span, message)
                    .figure("held across the grain", held)
                    .figure("movement in a year", Length::from_mm_f64(change))
                    .remedy("fix it at one place and let the rest slide: slotted holes, buttons, a dry groove"),
            );
            break;
        }
    }
}

/// Whether a joint lets nothing slide.
fn holds_fast(joint: &Joint) -> bool {
    // Boards laminated or joined along their edges have a finding of their own.
    if matches!(
        joint.kind,
        JointKind::Lamination | JointKind::TongueAndGroove
    ) {
        return false;
    }
    if joint.glued {
        return true;
    }
    matches!(
        joint.kind,
        JointKind::Screws | JointKind::PocketScrews | JointKind::Nails | JointKind::Bolts
    ) && joint.fasteners.len() > 1
}

/// Whether a piece moves along an axis of the world as solid wood does across its grain.
fn moves_along(facts: &Facts<'_>, id: PlacedId, axis: Axis) -> bool {
    let found = facts.build.piece(id).and_then(|piece| {
        let part = facts.build.part(piece.part)?;
        let material = facts.build.material(part.material)?;
        let grain = if part.grain_along_length {
            PartAxis::Length
        } else {
            PartAxis::Width
        };
        Some(material.is_solid() && piece.orientation.part_axis(axis) != grain)
    });
    found.unwrap_or(false)
}
