//! Hands and what is on them or comes down on them.

use super::shapes::Ink::{Drawn, Ground};
use super::shapes::Piece::{Fill, Line};
use super::shapes::{CLOSE, Piece, Shape, curve, line, start};

/// A glove with its cuff, fingers up.
pub(super) const GLOVE: &[Piece] = &[
    Line(
        Drawn,
        8.5,
        Shape::Drawn(&[start(37.0, 52.0), line(35.5, 27.0)]),
    ),
    Line(
        Drawn,
        8.5,
        Shape::Drawn(&[start(47.0, 52.0), line(46.5, 19.0)]),
    ),
    Line(
        Drawn,
        8.5,
        Shape::Drawn(&[start(57.0, 52.0), line(57.5, 20.0)]),
    ),
    Line(
        Drawn,
        8.5,
        Shape::Drawn(&[start(66.0, 54.0), line(68.5, 30.0)]),
    ),
    Line(
        Drawn,
        9.5,
        Shape::Drawn(&[
            start(39.0, 67.0),
            curve((30.0, 62.0), (28.0, 53.0), (22.5, 45.0)),
        ]),
    ),
    Fill(
        Drawn,
        Shape::Drawn(&[
            start(32.75, 47.0),
            line(70.3, 47.0),
            line(69.5, 60.0),
            curve((69.0, 66.0), (67.0, 68.0), (66.0, 71.5)),
            line(37.0, 71.5),
            curve((36.0, 69.0), (33.5, 66.0), (33.0, 60.0)),
            CLOSE,
        ]),
    ),
    Fill(
        Drawn,
        Shape::Drawn(&[
            start(36.0, 75.5),
            line(67.0, 75.5),
            line(68.0, 86.5),
            line(35.0, 86.5),
            CLOSE,
        ]),
    ),
    // Between the fingers.
    Line(
        Ground,
        3.0,
        Shape::Drawn(&[start(41.5, 48.0), line(41.0, 30.0)]),
    ),
    Line(
        Ground,
        3.0,
        Shape::Drawn(&[start(52.0, 48.0), line(52.0, 30.0)]),
    ),
    Line(
        Ground,
        3.0,
        Shape::Drawn(&[start(62.0, 48.0), line(63.0, 30.0)]),
    ),
];

/// A hand on a bench, under a block that comes down.
pub(super) const CRUSHED: &[Piece] = &[
    Line(
        Drawn,
        3.5,
        Shape::Drawn(&[start(19.0, 82.0), line(81.0, 82.0)]),
    ),
    Fill(
        Drawn,
        Shape::Drawn(&[
            start(18.5, 77.5),
            line(24.5, 65.0),
            line(37.0, 62.0),
            curve((42.0, 61.0), (46.0, 62.5), (50.0, 65.0)),
            line(71.0, 71.5),
            curve((75.5, 73.0), (74.5, 77.5), (70.0, 77.5)),
            CLOSE,
        ]),
    ),
    // Parts the thumb from the fingers.
    Line(
        Ground,
        3.0,
        Shape::Drawn(&[start(38.0, 69.5), line(50.0, 74.5), line(56.0, 80.0)]),
    ),
    Fill(
        Drawn,
        Shape::Drawn(&[
            start(50.0, 44.0),
            line(65.0, 44.0),
            line(65.0, 64.7),
            line(50.0, 60.0),
            CLOSE,
        ]),
    ),
    Line(
        Drawn,
        3.5,
        Shape::Drawn(&[start(50.0, 24.0), line(50.0, 37.0)]),
    ),
    Line(
        Drawn,
        3.5,
        Shape::Drawn(&[start(45.0, 32.5), line(50.0, 38.0), line(55.0, 32.5)]),
    ),
];
