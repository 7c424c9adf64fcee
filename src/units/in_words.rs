//! Lengths that stand in a text: "a 20 mm bit", "3/4 inch".
//!
//! Authors write such a figure in one system where they could have written `{20 mm}`. Whoever
//! prints or weighs the text asks here where the figures are. Only what cannot be meant
//! otherwise is taken: "2 in each rail" is no length, "2 inches" is.

use std::ops::Range;

use super::length::{Length, NM_PER_INCH, NM_PER_MM};

/// Longer figures are no lengths of furniture.
const LONGEST: f64 = 100_000.0;

/// The lengths of a text and where they stand, unit included.
///
/// Left out: a figure that its author gives in both systems, "19 mm (3/4 inch)", and the last of
/// several that share one unit, "4 x 45 mm".
pub fn lengths_in(text: &str) -> Vec<(Range<usize>, Length)> {
    let mut found = Vec::new();
    let mut from = 0;
    while let Some(start) = next_digit(text, from) {
        let figure = Figure::read(text, start);
        let Some((end, nm_per_unit)) = unit(text, figure.end) else {
            from = figure.end;
            continue;
        };
        from = end;
        let before = text.get(..start).unwrap_or("");
        let after = text.get(end..).unwrap_or("");
        let size = figure.value * nm_per_unit;
        let is_odd = figure.value <= 0.0 || size > LONGEST * nm_in(NM_PER_MM);
        let in_both = after.trim_start().starts_with('(') || before.trim_end().ends_with('(');
        if !is_odd && !in_both && !shares_unit(before) {
            found.push((start..end, Length::from_mm_f64(size / nm_in(NM_PER_MM))));
        }
    }
    found
}

/// A whole number of nanometres in a millimetre or an inch, as a factor.
fn nm_in(nm: i64) -> f64 {
    i32::try_from(nm).map_or(0.0, f64::from)
}

/// Where the next number begins: a digit that no word, sign or number stands before.
fn next_digit(text: &str, from: usize) -> Option<usize> {
    let mut before = text.get(..from)?.chars().next_back();
    for (at, c) in text.get(from..)?.char_indices() {
        let is_free =
            before.is_none_or(|b| !b.is_alphanumeric() && !matches!(b, '.' | ',' | '-' | '/'));
        if c.is_ascii_digit() && is_free {
            return Some(from + at);
        }
        before = Some(c);
    }
    None
}

/// A number as written: 20, 6.5, 3/4 or 1 3/4.
struct Figure {
    value: f64,
    end: usize,
}

impl Figure {
    fn read(text: &str, start: usize) -> Self {
        let (whole, end) = decimal(text, start);
        if let Some((below, end)) = after(text, end, "/") {
            return Self {
                value: whole / below,
                end,
            };
        }
        // A fraction may follow its whole number.
        let space = text
            .get(end..)
            .and_then(|rest| rest.strip_prefix([' ', '\u{a0}']))
            .filter(|rest| rest.starts_with(|c: char| c.is_ascii_digit()));
        if let Some(rest) = space {
            let (above, slash) = decimal(text, text.len() - rest.len());
            if let Some((below, end)) = after(text, slash, "/") {
                return Self {
                    value: whole + above / below,
                    end,
                };
            }
        }
        Self { value: whole, end }
    }
}

/// The number after `mark`, if one stands there; never zero.
fn after(text: &str, at: usize, mark: &str) -> Option<(f64, usize)> {
    let rest = text.get(at..)?.strip_prefix(mark)?;
    rest.starts_with(|c: char| c.is_ascii_digit())
        .then_some(())?;
    Some(decimal(text, at + mark.len())).filter(|(value, _)| *value > 0.0)
}

/// Digits, with a point in them or without; zero where there are none.
fn decimal(text: &str, start: usize) -> (f64, usize) {
    let rest = text.get(start..).unwrap_or("");
    let digits = |text: &str| text.bytes().take_while(u8::is_ascii_digit).count();
    let mut length = digits(rest);
    let fraction = rest.get(length..).and_then(|rest| rest.strip_prefix('.'));
    if let Some(places) = fraction.map(digits).filter(|places| *places > 0) {
        length += 1 + places;
    }
    let value = rest.get(..length).and_then(|text| text.parse().ok());
    (value.unwrap_or(0.0), start + length)
}

/// The end of the unit that follows a number, and its nanometres.
fn unit(text: &str, at: usize) -> Option<(usize, f64)> {
    const UNITS: [(&str, i64); 5] = [
        ("mm", NM_PER_MM),
        ("inches", NM_PER_INCH),
        ("inch", NM_PER_INCH),
        ("″", NM_PER_INCH),
        ("\"", NM_PER_INCH),
    ];
    let rest = text.get(at..)?;
    let word = rest.trim_start_matches([' ', '\u{a0}', '\u{202f}', '-']);
    let (unit, nm) = UNITS.into_iter().find(|(unit, _)| {
        let behind = word.strip_prefix(unit);
        // Square millimetres, and words that only begin like a unit, are others.
        behind.is_some_and(|behind| !behind.starts_with(|c: char| c.is_alphanumeric()))
    })?;
    Some((text.len() - word.len() + unit.len(), nm_in(nm)))
}

/// True where a number without a unit and a joining word stand before: "4 x", "6 and", "3 to".
fn shares_unit(before: &str) -> bool {
    let mut words = before.split_whitespace().rev();
    let joins = matches!(
        words.next(),
        Some("x" | "×" | "by" | "to" | "or" | "and" | "-" | "–")
    );
    let is_number = |word: &str| word.ends_with(|c: char| c.is_ascii_digit());
    joins && words.next().is_some_and(is_number)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn found(text: &str) -> Vec<(&str, f64)> {
        let lengths = lengths_in(text).into_iter();
        lengths
            .map(|(range, length)| (&text[range], length.mm()))
            .collect()
    }

    #[test]
    fn figures_with_a_unit_are_found() {
        assert_eq!(found("20 mm drill bit"), [("20 mm", 20.0)]);
        assert_eq!(
            found("Router with a 6 mm and an 18.5mm bit"),
            [("6 mm", 6.0), ("18.5mm", 18.5)]
        );
        assert_eq!(
            found("480 mm by 360 mm"),
            [("480 mm", 480.0), ("360 mm", 360.0)]
        );
        // 1 in is exactly 25.4 mm.
        assert_eq!(found("a 3/4 inch bit"), [("3/4 inch", 19.05)]);
        assert_eq!(found("1 1/2-inch chisel"), [("1 1/2-inch", 38.1)]);
        assert_eq!(found("2″ deep"), [("2″", 50.8)]);
    }

    #[test]
    fn what_may_mean_something_else_is_left() {
        for text in [
            "2 in each rail",
            "4 x 45 mm screws",
            "6 and 18 mm bits",
            "5 to 6 mm",
            "19 mm (3/4 inch)",
            "3/4 inch (19 mm)",
            "30 kg",
            "120 and 180 grit",
            "100 mm2",
            "0 mm",
            "M8 mm",
            "1/0 mm",
            "9999999 mm",
            "",
            "7",
            "1/",
            "é 3",
        ] {
            assert_eq!(found(text), [], "{text}");
        }
    }
}
