//! Runs the templates. The only place that knows the template engine.

use std::collections::BTreeMap;
use std::error::Error as _;

use minijinja::value::{Serde, Value};
use minijinja::{AutoEscape, Environment, Error, ErrorKind, UndefinedBehavior, escape_formatter};
use serde::Serialize;

use super::context::{Facts, PlanContext};
use super::findings::{self, Fault};
use super::locate;
use super::markup::{self, Markup};
use super::speech;
use super::templates::{ROOT, Templates};
use super::tree::Document;
use crate::display::Figure;
use crate::finding::{Findings, Outcome};
use crate::source::Span;

/// Budget of work of a plan without content: instructions, and about 64 bytes of text each.
const LEAST_FUEL: u64 = 2_000_000;
/// More for each part, piece, step, item and cut: a row of a table takes a few hundred.
const FUEL_EACH: u64 = 10_000;

/// The budget of work of a plan.
pub(super) fn fuel(facts: &Facts) -> u64 {
    let build = facts.build;
    let cuts: usize = facts
        .stock
        .plans()
        .flat_map(|plan| &plan.layouts)
        .map(|layout| layout.cuts.len())
        .sum();
    let things = build.parts.len()
        + build.placed.len()
        + build.steps.len()
        + build.hardware.len()
        + build.plan.revisions.len()
        + cuts;
    LEAST_FUEL.saturating_add(FUEL_EACH.saturating_mul(things as u64))
}

/// Whether tags carry marks that tell which line wrote them.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Marks {
    None,
    AtTags,
}

/// The document's blocks out of the templates; or why there are none.
pub(super) fn blocks(
    templates: &Templates,
    facts: &Facts,
    context: &PlanContext,
) -> Result<Markup, Fault> {
    let value = Value::from(Serde(context));
    read(templates, ROOT, &value, fuel(facts), facts.figures)
}

/// The blocks of a document beside plans, from its own root template; `things` are told in it.
pub(super) fn alone(
    templates: &Templates,
    root: &str,
    context: &impl Serialize,
    things: usize,
    figures: &BTreeMap<String, Figure>,
) -> Result<Markup, Fault> {
    let value = Value::from(Serde(context));
    let fuel = LEAST_FUEL.saturating_add(FUEL_EACH.saturating_mul(things as u64));
    read(templates, root, &value, fuel, figures)
}

/// A document with what its templates gave and with its figures; faults are told at `span`.
pub(super) fn filled(
    mut document: Document,
    read: Result<Markup, Fault>,
    figures: BTreeMap<String, Figure>,
    span: Span,
) -> Outcome<Document> {
    let mut found = Findings::new();
    match read {
        Ok(read) => {
            document.language = read.language;
            document.running = read.running;
            document.alternatives = read.alternatives;
            document.blocks = read.blocks;
            for fault in read.faults {
                found.push(fault.finding(span));
            }
        }
        Err(fault) => found.push(fault.finding(span)),
    }
    document.figures = figures;
    Outcome {
        value: document,
        findings: found,
    }
}

fn read(
    templates: &Templates,
    root: &str,
    value: &Value,
    fuel: u64,
    figures: &BTreeMap<String, Figure>,
) -> Result<Markup, Fault> {
    let text = text(templates, root, value, fuel, Marks::None)?;
    let read = markup::read(&text, figures);
    if read.as_ref().is_ok_and(|markup| markup.faults.is_empty()) {
        return read;
    }
    // Something is wrong: once more, with marks that lead back to the template's line. Marks
    // are text and take fuel.
    let text = self::text(
        templates,
        root,
        value,
        fuel.saturating_mul(2),
        Marks::AtTags,
    )?;
    match markup::read(&text, figures) {
        Ok(mut markup) => {
            let faults = markup.faults.into_iter();
            markup.faults = faults.map(|fault| locate::located(fault, &text)).collect();
            Ok(markup)
        }
        Err(fault) => Err(locate::located(fault, &text)),
    }
}

fn text(
    templates: &Templates,
    root: &str,
    context: &Value,
    fuel: u64,
    marks: Marks,
) -> Result<String, Fault> {
    let mut engine = Environment::new();
    engine.set_auto_escape_callback(|_| AutoEscape::Html);
    engine.set_undefined_behavior(UndefinedBehavior::Strict);
    engine.set_recursion_limit(64);
    engine.set_fuel(Some(fuel));
    engine.set_formatter(|out, state, value| match printable(value) {
        Some(cleaned) => escape_formatter(out, state, &cleaned),
        None => escape_formatter(out, state, value),
    });
    speech::teach(&mut engine, templates.words());
    for (name, text) in templates.iter() {
        let text = match marks {
            Marks::None => text.to_owned(),
            Marks::AtTags => locate::marked(name, text),
        };
        engine
            .add_template_owned(name.to_owned(), text)
            .map_err(|error| fault(&error))?;
    }
    let root = engine.get_template(root).map_err(|error| fault(&error))?;
    root.render(context).map_err(|error| fault(&error))
}

/// A text without the control characters that no XML text may hold; none where it has none.
fn printable(value: &Value) -> Option<Value> {
    let text = value.as_str()?;
    let forbidden = |c: char| {
        (c.is_control() && !matches!(c, '\t' | '\n' | '\r')) || matches!(c, '\u{fffe}' | '\u{ffff}')
    };
    if !text.contains(forbidden) {
        return None;
    }
    let cleaned = text.replace(forbidden, "\u{fffd}");
    Some(if value.is_safe() {
        Value::from_safe_string(cleaned)
    } else {
        Value::from(cleaned)
    })
}

/// What the engine found, in the words of a finding: the innermost error knows the place.
fn fault(error: &Error) -> Fault {
    let mut innermost = error;
    let mut next = error.source();
    while let Some(source) = next {
        if let Some(inner) = source.downcast_ref::<Error>()
            && inner.name().is_some()
        {
            innermost = inner;
        }
        next = source.source();
    }
    let page = if innermost.kind() == ErrorKind::OutOfFuel {
        &findings::TEMPLATE_RUNS_ON
    } else {
        &findings::TEMPLATE_FAULT
    };
    let said = innermost
        .detail()
        .map_or_else(|| innermost.kind().to_string(), str::to_owned);
    let mut fault = Fault::new(page, None, said);
    fault.place = innermost
        .name()
        .map(|name| (name.to_owned(), innermost.line().unwrap_or(1)));
    fault
}
