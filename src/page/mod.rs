//! Pages: a document set in type and broken into sheets of paper.
//!
//! In: a [`Document`](crate::document::tree::Document), fonts, the paper. Out: [`Pages`]: what is
//! drawn where on each page, where every named place is, and the outline. Never: templates,
//! figures of the build, PDF objects. Figures are borrowed, never copied. The looks of all
//! classes stand in one table at the top of `style.rs`.
//!
//! Findings: family P, pages in `findings.rs`.

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
mod scale_check;
mod style;
mod table;
mod words;

use std::collections::BTreeMap;

use crate::build::Paper;
use crate::display::{Area, Figure, Mark, Spot};
use crate::document::tree::Document;
use crate::finding::Outcome;
use crate::text::Fonts;

/// Something on a page.
#[derive(Debug)]
pub enum Placed<'d> {
    /// A mark of the page's own.
    Mark(Mark),
    /// A figure of the document: its upper left corner and by how much it is scaled.
    Figure {
        /// The figure.
        figure: &'d Figure,
        /// Where its upper left corner is.
        at: Spot,
        /// Its scale, 1 or less.
        scale: f64,
    },
}

/// A page.
#[derive(Debug)]
pub struct PageList<'d> {
    /// Width in points.
    pub width: f64,
    /// Height in points.
    pub height: f64,
    /// What is on it, later things over earlier ones.
    pub content: Vec<Placed<'d>>,
}

/// An entry of the outline.
#[derive(Clone, Debug, PartialEq)]
pub struct OutlineEntry {
    /// Its text.
    pub title: String,
    /// The page, from 0.
    pub page: usize,
    /// How far down the page, in points.
    pub y: f64,
    /// Entries below it.
    pub children: Vec<OutlineEntry>,
}

/// A paginated document.
#[derive(Debug)]
pub struct Pages<'d> {
    /// The pages, in order.
    pub pages: Vec<PageList<'d>>,
    /// Headings of level 1 and, below them, of level 2.
    pub outline: Vec<OutlineEntry>,
    /// Named places: page, from 0, and how far down it, in points.
    pub destinations: BTreeMap<String, (usize, f64)>,
    /// The document's title.
    pub title: String,
    /// Its author.
    pub author: String,
    /// Language of its words, a BCP 47 tag.
    pub language: String,
}

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
