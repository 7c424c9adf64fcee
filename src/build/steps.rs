//! Steps with what they need: which joints are made in them, which hardware they use.

use std::collections::BTreeMap;

use super::assemble::FirstOf;
use super::types::{
    Build, Coming, GroupId, HardwareId, InstanceId, PlacedId, Step, Wording, WordingPiece,
};
use crate::model::{Model, PartId, Said, SaidPiece, StepDesign};

/// Adds the steps to a build, gives every piece its step, counts the hardware.
pub(super) fn gather_steps(model: &Model, first_of: &FirstOf, build: &mut Build) {
    lay_ways_in(build);
    for (index, step) in model.steps.iter().enumerate() {
        for (piece, _) in &step.adds {
            add(build, *piece, step.group, index);
        }
    }
    for piece in &mut build.placed {
        piece.step = piece.comings.last().and_then(|coming| coming.step);
    }
    let joints = joints_by_step(build);
    for (index, design) in model.steps.iter().enumerate() {
        let made = joints.get(&index).cloned().unwrap_or_default();
        let step = step_of(design, made, first_of, build);
        for (id, count) in &step.hardware {
            if let Some(item) = build.hardware.get_mut(id.0) {
                item.count += count;
            }
        }
        build.steps.push(step);
    }
    // Joints of pieces that no step adds still use their hardware.
    let homeless: Vec<HardwareId> = build
        .joints
        .iter()
        .filter(|joint| joint_step(build, joint.part, joint.to).is_none())
        .flat_map(|joint| joint.fasteners.iter().map(|fastener| fastener.hardware))
        .collect();
    for id in homeless {
        if let Some(item) = build.hardware.get_mut(id.0) {
            item.count += 1;
        }
    }
}

/// What every piece is put into, from the build inwards, with no step yet.
fn lay_ways_in(build: &mut Build) {
    let ways: Vec<Vec<Coming>> = build
        .placed
        .iter()
        .map(|piece| {
            let mut comings = Vec::new();
            let mut at = piece.within;
            while let Some((id, it)) = at.and_then(|id| Some((id, build.instances.get(id.0)?))) {
                if build
                    .groups
                    .get(it.group.0)
                    .is_some_and(|group| group.has_steps)
                {
                    comings.push(Coming {
                        into: Some(id),
                        step: None,
                    });
                }
                at = it.within;
            }
            comings.push(Coming {
                into: None,
                step: None,
            });
            comings.reverse();
            comings
        })
        .collect();
    for (piece, comings) in build.placed.iter_mut().zip(ways) {
        piece.comings = comings;
    }
}

/// A piece comes in with a step. One added twice counts where it comes in first; a rule tells.
fn add(build: &mut Build, piece: PlacedId, group: Option<GroupId>, step: usize) {
    let instances = &build.instances;
    let of_group = |coming: &Coming| {
        coming
            .into
            .and_then(|id| instances.get(id.0))
            .map(|it| it.group)
            == group
    };
    let coming = build
        .placed
        .get_mut(piece.0)
        .and_then(|piece| piece.comings.iter_mut().find(|coming| of_group(coming)));
    if let Some(coming) = coming {
        coming.step.get_or_insert(step);
    }
}

/// The step in which both pieces of a joint are there.
fn joint_step(build: &Build, part: PlacedId, to: PlacedId) -> Option<usize> {
    let (part, to) = (build.piece(part)?, build.piece(to)?);
    // Inside of the innermost sub-assembly that both are in.
    let (a, b) = part
        .comings
        .iter()
        .zip(&to.comings)
        .take_while(|(a, b)| a.into == b.into)
        .last()?;
    Some(a.step?.max(b.step?))
}

fn joints_by_step(build: &Build) -> BTreeMap<usize, Vec<usize>> {
    let mut by_step: BTreeMap<usize, Vec<usize>> = BTreeMap::new();
    for (index, joint) in build.joints.iter().enumerate() {
        if let Some(step) = joint_step(build, joint.part, joint.to) {
            by_step.entry(step).or_default().push(index);
        }
    }
    by_step
}

fn step_of(design: &StepDesign, joints: Vec<usize>, first_of: &FirstOf, build: &Build) -> Step {
    let mut used: BTreeMap<HardwareId, i64> = BTreeMap::new();
    let fasteners = joints.iter().filter_map(|joint| build.joints.get(*joint));
    for fastener in fasteners.flat_map(|joint| &joint.fasteners) {
        *used.entry(fastener.hardware).or_insert(0) += 1;
    }
    for (id, count) in &design.uses {
        *used.entry(*id).or_insert(0) += count;
    }
    let words = |said: &Said| wording(said, first_of, build);
    Step {
        group: design.group,
        title: design.title.clone(),
        adds: design.adds.iter().map(|(piece, _)| *piece).collect(),
        joints,
        pulls: design.pulls.clone(),
        look: design.look.clone(),
        says: design.says.iter().map(words).collect(),
        checks: design.checks.iter().map(words).collect(),
        tools: design.tools.clone(),
        hardware: used.into_iter().collect(),
        supplies: design.supplies.clone(),
        cautions: design
            .cautions
            .iter()
            .map(|(word, said)| (*word, words(said)))
            .collect(),
        seconds: design.seconds,
        span: design.span,
    }
}

/// A text with the parts the build made of what it names.
fn wording(said: &Said, first_of: &FirstOf, build: &Build) -> Wording {
    let mut pieces = Vec::new();
    for piece in said {
        match piece {
            SaidPiece::Plain(text) => pieces.push(WordingPiece::Plain(text.clone())),
            SaidPiece::Length(length) => pieces.push(WordingPiece::Length(*length)),
            SaidPiece::Value(text) => pieces.push(WordingPiece::Value(text.clone())),
            SaidPiece::Part(part) => {
                pieces.extend(first_of.get(&part.0).map(|id| WordingPiece::Part(*id, 1)));
            }
            SaidPiece::Pieces(placed) => push_parts(placed, build, &mut pieces),
            SaidPiece::Wholes(wholes) => push_wholes(wholes, build, &mut pieces),
        }
    }
    Wording { pieces }
}

/// Placed pieces as parts with counts: "2 × shelf (B) and shelf (C)".
fn push_parts(placed: &[PlacedId], build: &Build, pieces: &mut Vec<WordingPiece>) {
    let mut counts: BTreeMap<PartId, i64> = BTreeMap::new();
    for id in placed {
        if let Some(piece) = build.piece(*id) {
            *counts.entry(piece.part).or_insert(0) += 1;
        }
    }
    push_list(counts, WordingPiece::Part, pieces);
}

/// Sub-assemblies with counts: "2 × drawer (S1)".
fn push_wholes(wholes: &[InstanceId], build: &Build, pieces: &mut Vec<WordingPiece>) {
    let mut counts: BTreeMap<GroupId, i64> = BTreeMap::new();
    for whole in wholes.iter().filter_map(|id| build.instances.get(id.0)) {
        *counts.entry(whole.group).or_insert(0) += 1;
    }
    push_list(counts, WordingPiece::Whole, pieces);
}

/// "a, b and c".
fn push_list<K>(
    counts: BTreeMap<K, i64>,
    piece: fn(K, i64) -> WordingPiece,
    pieces: &mut Vec<WordingPiece>,
) {
    let last = counts.len().saturating_sub(1);
    for (order, (kind, count)) in counts.into_iter().enumerate() {
        if order > 0 {
            let joint = if order == last { " and " } else { ", " };
            pieces.push(WordingPiece::Plain(joint.to_owned()));
        }
        pieces.push(piece(kind, count));
    }
}
