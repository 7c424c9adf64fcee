//! `leafwright draw FILE --step 3 -o step.svg`: one drawing of a plan.

use super::findings::NO_DRAWING;
use super::look::checked_with_look;
use super::{DrawArguments, Exit, check, files, report, say};
use crate::build::Part;
use crate::drawing;
use crate::finding::{Finding, Findings};
use crate::road;
use crate::source::{Sources, Span};

/// The name of a setting-out drawing of a part, counted from 1.
fn setting_out(part: &Part, number: usize) -> String {
    let names = drawing::setting_out_names(part).into_iter().flatten();
    let own = names.skip(number.saturating_sub(1)).take(1);
    own.last()
        .unwrap_or_else(|| format!("setting-out-{}-{number}", part.label))
}

/// Runs the command.
pub(super) fn run(arguments: &DrawArguments) -> Exit {
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
    let mut findings = Findings::new();
    let templates = look.templates(&sound.build().plan, &mut findings);
    if findings.has_errors() {
        report(&findings, &sources);
        return Exit::Errors;
    }
    let figures = road::draw(&outcome.value, sound, &look.fonts, templates.words());
    let name = match (arguments.step, &arguments.part, &arguments.figure) {
        (Some(step), _, _) => format!("step-{step}"),
        (None, Some(part), _) => {
            let mut parts = sound.build().parts.iter();
            let named = parts.find(|own| own.name == *part || own.label == *part);
            match arguments.setting_out {
                Some(number) => named.map_or_else(
                    || format!("setting-out-{part}"),
                    |own| setting_out(own, number),
                ),
                None => format!("part-{}", named.map_or(part, |own| &own.label)),
            }
        }
        (None, None, Some(name)) => name.clone(),
        (None, None, None) => {
            let names: Vec<&str> = figures.keys().map(String::as_str).collect();
            say(&(names.join("\n") + "\n"));
            return Exit::Done;
        }
    };
    let Some(figure) = figures.get(&name) else {
        let mut findings = Findings::new();
        let message = format!("there is no drawing `{name}`");
        let mut finding = Finding::new(&NO_DRAWING, Span::default(), message)
            .remedy("`leafwright draw FILE` lists the names");
        if arguments.setting_out.is_some() {
            finding = finding.remedy("grids of three by three holes and more have one");
        } else if arguments.part.is_some() {
            finding = finding.remedy("a part of which nothing is cut has none: its sizes say all");
        }
        findings.push(finding);
        report(&findings, &sources);
        return Exit::Errors;
    };
    let svg = drawing::svg(figure);
    let Some(output) = &arguments.output else {
        say(&svg);
        return Exit::Done;
    };
    match files::write(output, svg.as_bytes()) {
        Ok(()) => Exit::Done,
        Err(finding) => {
            let mut findings = Findings::new();
            findings.push(*finding);
            report(&findings, &sources);
            Exit::File
        }
    }
}
