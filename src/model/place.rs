//! Pieces in their places, as the author locates them.

use serde::Serialize;

use super::groups::InstanceId;
use super::part::PartId;
use crate::geometry::{Handedness, Interval, Orientation};
use crate::source::Span;

/// Index of a placed piece.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(transparent)]
pub struct PlacedId(pub usize);

/// A piece in its place, before joints.
#[derive(Clone, Debug, PartialEq)]
pub struct Placement {
    /// Its name, `shelves[2]` for one of several.
    pub name: String,
    /// What it is one of.
    pub part: PartId,
    /// As drawn or mirrored.
    pub handedness: Handedness,
    /// How it lies.
    pub orientation: Orientation,
    /// Where it is, across, deep and high.
    pub body: [Interval; 3],
    /// Held by its place alone and taken out in use.
    pub removable: bool,
    /// The sub-assembly it is placed in.
    pub within: Option<InstanceId>,
    /// Where it is written.
    pub span: Span,
}
