//! Boards of which nothing is ripped: items as wide as the bin, cut to length one after the other.

use super::bound::at_least;
use super::sticks::{self, Bar, CutBars, Part, Sticks};
use super::tree::{Tree, Way};
use super::{Packed, Problem};

/// Packs a problem whose every item takes the whole width of every bin, and says how few bins
/// could do. None for other problems.
pub(super) fn pack(problem: &Problem) -> Option<(Vec<Packed>, i64)> {
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
                limit: None,
            })
            .collect(),
    });
    let packed = cutting
        .bars
        .iter()
        .flat_map(|cut| std::iter::repeat_n(bar(problem, cut), cut.times))
        .collect();
    let bound = match problem.bins.as_slice() {
        // Bars that cost nothing are not counted by their cost.
        [bin] if bin.cost > 0 => {
            let bars = (cutting.at_least + bin.cost - 1) / bin.cost;
            i64::try_from(bars).unwrap_or(0)
        }
        _ => 0,
    };
    Some((packed, bound.max(at_least(problem))))
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
            }],
        }
    }

    #[test]
    fn long_pieces_come_first_and_equal_boards_lie_together() {
        let (packed, bound) = pack(&problem(&[(300, 2), (700, 2), (500, 2)], 95)).unwrap();
        let boards: Vec<Vec<usize>> = packed
            .iter()
            .map(|one| one.tree.items().collect())
            .collect();
        assert_eq!(boards, vec![vec![1, 0], vec![1, 0], vec![2, 2]]);
        assert_eq!(bound, 3);
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
