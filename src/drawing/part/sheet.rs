//! The views of one part on paper: lined up, to a standard scale, with sizes and numbers.

use std::collections::BTreeSet;

use super::super::bodies::add_shell;
use super::super::chains::{Stretch, chain};
use super::super::compose::{Studio, area_around};
use super::super::curves;
use super::super::grid::Bounds;
use super::super::hidden_lines::{VisibleLine, lines_with_hidden};
use super::super::pens::{NARROW_MM, THIN_MM, WIDE_MM, dash_dot, dashed, line, second_dimension};
use super::super::picture::Sheet;
use super::super::scene::{BodyId, Scene};
use super::angles::angle;
use super::cut_line::{CutLine, set_apart};
use super::dimension_rows::{BEYOND, Lettering, Size, has_short, height_of};
use super::section::{Cut, Room, cuts, in_rows, sections};
use super::symbol::{self, symbol};
use super::tags::{Tags, extent, place_of};
use super::views::{PartView, looked_along, outward, sign};
use crate::build::Part;
use crate::display::{Area, Ends, Mark, PT_PER_MM, Path, Spot, Tone};
use crate::geometry::{Interval, PartAxis, Side};
use crate::model::{FeatureShape, Holes};
use crate::solid::Shell;
use crate::text::{Anchor, text_mark};
use crate::units::Length;

/// Between two views, in millimetres.
const GAP_MM: f64 = 11.0;
/// From the views to the sections under them, in millimetres.
const UNDER_VIEWS_MM: f64 = 7.0;
/// How far the ends of a section's line reach beyond the first row of sizes, in millimetres.
const CUT_ENDS_MM: f64 = 6.0;
/// Views of more holes than this from the side show no hidden edges.
const MOST_HIDDEN: usize = 12;

/// A view with its lines.
struct Seen {
    view: PartView,
    visible: Vec<VisibleLine>,
    hidden: Vec<VisibleLine>,
    bounds: Bounds,
}

/// A part's views on their way to paper.
pub(super) struct Drafting<'d> {
    studio: &'d Studio<'d>,
    part: &'d Part,
    scene: Scene,
    seen: Vec<Seen>,
    /// Sizes along the length and along the width, the whole size last.
    along: [Vec<Length>; 2],
    /// Where it is cut open.
    cuts: Vec<Cut>,
}

impl<'d> Drafting<'d> {
    /// Looks at the part; none where nothing is seen.
    pub(super) fn new(
        studio: &'d Studio<'d>,
        part: &'d Part,
        shell: &Shell,
        views: &[PartView],
    ) -> Option<Self> {
        let main = views.first()?.side;
        let mut scene = Scene::new();
        add_shell(&mut scene, BodyId(0), shell, [0.0; 3]);
        let holes = part.features.iter().filter_map(|feature| {
            if let FeatureShape::Holes(holes) = &feature.shape {
                Some(holes.positions.len())
            } else {
                None
            }
        });
        let many = holes.sum::<usize>() > MOST_HIDDEN;
        let mut seen = Vec::with_capacity(views.len());
        for view in views {
            let (visible, mut hidden) = lines_with_hidden(&scene, &view.view);
            if many && view.side.axis() != PartAxis::Thickness {
                hidden.clear();
            }
            let mut bounds = Bounds::NONE;
            for [x, y] in visible.iter().flat_map(|line| line.ends) {
                bounds.take(x, y);
            }
            seen.push(Seen {
                view: *view,
                visible,
                hidden,
                bounds,
            });
        }
        if seen.iter().any(|view| view.visible.is_empty()) {
            return None;
        }
        let [rows, columns] = studio.frame.most_sizes();
        let along = [
            sizes(part, PartAxis::Length, rows),
            sizes(part, PartAxis::Width, columns),
        ];
        Some(Self {
            studio,
            part,
            scene,
            seen,
            along,
            cuts: cuts(part, shell, main),
        })
    }

    /// Width of the main view alone at one to `reduction`, in millimetres.
    pub(super) fn width_mm(&self, reduction: u32) -> f64 {
        let main = self.seen.first();
        let [width, _] = main.map_or([0.0; 2], |main| main.bounds.size());
        width / 1000.0 / f64::from(reduction)
    }

    /// The view beside the main one whose side looks along an axis.
    fn on(&self, axis: PartAxis) -> Option<&Seen> {
        self.seen
            .iter()
            .skip(1)
            .find(|seen| seen.view.side.axis() == axis)
    }

    /// Everything on paper, at one to `reduction`.
    pub(super) fn marks(&self, reduction: u32) -> Vec<Mark> {
        let mut marks = Vec::new();
        let Some(main) = self.seen.first() else {
            return marks;
        };
        let scale = PT_PER_MM / 1000.0 / f64::from(reduction);
        let sheet = Sheet::new(&main.bounds, scale, Spot::default());
        let [w, h] = main.bounds.size().map(|size| size * scale);
        let lettering = Lettering {
            fonts: self.studio.fonts,
            precision: self.studio.precision(),
        };
        let gap = GAP_MM * PT_PER_MM;
        let mut sheets = vec![(main, sheet)];
        // Where a side lies as the main view shows it, and so where its own view stands.
        let sign = sign(self.studio.build.plan.projection());
        let way = |side: Side| {
            let [x, y, _] = main.view.view.turn(outward(side));
            [x * sign, -y * sign]
        };
        let mut down = 1.0;
        let mut low = h;
        if let Some(edge) = self.on(PartAxis::Width) {
            let height = edge.bounds.size()[1] * scale;
            let [_, below] = way(edge.view.side);
            let top = if below > 0.0 { h + gap } else { -gap - height };
            down = -below.signum();
            low = low.max(top + height);
            let own = Sheet::new(&edge.bounds, scale, Spot::new(0.0, top));
            sheets.push((edge, own));
            let thick = self.thickness(height);
            // Opposite of the other columns, whose short figures may stand up to here.
            let right = -self.columns_side(way);
            let x = if right > 0.0 { w } else { 0.0 };
            marks.extend(lettering.columns(&[thick], top + height, 1.0, x, right));
        }
        if let Some(end) = self.on(PartAxis::Length) {
            let width = end.bounds.size()[0] * scale;
            let [right, _] = way(end.view.side);
            let left = if right > 0.0 { w + gap } else { -gap - width };
            let own = Sheet::new(&end.bounds, scale, Spot::new(left, 0.0));
            sheets.push((end, own));
            if self.on(PartAxis::Width).is_none() {
                // Opposite of the other rows, so that no figure stands among their lines.
                let edge = if down > 0.0 { 0.0 } else { h };
                marks.extend(lettering.rows(&[self.thickness(width)], left, edge, -down, 0.0));
            }
        }
        for (seen, sheet) in &sheets {
            self.draw(seen, sheet, &mut marks);
        }
        let whole = |lengths: &[Length]| -> Vec<Size> {
            let size = |length: &Length| Size {
                end: length.mm() * 1000.0 * scale,
                length: *length,
            };
            lengths.iter().map(size).collect()
        };
        let [rows, columns] = self.along.each_ref().map(|lengths| whole(lengths));
        let (right, up) = (self.columns_side(way), self.near_is_low());
        // Figures beyond the beginning of a column stand where rows on that side would begin.
        let lifted = if right < 0.0 && up * down > 0.0 && has_short(&columns) {
            BEYOND
        } else {
            0.0
        };
        // In a small view the letters of sections reach to where the first row would be.
        let is_upright = |cut: &Cut| cut.plane.axis == PartAxis::Length;
        let lifted = if self.studio.frame.is_narrow() && self.cuts.iter().any(is_upright) {
            lifted.max(CUT_ENDS_MM * PT_PER_MM)
        } else {
            lifted
        };
        let edge = if down > 0.0 { h } else { 0.0 };
        marks.extend(lettering.rows(&rows, 0.0, edge, down, lifted));
        if down > 0.0 {
            low = low.max(h + height_of(rows.len()) + lifted);
        }
        let x = if right > 0.0 { w } else { 0.0 };
        let from = if up > 0.0 { h } else { 0.0 };
        marks.extend(lettering.columns(&columns, from, up, x, right));
        let mut taken = self.put_cut_lines(main, &sheet, &mut marks);
        for area in self.put_angles(&sheets, &mut marks) {
            low = low.max(area.y + area.height);
            taken.push(area);
        }
        self.put_tags(&sheets, taken, &mut marks);
        self.put_scale(reduction, low + 3.0 * PT_PER_MM, &mut marks);
        marks
    }

    /// The angles of slopes, each in the views that look along it, and the areas they take.
    fn put_angles(&self, sheets: &[(&Seen, Sheet)], marks: &mut Vec<Mark>) -> Vec<Area> {
        let mut taken = Vec::new();
        for feature in &self.part.features {
            if let FeatureShape::Slope(slope) = &feature.shape {
                for (seen, sheet) in sheets {
                    let drawn = angle(self.studio.fonts, slope, &seen.view, sheet);
                    taken.extend(area_around(&drawn));
                    marks.extend(drawn);
                }
            }
        }
        taken
    }

    /// The lines of sections, and the areas their ends take.
    fn put_cut_lines(&self, main: &Seen, sheet: &Sheet, marks: &mut Vec<Mark>) -> Vec<Area> {
        let lines = self.cuts.iter().map(|cut| cut_line(cut, main, sheet));
        let mut lines: Vec<CutLine> = lines.collect();
        set_apart(&mut lines);
        let mut taken = Vec::new();
        for line in &lines {
            let drawn = line.lines();
            // All but the thin line across the view.
            let ends = drawn.iter().skip(1).map(std::slice::from_ref);
            taken.extend(ends.filter_map(area_around));
            marks.extend(drawn);
        }
        for line in &lines {
            let letters = line.letters(self.studio.fonts, marks);
            taken.extend(
                letters
                    .iter()
                    .map(std::slice::from_ref)
                    .filter_map(area_around),
            );
            marks.extend(letters);
        }
        taken
    }

    /// The same with the sections under it.
    pub(super) fn marks_with_sections(&self, reduction: u32, room: Room) -> Vec<Mark> {
        let mut marks = self.marks(reduction);
        let blocks = self.section_blocks(reduction, room).into_iter();
        let below = in_rows(blocks, self.studio.frame.width_mm);
        if let (Some(own), Some(next)) = (area_around(&marks), area_around(&below)) {
            let down = own.y + own.height + UNDER_VIEWS_MM * PT_PER_MM - next.y;
            let right = own.x - next.x;
            marks.extend(below.into_iter().map(|mark| mark.shifted(right, down)));
        }
        marks
    }

    /// The sections alone, each under its title.
    pub(super) fn section_blocks(&self, reduction: u32, room: Room) -> Vec<Vec<Mark>> {
        let main = self.seen.first().map_or(Side::Face, |seen| seen.view.side);
        sections(self.studio, self.part, &self.cuts, main, (reduction, room))
    }

    /// The letters of the sections.
    pub(super) fn section_letters(&self) -> impl Iterator<Item = char> {
        self.cuts.iter().map(|cut| cut.letter)
    }

    fn thickness(&self, end: f64) -> Size {
        Size {
            end,
            length: extent(self.part, PartAxis::Thickness).size(),
        }
    }

    /// 1 where the columns of sizes stand right of the views: where no end is shown.
    fn columns_side(&self, way: impl Fn(Side) -> [f64; 2]) -> f64 {
        let end = self.on(PartAxis::Length).map(|end| way(end.view.side));
        end.map_or(1.0, |[right, _]| -right.signum())
    }

    /// 1 where the near edge is at the bottom of the main view, -1 where it is at its top.
    fn near_is_low(&self) -> f64 {
        let main = self.seen.first();
        let [_, y, _] = main.map_or([0.0; 3], |main| main.view.view.turn(outward(Side::Near)));
        -y.signum()
    }

    /// The lines of a view: what is seen, what is hidden, the middles of holes.
    fn draw(&self, seen: &Seen, sheet: &Sheet, marks: &mut Vec<Mark>) {
        let kinds = [
            (&seen.hidden, dashed(NARROW_MM, Tone::BLACK)),
            (&seen.visible, line(WIDE_MM, Tone::BLACK)),
        ];
        for (lines, pen) in kinds {
            let stretch = |line: &VisibleLine| Stretch {
                ends: line.ends,
                round: self.scene.edges.get(line.edge).and_then(|edge| edge.round),
            };
            let stretches: Vec<Stretch> = lines.iter().map(stretch).collect();
            let mut path = Path::default();
            for chain in chain(&stretches) {
                let own = curves::path(&chain, &self.scene.rounds, &seen.view.view, sheet);
                path.pieces.extend(own.pieces);
            }
            marks.push(Mark::Stroke { path, pen });
        }
        let mut path = Path::default();
        for feature in &self.part.features {
            if let FeatureShape::Holes(holes) = &feature.shape
                && holes.side.axis() == seen.view.side.axis()
            {
                self.centre_lines(holes, seen, sheet, &mut path);
            }
        }
        marks.push(Mark::Stroke {
            path,
            pen: dash_dot(THIN_MM * 0.75, Tone::BLACK),
        });
    }

    fn centre_lines(&self, holes: &Holes, seen: &Seen, sheet: &Sheet, path: &mut Path) {
        let wide = holes.counterbore.map_or(holes.diameter, |bore| bore.0);
        let wide = wide.max(holes.countersink.unwrap_or_default());
        let reach = wide.mm() * 500.0 * sheet.scale + 1.2 * PT_PER_MM;
        for at in &holes.positions {
            let mut point = [0.0; 3];
            for (axis, value) in super::tags::plane(holes.side).into_iter().zip([at.x, at.y]) {
                if let Some(slot) = point.get_mut(axis.index()) {
                    *slot = super::super::bodies::length(value);
                }
            }
            let [x, y, _] = seen.view.view.project(point);
            let spot = sheet.spot([x, y]);
            for (dx, dy) in [(reach, 0.0), (0.0, reach)] {
                let ends = [spot.shifted(-dx, -dy), spot.shifted(dx, dy)];
                path.pieces.extend(Path::polyline(&ends, Ends::Open).pieces);
            }
        }
    }

    fn put_tags(&self, sheets: &[(&Seen, Sheet)], taken: Vec<Area>, marks: &mut Vec<Mark>) {
        let mut tags = Tags::beside(taken);
        for (number, feature) in self.part.features.iter().enumerate() {
            let Some(place) = place_of(self.part, feature) else {
                continue;
            };
            let axis = looked_along(feature);
            let shown = sheets
                .iter()
                .find(|(seen, _)| Some(seen.view.side.axis()) == axis)
                .or(sheets.first());
            if let Some((seen, sheet)) = shown {
                let [x, y, _] = seen.view.view.project(place);
                tags.put(self.studio.fonts, number + 1, sheet.spot([x, y]));
            }
        }
        marks.extend(tags.marks);
    }

    /// The scale, and how the views stand to each other where there are several.
    fn put_scale(&self, reduction: u32, top: f64, marks: &mut Vec<Mark>) {
        let middle = top + symbol::HEIGHT / 2.0;
        let mut text = self.studio.scale_line(reduction);
        if self.seen.len() == 1 {
            let size = extent(self.part, PartAxis::Thickness).size();
            let printed = size.printed(self.studio.precision());
            let thick = printed.both(self.studio.precision());
            let thickness = ("thickness", thick.into());
            text = if self.studio.frame.on_screen {
                self.studio
                    .words
                    .word("drawing-no-scale-thick", &[thickness])
            } else {
                let scale = ("scale", format!("1:{reduction}").into());
                self.studio
                    .words
                    .word("drawing-scale-thick", &[scale, thickness])
            };
        } else {
            marks.extend(symbol(
                self.studio.build.plan.projection(),
                Spot::new(0.0, middle),
            ));
        }
        let x = if self.seen.len() > 1 {
            symbol::WIDTH + 8.0
        } else {
            0.0
        };
        let spot = Spot::new(x, middle + 3.0);
        let style = second_dimension();
        marks.push(text_mark(
            self.studio.fonts,
            &style,
            Anchor::Start,
            spot,
            &text,
        ));
    }
}

/// Where a section is taken, in the main view.
fn cut_line(cut: &Cut, main: &Seen, sheet: &Sheet) -> CutLine {
    let ([left, low], [right, high]) = (main.bounds.low, main.bounds.high);
    let mut point = [0.0; 3];
    if let Some(slot) = point.get_mut(cut.plane.axis.index()) {
        *slot = super::super::bodies::length(cut.plane.at);
    }
    let [x, y, _] = main.view.view.project(point);
    let ends = if cut.plane.axis == PartAxis::Length {
        [[x, high], [x, low]]
    } else {
        [[left, y], [right, y]]
    };
    let [dx, dy, _] = main.view.view.turn(outward(cut.eye));
    CutLine {
        letter: cut.letter,
        ends: ends.map(|end| sheet.spot(end)),
        look: [-dx, dy],
        farther: 0.0,
    }
}

/// Distances from the low side along an axis at which something begins or ends, in order, the
/// whole size last; the whole size alone where there are more than `most`.
fn sizes(part: &Part, axis: PartAxis, most: usize) -> Vec<Length> {
    let whole = extent(part, axis);
    let mut found: BTreeSet<Length> = BTreeSet::new();
    let mut take = |reach: Interval| {
        for level in [reach.low, reach.high] {
            if level > whole.low && level < whole.high {
                found.insert(level - whole.low);
            }
        }
    };
    for feature in &part.features {
        match &feature.shape {
            FeatureShape::Pocket(pocket) => {
                let axes = super::tags::plane(pocket.side);
                for (own, reach) in axes.into_iter().zip([pocket.first, pocket.second]) {
                    if own == axis {
                        take(reach);
                    }
                }
            }
            FeatureShape::Notch {
                along_length,
                along_width,
            } => take(if axis == PartAxis::Length {
                *along_length
            } else {
                *along_width
            }),
            FeatureShape::Outline(contour) => {
                let points = contour.pieces.iter().map(|piece| piece.end());
                for point in points.chain([contour.start]) {
                    let value = if axis == PartAxis::Length {
                        point.x
                    } else {
                        point.y
                    };
                    take(Interval::new(value, value));
                }
            }
            FeatureShape::Slope(slope) => {
                let reached = [
                    (slope.side, slope.level, slope.inset),
                    (slope.deep, slope.deep_level, slope.run),
                ];
                for (side, level, by) in reached {
                    if side.axis() == axis {
                        let inside = side.inward(level, by);
                        take(Interval::new(inside, inside));
                    }
                }
            }
            // It stands in the middle: its section is in the table.
            FeatureShape::Tenon(tenon) if axis == PartAxis::Length => take(tenon.along),
            FeatureShape::Tenon(_) => {}
            FeatureShape::Holes(_)
            | FeatureShape::Arris { .. }
            | FeatureShape::SplineSlot(_)
            | FeatureShape::PocketScrewHole(_) => {}
        }
    }
    if found.len() > most {
        found.clear();
    }
    found.into_iter().chain([whole.size()]).collect()
}
