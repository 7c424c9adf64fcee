//! Pieces of solid wood are laminated with their grain across each other.

use crate::build::{JointKind, PlacedId};
use crate::finding::{Finding, Findings, finding_pages};
use crate::geometry::{Axis, PartAxis};
use crate::rules::Facts;
use crate::units::Length;

finding_pages! {
    /// Two pieces of solid wood are laminated, or glued edge to edge, and their grain runs across each other.
    ///
    /// Each wants to move where the other stands still: the glue line shears, or the wood cups. Plywood does
    /// so with plies as thin as veneer; boards do not bear it.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material oak is board { section 20 mm by 200 mm; stock 2000 mm; species white_oak }
    /// part board from oak { length 200 mm; width 200 mm }
    /// place low = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place high = board { length back; width left; left at 0 mm; front at 0 mm; bottom at low.top }
    /// join high to low by lamination
    /// step "Glue" { add low, high; say "Glue them." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material oak is board { section 20 mm by 200 mm; stock 2000 mm; species white_oak }
    /// part board from oak { length 200 mm; width 200 mm }
    /// place low = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place high = board { length right; width back; left at 0 mm; front at 0 mm; bottom at low.top }
    /// join high to low by lamination
    /// step "Glue" { add low, high; say "Glue them." }
    /// ```
    ///
    /// Source: common practice, no source; how much each moves: Wood Handbook ch. 13 (ref: formulas#F12 [V]).
    M003 GRAIN_AT_ODDS Warning "grain at odds in a glue-up" "the glue line shears, or the wood cups";
}

/// Over less than this, crossed grain is glued without harm (common practice, no source).
const HARMLESS: Length = Length::from_mm(75);

/// Looks at laminations and edge joints of solid wood.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    let kinds = [JointKind::Lamination, JointKind::TongueAndGroove];
    for joint in facts.build.joints.iter().filter(|joint| joint.glued) {
        if !kinds.contains(&joint.kind) {
            continue;
        }
        let (Some(own), Some(other)) = (grain(facts, joint.part), grain(facts, joint.to)) else {
            continue;
        };
        let across = joint.contact.direction.axis();
        if own == other || own == across || other == across {
            continue;
        }
        let sizes = joint.contact.area.iter().map(|reach| reach.size());
        let least = sizes.filter(|size| size.is_positive()).min();
        if least.is_none_or(|least| least < HARMLESS) {
            continue;
        }
        let message = format!(
            "the grain of one runs {}, of the other {}",
            own.way(),
            other.way()
        );
        findings.push(
            Finding::new(&GRAIN_AT_ODDS, joint.span, message)
                .remedy("turn one, so that the grain of both runs the same way"),
        );
    }
}

/// The axis of the world along which the grain of a piece of solid wood runs.
fn grain(facts: &Facts<'_>, id: PlacedId) -> Option<Axis> {
    let piece = facts.build.piece(id)?;
    let part = facts.build.part(piece.part)?;
    let material = facts.build.material(part.material)?;
    let along = if part.grain_along_length {
        PartAxis::Length
    } else {
        PartAxis::Width
    };
    material
        .is_solid()
        .then(|| piece.orientation.direction(along).axis())
}
