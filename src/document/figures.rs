//! Figures of the build: what it weighs, how it stands, what it carries, how it moves, and how
//! much of it is glued and finished.

use serde::Serialize;

use super::context::Facts;
use super::measure::Measure;
use super::wording::PartName;
use crate::behaviour::{Bending, Movement, NotJudged};
use crate::build::PlacedId;
use crate::units::{Length, newtons_in_both, square_metres_in_both, tenths_in_both};

/// The figures of the chapter.
#[derive(Clone, Debug, Serialize)]
pub(super) struct BuildFigures {
    parts: Vec<MassRow>,
    /// Mass of the whole; none where that of a piece is not known.
    mass: Option<String>,
    /// From the left, from the front and above the floor; empty where a mass is not known.
    centre: Vec<Measure>,
    standing: Option<StandingText>,
    loads: Vec<LoadText>,
    movements: Vec<MovementText>,
    /// Faces that are glued; none where nothing is.
    glue: Option<String>,
    /// The surface of all pieces.
    surface: Option<String>,
}

/// What the pieces of a part weigh.
#[derive(Clone, Debug, Serialize)]
struct MassRow {
    label: String,
    title: String,
    pieces: usize,
    each: String,
    all: String,
}

/// How it stands.
#[derive(Clone, Debug, Serialize)]
struct StandingText {
    /// The side it tips over most easily.
    towards: &'static str,
    degrees: String,
    /// The pull at its upper front edge that tips it.
    pull: String,
}

/// A load and what it does.
#[derive(Clone, Debug, Serialize)]
pub(super) struct LoadText {
    part: PartName,
    mass: String,
    /// In one place in the middle.
    at_middle: bool,
    /// None where nothing can be said.
    bends: Option<BendsText>,
    /// Why nothing can be said: `supports` or `species`.
    unknown: Option<&'static str>,
}

#[derive(Clone, Debug, Serialize)]
struct BendsText {
    span: Measure,
    first: String,
    lasting: String,
    limit: String,
}

/// How far pieces of one part move across their grain.
#[derive(Clone, Debug, PartialEq, Serialize)]
struct MovementText {
    part: PartName,
    size: Measure,
    change: String,
    /// Moisture content of the driest and the dampest time, per cent.
    moisture: [String; 2],
}

pub(super) fn of(facts: &Facts) -> BuildFigures {
    let behaviour = facts.behaviour;
    let area =
        |m2: f64| (m2 > 0.0 && m2.is_finite()).then(|| facts.figure(&square_metres_in_both(m2)));
    BuildFigures {
        parts: masses(facts),
        mass: behaviour.total_kg().map(|kg| facts.mass(kg)),
        centre: centre(facts),
        standing: behaviour.standing.map(|standing| StandingText {
            towards: standing.towards.word(),
            degrees: format!("{:.0}", standing.degrees),
            pull: facts.figure(&newtons_in_both(standing.front_pull_n)),
        }),
        loads: loads(facts),
        movements: movements(facts),
        glue: area(behaviour.glue_m2),
        surface: area(behaviour.surface_m2),
    }
}

/// Every part whose mass is known, in the order of the cut list's letters.
fn masses(facts: &Facts) -> Vec<MassRow> {
    let parts = facts.build.parts.iter().enumerate();
    let rows = parts.filter_map(|(index, part)| {
        let placed = facts.build.placed.iter().zip(&facts.behaviour.kg);
        let mine = placed.filter(|(piece, _)| piece.part.0 == index);
        let kg: Vec<f64> = mine.filter_map(|(_, kg)| *kg).collect();
        let each = *kg.first()?;
        Some(MassRow {
            label: part.label.clone(),
            title: part.title.clone(),
            pieces: kg.len(),
            each: facts.mass(each),
            all: facts.mass(kg.iter().sum()),
        })
    });
    rows.collect()
}

fn centre(facts: &Facts) -> Vec<Measure> {
    let centre = facts.behaviour.centre_mm.zip(facts.build.overall);
    let Some((centre, overall)) = centre else {
        return Vec::new();
    };
    let from = centre.into_iter().zip(overall);
    let lengths = from.map(|(at, reach)| whole_mm(at - reach.low.mm()));
    lengths.map(|length| facts.measure(length)).collect()
}

/// To the millimetre: the masses are averages.
fn whole_mm(mm: f64) -> Length {
    Length::from_mm_f64(mm.round())
}

fn piece_name(facts: &Facts, piece: PlacedId) -> Option<PartName> {
    PartName::of(facts, facts.build.piece(piece)?.part, 1)
}

/// The loads of the plan, those alike once.
pub(super) fn loads(facts: &Facts) -> Vec<LoadText> {
    let mut told = Vec::new();
    let mut texts = Vec::new();
    for sag in &facts.behaviour.sags {
        let Some(load) = facts.loads.get(sag.load) else {
            continue;
        };
        let Some(part) = piece_name(facts, sag.piece) else {
            continue;
        };
        let key = (part.label.clone(), load.kg.to_bits(), load.at_middle);
        if told.contains(&(key.clone(), sag.bending)) {
            continue;
        }
        told.push((key, sag.bending));
        texts.push(LoadText {
            part,
            mass: facts.mass(load.kg),
            at_middle: load.at_middle,
            bends: sag.bending.ok().map(|bending| bends(facts, &bending)),
            unknown: sag.bending.err().map(|why| match why {
                NotJudged::NoSupports => "supports",
                NotJudged::NoSpecies => "species",
            }),
        });
    }
    texts
}

fn bends(facts: &Facts, bending: &Bending) -> BendsText {
    BendsText {
        span: facts.measure(bending.span),
        first: facts.figure(&tenths_in_both(bending.first_mm)),
        lasting: facts.figure(&tenths_in_both(bending.lasting_mm)),
        limit: facts.figure(&tenths_in_both(bending.limit_mm)),
    }
}

/// Pieces that move half a millimetre or more, those alike once.
fn movements(facts: &Facts) -> Vec<MovementText> {
    const WORTH_TELLING_MM: f64 = 0.5;
    let mut texts: Vec<MovementText> = Vec::new();
    let all = facts.behaviour.movements.iter();
    for movement in all.filter(|movement| movement.change_mm >= WORTH_TELLING_MM) {
        let Some(text) = movement_text(facts, movement) else {
            continue;
        };
        let known = texts
            .iter_mut()
            .find(|known| known.part.label == text.part.label && known.size == text.size);
        match known {
            Some(known) => known.part.count += 1,
            None => texts.push(text),
        }
    }
    texts
}

fn movement_text(facts: &Facts, movement: &Movement) -> Option<MovementText> {
    Some(MovementText {
        part: piece_name(facts, movement.piece)?,
        size: facts.measure(movement.size),
        change: facts.figure(&tenths_in_both(movement.change_mm)),
        moisture: movement
            .moisture_percent
            .map(|percent| format!("{percent:.0}")),
    })
}
