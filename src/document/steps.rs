//! The steps: what comes in, what it takes, what to beware of, what to do and what to check.

use std::collections::{BTreeMap, BTreeSet};

use serde::Serialize;

use super::context::Facts;
use super::hardware::{HardwareSize, size};
use super::measure::{Duration, Measure};
use super::read_first::CautionText;
use super::signs::{self, SignText};
use super::wording::{self, TextPiece};
use crate::build::{GroupId, InstanceId, SignalWord, Step};
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
    /// What is put together in it, where that is no more than a part of the whole.
    making: Option<Making>,
    /// Sub-assemblies that come in as they were put together before.
    wholes: Vec<StepWhole>,
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

/// A sub-assembly that a step is about.
#[derive(Clone, Debug, Serialize)]
struct Making {
    label: String,
    title: String,
    /// True for the first of its steps.
    begins: bool,
    /// How many alike are made.
    count: usize,
    /// How many of them are mirror images.
    mirrored: usize,
}

/// Sub-assemblies of one kind that come in.
#[derive(Clone, Debug, Serialize)]
struct StepWhole {
    label: String,
    title: String,
    /// Width, depth and height of one as it stands.
    size: Vec<Measure>,
    count: usize,
    mirrored: usize,
    /// The steps in which it was put together, counted from 1: the first and the last.
    steps: Option<(usize, usize)>,
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
        making: step.group.and_then(|group| making(facts, index, group)),
        wholes: wholes(facts, index, step),
        parts: parts(facts, index, step),
        hardware: hardware(facts, step),
        supplies: supplies(facts, step),
        tools: tools(facts, index),
        time: step.seconds.and_then(Duration::of),
        worn: signs::worn(&again, facts.words),
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

fn making(facts: &Facts, index: usize, id: GroupId) -> Option<Making> {
    let group = facts.build.groups.get(id.0)?;
    let first = facts
        .build
        .steps
        .iter()
        .position(|step| step.group == Some(id));
    let made = group.instances.iter();
    let mirrored = made.filter(|id| is_mirrored(facts, **id)).count();
    Some(Making {
        label: group.label.clone(),
        begins: first == Some(index),
        title: group.title.clone(),
        count: group.instances.len(),
        // Where all are mirror images alike there is nothing to tell apart.
        mirrored: mirrored % group.instances.len().max(1),
    })
}

fn is_mirrored(facts: &Facts, instance: InstanceId) -> bool {
    let instance = facts.build.instances.get(instance.0);
    instance.is_some_and(|it| it.handedness == Handedness::Mirrored)
}

/// The sub-assemblies of the step, by kind.
fn wholes(facts: &Facts, index: usize, step: &Step) -> Vec<StepWhole> {
    let build = facts.build;
    let added: BTreeSet<InstanceId> = step
        .adds
        .iter()
        .filter_map(|piece| build.whole_added(*piece, index))
        .collect();
    let mut kinds: BTreeMap<GroupId, Vec<InstanceId>> = BTreeMap::new();
    for id in added {
        if let Some(it) = build.instances.get(id.0) {
            kinds.entry(it.group).or_default().push(id);
        }
    }
    let rows = kinds.into_iter().filter_map(|(group, instances)| {
        let steps = build.steps.iter().enumerate();
        let own: Vec<usize> = steps
            .filter(|(_, step)| step.group == Some(group))
            .map(|(number, _)| number + 1)
            .collect();
        let mirrored = instances
            .iter()
            .filter(|id| is_mirrored(facts, **id))
            .count();
        let size = build.size_of_whole(*instances.first()?)?;
        Some(StepWhole {
            label: build.groups.get(group.0)?.label.clone(),
            title: build.groups.get(group.0)?.title.clone(),
            size: Measure::all(&size, facts.precision()),
            count: instances.len(),
            mirrored: mirrored % instances.len().max(1),
            steps: own.first().copied().zip(own.last().copied()),
        })
    });
    rows.collect()
}

/// The parts of the step, each once, in the order of their letters.
fn parts(facts: &Facts, index: usize, step: &Step) -> Vec<StepPart> {
    let mut counts: BTreeMap<PartId, (i64, i64)> = BTreeMap::new();
    let single = step
        .adds
        .iter()
        .filter(|id| facts.build.whole_added(**id, index).is_none());
    for piece in single.filter_map(|id| facts.build.piece(*id)) {
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
            size: size(item, facts.fine()),
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
