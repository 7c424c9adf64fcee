//! What there is in a document, before a line of it is written: places, and figures with how often they
//! are shown.

use std::collections::{BTreeMap, BTreeSet};

use crate::document::tree::{Block, Document, Row};

/// What there is in a document.
#[derive(Debug, Default)]
pub(super) struct Gathered<'d> {
    /// Names of the places that links may lead to.
    pub(super) places: BTreeSet<&'d str>,
    /// How often figures are shown, by their names.
    pub(super) shown: BTreeMap<&'d str, usize>,
}

impl<'d> Gathered<'d> {
    pub(super) fn of(document: &'d Document) -> Self {
        let mut gathered = Self::default();
        gathered.blocks(&document.blocks);
        gathered
    }

    fn blocks(&mut self, blocks: &'d [Block]) {
        for block in blocks {
            self.block(block);
        }
    }

    fn block(&mut self, block: &'d Block) {
        match block {
            Block::Heading { id, .. } | Block::Paragraph { id, .. } => self.place(id),
            Block::List { items, .. } => items.iter().for_each(|item| self.blocks(item)),
            Block::Table(table) => {
                let rows = table.head.iter().chain(table.groups.iter().flatten());
                rows.for_each(|row: &Row| self.place(&row.id));
            }
            Block::Figure { name, .. } => self.figure(name),
            Block::Legend { entries } => entries.iter().for_each(|(name, _)| self.figure(name)),
            Block::Beside { figures, blocks } => {
                figures.iter().for_each(|name| self.figure(name));
                self.blocks(blocks);
            }
            Block::Framed { blocks, .. } | Block::Together { blocks } => self.blocks(blocks),
            Block::Marked { block, .. } => self.block(block),
            Block::Sheet { figure, id, .. } => {
                self.place(id);
                self.figure(figure);
            }
            Block::Contents | Block::ScaleCheck | Block::PageBreak => {}
        }
    }

    fn place(&mut self, name: &'d str) {
        if !name.is_empty() {
            self.places.insert(name);
        }
    }

    fn figure(&mut self, name: &'d str) {
        *self.shown.entry(name).or_default() += 1;
    }
}
