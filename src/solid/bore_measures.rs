//! What bores into edges, ends and round bars take, where that is not a plain cylinder of wood.
//!
//! A bore is first counted as if it went through nothing but wood between two planes. Here that is
//! put right: where it meets a pocket there was no wood to take; in a round bar it begins and ends
//! on the bar's own surface; a countersink is a cone and not a step; of what it has in common with
//! a hole in a broad side (`crossing_bores.rs`) only one of both takes anything.

use std::f64::consts::{PI, SQRT_2, TAU};

use super::bores::Bore;
use super::crossing_bores;
use super::measures::Measures;
use super::stack::{Stack, extent_along, level_of, other_axes, place_vector, sunk};
use crate::build::Part;
use crate::geometry::{Circle, Interval, PartAxis, Region, Side};
use crate::model::{FeatureShape, Holes, Pocket};
use crate::units::Length;

/// Puts the measures of a bore right that was counted as a plain one.
pub(super) fn put_right(
    part: &Part,
    stack: &Stack,
    side: Side,
    bore: &Bore,
    measures: &mut Measures,
) {
    if let Some(bar) = bar_of(stack) {
        in_bar(bar, stack, side, bore, measures);
        return;
    }
    crossing_bores::put_right(part, stack, side, bore, measures);
    for feature in &part.features {
        if let FeatureShape::Pocket(pocket) = &feature.shape
            && !pocket.round_ends
        {
            in_pocket(pocket, stack, side, bore, measures);
        }
    }
}

/// The circle of a round bar.
fn bar_of(stack: &Stack) -> Option<Circle> {
    (stack.axis == PartAxis::Length)
        .then(|| stack.base.edges().next()?.circle)
        .flatten()
}

/// A bore in a round bar begins on its surface, and ends there if it goes through.
fn in_bar(bar: Circle, stack: &Stack, side: Side, bore: &Bore, measures: &mut Measures) {
    /// Steps round a bore: sums over a whole period of so smooth a function are exact.
    const STEPS: u32 = 256;
    let [first, _] = stack.plane;
    let middle = if side.axis() == first {
        bar.centre.y
    } else {
        bar.centre.x
    };
    let radius = bar.radius.mm();
    let (from, to) = (bore.from.mm(), bore.to.mm());
    for circle in bore.section.rings().filter_map(|ring| ring.first()?.circle) {
        let (own, aside) = (circle.radius.mm(), (circle.centre.y - middle).mm());
        if own + aside.abs() >= radius || to <= from {
            continue;
        }
        let (mut volume, mut wall, mut mouths) = (0.0, 0.0, 0.0);
        let (mut across, mut down) = (0.0, 0.0);
        for step in (0..STEPS).map(f64::from) {
            let (sine, cosine) = libm::sincos(TAU * step / f64::from(STEPS));
            let y = aside + own * sine;
            let height = (radius * radius - y * y).sqrt();
            let (mut start, mut end) = (from, to);
            let area = own * own * cosine * cosine;
            if from <= 0.0 {
                start = radius - height;
                mouths += area * radius / height;
            }
            if bore.floor.is_none() {
                end = radius + height;
                mouths += area * radius / height;
            }
            volume += area * (end - start);
            across += area * (end - start) * y;
            down += area * (end * end - start * start) / 2.0;
            wall += own * (end - start);
        }
        let share = TAU / f64::from(STEPS);
        let at = |y: f64, depth: f64| {
            let plane = other_axes(side.axis());
            let mut point = place_vector(plane, [circle.centre.x.mm(), middle.mm() + y]);
            if let Some(part) = point.get_mut(side.axis().index()) {
                *part = level_mm(stack, side, depth);
            }
            point
        };
        measures.add_volume(
            PI * own * own * (to - from),
            at(aside, f64::midpoint(from, to)),
        );
        measures.add_volume(-volume * share, at(across / volume, down / volume));
        measures.surface_mm2 += (wall - mouths) * share - TAU * own * (to - from);
    }
}

/// Where a depth from a side is along its axis, in millimetres.
fn level_mm(stack: &Stack, side: Side, depth: f64) -> f64 {
    let whole = extent_along(&stack.extent, side.axis());
    if side.is_high() {
        whole.high.mm() - depth
    } else {
        whole.low.mm() + depth
    }
}

/// Where a bore meets a square pocket there is nothing to bore.
fn in_pocket(pocket: &Pocket, stack: &Stack, side: Side, bore: &Bore, measures: &mut Measures) {
    let reach = |axis: PartAxis| {
        if axis == pocket.side.axis() {
            return sunk(&stack.extent, pocket.side, pocket.depth);
        }
        let [one, _] = other_axes(pocket.side.axis());
        if axis == one {
            pocket.first
        } else {
            pocket.second
        }
    };
    let inside = |axis: PartAxis| reach(axis).overlap(extent_along(&stack.extent, axis));
    let plane = other_axes(side.axis());
    let ([Some(x), Some(y)], Some(along)) = (plane.map(inside), inside(side.axis())) else {
        return;
    };
    // From here on depths are counted from the side.
    let whole = extent_along(&stack.extent, side.axis());
    let depth = |level: Length| {
        if side.is_high() {
            whole.high - level
        } else {
            level - whole.low
        }
    };
    let depths = Interval::new(depth(along.low), depth(along.high));
    let Some(met) = depths.overlap(Interval::new(bore.from, bore.to)) else {
        return;
    };
    let common = bore.section.common(&Region::rectangle(x, y));
    if common.is_empty() {
        return;
    }
    let (area, run) = (common.area_mm2(), met.size().mm());
    let girth: f64 = common.edges().map(|edge| edge.length_mm()).sum();
    let level = |depth: Length| side.inward(level_of(&stack.extent, side), depth);
    let reach = Interval::new(level(met.low), level(met.high));
    measures.add_region(&common, plane, reach);
    // Neither the bore's wall in the pocket nor the pocket's walls in the bore.
    measures.surface_mm2 -= girth * run;
    let ends_within = |level: Length| bore.from < level && level < bore.to;
    let floor_within = bore.floor.is_some() && depths.low <= bore.to && bore.to <= depths.high;
    let lost = [
        ends_within(depths.low),
        ends_within(depths.high) && depths.high < whole.size(),
        floor_within,
    ];
    measures.surface_mm2 -= lost
        .into_iter()
        .map(|gone| if gone { area } else { 0.0 })
        .sum::<f64>();
}

/// Countersinks are drawn as steps of half their depth: their cones take something else.
pub(super) fn put_cones_right(holes: &Holes, stack: &Stack, measures: &mut Measures) {
    let (None, Some(mouth)) = (holes.counterbore, holes.countersink) else {
        return;
    };
    if bar_of(stack).is_some() {
        return;
    }
    let (wide, narrow) = (mouth.mm() / 2.0, holes.diameter.mm() / 2.0);
    let height = wide - narrow;
    if holes.depth.is_some_and(|depth| depth.mm() < height) {
        return;
    }
    let count = f64::from(u32::try_from(holes.positions.len()).unwrap_or(u32::MAX));
    let (square, inner) = (wide * wide, narrow * narrow);
    let step = PI * (square + inner) * height / 2.0;
    let cone = PI * height * (square + wide * narrow + inner) / 3.0;
    // Where the middles of both are below the mouth.
    let step_deep = height / 4.0 * (square + 3.0 * inner) / (square + inner);
    let cone_deep = height / 4.0 * (square + 2.0 * wide * narrow + 3.0 * inner)
        / (square + wide * narrow + inner);
    for position in &holes.positions {
        let at = |depth: f64| {
            let across = [position.x.mm(), position.y.mm()];
            let mut point = place_vector(other_axes(holes.side.axis()), across);
            if let Some(part) = point.get_mut(holes.side.axis().index()) {
                *part = level_mm(stack, holes.side, depth);
            }
            point
        };
        measures.add_volume(step, at(step_deep));
        measures.add_volume(-cone, at(cone_deep));
    }
    let of_step = PI * (wide + narrow) * height + PI * (wide * wide - narrow * narrow);
    let of_cone = PI * (wide + narrow) * height * SQRT_2;
    measures.surface_mm2 += count * (of_cone - of_step);
}
