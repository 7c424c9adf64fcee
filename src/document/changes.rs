//! Change marks: what a document says otherwise than that of an earlier revision.
//!
//! Both documents are compared as they are printed, block by block and row by row, so that nothing
//! that a reader sees can change without a mark. A figure is the same where its lines and letters
//! are; where a link leads does not count.

use std::collections::BTreeMap;
use std::ops::Range;

use super::outline::plain;
use super::tree::{Block, Change, Document, Inline, Row, Table};
use crate::diff::{Stretch, stretches};
use crate::display::{Figure, Mark};

/// `after` with what is other than in `before` marked in its margin; `mark` is that of the
/// revision that made the changes, and may be empty.
pub fn mark_changes(before: &Document, mut after: Document, mark: &str) -> Document {
    let blocks = std::mem::take(&mut after.blocks);
    let [was, is] = looks(before, &after);
    after.blocks = Both { was, is }.blocks(&before.blocks, blocks);
    mark.clone_into(&mut after.change_mark);
    after
}

/// What figures look like: one number for all that look alike.
struct Looks<'d>(BTreeMap<&'d str, usize>);

/// Two documents side by side.
struct Both<'d> {
    was: Looks<'d>,
    is: Looks<'d>,
}

/// The looks of the figures of two documents.
fn looks<'d>(before: &'d Document, after: &'d Document) -> [Looks<'d>; 2] {
    // Figures of one size and as many marks, with their numbers.
    let mut known: BTreeMap<_, Vec<(&Figure, usize)>> = BTreeMap::new();
    let mut count = 0;
    [before, after].map(|document| {
        let numbered = document.figures.iter().map(|(name, figure)| {
            let [width, height] = [figure.width, figure.height].map(f64::to_bits);
            let alike = known
                .entry((width, height, figure.marks.len()))
                .or_default();
            let found = alike.iter().find(|(other, _)| are_alike(other, figure));
            let number = found.map_or(count, |(_, number)| *number);
            if number == count {
                alike.push((figure, count));
                count += 1;
            }
            (name.as_str(), number)
        });
        Looks(numbered.collect())
    })
}

fn are_alike(one: &Figure, other: &Figure) -> bool {
    let mut pairs = one.marks.iter().zip(&other.marks);
    pairs.all(|(a, b)| match (a, b) {
        (Mark::Link { area: a, .. }, Mark::Link { area: b, .. }) => a == b,
        _ => a == b,
    })
}

impl Both<'_> {
    /// The later blocks, with what is other than in the earlier ones marked.
    fn blocks(&self, before: &[Block], after: Vec<Block>) -> Vec<Block> {
        let was: Vec<String> = before.iter().map(|it| self.was.key(it)).collect();
        let is: Vec<String> = after.iter().map(|it| self.is.key(it)).collect();
        let mut later = after.into_iter();
        let mut marked = Marked::default();
        for stretch in stretches(&was, &is) {
            match stretch {
                Stretch::Same(_, range) => {
                    let same = later.by_ref().take(range.len());
                    same.for_each(|block| marked.push(block));
                }
                Stretch::Other(gone, new) => {
                    let old = before.get(gone).unwrap_or_default();
                    let new: Vec<Block> = later.by_ref().take(new.len()).collect();
                    self.others(old, new, &mut marked);
                }
            }
        }
        marked.finish()
    }

    /// Blocks of which none is as it was: those that take the place of one are looked into.
    fn others(&self, before: &[Block], after: Vec<Block>, marked: &mut Marked) {
        let was: Vec<String> = before.iter().map(place).collect();
        let is: Vec<String> = after.iter().map(place).collect();
        let mut later = after.into_iter();
        for stretch in stretches(&was, &is) {
            match stretch {
                Stretch::Same(first, range) => {
                    let pairs = later.by_ref().take(range.len());
                    for (block, old) in pairs.zip(before.iter().skip(first)) {
                        marked.push(self.inside(old, block));
                    }
                }
                Stretch::Other(gone, new) => {
                    let instead = later.by_ref().take(new.len());
                    marked.replace(&gone, instead.map(other));
                }
            }
        }
    }

    /// A block that takes the place of another one, with what is other in it marked.
    fn inside(&self, before: &Block, after: Block) -> Block {
        match (before, after) {
            (Block::Table(old), Block::Table(new)) if heads(old) == heads(&new) => {
                Block::Table(rows(old, new))
            }
            (
                Block::List { items: old, .. },
                Block::List {
                    marker,
                    in_columns,
                    items,
                },
            ) => Block::List {
                marker,
                in_columns,
                items: self.items(old, items),
            },
            (Block::Together { blocks: old }, Block::Together { blocks }) => Block::Together {
                blocks: self.blocks(old, blocks),
            },
            (Block::Framed { blocks: old, .. }, Block::Framed { class, blocks }) => Block::Framed {
                class,
                blocks: self.blocks(old, blocks),
            },
            (_, block) => other(block),
        }
    }

    /// The items of a list; one that is left out leaves its mark at the next.
    fn items(&self, before: &[Vec<Block>], after: Vec<Vec<Block>>) -> Vec<Vec<Block>> {
        let was: Vec<String> = before.iter().map(|it| self.was.keys(it)).collect();
        let is: Vec<String> = after.iter().map(|it| self.is.keys(it)).collect();
        let changes = changes(&was, &is);
        let marked = |(item, change): (Vec<Block>, Change)| {
            let mut blocks = item.into_iter();
            match change {
                Change::None => blocks.collect(),
                Change::Other => blocks.map(other).collect(),
                Change::GoneAbove | Change::GoneBelow => {
                    let first = blocks.next().map(|block| with(change, block));
                    first.into_iter().chain(blocks).collect()
                }
            }
        };
        after.into_iter().zip(changes).map(marked).collect()
    }
}

/// Blocks with their marks.
#[derive(Default)]
struct Marked {
    blocks: Vec<Block>,
    /// Something was left out before the next one.
    gone: bool,
}

impl Marked {
    fn push(&mut self, block: Block) {
        let gone = std::mem::take(&mut self.gone);
        self.blocks.push(if gone {
            with(Change::GoneAbove, block)
        } else {
            block
        });
    }

    /// New blocks in place of some that are gone: their own marks tell of both.
    fn replace(&mut self, gone: &Range<usize>, instead: impl Iterator<Item = Block>) {
        let before = self.blocks.len();
        self.blocks.extend(instead);
        self.gone |= !gone.is_empty() && self.blocks.len() == before;
    }

    fn finish(mut self) -> Vec<Block> {
        if self.gone
            && let Some(last) = self.blocks.pop()
        {
            self.blocks.push(with(Change::GoneBelow, last));
        }
        self.blocks
    }
}

fn other(block: Block) -> Block {
    with(Change::Other, block)
}

fn with(change: Change, block: Block) -> Block {
    Block::Marked {
        change,
        block: Box::new(block),
    }
}

/// A table with the rows marked that are other.
fn rows(before: &Table, after: Table) -> Table {
    let old: Vec<String> = before.groups.iter().flatten().map(row_text).collect();
    let new: Vec<String> = after.groups.iter().flatten().map(row_text).collect();
    let mut changes = changes(&old, &new).into_iter();
    let mut after = after;
    for row in after.groups.iter_mut().flatten() {
        row.change = changes.next().unwrap_or_default();
    }
    after
}

/// What is told of each of the later things.
fn changes(before: &[String], after: &[String]) -> Vec<Change> {
    let mut changes = vec![Change::None; after.len()];
    for stretch in stretches(before, after) {
        let Stretch::Other(_, new) = stretch else {
            continue;
        };
        let (next, last) = (new.start, new.start.checked_sub(1));
        if !new.is_empty() {
            changes.get_mut(new).unwrap_or_default().fill(Change::Other);
        } else if let Some(change) = changes.get_mut(next) {
            *change = Change::GoneAbove;
        } else if let Some(change) = last.and_then(|last| changes.get_mut(last)) {
            *change = change.or(Change::GoneBelow);
        }
    }
    changes
}

impl Looks<'_> {
    /// All that a reader sees of a block.
    fn key(&self, block: &Block) -> String {
        match block {
            Block::Heading { text, .. } => format!("{}\n{}", place(block), words(text)),
            Block::Paragraph { class, text, .. } => format!("{class}\n{}", words(text)),
            Block::List { items, .. } => {
                let items: Vec<String> = items.iter().map(|item| self.keys(item)).collect();
                format!("{}\n{}", place(block), items.join("\n"))
            }
            Block::Table(table) => {
                let rows = table.groups.iter().flatten().map(row_text);
                let rows: Vec<String> = rows.collect();
                format!("{}\n{}\n{}", table.class, heads(table), rows.join("\n"))
            }
            Block::Figure { name, caption, .. } => {
                format!("figure {}\n{}", self.look(name), words(caption))
            }
            Block::Legend { entries } => {
                let entries = entries
                    .iter()
                    .map(|(name, text)| format!("{} {}", self.look(name), words(text)));
                entries.collect::<Vec<_>>().join("\n")
            }
            Block::Beside { figures, blocks } => {
                let figures = figures.iter().map(|name| self.look(name).to_string());
                let figures: Vec<String> = figures.collect();
                format!("{}\n{}", figures.join(" "), self.keys(blocks))
            }
            Block::Framed { class, blocks } => format!("{class}\n{}", self.keys(blocks)),
            Block::Together { blocks } => self.keys(blocks),
            Block::Marked { block, .. } => self.key(block),
            Block::Sheet { figure, title, .. } => {
                format!("sheet {}\n{}", self.look(figure), words(title))
            }
            Block::Contents | Block::ScaleCheck | Block::PageBreak => place(block),
        }
    }

    fn keys(&self, blocks: &[Block]) -> String {
        let keys: Vec<String> = blocks.iter().map(|block| self.key(block)).collect();
        keys.join("\n")
    }

    /// The number of what a figure looks like.
    fn look(&self, name: &str) -> usize {
        self.0.get(name).copied().unwrap_or(usize::MAX)
    }
}

/// What a block has in common with one whose place it takes.
fn place(block: &Block) -> String {
    match block {
        Block::Heading { level, text, .. } => format!("heading {level} {}", unnumbered(text)),
        Block::Paragraph { class, .. } => format!("paragraph {class}"),
        Block::List { marker, .. } => format!("list {marker:?}"),
        Block::Table(table) => format!("table {} {}", table.class, heads(table)),
        Block::Figure { class, .. } => format!("figure {class}"),
        Block::Legend { .. } => "legend".to_owned(),
        Block::Beside { .. } => "beside".to_owned(),
        Block::Framed { class, .. } => format!("framed {class}"),
        Block::Together { blocks } => {
            let first = blocks.iter().map(place).next();
            format!("together {}", first.unwrap_or_default())
        }
        Block::Contents => "contents".to_owned(),
        Block::ScaleCheck => "scale check".to_owned(),
        Block::Sheet { .. } => "sheet".to_owned(),
        Block::PageBreak => "page break".to_owned(),
        Block::Marked { block, .. } => place(block),
    }
}

/// A heading's text without the figures in it: "Step 4: Hang the door" is the same in another place.
fn unnumbered(text: &[Inline]) -> String {
    words(text).replace(|letter: char| letter.is_ascii_digit(), "")
}

fn heads(table: &Table) -> String {
    let rows: Vec<String> = table.head.iter().map(row_text).collect();
    rows.join("\n")
}

fn row_text(row: &Row) -> String {
    let cells: Vec<String> = row.cells.iter().map(|cell| words(&cell.text)).collect();
    cells.join("\t")
}

/// The words of a text, whatever they look like.
fn words(inlines: &[Inline]) -> String {
    let text = plain(inlines);
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}
