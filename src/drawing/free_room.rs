//! Where beside a drawing there is room for a circle.

use super::grid::clamped;
use crate::display::{Area, Mark, Path, PathPiece, Spot};

/// Size of a cell, in points: the room is known to this.
const CELL: f64 = 5.0;

/// Cells of a figure's area and a band below it, each taken or free.
pub(super) struct FreeRoom {
    corner: Spot,
    columns: usize,
    rows: usize,
    /// How many cells are taken in the rectangle from the corner up to a cell.
    taken: Vec<u32>,
    area: Area,
    radius: f64,
    /// Leaders that no other line may cross.
    leaders: Vec<[Spot; 2]>,
}

impl FreeRoom {
    /// The room that `drawn` leaves in and below `area` for circles of a radius, in points, to
    /// which a line leads that crosses none of the `leaders`.
    pub(super) fn of(drawn: &[Mark], leaders: &[Mark], area: Area, radius: f64) -> Self {
        let columns = clamped(area.width / CELL, 400) + 1;
        let rows = clamped((area.height + 2.0 * radius) / CELL, 400) + 1;
        let mut cells = vec![0_u32; columns * rows];
        let mut room = Self {
            corner: Spot::new(area.x, area.y),
            columns,
            rows,
            taken: Vec::new(),
            area,
            radius,
            leaders: straight(leaders),
        };
        for mark in drawn.iter().chain(leaders) {
            room.lay(mark, &mut cells);
        }
        room.taken = room.summed(&cells);
        room
    }

    /// The free place nearest to a spot; right below the area where there is none in it.
    pub(super) fn nearest(&self, spot: Spot) -> Spot {
        let mut best: Option<(f64, Spot)> = None;
        for row in 0..self.rows {
            for column in 0..self.columns {
                let middle = self.spot(column, row);
                let far = libm::hypot(middle.x - spot.x, middle.y - spot.y);
                // What makes the figure higher counts for more.
                let over = middle.y + self.radius - (self.area.y + self.area.height);
                let cost = far + 3.0 * over.max(0.0);
                if best.is_some_and(|(least, _)| cost >= least) || !self.is_free(middle) {
                    continue;
                }
                let crossed = self
                    .leaders
                    .iter()
                    .any(|leader| cross(*leader, [spot, middle]));
                let cost = cost
                    + if crossed { 2_000.0 } else { 0.0 }
                    + 2.5 * self.drawn_between(spot, middle);
                if best.is_none_or(|(least, _)| cost < least) {
                    best = Some((cost, middle));
                }
            }
        }
        best.map_or_else(
            || {
                let right = (self.area.x + self.area.width - self.radius).max(self.area.x);
                let x = spot.x.clamp((self.area.x + self.radius).min(right), right);
                Spot::new(x, self.area.y + self.area.height + self.radius)
            },
            |(_, middle)| middle,
        )
    }

    /// How much of the way between two spots is drawn over, in points, but for a circle's radius
    /// at its end and a little at its beginning.
    fn drawn_between(&self, from: Spot, to: Spot) -> f64 {
        let (dx, dy) = (to.x - from.x, to.y - from.y);
        let length = libm::hypot(dx, dy);
        let mut over = 0.0;
        let mut far = 4.0 * CELL;
        while far < length - self.radius {
            let spot = from.shifted(dx / length * far, dy / length * far);
            let column = clamped((spot.x - self.corner.x) / CELL, self.columns);
            let row = clamped((spot.y - self.corner.y) / CELL, self.rows);
            if column < self.columns && row < self.rows && self.count(column, column, row) > 0 {
                over += CELL;
            }
            far += CELL;
        }
        over
    }

    fn spot(&self, column: usize, row: usize) -> Spot {
        let at = |number: usize| u32::try_from(number).map_or(0.0, f64::from) * CELL;
        self.corner.shifted(at(column), at(row))
    }

    fn is_free(&self, middle: Spot) -> bool {
        let low = middle.shifted(-self.radius, -self.radius);
        let high = middle.shifted(self.radius, self.radius);
        if low.x < self.corner.x - 0.5 || high.x > self.corner.x + self.area.width + 0.5 {
            return false;
        }
        if low.y < self.corner.y - 0.5 {
            return false;
        }
        // Rows of cells that the circle crosses, each as wide as it is there.
        let first = clamped((low.y - self.corner.y) / CELL, self.rows);
        let last = clamped((high.y - self.corner.y) / CELL, self.rows);
        (first..=last.min(self.rows.saturating_sub(1))).all(|row| {
            let away = self.spot(0, row).y + CELL / 2.0 - middle.y;
            let half = (self.radius * self.radius - away * away).max(0.0).sqrt();
            let from = clamped((middle.x - half - self.corner.x) / CELL, self.columns);
            let to = clamped((middle.x + half - self.corner.x) / CELL, self.columns);
            self.count(from, to.min(self.columns.saturating_sub(1)), row) == 0
        })
    }

    /// How many cells of a row are taken from one column to another.
    fn count(&self, from: usize, to: usize, row: usize) -> u32 {
        let at = |column: usize| self.taken.get(row * self.columns + column).copied();
        let before = from.checked_sub(1).and_then(at).unwrap_or(0);
        at(to).unwrap_or(0).saturating_sub(before)
    }

    /// Running sums along each row.
    fn summed(&self, cells: &[u32]) -> Vec<u32> {
        let mut sums = Vec::with_capacity(cells.len());
        for row in cells.chunks(self.columns.max(1)) {
            let mut sum = 0;
            sums.extend(row.iter().map(|cell| {
                sum += cell;
                sum
            }));
        }
        sums
    }

    fn take(&self, spot: Spot, cells: &mut [u32]) {
        let (x, y) = (spot.x - self.corner.x, spot.y - self.corner.y);
        if x < 0.0 || y < 0.0 {
            return;
        }
        let (column, row) = (
            clamped(x / CELL, self.columns),
            clamped(y / CELL, self.rows),
        );
        if column < self.columns
            && row < self.rows
            && let Some(cell) = cells.get_mut(row * self.columns + column)
        {
            *cell = 1;
        }
    }

    fn lay(&self, mark: &Mark, cells: &mut [u32]) {
        match mark {
            Mark::Stroke { path, .. } => self.along(path, cells),
            Mark::Fill { path, .. } | Mark::Sealed { path, .. } => {
                self.along(path, cells);
                self.inside(path, cells);
            }
            Mark::Text(run) => {
                let width: f64 = run.glyphs.iter().map(|glyph| glyph.advance).sum();
                let low = run.origin.shifted(0.0, -run.size);
                let corners = [
                    low,
                    low.shifted(width, 0.0),
                    run.origin.shifted(width, 0.0),
                    run.origin,
                ];
                let frame = Path::polyline(&corners, crate::display::Ends::Joined);
                self.along(&frame, cells);
                self.inside(&frame, cells);
            }
            Mark::Link { .. } => {}
        }
    }

    fn along(&self, path: &Path, cells: &mut [u32]) {
        for [a, b] in sides(path) {
            let length = libm::hypot(b.x - a.x, b.y - a.y);
            let steps = (length / (CELL / 2.0)).ceil().max(1.0);
            let mut step = 0.0;
            while step <= steps {
                let t = step / steps;
                self.take(
                    Spot::new(a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t),
                    cells,
                );
                step += 1.0;
            }
        }
    }

    /// Cells whose middle lies in a path, by the even-odd rule.
    fn inside(&self, path: &Path, cells: &mut [u32]) {
        let mut rows: Vec<Vec<f64>> = vec![Vec::new(); self.rows];
        for [a, b] in sides(path) {
            let (low, high) = (a.y.min(b.y), a.y.max(b.y));
            let first = clamped((low - self.corner.y) / CELL - 1.0, self.rows);
            let last = clamped((high - self.corner.y) / CELL + 1.0, self.rows);
            for row in first..last.min(self.rows) {
                let y = self.spot(0, row).y + CELL / 2.0;
                if (a.y > y) != (b.y > y)
                    && let Some(crossings) = rows.get_mut(row)
                {
                    crossings.push(a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y));
                }
            }
        }
        for (row, mut crossings) in rows.into_iter().enumerate() {
            crossings.sort_by(f64::total_cmp);
            let y = self.spot(0, row).y + CELL / 2.0;
            for pair in crossings.chunks_exact(2) {
                if let [from, to] = *pair {
                    let mut x = from;
                    while x < to {
                        self.take(Spot::new(x, y), cells);
                        x += CELL;
                    }
                }
            }
        }
    }
}

/// Lines of two ends among some marks.
fn straight(marks: &[Mark]) -> Vec<[Spot; 2]> {
    let line = |mark: &Mark| match mark {
        Mark::Stroke { path, .. } => match path.pieces.as_slice() {
            [PathPiece::Move(from), PathPiece::Line(to)] => Some([*from, *to]),
            _ => None,
        },
        Mark::Fill { .. } | Mark::Sealed { .. } | Mark::Text(_) | Mark::Link { .. } => None,
    };
    marks.iter().filter_map(line).collect()
}

/// True where two lines cross.
fn cross([a, b]: [Spot; 2], [c, d]: [Spot; 2]) -> bool {
    let side = |p: Spot, q: Spot, r: Spot| (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
    (side(a, b, c) > 0.0) != (side(a, b, d) > 0.0) && (side(c, d, a) > 0.0) != (side(c, d, b) > 0.0)
}

/// The straight sides of a path; of a curve the way over its control points.
fn sides(path: &Path) -> Vec<[Spot; 2]> {
    let mut sides = Vec::with_capacity(path.pieces.len());
    let (mut start, mut at) = (Spot::default(), Spot::default());
    for piece in &path.pieces {
        match *piece {
            PathPiece::Move(to) => start = to,
            PathPiece::Line(to) => sides.push([at, to]),
            PathPiece::Curve(a, b, to) => sides.extend([[at, a], [a, b], [b, to]]),
            PathPiece::Close => sides.push([at, start]),
        }
        at = piece.end().unwrap_or(start);
    }
    sides
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::display::Tone;

    #[test]
    fn no_leader_is_crossed_where_there_is_another_way() {
        let area = Area {
            x: 0.0,
            y: 0.0,
            width: 300.0,
            height: 200.0,
        };
        let leader = Mark::Stroke {
            path: Path::polyline(
                &[Spot::new(60.0, 60.0), Spot::new(60.0, 200.0)],
                crate::display::Ends::Open,
            ),
            pen: crate::drawing::pens::line(0.18, Tone::BLACK),
        };
        let place = Spot::new(70.0, 100.0);
        let found = FreeRoom::of(&[], &[leader], area, 40.0).nearest(place);
        assert!(found.x > 100.0, "{found:?}");
    }

    #[test]
    fn a_circle_finds_the_free_corner() {
        let area = Area {
            x: 0.0,
            y: 0.0,
            width: 300.0,
            height: 200.0,
        };
        // All is drawn but the lower right quarter.
        let fill = |x: f64, y: f64, width: f64, height: f64| Mark::Fill {
            path: Path::rectangle(Area {
                x,
                y,
                width,
                height,
            }),
            tone: Tone::BLACK,
        };
        let drawn = [fill(0.0, 0.0, 300.0, 100.0), fill(0.0, 0.0, 150.0, 200.0)];
        let room = FreeRoom::of(&drawn, &[], area, 40.0);
        let found = room.nearest(Spot::new(20.0, 20.0));
        assert!(found.x >= 190.0 && found.y >= 140.0, "{found:?}");
        assert!(found.y <= 165.0, "{found:?}");
        // None in a full area: below it.
        let full = FreeRoom::of(&[fill(0.0, 0.0, 300.0, 200.0)], &[], area, 40.0);
        let below = full.nearest(Spot::new(20.0, 20.0));
        assert!(below.y >= 240.0 && below.x >= 40.0, "{below:?}");
    }
}
