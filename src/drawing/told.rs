//! What figures show, in words, for readers who do not see them.

use std::collections::BTreeMap;

use super::explode::Move;
use crate::build::{Build, PlacedId, Step};
use crate::geometry::{Direction, Interval};

/// The whole with its size.
fn size(build: &Build) -> String {
    build.overall.map_or_else(String::new, |overall| {
        let [width, depth, height] = overall.map(Interval::size);
        format!(
            ": {} wide, {} deep, {} high",
            width.in_both(),
            depth.in_both(),
            height.in_both()
        )
    })
}

pub(super) fn cover(build: &Build) -> String {
    format!(
        "{}, assembled, seen from the front, the right and above{}",
        build.plan.title,
        size(build)
    )
}

pub(super) fn overview(build: &Build) -> String {
    format!(
        "Line drawing of {} with its overall dimensions{}",
        build.plan.title,
        size(build)
    )
}

pub(super) fn elevations(build: &Build) -> String {
    format!(
        "{} from the front, from the right side and from above{}",
        build.plan.title,
        size(build)
    )
}

pub(super) fn exploded(build: &Build) -> String {
    let parts: Vec<String> = build
        .parts
        .iter()
        .filter(|part| part.pieces() > 0)
        .map(|part| format!("{} {}", part.label, part.title))
        .collect();
    format!(
        "Exploded view of {}. Parts: {}",
        build.plan.title,
        parts.join(", ")
    )
}

/// Pieces that are told together: label and title of their part, and where they come from.
type Group<'w> = (&'w str, &'w str, Option<Direction>);

/// A step: which pieces come in, and from where.
pub(super) fn step(
    build: &Build,
    number: usize,
    step: &Step,
    moves: &BTreeMap<PlacedId, Move>,
) -> String {
    let mut groups: Vec<(Group<'_>, usize)> = Vec::new();
    for piece in build.shown_adds(step) {
        let Some(part) = build.part_of(piece) else {
            continue;
        };
        let way = moves
            .get(&piece)
            .and_then(|moved| moved.way)
            .map(|way| way.direction);
        let key = (part.label.as_str(), part.title.as_str(), way);
        match groups.iter_mut().find(|(other, _)| *other == key) {
            Some((_, count)) => *count += 1,
            None => groups.push((key, 1)),
        }
    }
    let phrases: Vec<String> = groups
        .into_iter()
        .map(|((label, title, way), count)| {
            let several = if count > 1 {
                format!("{count} \u{d7} ")
            } else {
                String::new()
            };
            let (verb, from) = match way {
                None => ("stands in its place", ""),
                Some(way) => ("comes in", from(way)),
            };
            let space = if from.is_empty() { "" } else { " " };
            format!("{several}{label} {title} {verb}{space}{from}")
        })
        .collect();
    let what = if phrases.is_empty() {
        "the work so far".to_owned()
    } else {
        phrases.join("; ")
    };
    format!("Step {}, {}: {what}", number + 1, step.title)
}

/// Where a piece comes from that is drawn away to a side.
const fn from(way: Direction) -> &'static str {
    match way {
        Direction::Left => "from the left",
        Direction::Right => "from the right",
        Direction::Front => "from the front",
        Direction::Back => "from the back",
        Direction::Bottom => "from below",
        Direction::Top => "from above",
    }
}
