//! Cutting layouts: how each sheet and board is cut, which fence settings it takes, what is left.

use std::collections::BTreeMap;

use serde::Serialize;

use super::buy::form;
use super::context::Facts;
use super::measure::Measure;
use crate::model::Grain;
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
    at_least: i64,
    layouts: Vec<LayoutText>,
}

/// One sheet or board.
#[derive(Clone, Debug, Serialize)]
struct LayoutText {
    /// The name of its figure.
    figure: String,
    /// Counted from 1 within its material.
    number: usize,
    /// Length and width as bought.
    size: Vec<Measure>,
    kerf: Measure,
    /// Trimmed off the ends; none where nothing is.
    trim_ends: Option<Measure>,
    /// Trimmed off the long edges; none where nothing is.
    trim_edges: Option<Measure>,
    /// Settings in the order they are first needed.
    settings: Vec<Setting>,
    /// What is cut out.
    parts: Vec<PartCount>,
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
    let layouts = plan.layouts.iter().zip(names).enumerate();
    let layouts = layouts.map(|(index, (layout, name))| text(facts, layout, index + 1, name));
    Some(MaterialLayouts {
        title: material.title.clone(),
        form: form(material.form),
        has_grain: material.grain == Grain::AlongLength,
        count: plan.layouts.len(),
        at_least: plan.at_least,
        layouts: layouts.collect(),
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
        size: Measure::all(&layout.size, facts.precision()),
        kerf: facts.fine_measure(layout.kerf),
        trim_ends: trim(ends),
        trim_edges: trim(edges),
        settings: settings(facts, layout),
        parts: parts(facts, layout),
        offcuts: offcuts.collect(),
    }
}

/// Cuts of one setting are made together (ref: layout-practice#P12, #P13 [P]).
fn settings(facts: &Facts, layout: &Layout) -> Vec<Setting> {
    let mut order: Vec<(CutDirection, Length)> = Vec::new();
    let mut counts: BTreeMap<(CutDirection, Length), usize> = BTreeMap::new();
    for cut in &layout.cuts {
        let key = (cut.direction, cut.setting);
        let count = counts.entry(key).or_default();
        if *count == 0 {
            order.push(key);
        }
        *count += 1;
    }
    let settings = order.into_iter().map(|key| Setting {
        rip: key.0 == CutDirection::Rip,
        at: facts.measure(key.1),
        cuts: counts.get(&key).copied().unwrap_or(0),
    });
    settings.collect()
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
