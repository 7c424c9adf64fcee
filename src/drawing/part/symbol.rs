//! The symbol of a projection: a frustum of a cone and its end view (ISO 5456-2, ref:
//! units-and-paper, "Projection" [V]).

use super::super::pens::{NARROW_MM, THIN_MM, dash_dot, line};
use crate::build::Projection;
use crate::display::{Ends, Mark, PT_PER_MM, Path, Spot, Tone};

/// Width of the symbol, in points.
pub(in crate::drawing) const WIDTH: f64 = 17.0 * PT_PER_MM;
/// Height of the symbol, in points.
pub(in crate::drawing) const HEIGHT: f64 = 6.0 * PT_PER_MM;

/// The symbol, its left end in the middle of its height at `at`.
pub(in crate::drawing) fn symbol(projection: Projection, at: Spot) -> Vec<Mark> {
    let mm = PT_PER_MM;
    // The cone narrows to the left; seen from there, both circles are seen.
    let (cone, circles) = match projection {
        Projection::FirstAngle => (0.5, 13.5),
        Projection::ThirdAngle => (9.0, 3.5),
    };
    let centre = at.shifted(circles * mm, 0.0);
    let left = at.shifted(cone * mm, 0.0);
    let corner = |x: f64, y: f64| left.shifted(x * mm, y * mm);
    let frustum = [
        corner(0.0, -1.3),
        corner(7.0, -2.6),
        corner(7.0, 2.6),
        corner(0.0, 1.3),
    ];
    let stroke = |path: Path| Mark::Stroke {
        path,
        pen: line(NARROW_MM, Tone::BLACK),
    };
    let axis = |from: Spot, to: Spot| Mark::Stroke {
        path: Path::polyline(&[from, to], Ends::Open),
        pen: dash_dot(THIN_MM, Tone::BLACK),
    };
    vec![
        stroke(Path::polyline(&frustum, Ends::Joined)),
        stroke(Path::circle(centre, 1.3 * mm)),
        stroke(Path::circle(centre, 2.6 * mm)),
        axis(corner(-1.0, 0.0), corner(8.0, 0.0)),
        axis(
            centre.shifted(-3.3 * mm, 0.0),
            centre.shifted(3.3 * mm, 0.0),
        ),
        axis(
            centre.shifted(0.0, -3.3 * mm),
            centre.shifted(0.0, 3.3 * mm),
        ),
    ]
}
