//! `leafwright check FILE`: what is wrong with a source.

use std::path::Path;

use super::revisions::{Disk, Shelf};
use super::{
    CheckArguments, Exit, Format, SourceArguments, figures, imports, overrides, report, say,
};
use crate::finding::json::json;
use crate::finding::{Findings, Outcome};
use crate::model::Overrides;
use crate::road::{self, Checked};
use crate::source::{FileId, Sources};
use crate::syntax;

/// Reads and checks a source in the selection that is asked for; findings where the file could not
/// even be read.
pub(super) fn checked(
    arguments: &SourceArguments,
    sources: &mut Sources,
) -> Result<Outcome<Checked>, Findings> {
    checked_by(arguments, &Disk, sources, road::check)
}

/// Reads and checks a source in all its selections.
pub(super) fn checked_with_choices(
    arguments: &SourceArguments,
    sources: &mut Sources,
) -> Result<Outcome<Checked>, Findings> {
    checked_as(arguments, &Disk, sources)
}

/// Reads and checks a source as it stands on a shelf, in all its selections.
pub(super) fn checked_as(
    arguments: &SourceArguments,
    shelf: &dyn Shelf,
    sources: &mut Sources,
) -> Result<Outcome<Checked>, Findings> {
    checked_by(arguments, shelf, sources, road::check_choices)
}

fn checked_by(
    arguments: &SourceArguments,
    shelf: &dyn Shelf,
    sources: &mut Sources,
    check: fn(&Sources, FileId, &Overrides) -> Outcome<Checked>,
) -> Result<Outcome<Checked>, Findings> {
    let file = shelf.read(&arguments.file, sources).map_err(|finding| {
        let mut findings = Findings::new();
        findings.push(*finding);
        findings
    })?;
    let unread = imports::load(&arguments.file, file, shelf, sources);
    let mut outcome = worked_out(arguments, file, sources, check);
    if !unread.is_empty() {
        // What could not be read is missing, and nothing is made without it.
        outcome.value = Checked::default();
        outcome.findings.append(unread);
        outcome.findings = outcome.findings.sorted();
    }
    Ok(outcome)
}

/// Reads and checks a source where it stands, with its own values and choices.
pub(super) fn checked_on(
    path: &Path,
    shelf: &dyn Shelf,
    sources: &mut Sources,
) -> Result<Outcome<Checked>, Findings> {
    let file = shelf.read(path, sources).map_err(|finding| {
        let mut findings = Findings::new();
        findings.push(*finding);
        findings
    })?;
    let unread = imports::load(path, file, shelf, sources);
    if !unread.is_empty() {
        return Ok(Outcome {
            value: Checked::default(),
            findings: unread,
        });
    }
    Ok(road::check(sources, file, &Overrides::default()))
}

fn worked_out(
    arguments: &SourceArguments,
    file: FileId,
    sources: &mut Sources,
    check: fn(&Sources, FileId, &Overrides) -> Outcome<Checked>,
) -> Outcome<Checked> {
    if arguments.set.is_empty() && arguments.choose.is_empty() {
        return check(sources, file, &Overrides::default());
    }
    let tree = syntax::parse(sources, file).value;
    let (values, findings) = overrides::overrides(arguments, &tree, sources);
    if !findings.is_empty() {
        return Outcome {
            value: Checked::default(),
            findings,
        };
    }
    check(sources, file, &values)
}

/// Runs the command.
pub(super) fn run(arguments: &CheckArguments) -> Exit {
    let mut sources = Sources::new();
    let (value, findings, exit) = match checked_with_choices(&arguments.source, &mut sources) {
        Ok(outcome) => {
            let exit = if outcome.findings.has_errors() {
                Exit::Errors
            } else {
                Exit::Done
            };
            (outcome.value, outcome.findings, exit)
        }
        Err(findings) => (Checked::default(), findings, Exit::File),
    };
    match arguments.format {
        Format::Text if findings.is_empty() => say("Nothing found.\n"),
        Format::Text => report(&findings, &sources),
        Format::Json => say(&(json(&findings, &sources) + "\n")),
    }
    if arguments.figures {
        say(&figures::text(&value));
    }
    exit
}
