//! Rows of parts whose printed sizes do not add up, for the end of the cut list.

use serde::Serialize;

use super::context::Facts;
use super::measure::Measure;
use crate::units::Length;

/// A row of parts and what its printed sizes make in one system.
#[derive(Clone, Debug, Serialize)]
pub(super) struct OpenSum {
    /// Letters of the parts, one after the other.
    labels: Vec<String>,
    /// The part beside them that is as long.
    whole_of: Option<String>,
    /// Whether parts of the row are let into each other.
    let_in: bool,
    /// The figures are millimetres; inches if false.
    metric: bool,
    /// What the printed sizes make, as a figure of that system.
    made: String,
    /// What is printed of the whole.
    whole: String,
    /// The letter of the part to be cut to fit.
    to_fit: Option<String>,
}

pub(super) fn of(facts: &Facts) -> Vec<OpenSum> {
    let precision = facts.precision();
    let label = |part| facts.build.part(part).map(|part| part.label.clone());
    let sums = facts.stock.open_sums.iter().flat_map(|sum| {
        let row = move |metric, open: Length, printed: Length| {
            let figure = |length| {
                let measure = Measure::of(length, precision);
                if metric { measure.mm } else { measure.inch }
            };
            (open != Length::ZERO).then(|| OpenSum {
                labels: sum.parts.iter().copied().filter_map(label).collect(),
                whole_of: label(sum.whole_of),
                let_in: sum.depths.iter().any(|depth| *depth > Length::ZERO),
                metric,
                made: figure(printed + open),
                whole: figure(printed),
                to_fit: sum.to_fit.and_then(label),
            })
        };
        let whole = sum.whole;
        let inches = row(false, sum.inch_open, whole.printed_inch(precision));
        let metric = row(true, sum.mm_open, whole.printed_mm(precision));
        inches.into_iter().chain(metric)
    });
    sums.collect()
}
