//! What refers to what: places are named once, links lead somewhere, figures are there.

use std::collections::{BTreeMap, BTreeSet};

use roxmltree::Node;

use super::findings::{self, Fault};
use super::tree::{Block, Inline};
use crate::display::Figure;

/// Names of places, links and figures, and where they are written.
#[derive(Debug, Default)]
pub(super) struct Places {
    defined: Vec<(String, usize)>,
    referred: Vec<(String, usize)>,
    shown: Vec<(String, usize)>,
}

impl Places {
    /// A place has a name; an empty one is none.
    pub(super) fn define(&mut self, name: &str, node: Node) {
        if !name.is_empty() {
            self.defined.push((name.to_owned(), node.range().start + 1));
        }
    }

    /// A link leads to a name.
    pub(super) fn refer(&mut self, name: &str, node: Node) {
        self.referred
            .push((name.to_owned(), node.range().start + 1));
    }

    /// A figure is shown.
    pub(super) fn show(&mut self, name: &str, node: Node) {
        self.shown.push((name.to_owned(), node.range().start + 1));
    }
}

/// Finds names that do not belong together and takes figures and links to nothing out of the
/// blocks, so that the pages never meet them.
pub(super) fn check(
    blocks: &mut Vec<Block>,
    places: &Places,
    figures: &BTreeMap<String, Figure>,
) -> Vec<Fault> {
    let mut faults = Vec::new();
    let mut known = BTreeSet::new();
    for (name, at) in &places.defined {
        if !known.insert(name.as_str()) {
            let said = format!("two places are named \"{name}\"");
            faults.push(Fault::new(&findings::PLACE_NAMED_TWICE, Some(*at), said));
        }
    }
    let mut missed = BTreeSet::new();
    for (name, at) in &places.referred {
        if !known.contains(name.as_str()) && missed.insert(name.as_str()) {
            let said = format!("a link leads to \"{name}\", and no place has that name");
            faults.push(Fault::new(&findings::LINK_TO_NOWHERE, Some(*at), said));
        }
    }
    let mut absent = BTreeSet::new();
    for (name, at) in &places.shown {
        if !figures.contains_key(name) && absent.insert(name.as_str()) {
            let said = format!("there is no figure \"{name}\"");
            faults.push(Fault::new(&findings::FIGURE_NOT_THERE, Some(*at), said));
        }
    }
    if !faults.is_empty() {
        mend(blocks, &missed, &absent);
    }
    faults
}

fn mend(blocks: &mut Vec<Block>, missed: &BTreeSet<&str>, absent: &BTreeSet<&str>) {
    blocks.retain(
        |block| !matches!(block, Block::Figure { name, .. } if absent.contains(name.as_str())),
    );
    for block in blocks {
        match block {
            Block::Heading { text, .. } | Block::Paragraph { text, .. } => unlink(text, missed),
            Block::Figure { caption, .. } => unlink(caption, missed),
            Block::List { items, .. } => {
                for item in items {
                    mend(item, missed, absent);
                }
            }
            Block::Table(table) => {
                let rows = table
                    .head
                    .iter_mut()
                    .chain(table.groups.iter_mut().flatten());
                for cell in rows.flat_map(|row| &mut row.cells) {
                    unlink(&mut cell.text, missed);
                }
            }
            Block::Legend { entries } => {
                entries.retain(|(name, _)| !absent.contains(name.as_str()));
                for (_, text) in entries {
                    unlink(text, missed);
                }
            }
            Block::Beside { figures, blocks } => {
                figures.retain(|name| !absent.contains(name.as_str()));
                mend(blocks, missed, absent);
            }
            Block::Framed { blocks, .. } | Block::Together { blocks } => {
                mend(blocks, missed, absent);
            }
            // Marks are set on what is mended already.
            Block::Marked { .. }
            | Block::Contents
            | Block::ScaleCheck
            | Block::Sheet { .. }
            | Block::PageBreak => {}
        }
    }
}

/// A link to nothing becomes the text it stood on.
fn unlink(text: &mut Vec<Inline>, missed: &BTreeSet<&str>) {
    let old = std::mem::take(text);
    for mut inline in old {
        match &mut inline {
            Inline::Link {
                target,
                text: inside,
            } if missed.contains(target.as_str()) => {
                unlink(inside, missed);
                text.append(inside);
                continue;
            }
            Inline::Strong(inside)
            | Inline::Emphasis(inside)
            | Inline::Link { text: inside, .. }
            | Inline::Styled { text: inside, .. } => unlink(inside, missed),
            Inline::Text(_) | Inline::Break => {}
        }
        text.push(inline);
    }
}
