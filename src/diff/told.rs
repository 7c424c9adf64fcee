//! A build as plain text that a line-by-line comparison can work on, and texts without their marks.

use std::fmt::Write;

use crate::build::{Build, Wording, WordingPiece};
use crate::geometry::Interval;

/// Words of a stretch that is the same kept on each side of what is not.
const KEPT: usize = 6;

/// A text with its figures in both systems and its parts by name.
pub(super) fn wording(build: &Build, text: &Wording) -> String {
    let mut said = String::new();
    for piece in &text.pieces {
        match piece {
            WordingPiece::Plain(text) | WordingPiece::Value(text) => said.push_str(text),
            // What the plan says by itself is no text of an author.
            WordingPiece::Message(_) => {}
            WordingPiece::Length(length) => {
                let precision = build.plan.precision;
                said.push_str(&length.printed(precision).both(precision));
            }
            WordingPiece::Part(part, count) => {
                let title = build.part(*part).map_or("", |part| &part.title);
                said.push_str(&counted(title, *count));
            }
            WordingPiece::Whole(group, count) => {
                let title = build.groups.get(group.0).map_or("", |group| &group.title);
                said.push_str(&counted(title, *count));
            }
        }
    }
    said
}

fn counted(title: &str, count: i64) -> String {
    if count > 1 {
        format!("{count} \u{d7} {title}")
    } else {
        title.to_owned()
    }
}

/// A stretch that is the same, its middle left out where it is long.
pub(super) fn in_words(text: &str, is_first: bool, is_last: bool) -> String {
    let words: Vec<&str> = text.split_inclusive(char::is_whitespace).collect();
    let most = if is_first || is_last { KEPT } else { 2 * KEPT };
    if words.len() <= most {
        return text.to_owned();
    }
    let begin: String = words.iter().take(KEPT).copied().collect();
    let end: String = words.iter().skip(words.len() - KEPT).copied().collect();
    match (is_first, is_last) {
        (true, _) => format!("\u{2026} {end}"),
        (_, true) => format!("{begin}\u{2026}"),
        _ => format!("{begin}\u{2026} {end}"),
    }
}

/// A build in lines, one thing a line, the same for the same build.
pub fn told(build: &Build) -> String {
    let mut out = String::new();
    // Writing to a string does not fail.
    let _ = tell(build, &mut out);
    out
}

fn tell(build: &Build, out: &mut String) -> std::fmt::Result {
    writeln!(out, "plan {}", build.plan.title)?;
    for revision in &build.plan.revisions {
        writeln!(
            out,
            "revision {} {} {}",
            revision.mark, revision.date, revision.note
        )?;
    }
    for part in build.parts.iter().filter(|part| part.pieces() > 0) {
        let [length, width, thickness] = part.size().map(|size| size.in_both());
        let material = build.material(part.material).map_or("", |it| &it.title);
        writeln!(
            out,
            "part {} {}: {} of {length} by {width} by {thickness}, {material}, {} cuts",
            part.name,
            part.title,
            part.pieces(),
            part.features.len()
        )?;
    }
    for piece in &build.placed {
        let [x, y, z] = piece.body.map(|stretch: Interval| stretch.low.in_both());
        writeln!(
            out,
            "piece {} at {x} across, {y} deep, {z} high",
            piece.name
        )?;
    }
    for joint in &build.joints {
        let name = |id| build.piece(id).map_or("", |piece| piece.name.as_str());
        writeln!(
            out,
            "joint {} to {}: {}, {} fasteners{}",
            name(joint.part),
            name(joint.to),
            joint.kind.in_words(),
            joint.fasteners.len(),
            if joint.glued { ", glued" } else { "" }
        )?;
    }
    for item in build.hardware.iter().filter(|item| item.count > 0) {
        writeln!(out, "hardware {}: {}", item.title, item.count)?;
    }
    for step in &build.steps {
        writeln!(out, "step {}", step.title)?;
        for text in step.says.iter().chain(&step.checks) {
            writeln!(out, "    {}", wording(build, text))?;
        }
    }
    Ok(())
}
