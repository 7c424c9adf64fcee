//! Tests of layouts of sheets as bare numbers, each answer counted again.

use proptest::prelude::*;

use super::plain::{SheetPacking, SheetPart, SheetProblem, SheetStock, pack_sheets};
use super::recount::sheet_faults;

type Sheet = (i64, i64, Option<usize>, i128);

fn problem(sheets: &[Sheet], parts: &[(i64, i64, usize)]) -> SheetProblem {
    SheetProblem {
        sheets: sheets
            .iter()
            .map(|&(length, width, limit, cost)| SheetStock {
                length,
                width,
                limit,
                cost,
            })
            .collect(),
        parts: parts
            .iter()
            .map(|&(length, width, count)| SheetPart {
                length,
                width,
                count,
            })
            .collect(),
        ..SheetProblem::default()
    }
}

fn counted(problem: &SheetProblem) -> SheetPacking {
    let packing = pack_sheets(problem);
    assert_eq!(sheet_faults(problem, &packing), Vec::<String>::new());
    packing
}

/// How many sheets are taken, laid as described and turned at will.
fn both_ways(problem: &SheetProblem) -> [usize; 2] {
    [false, true].map(|may_turn| {
        let problem = SheetProblem {
            may_turn,
            ..problem.clone()
        };
        let packing = counted(&problem);
        assert!(packing.uncut.iter().all(|uncut| *uncut == 0));
        packing.sheets.len()
    })
}

/// gcut2 and ngcut6 (J. E. Beasley, Operations Research and Journal of the Operational Research
/// Society, 1985), with the fewest sheets known for cuts from edge to edge.
#[test]
fn classic_instances_take_no_more_sheets_than_known() {
    let gcut2 = [
        (120, 133, 1),
        (135, 186, 1),
        (86, 75, 1),
        (103, 73, 1),
        (66, 85, 1),
        (135, 97, 1),
        (91, 175, 1),
        (131, 176, 1),
        (71, 176, 1),
        (153, 72, 1),
        (87, 148, 1),
        (168, 107, 1),
        (118, 90, 1),
        (140, 109, 1),
        (132, 159, 1),
        (152, 93, 1),
        (135, 68, 1),
        (121, 158, 1),
        (68, 94, 1),
        (155, 76, 1),
    ];
    assert_eq!(both_ways(&problem(&[(250, 250, None, 1)], &gcut2)), [6, 6]);
    let ngcut6 = [
        (2, 9, 1),
        (10, 2, 3),
        (2, 4, 1),
        (2, 8, 2),
        (3, 8, 1),
        (4, 1, 1),
        (6, 4, 3),
        (10, 3, 1),
        (11, 2, 1),
        (4, 5, 1),
    ];
    assert_eq!(both_ways(&problem(&[(15, 10, None, 1)], &ngcut6)), [3, 2]);
}

/// A saw cut and a trim change nothing where every size makes room for them.
#[test]
fn a_saw_cut_is_folded_into_the_sizes() {
    let parts = [(6, 4, 3), (10, 3, 1), (5, 7, 2), (3, 9, 2), (4, 4, 4)];
    let bare = problem(
        &[(150, 100, None, 1)],
        &parts.map(|(l, w, n)| (l * 10, w * 10, n)),
    );
    let (kerf, trim) = (3, 10);
    let sawn = SheetProblem {
        kerf,
        trim,
        ..problem(
            &[(150 - kerf + 2 * trim, 100 - kerf + 2 * trim, None, 1)],
            &parts.map(|(l, w, n)| (l * 10 - kerf, w * 10 - kerf, n)),
        )
    };
    assert_eq!(both_ways(&bare), both_ways(&sawn));
}

#[test]
fn the_cheapest_mix_of_sizes_is_taken() {
    // Three halves: one whole sheet for 79 and a half one for 44, not three halves for 132.
    let sizes = [(2440, 1220, None, 79), (1220, 1220, None, 44)];
    let packing = counted(&problem(&sizes, &[(1220, 610, 6)]));
    assert_eq!((packing.cost, packing.least_cost), (79 + 44, 79 + 44));
}

#[test]
fn what_there_is_not_is_not_cut() {
    let packing = counted(&problem(&[(1000, 400, Some(1), 1)], &[(900, 300, 2)]));
    assert_eq!((packing.sheets.len(), packing.uncut), (1, vec![1]));
    let nothing = counted(&problem(&[(1000, 400, Some(0), 1)], &[(900, 300, 2)]));
    assert_eq!((nothing.sheets.len(), nothing.uncut), (0, vec![2]));
    let large = counted(&problem(
        &[(1000, 400, None, 1)],
        &[(1100, 300, 1), (10, 10, 1)],
    ));
    assert_eq!((large.sheets.len(), large.uncut), (1, vec![1, 0]));
}

/// Of layouts of one cost the one with fewer settings: eight strips of two widths.
#[test]
fn equal_rip_widths_share_a_setting() {
    let mut strips = problem(&[(2440, 1220, None, 1)], &[(2400, 150, 4), (2400, 145, 4)]);
    strips.kerf = 3;
    let packing = counted(&strips);
    assert_eq!((packing.sheets.len(), packing.shop.settings), (1, 3));
    assert!(!packing.shop.is_worse_than(&packing.first));
}

#[test]
fn two_stages_are_a_matter_of_strips() {
    // A pinwheel of five cannot be sawn; of four strips beside a block three stages are needed.
    let parts = [(60, 40, 2), (40, 20, 3), (20, 80, 1)];
    let mut staged = problem(&[(100, 100, None, 1)], &parts);
    for most in [2, 3, 4] {
        staged.most_stages = Some(most);
        let packing = counted(&staged);
        assert!(packing.uncut.iter().all(|uncut| *uncut == 0), "{most}");
    }
}

#[test]
fn the_same_twice() {
    let parts = [(30, 70, 9), (40, 40, 11), (55, 20, 7), (90, 15, 5)];
    let mut problem = problem(&[(100, 100, None, 1)], &parts);
    problem.may_turn = true;
    let placed = |packing: SheetPacking| -> Vec<_> {
        packing
            .sheets
            .into_iter()
            .map(|sheet| sheet.placed)
            .collect()
    };
    assert_eq!(placed(pack_sheets(&problem)), placed(pack_sheets(&problem)));
}

#[test]
fn a_sheet_narrower_than_its_trims_holds_nothing() {
    let mut trimmed = problem(&[(1, 12, None, 0)], &[(1, 1, 1)]);
    (trimmed.kerf, trimmed.trim) = (6, 9);
    let packing = counted(&trimmed);
    assert!(packing.sheets.is_empty());
    assert_eq!(packing.uncut, [1]);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    #[test]
    fn every_layout_can_be_sawn(
        parts in prop::collection::vec((1..1_400_i64, 1..900_i64, 0..9_usize), 0..9),
        sheets in prop::collection::vec(
            (1..2_500_i64, 1..1_300_i64, prop::option::of(0..5_usize), 0..90_i128), 0..4),
        kerf in 0..8_i64,
        trim in 0..20_i64,
        may_turn in any::<bool>(),
        most_stages in prop::option::of(2..5_u8),
    ) {
        let problem = SheetProblem {
            kerf,
            trim,
            may_turn,
            most_stages,
            small: 300,
            ..problem(&sheets, &parts)
        };
        let packing = pack_sheets(&problem);
        prop_assert_eq!(sheet_faults(&problem, &packing), Vec::<String>::new());
        // What fits on a size without limit is never left.
        let unlimited = |part: &SheetPart| problem.sheets.iter().any(|sheet| {
            let (length, width) = (sheet.length - 2 * trim, sheet.width - 2 * trim);
            sheet.limit.is_none() && part.length <= length && part.width <= width
        });
        for (part, uncut) in problem.parts.iter().zip(&packing.uncut) {
            prop_assert!(*uncut == 0 || !unlimited(part), "{part:?}: {uncut} left");
        }
    }
}
