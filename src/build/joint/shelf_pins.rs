//! Shelf pins: holes in the upright below the shelf, unless the author has drilled them already.

use super::bench::{Bench, moved};
use super::holes::Bore;
use crate::build::findings::JOINT_LIE;
use crate::build::piece::Piece;
use crate::build::types::{Fastener, HardwareKind};
use crate::finding::Finding;
use crate::geometry::{Axis, Direction, PlanePoint, Side};
use crate::model::{FeatureShape, HolePurpose};
use crate::units::Length;

/// Of the front and the rear pin from the shelf's edges (ref: fasteners#M25 [V]: front row 37 mm
/// from the front edge).
const USUAL_INSET: Length = Length::from_mm(37);
/// Holes this near to where a pin goes are its holes.
const SAME_PLACE: Length = Length::from_nm(500_000);

/// Sets the pins and drills for those that have no hole.
pub(super) fn make(bench: &mut Bench<'_, '_>) {
    let Some((id, pin)) = bench.item(HardwareKind::ShelfPin) else {
        return;
    };
    let towards = bench.contact.direction;
    if towards.axis() == Axis::High {
        let message = "a shelf lies on pins between two uprights, and these lie on each other";
        bench
            .findings
            .push(Finding::new(&JOINT_LIE, bench.join.kind_span, message));
        return;
    }
    let along = if towards.axis() == Axis::Across {
        Axis::Deep
    } else {
        Axis::Across
    };
    let Some(stretch) = bench.contact.area.get(along.index()).copied() else {
        return;
    };
    let (diameter, length) = (
        pin.diameter.unwrap_or_default(),
        pin.length.unwrap_or_default(),
    );
    let inset = bench
        .join
        .inset
        .map_or_else(|| USUAL_INSET.min(stretch.size() / 4), |(inset, _)| inset);
    let count = bench.join.count.map_or(2, |(count, _)| count.max(2));
    let between = stretch.size() - inset * 2;
    let below = bench.part.placement.body[2].low - diameter.half();
    let side_face = face_of(bench.to, towards.opposite());
    let points: Vec<[Length; 3]> = (0..count)
        .map(|number| {
            let mut point = bench.contact.area.map(|area| area.middle());
            for (axis, at) in [
                (towards.axis(), side_face),
                (along, stretch.low + inset + between * number / (count - 1)),
                (Axis::High, below),
            ] {
                if let Some(slot) = point.get_mut(axis.index()) {
                    *slot = at;
                }
            }
            point
        })
        .collect();
    // Half of a pin is in the wood.
    let depth = length.half();
    bench.fasteners.extend(points.iter().map(|point| Fastener {
        hardware: id,
        from: moved(*point, towards.opposite(), length - depth),
        to: moved(*point, towards, depth),
        driven: towards,
    }));
    let missing: Vec<[Length; 3]> = points
        .into_iter()
        .filter(|point| !is_drilled(bench.to, towards.opposite(), point))
        .collect();
    if !missing.is_empty() {
        let bore = Bore::plain(HolePurpose::Pin, diameter, Some(depth));
        let row = bore.row(bench.to, towards.opposite(), &missing);
        bench.to.cut(row, bench.join.span);
    }
}

/// Where the face of a piece that looks towards `facing` is.
fn face_of(piece: &Piece<'_>, facing: Direction) -> Length {
    let stretch = piece.placement.body.get(facing.axis().index());
    let stretch = stretch.copied().unwrap_or_default();
    if facing.is_positive() {
        stretch.high
    } else {
        stretch.low
    }
}

/// Whether a piece has a hole at a point of the world on its face that looks towards `facing`.
fn is_drilled(piece: &Piece<'_>, facing: Direction, point: &[Length; 3]) -> bool {
    let side: Side = piece.side(facing);
    let wanted = super::bench::on_plane(side, std::iter::once(piece.point_in_part(point)));
    let near = |a: &PlanePoint| {
        wanted
            .iter()
            .all(|b| (a.x - b.x).abs() <= SAME_PLACE && (a.y - b.y).abs() <= SAME_PLACE)
    };
    piece.features.iter().any(|feature| {
        matches!(&feature.shape, FeatureShape::Holes(holes)
            if holes.side == side && holes.positions.iter().any(near))
    })
}
