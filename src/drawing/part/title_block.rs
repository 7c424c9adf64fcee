//! The title block of a part drawing: the fields that ISO 7200 asks for (ref: units-and-paper,
//! "Title block" [V]), in rows under the views.

use super::super::compose::Studio;
use super::super::frame::Frame;
use super::super::pens::{MEDIUM_MM, THIN_MM, line};
use crate::build::Part;
use crate::display::{Area, Ends, Face, Mark, PT_PER_MM, Path, Spot, Tone};
use crate::text::{Anchor, Fonts, TextStyle, shape_line, text_mark};

/// Height of a row, in millimetres.
const ROW_MM: f64 = 8.5;
/// Left of the text column's width for the frame's line, in millimetres.
const LINE_MM: f64 = 1.5;

/// Width of the block, in points: as wide as the text column; the standard's own is 180 mm wide.
pub(super) fn width(frame: &Frame) -> f64 {
    (frame.width_mm - LINE_MM) * PT_PER_MM
}

/// A field of the block.
struct Field {
    /// What it is.
    name: String,
    /// What it says.
    value: String,
    /// Its share of the width.
    share: f64,
}

/// The block, its upper left corner at `corner`; `sheet` is the drawing's number among all.
pub(super) fn title_block(
    studio: &Studio<'_>,
    part: &Part,
    sheet: [usize; 2],
    corner: Spot,
) -> Vec<Mark> {
    let rows = rows(studio, part, sheet);
    let (whole, height) = (width(&studio.frame), ROW_MM * PT_PER_MM);
    let mut marks = Vec::new();
    let mut rules = Path::default();
    let mut top = corner.y;
    for (number, fields) in rows.iter().enumerate() {
        if number > 0 {
            rule(
                Spot::new(corner.x, top),
                Spot::new(corner.x + whole, top),
                &mut rules,
            );
        }
        let shares: f64 = fields.iter().map(|field| field.share).sum();
        let mut x = corner.x;
        for (place, field) in fields.iter().enumerate() {
            let width = whole * field.share / shares;
            if place > 0 {
                rule(Spot::new(x, top), Spot::new(x, top + height), &mut rules);
            }
            let cell = Area {
                x,
                y: top,
                width,
                height,
            };
            marks.extend(texts(studio.fonts, &field.name, &field.value, cell));
            x += width;
        }
        top += height;
    }
    marks.push(Mark::Stroke {
        path: rules,
        pen: line(THIN_MM, Tone::BLACK),
    });
    marks.push(Mark::Stroke {
        path: Path::rectangle(Area {
            x: corner.x,
            y: corner.y,
            width: whole,
            height: top - corner.y,
        }),
        pen: line(MEDIUM_MM, Tone::BLACK),
    });
    marks
}

/// The fields in rows: two where the column has room for them, four where it is narrow.
fn rows(studio: &Studio<'_>, part: &Part, [number, count]: [usize; 2]) -> Vec<Vec<Field>> {
    let plan = &studio.build.plan;
    let revision = plan.revisions.first();
    let word = |id: &str| studio.words.word(id, &[]);
    let field = |name: String, value: String, share: f64| Field { name, value, share };
    let owner = field(word("drawing-owner"), plan.author.clone(), 2.4);
    let kind = word("drawing-part-drawing");
    let kind = field(word("drawing-document-type"), kind, 1.6);
    let title = field(word("drawing-title"), part.title.clone(), 3.0);
    let identification = format!("{} \u{2013} {}", plan.title, part.label);
    let identification = field(word("drawing-identification"), identification, 3.0);
    let created = field(word("drawing-created-by"), plan.author.clone(), 2.4);
    // For whoever lets it go into the shop to sign.
    let approved = field(word("drawing-approved-by"), String::new(), 2.6);
    let mark = revision.map_or_else(String::new, |revision| revision.mark.clone());
    let mark = field(word("drawing-revision"), mark, 1.0);
    let date = revision.map_or_else(String::new, |revision| studio.words.date(&revision.date));
    let date = field(word("drawing-date-of-issue"), date, 2.2);
    let sheet = format!("{number}\u{2009}/\u{2009}{count}");
    let sheet = field(word("drawing-sheet"), sheet, 1.8);
    if studio.frame.is_narrow() {
        return vec![
            vec![owner, kind],
            vec![title, identification],
            vec![created, approved],
            vec![mark, date, sheet],
        ];
    }
    vec![
        vec![owner, kind, title, identification],
        vec![created, approved, mark, date, sheet],
    ]
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
