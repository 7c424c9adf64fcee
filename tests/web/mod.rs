//! The web edition: what a page holds, read back by a parser of XML, and how it works in a browser.

mod browser;
mod page;
mod words;

use std::fs;
use std::path::{Path, PathBuf};

use leafwright::document::Templates;
use leafwright::document::tree::Document;
use leafwright::model::Overrides;
use leafwright::road;
use leafwright::source::{Sources, Span};
use leafwright::text::Fonts;
use leafwright::words::Catalogues;

use crate::shell::{leafwright, stderr};

/// Plans of the examples, by their files.
const EXAMPLES: [&str; 4] = [
    "examples/potting-bench/potting-bench.wright",
    "examples/seed-cabinet/seed-cabinet.wright",
    "examples/hall-set/slat-bench.wright",
    "examples/hall-set/shoe-chest.wright",
];

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

/// The page of a plan, made by the command into a folder.
fn built(source: &str, folder: &Path, arguments: &[&str]) -> PathBuf {
    let into = folder.to_str().unwrap();
    let mut all = vec!["build", source, "--html", into];
    all.extend(arguments);
    let output = leafwright(root(), &all);
    assert!(output.status.success(), "{}", stderr(&output));
    let name = Path::new(source).with_extension("html");
    folder.join(name.file_name().unwrap())
}

/// The document of a source, in a language, and its page.
fn published(text: &str, language: &str) -> (Document, String) {
    let (sources, file) = Sources::single("plan.wright", text);
    let outcome = road::check_choices(&sources, file, &Overrides::default());
    assert!(!outcome.findings.has_errors(), "{:?}", outcome.findings);
    let checked = outcome.value;
    let sound = checked.sound.as_ref().unwrap();
    let fonts = Fonts::shipped().unwrap();
    let words = Catalogues::shipped().words(language, Span::default()).value;
    let templates = Templates::shipped().speaking(words);
    let figures = road::draw(&checked, sound, &fonts, templates.words());
    let document = road::compose(&checked, sound, figures, &templates, None);
    assert!(!document.findings.has_errors(), "{:?}", document.findings);
    let page = road::publish(&document.value, sound.build());
    (document.value, page)
}

fn example(number: usize) -> String {
    fs::read_to_string(root().join(EXAMPLES[number])).unwrap()
}
