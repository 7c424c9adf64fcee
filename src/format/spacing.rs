//! Blanks between words and marks, and where a line too long may be broken.

use std::ops::Range;

use crate::syntax::{WordKind, words};

/// How long a line may be, counted in characters: a placement with all its lines has room.
pub(super) const LONGEST: usize = 120;

/// A word or mark with what stands before it.
struct Piece<'t> {
    kind: WordKind,
    text: &'t str,
    /// Blanks or a line end stood before it.
    apart: bool,
}

/// The text of a head on as few lines as it takes, each but the first indented by `indent` and four
/// blanks more.
pub(super) fn spaced(text: &str, head: Range<usize>, indent: usize) -> String {
    let pieces = pieces(text, head);
    let mut line = String::new();
    let mut out = String::new();
    let deeper = " ".repeat(indent + 4);
    // The last place on the line where it may be broken.
    let mut breakable: Option<usize> = None;
    let mut width = indent;
    for (number, piece) in pieces.iter().enumerate() {
        let before = number.checked_sub(1).and_then(|n| pieces.get(n));
        let earlier = number.checked_sub(2).and_then(|n| pieces.get(n));
        if before.is_some_and(|before| blank_between(earlier, before, piece)) {
            line.push(' ');
            if before.is_some_and(|before| before.text == ",") && may_begin_line(&pieces, number) {
                breakable = Some(line.len());
            }
        }
        line.push_str(&folded(piece, indent));
        let last = line.rsplit('\n').next().unwrap_or(&line);
        let used = if line.contains('\n') { 0 } else { width };
        if used + last.chars().count() > LONGEST
            && let Some(at) = breakable.take()
        {
            let rest = line.split_off(at);
            out.push_str(line.trim_end());
            out.push('\n');
            out.push_str(&deeper);
            line = rest;
            width = indent + 4;
        }
    }
    out + &line
}

/// A word that begins a statement or line, before what could follow it there, would be read as that.
fn may_begin_line(pieces: &[Piece<'_>], number: usize) -> bool {
    let (Some(word), Some(next)) = (pieces.get(number), pieces.get(number + 1)) else {
        return true;
    };
    word.kind != WordKind::Word || next.kind == WordKind::Mark
}

fn pieces(text: &str, head: Range<usize>) -> Vec<Piece<'_>> {
    let mut pieces: Vec<Piece<'_>> = Vec::new();
    let mut end = head.start;
    for (kind, range) in words(text, head) {
        let apart = range.start > end;
        let part = text.get(range.clone()).unwrap_or("");
        // `<=`, `>=` and `..` are one.
        let joined = pieces.last().is_some_and(|before| {
            !apart && matches!((before.text, part), ("<" | ">", "=") | (".", "."))
        });
        if joined && let Some(before) = pieces.last_mut() {
            before.text = text.get(range.end - 2..range.end).unwrap_or(before.text);
        } else {
            pieces.push(Piece {
                kind,
                text: part,
                apart,
            });
        }
        end = range.end;
    }
    pieces
}

/// A text over several lines, each further one indented like a line that goes on.
fn folded(piece: &Piece<'_>, indent: usize) -> String {
    if piece.kind != WordKind::Text || !piece.text.contains('\n') {
        return piece.text.to_owned();
    }
    let deeper = format!("\n{}", " ".repeat(indent + 4));
    let mut lines: Vec<&str> = piece.text.split('\n').collect();
    let last = lines.len() - 1;
    for (number, line) in lines.iter_mut().enumerate() {
        if number > 0 {
            *line = line.trim_start_matches([' ', '\t', '\r']);
        }
        if number < last {
            *line = line.trim_end_matches([' ', '\t', '\r']);
        }
    }
    // Lines without anything are blanks of the text like any others.
    let first = lines.first().copied().unwrap_or("");
    let others = lines.iter().skip(1).filter(|line| !line.is_empty());
    others.fold(first.to_owned(), |text, line| text + &deeper + line)
}

/// Whether a blank stands between two pieces; `earlier` stands before them.
fn blank_between(earlier: Option<&Piece<'_>>, before: &Piece<'_>, piece: &Piece<'_>) -> bool {
    let is_number = |piece: &Piece<'_>| piece.kind == WordKind::Number;
    match (before.text, piece.text) {
        (_, "," | ")" | "]" | ":" | "." | "..") | ("(" | "[" | "." | "..", _) => false,
        // Of a call, of what a sub-assembly is given, of an index.
        (_, "(" | "[") => before.kind != WordKind::Word || piece.apart,
        // Parts of a fraction or a date belong together as they are written.
        (_, "-" | "/") if is_number(before) => piece.apart,
        ("-" | "/", _) if earlier.is_some_and(is_number) && is_number(piece) => {
            piece.apart || before.apart
        }
        // So do those of a unit.
        ("kg" | "lb", "/") if earlier.is_some_and(is_number) => piece.apart,
        ("/", "m3" | "ft3") if earlier.is_some_and(|it| matches!(it.text, "kg" | "lb")) => {
            piece.apart || before.apart
        }
        // A sign stands with what it belongs to.
        ("-", _) if is_sign(earlier, before, piece) => false,
        _ => true,
    }
}

/// True for a minus that is a sign, not a subtraction: behind a mark, or written as one.
fn is_sign(earlier: Option<&Piece<'_>>, minus: &Piece<'_>, piece: &Piece<'_>) -> bool {
    let Some(earlier) = earlier else {
        return true;
    };
    match earlier.kind {
        WordKind::Mark => !matches!(earlier.text, ")" | "]"),
        WordKind::Word => minus.apart && !piece.apart,
        WordKind::Number | WordKind::Text => false,
    }
}
