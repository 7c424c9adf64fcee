//! Oil, varnish and paint: fire, vapour, rags that heat up by themselves.

use super::sign::Sign;
use super::types::{Caution, Occasion, Operation, told};
use super::work::Work;
use crate::build::{SignalWord, SupplyKind};

/// When a finish is put on: in the steps that use one, or in the last where none says so.
fn occasions(work: &Work) -> Vec<Occasion> {
    let supplies = &work.build.supplies;
    if !supplies.iter().any(|supply| supply.kind.is_finish()) {
        return Vec::new();
    }
    let told = work.steps(|step| {
        let used = step.supplies.iter();
        used.filter_map(|id| supplies.get(id.0))
            .any(|supply| supply.kind.is_finish())
    });
    let last = work.build.steps.len().checked_sub(1).map(Occasion::Step);
    if told.is_empty() {
        last.into_iter().collect()
    } else {
        told
    }
}

// ref: safety, "Operations", finish and solvent [P]; #L30 [V]: rags with drying oil can catch
// fire by themselves within hours.
pub(super) fn check(work: &Work) -> Option<Caution> {
    let occasions = occasions(work);
    let oils = work.build.supplies.iter();
    let has_oil = oils.filter(|supply| supply.kind == SupplyKind::Oil).count() > 0;
    (!occasions.is_empty()).then(|| Caution {
        id: "finishing",
        signal: SignalWord::Warning,
        hazard: told(if has_oil {
            "caution-finishing-oil-hazard"
        } else {
            "caution-finishing-hazard"
        }),
        consequence: told(if has_oil {
            "caution-finishing-oil-consequence"
        } else {
            "caution-finishing-consequence"
        }),
        avoidance: told(if has_oil {
            "caution-finishing-oil-avoidance"
        } else {
            "caution-finishing-avoidance"
        }),
        signs: vec![Sign::Manual, Sign::Gloves, Sign::NoFlame],
        operation: Operation::Finishing,
        occasions,
    })
}
