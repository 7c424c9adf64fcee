//! Lines in the air from an exploded piece to its place.

use super::contacts::{Box3, Contacts, Touch};
use super::explode::Move;
use super::view::{WorldPoint, plus};
use crate::build::PlacedId;

/// Contacts longer than this, in micrometres, get a line near each end.
const LONG: f64 = 60_000.0;
/// How far from the ends of a long contact its lines are, as a part of its length.
const INSET: f64 = 0.12;
/// A piece gets no more lines than this.
const MOST: usize = 4;
/// Shorter ways, in micrometres, are plain without a line.
const SHORTEST: f64 = 3_000.0;

/// The lines of a piece that was drawn away.
pub(super) fn ways(
    piece: PlacedId,
    moved: &Move,
    contacts: &Contacts,
    offset_of: impl Fn(PlacedId) -> Option<[f64; 3]>,
) -> Vec<[WorldPoint; 2]> {
    let Some(way) = &moved.way else {
        return Vec::new();
    };
    let Some(base) = way.parent.and_then(&offset_of) else {
        return Vec::new();
    };
    let along = way.direction.axis().index();
    // Only to what stands where the piece comes from.
    let mut touches: Vec<&Touch> = contacts
        .of_piece(piece)
        .iter()
        .filter(|touch| offset_of(touch.other) == Some(base))
        .collect();
    touches.sort_by(|a, b| b.area().total_cmp(&a.area()));
    let mut lines = Vec::new();
    let straight_off = touches.iter().any(|touch| touch.axis == along);
    for touch in touches
        .into_iter()
        .filter(|touch| !straight_off || touch.axis == along)
    {
        for start in starts(&touch.shared, along) {
            if lines.len() < MOST {
                lines.extend(line(
                    start,
                    &touch.shared,
                    along,
                    way.direction.is_positive(),
                    base,
                    moved.offset,
                ));
            }
        }
    }
    lines
}

/// Points of a contact that lines go through, whatever they are along the way.
fn starts(shared: &Box3, along: usize) -> Vec<WorldPoint> {
    let middle = shared.middle();
    let across = (0..3).filter(|axis| *axis != along);
    let long = across.max_by(|a, b| shared.size(*a).total_cmp(&shared.size(*b)));
    let Some(axis) = long.filter(|axis| shared.size(*axis) > LONG) else {
        return vec![middle];
    };
    [INSET, 1.0 - INSET]
        .into_iter()
        .map(|part| {
            let mut point = middle;
            if let (Some(value), Some(low)) = (point.get_mut(axis), shared.low.get(axis)) {
                *value = low + shared.size(axis) * part;
            }
            point
        })
        .collect()
}

/// From the trailing end of the contact on the moved piece to its leading end in place.
fn line(
    through: WorldPoint,
    shared: &Box3,
    along: usize,
    forwards: bool,
    base: [f64; 3],
    offset: [f64; 3],
) -> Option<[WorldPoint; 2]> {
    let low = shared.low.get(along).copied()?;
    let high = shared.high.get(along).copied()?;
    let (trailing, leading) = if forwards { (low, high) } else { (high, low) };
    let at = |level: f64, offset: [f64; 3]| {
        let mut point = through;
        if let Some(value) = point.get_mut(along) {
            *value = level;
        }
        plus(point, offset)
    };
    let (from, to) = (at(trailing, offset), at(leading, base));
    let (a, b) = (from.get(along).copied()?, to.get(along).copied()?);
    let gap = if forwards { a - b } else { b - a };
    (gap > SHORTEST).then_some([from, to])
}
