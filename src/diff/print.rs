//! A difference for people.

use std::fmt::Write;

use super::joints::Joining;
use super::{Difference, Edition, Fate, PartChange, PartFace, Passage, StepChange};
use crate::build::JointKind;
use crate::geometry::Axis;
use crate::units::{Length, Mass};
use crate::words::Words;

/// What differs, in lines; one line where nothing does.
pub fn print(difference: &Difference) -> String {
    let mut out = String::new();
    // Writing to a string does not fail.
    let _ = write(difference, &mut out);
    out
}

fn write(all: &Difference, out: &mut String) -> std::fmt::Result {
    writeln!(out, "{} to {}", edition(&all.before), edition(&all.after))?;
    if all.is_empty() {
        return writeln!(out, "No change: what is built and how is the same.");
    }
    for revision in &all.revisions {
        writeln!(
            out,
            "  {} ({}): {}",
            revision.mark, revision.date, revision.note
        )?;
    }
    if all.before.title != all.after.title {
        writeln!(
            out,
            "\nTitle: {}, was {}",
            all.after.title, all.before.title
        )?;
    }
    if !all.parts.is_empty() {
        writeln!(out, "\nParts")?;
        for change in &all.parts {
            writeln!(out, "  {}", part(change))?;
        }
    }
    if !all.moved.is_empty() {
        writeln!(out, "\nMoved")?;
        for moved in &all.moved {
            let by: Vec<String> = moved.by.iter().map(|(axis, by)| way(*axis, *by)).collect();
            writeln!(out, "  {}: {}", moved.name, by.join(", "))?;
        }
    }
    if !all.joints.is_empty() {
        writeln!(out, "\nJoints")?;
        for change in &all.joints {
            let [part, to] = &change.pieces;
            writeln!(
                out,
                "  {part} to {to}: {}, was {}",
                joined(&change.after),
                joined(&change.before)
            )?;
        }
    }
    goods(all, out)?;
    if !all.steps.is_empty() {
        writeln!(out, "\nSteps")?;
        for change in &all.steps {
            step(change, out)?;
        }
    }
    let words = Words::english();
    let hazards = |ids: &[&str]| -> Vec<String> {
        let ids = ids.iter();
        ids.map(|id| words.word(&format!("caution-{id}"), &[]))
            .collect()
    };
    for (title, list) in [
        ("Choices that are new", &all.more_choices),
        ("Choices that are gone", &all.fewer_choices),
        ("Cautions that are new", &hazards(&all.more_cautions)),
        ("Cautions that are gone", &hazards(&all.fewer_cautions)),
    ] {
        if !list.is_empty() {
            writeln!(out, "\n{title}: {}", list.join(", "))?;
        }
    }
    Ok(())
}

/// "Shelf, revision B of 2026-03-01".
fn edition(edition: &Edition) -> String {
    if edition.mark.is_empty() {
        return edition.title.clone();
    }
    format!(
        "{}, revision {} of {}",
        edition.title, edition.mark, edition.date
    )
}

/// "Shelf (B): 880 mm (about 34-5/8 in) long, was 876 mm …; must be made anew".
fn part(change: &PartChange) -> String {
    let (Some(before), Some(after)) = (&change.before, &change.after) else {
        let (face, verb) = match (&change.before, &change.after) {
            (None, Some(face)) => (face, "new"),
            (Some(face), _) => (face, "gone"),
            (None, None) => return String::new(),
        };
        return format!(
            "{}: {verb}, {} of {}",
            named(face),
            face.pieces,
            sizes(face)
        );
    };
    let mut told = Vec::new();
    if before.name != after.name {
        told.push(format!(
            "called `{}` in the source, was `{}`",
            after.name, before.name
        ));
    }
    if before.title != after.title {
        told.push(format!("named {}, was {}", after.title, before.title));
    }
    if before.label != after.label {
        told.push(format!("letter {}, was {}", after.label, before.label));
    }
    let words = ["long", "wide", "thick"];
    for ((word, was), is) in words.iter().zip(before.size).zip(after.size) {
        if was != is {
            told.push(format!("{} {word}, was {}", is.in_both(), was.in_both()));
        }
    }
    if before.material != after.material {
        told.push(format!("of {}, was {}", after.material, before.material));
    }
    if before.grain_along_length != after.grain_along_length {
        let along = |face: &PartFace| {
            if face.grain_along_length {
                "length"
            } else {
                "width"
            }
        };
        told.push(format!(
            "grain along its {}, was along its {}",
            along(after),
            along(before)
        ));
    }
    if before.pieces != after.pieces {
        told.push(format!("{} pieces, were {}", after.pieces, before.pieces));
    }
    if change.cut_otherwise {
        told.push("cut or drilled otherwise".to_owned());
    }
    if change.fate != Fate::Serves {
        told.push(change.fate.advice().to_owned());
    }
    format!("{}: {}", named(after), told.join("; "))
}

fn named(face: &PartFace) -> String {
    format!("{} ({})", face.title, face.label)
}

fn sizes(face: &PartFace) -> String {
    let sizes: Vec<String> = face.size.iter().map(|size| size.in_both()).collect();
    sizes.join(" by ")
}

/// "20 mm (about 25/32 in) up".
fn way(axis: Axis, by: Length) -> String {
    let towards = if by > Length::ZERO {
        axis.high()
    } else {
        axis.low()
    };
    let word = match towards.word() {
        "top" => "up",
        "bottom" => "down",
        "back" => "to the back",
        "front" => "to the front",
        "left" => "to the left",
        _ => "to the right",
    };
    format!("{} {word}", by.abs().in_both())
}

/// "dado, glued".
fn joined(list: &[Joining]) -> String {
    if list.is_empty() {
        return "not joined".to_owned();
    }
    let words = list.iter().map(|joining| {
        let mut words = joining.kind.in_words();
        for (title, count) in &joining.hardware {
            words.push_str(&format!(" with {count} \u{d7} {title}"));
        }
        let glue_alone = matches!(joining.kind, JointKind::Glue | JointKind::Lamination);
        if joining.glued && !glue_alone {
            words.push_str(", glued");
        }
        words
    });
    words.collect::<Vec<_>>().join(" and ")
}

fn goods(all: &Difference, out: &mut String) -> std::fmt::Result {
    let goods = &all.goods;
    if goods.is_empty() {
        return Ok(());
    }
    writeln!(out, "\nTo buy and to carry")?;
    for amount in goods
        .stock
        .iter()
        .chain(&goods.hardware)
        .chain(&goods.supplies)
    {
        let [before, after] = amount.count;
        writeln!(out, "  {}: {after}, were {before}", amount.title)?;
    }
    if let Some([before, after]) = &goods.cost {
        writeln!(out, "  cost: {}, was {}", after.printed(), before.printed())?;
    }
    if let Some(kg) = goods.kg {
        let [before, after] = kg.map(|kg| Mass::from_kg_f64(kg).in_both());
        writeln!(out, "  mass: {after}, was {before}")?;
    }
    if let Some(seconds) = goods.seconds {
        let [before, after] = seconds.map(|seconds| (seconds + 30) / 60);
        writeln!(out, "  time: {after} min, was {before} min")?;
    }
    Ok(())
}

fn step(change: &StepChange, out: &mut String) -> std::fmt::Result {
    match (&change.before, &change.after) {
        (None, Some((number, title))) => return writeln!(out, "  {number} {title}: new"),
        (Some((number, title)), None) => {
            return writeln!(out, "  {title}: gone, was step {number}");
        }
        (Some((_, was)), Some((number, title))) if was != title => {
            writeln!(out, "  {number} {title}, was {was}")?;
        }
        (_, Some((number, title))) => writeln!(out, "  {number} {title}")?,
        (None, None) => return Ok(()),
    }
    for (word, names) in [
        ("comes in here", &change.more),
        ("no longer comes in here", &change.fewer),
    ] {
        if !names.is_empty() {
            writeln!(out, "    {word}: {}", names.join(", "))?;
        }
    }
    if let Some(seconds) = change.seconds {
        let [before, after] = seconds.map(|one| {
            one.map_or_else(
                || "none".to_owned(),
                |seconds| format!("{} min", (seconds + 30) / 60),
            )
        });
        writeln!(out, "    time: {after}, was {before}")?;
    }
    if !change.words.is_empty() {
        let text: String = change.words.iter().map(marked).collect();
        for line in text.lines() {
            writeln!(out, "    {line}")?;
        }
    }
    Ok(())
}

/// What is gone in square brackets with a minus, what is new in braces with a plus.
fn marked(words: &Passage) -> String {
    let wrapped = |open: &str, text: &str, close: &str| {
        let inside = text.trim_end();
        let after = text.get(inside.len()..).unwrap_or("");
        format!("{open}{inside}{close}{after}")
    };
    match words {
        Passage::Same(text) => text.clone(),
        Passage::Gone(text) => wrapped("[-", text, "-]"),
        Passage::New(text) => wrapped("{+", text, "+}"),
    }
}
