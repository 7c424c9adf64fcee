//! Holes and round mortises in the sides the layers do not face: edges and ends.
//!
//! The walls on such a side are joined to one region, the mouths are taken out of it, and each
//! bore gets its walls and its floor. Small holes may stay marks on the surface instead.

use super::bore_measures;
use super::layers::{Cutter, Detail, discs, is_small, surface_level};
use super::measures::Measures;
use super::plane_faces::{faces_of, level_facing, region_of};
use super::stack::{Stack, level_of, other_axes, outward, place, place_vector};
use super::types::{BodyEdge, BodyFace, Joining, Shell, SurfaceId};
use super::walls::{Standing, corner};
use crate::build::Part;
use crate::geometry::region::Origin;
use crate::geometry::{Circle, Interval, PlanePoint, Region, Side};
use crate::model::{FeatureShape, Holes};
use crate::units::Length;

/// A stretch of a bore of one width.
pub(super) struct Bore {
    /// Its section, in the plane of the side.
    pub(super) section: Region,
    /// From which depth …
    pub(super) from: Length,
    /// … to which.
    pub(super) to: Length,
    /// What its floor lacks: a narrower bore that goes on; none where it leaves the part.
    pub(super) floor: Option<Region>,
}

/// Surfaces of bores are numbered from here.
const FIRST_SURFACE: u32 = 1 << 16;
/// The number of slanted walls.
pub(super) const SLANTED_SURFACE: u32 = 1 << 20;
/// Vertices of the mark that stands for a small hole.
const MARK_CHORDS: u32 = 16;

/// Drills every bore of a part into its shell.
pub(super) fn drill(
    part: &Part,
    stack: &Stack,
    detail: Detail,
    shell: &mut Shell,
    measures: &mut Measures,
) {
    let mut next = FIRST_SURFACE;
    for side in Side::ALL {
        if stack.caps(side) {
            continue;
        }
        let bores = bores_of(part, stack, side, detail);
        if bores.is_empty() {
            continue;
        }
        open_side(stack, side, &bores, &mut next, shell, measures);
        for bore in &bores {
            lay_bore(stack, side, bore, &mut next, shell, measures);
            bore_measures::put_right(part, stack, side, bore, measures);
        }
        for feature in &part.features {
            if let FeatureShape::Holes(holes) = &feature.shape
                && holes.side == side
            {
                bore_measures::put_cones_right(holes, stack, measures);
            }
        }
    }
}

fn bores_of(part: &Part, stack: &Stack, side: Side, detail: Detail) -> Vec<Bore> {
    let through = stack.reach(side.axis()).size();
    let mut bores = Vec::new();
    for feature in &part.features {
        match &feature.shape {
            FeatureShape::Holes(holes) => {
                if detail == Detail::FromAfar && is_small(holes) {
                    continue;
                }
                if holes.side == side {
                    hole_bores(holes, through, detail, &mut bores);
                } else if holes.side == side.opposite() && holes.depth.is_none() {
                    // The far mouth of a hole that goes through.
                    bores.push(Bore {
                        section: discs(&holes.positions, holes.diameter, detail),
                        from: Length::ZERO,
                        to: Length::ZERO,
                        floor: None,
                    });
                }
            }
            FeatureShape::Pocket(pocket) if pocket.side == side && pocket.round_ends => {
                bores.push(Bore {
                    section: Region::slot(pocket.first, pocket.second),
                    from: Length::ZERO,
                    to: pocket.depth.min(through),
                    floor: (pocket.depth < through).then_some(Region::EMPTY),
                });
            }
            FeatureShape::Pocket(_)
            | FeatureShape::Notch { .. }
            | FeatureShape::Outline(_)
            | FeatureShape::Arris { .. }
            | FeatureShape::PocketScrewHole(_)
            | FeatureShape::Slope(_)
            | FeatureShape::SplineSlot(_)
            | FeatureShape::Tenon(_) => {}
        }
    }
    bores
}

fn hole_bores(holes: &Holes, through: Length, detail: Detail, bores: &mut Vec<Bore>) {
    let section = discs(&holes.positions, holes.diameter, detail);
    let wide = match (holes.counterbore, holes.countersink) {
        (Some(counterbore), _) => Some(counterbore),
        // A cone in an edge is drawn as a step of half its depth.
        (None, Some(mouth)) => Some((mouth, (mouth - holes.diameter).half().half())),
        (None, None) => None,
    };
    let mut from = Length::ZERO;
    if let Some((diameter, depth)) = wide {
        from = depth.min(through);
        bores.push(Bore {
            section: discs(&holes.positions, diameter, detail),
            from: Length::ZERO,
            to: from,
            floor: Some(section.clone()),
        });
    }
    let to = holes.depth.unwrap_or(through).min(through);
    if to > from {
        bores.push(Bore {
            section,
            from,
            to,
            floor: (to < through).then_some(Region::EMPTY),
        });
    }
}

/// Takes the mouths of bores out of the walls on a side.
fn open_side(
    stack: &Stack,
    side: Side,
    bores: &[Bore],
    next: &mut u32,
    shell: &mut Shell,
    measures: &mut Measures,
) {
    let normal = outward(side);
    let level = level_of(&stack.extent, side);
    let plane = other_axes(side.axis());
    let mut walls: Vec<Region> = Vec::new();
    shell.faces.retain(|face| {
        let taken = level_facing(face, side) == Some(level);
        if taken {
            walls.push(region_of(face, plane));
        }
        !taken
    });
    let mouths: Vec<&Region> = bores
        .iter()
        .filter(|bore| bore.from == Length::ZERO)
        .map(|bore| &bore.section)
        .collect();
    let wall = Region::EMPTY.with(&walls.iter().collect::<Vec<_>>());
    let left = wall.without(&mouths);
    measures.surface_mm2 += left.area_mm2() - wall.area_mm2();
    for shape in &left.shapes {
        for edge in shape.rings.iter().flatten() {
            if edge.origin == Origin::Cut {
                let round = shell.circle(edge.circle, plane, level);
                shell.edges.push(BodyEdge {
                    joining: Joining::Sharp,
                    ends: [edge.from, edge.to].map(|at| place(plane, at, level)),
                    normals: [normal, place_vector(plane, edge.outward())],
                    round,
                    stands: None,
                });
            }
        }
    }
    *next += 1;
    let surface = SurfaceId(*next);
    shell
        .faces
        .extend(faces_of(&left, plane, level, normal, surface));
}

/// The walls and the floor of a bore.
fn lay_bore(
    stack: &Stack,
    side: Side,
    bore: &Bore,
    next: &mut u32,
    shell: &mut Shell,
    measures: &mut Measures,
) {
    let height = bore.to - bore.from;
    if !height.is_positive() {
        return;
    }
    let plane = other_axes(side.axis());
    let level = |depth: Length| side.inward(level_of(&stack.extent, side), depth);
    let (top, bottom) = (level(bore.from), level(bore.to));
    let inward = |edge: &crate::geometry::BoundaryEdge| {
        place_vector(plane, edge.outward().map(|part| -part))
    };
    for ring in bore.section.rings() {
        *next += 1;
        measures.add_prism(ring, plane, Interval::new(top, bottom), -1.0);
        measures.surface_mm2 += ring.iter().map(|edge| edge.length_mm()).sum::<f64>() * height.mm();
        let Some(mut before) = ring.last() else {
            continue;
        };
        let mut standing = Standing::default();
        for edge in ring {
            let normal = inward(edge);
            let [a, b] = [edge.from, edge.to].map(|at| place(plane, at, top));
            let [c, d] = [edge.from, edge.to].map(|at| place(plane, at, bottom));
            shell.faces.push(BodyFace {
                surface: SurfaceId(*next),
                normal,
                rings: vec![vec![a, b, d, c]],
            });
            if let Some(joining) = corner(before, edge) {
                let stands = standing.between(before, edge, plane, [top, bottom], shell);
                shell.edges.push(BodyEdge {
                    joining,
                    ends: [a, c],
                    normals: [inward(before), normal],
                    round: None,
                    stands,
                });
            }
            if bore.floor.is_some() {
                let round = shell.circle(edge.circle, plane, bottom);
                shell.edges.push(BodyEdge {
                    joining: Joining::Sharp,
                    ends: [c, d],
                    normals: [normal, outward(side)],
                    round,
                    stands: None,
                });
            }
            before = edge;
        }
    }
    if let Some(narrower) = &bore.floor {
        lay_floor(
            &bore.section.without(&[narrower]),
            side,
            bottom,
            next,
            shell,
        );
        measures.surface_mm2 += bore.section.without(&[narrower]).area_mm2();
    }
}

fn lay_floor(floor: &Region, side: Side, level: Length, next: &mut u32, shell: &mut Shell) {
    let plane = other_axes(side.axis());
    *next += 1;
    for shape in &floor.shapes {
        for edge in shape.rings.iter().skip(1).flatten() {
            let round = shell.circle(edge.circle, plane, level);
            shell.edges.push(BodyEdge {
                joining: Joining::Sharp,
                ends: [edge.from, edge.to].map(|at| place(plane, at, level)),
                normals: [outward(side), place_vector(plane, edge.outward())],
                round,
                stands: None,
            });
        }
    }
    shell.faces.extend(faces_of(
        floor,
        plane,
        level,
        outward(side),
        SurfaceId(*next),
    ));
}

/// Circles on the surface where small holes begin and where they come out.
pub(super) fn mark_small(part: &Part, cutters: &[Cutter], stack: &Stack, shell: &mut Shell) {
    for feature in &part.features {
        let FeatureShape::Holes(holes) = &feature.shape else {
            continue;
        };
        if !is_small(holes) {
            continue;
        }
        let mouth = holes
            .counterbore
            .map(|bore| bore.0)
            .or(holes.countersink)
            .unwrap_or(holes.diameter);
        for at in &holes.positions {
            mark(*at, mouth, holes.side, cutters, stack, shell);
            if holes.depth.is_none() {
                let side = holes.side.opposite();
                mark(*at, holes.diameter, side, cutters, stack, shell);
            }
        }
    }
}

fn mark(
    at: PlanePoint,
    diameter: Length,
    side: Side,
    cutters: &[Cutter],
    stack: &Stack,
    shell: &mut Shell,
) {
    let level = if stack.caps(side) {
        surface_level(cutters, stack, side, at)
    } else {
        level_of(&stack.extent, side)
    };
    let plane = other_axes(side.axis());
    let circle = Circle::of_diameter(at, diameter);
    let points = circle.turn_in(MARK_CHORDS);
    let round = shell.circle(Some(circle), plane, level);
    for (from, to) in points.iter().zip(points.iter().cycle().skip(1)) {
        shell.edges.push(BodyEdge {
            joining: Joining::Seam,
            ends: [*from, *to].map(|point| place(plane, point, level)),
            normals: [outward(side); 2],
            round,
            stands: None,
        });
    }
}
