//! `leafwright build FILE -o plan.pdf --html FOLDER`: the plan of a source, on paper and for browsers.

use std::path::PathBuf;

use super::findings::FILE_NOT_WRITTEN;
use super::look::{Look, checked_with_look};
use super::paper::PapersArgument;
use super::revisions::Revision;
use super::{BuildArguments, Exit, check, files, release, report, say};
use crate::document::tree::Document;
use crate::finding::{Finding, Findings};
use crate::road::{self, Checked};
use crate::rules::SoundBuild;
use crate::source::{Sources, Span};

/// Runs the command.
pub(super) fn run(arguments: &BuildArguments) -> Exit {
    let mut sources = Sources::new();
    let read = checked_with_look(
        check::checked_with_choices,
        &arguments.source,
        &arguments.look,
        &mut sources,
    );
    let (outcome, look) = match read {
        Ok(read) => read,
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
    let made = made(
        arguments,
        &look,
        &outcome.value,
        earlier.as_ref(),
        &mut findings,
    );
    if made.is_empty() || findings.has_errors() {
        report(&findings.sorted(), &sources);
        return Exit::Errors;
    }
    if let Err(finding) = put(arguments, &made) {
        findings.push(*finding);
        report(&findings.sorted(), &sources);
        return Exit::File;
    }
    report(&findings.sorted(), &sources);
    for (path, _) in &made {
        say(&format!("Wrote {}.\n", path.display()));
    }
    Exit::Done
}

/// Writes all files of a plan, or none.
fn put(arguments: &BuildArguments, made: &[(PathBuf, Vec<u8>)]) -> Result<(), Box<Finding>> {
    if let Some(folder) = &arguments.html {
        files::folder(folder).map_err(|fault| {
            let message = format!("`{}` cannot be made: {fault}", folder.display());
            Box::new(
                Finding::new(&FILE_NOT_WRITTEN, Span::default(), message)
                    .remedy("name a folder that may be written to, with `--html`"),
            )
        })?;
    }
    files::write_all(made)
}

/// The plan on each paper that is asked for and its page for browsers, with the files they go to; none where
/// the build is not sound.
fn made(
    arguments: &BuildArguments,
    look: &Look,
    checked: &Checked,
    earlier: Option<&Checked>,
    findings: &mut Findings,
) -> Vec<(PathBuf, Vec<u8>)> {
    let Some(sound) = &checked.sound else {
        return Vec::new();
    };
    let own = sound.build().plan.paper;
    let printed = output(arguments);
    let mut page = page(arguments);
    let Some(first) = printed.as_ref().or(page.as_ref()) else {
        return Vec::new();
    };
    let mut made = Vec::new();
    // Drawings are drawn for a paper: those of the page for the first one.
    for (paper, path) in PapersArgument::outputs(arguments.paper, own, first) {
        let sound = sound.on(paper);
        let document = document(look, checked, &sound, earlier, findings);
        if printed.is_some() {
            let plan = road::print(&document, sound.build(), &look.fonts);
            findings.append(plan.findings);
            made.push((path, plan.value));
        }
        if let Some(path) = page.take() {
            let published = road::publish(&document, sound.build());
            made.push((path, published.into_bytes()));
        }
        if printed.is_none() {
            break;
        }
    }
    made
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

/// The document of a plan on its paper.
fn document(
    look: &Look,
    checked: &Checked,
    sound: &SoundBuild,
    earlier: Option<&Checked>,
    findings: &mut Findings,
) -> Document {
    let paper = sound.build().plan.paper;
    let templates = look.templates(&sound.build().plan, findings);
    let was = earlier.and_then(|earlier| Some((earlier, earlier.sound.as_ref()?.on(paper))));
    let document = match &was {
        Some((earlier, was)) => {
            let both = [(*earlier, was), (checked, sound)];
            road::compose_since(both, &look.fonts, &templates)
        }
        None => {
            let figures = road::draw(checked, sound, &look.fonts, templates.words());
            road::compose(checked, sound, figures, &templates, None)
        }
    };
    findings.append(document.findings);
    document.value
}

/// Where the PDF goes: where it was asked for, or beside the source where nothing else is asked for.
fn output(arguments: &BuildArguments) -> Option<PathBuf> {
    match (&arguments.output, &arguments.html) {
        (None, Some(_)) => None,
        (None, None) => Some(arguments.source.file.with_extension("pdf")),
        (Some(path), _) => Some(path.clone()),
    }
}

/// Where the page goes: by the source's name, so that pages of several plans stand in one folder.
fn page(arguments: &BuildArguments) -> Option<PathBuf> {
    let folder = arguments.html.as_ref()?;
    let name = arguments.source.file.with_extension("html");
    Some(folder.join(name.file_name()?))
}
