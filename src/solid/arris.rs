//! Broken arrises: chamfers and round-overs along the straight edges of a part.
//!
//! An edge that stands square to the layers changes their outline; any other is cut by planes,
//! one for a chamfer, one for each facet of a round.

use std::f64::consts::{FRAC_PI_2, PI, SQRT_2};

use super::cut::{Plane, cut};
use super::cut_rounds::Cylinder;
use super::flat_measures;
use super::layers::Cutter;
use super::measures::Measures;
use super::stack::{Stack, level_of, outward};
use super::types::{Shell, SurfaceId};
use super::vectors::scaled;
use crate::build::Part;
use crate::geometry::{Circle, Interval, PlanePoint, Region, Side};
use crate::model::{ArrisForm, Feature, FeatureShape};
use crate::units::Length;

/// Surfaces of arrises are numbered from here.
const FIRST_SURFACE: u32 = 1 << 24;

/// What breaking an arris takes out of the layers' outline, where it stands square to them.
pub(super) fn upright_cutter(
    sides: [Side; 2],
    size: Length,
    form: ArrisForm,
    stack: &Stack,
) -> Option<Cutter> {
    let [first, second] = in_order(sides, stack)?;
    if !has_straight_side(first, size, stack) || !has_straight_side(second, size, stack) {
        return None;
    }
    let x = level_of(&stack.extent, first);
    let y = level_of(&stack.extent, second);
    let inner = |side: Side, level: Length| {
        if side.is_high() {
            level - size
        } else {
            level + size
        }
    };
    let (a, b) = (inner(first, x), inner(second, y));
    let region =
        match form {
            ArrisForm::Chamfer => Region::polygon(&[
                PlanePoint::new(x, y),
                PlanePoint::new(a, y),
                PlanePoint::new(x, b),
            ]),
            ArrisForm::Round => Region::rectangle(Interval::new(x, a), Interval::new(y, b))
                .without(&[&Region::disc(Circle {
                    centre: PlanePoint::new(a, b),
                    radius: size,
                })]),
        };
    Some(Cutter {
        region,
        reach: stack.reach(stack.axis),
    })
}

/// The two sides in the order of the layers' axes; none where one of them is a cap.
fn in_order(sides: [Side; 2], stack: &Stack) -> Option<[Side; 2]> {
    let [a, b] = sides;
    let [first, second] = stack.plane;
    if a.axis() == first && b.axis() == second {
        Some([a, b])
    } else if b.axis() == first && a.axis() == second {
        Some([b, a])
    } else {
        None
    }
}

/// True where the outline runs straight along a side for longer than the arris is wide.
fn has_straight_side(side: Side, size: Length, stack: &Stack) -> bool {
    let level = level_of(&stack.extent, side);
    let [first, _] = stack.plane;
    stack.base.edges().any(|edge| {
        let (from, to, length) = if side.axis() == first {
            (edge.from.x, edge.to.x, edge.to.y - edge.from.y)
        } else {
            (edge.from.y, edge.to.y, edge.to.x - edge.from.x)
        };
        edge.circle.is_none() && from == level && to == level && length.abs() > size * 2
    })
}

/// True for an arris that does not stand square to the layers, along a straight edge.
fn is_cut_by_planes(sides: [Side; 2], size: Length, stack: &Stack) -> bool {
    let [a, b] = sides;
    let straight = |side: Side| stack.caps(side) || has_straight_side(side, size, stack);
    a.axis() != b.axis()
        && in_order(sides, stack).is_none()
        && size.is_positive()
        && straight(a)
        && straight(b)
}

/// The walls of the round-overs that planes have cut.
pub(super) fn round_overs(part: &Part, stack: &Stack) -> Vec<Cylinder> {
    let wall = |feature: &Feature| {
        let FeatureShape::Arris {
            sides,
            size,
            form: ArrisForm::Round,
        } = &feature.shape
        else {
            return None;
        };
        if !is_cut_by_planes(*sides, *size, stack) {
            return None;
        }
        let mut centre = [0.0; 3];
        for side in *sides {
            let level = level_of(&stack.extent, side);
            let inner = if side.is_high() {
                level - *size
            } else {
                level + *size
            };
            if let Some(slot) = centre.get_mut(side.axis().index()) {
                *slot = inner.mm() * 1e6;
            }
        }
        let radii = sides.map(|side| scaled(outward(side), size.mm() * 1e6));
        Some(Cylinder { centre, radii })
    };
    part.features.iter().filter_map(wall).collect()
}

/// Breaks every arris that does not stand square to the layers.
pub(super) fn break_arrises(
    part: &Part,
    stack: &Stack,
    shell: &mut Shell,
    measures: &mut Measures,
) {
    for (feature, number) in part.features.iter().zip(FIRST_SURFACE..) {
        let FeatureShape::Arris { sides, size, form } = &feature.shape else {
            continue;
        };
        if !is_cut_by_planes(*sides, *size, stack) {
            continue;
        }
        let [a, b] = *sides;
        let surface = SurfaceId(number);
        let before = flat_measures::of(shell);
        let planes = planes(*sides, *size, *form, &stack.extent);
        for plane in &planes {
            cut(shell, plane, surface);
        }
        let after = flat_measures::of(shell);
        let section = Section::of(size.mm(), *form, planes.len());
        measures.change(&before, &after, section.volume());
        // What is taken lies a little farther in than what facets take.
        let moment = (after.volume_mm3 - before.volume_mm3) * section.volume() * section.inward();
        for side in [a, b] {
            for (sum, out) in measures.moment_mm4.iter_mut().zip(outward(side)) {
                *sum -= moment * out;
            }
        }
        measures.surface_mm2 += section.surface(flat_measures::area_of(shell, surface));
    }
}

/// What breaking an arris takes from a section of the part, and what its facets take.
struct Section {
    area: f64,
    flat_area: f64,
    girth: f64,
    flat_girth: f64,
    /// How far their middles are from the sides.
    arm: f64,
    flat_arm: f64,
}

impl Section {
    fn of(size: f64, form: ArrisForm, facets: usize) -> Self {
        match form {
            ArrisForm::Chamfer => Self {
                area: size * size / 2.0,
                flat_area: size * size / 2.0,
                girth: size * SQRT_2,
                flat_girth: size * SQRT_2,
                arm: size / 3.0,
                flat_arm: size / 3.0,
            },
            ArrisForm::Round => {
                let count = u32::try_from(facets).map_or(1.0, f64::from);
                let step = FRAC_PI_2 / count;
                // A square less a quarter of a disc, or less a fan of triangles in it.
                let (disc, fan) = (PI / 4.0, count * libm::sin(step) / 2.0);
                let lean = libm::cos(step / 2.0) * libm::cos(step / 2.0) / 3.0;
                Self {
                    area: size * size * (1.0 - disc),
                    flat_area: size * size * (1.0 - fan),
                    arm: size * (0.5 - disc + 1.0 / 3.0) / (1.0 - disc),
                    flat_arm: size * (0.5 - fan + lean) / (1.0 - fan),
                    girth: size * FRAC_PI_2,
                    flat_girth: 2.0 * size * count * libm::sin(step / 2.0),
                }
            }
        }
    }

    /// How many times as large the volume is that really goes.
    fn volume(&self) -> f64 {
        self.area / self.flat_area
    }

    /// How much farther from the sides the middle of what goes is.
    fn inward(&self) -> f64 {
        self.arm - self.flat_arm
    }

    /// How much more surface there is than facets of that area and the ends they leave have.
    fn surface(&self, facets: f64) -> f64 {
        let length = facets / self.flat_girth;
        (self.girth - self.flat_girth) * length + 2.0 * (self.flat_area - self.area)
    }
}

fn planes(sides: [Side; 2], size: Length, form: ArrisForm, extent: &[Interval; 3]) -> Vec<Plane> {
    let [a, b] = sides;
    let level = |side: Side| {
        let level = level_of(extent, side).mm();
        if side.is_high() { level } else { -level }
    };
    let (x, y, size) = (level(a), level(b), size.mm());
    // In the plane of both outward directions the corner is at x, y.
    let plane = |angle: f64, offset_mm: f64| {
        let mut normal = [0.0; 3];
        let ways = outward(a).into_iter().zip(outward(b));
        for (part, (along_a, along_b)) in normal.iter_mut().zip(ways) {
            *part = libm::cos(angle) * along_a + libm::sin(angle) * along_b;
        }
        Plane {
            normal,
            offset: offset_mm * 1e6,
        }
    };
    match form {
        ArrisForm::Chamfer => vec![plane(PI / 4.0, (x + y - size) / SQRT_2)],
        ArrisForm::Round => {
            let facets = if size > 6.0 { 16 } else { 8 };
            let step = FRAC_PI_2 / f64::from(facets);
            (0..facets)
                .map(|facet| {
                    let angle = (f64::from(facet) + 0.5) * step;
                    let (cosine, sine) = (libm::cos(angle), libm::sin(angle));
                    let centre = (x - size) * cosine + (y - size) * sine;
                    plane(angle, centre + size * libm::cos(step / 2.0))
                })
                .collect()
        }
    }
}
