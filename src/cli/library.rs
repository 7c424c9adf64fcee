//! `leafwright library check FILE` and `library page FILE`: a library by itself, and what it holds as a
//! PDF.
//!
//! What it describes is placed in plans that are written in the language (`trial.rs`), so a library is
//! checked by the very rules of plans, and drawn by what draws them.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use super::look::Look;
use super::revisions::{Disk, Shelf};
use super::trial::{Trial, spelled};
use super::{Exit, LibraryArguments, LibraryTask, files, imports, report, say};
use crate::build::Paper;
use crate::document::{self, FormalShown, LibraryHead, WholeShown};
use crate::finding::{Finding, Findings, Outcome, Severity};
use crate::library;
use crate::model::Overrides;
use crate::model::PlanHead;
use crate::road::{self, Checked};
use crate::source::{FileId, Sources};
use crate::syntax;
use crate::syntax::tree::{LibrarySetting, Statement, TextPiece, Tree};

/// Codes of what is only wrong with a plan of a library: names that nothing needs, no revision note,
/// pieces that stand loosely beside each other or are held by nothing yet, sizes that another plan
/// gives.
const OF_THE_PLAN_ALONE: [&str; 8] = [
    "R001", "R002", "R006", "R007", "H016", "F002", "F006", "C011",
];

/// Runs the command.
pub(super) fn run(arguments: &LibraryArguments) -> Exit {
    let mut sources = Sources::new();
    let file = match read(&arguments.file, &mut sources) {
        Ok(file) => file,
        Err(finding) => {
            report(&one(*finding), &sources);
            return Exit::File;
        }
    };
    let tree = syntax::parse(&sources, file);
    if tree.findings.has_errors() {
        report(&tree.findings, &sources);
        return Exit::Errors;
    }
    let name = if is_std(&arguments.file) {
        "std".to_owned()
    } else {
        let name = arguments.file.file_name().and_then(|name| name.to_str());
        format!("\"{}\"", name.unwrap_or_default())
    };
    let trial = Trial::of(&tree.value, sources.text(file), &name);
    match arguments.task {
        LibraryTask::Check => checked(arguments, &trial, &mut sources),
        LibraryTask::Page => page(arguments, &tree.value, file, &trial, &mut sources),
    }
}

/// True for the name of the shipped library, where no file has it.
fn is_std(path: &Path) -> bool {
    path.as_os_str() == "std" && !path.exists()
}

fn read(path: &Path, sources: &mut Sources) -> Result<FileId, Box<Finding>> {
    if is_std(path) {
        return Ok(sources.add("std", &library::std_text()));
    }
    Disk.read(path, sources)
}

fn one(finding: Finding) -> Findings {
    let mut findings = Findings::new();
    findings.push(finding);
    findings
}

/// What comes of a plan that stands beside the library.
fn tried(
    arguments: &LibraryArguments,
    shown: &str,
    text: &str,
    sources: &mut Sources,
) -> Outcome<Checked> {
    let beside = arguments.file.parent().unwrap_or(Path::new("."));
    let path = beside.join(shown);
    let plan = sources.add(&path.display().to_string(), text);
    let unread = imports::load(&path, plan, &Disk, sources);
    if !unread.is_empty() {
        return Outcome {
            value: Checked::default(),
            findings: unread,
        };
    }
    let mut outcome = road::check(sources, plan, &Overrides::default());
    outcome.findings = outcome
        .findings
        .keep(|page| !OF_THE_PLAN_ALONE.contains(&page.code));
    outcome
}

fn checked(arguments: &LibraryArguments, trial: &Trial, sources: &mut Sources) -> Exit {
    let text = trial.of_everything();
    let findings = tried(arguments, "a plan of the whole library", &text, sources).findings;
    report(&findings, sources);
    let wrong = findings.iter().any(|it| it.page.severity != Severity::Note);
    for name in &trial.untried {
        say(&format!(
            "`{name}` was not tried: what it needs has neither a value of its own nor a range, and no \
             `shown(…)` gives one.\n"
        ));
    }
    if wrong {
        return Exit::Errors;
    }
    say(&format!(
        "{} names, {} sub-assemblies tried, nothing wrong.\n",
        trial.names.len(),
        trial.wholes.len()
    ));
    Exit::Done
}

/// Writes what a library holds as a PDF.
fn page(
    arguments: &LibraryArguments,
    tree: &Tree,
    file: FileId,
    trial: &Trial,
    sources: &mut Sources,
) -> Exit {
    let look = match Look::of(&arguments.look, sources) {
        Ok(look) => look,
        Err(findings) => {
            report(&findings, sources);
            return Exit::File;
        }
    };
    let mut findings = Findings::new();
    let goods = tried(arguments, "a plan of its goods", &trial.of_goods(), sources);
    findings.append(goods.findings);
    let templates = look.templates(&PlanHead::default(), &mut findings);
    let mut built = Vec::new();
    for (number, whole) in trial.wholes.iter().enumerate() {
        let shown = format!("a plan of {}", whole.name);
        let outcome = tried(arguments, &shown, &trial.of_one(number), sources);
        findings.append(outcome.findings);
        built.push(outcome.value);
    }
    let paper: Paper = arguments.paper.into();
    let mut figures = BTreeMap::new();
    let mut wholes = Vec::new();
    for (whole, checked) in trial.wholes.iter().zip(&built) {
        let Some(sound) = &checked.sound else {
            continue;
        };
        let drawn = road::draw(checked, &sound.on(paper), &look.fonts, templates.words());
        for (name, figure) in drawn {
            if matches!(name.as_str(), "overview" | "exploded") {
                figures.insert(format!("{name}-{}", whole.name), figure);
            }
        }
        let formals = whole.formals.iter();
        let text = sources.text(file);
        wholes.push(WholeShown {
            name: whole.name.clone(),
            build: sound.build(),
            formals: formals
                .map(|formal| FormalShown {
                    name: formal.name.value.clone(),
                    kind: formal.kind.value.clone(),
                    preset: formal.preset.as_ref().map(|it| spelled(text, it)),
                    range: formal
                        .range
                        .as_ref()
                        .map(|(low, high)| [spelled(text, low), spelled(text, high)]),
                    shown: whole.value_of(&formal.name.value),
                })
                .collect(),
        });
    }
    let Some(goods) = goods.value.sound.filter(|_| !findings.has_errors()) else {
        report(&findings.sorted(), sources);
        return Exit::Errors;
    };
    let head = head(tree, sources.text(file));
    let document = document::library(
        &head,
        &wholes,
        (goods.build(), &trial.names),
        figures,
        &templates,
    );
    findings.append(document.findings);
    let printed = road::print(&document.value, goods.on(paper).build(), &look.fonts);
    findings.append(printed.findings);
    if findings.has_errors() {
        report(&findings.sorted(), sources);
        return Exit::Errors;
    }
    let output = arguments.output.clone().unwrap_or_else(|| {
        let name = arguments.file.file_stem().unwrap_or_default();
        PathBuf::from(name).with_extension("pdf")
    });
    if let Err(finding) = files::write(&output, &printed.value) {
        findings.push(*finding);
        report(&findings.sorted(), sources);
        return Exit::File;
    }
    report(&findings.sorted(), sources);
    say(&format!("Wrote {}.\n", output.display()));
    Exit::Done
}

/// What a library says of itself.
fn head(tree: &Tree, text: &str) -> LibraryHead {
    let mut head = LibraryHead::default();
    for statement in &tree.statements {
        let Statement::Library(block) = statement else {
            continue;
        };
        head.title.clone_from(&block.title.value);
        for setting in &block.settings {
            match setting {
                LibrarySetting::Version(version) => head.version.clone_from(&version.value),
                LibrarySetting::Language(number) => head.language = spelled(text, number),
                LibrarySetting::Author(author) => head.author.clone_from(&author.value),
                LibrarySetting::About(about) => {
                    let pieces = about.pieces.iter().filter_map(|piece| match piece {
                        TextPiece::Plain(text) => Some(text.as_str()),
                        TextPiece::Slot(_) => None,
                    });
                    head.about = pieces.collect();
                }
            }
        }
    }
    head
}
