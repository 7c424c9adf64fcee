//! What a reader may tick, and what it is known by in the browser.
//!
//! A tick is kept under the name of its place with a sum of what stands there. A part that comes out of
//! another size in a draft of the same revision is another part, and nobody has cut it yet.

use std::fmt::Write as _;

use sha2::{Digest as _, Sha256};

use crate::document::tree::Document;
use crate::words::Words;

/// What ticks of a plan are kept by.
pub(super) fn key(document: &Document, issue: &str) -> String {
    format!(
        "leafwright: {}, {}, {issue}",
        document.author, document.title
    )
}

/// The name of a tick at a place that says this.
pub(super) fn name(place: &str, says: &str) -> String {
    let sum = Sha256::digest(says);
    let mut name = format!("{place}-");
    for byte in sum.iter().take(4) {
        // Writing to a String does not fail.
        let _ = write!(name, "{byte:02x}");
    }
    name
}

/// Rows of a table that may be ticked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum RowTicks {
    /// Parts that are cut: rows that links lead to.
    Cut,
    /// Goods that are bought: every row.
    Bought,
}

impl RowTicks {
    /// Those of a class of table.
    pub(super) fn of(class: &str) -> Option<Self> {
        match class {
            "cut-list" => Some(Self::Cut),
            "purchases" => Some(Self::Bought),
            _ => None,
        }
    }

    /// What a tick means.
    pub(super) fn label(self, words: &Words, what: &str) -> String {
        let named = [("what", what.into())];
        match self {
            Self::Cut => words.word("web-cut", &named),
            Self::Bought => words.word("web-bought", &named),
        }
    }
}

/// True for the place of a step, which is ticked when it is done: `step-3`.
pub(super) fn is_step(place: &str) -> bool {
    let number = place.strip_prefix("step-");
    number.is_some_and(|number| {
        !number.is_empty() && number.chars().all(|digit| digit.is_ascii_digit())
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_tick_belongs_to_what_it_says() {
        let tall = name("part-A", "Side 900 × 300 × 18");
        assert!(tall.starts_with("part-A-"));
        assert_eq!(tall, name("part-A", "Side 900 × 300 × 18"));
        assert_ne!(tall, name("part-A", "Side 950 × 300 × 18"));
    }

    #[test]
    fn steps_are_told_from_other_places() {
        assert!(is_step("step-12"));
        for other in ["step-", "step-1a", "steps", "part-A"] {
            assert!(!is_step(other), "{other}");
        }
    }
}
