//! The outer shapes of signs by their kind.

use super::shapes::Ink::{Drawn, Ground};
use super::shapes::Piece::{Fill, Line};
use super::shapes::{CLOSE, Piece, Shape, line, start};
use crate::caution::SignKind;

/// What lies below and above a pictogram.
#[derive(Clone, Copy, Debug)]
pub(super) struct Outer {
    pub(super) below: &'static [Piece],
    pub(super) above: &'static [Piece],
}

impl Outer {
    pub(super) const fn of(kind: SignKind) -> Self {
        let (below, above) = match kind {
            SignKind::Mandatory => (DISC, NONE),
            SignKind::Prohibition => (NONE, BARRED_RING),
            SignKind::Warning => (TRIANGLE, NONE),
        };
        Self { below, above }
    }
}

const NONE: &[Piece] = &[];

const DISC: &[Piece] = &[Fill(Ground, Shape::Circle(50.0, 50.0, 49.0))];

/// The bar falls to the right and parts from what it crosses.
const BARRED_RING: &[Piece] = &[
    Line(
        Ground,
        13.5,
        Shape::Drawn(&[start(24.0, 24.0), line(76.0, 76.0)]),
    ),
    Line(
        Drawn,
        7.5,
        Shape::Drawn(&[start(18.5, 18.5), line(81.5, 81.5)]),
    ),
    Line(Drawn, 8.5, Shape::Circle(50.0, 50.0, 44.5)),
];

/// Its sides are even.
const TRIANGLE: &[Piece] = &[Line(
    Drawn,
    7.0,
    Shape::Drawn(&[start(50.0, 10.6), line(95.5, 89.4), line(4.5, 89.4), CLOSE]),
)];
