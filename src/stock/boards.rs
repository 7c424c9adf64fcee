//! Boards, bars and dowels: blanks cut to length, and ripped where they are narrower.

use super::blanks::{Demand, Order};
use super::findings;
use super::layout::{self, Usable};
use super::types::MaterialPlan;
use crate::build::Build;
use crate::finding::{Finding, Findings};
use crate::model::{Material, MaterialForm};
use crate::units::Length;

/// Lays out all blanks of a board, a bar or a dowel. Both ends are trimmed, the long edges are
/// used as they are.
pub(super) fn lay_out(
    build: &Build,
    material: &Material,
    order: &Order,
    findings: &mut Findings,
) -> Option<MaterialPlan> {
    let (width, is_round) = match material.form {
        MaterialForm::Board { width, .. } => (width, false),
        MaterialForm::Round { diameter } => (diameter, true),
        MaterialForm::Sheet { .. } | MaterialForm::Lumber { .. } => return None,
    };
    let trim = material.trim.max(Length::ZERO);
    let sizes = layout::usable(material, [trim, Length::ZERO], findings);
    if sizes.is_empty() {
        return None;
    }
    layout::check_kerf(build, material, &order.demands, findings);
    let demands: Vec<Demand> = order
        .demands
        .iter()
        .filter_map(|demand| {
            let demand = lengthwise(build, demand.clone(), width, is_round);
            let fault = fault(build, material, &demand, width, &sizes);
            let fits = fault.is_none();
            if let Some(fault) = fault {
                findings.push(fault);
            }
            fits.then_some(demand)
        })
        .collect();
    layout::lay_out(build, material, order, &demands, &sizes, findings)
}

/// The blank as it lies on the board: a round bar has no width to rip, and nothing is turned on
/// a strip.
fn lengthwise(build: &Build, mut demand: Demand, width: Length, is_round: bool) -> Demand {
    demand.may_turn = false;
    if is_round && let Some(part) = build.part(demand.part) {
        let [length, across, _] = part.size();
        demand.turned = false;
        demand.along = length + part.oversize * 2;
        // Only a part thicker than its bar keeps its own width, to be found at fault.
        demand.across = across.max(width);
    }
    demand
}

fn fault(
    build: &Build,
    material: &Material,
    demand: &Demand,
    width: Length,
    sizes: &[Usable<'_>],
) -> Option<Finding> {
    let part = build.part(demand.part)?;
    if demand.across > width {
        let message = format!(
            "part \"{}\" is wider than \"{}\"",
            part.title, material.title
        );
        let finding = Finding::new(&findings::WIDER_THAN_BOARD, part.span, message)
            .figure("width of the part across the board", demand.across)
            .figure("width of the board", width)
            .related(material.span, "the board")
            .remedy("take a wider board, or make the part of several glued edge to edge");
        return Some(finding);
    }
    let fits = sizes.iter().any(|size| demand.along <= size.inside()[0]);
    (!fits).then(|| layout::too_large(part, material, demand, sizes))
}
