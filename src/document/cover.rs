//! The cover: what it is, how large and heavy, how long it takes and what it costs.

use serde::Serialize;

use super::context::Facts;
use super::measure::{Duration, Measure};
use crate::build::Revision;

/// The figures of the cover.
#[derive(Clone, Debug, Serialize)]
pub(super) struct Cover {
    title: String,
    author: String,
    about: String,
    level: String,
    /// Width, depth and height; empty without a placed part.
    overall: Vec<Measure>,
    /// Mass in both systems; none where a density or a volume is not known.
    mass: Option<String>,
    /// Time of all steps that state one.
    time: Option<Duration>,
    /// Steps that state no time.
    steps_without_time: usize,
    /// Cost of material and hardware, one sum for each currency.
    costs: Vec<String>,
    /// Lines of the shopping list without a price.
    without_price: i64,
    /// The newest revision.
    revision: Option<Revision>,
}

pub(super) fn of(facts: &Facts) -> Cover {
    let plan = &facts.build.plan;
    let sizes = facts
        .build
        .overall
        .map(|stretches| stretches.map(|stretch| stretch.size()));
    let seconds = facts.build.steps.iter().filter_map(|step| step.seconds);
    let timed = facts
        .build
        .steps
        .iter()
        .filter(|step| step.seconds.is_some());
    let purchases = &facts.stock.purchases;
    Cover {
        title: plan.title.clone(),
        author: plan.author.clone(),
        about: plan.about.clone(),
        level: plan.level.clone(),
        overall: Measure::all(
            sizes.as_ref().map_or(&[], |sizes| &sizes[..]),
            facts.precision(),
        ),
        mass: kilograms(facts).map(|kg| facts.mass(kg)),
        time: Duration::of(seconds.fold(0, i64::saturating_add)),
        steps_without_time: facts.build.steps.len() - timed.count(),
        costs: purchases
            .totals
            .iter()
            .map(|sum| facts.money(sum))
            .collect(),
        without_price: purchases.unpriced,
        revision: plan.newest().cloned(),
    }
}

/// The mass of the wood as placed; none where anything of it is not known.
pub(super) fn kilograms(facts: &Facts) -> Option<f64> {
    let kilograms = facts.behaviour.total_kg()?;
    (kilograms > 0.0 && kilograms.is_finite()).then_some(kilograms)
}
