//! The direction in which a part is layered, and the outline of its layers.

use super::layers::{Detail, discs};
use super::types::Point;
use crate::build::Part;
use crate::geometry::{Interval, PartAxis, PlanePoint, Region, Side};
use crate::model::{FeatureShape, MaterialForm};
use crate::units::Length;

/// Layers lie square to one axis of the part; each is a region of the other two.
pub(super) struct Stack {
    /// Along which the layers follow each other.
    pub(super) axis: PartAxis,
    /// The axes of the layers' plane, in the part's order.
    pub(super) plane: [PartAxis; 2],
    /// What a layer is before anything is cut into it.
    pub(super) base: Region,
    /// The part's extent along each axis.
    pub(super) extent: [Interval; 3],
}

impl Stack {
    /// A board is layered along its thickness, a round bar along its length.
    pub(super) fn of(part: &Part, form: Option<MaterialForm>, detail: Detail) -> Self {
        let [length, width, thickness] = part.extent;
        if let Some(MaterialForm::Round { .. }) = form {
            let diameter = width.size().min(thickness.size());
            let centre = PlanePoint::new(width.middle(), thickness.middle());
            return Self {
                axis: PartAxis::Length,
                plane: [PartAxis::Width, PartAxis::Thickness],
                base: discs(&[centre], diameter, detail),
                extent: part.extent,
            };
        }
        let outline = part.features.iter().find_map(|feature| {
            if let FeatureShape::Outline(contour) = &feature.shape {
                Some(Region::contour(contour))
            } else {
                None
            }
        });
        Self {
            axis: PartAxis::Thickness,
            plane: [PartAxis::Length, PartAxis::Width],
            base: outline
                .filter(|region| !region.is_empty())
                .unwrap_or_else(|| Region::rectangle(length, width)),
            extent: part.extent,
        }
    }

    /// The extent along an axis.
    pub(super) fn reach(&self, axis: PartAxis) -> Interval {
        extent_along(&self.extent, axis)
    }

    /// True for the two sides that the stack begins and ends with.
    pub(super) fn caps(&self, side: Side) -> bool {
        side.axis() == self.axis
    }

    /// A point of a layer's plane at a level of the stack, in the part's frame.
    pub(super) fn point(&self, at: PlanePoint, level: Length) -> Point {
        place(self.plane, at, level)
    }

    /// The same point in millimetres.
    pub(super) fn middle_of(&self, at: PlanePoint, level_mm: f64) -> [f64; 3] {
        let across = place_vector(self.plane, [at.x.mm(), at.y.mm()]);
        let mut point = self.along(level_mm);
        for (part, across) in point.iter_mut().zip(across) {
            *part += across;
        }
        point
    }

    /// A vector of the plane, in the part's frame.
    pub(super) fn across(&self, vector: [f64; 2]) -> [f64; 3] {
        place_vector(self.plane, vector)
    }

    /// The unit vector along the stack, upwards or downwards.
    pub(super) fn along(&self, sign: f64) -> [f64; 3] {
        let mut vector = [0.0; 3];
        if let Some(part) = vector.get_mut(self.axis.index()) {
            *part = sign;
        }
        vector
    }
}

/// The extent along an axis.
pub(super) fn extent_along(extent: &[Interval; 3], axis: PartAxis) -> Interval {
    let [length, width, thickness] = *extent;
    match axis {
        PartAxis::Length => length,
        PartAxis::Width => width,
        PartAxis::Thickness => thickness,
    }
}

/// The two axes that are not `axis`, in the part's order.
pub(super) fn other_axes(axis: PartAxis) -> [PartAxis; 2] {
    match axis {
        PartAxis::Length => [PartAxis::Width, PartAxis::Thickness],
        PartAxis::Width => [PartAxis::Length, PartAxis::Thickness],
        PartAxis::Thickness => [PartAxis::Length, PartAxis::Width],
    }
}

/// A point given in a plane of two axes and a level along the third.
pub(super) fn place(plane: [PartAxis; 2], at: PlanePoint, level: Length) -> Point {
    let mut point = [level.nm(); 3];
    for (axis, value) in plane.into_iter().zip([at.x, at.y]) {
        if let Some(part) = point.get_mut(axis.index()) {
            *part = value.nm();
        }
    }
    point
}

/// A vector given in a plane of two axes.
pub(super) fn place_vector(plane: [PartAxis; 2], vector: [f64; 2]) -> [f64; 3] {
    let mut turned = [0.0; 3];
    for (axis, value) in plane.into_iter().zip(vector) {
        if let Some(part) = turned.get_mut(axis.index()) {
            *part = value;
        }
    }
    turned
}

/// The points that follow each point of a ring.
pub(super) fn following<P: Copy>(ring: &[P]) -> Vec<P> {
    let mut next = ring.to_vec();
    if !next.is_empty() {
        next.rotate_left(1);
    }
    next
}

/// Where a side is along its axis.
pub(super) fn level_of(extent: &[Interval; 3], side: Side) -> Length {
    let reach = extent_along(extent, side.axis());
    if side.is_high() {
        reach.high
    } else {
        reach.low
    }
}

/// The stretch from a side down to a depth.
pub(super) fn sunk(extent: &[Interval; 3], side: Side, depth: Length) -> Interval {
    let reach = extent_along(extent, side.axis());
    if side.is_high() {
        Interval::new(reach.high - depth, reach.high)
    } else {
        Interval::new(reach.low, reach.low + depth)
    }
}

/// The unit vector out of a side.
pub(super) fn outward(side: Side) -> [f64; 3] {
    let mut vector = [0.0; 3];
    if let Some(part) = vector.get_mut(side.axis().index()) {
        *part = if side.is_high() { 1.0 } else { -1.0 };
    }
    vector
}
