//! How a stretch of text is set, and single lines of it as marks.

use crate::display::{Face, GlyphRun, Mark, Spot, Tone};

use super::fonts::Fonts;
use super::shape::shape_line;

/// How figures are spaced.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub enum Figures {
    /// As the face sets them in running text.
    #[default]
    Proportional,
    /// All of one width: for columns of figures.
    Tabular,
}

/// How text is set.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TextStyle {
    /// The face.
    pub face: Face,
    /// The size in points.
    pub size: f64,
    /// How figures are spaced.
    pub figures: Figures,
    /// The tone.
    pub tone: Tone,
    /// Added after every glyph, in points; for words in capitals.
    pub tracking: f64,
}

impl TextStyle {
    /// Black text with proportional figures.
    pub const fn new(face: Face, size: f64) -> Self {
        Self {
            face,
            size,
            figures: Figures::Proportional,
            tone: Tone::BLACK,
            tracking: 0.0,
        }
    }

    /// In another face.
    #[must_use]
    pub const fn face(self, face: Face) -> Self {
        Self { face, ..self }
    }

    /// In another size.
    #[must_use]
    pub const fn size(self, size: f64) -> Self {
        Self { size, ..self }
    }

    /// In another tone.
    #[must_use]
    pub const fn tone(self, tone: Tone) -> Self {
        Self { tone, ..self }
    }

    /// With figures all of one width.
    #[must_use]
    pub const fn tabular(self) -> Self {
        Self {
            figures: Figures::Tabular,
            ..self
        }
    }

    /// Spaced out.
    #[must_use]
    pub const fn tracked(self, tracking: f64) -> Self {
        Self { tracking, ..self }
    }
}

/// A stretch of one style in a paragraph.
#[derive(Clone, Debug, PartialEq)]
pub struct Run {
    /// The text; `\n` begins a new line.
    pub text: String,
    /// How it is set.
    pub style: TextStyle,
    /// Left free before and after it, in points: room for a ring around a label.
    pub pad: f64,
    /// Never broken inside, unless longer than a line.
    pub whole: bool,
}

impl Run {
    /// Text that may break anywhere a line may.
    pub fn new(text: impl Into<String>, style: TextStyle) -> Self {
        Self {
            text: text.into(),
            style,
            pad: 0.0,
            whole: false,
        }
    }
}

/// Which point of a line of text stands at a given spot of the baseline.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Anchor {
    /// Its left end.
    Start,
    /// Its middle.
    Middle,
    /// Its right end.
    End,
}

/// One line of text as a mark: `spot` is where its anchor meets the baseline.
pub fn text_mark(fonts: &Fonts, style: &TextStyle, anchor: Anchor, spot: Spot, text: &str) -> Mark {
    let shaped = shape_line(fonts, style, text);
    let back = match anchor {
        Anchor::Start => 0.0,
        Anchor::Middle => shaped.width / 2.0,
        Anchor::End => shaped.width,
    };
    Mark::Text(GlyphRun {
        origin: spot.shifted(-back, 0.0),
        face: style.face,
        size: style.size,
        tone: style.tone,
        glyphs: shaped.glyphs,
    })
}
