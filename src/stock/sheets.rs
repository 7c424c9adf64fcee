//! Sheets: blanks of panel material in two dimensions, cut from edge to edge.

use super::blanks::{Demand, Order};
use super::layout;
use super::types::MaterialPlan;
use crate::build::Build;
use crate::finding::Findings;
use crate::model::Material;
use crate::units::Length;

/// Lays out all blanks of a sheet material; every edge of a sheet is trimmed first
/// (ref: layout-practice#P14, #P16 [P]).
pub(super) fn lay_out(
    build: &Build,
    material: &Material,
    order: &Order,
    findings: &mut Findings,
) -> Option<MaterialPlan> {
    let trim = material.trim.max(Length::ZERO);
    let sizes = layout::usable(material, [trim; 2], findings);
    if sizes.is_empty() {
        return None;
    }
    layout::check_kerf(build, material, &order.demands, findings);
    let demands: Vec<Demand> = order
        .demands
        .iter()
        .filter(|demand| {
            let item = layout::item(demand, material.kerf);
            let fits = sizes
                .iter()
                .any(|size| item.fits(layout::bin(size, material.kerf, 0)));
            if let Some(part) = build.part(demand.part).filter(|_| !fits) {
                findings.push(layout::too_large(part, material, demand, &sizes));
            }
            fits
        })
        .cloned()
        .collect();
    layout::lay_out(build, material, order, &demands, &sizes, findings)
}
