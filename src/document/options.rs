//! The options of a plan, and what each other choice changes.

use serde::Serialize;

use super::context::Facts;
use super::measure::Measure;
use super::wording::{self, TextPiece};
use crate::options::{Change, Changes, OptionChanges, PartKind};
use crate::units::Money;

/// An option.
#[derive(Clone, Debug, Serialize)]
pub(super) struct OptionText {
    name: String,
    title: String,
    /// The choice that this plan is made for.
    chosen: String,
    others: Vec<ChoiceText>,
}

/// A choice that is not taken.
#[derive(Clone, Debug, Serialize)]
struct ChoiceText {
    name: String,
    title: String,
    /// It changes nothing that is counted.
    same: bool,
    parts: Vec<PartChange>,
    hardware: Vec<HardwareChange>,
    more_tools: Vec<Vec<TextPiece>>,
    fewer_tools: Vec<Vec<TextPiece>>,
    /// What it costs more or less.
    cost: Option<Difference>,
    /// What it weighs more or less.
    mass: Option<Difference>,
    /// Minutes that it takes more (above zero) or less.
    minutes: i64,
}

/// More or less of something, in words.
#[derive(Clone, Debug, Serialize)]
struct Difference {
    more: bool,
    by: String,
}

#[derive(Clone, Debug, Serialize)]
struct PartChange {
    title: String,
    before: Option<Pieces>,
    after: Option<Pieces>,
    cut_otherwise: bool,
}

#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
struct Pieces {
    count: i64,
    size: Vec<Measure>,
    material: String,
}

#[derive(Clone, Debug, Serialize)]
struct HardwareChange {
    title: String,
    before: i64,
    after: i64,
}

pub(super) fn of(facts: &Facts) -> Vec<OptionText> {
    facts.options.iter().map(|one| option(facts, one)).collect()
}

fn option(facts: &Facts, of: &OptionChanges) -> OptionText {
    let option = &of.option;
    let chosen = option.choices.get(option.chosen);
    let others = option.choices.iter().zip(&of.changes);
    OptionText {
        name: option.name.clone(),
        title: option.title.clone(),
        chosen: chosen.map_or_else(String::new, |choice| choice.title.clone()),
        others: others
            .filter_map(|(choice, changes)| {
                let changes = changes.as_ref()?;
                Some(choice_text(facts, [&choice.name, &choice.title], changes))
            })
            .collect(),
    }
}

fn choice_text(facts: &Facts, [name, title]: [&String; 2], changes: &Changes) -> ChoiceText {
    let tools = |tools: &[_]| {
        let tools = tools.iter();
        tools
            .map(|tool| wording::fine_pieces(facts, tool))
            .collect()
    };
    let [before, after] = changes.seconds;
    ChoiceText {
        name: name.clone(),
        title: title.clone(),
        same: changes.is_empty(),
        parts: changes.parts.iter().map(|one| part(facts, one)).collect(),
        hardware: changes.hardware.iter().map(hardware).collect(),
        more_tools: tools(&changes.more_tools),
        fewer_tools: tools(&changes.fewer_tools),
        cost: changes.cost.as_ref().and_then(|both| cost(facts, both)),
        mass: changes.kg.and_then(|both| mass(facts, both)),
        minutes: (after - before) / 60,
    }
}

fn part(facts: &Facts, change: &Change<PartKind>) -> PartChange {
    let pieces = |kind: &PartKind| Pieces {
        count: kind.pieces,
        size: Measure::all(&kind.size, facts.precision()),
        material: kind.material.clone(),
    };
    PartChange {
        title: change.title.clone(),
        before: change.before.as_ref().map(pieces),
        after: change.after.as_ref().map(pieces),
        cut_otherwise: change.after.as_ref().is_some_and(|kind| kind.cut_otherwise),
    }
}

fn hardware(change: &Change<i64>) -> HardwareChange {
    HardwareChange {
        title: change.title.clone(),
        before: change.before.unwrap_or_default(),
        after: change.after.unwrap_or_default(),
    }
}

fn cost(facts: &Facts, [before, after]: &[Money; 2]) -> Option<Difference> {
    let cents = after.cents - before.cents;
    let by = Money {
        cents: cents.abs(),
        currency: before.currency.clone(),
    };
    (cents != 0).then(|| Difference {
        more: cents > 0,
        by: facts.money(&by),
    })
}

/// What is less than a tenth of a kilogram is not told.
fn mass(facts: &Facts, [before, after]: [f64; 2]) -> Option<Difference> {
    let kg = after - before;
    (kg.abs() >= 0.1 && kg.is_finite()).then(|| Difference {
        more: kg > 0.0,
        by: facts.mass(kg.abs()),
    })
}
