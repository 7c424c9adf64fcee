//! What planes leave of a block.

use super::frame::Interval;

/// A half of space: where `normal · p ≤ offset`, in millimetres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HalfSpace {
    /// Unit vector out of it.
    pub normal: [f64; 3],
    /// How far along the normal it reaches.
    pub offset: f64,
}

type Corner = [f64; 3];

/// The volume of a block that lies in all of some half spaces, in cubic millimetres.
pub fn clipped_volume_mm3(block: &[Interval; 3], halves: &[HalfSpace]) -> f64 {
    let mut faces = faces_of(block);
    for half in halves {
        faces = clipped(faces, half);
    }
    // Pyramids over the faces from any one corner.
    let Some(&apex) = faces.first().and_then(|face| face.first()) else {
        return 0.0;
    };
    let triangles = faces.iter().flat_map(|face| {
        let first = face.first().copied().unwrap_or_default();
        let rest = face.iter().skip(1);
        rest.clone()
            .zip(rest.skip(1))
            .map(move |(b, c)| [first, *b, *c])
    });
    triangles
        .map(|[a, b, c]| {
            let [u, v, w] = [a, b, c].map(|corner| minus(corner, apex));
            dot(u, cross(v, w)).abs() / 6.0
        })
        .sum()
}

fn faces_of(block: &[Interval; 3]) -> Vec<Vec<Corner>> {
    let [x, y, z] = block.map(|reach| [reach.low.mm(), reach.high.mm()]);
    let mut faces = Vec::with_capacity(6);
    for end in [0, 1] {
        let at = |list: [f64; 2], index: usize| list.get(index).copied().unwrap_or_default();
        let turn = [(0, 0), (1, 0), (1, 1), (0, 1)];
        faces.push(turn.map(|(i, j)| [at(x, end), at(y, i), at(z, j)]).to_vec());
        faces.push(turn.map(|(i, j)| [at(x, i), at(y, end), at(z, j)]).to_vec());
        faces.push(turn.map(|(i, j)| [at(x, i), at(y, j), at(z, end)]).to_vec());
    }
    faces
}

fn clipped(faces: Vec<Vec<Corner>>, half: &HalfSpace) -> Vec<Vec<Corner>> {
    let over = |corner: &Corner| dot(half.normal, *corner) - half.offset;
    let mut left = Vec::with_capacity(faces.len() + 1);
    let mut rim: Vec<Corner> = Vec::new();
    for face in faces {
        let mut kept = Vec::with_capacity(face.len() + 1);
        for (a, b) in face.iter().zip(face.iter().cycle().skip(1)) {
            let (p, q) = (over(a), over(b));
            if p <= 0.0 {
                kept.push(*a);
            }
            if (p <= 0.0) != (q <= 0.0) {
                let t = p / (p - q);
                let mut point = *a;
                for (part, other) in point.iter_mut().zip(b) {
                    *part += (other - *part) * t;
                }
                kept.push(point);
                rim.push(point);
            }
        }
        if kept.len() > 2 {
            left.push(kept);
        }
    }
    if let Some(cap) = round_a_middle(rim, half.normal) {
        left.push(cap);
    }
    left
}

/// The points of a convex cut in the order in which they go round it.
fn round_a_middle(mut points: Vec<Corner>, normal: [f64; 3]) -> Option<Vec<Corner>> {
    let count = u32::try_from(points.len())
        .ok()
        .filter(|count| *count > 2)?;
    let mut middle = [0.0; 3];
    for point in &points {
        for (part, more) in middle.iter_mut().zip(point) {
            *part += more / f64::from(count);
        }
    }
    let first = minus(*points.first()?, middle);
    let second = cross(normal, first);
    points.sort_by(|a, b| {
        let angle = |point: &Corner| {
            let out = minus(*point, middle);
            libm::atan2(dot(out, second), dot(out, first))
        };
        angle(a).total_cmp(&angle(b))
    });
    Some(points)
}

fn dot([ax, ay, az]: Corner, [bx, by, bz]: Corner) -> f64 {
    ax * bx + ay * by + az * bz
}

fn minus([ax, ay, az]: Corner, [bx, by, bz]: Corner) -> Corner {
    [ax - bx, ay - by, az - bz]
}

fn cross([ax, ay, az]: Corner, [bx, by, bz]: Corner) -> Corner {
    [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx]
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::Length;

    #[test]
    fn planes_leave_what_closed_formulas_say() {
        let cube = [Interval::of(Length::from_mm(10)); 3];
        let half = |normal: [f64; 3], offset: f64| {
            let length = dot(normal, normal).sqrt();
            HalfSpace {
                normal: normal.map(|part| part / length),
                offset: offset / length,
            }
        };
        let close = |a: f64, b: f64| (a - b).abs() < 1e-9;
        assert!(close(clipped_volume_mm3(&cube, &[]), 1000.0));
        // Both halves of a mitred corner, and nothing between them.
        let (one, two) = (half([1.0, 1.0, 0.0], 10.0), half([-1.0, -1.0, 0.0], -10.0));
        assert!(close(clipped_volume_mm3(&cube, &[one]), 500.0));
        assert!(close(clipped_volume_mm3(&cube, &[one, two]), 0.0));
        // A corner cut off: a sixth of the cube of its edge.
        let corner = half([1.0, 1.0, 1.0], 24.0);
        assert!(close(clipped_volume_mm3(&cube, &[corner]), 1000.0 - 36.0));
        assert!(close(
            clipped_volume_mm3(&cube, &[half([1.0, 0.0, 0.0], -1.0)]),
            0.0
        ));
    }
}
