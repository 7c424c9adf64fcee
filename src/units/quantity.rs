//! Exact quantities: a rational number of base units and the kind it measures.
//!
//! Why rational numbers and not floats: `width / 7 * 7` is `width`, on every machine, and
//! equality means equality. Intermediate values that no longer fit are an error, not a wrap.

use num_rational::Ratio;
use num_traits::{CheckedAdd, CheckedDiv, CheckedMul, CheckedSub, Signed, Zero};

use super::dimension::Dimension;
use super::length::{Length, NM_PER_FOOT, NM_PER_INCH, NM_PER_MM};
use super::measures::{Mass, Money};
use super::rounding::round_ratio;

/// An exact number.
pub type Number = Ratio<i128>;

/// Why an operation has no result.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ArithmeticFault {
    /// The two sides measure different things.
    Kinds(Dimension, Dimension),
    /// The divisor is zero.
    DivisionByZero,
    /// The numbers grew beyond what is kept exactly.
    TooLarge,
    /// Two currencies in one sum.
    Currencies,
    /// A square root of something below zero.
    NegativeRoot,
}

/// A unit of measure in the language.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Unit {
    /// What it measures.
    pub dimension: Dimension,
    /// Base units in one of it. Base units: nanometre, milligram, second, millionth of a degree,
    /// hundredth of a currency's unit.
    pub factor: Number,
    /// The currency, for money alone.
    pub currency: Option<String>,
}

impl Unit {
    /// The unit written `symbol`: `mm`, `in`, `ft`, `kg/m3`, `min`, or three capital letters for
    /// a currency (ISO 4217).
    pub fn by_symbol(symbol: &str) -> Option<Self> {
        let nm_cubed = |nm: i64| Number::from_integer(i128::from(nm).pow(3));
        let whole = |count: i64| Number::from_integer(i128::from(count));
        let (dimension, factor) = match symbol {
            "mm" => (Dimension::LENGTH, whole(NM_PER_MM)),
            "cm" => (Dimension::LENGTH, whole(10 * NM_PER_MM)),
            "m" => (Dimension::LENGTH, whole(1000 * NM_PER_MM)),
            "in" => (Dimension::LENGTH, whole(NM_PER_INCH)),
            "ft" => (Dimension::LENGTH, whole(NM_PER_FOOT)),
            "mm2" => (Dimension::AREA, whole(NM_PER_MM).pow(2)),
            "m2" => (Dimension::AREA, whole(1000 * NM_PER_MM).pow(2)),
            "ft2" => (Dimension::AREA, whole(NM_PER_FOOT).pow(2)),
            "m3" => (Dimension::VOLUME, nm_cubed(1000 * NM_PER_MM)),
            "litre" => (Dimension::VOLUME, nm_cubed(100 * NM_PER_MM)),
            "deg" => (Dimension::ANGLE, whole(1_000_000)),
            "g" => (Dimension::MASS, whole(1_000)),
            "kg" => (Dimension::MASS, whole(1_000_000)),
            // ref: units-and-paper, "Factors" [M]: 0.45359237 kg.
            "lb" => (Dimension::MASS, Ratio::new(45_359_237, 100)),
            "s" => (Dimension::TIME, whole(1)),
            "min" => (Dimension::TIME, whole(60)),
            "h" => (Dimension::TIME, whole(3600)),
            "kg/m3" => (
                Dimension::DENSITY,
                whole(1_000_000) / nm_cubed(1000 * NM_PER_MM),
            ),
            "lb/ft3" => (
                Dimension::DENSITY,
                Ratio::new(45_359_237, 100) / nm_cubed(NM_PER_FOOT),
            ),
            _ if is_currency(symbol) => (Dimension::MONEY, whole(100)),
            _ => return None,
        };
        let currency = (dimension == Dimension::MONEY).then(|| symbol.to_owned());
        Some(Self {
            dimension,
            factor,
            currency,
        })
    }
}

/// Three capital letters (ISO 4217 assigns them; which are in use is not checked).
fn is_currency(symbol: &str) -> bool {
    symbol.len() == 3 && symbol.bytes().all(|byte| byte.is_ascii_uppercase())
}

/// An exact amount of something.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Quantity {
    /// What it measures.
    pub dimension: Dimension,
    /// How much, in base units (see [`Unit::factor`]).
    pub amount: Number,
    /// The currency, for money alone.
    pub currency: Option<String>,
}

impl Quantity {
    /// A bare number.
    pub fn count(amount: Number) -> Self {
        Self {
            dimension: Dimension::COUNT,
            amount,
            currency: None,
        }
    }

    /// A bare whole number.
    pub fn whole(count: i64) -> Self {
        Self::count(Number::from_integer(i128::from(count)))
    }

    /// `number` of a unit.
    pub fn of_unit(number: Number, unit: &Unit) -> Option<Self> {
        let amount = number.checked_mul(&unit.factor)?;
        Some(Self {
            dimension: unit.dimension,
            amount,
            currency: unit.currency.clone(),
        })
    }

    /// A length as a quantity.
    pub fn from_length(length: Length) -> Self {
        let amount = Number::from_integer(i128::from(length.nm()));
        Self {
            dimension: Dimension::LENGTH,
            amount,
            currency: None,
        }
    }

    /// The length, rounded to a whole nanometre, if it is one within [`Length::LIMIT`].
    pub fn length(&self) -> Option<Length> {
        let nm = self.base_units(Dimension::LENGTH)?;
        (nm.abs() <= Length::LIMIT.nm()).then(|| Length::from_nm(nm))
    }

    /// The whole number it is, if it is one.
    pub fn whole_number(&self) -> Option<i64> {
        let exact = self.dimension == Dimension::COUNT && self.amount.is_integer();
        exact
            .then(|| i64::try_from(self.amount.to_integer()).ok())
            .flatten()
    }

    /// The mass, rounded to a whole milligram, if it is one.
    pub fn mass(&self) -> Option<Mass> {
        self.base_units(Dimension::MASS).map(Mass::from_mg)
    }

    /// Square metres, if it is an area.
    #[expect(
        clippy::cast_precision_loss,
        reason = "what a can covers is known to two digits"
    )]
    pub fn square_metres(&self) -> Option<f64> {
        (self.dimension == Dimension::AREA)
            .then(|| *self.amount.numer() as f64 / *self.amount.denom() as f64 / 1e18)
    }

    /// Whole seconds, if it is a time.
    pub fn seconds(&self) -> Option<i64> {
        self.base_units(Dimension::TIME)
    }

    /// Kilograms in a cubic metre, if it is a density.
    #[expect(
        clippy::cast_precision_loss,
        reason = "densities are known to three digits"
    )]
    pub fn kg_per_m3(&self) -> Option<f64> {
        // Milligrams by cubic nanometre to kilograms by cubic metre: 1e27 / 1e6.
        (self.dimension == Dimension::DENSITY)
            .then(|| *self.amount.numer() as f64 / *self.amount.denom() as f64 * 1e21)
    }

    /// Degrees, if it is an angle.
    #[expect(
        clippy::cast_precision_loss,
        reason = "an angle is used as a float: fifteen digits are enough"
    )]
    pub fn degrees(&self) -> Option<f64> {
        (self.dimension == Dimension::ANGLE)
            .then(|| *self.amount.numer() as f64 / *self.amount.denom() as f64 / 1e6)
    }

    /// The sum of money, if it is one.
    pub fn money(&self) -> Option<Money> {
        let cents = self.base_units(Dimension::MONEY)?;
        Some(Money {
            currency: self.currency.clone()?,
            cents,
        })
    }

    fn base_units(&self, dimension: Dimension) -> Option<i64> {
        let fits = self.dimension == dimension;
        fits.then(|| i64::try_from(round_ratio(&self.amount)).ok())
            .flatten()
    }

    /// The sum of two quantities of one kind.
    pub fn plus(&self, other: &Self) -> Result<Self, ArithmeticFault> {
        let currency = self.same_kind(other)?;
        let amount = self
            .amount
            .checked_add(&other.amount)
            .ok_or(ArithmeticFault::TooLarge)?;
        Ok(Self {
            dimension: self.dimension,
            amount,
            currency,
        })
    }

    /// The difference of two quantities of one kind.
    pub fn minus(&self, other: &Self) -> Result<Self, ArithmeticFault> {
        let currency = self.same_kind(other)?;
        let amount = self
            .amount
            .checked_sub(&other.amount)
            .ok_or(ArithmeticFault::TooLarge)?;
        Ok(Self {
            dimension: self.dimension,
            amount,
            currency,
        })
    }

    /// The product; its kind is the product of the kinds.
    pub fn times(&self, other: &Self) -> Result<Self, ArithmeticFault> {
        let dimension = self
            .dimension
            .times(other.dimension)
            .ok_or(ArithmeticFault::TooLarge)?;
        let amount = self
            .amount
            .checked_mul(&other.amount)
            .ok_or(ArithmeticFault::TooLarge)?;
        let currency = self.currency.clone().or_else(|| other.currency.clone());
        Ok(Self {
            dimension,
            amount,
            currency,
        })
    }

    /// The quotient; its kind is the quotient of the kinds.
    pub fn over(&self, other: &Self) -> Result<Self, ArithmeticFault> {
        if other.amount.is_zero() {
            return Err(ArithmeticFault::DivisionByZero);
        }
        let dimension = other
            .dimension
            .inverse()
            .and_then(|inverse| self.dimension.times(inverse));
        let dimension = dimension.ok_or(ArithmeticFault::TooLarge)?;
        let amount = self
            .amount
            .checked_div(&other.amount)
            .ok_or(ArithmeticFault::TooLarge)?;
        let currency = (dimension == Dimension::MONEY)
            .then(|| self.currency.clone())
            .flatten();
        Ok(Self {
            dimension,
            amount,
            currency,
        })
    }

    /// The negative of it.
    pub fn negated(&self) -> Result<Self, ArithmeticFault> {
        let zero = Self {
            amount: Number::zero(),
            ..self.clone()
        };
        zero.minus(self)
    }

    /// The square root of a number or an area, to the nearest base unit.
    #[expect(
        clippy::cast_precision_loss,
        reason = "a root is rounded to a whole base unit"
    )]
    pub fn square_root(&self) -> Result<Self, ArithmeticFault> {
        if self.amount.is_negative() {
            return Err(ArithmeticFault::NegativeRoot);
        }
        let dimension = match self.dimension {
            Dimension::COUNT => Dimension::COUNT,
            Dimension::AREA => Dimension::LENGTH,
            other => return Err(ArithmeticFault::Kinds(other, Dimension::AREA)),
        };
        // A bare number keeps nine digits behind the point; a length is a whole nanometre.
        let scale: i128 = if dimension == Dimension::COUNT {
            1_000_000_000
        } else {
            1
        };
        let value = *self.amount.numer() as f64 / *self.amount.denom() as f64;
        let root = (libm::sqrt(value) * scale as f64).round();
        if !root.is_finite() || root > 1e30 {
            return Err(ArithmeticFault::TooLarge);
        }
        #[expect(clippy::cast_possible_truncation, reason = "checked to be below 1e30")]
        let amount = Ratio::new(root as i128, scale);
        Ok(Self {
            dimension,
            amount,
            currency: None,
        })
    }

    /// The currency of a sum, or why the two cannot be added or compared.
    pub fn same_kind(&self, other: &Self) -> Result<Option<String>, ArithmeticFault> {
        if self.dimension != other.dimension {
            return Err(ArithmeticFault::Kinds(self.dimension, other.dimension));
        }
        if self.currency != other.currency {
            return Err(ArithmeticFault::Currencies);
        }
        Ok(self.currency.clone())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn of(number: i128, symbol: &str) -> Quantity {
        Quantity::of_unit(
            Number::from_integer(number),
            &Unit::by_symbol(symbol).unwrap(),
        )
        .unwrap()
    }

    #[test]
    fn thirds_stay_exact() {
        let third = of(900, "mm").over(&Quantity::whole(7)).unwrap();
        assert_eq!(third.times(&Quantity::whole(7)).unwrap(), of(900, "mm"));
    }

    #[test]
    fn kinds_are_checked() {
        let fault = of(1, "mm").plus(&Quantity::whole(1)).unwrap_err();
        assert_eq!(
            fault,
            ArithmeticFault::Kinds(Dimension::LENGTH, Dimension::COUNT)
        );
        assert_eq!(
            of(1, "EUR").plus(&of(1, "USD")).unwrap_err(),
            ArithmeticFault::Currencies
        );
    }

    #[test]
    fn a_three_four_five_triangle_closes() {
        // ref: layout-practice, "Right triangles" [D]: 600, 800, 1000.
        let square = |mm| of(mm, "mm").times(&of(mm, "mm")).unwrap();
        let sum = square(600).plus(&square(800)).unwrap();
        assert_eq!(
            sum.square_root().unwrap().length(),
            Some(Length::from_mm(1000))
        );
    }

    #[test]
    fn densities_come_in_both_systems() {
        let pounds = of(1, "lb/ft3").kg_per_m3().unwrap();
        // ref: units-and-paper, "Factors" [M]: 16.01846337 kg/m3.
        assert!((pounds - 16.018_463_37).abs() < 1e-6);
    }
}
