//! Pairs of placed pieces that are near each other, without comparing all with all.

use crate::build::{PlacedId, PlacedPart};
use crate::geometry::Interval;
use crate::units::Length;

/// Calls `with` for every two pieces whose bodies come within `reach` of each other on all axes.
///
/// Pieces are swept from left to right; only those whose stretches meet there are compared, so
/// the cost grows with the number of pairs that are near across, not with all pairs.
pub(super) fn near_pairs(
    placed: &[PlacedPart],
    reach: Length,
    mut with: impl FnMut(PlacedId, PlacedId),
) {
    let stretch =
        |piece: &PlacedPart, axis: usize| piece.body.get(axis).copied().unwrap_or_default();
    let mut order: Vec<usize> = (0..placed.len()).collect();
    order.sort_by_key(|index| {
        placed
            .get(*index)
            .map(|piece| (stretch(piece, 0).low, *index))
    });
    let mut open: Vec<usize> = Vec::new();
    for index in order {
        let Some(piece) = placed.get(index) else {
            continue;
        };
        let low = stretch(piece, 0).low;
        open.retain(|other| {
            placed
                .get(*other)
                .is_some_and(|other| stretch(other, 0).high + reach >= low)
        });
        for other in &open {
            let Some(other_piece) = placed.get(*other) else {
                continue;
            };
            let near = |axis: usize| {
                let (a, b) = (stretch(piece, axis), stretch(other_piece, axis));
                a.low <= b.high + reach && b.low <= a.high + reach
            };
            if near(1) && near(2) {
                with(PlacedId((*other).min(index)), PlacedId((*other).max(index)));
            }
        }
        open.push(index);
    }
}

/// What two boxes have in common; none where they only touch.
pub(super) fn common(a: &[Interval; 3], b: &[Interval; 3]) -> Option<[Interval; 3]> {
    let [ax, ay, az] = a;
    let [bx, by, bz] = b;
    Some([ax.overlap(*bx)?, ay.overlap(*by)?, az.overlap(*bz)?])
}
