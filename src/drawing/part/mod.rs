//! Part drawings: each part that is more than a plain piece, to scale, for the bench.
//!
//! The views needed and no more, laid out by first- or third-angle projection; hidden edges
//! dashed, centre lines at holes, sizes from one end and one edge, and a number at each thing
//! that is cut into it, which the table beside the drawing explains. Blind features are shown in
//! sections under the views; a grid of holes has a setting-out drawing of its own.

mod angles;
mod cut_line;
pub(super) mod dimension_rows;
mod grid_sheet;
mod hatch;
mod planes;
mod section;
mod section_window;
mod setting_out;
mod sheet;
pub(super) mod symbol;
mod tags;
mod title_block;
pub(super) mod views;

use setting_out::setting_out_figures;
pub use setting_out::setting_out_names;

use rayon::iter::{IndexedParallelIterator, IntoParallelRefIterator, ParallelIterator};

use super::compose::{Studio, framed};
use crate::build::Part;
use crate::display::{Figure, Mark, PT_PER_MM, Spot};
use crate::model::{MaterialForm, PartId};
use section::Room;
use sheet::Drafting;

/// Standard reductions (ISO 5455, ref: units-and-paper, "Scales" [V]), and a last one.
pub(super) const SCALES: [u32; 6] = [1, 2, 5, 10, 20, 50];
pub(super) const SMALLEST: u32 = 100;
/// A part drawing is no higher than this, in millimetres: table and heading want room too.
const HEIGHT_MM: f64 = 120.0;
/// With its sections it is no higher than this: a page of either paper has room for it and its
/// heading.
const WITH_SECTIONS_MM: f64 = 184.0;
/// Between the views and the title block, in millimetres.
const OVER_BLOCK_MM: f64 = 5.0;

/// The drawings of all parts that are more than plain, and of their grids.
pub(in crate::drawing) fn part_drawings(studio: &Studio<'_>) -> Vec<(String, Figure)> {
    studio
        .build
        .parts
        .par_iter()
        .enumerate()
        .flat_map_iter(|(number, own)| {
            let id = PartId(number);
            let drawn = part_figures(studio, id, own);
            drawn.into_iter().chain(setting_out_figures(studio, id))
        })
        .collect()
}

/// True for a part that has more to it than its three sizes.
pub(super) fn is_drawn(part: &Part) -> bool {
    !part.features.is_empty()
}

/// The name of a part's drawing.
pub(super) fn name_of(part: &Part) -> String {
    format!("part-{}", part.label)
}

/// The drawing of a part, and on a page that is too small for both its sections by themselves; none
/// for a plain piece or one that has no solid.
fn part_figures(studio: &Studio<'_>, id: PartId, part: &Part) -> Vec<(String, Figure)> {
    let Some(solid) = studio.solids.part(id).filter(|_| is_drawn(part)) else {
        return Vec::new();
    };
    let form = studio.build.material(part.material).map(|m| m.form);
    let round = matches!(form, Some(MaterialForm::Round { .. }));
    let views = views::needed(part, round);
    let Some(drafting) = Drafting::new(studio, part, &solid.fine, &views) else {
        return Vec::new();
    };
    let whole = |figure| (name_of(part), with_title_block(studio, id, figure));
    let frame = studio.frame;
    if !frame.is_narrow() {
        let figure = with_sections(studio, part, &drafting);
        let most = frame.height_mm(WITH_SECTIONS_MM) * PT_PER_MM;
        if figure.height <= most || !frame.on_screen {
            return vec![whole(figure)];
        }
    }
    let (reduction, views) = views_alone(studio, part, &drafting);
    let sections = drafting.section_blocks(reduction, Room::Scarce);
    let sections = drafting.section_letters().zip(sections);
    let sections = sections.map(|(letter, marks)| {
        let alternative = format!("{}, section {letter}", part.title);
        (
            format!("section-{}-{letter}", part.label),
            framed(marks, alternative),
        )
    });
    [whole(views)].into_iter().chain(sections).collect()
}

/// The views of a part without its sections, and their reduction.
fn views_alone(studio: &Studio<'_>, part: &Part, drafting: &Drafting<'_>) -> (u32, Figure) {
    let frame = studio.frame;
    let figure = |reduction: u32| {
        let alternative = format!("{}, drawn to scale 1:{reduction}", part.title);
        (reduction, framed(drafting.marks(reduction), alternative))
    };
    let fits = |(_, figure): &(u32, Figure)| {
        figure.width <= frame.width_mm * PT_PER_MM
            && figure.height <= frame.height_mm(HEIGHT_MM) * PT_PER_MM
    };
    let mut found = frame
        .reductions()
        .iter()
        .filter(|reduction| drafting.width_mm(**reduction) < frame.width_mm)
        .map(|reduction| figure(*reduction))
        .find(fits)
        .unwrap_or_else(|| figure(SMALLEST));
    found.1.to_scale = true;
    found
}

/// The views of a part over its sections.
fn with_sections(studio: &Studio<'_>, part: &Part, drafting: &Drafting<'_>) -> Figure {
    let figure = |marks, reduction: u32| {
        let places = [
            ("title", part.title.as_str().into()),
            ("label", part.label.as_str().into()),
        ];
        let told = studio.words.word("figure-part", &places);
        let scale = studio.scale_line(reduction);
        framed(marks, format!("{told}. {scale}"))
    };
    let frame = studio.frame;
    let width_mm = frame.width_mm;
    let fits = |reduction: &u32| {
        let figure = figure(drafting.marks(*reduction), *reduction);
        figure.width <= width_mm * PT_PER_MM
            && figure.height <= frame.height_mm(HEIGHT_MM) * PT_PER_MM
    };
    let whole = |reduction: u32, room: Room| {
        figure(drafting.marks_with_sections(reduction, room), reduction)
    };
    // Small sections are sooner accepted than a small view.
    let mut figure = studio
        .frame
        .reductions()
        .iter()
        .copied()
        .filter(|reduction| drafting.width_mm(*reduction) < width_mm)
        .filter(fits)
        .flat_map(|reduction| [Room::Ample, Room::Scarce].map(|room| (reduction, room)))
        .map(|(reduction, room)| whole(reduction, room))
        .find(|figure| figure.height <= frame.height_mm(WITH_SECTIONS_MM) * PT_PER_MM)
        .unwrap_or_else(|| whole(SMALLEST, Room::Scarce));
    figure.to_scale = true;
    figure
}

/// A drawing in the middle over its title block.
fn with_title_block(studio: &Studio<'_>, id: PartId, drawing: Figure) -> Figure {
    let Some(part) = studio.build.part(id) else {
        return drawing;
    };
    let drawn = || studio.build.parts.iter().filter(|part| is_drawn(part));
    let number = drawn()
        .take_while(|other| other.label != part.label)
        .count()
        + 1;
    let width = title_block::width(&studio.frame);
    let right = (width - drawing.width).max(0.0) / 2.0;
    let top = drawing.height + OVER_BLOCK_MM * PT_PER_MM;
    let block = title_block::title_block(
        studio,
        part,
        [number, drawn().count()],
        Spot::new((drawing.width - width).max(0.0) / 2.0, top),
    );
    let mut marks: Vec<Mark> = drawing
        .marks
        .into_iter()
        .map(|mark| mark.shifted(right, 0.0))
        .collect();
    marks.extend(block);
    Figure {
        to_scale: drawing.to_scale,
        ..framed(marks, drawing.alternative)
    }
}
