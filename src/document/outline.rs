//! What a document is made of, at a glance: its headings in order, and texts without their looks.

use super::tree::{Block, Inline};

/// The level of what is neither in contents nor in an outline.
const DEEPEST_LEVEL: u8 = 6;

/// A heading in its place.
#[derive(Clone, Copy, Debug)]
pub struct Heading<'d> {
    /// 1 to 3; deeper for what is not listed.
    pub level: u8,
    /// The name of the place.
    pub id: &'d str,
    /// Its text.
    pub text: &'d [Inline],
}

/// Every heading, also those inside other blocks.
pub fn headings(blocks: &[Block]) -> Vec<Heading<'_>> {
    let mut found = Vec::new();
    for block in blocks {
        match block {
            Block::Heading {
                level, id, text, ..
            } => found.push(Heading {
                level: *level,
                id,
                text,
            }),
            Block::Framed { blocks, .. }
            | Block::Beside { blocks, .. }
            | Block::Together { blocks } => found.append(&mut headings(blocks)),
            Block::List { items, .. } => {
                found.extend(items.iter().flat_map(|item| headings(item)));
            }
            Block::Marked { block, .. } => found.extend(headings(std::slice::from_ref(block))),
            Block::Paragraph { .. }
            | Block::Table(_)
            | Block::Figure { .. }
            | Block::Legend { .. }
            | Block::Contents
            | Block::ScaleCheck
            | Block::PageBreak => {}
            Block::Sheet { id, title, .. } => found.push(Heading {
                level: if title.is_empty() { DEEPEST_LEVEL } else { 2 },
                id,
                text: title,
            }),
        }
    }
    found
}

/// A block without the mark in its margin.
pub fn unmarked(block: &Block) -> &Block {
    match block {
        Block::Marked { block, .. } => unmarked(block),
        Block::Heading { .. }
        | Block::Paragraph { .. }
        | Block::List { .. }
        | Block::Table(_)
        | Block::Figure { .. }
        | Block::Legend { .. }
        | Block::Beside { .. }
        | Block::Framed { .. }
        | Block::Together { .. }
        | Block::Contents
        | Block::ScaleCheck
        | Block::Sheet { .. }
        | Block::PageBreak => block,
    }
}

/// The words of a text, on one line.
pub fn plain(text: &[Inline]) -> String {
    let mut words = String::new();
    take(text, &mut words);
    words.trim().to_owned()
}

fn take(text: &[Inline], words: &mut String) {
    for inline in text {
        match inline {
            Inline::Text(text) => words.push_str(text),
            Inline::Strong(inner)
            | Inline::Emphasis(inner)
            | Inline::Link { text: inner, .. }
            | Inline::Styled { text: inner, .. } => take(inner, words),
            Inline::Break => words.push(' '),
        }
    }
}
