//! How much solid wood moves across its grain between the driest and the dampest of the year.

use super::Movement;
use crate::build::{Build, PlacedId};
use crate::geometry::PartAxis;
use crate::model::Sawn;
use crate::wood::{Wood, moisture};

/// A heated room's air over the year where the plan says nothing, percent (common practice, no
/// source).
const USUAL_HUMIDITY: (i64, i64) = (30, 60);
/// Room temperature, °C.
const ROOM: f64 = 20.0;

/// The movement of each placed piece of solid wood whose species has figures.
pub(super) fn movements(build: &Build) -> Vec<Movement> {
    let (dry, damp) = build.plan.humidity.unwrap_or(USUAL_HUMIDITY);
    let percent = |humidity: i64| f64::from(i32::try_from(humidity).unwrap_or(50));
    let moisture_percent = [dry, damp].map(|air| moisture::equilibrium_percent(ROOM, percent(air)));
    let [low, high] = moisture_percent;
    let pieces = build.placed.iter().enumerate();
    pieces
        .filter_map(|(index, piece)| {
            let part = build.part(piece.part)?;
            let material = build.material(part.material)?;
            let Wood::Solid(species) = material.wood()? else {
                return None;
            };
            if !material.is_solid() {
                return None;
            }
            let across = if part.grain_along_length {
                PartAxis::Width
            } else {
                PartAxis::Length
            };
            let size = part.extent.get(across.index())?.size();
            let along_rings = material.sawn == Sawn::Flat;
            Some(Movement {
                piece: PlacedId(index),
                along: piece.orientation.direction(across),
                size,
                change_mm: species.change_mm(size.mm(), along_rings, low, high)?,
                moisture_percent,
            })
        })
        .collect()
}
