//! `leafwright build FILE -o plan.pdf`: the plan of a source.

use std::path::PathBuf;

use super::{BuildArguments, Exit, check, files, release, report, say};
use crate::document::Templates;
use crate::finding::Findings;
use crate::road;
use crate::source::Sources;
use crate::text::Fonts;

/// Runs the command.
pub(super) fn run(arguments: &BuildArguments) -> Exit {
    let mut sources = Sources::new();
    let outcome = match check::checked_with_choices(&arguments.source, &mut sources) {
        Ok(outcome) => outcome,
        Err(findings) => {
            report(&findings, &sources);
            return Exit::File;
        }
    };
    let mut findings = outcome.findings;
    if let Some(released) = &arguments.release_of {
        let path = &arguments.source.file;
        findings.append(release::check(path, released, &outcome.value, &mut sources));
    }
    let made = plan(arguments, &outcome.value, &mut findings);
    let Some(bytes) = made.filter(|_| !findings.has_errors()) else {
        report(&findings.sorted(), &sources);
        return Exit::Errors;
    };
    let output = output(arguments);
    let written = files::write(&output, &bytes);
    if let Err(finding) = written {
        findings.push(*finding);
        report(&findings.sorted(), &sources);
        return Exit::File;
    }
    report(&findings.sorted(), &sources);
    say(&format!("Wrote {}.\n", output.display()));
    Exit::Done
}

/// The bytes of the plan; none where the build is not sound.
fn plan(
    arguments: &BuildArguments,
    checked: &road::Checked,
    findings: &mut Findings,
) -> Option<Vec<u8>> {
    let sound = checked.sound.as_ref()?;
    let fonts = Fonts::shipped().ok()?;
    let paper = arguments.paper.map_or(sound.build().plan.paper, Into::into);
    let figures = road::draw(checked, sound, &fonts);
    let document = road::compose(checked, sound, figures, &Templates::shipped());
    findings.append(document.findings);
    let printed = road::print(&document.value, sound.build(), &fonts, paper);
    findings.append(printed.findings);
    Some(printed.value)
}

/// Where the plan goes: where it was asked for, or beside the source.
fn output(arguments: &BuildArguments) -> PathBuf {
    arguments
        .output
        .clone()
        .unwrap_or_else(|| arguments.source.file.with_extension("pdf"))
}
