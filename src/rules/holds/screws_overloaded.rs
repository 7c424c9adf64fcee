//! Screws alone carry more than they bear.

use super::screwed::{Screwed, screwed};
use crate::build::{JointKind, PlacedId};
use crate::finding::{Finding, Findings, finding_pages};
use crate::geometry::{Axis, PartAxis};
use crate::rules::Facts;
use crate::wood::fastening::{
    END_GRAIN_SHARE, LOAD_DIVISOR, Sideways, lateral_n, screw_withdrawal_n,
};
use crate::wood::stability::GRAVITY;

finding_pages! {
    /// A piece that carries a load is held by screws alone, and they bear less than the load.
    ///
    /// Screws across the load bear what the handbook gives at a slip of 0.4 mm, halved; screws that are pulled
    /// out bear a fifth of what they hold at failure, and three quarters of that in end grain.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm; species birch_plywood }
    /// part side from ply { length 300 mm; width 250 mm }
    /// part shelf from ply { length 500 mm; width 250 mm }
    /// hardware screw is wood_screw { diameter 3 mm; length 45 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place board = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 200 mm }
    /// place right = side { length up; width back; left at board.right; front at 0 mm; bottom at 0 mm }
    /// join board to left, right by screws using screw { count 1 }
    /// load board 60 kg sag 10 mm
    /// step "Screw" { add left, board, right; say "Screw them." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm; species birch_plywood }
    /// part side from ply { length 300 mm; width 250 mm }
    /// part shelf from ply { length 500 mm; width 250 mm }
    /// hardware screw is wood_screw { diameter 3 mm; length 45 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place board = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 200 mm }
    /// place right = side { length up; width back; left at board.right; front at 0 mm; bottom at 0 mm }
    /// join board to left, right by screws using screw { count 3 }
    /// load board 60 kg sag 10 mm
    /// step "Screw" { add left, board, right; say "Screw them." }
    /// ```
    ///
    /// Source: Wood Handbook FPL-GTR-282 ch. 8, eq. 8-10 and 8-13 with Table 8-4 (ref: formulas#F20, F25 [V]); the safety:
    /// common practice, no source [P]; end grain: NDS 2018 (ref: fasteners#M24 [V]).
    H015 SCREWS_OVERLOADED Warning "screws that bear too little" "they bend or are pulled out under the load";
}

/// A load across screws is at most this share of the load at a slip of 0.4 mm (common practice,
/// no source).
const OF_SLIP_LOAD: f64 = 0.5;

/// Looks at every load on a piece that only screws hold.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for load in &facts.model.loads {
        if lies_on_something(facts, load.piece) {
            continue;
        }
        let mut bears = Some(0.0);
        let mut any = false;
        for screw in screwed(facts.build) {
            if screw.joint.part != load.piece && screw.joint.to != load.piece {
                continue;
            }
            any = true;
            bears = bears
                .zip(bears_n(facts, &screw))
                .map(|(sum, more)| sum + more);
        }
        let newtons = load.kg * GRAVITY;
        let Some(bears) = bears.filter(|bears| any && *bears < newtons) else {
            continue;
        };
        let name = facts
            .build
            .piece(load.piece)
            .map_or("", |piece| &piece.name);
        let kg = bears / GRAVITY;
        let message = format!(
            "the screws of `{name}` bear {kg:.0} kg ({:.0} lb), and it carries {:.0} kg ({:.0} lb)",
            kg * POUNDS,
            load.kg,
            load.kg * POUNDS
        );
        findings
            .push(Finding::new(&SCREWS_OVERLOADED, load.span, message).remedy(
                "use more or thicker screws, or let the piece lie on a cleat or in a dado",
            ));
    }
}

/// Pounds in a kilogram.
const POUNDS: f64 = 2.204_622_6;

/// Whether a piece is carried by more than screws: by what is below it, or by another joint.
fn lies_on_something(facts: &Facts<'_>, id: PlacedId) -> bool {
    let by_screws = |kind| matches!(kind, JointKind::Screws | JointKind::PocketScrews);
    let joints = facts.build.joints.iter();
    let mut own = joints.filter(|joint| joint.part == id || joint.to == id);
    if own.any(|joint| !by_screws(joint.kind)) {
        return true;
    }
    let Some(piece) = facts.build.piece(id) else {
        return true;
    };
    let [x, y, z] = piece.body;
    facts.build.placed.iter().any(|other| {
        let [ox, oy, oz] = other.body;
        oz.high == z.low && x.overlap(ox).is_some() && y.overlap(oy).is_some()
    })
}

/// What the screws of a joint bear of a load that pulls down, N; none where the wood or the screw
/// is not known.
fn bears_n(facts: &Facts<'_>, screw: &Screwed<'_>) -> Option<f64> {
    let [_, second] = screw.pieces;
    let (piece, part) = (facts.build.piece(second)?, facts.build.part_of(second)?);
    let material = facts.build.material(part.material)?;
    let wood = material.wood()?;
    let diameter = screw.item.diameter?.mm();
    let count = f64::from(i32::try_from(screw.all.len()).ok()?);
    let axis = screw.joint.contact.direction.axis();
    let each = if axis == Axis::High {
        let thread = screw.bite.mm().max(0.0);
        screw_withdrawal_n(wood.specific_gravity(), diameter, thread) / LOAD_DIVISOR
    } else {
        lateral_n(
            Sideways::Screw,
            wood.tree(),
            wood.specific_gravity(),
            diameter,
        ) * OF_SLIP_LOAD
    };
    let grain = if part.grain_along_length {
        PartAxis::Length
    } else {
        PartAxis::Width
    };
    let in_end = material.is_solid() && piece.orientation.part_axis(axis) == grain;
    Some(each * count * if in_end { END_GRAIN_SHARE } else { 1.0 })
}
