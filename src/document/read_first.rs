//! Read first: cautions by severity, protective equipment, how figures are marked.

use serde::Serialize;

use super::context::{Facts, step_numbers};
use super::measure::Measure;
use super::signs::{self, SignText};
use super::wording::{self, TextPiece};
use crate::build::SignalWord;
use crate::caution::{Caution, Occasion, Operation};
use crate::units::Length;

/// The figures of the chapter.
#[derive(Clone, Debug, Serialize)]
pub(super) struct ReadFirst {
    cautions: Vec<CautionText>,
    signs: Vec<SignText>,
    /// Inches are rounded to this part of an inch.
    inch_step: Measure,
    /// Millimetres are rounded to this step.
    metric_step: Measure,
    /// Bits, screws and saw cuts are rounded to this part of an inch.
    fine_inch_step: Measure,
    /// And to this step of a millimetre.
    fine_metric_step: Measure,
}

/// A caution ready to print.
#[derive(Clone, Debug, Serialize)]
pub(super) struct CautionText {
    /// The name of the hazard; it is told in full at the place `caution-…`.
    id: &'static str,
    /// The hazard in a word or two.
    name: String,
    signal: SignalWord,
    hazard: Vec<TextPiece>,
    consequence: Vec<TextPiece>,
    avoidance: Vec<TextPiece>,
    signs: Vec<SignText>,
    /// Steps it concerns, counted from 1.
    steps: Vec<usize>,
    /// It concerns cutting the parts.
    cutting: bool,
    /// It concerns the finished piece.
    in_use: bool,
}

impl CautionText {
    /// A caution with its figures printed.
    pub(super) fn of(facts: &Facts, caution: &Caution) -> Self {
        // What is said of bits is as fine as their sizes in the lists.
        let pieces = if caution.operation == Operation::Drilling {
            wording::fine_pieces
        } else {
            wording::pieces
        };
        Self {
            id: caution.id,
            name: facts.words.word(&format!("caution-{}", caution.id), &[]),
            signal: caution.signal,
            hazard: pieces(facts, &caution.hazard),
            consequence: pieces(facts, &caution.consequence),
            avoidance: pieces(facts, &caution.avoidance),
            signs: signs::all(&caution.signs, facts.words),
            steps: step_numbers(&caution.occasions),
            cutting: caution.occasions.contains(&Occasion::Cutting),
            in_use: caution.occasions.contains(&Occasion::Use),
        }
    }
}

pub(super) fn of(facts: &Facts) -> ReadFirst {
    let precision = facts.precision();
    let step = Length::from_inch(1, precision.inch_denominator);
    let cautions = facts.cautions.list.iter();
    ReadFirst {
        cautions: cautions
            .map(|caution| CautionText::of(facts, caution))
            .collect(),
        signs: signs::all(&facts.cautions.signs, facts.words),
        inch_step: facts.measure(step),
        metric_step: facts.measure(precision.metric_step),
        fine_inch_step: facts.fine_measure(Length::from_inch(1, facts.fine().inch_denominator)),
        fine_metric_step: facts.fine_measure(facts.fine().metric_step),
    }
}
