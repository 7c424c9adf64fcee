//! The project file `leafwright.toml`: libraries by name, and the lock that holds them to what they
//! were.
//!
//! A library is a file at a path, or in a git repository at a revision. What is fetched from a
//! repository is kept beside the project file, in `.leafwright`; afterwards no network is needed.

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::path::{Path, PathBuf};

use serde::Deserialize;
use sha2::{Digest, Sha256};

use super::files;
use super::findings::{BAD_PROJECT, LIBRARY_CHANGED};
use super::revisions::Shelf;
use crate::finding::{Finding, Findings};
use crate::source::{FileId, Sources, Span};

/// How the project file is called.
const PROJECT: &str = "leafwright.toml";
/// How the lock is called, beside it.
const LOCK: &str = "leafwright.lock";
/// Where repositories are kept, beside it.
const KEPT: &str = ".leafwright";

/// What a project file says.
#[derive(Clone, Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
struct Written {
    #[serde(default)]
    libraries: BTreeMap<String, Entry>,
}

/// Where a library is: at `path`, or in `file` of `git` at `revision`.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Entry {
    path: Option<String>,
    git: Option<String>,
    revision: Option<String>,
    file: Option<String>,
}

/// What the lock holds: for each library its files with their sums.
#[derive(Clone, Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
struct Locked {
    #[serde(default)]
    libraries: BTreeMap<String, BTreeMap<String, String>>,
}

/// A project: its folder, its libraries and what they were.
#[derive(Debug, Default)]
pub(super) struct Project {
    /// The folder of the project file, as the user could write it; none without one.
    pub(super) folder: Option<PathBuf>,
    file: Option<FileId>,
    written: Written,
    locked: Locked,
    /// Sums of the files that were read of each library, by their paths in it.
    found: BTreeMap<String, BTreeMap<String, String>>,
}

/// Where a library of a project is.
pub(super) enum Home {
    /// At a path.
    Path(PathBuf),
    /// In a repository that is kept at `folder`, as `file` at `revision`.
    Repository {
        /// Where the repository is kept.
        folder: PathBuf,
        /// From where it is fetched.
        url: String,
        /// The revision, as written.
        revision: String,
        /// The file in it.
        file: PathBuf,
    },
}

impl Project {
    /// The project that a folder belongs to: the nearest project file in it or above it.
    pub(super) fn around(
        folder: &Path,
        shelf: &dyn Shelf,
        sources: &mut Sources,
        findings: &mut Findings,
    ) -> Self {
        let mut at = folder.to_owned();
        for _ in 0..64 {
            let path = at.join(PROJECT);
            if shelf.has(&path) {
                return Self::read(&at, shelf, sources, findings);
            }
            let above = at.join("..");
            match (shelf.real(&at), shelf.real(&above)) {
                (Ok(here), Ok(there)) if here != there => at = above,
                _ => break,
            }
        }
        Self::default()
    }

    fn read(
        folder: &Path,
        shelf: &dyn Shelf,
        sources: &mut Sources,
        findings: &mut Findings,
    ) -> Self {
        let mut project = Self {
            folder: Some(folder.to_owned()),
            ..Self::default()
        };
        let file = match shelf.read(&folder.join(PROJECT), sources) {
            Ok(file) => file,
            Err(finding) => {
                findings.push(*finding);
                return project;
            }
        };
        project.file = Some(file);
        match toml::from_str(sources.text(file)) {
            Ok(written) => project.written = written,
            Err(fault) => findings.push(bad(file, &fault)),
        }
        if shelf.has(&folder.join(LOCK))
            && let Ok(lock) = shelf.read(&folder.join(LOCK), sources)
        {
            match toml::from_str(sources.text(lock)) {
                Ok(locked) => project.locked = locked,
                Err(fault) => findings.push(bad(lock, &fault)),
            }
        }
        project
    }

    /// Where a library is, as the project file says.
    ///
    /// # Errors
    /// A finding where it names no such library, or says too little or too much of it.
    pub(super) fn home(&self, name: &str, span: Span) -> Result<Home, Box<Finding>> {
        let Some(folder) = &self.folder else {
            return Err(unknown(span, name, &[]));
        };
        let Some(entry) = self.written.libraries.get(name) else {
            let known: Vec<&str> = self.written.libraries.keys().map(String::as_str).collect();
            return Err(unknown(span, name, &known));
        };
        match (&entry.path, &entry.git, &entry.revision, &entry.file) {
            (Some(path), None, None, None) => Ok(Home::Path(folder.join(path))),
            (None, Some(url), Some(revision), Some(file)) => {
                let safe = name.chars().all(|c| c.is_alphanumeric() || c == '_');
                let odd = url.starts_with('-') || revision.starts_with('-') || !safe;
                if odd {
                    let message = format!("the library `{name}` is nowhere git can fetch from");
                    return Err(Box::new(Finding::new(&BAD_PROJECT, span, message)));
                }
                Ok(Home::Repository {
                    folder: folder.join(KEPT).join(format!("{name}.git")),
                    url: url.clone(),
                    revision: revision.clone(),
                    file: PathBuf::from(file),
                })
            }
            _ => {
                let message = format!("`{PROJECT}` does not say where the library `{name}` is");
                Err(Box::new(Finding::new(&BAD_PROJECT, span, message).remedy(
                    "give it a `path`, or `git`, `revision` and `file`",
                )))
            }
        }
    }

    /// Notes a file that was read of a library.
    pub(super) fn note(&mut self, name: &str, path: &Path, text: &str) {
        let sum = Sha256::digest(text.as_bytes());
        let mut shown = String::with_capacity(64);
        for byte in sum {
            // Writing to a string does not fail.
            let _ = write!(shown, "{byte:02x}");
        }
        let parts: Vec<&str> = path.iter().filter_map(|part| part.to_str()).collect();
        let files = self.found.entry(name.to_owned()).or_default();
        files.insert(parts.join("/"), shown);
    }

    /// Holds what was read against the lock, and tells of libraries that have changed since.
    pub(super) fn check(&self, findings: &mut Findings) {
        for (name, files) in &self.found {
            let Some(locked) = self.locked.libraries.get(name) else {
                continue;
            };
            let changed = files
                .iter()
                .find(|(path, sum)| locked.get(*path) != Some(*sum));
            if let Some((path, _)) = changed {
                let span = self
                    .file
                    .map_or(Span::default(), |file| Span::new(file, 0, 0));
                let message =
                    format!("`{path}` of the library `{name}` is not what the lock holds");
                findings.push(
                    Finding::new(&LIBRARY_CHANGED, span, message)
                        .remedy(format!("look at what changed; then take `{name}` out of `{LOCK}`, and it is locked anew")),
                );
            }
        }
    }

    /// Writes libraries into the lock that are not in it yet.
    ///
    /// # Errors
    /// A finding where the lock cannot be written.
    pub(super) fn lock(&self) -> Result<(), Box<Finding>> {
        let Some(folder) = &self.folder else {
            return Ok(());
        };
        let mut all = self.locked.libraries.clone();
        for (name, files) in &self.found {
            all.entry(name.clone()).or_insert_with(|| files.clone());
        }
        if all == self.locked.libraries {
            return Ok(());
        }
        let mut text = String::from(
            "# What each library was when it was first used (SHA-256 of its files). Keep this file with the plan.\n",
        );
        for (name, files) in &all {
            let _ = writeln!(text, "\n[libraries.{name}]");
            for (path, sum) in files {
                let _ = writeln!(text, "{} = \"{sum}\"", quoted(path));
            }
        }
        files::write(&folder.join(LOCK), text.as_bytes())
    }
}

/// A basic string of TOML.
fn quoted(text: &str) -> String {
    format!("\"{}\"", text.replace('\\', "\\\\").replace('"', "\\\""))
}

fn bad(file: FileId, fault: &toml::de::Error) -> Finding {
    let range = fault.span().unwrap_or(0..0);
    let span = Span::new(file, range.start, range.end);
    Finding::new(&BAD_PROJECT, span, fault.message())
        .remedy("a library is a line such as `workshop = { path = \"../workshop/library.wright\" }` under `[libraries]`")
}

fn unknown(span: Span, name: &str, known: &[&str]) -> Box<Finding> {
    let message = format!("there is no library `{name}`");
    let finding = Finding::new(&super::findings::IMPORT_NOT_READ, span, message);
    Box::new(if known.is_empty() {
        finding.remedy("`std` ships with the tool; other libraries are files, or are named in `leafwright.toml`: `workshop = { path = \"../workshop/library.wright\" }` under `[libraries]`")
    } else {
        finding.remedy(format!("`{PROJECT}` names {}", known.join(", ")))
    })
}
