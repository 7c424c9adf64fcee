//! Findings for programs: one JSON array, whose field names are stable.
//!
//! Each finding is an object of
//!
//! | field | holds |
//! |---|---|
//! | `code` | family letter and three digits, as `explain` takes it |
//! | `severity` | `error`, `warning` or `note` |
//! | `title` | the kind of fault in a few words |
//! | `message` | the fault in words |
//! | `place` | where it is: see below |
//! | `figures` | lengths it is about: `label`, `mm` (a number), `inches` (a number), `text` (both in words) |
//! | `reason` | why it matters |
//! | `remedies` | `text`, and `edit` (`place` and `replacement`) or null |
//! | `related` | `text` and `place` of what belongs to it |
//!
//! A place is `file`, `start` and `end`; each of these has `line` and `column`, both from 1,
//! columns counting characters, and `offset`, in bytes from the start of the file. The end is the
//! first place after it.

use serde::Serialize;

use super::lines::Lines;
use super::{Finding, Findings, Severity};
use crate::source::{Sources, Span};
use crate::units::{Length, NM_PER_INCH};

#[derive(Serialize)]
struct JsonFinding<'a> {
    code: &'static str,
    severity: Severity,
    title: &'static str,
    message: &'a str,
    place: JsonPlace<'a>,
    figures: Vec<JsonFigure<'a>>,
    reason: &'a str,
    remedies: Vec<JsonRemedy<'a>>,
    related: Vec<JsonRelated<'a>>,
}

#[derive(Serialize)]
struct JsonPlace<'a> {
    file: &'a str,
    start: JsonPoint,
    end: JsonPoint,
}

#[derive(Serialize)]
struct JsonPoint {
    line: usize,
    column: usize,
    offset: u32,
}

#[derive(Serialize)]
struct JsonFigure<'a> {
    label: &'a str,
    mm: f64,
    inches: f64,
    text: String,
}

#[derive(Serialize)]
struct JsonRemedy<'a> {
    text: &'a str,
    edit: Option<JsonEdit<'a>>,
}

#[derive(Serialize)]
struct JsonEdit<'a> {
    place: JsonPlace<'a>,
    replacement: &'a str,
}

#[derive(Serialize)]
struct JsonRelated<'a> {
    text: &'a str,
    place: JsonPlace<'a>,
}

/// All findings as a JSON array, in their order, with a line end behind it.
pub fn json(findings: &Findings, sources: &Sources) -> String {
    let lines = Lines::new(findings, sources);
    let list: Vec<JsonFinding<'_>> = findings.iter().map(|f| finding(f, &lines)).collect();
    // Strings and finite numbers alone: there is nothing that could not be written.
    let mut text = serde_json::to_string_pretty(&list).unwrap_or_else(|_| "[]".to_owned());
    text.push('\n');
    text
}

fn finding<'a>(finding: &'a Finding, lines: &Lines<'a>) -> JsonFinding<'a> {
    JsonFinding {
        code: finding.page.code,
        severity: finding.page.severity,
        title: finding.page.title,
        message: &finding.message,
        place: place(finding.span, lines),
        figures: finding
            .figures
            .iter()
            .map(|figure| JsonFigure {
                label: &figure.label,
                mm: figure.length.mm(),
                inches: inches(figure.length),
                text: figure.length.in_both(),
            })
            .collect(),
        reason: &finding.reason,
        remedies: finding
            .remedies
            .iter()
            .map(|remedy| JsonRemedy {
                text: &remedy.text,
                edit: remedy.edit.as_ref().map(|(span, replacement)| JsonEdit {
                    place: place(*span, lines),
                    replacement,
                }),
            })
            .collect(),
        related: finding
            .related
            .iter()
            .map(|related| JsonRelated {
                text: &related.text,
                place: place(related.span, lines),
            })
            .collect(),
    }
}

fn place<'a>(span: Span, lines: &Lines<'a>) -> JsonPlace<'a> {
    let point = |offset: u32| {
        let (line, column) = lines.line_and_column(span.file, offset);
        JsonPoint {
            line,
            column,
            offset,
        }
    };
    JsonPlace {
        file: lines.sources.name(span.file),
        start: point(span.start),
        end: point(span.end),
    }
}

#[expect(
    clippy::cast_precision_loss,
    reason = "lengths stay far below 2^53 nanometres"
)]
fn inches(length: Length) -> f64 {
    length.nm() as f64 / NM_PER_INCH as f64
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::syntax::findings::UNKNOWN_UNIT;

    #[test]
    fn a_program_can_read_it_back() {
        let (sources, file) = Sources::single("größe.wright", "# ä\nlet größe = 5 mmm\n");
        let span = Span::new(file, 21, 24);
        let mut findings = Findings::new();
        findings.push(
            Finding::new(&UNKNOWN_UNIT, span, "\"mmm\" is not a unit")
                .figure("what it would be", Length::from_mm(5))
                .edit("did you mean \"mm\"?", span, "mm".to_owned())
                .related(Span::new(file, 9, 16), "here"),
        );
        let text = json(&findings, &sources);
        let value: serde_json::Value = serde_json::from_str(&text).unwrap();
        let first = &value[0];
        assert_eq!(first["code"], "S004");
        assert_eq!(first["severity"], "error");
        assert_eq!(first["place"]["file"], "größe.wright");
        assert_eq!(first["place"]["start"]["line"], 2);
        assert_eq!(first["place"]["start"]["column"], 15);
        assert_eq!(first["place"]["end"]["offset"], 24);
        assert_eq!(first["figures"][0]["mm"], 5.0);
        assert_eq!(first["figures"][0]["text"], "5 mm (about 13/64 in)");
        assert_eq!(first["remedies"][0]["edit"]["replacement"], "mm");
        assert_eq!(first["related"][0]["place"]["start"]["column"], 5);
    }

    #[test]
    fn nothing_found_is_an_empty_array() {
        assert_eq!(json(&Findings::new(), &Sources::new()), "[]\n");
    }
}
