//! Expressions: flat lists of terms and operators into trees.

use super::findings::{BAD_NUMBER, TOO_DEEP};
use super::literal::{self, LiteralFault};
use super::lower::Reader;
use super::pairs::{Node, Parts, Rule};
use super::tree::{Expr, ExprKind, Operator};
use crate::finding::Finding;
use crate::source::{DEEPEST_NESTING, Span};

/// An expression and how deep its tree is: every later stage walks it by recursion.
struct Deep {
    expr: Expr,
    depth: usize,
}

impl Deep {
    fn leaf(kind: ExprKind, span: Span) -> Self {
        let expr = Expr { kind, span };
        Self { expr, depth: 1 }
    }
}

impl<'s> Reader<'s> {
    /// The expression that `node` holds; none where a fault in it was reported.
    pub(super) fn expr(&mut self, node: Node<'s>) -> Option<Expr> {
        self.sum(node).map(|deep| deep.expr)
    }

    /// Terms and operators; products bind closer than sums, both from left to right.
    fn sum(&mut self, node: Node<'s>) -> Option<Deep> {
        let mut parts = node.parts();
        let mut sum: Option<(Deep, Operator)> = None;
        let mut product = self.term(&mut parts)?;
        while let Some(operator) = parts.take(Rule::operator) {
            let operator = operator_of(operator.text());
            let term = self.term(&mut parts)?;
            match operator {
                Operator::Times | Operator::Over => {
                    product = self.binary(product, operator, term)?;
                }
                Operator::Plus | Operator::Minus => {
                    let left = match sum {
                        Some((left, operator)) => self.binary(left, operator, product)?,
                        None => product,
                    };
                    sum = Some((left, operator));
                    product = term;
                }
            }
        }
        match sum {
            Some((left, operator)) => self.binary(left, operator, product),
            None => Some(product),
        }
    }

    fn binary(&mut self, left: Deep, operator: Operator, right: Deep) -> Option<Deep> {
        let span = left.expr.span.to(right.expr.span);
        let depth = left.depth.max(right.depth);
        let kind = ExprKind::Binary {
            operator,
            left: Box::new(left.expr),
            right: Box::new(right.expr),
        };
        self.over(kind, span, depth)
    }

    /// An expression over others, the deepest of which is `depth` deep.
    fn over(&mut self, kind: ExprKind, span: Span, depth: usize) -> Option<Deep> {
        if depth >= DEEPEST_NESTING {
            let message = format!("the expression has more than {DEEPEST_NESTING} levels");
            let finding = Finding::new(&TOO_DEEP, span, message);
            self.report(finding.remedy("give a part of it a name with `let` and use the name"));
            return None;
        }
        Some(Deep {
            expr: Expr { kind, span },
            depth: depth + 1,
        })
    }

    /// Signs, what they stand before, and the fields and indices behind it.
    fn term(&mut self, parts: &mut Parts<'s>) -> Option<Deep> {
        let mut signs = Vec::new();
        while let Some(sign) = parts.take(Rule::minus) {
            signs.push(sign.span());
        }
        let mut term = self.atom(parts.value()?)?;
        loop {
            if let Some(node) = parts.take(Rule::field) {
                let span = term.expr.span.to(node.span());
                let kind = ExprKind::Field {
                    of: Box::new(term.expr),
                    field: node.parts().name()?,
                };
                term = self.over(kind, span, term.depth)?;
            } else if let Some(node) = parts.take(Rule::index) {
                let span = term.expr.span.to(node.span());
                let index = self.sum(node)?;
                let depth = term.depth.max(index.depth);
                let kind = ExprKind::Index {
                    of: Box::new(term.expr),
                    index: Box::new(index.expr),
                };
                term = self.over(kind, span, depth)?;
            } else {
                break;
            }
        }
        for sign in signs.into_iter().rev() {
            let span = sign.to(term.expr.span);
            let kind = ExprKind::Negated(Box::new(term.expr));
            term = self.over(kind, span, term.depth)?;
        }
        Some(term)
    }

    #[expect(
        clippy::wildcard_enum_match_arm,
        reason = "of all rules of the grammar, an atom is one of these six"
    )]
    fn atom(&mut self, node: Node<'s>) -> Option<Deep> {
        let (span, text) = (node.span(), node.text());
        let kind = match node.rule() {
            Rule::number => self
                .literal(literal::number(text), span)
                .map(ExprKind::Number)?,
            Rule::measured | Rule::fraction => {
                let quantity = self.literal(literal::measured(text), span)?;
                ExprKind::Quantity(quantity)
            }
            Rule::feet_inches => {
                let quantity = self.literal(literal::feet_inches(text), span)?;
                ExprKind::Quantity(quantity)
            }
            Rule::group => {
                // The parentheses belong to it, so that a message shows all of it.
                let Deep { mut expr, depth } = self.sum(node)?;
                expr.span = span;
                return Some(Deep { expr, depth });
            }
            Rule::called => return self.called(node),
            _ => return None,
        };
        Some(Deep::leaf(kind, span))
    }

    /// A name, or a function and what it is given.
    fn called(&mut self, node: Node<'s>) -> Option<Deep> {
        let span = node.span();
        let mut parts = node.parts();
        let name = parts.name()?;
        let Some(list) = parts.take(Rule::arguments) else {
            return Some(Deep::leaf(ExprKind::Name(name), span));
        };
        let mut arguments = Vec::new();
        let mut depth = 0;
        let mut list = list.parts();
        while let Some(argument) = list.take(Rule::argument) {
            let argument = self.sum(argument)?;
            depth = depth.max(argument.depth);
            arguments.push(argument.expr);
        }
        let kind = ExprKind::Call {
            function: name,
            arguments,
        };
        self.over(kind, span, depth)
    }

    fn literal<T>(&mut self, value: Result<T, LiteralFault>, span: Span) -> Option<T> {
        match value {
            Ok(value) => Some(value),
            Err(fault) => {
                let text = self.source.slice(span.range());
                let shown: String = text.chars().take(24).collect();
                let dots = if shown.len() < text.len() { "…" } else { "" };
                let message = format!("`{shown}{dots}` {fault}");
                self.report(Finding::new(&BAD_NUMBER, span, message));
                None
            }
        }
    }
}

fn operator_of(text: &str) -> Operator {
    match text {
        "-" => Operator::Minus,
        "*" => Operator::Times,
        "/" => Operator::Over,
        _ => Operator::Plus,
    }
}
