//! The margin of a plan that is compared with an earlier revision: bars beside what is other, and
//! triangles with the revision's mark.

use crate::display::{Area, Ends, Face, Mark, Path, Pen, Spot, Tone};
use crate::document::tree::Change;
use crate::text::{Anchor, Fonts, TextStyle, text_mark};

/// Width of a bar.
const BAR: f64 = 1.4;
/// Two bars no farther from each other are one.
const GAP: f64 = 18.0;
/// Two triangles are no nearer to each other, top to top.
const APART: f64 = 18.0;

/// How a margin is used.
struct Sides {
    /// From the text to a bar.
    away: f64,
    /// From the text to the middle of a triangle.
    middle: f64,
    /// The side of a triangle.
    side: f64,
    /// How far below the top of a change its bar begins.
    below: f64,
}

impl Sides {
    /// Triangles stand beside bars, or over them where the margin has no room for both.
    const fn within(margin: f64) -> Self {
        if margin >= 36.0 {
            Self {
                away: 9.0,
                middle: 9.0 + BAR + 4.0 + 7.5,
                side: 15.0,
                below: 0.0,
            }
        } else {
            Self {
                away: margin / 2.0 - BAR / 2.0,
                middle: margin / 2.0,
                side: 11.5,
                below: 11.0,
            }
        }
    }
}

/// What is beside a page's text: of each thing on it, from the top, what is told and where it
/// begins and ends.
pub(super) fn changes(
    fonts: &Fonts,
    text: Area,
    things: &[(Change, f64, f64)],
    revision: &str,
) -> Vec<Mark> {
    let sides = Sides::within(text.x);
    let mut marks = Vec::new();
    let mut bars: Vec<(f64, f64)> = Vec::new();
    let mut tops: Vec<f64> = Vec::new();
    for (change, top, bottom) in things {
        match change {
            Change::None => {}
            Change::Other => match bars.last_mut() {
                Some((_, end)) if top - *end <= GAP => *end = *bottom,
                _ => {
                    bars.push((*top, *bottom));
                    tops.push(*top);
                }
            },
            Change::GoneAbove => tops.push(top - sides.side / 2.0),
            Change::GoneBelow => tops.push(bottom - sides.side / 2.0),
        }
    }
    for (top, bottom) in bars {
        let bar = Area {
            x: text.x - sides.away - BAR,
            y: top + sides.below,
            width: BAR,
            height: (bottom - top - sides.below).max(BAR),
        };
        marks.push(Mark::Fill {
            path: Path::rectangle(bar),
            tone: Tone::BLACK,
        });
    }
    let mut free = f64::NEG_INFINITY;
    for top in tops.into_iter().filter(|top| {
        let has_room = *top >= free;
        free = if has_room { top + APART } else { free };
        has_room
    }) {
        let middle = Spot::new(text.x - sides.middle, top);
        marks.extend(triangle(fonts, middle, sides.side, revision));
    }
    marks
}

/// An upright triangle below its tip, with the mark of a revision in it.
fn triangle(fonts: &Fonts, tip: Spot, side: f64, revision: &str) -> Vec<Mark> {
    let height = side * 0.866_025_403_784_438_6;
    let corners = [
        tip,
        tip.shifted(side / 2.0, height),
        tip.shifted(-side / 2.0, height),
    ];
    let outline = Mark::Stroke {
        path: Path::polyline(&corners, Ends::Joined),
        pen: Pen {
            width: 0.7,
            tone: Tone::BLACK,
            dashes: Vec::new(),
        },
    };
    let mut marks = vec![outline];
    if !revision.is_empty() {
        let size = side / 15.0
            * if revision.chars().count() > 1 {
                4.5
            } else {
                7.0
            };
        let style = TextStyle::new(Face::Bold, size);
        let at = tip.shifted(0.0, height - 2.2);
        marks.push(text_mark(fonts, &style, Anchor::Middle, at, revision));
    }
    marks
}
