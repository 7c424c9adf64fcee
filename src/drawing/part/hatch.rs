//! The face of a cut: hatching at 45 degrees, or grey where there is no room for it.

use super::super::pens::{THIN_MM, line};
use crate::display::{Ends, Mark, PT_PER_MM, Path, Spot, Tone};

/// Between two lines of hatching (ISO 128-3: at 45 degrees, evenly spaced, in proportion to the
/// face and not under 0.7 mm [M]), in millimetres: as a rule, and where the wood is thin.
const SPACING_MM: f64 = 3.0;
const CLOSE_MM: f64 = 2.0;
const THIN_FACE_MM: f64 = 6.0;
/// Thinner cuts are filled (ISO 128-3: thin sections may be [M]), in millimetres.
const NARROWEST_MM: f64 = 2.0;
const CUT_GREY: Tone = Tone::grey(0.6);
/// Shorter lines are left out, in points.
const SHORTEST: f64 = 0.5;

/// The face of a cut whose rings on paper are `rings`, in wood that is `thick` points thick.
pub(super) fn cut_face(rings: &[Vec<Spot>], thick: f64) -> Vec<Mark> {
    if thick < NARROWEST_MM * PT_PER_MM {
        let rings = rings
            .iter()
            .flat_map(|ring| Path::polyline(ring, Ends::Joined).pieces);
        return vec![Mark::Fill {
            path: Path {
                pieces: rings.collect(),
            },
            tone: CUT_GREY,
        }];
    }
    let spacing = if thick < THIN_FACE_MM * PT_PER_MM {
        CLOSE_MM
    } else {
        SPACING_MM
    };
    let lines = hatching(rings, spacing * PT_PER_MM);
    let pieces = lines
        .iter()
        .flat_map(|ends| Path::polyline(ends, Ends::Open).pieces);
    vec![Mark::Stroke {
        path: Path {
            pieces: pieces.collect(),
        },
        pen: line(THIN_MM, Tone::BLACK),
    }]
}

/// Lines that rise at 45 degrees to the right, inside of rings by the even-odd rule.
fn hatching(rings: &[Vec<Spot>], spacing: f64) -> Vec<[Spot; 2]> {
    let edges = || {
        rings
            .iter()
            .flat_map(|ring| ring.iter().zip(ring.iter().cycle().skip(1)))
    };
    // A line is where x + y is the same; along it x − y grows.
    let level = |spot: &Spot| spot.x + spot.y;
    let (mut low, mut high) = (f64::INFINITY, f64::NEG_INFINITY);
    for spot in rings.iter().flatten() {
        low = low.min(level(spot));
        high = high.max(level(spot));
    }
    let step = spacing * std::f64::consts::SQRT_2;
    let mut lines = Vec::new();
    let mut at = low + step / 2.0;
    while at < high {
        let mut crossings: Vec<f64> = edges()
            .filter(|(a, b)| (level(a) > at) != (level(b) > at))
            .map(|(a, b)| {
                let t = (at - level(a)) / (level(b) - level(a));
                (a.x - a.y) + ((b.x - b.y) - (a.x - a.y)) * t
            })
            .collect();
        crossings.sort_by(f64::total_cmp);
        for pair in crossings.chunks_exact(2) {
            if let [from, to] = pair
                && to - from > SHORTEST
            {
                let spot = |across: f64| Spot::new((at + across) / 2.0, (at - across) / 2.0);
                lines.push([spot(*from), spot(*to)]);
            }
        }
        at += step;
    }
    lines
}

#[cfg(test)]
mod tests {
    use super::*;

    fn square(low: f64, high: f64) -> Vec<Spot> {
        let at = Spot::new;
        vec![at(low, low), at(high, low), at(high, high), at(low, high)]
    }

    /// Lines `s` apart come to the area over `s`, as strips of that width would.
    #[test]
    fn hatching_covers_the_wood_and_leaves_the_hole_white() {
        let rings = [square(0.0, 300.0), square(100.0, 200.0)];
        let lines = hatching(&rings, 2.0);
        let length: f64 = lines
            .iter()
            .map(|[a, b]| libm::hypot(b.x - a.x, b.y - a.y))
            .sum();
        let area = 300.0 * 300.0 - 100.0 * 100.0;
        assert!((length * 2.0 - area).abs() < 0.01 * area, "{length}");
        for [a, b] in lines {
            assert!(((b.x - a.x) + (b.y - a.y)).abs() < 1e-9, "45 degrees");
            let (x, y) = (f64::midpoint(a.x, b.x), f64::midpoint(a.y, b.y));
            let inside = |v: f64| v > 100.0 && v < 200.0;
            assert!(!(inside(x) && inside(y)));
        }
    }

    #[test]
    fn thin_cuts_are_filled() {
        let ring = [square(0.0, 5.0)];
        assert!(matches!(cut_face(&ring, 5.0)[..], [Mark::Fill { .. }]));
        assert!(matches!(cut_face(&ring, 6.0)[..], [Mark::Stroke { .. }]));
    }
}
