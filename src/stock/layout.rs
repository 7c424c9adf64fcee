//! From a material and its blanks to the packing problem, and back to layouts.

use super::blanks::{Demand, Order};
use super::findings;
use super::packing::{Bin, Cell, Item, Packed, Piece, Problem, Tree, Way, pack};
use super::types::{Alternative, Cut, CutDirection, Layout, MaterialPlan, Offcut, Placement};
use crate::build::{Build, Part};
use crate::finding::{Finding, Findings};
use crate::model::{Material, MaterialForm, StockPiece};
use crate::units::{Length, Money};

/// A size of stock and the part of it that can be used.
#[derive(Clone, Copy, Debug)]
pub(super) struct Usable<'m> {
    /// Which of [`Material::stock`].
    pub(super) stock: usize,
    /// The piece as sold.
    pub(super) piece: &'m StockPiece,
    /// Length and width as bought.
    pub(super) size: [Length; 2],
    /// Trimmed off both ends and both long edges.
    pub(super) trim: [Length; 2],
}

impl<'m> Usable<'m> {
    /// Every size of a material, with so much trimmed off ends and long edges.
    pub(super) fn all(material: &'m Material, trim: [Length; 2]) -> impl Iterator<Item = Self> {
        let section = match material.form {
            MaterialForm::Board { width, .. } => Some(width),
            MaterialForm::Round { diameter } => Some(diameter),
            MaterialForm::Sheet { .. } | MaterialForm::Lumber { .. } => None,
        };
        let pieces = material.stock.iter().enumerate();
        pieces.map(move |(stock, piece)| Self {
            stock,
            piece,
            size: [piece.length, section.unwrap_or(piece.width)],
            trim,
        })
    }

    /// What is left after trimming.
    pub(super) fn inside(&self) -> [Length; 2] {
        let [length, width] = self.size;
        let [ends, edges] = self.trim;
        [length - ends * 2, width - edges * 2]
    }
}

/// The sizes of stock that something can be cut from; a finding for each that trimming eats up.
pub(super) fn usable<'m>(
    material: &'m Material,
    trim: [Length; 2],
    findings: &mut Findings,
) -> Vec<Usable<'m>> {
    let mut kept = Vec::new();
    for size in Usable::all(material, trim) {
        let [length, width] = size.inside();
        if length.is_positive() && width.is_positive() {
            kept.push(size);
            continue;
        }
        let message = format!(
            "nothing is left of this piece of \"{}\" once it is trimmed",
            material.title
        );
        findings.push(
            Finding::new(&findings::NOTHING_LEFT, size.piece.span, message)
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
            MaterialForm::Board { .. }
            | MaterialForm::Round { .. }
            | MaterialForm::Lumber { .. } => "`stock 2400 mm price 8.50 EUR`",
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
    build: &Build,
    material: &Material,
    order: &Order,
    demands: &[Demand],
    sizes: &[Usable<'_>],
    findings: &mut Findings,
) -> Option<MaterialPlan> {
    if demands.is_empty() || sizes.is_empty() {
        return None;
    }
    let (costs, currency) = costs(material, sizes, findings);
    let kerf = material.kerf.max(Length::ZERO);
    let problem = Problem {
        items: demands.iter().map(|demand| item(demand, kerf)).collect(),
        bins: sizes
            .iter()
            .zip(costs)
            .map(|(size, cost)| bin(size, kerf, cost))
            .collect(),
        most_stages: material.stages,
        small: Cut::SAFE.nm(),
    };
    let packing = pack(&problem);
    if let Some(finding) = more_than_stock(build, material, demands, &packing.unpacked) {
        findings.push(finding);
    }
    let mut layouts: Vec<Layout> = packing
        .bins
        .iter()
        .filter_map(|packed| {
            let size = sizes.get(packed.bin)?;
            Some(layout(material, order, demands, size, packed))
        })
        .collect();
    // What is on hand is cut first.
    layouts.sort_by_key(|layout| !layout.on_hand);
    let money = |cost: i128| {
        Some(Money {
            currency: currency.clone()?,
            cents: i64::try_from(cost).ok()?,
        })
    };
    let cost = |bins: &[Packed]| problem.cost(bins.iter().map(|one| one.bin));
    let alternatives = alternatives(&problem)
        .into_iter()
        .filter_map(|(bin, bins)| {
            let size = sizes.get(bin)?;
            Some(Alternative {
                stock: size.stock,
                size: size.size,
                count: bins.iter().filter(|one| one.bin == bin).count(),
                cost: money(cost(&bins))?,
            })
        })
        .collect();
    Some(MaterialPlan {
        material: order.material,
        layouts,
        at_least: packing.at_least.bought,
        cost: money(cost(&packing.bins)),
        least_cost: money(packing.at_least.cost),
        alternatives,
    })
}

/// The same problem with one size to buy, for each of several that all pieces fit on.
fn alternatives(problem: &Problem) -> Vec<(usize, Vec<Packed>)> {
    let bought = |bin: &Bin| !bin.on_hand && bin.limit.is_none();
    let several = problem.bins.iter().filter(|bin| bought(bin)).count() > 1;
    let choices = (0..).zip(&problem.bins).filter(|(_, bin)| {
        let all_fit = problem.items.iter().all(|item| item.fits(**bin));
        several && bought(bin) && all_fit
    });
    choices
        .map(|(chosen, _)| {
            let mut alone = problem.clone();
            for (index, bin) in alone.bins.iter_mut().enumerate() {
                if index != chosen && !bin.on_hand {
                    bin.limit = Some(0);
                }
            }
            (chosen, pack(&alone).bins)
        })
        .collect()
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
pub(super) fn bin(size: &Usable<'_>, kerf: Length, cost: i128) -> Bin {
    let [length, width] = size.inside();
    Bin {
        along: (length + kerf).nm(),
        across: (width + kerf).nm(),
        cost,
        limit: size
            .piece
            .count
            .map(|count| usize::try_from(count).unwrap_or(0)),
        on_hand: size.piece.on_hand,
    }
}

/// What one of each size costs: nothing where it is on hand, else its price where all have one in
/// one currency, its area otherwise. And that currency, where it is the price.
fn costs(
    material: &Material,
    sizes: &[Usable<'_>],
    findings: &mut Findings,
) -> (Vec<i128>, Option<String>) {
    let bought = sizes.iter().filter(|size| !size.piece.on_hand).count();
    let prices: Vec<&Money> = sizes
        .iter()
        .filter_map(|size| size.piece.price.as_ref())
        .collect();
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
    let currency = match currencies.as_slice() {
        [one] if prices.len() == bought => Some((*one).to_owned()),
        _ => None,
    };
    let cost = |size: &Usable<'_>| match &size.piece.price {
        _ if size.piece.on_hand => 0,
        Some(price) if currency.is_some() => i128::from(price.cents),
        Some(_) | None => (size.size[0] * size.size[1]).nm2(),
    };
    (sizes.iter().map(cost).collect(), currency)
}

/// A cut bin as a layout: kerfs taken out of the sizes again, positions on the piece as bought.
fn layout(
    material: &Material,
    order: &Order,
    demands: &[Demand],
    size: &Usable<'_>,
    packed: &Packed,
) -> Layout {
    let kerf = material.kerf.max(Length::ZERO);
    let mut layout = Layout {
        material: order.material,
        stock: size.stock,
        on_hand: size.piece.on_hand,
        size: size.size,
        trim: size.trim,
        kerf,
        placements: Vec::new(),
        cuts: Vec::new(),
        offcuts: Vec::new(),
    };
    add(&mut layout, &packed.tree, size.trim, demands);
    layout
        .offcuts
        .sort_by_key(|offcut| std::cmp::Reverse(offcut.length * offcut.width));
    layout
}

/// Adds what becomes of a stretch of the stock that begins at `corner`; items are numbers among
/// `demands`.
fn add(layout: &mut Layout, tree: &Tree, corner: [Length; 2], demands: &[Demand]) {
    let kerf = layout.kerf;
    let real = |cell: Cell| Offcut {
        x: corner[0] + Length::from_nm(cell.x),
        y: corner[1] + Length::from_nm(cell.y),
        length: Length::from_nm(cell.along) - kerf,
        width: Length::from_nm(cell.across) - kerf,
    };
    for (cell, way, at) in tree.cuts() {
        layout.cuts.push(cut(way, at, real(cell), kerf));
    }
    for (cell, piece) in tree.walk() {
        let real = real(cell);
        match piece {
            Piece::Free => {
                if real.length.is_positive() && real.width.is_positive() {
                    layout.offcuts.push(real);
                }
            }
            Piece::Item { item, turned } => {
                let Some(demand) = demands.get(item) else {
                    continue;
                };
                if let Some(run) = &demand.run {
                    let cuts = run.cuts(demand, kerf);
                    add(layout, &cuts, [real.x, real.y], &run.members);
                    continue;
                }
                layout.placements.push(Placement {
                    part: demand.part,
                    x: real.x,
                    y: real.y,
                    length: real.length,
                    width: real.width,
                    turned: demand.turned != turned,
                });
            }
            Piece::Divided { .. } => {}
        }
    }
}

fn cut(way: Way, at: i64, real: Offcut, kerf: Length) -> Cut {
    let setting = Length::from_nm(at) - kerf;
    let piece = [real.length, real.width];
    match way {
        Way::Rip => Cut {
            direction: CutDirection::Rip,
            at: real.y + setting,
            from: real.x,
            to: real.x + real.length,
            setting,
            piece,
        },
        Way::Crosscut => Cut {
            direction: CutDirection::Crosscut,
            at: real.x + setting,
            from: real.y,
            to: real.y + real.width,
            setting,
            piece,
        },
    }
}

/// A finding where all there is does not hold all parts.
fn more_than_stock(
    build: &Build,
    material: &Material,
    demands: &[Demand],
    unpacked: &[usize],
) -> Option<Finding> {
    let left: usize = unpacked.iter().sum();
    let (demand, _) = demands.iter().zip(unpacked).find(|(_, left)| **left > 0)?;
    let part = build.part(demand.part)?;
    let pieces: usize = demands.iter().map(|demand| demand.pieces).sum();
    let there: i64 = material.stock.iter().filter_map(|piece| piece.count).sum();
    let message = format!(
        "{left} of {pieces} pieces find no place on the {there} that there are of \"{}\"",
        material.title
    );
    let finding = Finding::new(&findings::MORE_THAN_STOCK, part.span, message)
        .figure("along the stock, first of those left", demand.along)
        .figure("across the stock", demand.across)
        .remedy("state a size that can be bought in any number, or a larger `count`");
    let span = material
        .stock
        .first()
        .map_or(material.span, |piece| piece.span);
    Some(finding.related(span, "the stock"))
}

/// A finding about a part that fits on no piece of its material.
pub(super) fn too_large(
    part: &Part,
    material: &Material,
    demand: &Demand,
    sizes: &[Usable<'_>],
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
            .figure("width of the largest piece once trimmed", width)
            .related(largest.piece.span, "the largest piece");
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
