//! What symbols are made of: filled shapes and round-ended lines of two tones.

use crate::display::{Path, PathPiece, Spot};

/// Width and height of the frame that symbols are drawn in.
pub(super) const FRAME: f64 = 100.0;

/// One of the two tones of a sign; which is black is up to the sign's kind.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Ink {
    /// What the pictogram stands on.
    Ground,
    /// What the pictogram is drawn in.
    Drawn,
}

/// A piece of a symbol; later ones lie over earlier ones.
#[derive(Clone, Copy, Debug)]
pub(super) enum Piece {
    /// The inside of a shape.
    Fill(Ink, Shape),
    /// A line of a width along a shape, its ends and corners round.
    Line(Ink, f64, Shape),
}

/// A shape in the frame.
#[derive(Clone, Copy, Debug)]
pub(super) enum Shape {
    /// A circle: its centre and its radius.
    Circle(f64, f64, f64),
    /// Lines and curves.
    Drawn(&'static [PathPiece]),
}

impl Shape {
    /// Its path, `scale` points to a unit of the frame.
    pub(super) fn path(self, scale: f64) -> Path {
        let at = |spot: Spot| Spot::new(spot.x * scale, spot.y * scale);
        let pieces = match self {
            Self::Circle(x, y, radius) => {
                return Path::circle(at(Spot::new(x, y)), radius * scale);
            }
            Self::Drawn(pieces) => pieces.iter(),
        };
        let scaled = pieces.map(|piece| match *piece {
            PathPiece::Move(to) => PathPiece::Move(at(to)),
            PathPiece::Line(to) => PathPiece::Line(at(to)),
            PathPiece::Curve(a, b, to) => PathPiece::Curve(at(a), at(b), at(to)),
            PathPiece::Close => PathPiece::Close,
        });
        Path {
            pieces: scaled.collect(),
        }
    }
}

/// Begin here.
pub(super) const fn start(x: f64, y: f64) -> PathPiece {
    PathPiece::Move(Spot::new(x, y))
}

/// Straight on to here.
pub(super) const fn line(x: f64, y: f64) -> PathPiece {
    PathPiece::Line(Spot::new(x, y))
}

/// A Bézier curve: two control points and its end.
pub(super) const fn curve(a: (f64, f64), b: (f64, f64), to: (f64, f64)) -> PathPiece {
    PathPiece::Curve(
        Spot::new(a.0, a.1),
        Spot::new(b.0, b.1),
        Spot::new(to.0, to.1),
    )
}

/// Back to the start.
pub(super) const CLOSE: PathPiece = PathPiece::Close;
