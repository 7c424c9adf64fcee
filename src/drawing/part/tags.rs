//! Numbers at what is cut into a part, which the table beside its drawing explains.

use super::super::pens::{THIN_MM, line};
use super::super::view::WorldPoint;
use crate::build::Part;
use crate::display::{Area, Ends, Mark, PT_PER_MM, Path, Spot, Tone};
use crate::geometry::{Interval, PartAxis, PlanePoint, Side};
use crate::model::{Feature, FeatureShape};
use crate::text::{Anchor, Fonts, TextStyle, shape_line, text_mark};
use crate::units::Length;

/// Height of a number's box, in points.
const HEIGHT: f64 = 10.5;

/// Numbers, each in a box of its own.
pub(super) struct Tags {
    taken: Vec<Area>,
    /// The marks of all boxes.
    pub(super) marks: Vec<Mark>,
}

impl Tags {
    /// No numbers yet, and areas that they leave free.
    pub(super) const fn beside(taken: Vec<Area>) -> Self {
        Self {
            taken,
            marks: Vec::new(),
        }
    }

    /// Puts `number` beside a spot, where no other number is.
    pub(super) fn put(&mut self, fonts: &Fonts, number: usize, beside: Spot) {
        let style = TextStyle::new(crate::display::Face::Bold, 8.0);
        let text = number.to_string();
        let width = shape_line(fonts, &style, &text).width + 4.4;
        let step = 1.5 * PT_PER_MM;
        let ways = [(1.0, -1.0), (1.0, 1.0), (-1.0, -1.0), (-1.0, 1.0)];
        let places = (1_u32..8).map(f64::from).flat_map(|far| {
            ways.map(|(right, down)| Area {
                x: beside.x + right * (step * far + width / 2.0) - width / 2.0,
                y: beside.y + down * (step * far + HEIGHT / 2.0) - HEIGHT / 2.0,
                width,
                height: HEIGHT,
            })
        });
        let free = |area: &Area| !self.taken.iter().any(|other| overlap(area, other));
        let Some(area) = places.clone().find(free).or(places.clone().next()) else {
            return;
        };
        let frame = Path::rectangle(area);
        self.marks.push(Mark::Fill {
            path: frame.clone(),
            tone: Tone::WHITE,
        });
        self.marks.push(Mark::Stroke {
            path: frame,
            pen: line(THIN_MM, Tone::BLACK),
        });
        let spot = Spot::new(area.x + width / 2.0, area.y + HEIGHT - 2.5);
        self.marks
            .push(text_mark(fonts, &style, Anchor::Middle, spot, &text));
        // A leader, where the box could not stand close.
        let near = Spot::new(
            beside.x.clamp(area.x, area.x + width),
            beside.y.clamp(area.y, area.y + HEIGHT),
        );
        if libm::hypot(near.x - beside.x, near.y - beside.y) > 3.2 * PT_PER_MM {
            self.marks.push(Mark::Stroke {
                path: Path::polyline(&[beside, near], Ends::Open),
                pen: line(THIN_MM, Tone::BLACK),
            });
        }
        self.taken.push(area);
    }
}

fn overlap(a: &Area, b: &Area) -> bool {
    a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height
}

/// Where a number stands for a feature: at its first hole, or in its middle; in micrometres of
/// the part's frame. None for an outline, which is the part itself.
pub(super) fn place_of(part: &Part, feature: &Feature) -> Option<WorldPoint> {
    let middle = |reach: Interval| reach.middle();
    let level = |side: Side| {
        let reach = extent(part, side.axis());
        if side.is_high() {
            reach.high
        } else {
            reach.low
        }
    };
    let mut point = part.extent.map(middle);
    let mut set = |axis: PartAxis, value: Length| {
        if let Some(slot) = point.get_mut(axis.index()) {
            *slot = value;
        }
    };
    let mut on = |side: Side, at: PlanePoint| {
        set(side.axis(), level(side));
        for (axis, value) in plane(side).into_iter().zip([at.x, at.y]) {
            set(axis, value);
        }
    };
    match &feature.shape {
        FeatureShape::Holes(holes) => on(holes.side, *holes.positions.first()?),
        FeatureShape::Pocket(pocket) => {
            let at = PlanePoint::new(pocket.first.middle(), pocket.second.middle());
            on(pocket.side, at);
        }
        FeatureShape::PocketScrewHole(hole) => {
            set(hole.side.axis(), level(hole.side));
            let entry = if hole.end.is_high() {
                level(hole.end) - hole.entry
            } else {
                level(hole.end) + hole.entry
            };
            set(hole.end.axis(), entry);
            let third = PartAxis::ALL
                .into_iter()
                .find(|axis| *axis != hole.side.axis() && *axis != hole.end.axis())?;
            set(third, hole.position);
        }
        FeatureShape::Notch {
            along_length,
            along_width,
        } => {
            set(PartAxis::Length, along_length.middle());
            set(PartAxis::Width, along_width.middle());
        }
        FeatureShape::Arris { sides, .. } => {
            for side in sides {
                set(side.axis(), level(*side));
            }
        }
        FeatureShape::Slope(slope) => {
            set(
                slope.side.axis(),
                slope.side.inward(slope.level, slope.inset.half()),
            );
            set(
                slope.deep.axis(),
                slope.deep.inward(slope.deep_level, slope.run.half()),
            );
        }
        FeatureShape::SplineSlot(slot) => {
            let (up, along) = (slot.across.middle().mm(), slot.along.middle().mm());
            let [x, y, z] = slot.point_mm(up, along, slot.depth.mm() / 2.0);
            return Some([x, y, z].map(|mm| mm * 1000.0));
        }
        FeatureShape::Tenon(tenon) => {
            set(PartAxis::Length, tenon.along.middle());
            set(PartAxis::Width, tenon.width.middle());
        }
        FeatureShape::Outline(_) => return None,
    }
    Some(point.map(super::super::bodies::length))
}

/// The part's extent along an axis.
pub(super) fn extent(part: &Part, axis: PartAxis) -> Interval {
    part.extent.get(axis.index()).copied().unwrap_or_default()
}

/// The axes of a side's plane, in the part's order.
pub(super) fn plane(side: Side) -> [PartAxis; 2] {
    match side.axis() {
        PartAxis::Length => [PartAxis::Width, PartAxis::Thickness],
        PartAxis::Width => [PartAxis::Length, PartAxis::Thickness],
        PartAxis::Thickness => [PartAxis::Length, PartAxis::Width],
    }
}
