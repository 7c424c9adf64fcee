//! A template laid on paper: what of a side is shown, turned so that it takes as few sheets as can be.

use super::outline;
use super::seen::Seen;
use super::tiling::{self, Sheets};
use super::{LARGEST_MM2, LONGEST};
use crate::build::{Build, Paper, Part, Template};
use crate::geometry::{Interval, PlanePoint, Region};
use crate::model::{FeatureShape, Holes, Sheet};
use crate::solid::{Shell, Solids};
use crate::units::Length;

/// The middle of a hole that is drilled from the side or comes out of it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Cross {
    /// Where, as the side is seen.
    pub at: PlanePoint,
    /// Half of its widest diameter.
    pub radius: Length,
}

/// A template, laid on paper.
#[derive(Clone, Debug)]
pub struct Laid {
    /// What was asked for.
    pub template: Template,
    /// How the side is seen on paper.
    pub seen: Seen,
    /// Its outline.
    pub outline: Region,
    /// How far the outline reaches along the lines of print and across them.
    pub reach: [Interval; 2],
    /// Middles of holes.
    pub crosses: Vec<Cross>,
    /// Edges of the side that are no edge of its outline: of channels, recesses, broken arrises.
    pub edges: Vec<[PlanePoint; 2]>,
    /// The sheets; none where there would be too many of them, or the one that is asked for is too
    /// small.
    pub sheets: Option<Sheets>,
}

impl Laid {
    /// Width and height of the outline as it is seen.
    pub fn size(&self) -> [Length; 2] {
        self.reach.map(Interval::size)
    }

    /// True where the outline is a plain rectangle and nothing is marked on it.
    pub fn shows_nothing(&self) -> bool {
        let plain = self.outline.rings().count() == 1
            && self.outline.edges().all(|edge| edge.circle.is_none())
            && (self.outline.area_mm2() - area_mm2(self.size())).abs() < 0.01;
        plain && self.crosses.is_empty() && self.edges.is_empty()
    }
}

/// A rectangle's area in square millimetres.
fn area_mm2([width, height]: [Length; 2]) -> f64 {
    width.mm() * height.mm()
}

/// True where a template of this size is too large to be put together of sheets.
pub fn is_too_large(size: [Length; 2]) -> bool {
    size.iter().any(|side| *side > LONGEST) || area_mm2(size) > LARGEST_MM2
}

/// The templates that a build asks for.
pub fn templates(build: &Build, solids: &Solids) -> Vec<Laid> {
    let asked = build.templates.iter();
    asked
        .filter_map(|template| lay(build, solids, template))
        .collect()
}

/// One template; none where its part has no solid, or nothing of it is seen.
pub fn lay(build: &Build, solids: &Solids, template: &Template) -> Option<Laid> {
    let part = build.part(template.part)?;
    let shell = &solids.part(template.part)?.fine;
    let upright = laid_as_seen(part, shell, template, Seen::of(template.side))?;
    let paper = build.plan.paper;
    let metric_first = build.plan.precision.metric_first;
    match template.sheet {
        Some(sheet) => Some(on_one(upright, sheet)),
        None => Some(on_several(upright, paper, metric_first)),
    }
}

/// What is seen of a side, on no sheet yet.
fn laid_as_seen(part: &Part, shell: &Shell, template: &Template, seen: Seen) -> Option<Laid> {
    let outline = outline::outline(shell, &seen);
    let reach = outline::reach(&outline)?;
    Some(Laid {
        template: *template,
        seen,
        crosses: crosses(part, &seen),
        edges: outline::edges_within(shell, &seen, &outline),
        outline,
        reach,
        sheets: None,
    })
}

/// On one sheet, upright or across, turned where it then goes on.
fn on_one(laid: Laid, sheet: Sheet) -> Laid {
    let turned = laid.turned();
    let fits = |laid: &Laid| tiling::on_one(laid.reach, sheet);
    match (fits(&laid), fits(&turned)) {
        (Some(sheets), _) => Laid {
            sheets: Some(sheets),
            ..laid
        },
        (None, Some(sheets)) => Laid {
            sheets: Some(sheets),
            ..turned
        },
        (None, None) => laid,
    }
}

/// Put together of sheets, turned where that takes fewer.
fn on_several(laid: Laid, paper: Paper, metric_first: bool) -> Laid {
    if is_too_large(laid.size()) {
        return laid;
    }
    let sheet = Sheet::of_tiles(paper, metric_first);
    let turned = laid.turned();
    let tiled = |laid: Laid| {
        let sheets = tiling::on_several(&laid, sheet);
        Laid {
            sheets: Some(sheets),
            ..laid
        }
    };
    let (laid, turned) = (tiled(laid), tiled(turned));
    let count = |laid: &Laid| {
        let sheets = laid.sheets.as_ref();
        sheets.map_or((0, 0), |sheets| {
            (sheets.printed().count(), sheets.tiles.len())
        })
    };
    if count(&turned) < count(&laid) {
        turned
    } else {
        laid
    }
}

/// The middles of holes that are drilled from a side or come out of it.
fn crosses(part: &Part, seen: &Seen) -> Vec<Cross> {
    let mut crosses = Vec::new();
    for feature in &part.features {
        if let FeatureShape::Holes(holes) = &feature.shape
            && holes.side.axis() == seen.side.axis()
            && (holes.side == seen.side || holes.depth.is_none())
        {
            let radius = widest(holes, seen).half();
            let at = holes.positions.iter();
            crosses.extend(at.map(|at| Cross {
                at: seen.on_side(*at),
                radius,
            }));
        }
    }
    crosses
}

/// The widest diameter of a hole that is seen from a side.
fn widest(holes: &Holes, seen: &Seen) -> Length {
    if holes.side != seen.side {
        return holes.diameter;
    }
    let bore = holes.counterbore.map_or(Length::ZERO, |bore| bore.0);
    let sink = holes.countersink.unwrap_or_default();
    holes.diameter.max(bore).max(sink)
}

impl Laid {
    /// The same turned by a quarter.
    fn turned(&self) -> Self {
        let turn = |point: PlanePoint| PlanePoint::new(-point.y, point.x);
        let [across, up] = self.reach;
        Self {
            template: self.template,
            seen: self.seen.turned(),
            outline: outline::mapped(&self.outline, turn),
            reach: [Interval::new(-up.high, -up.low), across],
            crosses: self
                .crosses
                .iter()
                .map(|cross| Cross {
                    at: turn(cross.at),
                    ..*cross
                })
                .collect(),
            edges: self.edges.iter().map(|ends| ends.map(turn)).collect(),
            sheets: None,
        }
    }
}
