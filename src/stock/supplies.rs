//! Glue, finish and abrasives: how many packs, from what they cover.

use super::types::SupplyLine;
use crate::build::{Build, Joint, PlacedId, Supply, SupplyId, SupplyKind};
use crate::model::PartId;
use crate::solid::Solids;

/// More is bought than the area asks for: some stays in the pot, on brushes and rags. Common
/// practice, no source.
const WASTE: f64 = 1.1;

/// What to buy of each supply.
pub(super) fn lines(build: &Build, solids: &Solids) -> Vec<SupplyLine> {
    let supplies = build.supplies.iter().enumerate();
    supplies
        .map(|(index, supply)| line(build, solids, SupplyId(index), supply))
        .collect()
}

fn line(build: &Build, solids: &Solids, id: SupplyId, supply: &Supply) -> SupplyLine {
    let once = match supply.kind {
        SupplyKind::Glue => glued_m2(build, &supply.on),
        SupplyKind::Oil | SupplyKind::Varnish | SupplyKind::Paint | SupplyKind::Abrasive => {
            surface_m2(build, solids, &supply.on)
        }
    };
    let coats = f64::from(i32::try_from(supply.coats).unwrap_or(i32::MAX));
    let area_m2 = once * coats;
    let packs = whole(area_m2 * WASTE / supply.covers_m2);
    SupplyLine {
        supply: id,
        area_m2,
        packs,
        each: supply.price.clone(),
        total: supply.price.as_ref().map(|price| price.times(packs)),
    }
}

/// The next whole number.
fn whole(packs: f64) -> i64 {
    #[expect(
        clippy::cast_possible_truncation,
        reason = "float to int casts saturate, and nobody buys so many"
    )]
    let packs = packs.ceil() as i64;
    packs.clamp(0, 1_000_000)
}

/// Faces of joints and layers; with pieces named, those of their joints and of their layers.
fn glued_m2(build: &Build, on: &[PlacedId]) -> f64 {
    let joint = |joint: &Joint| on.is_empty() || on.contains(&joint.part) || on.contains(&joint.to);
    let layered = |part: PartId| {
        let is_one = |id: &PlacedId| build.piece(*id).is_some_and(|piece| piece.part == part);
        on.is_empty() || on.iter().any(is_one)
    };
    (build.glued_joints(joint) + build.glued_layers(layered)).m2()
}

/// The surface of the pieces named, or of all.
fn surface_m2(build: &Build, solids: &Solids, on: &[PlacedId]) -> f64 {
    let pieces = build.placed.iter().enumerate();
    pieces
        .filter(|(index, _)| on.is_empty() || on.contains(&PlacedId(*index)))
        .filter_map(|(_, piece)| Some(solids.part(piece.part)?.measures.surface_m2()))
        .sum()
}
