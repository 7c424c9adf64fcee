//! Where a section is taken: the line of its plane in the main view, with arrows and letters.
//!
//! A long-dashed dotted line with wide ends, arrows on the ends in the direction of looking, the
//! letter at each (ISO 128-3 [M]).

use super::super::pens::{NARROW_MM, WIDE_MM, dash_dot, line};
use super::section::title_style;
use crate::display::{Area, Ends, Mark, PT_PER_MM, Path, PathPiece, Spot, Tone};
use crate::text::{Anchor, Fonts, shape_line, text_mark};

/// A plane's line goes this far over the view, in millimetres.
const OVER_MM: f64 = 3.2;
/// How long its wide ends are, and its arrows, in millimetres.
const WIDE_END_MM: f64 = 4.5;
const ARROW_MM: f64 = 4.8;
const HEAD_MM: (f64, f64) = (2.8, 0.7);
/// Between a letter and what stands beside it, in millimetres.
const CLEAR_MM: f64 = 0.8;
/// Height of capitals as a part of the size of the text.
const CAPITAL: f64 = 0.714;

/// The line of a plane on paper: its ends on the outline of the view, and the way that is
/// looked.
pub(super) struct CutLine {
    pub(super) letter: char,
    pub(super) ends: [Spot; 2],
    pub(super) look: [f64; 2],
    /// How much farther its ends go over the view than they need, in millimetres: past those of
    /// another plane close by.
    pub(super) farther: f64,
}

/// Planes nearer than this on paper, in millimetres, would have their arrows in each other's
/// lines; one of them then goes this much farther.
const CLOSE_MM: f64 = 5.8;
const FARTHER_MM: f64 = 3.6;

/// Moves the ends of planes apart that lie close to each other.
pub(super) fn set_apart(lines: &mut [CutLine]) {
    if let [first, second] = lines {
        let ([a, _], [b, _]) = (first.ends, second.ends);
        let parallel = first.look == second.look;
        let apart = (a.x - b.x) * first.look[0] + (a.y - b.y) * first.look[1];
        if parallel && apart.abs() < CLOSE_MM * PT_PER_MM {
            second.farther = FARTHER_MM;
        }
    }
}

/// One end of a plane's line: where it is, out of the view, and into it.
struct End {
    at: Spot,
    outward: [f64; 2],
    inward: [f64; 2],
}

fn by(spot: Spot, way: [f64; 2], mm: f64) -> Spot {
    spot.shifted(way[0] * mm * PT_PER_MM, way[1] * mm * PT_PER_MM)
}

impl CutLine {
    fn two_ends(&self) -> [End; 2] {
        let [a, b] = self.ends;
        let length = libm::hypot(b.x - a.x, b.y - a.y).max(1e-6);
        let along = [(b.x - a.x) / length, (b.y - a.y) / length];
        let back = along.map(|part| -part);
        let over = OVER_MM + self.farther;
        [(a, back, along), (b, along, back)].map(|(spot, outward, inward)| End {
            at: by(spot, outward, over),
            outward,
            inward,
        })
    }

    /// The line and its arrows.
    pub(super) fn lines(&self) -> Vec<Mark> {
        let ends = self.two_ends();
        let [from, to] = ends.each_ref().map(|end| end.at);
        let mut marks = vec![Mark::Stroke {
            path: Path::polyline(&[from, to], Ends::Open),
            pen: dash_dot(NARROW_MM, Tone::BLACK),
        }];
        let behind = self.look.map(|part| -part);
        for end in ends {
            let wide = [end.at, by(end.at, end.inward, WIDE_END_MM + self.farther)];
            marks.push(Mark::Stroke {
                path: Path::polyline(&wide, Ends::Open),
                pen: line(WIDE_MM, Tone::BLACK),
            });
            let foot = by(end.at, behind, HEAD_MM.0);
            let shaft = [by(end.at, behind, ARROW_MM), foot];
            marks.push(Mark::Stroke {
                path: Path::polyline(&shaft, Ends::Open),
                pen: line(NARROW_MM, Tone::BLACK),
            });
            let head = [
                end.at,
                by(foot, end.outward, HEAD_MM.1),
                by(foot, end.inward, HEAD_MM.1),
            ];
            marks.push(Mark::Fill {
                path: Path::polyline(&head, Ends::Joined),
                tone: Tone::BLACK,
            });
        }
        marks
    }

    /// The letters, where they stand clear of `before`: beside both ends alike if they can.
    pub(super) fn letters(&self, fonts: &Fonts, before: &[Mark]) -> Vec<Mark> {
        let style = title_style();
        let text = self.letter.to_string();
        let size = [shape_line(fonts, &style, &text).width, style.size * CAPITAL];
        let places = self.two_ends().map(|end| self.places(&end, size));
        let free = places.map(|areas| areas.map(|area| is_free(&area, before)));
        let [first, second] = free;
        let alike = first.iter().zip(second).position(|(a, b)| *a && b);
        let ends = places.iter().zip(free).map(|(areas, free)| {
            let own = alike.or_else(|| free.iter().position(|free| *free));
            let area = areas
                .get(own.unwrap_or_default())
                .copied()
                .unwrap_or_default();
            let spot = Spot::new(area.x, area.y + area.height);
            text_mark(fonts, &style, Anchor::Start, spot, &text)
        });
        ends.collect()
    }

    /// Where a letter may stand at an end.
    fn places(&self, end: &End, [width, height]: [f64; 2]) -> [Area; 6] {
        let behind = self.look.map(|part| -part);
        let tail = by(end.at, behind, ARROW_MM);
        let beyond = by(tail, behind, CLEAR_MM);
        let before = by(end.at, self.look, CLEAR_MM);
        let aside = by(by(tail, self.look, 1.5), end.outward, CLEAR_MM);
        let beside = by(end.at, end.outward, CLEAR_MM);
        [
            (beyond, behind),
            (aside, end.outward),
            (beside, end.outward),
            (before, self.look),
            (by(beyond, end.outward, 3.0), behind),
            (by(before, end.outward, 3.0), self.look),
        ]
        .map(|(spot, [dx, dy])| Area {
            x: spot.x + (dx - 1.0) * width / 2.0,
            y: spot.y + (dy - 1.0) * height / 2.0,
            width,
            height,
        })
    }
}

/// True where neither text nor a line lies within half a millimetre of an area.
fn is_free(area: &Area, marks: &[Mark]) -> bool {
    let margin = 0.5 * PT_PER_MM;
    let (left, right) = (area.x - margin, area.x + area.width + margin);
    let (top, bottom) = (area.y - margin, area.y + area.height + margin);
    let apart = |a: Spot, b: Spot| {
        // Straight lines of drawings run along the paper, or their box is near enough.
        a.x.max(b.x) < left || a.x.min(b.x) > right || a.y.max(b.y) < top || a.y.min(b.y) > bottom
    };
    marks.iter().all(|mark| match mark {
        Mark::Stroke { path, .. } | Mark::Fill { path, .. } | Mark::Sealed { path, .. } => {
            let mut at = Spot::default();
            path.pieces.iter().all(|piece| {
                let from = at;
                at = piece.end().unwrap_or(at);
                matches!(piece, PathPiece::Move(_)) || apart(from, at)
            })
        }
        Mark::Text(run) => {
            let width: f64 = run.glyphs.iter().map(|glyph| glyph.advance).sum();
            let origin = run.origin;
            apart(
                origin.shifted(0.0, -run.size * CAPITAL),
                origin.shifted(width, run.size * 0.2),
            )
        }
        Mark::Link { .. } => true,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn letters_stand_where_nothing_else_is() {
        let fonts = Fonts::shipped().unwrap();
        let cut = CutLine {
            letter: 'A',
            ends: [Spot::new(0.0, 50.0), Spot::new(200.0, 50.0)],
            look: [0.0, -1.0],
            farther: 0.0,
        };
        let letters = |before: &[Mark]| -> Vec<Spot> {
            let letter = |mark: &Mark| match mark {
                Mark::Text(run) => run.origin,
                Mark::Stroke { .. }
                | Mark::Fill { .. }
                | Mark::Sealed { .. }
                | Mark::Link { .. } => Spot::default(),
            };
            cut.letters(&fonts, before).iter().map(letter).collect()
        };
        let free = letters(&[]);
        assert_eq!(free.len(), 2);
        // Looking up, the letters stand below the line, at the tails of the arrows.
        assert!(free.iter().all(|spot| spot.y > 50.0));
        let wall = Mark::Stroke {
            path: Path::polyline(
                &[free[0].shifted(0.0, -2.0), free[0].shifted(20.0, -2.0)],
                Ends::Open,
            ),
            pen: line(NARROW_MM, Tone::BLACK),
        };
        // Where one of them cannot, both stand elsewhere, and alike.
        let moved = letters(&[wall]);
        assert!(moved[0] != free[0] && moved[1] != free[1]);
        assert!((moved[0].y - moved[1].y).abs() < 1e-9);
    }
}
