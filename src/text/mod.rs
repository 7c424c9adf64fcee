//! Text: fonts, shaping, measuring, and the breaking of paragraphs into lines.
//!
//! In: font files as bytes, text in runs of one style. Out: glyphs in their places
//! ([`display::Glyph`](crate::display::Glyph)) and lines of measured width, in points.
//! Never: pages, blocks, findings of its own (a character no font has becomes a replacement
//! glyph that [`Fonts::is_replacement`] knows again; the page stage reports it), disk access.
//! Kerning, ligatures and real fractions around U+2044 come from the font.

mod fonts;
mod hyphenate;
mod paragraph;
mod segment;
mod shape;
mod style;
mod substitute;

pub use fonts::{FaceMetrics, Fonts, UnreadableFont};
pub use hyphenate::Hyphens;
pub use paragraph::{Line, LinePiece, break_paragraph, measure, narrowest_width};
pub use shape::{ShapedText, shape, shape_line};
pub use style::{Anchor, Figures, Run, TextStyle, text_mark};
