//! The squares that prove a print's scale: 100 mm and 4 in, from one corner.
//!
//! A rule laid along an edge from the common corner meets a tick at every 10 mm (below) or every
//! 1/2 in (left); the squares end 1.6 mm apart, so neither can be taken for the other.

use crate::display::{Area, Ends, Face, Mark, PT_PER_MM, Path, Pen, Spot, Tone};
use crate::document::tree::{Align, Inline};
use crate::text::TextStyle;

use super::Placed;
use super::blocks::{Column, Setter};
use super::flow::Slab;
use super::inline::Text;
use super::style::{GRID, QUIET, baseline};

/// 100 mm in points.
const METRIC: f64 = 100.0 * PT_PER_MM;
/// 4 in in points.
const INCHES: f64 = 4.0 * 72.0;
/// Length of a tick.
const TICK: f64 = 5.0;

impl<'d> Setter<'d, '_> {
    pub(super) fn scale_check(&mut self, column: Column) {
        // Half a pen width is left free on every side.
        let mut slab: Slab<'d> = Slab::new(INCHES + 1.0);
        slab.space = self.flow.space(GRID);
        let corner = Spot::new(column.x + 0.5, INCHES + 0.5);
        let mut marks = vec![
            square(corner, METRIC, 0.7, &[]),
            square(corner, INCHES, 0.5, &[4.0, 2.0]),
        ];
        for tick in 1..10 {
            let x = corner.x + METRIC * f64::from(tick) / 10.0;
            let length = if tick == 5 { TICK * 1.6 } else { TICK };
            let spot = Spot::new(x, corner.y);
            marks.push(line(spot, spot.shifted(0.0, -length)));
        }
        for tick in 1..8 {
            let y = corner.y - INCHES * f64::from(tick) / 8.0;
            let length = if tick % 2 == 0 { TICK * 1.6 } else { TICK };
            let spot = Spot::new(corner.x, y);
            marks.push(line(spot, spot.shifted(length, 0.0)));
        }
        slab.content = marks.into_iter().map(Placed::Mark).collect();
        let bold = TextStyle::new(Face::Bold, 9.0);
        let quiet = TextStyle::new(Face::Regular, 8.5).tone(QUIET);
        let words = self.words;
        let left = corner.x + GRID * 4.0;
        let mut down = corner.y - METRIC + GRID * 5.0;
        for (message, style) in [
            ("page-metric-square", bold),
            ("page-inch-square", bold),
            ("page-scale-advice", quiet),
        ] {
            let text = [Inline::Text(words.word(message, &[]))];
            let text = Text::new(&text, style);
            let width = METRIC - GRID * 8.0;
            for line in text.lines(self.fonts, width) {
                let spot = Spot::new(left, down + baseline(style.size, 14.0));
                let placed = text.marks(self.fonts, line, spot, (width, Align::Left));
                slab.content.extend(placed);
                down += 14.0;
            }
            down += GRID;
        }
        self.flow.push(slab);
        self.flow.space_after(GRID * 2.0);
    }
}

/// A square of which `corner` is the lower left one.
fn square(corner: Spot, side: f64, width: f64, dashes: &[f64]) -> Mark {
    Mark::Stroke {
        path: Path::rectangle(Area {
            x: corner.x,
            y: corner.y - side,
            width: side,
            height: side,
        }),
        pen: Pen {
            width,
            tone: Tone::BLACK,
            dashes: dashes.to_vec(),
        },
    }
}

fn line(from: Spot, to: Spot) -> Mark {
    Mark::Stroke {
        path: Path::polyline(&[from, to], Ends::Open),
        pen: Pen {
            width: 0.5,
            tone: Tone::BLACK,
            dashes: Vec::new(),
        },
    }
}
