//! Texts with figures and parts in them, as templates print them.

use serde::Serialize;

use super::context::Facts;
use super::measure::Measure;
use super::messages;
use crate::build::{GroupId, Wording, WordingPiece};
use crate::model::PartId;
use crate::units::{Length, Precision, lengths_in};

/// A piece of a text: exactly one of the three is there.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub(super) struct TextPiece {
    /// Words.
    pub(super) text: Option<String>,
    /// A length.
    pub(super) length: Option<Measure>,
    /// A part or a sub-assembly.
    pub(super) part: Option<PartName>,
}

/// How a part is named.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub(super) struct PartName {
    /// Its letter.
    pub(super) label: String,
    /// Its name.
    pub(super) title: String,
    /// How many of it are meant.
    pub(super) count: i64,
}

impl PartName {
    /// A part by number; none for a number that is no part.
    pub(super) fn of(facts: &Facts, id: PartId, count: i64) -> Option<Self> {
        facts.build.part(id).map(|part| Self {
            label: part.label.clone(),
            title: part.title.clone(),
            count,
        })
    }

    /// A sub-assembly by number; its mark stands for a letter.
    pub(super) fn of_whole(facts: &Facts, id: GroupId, count: i64) -> Option<Self> {
        facts.build.groups.get(id.0).map(|group| Self {
            label: group.label.clone(),
            title: group.title.clone(),
            count,
        })
    }
}

/// The pieces of a text.
pub(super) fn pieces(facts: &Facts, wording: &Wording) -> Vec<TextPiece> {
    printed(facts, wording, facts.precision())
}

/// The pieces of a tool's name, whose figures are those of bits.
pub(super) fn fine_pieces(facts: &Facts, wording: &Wording) -> Vec<TextPiece> {
    printed(facts, wording, facts.fine())
}

fn printed(facts: &Facts, wording: &Wording, precision: Precision) -> Vec<TextPiece> {
    let mut pieces = Vec::new();
    for piece in &wording.pieces {
        match piece {
            WordingPiece::Plain(text) => plain(text, precision, &mut pieces),
            WordingPiece::Value(text) => pieces.push(words(&facts.figure(text))),
            WordingPiece::Length(found) => pieces.push(length(*found, precision)),
            WordingPiece::Part(part, count) => pieces.push(TextPiece {
                part: PartName::of(facts, *part, *count),
                ..TextPiece::default()
            }),
            WordingPiece::Whole(group, count) => pieces.push(whole(facts, *group, *count)),
            WordingPiece::Message(message) => {
                pieces.extend(messages::pieces(facts, message, precision));
            }
        }
    }
    pieces
}

/// A sub-assembly; its mark leads to where it is put together, if it is put together by itself.
fn whole(facts: &Facts, id: GroupId, count: i64) -> TextPiece {
    match facts.build.groups.get(id.0) {
        Some(group) if !group.has_steps && count > 1 => {
            words(&format!("{count} \u{d7} {}", group.title))
        }
        Some(group) if !group.has_steps => words(&group.title),
        _ => TextPiece {
            part: PartName::of_whole(facts, id, count),
            ..TextPiece::default()
        },
    }
}

/// Words, and the lengths an author wrote among them in one system alone.
fn plain(text: &str, precision: Precision, pieces: &mut Vec<TextPiece>) {
    let mut from = 0;
    for (range, found) in lengths_in(text) {
        pieces.push(words(text.get(from..range.start).unwrap_or("")));
        pieces.push(length(found, precision));
        from = range.end;
    }
    pieces.push(words(text.get(from..).unwrap_or("")));
}

pub(super) fn words(text: &str) -> TextPiece {
    TextPiece {
        text: Some(text.to_owned()),
        ..TextPiece::default()
    }
}

pub(super) fn length(length: Length, precision: Precision) -> TextPiece {
    TextPiece {
        length: Some(Measure::of(length, precision)),
        ..TextPiece::default()
    }
}
