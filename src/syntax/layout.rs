//! Cuts a source into statements and lines, before the grammar reads any of them.
//!
//! Follows strings, comments, brackets, braces and line ends alone, so that a missing quote,
//! bracket or brace is found where it is missing and spoils nothing but its own line. One pass:
//! no character is looked at more than a few times, whatever the source.

use std::ops::Range;

use super::findings::{STRAY_BRACE, TOO_DEEP, UNCLOSED_BLOCK, UNCLOSED_BRACKET};
use super::words;
use crate::finding::{Finding, Findings};
use crate::source::{DEEPEST_NESTING, FileId, Span};

/// Most faults that are told in one run: what follows so many is not this language.
pub(super) const MOST_FAULTS: usize = 500;

/// A text and the file it is of.
#[derive(Clone, Copy)]
pub(super) struct Source<'s> {
    pub(super) text: &'s str,
    pub(super) file: FileId,
}

impl<'s> Source<'s> {
    /// A range of the text as a span.
    pub(super) fn span(self, range: Range<usize>) -> Span {
        Span::new(self.file, range.start, range.end)
    }

    /// What stands there; nothing where the range is not in the text.
    pub(super) fn slice(self, range: Range<usize>) -> &'s str {
        self.text.get(range).unwrap_or("")
    }

    /// The byte at an offset.
    pub(super) fn byte(self, at: usize) -> Option<u8> {
        self.text.as_bytes().get(at).copied()
    }

    /// How many bytes of blanks (not line ends) stand at an offset.
    pub(super) fn blank(self, at: usize) -> usize {
        match self.byte(at) {
            Some(b' ' | b'\t' | b'\r') => 1,
            Some(0xC2 | 0xE2 | 0xEF) => match self.text.get(at..).and_then(|t| t.chars().next()) {
                Some('\u{A0}') => 2,
                Some('\u{202F}' | '\u{FEFF}') => 3,
                _ => 0,
            },
            _ => 0,
        }
    }

    /// The first offset from `at` on that is not blank, nor in a comment, nor a line end.
    pub(super) fn next_mark(self, mut at: usize) -> usize {
        loop {
            match (self.byte(at), self.blank(at)) {
                (Some(b'\n'), _) => at += 1,
                (Some(b'#'), _) => at = self.end_of_line(at),
                (_, 0) => return at,
                (_, blank) => at += blank,
            }
        }
    }

    /// The next line end, or the end of the text.
    pub(super) fn end_of_line(self, at: usize) -> usize {
        let rest = self.text.as_bytes().get(at..).unwrap_or(&[]);
        at + rest.iter().position(|&b| b == b'\n').unwrap_or(rest.len())
    }

    /// The word of ASCII letters, digits and `_` at an offset.
    pub(super) fn word(self, at: usize) -> &'s str {
        let rest = self.text.get(at..).unwrap_or("");
        let end = rest.find(|c: char| !c.is_ascii_alphanumeric() && c != '_');
        rest.get(..end.unwrap_or(rest.len())).unwrap_or("")
    }
}

/// A statement or a line: its head, and its block if it has one.
pub(super) struct Item {
    /// From its first to its last character before the block.
    pub(super) head: Range<usize>,
    /// What stands in braces.
    pub(super) block: Option<Block>,
    /// The head has a fault that is reported already.
    pub(super) spoiled: bool,
}

impl Item {
    /// The head and the block.
    pub(super) fn whole(&self) -> Range<usize> {
        let end = self.block.as_ref().map_or(self.head.end, |block| block.end);
        self.head.start..end
    }
}

/// A block in braces.
pub(super) struct Block {
    /// Its opening brace.
    pub(super) open: usize,
    /// The first byte after it.
    pub(super) end: usize,
    /// Its lines.
    pub(super) items: Vec<Item>,
}

/// A statement or line that is being read.
pub(super) struct Draft {
    start: usize,
    end: usize,
    pub(super) spoiled: bool,
    /// Open brackets, by their offsets.
    brackets: Vec<usize>,
    /// Blanks before it on its line; none where it is not the first there.
    indent: Option<usize>,
}

/// A block that is being read.
struct Frame {
    owner: Draft,
    brace: usize,
    items: Vec<Item>,
}

/// The state of the pass.
pub(super) struct Scanner<'s> {
    pub(super) source: Source<'s>,
    pub(super) at: usize,
    /// Where the current line begins, and whether anything stood on it yet.
    line: usize,
    frames: Vec<Frame>,
    draft: Option<Draft>,
    items: Vec<Item>,
    /// Braces opened beyond the deepest nesting, and not closed yet.
    swallowed: usize,
    findings: Findings,
    faults: usize,
}

/// Cuts `source` into statements, and tells what is left open in it.
pub(super) fn lay_out(source: Source<'_>) -> (Vec<Item>, Findings) {
    let mut scanner = Scanner {
        source,
        at: 0,
        line: 0,
        frames: Vec::new(),
        draft: None,
        items: Vec::new(),
        swallowed: 0,
        findings: Findings::new(),
        faults: 0,
    };
    scanner.run();
    (scanner.items, scanner.findings)
}

impl Scanner<'_> {
    /// One more finding; those beyond the most that are told are not even made room for.
    pub(super) fn report(&mut self, finding: Finding) {
        if self.faults <= MOST_FAULTS {
            self.faults += 1;
            self.findings.push(finding);
        }
    }

    fn run(&mut self) {
        while let Some(byte) = self.source.byte(self.at) {
            match byte {
                b'\n' => self.line_end(),
                b'#' => self.at = self.source.end_of_line(self.at),
                b'"' => self.text(),
                b'{' => self.open_block(),
                b'}' => self.close_block(),
                b';' => {
                    self.finish_line();
                    self.at += 1;
                }
                b'(' | b'[' => self.open_bracket(),
                b')' | b']' => self.close_bracket(byte),
                _ => match self.source.blank(self.at) {
                    0 => self.token(),
                    blank => self.at += blank,
                },
            }
        }
        self.finish_line();
        let end = self.source.text.trim_end().len();
        self.leave_open_blocks(0, end..end, "the source ends");
    }

    /// A run of characters without a meaning here.
    fn token(&mut self) {
        let start = self.at;
        while let Some(byte) = self.source.byte(self.at) {
            let special = matches!(
                byte,
                b'\n' | b'#' | b'"' | b'{' | b'}' | b';' | b'(' | b')' | b'[' | b']'
            );
            if special || self.source.blank(self.at) > 0 {
                break;
            }
            self.at += 1;
        }
        self.extend(start, self.at);
    }

    /// `start..end` belongs to the current line, or begins the next.
    pub(super) fn extend(&mut self, start: usize, end: usize) -> &mut Draft {
        if self.draft.is_none() {
            let before = self.source.slice(self.line..start);
            let indent = before.trim().is_empty().then(|| before.chars().count());
            self.check_block_is_closed(start, indent);
            self.draft = Some(Draft::new(start, indent));
        }
        let draft = self.draft.get_or_insert_with(|| Draft::new(start, None));
        draft.end = end;
        draft
    }

    /// A statement that begins in a block, no deeper than the block's own statement, shows that
    /// the block was to end before it.
    fn check_block_is_closed(&mut self, start: usize, indent: Option<usize>) {
        // Blocks that hold statements stay open: their own end is not known before the text's.
        let holders = self
            .frames
            .iter()
            .take_while(|frame| words::holds_statements(self.source.word(frame.owner.start)))
            .count();
        let outer = self
            .frames
            .get(holders)
            .and_then(|frame| frame.owner.indent);
        let (Some(indent), Some(outer)) = (indent, outer) else {
            return;
        };
        let word = self.source.word(start);
        if indent <= outer && words::is_statement(word) && self.begins_anew(start) {
            let place = format!("`{word}` begins the next statement");
            self.leave_open_blocks(holders, start..start + word.len(), &place);
        }
    }

    fn line_end(&mut self) {
        let next = self.source.next_mark(self.at);
        if let Some(draft) = &self.draft {
            let opens_block = self.source.byte(next) == Some(b'{') && draft.brackets.is_empty();
            if !opens_block && !self.goes_on(draft, next) {
                self.finish_line();
            }
        }
        let gap = self.source.slice(self.at..next);
        self.line = self.at + gap.rfind('\n').map_or(0, |line_end| line_end + 1);
        self.at = next;
    }

    /// True where the line `draft` goes on at `next`, behind a line end: after a comma or an
    /// operator, and in brackets before one, too.
    fn goes_on(&self, draft: &Draft, next: usize) -> bool {
        let in_brackets = !draft.brackets.is_empty();
        let last = draft.end.checked_sub(1).and_then(|at| self.source.byte(at));
        let asks = match last {
            Some(b',' | b'+' | b'-' | b'*' | b'/' | b'<' | b'>' | b'=' | b'(' | b'[') => true,
            Some(b'.') => in_brackets,
            _ => false,
        };
        let answers = matches!(
            self.source.byte(next),
            Some(b',' | b'+' | b'-' | b'*' | b'/' | b'.' | b')' | b']')
        );
        asks && !self.begins_anew(next) || in_brackets && answers
    }

    /// True where the text at `at` reads as the begin of a statement or line, which no expression
    /// can go on with: a statement's word before a name or text, a line's before a number or text.
    fn begins_anew(&self, at: usize) -> bool {
        let word = self.source.word(at);
        let mut after = at + word.len();
        if word.is_empty() || self.source.blank(after) == 0 {
            return false;
        }
        while self.source.blank(after) > 0 {
            after += self.source.blank(after);
        }
        match self.source.byte(after) {
            Some(b'"' | b'0'..=b'9') => words::is_known(word),
            Some(byte) => {
                (byte.is_ascii_alphabetic() || byte == b'_' || byte >= 0x80)
                    && words::is_statement(word)
            }
            None => false,
        }
    }

    fn open_bracket(&mut self) {
        let at = self.at;
        self.at += 1;
        let depth = self.frames.len();
        let draft = self.extend(at, at + 1);
        if depth + draft.brackets.len() < DEEPEST_NESTING {
            draft.brackets.push(at);
        } else if !draft.spoiled {
            draft.spoiled = true;
            self.report(too_deep(self.source, at));
        }
    }

    fn close_bracket(&mut self, byte: u8) {
        let at = self.at;
        self.at += 1;
        let source = self.source;
        let opening = if byte == b')' { b'(' } else { b'[' };
        let draft = self.extend(at, at + 1);
        if draft.brackets.last().and_then(|&open| source.byte(open)) == Some(opening) {
            draft.brackets.pop();
        }
    }

    /// The current line is at its end.
    fn finish_line(&mut self) {
        if let Some(mut draft) = self.draft.take() {
            self.check_brackets(&mut draft);
            self.keep(Item {
                head: draft.start..draft.end,
                block: None,
                spoiled: draft.spoiled,
            });
        }
    }

    fn keep(&mut self, item: Item) {
        if self.swallowed > 0 {
            return;
        }
        let list = self.frames.last_mut().map(|frame| &mut frame.items);
        list.unwrap_or(&mut self.items).push(item);
    }

    fn check_brackets(&mut self, draft: &mut Draft) {
        let Some(&open) = draft.brackets.last() else {
            return;
        };
        if draft.spoiled {
            return;
        }
        draft.spoiled = true;
        let bracket = self.source.slice(open..open + 1);
        let closing = if bracket == "(" { ")" } else { "]" };
        let message = format!("`{bracket}` is not closed before the line ends");
        let end = self.source.span(draft.end..draft.end);
        self.report(
            Finding::new(&UNCLOSED_BRACKET, self.source.span(open..open + 1), message).edit(
                format!("close it with `{closing}`"),
                end,
                closing.to_owned(),
            ),
        );
    }

    fn open_block(&mut self) {
        let brace = self.at;
        self.at += 1;
        let mut owner = self.draft.take().unwrap_or_else(|| Draft::new(brace, None));
        self.check_brackets(&mut owner);
        if self.swallowed > 0 {
            self.swallowed += 1;
        } else if self.frames.len() >= DEEPEST_NESTING {
            self.swallowed = 1;
            self.report(too_deep(self.source, brace));
        } else {
            self.frames.push(Frame {
                owner,
                brace,
                items: Vec::new(),
            });
        }
    }

    fn close_block(&mut self) {
        self.finish_line();
        let brace = self.at;
        self.at += 1;
        if self.swallowed > 0 {
            self.swallowed -= 1;
        } else if let Some(frame) = self.frames.pop() {
            self.close(frame, brace + 1);
        } else {
            let span = self.source.span(brace..brace + 1);
            self.report(
                Finding::new(&STRAY_BRACE, span, "`}` closes no block").edit(
                    "take it out, or open a block before it",
                    span,
                    String::new(),
                ),
            );
        }
    }

    fn close(&mut self, frame: Frame, end: usize) {
        self.keep(Item {
            head: frame.owner.start..frame.owner.end,
            block: Some(Block {
                open: frame.brace,
                end,
                items: frame.items,
            }),
            spoiled: frame.owner.spoiled,
        });
    }

    /// Ends all blocks but the outermost `kept` before `place`, each with a finding.
    fn leave_open_blocks(&mut self, kept: usize, place: Range<usize>, what_comes: &str) {
        self.swallowed = 0;
        while self.frames.len() > kept
            && let Some(frame) = self.frames.pop()
        {
            let owner = self.source.word(frame.owner.start);
            let message = format!("the block of `{owner}` is not closed before {what_comes}");
            let brace = self.source.span(frame.brace..frame.brace + 1);
            self.report(
                Finding::new(&UNCLOSED_BLOCK, self.source.span(place.clone()), message)
                    .related(brace, "the block begins here")
                    .remedy("close it with `}` after its last line"),
            );
            self.close(frame, place.start);
        }
    }
}

impl Draft {
    fn new(start: usize, indent: Option<usize>) -> Self {
        Self {
            start,
            end: start,
            spoiled: false,
            brackets: Vec::new(),
            indent,
        }
    }
}

fn too_deep(source: Source<'_>, at: usize) -> Finding {
    let message = format!("more than {DEEPEST_NESTING} brackets and blocks are open here");
    Finding::new(&TOO_DEEP, source.span(at..at + 1), message)
        .remedy("give an inner part a name with `let` and use the name")
}
