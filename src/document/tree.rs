//! The document: headings, paragraphs, lists, tables, boxes and named figures, in order.
//!
//! This is what a template's text becomes and what pages are made of. No sizes, no fonts: a
//! `class` says what a thing is, the page stage knows how such a thing looks.

use std::collections::BTreeMap;

use crate::display::{Colours, Figure};
use crate::words::Words;

/// A whole document.
#[derive(Clone, Debug, Default)]
pub struct Document {
    /// The plan's title, for running heads and the PDF's own title.
    pub title: String,
    /// Left in the running head: the revision, "Revision B, 2026-03-01".
    pub running: String,
    /// The author, for the PDF's own data.
    pub author: String,
    /// Language of the words, as a BCP 47 tag.
    pub language: String,
    /// The words of that language, for what pages say themselves.
    pub words: Words,
    /// Its colours.
    pub colours: Colours,
    /// The mark of the revision that made the changes which are marked; may be empty.
    pub change_mark: String,
    /// Its blocks.
    pub blocks: Vec<Block>,
    /// Figures by the names blocks refer to.
    pub figures: BTreeMap<String, Figure>,
    /// What figures show, in words for those who do not see them, by the same names.
    pub alternatives: BTreeMap<String, String>,
}

/// A block of the document.
#[derive(Clone, Debug, PartialEq)]
pub enum Block {
    /// A heading; level 1 opens a chapter and stands in contents and outline, as level 2 does.
    Heading {
        /// 1 to 3.
        level: u8,
        /// The name of the place, for links; unique.
        id: String,
        /// Its text.
        text: Vec<Inline>,
        /// Begins a new page.
        breaks_page: bool,
    },
    /// A paragraph.
    Paragraph {
        /// What kind: empty, `title`, `subtitle`, `lead`, `small`, `figure`, …
        class: String,
        /// The name of the place, for links; may be empty.
        id: String,
        /// Its text.
        text: Vec<Inline>,
    },
    /// A list.
    List {
        /// Numbered or with bullets or with boxes to tick.
        marker: ListMarker,
        /// Short items, set in two columns.
        in_columns: bool,
        /// Its items.
        items: Vec<Vec<Block>>,
    },
    /// A table.
    Table(Table),
    /// A named figure.
    Figure {
        /// Its name in [`Document::figures`].
        name: String,
        /// What kind: empty, or `step` for one that leaves room for the text of its step.
        class: String,
        /// What stands below it; may be empty.
        caption: Vec<Inline>,
    },
    /// Small figures, such as safety signs, each with what it means beside it.
    Legend {
        /// Their names in [`Document::figures`] and their words.
        entries: Vec<(String, Vec<Inline>)>,
    },
    /// Blocks with small figures to their right.
    Beside {
        /// Their names in [`Document::figures`], each once.
        figures: Vec<String>,
        /// What they stand beside.
        blocks: Vec<Block>,
    },
    /// Blocks in a frame: `danger`, `warning`, `caution`, `notice`, `info`.
    Framed {
        /// What kind.
        class: String,
        /// What is in it.
        blocks: Vec<Block>,
    },
    /// Blocks kept on one page where they fit on one.
    Together {
        /// What is kept together.
        blocks: Vec<Block>,
    },
    /// The table of contents, made by the page stage.
    Contents,
    /// The square that proves a print's scale: 100 mm and 4 in.
    ScaleCheck,
    /// A page of its own that a figure fills from edge to edge, in its own size.
    Sheet {
        /// The figure's name in [`Document::figures`].
        figure: String,
        /// The name of the place, for links; may be empty.
        id: String,
        /// What it is called in contents and outline; empty where it is not in them.
        title: Vec<Inline>,
    },
    /// A new page begins.
    PageBreak,
    /// A block that is other than in an earlier revision, or that something was left out beside.
    Marked {
        /// What is told in the margin.
        change: Change,
        /// What it is told of.
        block: Box<Block>,
    },
}

/// What the margin tells of a block or a row in a plan that is compared with an earlier revision.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Change {
    /// Nothing.
    #[default]
    None,
    /// It reads otherwise, or is new.
    Other,
    /// Above it something was left out.
    GoneAbove,
    /// Below it something was left out.
    GoneBelow,
}

impl Change {
    /// This one, or the other where this is none; what reads otherwise counts most.
    #[must_use]
    pub fn or(self, other: Self) -> Self {
        match (self, other) {
            (Self::None, one) | (one, Self::None) => one,
            (Self::Other, _) | (_, Self::Other) => Self::Other,
            (Self::GoneAbove | Self::GoneBelow, _) => self,
        }
    }
}

/// What stands before the items of a list.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ListMarker {
    /// 1, 2, 3
    Number,
    /// A dot.
    Bullet,
    /// An empty box to tick.
    Tick,
}

/// A table.
#[derive(Clone, Debug, PartialEq)]
pub struct Table {
    /// What kind: `cut-list`, `hardware`, …
    pub class: String,
    /// How each column is set.
    pub columns: Vec<Column>,
    /// The head, repeated on every page.
    pub head: Vec<Row>,
    /// Groups of rows; a group is kept on one page where it fits on one.
    pub groups: Vec<Vec<Row>>,
}

/// How a column is set.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Column {
    /// Its share of the width, relative to the others; zero for as narrow as its text.
    pub share: f64,
    /// Figures are set to the right.
    pub align: Align,
}

/// Where text stands in its column.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Align {
    /// To the left.
    Left,
    /// To the right.
    Right,
    /// In the middle.
    Centre,
}

/// A row of a table.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Row {
    /// The name of the place, for links; may be empty.
    pub id: String,
    /// Its cells.
    pub cells: Vec<Cell>,
    /// What is other than in an earlier revision.
    pub change: Change,
}

/// A cell of a table.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Cell {
    /// How many columns it covers; 0 counts as 1.
    pub span: usize,
    /// Its text.
    pub text: Vec<Inline>,
}

/// A stretch of text.
#[derive(Clone, Debug, PartialEq)]
pub enum Inline {
    /// As it stands.
    Text(String),
    /// Bold.
    Strong(Vec<Inline>),
    /// Italic.
    Emphasis(Vec<Inline>),
    /// Leads to a place in the document.
    Link {
        /// The name of the place.
        target: String,
        /// Its text.
        text: Vec<Inline>,
    },
    /// Something of its own look: `label` (a part's letter in a circle), `second` (the figure in
    /// the other unit system), `rounded` (a figure that was rounded).
    Styled {
        /// What kind.
        class: String,
        /// Its text.
        text: Vec<Inline>,
    },
    /// A new line.
    Break,
}
