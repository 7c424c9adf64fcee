//! Cutting layouts: how each sheet and board is cut, which fence settings it takes, what is left.

use std::collections::{BTreeMap, BTreeSet};

use serde::Serialize;

use super::buy::form;
use super::context::Facts;
use super::measure::Measure;
use crate::model::{Grain, PartId};
use crate::stock::{CutDirection, Layout, MaterialPlan};
use crate::units::Length;

/// Offcuts worth keeping are at least that in both directions. Common practice, no source.
const WORTH_KEEPING: Length = Length::from_mm(100);

/// The layouts of one material.
#[derive(Clone, Debug, Serialize)]
pub(super) struct MaterialLayouts {
    title: String,
    form: &'static str,
    /// Its grain runs along its length.
    has_grain: bool,
    count: usize,
    /// How many of them are offcuts on hand.
    on_hand: usize,
    /// How many are bought, and at least as many are.
    bought: usize,
    at_least: i64,
    /// Where sizes of several prices are mixed: what they cost, and at least as much is paid.
    cost: Option<Costs>,
    layouts: Vec<LayoutText>,
}

/// What several sizes cost together.
#[derive(Clone, Debug, Serialize)]
struct Costs {
    cost: String,
    at_least: String,
    /// What one size alone would cost.
    alone: Vec<AloneText>,
}

/// One size in place of several.
#[derive(Clone, Debug, Serialize)]
struct AloneText {
    size: Vec<Measure>,
    count: usize,
    cost: String,
}

/// One sheet or board.
#[derive(Clone, Debug, Serialize)]
struct LayoutText {
    /// The name of its figure.
    figure: String,
    /// Counted from 1 within its material: the first and the last of those cut alike.
    number: usize,
    last: usize,
    /// An offcut on hand.
    on_hand: bool,
    /// Length and width as bought.
    size: Vec<Measure>,
    kerf: Measure,
    /// Trimmed off the ends; none where nothing is.
    trim_ends: Option<Measure>,
    /// Trimmed off the long edges; none where nothing is.
    trim_edges: Option<Measure>,
    /// Settings in the order they are first needed.
    settings: Vec<Setting>,
    /// What is cut out of one.
    parts: Vec<PartCount>,
    /// Letters of parts that lie side by side so that the grain runs on over them.
    continuous: Vec<Vec<String>>,
    offcuts: Vec<Vec<Measure>>,
}

/// One setting of fence or stop and how often it is used.
#[derive(Clone, Debug, Serialize)]
struct Setting {
    rip: bool,
    at: Measure,
    cuts: usize,
}

#[derive(Clone, Debug, Serialize)]
struct PartCount {
    label: String,
    count: usize,
}

pub(super) fn of(facts: &Facts) -> Vec<MaterialLayouts> {
    let mut names = facts.stock.named_layouts().map(|(name, _)| name);
    let mut list = Vec::new();
    for plan in facts.stock.plans() {
        let names: Vec<String> = names.by_ref().take(plan.layouts.len()).collect();
        list.extend(material(facts, plan, names));
    }
    list
}

fn material(facts: &Facts, plan: &MaterialPlan, names: Vec<String>) -> Option<MaterialLayouts> {
    let material = facts.build.material(plan.material)?;
    let mut layouts: Vec<(&Layout, LayoutText)> = Vec::new();
    for (number, (layout, name)) in (1..).zip(plan.layouts.iter().zip(names)) {
        match layouts.last_mut() {
            Some((before, text)) if before.is_cut_like(layout) => text.last = number,
            Some(_) | None => layouts.push((layout, text(facts, layout, number, name))),
        }
    }
    let sizes: BTreeSet<usize> = plan.layouts.iter().map(|layout| layout.stock).collect();
    let several = sizes.len() > 1 || !plan.alternatives.is_empty();
    let costs = plan.cost.as_ref().zip(plan.least_cost.as_ref());
    let cost = costs.filter(|_| several).map(|(cost, least)| Costs {
        cost: facts.money(cost),
        at_least: facts.money(least),
        alone: plan
            .alternatives
            .iter()
            .map(|one| AloneText {
                size: Measure::all(&one.size, facts.precision()),
                count: one.count,
                cost: facts.money(&one.cost),
            })
            .collect(),
    });
    Some(MaterialLayouts {
        title: material.title.clone(),
        form: form(material.form),
        has_grain: material.grain == Grain::AlongLength,
        count: plan.layouts.len(),
        on_hand: plan.on_hand(),
        bought: plan.layouts.len() - plan.on_hand(),
        at_least: plan.at_least,
        cost,
        layouts: layouts.into_iter().map(|(_, text)| text).collect(),
    })
}

fn text(facts: &Facts, layout: &Layout, number: usize, figure: String) -> LayoutText {
    let trim = |trim: Length| trim.is_positive().then(|| facts.measure(trim));
    let [ends, edges] = layout.trim;
    let offcuts = layout
        .offcuts
        .iter()
        .filter(|offcut| offcut.length.min(offcut.width) >= WORTH_KEEPING)
        .map(|offcut| Measure::all(&[offcut.length, offcut.width], facts.precision()));
    LayoutText {
        figure,
        number,
        last: number,
        on_hand: layout.on_hand,
        size: Measure::all(&layout.size, facts.precision()),
        kerf: facts.fine_measure(layout.kerf),
        trim_ends: trim(ends),
        trim_edges: trim(edges),
        settings: settings(facts, layout),
        parts: parts(facts, layout),
        continuous: continuous(facts, layout),
        offcuts: offcuts.collect(),
    }
}

fn settings(facts: &Facts, layout: &Layout) -> Vec<Setting> {
    let settings = layout.settings().into_iter().map(|setting| Setting {
        rip: setting.direction == CutDirection::Rip,
        at: facts.measure(setting.at),
        cuts: setting.cuts,
    });
    settings.collect()
}

/// Runs of pieces that this layout holds.
fn continuous(facts: &Facts, layout: &Layout) -> Vec<Vec<String>> {
    let runs = facts.build.continuous.iter().filter(|run| {
        let is_here = |part: &PartId| layout.placements.iter().any(|one| one.part == *part);
        !run.parts.is_empty() && run.parts.iter().all(is_here)
    });
    let letters = runs.map(|run| {
        let parts = run.parts.iter().filter_map(|part| facts.build.part(*part));
        parts.map(|part| part.label.clone()).collect()
    });
    letters.collect()
}

fn parts(facts: &Facts, layout: &Layout) -> Vec<PartCount> {
    let mut counts = BTreeMap::new();
    for placement in &layout.placements {
        *counts.entry(placement.part).or_insert(0) += 1;
    }
    let parts = counts.into_iter().filter_map(|(part, count)| {
        let label = facts.build.part(part)?.label.clone();
        Some(PartCount { label, count })
    });
    parts.collect()
}
