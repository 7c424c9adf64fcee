//! Where two pieces touch.

use super::types::Contact;
use crate::geometry::{Axis, Direction, Interval};
use crate::units::Length;

/// Faces this near to each other touch: ten micrometres, far below what a shop can measure.
const TOUCHING: Length = Length::from_nm(10_000);

/// How two boxes lie to each other.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Meeting {
    /// They touch.
    Touch(Contact),
    /// They are apart, by this much on this axis.
    Apart(Axis, Length),
    /// One stands in the other, by this much on the axis on which it is least.
    Overlap(Axis, Length),
}

/// How the box of the first piece meets that of the second; they touch as well where they are no
/// farther apart than `reach`.
pub(super) fn meet(first: &[Interval; 3], second: &[Interval; 3], reach: Length) -> Meeting {
    let reach = reach.max(TOUCHING);
    let mut touching: Option<Contact> = None;
    let mut apart: Option<(Axis, Length)> = None;
    let mut overlap: Option<(Axis, Length)> = None;
    for axis in Axis::ALL {
        let (Some(a), Some(b)) = (first.get(axis.index()), second.get(axis.index())) else {
            continue;
        };
        let above = b.low - a.high;
        let below = a.low - b.high;
        let gap = above.max(below);
        if gap > reach {
            if apart.is_none_or(|(_, widest)| gap > widest) {
                apart = Some((axis, gap));
            }
        } else if gap >= -TOUCHING {
            let direction = if above >= below {
                axis.high()
            } else {
                axis.low()
            };
            let position = if direction.is_positive() {
                a.high
            } else {
                a.low
            };
            // A contact needs breadth on both other axes; that is checked below.
            touching = touching.or(Some(Contact {
                direction,
                position,
                area: *first,
                gap: if gap > TOUCHING { gap } else { Length::ZERO },
            }));
        } else if overlap.is_none_or(|(_, least)| -gap < least) {
            overlap = Some((axis, -gap));
        }
    }
    if let Some((axis, gap)) = apart {
        return Meeting::Apart(axis, gap);
    }
    let Some(mut contact) = touching else {
        let (axis, depth) = overlap.unwrap_or((Axis::Across, Length::ZERO));
        return Meeting::Overlap(axis, depth);
    };
    for axis in Axis::ALL {
        let (Some(a), Some(b)) = (first.get(axis.index()), second.get(axis.index())) else {
            continue;
        };
        let flat = Interval {
            low: contact.position,
            high: contact.position,
        };
        let shared = if axis == contact.direction.axis() {
            Some(flat)
        } else {
            a.overlap(*b)
        };
        match (shared, contact.area.get_mut(axis.index())) {
            (Some(shared), Some(area)) => *area = shared,
            // They meet in an edge or a corner only.
            (None, _) | (_, None) => return Meeting::Apart(axis, Length::ZERO),
        }
    }
    Meeting::Touch(contact)
}

/// What two boxes have in common, flat in the middle of one axis: where pieces that cross are
/// halved. None where they have no room in common.
pub(super) fn crossing(
    first: &[Interval; 3],
    second: &[Interval; 3],
    direction: Direction,
) -> Option<Contact> {
    let mut area = *first;
    for (slot, other) in area.iter_mut().zip(second) {
        *slot = slot.overlap(*other)?;
    }
    let common = area.get_mut(direction.axis().index())?;
    let position = common.middle();
    *common = Interval {
        low: position,
        high: position,
    };
    Some(Contact {
        direction,
        position,
        area,
        gap: Length::ZERO,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn boxed(x: (i64, i64), y: (i64, i64), z: (i64, i64)) -> [Interval; 3] {
        [x, y, z].map(|(a, b)| Interval::new(Length::from_mm(a), Length::from_mm(b)))
    }

    #[test]
    fn a_shelf_touches_a_side() {
        let shelf = boxed((18, 600), (0, 280), (100, 118));
        let side = boxed((0, 18), (0, 300), (0, 720));
        let Meeting::Touch(contact) = meet(&shelf, &side, Length::ZERO) else {
            panic!("they touch")
        };
        assert_eq!(contact.direction, Direction::Left);
        assert_eq!(contact.size(), Length::from_mm(280) * Length::from_mm(18));
    }

    #[test]
    fn what_moves_keeps_a_gap() {
        let door = boxed((20, 600), (0, 18), (0, 700));
        let side = boxed((0, 18), (0, 300), (0, 720));
        let Meeting::Touch(contact) = meet(&door, &side, Length::from_mm(5)) else {
            panic!("they are near enough")
        };
        assert_eq!(contact.direction, Direction::Left);
        assert_eq!(contact.gap, Length::from_mm(2));
    }

    #[test]
    fn rails_cross_in_what_they_have_in_common() {
        let rail = boxed((0, 500), (200, 240), (0, 20));
        let stile = boxed((230, 270), (0, 400), (0, 20));
        let contact = crossing(&rail, &stile, Direction::Bottom).unwrap();
        assert_eq!(contact.position, Length::from_mm(10));
        assert_eq!(contact.size(), Length::from_mm(40) * Length::from_mm(40));
        let beside = boxed((230, 270), (0, 100), (0, 20));
        assert_eq!(crossing(&rail, &beside, Direction::Bottom), None);
    }

    #[test]
    fn gaps_and_overlaps_are_measured() {
        let side = boxed((0, 18), (0, 300), (0, 720));
        let off = boxed((20, 600), (0, 280), (100, 118));
        assert_eq!(
            meet(&off, &side, Length::ZERO),
            Meeting::Apart(Axis::Across, Length::from_mm(2))
        );
        let into = boxed((12, 600), (0, 280), (100, 118));
        assert_eq!(
            meet(&into, &side, Length::ZERO),
            Meeting::Overlap(Axis::Across, Length::from_mm(6))
        );
        let corner = boxed((18, 600), (300, 400), (100, 118));
        assert_eq!(
            meet(&corner, &side, Length::ZERO),
            Meeting::Apart(Axis::Deep, Length::ZERO)
        );
    }
}
