//! Pages: a document set in type and broken into sheets of paper.
//!
//! In: a [`Document`], fonts, the paper. Out: [`Pages`]: what is
//! drawn where on each page, where every named place is, and the outline. Never: templates,
//! figures of the build, PDF objects. Figures are borrowed, never copied. The looks of all
//! classes stand in one table at the top of `style.rs`.
//!
//! Findings: family P, pages in `findings.rs`.

mod beside;
mod blocks;
mod breaks;
mod cards;
mod compose;
mod contents;
mod examine;
mod figure;
pub mod findings;
mod flow;
mod format;
mod framed;
mod inline;
mod margin;
mod pages;
mod scale_check;
mod structure;
mod style;
mod table;

use crate::build::Paper;
use crate::display::{Area, Figure};
use crate::document::tree::Document;
use crate::finding::Outcome;
use crate::text::Fonts;
use crate::words::Words;

use format::Format;

pub use pages::{OutlineEntry, PageList, Pages, Placed};
pub use structure::{Element, ElementId, Heads, Role, Structure};

/// The part of a page that blocks are set in, in points: a figure no larger than this, less the
/// height of its caption, is printed at its own size.
pub fn text_area(paper: Paper) -> Area {
    let format = Format::of(paper);
    format.area.scaled(format.enlarged)
}

/// The squares that prove a print's scale, which [`tree::Block::ScaleCheck`](crate::document::tree::Block)
/// stands for.
pub fn scale_squares(alternative: String) -> Figure {
    scale_check::figure(alternative)
}

/// What a box of a class is called where it does not say so itself; none where its text has a word of its
/// own.
pub fn signal_word(words: &Words, class: &str) -> Option<String> {
    framed::signal_word(words, class)
}

/// Sets a document in type on sheets of `paper`.
pub fn paginate<'d>(document: &'d Document, fonts: &Fonts, paper: Paper) -> Outcome<Pages<'d>> {
    let format = Format::of(paper);
    let flow = blocks::set(document, fonts, format);
    let pages = compose::compose(document, fonts, format, flow);
    let findings = examine::examine(document, fonts, &pages);
    Outcome {
        value: pages,
        findings,
    }
}
