//! Placed pieces: which is which, and which stand elsewhere.

use std::collections::{BTreeMap, BTreeSet};

use crate::build::{Build, PlacedPart};
use crate::geometry::Axis;
use crate::units::Length;

/// A piece that is as large as it was and stands elsewhere.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Moved {
    /// Its name in the later plan.
    pub name: String,
    /// What a reader knows it by: name and letter of its part.
    pub part: String,
    /// By how much along which axes; above zero to the right, the back, upwards.
    pub by: Vec<(Axis, Length)>,
}

/// Pieces of the earlier plan by their names, with their names in the later one: the same, or that
/// of a piece that fills the same place and is of no name known before.
pub(super) fn pairs(before: &Build, after: &Build) -> BTreeMap<String, String> {
    let names = |build: &Build| -> BTreeSet<String> {
        build
            .placed
            .iter()
            .map(|piece| piece.name.clone())
            .collect()
    };
    let (had, has) = (names(before), names(after));
    let mut pairs: BTreeMap<String, String> = had
        .intersection(&has)
        .map(|name| (name.clone(), name.clone()))
        .collect();
    for old in before
        .placed
        .iter()
        .filter(|piece| !has.contains(&piece.name))
    {
        let new = after
            .placed
            .iter()
            .find(|piece| !had.contains(&piece.name) && piece.body == old.body);
        pairs.extend(new.map(|new| (old.name.clone(), new.name.clone())));
    }
    pairs
}

pub(super) fn moved(before: &Build, after: &Build, pairs: &BTreeMap<String, String>) -> Vec<Moved> {
    let mut moved = Vec::new();
    for new in &after.placed {
        let old = before
            .placed
            .iter()
            .find(|old| pairs.get(&old.name) == Some(&new.name));
        if let Some(old) = old {
            let by = shift(old, new);
            if !by.is_empty() {
                moved.push(Moved {
                    name: new.name.clone(),
                    part: part_of(after, &new.name),
                    by,
                });
            }
        }
    }
    moved
}

/// On which axes both ends of a piece have gone as far: what has gone at one end alone is larger or
/// smaller.
fn shift(old: &PlacedPart, new: &PlacedPart) -> Vec<(Axis, Length)> {
    let ends = old.body.iter().zip(new.body);
    Axis::ALL
        .into_iter()
        .zip(ends)
        .filter_map(|(axis, (old, new))| {
            let by = new.low - old.low;
            (by == new.high - old.high && by != Length::ZERO).then_some((axis, by))
        })
        .collect()
}

/// What a reader knows a piece by: "Back leg (B)".
pub(super) fn part_of(build: &Build, name: &str) -> String {
    let piece = build.placed.iter().find(|piece| piece.name == name);
    let part = piece.and_then(|piece| build.part(piece.part));
    part.map_or_else(String::new, |part| {
        format!("{} ({})", part.title, part.label)
    })
}
