//! A head from the front, and what is worn on it.

use super::shapes::Ink::{Drawn, Ground};
use super::shapes::Piece::{Fill, Line};
use super::shapes::{CLOSE, Piece, Shape, curve, line, start};

const HEAD: Shape = Shape::Drawn(&[
    start(50.0, 20.0),
    curve((61.5, 20.0), (70.0, 29.0), (70.0, 42.0)),
    curve((70.0, 56.0), (61.5, 69.0), (50.0, 69.0)),
    curve((38.5, 69.0), (30.0, 56.0), (30.0, 42.0)),
    curve((30.0, 29.0), (38.5, 20.0), (50.0, 20.0)),
    CLOSE,
]);

/// Neck and shoulders, down to the rim of the disc.
const SHOULDERS: Piece = Fill(
    Drawn,
    Shape::Drawn(&[
        start(20.0, 84.0),
        curve((22.0, 75.0), (33.0, 73.0), (41.0, 70.0)),
        line(59.0, 70.0),
        curve((67.0, 73.0), (78.0, 75.0), (80.0, 84.0)),
        curve((64.0, 98.5), (36.0, 98.5), (20.0, 84.0)),
        CLOSE,
    ]),
);

/// Parts the chin from the neck.
const CHIN: Piece = Line(Ground, 6.0, HEAD);
const FACE: Piece = Fill(Drawn, HEAD);

/// Goggles over the whole width of the face, with their strap.
pub(super) const EYES: &[Piece] = &[
    SHOULDERS,
    CHIN,
    FACE,
    Line(
        Ground,
        5.0,
        Shape::Drawn(&[start(28.0, 38.0), line(72.0, 38.0)]),
    ),
    Fill(
        Ground,
        Shape::Drawn(&[
            start(37.0, 33.5),
            line(44.0, 33.5),
            curve((47.0, 33.5), (49.0, 35.0), (49.0, 38.0)),
            line(48.0, 44.0),
            curve((47.5, 48.5), (44.0, 50.0), (40.0, 50.0)),
            curve((35.5, 50.0), (33.0, 47.0), (33.0, 42.0)),
            line(33.0, 37.5),
            curve((33.0, 35.0), (34.5, 33.5), (37.0, 33.5)),
            CLOSE,
        ]),
    ),
    Fill(
        Ground,
        Shape::Drawn(&[
            start(63.0, 33.5),
            line(56.0, 33.5),
            curve((53.0, 33.5), (51.0, 35.0), (51.0, 38.0)),
            line(52.0, 44.0),
            curve((52.5, 48.5), (56.0, 50.0), (60.0, 50.0)),
            curve((64.5, 50.0), (67.0, 47.0), (67.0, 42.0)),
            line(67.0, 37.5),
            curve((67.0, 35.0), (65.5, 33.5), (63.0, 33.5)),
            CLOSE,
        ]),
    ),
];

/// Ear muffs on a band.
pub(super) const EARS: &[Piece] = &[
    SHOULDERS,
    CHIN,
    FACE,
    Line(
        Drawn,
        5.5,
        Shape::Drawn(&[
            start(21.0, 44.0),
            curve((21.0, 24.0), (33.0, 11.0), (50.0, 11.0)),
            curve((67.0, 11.0), (79.0, 24.0), (79.0, 44.0)),
        ]),
    ),
    Line(
        Ground,
        17.0,
        Shape::Drawn(&[start(25.0, 41.0), line(25.0, 53.0)]),
    ),
    Line(
        Drawn,
        11.0,
        Shape::Drawn(&[start(22.0, 41.0), line(22.0, 53.0)]),
    ),
    Line(
        Ground,
        17.0,
        Shape::Drawn(&[start(75.0, 41.0), line(75.0, 53.0)]),
    ),
    Line(
        Drawn,
        11.0,
        Shape::Drawn(&[start(78.0, 41.0), line(78.0, 53.0)]),
    ),
];

/// A mask over nose and mouth, with its straps.
pub(super) const MASK: &[Piece] = &[
    SHOULDERS,
    CHIN,
    FACE,
    Line(
        Ground,
        3.5,
        Shape::Drawn(&[
            start(29.5, 38.5),
            line(40.0, 46.0),
            line(60.0, 46.0),
            line(70.5, 38.5),
        ]),
    ),
    Line(
        Ground,
        3.5,
        Shape::Drawn(&[start(30.0, 52.5), line(70.0, 52.5)]),
    ),
    Fill(
        Ground,
        Shape::Drawn(&[
            start(50.0, 36.5),
            curve((54.5, 36.5), (56.0, 42.5), (64.0, 47.0)),
            curve((65.5, 54.0), (62.0, 65.0), (50.0, 65.0)),
            curve((38.0, 65.0), (34.5, 54.0), (36.0, 47.0)),
            curve((44.0, 42.5), (45.5, 36.5), (50.0, 36.5)),
            CLOSE,
        ]),
    ),
    Fill(Ground, Shape::Circle(41.0, 34.0, 2.8)),
    Fill(Ground, Shape::Circle(59.0, 34.0, 2.8)),
];
