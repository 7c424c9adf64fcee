//! Pieces too small to hold while they are machined.

use super::sign::Sign;
use super::types::{Caution, Occasion, Operation, Phrase, plain};
use super::work::Work;
use crate::build::SignalWord;
use crate::units::Length;

/// Pieces under that in both directions are not held by hand.
// ref: layout-practice#P14 [P]: keep parts above 300 mm where possible; safety, "Operations",
// planer: no stock shorter than 300 mm (12 in) [P].
const SAFE_LENGTH: Length = Length::from_mm(300);

pub(super) fn check(work: &Work) -> Option<Caution> {
    let small = work.rows(|row| {
        let [length, width, _] = row.blank.as_ref().map_or(row.size, |blank| blank.size);
        length < SAFE_LENGTH && width < SAFE_LENGTH
    });
    (!small.is_empty()).then(|| Caution {
        id: "small-pieces",
        name: "small pieces",
        signal: SignalWord::Warning,
        hazard: Phrase::new("Small pieces near a turning blade or bit: ")
            .parts(&small)
            .then(".")
            .done(),
        consequence: plain("A small piece tips, is caught and pulls the hand in after it."),
        avoidance: Phrase::new(
            "Machine edges, channels and holes while the piece is still part of \
             a longer strip, at least ",
        )
        .length(SAFE_LENGTH)
        .then(" long, and cut it off last. Clamp what remains or hold it in a jig, never by hand.")
        .done(),
        signs: vec![Sign::Eyes],
        operation: Operation::Sawing,
        occasions: vec![Occasion::Cutting],
    })
}
