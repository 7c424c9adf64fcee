//! What pagination gives: pages, places and the outline.

use std::collections::BTreeMap;

use crate::display::{Figure, Mark, Spot};

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
