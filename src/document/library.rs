//! The page of a library: what it holds, with drawings of each of its sub-assemblies.

use std::collections::BTreeMap;

use serde::Serialize;

use super::hardware::{HardwareSize, size};
use super::measure::Measure;
use super::render;
use super::templates::{LIBRARY, Templates};
use super::tree::Document;
use crate::build::Build;
use crate::display::{Figure, Mark};
use crate::finding::Outcome;
use crate::units::Precision;
use crate::words::Words;

/// What a library says of itself.
#[derive(Clone, Debug, Default, Serialize)]
pub struct LibraryHead {
    /// Its printed name.
    pub title: String,
    /// Its version, as its author counts.
    pub version: String,
    /// The first language that has all it is written in.
    pub language: String,
    /// Who made it.
    pub author: String,
    /// What it is.
    pub about: String,
}

/// A sub-assembly of a library, made with some values.
#[derive(Clone, Debug)]
pub struct WholeShown<'a> {
    /// Its name in the source.
    pub name: String,
    /// What it is given.
    pub formals: Vec<FormalShown>,
    /// A build of it alone.
    pub build: &'a Build,
}

/// A parameter of a sub-assembly; values as they are written.
#[derive(Clone, Debug, Serialize)]
pub struct FormalShown {
    /// Its name.
    pub name: String,
    /// Its kind, as it is written.
    pub kind: String,
    /// Its value where none is given.
    pub preset: Option<String>,
    /// The least and the greatest value.
    pub range: Option<[String; 2]>,
    /// The value it is drawn with, where that is not its own.
    pub shown: Option<String>,
}

/// The page of a library: its sub-assemblies, and those of the goods of a build that have the
/// library's `names`.
///
/// `figures` are named `overview-` and `exploded-` and the sub-assembly's name. Findings: the P family
/// in [`findings`](super::findings).
pub fn library(
    head: &LibraryHead,
    wholes: &[WholeShown<'_>],
    (goods, names): (&Build, &[String]),
    figures: BTreeMap<String, Figure>,
    templates: &Templates,
) -> Outcome<Document> {
    let mut figures = figures;
    for figure in figures.values_mut() {
        // The letters of one drawing are not those of another.
        figure
            .marks
            .retain(|mark| !matches!(mark, Mark::Link { .. }));
    }
    let context = LibraryContext::of(head, wholes, (goods, names), &figures, templates.words());
    let document = templates.document(&head.title, &head.author);
    let things = names.len() + wholes.iter().map(|it| it.build.parts.len()).sum::<usize>();
    let read = render::alone(templates, LIBRARY, &context, things, &figures);
    render::filled(document, read, figures, goods.plan.span)
}

/// All that the template sees.
#[derive(Clone, Debug, Serialize)]
pub(super) struct LibraryContext {
    metric_first: bool,
    /// The language, as a BCP 47 tag.
    words: String,
    library: LibraryHead,
    wholes: Vec<WholeText>,
    materials: Vec<MaterialText>,
    hardware: Vec<HardwareText>,
    supplies: Vec<SupplyText>,
}

#[derive(Clone, Debug, Serialize)]
struct WholeText {
    name: String,
    title: String,
    formals: Vec<FormalShown>,
    /// Width, depth and height as drawn.
    overall: Vec<Measure>,
    parts: Vec<PartText>,
    /// The figure of the whole, by its name.
    overview: Option<String>,
    /// The figure of its parts, drawn apart.
    exploded: Option<String>,
}

#[derive(Clone, Debug, Serialize)]
struct PartText {
    label: String,
    title: String,
    pieces: i64,
    size: Vec<Measure>,
    material: String,
}

#[derive(Clone, Debug, Serialize)]
struct MaterialText {
    name: String,
    title: String,
    thickness: Measure,
    species: Option<String>,
}

#[derive(Clone, Debug, Serialize)]
struct HardwareText {
    name: String,
    title: String,
    size: HardwareSize,
}

#[derive(Clone, Debug, Serialize)]
struct SupplyText {
    name: String,
    title: String,
}

impl LibraryContext {
    fn of(
        head: &LibraryHead,
        wholes: &[WholeShown<'_>],
        (goods, names): (&Build, &[String]),
        figures: &BTreeMap<String, Figure>,
        words: &Words,
    ) -> Self {
        let precision = goods.plan.precision.with_mark(words.decimal_mark());
        let fine = precision.fine();
        let is_own = |name: &String| names.contains(name);
        let materials = goods.materials.iter().filter(|it| is_own(&it.name));
        let hardware = goods.hardware.iter().filter(|it| is_own(&it.name));
        let supplies = goods.supplies.iter().filter(|it| is_own(&it.name));
        Self {
            metric_first: precision.metric_first,
            words: words.language().to_owned(),
            library: head.clone(),
            wholes: wholes
                .iter()
                .map(|whole| whole_text(whole, precision, figures))
                .collect(),
            materials: materials
                .map(|it| MaterialText {
                    name: it.name.clone(),
                    title: it.title.clone(),
                    thickness: Measure::of(it.thickness(), precision),
                    species: it.wood().map(|wood| wood.name().to_owned()),
                })
                .collect(),
            hardware: hardware
                .map(|it| HardwareText {
                    name: it.name.clone(),
                    title: it.title.clone(),
                    size: size(it, fine),
                })
                .collect(),
            supplies: supplies
                .map(|it| SupplyText {
                    name: it.name.clone(),
                    title: it.title.clone(),
                })
                .collect(),
        }
    }
}

fn whole_text(
    whole: &WholeShown<'_>,
    precision: Precision,
    figures: &BTreeMap<String, Figure>,
) -> WholeText {
    let build = whole.build;
    let sizes = build.overall.map(|stretches| stretches.map(|it| it.size()));
    let [overview, exploded] = ["overview", "exploded"].map(|kind| {
        let name = format!("{kind}-{}", whole.name);
        figures.contains_key(&name).then_some(name)
    });
    let title = build.groups.first().map(|group| group.title.clone());
    let parts = build.parts.iter().filter(|part| part.pieces() > 0);
    WholeText {
        name: whole.name.clone(),
        title: title.unwrap_or_else(|| whole.name.clone()),
        formals: whole.formals.clone(),
        overall: Measure::all(sizes.as_ref().map_or(&[], |it| &it[..]), precision),
        parts: parts
            .map(|part| PartText {
                label: part.label.clone(),
                title: part.title.clone(),
                pieces: part.pieces(),
                size: Measure::all(&part.size(), precision),
                material: build
                    .material(part.material)
                    .map_or_else(String::new, |it| it.title.clone()),
            })
            .collect(),
        overview,
        exploded,
    }
}
