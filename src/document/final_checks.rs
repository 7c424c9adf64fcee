//! Final checks: what to measure and try before the piece goes into use.

use serde::Serialize;

use super::context::Facts;
use super::figures::{self, LoadText};
use super::measure::Measure;
use super::read_first::CautionText;
use super::wording::PartName;
use crate::caution::Occasion;
use crate::rules::Allowed;

/// The figures of the chapter.
#[derive(Clone, Debug, Serialize)]
pub(super) struct FinalChecks {
    /// Width, depth and height; empty without a placed part.
    overall: Vec<Measure>,
    /// Parts that are taken out in use.
    removable: Vec<PartName>,
    /// Hardware that stays over when nothing was forgotten: name and count.
    left_over: Vec<(String, i64)>,
    /// Anything is driven or pressed in.
    has_hardware: bool,
    /// What it is loaded with to try it.
    loads: Vec<LoadText>,
    /// What was found in the plan and is meant to be so.
    allowed: Vec<AllowedText>,
    /// Cautions that concern the finished piece.
    cautions: Vec<CautionText>,
}

/// A finding that the author wants.
#[derive(Clone, Debug, Serialize)]
struct AllowedText {
    code: &'static str,
    message: String,
    because: String,
}

pub(super) fn of(facts: &Facts) -> FinalChecks {
    let sizes = facts
        .build
        .overall
        .map(|stretches| stretches.map(|stretch| stretch.size()));
    let mut removable: Vec<PartName> = Vec::new();
    for piece in facts.build.placed.iter().filter(|piece| piece.removable) {
        let Some(name) = PartName::of(facts, piece.part, 1) else {
            continue;
        };
        match removable.iter_mut().find(|known| known.label == name.label) {
            Some(known) => known.count += 1,
            None => removable.push(name),
        }
    }
    let lines = facts.stock.purchases.hardware.iter();
    let left_over = lines.filter(|line| line.left_over > 0).filter_map(|line| {
        let item = facts.build.hardware.get(line.hardware.0)?;
        Some((item.title.clone(), line.left_over))
    });
    let cautions = facts.cautions.list.iter();
    let in_use = cautions.filter(|caution| caution.occasions.contains(&Occasion::Use));
    FinalChecks {
        overall: Measure::all(
            sizes.as_ref().map_or(&[], |sizes| &sizes[..]),
            facts.precision(),
        ),
        removable,
        left_over: left_over.collect(),
        has_hardware: !facts.stock.purchases.hardware.is_empty(),
        loads: figures::loads(facts),
        allowed: facts.allowed.iter().map(allowed).collect(),
        cautions: in_use
            .map(|caution| CautionText::of(facts, caution))
            .collect(),
    }
}

fn allowed(allowed: &Allowed) -> AllowedText {
    AllowedText {
        code: allowed.finding.page.code,
        message: allowed.finding.message.clone(),
        because: allowed.because.clone(),
    }
}
