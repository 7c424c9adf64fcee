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

/// A size with its figures in both systems, the author's own first.
#[derive(Clone, Debug)]
pub(in crate::drawing) struct Figured {
    /// Where its far end is along the row, in points from its beginning; below zero to the left.
    pub(in crate::drawing) end: f64,
    figures: [String; 2],
    /// The same for a column: one line more where they would be too wide.
    stack: Vec<String>,
}

impl Figured {
    /// True where its figures stand beside the middle of its column, between its ends.
    pub(super) fn has_room(&self) -> bool {
        let lines = f64::from(u32::try_from(self.stack.len()).unwrap_or(2));
        self.end > SHORT * lines / 2.0
    }
}

/// From the view to the first row, and from row to row, in millimetres.
const FIRST_MM: f64 = 8.0;
pub(super) const ROW_MM: f64 = 6.0;
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
    /// As finely as bits, screws and saw cuts are printed.
    pub(super) fn fine(&self) -> Self {
        Self {
            fonts: self.fonts,
            precision: self.precision.fine(),
        }
    }

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

    /// A size with its figures.
    pub(in crate::drawing) fn figured(&self, size: &Size) -> Figured {
        let figures = self.figures(size.length);
        Figured {
            end: size.end,
            stack: figures.to_vec(),
            figures,
        }
    }

    /// A size that is a number of equal steps, `9 × 96 mm = 864 mm`. The other system has the sum
    /// alone: rounded steps would not come to it.
    pub(super) fn in_steps(&self, end: f64, count: i64, step: Length) -> Figured {
        let [sum, second] = self.figures(step * count);
        let printed = step.printed(self.precision);
        let error = if self.precision.metric_first {
            printed.mm_error
        } else {
            printed.inch_error
        };
        let about = if error == Length::ZERO { "" } else { "~" };
        let [one, _] = self.figures(step);
        let (first, stack) = if count == 1 {
            (sum.clone(), vec![sum, second.clone()])
        } else {
            let (steps, sum) = (
                format!("{count}\u{a0}×\u{a0}{about}{one}"),
                format!("=\u{a0}{sum}"),
            );
            (
                format!("{steps}\u{a0}{sum}"),
                vec![steps, sum, second.clone()],
            )
        };
        Figured {
            end,
            figures: [first, second],
            stack,
        }
    }

    /// The figures of a length in one line, and how long that is.
    pub(super) fn line(&self, figures: &[String; 2]) -> ([f64; 2], f64) {
        let styles = [dimension(), second_dimension()];
        let mut widths = [0.0; 2];
        for ((width, style), text) in widths.iter_mut().zip(&styles).zip(figures) {
            *width = shape_line(self.fonts, style, text).width;
        }
        let [first, second] = widths;
        let between = 1.6 * PT_PER_MM;
        ([0.0, first + between], first + between + second)
    }

    /// The figures of a length on a line from a spot to the right.
    pub(super) fn lay_line(&self, figures: [String; 2], start: Spot, marks: &mut Vec<Mark>) {
        let (places, _) = self.line(&figures);
        let styles = [dimension(), second_dimension()];
        for ((style, text), x) in styles.iter().zip(figures).zip(places) {
            let spot = start.shifted(x, 0.0);
            marks.push(text_mark(self.fonts, style, Anchor::Start, spot, &text));
        }
    }

    /// A length's figures in both systems.
    pub(super) fn both(&self, length: Length) -> [String; 2] {
        self.figures(length)
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
        let figured: Vec<Figured> = sizes.iter().map(|size| self.figured(size)).collect();
        self.figured_rows(&figured, from, edge, down, lifted)
    }

    /// The same for sizes that have their figures.
    pub(super) fn figured_rows(
        &self,
        sizes: &[Figured],
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
            let (_, width) = self.line(&size.figures);
            // Over the line where it fits, before its beginning where it does not.
            let start = if width + 2.0 * PT_PER_MM < size.end.abs() {
                Spot::new((from + to - width) / 2.0, y - 1.1 * PT_PER_MM)
            } else {
                let tail = if outside { 6.5 } else { 1.5 } * PT_PER_MM;
                let x = if size.end < 0.0 {
                    from + tail
                } else {
                    from - tail - width
                };
                Spot::new(x, y + 3.0)
            };
            self.lay_line(size.figures.clone(), start, &mut marks);
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
        let figured: Vec<Figured> = sizes.iter().map(|size| self.figured(size)).collect();
        let crowded = sizes.len() > 1;
        let mut marks = Vec::new();
        let least = COLUMN_MM * PT_PER_MM;
        self.lay_columns(
            &figured,
            [from, up, edge, right],
            0.0,
            crowded,
            least,
            &mut marks,
        );
        marks
    }

    /// The same for sizes that have their figures, as close together as those allow, with how far
    /// they reach, in points; the first is `lifted` points farther off than it need be. Short ones
    /// that are crowded by lines of others have their figures beyond their beginning.
    pub(super) fn figured_columns(
        &self,
        sizes: &[Figured],
        [from, up, edge, right]: [f64; 4],
        lifted: f64,
        crowded: bool,
        marks: &mut Vec<Mark>,
    ) -> f64 {
        let place = [from, up, edge, right];
        self.lay_columns(sizes, place, lifted, crowded, 0.0, marks)
    }

    fn lay_columns(
        &self,
        sizes: &[Figured],
        [from, up, edge, right]: [f64; 4],
        lifted: f64,
        crowded: bool,
        least: f64,
        marks: &mut Vec<Mark>,
    ) -> f64 {
        let near = edge + right * CLEAR_MM * PT_PER_MM;
        let mut out = FIRST_MM * PT_PER_MM + lifted;
        let mut last = None;
        for size in sizes {
            let x = edge + right * out;
            let to = from - up * size.end;
            let far = x + right * CLEAR_MM * PT_PER_MM;
            extension(Spot::new(near, to), Spot::new(far, to), marks);
            arrows(Spot::new(x, from), Spot::new(x, to), marks);
            // Beside the middle of the line; beyond its beginning where it is too short and
            // lines of longer ones would run through.
            let lines = f64::from(u32::try_from(size.stack.len()).unwrap_or(2));
            let fits = size.has_room() || !crowded;
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
            let mut spot = Spot::new(x + right * aside, middle - 1.5 - 5.0 * (lines - 2.0));
            let mut widest: f64 = 0.0;
            for (number, text) in size.stack.iter().enumerate() {
                let is_second = number + 1 == size.stack.len();
                let style = if is_second {
                    second_dimension()
                } else {
                    dimension()
                };
                marks.push(text_mark(self.fonts, &style, anchor, spot, text));
                widest = widest.max(shape_line(self.fonts, &style, text).width);
                spot = spot.shifted(0.0, 10.0);
            }
            last = Some(far);
            out += (widest + 4.5 * PT_PER_MM).max(least);
        }
        if let Some(far) = last {
            extension(Spot::new(near, from), Spot::new(far, from), marks);
        }
        out - FIRST_MM * PT_PER_MM
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

pub(super) fn extension(from: Spot, to: Spot, marks: &mut Vec<Mark>) {
    marks.push(Mark::Stroke {
        path: Path::polyline(&[from, to], Ends::Open),
        pen: line(THIN_MM, Tone::BLACK),
    });
}

/// A dimension line with its arrows; true where they stand outside of it.
pub(super) fn arrows(a: Spot, b: Spot, marks: &mut Vec<Mark>) -> bool {
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
