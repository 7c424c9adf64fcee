//! Faces square to an axis of the part, as plane regions and back.
//!
//! Layers leave one wall in as many strips as there are layers. Where strips lie in one plane
//! they are joined, so that the boundary of every face is an edge of the wood.

use std::collections::BTreeMap;

use super::stack::{Stack, other_axes, place};
use super::types::{BodyFace, Point, Shell, SurfaceId};
use crate::geometry::{PartAxis, PlanePoint, Region, Side};
use crate::units::Length;

/// A face as a region of the plane of two axes.
pub(super) fn region_of(face: &BodyFace, plane: [PartAxis; 2]) -> Region {
    let rings: Vec<Region> = face
        .rings
        .iter()
        .map(|ring| flat_polygon(ring, plane))
        .collect();
    match rings.split_first() {
        Some((outer, [])) => outer.clone(),
        Some((outer, holes)) => outer.without(&holes.iter().collect::<Vec<_>>()),
        None => Region::EMPTY,
    }
}

fn flat_polygon(ring: &[Point], plane: [PartAxis; 2]) -> Region {
    let [first, second] = plane.map(PartAxis::index);
    let points: Vec<PlanePoint> = ring
        .iter()
        .filter_map(|point| {
            let (x, y) = (point.get(first)?, point.get(second)?);
            Some(PlanePoint::new(Length::from_nm(*x), Length::from_nm(*y)))
        })
        .collect();
    Region::polygon(&points)
}

/// The faces of a region at a level, all of one surface.
pub(super) fn faces_of(
    region: &Region,
    plane: [PartAxis; 2],
    level: Length,
    normal: [f64; 3],
    surface: SurfaceId,
) -> impl Iterator<Item = BodyFace> {
    region.shapes.iter().map(move |shape| BodyFace {
        surface,
        normal,
        rings: shape
            .rings
            .iter()
            .map(|ring| {
                ring.iter()
                    .map(|edge| place(plane, edge.from, level))
                    .collect()
            })
            .collect(),
    })
}

/// The level of a face that looks as `side` does, if it does.
pub(super) fn level_facing(face: &BodyFace, side: Side) -> Option<Length> {
    if face.normal != super::stack::outward(side) {
        return None;
    }
    let axis = side.axis().index();
    let mut levels = face
        .rings
        .iter()
        .flatten()
        .filter_map(|point| point.get(axis));
    let first = *levels.next()?;
    levels
        .all(|level| *level == first)
        .then_some(Length::from_nm(first))
}

/// Joins the strips of walls that lie in one plane square to an axis.
pub(super) fn join_strips(stack: &Stack, shell: &mut Shell) {
    for side in Side::ALL {
        if stack.caps(side) {
            continue;
        }
        let plane = other_axes(side.axis());
        let mut strips: BTreeMap<Length, Vec<BodyFace>> = BTreeMap::new();
        let faces = std::mem::take(&mut shell.faces);
        for face in faces {
            match level_facing(&face, side) {
                Some(level) => strips.entry(level).or_default().push(face),
                None => shell.faces.push(face),
            }
        }
        for (level, faces) in strips {
            let Some((first, [_, ..])) = faces.split_first() else {
                shell.faces.extend(faces);
                continue;
            };
            let regions: Vec<Region> = faces.iter().map(|face| region_of(face, plane)).collect();
            let joined = Region::EMPTY.with(&regions.iter().collect::<Vec<_>>());
            let (normal, surface) = (first.normal, first.surface);
            shell
                .faces
                .extend(faces_of(&joined, plane, level, normal, surface));
        }
    }
}
