//! Turned bodies: dowels, screws and whatever else is round about a line.

use std::f64::consts::TAU;

use super::stack::following;
use super::types::{BodyEdge, BodyFace, Joining, Point, Round, Shell, SurfaceId};
use super::vectors::minus;
use crate::units::Length;

/// A body turned about the line between two points, in `chords` facets: its radius at each
/// distance from the first.
///
/// Distances rise; where two are equal the body has a step.
pub fn rod(from: [Length; 3], to: [Length; 3], profile: &[(Length, Length)], chords: u32) -> Shell {
    let [from, to] = [from, to].map(|point| point.map(Length::mm));
    let axis = unit(minus(to, from));
    let (u, v) = across(axis);
    let angle = |step: f64| TAU * step / f64::from(chords);
    let radial = |step: f64| {
        let (cosine, sine) = (libm::cos(angle(step)), libm::sin(angle(step)));
        combine(u, cosine, v, sine)
    };
    let point = |along: Length, out: [f64; 3]| {
        let mut point = [0; 3];
        for (k, part) in point.iter_mut().enumerate() {
            let of = |w: &[f64; 3]| w.get(k).copied().unwrap_or_default();
            *part = Length::from_mm_f64(of(&from) + along.mm() * of(&axis) + of(&out)).nm();
        }
        point
    };
    let round = |(along, radius): (Length, Length)| Round {
        centre: point(along, [0.0; 3]),
        radii: [u, v].map(|out| out.map(|part| part * radius.mm() * 1e6)),
    };
    let ring = |(along, radius): (Length, Length)| -> Vec<Point> {
        (0..chords)
            .map(|step| {
                point(
                    along,
                    radial(f64::from(step)).map(|part| part * radius.mm()),
                )
            })
            .collect()
    };
    let mut shell = Shell::default();
    for (number, pair) in (1_u32..).zip(profile.windows(2)) {
        if let [a, b] = *pair {
            let ends = [(ring(a), a), (ring(b), b)];
            lay_band(&ends, [a, b].map(round), axis, radial, number, &mut shell);
        }
    }
    if let (Some(first), Some(last)) = (profile.first(), profile.last()) {
        for (end, sign) in [(first, -1.0), (last, 1.0)] {
            if end.1.is_positive() {
                let normal = axis.map(|part| part * sign);
                let points = ring(*end);
                let round = shell.round(round(*end));
                for ((a, b), step) in points
                    .iter()
                    .zip(points.iter().cycle().skip(1))
                    .zip((0..chords).map(f64::from))
                {
                    shell.edges.push(BodyEdge {
                        joining: Joining::Sharp,
                        ends: [*a, *b],
                        normals: [normal, radial(step + 0.5)],
                        round,
                        stands: None,
                    });
                }
                shell.faces.push(BodyFace {
                    surface: SurfaceId(0),
                    normal,
                    rings: vec![points],
                });
            }
        }
    }
    shell
}

/// The facets between two rings, which stand for two rounds.
fn lay_band(
    ends: &[(Vec<Point>, (Length, Length)); 2],
    rounds: [Round; 2],
    axis: [f64; 3],
    radial: impl Fn(f64) -> [f64; 3],
    number: u32,
    shell: &mut Shell,
) {
    let [(low, a), (high, b)] = ends;
    let (run, rise) = ((b.0 - a.0).mm(), (b.1 - a.1).mm());
    if run.abs() + rise.abs() <= 0.0 {
        return;
    }
    // A facet is a little less slanted than the cone, as its chords are nearer to the axis.
    let narrow = rise * libm::cos(std::f64::consts::PI / facets_of(low));
    let slant = libm::hypot(run, narrow);
    let normal = |step: f64| combine(radial(step), run / slant, axis, -narrow / slant);
    let sides = low
        .iter()
        .zip(following(low))
        .zip(high.iter().zip(following(high)));
    let [low_round, high_round] = rounds.map(|round| shell.round(round));
    let stands = low_round.zip(high_round).map(|(low, high)| [low, high]);
    for (step, ((p, q), (r, s))) in (0_u32..).map(f64::from).zip(sides) {
        let mut ring = vec![*p, q, s, *r];
        ring.dedup();
        shell.faces.push(BodyFace {
            surface: SurfaceId(number),
            normal: normal(step + 0.5),
            rings: vec![ring],
        });
        if run > 0.0 {
            shell.edges.push(BodyEdge {
                joining: Joining::Smooth,
                ends: [*p, *r],
                normals: [normal(step - 0.5), normal(step + 0.5)],
                round: None,
                stands,
            });
        }
        if rise.abs() > 0.0 && number > 1 {
            shell.edges.push(BodyEdge {
                joining: Joining::Sharp,
                ends: [*p, q],
                normals: [normal(step + 0.5), radial(step + 0.5)],
                round: low_round,
                stands: None,
            });
        }
    }
}

#[expect(clippy::cast_precision_loss, reason = "a ring has some dozen corners")]
fn facets_of(ring: &[Point]) -> f64 {
    ring.len().max(1) as f64
}

fn unit(v: [f64; 3]) -> [f64; 3] {
    let length = v.iter().map(|part| part * part).sum::<f64>().sqrt();
    if length > 0.0 {
        v.map(|part| part / length)
    } else {
        [0.0, 0.0, 1.0]
    }
}

fn combine(a: [f64; 3], x: f64, b: [f64; 3], y: f64) -> [f64; 3] {
    let ([ax, ay, az], [bx, by, bz]) = (a, b);
    [ax * x + bx * y, ay * x + by * y, az * x + bz * y]
}

/// Two unit vectors square to an axis and to each other.
fn across(axis: [f64; 3]) -> ([f64; 3], [f64; 3]) {
    let [x, y, z] = axis;
    let away = if x.abs() > 0.9 {
        [0.0, 1.0, 0.0]
    } else {
        [1.0, 0.0, 0.0]
    };
    let cross = |[ax, ay, az]: [f64; 3], [bx, by, bz]: [f64; 3]| {
        [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx]
    };
    let u = unit(cross([x, y, z], away));
    (u, cross([x, y, z], u))
}
