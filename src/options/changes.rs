//! What differs between two selections of one plan.

use std::collections::{BTreeMap, BTreeSet};

use crate::behaviour::Behaviour;
use crate::build::{Build, Part, Wording};
use crate::caution::Cautions;
use crate::stock::Stock;
use crate::units::{Length, Money};

/// What the stages gave for a selection.
#[derive(Clone, Copy, Debug)]
pub struct Selected<'s> {
    /// The build.
    pub build: &'s Build,
    /// Its stock and purchases.
    pub stock: &'s Stock,
    /// What it weighs.
    pub behaviour: &'s Behaviour,
    /// Its tools.
    pub cautions: &'s Cautions,
}

/// What a choice changes.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Changes {
    /// Parts, by their source's name, of which the pieces differ.
    pub parts: Vec<Change<PartKind>>,
    /// Hardware by its printed name, with how many are used.
    pub hardware: Vec<Change<i64>>,
    /// Tools that it takes as well.
    pub more_tools: Vec<Wording>,
    /// Tools that it does without.
    pub fewer_tools: Vec<Wording>,
    /// What all purchases cost, before and after; none where there is no one currency.
    pub cost: Option<[Money; 2]>,
    /// Kilograms, before and after; none where either is not known.
    pub kg: Option<[f64; 2]>,
    /// Seconds of all steps, before and after.
    pub seconds: [i64; 2],
}

impl Changes {
    /// True where nothing of it can be told.
    pub fn is_empty(&self) -> bool {
        let same = |pair: [i64; 2]| pair.first() == pair.last();
        self.parts.is_empty()
            && self.hardware.is_empty()
            && self.more_tools.is_empty()
            && self.fewer_tools.is_empty()
            && self
                .cost
                .as_ref()
                .is_none_or(|[before, after]| before == after)
            && same(self.seconds)
    }
}

/// Something that is other before and after; none where it is not there.
#[derive(Clone, Debug, PartialEq)]
pub struct Change<T> {
    /// Its printed name.
    pub title: String,
    /// Before.
    pub before: Option<T>,
    /// After.
    pub after: Option<T>,
}

/// Pieces of a part that are made alike.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct PartKind {
    /// How many.
    pub pieces: i64,
    /// Finished length, width and thickness.
    pub size: [Length; 3],
    /// The printed name of what it is cut from.
    pub material: String,
    /// True where it is cut, drilled or shaped otherwise, whatever its size.
    pub cut_otherwise: bool,
}

/// What differs.
pub fn changes(before: &Selected<'_>, after: &Selected<'_>) -> Changes {
    let tools = |of: &Selected<'_>| {
        let tools = of.cautions.tools.iter();
        tools.map(|tool| tool.name.clone()).collect::<Vec<_>>()
    };
    let (had, has) = (tools(before), tools(after));
    let lacking = |of: &[Wording], other: &[Wording]| {
        let of = of.iter().filter(|tool| !other.contains(tool));
        of.cloned().collect()
    };
    let seconds = |of: &Selected<'_>| {
        let steps = of.build.steps.iter().filter_map(|step| step.seconds);
        steps.fold(0, i64::saturating_add)
    };
    Changes {
        parts: parts(before, after),
        hardware: hardware(before, after),
        more_tools: lacking(&has, &had),
        fewer_tools: lacking(&had, &has),
        cost: cost(before.stock).zip(cost(after.stock)).and_then(both),
        kg: before
            .behaviour
            .total_kg()
            .zip(after.behaviour.total_kg())
            .map(|(before, after)| [before, after]),
        seconds: [seconds(before), seconds(after)],
    }
}

/// The sum of all purchases, where it is in one currency.
fn cost(stock: &Stock) -> Option<Money> {
    match stock.purchases.totals.as_slice() {
        [only] => Some(only.clone()),
        _ => None,
    }
}

fn both((before, after): (Money, Money)) -> Option<[Money; 2]> {
    (before.currency == after.currency).then_some([before, after])
}

/// Parts by the name of their description, and in it by what they come out as.
fn by_name<'s>(of: &Selected<'s>) -> BTreeMap<&'s str, Vec<&'s Part>> {
    let mut names: BTreeMap<&str, Vec<&Part>> = BTreeMap::new();
    for part in of.build.parts.iter().filter(|part| part.pieces() > 0) {
        names.entry(&part.name).or_default().push(part);
    }
    names
}

fn parts(before: &Selected<'_>, after: &Selected<'_>) -> Vec<Change<PartKind>> {
    let (mut had, mut has) = (by_name(before), by_name(after));
    let names: BTreeSet<&str> = had.keys().chain(has.keys()).copied().collect();
    let mut changes = Vec::new();
    for name in names {
        let mut olds = had.remove(name).unwrap_or_default();
        let mut news = has.remove(name).unwrap_or_default();
        // What is the same in every respect says nothing.
        let same = |a: &Part, b: &Part| {
            kind(before, a, false) == kind(after, b, false) && shapes(a) == shapes(b)
        };
        olds.retain(|old| match news.iter().position(|new| same(old, new)) {
            Some(place) => {
                news.remove(place);
                false
            }
            None => true,
        });
        let mut olds = olds.into_iter();
        let mut news = news.into_iter();
        loop {
            let (old, new) = (olds.next(), news.next());
            let Some(either) = new.or(old) else { break };
            let otherwise = old.zip(new).is_some_and(|(a, b)| shapes(a) != shapes(b));
            changes.push(Change {
                title: either.title.clone(),
                before: old.map(|part| kind(before, part, false)),
                after: new.map(|part| kind(after, part, otherwise)),
            });
        }
    }
    changes
}

/// The shapes of a part's features, wherever they are written.
fn shapes(part: &Part) -> Vec<&crate::model::FeatureShape> {
    part.features.iter().map(|feature| &feature.shape).collect()
}

fn kind(of: &Selected<'_>, part: &Part, cut_otherwise: bool) -> PartKind {
    let material = of.build.material(part.material);
    PartKind {
        pieces: part.pieces(),
        size: part.size(),
        material: material.map_or_else(String::new, |material| material.title.clone()),
        cut_otherwise,
    }
}

fn hardware(before: &Selected<'_>, after: &Selected<'_>) -> Vec<Change<i64>> {
    let counts = |of: &Selected<'_>| {
        let used = of.build.hardware.iter().filter(|item| item.count > 0);
        used.map(|item| (item.title.clone(), item.count))
            .collect::<BTreeMap<_, _>>()
    };
    let (had, has) = (counts(before), counts(after));
    let titles: BTreeSet<&String> = had.keys().chain(has.keys()).collect();
    let changes = titles.into_iter().map(|title| Change {
        title: title.clone(),
        before: had.get(title).copied(),
        after: has.get(title).copied(),
    });
    changes
        .filter(|change| change.before != change.after)
        .collect()
}
