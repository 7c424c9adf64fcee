//! `leafwright fmt FILE…`: sources in their canonical form.

use std::io::Read;
use std::path::Path;

use super::findings::{FILE_NOT_READ, NOT_CANONICAL};
use super::{Exit, FormatArguments, files, report, say};
use crate::finding::{Finding, Findings};
use crate::format;
use crate::source::{FileId, LARGEST_SOURCE, Sources, Span};

/// Runs the command.
pub(super) fn run(arguments: &FormatArguments) -> Exit {
    let mut exit = Exit::Done;
    let mut sources = Sources::new();
    let mut findings = Findings::new();
    for path in &arguments.files {
        let is_input = path.as_os_str() == "-";
        let read = if is_input {
            standard_input(&mut sources)
        } else {
            files::read(path, &mut sources)
        };
        let file = match read {
            Ok(file) => file,
            Err(finding) => {
                findings.push(*finding);
                exit = Exit::File;
                continue;
            }
        };
        match format::format(&sources, file) {
            Err(found) => {
                findings.append(found);
                exit = worse(exit, Exit::Errors);
            }
            Ok(text) if arguments.check => {
                if text != sources.text(file) {
                    findings.push(not_canonical(&sources, file, &text));
                    exit = worse(exit, Exit::Errors);
                }
            }
            Ok(text) if is_input => say(&text),
            Ok(text) => {
                if let Err(finding) = rewrite(path, &text, sources.text(file)) {
                    findings.push(*finding);
                    exit = Exit::File;
                }
            }
        }
    }
    report(&findings, &sources);
    exit
}

fn worse(one: Exit, other: Exit) -> Exit {
    if one == Exit::File { one } else { other }
}

fn rewrite(path: &Path, text: &str, before: &str) -> Result<(), Box<Finding>> {
    if text == before {
        return Ok(());
    }
    files::write(path, text.as_bytes())
}

fn standard_input(sources: &mut Sources) -> Result<FileId, Box<Finding>> {
    let mut text = String::new();
    let limit = LARGEST_SOURCE as u64 + 1;
    let read = std::io::stdin().take(limit).read_to_string(&mut text);
    let file = sources.add("standard input", &text);
    read.map(|_| file).map_err(|fault| {
        let message = format!("standard input cannot be read: {fault}");
        Box::new(Finding::new(&FILE_NOT_READ, Span::new(file, 0, 0), message))
    })
}

/// The finding of the first line that is written otherwise.
fn not_canonical(sources: &Sources, file: FileId, canonical: &str) -> Finding {
    let text = sources.text(file);
    let same = text
        .lines()
        .zip(canonical.lines())
        .take_while(|(own, other)| own == other);
    let start: usize = text
        .split_inclusive('\n')
        .take(same.count())
        .map(str::len)
        .sum();
    let end = text.get(start..).and_then(|rest| rest.find('\n'));
    let span = Span::new(file, start, end.map_or(text.len(), |length| start + length));
    Finding::new(
        &NOT_CANONICAL,
        span,
        "this is not in canonical form from here on",
    )
    .remedy("`leafwright fmt` writes it so")
}
