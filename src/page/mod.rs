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
mod compose;
mod contents;
mod examine;
mod figure;
pub mod findings;
mod flow;
mod framed;
mod inline;
mod margin;
mod pages;
mod scale_check;
mod style;
mod table;

use crate::build::Paper;
use crate::display::Area;
use crate::document::tree::Document;
use crate::finding::Outcome;
use crate::text::Fonts;

pub use pages::{OutlineEntry, PageList, Pages, Placed};

/// The part of a page that blocks are set in, in points: a figure no larger than this, less the
/// height of its caption, is printed at its own size.
pub fn text_area(paper: Paper) -> Area {
    style::text_area(paper)
}

/// Sets a document in type on sheets of `paper`.
pub fn paginate<'d>(document: &'d Document, fonts: &Fonts, paper: Paper) -> Outcome<Pages<'d>> {
    let area = style::text_area(paper);
    let flow = blocks::set(document, fonts, area);
    let pages = compose::compose(document, fonts, paper, flow);
    let findings = examine::examine(document, fonts, &pages);
    Outcome {
        value: pages,
        findings,
    }
}
