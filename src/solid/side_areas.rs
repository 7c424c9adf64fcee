//! What is left of each of a part's six sides.

use super::stack::{level_of, outward};
use super::types::{BodyEdge, PartSolid, Round, Shell};
use super::vectors::{dot, minus};
use crate::build::Part;
use crate::geometry::Side;

/// Faces and edges this near to a side, in nanometres, lie on it.
const ON: f64 = 1_500.0;

impl PartSolid {
    /// The area of each side of `part` in square millimetres, in the order of [`Side::ALL`], arcs
    /// counted as arcs: what is left of it between holes, channels and broken arrises.
    pub fn side_areas_mm2(&self, part: &Part) -> [f64; 6] {
        Side::ALL.map(|side| side_area(&self.fine, part, side))
    }
}

#[expect(clippy::cast_precision_loss, reason = "parts are below 2^53 nm")]
fn side_area(shell: &Shell, part: &Part, side: Side) -> f64 {
    let axis = side.axis().index();
    let level = level_of(&part.extent, side).nm() as f64;
    let out = outward(side);
    let at = |point: &[i64; 3]| point.get(axis).map_or(f64::MAX, |part| *part as f64);
    let lies = |point: &[i64; 3]| (at(point) - level).abs() < ON;
    let faces = |normal: &[f64; 3]| dot(*normal, out) > 1.0 - 1e-9;
    let mut area = 0.0;
    for face in &shell.faces {
        let first = face.rings.first().and_then(|ring| ring.first());
        if faces(&face.normal) && first.is_some_and(lies) {
            area += super::flat_measures::face_area(face);
        }
    }
    // Between a chord and its arc: wood where the arc bulges out, none where a hole does.
    for edge in &shell.edges {
        let [a, b] = &edge.ends;
        let [first, second] = edge.normals;
        let wall = if faces(&first) {
            second
        } else if faces(&second) {
            first
        } else {
            continue;
        };
        if lies(a) && lies(b) {
            let round = edge.round.and_then(|round| usize::try_from(round).ok());
            if let Some(round) = round.and_then(|round| shell.rounds.get(round)) {
                area += bulge(edge, round, wall);
            }
        }
    }
    area
}

/// The segment between a chord of a circle and its arc, negative where the wall faces its centre.
#[expect(clippy::cast_precision_loss, reason = "parts are below 2^53 nm")]
fn bulge(edge: &BodyEdge, round: &Round, wall: [f64; 3]) -> f64 {
    let mm = |point: &[i64; 3]| point.map(|part| part as f64 / 1e6);
    let [a, b] = [mm(&edge.ends[0]), mm(&edge.ends[1])];
    let centre = mm(&round.centre);
    let [u, v] = round.radii;
    // A mark on the surface is no edge of it.
    if edge.joining == super::types::Joining::Seam {
        return 0.0;
    }
    let (first, second) = (dot(u, u).sqrt() / 1e6, dot(v, v).sqrt() / 1e6);
    let angle = |point: [f64; 3]| {
        let out = minus(point, centre);
        libm::atan2(
            dot(out, v) / 1e6 / (second * second),
            dot(out, u) / 1e6 / (first * first),
        )
    };
    let turn = angle(b) - angle(a);
    let turn = (turn - std::f64::consts::TAU * libm::round(turn / std::f64::consts::TAU)).abs();
    let segment = first * second * (turn - libm::sin(turn)) / 2.0;
    let middle = minus(a.map(|part| part / 2.0), centre);
    let middle = [0, 1, 2].map(|k: usize| {
        let of = |v: &[f64; 3]| v.get(k).copied().unwrap_or_default();
        of(&middle) + of(&b) / 2.0
    });
    if dot(middle, wall) > 0.0 {
        segment
    } else {
        -segment
    }
}
