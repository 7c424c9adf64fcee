//! Tests of cutting to length, each answer counted again.

use proptest::prelude::*;

use super::plain::{StickCutting, StickPart, StickProblem, StickStock, cut_sticks};
use super::recount::stick_faults;

fn problem(bars: &[(i64, Option<usize>, i128)], parts: &[(i64, usize)]) -> StickProblem {
    StickProblem {
        bars: bars
            .iter()
            .map(|&(length, limit, cost)| StickStock {
                length,
                limit,
                cost,
            })
            .collect(),
        parts: parts
            .iter()
            .map(|&(length, count)| StickPart { length, count })
            .collect(),
        kerf: 0,
        trim: 0,
    }
}

fn counted(problem: &StickProblem) -> StickCutting {
    let cutting = cut_sticks(problem);
    assert_eq!(stick_faults(problem, &cutting), Vec::<String>::new());
    cutting
}

/// Falkenauer_t60_00: 20 bars without any waste (E. Falkenauer, Journal of Heuristics, 1996).
const TRIPLETS: [(i64, usize); 50] = [
    (495, 1),
    (474, 1),
    (473, 1),
    (472, 1),
    (466, 1),
    (450, 1),
    (445, 1),
    (444, 1),
    (439, 1),
    (430, 1),
    (419, 1),
    (414, 1),
    (410, 1),
    (395, 1),
    (372, 1),
    (370, 1),
    (366, 3),
    (363, 1),
    (361, 1),
    (357, 1),
    (355, 1),
    (351, 1),
    (350, 2),
    (347, 1),
    (320, 1),
    (315, 1),
    (307, 1),
    (303, 1),
    (299, 1),
    (298, 2),
    (292, 1),
    (288, 1),
    (287, 1),
    (283, 1),
    (275, 2),
    (274, 1),
    (273, 2),
    (272, 2),
    (271, 1),
    (269, 2),
    (268, 1),
    (263, 1),
    (262, 1),
    (261, 1),
    (259, 1),
    (258, 1),
    (255, 1),
    (254, 1),
    (252, 3),
    (251, 1),
];

#[test]
fn triplets_leave_nothing() {
    let problem = problem(&[(1_000, None, 1)], &TRIPLETS);
    let cutting = counted(&problem);
    assert_eq!((cutting.cost, cutting.at_least), (20, 20));
}

#[test]
fn ten_thousand_pieces_are_a_matter_of_counts() {
    let parts = [(2_150, 2_500), (1_380, 2_500), (760, 2_500), (415, 2_500)];
    let cutting = counted(&problem(&[(6_000, None, 1)], &parts));
    assert_eq!(cutting.cost, cutting.at_least);
    assert!(cutting.bars.len() < 20, "few ways of cutting");
}

#[test]
fn lengths_and_prices_of_stock_are_weighed() {
    // Two of 1200 out of 2400 for 9, not one each out of 1500 for 5 each.
    let cutting = counted(&problem(
        &[(2_400, None, 9), (1_500, None, 5)],
        &[(1_200, 4)],
    ));
    assert_eq!((cutting.cost, cutting.at_least), (18, 18));
    // With three of them the third comes out of the short one.
    let cutting = counted(&problem(
        &[(2_400, None, 9), (1_500, None, 5)],
        &[(1_200, 3)],
    ));
    assert_eq!(cutting.cost, 14);
}

#[test]
fn stock_at_hand_is_used_and_no_more_of_it() {
    // Two bars of 1000 lie there for nothing; the rest is bought.
    let bars = [(1_000, Some(2), 0), (3_000, None, 10)];
    let cutting = counted(&problem(&bars, &[(900, 7)]));
    assert_eq!(cutting.cost, 20);
    assert_eq!(cutting.uncut, vec![0]);
}

#[test]
fn what_stock_does_not_yield_stays_uncut() {
    let cutting = counted(&problem(&[(1_000, Some(2), 3)], &[(400, 5), (2_000, 1)]));
    assert_eq!(cutting.uncut, vec![1, 1]);
    assert_eq!(cutting.cost, 6);
}

#[test]
fn nothing_to_cut_costs_nothing() {
    assert_eq!(counted(&problem(&[(1_000, None, 1)], &[])).count(), 0);
    assert_eq!(counted(&problem(&[(1_000, None, 1)], &[(5, 0)])).count(), 0);
    let cutting = counted(&problem(&[], &[(5, 2)]));
    assert_eq!(cutting.uncut, vec![2]);
    let cutting = counted(&problem(&[(1_000, None, 0)], &[(600, 2)]));
    assert_eq!((cutting.count(), cutting.cost), (2, 0));
}

#[test]
fn a_saw_cut_lies_between_two_pieces_only() {
    let mut problem = problem(&[(1_003, None, 1)], &[(500, 2)]);
    problem.kerf = 3;
    assert_eq!(counted(&problem).cost, 1);
    problem.kerf = 4;
    assert_eq!(counted(&problem).cost, 2);
    problem.kerf = 0;
    problem.trim = 2;
    assert_eq!(counted(&problem).cost, 2);
}

#[test]
fn the_same_twice() {
    let problem = problem(&[(1_000, None, 1)], &TRIPLETS);
    let (first, second) = (cut_sticks(&problem), cut_sticks(&problem));
    let bars = |cutting: &StickCutting| -> Vec<(Vec<(usize, usize)>, usize)> {
        let bars = cutting.bars.iter();
        bars.map(|bar| (bar.parts.clone(), bar.times)).collect()
    };
    assert_eq!(bars(&first), bars(&second));
}

/// Least cost of a few pieces out of unlimited bars: every division of them is tried.
fn least_cost(problem: &StickProblem) -> i128 {
    let mut pieces: Vec<i64> = Vec::new();
    for part in &problem.parts {
        pieces.extend(std::iter::repeat_n(part.length + problem.kerf, part.count));
    }
    let all = 1_usize << pieces.len();
    let one_bar = |set: usize| {
        let chosen = pieces.iter().enumerate().filter(|(i, _)| set >> i & 1 == 1);
        let length: i64 = chosen.map(|(_, piece)| piece).sum();
        let bars = problem.bars.iter();
        bars.filter(|bar| length <= bar.length - 2 * problem.trim + problem.kerf)
            .map(|bar| bar.cost)
            .min()
    };
    let costs: Vec<Option<i128>> = (0..all).map(one_bar).collect();
    let mut best = vec![0; all];
    for set in 1..all {
        best[set] = i128::MAX;
        let mut part = set;
        while part > 0 {
            if let Some(cost) = costs[part] {
                best[set] = best[set].min(cost.saturating_add(best[set & !part]));
            }
            part = (part - 1) & set;
        }
    }
    best[all - 1]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn few_pieces_cost_the_least(
        lengths in prop::collection::vec(40..1_000_i64, 1..8),
        more in prop::option::of((300..900_i64, 1..10_i128)),
        kerf in 0..30_i64,
    ) {
        let mut bars = vec![(1_030, None, 10)];
        bars.extend(more.map(|(length, cost)| (length, None, cost)));
        let parts: Vec<(i64, usize)> = lengths.iter().map(|length| (*length, 1)).collect();
        let mut problem = problem(&bars, &parts);
        problem.kerf = kerf;
        let cutting = cut_sticks(&problem);
        prop_assert_eq!(stick_faults(&problem, &cutting), Vec::<String>::new());
        let least = least_cost(&problem);
        prop_assert!(cutting.at_least <= least, "{} proven, {least} possible", cutting.at_least);
        prop_assert_eq!(cutting.cost, least);
    }

    #[test]
    fn every_answer_can_be_sawn(
        parts in prop::collection::vec((1..2_600_000_000_i64, 0..40_usize), 0..12),
        bars in prop::collection::vec((1..6_000_000_000_i64, prop::option::of(0..9_usize), 0..900_i128), 0..4),
        kerf in 0..5_000_000_i64,
        trim in 0..30_000_000_i64,
    ) {
        let mut problem = problem(&bars, &parts);
        problem.kerf = kerf;
        problem.trim = trim;
        let cutting = cut_sticks(&problem);
        prop_assert_eq!(stick_faults(&problem, &cutting), Vec::<String>::new());
    }
}
