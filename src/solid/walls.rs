//! From layers to faces and edges.
//!
//! Flats are what one layer has and its neighbour lacks; walls stand on the boundary of each
//! layer. Where two layers share a boundary the wall runs on and no edge is drawn.

use super::cone::{Cone, is_circle};
use super::layers::Layer;
use super::measures::Measures;
use super::stack::Stack;
use super::types::{BodyEdge, BodyFace, Joining, Shell, SurfaceId};
use crate::geometry::region::Origin;
use crate::geometry::{BoundaryEdge, Circle, PartAxis, Region, Ring, Shape};
use crate::units::Length;

/// Corners of a round wall that turn less than this are facets: the cosine of nine degrees.
pub(super) const FACET_COSINE: f64 = 0.987_7;

/// Builds the shell of a stack of layers.
pub(super) fn build(
    stack: &Stack,
    layers: &[Layer],
    cones: &[Cone],
    shell: &mut Shell,
    measures: &mut Measures,
) {
    let mut surfaces = Surfaces::default();
    let cones: Vec<&Cone> = cones.iter().filter(|cone| stands(cone, layers)).collect();
    for cone in &cones {
        cone.lay(stack, surfaces.next(), shell, measures);
    }
    for layer in layers {
        measures.add_region(&layer.region, stack.plane, layer.reach);
        for ring in layer.region.rings() {
            measures.surface_mm2 +=
                ring.iter().map(|edge| edge.length_mm()).sum::<f64>() * layer.reach.size().mm();
            let in_cone = cones.iter().any(|cone| {
                cone.reach.overlap(layer.reach).is_some() && is_circle(ring, cone.mouth)
            });
            if !in_cone {
                lay_walls(stack, ring, layer, &mut surfaces, shell);
            }
        }
    }
    let nothing = Region::EMPTY;
    for number in 0..=layers.len() {
        let below = number.checked_sub(1).and_then(|index| layers.get(index));
        let above = layers.get(number);
        let level = match (below, above) {
            (Some(below), _) => below.reach.high,
            (None, Some(above)) => above.reach.low,
            (None, None) => continue,
        };
        let [below, above] = [below, above].map(|layer| layer.map_or(&nothing, |l| &l.region));
        for (region, other, sign) in [(below, above, 1.0), (above, below, -1.0)] {
            let flat = region.without(&[other]);
            for shape in &flat.shapes {
                let replaced = cones
                    .iter()
                    .any(|cone| cone.bottom() == level && cone.replaces(shape));
                measures.surface_mm2 += shape_area(shape);
                if !replaced {
                    let bounded = !other.is_empty();
                    lay_flat(stack, shape, level, sign, bounded, &mut surfaces, shell);
                }
            }
        }
    }
}

/// Numbers for surfaces.
#[derive(Default)]
struct Surfaces(u32);

impl Surfaces {
    fn next(&mut self) -> SurfaceId {
        self.0 += 1;
        SurfaceId(self.0)
    }
}

fn shape_area(shape: &Shape) -> f64 {
    shape
        .rings
        .iter()
        .map(|ring| crate::geometry::region::ring_area_mm2(ring))
        .sum()
}

/// True where nothing else cuts into a cone.
fn stands(cone: &Cone, layers: &[Layer]) -> bool {
    let mut met = false;
    for layer in layers {
        if cone.reach.overlap(layer.reach).is_some() {
            met = true;
            if !layer.region.rings().any(|ring| is_circle(ring, cone.mouth)) {
                return false;
            }
        }
    }
    let (inside, outside) = if cone.opens_up {
        (cone.reach.low, cone.reach.high)
    } else {
        (cone.reach.high, cone.reach.low)
    };
    let layer_at = |level: Length, high: bool| {
        layers.iter().find(|layer| {
            if high {
                layer.reach.high == level
            } else {
                layer.reach.low == level
            }
        })
    };
    let bored = layer_at(inside, cone.opens_up)
        .is_some_and(|layer| layer.region.rings().any(|ring| is_circle(ring, cone.bore)));
    met && bored && layer_at(outside, cone.opens_up).is_some()
}

/// How two neighbours on a boundary meet; none where they run on straight.
pub(super) fn corner(before: &BoundaryEdge, after: &BoundaryEdge) -> Option<Joining> {
    let ([ax, ay], [bx, by]) = (before.outward(), after.outward());
    let cosine = ax * bx + ay * by;
    let round = before.circle.is_some() || after.circle.is_some();
    let same = before.circle.is_some() && before.circle == after.circle;
    if cosine > 1.0 - 1e-10 && !round {
        None
    } else if round && (same || cosine > FACET_COSINE) && cosine > 0.9 {
        Some(Joining::Smooth)
    } else {
        Some(Joining::Sharp)
    }
}

fn lay_walls(
    stack: &Stack,
    ring: &Ring,
    layer: &Layer,
    surfaces: &mut Surfaces,
    shell: &mut Shell,
) {
    let (low, high) = (layer.reach.low, layer.reach.high);
    let Some(mut before) = ring.last() else {
        return;
    };
    let mut surface = surfaces.next();
    let mut standing = Standing::default();
    for edge in ring {
        let normal = stack.across(edge.outward());
        let joining = corner(before, edge);
        if joining == Some(Joining::Sharp) {
            surface = surfaces.next();
        }
        if let Some(joining) = joining {
            let stands = standing.between(before, edge, stack.plane, [low, high], shell);
            shell.edges.push(BodyEdge {
                joining,
                ends: [stack.point(edge.from, low), stack.point(edge.from, high)],
                normals: [stack.across(before.outward()), normal],
                round: None,
                stands,
            });
        }
        shell.faces.push(BodyFace {
            surface,
            normal,
            rings: vec![vec![
                stack.point(edge.from, low),
                stack.point(edge.to, low),
                stack.point(edge.to, high),
                stack.point(edge.from, high),
            ]],
        });
        before = edge;
    }
}

/// The rounds that edges of a wall stand on, from one edge of its boundary to the next.
#[derive(Default)]
pub(super) struct Standing {
    circle: Option<Circle>,
    rounds: Option<[u32; 2]>,
}

impl Standing {
    /// What the edge between two neighbours on a boundary stands on, where both are chords of
    /// one circle; where a round runs out into a flat the edge has its place from both.
    pub(super) fn between(
        &mut self,
        before: &BoundaryEdge,
        after: &BoundaryEdge,
        plane: [PartAxis; 2],
        levels: [Length; 2],
        shell: &mut Shell,
    ) -> Option<[u32; 2]> {
        if after.circle.is_none() || before.circle != after.circle {
            return None;
        }
        if self.circle != after.circle {
            self.circle = after.circle;
            self.rounds = shell.standing(after.circle, plane, levels);
        }
        self.rounds
    }
}

fn lay_flat(
    stack: &Stack,
    shape: &Shape,
    level: Length,
    sign: f64,
    bounded: bool,
    surfaces: &mut Surfaces,
    shell: &mut Shell,
) {
    let normal = stack.along(sign);
    for edge in shape.rings.iter().flatten() {
        let [x, y] = edge.outward();
        // A flat ends where its own layer's wall goes down, or where the next layer's rises.
        let rises = bounded && edge.origin == Origin::Cut;
        let wall = if rises { [-x, -y] } else { [x, y] };
        let round = shell.circle(edge.circle, stack.plane, level);
        shell.edges.push(BodyEdge {
            joining: Joining::Sharp,
            ends: [stack.point(edge.from, level), stack.point(edge.to, level)],
            normals: [normal, stack.across(wall)],
            round,
            stands: None,
        });
    }
    let rings = shape
        .rings
        .iter()
        .map(|ring| {
            ring.iter()
                .map(|edge| stack.point(edge.from, level))
                .collect()
        })
        .collect();
    shell.faces.push(BodyFace {
        surface: surfaces.next(),
        normal,
        rings,
    });
}

/// Lines on the walls where the layers of a laminated part meet.
pub(super) fn seams(stack: &Stack, layers: &[Layer], count: i64, shell: &mut Shell) {
    let whole = stack.reach(stack.axis);
    for number in 1..count.min(64) {
        let level = whole.low + whole.size() * number / count;
        for layer in layers {
            if !(layer.reach.low < level && level < layer.reach.high) {
                continue;
            }
            for edge in layer.region.edges() {
                let small = edge
                    .circle
                    .is_some_and(|circle| circle.radius < Length::from_mm(20));
                if !small {
                    let normal = stack.across(edge.outward());
                    let round = shell.circle(edge.circle, stack.plane, level);
                    shell.edges.push(BodyEdge {
                        joining: Joining::Seam,
                        ends: [stack.point(edge.from, level), stack.point(edge.to, level)],
                        normals: [normal, normal],
                        round,
                        stands: None,
                    });
                }
            }
        }
    }
}
