//! Blocks: headings, paragraphs, lists and groups, set one below the other.

use crate::display::{Area, Face, Mark, Path, Pen, Spot, Tone};
use crate::document::outline::{headings, unmarked};
use crate::document::tree::{Align, Block, Document, Inline, ListMarker};
use crate::text::{Anchor, Fonts, Hyphens, TextStyle, text_mark};
use crate::words::Words;

use super::Placed;
use super::flow::{BreakCost, Entry, Flow, Slab};
use super::format::Format;
use super::inline::{Text, plain};
use super::structure::{ElementId, Role};
use super::style::{self, Measure, ParagraphStyle, reading_width};

/// Blocks nested deeper than this are set as if they were not nested.
const DEEPEST: usize = 24;

/// The column that blocks are set in.
#[derive(Clone, Copy, Debug)]
pub(super) struct Column {
    /// From the left of the text area.
    pub(super) x: f64,
    pub(super) width: f64,
    /// Lists, boxes and groups around it.
    depth: usize,
    /// An item of a list.
    in_list: bool,
}

impl Column {
    /// As it is, but from `x` on and of another width.
    pub(super) fn wide(self, x: f64, width: f64) -> Self {
        Self { x, width, ..self }
    }

    /// Narrower by `left` and `right`.
    pub(super) fn inside(self, left: f64, right: f64) -> Self {
        if self.depth >= DEEPEST {
            return self;
        }
        Self {
            x: self.x + left,
            width: (self.width - left - right).max(40.0),
            depth: self.depth + 1,
            ..self
        }
    }
}

/// What is needed to set blocks.
pub(super) struct Setter<'d, 'f> {
    pub(super) document: &'d Document,
    pub(super) fonts: &'f Fonts,
    pub(super) words: &'d Words,
    /// How long words are divided.
    pub(super) hyphens: Hyphens,
    /// Size of the page and of its type.
    pub(super) format: Format,
    /// Height of the text area.
    pub(super) room: f64,
    pub(super) flow: Flow<'d>,
}

/// Sets a whole document as one column of slabs.
pub(super) fn set<'d>(document: &'d Document, fonts: &Fonts, format: Format) -> Flow<'d> {
    let area = format.area;
    let mut setter = Setter {
        document,
        fonts,
        words: &document.words,
        hyphens: Hyphens::of(&document.language),
        format,
        room: area.height,
        flow: Flow::default(),
    };
    let column = Column {
        x: 0.0,
        width: area.width,
        depth: 0,
        in_list: false,
    };
    setter.flow.entries = entries(&document.blocks);
    setter.blocks(&document.blocks, column);
    setter.flow
}

/// Every heading with its place, also those inside other blocks.
fn entries(blocks: &[Block]) -> Vec<Entry> {
    let found = headings(blocks).into_iter();
    let entries = found.map(|heading| Entry {
        level: heading.level,
        id: heading.id.to_owned(),
        title: plain(heading.text),
    });
    entries.collect()
}

/// True for words that are nothing without what follows: "You need:", or the caption of a table.
fn leads_on(block: &Block, next: Option<&Block>) -> bool {
    let (Block::Paragraph { class, text, .. }, Some(next)) = (unmarked(block), next) else {
        return false;
    };
    (class == "caption" && matches!(unmarked(next), Block::Table(_))) || plain(text).ends_with(':')
}

/// True for a table with a remark below it, which would be lost on a page of its own.
fn remarks_on(block: &Block, next: Option<&Block>) -> bool {
    let is_remark =
        |next: &Block| matches!(unmarked(next), Block::Paragraph { class, .. } if class == "small");
    matches!(unmarked(block), Block::Table(_)) && next.is_some_and(is_remark)
}

impl<'d> Setter<'d, '_> {
    pub(super) fn blocks(&mut self, blocks: &'d [Block], column: Column) {
        for (i, block) in blocks.iter().enumerate() {
            self.block(block, column);
            let next = blocks.get(i + 1);
            if leads_on(block, next) || remarks_on(block, next) {
                self.flow.tie();
            }
        }
    }

    fn block(&mut self, block: &'d Block, column: Column) {
        match block {
            Block::Heading {
                level,
                id,
                text,
                breaks_page,
            } => {
                if *breaks_page {
                    self.flow.break_page();
                }
                self.heading(*level, id, text, column);
            }
            Block::Paragraph { class, id, text } => self.paragraph(class, id, text, column),
            Block::List {
                marker,
                in_columns,
                items,
            } => {
                self.flow.structure.open(Role::List(*marker));
                if *in_columns && column.width >= TWO_COLUMNS {
                    self.list_in_columns(*marker, items, column);
                } else {
                    self.list(*marker, items, 0, column);
                }
                self.flow.structure.close();
            }
            Block::Table(table) => self.table(table, column),
            Block::Figure {
                name,
                class,
                caption,
            } => self.figure(name, self.format.tallest(class), caption, column),
            Block::Legend { entries } => self.legend(entries, column),
            Block::Beside { figures, blocks } => self.beside(figures, blocks, column),
            Block::Framed { class, blocks } => self.framed(class, blocks, column),
            Block::Together { blocks } => {
                let first = self.flow.slabs.len();
                let above = self.flow.tied_height();
                self.blocks(blocks, column.inside(0.0, 0.0));
                self.flow
                    .shrink_figure(first, self.room - above, self.format.natural());
                self.flow.keep_from(first, self.room, BreakCost::Kept);
            }
            Block::Contents => self.contents(column),
            Block::ScaleCheck => self.scale_check(column),
            Block::Sheet { figure, id, .. } => self.sheet(figure, id),
            Block::PageBreak => self.flow.break_page(),
            Block::Marked { change, block } => {
                let first = self.flow.slabs.len();
                self.block(block, column);
                self.flow.mark_from(first, *change);
            }
        }
    }

    fn heading(&mut self, level: u8, id: &str, text: &[Inline], column: Column) {
        let mut style = style::heading(level, self.format.display);
        if self.flow.is_tied() {
            // Right below another heading that one's space is enough.
            style.before = 0.0;
        }
        let first = self.flow.slabs.len();
        let element = self.flow.structure.add_heading(level);
        self.lines(text, style, column, Align::Left, element);
        // A heading is never parted, and never from what it is over.
        self.flow.keep_from(first, self.room, BreakCost::Tied);
        self.flow.tie();
        if let Some(slab) = self.flow.slabs.get_mut(first) {
            slab.places.push(id.to_owned());
        }
        if level <= 1 {
            self.accent_bar(first, column, 2.5);
        }
    }

    fn paragraph(&mut self, class: &str, id: &str, text: &[Inline], column: Column) {
        let first = self.flow.slabs.len();
        let mut style = style::paragraph(class, self.format.display);
        if self.flow.is_boxed() {
            // A frame beside a shorter line would look like a fault.
            style.measure = Measure::Full;
        }
        let element = self.flow.structure.add(Role::Paragraph);
        self.lines(text, style, column, Align::Left, element);
        if self.flow.is_boxed() {
            // Half of what a caution says may be worse than nothing.
            self.flow
                .keep_from(first, self.room * 0.25, BreakCost::Kept);
        }
        if let Some(slab) = self.flow.slabs.get_mut(first)
            && !id.is_empty()
        {
            slab.places.push(id.to_owned());
        }
        if class == "title" {
            self.accent_bar(first, column, 3.5);
        }
    }

    /// The short bar over a plan's title and over every chapter.
    fn accent_bar(&mut self, slab: usize, column: Column, height: f64) {
        if let Some(slab) = self.flow.slabs.get_mut(slab) {
            let down = style::GRID * 2.0;
            let lines: Vec<_> = std::mem::take(&mut slab.content);
            let bar = Path::rectangle(Area {
                x: column.x,
                y: 0.0,
                width: 42.0,
                height,
            });
            slab.content.push(Placed::Mark(Mark::Fill {
                path: bar,
                tone: self.document.colours.accent,
            }));
            let moved = lines.into_iter().map(|l| super::flow::moved(l, 0.0, down));
            slab.content.extend(moved);
            slab.height += down;
            slab.baseline += down;
        }
    }

    /// A paragraph: one slab a line, its first two and last two lines tied.
    pub(super) fn lines(
        &mut self,
        text: &[Inline],
        style: ParagraphStyle,
        column: Column,
        align: Align,
        element: ElementId,
    ) {
        // A heading is read at a glance.
        let hyphens = match style.text.face {
            Face::Bold => Hyphens::default(),
            Face::Regular | Face::Italic => self.hyphens,
        };
        let text = Text::hyphenated(text, style.text, self.document.colours, hyphens);
        let width = match style.measure {
            Measure::Reading => column.width.min(reading_width(style.text.size)),
            Measure::Full => column.width,
        };
        let lines = text.lines(self.fonts, width);
        let elements = text.elements(&mut self.flow.structure, element);
        let count = lines.len();
        let space = self.flow.space(style.before);
        for (number, line) in lines.into_iter().enumerate() {
            let mut slab = Slab::new(style.leading);
            slab.baseline = style.baseline();
            let spot = Spot::new(column.x, slab.baseline);
            slab.content = text.marks(self.fonts, line, spot, (width, align), &elements);
            if number == 0 {
                slab.space = space;
                slab.on_grid = true;
            } else if number == 1 || number + 1 == count {
                slab.cost = BreakCost::Tied;
            }
            self.flow.push(slab);
        }
        self.flow.space_after(style.after);
    }

    /// A list of short items in two columns, read down the first and then the second.
    fn list_in_columns(&mut self, marker: ListMarker, items: &'d [Vec<Block>], column: Column) {
        let (near, far) = items.split_at(items.len().div_ceil(2));
        let half = column.width / 2.0;
        let first = self.flow.slabs.len();
        self.list(marker, near, 0, column.inside(0.0, half));
        let second = self.flow.slabs.len();
        self.list(marker, far, near.len(), column.inside(half, 0.0));
        let right: Vec<Slab<'_>> = self.flow.slabs.drain(second..).collect();
        for (place, slab) in (first..).zip(right) {
            if place >= second {
                self.flow.push(slab);
            } else if let Some(left) = self.flow.slabs.get_mut(place) {
                left.height = left.height.max(slab.height);
                left.content.extend(slab.content);
                left.places.extend(slab.places);
                left.change = left.change.or(slab.change);
            }
        }
        self.flow.keep_from(first, self.room, BreakCost::Kept);
    }

    /// A list; `before` items of it were set already.
    fn list(&mut self, marker: ListMarker, items: &'d [Vec<Block>], before: usize, column: Column) {
        let indent = match marker {
            ListMarker::Number => 21.0,
            ListMarker::Bullet => 14.0,
            ListMarker::Tick => 21.0,
        };
        let inner = Column {
            in_list: true,
            ..column.inside(indent, 0.0)
        };
        for (number, item) in items.iter().enumerate() {
            let first = self.flow.slabs.len();
            self.flow.structure.open(Role::Item);
            let label = self.flow.structure.add(Role::Label);
            self.flow.structure.open(Role::Body);
            self.blocks(item, inner);
            self.flow.structure.close();
            self.flow.structure.close();
            let Some(slab) = self.flow.slabs.get_mut(first) else {
                continue;
            };
            let baseline = if slab.baseline > 0.0 {
                slab.baseline
            } else {
                10.6
            };
            let mark = self.marker(marker, before + number + 1, Spot::new(column.x, baseline));
            if let Some(slab) = self.flow.slabs.get_mut(first) {
                // Before what it says, as it is read.
                let label = Placed::Content {
                    element: label,
                    mark,
                };
                slab.content.insert(0, label);
                // Items follow each other closely and off the grid, a list's first one excepted.
                if number > 0 || column.in_list {
                    // After a box or a table an item needs more air.
                    slab.space = if slab.space > style::GRID {
                        style::GRID
                    } else {
                        LIST_GAP
                    };
                    slab.on_grid = false;
                }
            }
        }
        self.flow.space_after(style::GRID);
    }

    fn marker(&self, marker: ListMarker, number: usize, at: Spot) -> Mark {
        let style = style::BODY;
        match marker {
            ListMarker::Number => {
                let style = TextStyle::new(Face::Bold, 10.0).tabular();
                let spot = at.shifted(14.0, 0.0);
                text_mark(self.fonts, &style, Anchor::End, spot, &number.to_string())
            }
            ListMarker::Bullet => Mark::Fill {
                path: Path::circle(at.shifted(3.0, -style.size * 0.33), 1.5),
                tone: Tone::BLACK,
            },
            ListMarker::Tick => Mark::Stroke {
                path: Path::rectangle(Area {
                    x: at.x + 0.5,
                    y: at.y - 8.3,
                    width: 9.4,
                    height: 9.4,
                }),
                pen: Pen {
                    width: 0.8,
                    tone: Tone::BLACK,
                    dashes: Vec::new(),
                },
            },
        }
    }
}

/// Short items stand side by side in a column that is at least as wide.
const TWO_COLUMNS: f64 = 320.0;
/// Free space between the items of a list.
const LIST_GAP: f64 = 3.5;

/// A rule across a column, `y` below the top of its slab.
pub(super) fn rule<'d>(column: Column, y: f64, width: f64, tone: Tone) -> Placed<'d> {
    let ends = [
        Spot::new(column.x, y),
        Spot::new(column.x + column.width, y),
    ];
    Placed::Mark(Mark::Stroke {
        path: Path::polyline(&ends, crate::display::Ends::Open),
        pen: Pen {
            width,
            tone,
            dashes: Vec::new(),
        },
    })
}
