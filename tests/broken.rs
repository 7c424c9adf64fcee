//! Broken copies of the examples, one for each rule: `broken.json` says what is changed, and each
//! copy raises its finding once, at the right place, and nothing else.

use std::fs;
use std::path::Path;

use leafwright::finding::catalogue::pages;
use serde::Deserialize;

use crate::check::check;

/// A copy of an example with a fault.
#[derive(Deserialize)]
struct Broken {
    code: String,
    /// The example's name.
    example: String,
    edits: Vec<Edit>,
    /// The text the finding points at.
    at: String,
}

/// A text of the example, there once, and what stands in its place.
#[derive(Deserialize)]
struct Edit {
    from: String,
    to: String,
}

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

fn copies() -> Vec<Broken> {
    let text = fs::read_to_string(root().join("tests/broken.json")).unwrap();
    serde_json::from_str(&text).unwrap()
}

#[test]
fn a_broken_copy_raises_its_finding_once_and_no_other() {
    let mut faults = Vec::new();
    for broken in copies() {
        let name = format!("examples/{0}/{0}.wright", broken.example);
        let mut text = fs::read_to_string(root().join(&name)).unwrap();
        for Edit { from, to } in &broken.edits {
            assert_eq!(text.matches(from).count(), 1, "{}: {from}", broken.code);
            text = text.replace(from, to);
        }
        let checked = check(&name, &text);
        let found = checked.places();
        if found != [(broken.code.as_str(), broken.at.as_str())] {
            faults.push(format!("{}: {found:?}", broken.code));
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
}

/// Every finding a rule may raise has a broken copy.
#[test]
fn every_rule_has_a_broken_copy() {
    let copies = copies();
    let ruled = pages().into_iter().filter(|page| {
        let family = page.code.chars().next().unwrap_or_default();
        "FHMCR".contains(family)
    });
    let missing: Vec<&str> = ruled
        .map(|page| page.code)
        .filter(|code| copies.iter().all(|broken| broken.code != *code))
        .collect();
    assert!(missing.is_empty(), "{missing:?}");
}
