//! `leafwright check FILE --figures`: what a build weighs, carries, moves and needs, in lines.

use std::fmt::Write;

use crate::behaviour::{Behaviour, NotJudged};
use crate::build::{Build, PlacedId};
use crate::road::Checked;
use crate::units::{Length, Mass, newtons_in_both, square_metres_in_both, tenths_in_both};

/// All figures of a sound build; empty where there is none.
pub(super) fn text(checked: &Checked) -> String {
    let mut text = String::new();
    if let Some(sound) = &checked.sound {
        let build = sound.build();
        masses(&mut text, build, &checked.behaviour);
        standing(&mut text, build, &checked.behaviour);
        loads(&mut text, build, checked);
        movements(&mut text, build, &checked.behaviour);
        areas(&mut text, &checked.behaviour);
    }
    text.replace('\u{a0}', " ")
}

/// A line under a heading. Writing into a text cannot fail.
fn line(text: &mut String, words: &str) {
    let _ = writeln!(text, "  {words}");
}

fn heading(text: &mut String, words: &str) {
    let _ = writeln!(text, "{words}");
}

fn name(build: &Build, piece: PlacedId) -> &str {
    build.piece(piece).map_or("", |piece| piece.name.as_str())
}

fn masses(text: &mut String, build: &Build, behaviour: &Behaviour) {
    heading(text, "Mass");
    for (index, part) in build.parts.iter().enumerate() {
        let placed = build.placed.iter().zip(&behaviour.kg);
        let mine: Vec<Option<f64>> = placed
            .filter(|(piece, _)| piece.part.0 == index)
            .map(|(_, kg)| *kg)
            .collect();
        let mass = match mine.first() {
            None => continue,
            Some(None) => "not known: its material states no density or species".to_owned(),
            Some(Some(kg)) => Mass::from_kg_f64(*kg).in_both(),
        };
        let count = mine.len();
        line(
            text,
            &format!("{:3} {:28} {count} x {mass}", part.label, part.title),
        );
    }
    if let Some(kg) = behaviour.total_kg() {
        let whole = Mass::from_kg_f64(kg).in_both();
        line(text, &format!("whole, without hardware: {whole}"));
    }
}

fn standing(text: &mut String, build: &Build, behaviour: &Behaviour) {
    if let (Some([x, y, z]), Some([across, deep, high])) = (behaviour.centre_mm, build.overall) {
        heading(text, "Centre of mass");
        for (at, low, from) in [
            (x, across.low, "from the left"),
            (y, deep.low, "from the front"),
            (z, high.low, "high"),
        ] {
            let at = Length::from_mm_f64((at - low.mm()).round());
            line(text, &format!("{} {from}", at.in_both()));
        }
    }
    if let Some(standing) = behaviour.standing {
        heading(text, "Standing free and empty");
        let (towards, degrees) = (standing.towards.word(), standing.degrees);
        line(
            text,
            &format!("tips most easily to the {towards}, by itself from {degrees:.1} degrees on"),
        );
        let pull = newtons_in_both(standing.front_pull_n);
        line(
            text,
            &format!("a pull of {pull} at its upper front edge tips it forward"),
        );
    }
}

fn loads(text: &mut String, build: &Build, checked: &Checked) {
    let sags = &checked.behaviour.sags;
    if !sags.is_empty() {
        heading(text, "Loads");
    }
    for sag in sags {
        let Some(load) = checked.loads.get(sag.load) else {
            continue;
        };
        let mass = Mass::from_kg_f64(load.kg).in_both();
        let place = if load.at_middle { " in the middle" } else { "" };
        let what = match sag.bending {
            Ok(bending) => format!(
                "over {} bends {} at first, {} after years, {} at most; stress {:.1} of {:.1} MPa",
                bending.span.in_both(),
                tenths_in_both(bending.first_mm),
                tenths_in_both(bending.lasting_mm),
                tenths_in_both(bending.limit_mm),
                bending.stress_mpa,
                bending.allowable_mpa,
            ),
            Err(NotJudged::NoSupports) => "not reckoned: no two supports".to_owned(),
            Err(NotJudged::NoSpecies) => "not reckoned: no species stated".to_owned(),
        };
        line(
            text,
            &format!("{} under {mass}{place}: {what}", name(build, sag.piece)),
        );
    }
}

fn movements(text: &mut String, build: &Build, behaviour: &Behaviour) {
    if let Some(first) = behaviour.movements.first() {
        let [dry, damp] = first.moisture_percent;
        let words = format!("Movement over the year, {dry:.1} to {damp:.1} % moisture");
        heading(text, &words);
    }
    for movement in &behaviour.movements {
        line(
            text,
            &format!(
                "{}: {} on {} across the grain",
                name(build, movement.piece),
                tenths_in_both(movement.change_mm),
                movement.size.in_both(),
            ),
        );
    }
}

fn areas(text: &mut String, behaviour: &Behaviour) {
    heading(text, "Areas");
    let glue = square_metres_in_both(behaviour.glue_m2);
    let surface = square_metres_in_both(behaviour.surface_m2);
    line(text, &format!("faces to be glued: {glue}"));
    line(text, &format!("surface to be finished: {surface}"));
}
