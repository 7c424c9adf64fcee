//! A grid over a view, so that only what lies near each other is compared.
#![expect(
    clippy::indexing_slicing,
    reason = "rows and columns are clamped to the grid before they are used"
)]

use std::ops::RangeInclusive;

/// A rectangle of a view: left, low, right, high.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Bounds {
    pub(super) low: [f64; 2],
    pub(super) high: [f64; 2],
}

impl Bounds {
    /// Around nothing.
    pub(super) const NONE: Self = Self {
        low: [f64::INFINITY; 2],
        high: [f64::NEG_INFINITY; 2],
    };

    /// Around points.
    pub(super) fn around<'p>(points: impl IntoIterator<Item = &'p [f64; 2]>) -> Self {
        let mut bounds = Self::NONE;
        for [x, y] in points {
            bounds.take(*x, *y);
        }
        bounds
    }

    /// Grown to hold a point.
    pub(super) fn take(&mut self, x: f64, y: f64) {
        self.low = [self.low[0].min(x), self.low[1].min(y)];
        self.high = [self.high[0].max(x), self.high[1].max(y)];
    }

    /// Grown to hold another.
    pub(super) fn join(&mut self, other: &Self) {
        self.take(other.low[0], other.low[1]);
        self.take(other.high[0], other.high[1]);
    }

    /// True where both share more than a line.
    pub(super) fn overlaps(&self, other: &Self) -> bool {
        self.low[0] < other.high[0]
            && other.low[0] < self.high[0]
            && self.low[1] < other.high[1]
            && other.low[1] < self.high[1]
    }

    /// True where all of `other` lies inside.
    pub(super) fn holds(&self, other: &Self) -> bool {
        self.low[0] <= other.low[0]
            && other.high[0] <= self.high[0]
            && self.low[1] <= other.low[1]
            && other.high[1] <= self.high[1]
    }

    /// What both have in common.
    pub(super) fn shared(&self, other: &Self) -> Self {
        Self {
            low: [0, 1].map(|k| self.low[k].max(other.low[k])),
            high: [0, 1].map(|k| self.high[k].min(other.high[k])),
        }
    }

    /// Width and height; zero around nothing.
    pub(super) fn size(&self) -> [f64; 2] {
        [
            (self.high[0] - self.low[0]).max(0.0),
            (self.high[1] - self.low[1]).max(0.0),
        ]
    }
}

/// Cells of equal size, each with the numbers of what touches it in the order it was laid in.
pub(super) struct Grid {
    raster: Raster,
    cells: Vec<Vec<u32>>,
}

/// Where the cells of a grid are, numbered row by row.
#[derive(Clone, Copy)]
struct Raster {
    low: [f64; 2],
    cell: f64,
    columns: usize,
    rows: usize,
}

/// The largest number of cells along one side.
const MOST_CELLS: f64 = 400.0;

impl Grid {
    /// A grid over `bounds` with about as many cells as there will be things in it.
    pub(super) fn new(bounds: &Bounds, things: usize) -> Self {
        let [width, height] = bounds.size();
        #[expect(
            clippy::cast_precision_loss,
            reason = "a count of things, for a size alone"
        )]
        let wanted = things.max(1) as f64;
        let cell = (width * height / wanted)
            .sqrt()
            .max(width.max(height) / MOST_CELLS)
            .max(1.0);
        let count = |size: f64| clamped(size / cell, 400) + 1;
        let (columns, rows) = (count(width), count(height));
        let raster = Raster {
            low: if width > 0.0 || height > 0.0 {
                bounds.low
            } else {
                [0.0; 2]
            },
            cell,
            columns,
            rows,
        };
        Self {
            raster,
            cells: vec![Vec::new(); columns * rows],
        }
    }

    /// Lays `number` into every cell that the polygon of `edges` may cover.
    pub(super) fn lay_polygon(&mut self, number: u32, bounds: &Bounds, edges: &[[f64; 4]]) {
        let raster = self.raster;
        for row in raster.row_range(bounds.low[1], bounds.high[1]) {
            let (bottom, top) = raster.row_band(row);
            let mut reach = (f64::INFINITY, f64::NEG_INFINITY);
            for edge in edges {
                if let Some((a, b)) = within_band(edge, bottom, top) {
                    reach = (reach.0.min(a), reach.1.max(b));
                }
            }
            if reach.0 <= reach.1 {
                for cell in raster.cells_of(row, reach) {
                    self.cells[cell].push(number);
                }
            }
        }
    }

    /// Lays `number` into every cell that a line touches.
    pub(super) fn lay_line(&mut self, number: u32, line: &[f64; 4]) {
        for cell in self.raster.cells_on(*line) {
            self.cells[cell].push(number);
        }
    }

    /// The cells that a line touches.
    pub(super) fn cells_on(&self, line: [f64; 4]) -> impl Iterator<Item = usize> + use<> {
        self.raster.cells_on(line)
    }

    /// The cells that a rectangle touches.
    pub(super) fn cells_in(&self, bounds: &Bounds) -> impl Iterator<Item = usize> + use<> {
        let (raster, [left, low], [right, high]) = (self.raster, bounds.low, bounds.high);
        raster
            .row_range(low, high)
            .flat_map(move |row| raster.cells_of(row, (left, right)))
    }

    /// What touches a cell.
    pub(super) fn things(&self, cell: usize) -> &[u32] {
        &self.cells[cell]
    }
}

impl Raster {
    /// The cells that a line touches.
    fn cells_on(self, line: [f64; 4]) -> impl Iterator<Item = usize> {
        let [_, ay, _, by] = line;
        self.row_range(ay.min(by), ay.max(by))
            .filter_map(move |row| {
                let (bottom, top) = self.row_band(row);
                within_band(&line, bottom, top).map(|reach| self.cells_of(row, reach))
            })
            .flatten()
    }

    /// The cells of a row from one x to another.
    fn cells_of(self, row: usize, (left, right): (f64, f64)) -> impl Iterator<Item = usize> {
        let first = row * self.columns;
        first + self.column(left)..=first + self.column(right)
    }

    fn column(self, x: f64) -> usize {
        clamped((x - self.low[0]) / self.cell, self.columns - 1)
    }

    fn row_range(self, low: f64, high: f64) -> RangeInclusive<usize> {
        let row = |y: f64| clamped((y - self.low[1]) / self.cell, self.rows - 1);
        row(low)..=row(high)
    }

    /// The band of a row; the outermost rows reach on for ever.
    fn row_band(self, row: usize) -> (f64, f64) {
        #[expect(clippy::cast_precision_loss, reason = "a row number up to 400")]
        let bottom = self.low[1] + self.cell * row as f64;
        (
            if row == 0 { f64::NEG_INFINITY } else { bottom },
            if row + 1 == self.rows {
                f64::INFINITY
            } else {
                bottom + self.cell
            },
        )
    }
}

/// The nearest whole number, of two as near the one farther from zero. Where the processor has no
/// instruction for it, `round` is a call.
pub(super) fn nearest(value: f64) -> i64 {
    #[expect(
        clippy::cast_possible_truncation,
        reason = "float to int casts saturate"
    )]
    let whole = (value + 0.5_f64.copysign(value)) as i64;
    whole
}

/// `value` as a whole number from 0 to `most`.
pub(super) fn clamped(value: f64, most: usize) -> usize {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "float to int casts saturate, and the value is positive"
    )]
    let whole = value.max(0.0) as usize;
    whole.min(most)
}

/// From where to where along x a line runs inside a band of y.
fn within_band(line: &[f64; 4], bottom: f64, top: f64) -> Option<(f64, f64)> {
    let [ax, ay, bx, by] = *line;
    let (low, high) = (ay.min(by), ay.max(by));
    if high < bottom || low > top {
        return None;
    }
    if low >= bottom && high <= top {
        return Some((ax.min(bx), ax.max(bx)));
    }
    let at = |y: f64| ax + (bx - ax) * ((y - ay) / (by - ay)).clamp(0.0, 1.0);
    let (a, b) = (at(low.max(bottom)), at(high.min(top)));
    Some((a.min(b), a.max(b)))
}
