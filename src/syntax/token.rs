//! A faulty line as the eye sees it: words, numbers, texts and marks, for messages.

use std::ops::Range;

use unicode_normalization::char::is_combining_mark;

use super::layout::Source;

/// A word, number, text or mark, as the eye sees it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Token {
    pub(super) kind: TokenKind,
    pub(super) range: Range<usize>,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum TokenKind {
    Word,
    Number,
    Text,
    Mark,
}

/// The first token of a head.
pub(super) fn first_token(source: Source<'_>, head: &Range<usize>) -> Option<Token> {
    let at = source.next_mark(head.start);
    (at < head.end).then(|| token(source, at, head.end))
}

/// The tokens before `at` and the one that stands there.
pub(super) fn around(
    source: Source<'_>,
    line: &Range<usize>,
    at: usize,
) -> (Vec<Token>, Option<Token>) {
    let mut before = Vec::new();
    let mut next = source.next_mark(line.start);
    while next < line.end {
        let token = token(source, next, line.end);
        if next >= at {
            return (before, Some(token));
        }
        next = source.next_mark(token.range.end);
        // Two are enough to say after what.
        if before.len() > 1 {
            before.remove(0);
        }
        before.push(token);
    }
    (before, None)
}

/// The tokens of a stretch.
pub(super) fn tokens(source: Source<'_>, line: Range<usize>) -> impl Iterator<Item = Token> {
    let mut next = source.next_mark(line.start);
    std::iter::from_fn(move || {
        if next >= line.end {
            return None;
        }
        let token = token(source, next, line.end);
        next = source.next_mark(token.range.end);
        Some(token)
    })
}

/// The token at `start`, which is not blank.
fn token(source: Source<'_>, start: usize, line_end: usize) -> Token {
    let rest = source.slice(start..line_end);
    let mut characters = rest.chars();
    let first = characters.next().unwrap_or(' ');
    let run = |belongs: fn(char) -> bool| rest.find(|c| !belongs(c)).unwrap_or(rest.len());
    let (kind, length) = if first.is_ascii_digit() {
        let whole = run(|c| c.is_ascii_digit());
        let decimals = rest.get(whole..).and_then(|rest| rest.strip_prefix('.'));
        let digits = decimals.map_or(0, |rest| {
            rest.find(|c: char| !c.is_ascii_digit())
                .unwrap_or(rest.len())
        });
        (
            TokenKind::Number,
            if digits > 0 {
                whole + 1 + digits
            } else {
                whole
            },
        )
    } else if is_word_character(first) {
        (TokenKind::Word, run(is_word_character))
    } else if first == '"' {
        (TokenKind::Text, text_length(rest))
    } else {
        (TokenKind::Mark, first.len_utf8())
    };
    Token {
        kind,
        range: start..start + length.max(1),
    }
}

/// True for letters, digits, accents and `_`, and false for what only looks like a digit.
pub(super) fn is_word_character(c: char) -> bool {
    let odd_numeral = c.is_numeric() && !c.is_alphabetic() && !c.is_ascii();
    (c.is_alphanumeric() || c == '_' || is_combining_mark(c)) && !odd_numeral
}

fn text_length(rest: &str) -> usize {
    let mut escaped = false;
    for (at, c) in rest.char_indices().skip(1) {
        match c {
            _ if escaped => escaped = false,
            '\\' => escaped = true,
            '"' => return at + 1,
            _ => {}
        }
    }
    rest.len()
}

/// The token as a message names it.
pub(super) fn described(source: Source<'_>, token: &Token) -> String {
    const LONGEST: usize = 32;
    let text = source.slice(token.range.clone());
    let text = text.trim_matches('"');
    let mut shown: String = text.chars().take(LONGEST).collect();
    if shown.len() < text.len() {
        shown.push('…');
    }
    match token.kind {
        TokenKind::Text => format!("the text \"{}\"", shown.replace('\n', " ")),
        TokenKind::Word | TokenKind::Number | TokenKind::Mark => format!("`{shown}`"),
    }
}
