//! The words of a plan: a catalogue of messages for each language, as Project Fluent writes them.
//!
//! What stands in a plan beside its author's own text comes from here: templates ask for messages by name,
//! and so do drawings and pages. A language that lacks a message gets it in English. Names and figures are put
//! into the places of a message; whoever asks for it says which.

mod catalogues;
mod figures;
pub mod findings;

use std::fmt;
use std::sync::{Arc, LazyLock};

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource};

use crate::source::Span;
pub use catalogues::Catalogues;

/// What is put into a place of a message.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Filling {
    /// Words, or a figure that is printed already.
    Words(String),
    /// A count, by which a message chooses its form.
    Count(i64),
}

impl From<&str> for Filling {
    fn from(words: &str) -> Self {
        Self::Words(words.to_owned())
    }
}

impl From<String> for Filling {
    fn from(words: String) -> Self {
        Self::Words(words)
    }
}

impl From<usize> for Filling {
    fn from(count: usize) -> Self {
        Self::Count(i64::try_from(count).unwrap_or(i64::MAX))
    }
}

type Bundle = FluentBundle<FluentResource>;

/// The words of one language, with English behind them. Cheap to copy.
#[derive(Clone)]
pub struct Words {
    /// The language, as a BCP 47 tag.
    language: Arc<str>,
    /// Where messages are looked for, in order.
    bundles: Arc<[Bundle]>,
    decimal_mark: char,
}

impl fmt::Debug for Words {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.debug_struct("Words")
            .field("language", &self.language)
            .finish_non_exhaustive()
    }
}

/// Read once: it is the same in every plan.
static ENGLISH: LazyLock<Words> =
    LazyLock::new(|| Catalogues::shipped().words("en", Span::default()).value);

impl Default for Words {
    fn default() -> Self {
        Self::english()
    }
}

impl Words {
    /// English, as it is shipped.
    pub fn english() -> Self {
        ENGLISH.clone()
    }

    fn new(language: &str, bundles: Vec<Bundle>) -> Self {
        let mut words = Self {
            language: Arc::from(language),
            bundles: Arc::from(bundles),
            decimal_mark: '.',
        };
        let mark = words.say("decimal-mark", &[]).unwrap_or_default();
        words.decimal_mark = mark.chars().next().unwrap_or('.');
        words
    }

    /// The language, as a BCP 47 tag.
    pub fn language(&self) -> &str {
        &self.language
    }

    /// What stands between the whole part of a decimal figure and the rest.
    pub fn decimal_mark(&self) -> char {
        self.decimal_mark
    }

    /// A message with its places filled; what is wrong where no language has it, or it has places that are
    /// not filled.
    pub fn say(&self, id: &str, fillings: &[(&str, Filling)]) -> Result<String, String> {
        let mut places = FluentArgs::new();
        for (place, filling) in fillings {
            match filling {
                Filling::Words(words) => places.set(*place, words.as_str()),
                Filling::Count(count) => places.set(*place, *count),
            }
        }
        for bundle in &*self.bundles {
            let Some(pattern) = bundle.get_message(id).and_then(|message| message.value()) else {
                continue;
            };
            let mut faults = Vec::new();
            let said = bundle.format_pattern(pattern, Some(&places), &mut faults);
            return match faults.first() {
                None => Ok(said.into_owned()),
                Some(fault) => Err(format!("the message `{id}` cannot be said: {fault}")),
            };
        }
        Err(format!("there is no message `{id}` in templates/words"))
    }

    /// A message without places, or one whose places are filled as it wants; its name where there is none, so
    /// that what is missing is seen.
    pub fn word(&self, id: &str, fillings: &[(&str, Filling)]) -> String {
        self.say(id, fillings).unwrap_or_else(|_| id.to_owned())
    }
}
