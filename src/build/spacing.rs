//! Where fasteners sit along a contact.

use crate::geometry::{Axis, Interval};
use crate::units::Length;

use super::types::Contact;

/// Farther apart than this, one more fastener goes in between (ref: fasteners#M07 [P]: 50 to
/// 150 mm apart on panel edges).
const WIDEST_SPACING: Length = Length::from_mm(150);
/// The first and last sit this far from the ends where there is room (ref: fasteners, "Furniture
/// rule" [P]: 25 mm or more from an end; 40 mm lets a drill guide sit flat).
const USUAL_INSET: Length = Length::from_mm(40);

/// What the author says about fasteners along a contact.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Wish {
    pub(super) count: Option<i64>,
    pub(super) inset: Option<Length>,
}

/// The longer and the shorter axis of a contact's rectangle, each with its stretch.
pub(super) fn long_and_short(contact: &Contact) -> Option<[(Axis, Interval); 2]> {
    let mut stretches = Axis::ALL
        .into_iter()
        .filter(|axis| *axis != contact.direction.axis())
        .filter_map(|axis| Some((axis, *contact.area.get(axis.index())?)));
    let (first, second) = (stretches.next()?, stretches.next()?);
    // Of two equal ones the first is the longer, so that the choice is always the same.
    Some(if second.1.size() > first.1.size() {
        [second, first]
    } else {
        [first, second]
    })
}

/// Positions along a stretch: evenly spread between the insets, one alone in the middle.
pub(super) fn spread(stretch: Interval, wish: Wish) -> Vec<Length> {
    let whole = stretch.size();
    let inset = wish.inset.unwrap_or_else(|| USUAL_INSET.min(whole / 4));
    let between = whole - inset * 2;
    let count = wish.count.unwrap_or_else(|| {
        let gaps = (between.nm() + WIDEST_SPACING.nm() - 1) / WIDEST_SPACING.nm();
        gaps.max(1) + 1
    });
    if count <= 1 {
        return vec![stretch.middle()];
    }
    (0..count)
        .map(|i| stretch.low + inset + between * i / (count - 1))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mm(stretch: (i64, i64), wish: Wish) -> Vec<f64> {
        let stretch = Interval::new(Length::from_mm(stretch.0), Length::from_mm(stretch.1));
        spread(stretch, wish).into_iter().map(Length::mm).collect()
    }

    #[test]
    fn fasteners_spread_evenly() {
        assert_eq!(mm((0, 280), Wish::default()), [40.0, 140.0, 240.0]);
        assert_eq!(mm((0, 60), Wish::default()), [15.0, 45.0]);
        assert_eq!(
            mm(
                (0, 100),
                Wish {
                    count: Some(1),
                    inset: None
                }
            ),
            [50.0]
        );
        let wish = Wish {
            count: Some(3),
            inset: Some(Length::from_mm(20)),
        };
        assert_eq!(mm((100, 300), wish), [120.0, 200.0, 280.0]);
    }
}
