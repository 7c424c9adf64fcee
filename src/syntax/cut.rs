//! A text as the layout cuts it, for those who write it anew: statements and lines with their
//! blocks, and the words and marks of each.

use std::ops::Range;

use super::layout::{self, Item, Source};
use super::{lower, token};
use crate::finding::{Findings, Outcome};
use crate::source::{FileId, Sources};

/// A statement or a line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Cut {
    /// From its first to its last character before the block.
    pub head: Range<usize>,
    /// Its block.
    pub block: Option<CutBlock>,
}

/// A block in braces.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CutBlock {
    /// Its opening brace.
    pub open: usize,
    /// The first byte after its closing brace.
    pub end: usize,
    /// Its lines.
    pub lines: Vec<Cut>,
}

/// What a word or mark is, as the eye sees it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WordKind {
    /// A name, a keyword or a unit.
    Word,
    /// A number without its sign and unit.
    Number,
    /// A text in quotes.
    Text,
    /// One character of another kind.
    Mark,
}

/// A file cut into statements. Finds what is left open in it and what is too large; what is wrong
/// inside a statement [`parse`](super::parse) finds.
pub fn cut(sources: &Sources, file: FileId) -> Outcome<Vec<Cut>> {
    let text = sources.text(file);
    let source = Source { text, file };
    if let Some(finding) = lower::too_large(source) {
        let mut findings = Findings::new();
        findings.push(finding);
        return Outcome {
            value: Vec::new(),
            findings,
        };
    }
    let (items, findings) = layout::lay_out(source);
    Outcome {
        value: items.into_iter().map(cut_of).collect(),
        findings,
    }
}

fn cut_of(item: Item) -> Cut {
    Cut {
        head: item.head,
        block: item.block.map(|block| CutBlock {
            open: block.open,
            end: block.end,
            lines: block.items.into_iter().map(cut_of).collect(),
        }),
    }
}

/// The words and marks of a stretch of a text, in order; comments are left out.
pub fn words(text: &str, range: Range<usize>) -> Vec<(WordKind, Range<usize>)> {
    let source = Source {
        text,
        file: FileId(0),
    };
    let tokens = token::tokens(source, range);
    tokens
        .map(|token| {
            let kind = match token.kind {
                token::TokenKind::Word => WordKind::Word,
                token::TokenKind::Number => WordKind::Number,
                token::TokenKind::Text => WordKind::Text,
                token::TokenKind::Mark => WordKind::Mark,
            };
            (kind, token.range)
        })
        .collect()
}
