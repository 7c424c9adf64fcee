//! Slots for splines: a block square to a slanting face, taken out of the shell after the slope.
//!
//! Every face loses what lies in the block, and every side of the block closes what it opens in the
//! wood. Regions of planes do both, seen along the axis that the plane faces most.

use super::cut::{FACET_COSINE, Plane, cut};
use super::flat_measures;
use super::measures::Measures;
use super::plane_faces::region_of;
use super::stack::{extent_along, other_axes};
use super::types::{BodyEdge, BodyFace, Joining, Point, Shell, SurfaceId};
use super::vectors::{cross, dot, floats, minus, plus, scaled, whole};
use crate::build::Part;
use crate::geometry::{Interval, PartAxis, PlanePoint, Region};
use crate::model::{FeatureShape, SplineSlot};
use crate::units::Length;

/// Surfaces of slots are numbered from here, six for each.
const FIRST_SURFACE: u32 = 1 << 26;
/// Surface of a face that is looked for and taken out again.
const LOOKED_FOR: SurfaceId = SurfaceId(u32::MAX);
/// How far the block reaches beyond the face it is open to, and beyond ends it is to leave by.
const BEYOND_MM: f64 = 1.0;
/// Points this near to a plane lie in it, in nanometres.
const NEAR: f64 = 2_000.0;

/// Takes every spline slot of a part out of its shell.
pub(super) fn carve_slots(part: &Part, shell: &mut Shell, measures: &mut Measures) {
    let mut first = FIRST_SURFACE;
    for feature in &part.features {
        let FeatureShape::SplineSlot(slot) = &feature.shape else {
            continue;
        };
        let before = flat_measures::of(shell);
        carve(shell, &block(part, slot), first);
        measures.change(&before, &flat_measures::of(shell), 1.0);
        first += 6;
    }
}

/// A convex block: planes all round, each with what is outside in front of it.
struct Block {
    /// The first is where it is open.
    planes: [Plane; 6],
    middle: [f64; 3],
    /// No point of it is farther from its middle, in nanometres.
    reach: f64,
}

fn block(part: &Part, slot: &SplineSlot) -> Block {
    let own = extent_along(&part.extent, slot.axis());
    let whole: f64 = part.extent.iter().map(|reach| reach.size().mm()).sum();
    let mut up = [slot.across.low.mm(), slot.across.high.mm()];
    if slot.runs_up() {
        up = [up[0] - whole, up[1] + whole];
    }
    let along = [
        slot.along.low.mm() - open(slot.along.low <= own.low),
        slot.along.high.mm() + open(slot.along.high >= own.high),
    ];
    let deep = [-BEYOND_MM, slot.depth.mm()];
    let nm = |[x, y, z]: [f64; 3]| [x * 1e6, y * 1e6, z * 1e6];
    let at = |up: f64, along: f64, deep: f64| nm(slot.point_mm(up, along, deep));
    let origin = at(0.0, 0.0, 0.0);
    let axes = [at(0.0, 0.0, 1.0), at(1.0, 0.0, 0.0), at(0.0, 1.0, 0.0)]
        .map(|point| scaled(minus(point, origin), 1e-6));
    let [into, up_axis, along_axis] = axes;
    let pair = |axis: [f64; 3], [low, high]: [f64; 2]| {
        let base = dot(axis, origin);
        [
            Plane {
                normal: scaled(axis, -1.0),
                offset: -(base + low * 1e6),
            },
            Plane {
                normal: axis,
                offset: base + high * 1e6,
            },
        ]
    };
    let [front, floor] = pair(into, deep);
    let [low, high] = pair(up_axis, up);
    // The axis that the slope does not lean over goes through the part's origin.
    let [start, end] = pair(along_axis, along);
    let half = |[low, high]: [f64; 2]| f64::midpoint(low, high);
    Block {
        planes: [front, floor, low, high, start, end],
        middle: at(half(up), half(along), half(deep)),
        reach: [up, along, deep]
            .iter()
            .map(|[low, high]| (high - low) * 1e6)
            .sum(),
    }
}

const fn open(leaves: bool) -> f64 {
    if leaves { BEYOND_MM } else { 0.0 }
}

fn carve(shell: &mut Shell, block: &Block, first: u32) {
    let whole = shell.clone();
    shell.faces = whole
        .faces
        .iter()
        .flat_map(|face| without_block(face, block))
        .collect();
    shell.edges = whole
        .edges
        .iter()
        .flat_map(|edge| edge_without_block(edge, block))
        .collect();
    for ((number, plane), surface) in block.planes.iter().enumerate().skip(1).zip(first + 1..) {
        let wall = wall(&whole, block, number, plane, SurfaceId(surface));
        for face in &wall {
            for ring in &face.rings {
                let ends = ring.iter().zip(ring.iter().cycle().skip(1));
                let edges = ends.filter_map(|(a, b)| edge(&whole, block, number, face, [*a, *b]));
                shell.edges.extend(edges);
            }
        }
        shell.faces.extend(wall);
    }
}

/// What a side of the block opens in the wood, closed.
fn wall(
    whole: &Shell,
    block: &Block,
    number: usize,
    plane: &Plane,
    surface: SurfaceId,
) -> Vec<BodyFace> {
    let mut sawn = whole.clone();
    cut(&mut sawn, plane, LOOKED_FOR);
    let chart = Chart::of(plane.normal, plane.offset);
    let found = sawn
        .faces
        .iter()
        .filter(|face| face.surface == LOOKED_FOR)
        .map(|face| region_of(face, chart.plane))
        .collect::<Vec<_>>();
    let wood = Region::EMPTY.with(&found.iter().collect::<Vec<_>>());
    let side = chart.region(&block.polygon(plane, Some(number)));
    let normal = scaled(plane.normal, -1.0);
    chart.faces(&wood.common(&side), normal, surface)
}

/// The edge along one line of a side of the block: to another side, once for both, or to the wood's own
/// face that it opens.
fn edge(
    whole: &Shell,
    block: &Block,
    number: usize,
    wall: &BodyFace,
    ends: [Point; 2],
) -> Option<BodyEdge> {
    let [a, b] = ends.map(|point| floats(&point));
    let middle = scaled(plus(a, b), 0.5);
    let lies = |plane: &Plane| (dot(plane.normal, middle) - plane.offset).abs() < NEAR;
    let sides = block.planes.iter().enumerate();
    let other = sides
        .filter(|(other, _)| *other != number)
        .find(|(_, plane)| lies(plane));
    let normal = match other {
        Some((other, _)) if other < number => return None,
        Some((_, plane)) => scaled(plane.normal, -1.0),
        None => {
            let faces = whole.faces.iter().filter(|face| surrounds(face, middle));
            let distance = |face: &BodyFace| {
                let corner = face.rings.iter().flatten().next().map(floats);
                corner.map_or(f64::INFINITY, |corner| {
                    dot(face.normal, minus(middle, corner)).abs()
                })
            };
            let nearest = faces.min_by(|a, b| distance(a).total_cmp(&distance(b)))?;
            nearest.normal
        }
    };
    let smooth = dot(wall.normal, normal) > FACET_COSINE;
    (ends[0] != ends[1]).then_some(BodyEdge {
        joining: if smooth {
            Joining::Smooth
        } else {
            Joining::Sharp
        },
        ends,
        normals: [wall.normal, normal],
        round: None,
        stands: None,
    })
}

/// True where a point lies in the box around a face, or close to it.
fn surrounds(face: &BodyFace, point: [f64; 3]) -> bool {
    let mut low = [f64::INFINITY; 3];
    let mut high = [f64::NEG_INFINITY; 3];
    for corner in face.rings.iter().flatten().map(floats) {
        for ((low, high), value) in low.iter_mut().zip(&mut high).zip(corner) {
            *low = low.min(value);
            *high = high.max(value);
        }
    }
    let reaches = low.into_iter().zip(high).zip(point);
    reaches
        .into_iter()
        .all(|((low, high), value)| low - NEAR <= value && value <= high + NEAR)
}

fn without_block(face: &BodyFace, block: &Block) -> Vec<BodyFace> {
    let Some(corner) = face.rings.iter().flatten().next().map(floats) else {
        return Vec::new();
    };
    let offset = dot(face.normal, corner);
    let plane = Plane {
        normal: face.normal,
        offset,
    };
    let taken = block.polygon(&plane, None);
    if taken.len() < 3 {
        return vec![face.clone()];
    }
    let chart = Chart::of(face.normal, offset);
    let (region, taken) = (region_of(face, chart.plane), chart.region(&taken));
    if region.common(&taken).is_empty() {
        return vec![face.clone()];
    }
    chart.faces(&region.without(&[&taken]), face.normal, face.surface)
}

/// What is left of an edge: all, a piece or two, or nothing.
fn edge_without_block(edge: &BodyEdge, block: &Block) -> Vec<BodyEdge> {
    let [a, b] = edge.ends.map(|point| floats(&point));
    let (mut from, mut to) = (0.0_f64, 1.0_f64);
    for plane in &block.planes {
        let (at_a, at_b) = (
            dot(plane.normal, a) - plane.offset,
            dot(plane.normal, b) - plane.offset,
        );
        if at_a > -1.0 && at_b > -1.0 {
            return vec![*edge];
        }
        let t = at_a / (at_a - at_b);
        if at_a > 0.0 {
            from = from.max(t);
        } else if at_b > 0.0 {
            to = to.min(t);
        }
    }
    if from >= to {
        return vec![*edge];
    }
    let at = |t: f64| plus(a, scaled(minus(b, a), t)).map(whole);
    let pieces = [[edge.ends[0], at(from)], [at(to), edge.ends[1]]];
    let kept = [from > 0.0, to < 1.0].into_iter().zip(pieces);
    kept.filter(|(kept, ends)| *kept && ends[0] != ends[1])
        .map(|(_, ends)| BodyEdge { ends, ..*edge })
        .collect()
}

impl Block {
    /// The part of a plane that lies in the block; in the plane of one of its sides, that side.
    fn polygon(&self, plane: &Plane, side: Option<usize>) -> Vec<[f64; 3]> {
        let [one, other] = across(plane.normal);
        let away = dot(plane.normal, self.middle) - plane.offset;
        if away.abs() > self.reach {
            return Vec::new();
        }
        let centre = minus(self.middle, scaled(plane.normal, away));
        let far = self.reach * 2.0;
        let corner =
            |a: f64, b: f64| plus(centre, plus(scaled(one, a * far), scaled(other, b * far)));
        let mut ring = vec![
            corner(-1.0, -1.0),
            corner(1.0, -1.0),
            corner(1.0, 1.0),
            corner(-1.0, 1.0),
        ];
        for (number, plane) in self.planes.iter().enumerate() {
            if Some(number) != side {
                ring = behind(&ring, plane);
            }
        }
        ring
    }
}

/// What of a ring lies behind a plane.
fn behind(ring: &[[f64; 3]], plane: &Plane) -> Vec<[f64; 3]> {
    let before = |point: [f64; 3]| dot(plane.normal, point) - plane.offset;
    let mut kept = Vec::with_capacity(ring.len() + 1);
    for (a, b) in ring.iter().zip(ring.iter().cycle().skip(1)) {
        let (at_a, at_b) = (before(*a), before(*b));
        if at_a <= 0.0 {
            kept.push(*a);
        }
        if (at_a <= 0.0) != (at_b <= 0.0) {
            kept.push(plus(*a, scaled(minus(*b, *a), at_a / (at_a - at_b))));
        }
    }
    kept
}

/// A plane seen along the axis that it faces most.
struct Chart {
    axis: PartAxis,
    plane: [PartAxis; 2],
    normal: [f64; 3],
    offset: f64,
}

impl Chart {
    fn of(normal: [f64; 3], offset: f64) -> Self {
        let facing = |axis: PartAxis| normal.get(axis.index()).map_or(0.0, |part| part.abs());
        let axis = PartAxis::ALL
            .into_iter()
            .max_by(|a, b| facing(*a).total_cmp(&facing(*b)))
            .unwrap_or(PartAxis::Thickness);
        Self {
            axis,
            plane: other_axes(axis),
            normal,
            offset,
        }
    }

    fn region(&self, ring: &[[f64; 3]]) -> Region {
        let flat = |point: &[f64; 3]| {
            let [x, y] = self.plane.map(|axis| {
                let value = point.get(axis.index()).copied().unwrap_or_default();
                Length::from_nm(whole(value))
            });
            PlanePoint::new(x, y)
        };
        Region::polygon(&ring.iter().map(flat).collect::<Vec<_>>())
    }

    /// A point of the plane where it is seen.
    fn lifted(&self, at: PlanePoint) -> Point {
        let mut point = [0_i64; 3];
        let mut rest = self.offset;
        for (axis, value) in self.plane.into_iter().zip([at.x, at.y]) {
            if let (Some(slot), Some(part)) =
                (point.get_mut(axis.index()), self.normal.get(axis.index()))
            {
                *slot = value.nm();
                rest -= part * value.mm() * 1e6;
            }
        }
        if let (Some(slot), Some(part)) = (
            point.get_mut(self.axis.index()),
            self.normal.get(self.axis.index()),
        ) {
            *slot = whole(rest / part);
        }
        point
    }

    fn faces(&self, region: &Region, normal: [f64; 3], surface: SurfaceId) -> Vec<BodyFace> {
        let shapes = region.shapes.iter().map(|shape| BodyFace {
            surface,
            normal,
            rings: shape
                .rings
                .iter()
                .map(|ring| ring.iter().map(|edge| self.lifted(edge.from)).collect())
                .collect(),
        });
        shapes.collect()
    }
}

/// Two unit vectors square to a unit vector and to each other.
fn across(normal: [f64; 3]) -> [[f64; 3]; 2] {
    let [x, y, z] = normal.map(f64::abs);
    let helper = if x <= y && x <= z {
        [1.0, 0.0, 0.0]
    } else if y <= z {
        [0.0, 1.0, 0.0]
    } else {
        [0.0, 0.0, 1.0]
    };
    let one = cross(normal, helper);
    let one = scaled(one, 1.0 / dot(one, one).sqrt());
    [one, cross(normal, one)]
}

/// The least wood that a slot leaves between itself and the other sides of the part; negative where it
/// comes through.
pub(super) fn left_over(part: &Part, slot: &SplineSlot) -> Option<Length> {
    if slot.runs_up() {
        let own = extent_along(&part.extent, slot.axis());
        return Some((slot.along.low - own.low).min(own.high - slot.along.high));
    }
    let floor = [slot.across.low, slot.across.high]
        .map(|up| slot.point_mm(up.mm(), slot.along.middle().mm(), slot.depth.mm()));
    let mut least: Option<Length> = None;
    for axis in [slot.slope.side.axis(), slot.slope.deep.axis()] {
        let Interval { low, high } = extent_along(&part.extent, axis);
        for point in floor {
            let at = Length::from_mm_f64(point.get(axis.index()).copied()?);
            let left = (at - low).min(high - at);
            least = Some(least.map_or(left, |least| least.min(left)));
        }
    }
    least
}
