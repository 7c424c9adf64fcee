//! What the author requires of the build, with both sides worked out.

use super::evaluate::Evaluator;
use super::sizes::in_words;
use crate::source::Span;
use crate::syntax::tree::{Comparison, Require};
use crate::units::{Length, Quantity};

/// A requirement, worked out.
#[derive(Clone, Debug, PartialEq)]
pub struct Requirement {
    /// Whether it holds.
    pub holds: bool,
    /// Left side, in words and both systems.
    pub left: String,
    /// How the sides are to compare: "less than".
    pub comparison: &'static str,
    /// Right side, in words and both systems.
    pub right: String,
    /// Both sides as lengths, where they are lengths.
    pub lengths: Option<(Length, Length)>,
    /// Why it is required.
    pub because: Option<String>,
    /// Where it is written.
    pub span: Span,
}

impl Evaluator<'_> {
    /// A requirement.
    pub(super) fn requirement(&self, require: &Require) -> Option<Requirement> {
        let left = self.quantity(&require.left, None);
        let right = self.quantity(&require.right, None);
        let (left, right) = (left?, right?);
        if let Err(fault) = left.same_kind(&right) {
            self.result(Err(fault), require.span);
            return None;
        }
        let holds = match (require.comparison, &require.within) {
            (Comparison::Equal, Some(within)) => {
                let within = self.quantity(within, None)?;
                if let Err(fault) = left.same_kind(&within) {
                    self.result(Err(fault), require.span);
                    return None;
                }
                difference(&left, &right)? <= within.amount
            }
            (Comparison::Equal, None) => left.amount == right.amount,
            (Comparison::Less, _) => left.amount < right.amount,
            (Comparison::AtMost, _) => left.amount <= right.amount,
            (Comparison::AtLeast, _) => left.amount >= right.amount,
            (Comparison::More, _) => left.amount > right.amount,
        };
        Some(Requirement {
            holds,
            left: in_words(&left),
            comparison: words_of(require.comparison),
            right: in_words(&right),
            lengths: left.length().zip(right.length()),
            because: require.because.as_ref().map(|text| text.value.clone()),
            span: require.span,
        })
    }
}

/// The distance between two amounts of one kind.
fn difference(left: &Quantity, right: &Quantity) -> Option<crate::units::Number> {
    let difference = left.minus(right).ok()?;
    if crate::units::rounding::is_negative(&difference.amount) {
        return difference.negated().ok().map(|quantity| quantity.amount);
    }
    Some(difference.amount)
}

fn words_of(comparison: Comparison) -> &'static str {
    match comparison {
        Comparison::Less => "less than",
        Comparison::AtMost => "at most",
        Comparison::Equal => "equal to",
        Comparison::AtLeast => "at least",
        Comparison::More => "more than",
    }
}
