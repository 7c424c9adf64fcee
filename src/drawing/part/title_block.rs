//! The title block of a part drawing: the fields that ISO 7200 asks for (ref: units-and-paper,
//! "Title block" [V]), in two rows under the views.

use super::super::compose::{Studio, WIDTH_MM};
use super::super::pens::{MEDIUM_MM, THIN_MM, line};
use crate::build::Part;
use crate::display::{Area, Ends, Face, Mark, PT_PER_MM, Path, Spot, Tone};
use crate::text::{Anchor, Fonts, TextStyle, shape_line, text_mark};

/// As wide as the text column but for the frame's line, in millimetres; the standard's own block
/// is 180 mm wide.
const BLOCK_MM: f64 = WIDTH_MM - 1.5;
/// Height of a row, in millimetres.
const ROW_MM: f64 = 8.5;
/// Height of the block, in points.
pub(super) const HEIGHT: f64 = 2.0 * ROW_MM * PT_PER_MM;
/// Width of the block, in points.
pub(super) const WIDTH: f64 = BLOCK_MM * PT_PER_MM;

/// What a field is, what it says and its share of the width.
type Field = (String, String, f64);

/// The block, its upper left corner at `corner`; `sheet` is the drawing's number among all.
pub(super) fn title_block(
    studio: &Studio<'_>,
    part: &Part,
    sheet: [usize; 2],
    corner: Spot,
) -> Vec<Mark> {
    let plan = &studio.build.plan;
    let revision = plan.revisions.first();
    let [number, count] = sheet;
    let said = |text: &str| text.to_owned();
    let word = |id: &str| studio.words.word(id, &[]);
    let rows: [Vec<Field>; 2] = [
        vec![
            (word("drawing-owner"), said(&plan.author), 2.4),
            (
                word("drawing-document-type"),
                word("drawing-part-drawing"),
                1.6,
            ),
            (word("drawing-title"), part.title.clone(), 3.0),
            (
                word("drawing-identification"),
                format!("{} \u{2013} {}", plan.title, part.label),
                3.0,
            ),
        ],
        vec![
            (word("drawing-created-by"), said(&plan.author), 2.4),
            // For whoever lets it go into the shop to sign.
            (word("drawing-approved-by"), String::new(), 2.6),
            (
                word("drawing-revision"),
                revision.map_or_else(String::new, |revision| revision.mark.clone()),
                1.0,
            ),
            (
                word("drawing-date-of-issue"),
                revision.map_or_else(String::new, |revision| studio.words.date(&revision.date)),
                2.2,
            ),
            (
                word("drawing-sheet"),
                format!("{number}\u{2009}/\u{2009}{count}"),
                1.8,
            ),
        ],
    ];
    let mut marks = Vec::new();
    let mut rules = Path::default();
    for (row, fields) in (0_u32..).map(f64::from).zip(&rows) {
        let top = corner.y + row * ROW_MM * PT_PER_MM;
        let shares: f64 = fields.iter().map(|field| field.2).sum();
        let mut x = corner.x;
        for (place, (label, value, share)) in fields.iter().enumerate() {
            let width = WIDTH * share / shares;
            if place > 0 {
                rule(
                    Spot::new(x, top),
                    Spot::new(x, top + HEIGHT / 2.0),
                    &mut rules,
                );
            }
            let cell = Area {
                x,
                y: top,
                width,
                height: HEIGHT / 2.0,
            };
            marks.extend(texts(studio.fonts, label, value, cell));
            x += width;
        }
    }
    let middle = corner.y + HEIGHT / 2.0;
    rule(
        Spot::new(corner.x, middle),
        Spot::new(corner.x + WIDTH, middle),
        &mut rules,
    );
    marks.push(Mark::Stroke {
        path: rules,
        pen: line(THIN_MM, Tone::BLACK),
    });
    marks.push(Mark::Stroke {
        path: Path::rectangle(Area {
            x: corner.x,
            y: corner.y,
            width: WIDTH,
            height: HEIGHT,
        }),
        pen: line(MEDIUM_MM, Tone::BLACK),
    });
    marks
}

fn rule(from: Spot, to: Spot, rules: &mut Path) {
    rules
        .pieces
        .extend(Path::polyline(&[from, to], Ends::Open).pieces);
}

/// A field's name, small, and what it says below it, as large as its cell allows.
fn texts(fonts: &Fonts, label: &str, value: &str, cell: Area) -> Vec<Mark> {
    let inset = 1.3 * PT_PER_MM;
    let name = TextStyle::new(Face::Regular, 6.5).tone(Tone::grey(0.32));
    let at = |down: f64| Spot::new(cell.x + inset, cell.y + down);
    let mut marks = vec![text_mark(fonts, &name, Anchor::Start, at(8.0), label)];
    if value.is_empty() {
        return marks;
    }
    let room = cell.width - 2.0 * inset;
    let style = TextStyle::new(Face::Regular, 9.0);
    let width = shape_line(fonts, &style, value).width;
    let size = (9.0 * (room / width).min(1.0)).max(5.0);
    let style = TextStyle::new(Face::Regular, size);
    let said = cut_to(fonts, &style, value, room);
    marks.push(text_mark(fonts, &style, Anchor::Start, at(19.5), &said));
    marks
}

/// As much of a text as there is room for.
fn cut_to(fonts: &Fonts, style: &TextStyle, text: &str, room: f64) -> String {
    use unicode_segmentation::UnicodeSegmentation;
    let fits = |text: &str| shape_line(fonts, style, text).width <= room + 0.01;
    if fits(text) {
        return text.to_owned();
    }
    let mut graphemes: Vec<&str> = text.graphemes(true).collect();
    while graphemes.pop().is_some() {
        let shorter = format!("{}\u{2026}", graphemes.concat());
        if fits(&shorter) {
            return shorter;
        }
    }
    String::new()
}
