//! The steps: what comes in, what it takes, what to beware of, what to do and what to check.

use std::collections::{BTreeMap, BTreeSet};

use serde::Serialize;

use super::context::Facts;
use super::hardware::{HardwareSize, size};
use super::measure::{Duration, Measure};
use super::read_first::CautionText;
use super::signs::{self, SignText};
use super::wording::{self, TextPiece};
use crate::build::{SignalWord, Step};
use crate::caution::Occasion;
use crate::geometry::Handedness;
use crate::model::PartId;

/// A step ready to print.
#[derive(Clone, Debug, Serialize)]
pub(super) struct StepText {
    /// Counted from 1.
    number: usize,
    title: String,
    /// The name of its figure; none where the step adds nothing that it could show.
    figure: Option<String>,
    parts: Vec<StepPart>,
    hardware: Vec<StepHardware>,
    /// Glue, finish and abrasives it names.
    supplies: Vec<String>,
    tools: Vec<Vec<TextPiece>>,
    time: Option<Duration>,
    /// Cautions in full, for the first step each concerns.
    cautions: Vec<CautionText>,
    /// Cautions printed in full in an earlier step.
    reminders: Vec<CautionText>,
    /// What is worn for the reminders.
    worn: Vec<SignText>,
    /// The author's own cautions.
    own_cautions: Vec<(SignalWord, Vec<TextPiece>)>,
    says: Vec<Vec<TextPiece>>,
    checks: Vec<Vec<TextPiece>>,
}

/// Pieces of one part that come in.
#[derive(Clone, Debug, Serialize)]
struct StepPart {
    label: String,
    title: String,
    count: i64,
    /// How many of them are mirror images.
    mirrored: i64,
    size: Vec<Measure>,
}

#[derive(Clone, Debug, Serialize)]
struct StepHardware {
    title: String,
    count: i64,
    size: HardwareSize,
}

pub(super) fn of(facts: &Facts) -> Vec<StepText> {
    // A caution is printed in full where it first concerns the reader, and as a reminder after.
    let mut told = BTreeSet::new();
    let steps = facts.build.steps.iter().enumerate();
    steps
        .map(|(index, step)| text(facts, index, step, &mut told))
        .collect()
}

fn text(facts: &Facts, index: usize, step: &Step, told: &mut BTreeSet<&'static str>) -> StepText {
    let concerned = facts
        .cautions
        .list
        .iter()
        .filter(|one| one.concerns_step(index));
    let (first, again): (Vec<_>, Vec<_>) = concerned.partition(|one| told.insert(one.id));
    let texts = |list: Vec<&_>| {
        list.into_iter()
            .map(|one| CautionText::of(facts, one))
            .collect()
    };
    let own = step.cautions.iter();
    let own = own.map(|(signal, text)| (*signal, wording::pieces(facts, text)));
    let mut own_cautions: Vec<_> = own.collect();
    own_cautions.sort_by_key(|(signal, _)| *signal);
    let pieces = |texts: &[_]| {
        texts
            .iter()
            .map(|text| wording::pieces(facts, text))
            .collect()
    };
    StepText {
        number: index + 1,
        title: step.title.clone(),
        figure: shows(facts, step).then(|| format!("step-{}", index + 1)),
        parts: parts(facts, step),
        hardware: hardware(facts, step),
        supplies: supplies(facts, step),
        tools: tools(facts, index),
        time: step.seconds.and_then(Duration::of),
        worn: signs::worn(&again),
        cautions: texts(first),
        reminders: texts(again),
        own_cautions,
        says: pieces(&step.says),
        checks: pieces(&step.checks),
    }
}

/// A step that adds no piece and makes no joint would show the piece as the step before left it.
fn shows(facts: &Facts, step: &Step) -> bool {
    let adds = step.adds.iter().any(|id| facts.build.piece(*id).is_some());
    adds || !step.joints.is_empty()
}

/// The parts of the step, each once, in the order of their letters.
fn parts(facts: &Facts, step: &Step) -> Vec<StepPart> {
    let mut counts: BTreeMap<PartId, (i64, i64)> = BTreeMap::new();
    for piece in step.adds.iter().filter_map(|id| facts.build.piece(*id)) {
        let (count, mirrored) = counts.entry(piece.part).or_default();
        *count += 1;
        *mirrored += i64::from(piece.handedness == Handedness::Mirrored);
    }
    let rows = counts.into_iter().filter_map(|(id, (count, mirrored))| {
        let part = facts.build.part(id)?;
        Some(StepPart {
            label: part.label.clone(),
            title: part.title.clone(),
            count,
            // Where all pieces are mirror images alike there is nothing to tell apart.
            mirrored: if part.count > 0 { mirrored } else { 0 },
            size: Measure::all(&part.size(), facts.precision()),
        })
    });
    rows.collect()
}

fn hardware(facts: &Facts, step: &Step) -> Vec<StepHardware> {
    let rows = step.hardware.iter().filter_map(|(id, count)| {
        let item = facts.build.hardware.get(id.0)?;
        Some(StepHardware {
            title: item.title.clone(),
            count: *count,
            size: size(facts, item),
        })
    });
    rows.collect()
}

fn tools(facts: &Facts, index: usize) -> Vec<Vec<TextPiece>> {
    let tools = facts.cautions.tools.iter();
    tools
        .filter(|tool| tool.occasions.contains(&Occasion::Step(index)))
        .map(|tool| wording::fine_pieces(facts, &tool.name))
        .collect()
}

fn supplies(facts: &Facts, step: &Step) -> Vec<String> {
    let named = step.supplies.iter();
    named
        .filter_map(|id| facts.build.supplies.get(id.0))
        .map(|supply| supply.title.clone())
        .collect()
}
