//! The cut list: a row for every part.

use super::measure::{inch, inch_error_mm, mm};
use crate::build::Build;
use crate::stock::{CutRow, Stock};

super::row! {
    /// A part to cut.
    struct Row {
        /// Its letter in the plan.
        label: String,
        /// Its name in the source.
        part: String,
        /// Its printed name.
        title: String,
        /// Pieces of either hand.
        pieces: i64,
        /// How many of them are mirror images.
        mirrored: i64,
        /// The printed name of its material.
        material: String,
        /// Finished sizes in millimetres …
        length_mm: f64,
        width_mm: f64,
        thickness_mm: f64,
        /// … in inches as printed …
        length_in: String,
        width_in: String,
        thickness_in: String,
        /// … and how much these are too long, in millimetres.
        length_in_error_mm: f64,
        width_in_error_mm: f64,
        thickness_in_error_mm: f64,
        /// `length` or `width`: along which its grain runs; empty where the material has none.
        grain: String,
        /// Sides with edge band, parted by blanks.
        edge_band: String,
        /// Blanks to saw, and layers glued up to one part.
        blanks: i64,
        layers: i64,
        /// Sizes of a blank in millimetres; those of the part where nothing is trimmed.
        blank_length_mm: f64,
        blank_width_mm: f64,
        blank_thickness_mm: f64,
        /// Numbers of the sheets or boards of its material it is cut from, parted by blanks.
        cut_from: String,
        /// The author's note.
        note: String,
    }
}

pub(super) fn rows(build: &Build, stock: &Stock) -> Vec<Row> {
    stock.rows().map(|row| of(build, stock, row)).collect()
}

fn of(build: &Build, stock: &Stock, row: &CutRow) -> Row {
    let precision = build.plan.precision;
    let part = build.part(row.part);
    let material = part.and_then(|part| build.material(part.material));
    let [length, width, thickness] = row.size;
    let blank = row.blank.as_ref();
    let [blank_length, blank_width, blank_thickness] = blank.map_or(row.size, |blank| blank.size);
    let words: Vec<&str> = row.bands.iter().map(|side| side.word()).collect();
    let numbers: Vec<String> = stock
        .cut_from(row.part)
        .iter()
        .map(ToString::to_string)
        .collect();
    Row {
        label: row.label.clone(),
        part: part.map(|part| part.name.clone()).unwrap_or_default(),
        title: row.title.clone(),
        pieces: row.pieces,
        mirrored: row.mirrored,
        material: material
            .map(|material| material.title.clone())
            .unwrap_or_default(),
        length_mm: mm(length),
        width_mm: mm(width),
        thickness_mm: mm(thickness),
        length_in: inch(length, precision),
        width_in: inch(width, precision),
        thickness_in: inch(thickness, precision),
        length_in_error_mm: inch_error_mm(length, precision),
        width_in_error_mm: inch_error_mm(width, precision),
        thickness_in_error_mm: inch_error_mm(thickness, precision),
        grain: match row.grain_along_length {
            Some(true) => "length",
            Some(false) => "width",
            None => "",
        }
        .to_owned(),
        edge_band: words.join(" "),
        blanks: blank.map_or(row.pieces, |blank| blank.pieces),
        layers: blank.map_or(1, |blank| blank.layers),
        blank_length_mm: mm(blank_length),
        blank_width_mm: mm(blank_width),
        blank_thickness_mm: mm(blank_thickness),
        cut_from: numbers.join(" "),
        note: row.note.clone().unwrap_or_default(),
    }
}
