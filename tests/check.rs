//! The one way in: a source through the road, as far as it goes.

use leafwright::finding::Findings;
use leafwright::finding::print::{Colour, print};
use leafwright::source::{FileId, Sources};
use leafwright::syntax;

/// What a source gave.
pub(crate) struct Checked {
    sources: Sources,
    findings: Findings,
}

/// Reads `text` as if it were the file `name`.
pub(crate) fn check(name: &str, text: &str) -> Checked {
    let (sources, file) = Sources::single(name, text);
    let findings = road(&sources, file);
    Checked { sources, findings }
}

fn road(sources: &Sources, file: FileId) -> Findings {
    let tree = syntax::parse(sources, file);
    let mut findings = tree.findings;
    if findings.has_errors() {
        return findings.sorted();
    }
    let model = leafwright::model::resolve(&tree.value, &Default::default());
    findings.append(model.findings);
    let build = leafwright::build::assemble(&model.value);
    findings.append(build.findings);
    let sound = leafwright::rules::check(
        &leafwright::rules::Facts {
            model: &model.value,
            build: &build.value,
        },
        &findings,
    );
    findings.append(sound.findings);
    findings.sorted()
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
}
