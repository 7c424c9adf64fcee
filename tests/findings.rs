//! Findings: `findings/<CODE>/*.wright`, each beside the whole `.report` it gives.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use leafwright::finding::catalogue::{example, explain, pages};

use crate::check::check;

fn cases() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/findings")
}

fn update() -> bool {
    std::env::var_os("UPDATE").is_some()
}

/// What stands in a folder, in order.
fn listed(folder: &Path) -> Vec<PathBuf> {
    let entries = fs::read_dir(folder).unwrap();
    let mut paths: Vec<PathBuf> = entries.map(|entry| entry.unwrap().path()).collect();
    paths.sort();
    paths
}

fn has_extension(path: &Path, extension: &str) -> bool {
    path.extension().is_some_and(|found| found == extension)
}

/// Every source of every code, by the code of its folder.
fn sources() -> Vec<(String, PathBuf)> {
    let mut sources = Vec::new();
    for folder in listed(&cases()) {
        let code = folder.file_name().unwrap().to_str().unwrap().to_owned();
        let files = listed(&folder).into_iter();
        let files = files.filter(|path| has_extension(path, "wright"));
        sources.extend(files.map(|path| (code.clone(), path)));
    }
    sources
}

#[test]
fn every_case_gives_its_report() {
    let mut faults = Vec::new();
    for (code, path) in sources() {
        let name = format!("{code}/{}", path.file_name().unwrap().to_str().unwrap());
        let checked = check(&name, &fs::read_to_string(&path).unwrap());
        if !checked.codes().contains(&code.as_str()) {
            faults.push(format!(
                "{name} does not raise {code} but {:?}",
                checked.codes()
            ));
        }
        let report = checked.report();
        let report_path = path.with_extension("report");
        let expected = fs::read_to_string(&report_path).unwrap_or_default();
        if expected == report {
            continue;
        }
        if update() {
            fs::write(&report_path, &report).unwrap();
        } else {
            faults.push(format!("{name} reports otherwise now:\n{report}"));
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
}

#[test]
fn no_report_is_left_without_its_source() {
    for folder in listed(&cases()) {
        for path in listed(&folder) {
            let known = has_extension(&path, "wright")
                || has_extension(&path, "report") && path.with_extension("wright").exists();
            assert!(known, "{} belongs to no case", path.display());
        }
    }
}

/// Whether a fault can be made by a source alone, without a template or a file that is not there.
///
/// Those of pages and documents (P) are tried in `paper/` and in the files that raise them, those
/// of files and arguments (X) in `road.rs`.
fn comes_from_a_source(code: &str) -> bool {
    !code.starts_with(['P', 'X'])
}

#[test]
fn every_code_has_a_case_and_every_case_a_code() {
    let folders: BTreeSet<String> = sources().into_iter().map(|(code, _)| code).collect();
    let codes: BTreeSet<String> = pages().iter().map(|page| page.code.to_owned()).collect();
    let missing: Vec<&String> = codes
        .difference(&folders)
        .filter(|code| comes_from_a_source(code) && !NOT_ON_A_PAGE.contains(&code.as_str()))
        .collect();
    assert!(missing.is_empty(), "no case for {missing:?}");
    let unknown: Vec<&String> = folders.difference(&codes).collect();
    assert!(unknown.is_empty(), "no page for {unknown:?}");
}

/// Codes whose bad example is too large for a page; each has a test that makes it, named here.
const NOT_ON_A_PAGE: &[&str] = &[
    // syntax::a_source_that_is_too_large_is_told, syntax::five_hundred_faults_are_enough
    "S014", // findings/N006/long_chain.wright: three hundred lines
    "N006",
];

#[test]
fn the_bad_example_of_a_page_raises_it_and_the_good_one_does_not() {
    let mut faults = Vec::new();
    for page in pages() {
        let code = page.code;
        if !comes_from_a_source(code) || NOT_ON_A_PAGE.contains(&code) {
            continue;
        }
        let name = format!("{code}.wright");
        let (bad, good) = (example(page, "wright,bad"), example(page, "wright,good"));
        let (Some(bad), Some(good)) = (bad, good) else {
            faults.push(format!("{code} lacks an example"));
            continue;
        };
        let found = check(&name, &bad);
        if !found.codes().contains(&code) {
            faults.push(format!("{code}'s bad example raises {:?}", found.codes()));
        }
        let found = check(&name, &good);
        if found.codes().contains(&code) || found.has_errors() {
            faults.push(format!("{code}'s good example:\n{}", found.report()));
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
}

#[test]
fn every_page_is_complete() {
    for page in pages() {
        assert!(
            !page.title.is_empty() && !page.title.ends_with('.'),
            "{}",
            page.code
        );
        assert!(
            !page.why.is_empty() && !page.why.ends_with('.'),
            "{}",
            page.code
        );
        assert!(explain(page).starts_with(page.code));
        let (family, number) = page.code.split_at(1);
        assert!("SNBTDPFHMCRX".contains(family), "{}", page.code);
        assert!(
            number.len() == 3 && number.bytes().all(|b| b.is_ascii_digit()),
            "{}",
            page.code
        );
    }
}
