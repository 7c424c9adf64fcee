//! The outline of a solid as it is seen from a side: what its faces that look this way cover.

use std::collections::BTreeMap;

use super::seen::Seen;
use crate::geometry::region::{BoundaryEdge, Origin, Ring, Shape, doubled_area};
use crate::geometry::{Circle, Interval, PlanePoint, Region};
use crate::solid::{BodyFace, Joining, Point, Round, Shell};
use crate::units::Length;

/// A face that leans away by less is seen from its edge.
const EDGE_ON: f64 = 1e-6;
/// What a radius may differ by from that of a circle, and a circle from the plane of the view, in
/// nanometres: both were rounded.
const ROUNDED_NM: f64 = 4.0;

/// Circles by the chords that stand for them, each with its ends in order.
type Chords = BTreeMap<(PlanePoint, PlanePoint), Circle>;

fn ends(a: PlanePoint, b: PlanePoint) -> (PlanePoint, PlanePoint) {
    (a.min(b), a.max(b))
}

/// The outline of a solid, and of what goes right through it.
pub(super) fn outline(shell: &Shell, seen: &Seen) -> Region {
    let chords = chords(shell, seen);
    let faces = shell.faces.iter();
    let faces: Vec<Region> = faces
        .filter(|face| seen.towards(face.normal) > EDGE_ON)
        .map(|face| covered(face, seen, &chords))
        .collect();
    let Some((first, others)) = faces.split_first() else {
        return Region::EMPTY;
    };
    first.with(&others.iter().collect::<Vec<_>>())
}

/// The chords of circles that lie square to the view.
fn chords(shell: &Shell, seen: &Seen) -> Chords {
    let mut chords = Chords::new();
    for edge in &shell.edges {
        let round = edge.round.and_then(|round| usize::try_from(round).ok());
        let round = round.and_then(|round| shell.rounds.get(round));
        if let Some(circle) = round.and_then(|round| circle(round, seen)) {
            let [a, b] = edge.ends.map(|end| seen.point(end));
            chords.insert(ends(a, b), circle);
        }
    }
    chords
}

/// A round as it is seen; none where that is an ellipse.
fn circle(round: &Round, seen: &Seen) -> Option<Circle> {
    let [a, b] = round
        .radii
        .map(|[x, y, z]| libm::hypot(libm::hypot(x, y), z));
    let leans = round.radii.map(|radius| seen.towards(radius).abs());
    let is_circle = (a - b).abs() < ROUNDED_NM && leans.iter().all(|lean| *lean < ROUNDED_NM);
    is_circle.then(|| Circle {
        centre: seen.point(round.centre),
        radius: Length::from_mm_f64(a / 1e6),
    })
}

/// What a face covers of the view.
fn covered(face: &BodyFace, seen: &Seen, chords: &Chords) -> Region {
    let mut rings: Vec<(f64, Ring)> = Vec::with_capacity(face.rings.len());
    for ring in &face.rings {
        let points: Vec<PlanePoint> = ring.iter().map(|point| seen.point(*point)).collect();
        let next = points.iter().cycle().skip(1);
        let ring: Ring = points
            .iter()
            .zip(next)
            .filter(|(a, b)| a != b)
            .map(|(a, b)| BoundaryEdge {
                from: *a,
                to: *b,
                circle: chords.get(&ends(*a, *b)).copied(),
                origin: Origin::Own,
            })
            .collect();
        rings.push((doubled_area(&ring), ring));
    }
    // The largest ring is the outer one: it turns counter-clockwise, the others clockwise.
    rings.sort_by(|(a, _), (b, _)| b.abs().total_cmp(&a.abs()));
    let turned = rings.into_iter().enumerate().map(|(number, (area, ring))| {
        let is_right = (area > 0.0) == (number == 0);
        if is_right { ring } else { reversed(&ring) }
    });
    Region {
        shapes: vec![Shape {
            rings: turned.filter(|ring| ring.len() > 2).collect(),
        }],
    }
}

fn reversed(ring: &Ring) -> Ring {
    let back = ring.iter().rev().map(|edge| BoundaryEdge {
        from: edge.to,
        to: edge.from,
        ..*edge
    });
    back.collect()
}

/// How far a region reaches along both ways, arcs counted as arcs; none where there is nothing.
pub(super) fn reach(region: &Region) -> Option<[Interval; 2]> {
    let mut found: Option<[Interval; 2]> = None;
    let mut take = |point: PlanePoint| {
        let at = [point.x, point.y].map(|at| Interval::new(at, at));
        found = Some(match found {
            None => at,
            Some([x, y]) => {
                let [ax, ay] = at;
                [x.hull(ax), y.hull(ay)]
            }
        });
    };
    for edge in region.edges() {
        take(edge.from);
        take(edge.to);
        // The chord that spans the top of an arc has ends a little below it.
        if let Some(circle) = edge.circle {
            for (x, y) in [(1, 0), (-1, 0), (0, 1), (0, -1)] {
                let far = PlanePoint::new(
                    circle.centre.x + circle.radius * x,
                    circle.centre.y + circle.radius * y,
                );
                if spans(&edge, far, circle) {
                    take(far);
                }
            }
        }
    }
    found
}

/// True where a point of the circle lies on the arc of a chord.
fn spans(edge: &BoundaryEdge, at: PlanePoint, circle: Circle) -> bool {
    let arm = |point: PlanePoint| {
        let (x, y) = (point.x - circle.centre.x, point.y - circle.centre.y);
        (x.mm(), y.mm())
    };
    let cross = |(ax, ay): (f64, f64), (bx, by): (f64, f64)| ax * by - ay * bx;
    let (from, to, at) = (arm(edge.from), arm(edge.to), arm(at));
    let turn = cross(from, to).signum();
    let before = from.0 * at.0 + from.1 * at.1 > 0.0;
    before && cross(from, at) * turn >= 0.0 && cross(at, to) * turn >= 0.0
}

/// A face that looks this way: what it covers, and how near to the reader it is.
struct Cover {
    region: Region,
    reach: [Interval; 2],
    normal: [f64; 3],
    /// A point of it, in nanometres.
    on: [f64; 3],
}

impl Cover {
    fn of(face: &BodyFace, seen: &Seen) -> Option<Self> {
        let region = covered(face, seen, &Chords::new());
        let on = face.rings.first()?.first()?;
        Some(Self {
            reach: reach(&region)?,
            region,
            normal: face.normal,
            on: nm(*on),
        })
    }

    /// True where it lies before a point of the part.
    fn hides(&self, point: [f64; 3], at: PlanePoint, seen: &Seen) -> bool {
        let [x, y] = self.reach;
        if !x.holds(at.x) || !y.holds(at.y) {
            return false;
        }
        // How far the point is before the face's plane, square to it, and along the view.
        let before: f64 = (0..3).fold(0.0, |sum, axis| {
            let along = |of: &[f64; 3]| of.get(axis).copied().unwrap_or_default();
            sum + along(&self.normal) * (along(&point) - along(&self.on))
        });
        let behind = -before / seen.towards(self.normal);
        behind > BEHIND_NM && self.region.holds(at)
    }
}

/// What is no farther behind a face than this lies on it, in nanometres.
const BEHIND_NM: f64 = 1_000.0;

fn nm(point: Point) -> [f64; 3] {
    point.map(|along| Length::from_nm(along).mm() * 1e6)
}

/// The sharp edges that are seen, but for those of the outline.
pub(super) fn edges_within(shell: &Shell, seen: &Seen, outline: &Region) -> Vec<[PlanePoint; 2]> {
    let on_outline: Vec<BoundaryEdge> = outline.edges().collect();
    let covers: Vec<Cover> = shell
        .faces
        .iter()
        .filter(|face| seen.towards(face.normal) > EDGE_ON)
        .filter_map(|face| Cover::of(face, seen))
        .collect();
    let mut found: Vec<[PlanePoint; 2]> = Vec::new();
    for edge in &shell.edges {
        let looks_here = edge.normals.iter().any(|it| seen.towards(*it) > EDGE_ON);
        if edge.joining != Joining::Sharp || !looks_here {
            continue;
        }
        let ends = edge.ends.map(|end| seen.point(end));
        let [from, to] = edge.ends;
        let mut middle = from;
        for (along, to) in middle.iter_mut().zip(to) {
            *along += (to - *along) / 2;
        }
        let at = seen.point(middle);
        let [a, b] = ends;
        // The outline may have corners between them.
        let is_outline = |at| on_outline.iter().any(|own| lies_on(own, at));
        if a == b || [a, at, b].into_iter().all(is_outline) {
            continue;
        }
        if !covers.iter().any(|cover| cover.hides(nm(middle), at, seen)) {
            found.push(ends);
        }
    }
    found
}

/// True where a point lies on an edge, to a few nanometres.
fn lies_on(edge: &BoundaryEdge, at: PlanePoint) -> bool {
    let nm = |length: Length| length.mm() * 1e6;
    let (dx, dy) = (nm(edge.to.x - edge.from.x), nm(edge.to.y - edge.from.y));
    let (px, py) = (nm(at.x - edge.from.x), nm(at.y - edge.from.y));
    let length = libm::hypot(dx, dy).max(1.0);
    let away = (dx * py - dy * px).abs() / length;
    let along = (dx * px + dy * py) / length;
    away < ROUNDED_NM && along > -ROUNDED_NM && along < length + ROUNDED_NM
}

/// Every point of a region put through a turn of the plane.
pub(super) fn mapped(region: &Region, turn: impl Fn(PlanePoint) -> PlanePoint) -> Region {
    let edge = |edge: &BoundaryEdge| BoundaryEdge {
        from: turn(edge.from),
        to: turn(edge.to),
        circle: edge.circle.map(|circle| Circle {
            centre: turn(circle.centre),
            ..circle
        }),
        origin: edge.origin,
    };
    let shapes = region.shapes.iter().map(|shape| Shape {
        rings: shape
            .rings
            .iter()
            .map(|ring| ring.iter().map(edge).collect())
            .collect(),
    });
    Region {
        shapes: shapes.collect(),
    }
}
