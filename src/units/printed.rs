//! Lengths as they are printed: both systems, rounded once, with a mark where rounding shows.

use serde::Serialize;

use super::length::{Length, NM_PER_MM};
use super::rounding::{round_to_inch_part, round_to_step};

/// How finely a plan prints its figures.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Precision {
    /// Inches are printed to this part of an inch: 16, 32 or 64.
    pub inch_denominator: i64,
    /// Millimetres are printed to this step: 0.5 mm or 0.1 mm.
    pub metric_step: Length,
    /// The system the author designs in; its figures come first.
    pub metric_first: bool,
    /// What stands between whole millimetres and their decimals.
    pub decimal_mark: char,
}

impl Precision {
    /// How finely bits, screws and saw cuts are printed: drills come in steps of 1/64 in and
    /// 0.1 mm, and so do the holes that joints need (ref: layout-practice#P35 [P]).
    #[must_use]
    pub fn fine(self) -> Self {
        Self {
            inch_denominator: self.inch_denominator.max(64),
            metric_step: self.metric_step.min(Length::from_nm(100_000)),
            ..self
        }
    }

    /// The same with another mark before decimals.
    #[must_use]
    pub fn with_mark(self, decimal_mark: char) -> Self {
        Self {
            decimal_mark,
            ..self
        }
    }
}

impl Default for Precision {
    /// 1/32 in and 0.5 mm, designed in millimetres (ref: layout-practice#P35 [P]).
    fn default() -> Self {
        Self {
            inch_denominator: 32,
            metric_step: Length::from_nm(500_000),
            metric_first: true,
            decimal_mark: '.',
        }
    }
}

/// A length ready to print in both systems.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct PrintedLength {
    /// Millimetres, without the unit: `296` or `17.5`.
    pub mm: String,
    /// Inches, without the unit, in a form for plain text: `11-21/32`.
    pub inch: String,
    /// Inches, without the unit, with a fraction slash for typesetting: `11 21⁄32`.
    pub inch_set: String,
    /// What the printed millimetres are, less the length itself.
    pub mm_error: Length,
    /// What the printed inches are, less the length itself.
    pub inch_error: Length,
}

impl PrintedLength {
    /// Both systems in one line of set text, the author's own first: `296 mm (11 21⁄32 in)`.
    pub fn both(&self, precision: Precision) -> String {
        let (mm, inch) = (
            format!("{}\u{a0}mm", self.mm),
            format!("{}\u{a0}in", self.inch_set),
        );
        if precision.metric_first {
            format!("{mm} ({inch})")
        } else {
            format!("{inch} ({mm})")
        }
    }
}

impl Length {
    /// What the millimetres that a plan prints of it are.
    pub fn printed_mm(self, precision: Precision) -> Self {
        precision.metric_step * round_to_step(self, precision.metric_step)
    }

    /// What the inches that a plan prints of it are.
    pub fn printed_inch(self, precision: Precision) -> Self {
        let parts = round_to_inch_part(self, precision.inch_denominator);
        Self::from_inch(parts, precision.inch_denominator)
    }

    /// The length in both systems at a plan's precision.
    pub fn printed(self, precision: Precision) -> PrintedLength {
        let rounded_mm = self.printed_mm(precision);
        let rounded_inch = self.printed_inch(precision);
        let parts = round_to_inch_part(self, precision.inch_denominator);
        PrintedLength {
            mm: decimal_mm(rounded_mm, precision.decimal_mark),
            inch: mixed_inches(parts, precision.inch_denominator, "-", "/"),
            inch_set: mixed_inches(parts, precision.inch_denominator, "\u{202f}", "\u{2044}"),
            mm_error: rounded_mm - self,
            inch_error: rounded_inch - self,
        }
    }

    /// Both systems in one line of plain text, as findings print them: `296 mm (11-21/32 in)`.
    ///
    /// Millimetres keep up to three decimals here: a finding is about a difference that rounding
    /// would hide.
    pub fn in_both(self) -> String {
        let micrometres = Self::from_nm(round_to_step(self, Self::from_nm(1_000)) * 1_000);
        let parts = round_to_inch_part(self, 64);
        let about = if Self::from_inch(parts, 64) == self {
            ""
        } else {
            "about "
        };
        let inches = mixed_inches(parts, 64, "-", "/");
        format!("{} mm ({about}{inches} in)", decimal_mm(micrometres, '.'))
    }
}

/// Millimetres with as many decimals as they have.
fn decimal_mm(length: Length, mark: char) -> String {
    let sign = if length.nm() < 0 { "-" } else { "" };
    let nm = length.nm().unsigned_abs();
    let per_mm = NM_PER_MM.unsigned_abs();
    let (whole, rest) = (nm / per_mm, nm % per_mm);
    if rest == 0 {
        return format!("{sign}{whole}");
    }
    let decimals = format!("{rest:06}");
    format!("{sign}{whole}{mark}{}", decimals.trim_end_matches('0'))
}

/// A count of parts of an inch as a whole number and a reduced fraction.
fn mixed_inches(parts: i64, denominator: i64, joint: &str, slash: &str) -> String {
    let sign = if parts < 0 { "-" } else { "" };
    let denominator = denominator.max(1).unsigned_abs();
    let (whole, rest) = (
        parts.unsigned_abs() / denominator,
        parts.unsigned_abs() % denominator,
    );
    if rest == 0 {
        return format!("{sign}{whole}");
    }
    let common = greatest_common_divisor(rest, denominator);
    let fraction = format!("{}{slash}{}", rest / common, denominator / common);
    if whole == 0 {
        format!("{sign}{fraction}")
    } else {
        format!("{sign}{whole}{joint}{fraction}")
    }
}

fn greatest_common_divisor(a: u64, b: u64) -> u64 {
    if b == 0 {
        a.max(1)
    } else {
        greatest_common_divisor(b, a % b)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn inches(mm: f64, inch_denominator: i64) -> (String, i64) {
        let precision = Precision {
            inch_denominator,
            ..Precision::default()
        };
        let printed = Length::from_mm_f64(mm).printed(precision);
        (printed.inch, printed.inch_error.nm())
    }

    #[test]
    fn rounding_agrees_with_the_fraction_table() {
        // ref: units-and-paper, "Fraction ladder", second table [D].
        assert_eq!(inches(18.0, 16), ("11/16".to_owned(), -537_500));
        assert_eq!(inches(18.0, 32), ("23/32".to_owned(), 256_250));
        assert_eq!(inches(18.0, 64), ("45/64".to_owned(), -140_625));
        assert_eq!(inches(37.0, 16).0, "1-7/16");
        assert_eq!(inches(128.0, 64).0, "5-3/64");
        assert_eq!(inches(25.0, 16).0, "1");
    }

    #[test]
    fn exact_figures_carry_no_error() {
        let printed = Length::from_inch(7, 2).printed(Precision::default());
        assert_eq!(
            (printed.inch.as_str(), printed.inch_error),
            ("3-1/2", Length::ZERO)
        );
        assert_eq!(
            (printed.mm.as_str(), printed.mm_error.nm()),
            ("89", 100_000)
        );
    }

    #[test]
    fn a_finding_prints_both_systems() {
        assert_eq!(Length::from_mm(18).in_both(), "18 mm (about 45/64 in)");
        assert_eq!(Length::from_inch(3, 4).in_both(), "19.05 mm (3/4 in)");
        assert_eq!(
            Length::from_nm(-500_000).in_both(),
            "-0.5 mm (about -1/64 in)"
        );
    }
}
