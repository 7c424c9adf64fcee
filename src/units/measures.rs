//! Areas, volumes, masses and money: what lengths and prices add up to.

use std::iter::Sum;
use std::ops::{Add, Mul, Sub};

use serde::Serialize;

use super::length::Length;

/// An area in whole square nanometres.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(transparent)]
pub struct Area(i128);

impl Area {
    /// No area.
    pub const ZERO: Self = Self(0);

    /// An area of `nm2` square nanometres.
    pub const fn from_nm2(nm2: i128) -> Self {
        Self(nm2)
    }

    /// Whole square nanometres.
    pub const fn nm2(self) -> i128 {
        self.0
    }

    /// Square metres.
    #[expect(
        clippy::cast_precision_loss,
        reason = "a printed figure has four digits"
    )]
    pub fn m2(self) -> f64 {
        self.0 as f64 / 1e18
    }

    /// Square millimetres.
    #[expect(
        clippy::cast_precision_loss,
        reason = "fifteen digits are enough for a drawing"
    )]
    pub fn mm2(self) -> f64 {
        self.0 as f64 / 1e12
    }

    /// Square feet (ref: units-and-paper, "Factors" [V]: 0.09290304 m2).
    pub fn square_feet(self) -> f64 {
        self.m2() / 0.092_903_04
    }
}

impl Add for Area {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0.saturating_add(other.0))
    }
}

impl Sub for Area {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self(self.0.saturating_sub(other.0))
    }
}

impl Mul<i128> for Area {
    type Output = Self;
    fn mul(self, times: i128) -> Self {
        Self(self.0.saturating_mul(times))
    }
}

impl Mul<Length> for Area {
    type Output = Volume;
    fn mul(self, height: Length) -> Volume {
        Volume(self.0.saturating_mul(i128::from(height.nm())))
    }
}

impl Sum for Area {
    fn sum<I: Iterator<Item = Self>>(areas: I) -> Self {
        areas.fold(Self::ZERO, Add::add)
    }
}

/// A volume in whole cubic nanometres.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(transparent)]
pub struct Volume(i128);

impl Volume {
    /// No volume.
    pub const ZERO: Self = Self(0);

    /// Cubic metres.
    #[expect(
        clippy::cast_precision_loss,
        reason = "a printed figure has four digits"
    )]
    pub fn m3(self) -> f64 {
        self.0 as f64 / 1e27
    }
}

impl Add for Volume {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0.saturating_add(other.0))
    }
}

/// A mass in whole milligrams.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(transparent)]
pub struct Mass(i64);

impl Mass {
    /// No mass.
    pub const ZERO: Self = Self(0);

    /// A mass of `mg` milligrams.
    pub const fn from_mg(mg: i64) -> Self {
        Self(mg)
    }

    /// The nearest whole milligram to `kg` kilograms; zero for a value that is not finite.
    pub fn from_kg_f64(kg: f64) -> Self {
        let mg = (kg * 1e6).round();
        if mg.is_finite() {
            #[expect(
                clippy::cast_possible_truncation,
                reason = "float to int casts saturate"
            )]
            Self(mg as i64)
        } else {
            Self::ZERO
        }
    }

    /// Kilograms.
    #[expect(
        clippy::cast_precision_loss,
        reason = "a printed figure has four digits"
    )]
    pub fn kg(self) -> f64 {
        self.0 as f64 / 1e6
    }

    /// Pounds avoirdupois (ref: units-and-paper, "Factors" [M]: 0.45359237 kg).
    pub fn pounds(self) -> f64 {
        self.kg() / 0.453_592_37
    }

    /// Both systems in one line, as plans and findings print them: `36.7 kg (81 lb)`, with
    /// no-break spaces. Estimates from average densities deserve no more digits.
    pub fn in_both(self) -> String {
        let digits = |amount: f64, limit: f64| usize::from(amount.abs() < limit);
        let (kg, pounds) = (self.kg(), self.pounds());
        let (kg_digits, pound_digits) = (digits(kg, 100.0), digits(pounds, 10.0));
        format!("{kg:.kg_digits$}\u{a0}kg ({pounds:.pound_digits$}\u{a0}lb)")
    }
}

impl Add for Mass {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0.saturating_add(other.0))
    }
}

impl Sum for Mass {
    fn sum<I: Iterator<Item = Self>>(masses: I) -> Self {
        masses.fold(Self::ZERO, Add::add)
    }
}

/// A sum of money: hundredths of the unit of a currency named by its ISO 4217 letters.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
pub struct Money {
    /// Three capital letters, `EUR`.
    pub currency: String,
    /// Hundredths of the currency's unit.
    pub cents: i64,
}

impl Money {
    /// The sum `times` over.
    pub fn times(&self, times: i64) -> Self {
        Self {
            currency: self.currency.clone(),
            cents: self.cents.saturating_mul(times),
        }
    }

    /// The figure with two decimals and the currency: `79.00 EUR`.
    pub fn printed(&self) -> String {
        let sign = if self.cents < 0 { "-" } else { "" };
        let cents = self.cents.unsigned_abs();
        format!("{sign}{}.{:02} {}", cents / 100, cents % 100, self.currency)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn masses_print_in_both_systems() {
        // ref: units-and-paper, "Factors" [M]: 0.45359237 kg, so 36.7 kg are 80.9 lb.
        assert_eq!(
            Mass::from_kg_f64(36.7).in_both(),
            "36.7\u{a0}kg (81\u{a0}lb)"
        );
        assert_eq!(
            Mass::from_kg_f64(2.0).in_both(),
            "2.0\u{a0}kg (4.4\u{a0}lb)"
        );
        assert_eq!(
            Mass::from_kg_f64(120.0).in_both(),
            "120\u{a0}kg (265\u{a0}lb)"
        );
    }
}
