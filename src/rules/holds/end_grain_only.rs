//! Two parts are held by screws in end grain and nothing else.

use std::collections::BTreeSet;

use super::screwed::screwed;
use crate::build::{JointKind, PlacedId};
use crate::finding::{Finding, Findings, finding_pages};
use crate::geometry::PartAxis;
use crate::rules::Facts;

finding_pages! {
    /// Two parts of solid wood are held together by screws or nails that bite in end grain, and by nothing else.
    ///
    /// Threads cut the fibres that run along the screw; it holds three quarters at best of what it would in the
    /// side of the wood, and lets go without warning. Nails hold nothing there.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material oak is board { section 20 mm by 80 mm; stock 2000 mm; species white_oak }
    /// part post from oak { length 400 mm }
    /// part rail from oak { length 300 mm }
    /// hardware screw is wood_screw { diameter 4 mm; length 70 mm }
    /// place left = post { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = rail { length right; width back; left at left.right; front at 0 mm; bottom at 100 mm }
    /// join low to left by screws using screw { count 2; inset 25 mm; through left }
    /// step "Join" { add left, low; say "Join them." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material oak is board { section 20 mm by 80 mm; stock 2000 mm; species white_oak }
    /// part post from oak { length 400 mm }
    /// part rail from oak { length 300 mm }
    /// hardware peg is dowel { diameter 8 mm; length 30 mm }
    /// place left = post { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = rail { length right; width back; left at left.right; front at 0 mm; bottom at 100 mm }
    /// join low to left by dowels using peg { count 2; inset 20 mm; glue }
    /// step "Join" { add left, low; say "Join them." }
    /// ```
    ///
    /// Source: NDS 2018: end-grain factor 0.75, not allowed for wood screws and nails (ref: fasteners#M24 [V], last clause [M]).
    H011 END_GRAIN_ONLY Warning "held by end grain only" "it lets go without warning";
}

/// Looks at joints by screws and nails whose parts no other joint holds.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    let pair = |a: PlacedId, b: PlacedId| (a.min(b), a.max(b));
    let held: BTreeSet<(PlacedId, PlacedId)> = facts
        .build
        .joints
        .iter()
        .filter(|joint| {
            !matches!(joint.kind, JointKind::Screws | JointKind::Nails) && !joint.kind.moves()
        })
        .map(|joint| pair(joint.part, joint.to))
        .collect();
    for screw in screwed(facts.build) {
        let joint = screw.joint;
        if joint.kind == JointKind::PocketScrews || held.contains(&pair(joint.part, joint.to)) {
            continue;
        }
        let [_, second] = screw.pieces;
        let (Some(piece), Some(part)) = (facts.build.piece(second), facts.build.part_of(second))
        else {
            continue;
        };
        let solid = facts
            .build
            .material(part.material)
            .is_some_and(|material| material.is_solid());
        let grain = if part.grain_along_length {
            PartAxis::Length
        } else {
            PartAxis::Width
        };
        let driven = piece.orientation.part_axis(joint.contact.direction.axis());
        if !solid || driven != grain {
            continue;
        }
        let message = format!(
            "`{}` bites in the end grain of `{}`",
            screw.item.name, piece.name
        );
        findings.push(Finding::new(&END_GRAIN_ONLY, joint.span, message).remedy(
            "join by dowels, loose_tenons, pocket_screws or mortise_and_tenon, or add one of them",
        ));
    }
}
