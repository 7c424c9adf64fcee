//! Angles of mitres, bevels and tapers: an arc between the side as it was and the cut, and the
//! figure beside it (ISO 129-1: angular dimensions; the form from memory [M]).

use super::super::pens::{NARROW_MM, THIN_MM, dimension, line};
use super::super::picture::Sheet;
use super::views::{PartView, outward};
use crate::display::{Ends, Mark, PT_PER_MM, Path, PathPiece, Spot, Tone};
use crate::model::Slope;
use crate::text::{Anchor, Fonts, text_mark};
use crate::units::Length;

/// Radius of the arc, in millimetres.
const RADIUS_MM: f64 = 9.0;
/// Narrower angles have their figure beyond the arc, in degrees.
const ACUTE: f64 = 20.0;

/// The angle of a slope in a view that looks along it; nothing in any other view.
///
/// The arc stands about the point where the cut leaves the side, outside of the wood that is
/// left, between the side as it was and the cut.
pub(super) fn angle(fonts: &Fonts, slope: &Slope, view: &PartView, sheet: &Sheet) -> Vec<Mark> {
    let axis = view.side.axis();
    if axis == slope.side.axis() || axis == slope.deep.axis() {
        return Vec::new();
    }
    let mm = |length: Length| length.mm() * 1000.0;
    let mut corner = [0.0; 3];
    let run = slope.deep.inward(slope.deep_level, slope.run);
    for (axis, value) in [(slope.side.axis(), slope.level), (slope.deep.axis(), run)] {
        if let Some(slot) = corner.get_mut(axis.index()) {
            *slot = mm(value);
        }
    }
    let [x, y, _] = view.view.project(corner);
    let apex = sheet.spot([x, y]);
    // Along the side as it was, to where it is cut deepest, and along the cut.
    let on_paper = |vector: [f64; 3]| {
        let [x, y, _] = view.view.turn(vector);
        [x, -y]
    };
    let (inset, run) = (slope.inset.mm(), slope.run.mm());
    let length = libm::hypot(inset, run);
    let [ax, ay] = on_paper(outward(slope.deep));
    let [ox, oy] = on_paper(outward(slope.side));
    let (bx, by) = (
        (ax * run - ox * inset) / length,
        (ay * run - oy * inset) / length,
    );
    let whole = run * 1000.0 * sheet.scale;
    let radius = (RADIUS_MM * PT_PER_MM)
        .min(0.8 * whole)
        .max(3.0 * PT_PER_MM);
    let (from, sweep) = (libm::atan2(ay, ax), {
        libm::atan2(ax * by - ay * bx, ax * bx + ay * by)
    });
    let at = |angle: f64, far: f64| {
        let (sine, cosine) = libm::sincos(angle);
        apex.shifted(cosine * far, sine * far)
    };
    let thin = |path| Mark::Stroke {
        path,
        pen: line(THIN_MM, Tone::BLACK),
    };
    let mut marks = vec![thin(Path::polyline(
        &[
            at(from, 1.0 * PT_PER_MM),
            at(from, radius + 2.0 * PT_PER_MM),
        ],
        Ends::Open,
    ))];
    marks.push(Mark::Stroke {
        path: arc(|angle| at(angle, radius), from, sweep),
        pen: line(NARROW_MM * 0.75, Tone::BLACK),
    });
    let text = slope.printed_degrees();
    // In a wide angle inside of the arc's middle, beside a narrow one.
    let (angle, far) = if slope.degrees() < ACUTE {
        (from - sweep.signum() * 0.28, radius + 2.5 * PT_PER_MM)
    } else {
        (from + sweep / 2.0, radius + 3.5 * PT_PER_MM)
    };
    let spot = at(angle, far);
    let anchor = if spot.x < apex.x - radius * 0.4 {
        Anchor::End
    } else if spot.x > apex.x + radius * 0.4 {
        Anchor::Start
    } else {
        Anchor::Middle
    };
    let style = dimension();
    marks.push(text_mark(
        fonts,
        &style,
        anchor,
        spot.shifted(0.0, style.size * 0.36),
        &text,
    ));
    marks
}

/// An arc of less than a half turn, as one curve for each quarter.
fn arc(at: impl Fn(f64) -> Spot, from: f64, sweep: f64) -> Path {
    let count = libm::ceil(sweep.abs() / std::f64::consts::FRAC_PI_2).max(1.0);
    let step = sweep / count;
    let reach = 4.0 / 3.0 * libm::tan(step / 4.0);
    let tangent = |angle: f64| {
        let (a, b) = (at(angle), at(angle + std::f64::consts::FRAC_PI_2));
        let centre = {
            let opposite = at(angle + std::f64::consts::PI);
            Spot::new(
                f64::midpoint(a.x, opposite.x),
                f64::midpoint(a.y, opposite.y),
            )
        };
        (b.x - centre.x, b.y - centre.y)
    };
    let mut pieces = vec![PathPiece::Move(at(from))];
    let mut angle = from;
    let mut left = count;
    while left > 0.5 {
        let (start, end) = (at(angle), at(angle + step));
        let ((ax, ay), (bx, by)) = (tangent(angle), tangent(angle + step));
        pieces.push(PathPiece::Curve(
            start.shifted(ax * reach, ay * reach),
            end.shifted(-bx * reach, -by * reach),
            end,
        ));
        angle += step;
        left -= 1.0;
    }
    Path { pieces }
}
