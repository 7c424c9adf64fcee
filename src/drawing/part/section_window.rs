//! A stretch of a section on paper: what is cut, what is seen behind it, its depths.

use super::super::chains::{Stretch, chain};
use super::super::curves;
use super::super::grid::Bounds;
use super::super::hidden_lines::VisibleLine;
use super::super::pens::{NARROW_MM, THIN_MM, WIDE_MM, dash_dot, line};
use super::super::picture::Sheet;
use super::dimension_rows::{Figured, Lettering, Size, extension};
use super::hatch::cut_face;
use super::planes::{Blind, Depth};
use super::section::{Laying, run, sunk_along};
use super::tags::plane;
use super::views::outward;
use crate::display::{Ends, Mark, PT_PER_MM, Path, Spot, Tone};
use crate::geometry::{Interval, Region};
use crate::units::Length;

/// Extension lines go this far over the outline before dimension rows take them on, in
/// millimetres: where those begin.
const OVER_MM: f64 = 1.5;
/// Break lines go this far over the outline, in millimetres.
const BREAK_MM: f64 = 2.0;

/// A stretch of a section.
pub(super) struct Window<'w> {
    laying: &'w Laying<'w>,
    /// Along the cut and through the thickness.
    reach: [Interval; 2],
    /// The part along the cut.
    whole: Interval,
    sheet: Sheet,
    bounds: Bounds,
    /// Its width and height on paper.
    size: [f64; 2],
}

/// A depth on paper: from where, which way and how far, and where its floor ends.
struct Measured {
    /// Out of the side, on paper.
    way: [f64; 2],
    size: Size,
    /// Where the floor is, and the surface, along the way.
    middle: Spot,
    /// Half of the floor's width on paper.
    half: f64,
    /// A cone's depth, as fine a figure as a bit's.
    cone: bool,
}

impl<'w> Window<'w> {
    pub(super) fn new(laying: &'w Laying<'w>, reach: [Interval; 2], whole: Interval) -> Self {
        let [along, thick] = reach;
        let mut bounds = Bounds::NONE;
        for at in [[along.low, thick.low], [along.high, thick.high]] {
            let [x, y] = laying.seen(at);
            bounds.take(x, y);
        }
        let sheet = Sheet::new(&bounds, laying.scale, Spot::default());
        Self {
            laying,
            reach,
            whole,
            sheet,
            bounds,
            size: bounds.size().map(|size| size * laying.scale),
        }
    }

    /// Everything on paper, the upper left corner of the cut at zero.
    pub(super) fn marks(&self, lettering: &Lettering<'_>) -> Vec<Mark> {
        let mut marks = self.face();
        marks.push(self.lines());
        marks.push(self.centre_lines());
        self.breaks(&mut marks);
        self.depths(lettering, &mut marks);
        marks
    }

    fn spot(&self, at: [Length; 2]) -> Spot {
        self.sheet.spot(self.laying.seen(at))
    }

    fn face(&self) -> Vec<Mark> {
        let [along, thick] = self.reach;
        let shown = self
            .laying
            .cut
            .face
            .common(&Region::rectangle(along, thick));
        let rings: Vec<Vec<Spot>> = shown
            .rings()
            .map(|ring| {
                let spot =
                    |edge: &crate::geometry::BoundaryEdge| self.spot([edge.from.x, edge.from.y]);
                ring.iter().map(spot).collect()
            })
            .collect();
        cut_face(&rings, self.size[0].min(self.size[1]))
    }

    /// What is seen, as far as it lies in the window.
    fn lines(&self) -> Mark {
        let scene = &self.laying.cut.scene;
        let stretch = |line: &VisibleLine| {
            Some(Stretch {
                ends: self.within(line.ends)?,
                round: scene.edges.get(line.edge).and_then(|edge| edge.round),
            })
        };
        let stretches: Vec<Stretch> = self.laying.lines.iter().filter_map(stretch).collect();
        let mut path = Path::default();
        for chain in chain(&stretches) {
            let own = curves::path(&chain, &scene.rounds, &self.laying.view, &self.sheet);
            path.pieces.extend(own.pieces);
        }
        Mark::Stroke {
            path,
            pen: line(WIDE_MM, Tone::BLACK),
        }
    }

    /// The stretch of a line between the break lines.
    fn within(&self, ends: [[f64; 2]; 2]) -> Option<[[f64; 2]; 2]> {
        if self.reach[0] == self.whole {
            return Some(ends);
        }
        let [[ax, ay], [bx, by]] = ends;
        let (low, high) = (self.bounds.low[0], self.bounds.high[0]);
        if ax.max(bx) < low - 2.0 || ax.min(bx) > high + 2.0 {
            return None;
        }
        // A line square to the text is in it or not; a break line is no edge of the wood.
        if (bx - ax).abs() < 1e-6 {
            let broken = self.broken().any(|level| {
                let [x, _] = self.laying.seen([level, self.reach[1].low]);
                (x - ax).abs() < 2.0
            });
            return (!broken).then_some(ends);
        }
        let at = |t: f64| [ax + (bx - ax) * t, ay + (by - ay) * t];
        let (p, q) = ((low - ax) / (bx - ax), (high - ax) / (bx - ax));
        let (from, to) = (p.min(q).max(0.0), p.max(q).min(1.0));
        (from < to).then(|| [at(from), at(to)])
    }

    /// Where the part goes on beyond the window.
    fn broken(&self) -> impl Iterator<Item = Length> {
        let [along, _] = self.reach;
        let ends = [(along.low, self.whole.low), (along.high, self.whole.high)];
        let broken = ends.into_iter().filter(|(level, own)| level != own);
        broken.map(|(level, _)| level)
    }

    /// The features in this window that the plane passes through.
    fn features(&self) -> impl Iterator<Item = &Blind> {
        let cut = self.laying.cut;
        cut.blinds.iter().filter(|blind| {
            let own = sunk_along(blind, run(cut.plane.axis), self.whole);
            self.reach[0].holds(own.middle())
        })
    }

    /// The way out of a side on paper, and where the middle of a feature's mouth is.
    fn mouth(&self, blind: &Blind) -> ([f64; 2], Spot) {
        let axes = plane(self.laying.cut.eye);
        let [x, y, _] = self.laying.view.turn(outward(blind.side));
        let mut at = [Length::ZERO; 2];
        for ((slot, axis), own) in at.iter_mut().zip(axes).zip([self.whole, self.reach[1]]) {
            *slot = match blind.along(axis) {
                Some(reach) => reach.middle(),
                None if blind.side.is_high() => own.high,
                None => own.low,
            };
        }
        ([x, -y], self.spot(at))
    }

    fn points(&self, length: Length) -> f64 {
        length.mm() * 1000.0 * self.laying.scale
    }

    fn centre_lines(&self) -> Mark {
        let mut path = Path::default();
        let over = 1.2 * PT_PER_MM;
        for blind in self.features().filter(|blind| blind.is_hole()) {
            let ([dx, dy], mouth) = self.mouth(blind);
            let deep = self.points(blind.deep) + over;
            let ends = [
                mouth.shifted(dx * over, dy * over),
                mouth.shifted(-dx * deep, -dy * deep),
            ];
            path.pieces.extend(Path::polyline(&ends, Ends::Open).pieces);
        }
        Mark::Stroke {
            path,
            pen: dash_dot(THIN_MM * 0.75, Tone::BLACK),
        }
    }

    /// Break lines where the part goes on: narrow, straight, with a zigzag (ISO 128-2, line 01.1
    /// [M]).
    fn breaks(&self, marks: &mut Vec<Mark>) {
        let [_, h] = self.size;
        let middle = h / 2.0;
        let (over, tooth) = (BREAK_MM * PT_PER_MM, 1.2 * PT_PER_MM);
        for level in self.broken() {
            let Spot { x, .. } = self.spot([level, self.reach[1].low]);
            let at = Spot::new;
            let points = [
                at(x, -over),
                at(x, middle - tooth),
                at(x - tooth, middle - tooth / 3.0),
                at(x + tooth, middle + tooth / 3.0),
                at(x, middle + tooth),
                at(x, h + over),
            ];
            marks.push(Mark::Stroke {
                path: Path::polyline(&points, Ends::Open),
                pen: line(NARROW_MM, Tone::BLACK),
            });
        }
    }

    /// The depths of what this section shows, from each side.
    fn depths(&self, lettering: &Lettering<'_>, marks: &mut Vec<Mark>) {
        let shown = |blind: &&Blind| {
            let own = sunk_along(blind, run(self.laying.cut.plane.axis), self.whole);
            own.overlap(self.reach[0]).is_some()
        };
        let mut measured = Vec::new();
        for blind in self.laying.cut.plane.shown.iter().filter(shown) {
            let measure = |depth: &Depth| self.measured(blind, depth);
            measured.extend(blind.depths.iter().map(measure));
        }
        let [w, _] = self.size;
        // Sunk from above or below: columns beside the window, on the nearer side where features
        // stand far apart.
        for right in [1.0, -1.0] {
            let mut reached = 0.0;
            for up in [1.0, -1.0] {
                let own: Vec<&Measured> = measured
                    .iter()
                    .filter(|item| item.way[1].abs() > 0.5 && (item.way[1] > 0.0) == (up > 0.0))
                    .filter(|item| {
                        let is_right = item.middle.x >= w * 0.4 || self.reach[0] != self.whole;
                        is_right == (right > 0.0)
                    })
                    .collect();
                reached += self.columns(lettering, &own, [right, up], reached, marks);
            }
        }
        for item in measured.iter().filter(|item| item.way[0].abs() > 0.5) {
            self.row(lettering, item, &measured, marks);
        }
    }

    fn measured(&self, blind: &Blind, depth: &Depth) -> Measured {
        let (way, middle) = self.mouth(blind);
        let across = plane(blind.side)
            .into_iter()
            .zip(depth.floor)
            .find(|(axis, _)| *axis != self.laying.cut.plane.axis)
            .map(|(_, width)| self.points(width) / 2.0);
        Measured {
            way,
            size: Size {
                end: self.points(depth.depth),
                length: depth.depth,
            },
            middle,
            half: across.unwrap_or_default(),
            cone: depth.cone,
        }
    }

    fn columns(
        &self,
        lettering: &Lettering<'_>,
        own: &[&Measured],
        [right, up]: [f64; 2],
        lifted: f64,
        marks: &mut Vec<Mark>,
    ) -> f64 {
        let Some(first) = own.first() else {
            return 0.0;
        };
        let [w, _] = self.size;
        let edge = if right > 0.0 { w } else { 0.0 };
        let sizes = in_order(lettering, own);
        let crowded = sizes.len() > 1 || lifted > 0.0;
        let from = first.middle.y;
        let out = edge + right * OVER_MM * PT_PER_MM;
        for item in nearest(own, |item| (item.middle.x - edge).abs()) {
            let y = from - up * item.size.end;
            // Of a long channel the floor goes on beyond the window.
            let corner = (item.middle.x + right * item.half).clamp(0.0, w);
            extension(Spot::new(corner, y), Spot::new(out, y), marks);
        }
        lettering.figured_columns(&sizes, [from, up, edge, right], lifted, crowded, marks)
    }

    /// A depth from the left or the right, in a row under the window.
    fn row(
        &self,
        lettering: &Lettering<'_>,
        item: &Measured,
        all: &[Measured],
        marks: &mut Vec<Mark>,
    ) {
        let same = |other: &&Measured| (other.way[0] - item.way[0]).abs() < 0.5;
        let own: Vec<&Measured> = all.iter().filter(same).collect();
        // All from one side are drawn with the first of them.
        if own.first().is_none_or(|first| !std::ptr::eq(*first, item)) {
            return;
        }
        let [_, h] = self.size;
        let mut sizes = in_order(lettering, &own);
        for size in &mut sizes {
            size.end *= -item.way[0].signum();
        }
        let from = item.middle.x;
        marks.extend(lettering.figured_rows(&sizes, from, h, 1.0, 0.0));
        for item in nearest(&own, |item| (item.middle.y - h).abs()) {
            let x = from - item.way[0].signum() * item.size.end;
            let corner = Spot::new(x, (item.middle.y + item.half).min(h));
            extension(corner, Spot::new(x, h + OVER_MM * PT_PER_MM), marks);
        }
    }
}

/// Each size once, the shortest first.
fn in_order(lettering: &Lettering<'_>, own: &[&Measured]) -> Vec<Figured> {
    let mut sizes: Vec<(&Size, bool)> = own.iter().map(|item| (&item.size, item.cone)).collect();
    sizes.sort_by_key(|(size, cone)| (size.length, *cone));
    sizes.dedup_by_key(|(size, _)| size.length);
    let fine = lettering.fine();
    let figured = sizes.into_iter().map(|(size, cone)| {
        let own = if cone { &fine } else { lettering };
        own.figured(size)
    });
    figured.collect()
}

/// For each size the feature that is nearest to its dimension.
fn nearest<'m>(own: &[&'m Measured], far: impl Fn(&Measured) -> f64) -> Vec<&'m Measured> {
    let mut sorted: Vec<&Measured> = own.to_vec();
    sorted.sort_by(|a, b| {
        let by_size = a.size.length.cmp(&b.size.length);
        by_size.then(far(a).total_cmp(&far(b)))
    });
    sorted.dedup_by_key(|item| item.size.length);
    sorted
}
