//! `leafwright build FILE -o plan.pdf`: the plan of a source.

use std::path::PathBuf;

use super::look::Look;
use super::revisions::Revision;
use super::{BuildArguments, Exit, check, files, release, report, say};
use crate::finding::Findings;
use crate::road::{self, Checked};
use crate::source::Sources;

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
    let look = match Look::of(&arguments.look, &mut sources) {
        Ok(look) => look,
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
    let earlier = match &arguments.since {
        Some(written) => match earlier(arguments, written, &mut sources) {
            Ok(checked) => Some(checked),
            Err(found) => {
                findings.append(found);
                None
            }
        },
        None => None,
    };
    let made = plan(
        arguments,
        &look,
        &outcome.value,
        earlier.as_ref(),
        &mut findings,
    );
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

/// The plan as it was in a revision, in the same selection; what is wrong with it.
fn earlier(
    arguments: &BuildArguments,
    written: &str,
    sources: &mut Sources,
) -> Result<Checked, Findings> {
    let revision = Revision::of(&arguments.source.file, written).map_err(|finding| {
        let mut findings = Findings::new();
        findings.push(*finding);
        findings
    })?;
    let outcome = check::checked_as(&arguments.source, &revision, sources)?;
    if outcome.value.sound.is_some() {
        Ok(outcome.value)
    } else {
        Err(outcome.findings)
    }
}

/// The bytes of the plan; none where the build is not sound.
fn plan(
    arguments: &BuildArguments,
    look: &Look,
    checked: &Checked,
    earlier: Option<&Checked>,
    findings: &mut Findings,
) -> Option<Vec<u8>> {
    let sound = checked.sound.as_ref()?;
    let paper = arguments.paper.map_or(sound.build().plan.paper, Into::into);
    let templates = look.templates(&sound.build().plan, findings);
    let was = earlier.and_then(|earlier| Some((earlier, earlier.sound.as_ref()?)));
    let document = match was {
        Some(was) => road::compose_since([was, (checked, sound)], &look.fonts, &templates),
        None => {
            let figures = road::draw(checked, sound, &look.fonts, templates.words());
            road::compose(checked, sound, figures, &templates, None)
        }
    };
    findings.append(document.findings);
    let printed = road::print(&document.value, sound.build(), &look.fonts, paper);
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
