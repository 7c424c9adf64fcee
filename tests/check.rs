//! The one way in: a source through the road, as far as it goes.

use leafwright::finding::Findings;
use leafwright::finding::print::{Colour, print};
use leafwright::library;
use leafwright::model::Overrides;
use leafwright::road;
use leafwright::source::Sources;

/// What a source gave.
pub(crate) struct Checked {
    sources: Sources,
    findings: Findings,
}

/// Reads `text` as if it were the file `name`. A line `#: parts.wright` begins a file beside it, which
/// all of them may import; `std` is there too.
pub(crate) fn check(name: &str, text: &str) -> Checked {
    let mut sources = Sources::new();
    let mut texts = text.split("#: ");
    let file = sources.add(name, texts.next().unwrap_or(""));
    let mut files = vec![(String::new(), file)];
    for other in texts {
        let (path, text) = other.split_once('\n').unwrap_or((other, ""));
        let file = sources.add(path, text);
        files.push((format!("\"{path}\""), file));
    }
    if text.contains("from std") {
        let std = sources.add(library::STD, &library::std_text());
        files.push((library::STD.to_owned(), std));
    }
    for (_, from) in &files {
        for (written, to) in &files {
            sources.link(*from, written, *to);
        }
    }
    let findings = road::check(&sources, file, &Overrides::default()).findings;
    Checked { sources, findings }
}

impl Checked {
    /// All findings as a terminal shows them.
    pub(crate) fn report(&self) -> String {
        print(&self.findings, &self.sources, Colour::Plain)
    }

    /// Whether any of them is an error.
    pub(crate) fn has_errors(&self) -> bool {
        self.findings.has_errors()
    }

    /// The codes found, in the order of the text.
    pub(crate) fn codes(&self) -> Vec<&'static str> {
        self.findings.iter().map(|f| f.page.code).collect()
    }

    /// The codes found, each with the text it points at.
    pub(crate) fn places(&self) -> Vec<(&'static str, &str)> {
        self.findings
            .iter()
            .map(|finding| (finding.page.code, self.sources.snippet(finding.span)))
            .collect()
    }
}
