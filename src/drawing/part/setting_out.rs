//! Setting out a grid of holes: where the first one is, the pitches, and what proves it square.
//!
//! Plain outline of the side, the two edges that all is measured from drawn strong and named,
//! sizes in rows along one of them and in columns along the other. The triangle that proves the
//! grid lies on its holes; its long side and the diagonal of the whole grid have their figures on
//! the free side of the outline, on leaders that run between the holes.

use super::super::bodies::length;
use super::super::compose::{Studio, area_around, framed};
use super::super::grid::Bounds;
use super::super::pens::second_dimension;
use super::super::picture::Sheet;
use super::super::view::View;
use super::SMALLEST;
use super::dimension_rows::Lettering;
use super::grid_sheet::Laid;
use super::tags::{extent, plane};
use super::views::seen_from;
use crate::build::Part;
use crate::display::{Figure, Mark, PT_PER_MM, Spot};
use crate::geometry::{PartAxis, PlanePoint, Region, Side};
use crate::model::{FeatureShape, GridPattern, Holes, PartId, ProofTriangle};
use crate::text::{Anchor, text_mark};
use crate::units::Length;

/// A setting-out drawing is no higher than this, in millimetres.
const HEIGHT_MM: f64 = 125.0;

/// Names of the setting-out drawings of a part: one for each feature, where it has one.
pub fn setting_out_names(part: &Part) -> Vec<Option<String>> {
    let is_set_out = |shape: &FeatureShape| matches!(shape, FeatureShape::Holes(Holes { grid: Some(grid), .. }) if grid.is_set_out());
    let shapes = part.features.iter().map(|feature| &feature.shape);
    let several = shapes.clone().filter(|shape| is_set_out(shape)).count() > 1;
    let mut number = 0;
    let name = |shape| {
        is_set_out(shape).then(|| {
            number += 1;
            let label = &part.label;
            if several {
                format!("setting-out-{label}-{number}")
            } else {
                format!("setting-out-{label}")
            }
        })
    };
    shapes.map(name).collect()
}

/// The setting-out drawings of a part, by their names.
pub(in crate::drawing) fn setting_out_figures(
    studio: &Studio<'_>,
    id: PartId,
) -> Vec<(String, Figure)> {
    let Some(part) = studio.build.part(id) else {
        return Vec::new();
    };
    let named = part.features.iter().zip(setting_out_names(part));
    let drawn = named.filter_map(|(feature, name)| {
        let FeatureShape::Holes(holes) = &feature.shape else {
            return None;
        };
        let setting = Setting::of(studio, part, holes)?;
        Some((name?, setting.figure()))
    });
    drawn.collect()
}

/// A grid on its way to paper.
pub(super) struct Setting<'s> {
    studio: &'s Studio<'s>,
    pub(super) lettering: Lettering<'s>,
    pub(super) part: &'s Part,
    pub(super) holes: &'s Holes,
    pub(super) grid: GridPattern,
    pub(super) proof: ProofTriangle,
    pub(super) diagonal: Length,
    pub(super) view: View,
    pub(super) outline: Region,
    bounds: Bounds,
}

/// The side of a part as it is looked at, its first axis from left to right or the other way.
fn look_at(side: Side) -> View {
    match side.axis() {
        PartAxis::Thickness | PartAxis::Width => seen_from(side, side).view,
        PartAxis::Length => {
            let right = if side.is_high() { 1.0 } else { -1.0 };
            View::from_axes([0.0, right, 0.0], [0.0, 0.0, 1.0])
        }
    }
}

/// The outline of a side: what is sawn, without what is drilled and routed.
fn outline(part: &Part, side: Side) -> Region {
    let [x, y] = plane(side).map(|axis| extent(part, axis));
    let whole = Region::rectangle(x, y);
    if side.axis() != PartAxis::Thickness {
        return whole;
    }
    let mut sawn = whole;
    let mut notches = Vec::new();
    for feature in &part.features {
        match &feature.shape {
            FeatureShape::Outline(contour) => sawn = Region::contour(contour),
            FeatureShape::Notch {
                along_length,
                along_width,
            } => notches.push(Region::rectangle(*along_length, *along_width)),
            FeatureShape::Holes(_)
            | FeatureShape::Pocket(_)
            | FeatureShape::Arris { .. }
            | FeatureShape::PocketScrewHole(_)
            | FeatureShape::Slope(_)
            | FeatureShape::SplineSlot(_)
            | FeatureShape::Tenon(_) => {}
        }
    }
    sawn.without(&notches.iter().collect::<Vec<_>>())
}

impl<'s> Setting<'s> {
    fn of(studio: &'s Studio<'_>, part: &'s Part, holes: &'s Holes) -> Option<Self> {
        let grid = holes.grid.filter(GridPattern::is_set_out)?;
        let view = look_at(holes.side);
        let outline = outline(part, holes.side);
        let mut bounds = Bounds::NONE;
        for edge in outline.edges() {
            let [x, y] = seen(&view, holes.side, edge.from);
            bounds.take(x, y);
        }
        (!outline.is_empty()).then_some(Self {
            studio,
            lettering: Lettering {
                fonts: studio.fonts,
                precision: studio.precision(),
            },
            part,
            holes,
            grid,
            proof: grid.proof()?,
            diagonal: grid.diagonal()?,
            view,
            outline,
            bounds,
        })
    }

    /// What a reference edge is called in a drawing.
    pub(super) fn name(&self, side: Side) -> String {
        let side = side.word().into();
        self.studio.words.word("side", &[("side", side)])
    }

    fn figure(&self) -> Figure {
        let [first, second] = self.grid.references.map(|side| self.name(side));
        let title = &self.part.title;
        let figure = |reduction: u32| {
            let places = [
                ("title", title.as_str().into()),
                ("one", first.as_str().into()),
                ("other", second.as_str().into()),
            ];
            let told = self.studio.words.word("figure-setting-out", &places);
            framed(self.marks(reduction), told)
        };
        let width_mm = self.studio.frame.width_mm;
        let height_mm = self.studio.frame.height_mm(HEIGHT_MM);
        let fits = |figure: &Figure| {
            figure.width <= width_mm * PT_PER_MM && figure.height <= height_mm * PT_PER_MM
        };
        let [width, _] = self.bounds.size();
        let mut figure = self
            .studio
            .frame
            .reductions()
            .iter()
            .copied()
            .filter(|reduction| width < f64::from(*reduction) * width_mm * 1000.0)
            .map(figure)
            .find(fits)
            .unwrap_or_else(|| figure(SMALLEST));
        figure.to_scale = true;
        figure
    }

    fn marks(&self, reduction: u32) -> Vec<Mark> {
        let scale = PT_PER_MM / 1000.0 / f64::from(reduction);
        let sheet = Sheet::new(&self.bounds, scale, Spot::default());
        let size = self.bounds.size().map(|size| size * scale);
        let mut marks = Laid::new(self, sheet, size).marks();
        let area = area_around(&marks).unwrap_or_default();
        let text = self.studio.scale_line(reduction);
        let spot = Spot::new(area.x, area.y + area.height + 5.0 * PT_PER_MM);
        let style = second_dimension();
        let fonts = self.lettering.fonts;
        marks.push(text_mark(fonts, &style, Anchor::Start, spot, &text));
        marks
    }
}

/// A point of a side as seen, in micrometres.
pub(super) fn seen(view: &View, side: Side, at: PlanePoint) -> [f64; 2] {
    let mut point = [0.0; 3];
    for (axis, value) in plane(side).into_iter().zip([at.x, at.y]) {
        if let Some(slot) = point.get_mut(axis.index()) {
            *slot = length(value);
        }
    }
    let [x, y, _] = view.project(point);
    [x, y]
}
