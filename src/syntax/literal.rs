//! Numbers, quantities and dates as they are written.

use std::fmt;

use crate::units::{Number, Quantity, Unit};

/// Most digits before the point.
const MOST_WHOLE_DIGITS: usize = 12;
/// Most digits behind the point.
const MOST_DECIMALS: usize = 9;
/// Most digits above and below a fraction's bar.
const MOST_FRACTION_DIGITS: usize = 6;

/// Why a literal has no value.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum LiteralFault {
    /// More digits than are kept.
    TooManyDigits,
    /// A fraction of zero parts.
    ZeroParts,
    /// The number times its unit no longer fits.
    TooLarge,
}

impl fmt::Display for LiteralFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::TooManyDigits => write!(
                f,
                "has more digits than are kept: {MOST_WHOLE_DIGITS} before the point, \
                 {MOST_DECIMALS} behind it, {MOST_FRACTION_DIGITS} in a fraction"
            ),
            Self::ZeroParts => f.write_str("is a fraction of zero parts"),
            Self::TooLarge => f.write_str("is larger than any measure that is kept"),
        }
    }
}

/// `12`, `2.5`, `3/4` or `3-1/2`.
pub(super) fn number(text: &str) -> Result<Number, LiteralFault> {
    let (whole, fraction) = match text.split_once('-') {
        Some((whole, fraction)) => (whole, Some(fraction)),
        None if text.contains('/') => ("0", Some(text)),
        None => (text, None),
    };
    let Some((parts, of)) = fraction.and_then(|fraction| fraction.split_once('/')) else {
        return decimal(whole);
    };
    let of = digits(of, MOST_FRACTION_DIGITS)?;
    if of == 0 {
        return Err(LiteralFault::ZeroParts);
    }
    let parts = digits(parts, MOST_FRACTION_DIGITS)?;
    // Twelve and six digits: far inside an i128.
    Ok(decimal(whole)? + Number::new(parts, of))
}

fn decimal(text: &str) -> Result<Number, LiteralFault> {
    let (whole, decimals) = text.split_once('.').unwrap_or((text, ""));
    let whole = digits(whole, MOST_WHOLE_DIGITS)?;
    let parts = digits(decimals, MOST_DECIMALS)?;
    let scale = decimals.bytes().fold(1_i128, |scale, _| scale * 10);
    Ok(Number::new(whole * scale + parts, scale))
}

/// The value of up to `most` decimal digits.
fn digits(text: &str, most: usize) -> Result<i128, LiteralFault> {
    if text.len() > most {
        return Err(LiteralFault::TooManyDigits);
    }
    Ok(text
        .bytes()
        .filter(u8::is_ascii_digit)
        .fold(0, |value, digit| value * 10 + i128::from(digit - b'0')))
}

/// A number and its unit: `18 mm`, `3-1/2 in`, `680 kg/m3`.
pub(super) fn measured(text: &str) -> Result<Quantity, LiteralFault> {
    let symbol_at = text
        .find(|c: char| c.is_ascii_alphabetic())
        .unwrap_or(text.len());
    let (amount, symbol) = text.split_at_checked(symbol_at).unwrap_or((text, ""));
    let amount = number(amount.trim_end_matches(is_blank))?;
    let quantity = Unit::by_symbol(symbol).and_then(|unit| Quantity::of_unit(amount, &unit));
    quantity.ok_or(LiteralFault::TooLarge)
}

/// Feet and inches as one: `5 ft 6-1/2 in`.
pub(super) fn feet_inches(text: &str) -> Result<Quantity, LiteralFault> {
    let after_feet = text.find("ft").map_or(text.len(), |at| at + 2);
    let (feet, inches) = text.split_at_checked(after_feet).unwrap_or((text, ""));
    let inches = measured(inches.trim_start_matches(is_blank))?;
    let sum = measured(feet)?.plus(&inches);
    sum.map_err(|_| LiteralFault::TooLarge)
}

fn is_blank(c: char) -> bool {
    matches!(c, ' ' | '\t' | '\u{A0}' | '\u{202F}')
}

/// True for a day of the calendar written `2026-03-01` (ISO 8601).
pub(super) fn is_date(text: &str) -> bool {
    let mut fields = text.split('-');
    let mut field = |length: usize| {
        let text = fields.next()?;
        let digits = text.len() == length && text.bytes().all(|byte| byte.is_ascii_digit());
        digits.then(|| text.parse::<u32>().ok()).flatten()
    };
    let (Some(year), Some(month), Some(day)) = (field(4), field(2), field(2)) else {
        return false;
    };
    let leap = year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
    let days = match month {
        2 => 28 + u32::from(leap),
        4 | 6 | 9 | 11 => 30,
        1..=12 => 31,
        _ => 0,
    };
    fields.next().is_none() && (1..=days).contains(&day)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{Dimension, Length};

    fn nm(text: &str) -> i64 {
        measured(text).unwrap().length().unwrap().nm()
    }

    #[test]
    fn both_systems_are_exact() {
        assert_eq!(nm("18 mm"), 18_000_000);
        assert_eq!(nm("2.5mm"), 2_500_000);
        assert_eq!(nm("3/4 in"), 19_050_000);
        assert_eq!(nm("3-1/2 in"), 88_900_000);
        // ref: units-and-paper, "Fraction ladder" [D]: 1/64 in is 0.396875 mm.
        assert_eq!(nm("1/64\u{A0}in"), 396_875);
        let height = feet_inches("5 ft 6-1/2 in").unwrap();
        assert_eq!(height.length(), Some(Length::from_inch(133, 2)));
        assert_eq!(
            feet_inches("5ft 6in").unwrap().length(),
            Some(Length::from_inch(66, 1))
        );
    }

    #[test]
    fn other_measures_have_their_kind() {
        let price = measured("79.00 EUR").unwrap().money().unwrap();
        assert_eq!(price.printed(), "79.00 EUR");
        assert_eq!(measured("680 kg/m3").unwrap().dimension, Dimension::DENSITY);
        assert_eq!(measured("1/2 lb").unwrap().dimension, Dimension::MASS);
    }

    #[test]
    fn numbers_that_cannot_be_kept_are_told() {
        assert_eq!(number("1234567890123"), Err(LiteralFault::TooManyDigits));
        assert_eq!(number("0.1234567891"), Err(LiteralFault::TooManyDigits));
        assert_eq!(number("3-1/0"), Err(LiteralFault::ZeroParts));
        assert_eq!(measured("999999999999 m3"), Err(LiteralFault::TooLarge));
    }

    #[test]
    fn dates_are_days_of_the_calendar() {
        assert!(is_date("2026-03-01") && is_date("2024-02-29") && is_date("2000-02-29"));
        for wrong in [
            "2026-02-29",
            "1900-02-29",
            "2026-3-1",
            "2026-13-01",
            "2026-04-31",
            "01-03-2026",
            "2026-03-00",
            "2026-03-01-1",
        ] {
            assert!(!is_date(wrong), "{wrong}");
        }
    }
}
