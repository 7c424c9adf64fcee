//! Steps: which is which, and what is told otherwise, word by word.

use similar::{ChangeTag, TextDiff};

use super::told::{in_words, wording};
use crate::build::{Build, Step};

/// A step that is new, gone, or told otherwise.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StepChange {
    /// Its number and title in the earlier plan, counted from 1.
    pub before: Option<(usize, String)>,
    /// Those in the later one.
    pub after: Option<(usize, String)>,
    /// What its texts say otherwise.
    pub words: Vec<Passage>,
    /// Its time in seconds before and after, where that differs.
    pub seconds: Option<[Option<i64>; 2]>,
    /// Pieces that come in and did not.
    pub more: Vec<String>,
    /// Pieces that came in and do not.
    pub fewer: Vec<String>,
}

/// A stretch of a text.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Passage {
    /// As it was.
    Same(String),
    /// Was there.
    Gone(String),
    /// Is there.
    New(String),
}

pub(super) fn changes(before: &Build, after: &Build) -> Vec<StepChange> {
    let mut changes = Vec::new();
    for (old, new) in pairs(before, after) {
        let was = old.and_then(|number| before.steps.get(number));
        let is = new.and_then(|number| after.steps.get(number));
        let titled =
            |number: Option<usize>, step: Option<&Step>| Some((number? + 1, step?.title.clone()));
        let (had, has) = (names(before, was), names(after, is));
        let lacking = |of: &[String], other: &[String]| {
            let names = of.iter().filter(|name| !other.contains(name));
            names.cloned().collect::<Vec<_>>()
        };
        let seconds = [was.and_then(|it| it.seconds), is.and_then(|it| it.seconds)];
        let [first, second] = [
            was.map_or_else(String::new, |step| text(before, step)),
            is.map_or_else(String::new, |step| text(after, step)),
        ];
        let both = was.is_some() && is.is_some();
        let change = StepChange {
            before: titled(old, was),
            after: titled(new, is),
            words: if both && first != second {
                words(&first, &second)
            } else {
                Vec::new()
            },
            seconds: (both && seconds.first() != seconds.last()).then_some(seconds),
            more: if both {
                lacking(&has, &had)
            } else {
                Vec::new()
            },
            fewer: if both {
                lacking(&had, &has)
            } else {
                Vec::new()
            },
        };
        let title = |of: &Option<(usize, String)>| of.as_ref().map(|(_, title)| title.clone());
        let differs = !both
            || title(&change.before) != title(&change.after)
            || !change.words.is_empty()
            || change.seconds.is_some()
            || !change.more.is_empty()
            || !change.fewer.is_empty();
        if differs {
            changes.push(change);
        }
    }
    changes
}

/// Steps of both plans, by title and then by what they say, in the order of the later one; what is
/// gone comes where it was.
fn pairs(before: &Build, after: &Build) -> Vec<(Option<usize>, Option<usize>)> {
    let mut left: Vec<usize> = (0..before.steps.len()).collect();
    let mut found: Vec<Option<usize>> = vec![None; after.steps.len()];
    for (number, step) in after.steps.iter().enumerate() {
        let fits = |old: &usize| {
            before
                .steps
                .get(*old)
                .is_some_and(|old| old.title == step.title)
        };
        take(&mut left, &mut found, number, fits);
    }
    for (number, step) in after.steps.iter().enumerate() {
        if found.get(number).copied().flatten().is_some() {
            continue;
        }
        let said = text(after, step);
        let fits = |old: &usize| {
            before.steps.get(*old).is_some_and(|old| {
                let was = text(before, old);
                !said.is_empty() && TextDiff::from_words(&was, &said).ratio() > 0.6
            })
        };
        take(&mut left, &mut found, number, fits);
    }
    let mut pairs: Vec<(Option<usize>, Option<usize>)> = found
        .into_iter()
        .enumerate()
        .map(|(number, old)| (old, Some(number)))
        .collect();
    for gone in left {
        let place = pairs
            .iter()
            .position(|(old, _)| old.is_some_and(|old| old > gone))
            .unwrap_or(pairs.len());
        pairs.insert(place, (Some(gone), None));
    }
    pairs
}

fn take(
    left: &mut Vec<usize>,
    found: &mut [Option<usize>],
    number: usize,
    fits: impl Fn(&usize) -> bool,
) {
    if let Some(place) = left.iter().position(fits)
        && let Some(slot) = found.get_mut(number)
    {
        *slot = Some(left.remove(place));
    }
}

/// All that a step says, checks and warns of.
fn text(build: &Build, step: &Step) -> String {
    let said = step
        .says
        .iter()
        .chain(&step.checks)
        .map(|it| wording(build, it));
    let warned = step
        .cautions
        .iter()
        .map(|(word, text)| format!("{}: {}", word.word(), wording(build, text)));
    let tools = step.tools.iter().map(|tool| tool.value.clone());
    let all: Vec<String> = said.chain(warned).chain(tools).collect();
    all.join("\n")
}

fn names(build: &Build, step: Option<&Step>) -> Vec<String> {
    let adds = step.into_iter().flat_map(|step| &step.adds);
    adds.filter_map(|id| build.piece(*id))
        .map(|piece| piece.name.clone())
        .collect()
}

/// What is told otherwise; long stretches that are the same are cut short.
fn words(before: &str, after: &str) -> Vec<Passage> {
    let diff = TextDiff::from_words(before, after);
    let mut words: Vec<Passage> = Vec::new();
    for change in diff.iter_all_changes() {
        let text = change.value();
        match (change.tag(), words.last_mut()) {
            (ChangeTag::Equal, Some(Passage::Same(so_far)))
            | (ChangeTag::Delete, Some(Passage::Gone(so_far)))
            | (ChangeTag::Insert, Some(Passage::New(so_far))) => so_far.push_str(text),
            (ChangeTag::Equal, _) => words.push(Passage::Same(text.to_owned())),
            (ChangeTag::Delete, _) => words.push(Passage::Gone(text.to_owned())),
            (ChangeTag::Insert, _) => words.push(Passage::New(text.to_owned())),
        }
    }
    let last = words.len().saturating_sub(1);
    for (place, stretch) in words.iter_mut().enumerate() {
        if let Passage::Same(text) = stretch {
            *text = in_words(text, place == 0, place == last);
        }
    }
    words
}
