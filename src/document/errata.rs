//! The sheet for those who own an earlier plan: what changed, and what to do about it.

use std::collections::BTreeMap;

use serde::Serialize;

use super::measure::Measure;
use super::render;
use super::templates::{ERRATA, Templates};
use super::tree::Document;
use crate::build::{Build, JointKind, Revision};
use crate::diff::{
    Amount, Difference, Edition, Fate, JointChange, Moved, PartChange, PartFace, Passage,
};
use crate::finding::Outcome;
use crate::units::{Mass, Money, Precision};
use crate::words::Words;

/// The sheet for those who own an earlier plan: what changed and what to do about it.
///
/// Findings: the P family in [`findings`](super::findings), at the later plan's block.
pub fn errata(difference: &Difference, later: &Build, templates: &Templates) -> Outcome<Document> {
    let words = templates.words();
    let title = [("title", later.plan.title.as_str().into())];
    let title = words.word("errata-title", &title);
    let document = templates.document(&title, &later.plan.author);
    let context = ErrataContext::of(difference, later.plan.precision, words);
    let things = later.parts.len() + later.placed.len() + later.joints.len() + later.steps.len();
    let figures = BTreeMap::new();
    let read = render::alone(templates, ERRATA, &context, things, &figures);
    render::filled(document, read, figures, later.plan.span)
}

/// All that the template of the sheet sees.
#[derive(Clone, Debug, Serialize)]
pub(super) struct ErrataContext {
    metric_first: bool,
    /// The language, as a BCP 47 tag.
    language: String,
    same: bool,
    before: EditionText,
    after: EditionText,
    revisions: Vec<Revision>,
    /// Parts by what to do about those that are cut already.
    fates: Vec<FateText>,
    /// Pieces that stand elsewhere, those of one part together.
    moved: Vec<(usize, MovedText)>,
    /// Joints made otherwise, those alike together.
    joints: Vec<(usize, JointText)>,
    /// More to buy than before, and what is left over.
    more: Vec<AmountText>,
    fewer: Vec<AmountText>,
    cost: Option<[String; 2]>,
    mass: Option<[String; 2]>,
    steps: Vec<StepText>,
    more_choices: Vec<String>,
    fewer_choices: Vec<String>,
    more_cautions: Vec<String>,
    fewer_cautions: Vec<String>,
}

#[derive(Clone, Debug, Serialize)]
struct EditionText {
    title: String,
    mark: String,
    date: String,
}

#[derive(Clone, Debug, Serialize)]
struct FateText {
    fate: &'static str,
    rows: Vec<PartRow>,
}

#[derive(Clone, Debug, Serialize)]
struct PartRow {
    before: Option<FaceText>,
    after: Option<FaceText>,
    resized: bool,
    regrained: bool,
    cut_otherwise: bool,
    other_material: bool,
    renamed: bool,
}

#[derive(Clone, Debug, Serialize)]
struct FaceText {
    label: String,
    title: String,
    pieces: i64,
    size: Vec<Measure>,
    material: String,
    grain: &'static str,
}

#[derive(Clone, Debug, PartialEq, Serialize)]
struct MovedText {
    part: String,
    by: Vec<(&'static str, Measure)>,
}

#[derive(Clone, Debug, PartialEq, Serialize)]
struct JointText {
    parts: [String; 2],
    before: Vec<JoiningText>,
    after: Vec<JoiningText>,
}

#[derive(Clone, Debug, PartialEq, Serialize)]
struct JoiningText {
    kind: &'static str,
    /// What it is made with, and how many.
    hardware: Vec<(String, i64)>,
    /// Whether it is glued; none where its kind says that.
    glued: Option<bool>,
}

#[derive(Clone, Debug, Serialize)]
struct AmountText {
    title: String,
    by: i64,
    count: i64,
}

#[derive(Clone, Debug, Serialize)]
struct StepText {
    number: Option<usize>,
    was_number: Option<usize>,
    title: String,
    was_title: Option<String>,
    /// Stretches of the text as it was: true where they are gone.
    was: Vec<(bool, String)>,
    /// Stretches of the text as it is: true where they are new.
    now: Vec<(bool, String)>,
    more: Vec<String>,
    fewer: Vec<String>,
}

impl ErrataContext {
    /// Works all figures out.
    pub(super) fn of(all: &Difference, precision: Precision, words: &Words) -> Self {
        let precision = precision.with_mark(words.decimal_mark());
        let money = |sum: &Money| words.figure(&sum.printed()).replace(' ', "\u{a0}");
        let hazards = |ids: &[&'static str]| {
            let ids = ids.iter();
            ids.map(|id| words.word(&format!("caution-{id}"), &[]))
                .collect()
        };
        let amounts = |keep: fn(i64) -> bool| {
            let goods = &all.goods;
            let all = goods
                .stock
                .iter()
                .chain(&goods.hardware)
                .chain(&goods.supplies);
            all.map(amount).filter(|one| keep(one.by)).collect()
        };
        Self {
            metric_first: precision.metric_first,
            language: words.language().to_owned(),
            same: all.is_empty(),
            before: edition(&all.before),
            after: edition(&all.after),
            revisions: all.revisions.clone(),
            fates: Fate::ALL
                .into_iter()
                .map(|fate| FateText {
                    fate: fate.word(),
                    rows: all
                        .parts
                        .iter()
                        .filter(|change| change.fate == fate)
                        .map(|change| row(change, precision))
                        .collect(),
                })
                .filter(|fate| !fate.rows.is_empty())
                .collect(),
            moved: alike(all.moved.iter().map(|it| moved(it, precision))),
            joints: alike(all.joints.iter().map(joint)),
            more: amounts(|by| by > 0),
            fewer: amounts(|by| by < 0),
            cost: all
                .goods
                .cost
                .as_ref()
                .map(|[before, after]| [money(before), money(after)]),
            mass: all
                .goods
                .kg
                .map(|both| both.map(|kg| words.figure(&Mass::from_kg_f64(kg).in_both()))),
            steps: all.steps.iter().map(step).collect(),
            more_choices: all.more_choices.clone(),
            fewer_choices: all.fewer_choices.clone(),
            more_cautions: hazards(&all.more_cautions),
            fewer_cautions: hazards(&all.fewer_cautions),
        }
    }
}

/// Things that read alike once, with how many there are.
fn alike<T: PartialEq>(things: impl Iterator<Item = T>) -> Vec<(usize, T)> {
    let mut known: Vec<(usize, T)> = Vec::new();
    for thing in things {
        match known.iter_mut().find(|(_, other)| *other == thing) {
            Some((count, _)) => *count += 1,
            None => known.push((1, thing)),
        }
    }
    known
}

fn moved(moved: &Moved, precision: Precision) -> MovedText {
    let by = moved.by.iter().map(|(axis, by)| {
        let towards = if by.is_positive() {
            axis.high()
        } else {
            axis.low()
        };
        (towards.word(), Measure::of(by.abs(), precision))
    });
    MovedText {
        part: moved.part.clone(),
        by: by.collect(),
    }
}

fn edition(edition: &Edition) -> EditionText {
    EditionText {
        title: edition.title.clone(),
        mark: edition.mark.clone(),
        date: edition.date.clone(),
    }
}

fn row(change: &PartChange, precision: Precision) -> PartRow {
    let differs = |other: fn(&PartFace, &PartFace) -> bool| {
        let both = change.before.as_ref().zip(change.after.as_ref());
        both.is_some_and(|(before, after)| other(before, after))
    };
    PartRow {
        before: change.before.as_ref().map(|it| face(it, precision)),
        after: change.after.as_ref().map(|it| face(it, precision)),
        resized: differs(|a, b| a.size != b.size),
        regrained: differs(|a, b| a.grain_along_length != b.grain_along_length),
        cut_otherwise: change.cut_otherwise,
        other_material: differs(|a, b| a.material != b.material),
        renamed: differs(|a, b| a.title != b.title || a.label != b.label),
    }
}

fn face(face: &PartFace, precision: Precision) -> FaceText {
    FaceText {
        label: face.label.clone(),
        title: face.title.clone(),
        pieces: face.pieces,
        size: Measure::all(&face.size, precision),
        material: face.material.clone(),
        grain: if face.grain_along_length {
            "length"
        } else {
            "width"
        },
    }
}

fn joint(change: &JointChange) -> JointText {
    let told = |list: &[crate::diff::Joining]| {
        let list = list.iter();
        list.map(|one| JoiningText {
            kind: one.kind.word(),
            hardware: one.hardware.clone(),
            glued: (!matches!(one.kind, JointKind::Glue | JointKind::Lamination))
                .then_some(one.glued),
        })
        .collect()
    };
    JointText {
        parts: change.parts.clone(),
        before: told(&change.before),
        after: told(&change.after),
    }
}

fn amount(amount: &Amount) -> AmountText {
    let [before, after] = amount.count;
    AmountText {
        title: amount.title.clone(),
        by: after - before,
        count: after,
    }
}

fn step(change: &crate::diff::StepChange) -> StepText {
    let title = |of: &Option<(usize, String)>| of.as_ref().map(|(_, title)| title.clone());
    let (was_title, now_title) = (title(&change.before), title(&change.after));
    let stretches = |kept: fn(&Passage) -> Option<(bool, &String)>| {
        let words = change.words.iter().filter_map(kept);
        words.map(|(marked, text)| (marked, text.clone())).collect()
    };
    StepText {
        number: change.after.as_ref().map(|(number, _)| *number),
        was_number: change.before.as_ref().map(|(number, _)| *number),
        title: now_title
            .clone()
            .or_else(|| was_title.clone())
            .unwrap_or_default(),
        was_title: was_title.filter(|was| now_title.as_ref().is_some_and(|now| now != was)),
        was: stretches(|words| match words {
            Passage::Same(text) => Some((false, text)),
            Passage::Gone(text) => Some((true, text)),
            Passage::New(_) => None,
        }),
        now: stretches(|words| match words {
            Passage::Same(text) => Some((false, text)),
            Passage::New(text) => Some((true, text)),
            Passage::Gone(_) => None,
        }),
        more: change.more.clone(),
        fewer: change.fewer.clone(),
    }
}
