//! Mass, centre of mass, and what is glued and finished.

use crate::build::{Build, Part, PlacedPart};
use crate::geometry::Axis;
use crate::solid::Solids;

/// Kilograms of each placed piece; none where its density is not known.
pub(super) fn kilograms(build: &Build, solids: &Solids) -> Vec<Option<f64>> {
    let of = |piece: &PlacedPart| {
        let density = build.material(build.part(piece.part)?.material)?.density?;
        Some(solids.part(piece.part)?.measures.volume_m3() * density)
    };
    build.placed.iter().map(of).collect()
}

/// The centre of mass of the whole in the world.
pub(super) fn centre_mm(build: &Build, solids: &Solids, kg: &[Option<f64>]) -> Option<[f64; 3]> {
    let (mut sum, mut whole) = ([0.0; 3], 0.0);
    for (piece, kg) in build.placed.iter().zip(kg) {
        let (kg, part) = ((*kg)?, build.part(piece.part)?);
        let Some(centre) = solids.part(piece.part)?.measures.centre_mm() else {
            continue;
        };
        for (sum, at) in sum.iter_mut().zip(in_world(piece, part, centre)) {
            *sum += at * kg;
        }
        whole += kg;
    }
    (whole > 0.0).then(|| sum.map(|moment| moment / whole))
}

/// A point of a part's frame in the world, mm.
fn in_world(piece: &PlacedPart, part: &Part, point: [f64; 3]) -> [f64; 3] {
    Axis::ALL.map(|axis| {
        let along = piece.orientation.part_axis(axis);
        let way = piece.orientation.direction(along);
        let place = piece.place.get(axis.index()).copied().unwrap_or_default();
        let extent = part.extent.get(along.index()).copied().unwrap_or_default();
        let from = point.get(along.index()).copied().unwrap_or_default() - extent.low.mm();
        if way.is_positive() {
            place.low.mm() + from
        } else {
            place.high.mm() - from
        }
    })
}

/// What joints and layers have to be glued.
pub(super) fn glue_m2(build: &Build) -> f64 {
    (build.glued_joints(|_| true) + build.glued_layers(|_| true)).m2()
}

/// The surface of all placed pieces, holes and channels included.
pub(super) fn surface_m2(build: &Build, solids: &Solids) -> f64 {
    let pieces = build.placed.iter();
    pieces
        .filter_map(|piece| Some(solids.part(piece.part)?.measures.surface_m2()))
        .sum()
}
