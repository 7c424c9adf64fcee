//! Lines in the air from an exploded piece to its place.

use super::blocking::Blocking;
use super::contacts::{Box3, Contacts, TOUCHING, Touch};
use super::explode::Move;
use super::view::{WorldPoint, plus};
use crate::build::PlacedId;

/// Contacts longer than this, in micrometres, get a line near each end.
const LONG: f64 = 60_000.0;
/// Where along and across a contact a line may go through it, the best liked across first.
const ALONG: [f64; 5] = [0.12, 0.31, 0.5, 0.69, 0.88];
const ACROSS: [f64; 5] = [0.5, 0.31, 0.69, 0.12, 0.88];
/// A piece gets no more lines than this.
const MOST: usize = 4;
/// Shorter ways, in micrometres, are plain without a line.
const SHORTEST: f64 = 3_000.0;

/// The lines of a piece that was drawn away.
pub(super) fn ways(
    piece: PlacedId,
    moved: &Move,
    contacts: &Contacts,
    blocking: &mut Blocking<'_>,
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
        // Where faces part, the line goes through both of them; along a channel it goes anywhere.
        let mut holds = |point: WorldPoint| {
            touch.axis != along
                || touch.shared.size(along) > TOUCHING
                || (blocking.holds(piece, way.direction.opposite(), point)
                    && blocking.holds(touch.other, way.direction, point))
        };
        for start in starts(&touch.shared, along, &mut holds) {
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

/// Points of a contact that lines go through: near both ends of a long one, in the middle of a
/// short one, and only where `holds` says that there is wood on both sides.
fn starts(
    shared: &Box3,
    along: usize,
    holds: &mut impl FnMut(WorldPoint) -> bool,
) -> Vec<WorldPoint> {
    let mut across: Vec<usize> = (0..3).filter(|axis| *axis != along).collect();
    across.sort_by(|a, b| shared.size(*b).total_cmp(&shared.size(*a)));
    let (Some(long), Some(short)) = (across.first(), across.last()) else {
        return Vec::new();
    };
    let at = |part: f64, other: f64| {
        let mut point = shared.middle();
        for (axis, part) in [(*short, other), (*long, part)] {
            if let (Some(value), Some(low)) = (point.get_mut(axis), shared.low.get(axis)) {
                *value = low + shared.size(axis) * part;
            }
        }
        point
    };
    let found: Vec<WorldPoint> = ALONG
        .into_iter()
        .filter_map(|part| {
            ACROSS
                .into_iter()
                .map(|other| at(part, other))
                .find(|point| holds(*point))
        })
        .collect();
    match found.as_slice() {
        [first, .., last] if shared.size(*long) > LONG => vec![*first, *last],
        some => some.get(some.len() / 2).copied().into_iter().collect(),
    }
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
