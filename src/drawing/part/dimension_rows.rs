//! Sizes from one edge in parallel rows, the shortest nearest to the view (ISO 129-1, ref:
//! units-and-paper, "Dimensioning" [V]): no line crosses another, no figure stands on a line.

use super::super::pens::{NARROW_MM, THIN_MM, dimension, line, second_dimension};
use crate::display::{Ends, Mark, PT_PER_MM, Path, Spot, Tone};
use crate::text::{Anchor, Fonts, shape_line, text_mark};
use crate::units::{Length, Precision};

/// A size: how far along the paper it ends, and what it is.
#[derive(Clone, Copy, Debug)]
pub(in crate::drawing) struct Size {
    /// Where its far end is along the row, in points from the edge that all are taken from.
    pub(in crate::drawing) end: f64,
    /// The figure.
    pub(in crate::drawing) length: Length,
}

/// From the view to the first row, and from row to row, in millimetres.
const FIRST_MM: f64 = 8.0;
const ROW_MM: f64 = 6.0;
const COLUMN_MM: f64 = 18.0;
/// Extension lines begin this far off the view and go this far over, in millimetres.
const CLEAR_MM: f64 = 1.5;
/// Length and half width of an arrow, in millimetres.
const ARROW_MM: (f64, f64) = (2.8, 0.45);
/// Shorter lines have their arrows outside, in millimetres.
const NARROW_SPAN_MM: f64 = 7.0;

/// Columns shorter than this, in points, have their figures beyond their beginning.
const SHORT: f64 = 9.0 * PT_PER_MM;
/// How far such figures reach beyond it, in points.
pub(in crate::drawing) const BEYOND: f64 = 9.0 * PT_PER_MM;

/// True where a figure stands beyond the beginning of its column.
pub(in crate::drawing) fn has_short(columns: &[Size]) -> bool {
    columns.len() > 1 && columns.iter().any(|size| size.end <= SHORT)
}

/// What all rows of a drawing share.
pub(in crate::drawing) struct Lettering<'l> {
    pub(in crate::drawing) fonts: &'l Fonts,
    pub(in crate::drawing) precision: Precision,
}

impl Lettering<'_> {
    fn figures(&self, length: Length) -> [String; 2] {
        let printed = length.printed(self.precision);
        let (metric, inch) = (
            format!("{}\u{a0}mm", printed.mm),
            format!("{}\u{a0}in", printed.inch_set),
        );
        if self.precision.metric_first {
            [metric, inch]
        } else {
            [inch, metric]
        }
    }

    /// Rows under a view (`down` is 1) or over it (-1) whose edge is at `edge`, from `from` on;
    /// the first is `lifted` points farther off than it need be.
    pub(in crate::drawing) fn rows(
        &self,
        sizes: &[Size],
        from: f64,
        edge: f64,
        down: f64,
        lifted: f64,
    ) -> Vec<Mark> {
        let mut marks = Vec::new();
        let out = |row: f64| edge + down * ((FIRST_MM + ROW_MM * row) * PT_PER_MM + lifted);
        for (row, size) in (0_u32..).map(f64::from).zip(sizes) {
            let y = out(row);
            let to = from + size.end;
            let far = y + down * CLEAR_MM * PT_PER_MM;
            extension(
                Spot::new(to, edge + down * CLEAR_MM * PT_PER_MM),
                Spot::new(to, far),
                &mut marks,
            );
            let outside = arrows(Spot::new(from, y), Spot::new(to, y), &mut marks);
            let [first, second] = self.figures(size.length);
            let styles = [dimension(), second_dimension()];
            let widths = [
                shape_line(self.fonts, &styles[0], &first).width,
                shape_line(self.fonts, &styles[1], &second).width,
            ];
            let between = 1.6 * PT_PER_MM;
            let width = widths[0] + between + widths[1];
            // Over the line where it fits, before its beginning where it does not.
            let start = if width + 2.0 * PT_PER_MM < size.end {
                Spot::new((from + to - width) / 2.0, y - 1.1 * PT_PER_MM)
            } else {
                let tail = if outside { 6.5 } else { 1.5 };
                Spot::new(from - tail * PT_PER_MM - width, y + 3.0)
            };
            for ((style, text), x) in styles
                .iter()
                .zip([first, second])
                .zip([0.0, widths[0] + between])
            {
                let spot = start.shifted(x, 0.0);
                marks.push(text_mark(self.fonts, style, Anchor::Start, spot, &text));
            }
        }
        if let Some(last) = (0_u32..).map(f64::from).zip(sizes).last() {
            let far = out(last.0) + down * CLEAR_MM * PT_PER_MM;
            let near = edge + down * CLEAR_MM * PT_PER_MM;
            extension(Spot::new(from, near), Spot::new(from, far), &mut marks);
        }
        marks
    }

    /// Columns right of a view (`right` is 1) or left of it (-1) whose edge is at `edge`, from
    /// `from` upwards (`up` is 1) or downwards (-1) on the paper.
    pub(in crate::drawing) fn columns(
        &self,
        sizes: &[Size],
        from: f64,
        up: f64,
        edge: f64,
        right: f64,
    ) -> Vec<Mark> {
        let mut marks = Vec::new();
        let out = |column: f64| edge + right * (FIRST_MM + COLUMN_MM * column) * PT_PER_MM;
        for (column, size) in (0_u32..).map(f64::from).zip(sizes) {
            let x = out(column);
            let to = from - up * size.end;
            let far = x + right * CLEAR_MM * PT_PER_MM;
            extension(
                Spot::new(edge + right * CLEAR_MM * PT_PER_MM, to),
                Spot::new(far, to),
                &mut marks,
            );
            arrows(Spot::new(x, from), Spot::new(x, to), &mut marks);
            // Beside the middle of the line; beyond its beginning where it is too short and
            // lines of longer ones would run through.
            let fits = size.end > SHORT || sizes.len() == 1;
            let middle = if fits {
                f64::midpoint(from, to)
            } else {
                from + up * 9.0 * PT_PER_MM
            };
            let aside = if fits { 2.2 } else { 1.0 } * PT_PER_MM;
            let anchor = if right > 0.0 {
                Anchor::Start
            } else {
                Anchor::End
            };
            let spot = Spot::new(x + right * aside, middle);
            let styles = [dimension(), second_dimension()];
            for ((style, text), y) in styles
                .iter()
                .zip(self.figures(size.length))
                .zip([-1.5, 8.5])
            {
                let spot = spot.shifted(0.0, y);
                marks.push(text_mark(self.fonts, style, anchor, spot, &text));
            }
        }
        if let Some(last) = (0_u32..).map(f64::from).zip(sizes).last() {
            let far = out(last.0) + right * CLEAR_MM * PT_PER_MM;
            let near = edge + right * CLEAR_MM * PT_PER_MM;
            extension(Spot::new(near, from), Spot::new(far, from), &mut marks);
        }
        marks
    }
}

/// The height of some rows, in points.
pub(in crate::drawing) fn height_of(rows: usize) -> f64 {
    let count = u32::try_from(rows).map_or(0.0, f64::from);
    if count > 0.0 {
        (FIRST_MM + ROW_MM * (count - 1.0) + 3.0) * PT_PER_MM
    } else {
        0.0
    }
}

fn extension(from: Spot, to: Spot, marks: &mut Vec<Mark>) {
    marks.push(Mark::Stroke {
        path: Path::polyline(&[from, to], Ends::Open),
        pen: line(THIN_MM, Tone::BLACK),
    });
}

/// A dimension line with its arrows; true where they stand outside of it.
fn arrows(a: Spot, b: Spot, marks: &mut Vec<Mark>) -> bool {
    let length = libm::hypot(b.x - a.x, b.y - a.y);
    if length <= 0.0 {
        return false;
    }
    let outside = length < NARROW_SPAN_MM * PT_PER_MM;
    let (dx, dy) = ((b.x - a.x) / length, (b.y - a.y) / length);
    let sign = if outside { -1.0 } else { 1.0 };
    let tail = if outside { 5.0 * PT_PER_MM } else { 0.0 };
    let ends = [
        a.shifted(-dx * tail, -dy * tail),
        b.shifted(dx * tail, dy * tail),
    ];
    marks.push(Mark::Stroke {
        path: Path::polyline(&ends, Ends::Open),
        pen: line(NARROW_MM * 0.75, Tone::BLACK),
    });
    for (tip, along) in [(a, sign), (b, -sign)] {
        let (long, half) = (ARROW_MM.0 * PT_PER_MM, ARROW_MM.1 * PT_PER_MM);
        let back = tip.shifted(dx * along * long, dy * along * long);
        let corners = [
            tip,
            back.shifted(-dy * half, dx * half),
            back.shifted(dy * half, -dx * half),
        ];
        marks.push(Mark::Fill {
            path: Path::polyline(&corners, Ends::Joined),
            tone: Tone::BLACK,
        });
    }
    outside
}
