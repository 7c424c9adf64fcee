//! Stock: what is cut, out of what, and what to buy for it.
//!
//! Takes a [`Build`] and its [`Solids`], gives a [`Stock`]: the cut list with rough and finished sizes, layouts of
//! the blanks on sheets and boards that a saw can follow from edge to edge, and the purchases
//! that follow from both. Chooses no material and changes no size: a part that fits on nothing
//! is a finding, never a smaller part. Draws nothing and words nothing of the plan.
//!
//! - `blanks.rs`: which rectangles are sawn, from which material, how often;
//! - `packing/`: the layouts, as a problem of bare rectangles;
//! - `continuous.rs`: pieces that are sawn as one blank, so that the grain runs on;
//! - `sheets.rs`, `boards.rs`, `lumber.rs`: materials to that problem and its answer back to layouts;
//! - `plain.rs`, `recount.rs`: the same as bare numbers, and a check of them that knows no method;
//! - `sums.rs`: sizes that must add up, as they are printed;
//! - `cut_list.rs`, `purchases.rs`, `supplies.rs`: the lists a reader works from.

mod blanks;
mod boards;
#[cfg(test)]
mod checks;
mod continuous;
mod cut_list;
pub mod findings;
mod layout;
mod lumber;
mod packing;
pub mod plain;
mod purchases;
pub mod recount;
#[cfg(test)]
pub(crate) mod sample;
#[cfg(test)]
mod sheet_checks;
mod sheets;
#[cfg(test)]
mod sold_checks;
#[cfg(test)]
mod stick_checks;
mod sums;
mod supplies;
mod types;

pub use types::{
    Alternative, Blank, Cut, CutDirection, CutGroup, CutRow, HardwareLine, Layout, LumberLine,
    MaterialPlan, Offcut, Placement, Purchases, Setting, Stock, StockLine, Sum, SupplyLine,
    WidthGroup,
};

use crate::build::Build;
use crate::finding::{Findings, Outcome};
use crate::model::MaterialForm;
use crate::solid::Solids;

/// The cut list, the layouts and the purchases of a build.
///
/// Findings: the T family, [`findings`]. A blank that fits on no stock is missing from the
/// layouts and stays in the cut list.
pub fn lay_out(build: &Build, solids: &Solids) -> Outcome<Stock> {
    let mut findings = Findings::new();
    let cut_list = cut_list::group(build);
    let mut stock = Stock {
        cut_list,
        open_sums: sums::open(build),
        ..Stock::default()
    };
    let mut lumber = Vec::new();
    for order in blanks::orders(build, &mut findings) {
        let Some(material) = build.material(order.material) else {
            continue;
        };
        match material.form {
            MaterialForm::Sheet { .. } => {
                stock
                    .sheets
                    .extend(sheets::lay_out(build, material, &order, &mut findings));
            }
            MaterialForm::Lumber { .. } => {
                lumber.extend(lumber::line(build, material, &order, &mut findings));
            }
            MaterialForm::Board { .. } | MaterialForm::Round { .. } => {
                stock
                    .boards
                    .extend(boards::lay_out(build, material, &order, &mut findings));
            }
        }
    }
    stock.purchases = purchases::count(build, solids, &stock, lumber);
    Outcome {
        value: stock,
        findings,
    }
}
