//! What an expression can be worth.

use super::scopes::ScopeId;
use crate::geometry::{Axis, Interval};
use crate::units::{Length, Quantity};

/// The value of an expression.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Value {
    /// A number or a measure.
    Quantity(Quantity),
    /// A face, an edge or a corner of a placed piece: fixed on one, two or three world axes.
    Anchor(Anchor),
    /// A material, by its place among the declarations of materials.
    Material(usize),
    /// A part, likewise.
    Part(usize),
    /// An item of hardware, likewise.
    Hardware(usize),
    /// A placed part or sub-assembly, or all of a repeated one, likewise.
    Placed {
        /// Which placement.
        place: usize,
        /// Which one of a repeated placement.
        index: Option<i64>,
    },
    /// Everything that is placed in a scope: the whole build.
    Overall(ScopeId),
    /// Where a piece is on one axis; kept between evaluations, never the worth of an expression.
    Stretch(Interval),
}

impl Value {
    /// The author's words for what it is.
    pub(super) fn kind(&self) -> &'static str {
        match self {
            Self::Quantity(quantity) => quantity.dimension.name(),
            Self::Anchor(anchor) => match anchor.fixed().count() {
                1 => "a face",
                2 => "an edge",
                _ => "a corner",
            },
            Self::Material(_) => "a material",
            Self::Part(_) => "a part",
            Self::Hardware(_) => "an item of hardware",
            Self::Placed { .. } => "a placed part",
            Self::Overall(_) => "the whole build",
            Self::Stretch(_) => "a stretch",
        }
    }
}

/// Where a face, an edge or a corner is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct Anchor {
    /// Its position across, deep and high, where it has one.
    pub(super) at: [Option<Length>; 3],
}

impl Anchor {
    /// A plane square to `axis`.
    pub(super) fn plane(axis: Axis, position: Length) -> Self {
        let mut anchor = Self::default();
        anchor.set(axis, position);
        anchor
    }

    /// Fixed on one axis more.
    pub(super) fn set(&mut self, axis: Axis, position: Length) {
        if let Some(slot) = self.at.get_mut(axis.index()) {
            *slot = Some(position);
        }
    }

    /// The axes it is fixed on, with its position.
    pub(super) fn fixed(&self) -> impl Iterator<Item = (Axis, Length)> + '_ {
        Axis::ALL.into_iter().filter_map(|axis| {
            let position = self.at.get(axis.index()).copied().flatten()?;
            Some((axis, position))
        })
    }

    /// The one axis of a face, with its position.
    pub(super) fn as_plane(&self) -> Option<(Axis, Length)> {
        let mut fixed = self.fixed();
        let first = fixed.next()?;
        fixed.next().is_none().then_some(first)
    }
}
