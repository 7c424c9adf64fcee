//! The templates of the plan: those that are shipped, and a user's in place of some; and their language.

use std::collections::BTreeMap;

use super::tree::Document;
use crate::display::Colours;
use crate::words::Words;

/// The template that all others are included from.
pub(super) const ROOT: &str = "plan.xml.j2";

/// The root of the sheet for those who own an earlier plan.
pub(super) const ERRATA: &str = "errata.xml.j2";

/// The root of a library's page.
pub(super) const LIBRARY: &str = "library.xml.j2";

/// The root of full-size templates alone.
pub(super) const SHEETS: &str = "sheets.xml.j2";

macro_rules! shipped {
    ($($name:literal),+ $(,)?) => {
        &[$(($name, include_str!(concat!("../../templates/", $name)))),+]
    };
}

/// Every shipped template; `templates/README.md` says what each prints.
const SHIPPED: &[(&str, &str)] = shipped![
    "plan.xml.j2",
    "measures.xml.j2",
    "notes.xml.j2",
    "cover.xml.j2",
    "read-first.xml.j2",
    "contents.xml.j2",
    "buy.xml.j2",
    "tools.xml.j2",
    "cut-list.xml.j2",
    "layouts.xml.j2",
    "parts.xml.j2",
    "full-size.xml.j2",
    "sheet-pages.xml.j2",
    "sheets.xml.j2",
    "hardware.xml.j2",
    "options.xml.j2",
    "overview.xml.j2",
    "steps.xml.j2",
    "final-checks.xml.j2",
    "figures.xml.j2",
    "revisions.xml.j2",
    "terms.xml.j2",
    "errata.xml.j2",
    "library.xml.j2",
];

/// Templates by name. Handed in as text: nothing here reads a disk.
#[derive(Clone, Debug)]
pub struct Templates {
    texts: BTreeMap<String, String>,
    words: Words,
    colours: Colours,
}

impl Templates {
    /// The templates that come with the tool.
    pub fn shipped() -> Self {
        let texts = SHIPPED
            .iter()
            .map(|(name, text)| ((*name).to_owned(), (*text).to_owned()));
        Self {
            texts: texts.collect(),
            words: Words::english(),
            colours: Colours::default(),
        }
    }

    /// With `text` in place of the template `name`, or beside the others where none has that
    /// name.
    #[must_use]
    pub fn with(mut self, name: &str, text: &str) -> Self {
        self.texts.insert(name.to_owned(), text.to_owned());
        self
    }

    /// The same in the words of another language.
    #[must_use]
    pub fn speaking(mut self, words: Words) -> Self {
        self.words = words;
        self
    }

    /// The same in other colours.
    #[must_use]
    pub fn coloured(mut self, colours: Colours) -> Self {
        self.colours = colours;
        self
    }

    /// A document with nothing in it yet, in their words and colours.
    pub(super) fn document(&self, title: &str, author: &str) -> Document {
        Document {
            title: title.to_owned(),
            author: author.to_owned(),
            words: self.words.clone(),
            colours: self.colours,
            ..Document::default()
        }
    }

    /// The words they speak.
    pub fn words(&self) -> &Words {
        &self.words
    }

    /// Names and texts, by name.
    pub fn iter(&self) -> impl Iterator<Item = (&str, &str)> {
        self.texts
            .iter()
            .map(|(name, text)| (name.as_str(), text.as_str()))
    }
}

impl Default for Templates {
    fn default() -> Self {
        Self::shipped()
    }
}
