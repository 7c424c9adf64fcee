//! The command line: the only place that reads arguments, reads files and writes them.
//!
//! One file a command. A command returns an [`Exit`]; findings go to standard error (or, as JSON,
//! to standard output), what was asked for goes where it was asked for.

mod build;
mod check;
mod diff;
mod draw;
mod explain;
mod export;
mod figures;
mod files;
pub mod findings;
mod format;
mod imports;
mod library;
mod look;
mod new;
mod overrides;
mod paper;
mod project;
mod release;
mod revisions;
mod template;
mod trial;

use std::io::Write;
use std::path::PathBuf;
use std::process::ExitCode;

use clap::{Args, Parser, Subcommand, ValueEnum};

use crate::export::{Form, Table};
use crate::finding::Findings;
use crate::finding::print::{Colour, print};
use crate::source::Sources;

use paper::{PaperArgument, PapersArgument, SheetArgument};

/// How a run ends.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Exit {
    /// Done; there may be warnings.
    Done,
    /// The source has errors; nothing was written.
    Errors,
    /// A file could not be read or written; nothing was overwritten.
    File,
}

impl From<Exit> for ExitCode {
    fn from(exit: Exit) -> Self {
        match exit {
            Exit::Done => Self::SUCCESS,
            Exit::Errors => Self::from(1),
            Exit::File => Self::from(3),
        }
    }
}

/// From a text that describes furniture to a plan that a stranger can build from.
#[derive(Debug, Parser)]
#[command(name = "leafwright", version, about)]
#[command(
    after_help = "Exit codes: 0 done (there may be warnings), 1 the source has errors and \
nothing was written, 2 wrong arguments, 3 a file could not be read or written."
)]
struct Arguments {
    #[command(subcommand)]
    command: Command,
}

#[derive(Debug, Subcommand)]
enum Command {
    /// Check a source and write its plan as a PDF or as a page for browsers
    Build(BuildArguments),
    /// Check a source and print what was found
    Check(CheckArguments),
    /// Print the page of a finding's code
    Explain(ExplainArguments),
    /// Write one drawing of a plan as SVG
    Draw(DrawArguments),
    /// Write full-size templates alone, for pasting on wood
    Template(TemplateArguments),
    /// Write a table of a plan for other programs
    Export(ExportArguments),
    /// Begin a project in a new folder
    New(NewArguments),
    /// Check a library by itself, with all it declares
    Library(LibraryArguments),
    /// Tell what differs between two plans, or between two revisions of one
    Diff(DiffArguments),
    /// Write sources in their canonical form
    #[command(name = "fmt", visible_alias = "format")]
    Format(FormatArguments),
}

#[derive(Debug, Args)]
struct LookArguments {
    /// A folder with templates, words and fonts in place of those that are shipped
    #[arg(long, value_name = "FOLDER")]
    templates: Option<PathBuf>,
    /// The language of what the plan says by itself, in place of the plan's own: `--words de`
    #[arg(long, value_name = "LANGUAGE")]
    words: Option<String>,
}

#[derive(Debug, Args)]
struct SourceArguments {
    /// The source, a file ending in .wright
    file: PathBuf,
    /// Put another value in place of a param's or let's: `--set width=1000mm`
    #[arg(long = "set", value_name = "NAME=VALUE")]
    set: Vec<String>,
    /// Take another choice of an option than the usual one: `--choose joint=dowels`
    #[arg(long = "choose", value_name = "OPTION=CHOICE")]
    choose: Vec<String>,
}

#[derive(Debug, Args)]
struct BuildArguments {
    #[command(flatten)]
    source: SourceArguments,
    #[command(flatten)]
    look: LookArguments,
    /// Where to write the plan; beside the source, ending in .pdf, if neither this nor --html is said
    #[arg(short, long)]
    output: Option<PathBuf>,
    /// A folder for the web edition: one page, by the source's name, ending in .html
    #[arg(long, value_name = "FOLDER")]
    html: Option<PathBuf>,
    /// The pages, in place of those the plan names
    #[arg(long)]
    paper: Option<PapersArgument>,
    /// The revision in git that was released before: what changed since needs a new revision
    #[arg(long, value_name = "REVISION")]
    release_of: Option<String>,
    /// An earlier revision in git: what is other than in that one is marked in the margin
    #[arg(long, value_name = "REVISION")]
    since: Option<String>,
}

#[derive(Debug, Args)]
struct CheckArguments {
    #[command(flatten)]
    source: SourceArguments,
    /// For people or for programs
    #[arg(long, default_value = "text")]
    format: Format,
    /// Print what the build weighs, carries, moves and needs as well
    #[arg(long, conflicts_with = "format")]
    figures: bool,
}

#[derive(Debug, Args)]
struct ExplainArguments {
    /// A code, such as F001
    #[arg(required_unless_present = "list")]
    code: Option<String>,
    /// List all codes with their titles
    #[arg(long)]
    list: bool,
}

#[derive(Debug, Args)]
struct DrawArguments {
    #[command(flatten)]
    source: SourceArguments,
    #[command(flatten)]
    look: LookArguments,
    /// The exploded view of a step, by its number
    #[arg(long, conflicts_with_all = ["part", "figure"])]
    step: Option<usize>,
    /// The drawing of a part, by its name in the source or its letter in the plan
    #[arg(long, conflicts_with = "figure")]
    part: Option<String>,
    /// The setting-out drawing of the part's grid of holes instead, by its number where there are
    /// several
    #[arg(long, requires = "part", value_name = "NUMBER", num_args = 0..=1, default_missing_value = "1")]
    setting_out: Option<usize>,
    /// A drawing by its name: cover, overview, exploded, layout-1; all names if not said
    #[arg(long)]
    figure: Option<String>,
    /// Where to write it; standard output if not said
    #[arg(short, long)]
    output: Option<PathBuf>,
}

#[derive(Debug, Args)]
struct TemplateArguments {
    #[command(flatten)]
    source: SourceArguments,
    #[command(flatten)]
    look: LookArguments,
    /// The part, by its name in the source or its letter in the plan; what the plan asks for, if not
    /// said
    #[arg(long, value_name = "NAME")]
    part: Option<String>,
    /// The side that is shown: face, back, near, far, foot or head; the broad side with more cut
    /// into it, if not said
    #[arg(long, requires = "part")]
    side: Option<String>,
    /// One sheet of this size for each template
    #[arg(long)]
    sheet: Option<SheetArgument>,
    /// Put together of sheets of this size
    #[arg(long, conflicts_with = "sheet")]
    paper: Option<PaperArgument>,
    /// Where to write it; beside the source, ending in -template.pdf, if not said
    #[arg(short, long)]
    output: Option<PathBuf>,
}

#[derive(Debug, Args)]
struct ExportArguments {
    /// Which table
    table: TableArgument,
    #[command(flatten)]
    source: SourceArguments,
    /// How it is written
    #[arg(long, default_value = "csv")]
    format: FormArgument,
    /// Where to write it; standard output if not said
    #[arg(short, long)]
    output: Option<PathBuf>,
}

#[derive(Debug, Args)]
struct NewArguments {
    /// The folder, which is not there yet
    folder: PathBuf,
}

#[derive(Debug, Args)]
struct LibraryArguments {
    /// What to do with it
    task: LibraryTask,
    /// The library, a file ending in .wright, or std
    file: PathBuf,
    /// Where to write the page; by the library's name, ending in .pdf, if not said
    #[arg(short, long)]
    output: Option<PathBuf>,
    /// The paper of the page
    #[arg(long, default_value = "A4")]
    paper: PaperArgument,
    #[command(flatten)]
    look: LookArguments,
}

/// What is done with a library.
#[derive(Clone, Copy, Debug, ValueEnum)]
enum LibraryTask {
    /// Place what it describes, and tell what is wrong with it
    Check,
    /// Write what it holds as a PDF, with a drawing of each sub-assembly
    Page,
}

#[derive(Debug, Args)]
struct DiffArguments {
    /// The earlier plan and the later one; with `--rev`, the plan of which revisions are compared
    #[arg(required = true)]
    files: Vec<PathBuf>,
    /// Revisions of git: `v1..v2`, or `v1` and the file as it is
    #[arg(long, value_name = "REVISIONS")]
    rev: Option<String>,
    /// For people or for programs
    #[arg(long, default_value = "text")]
    format: DiffForm,
    /// Write a sheet for those who own the earlier plan, as a PDF: what changed, which parts still
    /// serve
    #[arg(long, value_name = "PDF", conflicts_with = "textconv")]
    errata: Option<PathBuf>,
    #[command(flatten)]
    look: LookArguments,
    /// Take the seven names that git hands to an external diff
    #[arg(long, conflicts_with_all = ["rev", "textconv"])]
    driver: bool,
    /// Print what one file builds, a line each, for git's own comparison
    #[arg(long, conflicts_with = "rev")]
    textconv: bool,
}

/// Who a difference is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
enum DiffForm {
    /// For people.
    Text,
    /// For programs.
    Json,
}

#[derive(Debug, Args)]
struct FormatArguments {
    /// Sources; `-` reads standard input and writes standard output
    #[arg(required = true)]
    files: Vec<PathBuf>,
    /// Write nothing; tell of sources that are not in canonical form
    #[arg(long)]
    check: bool,
}

/// A table of a plan.
#[derive(Clone, Copy, Debug, ValueEnum)]
enum TableArgument {
    /// A row for every part
    CutList,
    /// A row for every item of hardware
    Hardware,
    /// A row for every piece, cut and offcut of the cutting layouts
    Layout,
    /// A row for everything to buy
    Purchases,
}

impl From<TableArgument> for Table {
    fn from(table: TableArgument) -> Self {
        match table {
            TableArgument::CutList => Self::CutList,
            TableArgument::Hardware => Self::Hardware,
            TableArgument::Layout => Self::Layout,
            TableArgument::Purchases => Self::Purchases,
        }
    }
}

/// How a table is written.
#[derive(Clone, Copy, Debug, ValueEnum)]
enum FormArgument {
    /// Comma-separated values (RFC 4180), UTF-8
    Csv,
    /// An array of objects
    Json,
}

impl From<FormArgument> for Form {
    fn from(form: FormArgument) -> Self {
        match form {
            FormArgument::Csv => Self::Csv,
            FormArgument::Json => Self::Json,
        }
    }
}

/// Who a report is for.
#[derive(Clone, Copy, Debug, ValueEnum)]
enum Format {
    /// For people.
    Text,
    /// For programs.
    Json,
}

/// Runs the command that the process was called with.
pub fn run() -> ExitCode {
    let exit = match Arguments::parse().command {
        Command::Build(arguments) => build::run(&arguments),
        Command::Check(arguments) => check::run(&arguments),
        Command::Explain(arguments) => explain::run(&arguments),
        Command::Draw(arguments) => draw::run(&arguments),
        Command::Template(arguments) => template::run(&arguments),
        Command::Export(arguments) => export::run(&arguments),
        Command::New(arguments) => new::run(&arguments),
        Command::Library(arguments) => library::run(&arguments),
        Command::Diff(arguments) => diff::run(&arguments),
        Command::Format(arguments) => format::run(&arguments),
    };
    exit.into()
}

/// Prints findings for people on standard error, in colour where a person sees it.
fn report(findings: &Findings, sources: &Sources) {
    use std::io::IsTerminal;
    if findings.is_empty() {
        return;
    }
    let mut out = std::io::stderr();
    let colour = if out.is_terminal() {
        Colour::Coloured
    } else {
        Colour::Plain
    };
    // Nobody is left to tell when standard error is closed.
    let _ = out.write_all(print(findings, sources, colour).as_bytes());
}

/// Prints a text on standard output; a closed pipe ends the run quietly.
fn say(text: &str) {
    let _ = std::io::stdout().write_all(text.as_bytes());
}
