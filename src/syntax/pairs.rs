//! The parser generator and what it gives: nothing of it leaves this folder.

use std::ops::Range;

use pest::Parser as _;
use pest::error::{ErrorVariant, InputLocation};
use pest::iterators::{Pair, Pairs};
use unicode_normalization::{UnicodeNormalization as _, is_nfc};

use super::layout::Source;
use super::tree::Name;
use crate::source::{Span, Spanned};

pub(super) use grammar::Rule;

mod grammar {
    /// The parser that is made of the grammar.
    #[derive(pest_derive::Parser)]
    #[grammar = "../grammar/leafwright.pest"]
    pub(in super::super) struct Grammar;
}

/// Why a text could not be read: the farthest place that was understood, and what was looked for
/// there.
#[derive(Debug)]
pub(super) struct Fault {
    pub(super) at: usize,
    pub(super) expected: Vec<Rule>,
}

/// Reads a stretch of the source by one rule.
pub(super) fn read(
    source: Source<'_>,
    rule: Rule,
    range: Range<usize>,
) -> Result<Parts<'_>, Fault> {
    let base = range.start;
    match grammar::Grammar::parse(rule, source.slice(range)) {
        Ok(pairs) => Ok(Parts {
            pairs,
            source,
            base,
        }),
        Err(error) => {
            let at = match error.location {
                InputLocation::Pos(at) | InputLocation::Span((at, _)) => base + at,
            };
            let expected = match error.variant {
                ErrorVariant::ParsingError { positives, .. } => positives,
                // Only the limits of the generated parser's own recursion, far beyond ours.
                ErrorVariant::CustomError { .. } => Vec::new(),
            };
            Err(Fault { at, expected })
        }
    }
}

/// True for marks and keywords, which carry no value: the grammar lists them last.
pub(super) fn is_mark(rule: Rule) -> bool {
    rule >= Rule::equals
}

/// The word of a keyword's rule.
pub(super) fn keyword(rule: Rule) -> Option<String> {
    format!("{rule:?}").strip_prefix("kw_").map(str::to_owned)
}

/// True for a word that the grammar gives a meaning somewhere.
pub(super) fn is_keyword(word: &str) -> bool {
    let mut rules = Rule::all_rules().iter();
    rules.any(|&rule| keyword(rule).is_some_and(|keyword| keyword == word))
}

/// Something that was read.
#[derive(Clone)]
pub(super) struct Node<'s> {
    pair: Pair<'s, Rule>,
    source: Source<'s>,
    base: usize,
}

impl<'s> Node<'s> {
    /// By which rule.
    pub(super) fn rule(&self) -> Rule {
        self.pair.as_rule()
    }

    /// As it is written.
    pub(super) fn text(&self) -> &'s str {
        self.pair.as_str()
    }

    /// Where, in bytes of the source.
    pub(super) fn range(&self) -> Range<usize> {
        // Blanks before something that may follow belong to nothing.
        let start = self.base + self.pair.as_span().start();
        start..start + self.pair.as_str().trim_end().len()
    }

    /// Where.
    pub(super) fn span(&self) -> Span {
        self.source.span(self.range())
    }

    /// It as a name, in Unicode's composed form (NFC), so that two ways of typing one name are
    /// one name.
    pub(super) fn name(&self) -> Name {
        let text = self.text();
        let value = if text.is_ascii() || is_nfc(text) {
            text.to_owned()
        } else {
            text.nfc().collect()
        };
        Spanned::new(value, self.span())
    }

    /// What it is made of.
    pub(super) fn parts(self) -> Parts<'s> {
        Parts {
            pairs: self.pair.into_inner(),
            source: self.source,
            base: self.base,
        }
    }
}

/// The parts of something that was read, taken from first to last.
#[derive(Clone)]
pub(super) struct Parts<'s> {
    pairs: Pairs<'s, Rule>,
    source: Source<'s>,
    base: usize,
}

impl<'s> Parts<'s> {
    /// The next part that is no mark.
    pub(super) fn value(&mut self) -> Option<Node<'s>> {
        loop {
            let pair = self.pairs.next()?;
            if !is_mark(pair.as_rule()) && pair.as_rule() != Rule::EOI {
                return Some(self.node(pair));
            }
        }
    }

    /// The next part that is no mark, if it was read by `rule`; otherwise it stays the next.
    pub(super) fn take(&mut self, rule: Rule) -> Option<Node<'s>> {
        let mut ahead = self.clone();
        let node = ahead.value().filter(|node| node.rule() == rule)?;
        *self = ahead;
        Some(node)
    }

    /// Where the mark or keyword `rule` stands, if it comes before the next part that is none.
    pub(super) fn mark(&mut self, rule: Rule) -> Option<Span> {
        let mut ahead = self.pairs.clone();
        loop {
            let pair = ahead.next()?;
            if pair.as_rule() == rule {
                self.pairs = ahead;
                return Some(self.node(pair).span());
            }
            if !is_mark(pair.as_rule()) {
                return None;
            }
        }
    }

    /// The next part that is no mark, as a name.
    pub(super) fn name(&mut self) -> Option<Name> {
        self.value().map(|node| node.name())
    }

    fn node(&self, pair: Pair<'s, Rule>) -> Node<'s> {
        Node {
            pair,
            source: self.source,
            base: self.base,
        }
    }
}
