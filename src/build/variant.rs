//! Pieces that come out alike share one part, whichever way round they were described.
//!
//! The two sides of a cabinet are placed from one description, but one gets its dadoes on its
//! face and the other on its back. Turned over, or made as its mirror image, the second is the
//! first. So each new piece is compared with those before it under all eight flips of its three
//! axes: an even number of flips is the same part turned round, an odd number its mirror image.

use super::piece::Piece;
use crate::geometry::{
    Contour, ContourPiece, Handedness, Interval, Orientation, PartAxis, PlanePoint, Side,
};
use crate::model::{
    Feature, FeatureShape, GridPattern, Holes, Pocket, PocketScrewHole, Slope, SplineSlot, Tenon,
    plane_axes,
};
use crate::units::Length;

/// Which of a part's axes are reversed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Flip([bool; 3]);

impl Flip {
    /// Nothing is reversed.
    pub(super) const NONE: Self = Self([false, false, false]);

    /// All eight, the one that changes nothing first, then turns, then mirror images.
    pub(super) const ALL: [Self; 8] = [
        Self([false, false, false]),
        Self([true, true, false]),
        Self([true, false, true]),
        Self([false, true, true]),
        Self([false, false, true]),
        Self([false, true, false]),
        Self([true, false, false]),
        Self([true, true, true]),
    ];

    /// All eight, those first under which a piece of the given hand is a part as drawn.
    pub(super) fn as_drawn_first(handedness: Handedness) -> [Self; 8] {
        let mut flips = Self::ALL;
        flips.sort_by_key(|flip| flip.mirrors() == (handedness == Handedness::AsDrawn));
        flips
    }

    fn reverses(self, axis: PartAxis) -> bool {
        self.0.get(axis.index()).copied().unwrap_or(false)
    }

    /// Whether the result is a mirror image.
    fn mirrors(self) -> bool {
        self.0.iter().filter(|reversed| **reversed).count() % 2 == 1
    }

    /// The side that a side becomes.
    pub(super) fn side(self, side: Side) -> Side {
        if self.reverses(side.axis()) {
            side.opposite()
        } else {
            side
        }
    }
}

/// What a piece is as made: its extent and features in the part's frame.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Made {
    extent: [Interval; 3],
    shapes: Vec<FeatureShape>,
}

impl Made {
    /// A piece under a flip, in an order that does not depend on where the features come from.
    pub(super) fn of(piece: &Piece<'_>, flip: Flip) -> Self {
        let size = piece.design.size;
        let mut extent = piece.extent;
        for axis in PartAxis::ALL {
            if let Some(stretch) = extent.get_mut(axis.index()) {
                *stretch = flipped_stretch(*stretch, axis, flip, size);
            }
        }
        let mut shapes: Vec<FeatureShape> = piece
            .features
            .iter()
            .map(|feature| comparable(flipped_shape(&feature.shape, flip, size)))
            .collect();
        shapes.sort_by_cached_key(|shape| format!("{shape:?}"));
        Self { extent, shapes }
    }
}

/// The features of a piece under a flip, in their own order.
pub(super) fn flipped_features(piece: &Piece<'_>, flip: Flip) -> Vec<Feature> {
    piece
        .features
        .iter()
        .map(|feature| Feature {
            shape: flipped_shape(&feature.shape, flip, piece.design.size),
            span: feature.span,
        })
        .collect()
}

/// The extent of a piece under a flip.
pub(super) fn flipped_extent(piece: &Piece<'_>, flip: Flip) -> [Interval; 3] {
    let mut extent = piece.extent;
    for axis in PartAxis::ALL {
        if let Some(stretch) = extent.get_mut(axis.index()) {
            *stretch = flipped_stretch(*stretch, axis, flip, piece.design.size);
        }
    }
    extent
}

/// How a piece lies, and of which hand it is, when its part is seen under a flip.
pub(super) fn flipped_lie(piece: &Piece<'_>, flip: Flip) -> (Orientation, Handedness) {
    let lie = piece.orientation();
    let turned = |axis: PartAxis| {
        let direction = lie.direction(axis);
        if flip.reverses(axis) {
            direction.opposite()
        } else {
            direction
        }
    };
    let orientation = Orientation {
        length: turned(PartAxis::Length),
        width: turned(PartAxis::Width),
        thickness: turned(PartAxis::Thickness),
    };
    let handedness = match (piece.placement.handedness, flip.mirrors()) {
        (Handedness::AsDrawn, false) | (Handedness::Mirrored, true) => Handedness::AsDrawn,
        (Handedness::Mirrored, false) | (Handedness::AsDrawn, true) => Handedness::Mirrored,
    };
    (orientation, handedness)
}

fn flipped_at(at: Length, axis: PartAxis, flip: Flip, size: [Length; 3]) -> Length {
    let whole = size.get(axis.index()).copied().unwrap_or_default();
    if flip.reverses(axis) { whole - at } else { at }
}

fn flipped_stretch(stretch: Interval, axis: PartAxis, flip: Flip, size: [Length; 3]) -> Interval {
    Interval::new(
        flipped_at(stretch.low, axis, flip, size),
        flipped_at(stretch.high, axis, flip, size),
    )
}

fn flipped_shape(shape: &FeatureShape, flip: Flip, size: [Length; 3]) -> FeatureShape {
    match shape {
        FeatureShape::Holes(holes) => FeatureShape::Holes(flipped_holes(holes, flip, size)),
        FeatureShape::Pocket(pocket) => {
            let [x, y] = plane_axes(pocket.side);
            FeatureShape::Pocket(Pocket {
                side: flip.side(pocket.side),
                first: flipped_stretch(pocket.first, x, flip, size),
                second: flipped_stretch(pocket.second, y, flip, size),
                ..*pocket
            })
        }
        FeatureShape::Notch {
            along_length,
            along_width,
        } => FeatureShape::Notch {
            along_length: flipped_stretch(*along_length, PartAxis::Length, flip, size),
            along_width: flipped_stretch(*along_width, PartAxis::Width, flip, size),
        },
        FeatureShape::Outline(contour) => {
            FeatureShape::Outline(flipped_contour(contour, flip, size))
        }
        FeatureShape::Arris { sides, size, form } => {
            let mut sides = sides.map(|side| flip.side(side));
            sides.sort();
            FeatureShape::Arris {
                sides,
                size: *size,
                form: *form,
            }
        }
        FeatureShape::PocketScrewHole(hole) => {
            let across = PartAxis::ALL
                .into_iter()
                .find(|axis| *axis != hole.side.axis() && *axis != hole.end.axis());
            let position = across.map_or(hole.position, |axis| {
                flipped_at(hole.position, axis, flip, size)
            });
            FeatureShape::PocketScrewHole(PocketScrewHole {
                side: flip.side(hole.side),
                end: flip.side(hole.end),
                position,
                ..*hole
            })
        }
        FeatureShape::Slope(slope) => FeatureShape::Slope(flipped_slope(slope, flip, size)),
        FeatureShape::SplineSlot(slot) => FeatureShape::SplineSlot(SplineSlot {
            slope: flipped_slope(&slot.slope, flip, size),
            along: flipped_stretch(slot.along, slot.axis(), flip, size),
            ..*slot
        }),
        FeatureShape::Tenon(tenon) => FeatureShape::Tenon(Tenon {
            end: flip.side(tenon.end),
            along: flipped_stretch(tenon.along, PartAxis::Length, flip, size),
            width: flipped_stretch(tenon.width, PartAxis::Width, flip, size),
            thickness: flipped_stretch(tenon.thickness, PartAxis::Thickness, flip, size),
        }),
    }
}

fn flipped_slope(slope: &Slope, flip: Flip, size: [Length; 3]) -> Slope {
    Slope {
        side: flip.side(slope.side),
        level: flipped_at(slope.level, slope.side.axis(), flip, size),
        deep: flip.side(slope.deep),
        deep_level: flipped_at(slope.deep_level, slope.deep.axis(), flip, size),
        ..*slope
    }
}

fn flipped_holes(holes: &Holes, flip: Flip, size: [Length; 3]) -> Holes {
    let [x, y] = plane_axes(holes.side);
    let at = |point: PlanePoint| {
        PlanePoint::new(
            flipped_at(point.x, x, flip, size),
            flipped_at(point.y, y, flip, size),
        )
    };
    let grid = holes.grid.map(|grid| GridPattern {
        first: at(grid.first),
        references: grid.references.map(|side| flip.side(side)),
        ..grid
    });
    Holes {
        side: flip.side(holes.side),
        positions: holes.positions.iter().map(|point| at(*point)).collect(),
        grid,
        ..holes.clone()
    }
}

fn flipped_contour(contour: &Contour, flip: Flip, size: [Length; 3]) -> Contour {
    let at = |point: PlanePoint| {
        PlanePoint::new(
            flipped_at(point.x, PartAxis::Length, flip, size),
            flipped_at(point.y, PartAxis::Width, flip, size),
        )
    };
    let pieces = contour.pieces.iter().map(|piece| match *piece {
        ContourPiece::Line { to } => ContourPiece::Line { to: at(to) },
        ContourPiece::Arc { through, to } => ContourPiece::Arc {
            through: at(through),
            to: at(to),
        },
    });
    Contour {
        start: at(contour.start),
        pieces: pieces.collect(),
    }
}

/// A shape without what does not show in the wood: the order of holes, the grid they were said
/// to form, the side from which a plain through hole was drilled.
fn comparable(mut shape: FeatureShape) -> FeatureShape {
    match &mut shape {
        FeatureShape::Holes(holes) => {
            holes.positions.sort();
            holes.grid = None;
            // A plain hole right through has no side.
            if holes.depth.is_none() && holes.counterbore.is_none() && holes.countersink.is_none() {
                holes.side = holes.side.axis().low();
            }
        }
        FeatureShape::Arris { sides, .. } => sides.sort(),
        FeatureShape::Pocket(_)
        | FeatureShape::Notch { .. }
        | FeatureShape::Outline(_)
        | FeatureShape::PocketScrewHole(_)
        | FeatureShape::Slope(_)
        | FeatureShape::SplineSlot(_)
        | FeatureShape::Tenon(_) => {}
    }
    shape
}
