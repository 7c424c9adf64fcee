//! Line widths, tones and lettering.
//!
//! Wide to narrow is two to one, from the row 0.13 0.18 0.25 0.35 0.5 0.7 mm (ISO 128-2, ref:
//! units-and-paper, "Line widths" [V]); dashes are multiples of the line width (long dash 24,
//! gap 3, dot 0.5) [M].

use crate::display::{Face, PT_PER_MM, Pen, Tone};
use crate::text::TextStyle;

/// Visible edges where a drawing has room, in millimetres.
pub(super) const WIDE_MM: f64 = 0.5;
/// Visible edges where it has little, in millimetres.
pub(super) const MEDIUM_MM: f64 = 0.35;
/// Leaders, dimension lines, lines on a face.
pub(super) const NARROW_MM: f64 = 0.25;
/// What is there already.
pub(super) const THIN_MM: f64 = 0.18;

/// Tone of what is there already: a grey that survives a copier.
pub(super) const PALE_INK: Tone = Tone::grey(0.42);
/// Tone of explosion traces and axes.
pub(super) const TRACE_INK: Tone = Tone::grey(0.25);

/// A continuous line.
pub(super) fn line(width_mm: f64, tone: Tone) -> Pen {
    Pen {
        width: width_mm * PT_PER_MM,
        tone,
        dashes: Vec::new(),
    }
}

/// A dashed line, for hidden edges: dashes of eight line widths, as short edges
/// need, gaps of three.
pub(super) fn dashed(width_mm: f64, tone: Tone) -> Pen {
    let width = width_mm * PT_PER_MM;
    Pen {
        width,
        tone,
        dashes: vec![8.0 * width, 3.0 * width],
    }
}

/// A long-dashed dotted line, for axes and the ways of exploded parts.
pub(super) fn dash_dot(width_mm: f64, tone: Tone) -> Pen {
    let width = width_mm * PT_PER_MM;
    Pen {
        width,
        tone,
        // Half of the standard's long dash: the ways are short, and a way of one dash is none.
        dashes: vec![12.0 * width, 3.0 * width, 0.5 * width, 3.0 * width],
    }
}

/// The letter of an item reference: capitals 2.5 mm high (ISO 3098, ref: units-and-paper,
/// "Lettering" [V]).
pub(super) const fn reference() -> TextStyle {
    TextStyle::new(Face::Bold, 10.0)
}

/// The letter of an item that is there already.
pub(super) const fn quiet_reference() -> TextStyle {
    TextStyle::new(Face::Regular, 9.0).tone(Tone::grey(0.3))
}

/// Figures of dimensions, first of both systems.
pub(super) const fn dimension() -> TextStyle {
    TextStyle::new(Face::Regular, 9.0)
}

/// Figures of dimensions, second of both systems.
pub(super) const fn second_dimension() -> TextStyle {
    TextStyle::new(Face::Regular, 8.0).tone(Tone::grey(0.32))
}
