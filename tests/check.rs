//! The one way in: a source through the road, as far as it goes.

use leafwright::finding::Findings;
use leafwright::finding::print::{Colour, print};
use leafwright::model::Overrides;
use leafwright::road;
use leafwright::source::Sources;

/// What a source gave.
pub(crate) struct Checked {
    sources: Sources,
    findings: Findings,
}

/// Reads `text` as if it were the file `name`.
pub(crate) fn check(name: &str, text: &str) -> Checked {
    let (sources, file) = Sources::single(name, text);
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
