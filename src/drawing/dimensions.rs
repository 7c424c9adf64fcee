//! Overall dimensions in a pictorial view: lines along the world's axes, both unit systems.

use super::contacts::Box3;
use super::pens::{NARROW_MM, THIN_MM, dimension, line, second_dimension};
use super::picture::Sheet;
use super::view::{View, WorldPoint};
use crate::display::{Area, Ends, Mark, PT_PER_MM, Path, Spot, Tone};
use crate::text::{Anchor, Fonts, shape_line, text_mark};
use crate::units::{Length, Precision};

/// The first dimension line is this far off the outline, in millimetres (ref: units-and-paper,
/// "Dimension lines" [V, US practice]).
const OFF_MM: f64 = 10.0;
/// Extension lines begin this far off the outline and go this far over, in millimetres.
const CLEAR_MM: f64 = 1.5;
/// From a dimension line to its figure, in millimetres.
const TEXT_MM: f64 = 1.6;
/// Length and half width of an arrow, in millimetres.
const ARROW_MM: (f64, f64) = (2.8, 0.45);

/// A dimension along one axis of the world.
struct Line {
    /// The edge that is measured.
    ends: [WorldPoint; 2],
    /// A direction of the world that leads away from the wood.
    away: WorldPoint,
    length: Length,
}

/// Width, depth and height of `overall`, and the area the marks take.
pub(super) fn overall_dimensions(
    fonts: &Fonts,
    overall: &Box3,
    sizes: [Length; 3],
    view: &View,
    sheet: &Sheet,
    precision: Precision,
) -> (Vec<Mark>, Area) {
    let mut marks = Vec::new();
    let mut reach = Reach::default();
    let centre = project(view, sheet, overall.middle());
    for dimension in lines(overall, sizes, view) {
        lay_line(
            fonts, &dimension, view, sheet, centre, precision, &mut marks, &mut reach,
        );
    }
    (marks, reach.area())
}

fn project(view: &View, sheet: &Sheet, point: WorldPoint) -> Spot {
    let [x, y, _] = view.project(point);
    sheet.spot([x, y])
}

/// The edges of the box that are measured: two that meet at the bottom towards the reader, and
/// the upright at the view's left end.
fn lines(overall: &Box3, sizes: [Length; 3], view: &View) -> Vec<Line> {
    let towards = |axis: usize| {
        let mut unit = [0.0; 3];
        if let Some(part) = unit.get_mut(axis) {
            *part = 1.0;
        }
        view.towards_eye(unit)
    };
    let (low, high) = (overall.low, overall.high);
    let pick = |axis: usize, near: bool| {
        let (low, high) = (
            low.get(axis).copied().unwrap_or_default(),
            high.get(axis).copied().unwrap_or_default(),
        );
        if (towards(axis) > 0.0) == near {
            high
        } else {
            low
        }
    };
    let floor = if towards(2) >= 0.0 { 0 } else { 1 };
    let z = if floor == 0 { low } else { high }
        .get(2)
        .copied()
        .unwrap_or_default();
    let (near_x, near_y) = (pick(0, true), pick(1, true));
    let (far_x, far_y) = (pick(0, false), pick(1, false));
    let sign = |axis: usize| if towards(axis) > 0.0 { 1.0 } else { -1.0 };
    let [width, depth, height] = sizes;
    let mut lines = vec![
        Line {
            ends: [[far_x, near_y, z], [near_x, near_y, z]],
            away: [0.0, sign(1), 0.0],
            length: width,
        },
        Line {
            ends: [[near_x, near_y, z], [near_x, far_y, z]],
            away: [sign(0), 0.0, 0.0],
            length: depth,
        },
    ];
    // The uprights at the two ends of the view's outline: the left one is measured.
    let upright = |x: f64, y: f64| {
        let [sx, _, _] = view.project([x, y, z]);
        (sx, x, y)
    };
    let [a, b] = [upright(far_x, near_y), upright(near_x, far_y)];
    let (_, x, y) = if a.0 < b.0 { a } else { b };
    let away = if (x - far_x).abs() < 0.5 {
        [-sign(0), 0.0, 0.0]
    } else {
        [0.0, -sign(1), 0.0]
    };
    lines.push(Line {
        ends: [
            [x, y, low.get(2).copied().unwrap_or_default()],
            [x, y, high.get(2).copied().unwrap_or_default()],
        ],
        away,
        length: height,
    });
    lines
}

#[expect(clippy::too_many_arguments, reason = "a line, and where it is drawn")]
fn lay_line(
    fonts: &Fonts,
    item: &Line,
    view: &View,
    sheet: &Sheet,
    centre: Spot,
    precision: Precision,
    marks: &mut Vec<Mark>,
    reach: &mut Reach,
) {
    let [a, b] = item.ends.map(|end| project(view, sheet, end));
    let length = libm::hypot(b.x - a.x, b.y - a.y);
    let [ax, ay, _] = view.turn(item.away);
    let seen = libm::hypot(ax, ay);
    // An axis that is seen end on is not measured.
    if length < 4.0 * PT_PER_MM || seen < 0.1 {
        return;
    }
    let (ux, uy) = (ax / seen, -ay / seen);
    let (dx, dy) = ((b.x - a.x) / length, (b.y - a.y) / length);
    // The line is as far off as the standard says, measured square to it.
    let slant = (ux * dy - uy * dx).abs().max(0.3);
    let out = |spot: Spot, mm: f64| {
        spot.shifted(ux * mm / slant * PT_PER_MM, uy * mm / slant * PT_PER_MM)
    };
    let (p, q) = (out(a, OFF_MM), out(b, OFF_MM));
    let stroke = |marks: &mut Vec<Mark>, ends: [Spot; 2], width: f64| {
        marks.push(Mark::Stroke {
            path: Path::polyline(&ends, Ends::Open),
            pen: line(width, Tone::BLACK),
        });
    };
    for (end, tip) in [(a, p), (b, q)] {
        let over = out(end, OFF_MM + CLEAR_MM);
        stroke(marks, [out(end, CLEAR_MM), over], THIN_MM);
        reach.take(over);
        reach.take(tip);
    }
    stroke(marks, [p, q], NARROW_MM * 0.75);
    arrow(p, (-dx, -dy), marks);
    arrow(q, (dx, dy), marks);
    let middle = Spot::new((p.x + q.x) / 2.0, (p.y + q.y) / 2.0);
    // Out of the two ways square to the line, the one that leads away from the wood.
    let (nx, ny) = if (middle.x - centre.x) * -dy + (middle.y - centre.y) * dx > 0.0 {
        (-dy, dx)
    } else {
        (dy, -dx)
    };
    figures(
        fonts,
        item.length,
        middle,
        (nx, ny),
        precision,
        marks,
        reach,
    );
}

/// Both figures in a block that touches the line's side.
fn figures(
    fonts: &Fonts,
    length: Length,
    middle: Spot,
    (nx, ny): (f64, f64),
    precision: Precision,
    marks: &mut Vec<Mark>,
    reach: &mut Reach,
) {
    let printed = length.printed(precision);
    let (metric, inch) = (
        format!("{}\u{a0}mm", printed.mm),
        format!("{}\u{a0}in", printed.inch_set),
    );
    let (first, second) = if precision.metric_first {
        (metric, inch)
    } else {
        (inch, metric)
    };
    let styles = [(dimension(), first), (second_dimension(), second)];
    let width = styles
        .iter()
        .map(|(style, text)| shape_line(fonts, style, text).width)
        .fold(0.0, f64::max);
    let (leading, height) = (10.5, 19.5);
    let support = nx.abs() * width / 2.0 + ny.abs() * height / 2.0 + TEXT_MM * PT_PER_MM;
    let centre = middle.shifted(nx * support, ny * support);
    let mut baseline = centre.y - height / 2.0 + 7.5;
    for (style, text) in styles {
        let spot = Spot::new(centre.x, baseline);
        marks.push(text_mark(fonts, &style, Anchor::Middle, spot, &text));
        baseline += leading;
    }
    reach.take(centre.shifted(-width / 2.0, -height / 2.0));
    reach.take(centre.shifted(width / 2.0, height / 2.0));
}

fn arrow(tip: Spot, (dx, dy): (f64, f64), marks: &mut Vec<Mark>) {
    let (long, half) = (ARROW_MM.0 * PT_PER_MM, ARROW_MM.1 * PT_PER_MM);
    let back = tip.shifted(-dx * long, -dy * long);
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

/// The room that marks take.
struct Reach {
    low: Spot,
    high: Spot,
}

impl Default for Reach {
    fn default() -> Self {
        Self {
            low: Spot::new(f64::INFINITY, f64::INFINITY),
            high: Spot::new(f64::NEG_INFINITY, f64::NEG_INFINITY),
        }
    }
}

impl Reach {
    fn take(&mut self, spot: Spot) {
        self.low = Spot::new(self.low.x.min(spot.x), self.low.y.min(spot.y));
        self.high = Spot::new(self.high.x.max(spot.x), self.high.y.max(spot.y));
    }

    fn area(&self) -> Area {
        if self.low.x > self.high.x {
            return Area::default();
        }
        Area {
            x: self.low.x,
            y: self.low.y,
            width: self.high.x - self.low.x,
            height: self.high.y - self.low.y,
        }
    }
}
