//! `leafwright diff OLD NEW`: what differs between two plans, or between two revisions of one.

use std::path::{Path, PathBuf};

use super::look::Look;
use super::revisions::{Disk, Revision, Shelf};
use super::{DiffArguments, DiffForm, Exit, check, files, report, say};
use crate::build::Build;
use crate::diff::{self, Difference};
use crate::document;
use crate::finding::Findings;
use crate::road::{self, Checked};
use crate::source::Sources;

/// Where one of the two plans is.
struct Side {
    path: PathBuf,
    shelf: Box<dyn Shelf>,
}

/// Runs the command.
pub(super) fn run(arguments: &DiffArguments) -> Exit {
    let mut sources = Sources::new();
    if arguments.textconv {
        return lines(arguments, &mut sources);
    }
    let sides = match sides(arguments) {
        Ok(sides) => sides,
        Err(findings) => {
            report(&findings, &sources);
            return Exit::File;
        }
    };
    let checked = sides.map(|side| sound(&side.path, side.shelf.as_ref(), &mut sources));
    let (before, after) = match checked {
        [Ok(before), Ok(after)] => (before, after),
        [before, after] => {
            let mut exit = Exit::Errors;
            for (findings, other) in [before, after].into_iter().filter_map(Result::err) {
                report(&findings, &sources);
                exit = if other == Exit::File { other } else { exit };
            }
            return exit;
        }
    };
    let (Some(before), Some(after)) = (before.selected(), after.selected()) else {
        return Exit::Errors;
    };
    let difference = diff::compare(&before, &after);
    if let Some(path) = &arguments.errata {
        let look = match Look::of(&arguments.look, &mut sources) {
            Ok(look) => look,
            Err(findings) => {
                report(&findings, &sources);
                return Exit::File;
            }
        };
        return errata(path, &difference, after.build, &look, &sources);
    }
    say(&match arguments.format {
        DiffForm::Text => diff::print(&difference),
        DiffForm::Json => diff::json(&difference),
    });
    Exit::Done
}

/// The sheet for those who own the earlier plan.
fn errata(
    path: &Path,
    difference: &Difference,
    later: &Build,
    look: &Look,
    sources: &Sources,
) -> Exit {
    let mut findings = Findings::new();
    let templates = look.templates(&later.plan, &mut findings);
    let document = document::errata(difference, later, &templates);
    findings.append(document.findings);
    let printed = road::print(&document.value, later, &look.fonts);
    findings.append(printed.findings);
    if findings.has_errors() {
        report(&findings.sorted(), sources);
        return Exit::Errors;
    }
    if let Err(finding) = files::write(path, &printed.value) {
        findings.push(*finding);
        report(&findings.sorted(), sources);
        return Exit::File;
    }
    report(&findings.sorted(), sources);
    say(&format!("Wrote {}.\n", path.display()));
    Exit::Done
}

/// The build of one file in lines, for a comparison line by line.
fn lines(arguments: &DiffArguments, sources: &mut Sources) -> Exit {
    let Some(path) = arguments.files.first() else {
        return Exit::File;
    };
    match sound(path, &Disk, sources) {
        Ok(checked) => {
            let sound = checked.sound.as_ref();
            say(&sound.map_or_else(String::new, |sound| diff::told(sound.build())));
            Exit::Done
        }
        Err((findings, exit)) => {
            report(&findings, sources);
            exit
        }
    }
}

/// What is compared with what.
fn sides(arguments: &DiffArguments) -> Result<[Side; 2], Findings> {
    let on_disk = |path: &Path| Side {
        path: path.to_owned(),
        shelf: Box::new(Disk),
    };
    let files = arguments.files.as_slice();
    if arguments.driver {
        // As git calls it: path, old file, its hash and mode, new file, its hash and mode.
        let (Some(old), Some(new)) = (files.get(1), files.get(4)) else {
            return Err(told("git hands over seven names to a driver", arguments));
        };
        return Ok([on_disk(old), on_disk(new)]);
    }
    match (&arguments.rev, files) {
        (None, [old, new]) => Ok([on_disk(old), on_disk(new)]),
        (Some(rev), [file]) => {
            let at = |rev: &str| {
                let revision = Revision::of(file, rev).map_err(|finding| {
                    let mut findings = Findings::new();
                    findings.push(*finding);
                    findings
                })?;
                Ok::<Side, Findings>(Side {
                    path: file.clone(),
                    shelf: Box::new(revision),
                })
            };
            match rev.split_once("..") {
                Some((old, new)) => Ok([at(old)?, at(new)?]),
                None => Ok([at(rev)?, on_disk(file)]),
            }
        }
        (None, _) => Err(told("two files are compared", arguments)),
        (Some(_), _) => Err(told("the revisions of one file are compared", arguments)),
    }
}

fn told(message: &str, arguments: &DiffArguments) -> Findings {
    let message = format!("{message}, and {} are named", arguments.files.len());
    let mut findings = Findings::new();
    findings.push(
        crate::finding::Finding::new(
            &super::findings::NO_REVISION,
            crate::source::Span::default(),
            message,
        )
        .remedy("write `leafwright diff old.wright new.wright`, or `leafwright diff --rev v1..v2 plan.wright`"),
    );
    findings
}

/// A plan without errors; what was found in another one, and how the run ends with it.
fn sound(
    path: &Path,
    shelf: &dyn Shelf,
    sources: &mut Sources,
) -> Result<Checked, (Findings, Exit)> {
    let outcome = check::checked_on(path, shelf, sources).map_err(|found| (found, Exit::File))?;
    if outcome.value.sound.is_some() {
        Ok(outcome.value)
    } else {
        Err((outcome.findings, Exit::Errors))
    }
}
