//! The display list: strokes, fills, glyph runs and links on a plane, ready to be written.
//!
//! Coordinates are points (1/72 in) from the upper left corner, y downwards. The same list goes
//! to the PDF and to SVG. Nothing here knows what is drawn.

mod colours;
mod scaling;

pub use colours::{Colours, LETTERS, Tone};

/// Points in a millimetre (ref: units-and-paper, "Factors" [D]: 360/127).
pub const PT_PER_MM: f64 = 360.0 / 127.0;

/// A point of the plane, in points.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Spot {
    /// From the left, in points.
    pub x: f64,
    /// From the top, in points.
    pub y: f64,
}

impl Spot {
    /// The spot at `x`, `y`, in points.
    pub const fn new(x: f64, y: f64) -> Self {
        Self { x, y }
    }

    /// Moved by `dx`, `dy`, in points.
    pub fn shifted(self, dx: f64, dy: f64) -> Self {
        Self {
            x: self.x + dx,
            y: self.y + dy,
        }
    }
}

/// A piece of a path.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum PathPiece {
    /// Begin a new ring or line here.
    Move(Spot),
    /// Straight on.
    Line(Spot),
    /// A cubic Bézier curve: two control points and its end.
    Curve(Spot, Spot, Spot),
    /// Back to the last `Move`.
    Close,
}

impl PathPiece {
    /// Where the pen is after it, if that is not where the ring began.
    pub const fn end(&self) -> Option<Spot> {
        match self {
            Self::Move(to) | Self::Line(to) | Self::Curve(_, _, to) => Some(*to),
            Self::Close => None,
        }
    }
}

/// Lines and curves, of one or more rings.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Path {
    /// Its pieces, in order.
    pub pieces: Vec<PathPiece>,
}

impl Path {
    /// The area around it; none where it has no pieces.
    pub fn bounds(&self) -> Option<Area> {
        Area::around(|take| self.each_extreme(take))
    }

    /// The same path with another place for each of its spots.
    fn with_spots(mut self, place: impl Fn(Spot) -> Spot) -> Self {
        for piece in &mut self.pieces {
            match piece {
                PathPiece::Move(to) | PathPiece::Line(to) => *to = place(*to),
                PathPiece::Curve(a, b, to) => {
                    *a = place(*a);
                    *b = place(*b);
                    *to = place(*to);
                }
                PathPiece::Close => {}
            }
        }
        self
    }

    /// A polygon or an open polyline through `spots`.
    pub fn polyline(spots: &[Spot], ends: Ends) -> Self {
        let mut pieces: Vec<PathPiece> = spots
            .iter()
            .enumerate()
            .map(|(i, spot)| {
                if i == 0 {
                    PathPiece::Move(*spot)
                } else {
                    PathPiece::Line(*spot)
                }
            })
            .collect();
        if ends == Ends::Joined {
            pieces.push(PathPiece::Close);
        }
        Self { pieces }
    }

    /// A rectangle.
    pub fn rectangle(area: Area) -> Self {
        let (right, bottom) = (area.x + area.width, area.y + area.height);
        let corners = [
            Spot::new(area.x, area.y),
            Spot::new(right, area.y),
            Spot::new(right, bottom),
            Spot::new(area.x, bottom),
        ];
        Self::polyline(&corners, Ends::Joined)
    }

    /// A circle, of four Bézier curves (within 0.03 % of its radius).
    pub fn circle(centre: Spot, radius: f64) -> Self {
        let k = radius * 0.552_284_749_830_793_6;
        let at = |dx: f64, dy: f64| centre.shifted(dx, dy);
        let r = radius;
        Self {
            pieces: vec![
                PathPiece::Move(at(r, 0.0)),
                PathPiece::Curve(at(r, k), at(k, r), at(0.0, r)),
                PathPiece::Curve(at(-k, r), at(-r, k), at(-r, 0.0)),
                PathPiece::Curve(at(-r, -k), at(-k, -r), at(0.0, -r)),
                PathPiece::Curve(at(k, -r), at(r, -k), at(r, 0.0)),
                PathPiece::Close,
            ],
        }
    }

    /// Moved by `dx`, `dy`, in points.
    #[must_use]
    pub fn shifted(self, dx: f64, dy: f64) -> Self {
        self.with_spots(|spot| spot.shifted(dx, dy))
    }

    /// Calls `take` with spots whose extent is the path's own: ends of lines and curves, and
    /// where a curve goes farthest to a side.
    pub fn each_extreme(&self, mut take: impl FnMut(Spot)) {
        let mut from = Spot::default();
        for piece in &self.pieces {
            if let PathPiece::Curve(a, b, to) = *piece {
                let x = turning_points(from.x, a.x, b.x, to.x);
                let y = turning_points(from.y, a.y, b.y, to.y);
                for t in x.into_iter().chain(y).filter(|t| *t > 0.0 && *t < 1.0) {
                    take(Spot::new(
                        bezier(from.x, a.x, b.x, to.x, t),
                        bezier(from.y, a.y, b.y, to.y, t),
                    ));
                }
            }
            if let Some(to) = piece.end() {
                take(to);
                from = to;
            }
        }
    }
}

/// A cubic Bézier curve's coordinate at `t`.
fn bezier(from: f64, a: f64, b: f64, to: f64, t: f64) -> f64 {
    let u = 1.0 - t;
    u * u * u * from + 3.0 * u * u * t * a + 3.0 * u * t * t * b + t * t * t * to
}

/// Where the derivative of a cubic Bézier curve's coordinate is zero; no number where it is not.
fn turning_points(from: f64, a: f64, b: f64, to: f64) -> [f64; 2] {
    let (p, q, r) = (a - from, b - a, to - b);
    // p (1 − t)² + 2 q t (1 − t) + r t² = 0
    let (square, linear) = (p - 2.0 * q + r, q - p);
    if square.abs() < 1e-12 {
        return [-p / (2.0 * linear), f64::NAN];
    }
    let root = (linear * linear - square * p).sqrt();
    [(-linear + root) / square, (-linear - root) / square]
}

/// Whether a line of spots goes back to its beginning.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ends {
    /// Left open.
    Open,
    /// Closed to a ring.
    Joined,
}

/// A rectangle: its upper left corner and its size, in points.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Area {
    /// Left.
    pub x: f64,
    /// Top.
    pub y: f64,
    /// Width.
    pub width: f64,
    /// Height.
    pub height: f64,
}

impl Area {
    /// The area around all spots that `each` gives; none where it gives none.
    pub fn around(each: impl FnOnce(&mut dyn FnMut(Spot))) -> Option<Self> {
        let mut low = Spot::new(f64::INFINITY, f64::INFINITY);
        let mut high = Spot::new(f64::NEG_INFINITY, f64::NEG_INFINITY);
        each(&mut |spot| {
            low = Spot::new(low.x.min(spot.x), low.y.min(spot.y));
            high = Spot::new(high.x.max(spot.x), high.y.max(spot.y));
        });
        (low.x <= high.x).then_some(Self {
            x: low.x,
            y: low.y,
            width: high.x - low.x,
            height: high.y - low.y,
        })
    }
}

/// How a line is drawn.
#[derive(Clone, Debug, PartialEq)]
pub struct Pen {
    /// Width in points.
    pub width: f64,
    /// Tone.
    pub tone: Tone,
    /// Lengths of dashes and gaps in points; empty for a continuous line.
    pub dashes: Vec<f64>,
}

/// A face of the shipped or the user's fonts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Face {
    /// Upright text.
    Regular,
    /// Strong text and headings.
    Bold,
    /// Emphasis.
    Italic,
}

/// A glyph in its place on a line.
#[derive(Clone, Debug, PartialEq)]
pub struct Glyph {
    /// Its number in the font.
    pub id: u16,
    /// How far the pen moves on, in points.
    pub advance: f64,
    /// Moved aside from the pen, in points.
    pub offset_x: f64,
    /// Moved up from the baseline, in points: an accent over a capital.
    pub offset_y: f64,
    /// The characters it stands for, empty for a glyph more than its cluster has characters: what
    /// a reader copies out of the PDF.
    pub text: String,
}

/// Glyphs of one face and size on one baseline.
#[derive(Clone, Debug, PartialEq)]
pub struct GlyphRun {
    /// Where the baseline begins.
    pub origin: Spot,
    /// Face of the font.
    pub face: Face,
    /// Size in points.
    pub size: f64,
    /// Tone.
    pub tone: Tone,
    /// The glyphs, in order.
    pub glyphs: Vec<Glyph>,
}

/// Something drawn.
#[derive(Clone, Debug, PartialEq)]
pub enum Mark {
    /// A line along a path.
    Stroke {
        /// Where.
        path: Path,
        /// How.
        pen: Pen,
    },
    /// The inside of a path, by the even-odd rule.
    Fill {
        /// Where.
        path: Path,
        /// With what.
        tone: Tone,
    },
    /// The inside of a path with a line of the same tone along its edge, which closes the hair
    /// that readers leave between two fills that meet.
    Sealed {
        /// Where.
        path: Path,
        /// With what.
        tone: Tone,
        /// Width of the line in points.
        width: f64,
    },
    /// Text.
    Text(GlyphRun),
    /// An area that leads to a place in the document, by the place's name.
    Link {
        /// Where.
        area: Area,
        /// The name of the place.
        target: String,
    },
}

impl Mark {
    /// Moved by `dx`, `dy`, in points.
    #[must_use]
    pub fn shifted(self, dx: f64, dy: f64) -> Self {
        match self {
            Self::Stroke { path, pen } => Self::Stroke {
                path: path.shifted(dx, dy),
                pen,
            },
            Self::Fill { path, tone } => Self::Fill {
                path: path.shifted(dx, dy),
                tone,
            },
            Self::Sealed { path, tone, width } => Self::Sealed {
                path: path.shifted(dx, dy),
                tone,
                width,
            },
            Self::Text(run) => Self::Text(GlyphRun {
                origin: run.origin.shifted(dx, dy),
                ..run
            }),
            Self::Link { area, target } => Self::Link {
                area: Area {
                    x: area.x + dx,
                    y: area.y + dy,
                    ..area
                },
                target,
            },
        }
    }
}

/// A drawing of known size: its marks lie between 0, 0 and its width and height.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Figure {
    /// Width in points.
    pub width: f64,
    /// Height in points.
    pub height: f64,
    /// What is drawn, later marks over earlier ones.
    pub marks: Vec<Mark>,
    /// What it shows, in words, for readers who do not see it.
    pub alternative: String,
    /// Its scale is written on it: it is printed in this size or not at all.
    pub to_scale: bool,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_circle_reaches_its_radius_to_every_side_however_it_is_cut() {
        let circle = Path::circle(Spot::new(3.0, 4.0), 2.0);
        // Half of it, of two curves that turn in their middles.
        let k = 2.0 * 0.552_284_749_830_793_6;
        let root = 2.0_f64.sqrt();
        let tangent = k / root;
        let at = Spot::new;
        let half = Path {
            pieces: vec![
                PathPiece::Move(at(root, root)),
                PathPiece::Curve(
                    at(root - tangent, root + tangent),
                    at(-root + tangent, root + tangent),
                    at(-root, root),
                ),
            ],
        };
        let top = |path: &Path| {
            let mut top = f64::NEG_INFINITY;
            path.each_extreme(|spot| top = top.max(spot.y));
            top
        };
        assert!((top(&circle) - 6.0).abs() < 1e-9);
        assert!((top(&half) - 2.0).abs() < 2.0 * 3e-4);
        assert!(top(&circle.shifted(0.0, -4.0)) < 2.0 + 1e-9);
    }
}
