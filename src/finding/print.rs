//! Findings for people: each with the lines of the source it speaks of.

use std::ops::Range;

use annotate_snippets::renderer::DecorStyle;
use annotate_snippets::{
    AnnotationKind, Group, Level, Origin, Renderer, Snippet, normalize_untrusted_str,
};

use super::lines::Lines;
use super::{Finding, Findings, Remedy, Severity};
use crate::source::{FileId, Sources, Span};

/// The longest line that is quoted, in bytes; of longer ones the place is named alone.
const LONGEST_QUOTED: usize = 2_000;
/// So many findings are quoted; the rest is counted. Nobody reads on from there, and a program
/// asks for all of them as JSON.
pub const MOST_QUOTED: usize = 1_000;
/// Places further apart than this many lines are quoted one by one.
const FARTHEST_IN_ONE: usize = 60;

/// Whether the drawing may use a terminal's colours.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Colour {
    /// For files, tests and terminals without them.
    Plain,
    /// With ANSI colours.
    Coloured,
}

/// The findings in their order, ready for a terminal; empty where there are none.
pub fn print(findings: &Findings, sources: &Sources, colour: Colour) -> String {
    let renderer = match colour {
        Colour::Plain => Renderer::plain(),
        Colour::Coloured => Renderer::styled(),
    };
    let renderer = renderer.decor_style(DecorStyle::Ascii);
    let lines = Lines::new(findings, sources);
    let mut text = String::new();
    let mut quoted: Vec<&Finding> = findings.iter().collect();
    let rest = quoted.len().saturating_sub(MOST_QUOTED);
    if rest > 0 {
        // What stops the plan must not be among what is only counted.
        quoted.sort_by_key(|finding| finding.page.severity);
        quoted.truncate(MOST_QUOTED);
    }
    for finding in quoted {
        let drawn = renderer.render(&[group(finding, &lines)]);
        for line in drawn.lines() {
            text.push_str(line.trim_end());
            text.push('\n');
        }
        text.push('\n');
    }
    if rest > 0 {
        text.push_str(&format!("… and {rest} more\n\n"));
    }
    text
}

fn group<'a>(finding: &'a Finding, lines: &Lines<'a>) -> Group<'a> {
    let level = match finding.page.severity {
        Severity::Error => Level::ERROR,
        Severity::Warning => Level::WARNING,
        Severity::Note => Level::NOTE,
    };
    let title = level
        .primary_title(finding.message.as_str())
        .id(finding.page.code);
    let mut group = Group::with_title(title);
    for quote in quotes(finding, lines) {
        group = match quote {
            Quote::Lines(snippet) => group.element(snippet),
            Quote::Place(origin) => group.element(origin),
        };
    }
    for (name, text) in notes(finding) {
        let text = normalize_untrusted_str(&text);
        group = group.element(Level::NOTE.with_name(name).message(text));
    }
    group
}

/// What is said below the source: figures, why, help.
fn notes(finding: &Finding) -> Vec<(&'static str, String)> {
    let mut notes = Vec::new();
    let figures = finding.figures.iter();
    let figures: Vec<String> = figures
        .map(|figure| format!("{} {}", figure.label, figure.length.in_both()))
        .collect();
    if !figures.is_empty() {
        notes.push(("figures", figures.join("; ")));
    }
    if !finding.reason.is_empty() {
        notes.push(("why", finding.reason.clone()));
    }
    notes.extend(
        finding
            .remedies
            .iter()
            .map(|remedy| ("help", advice(remedy))),
    );
    notes
}

/// The words of a remedy, and what to write if the words do not say it.
fn advice(remedy: &Remedy) -> String {
    match &remedy.edit {
        Some((_, replacement)) if !remedy.text.contains(replacement.trim()) => {
            format!("{}: {}", remedy.text, replacement.trim())
        }
        _ => remedy.text.clone(),
    }
}

/// A part of the source that a finding shows.
enum Quote<'a> {
    /// Its lines, with what is marked in them.
    Lines(Snippet<'a, annotate_snippets::Annotation<'a>>),
    /// Where it is, for a file without text or a line too long to quote.
    Place(Origin<'a>),
}

/// A place to mark.
struct Mark<'a> {
    file: FileId,
    range: Range<usize>,
    /// First and last line.
    lines: (usize, usize),
    kind: AnnotationKind,
    label: Option<&'a str>,
}

impl<'a> Mark<'a> {
    fn new(span: Span, lines: &Lines<'a>, kind: AnnotationKind, label: Option<&'a str>) -> Self {
        let range = lines.range(span);
        // A place that ends with a line ends in it, not in the next.
        let last = range.end.saturating_sub(1).max(range.start);
        Self {
            file: span.file,
            lines: (
                lines.line(span.file, range.start),
                lines.line(span.file, last),
            ),
            range,
            kind,
            label,
        }
    }
}

/// The marked places, those near each other in one quotation.
fn quotes<'a>(finding: &'a Finding, lines: &Lines<'a>) -> Vec<Quote<'a>> {
    let mut groups = vec![vec![Mark::new(
        finding.span,
        lines,
        AnnotationKind::Primary,
        None,
    )]];
    for related in &finding.related {
        let label = Some(related.text.as_str());
        let mark = Mark::new(related.span, lines, AnnotationKind::Context, label);
        let near = |group: &&mut Vec<Mark<'_>>| {
            group.iter().any(|other| {
                other.file == mark.file
                    && mark.lines.0 <= other.lines.1 + FARTHEST_IN_ONE
                    && other.lines.0 <= mark.lines.1 + FARTHEST_IN_ONE
            })
        };
        match groups.iter_mut().find(near) {
            Some(group) => group.push(mark),
            None => groups.push(vec![mark]),
        }
    }
    groups
        .iter()
        .filter_map(|group| quote(group, lines))
        .collect()
}

/// One quotation: the lines from the first mark to the last.
fn quote<'a>(marks: &[Mark<'a>], lines: &Lines<'a>) -> Option<Quote<'a>> {
    let first = marks.first()?;
    let name = lines.sources.name(first.file);
    let text = lines.sources.text(first.file);
    if text.is_empty() {
        return (!name.is_empty()).then(|| Quote::Place(Origin::path(name)));
    }
    let first_line = marks.iter().map(|mark| mark.lines.0).min()?;
    let last_line = marks.iter().map(|mark| mark.lines.1).max()?;
    let start = lines.start(first.file, first_line);
    let end = lines.start(first.file, last_line + 1);
    let window = text.get(start..end)?;
    if window.lines().any(|line| line.len() > LONGEST_QUOTED) {
        let offset = u32::try_from(first.range.start).unwrap_or(u32::MAX);
        let (line, column) = lines.line_and_column(first.file, offset);
        let origin = Origin::path(name).line(line).char_column(column);
        return Some(Quote::Place(origin));
    }
    let marks = marks.iter().map(|mark| {
        let range = mark.range.start - start..mark.range.end - start;
        mark.kind.span(range).label(mark.label)
    });
    let snippet = Snippet::source(window)
        .path(name)
        .line_start(first_line)
        .annotations(marks);
    Some(Quote::Lines(snippet))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::syntax::findings::{EXPECTED, UNCLOSED_BLOCK};
    use crate::units::Length;

    fn one(finding: Finding, sources: &Sources) -> String {
        let mut findings = Findings::new();
        findings.push(finding);
        print(&findings, sources, Colour::Plain)
    }

    #[test]
    fn of_many_findings_the_worst_are_quoted_and_the_rest_counted() {
        static REMARK: crate::finding::Page = crate::finding::Page {
            code: "T000",
            title: "remark",
            severity: Severity::Note,
            why: "",
            text: "",
        };
        let (sources, file) = Sources::single("a.wright", "let a = 1\n");
        let mut findings = Findings::new();
        let span = Span::new(file, 0, 3);
        for number in 0..MOST_QUOTED {
            let message = format!("remark {number}");
            findings.push(Finding::new(&REMARK, span, message));
        }
        findings.push(Finding::new(&EXPECTED, span, "the error"));
        let text = print(&findings, &sources, Colour::Plain);
        assert!(text.starts_with("error[S001]: the error"));
        assert_eq!(text.matches("remark ").count(), MOST_QUOTED - 1);
        assert!(text.ends_with("… and 1 more\n\n"));
    }

    #[test]
    fn a_finding_shows_source_figures_reason_and_help() {
        let (sources, file) = Sources::single("a.wright", "let größe = 18 mm\nlet b = größe\n");
        let span = Span::new(file, 28, 36);
        let finding = Finding::new(&EXPECTED, span, "the depth is too large")
            .figure("depth", Length::from_mm(18))
            .related(Span::new(file, 4, 11), "declared here")
            .edit("write less", span, "10 mm".to_owned());
        assert_eq!(
            one(finding, &sources),
            "\
error[S001]: the depth is too large
 --> a.wright:2:9
  |
1 | let größe = 18 mm
  |     ----- declared here
2 | let b = größe
  |         ^^^^^
  |
  = figures: depth 18 mm (about 45/64 in)
  = why: a line that can be read in two ways would be built in two ways
  = help: write less: 10 mm

"
        );
    }

    #[test]
    fn the_end_of_a_text_and_a_file_without_text_can_be_shown() {
        let (mut sources, file) = Sources::single("a.wright", "part a {\n");
        let end = Finding::new(&UNCLOSED_BLOCK, Span::new(file, 9, 9), "not closed");
        assert!(one(end, &sources).contains("a.wright:2:1"));
        let broken = Finding::new(&EXPECTED, Span::new(file, 7_000, 3), "out of range");
        assert!(one(broken, &sources).contains("out of range"));
        let empty = sources.add("empty.wright", "");
        let nothing = Finding::new(&EXPECTED, Span::new(empty, 0, 0), "nothing here");
        assert!(one(nothing, &sources).contains("--> empty.wright"));
    }

    #[test]
    fn a_line_too_long_to_quote_is_named() {
        let text = format!("{}x", " ".repeat(5_000));
        let (sources, file) = Sources::single("a.wright", &text);
        let finding = Finding::new(&EXPECTED, Span::new(file, 5_000, 5_001), "far out");
        let text = one(finding, &sources);
        assert!(text.contains("a.wright:1:5001"), "{text}");
        assert!(text.len() < 500);
    }

    #[test]
    fn colours_are_used_when_asked_for() {
        let (sources, file) = Sources::single("a.wright", "x");
        let mut findings = Findings::new();
        findings.push(Finding::new(&EXPECTED, Span::new(file, 0, 1), "x"));
        assert!(print(&findings, &sources, Colour::Coloured).contains("\u{1b}["));
        assert!(!print(&findings, &sources, Colour::Plain).contains("\u{1b}["));
    }
}
