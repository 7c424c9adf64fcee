//! `leafwright library FILE`: a library by itself, with a plan of all that it declares.
//!
//! The plan is written in the language, imports every name, and places each sub-assembly that can be
//! made of what the library and `std` have; so a library is checked by the very rules of plans.

use std::fmt::Write as _;
use std::path::Path;

use super::revisions::{Disk, Shelf};
use super::{Exit, LibraryArguments, imports, report, say};
use crate::finding::Findings;
use crate::finding::Severity;
use crate::model::Overrides;
use crate::road;
use crate::source::Sources;
use crate::syntax;
use crate::syntax::tree::{ExprKind, Formal, Statement, Subassembly, Tree};

/// Codes of what is only wrong with a plan of everything: names that nothing needs, no revision note,
/// pieces that stand loosely beside each other.
const OF_THE_PLAN_ALONE: [&str; 6] = ["R001", "R002", "R006", "R007", "H016", "F006"];

/// Runs the command.
pub(super) fn run(arguments: &LibraryArguments) -> Exit {
    let mut sources = Sources::new();
    let file = match Disk.read(&arguments.file, &mut sources) {
        Ok(file) => file,
        Err(finding) => {
            let mut findings = Findings::new();
            findings.push(*finding);
            report(&findings, &sources);
            return Exit::File;
        }
    };
    let tree = syntax::parse(&sources, file);
    if tree.findings.has_errors() {
        report(&tree.findings, &sources);
        return Exit::Errors;
    }
    let name = arguments.file.file_name().and_then(|name| name.to_str());
    let trial = plan_of(&tree.value, name.unwrap_or_default());
    let beside = arguments.file.parent().unwrap_or(Path::new("."));
    let shown = beside.join("a plan of the whole library");
    let plan = sources.add(&shown.display().to_string(), &trial.text);
    let mut findings = imports::load(&shown, plan, &Disk, &mut sources);
    if findings.is_empty() {
        let found = road::check(&sources, plan, &Overrides::default()).findings;
        findings = found.keep(|page| !OF_THE_PLAN_ALONE.contains(&page.code));
    }
    report(&findings, &sources);
    let wrong = findings.iter().any(|it| it.page.severity != Severity::Note);
    for name in &trial.untried {
        say(&format!(
            "`{name}` was not tried: what it needs has neither a value of its own nor a range.\n"
        ));
    }
    if wrong {
        return Exit::Errors;
    }
    say(&format!(
        "{} names, {} sub-assemblies tried, nothing wrong.\n",
        trial.names, trial.tried
    ));
    Exit::Done
}

/// A plan of a library.
struct Trial {
    text: String,
    names: usize,
    tried: usize,
    untried: Vec<String>,
}

fn plan_of(tree: &Tree, file: &str) -> Trial {
    let mut trial = Trial {
        text: "plan \"Library\" { author \"Library\"; revision \"A\" on 2026-01-01 \"Trial\" }\n"
            .to_owned(),
        names: 0,
        tried: 0,
        untried: Vec::new(),
    };
    let mut names = Vec::new();
    let mut thing: [Option<&str>; 2] = [None; 2];
    let mut wholes: Vec<&Subassembly> = Vec::new();
    for statement in &tree.statements {
        let [material, hardware] = &mut thing;
        match statement {
            Statement::Material(it) => {
                names.push(it.name.value.as_str());
                material.get_or_insert(&it.name.value);
            }
            Statement::Hardware(it) => {
                names.push(it.name.value.as_str());
                hardware.get_or_insert(&it.name.value);
            }
            Statement::Part(it) => names.push(it.name.value.as_str()),
            Statement::Let(it) => names.push(it.name.value.as_str()),
            Statement::Supply(it) => names.push(it.name.value.as_str()),
            Statement::Subassembly(it) => {
                names.push(it.name.value.as_str());
                wholes.push(it);
            }
            Statement::Plan(_)
            | Statement::Param(_)
            | Statement::Place(_)
            | Statement::Join(_)
            | Statement::Step(_)
            | Statement::Require(_)
            | Statement::Load(_)
            | Statement::Clearance(_)
            | Statement::Hold(_)
            | Statement::Continuous(_)
            | Statement::Choose(_)
            | Statement::Import(_)
            | Statement::Library(_) => {}
        }
    }
    trial.names = names.len();
    if names.is_empty() {
        return trial;
    }
    // Writing to a string does not fail.
    let _ = writeln!(trial.text, "import {} from \"{file}\"", names.join(", "));
    let [material, hardware] = thing;
    if material.is_none() {
        trial
            .text
            .push_str("import birch_ply_18 as material_of_the_trial from std\n");
    }
    let mut placed: Vec<String> = Vec::new();
    for whole in wholes {
        let given: Option<Vec<String>> = whole
            .formals
            .iter()
            .filter(|formal| formal.preset.is_none())
            .map(|formal| {
                value(
                    formal,
                    material.unwrap_or("material_of_the_trial"),
                    hardware,
                )
            })
            .collect();
        let Some(given) = given else {
            trial.untried.push(whole.name.value.clone());
            continue;
        };
        let at = placed
            .last()
            .map_or("0 mm".to_owned(), |last| format!("{last}.right + 500 mm"));
        let name = format!("trial_of_{}", whole.name.value);
        let _ = writeln!(
            trial.text,
            "place {name} = {}({}) {{ left at {at}; front at 0 mm; bottom at 0 mm }}",
            whole.name.value,
            given.join(", ")
        );
        placed.push(name);
    }
    trial.tried = placed.len();
    if !placed.is_empty() {
        let _ = writeln!(
            trial.text,
            "step \"Put them beside each other\" {{ add {}; say \"Look at them.\" }}",
            placed.join(", ")
        );
    }
    trial
}

/// What a parameter without a value of its own is given: of a range, the lower end.
fn value(formal: &Formal, material: &str, hardware: Option<&str>) -> Option<String> {
    let name = &formal.name.value;
    match (formal.kind.value.as_str(), &formal.range) {
        ("material", _) => Some(format!("{name} = {material}")),
        ("hardware", _) => Some(format!("{name} = {}", hardware?)),
        (_, Some((low, _))) => {
            let ExprKind::Quantity(quantity) = &low.kind else {
                return None;
            };
            let nm = quantity.length()?.nm();
            Some(format!(
                "{name} = {}.{:06} mm",
                nm / 1_000_000,
                nm % 1_000_000
            ))
        }
        _ => None,
    }
}
