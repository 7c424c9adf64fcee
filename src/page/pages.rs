//! What pagination gives: pages, places and the outline.

use std::collections::BTreeMap;

use super::structure::{ElementId, Structure};
use crate::display::{Figure, Mark, Spot};

/// Something on a page.
#[derive(Debug)]
pub enum Placed<'d> {
    /// A mark of the page's own: a rule, a frame, the running head.
    Mark(Mark),
    /// A mark of what the document says.
    Content {
        /// What it belongs to.
        element: ElementId,
        /// The mark.
        mark: Mark,
    },
    /// A figure of the document: its upper left corner and by how much it is scaled.
    Figure {
        /// The figure.
        figure: &'d Figure,
        /// Where its upper left corner is.
        at: Spot,
        /// Its scale, 1 or less.
        scale: f64,
        /// What it is in the document.
        element: ElementId,
    },
}

impl<'d> Placed<'d> {
    /// The marks that it draws.
    pub fn marks(&self) -> &[Mark] {
        match self {
            Self::Mark(mark) | Self::Content { mark, .. } => std::slice::from_ref(mark),
            Self::Figure { figure, .. } => &figure.marks,
        }
    }

    /// The mark, of a single one.
    pub fn mark(&self) -> Option<&Mark> {
        match self {
            Self::Mark(mark) | Self::Content { mark, .. } => Some(mark),
            Self::Figure { .. } => None,
        }
    }
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

impl PageList<'_> {
    /// Makes the page and all that is on it `factor` times as large.
    pub(super) fn enlarge(&mut self, factor: f64) {
        self.width *= factor;
        self.height *= factor;
        let content = std::mem::take(&mut self.content).into_iter();
        self.content = content
            .map(|placed| match placed {
                Placed::Mark(mark) => Placed::Mark(mark.scaled(factor)),
                Placed::Content { element, mark } => Placed::Content {
                    element,
                    mark: mark.scaled(factor),
                },
                Placed::Figure {
                    figure,
                    at,
                    scale,
                    element,
                } => Placed::Figure {
                    figure,
                    at: at.scaled(factor),
                    scale: scale * factor,
                    element,
                },
            })
            .collect();
    }
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
    /// What content belongs to.
    pub structure: Structure,
    /// By page, from 0: what a link to it says, "page 7".
    pub page_names: Vec<String>,
}
