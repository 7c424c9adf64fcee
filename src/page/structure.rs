//! What is on the pages as those read it who do not see it: headings, lists, tables, figures, in
//! the order of the document.

use crate::document::tree::ListMarker;

/// An element of a [`Structure`], by its number.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct ElementId(usize);

impl ElementId {
    /// The document itself.
    pub const ROOT: Self = Self(0);

    /// The element of a number.
    pub const fn numbered(number: usize) -> Self {
        Self(number)
    }

    /// Its number, from 0.
    pub const fn number(self) -> usize {
        self.0
    }
}

/// What an element is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Role {
    /// The whole document.
    Document,
    /// Blocks that belong together: a box, or what has figures beside it.
    Division,
    /// A heading, of level 1 to 3.
    Heading(u8),
    /// A paragraph.
    Paragraph,
    /// A list.
    List(ListMarker),
    /// An item of a list.
    Item,
    /// The number, dot or box of an item.
    Label,
    /// What an item says.
    Body,
    /// A table.
    Table,
    /// Its head.
    Head,
    /// A group of its rows.
    Rows,
    /// A row.
    Row,
    /// A cell that tells of others.
    HeadCell {
        /// Of those below it, or of those to its right.
        of: Heads,
        /// How many columns it covers.
        span: usize,
    },
    /// Any other cell.
    Cell {
        /// How many columns it covers.
        span: usize,
    },
    /// A drawing.
    Figure,
    /// The table of contents.
    Contents,
    /// A line of it.
    ContentsItem,
    /// Text that leads to another place.
    Link,
}

/// What a cell is the head of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Heads {
    /// A column.
    Column,
    /// A row.
    Row,
}

impl Role {
    /// True for what holds elements alone; others hold text, with elements between.
    pub const fn holds_elements(self) -> bool {
        match self {
            Self::Document
            | Self::Division
            | Self::List(_)
            | Self::Item
            | Self::Body
            | Self::Table
            | Self::Head
            | Self::Rows
            | Self::Row
            | Self::Contents => true,
            Self::Heading(_)
            | Self::Paragraph
            | Self::Label
            | Self::HeadCell { .. }
            | Self::Cell { .. }
            | Self::Figure
            | Self::ContentsItem
            | Self::Link => false,
        }
    }
}

/// An element.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Element {
    /// What it is.
    pub role: Role,
    /// What it is in; the document is in itself.
    pub parent: ElementId,
    /// What a figure shows, in words.
    pub alternative: String,
}

/// The elements of a document, each after what it is in and in the order they are read.
#[derive(Clone, Debug)]
pub struct Structure {
    elements: Vec<Element>,
    /// What is open, outermost first.
    open: Vec<ElementId>,
    /// Level of the last heading; 0 before the first.
    deepest: u8,
}

impl Default for Structure {
    fn default() -> Self {
        Self {
            elements: vec![Element {
                role: Role::Document,
                parent: ElementId::ROOT,
                alternative: String::new(),
            }],
            open: Vec::new(),
            deepest: 0,
        }
    }
}

impl Structure {
    /// All elements by their number; the first is the document.
    pub fn elements(&self) -> &[Element] {
        &self.elements
    }

    /// An element in what is open.
    pub(super) fn add(&mut self, role: Role) -> ElementId {
        let parent = self.open.last().copied().unwrap_or(ElementId::ROOT);
        self.add_in(parent, role)
    }

    /// An element in another.
    pub(super) fn add_in(&mut self, parent: ElementId, role: Role) -> ElementId {
        self.elements.push(Element {
            role,
            parent,
            alternative: String::new(),
        });
        ElementId(self.elements.len() - 1)
    }

    /// A heading in what is open; no level is left out below the one before it.
    pub(super) fn add_heading(&mut self, level: u8) -> ElementId {
        let level = level.clamp(1, 3).min(self.deepest + 1);
        self.deepest = level;
        self.add(Role::Heading(level))
    }

    /// A figure in what is open, and what it shows.
    pub(super) fn add_figure(&mut self, alternative: &str) -> ElementId {
        let id = self.add(Role::Figure);
        if let Some(element) = self.elements.get_mut(id.0) {
            alternative.clone_into(&mut element.alternative);
        }
        id
    }

    /// Opens an element: those that follow are in it.
    pub(super) fn open(&mut self, role: Role) {
        let id = self.add(role);
        self.open.push(id);
    }

    /// Closes what was opened last.
    pub(super) fn close(&mut self) {
        self.open.pop();
    }
}
