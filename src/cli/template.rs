//! `leafwright template FILE --part cheek -o cheek.pdf`: full-size templates alone, on the sheets of
//! one's own printer or on one large sheet.

use std::collections::BTreeMap;
use std::path::PathBuf;

use super::findings::NO_TEMPLATE;
use super::look::checked_with_look;
use super::{Exit, TemplateArguments, check, files, report, say};
use crate::build::{Build, Part, Template};
use crate::display::Figure;
use crate::document;
use crate::drawing;
use crate::finding::{Finding, Findings};
use crate::full_size::{self, Laid};
use crate::geometry::Side;
use crate::model::PartId;
use crate::road;
use crate::rules::making::template_too_large;
use crate::solid::Solids;
use crate::source::{Sources, Span};

/// Runs the command.
pub(super) fn run(arguments: &TemplateArguments) -> Exit {
    let mut sources = Sources::new();
    let read = checked_with_look(
        check::checked,
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
    let Some(sound) = &outcome.value.sound else {
        report(&outcome.findings, &sources);
        return Exit::Errors;
    };
    let paper = arguments.paper.map(Into::into);
    let sound = paper.map_or_else(|| sound.clone(), |paper| sound.on(paper));
    let build = sound.build();
    let mut findings = Findings::new();
    let laid = laid(arguments, build, &outcome.value.solids, &mut findings);
    let templates = look.templates(&build.plan, &mut findings);
    if findings.has_errors() {
        report(&findings.sorted(), &sources);
        return Exit::Errors;
    }
    let solids = &outcome.value.solids;
    let words = templates.words();
    let figures: BTreeMap<String, Figure> =
        drawing::template_sheets(&sound, solids, &laid, &look.fonts, words);
    let document = document::template_sheets(build, &laid, figures, &templates);
    findings.append(document.findings);
    let printed = road::print(&document.value, build, &look.fonts);
    findings.append(printed.findings);
    if findings.has_errors() {
        report(&findings.sorted(), &sources);
        return Exit::Errors;
    }
    let output = output(arguments);
    if let Err(finding) = files::write(&output, &printed.value) {
        findings.push(*finding);
        report(&findings.sorted(), &sources);
        return Exit::File;
    }
    report(&findings.sorted(), &sources);
    let sheets = laid.iter().filter_map(|laid| laid.sheets.as_ref());
    let count: usize = sheets.map(|sheets| sheets.printed().count()).sum();
    let noun = if count == 1 { "sheet" } else { "sheets" };
    say(&format!("Wrote {}, {count} {noun}.\n", output.display()));
    Exit::Done
}

/// The templates that are asked for, on their sheets.
fn laid(
    arguments: &TemplateArguments,
    build: &Build,
    solids: &Solids,
    findings: &mut Findings,
) -> Vec<Laid> {
    let mut asked = match &arguments.part {
        Some(part) => of_part(arguments, part, build, findings),
        None => build.templates.clone(),
    };
    if asked.is_empty() && arguments.part.is_none() {
        let message = "the plan asks for no template";
        findings.push(
            Finding::new(&NO_TEMPLATE, build.plan.span, message)
                .remedy("name a part: `--part cheek`, or write `template cheek` into the plan"),
        );
    }
    for template in &mut asked {
        if let Some(sheet) = arguments.sheet {
            template.sheet = Some(sheet.into());
        } else if arguments.paper.is_some() {
            template.sheet = None;
        }
    }
    let laid: Vec<Laid> = asked
        .iter()
        .filter_map(|template| full_size::lay(build, solids, template))
        .collect();
    for one in laid.iter().filter(|laid| laid.sheets.is_none()) {
        findings.push(template_too_large::finding(build, one));
    }
    laid
}

/// The templates of a part that is named, asked for in the plan or not.
fn of_part(
    arguments: &TemplateArguments,
    name: &str,
    build: &Build,
    findings: &mut Findings,
) -> Vec<Template> {
    let is_named = |part: &Part| part.name == *name || part.label == *name;
    let named: Vec<(usize, &Part)> = build
        .parts
        .iter()
        .enumerate()
        .filter(|(_, part)| is_named(part))
        .collect();
    if named.is_empty() {
        let known: Vec<String> = build
            .parts
            .iter()
            .map(|part| format!("`{}` ({})", part.name, part.label))
            .collect();
        let message = format!("no part of the build is called `{name}`");
        findings.push(
            Finding::new(&NO_TEMPLATE, Span::default(), message)
                .remedy(format!("there are {}", known.join(", "))),
        );
        return Vec::new();
    }
    let side = match &arguments.side {
        None => None,
        Some(word) => {
            let side = Side::from_word(word);
            if side.is_none() {
                let sides = Side::ALL.map(Side::word).join(", ");
                let message = format!("`{word}` is not a side of a part");
                findings.push(
                    Finding::new(&NO_TEMPLATE, Span::default(), message)
                        .remedy(format!("there are {sides}")),
                );
                return Vec::new();
            }
            side
        }
    };
    let templates = named.into_iter().map(|(number, part)| Template {
        part: PartId(number),
        side: side.unwrap_or(part.main_side()),
        sheet: None,
        span: part.span,
    });
    templates.collect()
}

/// Where the sheets go: where they were asked for, or beside the source.
fn output(arguments: &TemplateArguments) -> PathBuf {
    arguments.output.clone().unwrap_or_else(|| {
        let mut name = arguments
            .source
            .file
            .file_stem()
            .unwrap_or_default()
            .to_owned();
        name.push("-template.pdf");
        arguments.source.file.with_file_name(name)
    })
}
