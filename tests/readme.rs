//! The README's own promises: its example compiles, its commands are those of the tests and CI.

use std::fs;
use std::path::Path;

use crate::check::check;

fn readme() -> String {
    fs::read_to_string(Path::new(env!("CARGO_MANIFEST_DIR")).join("README.md")).unwrap()
}

/// The plan that it shows.
pub(crate) fn example() -> String {
    let text = readme();
    let behind = text.split("```wright\n").nth(1).unwrap();
    behind.split("```").next().unwrap().to_owned()
}

#[test]
fn the_example_is_clean() {
    let report = check("README.wright", &example()).report();
    assert!(report.is_empty(), "{report}");
}

#[test]
fn its_commands_are_run_by_ci() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let ci = fs::read_to_string(root.join(".ci/run")).unwrap();
    let text = readme();
    let commands: Vec<&str> = text
        .lines()
        .filter_map(|line| line.strip_prefix("    cargo "))
        .collect();
    assert_eq!(commands.len(), 2);
    for command in commands {
        assert!(
            ci.contains(&format!("cargo {command}")),
            "CI does not run cargo {command}"
        );
    }
}
