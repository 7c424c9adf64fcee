//! A shell cut by a plane: what lies before the plane goes, the cut is closed.

use std::collections::{BTreeMap, BTreeSet};

use super::types::{BodyEdge, BodyFace, Joining, Point, Shell, SurfaceId};
use super::vectors::{dot, floats, whole};

/// A plane, with the side that is taken away: where `normal · p > offset`.
#[derive(Clone, Copy, Debug)]
pub(super) struct Plane {
    /// Unit vector into what is taken away.
    pub(super) normal: [f64; 3],
    /// In nanometres.
    pub(super) offset: f64,
}

/// Edges between faces that turn less than this are facets: the cosine of 16 degrees.
pub(super) const FACET_COSINE: f64 = 0.961;
/// Points this near, in nanometres, are one.
const NEAR: f64 = 2_000.0;

impl Plane {
    /// How far before the plane a point is, in nanometres.
    fn before(&self, point: &Point) -> f64 {
        let distance = dot(self.normal, floats(point)) - self.offset;
        // A point on the plane stays.
        if distance.abs() < 1.0 { 0.0 } else { distance }
    }

    /// Where a line passes through the plane, the same from either end.
    fn crossing(&self, a: &Point, b: &Point) -> Point {
        let (a, b) = if a <= b { (a, b) } else { (b, a) };
        let (at_a, at_b) = (self.before(a), self.before(b));
        let t = at_a / (at_a - at_b);
        let ([ax, ay, az], [bx, by, bz]) = (floats(a), floats(b));
        [ax + (bx - ax) * t, ay + (by - ay) * t, az + (bz - az) * t].map(whole)
    }
}

/// Cuts a shell. The new face gets `surface`; edges to faces it turns little from are smooth.
pub(super) fn cut(shell: &mut Shell, plane: &Plane, surface: SurfaceId) {
    if !shell
        .faces
        .iter()
        .flat_map(|face| face.rings.iter().flatten())
        .any(|point| plane.before(point) > 0.0)
    {
        return;
    }
    let mut rim = Vec::new();
    let mut touching = Vec::new();
    let faces = std::mem::take(&mut shell.faces);
    for face in faces {
        shell
            .faces
            .extend(cut_face(face, plane, &mut rim, &mut touching));
    }
    let mut edges = std::mem::take(&mut shell.edges);
    if !touching.is_empty() {
        rim.append(&mut touching);
        drop_pairs(&mut rim);
        // Where the plane runs along an old edge, the rim takes its place.
        let lines: BTreeSet<[Point; 2]> = rim.iter().map(|(ends, _)| in_order(ends)).collect();
        edges.retain(|edge| !lines.contains(&in_order(&edge.ends)));
    }
    shell
        .edges
        .extend(edges.into_iter().filter_map(|edge| cut_edge(edge, plane)));
    for (ends, normal) in &rim {
        let smooth = dot(*normal, plane.normal) > FACET_COSINE;
        shell.edges.push(BodyEdge {
            joining: if smooth {
                Joining::Smooth
            } else {
                Joining::Sharp
            },
            ends: *ends,
            normals: [*normal, plane.normal],
            round: None,
            stands: None,
        });
    }
    let lines: Vec<[Point; 2]> = rim.into_iter().map(|(ends, _)| ends).collect();
    for rings in nested(rings_of(&lines), plane.normal) {
        shell.faces.push(BodyFace {
            surface,
            normal: plane.normal,
            rings,
        });
    }
}

/// The edges of a face that stays which lie in the plane: what is beyond them may go.
fn lay_touching(face: &BodyFace, plane: &Plane, rim: &mut Vec<([Point; 2], [f64; 3])>) {
    let touches = |point: &Point| plane.before(point).abs() <= 0.0;
    for ring in &face.rings {
        for (a, b) in ring.iter().zip(ring.iter().cycle().skip(1)) {
            if a != b && touches(a) && touches(b) {
                rim.push(([*a, *b], face.normal));
            }
        }
    }
}

/// Takes out lines that are there twice: between two faces that both stay.
fn drop_pairs(rim: &mut Vec<([Point; 2], [f64; 3])>) {
    let mut counts: BTreeMap<[Point; 2], usize> = BTreeMap::new();
    for (ends, _) in rim.iter() {
        *counts.entry(in_order(ends)).or_default() += 1;
    }
    rim.retain(|(ends, _)| counts.get(&in_order(ends)) == Some(&1));
}

fn in_order([a, b]: &[Point; 2]) -> [Point; 2] {
    if a <= b { [*a, *b] } else { [*b, *a] }
}

/// Rings of one plane as faces: an outer ring and the rings right inside of it.
fn nested(rings: Vec<Vec<Point>>, normal: [f64; 3]) -> Vec<Vec<Vec<Point>>> {
    if rings.len() < 2 {
        return rings.into_iter().map(|ring| vec![ring]).collect();
    }
    // Seen along the axis that the plane faces most.
    let steepest = (0..3_usize)
        .max_by(|a, b| {
            let size = |k: &usize| normal.get(*k).map_or(0.0, |part| part.abs());
            size(a).total_cmp(&size(b))
        })
        .unwrap_or(2);
    let flat = |point: &Point| {
        let mut left = floats(point)
            .into_iter()
            .enumerate()
            .filter(|(k, _)| *k != steepest)
            .map(|(_, part)| part);
        [left.next().unwrap_or(0.0), left.next().unwrap_or(0.0)]
    };
    let flats: Vec<Vec<[f64; 2]>> = rings
        .iter()
        .map(|ring| ring.iter().map(flat).collect())
        .collect();
    let around = |inner: usize| -> Vec<usize> {
        let point = flats.get(inner).and_then(|ring| ring.first().copied());
        let Some(point) = point else {
            return Vec::new();
        };
        let holds = |(outer, ring): (usize, &Vec<[f64; 2]>)| {
            (outer != inner && is_inside(point, ring)).then_some(outer)
        };
        flats.iter().enumerate().filter_map(holds).collect()
    };
    let depths: Vec<Vec<usize>> = (0..rings.len()).map(around).collect();
    let mut faces: Vec<(usize, Vec<Vec<Point>>)> = Vec::new();
    for (number, (ring, outer)) in rings.iter().zip(&depths).enumerate() {
        if outer.len() % 2 == 0 {
            faces.push((number, vec![ring.clone()]));
        }
    }
    for (ring, outer) in rings.into_iter().zip(&depths) {
        if outer.len() % 2 == 1 {
            // The nearest of those around it has one less around itself.
            let nearest = outer.iter().find(|other| {
                depths
                    .get(**other)
                    .is_some_and(|its| its.len() + 1 == outer.len())
            });
            let face = faces.iter_mut().find(|(number, _)| Some(number) == nearest);
            if let Some((_, rings)) = face {
                rings.push(ring);
            }
        }
    }
    faces.into_iter().map(|(_, rings)| rings).collect()
}

fn is_inside([x, y]: [f64; 2], ring: &[[f64; 2]]) -> bool {
    let mut inside = false;
    for ([ax, ay], [bx, by]) in ring.iter().zip(ring.iter().cycle().skip(1)) {
        if (*ay > y) != (*by > y) && x < ax + (bx - ax) * (y - ay) / (by - ay) {
            inside = !inside;
        }
    }
    inside
}

/// What is left of a face; its cut goes to the rim.
fn cut_face(
    face: BodyFace,
    plane: &Plane,
    rim: &mut Vec<([Point; 2], [f64; 3])>,
    touching: &mut Vec<([Point; 2], [f64; 3])>,
) -> Option<BodyFace> {
    let points = || face.rings.iter().flatten();
    if points().all(|point| plane.before(point) <= 0.0) {
        lay_touching(&face, plane, touching);
        return Some(face);
    }
    if points().all(|point| plane.before(point) >= 0.0) {
        return None;
    }
    let mut crossings = Vec::new();
    let rings = face
        .rings
        .iter()
        .map(|ring| cut_ring(ring, plane, &mut crossings))
        .filter(|ring| ring.len() > 2)
        .collect();
    // Along the cut the face lies between the first and the second crossing, and so on.
    let [nx, ny, nz] = plane.normal;
    let [fx, fy, fz] = face.normal;
    let along = [ny * fz - nz * fy, nz * fx - nx * fz, nx * fy - ny * fx];
    crossings.sort_by(|a, b| dot(along, floats(a)).total_cmp(&dot(along, floats(b))));
    for pair in crossings.chunks_exact(2) {
        if let [a, b] = pair
            && a != b
        {
            rim.push(([*a, *b], face.normal));
        }
    }
    Some(BodyFace { rings, ..face })
}

fn cut_ring(ring: &[Point], plane: &Plane, crossings: &mut Vec<Point>) -> Vec<Point> {
    let mut kept = Vec::with_capacity(ring.len() + 2);
    for (a, b) in ring.iter().zip(ring.iter().cycle().skip(1)) {
        let (inside_a, inside_b) = (plane.before(a) <= 0.0, plane.before(b) <= 0.0);
        if inside_a {
            kept.push(*a);
        }
        if inside_a != inside_b {
            let point = plane.crossing(a, b);
            crossings.push(point);
            if kept.last() != Some(&point) {
                kept.push(point);
            }
        }
    }
    kept
}

fn cut_edge(edge: BodyEdge, plane: &Plane) -> Option<BodyEdge> {
    let [a, b] = edge.ends;
    match (plane.before(&a) <= 0.0, plane.before(&b) <= 0.0) {
        (true, true) => Some(edge),
        (false, false) => None,
        (inside, _) => {
            let kept = if inside { a } else { b };
            let end = plane.crossing(&a, &b);
            (kept != end).then_some(BodyEdge {
                ends: [kept, end],
                ..edge
            })
        }
    }
}

/// Closed rings of lines that meet end to end.
fn rings_of(lines: &[[Point; 2]]) -> Vec<Vec<Point>> {
    let key = |point: &Point| point.map(|part| part.div_euclid(10_000));
    let mut near: BTreeMap<[i64; 3], Vec<usize>> = BTreeMap::new();
    for (number, [a, b]) in lines.iter().enumerate() {
        near.entry(key(a)).or_default().push(number);
        near.entry(key(b)).or_default().push(number);
    }
    let meeting = |point: &Point, used: &[bool]| -> Option<(usize, Point)> {
        let [kx, ky, kz] = key(point);
        let cells = (-1..=1).flat_map(|x| {
            (-1..=1).flat_map(move |y| (-1..=1).map(move |z| [kx + x, ky + y, kz + z]))
        });
        for cell in cells {
            for number in near.get(&cell).into_iter().flatten() {
                let Some([a, b]) = lines.get(*number) else {
                    continue;
                };
                if used.get(*number).copied().unwrap_or(true) {
                    continue;
                }
                if close(a, point) {
                    return Some((*number, *b));
                }
                if close(b, point) {
                    return Some((*number, *a));
                }
            }
        }
        None
    };
    let mut used = vec![false; lines.len()];
    let mut rings = Vec::new();
    for (number, [start, second]) in lines.iter().enumerate() {
        if used.get(number).copied().unwrap_or(true) {
            continue;
        }
        set(&mut used, number);
        let mut ring = vec![*start, *second];
        let mut at = *second;
        while let Some((next, end)) = meeting(&at, &used) {
            set(&mut used, next);
            if close(&end, start) {
                break;
            }
            ring.push(end);
            at = end;
        }
        if ring.len() > 2 {
            rings.push(ring);
        }
    }
    rings
}

fn set(used: &mut [bool], number: usize) {
    if let Some(flag) = used.get_mut(number) {
        *flag = true;
    }
}

fn close(a: &Point, b: &Point) -> bool {
    let ([ax, ay, az], [bx, by, bz]) = (floats(a), floats(b));
    (ax - bx).abs() < NEAR && (ay - by).abs() < NEAR && (az - bz).abs() < NEAR
}
