//! Text to syntax tree.
//!
//! Takes one file of the sources, gives the [`tree::Tree`] of all that could be read and a
//! finding for each fault: [`layout`] cuts the text into heads and lines, [`pairs`] reads each by
//! the grammar in `grammar/leafwright.pest`, the `lower…` files make tree out of what was read,
//! [`recover`] makes findings out of what was not. A fault in one line hides none in another.
//!
//! Never looks a name up, works nothing out and knows no kinds: `18 mm + 3` is a fine tree.

mod cut;
mod expected;
pub mod findings;
mod forest;
mod layout;
mod layout_text;
mod literal;
mod lower;
mod lower_expr;
mod lower_join;
mod lower_library;
mod lower_material;
mod lower_part;
mod lower_place;
mod lower_plan;
mod lower_step;
mod lower_supply;
mod lower_use;
mod pairs;
mod recover;
#[cfg(test)]
mod tests;
mod texts;
mod token;
pub mod tree;
mod tree_library;
mod tree_part;
mod tree_place;
mod words;

use crate::finding::{Findings, Outcome};
use crate::source::{FileId, Sources};
use layout::Source;
use lower::Reader;
use rayon::iter::ParallelIterator;
use rayon::slice::ParallelSlice;
use tree::{Expr, Statement, Tree};

/// So many statements are read at a time.
const CHUNK: usize = 32;

pub use cut::{Cut, CutBlock, WordKind, cut, words};
pub use forest::{Forest, imports, parse_all};

/// The language that this version reads; a library says which it needs.
pub const LANGUAGE: i64 = 1;

/// Reads a file.
///
/// A statement or a line that cannot be read is missing from the tree and has a finding; an
/// empty file gives an empty tree and no finding.
pub fn parse(sources: &Sources, file: FileId) -> Outcome<Tree> {
    let text = sources.text(file);
    let source = Source { text, file };
    let mut tree = Tree {
        span: source.span(0..text.len()),
        ..Tree::default()
    };
    if let Some(finding) = lower::too_large(source) {
        let mut findings = Findings::new();
        findings.push(finding);
        return Outcome {
            value: tree,
            findings,
        };
    }
    let mut reader = Reader::new(source);
    let items = reader.lay_out();
    // Statements know nothing of each other. What is read of them and found in them comes back in
    // the order of the text.
    let read: Vec<(Vec<Statement>, Findings)> = items
        .par_chunks(CHUNK)
        .map(|items| {
            let mut reader = Reader::new(source);
            let statements = items.iter();
            let statements = statements.filter_map(|item| lower::statement(&mut reader, item));
            (statements.collect(), reader.findings())
        })
        .collect();
    for (statements, findings) in read {
        tree.statements.extend(statements);
        for finding in findings.iter() {
            reader.report(finding.clone());
        }
    }
    Outcome {
        value: tree,
        findings: reader.findings(),
    }
}

/// Reads a file that holds one expression: the value of an override on the command line,
/// `1000 mm` of `width=1000 mm`, handed in as a source of its own.
pub fn parse_expression(sources: &Sources, file: FileId) -> Result<Expr, Findings> {
    let text = sources.text(file);
    let source = Source { text, file };
    let mut findings = Findings::new();
    if let Some(finding) = lower::too_large(source) {
        findings.push(finding);
        return Err(findings);
    }
    let mut reader = Reader::new(source);
    let mut items = reader.lay_out().into_iter();
    let expr = match (items.next(), items.next()) {
        (Some(item), None) if item.block.is_none() && !item.spoiled => reader.expression(&item),
        (first, second) => {
            let at = second.or(first).map_or(0..0, |item| item.head);
            reader.report(recover::not_one_expression(source, at));
            None
        }
    };
    let findings = reader.findings();
    match expr {
        Some(expr) if findings.is_empty() => Ok(expr),
        _ => Err(findings),
    }
}
