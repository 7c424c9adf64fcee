//! A difference for programs, by the schema `grammar/diff.schema.json`.

use serde_json::{Value, json};

use super::joints::Joining;
use super::{Amount, Difference, Edition, PartFace, Passage};
use crate::units::Length;

/// What differs, as one object.
pub fn json(all: &Difference) -> String {
    let parts = all.parts.iter().map(|change| {
        json!({
            "before": change.before.as_ref().map(face),
            "after": change.after.as_ref().map(face),
            "cut_otherwise": change.cut_otherwise,
            "fate": change.fate.word(),
        })
    });
    let moved = all.moved.iter().map(|moved| {
        let by = moved.by.iter();
        let by = by.map(|(axis, by)| json!({ "axis": axis.word(), "by": length(*by) }));
        json!({ "piece": moved.name, "by": by.collect::<Vec<_>>() })
    });
    let joints = all.joints.iter().map(|change| {
        json!({
            "pieces": change.pieces,
            "before": change.before.iter().map(joining).collect::<Vec<_>>(),
            "after": change.after.iter().map(joining).collect::<Vec<_>>(),
        })
    });
    let steps = all.steps.iter().map(|change| {
        let numbered = |of: &Option<(usize, String)>| {
            of.as_ref()
                .map(|(number, title)| json!({ "number": number, "title": title }))
        };
        json!({
            "before": numbered(&change.before),
            "after": numbered(&change.after),
            "words": change.words.iter().map(words).collect::<Vec<_>>(),
            "seconds": change.seconds,
            "more_pieces": change.more,
            "fewer_pieces": change.fewer,
        })
    });
    let amounts = |list: &[Amount]| {
        list.iter()
            .map(|one| json!({ "title": one.title, "count": one.count }))
            .collect::<Vec<_>>()
    };
    let revisions = all.revisions.iter();
    let revisions =
        revisions.map(|one| json!({ "mark": one.mark, "date": one.date, "note": one.note }));
    let value = json!({
        "same": all.is_empty(),
        "before": edition(&all.before),
        "after": edition(&all.after),
        "revisions": revisions.collect::<Vec<_>>(),
        "parts": parts.collect::<Vec<_>>(),
        "moved": moved.collect::<Vec<_>>(),
        "joints": joints.collect::<Vec<_>>(),
        "hardware": amounts(&all.goods.hardware),
        "stock": amounts(&all.goods.stock),
        "supplies": amounts(&all.goods.supplies),
        "cost": all.goods.cost.as_ref().map(|[before, after]| json!({
            "currency": after.currency,
            "cents": [before.cents, after.cents],
        })),
        "kilograms": all.goods.kg,
        "seconds": all.goods.seconds,
        "steps": steps.collect::<Vec<_>>(),
        "more_choices": all.more_choices,
        "fewer_choices": all.fewer_choices,
        "more_cautions": all.more_cautions,
        "fewer_cautions": all.fewer_cautions,
    });
    format!("{value:#}\n")
}

/// A length in both systems: exact millimetres, and as it is printed.
fn length(length: Length) -> Value {
    json!({ "mm": length.mm(), "printed": length.in_both() })
}

fn edition(edition: &Edition) -> Value {
    json!({ "title": edition.title, "revision": edition.mark, "date": edition.date })
}

fn face(face: &PartFace) -> Value {
    json!({
        "name": face.name,
        "title": face.title,
        "label": face.label,
        "pieces": face.pieces,
        "size": face.size.map(length),
        "material": face.material,
        "grain": if face.grain_along_length { "length" } else { "width" },
    })
}

fn joining(joining: &Joining) -> Value {
    let hardware = joining.hardware.iter();
    let hardware = hardware.map(|(title, count)| json!({ "title": title, "count": count }));
    json!({
        "kind": joining.kind.word(),
        "glued": joining.glued,
        "hardware": hardware.collect::<Vec<_>>(),
    })
}

fn words(words: &Passage) -> Value {
    match words {
        Passage::Same(text) => json!({ "same": text }),
        Passage::Gone(text) => json!({ "gone": text }),
        Passage::New(text) => json!({ "new": text }),
    }
}
