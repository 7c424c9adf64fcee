//! Messages of the plan with lengths and parts in them: said in the plan's language, and taken apart again, so
//! that a part is a link and a figure stands in both systems.

use super::context::Facts;
use super::wording::{PartName, TextPiece, length, words};
use crate::build::{Given, Message};
use crate::model::PartId;
use crate::units::Precision;
use crate::words::Filling;

/// Stand around the number of what is put in later. Nobody types them: they are for private use.
const MARK: [char; 2] = ['\u{e000}', '\u{e001}'];

/// Parts that are named; of more than that it is told how many.
const MOST: usize = 6;

/// The pieces of a message.
pub(super) fn pieces(facts: &Facts, message: &Message, precision: Precision) -> Vec<TextPiece> {
    let mut later: Vec<Vec<TextPiece>> = Vec::new();
    let mut fillings = Vec::new();
    for (place, given) in &message.given {
        let filling = match given {
            Given::Figure(figure) => facts.figure(figure),
            Given::Length(found) => put_off(vec![length(*found, precision)], &mut later),
            Given::Parts(parts) => put_off(listed(facts, parts), &mut later),
        };
        fillings.push((*place, Filling::Words(filling)));
    }
    taken_apart(&facts.words.word(message.id, &fillings), &later)
}

/// A mark that stands for pieces.
fn put_off(pieces: Vec<TextPiece>, later: &mut Vec<Vec<TextPiece>>) -> String {
    later.push(pieces);
    let [open, close] = MARK;
    format!("{open}{}{close}", later.len() - 1)
}

/// The words between the marks, and what the marks stand for.
fn taken_apart(said: &str, later: &[Vec<TextPiece>]) -> Vec<TextPiece> {
    let [open, close] = MARK;
    let mut pieces = Vec::new();
    let mut rest = said;
    while let Some((before, behind)) = rest.split_once(open) {
        let (number, after) = behind.split_once(close).unwrap_or((behind, ""));
        pieces.push(words(before));
        let meant = number
            .parse()
            .ok()
            .and_then(|number: usize| later.get(number));
        pieces.extend(meant.into_iter().flatten().cloned());
        rest = after;
    }
    pieces.push(words(rest));
    pieces
}

/// Parts as a list: "A, B and C", and how many more where there are many.
fn listed(facts: &Facts, parts: &[PartId]) -> Vec<TextPiece> {
    let mut pieces = Vec::new();
    for (index, id) in parts.iter().take(MOST).enumerate() {
        let between = match index {
            0 => None,
            _ if index + 1 == parts.len() => Some("list-last"),
            _ => Some("list-comma"),
        };
        pieces.extend(between.map(|id| words(&facts.words.word(id, &[]))));
        pieces.push(TextPiece {
            part: PartName::of(facts, *id, 1),
            ..TextPiece::default()
        });
    }
    if let Some(more) = parts.len().checked_sub(MOST).filter(|more| *more > 0) {
        let more = Filling::from(more);
        pieces.push(words(&facts.words.word("list-more", &[("more", more)])));
    }
    pieces
}
