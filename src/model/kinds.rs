//! Values of a wanted kind: a length, a count, a price, or the finding that it is something else.

use super::evaluate::{Evaluator, Local};
use super::findings::{NO_RESULT, NOT_POSITIVE, WRONG_KIND};
use super::value::Value;
use crate::finding::Finding;
use crate::geometry::Axis;
use crate::source::Span;
use crate::syntax::tree::Expr;
use crate::units::{Dimension, Length, Money, Quantity};

/// The largest count a source may state: of fasteners, layers, pieces, holes in a row.
const LARGEST_COUNT: i64 = 10_000;

impl Evaluator<'_> {
    /// A length of either sign.
    pub(super) fn length(&self, expr: &Expr, local: Local<'_>) -> Option<Length> {
        let quantity = self.of_kind(expr, local, Dimension::LENGTH)?;
        let length = quantity.length();
        if length.is_none() {
            self.tell(
                Finding::new(
                    &NOT_POSITIVE,
                    expr.span,
                    "this is longer than one kilometre",
                )
                .remedy("check the units"),
            );
        }
        length
    }

    /// A length above zero; `what` it is, for the finding: "the depth of the groove".
    pub(super) fn positive_length(
        &self,
        expr: &Expr,
        local: Local<'_>,
        what: &str,
    ) -> Option<Length> {
        let length = self.length(expr, local)?;
        self.checked_positive(length, expr.span, what)
    }

    /// A length that must be above zero.
    pub(super) fn checked_positive(
        &self,
        length: Length,
        span: Span,
        what: &str,
    ) -> Option<Length> {
        if length.is_positive() {
            return Some(length);
        }
        let message = format!(
            "{what} is {}, and must be more than nothing",
            length.in_both()
        );
        self.tell(Finding::new(&NOT_POSITIVE, span, message).figure(what, length));
        None
    }

    /// A length of zero or more.
    pub(super) fn length_from_zero(
        &self,
        expr: &Expr,
        local: Local<'_>,
        what: &str,
    ) -> Option<Length> {
        let length = self.length(expr, local)?;
        if length >= Length::ZERO {
            return Some(length);
        }
        let message = format!("{what} is {}, and must not be negative", length.in_both());
        self.tell(Finding::new(&NOT_POSITIVE, expr.span, message).figure(what, length));
        None
    }

    /// A position on a world axis: a face of that axis, or a length from the world's zero.
    pub(super) fn position(&self, expr: &Expr, local: Local<'_>, axis: Axis) -> Option<Length> {
        match self.value(expr, local)? {
            Value::Anchor(anchor) => {
                if let Some((found, position)) = anchor.as_plane()
                    && found == axis
                {
                    return Some(position);
                }
                let message = format!(
                    "a position {} is needed here, and this is none",
                    axis.word()
                );
                let remedy = format!(
                    "use a `{}` or `{}` face, or a length",
                    axis.low().word(),
                    axis.high().word()
                );
                self.tell(Finding::new(&WRONG_KIND, expr.span, message).remedy(remedy));
                None
            }
            value @ (Value::Quantity(_)
            | Value::Material(_)
            | Value::Part(_)
            | Value::Hardware(_)
            | Value::Placed { .. }
            | Value::Overall(_)
            | Value::Stretch(_)) => {
                let quantity = self.as_quantity(value, expr.span)?;
                self.checked_kind(quantity, expr.span, Dimension::LENGTH)?
                    .length()
            }
        }
    }

    /// A whole number from `least` up to the limit.
    pub(super) fn count(
        &self,
        expr: &Expr,
        local: Local<'_>,
        least: i64,
        what: &str,
    ) -> Option<i64> {
        let count = self.whole(expr, local)?;
        if (least..=LARGEST_COUNT).contains(&count) {
            return Some(count);
        }
        let message = format!("{what} is {count}, and must be from {least} to {LARGEST_COUNT}");
        self.tell(Finding::new(&NOT_POSITIVE, expr.span, message));
        None
    }

    /// A whole number of either sign.
    pub(super) fn whole(&self, expr: &Expr, local: Local<'_>) -> Option<i64> {
        let quantity = self.of_kind(expr, local, Dimension::COUNT)?;
        let whole = quantity.whole_number();
        if whole.is_none() {
            let message = "a whole number is needed here, this has a fraction or is too large";
            self.tell(Finding::new(&WRONG_KIND, expr.span, message));
        }
        whole
    }

    /// A price.
    pub(super) fn money(&self, expr: &Expr) -> Option<Money> {
        let quantity = self.of_kind(expr, None, Dimension::MONEY)?;
        let money = quantity.money();
        if money.is_none() {
            self.tell(Finding::new(
                &NO_RESULT,
                expr.span,
                "this price is too large",
            ));
        }
        money
    }

    /// Kilograms in a cubic metre.
    pub(super) fn density(&self, expr: &Expr) -> Option<f64> {
        let density = self.of_kind(expr, None, Dimension::DENSITY)?.kg_per_m3()?;
        if density > 0.0 && density < 25_000.0 {
            return Some(density);
        }
        let message = "a density must be above nothing and below 25000 kg/m3";
        self.tell(Finding::new(&NOT_POSITIVE, expr.span, message));
        None
    }

    /// Seconds.
    pub(super) fn seconds(&self, expr: &Expr) -> Option<i64> {
        let seconds = self.of_kind(expr, None, Dimension::TIME)?.seconds()?;
        if (0..=100 * 24 * 3600).contains(&seconds) {
            return Some(seconds);
        }
        let message = "a step takes no less than nothing and no more than a hundred days";
        self.tell(Finding::new(&NOT_POSITIVE, expr.span, message));
        None
    }

    /// Degrees of an angle.
    pub(super) fn degrees(&self, expr: &Expr) -> Option<f64> {
        self.of_kind(expr, None, Dimension::ANGLE)?.degrees()
    }

    /// A quantity of one kind.
    pub(super) fn of_kind(
        &self,
        expr: &Expr,
        local: Local<'_>,
        kind: Dimension,
    ) -> Option<Quantity> {
        let quantity = self.quantity(expr, local)?;
        self.checked_kind(quantity, expr.span, kind)
    }

    pub(super) fn checked_kind(
        &self,
        quantity: Quantity,
        span: Span,
        kind: Dimension,
    ) -> Option<Quantity> {
        if quantity.dimension == kind {
            return Some(quantity);
        }
        let message = format!(
            "{} is needed here, this is {}",
            kind.name(),
            quantity.dimension.name()
        );
        let mut finding = Finding::new(&WRONG_KIND, span, message);
        if quantity.dimension == Dimension::COUNT {
            finding = finding.remedy(match kind {
                Dimension::LENGTH => "write a unit after the number: `18 mm`, `3/4 in`",
                Dimension::MONEY => "write a currency after the number: `79.00 EUR`",
                Dimension::TIME => "write a unit after the number: `30 min`, `2 h`",
                Dimension::ANGLE => "write a unit after the number: `45 deg`",
                Dimension::DENSITY => "write a unit after the number: `680 kg/m3`",
                _ => "write a unit after the number",
            });
        }
        self.tell(finding);
        None
    }
}
