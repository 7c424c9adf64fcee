//! Round walls that planes have cut: the ellipses on which their rims and their facets' edges stand.
//!
//! A plane cuts a cylinder in an ellipse. What is left of the facets ends on it, so that drawings have an
//! arc there and find the silhouette of the wall between its ends.

use super::types::{BodyEdge, Joining, Point, Round, Shell};
use super::vectors::{cross, dot, floats, minus, plus, scaled, whole};

/// Points this near to one another or to a wall, in nanometres, are one or on it.
const NEAR: f64 = 2_000.0;
/// Sines and differences of cosines up to this are none.
const NOTHING: f64 = 1e-6;

/// A cylinder, or a part of one, whose facets are chords.
#[derive(Clone, Copy, Debug)]
pub(super) struct Cylinder {
    /// A point of its axis, in nanometres.
    pub(super) centre: [f64; 3],
    /// Two radii, square to the axis and to each other.
    pub(super) radii: [[f64; 3]; 2],
}

impl Cylinder {
    fn radius(&self) -> f64 {
        let [a, _] = self.radii;
        dot(a, a).sqrt()
    }

    fn axis(&self) -> [f64; 3] {
        let [a, b] = self.radii;
        let axis = cross(a, b);
        scaled(axis, 1.0 / dot(axis, axis).sqrt())
    }

    /// The direction from the axis to a point of the wall; none for points elsewhere.
    fn outward(&self, point: &Point) -> Option<[f64; 3]> {
        let out = minus(floats(point), self.centre);
        let axis = self.axis();
        let out = minus(out, scaled(axis, dot(out, axis)));
        let far = dot(out, out).sqrt();
        let on = (far - self.radius()).abs() < NEAR;
        on.then(|| scaled(out, 1.0 / far))
    }

    /// Where a plane through a point cuts it; none for a plane along it.
    fn cut_by(&self, normal: [f64; 3], through: &Point) -> Option<Round> {
        let axis = self.axis();
        let lean = dot(normal, axis);
        if lean.abs() < NOTHING {
            return None;
        }
        let along = |vector: [f64; 3]| scaled(axis, -dot(normal, vector) / lean);
        let [a, b] = self.radii;
        let off = minus(self.centre, floats(through));
        Some(Round {
            centre: plus(self.centre, along(off)).map(whole),
            radii: [plus(a, along(a)), plus(b, along(b))],
        })
    }
}

/// Gives the rims of cylinders their ellipses, and the edges between their facets what they stand on.
pub(super) fn find_rounds(shell: &mut Shell, cylinders: &[Cylinder]) {
    for cylinder in cylinders {
        find(shell, cylinder);
    }
}

fn find(shell: &mut Shell, cylinder: &Cylinder) {
    let axis = cylinder.axis();
    let on = |edge: &BodyEdge| {
        let [a, b] = &edge.ends;
        Some([cylinder.outward(a)?, cylinder.outward(b)?])
    };
    // Between facets an edge runs from one end of the wall to the other, round a rim it does not.
    let is_round = |[a, b]: [[f64; 3]; 2]| dot(a, b) < 1.0 - NOTHING * NOTHING;
    let is_cut = |edge: &BodyEdge| {
        edge.round.is_none() && edge.joining == Joining::Sharp && on(edge).is_some_and(is_round)
    };
    if !shell.edges.iter().any(is_cut) {
        return;
    }
    let mut rims: Vec<(Point, u32)> = Vec::new();
    for number in 0..shell.edges.len() {
        let Some(edge) = shell.edges.get(number).copied() else {
            continue;
        };
        if !on(&edge).is_some_and(is_round) {
            continue;
        }
        let slanting = |normal: &&[f64; 3]| dot(**normal, axis).abs() > NOTHING;
        let Some(normal) = edge.normals.iter().find(slanting) else {
            continue;
        };
        let [from, to] = edge.ends;
        let round = edge.round.or_else(|| {
            let cut = cylinder.cut_by(*normal, &from)?;
            let known = shell.rounds.iter().position(|known| same(known, &cut));
            match known {
                Some(known) => u32::try_from(known).ok(),
                None => shell.round(cut),
            }
        });
        let Some(round) = round else { continue };
        if let Some(edge) = shell.edges.get_mut(number) {
            edge.round = Some(round);
        }
        rims.extend([(from, round), (to, round)]);
    }
    for edge in &mut shell.edges {
        if edge.joining != Joining::Smooth {
            continue;
        }
        let Some([out, other]) = on(edge) else {
            continue;
        };
        if dot(out, other) < 1.0 - NOTHING {
            continue;
        }
        // A facet on either side leans as far as the other; beside a flat it does not.
        let [one, two] = edge.normals.map(|normal| dot(normal, out));
        if (one - two).abs() > NOTHING {
            continue;
        }
        let [from, to] = edge.ends;
        if let (Some(low), Some(high)) = (standing_on(&rims, &from), standing_on(&rims, &to)) {
            edge.stands = Some([low, high]);
        }
    }
}

/// True for the same round, but for the rounding of the points it was made from.
fn same(one: &Round, other: &Round) -> bool {
    let near = |a: [f64; 3], b: [f64; 3]| {
        let off = minus(a, b);
        dot(off, off) < NEAR * NEAR
    };
    near(floats(&one.centre), floats(&other.centre))
        && one
            .radii
            .iter()
            .zip(&other.radii)
            .all(|(a, b)| near(*a, *b))
}

/// The one round that a point is on; none where two meet.
fn standing_on(rims: &[(Point, u32)], point: &Point) -> Option<u32> {
    let close = |other: &Point| {
        let off = minus(floats(point), floats(other));
        dot(off, off) < NEAR * NEAR
    };
    let mut found = rims
        .iter()
        .filter(|(end, _)| close(end))
        .map(|(_, round)| *round);
    let first = found.next()?;
    found.all(|other| other == first).then_some(first)
}
