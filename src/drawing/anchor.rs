//! Where a leader touches what it names: as far inside of its visible part as can be.

use super::fills::{VisibleFill, area};
use super::grid::Bounds;

/// The place of a leader's dot in the visible part of a body, and how far it is from the edge,
/// in micrometres of the view; none where nothing is seen.
pub(super) fn anchor<'f>(fills: impl Iterator<Item = &'f VisibleFill>) -> Option<([f64; 2], f64)> {
    let mut pieces: Vec<(&Vec<Vec<[f64; 2]>>, f64)> = fills
        .flat_map(|fill| fill.pieces.iter())
        .map(|piece| {
            (
                piece,
                piece.iter().map(|ring| area(ring)).sum::<f64>().abs(),
            )
        })
        .collect();
    pieces.sort_by(|a, b| b.1.total_cmp(&a.1));
    pieces
        .into_iter()
        .take(4)
        .map(|(piece, _)| innermost(piece))
        .max_by(|a, b| a.1.total_cmp(&b.1))
}

/// Points looked at along each side, and how often the search narrows.
const STEPS: u8 = 10;
const ROUNDS: u8 = 5;

/// The pole of inaccessibility: the point farthest inside of a polygon with holes.
fn innermost(rings: &[Vec<[f64; 2]>]) -> ([f64; 2], f64) {
    let mut bounds = Bounds::NONE;
    for [x, y] in rings.iter().flatten() {
        bounds.take(*x, *y);
    }
    let mut best = (
        [
            (bounds.low[0] + bounds.high[0]) / 2.0,
            (bounds.low[1] + bounds.high[1]) / 2.0,
        ],
        f64::NEG_INFINITY,
    );
    let mut window = bounds;
    for _ in 0..ROUNDS {
        let [width, height] = window.size();
        let step = [width / f64::from(STEPS), height / f64::from(STEPS)];
        for i in 0..=STEPS {
            for j in 0..=STEPS {
                let point = [
                    window.low[0] + step[0] * f64::from(i),
                    window.low[1] + step[1] * f64::from(j),
                ];
                let inside = distance_beyond(rings, point, best.1);
                if inside > best.1 {
                    best = (point, inside);
                }
            }
        }
        let [x, y] = best.0;
        window = Bounds {
            low: [x - step[0], y - step[1]],
            high: [x + step[0], y + step[1]],
        };
    }
    best
}

/// How far inside of the rings a point is; negative outside.
pub(super) fn distance_inside(rings: &[Vec<[f64; 2]>], point: [f64; 2]) -> f64 {
    distance_beyond(rings, point, f64::NEG_INFINITY)
}

/// The same, or anything less than `least` as soon as it can be no more than that.
fn distance_beyond(rings: &[Vec<[f64; 2]>], [x, y]: [f64; 2], least: f64) -> f64 {
    let enough = if least > 0.0 { least * least } else { -1.0 };
    let mut inside = false;
    let mut nearest = f64::INFINITY;
    for ring in rings {
        for (a, b) in ring.iter().zip(ring.iter().cycle().skip(1)) {
            if (a[1] > y) != (b[1] > y) && x < a[0] + (b[0] - a[0]) * (y - a[1]) / (b[1] - a[1]) {
                inside = !inside;
            }
            let (dx, dy) = (b[0] - a[0], b[1] - a[1]);
            let square = dx * dx + dy * dy;
            let t = if square > 0.0 {
                (((x - a[0]) * dx + (y - a[1]) * dy) / square).clamp(0.0, 1.0)
            } else {
                0.0
            };
            let (ex, ey) = (x - a[0] - t * dx, y - a[1] - t * dy);
            nearest = nearest.min(ex * ex + ey * ey);
            if nearest <= enough {
                return f64::NEG_INFINITY;
            }
        }
    }
    let nearest = nearest.sqrt();
    if inside { nearest } else { -nearest }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_dot_keeps_off_holes() {
        let square = |low: f64, high: f64| vec![[low, low], [high, low], [high, high], [low, high]];
        let plain = innermost(&[square(0.0, 100.0)]);
        assert!((plain.1 - 50.0).abs() < 1.0);
        let holed = innermost(&[square(0.0, 100.0), square(20.0, 80.0)]);
        // In a corner of the frame: as far from both outer sides as from the hole's corner.
        assert!(holed.1 > 10.0 && holed.1 < 12.0, "{holed:?}");
    }
}
