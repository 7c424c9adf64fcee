//! Boards of random width: bought by volume or surface, chosen and laid out at the yard.

use num_integer::div_ceil;

use super::blanks::{Demand, Order};
use super::findings;
use super::layout::{self, Usable};
use super::types::LumberLine;
use crate::build::{Build, Part};
use crate::finding::{Finding, Findings};
use crate::model::{LumberMeasure, Material};
use crate::units::{Area, Length, Money};

/// Less than that cannot be planed off both faces (ref: layout-practice#P17 [P]: 3 to 6 mm).
const LEAST_TO_PLANE: Length = Length::from_mm(3);

/// A cubic metre, a square metre and a board foot in cubic and square nanometres. A board foot is
/// 144 cubic inches as sawn, of 25.4 mm exactly.
const CUBIC_METRE: i128 = 1_000_000_000_000_000_000_000_000_000;
const SQUARE_METRE: i128 = 1_000_000_000_000_000_000;
const BOARD_FOOT: i128 = 2_359_737_216_000_000_000_000_000;

/// What is bought of one kind of lumber: all blanks as sawn, and what is lost between them.
pub(super) fn line(
    build: &Build,
    material: &Material,
    order: &Order,
    findings: &mut Findings,
) -> Option<LumberLine> {
    check(build, material, &order.demands, findings);
    let blanks: Area = order
        .demands
        .iter()
        .map(|demand| {
            let pieces = i128::try_from(demand.pieces).unwrap_or(0);
            Area::from_nm2((demand.along * demand.across).nm2().saturating_mul(pieces))
        })
        .sum();
    if blanks == Area::default() {
        return None;
    }
    let (lost, of) = material.lumber.waste;
    let (lost, of) = (i128::from(lost), i128::from(of.max(1)));
    let surface = div_ceil(blanks.nm2().saturating_mul(of + lost), of);
    let volume = surface.saturating_mul(i128::from(material.thickness().nm()));
    let litres = part_of(volume, CUBIC_METRE / 1_000);
    let square = part_of(surface, SQUARE_METRE / 100);
    let feet = part_of(volume, BOARD_FOOT / 10);
    let each = material.lumber.price.clone();
    let total = each.as_ref().map(|(price, measure)| {
        let (bought, parts) = match measure {
            LumberMeasure::CubicMetre => (litres, 1_000),
            LumberMeasure::SquareMetre => (square, 100),
            LumberMeasure::BoardFoot => (feet, 10),
        };
        Money {
            currency: price.currency.clone(),
            cents: part_of(i128::from(price.cents) * i128::from(bought), parts),
        }
    });
    Some(LumberLine {
        material: order.material,
        thickness: material.thickness(),
        waste: material.lumber.waste,
        litres,
        square_metre_hundredths: square,
        board_foot_tenths: feet,
        each,
        total,
    })
}

/// How many parts hold the whole, the last one in part.
fn part_of(whole: i128, part: i128) -> i64 {
    i64::try_from(div_ceil(whole, part)).unwrap_or(i64::MAX)
}

/// Parts larger than the largest board, and parts that leave nothing to plane.
fn check(build: &Build, material: &Material, demands: &[Demand], findings: &mut Findings) {
    let sizes: Vec<Usable<'_>> = Usable::all(material, [Length::ZERO; 2]).collect();
    for demand in demands {
        let Some(part) = build.part(demand.part) else {
            continue;
        };
        let fits =
            |size: &Usable<'_>| demand.along <= size.size[0] && demand.across <= size.size[1];
        if !sizes.is_empty() && !sizes.iter().any(fits) {
            findings.push(layout::too_large(part, material, demand, &sizes));
        }
        if let Some(finding) = little_to_plane(part, material) {
            findings.push(finding);
        }
    }
}

fn little_to_plane(part: &Part, material: &Material) -> Option<Finding> {
    let [_, _, thickness] = part.size();
    let layers = part.layers.max(1);
    let left = material.thickness() * layers - thickness;
    let needed = LEAST_TO_PLANE * layers;
    if left < Length::ZERO || left >= needed {
        return None;
    }
    let message = format!(
        "part \"{}\" leaves little of \"{}\" to plane",
        part.title, material.title
    );
    Some(
        Finding::new(&findings::LITTLE_TO_PLANE, part.span, message)
            .figure("thickness of the part", thickness)
            .figure("thickness as sawn", material.thickness() * layers)
            .figure("needed to plane both faces", needed)
            .remedy("make the part thinner, or buy thicker lumber")
            .related(material.span, "the lumber"),
    )
}
