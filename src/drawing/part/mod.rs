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

use super::compose::{Studio, WIDTH_MM, framed};
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
            let drawn = part_figure(studio, id);
            let drawn = drawn.map(|figure| (name_of(own), figure));
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

/// The drawing of a part; none for a plain piece or one that has no solid.
pub(super) fn part_figure(studio: &Studio<'_>, id: PartId) -> Option<Figure> {
    let part = studio.build.part(id).filter(|part| is_drawn(part))?;
    let solid = studio.solids.part(id)?;
    let form = studio.build.material(part.material).map(|m| m.form);
    let round = matches!(form, Some(MaterialForm::Round { .. }));
    let views = views::needed(part, round);
    let drafting = Drafting::new(studio, part, &solid.fine, &views)?;
    let figure = |marks, reduction: u32| {
        let alternative = format!("{}, drawn to scale 1:{reduction}", part.title);
        framed(marks, alternative)
    };
    let fits = |reduction: &u32| {
        let figure = figure(drafting.marks(*reduction), *reduction);
        figure.width <= WIDTH_MM * PT_PER_MM && figure.height <= HEIGHT_MM * PT_PER_MM
    };
    let whole = |reduction: u32, room: Room| {
        figure(drafting.marks_with_sections(reduction, room), reduction)
    };
    // Small sections are sooner accepted than a small view.
    let mut figure = SCALES
        .into_iter()
        .filter(|reduction| drafting.width_mm(*reduction) < WIDTH_MM)
        .filter(fits)
        .flat_map(|reduction| [Room::Ample, Room::Scarce].map(|room| (reduction, room)))
        .map(|(reduction, room)| whole(reduction, room))
        .find(|figure| figure.height <= WITH_SECTIONS_MM * PT_PER_MM)
        .unwrap_or_else(|| whole(SMALLEST, Room::Scarce));
    figure.to_scale = true;
    Some(with_title_block(studio, id, figure))
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
    let right = (title_block::WIDTH - drawing.width).max(0.0) / 2.0;
    let top = drawing.height + OVER_BLOCK_MM * PT_PER_MM;
    let block = title_block::title_block(
        studio,
        part,
        [number, drawn().count()],
        Spot::new((drawing.width - title_block::WIDTH).max(0.0) / 2.0, top),
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
