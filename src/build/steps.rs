//! Steps with what they need: which joints are made in them, which hardware they use.

use std::collections::BTreeMap;

use super::assemble::FirstOf;
use super::types::{Build, HardwareId, PlacedId, Step, Wording, WordingPiece};
use crate::model::{Model, PartId, Said, SaidPiece, StepDesign};

/// Adds the steps to a build, gives every piece its step, counts the hardware.
pub(super) fn gather_steps(model: &Model, first_of: &FirstOf, build: &mut Build) {
    for (index, step) in model.steps.iter().enumerate() {
        for (piece, _) in &step.adds {
            if let Some(piece) = build.placed.get_mut(piece.0) {
                // A piece added twice counts where it comes in first; a rule tells.
                piece.step.get_or_insert(index);
            }
        }
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

/// The step in which both pieces of a joint are there.
fn joint_step(build: &Build, part: PlacedId, to: PlacedId) -> Option<usize> {
    let step = |id: PlacedId| build.piece(id).and_then(|piece| piece.step);
    Some(step(part)?.max(step(to)?))
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
    let last = counts.len().saturating_sub(1);
    for (order, (part, count)) in counts.into_iter().enumerate() {
        if order > 0 {
            let joint = if order == last { " and " } else { ", " };
            pieces.push(WordingPiece::Plain(joint.to_owned()));
        }
        pieces.push(WordingPiece::Part(part, count));
    }
}
