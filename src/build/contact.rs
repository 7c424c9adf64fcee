//! Where two pieces touch.

use super::types::Contact;
use crate::geometry::{Axis, Interval};
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

/// How the box of the first piece meets that of the second.
pub(super) fn meet(first: &[Interval; 3], second: &[Interval; 3]) -> Meeting {
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
        if gap > TOUCHING {
            if apart.is_none_or(|(_, widest)| gap > widest) {
                apart = Some((axis, gap));
            }
        } else if gap.abs() <= TOUCHING {
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::geometry::Direction;

    fn boxed(x: (i64, i64), y: (i64, i64), z: (i64, i64)) -> [Interval; 3] {
        [x, y, z].map(|(a, b)| Interval::new(Length::from_mm(a), Length::from_mm(b)))
    }

    #[test]
    fn a_shelf_touches_a_side() {
        let shelf = boxed((18, 600), (0, 280), (100, 118));
        let side = boxed((0, 18), (0, 300), (0, 720));
        let Meeting::Touch(contact) = meet(&shelf, &side) else {
            panic!("they touch")
        };
        assert_eq!(contact.direction, Direction::Left);
        assert_eq!(contact.size(), Length::from_mm(280) * Length::from_mm(18));
    }

    #[test]
    fn gaps_and_overlaps_are_measured() {
        let side = boxed((0, 18), (0, 300), (0, 720));
        let off = boxed((20, 600), (0, 280), (100, 118));
        assert_eq!(
            meet(&off, &side),
            Meeting::Apart(Axis::Across, Length::from_mm(2))
        );
        let into = boxed((12, 600), (0, 280), (100, 118));
        assert_eq!(
            meet(&into, &side),
            Meeting::Overlap(Axis::Across, Length::from_mm(6))
        );
        let corner = boxed((18, 600), (300, 400), (100, 118));
        assert_eq!(
            meet(&corner, &side),
            Meeting::Apart(Axis::Deep, Length::ZERO)
        );
    }
}
