//! Where quoted texts end, and where they were meant to.

use super::findings::UNCLOSED_TEXT;
use super::layout::Scanner;
use super::words;
use crate::finding::Finding;

impl Scanner<'_> {
    /// A quoted text; it may span lines, and is taken to end early where its closing quote is
    /// missing.
    pub(super) fn text(&mut self) {
        let start = self.at;
        let close = self.closing_quote(start);
        self.at = match close {
            Some(close) if !self.looks_unclosed(start, close) => {
                self.extend(start, close + 1);
                close + 1
            }
            _ => {
                let end = self.end_of_unclosed(start);
                self.extend(start, end).spoiled = true;
                self.report_unclosed_text(start, end);
                end
            }
        };
    }

    fn closing_quote(&self, start: usize) -> Option<usize> {
        let mut at = start + 1;
        loop {
            match self.source.byte(at)? {
                b'"' => return Some(at),
                b'\\' => at += 2,
                _ => at += 1,
            }
        }
    }

    /// A text over several lines has lost its closing quote where that is followed by what can
    /// only be the inside of another text, or where a whole statement or a brace stands in it.
    fn looks_unclosed(&self, start: usize, close: usize) -> bool {
        let inside = self.source.slice(start..close);
        if !inside.contains('\n') {
            return false;
        }
        let reads_as_code = || {
            let mut lines = inside.lines().skip(1).map(str::trim_start);
            lines.any(|line| line.starts_with('}') || words::is_known(first_word(line)))
        };
        match self.source.byte(close + 1) {
            Some(b'"' | b'_') => true,
            Some(b'{') => reads_as_code(),
            Some(byte) if byte.is_ascii_alphanumeric() => true,
            Some(byte) if byte >= 0x80 => self.source.blank(close + 1) == 0,
            _ => inside.lines().skip(1).any(is_surely_code),
        }
    }

    /// Where an unclosed text is taken to end: before a line that reads as the plan's, and before
    /// a brace at the end of its own line.
    fn end_of_unclosed(&self, start: usize) -> usize {
        if self.follows_number(start) {
            // An inch mark.
            return start + 1;
        }
        let mut end = self.source.end_of_line(start);
        let first_line = self.source.slice(start..end).trim_end();
        let without_marks = first_line.trim_end_matches([' ', '\t', '{', '}', ';']);
        let marks = first_line.get(without_marks.len()..).unwrap_or("");
        if marks.starts_with([' ', '\t']) {
            return start + without_marks.len();
        }
        while end < self.source.text.len() {
            let next_end = self.source.end_of_line(end + 1);
            let line = self.source.slice(end + 1..next_end).trim();
            if line.is_empty() || line.starts_with(['}', '#']) || words::is_known(first_word(line))
            {
                break;
            }
            end = next_end;
        }
        start + self.source.slice(start..end).trim_end().len()
    }

    fn follows_number(&self, start: usize) -> bool {
        let before = start.checked_sub(1).and_then(|at| self.source.byte(at));
        before.is_some_and(|byte| byte.is_ascii_digit())
    }

    fn report_unclosed_text(&mut self, start: usize, end: usize) {
        let span = self.source.span(start..end);
        let finding = Finding::new(
            &UNCLOSED_TEXT,
            span,
            "the text that begins here is not closed",
        );
        let finding = if self.follows_number(start) {
            let quote = self.source.span(start..start + 1);
            finding.edit("inches are written `in`", quote, " in".to_owned())
        } else {
            finding.edit(
                "close it with a double quote; a quote inside a text is written `\\\"`",
                self.source.span(end..end),
                "\"".to_owned(),
            )
        };
        self.report(finding);
    }
}

/// True for a line that no text has: a brace alone, or a word that is given a value.
fn is_surely_code(line: &str) -> bool {
    let line = line.trim();
    let gives_value = matches!(first_word(line), "let" | "param" | "place") && line.contains(" = ");
    line == "}" || gives_value
}

fn first_word(line: &str) -> &str {
    let end = line.find(|c: char| !c.is_ascii_alphanumeric() && c != '_');
    line.get(..end.unwrap_or(line.len())).unwrap_or("")
}
