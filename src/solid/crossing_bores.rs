//! What two bores that cross square to each other have in common, which is taken once.

use std::f64::consts::PI;

use super::bores::Bore;
use super::measures::Measures;
use super::stack::{Stack, extent_along, level_of, sunk};
use crate::build::Part;
use crate::geometry::{Circle, Interval, PartAxis, PlanePoint, Side};
use crate::model::FeatureShape;
use crate::units::Length;

/// Slices across a bore.
const STEPS: u32 = 1024;

/// A cylinder along the thickness: a hole in a broad side.
struct Upright {
    /// Its middle along the bore's own two other directions.
    across: f64,
    along: f64,
    radius: f64,
    /// Along the thickness.
    reach: [f64; 2],
    /// Levels of its floors.
    floors: [Option<f64>; 2],
}

/// Gives back what a bore into an edge and the holes in broad sides both took.
pub(super) fn put_right(
    part: &Part,
    stack: &Stack,
    side: Side,
    bore: &Bore,
    measures: &mut Measures,
) {
    if stack.axis != PartAxis::Thickness {
        return;
    }
    for feature in &part.features {
        let FeatureShape::Holes(holes) = &feature.shape else {
            continue;
        };
        // Stepped holes are as their bore here: the step itself is seldom met.
        if !stack.caps(holes.side) {
            continue;
        }
        let whole = extent_along(&stack.extent, PartAxis::Thickness);
        let reach = holes
            .depth
            .map_or(whole, |depth| sunk(&stack.extent, holes.side, depth));
        let floor = |level: Length, end: Length| (level != end).then(|| level.mm());
        for at in &holes.positions {
            let PlanePoint { x, y } = *at;
            let (across, along) = if side.axis() == PartAxis::Width {
                (x, y)
            } else {
                (y, x)
            };
            let upright = Upright {
                across: across.mm(),
                along: along.mm(),
                radius: holes.diameter.mm() / 2.0,
                reach: [reach.low.mm(), reach.high.mm()],
                floors: [floor(reach.low, whole.low), floor(reach.high, whole.high)],
            };
            for circle in bore.section.rings().filter_map(|ring| ring.first()?.circle) {
                cross(&upright, circle, stack, side, bore, measures);
            }
        }
    }
}

fn cross(
    hole: &Upright,
    circle: Circle,
    stack: &Stack,
    side: Side,
    bore: &Bore,
    measures: &mut Measures,
) {
    let (centre, level, radius) = (
        circle.centre.x.mm(),
        circle.centre.y.mm(),
        circle.radius.mm(),
    );
    if (centre - hole.across).abs() >= radius + hole.radius {
        return;
    }
    let at = |depth: Length| side.inward(level_of(&stack.extent, side), depth);
    let run = Interval::new(at(bore.from), at(bore.to));
    let run = [run.low.mm(), run.high.mm()];
    let floor = bore.floor.is_some().then(|| at(bore.to).mm());
    let (mut volume, mut lost) = (0.0, 0.0);
    let mut moments = [0.0; 3];
    let step = PI / f64::from(STEPS);
    for number in (0..STEPS).map(f64::from) {
        let (sine, cosine) = libm::sincos((number + 0.5) * step - PI / 2.0);
        let u = centre + radius * sine;
        let square = hole.radius * hole.radius - (u - hole.across) * (u - hole.across);
        if square <= 0.0 {
            continue;
        }
        let (half, high) = (square.sqrt(), radius * cosine);
        let width = radius * cosine * step;
        let (Some([z0, z1]), Some([w0, w1])) = (
            common([level - high, level + high], hole.reach),
            common([hole.along - half, hole.along + half], run),
        ) else {
            continue;
        };
        let (tall, long) = (z1 - z0, w1 - w0);
        let slice = tall * long * width;
        volume += slice;
        let middle = [u, f64::midpoint(w0, w1), f64::midpoint(z0, z1)];
        for (moment, middle) in moments.iter_mut().zip(middle) {
            *moment += slice * middle;
        }
        let inside = |value: f64, [low, high]: [f64; 2]| f64::from(low < value && value < high);
        // The bore's wall in the hole, the hole's wall in the bore, and floors in each other.
        let walls = inside(level - high, hole.reach) + inside(level + high, hole.reach);
        lost += walls * radius * step * long;
        let sides = inside(hole.along - half, run) + inside(hole.along + half, run);
        lost += sides * hole.radius / half * width * tall;
        let in_hole = [hole.along - half, hole.along + half];
        lost += floor.map_or(0.0, |floor| inside(floor, in_hole)) * tall * width;
        let in_bore = [level - high, level + high];
        for floor in hole.floors.into_iter().flatten() {
            lost += inside(floor, in_bore) * long * width;
        }
    }
    if volume <= 0.0 {
        return;
    }
    let [u, w, z] = moments.map(|moment| moment / volume);
    let centre = if side.axis() == PartAxis::Width {
        [u, w, z]
    } else {
        [w, u, z]
    };
    measures.add_volume(volume, centre);
    measures.surface_mm2 -= lost;
}

fn common(a: [f64; 2], b: [f64; 2]) -> Option<[f64; 2]> {
    let both = [a[0].max(b[0]), a[1].min(b[1])];
    (both[0] < both[1]).then_some(both)
}
