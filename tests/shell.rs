//! The command and git, run in folders of their own.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

/// An empty folder of one test's own.
pub(crate) fn folder(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR"))
        .join("cases")
        .join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).unwrap();
    folder
}

/// The command, run in a folder.
pub(crate) fn leafwright(folder: &Path, arguments: &[&str]) -> Output {
    let mut command = Command::new(env!("CARGO_BIN_EXE_leafwright"));
    command
        .args(arguments)
        .current_dir(folder)
        .output()
        .unwrap()
}

/// The command, run where the examples lie.
pub(crate) fn at_home(arguments: &[&str]) -> Output {
    leafwright(Path::new(env!("CARGO_MANIFEST_DIR")), arguments)
}

/// A path as an argument.
pub(crate) fn text(path: &Path) -> &str {
    path.to_str().unwrap()
}

/// What git prints, run in a folder by a made-up person.
pub(crate) fn git(folder: &Path, arguments: &[&str]) -> String {
    let output = Command::new("git")
        .args([
            "-c",
            "user.name=Example",
            "-c",
            "user.email=maker@example.org",
            "-c",
            "commit.gpgsign=false",
        ])
        .args(arguments)
        .current_dir(folder)
        .output()
        .unwrap();
    assert!(
        output.status.success(),
        "{arguments:?}: {}",
        String::from_utf8_lossy(&output.stderr)
    );
    String::from_utf8_lossy(&output.stdout).into_owned()
}

pub(crate) fn stdout(output: &Output) -> String {
    String::from_utf8_lossy(&output.stdout).into_owned()
}

pub(crate) fn stderr(output: &Output) -> String {
    String::from_utf8_lossy(&output.stderr).into_owned()
}
