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
        let digits = |amount: f64, limit: f64| {
            usize::from(amount.abs() < limit) + usize::from(amount.abs() < 0.5)
        };
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

/// A force in both systems, with no-break spaces: `120 N (27 lbf)` (ref: units-and-paper,
/// "Factors" [V]: 4.4482216152605 N).
pub fn newtons_in_both(newtons: f64) -> String {
    let pounds = newtons / 4.448_221_615_260_5;
    format!("{newtons:.0}\u{a0}N ({pounds:.0}\u{a0}lbf)")
}

/// A surface in both systems, with no-break spaces: `2.4 m² (26 sq ft)`.
pub fn square_metres_in_both(m2: f64) -> String {
    let feet = m2 / 0.092_903_04;
    let (m_digits, feet_digits) = (if m2 < 1.0 { 2 } else { 1 }, usize::from(feet < 10.0));
    format!("{m2:.m_digits$}\u{a0}m² ({feet:.feet_digits$}\u{a0}sq\u{a0}ft)")
}

/// A small reckoned length in both systems, with no-break spaces: `2.4 mm (0.09 in)`. No digit
/// more: it rests on averages.
pub fn tenths_in_both(mm: f64) -> String {
    if mm.abs() < 0.05 {
        return "under 0.1\u{a0}mm (0.004\u{a0}in)".to_owned();
    }
    let inches = mm / 25.4;
    format!("{mm:.1}\u{a0}mm ({inches:.2}\u{a0}in)")
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
    fn forces_and_surfaces_print_in_both_systems() {
        // ref: units-and-paper, "Factors": 4.4482216 N and 0.09290304 m2.
        assert_eq!(newtons_in_both(120.0), "120\u{a0}N (27\u{a0}lbf)");
        assert_eq!(
            square_metres_in_both(2.4),
            "2.4\u{a0}m² (26\u{a0}sq\u{a0}ft)"
        );
        assert_eq!(
            square_metres_in_both(0.24),
            "0.24\u{a0}m² (2.6\u{a0}sq\u{a0}ft)"
        );
        assert_eq!(tenths_in_both(2.4), "2.4\u{a0}mm (0.09\u{a0}in)");
        assert_eq!(tenths_in_both(0.01), "under 0.1\u{a0}mm (0.004\u{a0}in)");
    }

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
        assert_eq!(
            Mass::from_kg_f64(0.02).in_both(),
            "0.02\u{a0}kg (0.04\u{a0}lb)"
        );
    }
}
