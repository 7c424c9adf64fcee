//! Boards of which nothing is ripped: items as wide as the bin, cut to length one after the other.

use super::bound::{self, Bound};
use super::sheet::Sheet;
use super::shop::Shop;
use super::sticks::{self, Bar, CutBars, Part, Sticks};
use super::tree::{Tree, Way};
use super::{Packed, Packing, Problem};

/// Packs a problem whose every item takes the whole width of every bin; none for other problems.
pub(super) fn pack(problem: &Problem) -> Option<Packing> {
    let width = problem.bins.first()?.across;
    let is_lengthwise = problem.bins.iter().all(|bin| bin.across == width)
        && problem
            .items
            .iter()
            .all(|item| item.across == width && !item.may_turn);
    if !is_lengthwise {
        return None;
    }
    let cutting = sticks::cut(&Sticks {
        parts: problem
            .items
            .iter()
            .map(|item| Part {
                length: item.along,
                count: item.count,
            })
            .collect(),
        bars: problem
            .bins
            .iter()
            .map(|bin| Bar {
                length: bin.along,
                cost: bin.cost,
                limit: bin.limit,
            })
            .collect(),
    });
    let bins: Vec<Packed> = cutting
        .bars
        .iter()
        .flat_map(|cut| std::iter::repeat_n(bar(problem, cut), cut.times))
        .collect();
    let sheets: Vec<Sheet> = bins
        .iter()
        .map(|one| Sheet::of_tree(one.bin, &one.tree))
        .collect();
    let shop = Shop::of(problem, &sheets);
    Some(Packing {
        bins,
        at_least: at_least(problem, cutting.at_least),
        unpacked: cutting.uncut,
        shop,
        first: shop,
    })
}

/// Bounds that hold for every layout, by the least that all bars cost.
fn at_least(problem: &Problem, cost: i128) -> Bound {
    let mut bound = bound::of(problem);
    bound.cost = bound.cost.max(cost);
    let mut bought = problem.bins.iter().filter(|bin| !bin.on_hand);
    if let (Some(bin), None) = (bought.next(), bought.next())
        && bin.cost > 0
    {
        let free = problem.bins.iter().all(|bin| !bin.on_hand || bin.cost == 0);
        let bars = i64::try_from(num_integer::div_ceil(bound.cost, bin.cost)).unwrap_or(0);
        if free {
            bound.bought = bound.bought.max(bars);
        }
    }
    bound.bins = bound.bins.max(bound.bought);
    bound
}

/// One bar and its crosscuts, the longest item first.
fn bar(problem: &Problem, cut: &CutBars) -> Packed {
    let bin = problem.bins.get(cut.bar);
    let mut tree = bin.map_or_else(Tree::default, |bin| Tree::new(bin.along, bin.across));
    let mut rest = Some(0);
    for (index, count) in &cut.parts {
        let Some(item) = problem.items.get(*index) else {
            continue;
        };
        for _ in 0..*count {
            let Some(id) = rest else { break };
            let pose = (item.along, item.across, false);
            [rest, _] = tree.place(id, *index, pose, Way::Crosscut);
        }
    }
    Packed { bin: cut.bar, tree }
}

#[cfg(test)]
mod tests {
    use super::super::tree::Piece;
    use super::super::{Bin, Item};
    use super::*;

    fn problem(items: &[(i64, usize)], across: i64) -> Problem {
        Problem {
            items: items
                .iter()
                .map(|&(along, count)| Item {
                    along,
                    across,
                    count,
                    may_turn: false,
                })
                .collect(),
            bins: vec![Bin {
                along: 1_000,
                across: 95,
                cost: 850,
                limit: None,
                on_hand: false,
            }],
            ..Problem::default()
        }
    }

    #[test]
    fn long_pieces_come_first_and_equal_boards_lie_together() {
        let packing = pack(&problem(&[(300, 2), (700, 2), (500, 2)], 95)).unwrap();
        let packed = &packing.bins;
        let boards: Vec<Vec<usize>> = packed
            .iter()
            .map(|one| one.tree.items().collect())
            .collect();
        assert_eq!(boards, vec![vec![1, 0], vec![1, 0], vec![2, 2]]);
        assert_eq!(packing.at_least.bought, 3);
        let whole = packed[2].tree.walk();
        assert!(
            whole.iter().all(|(_, piece)| *piece != Piece::Free),
            "two of 500 fill 1000 to the end"
        );
    }

    #[test]
    fn narrower_items_are_for_the_other_methods() {
        assert!(pack(&problem(&[(300, 2)], 94)).is_none());
    }
}
