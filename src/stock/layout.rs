//! From a material and its blanks to the packing problem, and back to layouts.

use super::blanks::{Demand, Order};
use super::findings;
use super::packing::{Bin, Cell, Item, Packed, Piece, Problem, Way, pack};
use super::types::{Cut, CutDirection, Layout, MaterialPlan, Offcut, Placement};
use crate::build::{Build, Part};
use crate::finding::{Finding, Findings};
use crate::model::{Material, MaterialForm};
use crate::units::Length;

/// Shorter pieces are no longer safe to hold at a saw (ref: layout-practice#P14 [P]).
const SMALL: Length = Length::from_mm(300);

/// A size of stock and the part of it that can be used.
#[derive(Clone, Copy, Debug)]
pub(super) struct Usable {
    /// Which of [`Material::stock`].
    pub(super) stock: usize,
    /// Length and width as bought.
    pub(super) size: [Length; 2],
    /// Trimmed off both ends and both long edges.
    pub(super) trim: [Length; 2],
}

impl Usable {
    /// What is left after trimming.
    pub(super) fn inside(&self) -> [Length; 2] {
        let [length, width] = self.size;
        let [ends, edges] = self.trim;
        [length - ends * 2, width - edges * 2]
    }
}

/// The sizes of stock that something can be cut from; a finding for each that trimming eats up.
pub(super) fn usable(
    material: &Material,
    sizes: impl Iterator<Item = Usable>,
    findings: &mut Findings,
) -> Vec<Usable> {
    let mut kept = Vec::new();
    for size in sizes {
        let [length, width] = size.inside();
        if length.is_positive() && width.is_positive() {
            kept.push(size);
            continue;
        }
        let span = material
            .stock
            .get(size.stock)
            .map_or(material.span, |piece| piece.span);
        let message = format!(
            "nothing is left of this piece of \"{}\" once it is trimmed",
            material.title
        );
        findings.push(
            Finding::new(&findings::NOTHING_LEFT, span, message)
                .figure("length as bought", size.size[0])
                .figure("width as bought", size.size[1])
                .figure("trimmed off every edge", material.trim)
                .remedy("state the size of the whole sheet or board, or a smaller `trim`"),
        );
    }
    if material.stock.is_empty() {
        let message = format!("no size of \"{}\" to buy is stated", material.title);
        let example = match material.form {
            MaterialForm::Sheet { .. } => "`stock 2440 mm by 1220 mm price 79.00 EUR`",
            MaterialForm::Board { .. } | MaterialForm::Round { .. } => {
                "`stock 2400 mm price 8.50 EUR`"
            }
        };
        findings.push(
            Finding::new(&findings::NO_STOCK, material.span, message)
                .remedy(format!("add a line such as {example}")),
        );
    }
    kept
}

/// Lays the blanks out; those in `demands` fit on at least one of the sizes.
pub(super) fn lay_out(
    material: &Material,
    order: &Order,
    demands: &[Demand],
    sizes: &[Usable],
    findings: &mut Findings,
) -> Option<MaterialPlan> {
    if demands.is_empty() || sizes.is_empty() {
        return None;
    }
    let costs = costs(material, sizes, findings);
    let kerf = material.kerf.max(Length::ZERO);
    let problem = Problem {
        items: demands.iter().map(|demand| item(demand, kerf)).collect(),
        bins: sizes
            .iter()
            .zip(costs)
            .map(|(size, cost)| bin(size, kerf, cost))
            .collect(),
        most_stages: None,
        small: SMALL.nm(),
    };
    let packing = pack(&problem);
    let layouts = packing
        .bins
        .iter()
        .filter_map(|packed| {
            let size = sizes.get(packed.bin)?;
            Some(layout(material, order, demands, size, packed))
        })
        .collect();
    Some(MaterialPlan {
        material: order.material,
        layouts,
        at_least: packing.at_least.bought,
    })
}

/// A blank as an item of the problem.
pub(super) fn item(demand: &Demand, kerf: Length) -> Item {
    Item {
        along: (demand.along + kerf).nm(),
        across: (demand.across + kerf).nm(),
        count: demand.pieces,
        may_turn: demand.may_turn,
    }
}

/// A size of stock as a bin of the problem.
pub(super) fn bin(size: &Usable, kerf: Length, cost: i128) -> Bin {
    let [length, width] = size.inside();
    Bin {
        along: (length + kerf).nm(),
        across: (width + kerf).nm(),
        cost,
        limit: None,
        on_hand: false,
    }
}

/// What one of each size costs: its price where all have one in one currency, its area
/// otherwise.
fn costs(material: &Material, sizes: &[Usable], findings: &mut Findings) -> Vec<i128> {
    let pieces = || {
        sizes
            .iter()
            .filter_map(|size| material.stock.get(size.stock))
    };
    let prices: Vec<_> = pieces().filter_map(|piece| piece.price.as_ref()).collect();
    let mut currencies: Vec<&str> = prices.iter().map(|price| price.currency.as_str()).collect();
    currencies.sort_unstable();
    currencies.dedup();
    if currencies.len() > 1 {
        let message = format!(
            "the sizes of \"{}\" are priced in {}",
            material.title,
            currencies.join(" and ")
        );
        findings.push(
            Finding::new(&findings::SEVERAL_CURRENCIES, material.span, message)
                .remedy("price all sizes of a material in one currency"),
        );
    }
    if prices.len() == sizes.len() && currencies.len() == 1 {
        return prices.iter().map(|price| i128::from(price.cents)).collect();
    }
    sizes
        .iter()
        .map(|size| (size.size[0] * size.size[1]).nm2())
        .collect()
}

/// A cut bin as a layout: kerfs taken out of the sizes again, positions on the piece as bought.
fn layout(
    material: &Material,
    order: &Order,
    demands: &[Demand],
    size: &Usable,
    packed: &Packed,
) -> Layout {
    let kerf = material.kerf.max(Length::ZERO);
    let mut layout = Layout {
        material: order.material,
        stock: size.stock,
        size: size.size,
        trim: size.trim,
        kerf,
        placements: Vec::new(),
        cuts: Vec::new(),
        offcuts: Vec::new(),
    };
    for (cell, piece) in packed.tree.walk() {
        let real = Offcut {
            x: size.trim[0] + Length::from_nm(cell.x),
            y: size.trim[1] + Length::from_nm(cell.y),
            length: Length::from_nm(cell.along) - kerf,
            width: Length::from_nm(cell.across) - kerf,
        };
        match piece {
            Piece::Free => {
                if real.length.is_positive() && real.width.is_positive() {
                    layout.offcuts.push(real);
                }
            }
            Piece::Item { item, turned } => {
                layout
                    .placements
                    .extend(demands.get(item).map(|demand| Placement {
                        part: demand.part,
                        x: real.x,
                        y: real.y,
                        length: real.length,
                        width: real.width,
                        turned: demand.turned != turned,
                    }));
            }
            Piece::Divided { way, at, .. } => layout.cuts.push(cut(way, at, cell, real, kerf)),
        }
    }
    layout
        .offcuts
        .sort_by_key(|offcut| std::cmp::Reverse(offcut.length * offcut.width));
    layout
}

fn cut(way: Way, at: i64, cell: Cell, real: Offcut, kerf: Length) -> Cut {
    let setting = Length::from_nm(at) - kerf;
    match way {
        Way::Rip => Cut {
            direction: CutDirection::Rip,
            at: real.y + setting,
            from: real.x,
            to: real.x + Length::from_nm(cell.along) - kerf,
            setting,
        },
        Way::Crosscut => Cut {
            direction: CutDirection::Crosscut,
            at: real.x + setting,
            from: real.y,
            to: real.y + Length::from_nm(cell.across) - kerf,
            setting,
        },
    }
}

/// A finding about a part that fits on no piece of its material.
pub(super) fn too_large(
    part: &Part,
    material: &Material,
    demand: &Demand,
    sizes: &[Usable],
) -> Finding {
    let fits = |along: Length, across: Length| {
        sizes
            .iter()
            .map(Usable::inside)
            .any(|[length, width]| along <= length && across <= width)
    };
    let only_turned = fits(demand.across, demand.along);
    let (page, fault) = if only_turned {
        (
            &findings::GRAIN_LEAVES_NO_WAY,
            "fits only across the grain of",
        )
    } else {
        (&findings::LARGER_THAN_STOCK, "is larger than any piece of")
    };
    let message = format!("part \"{}\" {fault} \"{}\"", part.title, material.title);
    let mut finding = Finding::new(page, part.span, message)
        .figure("along the stock", demand.along)
        .figure("across the stock", demand.across);
    // The largest size tells the author most; more would bury it.
    let largest = sizes.iter().max_by_key(|size| size.size[0] * size.size[1]);
    if let Some(largest) = largest {
        let [length, width] = largest.inside();
        finding = finding
            .figure("length of the largest piece once trimmed", length)
            .figure("width of the largest piece once trimmed", width);
        if let Some(piece) = material.stock.get(largest.stock) {
            finding = finding.related(piece.span, "the largest piece");
        }
    }
    if only_turned {
        finding.remedy("let the other size run along the grain, or state `grain none`")
    } else {
        finding.remedy("state a larger size of stock, or make the part of two")
    }
}

/// Warns of blanks no wider than the saw cut.
pub(super) fn check_kerf(
    build: &Build,
    material: &Material,
    demands: &[Demand],
    findings: &mut Findings,
) {
    for demand in demands {
        let least = demand.along.min(demand.across);
        let Some(part) = build.part(demand.part).filter(|_| least <= material.kerf) else {
            continue;
        };
        let message = format!("part \"{}\" is no wider than the saw cut", part.title);
        findings.push(
            Finding::new(&findings::KERF_WIDER_THAN_PART, part.span, message)
                .figure("smallest size of the part", least)
                .figure("saw cut", material.kerf)
                .remedy("cut it from thinner stock on edge, or check `kerf` and the size"),
        );
    }
}
