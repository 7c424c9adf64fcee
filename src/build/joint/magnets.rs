//! Magnets: a pocket in each piece, facing the other, for a disc that pulls its pair.

use super::bench::{Bench, moved};
use super::holes::Bore;
use crate::build::types::{Fastener, HardwareKind};
use crate::geometry::Direction;
use crate::model::HolePurpose;
use crate::units::Length;

/// Play of a disc in its pocket and glue under it (ref: fasteners#M11 [P]: diameter + 0.1 to
/// 0.2 mm, depth = thickness + 0.2 to 0.5 mm).
const PLAY: Length = Length::from_nm(200_000);
const UNDER: Length = Length::from_nm(300_000);

/// Drills both pieces and sets a magnet in each.
pub(super) fn make(bench: &mut Bench<'_, '_>) {
    let Some((id, magnet)) = bench.item(HardwareKind::Magnet) else {
        return;
    };
    let (diameter, thickness) = (
        magnet.diameter.unwrap_or_default(),
        magnet.thickness.unwrap_or_default(),
    );
    let Some(points) = bench.points_along(diameter + PLAY) else {
        return;
    };
    let towards = bench.contact.direction;
    let bore = Bore::plain(
        HolePurpose::Magnet,
        diameter + PLAY,
        Some(thickness + UNDER),
    );
    let span = bench.join.span;
    let pieces: [(_, Direction, Length); 2] = [
        (&mut *bench.part, towards, Length::ZERO),
        (&mut *bench.to, towards.opposite(), bench.contact.gap),
    ];
    for (piece, facing, beyond) in pieces {
        for point in &points {
            let mouth = moved(*point, towards, beyond);
            bench.fasteners.push(Fastener {
                hardware: id,
                from: mouth,
                to: moved(mouth, facing.opposite(), thickness),
                driven: facing.opposite(),
            });
        }
        let row = bore.row(piece, facing, &points);
        piece.cut(row, span);
    }
}
