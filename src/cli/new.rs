//! `leafwright new FOLDER`: a project to begin with.

use std::path::Path;

use super::findings::FILE_NOT_WRITTEN;
use super::{Exit, NewArguments, files, report, say};
use crate::finding::{Finding, Findings};
use crate::source::{Sources, Span};

const PLAN: &str = include_str!("new/plan.wright");
const LIBRARY: &str = include_str!("new/library.wright");
const PROJECT: &str =
    "# Libraries of this project by name, beside `std` and files in this folder.\n[libraries]\n";
const IGNORED: &str = "/.leafwright\n*.pdf\n";

/// Runs the command. A folder that is there already is not touched.
pub(super) fn run(arguments: &NewArguments) -> Exit {
    match make(&arguments.folder) {
        Ok(()) => {
            let folder = arguments.folder.display();
            say(&format!(
                "Made {folder}. Now: leafwright build {folder}/plan.wright -o {folder}/plan.pdf\n"
            ));
            Exit::Done
        }
        Err(finding) => {
            let mut findings = Findings::new();
            findings.push(*finding);
            report(&findings, &Sources::new());
            Exit::File
        }
    }
}

fn make(folder: &Path) -> Result<(), Box<Finding>> {
    if folder.exists() {
        let message = format!("`{}` is there already", folder.display());
        return Err(Box::new(
            Finding::new(&FILE_NOT_WRITTEN, Span::default(), message)
                .remedy("name a folder that is not there yet"),
        ));
    }
    let shelf = folder.join("parts");
    files::folder(&shelf).map_err(|fault| {
        let message = format!("`{}` cannot be made: {fault}", shelf.display());
        Box::new(Finding::new(&FILE_NOT_WRITTEN, Span::default(), message))
    })?;
    for (name, text) in [
        ("plan.wright", PLAN),
        ("parts/shared.wright", LIBRARY),
        ("leafwright.toml", PROJECT),
        (".gitignore", IGNORED),
    ] {
        files::write(&folder.join(name), text.as_bytes())?;
    }
    Ok(())
}
