//! `leafwright draw FILE --step 3 -o step.svg`: one drawing of a plan.

use super::findings::NO_DRAWING;
use super::{DrawArguments, Exit, check, files, report, say};
use crate::drawing;
use crate::finding::{Finding, Findings};
use crate::road;
use crate::source::{Sources, Span};
use crate::text::Fonts;

/// Runs the command.
pub(super) fn run(arguments: &DrawArguments) -> Exit {
    let mut sources = Sources::new();
    let outcome = match check::checked(&arguments.source, &mut sources) {
        Ok(outcome) => outcome,
        Err(findings) => {
            report(&findings, &sources);
            return Exit::File;
        }
    };
    let fonts = Fonts::shipped().ok();
    let (Some(sound), Some(fonts)) = (&outcome.value.sound, fonts) else {
        report(&outcome.findings, &sources);
        return Exit::Errors;
    };
    let figures = road::draw(&outcome.value, sound, &fonts);
    let name = match (arguments.step, &arguments.part, &arguments.figure) {
        (Some(step), _, _) => format!("step-{step}"),
        (None, Some(part), _) => {
            let parts = &sound.build().parts;
            let named = parts.iter().find(|own| own.name == *part);
            format!("part-{}", named.map_or(part, |own| &own.label))
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
        if arguments.part.is_some() {
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
