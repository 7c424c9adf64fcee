//! What a grid of holes is set out and proved by.

use super::part::GridPattern;
use crate::units::Length;

/// A right triangle of whole pitches.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ProofTriangle {
    /// How many pitches its legs are long, along x and y.
    pub steps: [i64; 2],
    /// Its legs.
    pub legs: [Length; 2],
    /// Its long side.
    pub long: Length,
    /// Its sides are as three to four to five.
    pub three_four_five: bool,
}

impl GridPattern {
    /// True for a grid of three by three holes and more: it is worth a drawing of its own.
    pub fn is_set_out(&self) -> bool {
        self.counts.0 >= 3 && self.counts.1 >= 3
    }

    /// From the first hole to the last one along x and along y.
    pub fn spans(&self) -> [Length; 2] {
        [
            self.pitches.0 * (self.counts.0 - 1),
            self.pitches.1 * (self.counts.1 - 1),
        ]
    }

    /// From corner hole to corner hole; none for a single row.
    pub fn diagonal(&self) -> Option<Length> {
        let (a, b) = self.counts;
        (a > 1 && b > 1).then(|| hypotenuse(self.spans()))
    }

    /// The right triangle that proves the grid square: the largest with sides as three to four to
    /// five that it has room for (Euclid, Elements I.48: such a triangle is square), else the
    /// largest of all, half of the grid. None for a single row.
    pub fn proof(&self) -> Option<ProofTriangle> {
        let (a, b) = self.counts;
        if a < 2 || b < 2 {
            return None;
        }
        let found = three_four_five([a, b], [self.pitches.0, self.pitches.1]);
        let steps = found.unwrap_or([a - 1, b - 1]);
        let [i, j] = steps;
        let legs = [self.pitches.0 * i, self.pitches.1 * j];
        Some(ProofTriangle {
            steps,
            legs,
            long: hypotenuse(legs),
            three_four_five: found.is_some(),
        })
    }
}

fn hypotenuse([x, y]: [Length; 2]) -> Length {
    Length::from_mm_f64(libm::hypot(x.mm(), y.mm()))
}

/// The largest right triangle with sides as three to four to five, in pitches.
fn three_four_five([a, b]: [i64; 2], [x, y]: [Length; 2]) -> Option<[i64; 2]> {
    let fits = (1..a).flat_map(|i| (1..b).map(move |j| [i, j]));
    let square = fits.filter(|[i, j]| {
        let (first, second) = (x * *i, y * *j);
        first * 3 == second * 4 || first * 4 == second * 3
    });
    square.max_by_key(|[i, j]| x * *i + y * *j)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::geometry::{PlanePoint, Side};

    fn grid(counts: [i64; 2], pitches: [i64; 2]) -> GridPattern {
        let [x, y] = pitches.map(Length::from_mm);
        GridPattern {
            first: PlanePoint::default(),
            counts: (counts[0], counts[1]),
            pitches: (x, y),
            references: [Side::Foot, Side::Near],
        }
    }

    /// Three, four and five pitches: the triangle of Elements I.48, by which a grid is proved.
    #[test]
    fn a_grid_is_proved_square_by_three_four_five() {
        let steps = |counts, pitches: [i64; 2]| {
            let proof = grid(counts, pitches).proof()?;
            Some((proof.steps, proof.three_four_five))
        };
        assert_eq!(steps([10, 5], [96, 96]), Some(([4, 3], true)));
        assert_eq!(steps([20, 20], [32, 32]), Some(([16, 12], true)));
        // Nine holes are eight pitches: 256 and 192 mm.
        assert_eq!(steps([4, 9], [128, 32]), Some(([2, 6], true)));
        // No room for it: half of the grid.
        assert_eq!(steps([3, 3], [32, 32]), Some(([2, 2], false)));
        assert_eq!(steps([14, 1], [32, 32]), None);
    }

    /// The theorem of Pythagoras (Elements I.47), exactly where the sides are whole.
    #[test]
    fn the_long_side_is_five_where_the_legs_are_three_and_four() {
        for (counts, pitches, long) in [
            ([5, 4], [32, 32], 160),
            ([9, 7], [32, 32], 320),
            ([10, 5], [96, 96], 480),
            ([4, 9], [128, 32], 320),
        ] {
            let proof = grid(counts, pitches).proof().unwrap();
            assert_eq!(proof.long, Length::from_mm(long), "{counts:?}");
        }
        // 64 mm each way: 64 times the root of two.
        let half = grid([3, 3], [32, 32]);
        let long = half.proof().unwrap().long;
        assert_eq!(Some(long), half.diagonal());
        assert!((long.mm() - 64.0 * 2f64.sqrt()).abs() < 1e-6);
        // 864 and 384 mm: √(864² + 384²) = 48 √(18² + 8²) = 48 √388.
        let bench = grid([10, 5], [96, 96]).diagonal().unwrap();
        assert!((bench.mm() - 48.0 * 388f64.sqrt()).abs() < 1e-6);
    }
}
