//! Texts with values in them: `say "Slide {shelves} in."`

use super::evaluate::Evaluator;
use super::findings::CHECK_NEVER_HOLDS;
use super::sizes::in_words;
use super::step::{Said, SaidPiece};
use super::value::Value;
use crate::finding::Finding;
use crate::syntax::tree::{Expr, ExprKind, SlottedText, TextPiece};
use crate::units::{Dimension, Length, Precision, Quantity};

/// How the model's own numbers of parts become the plan's.
pub(super) trait PartNumbers {
    /// The plan's part of a declared one; none where it could not be worked out.
    fn part(&self, declared: usize) -> Option<super::part::PartId>;
    /// The plan's piece of a declared placement and its index.
    fn piece(&self, place: usize, index: i64) -> Option<super::place::PlacedId>;
    /// The plan's sub-assembly of a declared placement and its index.
    fn whole(&self, place: usize, index: i64) -> Option<super::groups::InstanceId>;
}

impl Evaluator<'_> {
    /// A text with its values put in.
    pub(super) fn wording(&self, text: &SlottedText, numbers: &impl PartNumbers) -> Said {
        text.pieces
            .iter()
            .filter_map(|piece| match piece {
                TextPiece::Plain(plain) => Some(SaidPiece::Plain(plain.clone())),
                TextPiece::Slot(expr) => self.slot(expr, numbers),
            })
            .collect()
    }

    /// A text in which values, but no parts, may stand: the words that introduce the plan.
    pub(super) fn plain_wording(&self, text: &SlottedText, precision: Precision) -> String {
        let words = text.pieces.iter().filter_map(|piece| match piece {
            TextPiece::Plain(plain) => Some(plain.clone()),
            TextPiece::Slot(expr) => {
                let quantity = self.quantity(expr, None)?;
                Some(match quantity.length() {
                    Some(length) => length.printed(precision).both(precision),
                    None => in_words(&quantity),
                })
            }
        });
        words.collect()
    }

    fn slot(&self, expr: &Expr, numbers: &impl PartNumbers) -> Option<SaidPiece> {
        Some(match self.value(expr, None)? {
            Value::Quantity(quantity) => quantity_piece(&quantity),
            Value::Material(index) => SaidPiece::Value(self.material(index)?.title),
            Value::Hardware(index) => SaidPiece::Value(self.hardware(index)?.title),
            Value::Part(part) => SaidPiece::Part(numbers.part(part)?),
            Value::Placed { place, index } => {
                let (first, last) = match index {
                    Some(index) => (index, index),
                    None => self.repeats(place)?,
                };
                if self.subassembly_of(place).is_some() {
                    let wholes = (first..=last).filter_map(|number| numbers.whole(place, number));
                    return Some(SaidPiece::Wholes(wholes.collect()));
                }
                let pieces = (first..=last).filter_map(|number| numbers.piece(place, number));
                SaidPiece::Pieces(pieces.collect())
            }
            other @ (Value::Anchor(_) | Value::Overall(_) | Value::Stretch(_)) => {
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
    ) -> Option<Said> {
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
        let mut pieces = vec![SaidPiece::Plain("Measure ".to_owned())];
        self.measure_words(first, numbers, &mut pieces);
        pieces.push(SaidPiece::Plain(", and ".to_owned()));
        self.measure_words(second, numbers, &mut pieces);
        pieces.push(SaidPiece::Plain(": both are ".to_owned()));
        pieces.push(SaidPiece::Length(a));
        pieces.push(SaidPiece::Plain(
            " when all is true, and must agree within ".to_owned(),
        ));
        pieces.push(SaidPiece::Length(within));
        pieces.push(SaidPiece::Plain(".".to_owned()));
        Some(pieces)
    }

    /// What to measure, in words: "from the front bottom of the left side to …".
    fn measure_words(&self, expr: &Expr, numbers: &impl PartNumbers, pieces: &mut Vec<SaidPiece>) {
        if let ExprKind::Call { arguments, .. } = &expr.kind
            && let [from, to] = arguments.as_slice()
        {
            pieces.push(SaidPiece::Plain("from ".to_owned()));
            self.anchor_words(from, numbers, pieces);
            pieces.push(SaidPiece::Plain(" to ".to_owned()));
            self.anchor_words(to, numbers, pieces);
        } else if let ExprKind::Field { of, field } = &expr.kind {
            pieces.push(SaidPiece::Plain(format!("the {} of ", field.value)));
            pieces.extend(self.slot(of, numbers));
        } else {
            pieces.push(SaidPiece::Plain("one".to_owned()));
        }
    }

    fn anchor_words(&self, expr: &Expr, numbers: &impl PartNumbers, pieces: &mut Vec<SaidPiece>) {
        let mut words = Vec::new();
        let mut at = expr;
        while let ExprKind::Field { of, field } = &at.kind {
            words.push(field.value.as_str());
            at = of;
        }
        words.reverse();
        pieces.push(SaidPiece::Plain(format!("the {} of ", words.join(" "))));
        pieces.extend(self.slot(at, numbers));
    }
}

fn quantity_piece(quantity: &Quantity) -> SaidPiece {
    if quantity.dimension == Dimension::LENGTH {
        SaidPiece::Length(quantity.length().unwrap_or(Length::ZERO))
    } else {
        SaidPiece::Value(in_words(quantity))
    }
}
