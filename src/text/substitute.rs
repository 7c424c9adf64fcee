//! Signs a face lacks, set from signs it has: a minus from a dash, "at most" from "less than"
//! over a dash, an arrow from a dash and a quotation mark. What is copied out of the PDF is the
//! sign that was typed.

/// A sign set from others.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Substitute {
    /// Drawn first, raised by so much, in thousandths of the size.
    pub(super) first: (char, f64),
    /// Drawn over it, raised by so much.
    pub(super) second: Option<(char, f64, Over)>,
}

/// Where the second sign stands over the first.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Over {
    Left,
    Middle,
    Right,
}

/// What stands for a character where a face lacks it.
pub(super) const fn substitute(character: char) -> Option<Substitute> {
    use Over::{Left, Middle, Right};
    let dash = ('\u{2013}', 0.0);
    let (first, second) = match character {
        // Minus.
        '\u{2212}' => (dash, None),
        // Hyphen and no-break hyphen.
        '\u{2010}' | '\u{2011}' => (('-', 0.0), None),
        // Diameter sign and empty set.
        '\u{2300}' | '\u{2205}' => (('\u{d8}', 0.0), None),
        // At most, at least.
        '\u{2264}' => (('<', 60.0), Some(('\u{2013}', -225.0, Middle))),
        '\u{2265}' => (('>', 60.0), Some(('\u{2013}', -225.0, Middle))),
        // About equal.
        '\u{2248}' => (('~', 95.0), Some(('~', -95.0, Middle))),
        // Arrows: single quotation marks as heads of a long dash.
        '\u{2190}' => (('\u{2014}', 0.0), Some(('\u{2039}', 0.0, Left))),
        '\u{2192}' => (('\u{2014}', 0.0), Some(('\u{203a}', 0.0, Right))),
        _ => return None,
    };
    Some(Substitute { first, second })
}
