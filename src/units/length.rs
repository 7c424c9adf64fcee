//! A length in whole nanometres.

use std::iter::Sum;
use std::ops::{Add, AddAssign, Div, Mul, Neg, Sub, SubAssign};

use serde::Serialize;

use super::measures::Area;

/// Nanometres in a millimetre.
pub const NM_PER_MM: i64 = 1_000_000;
/// Nanometres in an inch, exact by definition (ref: units-and-paper, "Factors" [D]).
pub const NM_PER_INCH: i64 = 25_400_000;
/// Nanometres in a foot.
pub const NM_PER_FOOT: i64 = 12 * NM_PER_INCH;

/// A length, a position or a distance: whole nanometres.
///
/// The model lets no length over one kilometre in, so sums of a plan's lengths stay far inside
/// an `i64`; the operators saturate all the same and never panic.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(transparent)]
pub struct Length(i64);

impl Length {
    /// No length.
    pub const ZERO: Self = Self(0);
    /// The longest length a source may state: one kilometre.
    pub const LIMIT: Self = Self(1_000_000 * NM_PER_MM);

    /// A length of `nm` nanometres.
    pub const fn from_nm(nm: i64) -> Self {
        Self(nm)
    }

    /// A length of `mm` whole millimetres.
    pub const fn from_mm(mm: i64) -> Self {
        Self(mm.saturating_mul(NM_PER_MM))
    }

    /// A length of `count` parts of an inch divided in `denominator`: `from_inch(3, 4)` is 3/4 in.
    pub const fn from_inch(count: i64, denominator: i64) -> Self {
        let denominator = if denominator == 0 { 1 } else { denominator };
        Self(count.saturating_mul(NM_PER_INCH) / denominator)
    }

    /// The nearest whole nanometre to `mm` millimetres; zero for a value that is not finite.
    pub fn from_mm_f64(mm: f64) -> Self {
        let nm = (mm * 1e6).round();
        if nm.is_finite() {
            #[expect(
                clippy::cast_possible_truncation,
                reason = "float to int casts saturate"
            )]
            Self(nm as i64)
        } else {
            Self::ZERO
        }
    }

    /// Whole nanometres.
    pub const fn nm(self) -> i64 {
        self.0
    }

    /// Millimetres, for drawing and for figures that are not printed exactly.
    #[expect(
        clippy::cast_precision_loss,
        reason = "exact below 2^53 nm, nine thousand kilometres"
    )]
    pub fn mm(self) -> f64 {
        self.0 as f64 / 1e6
    }

    /// The distance without its sign.
    pub const fn abs(self) -> Self {
        Self(self.0.saturating_abs())
    }

    /// Half of it, rounded towards zero to a whole nanometre.
    pub const fn half(self) -> Self {
        Self(self.0 / 2)
    }

    /// True above zero.
    pub const fn is_positive(self) -> bool {
        self.0 > 0
    }
}

impl Add for Length {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0.saturating_add(other.0))
    }
}

impl Sub for Length {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self(self.0.saturating_sub(other.0))
    }
}

impl AddAssign for Length {
    fn add_assign(&mut self, other: Self) {
        *self = *self + other;
    }
}

impl SubAssign for Length {
    fn sub_assign(&mut self, other: Self) {
        *self = *self - other;
    }
}

impl Neg for Length {
    type Output = Self;
    fn neg(self) -> Self {
        Self(self.0.saturating_neg())
    }
}

impl Mul<i64> for Length {
    type Output = Self;
    fn mul(self, times: i64) -> Self {
        Self(self.0.saturating_mul(times))
    }
}

impl Div<i64> for Length {
    type Output = Self;
    /// Rounded towards zero; dividing by zero gives the length itself.
    fn div(self, parts: i64) -> Self {
        Self(self.0.checked_div(parts).unwrap_or(self.0))
    }
}

impl Mul for Length {
    type Output = Area;
    fn mul(self, other: Self) -> Area {
        Area::from_nm2(i128::from(self.0) * i128::from(other.0))
    }
}

impl Sum for Length {
    fn sum<I: Iterator<Item = Self>>(lengths: I) -> Self {
        lengths.fold(Self::ZERO, Add::add)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_systems_are_exact() {
        // ref: units-and-paper, "Fraction ladder" [D]: 1/64 in is 0.396875 mm.
        assert_eq!(Length::from_inch(1, 64).nm(), 396_875);
        assert_eq!(Length::from_inch(1, 1).nm() * 12, NM_PER_FOOT);
        assert_eq!(Length::from_mm_f64(0.001).nm(), 1_000);
    }
}
