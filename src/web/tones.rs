//! Tones of drawings on a dark page.
//!
//! Lines and letters turn from dark to light. Areas stay in their order, the lightest the sheet itself and
//! shaded ones darker: light still falls from above, where a negative would turn it round. Paper keeps
//! the tones of the drawing.

use std::collections::BTreeSet;
use std::fmt::Write as _;

use crate::display::{Colours, Tone};
use crate::drawing::{ToneOf, Toned};

/// The sheet under a drawing on a dark page, from 0 for black to 255; `--sheet` in the style is the same.
const SHEET: f64 = 56.0;
/// An area of the darkest tone that counts as paper.
const SHADE: f64 = 14.0;
/// Black ink on a dark page.
const INK: f64 = 236.0;
/// How much darker than that white ink would be.
const INK_RANGE: f64 = 150.0;
/// Areas of this tone and lighter ones are paper, darker ones ink.
const DARKEST_PAPER: u8 = 60;
/// Lines of this tone and lighter ones keep others apart: they are paper.
const WHITE_LINE: u8 = 90;

/// A dark page; `--paper` in the style is the same.
const NIGHT: Tone = Tone::grey(0.106);

/// The accent of a document that has one of its own, by day and by night, as a style.
pub(super) fn accent(colours: Colours) -> String {
    if colours == Colours::default() {
        return String::new();
    }
    let [day, night] = [
        colours.accent.readable_on(Tone::WHITE),
        colours.accent.readable_on(NIGHT),
    ];
    format!(
        "@media screen {{\n:root {{ --accent: {} }}\n}}\n\
         @media screen and (prefers-color-scheme: dark) {{\n:root {{ --accent: {} }}\n}}\n",
        day.hex(),
        night.hex()
    )
}

/// The rules for tones, as a style.
pub(super) fn dark(tones: &BTreeSet<ToneOf>) -> String {
    let mut rules = String::from("@media screen and (prefers-color-scheme: dark) {\n");
    for tone in tones {
        let [class, level] = [tone.class(), format!("{:02x}", on_dark(*tone))];
        let colour = format!("#{level}{level}{level}");
        let (tag, rule) = match tone.thing {
            Toned::Line => ("path", format!("stroke: {colour}")),
            Toned::Area => ("path", format!("fill: {colour}")),
            Toned::SealedArea => ("path", format!("fill: {colour}; stroke: {colour}")),
            Toned::Text => ("text", format!("fill: {colour}")),
        };
        // Writing to a String does not fail.
        let _ = writeln!(rules, "{tag}.{class} {{ {rule} }}");
    }
    rules.push_str("}\n");
    rules
}

/// The grey of a tone on a dark page.
fn on_dark(tone: ToneOf) -> u8 {
    let is_paper = match tone.thing {
        Toned::Line => tone.level >= WHITE_LINE,
        Toned::Area | Toned::SealedArea => tone.level >= DARKEST_PAPER,
        // White letters stand on black.
        Toned::Text => tone.level >= WHITE_LINE,
    };
    let level = f64::from(tone.level) / 100.0;
    let grey = if is_paper {
        let darkest = f64::from(DARKEST_PAPER) / 100.0;
        SHADE + (SHEET - SHADE) * (level - darkest) / (1.0 - darkest)
    } else {
        INK - INK_RANGE * level
    };
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "between 0 and 255"
    )]
    let whole = grey.round().clamp(0.0, 255.0) as u8;
    whole
}

#[cfg(test)]
mod tests {
    use super::*;

    fn grey(thing: Toned, level: u8) -> u8 {
        on_dark(ToneOf { thing, level })
    }

    fn contrast(one: u8, other: u8) -> f64 {
        let grey = |level: u8| Tone::grey(f64::from(level) / 255.0);
        grey(one).contrast(grey(other))
    }

    #[test]
    fn an_accent_is_read_by_day_and_by_night() {
        assert_eq!(accent(Colours::default()), "");
        let brown = Tone::from_hex("#7a3b12").unwrap();
        let style = accent(Colours { accent: brown });
        assert!(
            style.contains("@media screen {\n:root { --accent: #7a3b12 }"),
            "{style}"
        );
        let night = style.rsplit("--accent: ").next().unwrap();
        let night = Tone::from_hex(night.split(' ').next().unwrap()).unwrap();
        assert!(night.contrast(NIGHT) >= 4.5);
    }

    #[test]
    fn letters_and_lines_are_read_on_every_area() {
        let areas = DARKEST_PAPER..=100;
        let darkest_sheet = areas.clone().map(|level| grey(Toned::Area, level));
        let lightest = darkest_sheet.max().unwrap();
        // WCAG 2.2, success criterion 1.4.3: 4.5 for letters; 1.4.11: 3 for what is drawn [from memory].
        for level in 0..=42 {
            assert!(
                contrast(grey(Toned::Text, level), lightest) >= 4.5,
                "{level}"
            );
        }
        for level in 0..=60 {
            assert!(
                contrast(grey(Toned::Line, level), lightest) >= 3.0,
                "{level}"
            );
        }
    }

    #[test]
    fn light_falls_from_where_it_fell() {
        let areas: Vec<u8> = (DARKEST_PAPER..=100)
            .map(|level| grey(Toned::SealedArea, level))
            .collect();
        assert!(areas.windows(2).all(|pair| pair[0] <= pair[1]));
        assert!(areas[areas.len() - 1] > areas[0] + 20);
    }

    #[test]
    fn only_tones_that_are_there_have_rules() {
        let tone = ToneOf {
            thing: Toned::Line,
            level: 0,
        };
        let rules = dark(&BTreeSet::from([tone]));
        assert!(rules.contains("path.l0 { stroke: #ececec }"), "{rules}");
        assert_eq!(rules.matches("path").count(), 1);
    }
}
