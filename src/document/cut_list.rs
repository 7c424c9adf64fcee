//! The cut list: one table a material, parts ripped on one setting together.

use serde::Serialize;

use super::buy::form;
use super::context::Facts;
use super::measure::Measure;
use crate::stock::CutRow;

/// The parts of one material.
#[derive(Clone, Debug, Serialize)]
pub(super) struct MaterialRows {
    title: String,
    form: &'static str,
    thickness: Measure,
    /// Rows of one width together.
    widths: Vec<Vec<PartRow>>,
}

/// A row of the cut list.
#[derive(Clone, Debug, Serialize)]
pub(super) struct PartRow {
    label: String,
    title: String,
    pieces: i64,
    mirrored: i64,
    /// Finished length, width and thickness.
    size: Vec<Measure>,
    blank: Option<BlankRow>,
    /// Edges and ends that edge band is stuck to.
    bands: Vec<&'static str>,
    /// Numbers of the sheets or boards it is cut from.
    cut_from: Vec<usize>,
    /// `length`, `width`, or none where the material has no grain.
    grain: Option<&'static str>,
    note: Option<String>,
}

/// What is sawn first.
#[derive(Clone, Debug, Serialize)]
struct BlankRow {
    pieces: i64,
    layers: i64,
    size: Vec<Measure>,
}

pub(super) fn of(facts: &Facts) -> Vec<MaterialRows> {
    let groups = facts.stock.cut_list.iter().filter_map(|group| {
        let material = facts.build.material(group.material)?;
        let widths = group.widths.iter().map(|width| {
            let rows = width.rows.iter().map(|row| part_row(facts, row));
            rows.collect()
        });
        Some(MaterialRows {
            title: material.title.clone(),
            form: form(material.form),
            thickness: facts.measure(material.thickness()),
            widths: widths.collect(),
        })
    });
    groups.collect()
}

fn part_row(facts: &Facts, row: &CutRow) -> PartRow {
    let precision = facts.precision();
    PartRow {
        label: row.label.clone(),
        title: row.title.clone(),
        pieces: row.pieces,
        mirrored: row.mirrored,
        size: Measure::all(&row.size, precision),
        blank: row.blank.as_ref().map(|blank| BlankRow {
            pieces: blank.pieces,
            layers: blank.layers,
            size: Measure::all(&blank.size, precision),
        }),
        cut_from: facts.stock.cut_from(row.part),
        bands: row.bands.iter().map(|side| side.word()).collect(),
        grain: row
            .grain_along_length
            .map(|along| if along { "length" } else { "width" }),
        note: row.note.clone(),
    }
}
