//! How everything looks. Sizes in points; one grid of [`GRID`] points runs down every page.
//!
//! # Classes a template may use
//!
//! | where | class | looks like |
//! |---|---|---|
//! | paragraph | (none) | body text, 10 on 14 |
//! | | `title` | the plan's name on the cover: 30, bold, under a short accent bar as chapters have |
//! | | `subtitle` | 14, grey, below the title |
//! | | `lead` | 12, opens a chapter or says what a plan is for |
//! | | `say` | what to do in a step: 11.5, legible at arm's length |
//! | | `check` | body text as wide as its column: what to check in a step |
//! | | `small` | 8, grey: terms, remarks below a table |
//! | | `meta` | 9, grey, figures of one width: revision, date, mass, hours |
//! | | `caption` | 8.5, grey: what stands below a figure or over a table |
//! | | `signal` | as the first block of a box: its signal word in place of the English or German one |
//! | inline | `label` | a part's letter in a ring, several letters in a rounded outline |
//! | | `second` | the figure in the other unit system: grey |
//! | | `rounded` | as it stands |
//! | | `tag` | a short word in a small rounded outline |
//! | | `big` | half as large again and bold: a figure to be found at a glance |
//! | box | `danger`, `warning` | heavy frame, white word on a black bar, alert triangle |
//! | | `caution` | frame, black word over a rule, alert triangle |
//! | | `notice` | thinner frame, slanted word, no triangle |
//! | | `again` | frame without a signal word: names of hazards told before |
//! | | `info` | thin grey frame, small word |
//! | legend | | figures of 12 mm at most, words of 9.5 to their right, up to four in a line |
//! | beside | | figures of 9 mm at most at the right end of the column |
//! | figure | `step` | at most 105 mm high, so that the text of its step stands below it |
//! | table | any | thin rules, bold head, figures of one width |
//! | | `step-needs` | as any, with less space below |
//! | | `key` | a list of terms and values: first column bold, no rule at the top |
//!
//! An unknown class looks like none. Signal words follow the order and the use of the triangle
//! in ANSI Z535.6 (ref: safety, "Signal words" [M]); being black and white is ours.

use crate::display::{Face, PT_PER_MM, Tone};
use crate::text::TextStyle;

use super::format::Display;

/// The step of the grid on which text begins.
pub(super) const GRID: f64 = 7.0;
/// Longest line of running text: about 75 characters, but no shorter than those of body text.
pub(super) fn reading_width(size: f64) -> f64 {
    size.max(BODY.size) * 40.0
}

/// Free space below a table of a class.
pub(super) fn below_table(class: &str) -> f64 {
    match class {
        // What a step needs goes on in the line below.
        "step-needs" => GRID / 2.0,
        _ => GRID * 2.0,
    }
}

/// Text of second rank.
pub(super) const QUIET: Tone = Tone::grey(0.32);
/// Figures in the other unit system: told apart, and as easy to read.
pub(super) const SECOND: Tone = Tone::grey(0.27);
/// Thin rules.
pub(super) const RULE: Tone = Tone::grey(0.62);

/// Body text.
pub(super) const BODY: TextStyle = TextStyle::new(Face::Regular, 10.0);

/// How wide lines may be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Measure {
    /// As long as can be read with ease.
    Reading,
    /// As wide as the column.
    Full,
}

/// How a paragraph looks.
#[derive(Clone, Copy, Debug)]
pub(super) struct ParagraphStyle {
    pub(super) text: TextStyle,
    /// From baseline to baseline.
    pub(super) leading: f64,
    /// Free space above, unless the block before asks for more below it.
    pub(super) before: f64,
    /// Free space below.
    pub(super) after: f64,
    pub(super) measure: Measure,
}

impl ParagraphStyle {
    const fn new(text: TextStyle, leading: f64, before: f64, after: f64) -> Self {
        Self {
            text,
            leading,
            before,
            after,
            measure: Measure::Reading,
        }
    }

    /// Where the baseline of a line is, from its top: capitals stand in the middle.
    pub(super) fn baseline(&self) -> f64 {
        baseline(self.text.size, self.leading)
    }
}

/// Where the baseline of a line is, from its top: capitals stand in the middle of it.
pub(super) fn baseline(size: f64, leading: f64) -> f64 {
    leading / 2.0 + size * 0.357
}

/// The looks of a paragraph of a class.
pub(super) fn paragraph(class: &str, display: Display) -> ParagraphStyle {
    let regular = |size| TextStyle::new(Face::Regular, size);
    let bold = |size| TextStyle::new(Face::Bold, size);
    match (class, display) {
        ("title", Display::Large) => ParagraphStyle {
            measure: Measure::Full,
            ..ParagraphStyle::new(bold(30.0), 35.0, 28.0, 7.0)
        },
        ("title", Display::Small) => ParagraphStyle {
            measure: Measure::Full,
            ..ParagraphStyle::new(bold(20.0), 24.5, 7.0, 7.0)
        },
        ("subtitle", Display::Large) => ParagraphStyle {
            measure: Measure::Full,
            ..ParagraphStyle::new(regular(14.0).tone(QUIET), 21.0, 0.0, 14.0)
        },
        ("subtitle", Display::Small) => ParagraphStyle {
            measure: Measure::Full,
            ..ParagraphStyle::new(regular(11.0).tone(QUIET), 14.0, 0.0, 7.0)
        },
        (class, _) => plain_paragraph(class),
    }
}

/// The looks of a paragraph of a class that is alike on all pages.
fn plain_paragraph(class: &str) -> ParagraphStyle {
    let regular = |size| TextStyle::new(Face::Regular, size);
    match class {
        "lead" => ParagraphStyle::new(regular(12.0), 17.5, 7.0, 10.5),
        "say" => ParagraphStyle::new(regular(11.5), 16.5, 7.0, 7.0),
        "check" => ParagraphStyle {
            measure: Measure::Full,
            ..ParagraphStyle::new(BODY, 14.0, 0.0, 7.0)
        },
        "small" => ParagraphStyle::new(regular(8.0).tone(QUIET), 10.5, 3.5, 3.5),
        "meta" => ParagraphStyle {
            measure: Measure::Full,
            ..ParagraphStyle::new(regular(9.0).tone(QUIET).tabular(), 12.5, 0.0, 3.5)
        },
        "caption" => ParagraphStyle {
            measure: Measure::Full,
            ..ParagraphStyle::new(CAPTION, CAPTION_LEADING, 3.5, 7.0)
        },
        _ => ParagraphStyle::new(BODY, 14.0, 0.0, 7.0),
    }
}

/// What stands below a figure.
pub(super) const CAPTION: TextStyle = TextStyle::new(Face::Regular, 8.5).tone(QUIET);
/// From baseline to baseline of captions.
pub(super) const CAPTION_LEADING: f64 = 12.0;

/// Most width and height of a figure beside blocks.
pub(super) const BESIDE: f64 = 9.0 * PT_PER_MM;
/// Most width and height of a figure in a legend.
pub(super) const LEGEND: f64 = 12.0 * PT_PER_MM;
/// What figures of a legend mean.
pub(super) const LEGEND_TEXT: TextStyle = TextStyle::new(Face::Regular, 9.5);
/// From baseline to baseline of that.
pub(super) const LEGEND_LEADING: f64 = 12.0;

/// The looks of a heading.
pub(super) fn heading(level: u8, display: Display) -> ParagraphStyle {
    let bold = |size| TextStyle::new(Face::Bold, size);
    match (level, display) {
        (0 | 1, Display::Large) => ParagraphStyle {
            measure: Measure::Full,
            ..ParagraphStyle::new(bold(20.0), 28.0, 42.0, 14.0)
        },
        (0 | 1, Display::Small) => ParagraphStyle {
            measure: Measure::Full,
            ..ParagraphStyle::new(bold(16.0), 21.0, 28.0, 7.0)
        },
        (2, Display::Large) => ParagraphStyle::new(bold(13.0), 17.5, 28.0, 7.0),
        (2, Display::Small) => ParagraphStyle::new(bold(12.0), 17.5, 21.0, 3.5),
        _ => ParagraphStyle::new(bold(10.5), 14.0, 14.0, 3.5),
    }
}

/// Text of tables.
pub(super) const CELL: TextStyle = TextStyle::new(Face::Regular, 9.5).tabular();
/// Heads of tables.
pub(super) const CELL_HEAD: TextStyle = TextStyle::new(Face::Bold, 8.0).tabular();
/// From baseline to baseline in tables.
pub(super) const CELL_LEADING: f64 = 12.5;
/// Above and below the lines of a cell.
pub(super) const CELL_PAD: f64 = 3.0;
/// Between columns, half on either side.
pub(super) const GUTTER: f64 = 12.0;

/// The running head.
pub(super) const RUNNING: TextStyle = TextStyle::new(Face::Regular, 8.0).tone(QUIET).tabular();

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_lettering_is_under_seven_points() {
        let classes = [
            "", "title", "subtitle", "lead", "say", "small", "meta", "caption",
        ];
        for display in [Display::Large, Display::Small] {
            let size = |class| paragraph(class, display).text.size;
            assert!(classes.iter().all(|class| size(class) >= 7.0));
            assert!((1..4).all(|level| heading(level, display).text.size >= 10.0));
        }
        assert!(
            [CELL, CELL_HEAD, LEGEND_TEXT, RUNNING]
                .iter()
                .all(|style| style.size >= 7.0)
        );
    }
}
