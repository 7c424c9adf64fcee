//! `leafwright export cut-list FILE --format csv`: a table for other programs.

use super::{Exit, ExportArguments, check, files, report, say};
use crate::export::export;
use crate::source::Sources;

/// Runs the command.
pub(super) fn run(arguments: &ExportArguments) -> Exit {
    let mut sources = Sources::new();
    let outcome = match check::checked(&arguments.source, &mut sources) {
        Ok(outcome) => outcome,
        Err(findings) => {
            report(&findings, &sources);
            return Exit::File;
        }
    };
    let mut findings = outcome.findings;
    let Some(sound) = &outcome.value.sound else {
        report(&findings, &sources);
        return Exit::Errors;
    };
    let (table, form) = (arguments.table.into(), arguments.format.into());
    let text = export(sound.build(), &outcome.value.stock, table, form);
    let written = match &arguments.output {
        Some(path) => files::write(path, text.as_bytes()),
        None => {
            say(&text);
            Ok(())
        }
    };
    let exit = match written {
        Ok(()) => Exit::Done,
        Err(finding) => {
            findings.push(*finding);
            Exit::File
        }
    };
    report(&findings.sorted(), &sources);
    exit
}
