//! Chains of lines and chords as paths of lines and curves.
//!
//! A circle lies in the view as an ellipse; the chords of it that are seen become one arc, drawn
//! by cubic Bézier curves of a quarter turn at the most, which leave it by no more than 0.03 % of
//! its radius; large ones by curves of an eighth, which leave it by four millionths.

use std::f64::consts::{FRAC_PI_2, FRAC_PI_4, PI, TAU};

use super::chains::Chain;
use super::picture::Sheet;
use super::scene::SceneRound;
use super::thinning::thinned;
use super::view::View;
use crate::display::{Path, PathPiece, Spot};

/// Radii above this, in points, are drawn by shorter curves.
const LARGE_PT: f64 = 100.0;

/// An ellipse of the view by its centre and two conjugate half diameters.
#[derive(Clone, Copy, Debug)]
struct Ellipse {
    centre: [f64; 2],
    radii: [[f64; 2]; 2],
}

impl Ellipse {
    /// A round as it is seen; none where it is seen from its edge.
    fn seen(round: &SceneRound, view: &View) -> Option<Self> {
        let flat = |[x, y, _]: [f64; 3]| [x, y];
        let radii = round.radii.map(|radius| flat(view.turn(radius)));
        let [[ax, ay], [bx, by]] = radii;
        let area = (ax * by - ay * bx).abs();
        let span = ax * ax + ay * ay + bx * bx + by * by;
        (area > span * 1e-3).then_some(Self {
            centre: flat(view.project(round.centre)),
            radii,
        })
    }

    /// The point at an angle, counted from the first half diameter to the second.
    fn at(&self, cosine: f64, sine: f64) -> [f64; 2] {
        let [[ax, ay], [bx, by]] = self.radii;
        let [x, y] = self.centre;
        [x + ax * cosine + bx * sine, y + ay * cosine + by * sine]
    }

    /// The angle at which a point lies.
    fn angle(&self, [x, y]: [f64; 2]) -> f64 {
        let [[ax, ay], [bx, by]] = self.radii;
        let (x, y) = (x - self.centre[0], y - self.centre[1]);
        let area = ax * by - ay * bx;
        libm::atan2((ax * y - ay * x) / area, (x * by - y * bx) / area)
    }
}

/// The path of a chain on paper.
pub(super) fn path(chain: &Chain, rounds: &[SceneRound], view: &View, sheet: &Sheet) -> Path {
    let round_of = |number: Option<u32>| {
        let index = usize::try_from(number?).ok()?;
        rounds.get(index)
    };
    let mut pieces: Vec<PathPiece> = Vec::new();
    let mut start = 0;
    while start < chain.rounds.len() {
        // As many stretches as lie on one round, or on none.
        let round = chain.rounds.get(start).copied().and_then(round_of);
        let same = |number: &&Option<u32>| round_of(**number) == round;
        let count = chain.rounds.iter().skip(start).take_while(same).count();
        let points = chain.points.get(start..=start + count).unwrap_or_default();
        match round.and_then(|round| Ellipse::seen(round, view)) {
            Some(ellipse) => arc(&ellipse, points, sheet, &mut pieces),
            None => straight(points, sheet, &mut pieces),
        }
        start += count;
    }
    let closed = match (pieces.first(), pieces.last()) {
        (Some(PathPiece::Move(a)), Some(PathPiece::Line(b) | PathPiece::Curve(_, _, b))) => {
            pieces.len() > 2 && (a.x - b.x).abs() < 0.01 && (a.y - b.y).abs() < 0.01
        }
        _ => false,
    };
    if closed {
        if matches!(pieces.last(), Some(PathPiece::Line(_))) {
            pieces.pop();
        }
        pieces.push(PathPiece::Close);
    }
    Path { pieces }
}

fn straight(points: &[[f64; 2]], sheet: &Sheet, pieces: &mut Vec<PathPiece>) {
    let spots: Vec<Spot> = points.iter().map(|point| sheet.spot(*point)).collect();
    for spot in thinned(&spots) {
        if pieces.is_empty() {
            pieces.push(PathPiece::Move(spot));
        } else if pieces.last().and_then(PathPiece::end) != Some(spot) {
            pieces.push(PathPiece::Line(spot));
        }
    }
}

/// The arc of an ellipse that runs past points which lie on it or on chords of it.
fn arc(ellipse: &Ellipse, points: &[[f64; 2]], sheet: &Sheet, pieces: &mut Vec<PathPiece>) {
    let Some((first, rest)) = points.split_first() else {
        return;
    };
    let from = ellipse.angle(*first);
    let (mut at, mut sweep) = (from, 0.0);
    for point in rest {
        let next = ellipse.angle(*point);
        let turn = next - at;
        sweep += turn - TAU * libm::round(turn / TAU);
        at = next;
    }
    // A whole turn has no need of the last corner to be where the first is.
    if (sweep.abs() - TAU).abs() < 1e-3 {
        sweep = TAU * sweep.signum();
    }
    if pieces.is_empty() {
        let (sine, cosine) = libm::sincos(from);
        pieces.push(PathPiece::Move(sheet.spot(ellipse.at(cosine, sine))));
    }
    // Of a large arc a quarter turn would be off by more than a hair.
    let [[ax, ay], [bx, by]] = ellipse.radii;
    let radius = libm::hypot(ax, ay).max(libm::hypot(bx, by)) * sheet.scale;
    let most = if radius > LARGE_PT {
        FRAC_PI_4
    } else {
        FRAC_PI_2
    };
    let count = libm::ceil(sweep.abs().min(2.0 * PI) / most - 1e-6).max(1.0);
    let step = sweep / count;
    // How far the control points are along the tangents, for an arc of one radius.
    let reach = 4.0 / 3.0 * libm::tan(step / 4.0);
    let mut angle = from;
    let mut left = count;
    while left > 0.5 {
        let ((s, c), (t, d)) = (libm::sincos(angle), libm::sincos(angle + step));
        let control = ellipse.at(c - reach * s, s + reach * c);
        let second = ellipse.at(d + reach * t, t - reach * d);
        pieces.push(PathPiece::Curve(
            sheet.spot(control),
            sheet.spot(second),
            sheet.spot(ellipse.at(d, t)),
        ));
        angle += step;
        left -= 1.0;
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::drawing::grid::Bounds;

    fn sheet() -> Sheet {
        let mut bounds = Bounds::NONE;
        bounds.take(-10_000.0, -10_000.0);
        bounds.take(10_000.0, 10_000.0);
        Sheet::new(&bounds, 0.001, Spot::default())
    }

    fn chords(from: u32, to: u32, radius: f64) -> Chain {
        let at = |step: u32| {
            let (sine, cosine) = libm::sincos(TAU * f64::from(step) / 32.0);
            [radius * cosine, radius * sine]
        };
        Chain {
            points: (from..=to).map(at).collect(),
            rounds: vec![Some(0); (to - from) as usize],
        }
    }

    fn level(radius: f64) -> SceneRound {
        SceneRound {
            centre: [0.0; 3],
            radii: [[radius, 0.0, 0.0], [0.0, radius, 0.0]],
        }
    }

    #[test]
    fn chords_of_a_circle_become_curves_that_keep_its_radius() {
        let view = View::from_direction([0, 0, 1]);
        for (from, to, curves) in [(0, 32, 4), (3, 9, 1), (30, 44, 2)] {
            let path = path(
                &chords(from, to, 8_000.0),
                &[level(8_000.0)],
                &view,
                &sheet(),
            );
            let mut at = Spot::default();
            let mut count = 0;
            for piece in &path.pieces {
                if let PathPiece::Curve(a, b, c) = *piece {
                    count += 1;
                    for step in 0..=10 {
                        let t = f64::from(step) / 10.0;
                        let mix = |p: f64, q: f64, r: f64, s: f64| {
                            let u = 1.0 - t;
                            u * u * u * p
                                + 3.0 * u * u * t * q
                                + 3.0 * u * t * t * r
                                + t * t * t * s
                        };
                        let (x, y) = (mix(at.x, a.x, b.x, c.x), mix(at.y, a.y, b.y, c.y));
                        let radius = libm::hypot(x - 10.0, y - 10.0);
                        assert!((radius - 8.0).abs() < 8.0 * 3e-4, "{radius}");
                    }
                }
                at = piece.end().unwrap_or(at);
            }
            assert_eq!(count, curves);
            let closed = matches!(path.pieces.last(), Some(PathPiece::Close));
            assert_eq!(closed, to - from == 32);
        }
    }

    #[test]
    fn a_circle_seen_from_its_edge_is_a_line() {
        let view = View::from_direction([0, -1, 0]);
        let chain = Chain {
            points: vec![[8_000.0, 0.0], [0.0, 0.0], [-8_000.0, 0.0]],
            rounds: vec![Some(0); 2],
        };
        let path = path(&chain, &[level(8_000.0)], &view, &sheet());
        let ends = [
            PathPiece::Move(Spot::new(18.0, 10.0)),
            PathPiece::Line(Spot::new(2.0, 10.0)),
        ];
        assert_eq!(path.pieces, ends);
    }
}
