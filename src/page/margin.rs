//! The margin of a plan that is compared with an earlier revision: bars beside what is other, and
//! triangles with the revision's mark.

use crate::display::{Area, Ends, Face, Mark, Path, Pen, Spot, Tone};
use crate::document::tree::Change;
use crate::text::{Anchor, Fonts, TextStyle, text_mark};

/// Between a bar and the text.
const AWAY: f64 = 9.0;
/// Width of a bar.
const BAR: f64 = 1.4;
/// Two bars no farther from each other are one.
const GAP: f64 = 18.0;
/// The side of a triangle.
const SIDE: f64 = 15.0;
/// Two triangles are no nearer to each other, top to top.
const APART: f64 = 18.0;

/// What is beside a page's text: of each thing on it, from the top, what is told and where it
/// begins and ends.
pub(super) fn changes(
    fonts: &Fonts,
    text: Area,
    things: &[(Change, f64, f64)],
    revision: &str,
) -> Vec<Mark> {
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
            Change::GoneAbove => tops.push(top - SIDE / 2.0),
            Change::GoneBelow => tops.push(bottom - SIDE / 2.0),
        }
    }
    let right = text.x - AWAY;
    for (top, bottom) in bars {
        let bar = Area {
            x: right - BAR,
            y: top,
            width: BAR,
            height: bottom - top,
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
        let middle = Spot::new(right - BAR - 4.0 - SIDE / 2.0, top);
        marks.extend(triangle(fonts, middle, revision));
    }
    marks
}

/// An upright triangle below its tip, with the mark of a revision in it.
fn triangle(fonts: &Fonts, tip: Spot, revision: &str) -> Vec<Mark> {
    let height = SIDE * 0.866_025_403_784_438_6;
    let corners = [
        tip,
        tip.shifted(SIDE / 2.0, height),
        tip.shifted(-SIDE / 2.0, height),
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
        let size = if revision.chars().count() > 1 {
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
