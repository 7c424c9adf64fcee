//! Sources as they were: read from the disk, or from a revision through the user's own git.

use std::ffi::OsStr;
use std::path::{Component, Path, PathBuf};
use std::process::Command;

use super::files;
use super::findings::NO_REVISION;
use crate::finding::Finding;
use crate::source::{FileId, LARGEST_SOURCE, Sources, Span};

/// Where files are read from.
pub(super) trait Shelf {
    /// Reads a file.
    fn read(&self, path: &Path, sources: &mut Sources) -> Result<FileId, Box<Finding>>;
    /// Where a path really leads, links followed.
    fn real(&self, path: &Path) -> std::io::Result<PathBuf>;
    /// True for a file that is there.
    fn has(&self, path: &Path) -> bool;
    /// True where files may be written beside what is read.
    fn is_now(&self) -> bool;
}

/// The files as they are.
pub(super) struct Disk;

impl Shelf for Disk {
    fn read(&self, path: &Path, sources: &mut Sources) -> Result<FileId, Box<Finding>> {
        files::read(path, sources)
    }

    fn real(&self, path: &Path) -> std::io::Result<PathBuf> {
        path.canonicalize()
    }

    fn has(&self, path: &Path) -> bool {
        path.is_file()
    }

    fn is_now(&self) -> bool {
        true
    }
}

/// The files of one revision of a repository; its working tree is not touched.
pub(super) struct Revision {
    /// As the user wrote it.
    written: String,
    /// The commit it is.
    commit: String,
    /// The repository's folder.
    root: PathBuf,
    /// It has no working tree, and paths begin at its root.
    is_kept: bool,
}

impl Revision {
    /// A revision of the repository that a file is in.
    ///
    /// # Errors
    /// A finding where there is no git, no repository, or no such revision in it.
    pub(super) fn of(file: &Path, written: &str) -> Result<Self, Box<Finding>> {
        let folder = match file.parent() {
            Some(folder) if !folder.as_os_str().is_empty() => folder,
            _ => Path::new("."),
        };
        let root = git(folder, ["rev-parse", "--show-toplevel"]).map_err(|fault| {
            told(format!(
                "`{}` is in no git repository: {fault}",
                file.display()
            ))
        })?;
        let named = format!("{written}^{{commit}}");
        let arguments = [
            "rev-parse",
            "--verify",
            "--quiet",
            "--end-of-options",
            &named,
        ];
        let commit = git(folder, arguments)
            .map_err(|_| told(format!("the repository has no revision `{written}`")))?;
        Ok(Self {
            written: written.to_owned(),
            commit: line(&commit),
            root: PathBuf::from(line(&root)),
            is_kept: false,
        })
    }
}

impl Revision {
    /// A revision of a repository that is kept at `folder` without a working tree, fetched from `url`
    /// where it is not there yet. Its files are named from its root.
    ///
    /// # Errors
    /// A finding where it cannot be fetched, or has no such revision.
    pub(super) fn kept(folder: &Path, url: &str, written: &str) -> Result<Self, Box<Finding>> {
        let named = format!("{written}^{{commit}}");
        let look_up = || {
            let arguments = [
                "rev-parse",
                "--verify",
                "--quiet",
                "--end-of-options",
                &named,
            ];
            git(folder, arguments)
        };
        let there = folder.is_dir();
        let commit = match there.then(look_up) {
            Some(Ok(commit)) => commit,
            _ => {
                fetch(folder, url, there)?;
                look_up().map_err(|_| told(format!("`{url}` has no revision `{written}`")))?
            }
        };
        Ok(Self {
            written: written.to_owned(),
            commit: line(&commit),
            root: folder.to_owned(),
            is_kept: true,
        })
    }

    /// What git calls a file of this revision.
    fn object(&self, path: &Path) -> String {
        let real = self.real(path).unwrap_or_default();
        let inside = real.strip_prefix(&self.root).unwrap_or(&real);
        // Git's paths have slashes everywhere.
        let inside: Vec<&str> = inside.iter().filter_map(OsStr::to_str).collect();
        format!("{}:{}", self.commit, inside.join("/"))
    }
}

/// Fetches a whole repository, or what is new in one that is kept already.
fn fetch(folder: &Path, url: &str, there: bool) -> Result<(), Box<Finding>> {
    let above = folder.parent().unwrap_or(Path::new("."));
    let shown = folder
        .file_name()
        .and_then(OsStr::to_str)
        .unwrap_or("library.git");
    let fetched = if there {
        let all = "+refs/*:refs/*";
        git(
            folder,
            ["fetch", "--quiet", "--force", "--end-of-options", url, all],
        )
    } else {
        files::folder(above).and_then(|()| {
            git(
                above,
                [
                    "clone",
                    "--quiet",
                    "--mirror",
                    "--end-of-options",
                    url,
                    shown,
                ],
            )
        })
    };
    fetched
        .map(drop)
        .map_err(|fault| told(format!("`{url}` cannot be fetched: {fault}")))
}

impl Shelf for Revision {
    fn has(&self, path: &Path) -> bool {
        git(&self.root, ["cat-file", "-e", &self.object(path)]).is_ok()
    }

    fn is_now(&self) -> bool {
        false
    }

    fn read(&self, path: &Path, sources: &mut Sources) -> Result<FileId, Box<Finding>> {
        let shown = format!("{}:{}", self.written, path.display());
        let object = self.object(path);
        let text = git(&self.root, ["cat-file", "blob", &object]).map_err(|_| {
            told(format!(
                "`{}` is not in revision `{}`",
                path.display(),
                self.written
            ))
            .into_boxed(
                "name the path it had then; a file that was renamed since is compared as two files",
            )
        })?;
        if text.len() > LARGEST_SOURCE {
            return Err(told(format!("`{shown}` is larger than a source may be")));
        }
        Ok(sources.add(&shown, text.strip_prefix('\u{feff}').unwrap_or(&text)))
    }

    fn real(&self, path: &Path) -> std::io::Result<PathBuf> {
        if self.is_kept {
            return Ok(self.root.join(plain(path)));
        }
        // The folder is there today; what is in it may not be.
        let whole = std::path::absolute(path)?;
        let real = plain(&whole);
        let there = real.ancestors().find_map(|folder| {
            let canonical = folder.canonicalize().ok()?;
            Some(canonical.join(real.strip_prefix(folder).ok()?))
        });
        Ok(there.unwrap_or(real))
    }
}

/// A path without `.` and `..`.
fn plain(path: &Path) -> PathBuf {
    let mut plain = PathBuf::new();
    for part in path.components() {
        match part {
            Component::ParentDir => drop(plain.pop()),
            Component::CurDir => {}
            Component::Prefix(_) | Component::RootDir | Component::Normal(_) => plain.push(part),
        }
    }
    plain
}

trait Advised {
    fn into_boxed(self, remedy: &str) -> Box<Finding>;
}

impl Advised for Box<Finding> {
    fn into_boxed(self, remedy: &str) -> Box<Finding> {
        Box::new(self.remedy(remedy))
    }
}

fn told(message: String) -> Box<Finding> {
    Box::new(Finding::new(&NO_REVISION, Span::default(), message))
}

fn line(text: &str) -> String {
    text.trim_end_matches(['\n', '\r']).to_owned()
}

/// What git prints, or why it prints nothing.
fn git<'a>(folder: &Path, arguments: impl IntoIterator<Item = &'a str>) -> Result<String, String> {
    let output = Command::new("git")
        .arg("-C")
        .arg(folder)
        .args(arguments)
        .output()
        .map_err(|fault| format!("git cannot be run: {fault}"))?;
    if !output.status.success() {
        let said = String::from_utf8_lossy(&output.stderr);
        return Err(said.lines().next().unwrap_or("").to_owned());
    }
    String::from_utf8(output.stdout).map_err(|_| "it is not UTF-8".to_owned())
}
