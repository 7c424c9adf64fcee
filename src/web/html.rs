//! Writing elements: all text and every attribute goes through here, and is escaped here.

use crate::drawing::escaped;

/// Attributes by name; one without a value is left out.
pub(super) type Attributes<'a> = &'a [(&'a str, &'a str)];

/// A page being written. Every element is closed as XML wants it, and every one but those that HTML knows
/// as empty has an end of its own, as HTML wants it.
#[derive(Debug, Default)]
pub(super) struct Html(String);

impl Html {
    /// Opens an element.
    pub(super) fn open(&mut self, tag: &str, attributes: Attributes<'_>) {
        self.begin(tag, attributes);
        self.0.push('>');
    }

    /// Closes an element.
    pub(super) fn close(&mut self, tag: &str) {
        self.0.push_str("</");
        self.0.push_str(tag);
        self.0.push('>');
    }

    /// An element that HTML knows as empty: `br`, `input`, `meta`, and those of drawings.
    pub(super) fn empty(&mut self, tag: &str, attributes: Attributes<'_>) {
        self.begin(tag, attributes);
        self.0.push_str("/>");
    }

    fn begin(&mut self, tag: &str, attributes: Attributes<'_>) {
        self.0.push('<');
        self.0.push_str(tag);
        for (name, value) in attributes.iter().filter(|(_, value)| !value.is_empty()) {
            self.0.push(' ');
            self.0.push_str(name);
            self.0.push_str("=\"");
            self.0.push_str(&escaped(value));
            self.0.push('"');
        }
    }

    /// Words of the plan: text with its fractions set as such, whatever the reader's fonts can do.
    /// Without that "3 31/32" looks like "331/32" in some of them.
    pub(super) fn words(&mut self, text: &str) {
        let mut rest = text;
        while let Some((before, [above, below], after)) = first_fraction(rest) {
            self.text(before);
            self.open("span", &[("class", "fraction")]);
            self.element("sup", &[], above);
            self.text(FRACTION_SLASH);
            self.element("sub", &[], below);
            self.close("span");
            rest = after;
        }
        self.text(rest);
    }

    /// Text.
    pub(super) fn text(&mut self, text: &str) {
        self.0.push_str(&escaped(text));
    }

    /// An element with nothing but text in it.
    pub(super) fn element(&mut self, tag: &str, attributes: Attributes<'_>, text: &str) {
        self.open(tag, attributes);
        self.text(text);
        self.close(tag);
    }

    /// A new line, between blocks, for those who read the source.
    pub(super) fn line(&mut self) {
        self.0.push('\n');
    }

    /// What is markup already: drawings, and what is shipped with the tool.
    pub(super) fn markup(&mut self, markup: &str) {
        self.0.push_str(markup);
    }

    pub(super) fn into_text(self) -> String {
        self.0
    }
}

const FRACTION_SLASH: &str = "\u{2044}";

/// What stands before the first fraction of a text, its two figures, and what stands behind it.
fn first_fraction(text: &str) -> Option<(&str, [&str; 2], &str)> {
    let is_digit = |c: char| c.is_ascii_digit();
    let mut from = 0;
    while let Some((left, right)) = text.get(from..)?.split_once(FRACTION_SLASH) {
        let before = left.trim_end_matches(is_digit);
        let after = right.trim_start_matches(is_digit);
        let above = left.get(before.len()..)?;
        let below = right.get(..right.len() - after.len())?;
        if !above.is_empty() && !below.is_empty() {
            return Some((text.get(..from + before.len())?, [above, below], after));
        }
        from += left.len() + FRACTION_SLASH.len();
    }
    None
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn fractions_are_set_and_nothing_is_lost() {
        assert_eq!(
            first_fraction("~35\u{202f}7\u{2044}16 × 3"),
            Some(("~35\u{202f}", ["7", "16"], " × 3"))
        );
        assert_eq!(first_fraction("a\u{2044}b, \u{2044}2"), None);
        assert_eq!(
            first_fraction("é\u{2044}2 1\u{2044}2"),
            Some(("é\u{2044}2 ", ["1", "2"], ""))
        );
        let mut html = Html::default();
        html.words("1\u{2044}2 in");
        assert_eq!(
            html.into_text(),
            "<span class=\"fraction\"><sup>1</sup>\u{2044}<sub>2</sub></span> in"
        );
    }
}
