//! Full-size templates: what each one is of, how large it is, and the sheets it is printed on.

use std::collections::BTreeMap;

use serde::Serialize;

use super::context::Facts;
use super::measure::Measure;
use super::render;
use super::templates::{SHEETS, Templates};
use super::tree::Document;
use crate::build::{Build, Part, Revision};
use crate::display::Figure;
use crate::drawing::{sheet_name, template_name};
use crate::finding::Outcome;
use crate::full_size::{self, Laid, Sheets};
use crate::solid::Solids;
use crate::units::Precision;

/// A template and its sheets.
#[derive(Clone, Debug, Serialize)]
pub(super) struct FullSize {
    /// The name of its place.
    id: String,
    label: String,
    title: String,
    side: &'static str,
    /// Width and height as it lies on paper.
    size: Vec<Measure>,
    /// What its sheets are called: A4, Tabloid.
    paper: &'static str,
    rows: usize,
    columns: usize,
    /// Sheets that nothing is on, and that are not printed.
    left_out: usize,
    sheets: Vec<SheetText>,
}

/// A sheet that is printed.
#[derive(Clone, Debug, Serialize)]
struct SheetText {
    figure: String,
    row: usize,
    column: usize,
}

/// Every template of the plan that has sheets.
pub(super) fn of(facts: &Facts, solids: &Solids) -> Vec<FullSize> {
    let laid = full_size::templates(facts.build, solids);
    told_of(facts.build, &laid, facts.figures, facts.precision())
}

/// Templates whose sheets are drawn.
fn told_of(
    build: &Build,
    laid: &[Laid],
    figures: &BTreeMap<String, Figure>,
    precision: Precision,
) -> Vec<FullSize> {
    let told = laid.iter().filter_map(|laid| {
        let part = build.part(laid.template.part)?;
        Some(told(precision, part, laid, laid.sheets.as_ref()?))
    });
    told.filter(|told| {
        let is_drawn = |sheet: &SheetText| figures.contains_key(&sheet.figure);
        told.sheets.iter().all(is_drawn)
    })
    .collect()
}

/// What the template of full-size templates alone sees.
#[derive(Clone, Debug, Serialize)]
pub(super) struct SheetsContext {
    /// The language, as a BCP 47 tag.
    language: String,
    /// The newest revision; none where the plan has none.
    revision: Option<Revision>,
    full_size: Vec<FullSize>,
}

/// Full-size templates alone: a document of their sheets, whose figures are `figures`.
///
/// Findings: the P family in [`findings`](super::findings), at the plan's block.
pub fn template_sheets(
    build: &Build,
    laid: &[Laid],
    figures: BTreeMap<String, Figure>,
    templates: &Templates,
) -> Outcome<Document> {
    let words = templates.words();
    let precision = build.plan.precision.with_mark(words.decimal_mark());
    let context = SheetsContext {
        language: words.language().to_owned(),
        revision: build.plan.newest().cloned(),
        full_size: told_of(build, laid, &figures, precision),
    };
    let document = templates.document(&build.plan.title, &build.plan.author);
    let read = render::alone(templates, SHEETS, &context, figures.len(), &figures);
    render::filled(document, read, figures, build.plan.span)
}

fn told(precision: Precision, part: &Part, laid: &Laid, sheets: &Sheets) -> FullSize {
    let printed: Vec<SheetText> = sheets
        .printed()
        .map(|tile| SheetText {
            figure: sheet_name(part, laid, tile),
            row: tile.row,
            column: tile.column,
        })
        .collect();
    FullSize {
        id: template_name(part, laid),
        label: part.label.clone(),
        title: part.title.clone(),
        side: laid.template.side.word(),
        size: Measure::all(&laid.size(), precision),
        paper: sheets.page.sheet.title(),
        rows: sheets.rows,
        columns: sheets.columns,
        left_out: sheets.tiles.len() - printed.len(),
        sheets: printed,
    }
}

/// The templates of a part: the names of their places and their sides.
pub(super) fn of_part(all: &[FullSize], label: &str) -> Vec<PartTemplate> {
    let own = all.iter().filter(|template| template.label == label);
    own.map(|template| PartTemplate {
        id: template.id.clone(),
        side: template.side,
    })
    .collect()
}

/// Where a part's template is.
#[derive(Clone, Debug, Serialize)]
pub(super) struct PartTemplate {
    id: String,
    side: &'static str,
}
