//! Measures of a shell by its flat faces (divergence theorem): exact where nothing is round.

use super::measures::Measures;
use super::types::{BodyFace, Point, Shell, SurfaceId};
use super::vectors::{cross, dot, minus};

/// Volume, surface and moments of everything inside of a shell's faces.
pub(super) fn of(shell: &Shell) -> Measures {
    let mut sum = Measures::default();
    for face in &shell.faces {
        let sign = |ring: &[Point], outer: bool| {
            let along = dot(area(ring), face.normal) >= 0.0;
            if along == outer { 1.0 } else { -1.0 }
        };
        let largest = outer_ring(face);
        for (number, ring) in face.rings.iter().enumerate() {
            add_ring(
                ring,
                face.normal,
                sign(ring, Some(number) == largest),
                &mut sum,
            );
        }
    }
    sum
}

/// The area of a face in square millimetres.
pub(super) fn face_area(face: &BodyFace) -> f64 {
    let size = |ring: &Vec<Point>| {
        let vector = area(ring);
        dot(vector, face.normal).abs()
    };
    let all: f64 = face.rings.iter().map(size).sum();
    let largest = face.rings.iter().map(size).fold(0.0, f64::max);
    2.0 * largest - all
}

/// How much of a shell's surface belongs to a surface.
pub(super) fn area_of(shell: &Shell, surface: SurfaceId) -> f64 {
    let faces = shell.faces.iter().filter(|face| face.surface == surface);
    let mut sum = Measures::default();
    for face in faces {
        for ring in &face.rings {
            add_ring(ring, face.normal, 1.0, &mut sum);
        }
    }
    sum.surface_mm2
}

fn outer_ring(face: &BodyFace) -> Option<usize> {
    let sizes = face.rings.iter().map(|ring| {
        let vector = area(ring);
        dot(vector, vector)
    });
    let largest = sizes.enumerate().max_by(|a, b| a.1.total_cmp(&b.1));
    largest.map(|(number, _)| number)
}

/// Adds what a ring of triangles from its first corner encloses with the origin.
fn add_ring(ring: &[Point], normal: [f64; 3], sign: f64, sum: &mut Measures) {
    let Some((first, rest)) = ring.split_first() else {
        return;
    };
    let a = mm(first);
    let depth = dot(a, normal);
    for (b, c) in rest.iter().zip(rest.iter().skip(1)) {
        let (b, c) = (mm(b), mm(c));
        let area = dot(cross(minus(b, a), minus(c, a)), normal) / 2.0 * sign;
        sum.surface_mm2 += area;
        sum.volume_mm3 += depth * area / 3.0;
        // ∫ x dV = ½ ∮ x² n dA, and ∫ x² over a triangle from the squares of its corners' sums.
        for (k, moment) in sum.moment_mm4.iter_mut().enumerate() {
            let of = |v: &[f64; 3]| v.get(k).copied().unwrap_or_default();
            let (p, q, r) = (of(&a), of(&b), of(&c));
            let square = (p * p + q * q + r * r + p * q + q * r + r * p) / 6.0;
            *moment += square * of(&normal) * area / 2.0;
        }
    }
}

/// The area vector of a ring, in square millimetres.
fn area(ring: &[Point]) -> [f64; 3] {
    let mut sum = [0.0; 3];
    if let Some((first, rest)) = ring.split_first() {
        let a = mm(first);
        for (b, c) in rest.iter().zip(rest.iter().skip(1)) {
            let turned = cross(minus(mm(b), a), minus(mm(c), a));
            for (part, more) in sum.iter_mut().zip(turned) {
                *part += more / 2.0;
            }
        }
    }
    sum
}

#[expect(clippy::cast_precision_loss, reason = "parts are below 2^53 nm")]
fn mm(point: &Point) -> [f64; 3] {
    point.map(|part| part as f64 / 1e6)
}
