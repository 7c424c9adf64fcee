//! Tests of how stock is had: offcuts on hand, few of a size, lumber by volume, boards with
//! defects, pieces of one blank.

use super::checks::{codes, faults, only, size};
use super::lay_out;
use super::sample::{build_of, euro, mm, part, pine, plywood};
use super::types::{CutDirection, Stock};
use crate::build::{Build, ContinuousGrain};
use crate::model::{Grain, Lumber, LumberMeasure, Material, MaterialForm, PartId, StockPiece};
use crate::solid::Solids;
use crate::source::Span;

fn laid_out(build: &Build) -> Stock {
    let outcome = lay_out(build, &Solids::default());
    assert_eq!(codes(&outcome.findings), Vec::<&str>::new());
    assert_eq!(faults(build, &outcome.value), Vec::<String>::new());
    outcome.value
}

fn offcut(length: i64, width: i64, count: i64) -> StockPiece {
    StockPiece {
        price: None,
        count: Some(count),
        on_hand: true,
        ..size(length, width, 0)
    }
}

#[test]
fn what_is_on_hand_is_used_first_and_not_bought() {
    let mut material = plywood();
    material.stock.push(offcut(1000, 650, 1));
    let panels = [part("A", "Panel", 0, [900, 500, 18], 3)];
    let stock = laid_out(&build_of(vec![material], panels.to_vec()));
    let plan = only(&stock.sheets);
    assert_eq!(
        (plan.layouts.len(), plan.on_hand(), plan.at_least),
        (2, 1, 1)
    );
    assert!(plan.layouts[0].on_hand, "cut first");
    let bought: Vec<(bool, i64)> = stock
        .purchases
        .stock
        .iter()
        .map(|line| (line.on_hand, line.count))
        .collect();
    assert_eq!(bought, [(false, 1), (true, 1)]);
    assert_eq!(
        (stock.purchases.totals, stock.purchases.unpriced),
        (vec![euro(7900)], 0)
    );
}

#[test]
fn an_offcut_that_holds_everything_saves_the_purchase() {
    let mut material = pine();
    material.stock.push(offcut(900, 95, 2));
    let rails = [part("A", "Rail", 0, [420, 95, 45], 4)];
    let stock = laid_out(&build_of(vec![material], rails.to_vec()));
    let plan = only(&stock.boards);
    assert_eq!(
        (plan.layouts.len(), plan.on_hand(), plan.at_least),
        (2, 2, 0)
    );
    assert_eq!(stock.purchases.totals, Vec::new());
}

#[test]
fn what_there_is_too_little_of_is_found() {
    let mut material = plywood();
    material.stock[0].count = Some(1);
    let panels = [part("A", "Panel", 0, [1200, 1100, 18], 3)];
    let outcome = lay_out(
        &build_of(vec![material], panels.to_vec()),
        &Solids::default(),
    );
    assert_eq!(codes(&outcome.findings), ["T012"]);
    assert_eq!(only(&outcome.value.sheets).layouts.len(), 1);
}

#[test]
fn boards_for_defects_are_bought_beside_the_others() {
    let mut material = pine();
    material.defects = Some((1, 3));
    let rails = [part("A", "Rail", 0, [2300, 95, 45], 4)];
    let stock = laid_out(&build_of(vec![material], rails.to_vec()));
    let line = &stock.purchases.stock[0];
    // Four begun in threes: two more. Six of 8.50.
    assert_eq!(
        (line.count, line.more, line.total.clone()),
        (4, 2, Some(euro(5100)))
    );
}

fn ash(measure: LumberMeasure, cents: i64) -> Material {
    Material {
        name: "ash".to_owned(),
        title: "Ash".to_owned(),
        form: MaterialForm::Lumber { thickness: mm(27) },
        stock: vec![StockPiece {
            price: None,
            ..size(2500, 180, 0)
        }],
        grain: Grain::AlongLength,
        lumber: Lumber {
            price: Some((euro(cents), measure)),
            ..Lumber::default()
        },
        ..pine()
    }
}

#[test]
fn lumber_is_bought_by_what_is_sawn() {
    // Four of 940 by 126 by 27 mm are 0.47376 m2 and 0.01279152 m3; three tenths more are
    // 0.615888 m2 and 0.016628976 m3, which are 7.047 board feet of 2.359737216 l
    // (144 cubic inches of 25.4 mm each; ref: units-and-paper, "Factors" [V]).
    let tops = [part("A", "Top", 0, [900, 120, 22], 4)];
    for (measure, cents, total) in [
        (LumberMeasure::CubicMetre, 240_000, 4_080),
        (LumberMeasure::SquareMetre, 6_000, 3_720),
        (LumberMeasure::BoardFoot, 510, 3_621),
    ] {
        let build = build_of(vec![ash(measure, cents)], tops.to_vec());
        let stock = lay_out(&build, &Solids::default()).value;
        let line = &stock.purchases.lumber[0];
        assert_eq!(
            (
                line.litres,
                line.square_metre_hundredths,
                line.board_foot_tenths
            ),
            (17, 62, 71)
        );
        assert_eq!(stock.purchases.totals, vec![euro(total)], "{measure:?}");
        let row = stock.rows().next().unwrap();
        assert_eq!(row.blank.as_ref().unwrap().size, [mm(940), mm(126), mm(27)]);
    }
}

#[test]
fn lumber_that_cannot_be_had_or_planed_is_found() {
    let parts = [
        part("A", "Long", 0, [2480, 120, 22], 1),
        part("B", "Thick", 0, [900, 120, 26], 1),
        part("C", "Wide", 0, [900, 180, 22], 1),
    ];
    let build = build_of(vec![ash(LumberMeasure::CubicMetre, 1)], parts.to_vec());
    let outcome = lay_out(&build, &Solids::default());
    assert_eq!(codes(&outcome.findings), ["T001", "T011", "T001"]);
}

fn runs(along: bool, parts: &[usize]) -> ContinuousGrain {
    ContinuousGrain {
        parts: parts.iter().map(|part| PartId(*part)).collect(),
        along,
        span: Span::default(),
    }
}

#[test]
fn grain_runs_on_over_pieces_of_one_blank() {
    let fronts = [
        part("A", "Small", 0, [500, 180, 18], 2),
        part("B", "Large", 0, [500, 260, 18], 1),
        part("C", "Side", 0, [900, 500, 18], 4),
    ];
    for along in [false, true] {
        let mut build = build_of(vec![plywood()], fronts.to_vec());
        build.continuous = vec![runs(along, &[0, 0, 1])];
        let stock = laid_out(&build);
        let layouts = only(&stock.sheets).layouts.iter();
        let of_run: Vec<_> = layouts
            .flat_map(|layout| &layout.placements)
            .filter(|one| one.part.0 < 2)
            .collect();
        let kerf = build.materials[0].kerf;
        assert_eq!(of_run.len(), 3);
        for pair in of_run.windows(2) {
            let (one, next) = (pair[0], pair[1]);
            let beside = if along {
                (one.x + one.length + kerf, one.y)
            } else {
                (one.x, one.y + one.width + kerf)
            };
            assert_eq!((next.x, next.y), beside, "in order, one saw cut apart");
        }
        assert_eq!(of_run[2].part, PartId(1));
    }
}

#[test]
fn grain_never_runs_on_over_two_boards() {
    let mut layered = part("B", "Layered", 0, [500, 180, 36], 1);
    layered.layers = 2;
    let parts = [part("A", "Front", 0, [500, 180, 18], 1), layered];
    let mut build = build_of(vec![plywood()], parts.to_vec());
    build.continuous = vec![runs(true, &[0, 1]), runs(true, &[0])];
    let outcome = lay_out(&build, &Solids::default());
    assert_eq!(codes(&outcome.findings), ["T013", "T013"]);
}

#[test]
fn a_limit_of_stages_is_kept_to() {
    let parts = [
        part("A", "Side", 0, [900, 500, 18], 3),
        part("B", "Shelf", 0, [800, 330, 18], 5),
        part("C", "Rail", 0, [640, 90, 18], 7),
    ];
    for most in [2, 3] {
        let mut material = plywood();
        material.stages = Some(most);
        let stock = laid_out(&build_of(vec![material], parts.to_vec()));
        for layout in &only(&stock.sheets).layouts {
            let mut turns = 0;
            let mut way: Option<CutDirection> = None;
            for cut in &layout.cuts {
                turns += u8::from(way != Some(cut.direction));
                way = Some(cut.direction);
            }
            // The cuts are listed stage by stage: never more turns than stages.
            assert!(turns <= most, "{turns} of {most}");
        }
    }
}

#[test]
fn one_size_alone_is_told_beside_the_mix() {
    let mut material = plywood();
    material.stock = vec![size(2440, 1220, 7900), size(1220, 1220, 4500)];
    let panels = [part("A", "Panel", 0, [1100, 550, 18], 6)];
    let stock = laid_out(&build_of(vec![material], panels.to_vec()));
    let plan = only(&stock.sheets);
    assert_eq!(
        (plan.cost.clone(), plan.least_cost.clone()),
        (Some(euro(12_400)), Some(euro(12_400)))
    );
    let alone: Vec<_> = plan
        .alternatives
        .iter()
        .map(|one| (one.stock, one.count, one.cost.clone()))
        .collect();
    assert_eq!(alone, [(0, 2, euro(15_800)), (1, 3, euro(13_500))]);
}
