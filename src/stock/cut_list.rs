//! The cut list: by material, parts of one width together, the longest first.

use std::cmp::Reverse;
use std::collections::BTreeMap;

use super::blanks;
use super::types::{CutGroup, CutRow, WidthGroup};
use crate::build::{Build, Part};
use crate::model::{Grain, MaterialId, PartId};
use crate::units::Length;

/// The rows of every part that is made.
pub(super) fn group(build: &Build) -> Vec<CutGroup> {
    let mut groups: BTreeMap<MaterialId, BTreeMap<Reverse<Length>, Vec<CutRow>>> = BTreeMap::new();
    for (index, part) in build.parts.iter().enumerate() {
        if part.pieces() <= 0 {
            continue;
        }
        let row = row(build, PartId(index), part);
        let [_, width, _] = row.blank.as_ref().map_or(row.size, |blank| blank.size);
        groups
            .entry(part.material)
            .or_default()
            .entry(Reverse(width))
            .or_default()
            .push(row);
    }
    groups
        .into_iter()
        .map(|(material, widths)| CutGroup {
            material,
            widths: widths
                .into_iter()
                .map(|(Reverse(width), rows)| WidthGroup {
                    width,
                    rows: longest_first(rows),
                })
                .collect(),
        })
        .collect()
}

fn longest_first(mut rows: Vec<CutRow>) -> Vec<CutRow> {
    rows.sort_by_key(|row| {
        let [length, _, thickness] = row.blank.as_ref().map_or(row.size, |blank| blank.size);
        (Reverse(length), Reverse(thickness), row.part)
    });
    rows
}

fn row(build: &Build, id: PartId, part: &Part) -> CutRow {
    let material = build.material(part.material);
    let has_grain = material.is_some_and(|material| material.grain == Grain::AlongLength);
    CutRow {
        part: id,
        label: part.label.clone(),
        title: part.title.clone(),
        pieces: part.pieces(),
        mirrored: part.mirrored,
        size: part.size(),
        blank: material.and_then(|material| blanks::rough(part, material)),
        bands: part.bands.iter().map(|band| band.side).collect(),
        grain_along_length: has_grain.then_some(part.grain_along_length),
        note: part.note.clone(),
    }
}
