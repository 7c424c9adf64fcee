//! Paths cut off at the edges of a window.

use crate::display::{Area, Path, PathPiece, Spot};

/// Ends of a piece nearer to each other than this, in points, are one.
const NEAR: f64 = 1e-9;

/// What of a path lies in an area; rings that are cut come out as open lines.
pub(super) fn clipped(path: &Path, area: &Area) -> Path {
    let mut out = Path::default();
    let (mut start, mut at) = (Spot::default(), Spot::default());
    for piece in &path.pieces {
        let curve = match *piece {
            PathPiece::Move(to) => {
                (start, at) = (to, to);
                continue;
            }
            PathPiece::Line(to) => Curve::line(at, to),
            PathPiece::Curve(a, b, to) => Curve([at, a, b, to], Form::Bent),
            PathPiece::Close => Curve::line(at, start),
        };
        curve.clipped_to(area, &mut out);
        at = curve.end();
    }
    out
}

/// Whether a curve is one.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Form {
    Straight,
    Bent,
}

/// A cubic Bézier curve, or a line in the form of one.
#[derive(Clone, Copy)]
struct Curve([Spot; 4], Form);

fn mix(a: Spot, b: Spot, t: f64) -> Spot {
    Spot::new(a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t)
}

impl Curve {
    fn line(from: Spot, to: Spot) -> Self {
        let third = |t| mix(from, to, t);
        Self(
            [from, third(1.0 / 3.0), third(2.0 / 3.0), to],
            Form::Straight,
        )
    }

    fn end(&self) -> Spot {
        let [.., end] = self.0;
        end
    }

    fn at(&self, t: f64) -> Spot {
        let [a, b, c, d] = self.0;
        let (p, q, r) = (mix(a, b, t), mix(b, c, t), mix(c, d, t));
        mix(mix(p, q, t), mix(q, r, t), t)
    }

    /// The stretch from `from` to `to`, by de Casteljau's construction.
    fn between(&self, from: f64, to: f64) -> Self {
        let [a, b, c, d] = self.0;
        // What is left of the curve behind `to` is cut off first.
        let (p, q, r) = (mix(a, b, to), mix(b, c, to), mix(c, d, to));
        let (s, t) = (mix(p, q, to), mix(q, r, to));
        let (a, b, c, d) = (a, p, s, mix(s, t, to));
        let from = if to > 0.0 { from / to } else { 0.0 };
        let (p, q, r) = (mix(a, b, from), mix(b, c, from), mix(c, d, from));
        let (s, t) = (mix(p, q, from), mix(q, r, from));
        Self([mix(s, t, from), t, r, d], self.1)
    }

    /// Appends what lies in the area.
    fn clipped_to(&self, area: &Area, out: &mut Path) {
        let mut cuts = vec![0.0, 1.0];
        let (right, bottom) = (area.x + area.width, area.y + area.height);
        for level in [area.x, right] {
            self.reached(|spot| spot.x - level, &mut cuts);
        }
        for level in [area.y, bottom] {
            self.reached(|spot| spot.y - level, &mut cuts);
        }
        cuts.sort_by(f64::total_cmp);
        let mut kept: Option<(f64, f64)> = None;
        for (from, to) in cuts.iter().zip(cuts.iter().skip(1)) {
            if to - from < 1e-12 {
                continue;
            }
            let middle = self.at((from + to) / 2.0);
            let inside =
                middle.x >= area.x && middle.x <= right && middle.y >= area.y && middle.y <= bottom;
            kept = match (inside, kept) {
                (true, Some((first, _))) => Some((first, *to)),
                (true, None) => Some((*from, *to)),
                (false, Some((first, last))) => {
                    self.between(first, last).append(out);
                    None
                }
                (false, None) => None,
            };
        }
        if let Some((first, last)) = kept {
            self.between(first, last).append(out);
        }
    }

    /// Adds where a distance along the curve is zero: between its turning points, halved until no
    /// more is gained.
    fn reached(&self, distance: impl Fn(Spot) -> f64, cuts: &mut Vec<f64>) {
        let [a, b, c, d] = self.0.map(&distance);
        // The derivative is a quadratic: p (1 − t)² + 2 q t (1 − t) + r t².
        let (p, q, r) = (b - a, c - b, d - c);
        let (square, linear) = (p - 2.0 * q + r, q - p);
        let mut stops = vec![0.0, 1.0];
        if square.abs() < 1e-12 {
            stops.push(-p / (2.0 * linear));
        } else {
            let root = (linear * linear - square * p).sqrt();
            stops.extend([(-linear + root) / square, (-linear - root) / square]);
        }
        stops.retain(|t| (0.0..=1.0).contains(t));
        stops.sort_by(f64::total_cmp);
        let value = |t: f64| distance(self.at(t));
        for (low, high) in stops.iter().zip(stops.iter().skip(1)) {
            let (mut low, mut high) = (*low, *high);
            if (value(low) > 0.0) == (value(high) > 0.0) {
                continue;
            }
            let rises = value(high) > 0.0;
            for _ in 0..60 {
                let middle = f64::midpoint(low, high);
                if (value(middle) > 0.0) == rises {
                    high = middle;
                } else {
                    low = middle;
                }
            }
            cuts.push(low);
        }
    }

    fn append(self, out: &mut Path) {
        let [from, a, b, to] = self.0;
        let goes_on = out.pieces.last().and_then(PathPiece::end);
        let joined = goes_on
            .is_some_and(|end| (end.x - from.x).abs() < NEAR && (end.y - from.y).abs() < NEAR);
        if !joined {
            out.pieces.push(PathPiece::Move(from));
        }
        out.pieces.push(match self.1 {
            Form::Straight => PathPiece::Line(to),
            Form::Bent => PathPiece::Curve(a, b, to),
        });
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::display::Ends;

    const WINDOW: Area = Area {
        x: 0.0,
        y: 0.0,
        width: 100.0,
        height: 60.0,
    };

    #[test]
    fn a_ring_is_cut_at_the_edges() {
        let ring = Path::rectangle(Area {
            x: 50.0,
            y: 20.0,
            width: 100.0,
            height: 20.0,
        });
        let cut = clipped(&ring, &WINDOW);
        let at = Spot::new;
        let expected = [
            PathPiece::Move(at(50.0, 20.0)),
            PathPiece::Line(at(100.0, 20.0)),
            PathPiece::Move(at(100.0, 40.0)),
            PathPiece::Line(at(50.0, 40.0)),
            PathPiece::Line(at(50.0, 20.0)),
        ];
        assert_eq!(cut.pieces.len(), expected.len());
        for (piece, expected) in cut.pieces.iter().zip(expected) {
            let alike = std::mem::discriminant(piece) == std::mem::discriminant(&expected);
            let (a, b) = (piece.end().unwrap(), expected.end().unwrap());
            let near = (a.x - b.x).abs() < 1e-9 && (a.y - b.y).abs() < 1e-9;
            assert!(alike && near, "{piece:?} for {expected:?}");
        }
        let outside = Path::polyline(&[at(-5.0, -5.0), at(200.0, -1.0)], Ends::Open);
        assert!(clipped(&outside, &WINDOW).pieces.is_empty());
    }

    #[test]
    fn what_is_left_of_a_circle_still_lies_on_it() {
        let centre = Spot::new(40.0, 30.0);
        let circle = Path::circle(centre, 50.0);
        let cut = clipped(&circle, &WINDOW);
        let mut at = Spot::default();
        let mut curves = 0;
        for piece in &cut.pieces {
            if let PathPiece::Curve(a, b, to) = *piece {
                curves += 1;
                let curve = Curve([at, a, b, to], Form::Bent);
                for step in 0..=10 {
                    let spot = curve.at(f64::from(step) / 10.0);
                    let radius = libm::hypot(spot.x - centre.x, spot.y - centre.y);
                    assert!((radius - 50.0).abs() < 50.0 * 3e-4, "{radius}");
                    assert!(spot.y > -1e-6 && spot.y < 60.0 + 1e-6);
                    assert!(spot.x > -1e-6 && spot.x < 100.0 + 1e-6);
                }
            }
            at = piece.end().unwrap_or(at);
        }
        // The circle leaves the window at the top, on the left and at the bottom: what is left are
        // the ends of the two quarters on its right.
        assert_eq!(curves, 2);
    }
}
