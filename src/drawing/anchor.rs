//! Where a leader touches what it names: as far inside of its visible part as can be.

use super::fills::VisibleFill;
use super::grid::Bounds;
use super::rings::{area, sides};

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
    let mut best: Option<([f64; 2], f64)> = None;
    for (piece, area) in pieces {
        // No circle inside of a piece is larger than the piece, and the next ones are smaller.
        let room = best.map_or(f64::NEG_INFINITY, |(_, room)| room);
        if room > 0.0 && area <= std::f64::consts::PI * room * room {
            break;
        }
        let bounds = Bounds::around(piece.iter().flatten());
        let [width, height] = bounds.size();
        if width.min(height) / 2.0 <= room {
            continue;
        }
        let found = innermost(piece, bounds);
        if found.1 > room {
            best = Some(found);
        }
    }
    best
}

/// Points looked at along each side, and how often the search narrows.
const STEPS: u8 = 10;
const ROUNDS: u8 = 5;

/// The pole of inaccessibility: the point farthest inside of a polygon with holes.
fn innermost(rings: &[Vec<[f64; 2]>], bounds: Bounds) -> ([f64; 2], f64) {
    let edges = edges_of(rings);
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
                let inside = distance_beyond(&edges, point, best.1);
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
    distance_beyond(&edges_of(rings), point, f64::NEG_INFINITY)
}

/// A side of a ring.
struct Side {
    /// Where it begins.
    start: [f64; 2],
    /// How high it ends: two sides that meet have one height there, to the last bit.
    end_y: f64,
    /// How it runs.
    run: [f64; 2],
    /// The square of its length turned over.
    turned: f64,
}

fn edges_of(rings: &[Vec<[f64; 2]>]) -> Vec<Side> {
    rings
        .iter()
        .flat_map(|ring| sides(ring))
        .map(|(a, b)| {
            let (dx, dy) = (b[0] - a[0], b[1] - a[1]);
            let square = dx * dx + dy * dy;
            Side {
                start: *a,
                end_y: b[1],
                run: [dx, dy],
                turned: if square > 0.0 { 1.0 / square } else { 0.0 },
            }
        })
        .collect()
}

/// The same, or anything less than `least` as soon as it can be no more than that.
fn distance_beyond(edges: &[Side], [x, y]: [f64; 2], least: f64) -> f64 {
    let enough = if least > 0.0 { least * least } else { -1.0 };
    let mut inside = false;
    let mut nearest = f64::INFINITY;
    for side in edges {
        let ([ax, ay], [dx, dy]) = (side.start, side.run);
        let (px, py) = (x - ax, y - ay);
        if (y < ay) != (y < side.end_y) && px < dx * (py / dy) {
            inside = !inside;
        }
        let t = ((px * dx + py * dy) * side.turned).clamp(0.0, 1.0);
        let (ex, ey) = (px - t * dx, py - t * dy);
        nearest = nearest.min(ex * ex + ey * ey);
        if nearest <= enough {
            return f64::NEG_INFINITY;
        }
    }
    let nearest = nearest.sqrt();
    if inside { nearest } else { -nearest }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::drawing::scenes::Dice;

    #[test]
    fn what_is_level_with_a_corner_and_beside_it_is_outside() {
        let mut dice = Dice::new(5);
        let mut number = || f64::from(u32::try_from(dice.roll(1_000_000)).unwrap()) / 3.0 - 2e5;
        for _ in 0..10_000 {
            let ring = vec![
                [number(), number()],
                [number(), number()],
                [number(), number()],
            ];
            for [_, level] in ring.clone() {
                for y in [level.next_down(), level, level.next_up()] {
                    for x in [-400_000.0, 400_000.0] {
                        assert!(distance_inside(std::slice::from_ref(&ring), [x, y]) < 0.0);
                    }
                }
            }
        }
    }

    #[test]
    fn the_dot_keeps_off_holes() {
        let square = |low: f64, high: f64| vec![[low, low], [high, low], [high, high], [low, high]];
        let found =
            |rings: &[Vec<[f64; 2]>]| innermost(rings, Bounds::around(rings.iter().flatten()));
        let plain = found(&[square(0.0, 100.0)]);
        assert!((plain.1 - 50.0).abs() < 1.0);
        let holed = found(&[square(0.0, 100.0), square(20.0, 80.0)]);
        // In a corner of the frame: as far from both outer sides as from the hole's corner.
        assert!(holed.1 > 10.0 && holed.1 < 12.0, "{holed:?}");
    }
}
