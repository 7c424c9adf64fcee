//! Where on a sheet there is nothing yet.

use crate::display::{Area, Mark, Path, PathPiece, Spot};

/// Lines are looked at in steps of this, in points.
const STEP: f64 = 3.0;
/// Places are tried in steps of this, in points, and on a large sheet no more of them in a row.
const TRIED: f64 = 12.0;
const MOST_PLACES: f64 = 40.0;

/// Spots along everything that is drawn on a sheet.
#[derive(Default)]
pub(super) struct Ink {
    /// From the top down.
    spots: Vec<Spot>,
}

impl Ink {
    /// More of it.
    pub(super) fn add(&mut self, path: &Path) {
        let (mut start, mut at) = (Spot::default(), Spot::default());
        for piece in &path.pieces {
            let ends = match *piece {
                PathPiece::Move(to) => {
                    (start, at) = (to, to);
                    continue;
                }
                PathPiece::Line(to) => [at, at, to, to],
                PathPiece::Curve(a, b, to) => [at, a, b, to],
                PathPiece::Close => [at, at, start, start],
            };
            self.take(ends);
            let [.., end] = ends;
            at = end;
        }
        self.spots.sort_by(|a, b| a.y.total_cmp(&b.y));
    }

    /// Lines and areas of marks; of texts the line they stand on.
    pub(super) fn add_marks(&mut self, marks: &[Mark]) {
        for mark in marks {
            match mark {
                Mark::Stroke { path, .. } | Mark::Fill { path, .. } | Mark::Sealed { path, .. } => {
                    self.add(path);
                }
                Mark::Text(run) => {
                    let width: f64 = run.glyphs.iter().map(|glyph| glyph.advance).sum();
                    let middle = run.origin.shifted(0.0, -run.size * 0.35);
                    self.take([
                        middle,
                        middle,
                        middle.shifted(width, 0.0),
                        middle.shifted(width, 0.0),
                    ]);
                }
                Mark::Link { .. } => {}
            }
        }
    }

    fn take(&mut self, [a, b, c, d]: [Spot; 4]) {
        let hop = |p: Spot, q: Spot| libm::hypot(q.x - p.x, q.y - p.y);
        let length = hop(a, b) + hop(b, c) + hop(c, d);
        let count = super::super::grid::clamped(length / STEP, 4_000) + 1;
        let share = |number: usize| {
            let [number, count] =
                [number, count].map(|it| u32::try_from(it).map_or(0.0, f64::from));
            number / count
        };
        for number in 0..=count {
            let t = share(number);
            let u = 1.0 - t;
            let mix = |p: f64, q: f64, r: f64, s: f64| {
                u * u * u * p + 3.0 * u * u * t * q + 3.0 * u * t * t * r + t * t * t * s
            };
            self.spots
                .push(Spot::new(mix(a.x, b.x, c.x, d.x), mix(a.y, b.y, c.y, d.y)));
        }
    }

    /// How much of it lies in an area.
    pub(super) fn within(&self, area: &Area) -> usize {
        let (right, bottom) = (area.x + area.width, area.y + area.height);
        let first = self.spots.partition_point(|spot| spot.y < area.y);
        let level = self.spots.get(first..).unwrap_or_default().iter();
        level
            .take_while(|spot| spot.y <= bottom)
            .filter(|spot| spot.x >= area.x && spot.x <= right)
            .count()
    }
}

/// Upper left corners at which something of a size stands in a window, from the bottom left.
pub(super) fn places(window: &Area, [width, height]: [f64; 2]) -> impl Iterator<Item = Spot> {
    let free = [window.width - width, window.height - height];
    let steps = free.map(|free| (free / MOST_PLACES).max(TRIED));
    let count = |free: f64, step: f64| {
        if free < 0.0 {
            0
        } else {
            super::super::grid::clamped(free / step, 1_000) + 1
        }
    };
    let ([across, up], [right, down]) = (free, steps);
    let (columns, rows) = (count(across, right), count(up, down));
    let left_low = Spot::new(window.x, window.y + window.height - height);
    let along = |number: usize, step: f64| u32::try_from(number).map_or(0.0, f64::from) * step;
    (0..rows).flat_map(move |row| {
        (0..columns).map(move |column| left_low.shifted(along(column, right), -along(row, down)))
    })
}
