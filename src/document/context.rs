//! All that the templates of a plan see.

use std::collections::{BTreeMap, BTreeSet};

use serde::Serialize;

use super::buy::Buy;
use super::cover::Cover;
use super::cut_list::MaterialRows;
use super::drilling::Bit;
use super::figures::BuildFigures;
use super::final_checks::FinalChecks;
use super::full_size::FullSize;
use super::hardware::HardwareRow;
use super::layouts::MaterialLayouts;
use super::measure::Measure;
use super::options::OptionText;
use super::parts::DrawnPart;
use super::read_first::ReadFirst;
use super::steps::StepText;
use super::sums::OpenSum;
use super::tools::ToolGroup;
use super::{
    Stages, buy, cover, cut_list, drilling, figures, final_checks, full_size, hardware, layouts,
    options, parts, read_first, steps, sums, tools,
};
use crate::behaviour::Behaviour;
use crate::build::{Build, Revision};
use crate::caution::{Cautions, Occasion};
use crate::display::Figure;
use crate::model::{Load, PlanHead};
use crate::options::OptionChanges;
use crate::rules::Allowed;
use crate::solid::Solids;
use crate::stock::Stock;
use crate::units::{Length, Mass, Money, Precision};
use crate::words::Words;

/// What a plan is made of.
pub(super) struct Facts<'a> {
    /// The build.
    pub(super) build: &'a Build,
    /// The shapes of its parts.
    pub(super) solids: &'a Solids,
    /// What it is cut from.
    pub(super) stock: &'a Stock,
    /// What is dangerous in it.
    pub(super) cautions: &'a Cautions,
    /// The drawn figures.
    pub(super) figures: &'a BTreeMap<String, Figure>,
    /// What it is meant to carry.
    pub(super) loads: &'a [Load],
    /// What it weighs, how it bends, moves and stands.
    pub(super) behaviour: &'a Behaviour,
    /// What was found in it and is meant to be so.
    pub(super) allowed: &'a [Allowed],
    /// What other choices change.
    pub(super) options: &'a [OptionChanges],
    /// The earlier plan, where what is other than in that one is marked.
    since: Option<&'a PlanHead>,
    /// The words of the plan's language.
    pub(super) words: &'a Words,
}

impl<'a> Facts<'a> {
    /// What the earlier stages gave, with the figures drawn of it.
    pub(super) fn new(
        stages: Stages<'a>,
        figures: &'a BTreeMap<String, Figure>,
        words: &'a Words,
    ) -> Self {
        Self {
            build: stages.build,
            solids: stages.solids,
            stock: stages.stock,
            cautions: stages.cautions,
            figures,
            loads: stages.loads,
            behaviour: stages.behaviour,
            allowed: stages.allowed,
            options: stages.options,
            since: stages.since,
            words,
        }
    }

    /// How finely the plan prints.
    pub(super) fn precision(&self) -> Precision {
        self.build
            .plan
            .precision
            .with_mark(self.words.decimal_mark())
    }

    /// How finely bits, screws and saw cuts are printed.
    pub(super) fn fine(&self) -> Precision {
        self.precision().fine()
    }

    /// A length as it is printed.
    pub(super) fn measure(&self, length: Length) -> Measure {
        Measure::of(length, self.precision())
    }

    /// A figure with its unit, as the language writes it.
    pub(super) fn figure(&self, figure: &str) -> String {
        self.words.figure(figure)
    }

    /// A mass in both systems.
    pub(super) fn mass(&self, kg: f64) -> String {
        self.figure(&Mass::from_kg_f64(kg).in_both())
    }

    /// A sum of money, unbroken: `79.00 EUR`.
    pub(super) fn money(&self, sum: &Money) -> String {
        self.figure(&sum.printed()).replace(' ', "\u{a0}")
    }

    /// A bit, a screw or a saw cut as it is printed.
    pub(super) fn fine_measure(&self, length: Length) -> Measure {
        Measure::of(length, self.fine())
    }
}

/// What templates see, one name for each part of the plan.
#[derive(Clone, Debug, Serialize)]
pub(super) struct PlanContext {
    /// Millimetres come first, inches second; the other way if false.
    metric_first: bool,
    /// The language, as a BCP 47 tag.
    language: String,
    /// The pages are read on a screen, where nothing is true to size.
    on_screen: bool,
    /// Names of the figures that are there.
    figures: BTreeSet<String>,
    cover: Cover,
    read_first: ReadFirst,
    buy: Buy,
    tools: Vec<ToolGroup>,
    cut_list: Vec<MaterialRows>,
    open_sums: Vec<OpenSum>,
    layouts: Vec<MaterialLayouts>,
    drawn_parts: Vec<DrawnPart>,
    full_size: Vec<FullSize>,
    hardware: Vec<HardwareRow>,
    drilling: Vec<Bit>,
    build_figures: BuildFigures,
    steps: Vec<StepText>,
    final_checks: FinalChecks,
    options: Vec<OptionText>,
    revisions: Vec<Revision>,
    since: Option<Since>,
}

/// What changes are marked since.
#[derive(Clone, Debug, Serialize)]
struct Since {
    /// The newest revision of the earlier plan; none where it had none.
    revision: Option<Revision>,
}

impl PlanContext {
    /// Works all figures out.
    pub(super) fn of(facts: &Facts) -> Self {
        let full_size = full_size::of(facts, facts.solids);
        Self {
            metric_first: facts.precision().metric_first,
            language: facts.words.language().to_owned(),
            on_screen: facts.build.plan.paper.is_screen(),
            figures: facts.figures.keys().cloned().collect(),
            cover: cover::of(facts),
            read_first: read_first::of(facts),
            buy: buy::of(facts),
            tools: tools::of(facts),
            cut_list: cut_list::of(facts),
            open_sums: sums::of(facts),
            layouts: layouts::of(facts),
            drawn_parts: parts::of(facts, &full_size),
            full_size,
            hardware: hardware::of(facts),
            drilling: drilling::of(facts),
            build_figures: figures::of(facts),
            steps: steps::of(facts),
            final_checks: final_checks::of(facts),
            options: options::of(facts),
            revisions: facts.build.plan.revisions.clone(),
            since: facts.since.map(|earlier| Since {
                revision: earlier.newest().cloned(),
            }),
        }
    }
}

/// The steps among some occasions, counted from 1.
pub(super) fn step_numbers(occasions: &[Occasion]) -> Vec<usize> {
    let steps = occasions.iter().filter_map(|occasion| match occasion {
        Occasion::Step(step) => Some(step + 1),
        Occasion::Cutting | Occasion::Use => None,
    });
    steps.collect()
}
