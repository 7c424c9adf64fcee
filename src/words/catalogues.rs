//! Catalogues by language: those that are shipped, and a user's before them.

use std::collections::{BTreeMap, BTreeSet};

use fluent_bundle::FluentResource;
use fluent_syntax::ast::Entry;
use unic_langid::LanguageIdentifier;

use super::findings::{CATALOGUE_FAULT, MESSAGES_MISSING, NO_SUCH_WORDS};
use super::{Bundle, Words};
use crate::finding::{Finding, Findings, Outcome};
use crate::source::Span;

/// The language that stands in for all others.
const ENGLISH: &str = "en";

/// What is shipped, by language.
const SHIPPED: [(&str, &str); 3] = [
    (ENGLISH, include_str!("../../templates/words/en.ftl")),
    ("de", include_str!("../../templates/words/de.ftl")),
    ("fr", include_str!("../../templates/words/fr.ftl")),
];

/// Catalogues by the tag of their language. Handed in as text: nothing here reads a disk.
#[derive(Clone, Debug)]
pub struct Catalogues {
    /// Of each language, what is asked first stands first.
    texts: BTreeMap<String, Vec<String>>,
}

impl Default for Catalogues {
    fn default() -> Self {
        Self::shipped()
    }
}

impl Catalogues {
    /// What comes with the tool.
    pub fn shipped() -> Self {
        let texts = SHIPPED
            .iter()
            .map(|(language, text)| ((*language).to_owned(), vec![(*text).to_owned()]));
        Self {
            texts: texts.collect(),
        }
    }

    /// With messages of a language that stand in place of those of the same name, or beside them; the language
    /// may be a new one.
    #[must_use]
    pub fn with(mut self, language: &str, text: &str) -> Self {
        let texts = self.texts.entry(language.to_lowercase()).or_default();
        texts.insert(0, text.to_owned());
        self
    }

    /// The languages there are, by their tags.
    pub fn languages(&self) -> impl Iterator<Item = &str> {
        self.texts.keys().map(String::as_str)
    }

    /// The words of a language, given by its tag: of `de-AT`, where there are none of its own, those of `de`.
    ///
    /// English ones, and an error, where there are none; a warning where some are missing. `asked_at` is where
    /// the plan asks for them.
    pub fn words(&self, tag: &str, asked_at: Span) -> Outcome<Words> {
        let mut findings = Findings::new();
        let wanted = tag.to_lowercase();
        let primary = wanted.split('-').next().unwrap_or_default();
        let known = [wanted.as_str(), primary]
            .into_iter()
            .find_map(|tag| self.texts.get_key_value(tag));
        let mut bundles = Vec::new();
        let mut said = BTreeSet::new();
        if let Some((language, texts)) = known {
            for text in texts {
                let (bundle, names) = read(language, text, asked_at, &mut findings);
                bundles.push(bundle);
                said.extend(names);
            }
        } else {
            let known: Vec<&str> = self.languages().collect();
            let finding = Finding::new(
                &NO_SUCH_WORDS,
                asked_at,
                format!("there are no words of the language \"{tag}\""),
            );
            findings.push(finding.remedy(format!(
                "take one of {}, or write a catalogue: templates/README.md says how",
                known.join(", ")
            )));
        }
        let language = known.map_or(ENGLISH, |(language, _)| language.as_str());
        for text in self
            .texts
            .get(ENGLISH)
            .into_iter()
            .flatten()
            .filter(|_| language != ENGLISH)
        {
            let (bundle, names) = read(ENGLISH, text, asked_at, &mut findings);
            bundles.push(bundle);
            let missing: Vec<String> = names
                .into_iter()
                .filter(|name| !said.contains(name))
                .collect();
            if known.is_some() {
                told_missing(language, &missing, asked_at)
                    .into_iter()
                    .for_each(|one| findings.push(one));
            }
        }
        // What the plan says of itself is the tag that was asked for, with its region.
        let tag = if known.is_some() { tag } else { ENGLISH };
        Outcome {
            value: Words::new(tag, bundles),
            findings,
        }
    }
}

/// A warning that messages of a language are missing; none where all are there.
fn told_missing(language: &str, missing: &[String], at: Span) -> Option<Finding> {
    const MOST: usize = 5;
    let (first, rest) = missing.split_at(missing.len().min(MOST));
    let more = match rest.len() {
        0 => String::new(),
        more => format!(" and {more} more"),
    };
    (!first.is_empty()).then(|| {
        let message = format!(
            "the words of the language \"{language}\" lack the messages `{}`{more}",
            first.join("`, `")
        );
        Finding::new(&MESSAGES_MISSING, at, message).remedy(format!(
            "write them in words/{language}.ftl; templates/words/en.ftl has them in English"
        ))
    })
}

/// Reads a catalogue; what cannot be read is left out and told.
fn read(
    language: &str,
    text: &str,
    at: Span,
    findings: &mut Findings,
) -> (Bundle, BTreeSet<String>) {
    let resource = FluentResource::try_new(text.to_owned()).unwrap_or_else(|(resource, faults)| {
        for fault in faults {
            let line = text
                .get(..fault.pos.start)
                .unwrap_or(text)
                .matches('\n')
                .count()
                + 1;
            let message = format!("words/{language}.ftl, line {line}: {fault}");
            findings.push(Finding::new(&CATALOGUE_FAULT, at, message));
        }
        resource
    });
    let names = resource.entries().filter_map(|entry| match entry {
        Entry::Message(message) => Some(message.id.name.to_owned()),
        Entry::Term(_)
        | Entry::Comment(_)
        | Entry::GroupComment(_)
        | Entry::ResourceComment(_)
        | Entry::Junk { .. } => None,
    });
    let names = names.collect();
    let tag: LanguageIdentifier = language.parse().unwrap_or_default();
    let mut bundle = Bundle::new_concurrent(vec![tag]);
    // Marks that keep scripts of two directions apart: every script of a plan runs from left to right.
    bundle.set_use_isolating(false);
    bundle.add_resource_overriding(resource);
    (bundle, names)
}
