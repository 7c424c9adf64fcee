//! What is sawn: the blanks of every part, by material.

use std::collections::BTreeMap;

use super::continuous;
use super::findings;
use super::types::Blank;
use crate::build::{Build, Part};
use crate::finding::{Finding, Findings};
use crate::geometry::PartAxis;
use crate::model::{Grain, Material, MaterialForm, MaterialId, PartId};
use crate::units::Length;

/// More blanks of one material are not laid out.
pub(super) const MOST_BLANKS: i64 = 10_000;

/// All blanks of one material.
#[derive(Clone, Debug)]
pub(super) struct Order {
    /// The material.
    pub(super) material: MaterialId,
    /// What is needed of it.
    pub(super) demands: Vec<Demand>,
}

/// The blanks of one part.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Demand {
    /// The part; the first one of a run.
    pub(super) part: PartId,
    /// How many blanks.
    pub(super) pieces: usize,
    /// Size of one along the stock's length, as it is laid at first.
    pub(super) along: Length,
    /// Size of one across it.
    pub(super) across: Length,
    /// Laid at first with the part's length across the stock.
    pub(super) turned: bool,
    /// May be laid the other way.
    pub(super) may_turn: bool,
    /// The parts that are cut out of it side by side; empty where it becomes one part.
    pub(super) run: Option<Run>,
}

/// Pieces that lie side by side in one blank.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Run {
    /// One after the other along the stock, not across it.
    pub(super) along: bool,
    /// The pieces, in order; none of them is a run.
    pub(super) members: Vec<Demand>,
}

/// What is sawn for a part, where that is not the finished piece: layers to glue up, one piece
/// with something to trim, or one that is smaller by the edge band that comes on it.
///
/// Laminated blanks are cut over-long and over-wide and trimmed after the glue has cured
/// (ref: layout-practice#P10 [P]), lumber to be planed and jointed
/// (ref: layout-practice#P17 [P]).
pub(super) fn rough(part: &Part, material: &Material) -> Option<Blank> {
    let layers = part.layers.max(1);
    let allowance = match material.form {
        MaterialForm::Lumber { .. } => material.lumber.allowance,
        MaterialForm::Sheet { .. } | MaterialForm::Board { .. } | MaterialForm::Round { .. } => {
            [Length::ZERO; 2]
        }
    };
    let is_sawn_to_size = allowance == [Length::ZERO; 2] && !part.oversize.is_positive();
    if layers == 1 && is_sawn_to_size && part.bands.is_empty() {
        return None;
    }
    let [length, width, _] = part.size();
    let more = part.oversize * 2;
    let banded = |axis: PartAxis| -> Length {
        let bands = part.bands.iter().filter(|band| band.side.axis() == axis);
        bands.map(|band| band.thickness).sum()
    };
    Some(Blank {
        pieces: part.pieces().saturating_mul(layers),
        layers,
        size: [
            length + more + allowance[0] - banded(PartAxis::Length),
            width + more + allowance[1] - banded(PartAxis::Width),
            material.thickness(),
        ],
    })
}

/// The blanks of every material that parts are cut from, in the order of the materials.
pub(super) fn orders(build: &Build, findings: &mut Findings) -> Vec<Order> {
    let mut orders: BTreeMap<MaterialId, Vec<Demand>> = BTreeMap::new();
    for (index, part) in build.parts.iter().enumerate() {
        let Some(material) = build.material(part.material) else {
            continue;
        };
        if part.pieces() > 0 {
            check_thickness(part, material, findings);
            let demand = demand(PartId(index), part, material);
            orders.entry(part.material).or_default().push(demand);
        }
    }
    continuous::join(build, &mut orders, findings);
    orders
        .into_iter()
        .filter(|(id, demands)| is_countable(build, *id, demands, findings))
        .map(|(material, demands)| Order { material, demands })
        .collect()
}

fn demand(id: PartId, part: &Part, material: &Material) -> Demand {
    let blank = rough(part, material);
    let [length, width, _] = blank
        .as_ref()
        .map_or_else(|| part.size(), |blank| blank.size);
    let pieces = blank.map_or(part.pieces(), |blank| blank.pieces);
    // A part whose grain runs along its width lies with its width along the stock. On stock
    // without grain the longer side lies along it at first.
    let (turned, may_turn) = match material.grain {
        Grain::AlongLength => (!part.grain_along_length, false),
        Grain::None => (width > length, true),
    };
    let (along, across) = if turned {
        (width, length)
    } else {
        (length, width)
    };
    Demand {
        part: id,
        pieces: usize::try_from(pieces).unwrap_or(0),
        along,
        across,
        turned,
        may_turn,
        run: None,
    }
}

/// A part may be planed thinner than its board, never sawn thicker than its layers.
fn check_thickness(part: &Part, material: &Material, findings: &mut Findings) {
    let [_, _, thickness] = part.size();
    let glued = material.thickness() * part.layers.max(1);
    let is_sheet = matches!(material.form, MaterialForm::Sheet { .. });
    let (page, fault) = if thickness > glued {
        (&findings::THICKER_THAN_STOCK, "thicker")
    } else if is_sheet && thickness < glued {
        (&findings::THINNER_THAN_SHEET, "thinner")
    } else {
        return;
    };
    let layers = if part.layers > 1 {
        format!("{} layers of \"{}\"", part.layers, material.title)
    } else {
        format!("\"{}\"", material.title)
    };
    let message = format!("part \"{}\" is {fault} than {layers}", part.title);
    findings.push(
        Finding::new(page, part.span, message)
            .figure("thickness of the part", thickness)
            .figure("thickness of the stock", glued)
            .remedy("take a material of that thickness, or glue it up with `layers`")
            .related(material.span, "the material"),
    );
}

/// Saw time and pages have an end: a count beyond it is a slip of the pen.
fn is_countable(
    build: &Build,
    material: MaterialId,
    demands: &[Demand],
    findings: &mut Findings,
) -> bool {
    let total = demands
        .iter()
        .fold(0_usize, |sum, demand| sum.saturating_add(demand.pieces));
    if i64::try_from(total).is_ok_and(|total| total <= MOST_BLANKS) {
        return true;
    }
    let most = demands.iter().max_by_key(|demand| demand.pieces);
    if let (Some(part), Some(material)) = (
        most.and_then(|demand| build.part(demand.part)),
        build.material(material),
    ) {
        let message = format!(
            "{total} pieces are to be cut from \"{}\"; {MOST_BLANKS} are laid out at most",
            material.title
        );
        findings.push(
            Finding::new(&findings::TOO_MANY_BLANKS, part.span, message)
                .remedy("make fewer pieces, or divide the plan"),
        );
    }
    false
}
