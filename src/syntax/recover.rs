//! Findings out of what could not be read.

use std::ops::Range;

use super::expected::{Expected, expected, one_of};
use super::findings::{
    EXPECTED, MISPLACED, STRANGE_CHARACTER, UNKNOWN_LINE, UNKNOWN_STATEMENT, UNKNOWN_UNIT,
    UNKNOWN_WORD,
};
use super::layout::Source;
use super::pairs::{Fault, is_keyword};
use super::token::{Token, TokenKind, around, described, first_token, is_word_character};
use super::words::{self, BlockKind, Opening, UNITS, nearest, nearest_unit};
use crate::finding::Finding;
use crate::units::Unit;

/// What is being read.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Reading<'f> {
    /// A statement's head or a line, and its form where an example helps.
    Line(Option<&'f str>),
    /// A slot of a text.
    Slot,
}

/// The finding of a stretch that the grammar could not read beyond `fault`.
pub(super) fn unreadable(
    source: Source<'_>,
    line: Range<usize>,
    fault: &Fault,
    reading: Reading<'_>,
) -> Finding {
    let (before, found) = around(source, &line, fault.at);
    let expected = expected(&fault.expected);
    let place = Place {
        noun: match reading {
            Reading::Line(_) => "line",
            Reading::Slot => "slot",
        },
        source,
        line,
        before,
        found,
    };
    let found = place.found.clone();
    let finding = found
        .filter(|found| found.kind != TokenKind::Text)
        .and_then(|found| {
            strange_character(source, &found)
                .or_else(|| place.slip(&found, &expected))
                .or_else(|| place.number_slip(&found))
        })
        .unwrap_or_else(|| place.expected(&expected));
    match reading {
        Reading::Line(Some(form)) if finding.remedies.is_empty() && !expected.only_value() => {
            finding.remedy(format!("write it like this: `{form}`"))
        }
        Reading::Line(_) | Reading::Slot => finding,
    }
}

/// The place where reading stopped.
struct Place<'s> {
    noun: &'static str,
    source: Source<'s>,
    line: Range<usize>,
    before: Vec<Token>,
    found: Option<Token>,
}

impl Place<'_> {
    /// "after "depth"", or nothing at the start.
    fn after(&self) -> String {
        match self.before.as_slice() {
            [] => String::new(),
            [.., number, unit] if number.kind == TokenKind::Number && self.is_unit(unit) => {
                let measure = self.source.slice(number.range.start..unit.range.end);
                format!(" after `{measure}`")
            }
            [.., last] => format!(" after {}", described(self.source, last)),
        }
    }

    fn is_unit(&self, token: &Token) -> bool {
        Unit::by_symbol(self.source.slice(token.range.clone())).is_some()
    }

    /// Something else is expected.
    fn expected(&self, expected: &Expected) -> Finding {
        let after = self.after();
        let end = self.before.last().map_or(self.line.start, |t| t.range.end);
        let (range, message) = match &self.found {
            None => (
                end..end,
                format!(
                    "expected {}{after}, but the {} ends there",
                    expected.in_words(self.noun),
                    self.noun,
                ),
            ),
            Some(found) => {
                let what = described(self.source, found);
                let message = if expected.only_end() {
                    format!(
                        "{what} does not belong here: the {} could end{after}",
                        self.noun
                    )
                } else {
                    format!(
                        "expected {}{after}, not {what}",
                        expected.in_words(self.noun)
                    )
                };
                (found.range.clone(), message)
            }
        };
        Finding::new(&EXPECTED, self.source.span(range), message)
    }

    /// A word that is not what it should be: a slip of the pen, an unknown unit, an unknown kind.
    fn slip(&self, found: &Token, expected: &Expected) -> Option<Finding> {
        if found.kind != TokenKind::Word {
            return None;
        }
        let word = self.source.slice(found.range.clone());
        if words::is_known(word) || is_keyword(word) {
            return None;
        }
        let span = self.source.span(found.range.clone());
        let wanted = nearest(word, expected.words.iter().map(String::as_str));
        let follows_number = self
            .before
            .last()
            .is_some_and(|t| t.kind == TokenKind::Number);
        if follows_number {
            let unit = nearest_unit(word);
            let unit_is_nearer = match (&unit, wanted) {
                (Some((_, unit)), Some((_, wanted))) => *unit < wanted,
                (Some(_), None) => true,
                (None, Some(_)) => false,
                (None, None) => true,
            };
            if unit_is_nearer {
                let message = format!("`{word}` is not a unit");
                let finding = Finding::new(&UNKNOWN_UNIT, span, message);
                let finding = match unit {
                    Some((unit, _)) => finding.edit(format!("did you mean `{unit}`?"), span, unit),
                    None => finding.remedy(format!(
                        "units are {}, and a currency in three capitals such as EUR",
                        UNITS.join(", ")
                    )),
                };
                return Some(finding);
            }
        }
        let listed = expected.fixed_list && !expected.end;
        if wanted.is_none() && !listed {
            return None;
        }
        let message = if listed {
            format!(
                "expected {}{}, not `{word}`",
                expected.in_words(self.noun),
                self.after()
            )
        } else {
            format!("`{word}` has no meaning here")
        };
        let finding = Finding::new(&UNKNOWN_WORD, span, message);
        Some(match wanted {
            Some((wanted, _)) => {
                finding.edit(format!("did you mean `{wanted}`?"), span, wanted.to_owned())
            }
            None => finding,
        })
    }

    /// A number in a form that is not read: `18,5 mm`, `3 1/2 in`, `3/4"`.
    fn number_slip(&self, found: &Token) -> Option<Finding> {
        let last = self.before.last().filter(|t| t.kind == TokenKind::Number)?;
        let span = self.source.span(found.range.clone());
        let gap = self.source.slice(last.range.end..found.range.start);
        let after = self.source.byte(found.range.end);
        if found.kind == TokenKind::Number && after == Some(b'/') {
            let gap = self.source.span(last.range.end..found.range.start);
            let message = "a whole number and a fraction are joined by a hyphen";
            return Some(Finding::new(&EXPECTED, span, message).edit(
                "write it as one, as in `3-1/2 in`",
                gap,
                "-".to_owned(),
            ));
        }
        let is_comma = self.source.slice(found.range.clone()) == ",";
        if is_comma && gap.is_empty() && after.is_some_and(|byte| byte.is_ascii_digit()) {
            let message = "decimals are written with a point, not a comma";
            return Some(Finding::new(&EXPECTED, span, message).edit(
                "write a point",
                span,
                ".".to_owned(),
            ));
        }
        None
    }
}

/// A character that the language has no use for.
fn strange_character(source: Source<'_>, found: &Token) -> Option<Finding> {
    let character = source.slice(found.range.clone()).chars().next()?;
    if is_word_character(character) || "\"()[]{}<>=+-*/.,;#".contains(character) {
        return None;
    }
    let end = found.range.start + character.len_utf8();
    let span = source.span(found.range.start..end);
    let shown = if character.is_control() || character.is_whitespace() {
        format!("the character U+{:04X}", u32::from(character))
    } else {
        format!("`{character}`")
    };
    let finding = Finding::new(
        &STRANGE_CHARACTER,
        span,
        format!("{shown} has no meaning here"),
    );
    let instead = match character {
        '“' | '”' | '„' | '«' | '»' | '‟' | '\'' | '‘' | '’' => "\"",
        '–' | '—' | '−' | '‐' | '‑' => "-",
        '×' | '·' | '∙' => "*",
        '÷' | '⁄' | ':' => "/",
        '″' => " in",
        '′' => " ft",
        '½' => "1/2",
        '¼' => "1/4",
        '¾' => "3/4",
        '⅛' => "1/8",
        '⅜' => "3/8",
        '⅝' => "5/8",
        '⅞' => "7/8",
        '²' => "2",
        '³' => "3",
        '≤' => "<=",
        '≥' => ">=",
        _ => return Some(finding.remedy("take it out")),
    };
    Some(match character {
        ':' => finding.edit(
            "words and values are set apart by blanks alone",
            span,
            String::new(),
        ),
        '\'' | '‘' | '’' | '“' | '”' | '„' | '«' | '»' | '‟' => finding.edit(
            "texts stand in straight double quotes",
            span,
            instead.to_owned(),
        ),
        _ => finding.edit(
            format!("write `{}`", instead.trim()),
            span,
            instead.to_owned(),
        ),
    })
}

/// A statement that begins with no word of the language.
pub(super) fn unknown_statement(source: Source<'_>, head: &Range<usize>) -> Finding {
    let Some(first) = first_token(source, head) else {
        let brace = source.span(head.start..head.start + 1);
        return Finding::new(
            &EXPECTED,
            brace,
            "a block belongs to a statement: none stands before `{`",
        );
    };
    let span = source.span(first.range.clone());
    if let Some(finding) = strange_character(source, &first) {
        return finding;
    }
    let text = described(source, &first);
    let word = source.slice(first.range.clone());
    let statements = Opening::ALL.map(Opening::word);
    if let Some(kind) = BlockKind::ALL
        .into_iter()
        .find(|kind| kind.form(word).is_some())
    {
        let message = format!(
            "{text} is a line of {} and stands in its block",
            kind.name()
        );
        return Finding::new(&MISPLACED, span, message)
            .remedy("look whether the block before it ends too early");
    }
    let finding = Finding::new(
        &UNKNOWN_STATEMENT,
        span,
        format!("{text} begins no statement"),
    );
    match nearest(word, statements) {
        Some((wanted, _)) => {
            finding.edit(format!("did you mean `{wanted}`?"), span, wanted.to_owned())
        }
        None => {
            // A choice begins one only in an option.
            let [listed @ .., _choice] = &statements;
            finding.remedy(format!("statements begin with {}", one_of(listed)))
        }
    }
}

/// A line that begins with no word of its block.
pub(super) fn unknown_line(source: Source<'_>, head: &Range<usize>, kind: BlockKind) -> Finding {
    let Some(first) = first_token(source, head) else {
        let brace = source.span(head.start..head.start + 1);
        return Finding::new(
            &EXPECTED,
            brace,
            "a block belongs to a line: none stands before `{`",
        );
    };
    let span = source.span(first.range.clone());
    if let Some(finding) = strange_character(source, &first) {
        return finding;
    }
    let text = described(source, &first);
    let word = source.slice(first.range.clone());
    if let Some(opening) = Opening::of(word) {
        let article = if opening == Opening::Hardware {
            ""
        } else {
            "a "
        };
        let message = format!(
            "{article}{text} is a statement of its own and stands outside the block of {}",
            kind.name()
        );
        return Finding::new(&MISPLACED, span, message)
            .remedy("move it out, or close the block before it");
    }
    let elsewhere = BlockKind::ALL
        .into_iter()
        .find(|other| other.form(word).is_some());
    if let Some(other) = elsewhere {
        let message = format!(
            "{text} is a line of {}, not of {}",
            other.name(),
            kind.name()
        );
        return Finding::new(&MISPLACED, span, message).remedy(lines_of(kind));
    }
    let message = format!("{text} begins no line of {}", kind.name());
    let finding = Finding::new(&UNKNOWN_LINE, span, message);
    match nearest(word, kind.words()) {
        Some((wanted, _)) => {
            finding.edit(format!("did you mean `{wanted}`?"), span, wanted.to_owned())
        }
        None => finding.remedy(lines_of(kind)),
    }
}

fn lines_of(kind: BlockKind) -> String {
    let words: Vec<&str> = kind.words().collect();
    format!("lines of {} begin with {}", kind.name(), one_of(&words))
}

/// A statement without the block that says what it is.
pub(super) fn missing_block(source: Source<'_>, head: &Range<usize>, opening: Opening) -> Finding {
    let end = source.span(head.end..head.end);
    let message = format!(
        "expected `{{` and the lines of {}, but there is no block",
        opening.block().map_or("it", BlockKind::name)
    );
    Finding::new(&EXPECTED, end, message)
        .remedy(format!("write it like this: `{}`", opening.form()))
}

/// A choice outside of an option.
pub(super) fn choice_alone(source: Source<'_>, head: &Range<usize>) -> Finding {
    let word = source.span(head.start..head.start + "choice".len());
    Finding::new(
        &MISPLACED,
        word,
        "a choice stands in the block of an option",
    )
    .remedy(format!("write it like this: `{}`", Opening::Option.form()))
}

/// A block behind a statement or line that has none.
pub(super) fn needless_block(source: Source<'_>, word: &str, brace: usize, form: &str) -> Finding {
    let message = format!("`{word}` has no block");
    Finding::new(&EXPECTED, source.span(brace..brace + 1), message)
        .remedy(format!("write it like this: `{form}`"))
}

/// An override that is not one expression.
pub(super) fn not_one_expression(source: Source<'_>, at: Range<usize>) -> Finding {
    Finding::new(
        &EXPECTED,
        source.span(at),
        "expected one value, such as 1000 mm",
    )
}
