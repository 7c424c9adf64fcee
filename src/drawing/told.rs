//! What figures show, in the words of the plan, for readers who do not see them.

use std::collections::{BTreeMap, BTreeSet};

use super::compose::Studio;
use super::explode::Move;
use crate::build::{JointKind, PlacedId, Step};
use crate::geometry::{Direction, Interval};
use crate::words::Filling;

/// The whole with its size, by a message.
fn whole(studio: &Studio<'_>, message: &str) -> String {
    let title = studio.build.plan.title.as_str();
    let told = studio.words.word(message, &[("title", title.into())]);
    let Some(overall) = studio.build.overall else {
        return told;
    };
    let sizes = overall.map(Interval::size).map(|size| {
        let both = size.in_both();
        Filling::Words(studio.words.figure(&both))
    });
    let [width, depth, height] = sizes;
    let places = [
        ("figure", told.into()),
        ("width", width),
        ("depth", depth),
        ("height", height),
    ];
    studio.words.word("figure-size", &places)
}

pub(super) fn cover(studio: &Studio<'_>) -> String {
    whole(studio, "cover-figure")
}

pub(super) fn overview(studio: &Studio<'_>) -> String {
    whole(studio, "whole-finished-figure")
}

pub(super) fn elevations(studio: &Studio<'_>) -> String {
    whole(studio, "whole-views-figure")
}

pub(super) fn exploded(studio: &Studio<'_>) -> String {
    let parts = studio.build.parts.iter().filter(|part| part.pieces() > 0);
    let parts: Vec<String> = parts
        .map(|part| format!("{} {}", part.label, part.title))
        .collect();
    let parts = parts.join(", ");
    let apart = studio.words.word("whole-apart-figure", &[]);
    let places = [("figure", apart.into()), ("parts", parts.into())];
    studio.words.word("figure-parts", &places)
}

/// What is told once of all pieces it is true of: label and title of their part, where they come from, and
/// what they are joined to and how.
#[derive(PartialEq, Eq)]
struct Group<'w> {
    label: &'w str,
    title: &'w str,
    way: Option<Direction>,
    joined: Vec<(JointKind, BTreeSet<(&'w str, &'w str)>)>,
}

/// A step: which pieces come in, from where, and what they are joined to.
pub(super) fn step(
    studio: &Studio<'_>,
    number: usize,
    step: &Step,
    moves: &BTreeMap<PlacedId, Move>,
) -> String {
    let mut groups: Vec<(Group<'_>, usize)> = Vec::new();
    for piece in studio.build.shown_adds(step) {
        let Some(part) = studio.build.part_of(piece) else {
            continue;
        };
        let way = moves.get(&piece).and_then(|moved| moved.way);
        let group = Group {
            label: &part.label,
            title: &part.title,
            way: way.map(|way| way.direction),
            joined: joined(studio, step, piece),
        };
        match groups.iter_mut().find(|(other, _)| *other == group) {
            Some((_, count)) => *count += 1,
            None => groups.push((group, 1)),
        }
    }
    let words = studio.words;
    let phrases: Vec<String> = groups
        .iter()
        .map(|(group, count)| phrase(studio, group, *count))
        .collect();
    let what = if phrases.is_empty() {
        words.word("figure-so-far", &[])
    } else {
        phrases.join("; ")
    };
    let places = [
        ("number", Filling::from(number + 1)),
        ("title", step.title.as_str().into()),
        ("what", what.into()),
    ];
    words.word("figure-step", &places)
}

/// The joints that a step makes between a piece and others, by kind.
fn joined<'w>(
    studio: &Studio<'w>,
    step: &Step,
    piece: PlacedId,
) -> Vec<(JointKind, BTreeSet<(&'w str, &'w str)>)> {
    let build = studio.build;
    let mut found: BTreeMap<JointKind, BTreeSet<(&str, &str)>> = BTreeMap::new();
    let joints = build.shown_joints(step).into_iter();
    for joint in joints.filter_map(|index| build.joints.get(index)) {
        let other = if joint.part == piece {
            joint.to
        } else if joint.to == piece {
            joint.part
        } else {
            continue;
        };
        if let Some(part) = build.part_of(other) {
            let others = found.entry(joint.kind).or_default();
            others.insert((part.label.as_str(), part.title.as_str()));
        }
    }
    found.into_iter().collect()
}

fn phrase(studio: &Studio<'_>, group: &Group<'_>, count: usize) -> String {
    let words = studio.words;
    let named = |(label, title): &(&str, &str)| format!("{label} {title}");
    let part = named(&(group.label, group.title));
    let places = [
        ("count", Filling::from(count)),
        ("part", part.into()),
        ("way", group.way.map_or("none", way).into()),
    ];
    let mut told = words.word("figure-comes", &places);
    for (kind, others) in &group.joined {
        let others: Vec<String> = others.iter().map(named).collect();
        let joint = words.word("joint", &[("kind", kind.word().into())]);
        let places = [
            ("joint", joint.into()),
            ("others", others.join(", ").into()),
        ];
        told.push_str(&words.word("figure-joined", &places));
    }
    told
}

/// Where a piece comes from that is drawn away to a side, as messages know it.
const fn way(way: Direction) -> &'static str {
    match way {
        Direction::Left => "left",
        Direction::Right => "right",
        Direction::Front => "front",
        Direction::Back => "back",
        Direction::Bottom => "bottom",
        Direction::Top => "top",
    }
}
