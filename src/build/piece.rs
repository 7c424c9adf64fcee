//! A piece while it is being put together: where it is, what joints cut into it and add to it.

use crate::geometry::{Direction, Interval, Orientation, PartAxis, Side};
use crate::model::{Feature, FeatureShape, PartDesign, Placement, plane_axes};
use crate::source::Span;
use crate::units::Length;

/// A placed piece and what its joints do to it.
#[derive(Clone, Debug)]
pub(super) struct Piece<'m> {
    pub(super) placement: &'m Placement,
    pub(super) design: &'m PartDesign,
    /// In the part's frame, joints' allowances included.
    pub(super) extent: [Interval; 3],
    /// In the part's frame: the author's first.
    pub(super) features: Vec<Feature>,
}

impl<'m> Piece<'m> {
    pub(super) fn new(placement: &'m Placement, design: &'m PartDesign) -> Self {
        Self {
            placement,
            design,
            extent: design.size.map(Interval::of),
            features: design.features.clone(),
        }
    }

    pub(super) fn orientation(&self) -> Orientation {
        self.placement.orientation
    }

    /// The side of the part that looks in a direction of the world.
    pub(super) fn side(&self, direction: Direction) -> Side {
        self.orientation().side(direction)
    }

    /// How thick the piece is along a direction of the world.
    pub(super) fn depth_along(&self, direction: Direction) -> Length {
        self.placement
            .body
            .get(direction.axis().index())
            .map_or(Length::ZERO, |stretch| stretch.size())
    }

    /// A stretch of the world as a stretch of the part's frame along one of its axes.
    pub(super) fn in_part_frame(&self, axis: PartAxis, world: &[Interval; 3]) -> Interval {
        let direction = self.orientation().direction(axis);
        let index = direction.axis().index();
        let (Some(body), Some(stretch)) = (self.placement.body.get(index), world.get(index)) else {
            return Interval::default();
        };
        if direction.is_positive() {
            stretch.shifted(-body.low)
        } else {
            Interval::new(body.high - stretch.high, body.high - stretch.low)
        }
    }

    /// A point of the world in the part's frame.
    pub(super) fn point_in_part(&self, point: &[Length; 3]) -> [Length; 3] {
        let world = point.map(|at| Interval { low: at, high: at });
        PartAxis::ALL.map(|axis| self.in_part_frame(axis, &world).low)
    }

    /// A rectangle of the world that lies on a side, as stretches along the side's two axes.
    pub(super) fn on_side(&self, side: Side, world: &[Interval; 3]) -> [Interval; 2] {
        plane_axes(side).map(|axis| self.in_part_frame(axis, world))
    }

    /// Cuts a feature.
    pub(super) fn cut(&mut self, shape: FeatureShape, span: Span) {
        self.features.push(Feature { shape, span });
    }

    /// Makes the piece longer beyond a side.
    pub(super) fn grow(&mut self, side: Side, by: Length) {
        let size = self
            .design
            .size
            .get(side.axis().index())
            .copied()
            .unwrap_or_default();
        if let Some(extent) = self.extent.get_mut(side.axis().index()) {
            // Several joints at one end each ask for the same length, not for their sum.
            if side.is_high() {
                extent.high = extent.high.max(size + by);
            } else {
                extent.low = extent.low.min(-by);
            }
        }
    }

    /// Where the piece as made is in the world.
    pub(super) fn place(&self) -> [Interval; 3] {
        let mut place = self.placement.body;
        for axis in PartAxis::ALL {
            let direction = self.orientation().direction(axis);
            let (Some(extent), Some(size), Some(world)) = (
                self.extent.get(axis.index()),
                self.design.size.get(axis.index()),
                place.get_mut(direction.axis().index()),
            ) else {
                continue;
            };
            let (below, above) = (-extent.low, extent.high - *size);
            let (low, high) = if direction.is_positive() {
                (below, above)
            } else {
                (above, below)
            };
            *world = Interval {
                low: world.low - low,
                high: world.high + high,
            };
        }
        place
    }

    /// Lets channels that reach the described ends of the piece reach its real ends.
    pub(super) fn run_channels_out(&mut self) {
        let (extent, size) = (self.extent, self.design.size);
        for feature in &mut self.features {
            let FeatureShape::Pocket(pocket) = &mut feature.shape else {
                continue;
            };
            let axes = plane_axes(pocket.side);
            for (axis, stretch) in axes
                .into_iter()
                .zip([&mut pocket.first, &mut pocket.second])
            {
                let (Some(real), Some(size)) = (extent.get(axis.index()), size.get(axis.index()))
                else {
                    continue;
                };
                if stretch.low == Length::ZERO {
                    stretch.low = real.low;
                }
                if stretch.high == *size {
                    stretch.high = real.high;
                }
            }
        }
    }
}
