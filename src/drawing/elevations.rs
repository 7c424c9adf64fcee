//! The whole piece from the front, from its right side and from above, to a standard scale, with
//! its overall sizes.

use super::chains::{Stretch, chain};
use super::compose::{Studio, area_around, framed};
use super::curves;
use super::grid::Bounds;
use super::hidden_lines::{VisibleLine, drawn_lines};
use super::part::SMALLEST;
use super::part::dimension_rows::{Lettering, Size, height_of};
use super::part::symbol::{self, symbol};
use super::part::views::sign;
use super::pens::{MEDIUM_MM, line, second_dimension};
use super::picture::Sheet;
use super::scene::Scene;
use super::view::View;
use super::whole::in_place;
use crate::display::{Figure, Mark, PT_PER_MM, Path, Spot, Tone};
use crate::text::{Anchor, text_mark};
use crate::units::Length;

/// The figure is no higher than this, in millimetres.
const HEIGHT_MM: f64 = 190.0;
/// Between two views, in millimetres.
const GAP_MM: f64 = 12.0;

/// Between the figures of one view and another view, in millimetres.
const CLEAR_MM: f64 = 6.0;

/// A view of the whole.
struct Elevation {
    view: View,
    lines: Vec<VisibleLine>,
    bounds: Bounds,
}

impl Elevation {
    fn of(scene: &Scene, towards: [i64; 3]) -> Self {
        let view = View::from_direction(towards);
        let lines = drawn_lines(scene, &view);
        let mut bounds = Bounds::NONE;
        for [x, y] in lines.iter().flat_map(|line| line.ends) {
            bounds.take(x, y);
        }
        Self {
            view,
            lines,
            bounds,
        }
    }

    fn marks(&self, scene: &Scene, sheet: &Sheet) -> Mark {
        let stretches: Vec<Stretch> = self
            .lines
            .iter()
            .map(|line| Stretch {
                ends: line.ends,
                round: scene.edges.get(line.edge).and_then(|edge| edge.round),
            })
            .collect();
        let mut path = Path::default();
        for chain in chain(&stretches) {
            let own = curves::path(&chain, &scene.rounds, &self.view, sheet);
            path.pieces.extend(own.pieces);
        }
        Mark::Stroke {
            path,
            pen: line(MEDIUM_MM, Tone::BLACK),
        }
    }
}

/// The three views; none of a build that has no size.
pub(super) fn elevations(studio: &Studio<'_>, alternative: &str) -> Option<Figure> {
    let sizes = studio.build.overall?.map(crate::geometry::Interval::size);
    let scene = in_place(studio);
    let look = |towards| Elevation::of(&scene, towards);
    let (front, (side, top)) = rayon::join(
        || look([0, -1, 0]),
        || rayon::join(|| look([1, 0, 0]), || look([0, 0, 1])),
    );
    let views = [front, side, top];
    if views.iter().any(|view| view.lines.is_empty()) {
        return None;
    }
    let figure = |reduction| {
        framed(
            laid_out(studio, &scene, &views, sizes, reduction),
            alternative.into(),
        )
    };
    let width_mm = studio.frame.width_mm;
    let height_mm = studio.frame.height_mm(HEIGHT_MM);
    let fits = |figure: &Figure| {
        figure.width <= width_mm * PT_PER_MM && figure.height <= height_mm * PT_PER_MM
    };
    let mut figure = studio
        .frame
        .reductions()
        .iter()
        .copied()
        .filter(|reduction| views[0].bounds.size()[0] < f64::from(*reduction) * width_mm * 1000.0)
        .map(figure)
        .find(fits)
        .unwrap_or_else(|| figure(SMALLEST));
    figure.to_scale = true;
    Some(figure)
}

fn laid_out(
    studio: &Studio<'_>,
    scene: &Scene,
    [front, side, top]: &[Elevation; 3],
    [width, depth, height]: [Length; 3],
    reduction: u32,
) -> Vec<Mark> {
    let scale = PT_PER_MM / 1000.0 / f64::from(reduction);
    let paper = |view: &Elevation| view.bounds.size().map(|size| size * scale);
    let ([w, h], [side_width, _], [_, top_height]) = (paper(front), paper(side), paper(top));
    let lettering = Lettering {
        fonts: studio.fonts,
        precision: studio.precision(),
    };
    let size = |end: f64, length: Length| [Size { end, length }];
    // What is seen from the right stands on the right in third angle, opposite in first angle.
    let sign = sign(studio.build.plan.projection());
    let down = sign;
    // The figures of a narrow side reach out beside it: nothing else may stand there.
    let own = lettering.rows(&size(side_width, depth), 0.0, 0.0, down, 0.0);
    let beside = area_around(&own).map_or(0.0, |area| {
        if sign > 0.0 {
            -area.x
        } else {
            area.x + area.width - side_width
        }
    });
    let gap = (GAP_MM * PT_PER_MM).max(beside + CLEAR_MM * PT_PER_MM);
    let side_at = if sign > 0.0 {
        w + gap
    } else {
        -gap - side_width
    };
    let top_at = if sign > 0.0 {
        -gap - top_height
    } else {
        h + gap
    };
    let places = [(front, 0.0, 0.0), (side, side_at, 0.0), (top, 0.0, top_at)];
    let mut marks: Vec<Mark> = places
        .into_iter()
        .map(|(view, x, y)| view.marks(scene, &Sheet::new(&view.bounds, scale, Spot::new(x, y))))
        .collect();
    // The width where no view stands next to the front, the height likewise, the depth at the side.
    let edge = if down > 0.0 { h } else { 0.0 };
    marks.extend(lettering.rows(&size(w, width), 0.0, edge, down, 0.0));
    marks.extend(lettering.rows(&size(side_width, depth), side_at, edge, down, 0.0));
    let x = if sign > 0.0 { 0.0 } else { w };
    marks.extend(lettering.columns(&size(h, height), h, 1.0, x, -sign));
    let below = if down > 0.0 {
        h + height_of(1)
    } else {
        top_at + top_height
    };
    let middle = below + 4.0 * PT_PER_MM + symbol::HEIGHT / 2.0;
    marks.extend(symbol(
        studio.build.plan.projection(),
        Spot::new(0.0, middle),
    ));
    let spot = Spot::new(symbol::WIDTH + 8.0, middle + 3.0);
    let text = studio.scale_line(reduction);
    marks.push(text_mark(
        studio.fonts,
        &second_dimension(),
        Anchor::Start,
        spot,
        &text,
    ));
    marks
}
