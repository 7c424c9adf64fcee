//! Texts with values in them: `say "Slide {shelves} in."`

use super::evaluate::Evaluator;
use super::findings::CHECK_NEVER_HOLDS;
use super::sizes::in_words;
use super::step::{Wording, WordingPiece};
use super::value::Value;
use crate::finding::Finding;
use crate::syntax::tree::{Expr, ExprKind, SlottedText, TextPiece};
use crate::units::{Dimension, Length, Quantity};

/// How the model's own numbers of parts become the plan's.
pub(super) trait PartNumbers {
    /// The plan's part of a declared one; none where it could not be worked out.
    fn part(&self, declared: usize) -> Option<super::part::PartId>;
}

impl Evaluator<'_> {
    /// A text with its values put in.
    pub(super) fn wording(&self, text: &SlottedText, numbers: &impl PartNumbers) -> Wording {
        let pieces = text
            .pieces
            .iter()
            .filter_map(|piece| match piece {
                TextPiece::Plain(plain) => Some(WordingPiece::Plain(plain.clone())),
                TextPiece::Slot(expr) => self.slot(expr, numbers),
            })
            .collect();
        Wording { pieces }
    }

    fn slot(&self, expr: &Expr, numbers: &impl PartNumbers) -> Option<WordingPiece> {
        Some(match self.value(expr, None)? {
            Value::Quantity(quantity) => quantity_piece(&quantity),
            Value::Material(index) => WordingPiece::Value(self.material(index)?.title),
            Value::Hardware(index) => WordingPiece::Value(self.hardware(index)?.title),
            Value::Part(part) => WordingPiece::Part(numbers.part(part)?, 1),
            Value::Placed { place, index } => {
                let part = numbers.part(self.part_of_place(place)?)?;
                let count = match index {
                    Some(_) => 1,
                    None => self
                        .repeats(place)
                        .map_or(1, |(first, last)| last - first + 1),
                };
                WordingPiece::Part(part, count)
            }
            other @ (Value::Anchor(_) | Value::Overall | Value::Stretch(_)) => {
                quantity_piece(&self.as_quantity(other, expr.span)?)
            }
        })
    }

    /// `check equal a, b within c`: what to measure, and what both must be.
    pub(super) fn equal_check(
        &self,
        [first, second]: [&Expr; 2],
        within: &Expr,
        numbers: &impl PartNumbers,
    ) -> Option<Wording> {
        let a = self.length(first, None);
        let b = self.length(second, None);
        let within = self.length_from_zero(within, None, "the allowed difference")?;
        let (a, b) = (a?.abs(), b?.abs());
        let difference = (a - b).abs();
        if difference > within {
            let message = format!(
                "these are {} and {} in the design, and cannot be equal",
                a.in_both(),
                b.in_both()
            );
            self.tell(
                Finding::new(&CHECK_NEVER_HOLDS, first.span.to(second.span), message)
                    .figure("difference", difference)
                    .figure("allowed", within),
            );
            return None;
        }
        let mut pieces = vec![WordingPiece::Plain("Measure ".to_owned())];
        self.measure_words(first, numbers, &mut pieces);
        pieces.push(WordingPiece::Plain(", and ".to_owned()));
        self.measure_words(second, numbers, &mut pieces);
        pieces.push(WordingPiece::Plain(": both are ".to_owned()));
        pieces.push(WordingPiece::Length(a));
        pieces.push(WordingPiece::Plain(
            " when all is true, and must agree within ".to_owned(),
        ));
        pieces.push(WordingPiece::Length(within));
        pieces.push(WordingPiece::Plain(".".to_owned()));
        Some(Wording { pieces })
    }

    /// What to measure, in words: "from the front bottom of the left side to …".
    fn measure_words(
        &self,
        expr: &Expr,
        numbers: &impl PartNumbers,
        pieces: &mut Vec<WordingPiece>,
    ) {
        if let ExprKind::Call { arguments, .. } = &expr.kind
            && let [from, to] = arguments.as_slice()
        {
            pieces.push(WordingPiece::Plain("from ".to_owned()));
            self.anchor_words(from, numbers, pieces);
            pieces.push(WordingPiece::Plain(" to ".to_owned()));
            self.anchor_words(to, numbers, pieces);
        } else if let ExprKind::Field { of, field } = &expr.kind {
            pieces.push(WordingPiece::Plain(format!("the {} of ", field.value)));
            pieces.extend(self.slot(of, numbers));
        } else {
            pieces.push(WordingPiece::Plain("one".to_owned()));
        }
    }

    fn anchor_words(
        &self,
        expr: &Expr,
        numbers: &impl PartNumbers,
        pieces: &mut Vec<WordingPiece>,
    ) {
        let mut words = Vec::new();
        let mut at = expr;
        while let ExprKind::Field { of, field } = &at.kind {
            words.push(field.value.as_str());
            at = of;
        }
        words.reverse();
        pieces.push(WordingPiece::Plain(format!("the {} of ", words.join(" "))));
        pieces.extend(self.slot(at, numbers));
    }
}

fn quantity_piece(quantity: &Quantity) -> WordingPiece {
    if quantity.dimension == Dimension::LENGTH {
        WordingPiece::Length(quantity.length().unwrap_or(Length::ZERO))
    } else {
        WordingPiece::Value(in_words(quantity))
    }
}
