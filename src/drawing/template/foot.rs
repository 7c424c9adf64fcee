//! Below the window: where the sheet belongs, what it is of, what to do first, which way the grain runs.

use super::super::layout::grain_arrow;
use super::super::pens::{MEDIUM_MM, THIN_MM, WIDE_MM, line};
use super::map::map;
use super::{Leaf, points};
use crate::display::{Area, Ends, Face, Mark, PT_PER_MM, Path, Spot, Tone};
use crate::full_size::{EDGE, FOOT};
use crate::model::Grain;
use crate::text::{Anchor, Fonts, Run, TextStyle, break_paragraph, shape_line, text_mark};

/// Between the window and the foot, in millimetres.
const GAP_MM: f64 = 2.0;
/// Width of the map and of the grain's arrow, in millimetres.
const MAP_MM: f64 = 42.0;
const GRAIN_MM: f64 = 22.0;
/// Between two things side by side, in millimetres.
const BETWEEN_MM: f64 = 4.0;

/// The area of the foot.
fn area(leaf: &Leaf<'_, '_>) -> Area {
    let (edge, gap) = (points(EDGE), GAP_MM * PT_PER_MM);
    let height = points(FOOT) - gap;
    Area {
        x: edge,
        y: leaf.height() - edge - height,
        width: leaf.width() - 2.0 * edge,
        height,
    }
}

/// The foot of a sheet.
pub(super) fn marks(leaf: &Leaf<'_, '_>) -> Vec<Mark> {
    let whole = area(leaf);
    let mut marks = vec![rule(whole)];
    let between = BETWEEN_MM * PT_PER_MM;
    let mut left = whole.x;
    if leaf.sheets.tiles.len() > 1 {
        let room = Area {
            x: left,
            y: whole.y + 4.0,
            width: MAP_MM * PT_PER_MM,
            height: whole.height - 4.0,
        };
        marks.extend(map(leaf, room));
        left += room.width + between;
    }
    let right = whole.x + whole.width - GRAIN_MM * PT_PER_MM;
    let has_grain = grain(
        leaf,
        Area {
            x: right,
            y: whole.y + 4.0,
            width: GRAIN_MM * PT_PER_MM,
            height: whole.height - 4.0,
        },
        &mut marks,
    );
    let end = if has_grain {
        right - between
    } else {
        whole.x + whole.width
    };
    texts(leaf, Spot::new(left, whole.y + 4.0), end - left, &mut marks);
    marks
}

fn rule(whole: Area) -> Mark {
    let ends = [
        Spot::new(whole.x, whole.y),
        Spot::new(whole.x + whole.width, whole.y),
    ];
    Mark::Stroke {
        path: Path::polyline(&ends, Ends::Open),
        pen: line(THIN_MM, Tone::BLACK),
    }
}

/// What the sheet is of, and what to do with it.
fn texts(leaf: &Leaf<'_, '_>, at: Spot, width: f64, marks: &mut Vec<Mark>) {
    let fonts = leaf.studio.fonts;
    let words = leaf.studio.words;
    let bold = TextStyle::new(Face::Bold, 12.0);
    let name = Spot::new(at.x, at.y + 12.0);
    marks.extend(letter_and_name(leaf, bold, name, width));
    let regular = TextStyle::new(Face::Regular, 8.5);
    let small = TextStyle::new(Face::Regular, 8.0);
    let mut down = name.y + 4.0;
    let mut say = |text: String, style: TextStyle| {
        let lines = paragraph(fonts, &text, style, Spot::new(at.x, down), width, marks);
        down += lines;
    };
    say(leaf.described(), regular);
    say(words.word("template-print", &[]), small.face(Face::Bold));
    if leaf.sheets.tiles.len() > 1 {
        say(words.word("template-join", &[]), small);
    }
    if leaf.part.mirrored > 0 {
        let count = leaf.part.mirrored;
        let filling = [("mirrored", crate::words::Filling::Count(count))];
        say(words.word("template-mirrored", &filling), small);
    }
}

/// A part's letter in a ring and its name behind it, cut to the width.
pub(super) fn letter_and_name(
    leaf: &Leaf<'_, '_>,
    style: TextStyle,
    at: Spot,
    width: f64,
) -> Vec<Mark> {
    let fonts = leaf.studio.fonts;
    let label = &leaf.part.label;
    let rise = fonts.cap_height(style.face) * style.size;
    let letters = shape_line(fonts, &style, label).width;
    let radius = (style.size * 0.8).max(letters / 2.0 + 2.0);
    let middle = at.shifted(radius, -rise / 2.0);
    let mut marks = vec![
        Mark::Stroke {
            path: Path::circle(middle, radius),
            pen: line(MEDIUM_MM, Tone::BLACK),
        },
        text_mark(
            fonts,
            &style,
            Anchor::Middle,
            at.shifted(radius, 0.0),
            label,
        ),
    ];
    let beside = at.shifted(radius * 2.0 + 5.0, 0.0);
    let room = width - radius * 2.0 - 5.0;
    let title = cut(fonts, &style, &leaf.part.title, room);
    marks.push(text_mark(fonts, &style, Anchor::Start, beside, &title));
    marks
}

/// As much of a text as a width has room for.
fn cut(fonts: &Fonts, style: &TextStyle, text: &str, width: f64) -> String {
    use unicode_segmentation::UnicodeSegmentation;
    let fits = |text: &str| shape_line(fonts, style, text).width <= width;
    if fits(text) {
        return text.to_owned();
    }
    let mut letters: Vec<&str> = text.graphemes(true).collect();
    while letters.pop().is_some() {
        let shorter = format!("{}\u{2026}", letters.concat());
        if fits(&shorter) {
            return shorter;
        }
    }
    String::new()
}

/// A text in lines from its upper left corner down; how high they are.
fn paragraph(
    fonts: &Fonts,
    text: &str,
    style: TextStyle,
    corner: Spot,
    width: f64,
    marks: &mut Vec<Mark>,
) -> f64 {
    let leading = style.size * 1.22;
    let mut down = 0.0;
    for line in break_paragraph(fonts, &[Run::new(text, style)], width) {
        down += leading;
        for piece in line.pieces {
            marks.push(Mark::Text(crate::display::GlyphRun {
                origin: Spot::new(corner.x + piece.x + piece.pad, corner.y + down),
                face: style.face,
                size: style.size,
                tone: style.tone,
                glyphs: piece.glyphs,
            }));
        }
    }
    down
}

/// The arrow of the grain with its word below; false where the side shows none.
fn grain(leaf: &Leaf<'_, '_>, room: Area, marks: &mut Vec<Mark>) -> bool {
    let Some(way) = leaf.grain() else {
        return false;
    };
    let style = TextStyle::new(Face::Regular, 8.0);
    let word = leaf.studio.words.word("template-grain", &[]);
    let below = Spot::new(room.x + room.width / 2.0, room.y + room.height - 2.0);
    let fonts = leaf.studio.fonts;
    marks.push(text_mark(fonts, &style, Anchor::Middle, below, &word));
    let half = (room.width / 2.0).min(room.height / 2.0 - 9.0);
    let [across, _] = way;
    let middle = if across == 0.0 {
        Spot::new(below.x, room.y + (room.height - 12.0) / 2.0)
    } else {
        Spot::new(below.x, below.y - 14.0)
    };
    grain_arrow(middle, way.map(|part| part * half), marks);
    true
}

impl Leaf<'_, '_> {
    /// Which way the grain runs on paper; none where it runs towards the reader or the material
    /// has none.
    pub(super) fn grain(&self) -> Option<[f64; 2]> {
        let material = self.studio.build.material(self.part.material)?;
        if material.grain != Grain::AlongLength {
            return None;
        }
        let axis = if self.part.grain_along_length {
            crate::geometry::PartAxis::Length
        } else {
            crate::geometry::PartAxis::Width
        };
        let [x, _] = self.laid.seen.way(axis)?;
        Some(if x == 0 { [0.0, 1.0] } else { [1.0, 0.0] })
    }
}

/// The width of the lines that a template is cut along, in millimetres.
pub(super) const OUTLINE_MM: f64 = WIDE_MM;
