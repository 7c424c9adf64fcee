//! Joints: between which pieces one is new, gone, or made otherwise.

use std::collections::{BTreeMap, BTreeSet};

use super::pieces::part_of;
use crate::build::{Build, Joint, JointKind};

/// A joint between two pieces.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct JointChange {
    /// The names of the pieces in the later plan, or in the earlier one where it is gone.
    pub pieces: [String; 2],
    /// What a reader knows them by: name and letter of their parts.
    pub parts: [String; 2],
    /// How they were joined, one kind or more.
    pub before: Vec<Joining>,
    /// How they are joined.
    pub after: Vec<Joining>,
}

/// How two pieces are joined.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Joining {
    /// The kind.
    pub kind: JointKind,
    /// Glued as well.
    pub glued: bool,
    /// What is used, with how many of each.
    pub hardware: Vec<(String, i64)>,
}

pub(super) fn changes(
    before: &Build,
    after: &Build,
    renamed: &BTreeMap<String, String>,
) -> Vec<JointChange> {
    let now = |name: &str| {
        renamed
            .get(name)
            .cloned()
            .unwrap_or_else(|| name.to_owned())
    };
    let had = by_pieces(before, now);
    let has = by_pieces(after, |name| name.to_owned());
    let pieces: BTreeSet<&[String; 2]> = had.keys().chain(has.keys()).collect();
    let changes = pieces.into_iter().map(|pieces| JointChange {
        pieces: pieces.clone(),
        parts: {
            let there = has.contains_key(pieces);
            let of = |name: &String| {
                let old = renamed.iter().find(|(_, new)| *new == name);
                let earlier = old.map_or(name, |(old, _)| old);
                if there {
                    part_of(after, name)
                } else {
                    part_of(before, earlier)
                }
            };
            let [part, to] = pieces;
            [of(part), of(to)]
        },
        before: had.get(pieces).cloned().unwrap_or_default(),
        after: has.get(pieces).cloned().unwrap_or_default(),
    });
    changes
        .filter(|change| change.before != change.after)
        .collect()
}

fn by_pieces(build: &Build, name: impl Fn(&str) -> String) -> BTreeMap<[String; 2], Vec<Joining>> {
    let mut joined: BTreeMap<[String; 2], Vec<Joining>> = BTreeMap::new();
    for joint in &build.joints {
        let (Some(part), Some(to)) = (build.piece(joint.part), build.piece(joint.to)) else {
            continue;
        };
        let pieces = [name(&part.name), name(&to.name)];
        joined
            .entry(pieces)
            .or_default()
            .push(joining(build, joint));
    }
    for list in joined.values_mut() {
        list.sort();
    }
    joined
}

fn joining(build: &Build, joint: &Joint) -> Joining {
    let mut counts: BTreeMap<String, i64> = BTreeMap::new();
    for fastener in &joint.fasteners {
        if let Some(item) = build.hardware.get(fastener.hardware.0) {
            *counts.entry(item.title.clone()).or_default() += 1;
        }
    }
    Joining {
        kind: joint.kind,
        glued: joint.glued,
        hardware: counts.into_iter().collect(),
    }
}
