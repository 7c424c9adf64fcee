//! Quoted texts: escapes, folded lines, and slots for values.

use std::ops::Range;

use super::findings::{BAD_ESCAPE, BAD_SLOT};
use super::lower::Reader;
use super::pairs::{Node, Rule};
use super::recover::Reading;
use super::tree::{SlottedText, Text, TextPiece};
use crate::finding::Finding;
use crate::source::Spanned;

/// What braces mean in a text.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Braces {
    /// Themselves.
    Plain,
    /// A slot; doubled, themselves.
    Slots,
}

impl Reader<'_> {
    /// A text without slots: a title, a note.
    pub(super) fn text(&mut self, node: &Node<'_>) -> Text {
        let pieces = self.pieces(node, Braces::Plain);
        let value = pieces.into_iter().filter_map(|piece| match piece {
            TextPiece::Plain(text) => Some(text),
            TextPiece::Slot(_) => None,
        });
        Spanned::new(value.collect(), node.span())
    }

    /// A text with slots: an instruction, a check, a caution.
    pub(super) fn slotted(&mut self, node: &Node<'_>) -> SlottedText {
        SlottedText {
            pieces: self.pieces(node, Braces::Slots),
            span: node.span(),
        }
    }

    fn pieces(&mut self, node: &Node<'_>, braces: Braces) -> Vec<TextPiece> {
        let whole = node.range();
        let inside = whole.start + 1..whole.end.saturating_sub(1);
        let mut pieces = Vec::new();
        let mut plain = String::new();
        let mut at = inside.start;
        while let Some(c) = self.character(at, &inside) {
            let next = at + c.len_utf8();
            at = match c {
                '\\' => self.escape(at, &inside, &mut plain),
                '\n' => self.fold(next, &inside, &mut plain),
                '{' if braces == Braces::Slots => {
                    if self.character(next, &inside) == Some('{') {
                        plain.push('{');
                        next + 1
                    } else {
                        let (end, slot) = self.slot(at, &inside);
                        if let Some(slot) = slot {
                            if !plain.is_empty() {
                                pieces.push(TextPiece::Plain(std::mem::take(&mut plain)));
                            }
                            pieces.push(slot);
                        }
                        end
                    }
                }
                '}' if braces == Braces::Slots => {
                    plain.push('}');
                    if self.character(next, &inside) == Some('}') {
                        next + 1
                    } else {
                        self.report_stray_brace(at);
                        next
                    }
                }
                c => {
                    plain.push(c);
                    next
                }
            };
        }
        if !plain.is_empty() {
            pieces.push(TextPiece::Plain(plain));
        }
        pieces
    }

    fn character(&self, at: usize, inside: &Range<usize>) -> Option<char> {
        self.source.slice(at..inside.end).chars().next()
    }

    /// `\"`, `\\` or `\n` at `at`; gives the offset after it.
    fn escape(&mut self, at: usize, inside: &Range<usize>, plain: &mut String) -> usize {
        let Some(c) = self.character(at + 1, inside) else {
            return at + 1;
        };
        let end = at + 1 + c.len_utf8();
        match c {
            '"' | '\\' => plain.push(c),
            'n' => plain.push('\n'),
            _ => {
                let shown = if c.is_control() { ' ' } else { c };
                let backslash = self.source.span(at..at + 1);
                let finding = Finding::new(
                    &BAD_ESCAPE,
                    self.source.span(at..end),
                    format!("`\\{shown}` has no meaning in a text"),
                );
                self.report(finding.edit(
                    "write `\\\\` for a backslash",
                    backslash,
                    "\\\\".to_owned(),
                ));
            }
        }
        end
    }

    /// A line end in a text: with the blanks on both sides of it, one space.
    fn fold(&self, mut at: usize, inside: &Range<usize>, plain: &mut String) -> usize {
        plain.truncate(plain.trim_end_matches([' ', '\t', '\r']).len());
        while let Some(' ' | '\t' | '\r' | '\n') = self.character(at, inside) {
            at += 1;
        }
        plain.push(' ');
        at
    }

    /// `{expression}` from its brace on; gives the offset after it.
    fn slot(&mut self, at: usize, inside: &Range<usize>) -> (usize, Option<TextPiece>) {
        let rest = self.source.slice(at + 1..inside.end);
        let length = rest.find(['{', '}']).unwrap_or(rest.len());
        let end = at + 1 + length;
        if self.source.byte(end) != Some(b'}') {
            let finding = Finding::new(
                &BAD_SLOT,
                self.source.span(at..at + 1),
                "the slot that begins here is not closed in its text",
            );
            let brace = self.source.span(at..at + 1);
            let finding = finding.remedy("close it with `}`");
            self.report(finding.edit("write `{{` for a brace", brace, "{{".to_owned()));
            return (end, None);
        }
        if self.source.slice(at + 1..end).trim().is_empty() {
            let slot = self.source.span(at..end + 1);
            let finding = Finding::new(&BAD_SLOT, slot, "the slot is empty");
            self.report(finding.remedy("write what to print, as in `{shelf.length}`"));
            return (end + 1, None);
        }
        let slot = self.read(Rule::only_slot, at + 1..end, Reading::Slot);
        let expr = slot
            .and_then(|mut parts| parts.take(Rule::slot))
            .and_then(|node| self.expr(node));
        (end + 1, expr.map(TextPiece::Slot))
    }

    fn report_stray_brace(&mut self, at: usize) {
        let brace = self.source.span(at..at + 1);
        let finding = Finding::new(&BAD_SLOT, brace, "`}` closes no slot");
        self.report(finding.edit("write `}}` for a brace", brace, "}}".to_owned()));
    }
}
