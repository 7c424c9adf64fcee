//! Mitred and bevelled ends, bevelled edges and tapers: cuts by a plane, after everything else.

use super::cut::{Plane, cut};
use super::flat_measures;
use super::measures::Measures;
use super::stack::outward;
use super::types::{Shell, SurfaceId};
use crate::build::Part;
use crate::geometry::{PlanePoint, Region};
use crate::model::{FeatureShape, Slope};
use crate::units::Length;

/// Surfaces of slopes are numbered from here.
const FIRST_SURFACE: u32 = 1 << 25;

/// Cuts every slope of a part into its shell.
pub(super) fn cut_slopes(part: &Part, shell: &mut Shell, measures: &mut Measures) {
    for (feature, number) in part.features.iter().zip(FIRST_SURFACE..) {
        let FeatureShape::Slope(slope) = &feature.shape else {
            continue;
        };
        let before = flat_measures::of(shell);
        cut(shell, &plane(slope), SurfaceId(number));
        measures.change(&before, &flat_measures::of(shell), 1.0);
    }
}

/// The plane of a slope, what it takes away in front of it.
fn plane(slope: &Slope) -> Plane {
    let (inset, run) = (slope.inset.mm(), slope.run.mm());
    let length = libm::hypot(inset, run);
    // Square to the line from `inset` inside of the side to `run` away from where it is deep.
    let (along_side, along_deep) = (run / length, inset / length);
    let mut normal = [0.0; 3];
    let ways = outward(slope.side).into_iter().zip(outward(slope.deep));
    for (part, (side, deep)) in normal.iter_mut().zip(ways) {
        *part = side * along_side + deep * along_deep;
    }
    let signed = |level: Length, high: bool| if high { level.mm() } else { -level.mm() };
    let side = signed(slope.level, slope.side.is_high()) - inset;
    let deep = signed(slope.deep_level, slope.deep.is_high());
    Plane {
        normal,
        offset: (side * along_side + deep * along_deep) * 1e6,
    }
}

/// What a slope takes out of the plane of two axes, where it stands square to it: a triangle.
pub(super) fn section(slope: &Slope, plane: [crate::geometry::PartAxis; 2]) -> Option<Region> {
    let side = slope.side.inward(slope.level, slope.inset);
    let deep = slope.deep.inward(slope.deep_level, slope.run);
    let axes = [slope.side.axis(), slope.deep.axis()];
    let at = |along_side: Length, along_deep: Length| {
        if axes == plane {
            PlanePoint::new(along_side, along_deep)
        } else {
            PlanePoint::new(along_deep, along_side)
        }
    };
    let lies = axes == plane || [axes[1], axes[0]] == plane;
    lies.then(|| {
        Region::polygon(&[
            at(slope.level, slope.deep_level),
            at(side, slope.deep_level),
            at(slope.level, deep),
        ])
    })
}
