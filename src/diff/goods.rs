//! What is used, bought, paid and carried.

use std::collections::{BTreeMap, BTreeSet};

use crate::options::Selected;
use crate::units::Money;

/// Another number of something.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Amount {
    /// What.
    pub title: String,
    /// How many before, and after.
    pub count: [i64; 2],
}

/// What differs in what is used and bought.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Goods {
    /// Hardware that is used, by its printed name.
    pub hardware: Vec<Amount>,
    /// Sheets, boards and bars to buy, by material and size.
    pub stock: Vec<Amount>,
    /// Packs of glue, finish and abrasives to buy.
    pub supplies: Vec<Amount>,
    /// What all purchases cost; none where it is the same or not in one currency.
    pub cost: Option<[Money; 2]>,
    /// Kilograms; none where they are the same within 50 g or not known.
    pub kg: Option<[f64; 2]>,
    /// Seconds of all steps; none where they are the same.
    pub seconds: Option<[i64; 2]>,
}

impl Goods {
    /// True where nothing differs.
    pub fn is_empty(&self) -> bool {
        self.hardware.is_empty()
            && self.stock.is_empty()
            && self.supplies.is_empty()
            && self.cost.is_none()
            && self.kg.is_none()
            && self.seconds.is_none()
    }
}

pub(super) fn changes(before: &Selected<'_>, after: &Selected<'_>) -> Goods {
    let differing = |counts: fn(&Selected<'_>) -> BTreeMap<String, i64>| {
        amounts(&counts(before), &counts(after))
    };
    let cost = cost(before).zip(cost(after));
    let kg = before.behaviour.total_kg().zip(after.behaviour.total_kg());
    let seconds = [before, after].map(|of| {
        let steps = of.build.steps.iter().filter_map(|step| step.seconds);
        steps.fold(0_i64, i64::saturating_add)
    });
    Goods {
        hardware: differing(hardware),
        stock: differing(stock),
        supplies: differing(supplies),
        cost: cost
            .filter(|(a, b)| a.currency == b.currency && a.cents != b.cents)
            .map(|(a, b)| [a, b]),
        kg: kg
            .filter(|(a, b)| (a - b).abs() >= 0.05)
            .map(|(a, b)| [a, b]),
        seconds: (seconds.first() != seconds.last()).then_some(seconds),
    }
}

fn amounts(had: &BTreeMap<String, i64>, has: &BTreeMap<String, i64>) -> Vec<Amount> {
    let titles: BTreeSet<&String> = had.keys().chain(has.keys()).collect();
    let count = |of: &BTreeMap<String, i64>, title: &String| of.get(title).copied().unwrap_or(0);
    let amounts = titles.into_iter().map(|title| Amount {
        title: title.clone(),
        count: [count(had, title), count(has, title)],
    });
    amounts
        .filter(|amount| amount.count.first() != amount.count.last())
        .collect()
}

fn hardware(of: &Selected<'_>) -> BTreeMap<String, i64> {
    let mut counts = BTreeMap::new();
    for item in of.build.hardware.iter().filter(|item| item.count > 0) {
        *counts.entry(item.title.clone()).or_insert(0) += item.count;
    }
    counts
}

fn stock(of: &Selected<'_>) -> BTreeMap<String, i64> {
    let mut counts = BTreeMap::new();
    let bought = of.stock.purchases.stock.iter().filter(|line| !line.on_hand);
    for line in bought {
        let material = of.build.material(line.material);
        let [length, width, _] = line.size;
        let title = format!(
            "{}, {} by {}",
            material.map_or("", |it| &it.title),
            length.in_both(),
            width.in_both()
        );
        *counts.entry(title).or_insert(0) += line.count + line.more;
    }
    counts
}

fn supplies(of: &Selected<'_>) -> BTreeMap<String, i64> {
    let mut counts = BTreeMap::new();
    for line in &of.stock.purchases.supplies {
        if let Some(supply) = of.build.supplies.get(line.supply.0) {
            *counts.entry(supply.title.clone()).or_insert(0) += line.packs;
        }
    }
    counts
}

/// The sum of all purchases, where it is in one currency.
fn cost(of: &Selected<'_>) -> Option<Money> {
    match of.stock.purchases.totals.as_slice() {
        [only] => Some(only.clone()),
        _ => None,
    }
}
