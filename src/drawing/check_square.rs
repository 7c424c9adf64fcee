//! The squares that prove a print's scale: 100 mm and 4 in, from one corner.
//!
//! A rule laid along an edge from the common corner meets a tick at every 10 mm (below) or every
//! 1/2 in (left); the squares end 1.6 mm apart, so neither can be taken for the other.

use crate::display::{Area, Ends, Mark, PT_PER_MM, Path, Pen, Spot, Tone};

/// The side of the solid square, 100 mm, in points.
pub const METRIC: f64 = 100.0 * PT_PER_MM;
/// The side of the dashed square, 4 in, in points.
pub const INCHES: f64 = 4.0 * 72.0;
/// Length of a tick.
const TICK: f64 = 5.0;

/// How the squares are drawn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SquareInk {
    /// Width of the solid square's line, in points; the dashed one's and the ticks' are less.
    pub width: f64,
    /// Their tone.
    pub tone: Tone,
}

/// The squares with `corner` as their lower left one, `scale` times as large as they are on paper.
pub fn check_square(corner: Spot, scale: f64, ink: SquareInk) -> Vec<Mark> {
    let [metric, inches] = [METRIC, INCHES].map(|side| side * scale);
    let pen = |width: f64, dashes: &[f64]| Pen {
        width: ink.width * width,
        tone: ink.tone,
        dashes: dashes.to_vec(),
    };
    let mut marks = vec![
        square(corner, metric, pen(1.0, &[])),
        square(corner, inches, pen(5.0 / 7.0, &[4.0, 2.0])),
    ];
    let mut tick = |from: Spot, to: Spot| {
        marks.push(Mark::Stroke {
            path: Path::polyline(&[from, to], Ends::Open),
            pen: pen(5.0 / 7.0, &[]),
        });
    };
    for number in 1..10 {
        let x = corner.x + metric * f64::from(number) / 10.0;
        let length = if number == 5 { TICK * 1.6 } else { TICK };
        let spot = Spot::new(x, corner.y);
        tick(spot, spot.shifted(0.0, -length));
    }
    for number in 1..8 {
        let y = corner.y - inches * f64::from(number) / 8.0;
        let length = if number % 2 == 0 { TICK * 1.6 } else { TICK };
        let spot = Spot::new(corner.x, y);
        tick(spot, spot.shifted(length, 0.0));
    }
    marks
}

/// A square of which `corner` is the lower left one.
fn square(corner: Spot, side: f64, pen: Pen) -> Mark {
    Mark::Stroke {
        path: Path::rectangle(Area {
            x: corner.x,
            y: corner.y - side,
            width: side,
            height: side,
        }),
        pen,
    }
}
