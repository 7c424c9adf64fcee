//! How pages work in Chromium: `browser.mjs` drives it, here stands what is built for it and what it prints.
//!
//! It wants Node 20 and Chromium, and the packages that `.ci/run` puts into the folder that
//! `LEAFWRIGHT_BROWSER_TOOLS` names. Without that name the test says that it was skipped.

use std::fs;
use std::io::Write as _;
use std::process::Command;

use super::{EXAMPLES, built, root};
use crate::shell::folder;

#[test]
fn a_page_works_in_a_browser() {
    let Ok(tools) = std::env::var("LEAFWRIGHT_BROWSER_TOOLS") else {
        let told = "skipped: no browser (LEAFWRIGHT_BROWSER_TOOLS is not set; .ci/run shows how)";
        // Past what the test runner keeps to itself.
        writeln!(std::io::stderr(), "{told}").unwrap();
        return;
    };
    let folder = folder("web-browser");
    let bench = built(EXAMPLES[0], &folder, &[]);
    let cabinet = built(EXAMPLES[1], &folder, &["--words", "de"]);
    // The same plan in a later revision, of which nothing is ticked yet.
    let [shelf, later] = [
        ("shelf", "A\" on 2026-01-15"),
        ("later", "B\" on 2026-02-01"),
    ]
    .map(|(name, revision)| {
        let path = folder.join(name).with_extension("wright");
        let text = crate::readme::example();
        assert!(text.contains("A\" on 2026-01-15"));
        fs::write(&path, text.replace("A\" on 2026-01-15", revision)).unwrap();
        built(path.to_str().unwrap(), &folder, &[])
    });
    let printed = folder.join("printed.pdf");
    let output = Command::new("node")
        .arg(root().join("tests/web/browser.mjs"))
        .arg(&tools)
        .args([&bench, &cabinet, &shelf, &later, &printed])
        .output()
        .unwrap();
    let told = String::from_utf8_lossy(&output.stdout).into_owned();
    let faults = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "{told}{faults}");
    // As many as the script has: none of them was passed over.
    assert_eq!(told.matches("ok ").count(), 9, "{told}");
    let printed = lopdf::Document::load(printed).unwrap();
    let pages = printed.get_pages().len();
    assert!((10..60).contains(&pages), "{pages} pages");
}
