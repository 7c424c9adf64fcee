//! Statements, lines, blocks and comments, line by line.

use std::ops::Range;

use super::spacing::{LONGEST, spaced};
use crate::syntax::{Cut, CutBlock};

/// The text of a source in its canonical form.
pub(super) fn print(text: &str, cuts: &[Cut]) -> String {
    let mut printer = Printer {
        text,
        out: String::with_capacity(text.len() + text.len() / 8),
        at: 0,
    };
    printer.lines(cuts, 0, text.len());
    printer.out
}

struct Printer<'t> {
    text: &'t str,
    out: String,
    /// What stands before it is printed.
    at: usize,
}

/// What stands between two lines.
enum Between<'t> {
    /// A comment behind what stands before it on its line.
    Behind(&'t str),
    /// A comment on a line of its own.
    Own(&'t str),
    /// One empty line or more.
    Empty,
}

impl<'t> Printer<'t> {
    /// The lines of a block, or the statements of a file, and the comments among them.
    fn lines(&mut self, cuts: &[Cut], indent: usize, end: usize) {
        for cut in cuts {
            self.between(cut.head.start, indent);
            self.indent(indent);
            self.line(cut, indent);
            self.out.push('\n');
        }
        self.between(end, indent);
        // No block and no file ends with an empty line.
        while self.out.ends_with("\n\n") {
            self.out.pop();
        }
    }

    /// The comments and empty lines up to `end`; none of the latter at the begin of a block.
    fn between(&mut self, end: usize, indent: usize) {
        let mut empty = false;
        for thing in between(self.text, self.at..end) {
            match thing {
                Between::Behind(comment) if self.out.ends_with('\n') && !self.out.is_empty() => {
                    self.out.pop();
                    self.out.push_str("  ");
                    self.out.push_str(comment);
                    self.out.push('\n');
                }
                Between::Behind(comment) | Between::Own(comment) => {
                    self.empty_line(empty);
                    empty = false;
                    self.indent(indent);
                    self.out.push_str(comment);
                    self.out.push('\n');
                }
                Between::Empty => empty = true,
            }
        }
        self.empty_line(empty);
        self.at = end;
    }

    fn empty_line(&mut self, wanted: bool) {
        let begins = self.out.is_empty() || self.out.ends_with("{\n") || self.out.ends_with("\n\n");
        if wanted && !begins {
            self.out.push('\n');
        }
    }

    fn indent(&mut self, indent: usize) {
        self.out.extend(std::iter::repeat_n(' ', indent));
    }

    /// A statement or line with its block, without its line end.
    fn line(&mut self, cut: &Cut, indent: usize) {
        let head = self.head(&cut.head, indent);
        self.out.push_str(&head);
        self.at = cut.head.end;
        let Some(block) = &cut.block else {
            return;
        };
        if !head.is_empty() {
            self.out.push(' ');
        }
        let comments = between(self.text, self.at..block.open);
        if let Some(line) = self.one_line(&head, block, indent) {
            self.out.push_str(&line);
            self.at = block.end;
            return;
        }
        self.out.push_str("{\n");
        for comment in comments {
            if let Between::Behind(comment) | Between::Own(comment) = comment {
                self.indent(indent + 4);
                self.out.push_str(comment);
                self.out.push('\n');
            }
        }
        self.at = block.open + 1;
        self.lines(&block.lines, indent + 4, block.end.saturating_sub(1));
        self.indent(indent);
        self.out.push('}');
        self.at = block.end;
    }

    /// A head; one with a comment in it stays as it is.
    fn head(&self, head: &Range<usize>, indent: usize) -> String {
        let written = self.text.get(head.clone()).unwrap_or("");
        if has_comment(written) {
            let lines = written.lines().map(str::trim_end);
            return lines.collect::<Vec<_>>().join("\n");
        }
        spaced(self.text, head.clone(), indent)
    }

    /// A block that was written on one line, and has room on one.
    fn one_line(&self, head: &str, block: &CutBlock, indent: usize) -> Option<String> {
        let written = self.text.get(block.open..block.end)?;
        let before = self.text.get(self.at..block.open)?;
        if written.contains('\n') || before.contains('\n') || head.contains('\n') {
            return None;
        }
        if block.lines.is_empty() {
            return Some("{}".to_owned());
        }
        let mut lines = Vec::new();
        for line in &block.lines {
            let own = self.head(&line.head, 0);
            let inner = match &line.block {
                // What has a block of its own is more than a line can show.
                Some(inner) if !inner.lines.is_empty() => return None,
                Some(_) => " {}",
                None => "",
            };
            lines.push(own + inner);
        }
        let line = format!("{{ {} }}", lines.join("; "));
        let width = indent + head.chars().count() + 1 + line.chars().count();
        (width <= LONGEST).then_some(line)
    }
}

/// True where a comment stands in a head; `#` in a text begins none.
fn has_comment(head: &str) -> bool {
    let mut in_text = false;
    let mut escaped = false;
    for c in head.chars() {
        match c {
            _ if escaped => escaped = false,
            '\\' if in_text => escaped = true,
            '"' => in_text = !in_text,
            '#' if !in_text => return true,
            _ => {}
        }
    }
    false
}

/// Comments and empty lines of a stretch in which nothing else stands but semicolons.
fn between(text: &str, range: Range<usize>) -> Vec<Between<'_>> {
    let mut things = Vec::new();
    let stretch = text.get(range.clone()).unwrap_or("");
    let mut on_first = text.get(..range.start).is_some_and(|before| {
        // Something stands before it on its line.
        let line = before.rsplit('\n').next().unwrap_or(before);
        !line.trim().is_empty()
    });
    let mut lines = stretch.split('\n').enumerate().peekable();
    while let Some((number, line)) = lines.next() {
        let line = line.trim_matches([' ', '\t', '\r', ';', '\u{A0}', '\u{202F}', '\u{FEFF}']);
        let is_last = lines.peek().is_none();
        if line.starts_with('#') {
            let comment = line.trim_end();
            if on_first {
                things.push(Between::Behind(comment));
            } else {
                things.push(Between::Own(comment));
            }
        } else if line.is_empty() && number > 0 && !is_last {
            things.push(Between::Empty);
        }
        on_first = false;
    }
    things
}
