//! Things: a book, a boot, a match and a flash of lightning.

use super::shapes::Ink::{Drawn, Ground};
use super::shapes::Piece::{Fill, Line};
use super::shapes::{CLOSE, Piece, Shape, curve, line, start};

/// The two open pages of the book.
const LEFT_PAGE: Shape = Shape::Drawn(&[
    start(13.0, 46.0),
    curve((26.0, 40.0), (39.0, 41.0), (48.0, 48.0)),
    line(48.0, 84.0),
    curve((39.0, 77.0), (29.0, 75.0), (16.0, 78.0)),
    CLOSE,
]);
const RIGHT_PAGE: Shape = Shape::Drawn(&[
    start(87.0, 46.0),
    curve((74.0, 40.0), (61.0, 41.0), (52.0, 48.0)),
    line(52.0, 84.0),
    curve((61.0, 77.0), (71.0, 75.0), (84.0, 78.0)),
    CLOSE,
]);

/// Someone behind an open book.
pub(super) const MANUAL: &[Piece] = &[
    Fill(Drawn, Shape::Circle(50.0, 20.0, 11.5)),
    Fill(
        Drawn,
        Shape::Drawn(&[
            start(22.0, 46.0),
            curve((25.0, 36.0), (35.0, 34.0), (50.0, 34.0)),
            curve((65.0, 34.0), (75.0, 36.0), (78.0, 46.0)),
            line(50.0, 54.0),
            CLOSE,
        ]),
    ),
    Line(Ground, 7.0, LEFT_PAGE),
    Line(Ground, 7.0, RIGHT_PAGE),
    Fill(Drawn, LEFT_PAGE),
    Fill(Drawn, RIGHT_PAGE),
    Line(
        Ground,
        3.5,
        Shape::Drawn(&[
            start(21.0, 53.0),
            curve((28.0, 51.0), (35.0, 51.5), (41.5, 55.0)),
            start(21.0, 61.5),
            curve((28.0, 59.5), (35.0, 60.0), (41.5, 63.5)),
            start(21.0, 70.0),
            curve((28.0, 68.0), (35.0, 68.5), (41.5, 72.0)),
        ]),
    ),
    Line(
        Ground,
        3.5,
        Shape::Drawn(&[
            start(79.0, 53.0),
            curve((72.0, 51.0), (65.0, 51.5), (58.5, 55.0)),
            start(79.0, 61.5),
            curve((72.0, 59.5), (65.0, 60.0), (58.5, 63.5)),
            start(79.0, 70.0),
            curve((72.0, 68.0), (65.0, 68.5), (58.5, 72.0)),
        ]),
    ),
];

/// A boot from the side, with laces, toe cap and sole.
pub(super) const BOOT: &[Piece] = &[
    Fill(
        Drawn,
        Shape::Drawn(&[
            start(29.0, 18.0),
            line(54.0, 18.0),
            line(54.0, 42.0),
            curve((57.0, 50.0), (67.0, 51.0), (75.0, 54.5)),
            curve((81.5, 57.5), (84.0, 62.0), (84.0, 69.0)),
            line(29.0, 69.0),
            curve((27.0, 60.0), (30.5, 50.0), (29.0, 40.0)),
            CLOSE,
        ]),
    ),
    Fill(
        Drawn,
        Shape::Drawn(&[
            start(28.0, 73.0),
            line(84.0, 73.0),
            line(82.5, 80.0),
            line(56.0, 80.0),
            line(52.0, 77.5),
            line(49.0, 77.5),
            line(48.0, 82.0),
            line(28.0, 82.0),
            CLOSE,
        ]),
    ),
    Line(
        Ground,
        4.0,
        Shape::Drawn(&[
            start(69.0, 50.0),
            curve((64.0, 56.0), (63.0, 62.0), (64.0, 70.0)),
        ]),
    ),
    Line(
        Ground,
        3.5,
        Shape::Drawn(&[
            start(44.0, 27.0),
            line(55.0, 27.0),
            start(44.0, 35.5),
            line(55.0, 35.5),
            start(46.0, 44.0),
            line(56.0, 44.0),
        ]),
    ),
];

/// A burning match.
pub(super) const FLAME: &[Piece] = &[
    Line(
        Drawn,
        6.0,
        Shape::Drawn(&[start(36.0, 84.0), line(49.0, 54.0)]),
    ),
    Fill(
        Drawn,
        Shape::Drawn(&[
            start(51.0, 62.0),
            curve((40.0, 60.0), (37.0, 50.0), (43.0, 40.0)),
            curve((46.0, 35.0), (54.0, 30.0), (52.0, 17.0)),
            curve((62.0, 25.0), (71.0, 38.0), (68.0, 50.0)),
            curve((66.0, 58.0), (60.0, 63.0), (51.0, 62.0)),
            CLOSE,
        ]),
    ),
    Fill(
        Ground,
        Shape::Drawn(&[
            start(54.0, 57.0),
            curve((49.0, 55.0), (48.0, 50.0), (52.0, 45.0)),
            curve((55.0, 42.0), (57.0, 39.0), (57.0, 35.0)),
            curve((62.0, 41.0), (63.0, 48.0), (60.5, 53.0)),
            curve((59.0, 56.0), (57.0, 58.0), (54.0, 57.0)),
            CLOSE,
        ]),
    ),
];

/// A flash of lightning that points down.
pub(super) const BOLT: &[Piece] = &[Fill(
    Drawn,
    Shape::Drawn(&[
        start(51.0, 29.0),
        line(57.0, 34.0),
        line(48.0, 53.0),
        line(61.0, 50.0),
        line(49.0, 73.0),
        line(54.0, 74.0),
        line(46.0, 82.0),
        line(42.5, 71.0),
        line(46.0, 72.5),
        line(50.0, 58.0),
        line(37.0, 61.0),
        CLOSE,
    ]),
)];
