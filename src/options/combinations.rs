//! Which selections are tried: all of them, or so many that any two choices meet in one.

use std::collections::{BTreeMap, BTreeSet};

use crate::model::PlanOption;

/// Up to so many selections, every one is tried; of more, pairs of choices.
pub const MOST: usize = 64;

/// A choice of each option, by its place.
pub type Selection = Vec<usize>;

/// The selections to try, the plan's own first, then those that differ from it in one choice, and
/// the others after.
///
/// Of more than [`MOST`], each pair of choices of two options is in one of them at least: most
/// faults hang on one choice or on two (ref: Kuhn, Wallace and Gallo 2004, Software fault
/// interactions and implications for software testing [M]).
pub fn combinations(options: &[PlanOption]) -> Vec<Selection> {
    let own: Selection = options.iter().map(|option| option.chosen).collect();
    let sizes: Vec<usize> = options.iter().map(|option| option.choices.len()).collect();
    let count = sizes
        .iter()
        .try_fold(1_usize, |all, size| all.checked_mul(*size));
    let mut selections = vec![own.clone()];
    for (place, size) in sizes.iter().enumerate() {
        for choice in 0..*size {
            let one = with(&own, place, choice);
            if one != own {
                selections.push(one);
            }
        }
    }
    let others = match count {
        Some(count) if count <= MOST => every(&sizes),
        _ => pairwise(&sizes, &selections),
    };
    let known: BTreeSet<Selection> = selections.iter().cloned().collect();
    let mut others: Vec<Selection> = others
        .into_iter()
        .filter(|one| !known.contains(one))
        .collect();
    // The simplest comes first: what is found is told of that.
    others.sort_by_key(|one| one.iter().zip(&own).filter(|(a, b)| a != b).count());
    selections.extend(others);
    selections
}

fn with(selection: &[usize], place: usize, choice: usize) -> Selection {
    let mut one = selection.to_vec();
    if let Some(slot) = one.get_mut(place) {
        *slot = choice;
    }
    one
}

/// Every selection.
fn every(sizes: &[usize]) -> Vec<Selection> {
    let mut all: Vec<Selection> = vec![Vec::new()];
    for size in sizes {
        all = all
            .into_iter()
            .flat_map(|begun| {
                (0..*size).map(move |choice| {
                    let mut one = begun.clone();
                    one.push(choice);
                    one
                })
            })
            .collect();
    }
    all
}

/// Two choices of two options, each by place of the option and of the choice.
type Pair = ((usize, usize), (usize, usize));

/// Selections in which every pair of choices is met that is in none of `there`: each takes, option
/// by option, the choice that meets most pairs not met yet.
fn pairwise(sizes: &[usize], there: &[Selection]) -> Vec<Selection> {
    let mut open: BTreeSet<Pair> = BTreeSet::new();
    for (i, first) in sizes.iter().enumerate() {
        for (j, second) in sizes.iter().enumerate().skip(i + 1) {
            for a in 0..*first {
                open.extend((0..*second).map(|b| ((i, a), (j, b))));
            }
        }
    }
    for selection in there {
        close(&mut open, selection);
    }
    let mut selections = Vec::new();
    while let Some(&((i, a), (j, b))) = open.iter().next() {
        let mut taken: BTreeMap<usize, usize> = BTreeMap::from([(i, a), (j, b)]);
        for (place, size) in sizes.iter().enumerate() {
            if taken.contains_key(&place) {
                continue;
            }
            let met = |choice: usize| {
                let pair = |(other, its): (&usize, &usize)| {
                    let (one, two) = ((place, choice), (*other, *its));
                    open.contains(&(one.min(two), one.max(two)))
                };
                taken.iter().filter(|it| pair(*it)).count()
            };
            // The first of those that meet most.
            let best = (0..*size)
                .rev()
                .max_by_key(|choice| met(*choice))
                .unwrap_or(0);
            taken.insert(place, best);
        }
        let selection: Selection = taken.into_values().collect();
        close(&mut open, &selection);
        selections.push(selection);
    }
    selections
}

fn close(open: &mut BTreeSet<Pair>, selection: &[usize]) {
    for (i, a) in selection.iter().enumerate() {
        for (j, b) in selection.iter().enumerate().skip(i + 1) {
            open.remove(&((i, *a), (j, *b)));
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::PlanChoice;
    use crate::source::Span;

    fn option(choices: usize, chosen: usize) -> PlanOption {
        let choice = |n: usize| PlanChoice {
            name: format!("c{n}"),
            title: String::new(),
            span: Span::default(),
        };
        PlanOption {
            name: "o".to_owned(),
            title: String::new(),
            choices: (0..choices).map(choice).collect(),
            chosen,
            span: Span::default(),
        }
    }

    #[test]
    fn few_are_tried_all_each_once() {
        let all = combinations(&[option(2, 1), option(3, 0), option(2, 0)]);
        assert_eq!(all.len(), 12);
        assert_eq!(all.iter().collect::<BTreeSet<_>>().len(), 12);
        assert_eq!(all[0], [1, 0, 0]);
        // One other choice each, then two, then three.
        let apart = |one: &Selection| one.iter().zip(&all[0]).filter(|(a, b)| a != b).count();
        let order: Vec<usize> = all.iter().map(apart).collect();
        assert!(order.is_sorted(), "{order:?}");
    }

    #[test]
    fn of_many_any_two_choices_meet() {
        let options: Vec<PlanOption> = (0..10).map(|n| option(4, n % 4)).collect();
        let some = combinations(&options);
        let mut open = BTreeSet::new();
        for i in 0..10 {
            for j in i + 1..10 {
                for a in 0..4 {
                    open.extend((0..4).map(|b| ((i, a), (j, b))));
                }
            }
        }
        for one in &some {
            assert_eq!(one.len(), 10);
            close(&mut open, one);
        }
        assert!(open.is_empty());
        // Of a million selections; sixteen at the least, and one for every choice beside.
        assert!(some.len() < 80, "{}", some.len());
    }
}
