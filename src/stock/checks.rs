//! Tests of the whole stage, with a checker of layouts that knows nothing of how they are made.

use std::collections::BTreeMap;

use proptest::prelude::*;

use super::sample::{build_of, euro, mm, part, pine, plywood, shelf_unit};
use super::{CutDirection, Layout, MaterialPlan, Stock, lay_out};
use crate::build::{Build, HardwareId, HardwareKind, PlacedId, Supply, SupplyKind};
use crate::finding::Findings;
use crate::geometry::Side;
use crate::model::{Band, Grain, Material, MaterialForm, PartId, StockPiece};
use crate::solid::Solids;
use crate::source::Span;
use crate::units::{Length, Money};

/// A rectangle in nanometres: left, near, right, far.
type Rectangle = (i64, i64, i64, i64);

/// What is wrong with the layouts of a build, if anything.
pub(super) fn faults(build: &Build, stock: &Stock) -> Vec<String> {
    let mut faults = Vec::new();
    let mut cut: BTreeMap<PartId, i64> = BTreeMap::new();
    for layout in stock.plans().flat_map(|plan| &plan.layouts) {
        let material = &build.materials[layout.material.0];
        check_layout(material, layout, &mut faults);
        for placement in &layout.placements {
            *cut.entry(placement.part).or_default() += 1;
            let part = &build.parts[placement.part.0];
            let more = part.oversize * 2;
            let [length, width, _] = part.size();
            let (along, across) = if placement.turned {
                (width + more, length + more)
            } else {
                (length + more, width + more)
            };
            if (placement.length, placement.width) != (along, across) {
                faults.push(format!("{}: wrong size", part.label));
            }
            if material.grain == Grain::AlongLength && placement.turned == part.grain_along_length {
                faults.push(format!("{}: against the grain", part.label));
            }
        }
    }
    for (index, part) in build.parts.iter().enumerate() {
        let needed = part.pieces() * part.layers;
        if cut.get(&PartId(index)).copied().unwrap_or(0) != needed {
            faults.push(format!("{}: not {needed} pieces", part.label));
        }
    }
    faults
}

fn check_layout(material: &Material, layout: &Layout, faults: &mut Vec<String>) {
    let kerf = material.kerf.nm();
    let (ends, edges) = match material.form {
        MaterialForm::Sheet { .. } => (material.trim.nm(), material.trim.nm()),
        MaterialForm::Board { .. } | MaterialForm::Round { .. } | MaterialForm::Lumber { .. } => {
            (material.trim.nm(), 0)
        }
    };
    let [length, width] = layout.size.map(Length::nm);
    let parts: Vec<Rectangle> = layout
        .placements
        .iter()
        .map(|p| {
            (
                p.x.nm(),
                p.y.nm(),
                (p.x + p.length).nm(),
                (p.y + p.width).nm(),
            )
        })
        .collect();
    for (i, a) in parts.iter().enumerate() {
        let inside = a.0 >= ends && a.1 >= edges && a.2 <= length - ends && a.3 <= width - edges;
        if !inside {
            faults.push(format!("{a:?} is not inside"));
        }
        for b in &parts[i + 1..] {
            // A kerf's width apart in at least one direction.
            let apart =
                a.2 + kerf <= b.0 || b.2 + kerf <= a.0 || a.3 + kerf <= b.1 || b.3 + kerf <= a.1;
            if !apart {
                faults.push(format!("{a:?} and {b:?} are too close"));
            }
        }
    }
    replay_cuts(layout, &parts, (ends, edges), faults);
}

/// Carries the cuts out, one after the other, on the pieces that lie on the bench. Each must
/// divide a whole piece from edge to edge; in the end every part lies there by itself.
fn replay_cuts(
    layout: &Layout,
    parts: &[Rectangle],
    (ends, edges): (i64, i64),
    faults: &mut Vec<String>,
) {
    let [length, width] = layout.size.map(Length::nm);
    let kerf = layout.kerf.nm();
    let mut bench: Vec<Rectangle> = vec![(ends, edges, length - ends, width - edges)];
    for cut in &layout.cuts {
        let (at, from, to) = (cut.at.nm(), cut.from.nm(), cut.to.nm());
        let divided = bench.iter().position(|piece| match cut.direction {
            CutDirection::Rip => (piece.0, piece.2) == (from, to) && piece.1 < at && at < piece.3,
            CutDirection::Crosscut => {
                (piece.1, piece.3) == (from, to) && piece.0 < at && at < piece.2
            }
        });
        let Some(divided) = divided else {
            faults.push(format!("{cut:?} divides no piece from edge to edge"));
            continue;
        };
        let piece = bench.swap_remove(divided);
        let (near, far, setting) = match cut.direction {
            CutDirection::Rip => (
                (piece.0, piece.1, piece.2, at),
                (piece.0, at + kerf, piece.2, piece.3),
                at - piece.1,
            ),
            CutDirection::Crosscut => (
                (piece.0, piece.1, at, piece.3),
                (at + kerf, piece.1, piece.2, piece.3),
                at - piece.0,
            ),
        };
        if setting != cut.setting.nm() {
            faults.push(format!("{cut:?}: the fence does not stand there"));
        }
        bench.push(near);
        if far.0 < far.2 && far.1 < far.3 {
            bench.push(far);
        }
    }
    for part in parts {
        match bench.iter().position(|piece| piece == part) {
            Some(index) => {
                bench.swap_remove(index);
            }
            None => faults.push(format!("{part:?} is not cut free")),
        }
    }
    let offcuts: Vec<Rectangle> = layout
        .offcuts
        .iter()
        .map(|o| {
            (
                o.x.nm(),
                o.y.nm(),
                (o.x + o.length).nm(),
                (o.y + o.width).nm(),
            )
        })
        .collect();
    bench.sort_unstable();
    let mut offcuts = offcuts;
    offcuts.sort_unstable();
    if bench != offcuts {
        faults.push("what is left is not the offcuts".to_owned());
    }
}

pub(super) fn codes(findings: &Findings) -> Vec<&'static str> {
    findings.iter().map(|finding| finding.page.code).collect()
}

pub(super) fn only(plans: &[MaterialPlan]) -> &MaterialPlan {
    assert_eq!(plans.len(), 1);
    &plans[0]
}

#[test]
fn the_shelf_unit_is_laid_out() {
    let build = shelf_unit();
    let outcome = lay_out(&build, &Solids::default());
    assert_eq!(codes(&outcome.findings), Vec::<&str>::new());
    assert_eq!(faults(&build, &outcome.value), Vec::<String>::new());
    let sheets = only(&outcome.value.sheets);
    assert_eq!((sheets.layouts.len(), sheets.at_least), (1, 1));
    assert_eq!(outcome.value.boards.len(), 2);
}

#[test]
fn the_cut_list_keeps_equal_widths_together() {
    let build = build_of(
        vec![plywood()],
        vec![
            part("A", "Short", 0, [400, 280, 18], 1),
            part("B", "Wide", 0, [500, 300, 18], 1),
            part("C", "Long", 0, [900, 280, 18], 2),
            part("D", "None", 0, [900, 290, 18], 0),
        ],
    );
    let stock = lay_out(&build, &Solids::default()).value;
    let widths: Vec<(i64, Vec<&str>)> = stock.cut_list[0]
        .widths
        .iter()
        .map(|group| {
            let labels = group.rows.iter().map(|row| row.label.as_str()).collect();
            (group.width.nm() / 1_000_000, labels)
        })
        .collect();
    assert_eq!(widths, vec![(300, vec!["B"]), (280, vec!["C", "A"])]);
}

#[test]
fn layers_are_cut_as_blanks() {
    let stock = lay_out(&shelf_unit(), &Solids::default()).value;
    let foot = stock.rows().find(|row| row.label == "D").unwrap();
    let blank = foot.blank.as_ref().unwrap();
    // Four feet of two layers, 5 mm larger on every edge, as thick as the sheet.
    assert_eq!((blank.pieces, blank.layers), (8, 2));
    assert_eq!(blank.size, [mm(110), mm(110), mm(18)]);
    assert_eq!(foot.size, [mm(100), mm(100), mm(36)]);
}

#[test]
fn purchases_agree_with_the_figures_worked_by_hand() {
    let stock = lay_out(&shelf_unit(), &Solids::default()).value;
    let screws = &stock.purchases.hardware[0];
    // 70 screws from packs of 50: two packs of 3.20, 30 left over.
    assert_eq!((screws.packs, screws.left_over), (2, 30));
    assert_eq!(screws.total, Some(euro(640)));
    // One sheet 79.00, one board 8.50, two packs 6.40: 93.90 EUR; four glides 6.00 USD, and
    // the bar has no price.
    let usd = Money {
        currency: "USD".to_owned(),
        cents: 600,
    };
    assert_eq!(stock.purchases.totals, vec![euro(9390), usd]);
    assert_eq!(stock.purchases.unpriced, 1);
}

#[test]
fn boards_are_filled_to_the_end() {
    // 2400 - 2 x 20 = 2360 usable. 1177 + 3 + 1180 = 2360 fills a board to the nanometre.
    let build = build_of(
        vec![pine()],
        vec![
            part("A", "Long", 0, [1180, 95, 45], 1),
            part("B", "Less", 0, [1177, 95, 45], 1),
            part("C", "Third", 0, [784, 95, 45], 3),
        ],
    );
    let stock = lay_out(&build, &Solids::default()).value;
    assert_eq!(faults(&build, &stock), Vec::<String>::new());
    // Three thirds: 3 x 784 + 2 x 3 = 2358.
    assert_eq!(only(&stock.boards).layouts.len(), 2);
}

#[test]
fn strips_are_ripped_side_by_side() {
    // Two strips of 45 mm and one kerf of 3 mm fit in 95 mm (93), so that four pieces of
    // 1170 mm come from one board.
    let build = build_of(vec![pine()], vec![part("A", "Lath", 0, [1170, 45, 45], 4)]);
    let stock = lay_out(&build, &Solids::default()).value;
    assert_eq!(faults(&build, &stock), Vec::<String>::new());
    let plan = only(&stock.boards);
    assert_eq!((plan.layouts.len(), plan.at_least), (1, 1));
    let rips = plan.layouts[0]
        .cuts
        .iter()
        .filter(|cut| cut.direction == CutDirection::Rip && cut.setting == mm(45));
    assert!(rips.count() >= 2);
}

pub(super) fn size(length: i64, width: i64, cents: i64) -> StockPiece {
    StockPiece {
        length: mm(length),
        width: mm(width),
        price: Some(euro(cents)),
        count: None,
        on_hand: false,
        span: Span::default(),
    }
}

#[test]
fn the_least_cost_is_bought() {
    let mut material = plywood();
    material.stock = vec![size(2440, 1220, 7900), size(1220, 1220, 4500)];
    let small = build_of(
        vec![material.clone()],
        vec![part("A", "Panel", 0, [900, 600, 18], 1)],
    );
    let lines = lay_out(&small, &Solids::default()).value.purchases.stock;
    assert_eq!((lines[0].stock, lines[0].count), (1, 1));
    // Four panels of 1100 by 550 fill a whole sheet, or two halves at 90.00.
    let large = build_of(
        vec![material],
        vec![part("A", "Panel", 0, [1100, 550, 18], 4)],
    );
    let stock = lay_out(&large, &Solids::default()).value;
    assert_eq!(faults(&large, &stock), Vec::<String>::new());
    assert_eq!(stock.purchases.totals, vec![euro(7900)]);
}

#[test]
fn boards_of_several_lengths_are_mixed() {
    let mut material = pine();
    material.stock = vec![size(2400, 95, 850), size(1200, 95, 400)];
    // 2300 needs the long one; the three of 1100 are cheapest from three short ones or from
    // one long and one short: 850 + 400 beats 3 x 400 = 1200 by nothing, so 12.00 is bought.
    let build = build_of(
        vec![material],
        vec![
            part("A", "Long", 0, [2300, 95, 45], 1),
            part("B", "Short", 0, [1100, 95, 45], 3),
        ],
    );
    let stock = lay_out(&build, &Solids::default()).value;
    assert_eq!(faults(&build, &stock), Vec::<String>::new());
    assert_eq!(stock.purchases.totals, vec![euro(850 + 1200)]);
}

#[test]
fn two_currencies_are_never_compared() {
    let mut material = plywood();
    material.stock = vec![size(2440, 1220, 1), size(1220, 1220, 4500)];
    if let Some(price) = &mut material.stock[0].price {
        price.currency = "USD".to_owned();
    }
    let build = build_of(
        vec![material],
        vec![part("A", "Panel", 0, [900, 600, 18], 1)],
    );
    let outcome = lay_out(&build, &Solids::default());
    assert_eq!(codes(&outcome.findings), vec!["T009"]);
    assert_eq!(outcome.value.purchases.totals, vec![euro(4500)]);
}

#[test]
fn a_part_that_fits_on_nothing_is_found() {
    let fault = |material: Material, size: [i64; 3]| {
        let build = build_of(vec![material], vec![part("A", "Panel", 0, size, 1)]);
        codes(&lay_out(&build, &Solids::default()).findings)
    };
    assert_eq!(fault(plywood(), [2421, 300, 18]), vec!["T001"]);
    assert_eq!(fault(plywood(), [2420, 1200, 18]), Vec::<&str>::new());
    assert_eq!(fault(plywood(), [1200, 2000, 18]), vec!["T005"]);
    assert_eq!(fault(plywood(), [900, 300, 19]), vec!["T003"]);
    assert_eq!(fault(plywood(), [900, 300, 15]), vec!["T008"]);
    assert_eq!(fault(plywood(), [900, 3, 18]), vec!["T010"]);
    assert_eq!(fault(pine(), [2361, 95, 45]), vec!["T001"]);
    assert_eq!(fault(pine(), [900, 96, 45]), vec!["T004"]);
    let mut bare = plywood();
    bare.stock.clear();
    assert_eq!(fault(bare, [900, 300, 18]), vec!["T002"]);
    let mut trimmed = plywood();
    trimmed.trim = mm(610);
    assert_eq!(fault(trimmed, [900, 300, 18]), vec!["T007"]);
}

#[test]
fn a_million_copies_are_a_finding() {
    let build = build_of(
        vec![plywood()],
        vec![part("A", "Panel", 0, [900, 300, 18], 1_000_000)],
    );
    let outcome = lay_out(&build, &Solids::default());
    assert_eq!(codes(&outcome.findings), vec!["T006"]);
    assert!(outcome.value.sheets.is_empty());
}

#[test]
fn findings_give_the_figures_of_both() {
    let build = build_of(
        vec![plywood()],
        vec![part("A", "Panel", 0, [2600, 300, 18], 1)],
    );
    let findings = lay_out(&build, &Solids::default()).findings;
    let finding = findings.iter().next().unwrap();
    let figures: Vec<String> = finding
        .figures
        .iter()
        .map(|figure| figure.length.in_both())
        .collect();
    assert_eq!(figures[0], "2600 mm (about 102-23/64 in)");
    assert_eq!(figures[2], "2420 mm (about 95-9/32 in)");
}

#[test]
fn the_same_build_has_the_same_layout() {
    assert_eq!(
        lay_out(&shelf_unit(), &Solids::default()).value,
        lay_out(&shelf_unit(), &Solids::default()).value
    );
}

fn a_part(index: usize, longest: i64, widest: i64) -> impl Strategy<Value = crate::build::Part> {
    let sizes = (40..=longest, 40..=widest, 1..5_i64, any::<bool>());
    sizes.prop_map(move |(length, width, count, along)| {
        let title = format!("Part {index}");
        let mut part = part(&format!("P{index}"), &title, 0, [length, width, 18], count);
        part.grain_along_length = along;
        part
    })
}

fn some_parts(longest: i64, widest: i64) -> impl Strategy<Value = Vec<crate::build::Part>> {
    (1..14_usize).prop_flat_map(move |count| {
        (0..count)
            .map(|index| a_part(index, longest, widest))
            .collect::<Vec<_>>()
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn sheets_hold_what_they_should(
        parts in some_parts(1190, 1190),
        grain in any::<bool>(),
        kerf_um in 0..4000_i64,
        several in any::<bool>(),
    ) {
        let mut material = plywood();
        material.kerf = Length::from_nm(kerf_um * 1_000);
        material.grain = if grain { Grain::AlongLength } else { Grain::None };
        if several {
            material.stock.push(size(1500, 1500, 5000));
        }
        let build = build_of(vec![material], parts);
        let outcome = lay_out(&build, &Solids::default());
        let stock = outcome.value;
        let found: Vec<String> = faults(&build, &stock);
        prop_assert_eq!(found, Vec::<String>::new());
        let plan = only(&stock.sheets);
        prop_assert!(plan.at_least <= i64::try_from(plan.layouts.len()).unwrap());
    }

    #[test]
    fn boards_hold_what_they_should(parts in some_parts(1180, 95), kerf_um in 0..4000_i64) {
        let mut material = pine();
        material.kerf = Length::from_nm(kerf_um * 1_000);
        material.stock.push(size(1220, 95, 430));
        let parts = parts
            .into_iter()
            .map(|mut part| {
                part.grain_along_length = true;
                part
            })
            .collect();
        let build = build_of(vec![material], parts);
        let stock = lay_out(&build, &Solids::default()).value;
        prop_assert_eq!(faults(&build, &stock), Vec::<String>::new());
    }
}

#[test]
fn spares_are_bought_beside_what_is_used() {
    let mut build = shelf_unit();
    build.plan.spares = Some((1, 20));
    let stock = lay_out(&build, &Solids::default()).value;
    let screws = &stock.purchases.hardware[0];
    // 70 screws make four times twenty, the last begun: four more. 74 come in two packs of 50.
    assert_eq!((screws.needed, screws.spares, screws.packs), (70, 4, 2));
    assert_eq!(screws.left_over, 30);
}

#[test]
fn a_banded_panel_is_cut_smaller_and_its_band_bought_by_rolls() {
    let mut build = shelf_unit();
    let id = HardwareId(build.hardware.len());
    let mut tape = build.hardware[0].clone();
    tape.kind = HardwareKind::EdgeBand;
    tape.count = 0;
    tape.pack = None;
    tape.length = Some(mm(2_000));
    build.hardware.push(tape);
    let shelf = &mut build.parts[1];
    let [length, width, _] = shelf.size();
    shelf.bands = [Side::Near, Side::Foot, Side::Head]
        .map(|side| Band {
            side,
            hardware: id,
            thickness: mm(2),
            span: Span::default(),
        })
        .to_vec();
    let pieces = shelf.pieces();
    let stock = lay_out(&build, &Solids::default()).value;
    let row = stock.rows().find(|row| row.part == PartId(1)).unwrap();
    let blank = row.blank.as_ref().unwrap();
    assert_eq!(blank.size[0], length - mm(4));
    assert_eq!(blank.size[1], width - mm(2));
    assert_eq!(row.size[..2], [length, width]);
    let line = stock.purchases.hardware.last().unwrap();
    // Every stretch hangs over by 20 mm at both ends.
    let run = (length + width * 2 + mm(120)) * pieces;
    assert_eq!(line.run, Some(run));
    assert_eq!(line.packs, (run.nm() + mm(2_000).nm() - 1) / mm(2_000).nm());
}

#[test]
fn supplies_are_bought_by_what_they_cover() {
    let mut build = shelf_unit();
    let supply = Supply {
        name: "glue".to_owned(),
        title: "Glue".to_owned(),
        kind: SupplyKind::Glue,
        covers_m2: 0.03,
        coats: 1,
        on: Vec::new(),
        price: Some(euro(500)),
        span: Span::default(),
    };
    build.supplies.push(supply);
    let line = lay_out(&build, &Solids::default()).value.purchases.supplies;
    // Four feet of two layers, 100 mm square: 0.04 m2, a tenth more is 0.044 m2, two packs.
    assert!((line[0].area_m2 - 0.04).abs() < 1e-12);
    assert_eq!(
        (line[0].packs, line[0].total.clone()),
        (2, Some(euro(1000)))
    );
    // Two coats on one foot alone.
    let feet = build.placed.iter().position(|piece| piece.name == "feet");
    build.supplies[0].on = vec![PlacedId(feet.unwrap())];
    build.supplies[0].coats = 2;
    let line = lay_out(&build, &Solids::default()).value.purchases.supplies;
    assert!((line[0].area_m2 - 0.08).abs() < 1e-12);
}
