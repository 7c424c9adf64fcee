//! Whether a piece stays on its feet.

use super::Standing;
use crate::build::Build;
use crate::geometry::{Axis, Direction, Interval};
use crate::units::Length;
use crate::wood::stability::{tipping_degrees, tipping_push_n};

/// What is this near to the lowest point stands on the floor.
const ON_THE_FLOOR: Length = Length::from_mm(1);

/// How the build stands: over which side it tips most easily, and how hard it is to pull over.
pub(super) fn standing(
    build: &Build,
    kg: &[Option<f64>],
    centre_mm: Option<[f64; 3]>,
) -> Option<Standing> {
    let ([_, _, high], [x, y, z]) = (build.overall?, centre_mm?);
    let feet = |axis: Axis| {
        let standing = build.placed.iter().filter(|piece| {
            let reach = piece.place.get(Axis::High.index());
            reach.is_some_and(|reach| reach.low <= high.low + ON_THE_FLOOR)
        });
        let stretches = standing.filter_map(|piece| piece.place.get(axis.index()).copied());
        stretches.reduce(Interval::hull)
    };
    let (width, depth) = (feet(Axis::Across)?, feet(Axis::Deep)?);
    let ways = [
        (Direction::Left, x - width.low.mm()),
        (Direction::Right, width.high.mm() - x),
        (Direction::Front, y - depth.low.mm()),
        (Direction::Back, depth.high.mm() - y),
    ];
    let (towards, inside_mm) = ways.into_iter().min_by(|a, b| a.1.total_cmp(&b.1))?;
    let high_mm = z - high.low.mm();
    let total: f64 = kg.iter().flatten().sum();
    let front = y - depth.low.mm();
    Some(Standing {
        towards,
        inside_mm,
        high_mm,
        degrees: tipping_degrees(inside_mm, high_mm),
        front_pull_n: tipping_push_n(total, front, high.size().mm()),
    })
}
