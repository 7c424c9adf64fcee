//! A grid of holes on paper: outline, holes, triangle, sizes.

use super::super::pens::{MEDIUM_MM, NARROW_MM, THIN_MM, WIDE_MM, dimension, line};
use super::super::picture::Sheet;
use super::dimension_rows::{BEYOND, Figured, ROW_MM, Size, arrows, extension};
use super::setting_out::{Setting, seen};
use super::tags::extent;
use super::views::outward;
use crate::display::{Ends, Mark, PT_PER_MM, Path, Spot, Tone};
use crate::geometry::{PlanePoint, Side};
use crate::text::{Anchor, text_mark};
use crate::units::Length;

/// Reference edges are twice as wide as outlines, extra wide (ISO 128-2 [M]: 1 to 2 to 4).
const EXTRA_WIDE_MM: f64 = 2.0 * WIDE_MM;
/// Figures on leaders stand this far off the free side, in millimetres.
const LEVELS_MM: [f64; 2] = [8.0, 14.0];
/// Under the outline they stand above their leaders, and so this much farther off, in
/// millimetres.
const UNDER_MM: f64 = 4.5;
/// Half of a hole's cross, and the radius from which a hole is a circle, in millimetres.
const CROSS_MM: f64 = 1.2;
const SMALLEST_CIRCLE_MM: f64 = 0.5;

/// A grid at a scale.
pub(super) struct Laid<'l> {
    setting: &'l Setting<'l>,
    sheet: Sheet,
    size: [f64; 2],
}

impl<'l> Laid<'l> {
    /// A grid on a sheet, its outline of a size on paper.
    pub(super) const fn new(setting: &'l Setting<'l>, sheet: Sheet, size: [f64; 2]) -> Self {
        Self {
            setting,
            sheet,
            size,
        }
    }

    /// Everything on paper.
    pub(super) fn marks(&self) -> Vec<Mark> {
        let mut marks = Vec::new();
        self.outline(&mut marks);
        self.holes(&mut marks);
        self.triangle(&mut marks);
        self.sizes(&mut marks);
        self.names(&mut marks);
        self.leaders(&mut marks);
        marks
    }

    fn spot(&self, at: PlanePoint) -> Spot {
        let own = self.setting;
        self.sheet.spot(seen(&own.view, own.holes.side, at))
    }

    fn points(&self, length: Length) -> f64 {
        length.mm() * 1000.0 * self.sheet.scale
    }

    /// Which way the reference edges lie on paper: x and y, 1 to the right and downwards.
    fn ways(&self) -> [f64; 2] {
        let [first, second] = self.setting.grid.references;
        let [x, _, _] = self.setting.view.turn(outward(first));
        let [_, y, _] = self.setting.view.turn(outward(second));
        [x.signum(), -y.signum()]
    }

    /// Where a hole is, counted from the first one along both ways.
    fn hole(&self, column: f64, row: f64) -> Spot {
        let (px, py) = self.setting.grid.pitches;
        let [right, down] = self.ways();
        let first = self.spot(self.setting.grid.first);
        first.shifted(
            -right * column * self.points(px),
            -down * row * self.points(py),
        )
    }

    /// The reference edges' places: x of the one, y of the other; then those across from them.
    fn edges(&self) -> [[f64; 2]; 2] {
        let [right, down] = self.ways();
        let [w, h] = self.size;
        let x = if right > 0.0 { [w, 0.0] } else { [0.0, w] };
        let y = if down > 0.0 { [h, 0.0] } else { [0.0, h] };
        [[x[0], y[0]], [x[1], y[1]]]
    }

    fn outline(&self, marks: &mut Vec<Mark>) {
        let mut path = Path::default();
        for ring in self.setting.outline.rings() {
            let spots: Vec<Spot> = ring.iter().map(|edge| self.spot(edge.from)).collect();
            path.pieces
                .extend(Path::polyline(&spots, Ends::Joined).pieces);
        }
        let stroke = |path, width| Mark::Stroke {
            path,
            pen: line(width, Tone::BLACK),
        };
        marks.push(stroke(path, MEDIUM_MM));
        // A reference edge is where the outline lies on the side; notches have none of it.
        let [[x, y], _] = self.edges();
        let mut path = Path::default();
        for edge in self.setting.outline.edges() {
            let (a, b) = (self.spot(edge.from), self.spot(edge.to));
            let on = |p: f64, q: f64, level: f64| (p - level).abs() + (q - level).abs() < 0.05;
            if on(a.x, b.x, x) || on(a.y, b.y, y) {
                path.pieces
                    .extend(Path::polyline(&[a, b], Ends::Open).pieces);
            }
        }
        marks.push(stroke(path, EXTRA_WIDE_MM));
    }

    fn holes(&self, marks: &mut Vec<Mark>) {
        let own = self.setting;
        let radius = self.points(own.holes.diameter) / 2.0;
        let (px, py) = own.grid.pitches;
        let room = self.points(px).min(self.points(py)) * 0.3;
        let arm = (CROSS_MM * PT_PER_MM)
            .max(radius + 0.6 * PT_PER_MM)
            .min(room);
        let (mut crosses, mut circles) = (Path::default(), Path::default());
        for at in &own.holes.positions {
            let spot = self.spot(*at);
            for (dx, dy) in [(arm, 0.0), (0.0, arm)] {
                let ends = [spot.shifted(-dx, -dy), spot.shifted(dx, dy)];
                crosses
                    .pieces
                    .extend(Path::polyline(&ends, Ends::Open).pieces);
            }
            if radius > SMALLEST_CIRCLE_MM * PT_PER_MM {
                circles.pieces.extend(Path::circle(spot, radius).pieces);
            }
        }
        let pen = line(THIN_MM, Tone::BLACK);
        marks.push(Mark::Stroke { path: crosses, pen });
        let pen = line(NARROW_MM, Tone::BLACK);
        marks.push(Mark::Stroke { path: circles, pen });
    }

    /// The triangle, and the diagonal of the whole grid as a dimension line.
    fn triangle(&self, marks: &mut Vec<Mark>) {
        let [i, j] = self.steps();
        let corners = [self.hole(0.0, 0.0), self.hole(i, 0.0), self.hole(0.0, j)];
        marks.push(Mark::Stroke {
            path: Path::polyline(&corners, Ends::Joined),
            pen: line(WIDE_MM, Tone::BLACK),
        });
        if !self.is_half() {
            let [a, b] = self.counts();
            let [first, ..] = corners;
            arrows(first, self.hole(a - 1.0, b - 1.0), marks);
        }
    }

    /// True where the triangle is half of the grid: its long side is a diagonal.
    fn is_half(&self) -> bool {
        self.setting.proof.long == self.setting.diagonal
    }

    fn steps(&self) -> [f64; 2] {
        self.setting.proof.steps.map(number)
    }

    fn counts(&self) -> [f64; 2] {
        let (a, b) = self.setting.grid.counts;
        [number(a), number(b)]
    }

    fn sizes(&self, marks: &mut Vec<Mark>) {
        let own = self.setting;
        let [right, down] = self.ways();
        let [[x, y], [free, _]] = self.edges();
        let first = self.hole(0.0, 0.0);
        let (a, b) = own.grid.counts;
        let (px, py) = own.grid.pitches;
        let [i, j] = own.proof.steps;
        let [from_x, from_y] = self.offsets();
        let stretches = |pitch: Length, steps: &[i64], sign: f64| -> Vec<Figured> {
            let mut steps = steps.to_vec();
            steps.sort_unstable();
            steps.dedup();
            let figured = steps.into_iter().map(|count| {
                let end = self.points(pitch * count) * sign;
                own.lettering.in_steps(end, count, pitch)
            });
            figured.collect()
        };
        // Where both pitches are the same, the rows have it; the whole stands on the free side.
        let mut steps = vec![1, j];
        steps.retain(|count| (*count > 1 || px != py) && *count < b - 1);
        let columns = stretches(py, &steps, 1.0);
        let all = stretches(py, &[b - 1], 1.0);
        let rows = stretches(px, &[1, i, a - 1], -right);
        let offset = |length: Length, sign: f64| {
            let end = self.points(length) * sign;
            [own.lettering.figured(&Size { end, length })]
        };
        let (across, along) = (offset(from_y, 1.0), offset(from_x, -right));
        // Figures beyond the beginning of a column stand where rows would begin.
        let mut beside = across.iter().chain(&columns);
        let short = beside.any(|size| !size.has_room());
        let lifted = if short { BEYOND } else { 0.0 };
        let lettering = &own.lettering;
        marks.extend(lettering.figured_rows(&along, x, y, down, lifted));
        let lower = lifted + ROW_MM * PT_PER_MM;
        marks.extend(lettering.figured_rows(&rows, first.x, y, down, lower));
        let mut reach = lettering.figured_columns(&across, [y, down, x, right], 0.0, true, marks);
        // In one line with the first hole's distance where its figures have room beside it.
        if columns.first().is_some_and(Figured::has_room) {
            reach = 0.0;
        }
        let place = [first.y, down, x, right];
        lettering.figured_columns(&columns, place, reach, true, marks);
        // The whole grid on the free side, from the last column of holes.
        let place = [first.y, down, free, -right];
        lettering.figured_columns(&all, place, 0.0, false, marks);
        // From the holes to the edges, where rows and columns go on.
        for size in [0.0].into_iter().chain(rows.iter().map(|size| size.end)) {
            let at = first.shifted(size, 0.0);
            extension(at, Spot::new(at.x, y), marks);
        }
        for size in [0.0].into_iter().chain(columns.iter().map(|size| size.end)) {
            let at = first.shifted(0.0, -down * size);
            extension(at, Spot::new(x, at.y), marks);
        }
        for row in [0.0, number(b - 1)] {
            let at = self.hole(number(a - 1), row);
            extension(at, Spot::new(free, at.y), marks);
        }
    }

    /// How far the first hole is from the two reference edges.
    fn offsets(&self) -> [Length; 2] {
        let own = self.setting;
        let [first, second] = own.grid.references;
        let from = |side: Side, at: Length| {
            let reach = extent(own.part, side.axis());
            let level = if side.is_high() {
                reach.high
            } else {
                reach.low
            };
            (at - level).abs()
        };
        [
            from(first, own.grid.first.x),
            from(second, own.grid.first.y),
        ]
    }

    /// The reference edges' names, at their free ends.
    fn names(&self, marks: &mut Vec<Mark>) {
        let own = self.setting;
        let [right, down] = self.ways();
        let [[x, y], [free_x, free_y]] = self.edges();
        let [first, second] = own.grid.references.map(|side| own.name(side));
        let fonts = own.lettering.fonts;
        let style = dimension();
        let cap = 2.4;
        let above = if down > 0.0 { -1.8 } else { 1.8 + cap };
        let anchor = if right > 0.0 {
            Anchor::Start
        } else {
            Anchor::End
        };
        let spot = Spot::new(x - right * PT_PER_MM, free_y + above * PT_PER_MM);
        marks.push(text_mark(fonts, &style, anchor, spot, &first));
        let anchor = if right > 0.0 {
            Anchor::End
        } else {
            Anchor::Start
        };
        // Clear of the figures of the whole grid, which stand on this side too.
        let [a, b] = self.counts();
        let middle = self.hole(a - 1.0, (b - 1.0) / 2.0).y;
        let low = ((middle - y) * down + STACK_PT) / PT_PER_MM;
        let below = (low + 1.0).max(1.2) + if down > 0.0 { cap } else { 0.0 };
        let spot = Spot::new(
            free_x - right * 1.5 * PT_PER_MM,
            y + down * below * PT_PER_MM,
        );
        marks.push(text_mark(fonts, &style, anchor, spot, &second));
    }

    /// The long side and the diagonal, with figures on leaders.
    fn leaders(&self, marks: &mut Vec<Mark>) {
        let own = self.setting;
        let [i, j] = self.steps();
        let [a, b] = self.counts();
        // Half way between two columns of holes: near the middle of the long side, but not where
        // the diagonal crosses it.
        let crossing = 1.0 / (1.0 / i + (b - 1.0) / ((a - 1.0) * j));
        let crowds = |column: f64| !self.is_half() && (column - crossing).abs() < 0.3;
        let columns = (0..self.setting.proof.steps[0]).map(|column| number(column) + 0.5);
        let far = |column: &f64| (column - i / 2.0).abs() + if crowds(*column) { i } else { 0.0 };
        let column = columns.min_by(|a, b| far(a).total_cmp(&far(b)));
        let column = column.unwrap_or(i / 2.0);
        let on_long = self.hole(column, j * (1.0 - column / i));
        let [_, down] = self.ways();
        let under = if down < 0.0 { UNDER_MM } else { 0.0 };
        let [low, high] = LEVELS_MM.map(|level| level + under);
        self.leader(on_long, own.proof.long, low, marks);
        if !self.is_half() {
            let last = self.hole(a - 1.0, b - 1.0);
            self.leader(last, own.diagonal, high, marks);
        }
    }

    fn leader(&self, from: Spot, length: Length, level: f64, marks: &mut Vec<Mark>) {
        let [right, down] = self.ways();
        let [_, [_, free]] = self.edges();
        let figures = self.setting.lettering.both(length);
        let (_, width) = self.setting.lettering.line(&figures);
        let elbow = Spot::new(from.x, free - down * level * PT_PER_MM);
        let end = elbow.shifted(right * (width + 1.5 * PT_PER_MM), 0.0);
        marks.push(Mark::Stroke {
            path: Path::polyline(&[from, elbow, end], Ends::Open),
            pen: line(THIN_MM, Tone::BLACK),
        });
        marks.push(Mark::Fill {
            path: Path::circle(from, 0.55 * PT_PER_MM),
            tone: Tone::BLACK,
        });
        let left = elbow.x.min(end.x) + 0.75 * PT_PER_MM;
        let start = Spot::new(left, elbow.y - 1.1 * PT_PER_MM);
        self.setting.lettering.lay_line(figures, start, marks);
    }
}

/// Half the height of a column's figures, in points, at the most.
const STACK_PT: f64 = 18.0;

/// A small count as a number to reckon with.
#[expect(clippy::cast_precision_loss, reason = "counts of holes are small")]
fn number(count: i64) -> f64 {
    count as f64
}
