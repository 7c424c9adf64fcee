//! Full-size templates on their sheets: what a maker pastes on the wood and cuts along.
//!
//! In: a template laid on paper (`full_size`). Out: a figure of the size of the whole page for each
//! sheet that is printed, everything on it true to size. What is cut along is the widest line;
//! what proves the print is grey, so that nobody cuts along it.

mod clip;
mod foot;
mod ink;
mod joints;
mod map;
mod pattern;

use std::collections::BTreeMap;

use super::check_square::{INCHES, SquareInk, check_square};
use super::compose::Studio;
use super::layout::grain_arrow;
use super::pens::{NARROW_MM, THIN_MM, dash_dot, line};
use crate::build::Part;
use crate::display::{Area, Face, Figure, Mark, PT_PER_MM, Path, Spot, Tone};
use crate::full_size::{self, EDGE, HEAD, Laid, Sheets, Tile};
use crate::rules::SoundBuild;
use crate::solid::Solids;
use crate::text::{Anchor, Fonts, TextStyle, shape_line, text_mark};
use crate::units::Length;
use crate::words::{Filling, Words};

use clip::clipped;
use ink::{Ink, places};
use pattern::Pattern;

/// The name of a template: of the place in a plan, and of its figures with the sheet's row and
/// column behind it.
pub fn template_name(part: &Part, laid: &Laid) -> String {
    format!("template-{}-{}", part.label, laid.template.side.word())
}

/// The name of the figure of one of a template's sheets.
pub fn sheet_name(part: &Part, laid: &Laid, tile: &Tile) -> String {
    let name = template_name(part, laid);
    format!("{name}-{}-{}", tile.row, tile.column)
}

/// The sheets of the templates that a build asks for, by their names.
pub(super) fn figures(studio: &Studio<'_>) -> Vec<(String, Figure)> {
    full_size::templates(studio.build, studio.solids)
        .iter()
        .flat_map(|laid| sheets_of(studio, laid))
        .collect()
}

/// The sheets of one template, by their names.
pub(super) fn sheets_of(studio: &Studio<'_>, laid: &Laid) -> Vec<(String, Figure)> {
    let part = studio.build.part(laid.template.part);
    let solid = studio.solids.part(laid.template.part);
    let (Some(part), Some(solid), Some(sheets)) = (part, solid, &laid.sheets) else {
        return Vec::new();
    };
    let pattern = Pattern::of(laid, &solid.fine);
    let figure = |tile: &Tile| {
        let leaf = Leaf {
            studio,
            part,
            laid,
            pattern: &pattern,
            sheets,
            tile,
        };
        (sheet_name(part, laid, tile), leaf.figure())
    };
    sheets.printed().map(figure).collect()
}

/// The sheets of templates that were laid on paper, by their names.
pub fn template_sheets(
    sound: &SoundBuild,
    solids: &Solids,
    laid: &[Laid],
    fonts: &Fonts,
    words: &Words,
) -> BTreeMap<String, Figure> {
    Studio::of(sound.build(), solids, fonts, words, |studio| {
        let sheets = laid.iter().flat_map(|laid| sheets_of(studio, laid));
        sheets.collect()
    })
}

/// A length in points.
fn points(length: Length) -> f64 {
    length.mm() * PT_PER_MM
}

/// A sheet in the making.
struct Leaf<'s, 'l> {
    studio: &'s Studio<'s>,
    part: &'l Part,
    laid: &'l Laid,
    pattern: &'l Pattern,
    sheets: &'l Sheets,
    tile: &'l Tile,
}

/// The square that proves the print: a grey that a copier keeps, thinner than any edge.
const SQUARE: SquareInk = SquareInk {
    width: 0.5,
    tone: Tone::grey(0.45),
};
/// How near to the square's lines another line may not come, in points.
const NEAR_SQUARE: f64 = 6.0;
/// Width and height of what stands inside the outline, in points.
const INSIDE: [f64; 2] = [132.0, 40.0];

impl Leaf<'_, '_> {
    fn width(&self) -> f64 {
        points(self.sheets.page.width)
    }

    fn height(&self) -> f64 {
        points(self.sheets.page.height)
    }

    /// Where the template's own zero is on the page.
    fn origin(&self) -> Spot {
        let [x, y] = self.tile.window;
        Spot::new(points(EDGE - x.low), points(EDGE + HEAD + y.high))
    }

    /// A point of the template on the page.
    fn spot(&self, x: Length, y: Length) -> Spot {
        self.origin().shifted(points(x), -points(y))
    }

    /// The window on the page.
    fn window(&self) -> Area {
        let [x, y] = self.tile.window;
        Area {
            x: points(EDGE),
            y: points(EDGE + HEAD),
            width: points(x.size()),
            height: points(y.size()),
        }
    }

    fn figure(&self) -> Figure {
        let window = self.window();
        let origin = self.origin();
        let whole = self.pattern.shifted(origin.x, origin.y);
        let cut = |path: &Path| clipped(path, &window);
        let (outline, edges) = (cut(&whole.outline), cut(&whole.edges));
        let (crosses, centre_lines) = (cut(&whole.crosses), cut(&whole.centre_lines));
        let mut ink = Ink::default();
        for path in [&outline, &edges, &crosses, &centre_lines] {
            ink.add(path);
        }
        let joints = joints::marks(self, &ink);
        ink.add_marks(&joints);
        let square = self.square(&ink);
        ink.add_marks(&square);
        let inside = self.inside(&ink);
        let mut marks = square;
        let mut stroke = |path, pen| marks.push(Mark::Stroke { path, pen });
        stroke(centre_lines, dash_dot(THIN_MM, Tone::BLACK));
        stroke(crosses, line(THIN_MM, Tone::BLACK));
        stroke(edges, line(NARROW_MM, Tone::BLACK));
        stroke(outline, line(foot::OUTLINE_MM, Tone::BLACK));
        marks.extend(joints);
        marks.extend(inside);
        marks.extend(foot::marks(self));
        marks.retain(|mark| !matches!(mark, Mark::Stroke { path, .. } if path.pieces.is_empty()));
        Figure {
            width: self.width(),
            height: self.height(),
            marks,
            alternative: format!("{}, {}", self.part.title, self.described()),
            to_scale: true,
        }
    }

    /// The square that proves the print, where the fewest lines run along it or through its words.
    fn square(&self, ink: &Ink) -> Vec<Mark> {
        let inner = joints::inner(self);
        let own = self.window();
        // As much of the window as no other sheet shows, if the square has room there.
        let room = if inner.width >= INCHES + 2.0 && inner.height >= INCHES + 2.0 {
            inner
        } else {
            own
        };
        let side = INCHES + 2.0;
        let cost = |corner: &Spot| {
            let near = NEAR_SQUARE;
            let strips = [
                (
                    corner.x - near,
                    corner.y - near,
                    side + 2.0 * near,
                    2.0 * near + 6.0,
                ),
                (
                    corner.x - near,
                    corner.y + side - near,
                    side + 2.0 * near,
                    2.0 * near,
                ),
                (corner.x - near, corner.y, 2.0 * near, side),
                (
                    corner.x + side - near - 6.0,
                    corner.y,
                    2.0 * near + 6.0,
                    side,
                ),
                (corner.x + 20.0, corner.y + 14.0, 200.0, 30.0),
            ];
            let strips = strips.iter();
            let lines: usize = strips
                .map(|(x, y, width, height)| {
                    ink.within(&Area {
                        x: *x,
                        y: *y,
                        width: *width,
                        height: *height,
                    })
                })
                .sum();
            let all = ink.within(&Area {
                x: corner.x,
                y: corner.y,
                width: side,
                height: side,
            });
            (lines, all)
        };
        let corner = places(&room, [side, side]).min_by_key(cost);
        let corner = corner.unwrap_or(Spot::new(own.x, own.y));
        let low = corner.shifted(1.0, side - 1.0);
        let mut marks = check_square(low, 1.0, SQUARE);
        let style = TextStyle::new(Face::Regular, 8.0).tone(Tone::grey(0.35));
        let lines = ["page-metric-square", "page-inch-square"];
        for (message, down) in lines.into_iter().zip([24.0, 36.0]) {
            let text = self.studio.words.word(message, &[]);
            let at = corner.shifted(22.0, down);
            marks.push(text_mark(
                self.studio.fonts,
                &style,
                Anchor::Start,
                at,
                &text,
            ));
        }
        marks
    }

    /// Letter, name and grain inside the outline, where there is room: what is left when the paper
    /// around it is cut away.
    fn inside(&self, ink: &Ink) -> Vec<Mark> {
        let style = TextStyle::new(Face::Bold, 11.0);
        let title = shape_line(self.studio.fonts, &style, &self.part.title).width;
        let [most, height] = INSIDE;
        let width = (title + 30.0).clamp(64.0, most);
        let holds = |corner: &Spot| {
            let corners = [
                corner.shifted(0.0, 0.0),
                corner.shifted(width, 0.0),
                corner.shifted(0.0, height),
                corner.shifted(width, height),
            ];
            corners.into_iter().all(|spot| self.is_inside(spot))
        };
        let clear = |corner: &Spot| {
            let area = Area {
                x: corner.x - 3.0,
                y: corner.y - 3.0,
                width: width + 6.0,
                height: height + 6.0,
            };
            ink.within(&area) == 0 && holds(corner)
        };
        let room = joints::inner(self);
        let Some(corner) = places(&room, [width, height]).find(clear) else {
            return Vec::new();
        };
        let mut marks = foot::letter_and_name(self, style, corner.shifted(0.0, 15.0), width);
        if let Some(way) = self.grain() {
            let [x, _] = way;
            let half: f64 = if x == 0.0 { 9.0 } else { 24.0 };
            let middle = corner.shifted(half.max(10.0), 31.0);
            grain_arrow(middle, way.map(|part| part * half), &mut marks);
        }
        marks
    }

    /// True for a spot on the wood.
    fn is_inside(&self, spot: Spot) -> bool {
        let origin = self.origin();
        let mm = |points: f64| Length::from_mm_f64(points / PT_PER_MM);
        let (x, y) = (mm(spot.x - origin.x), mm(origin.y - spot.y));
        self.laid
            .outline
            .holds(crate::geometry::PlanePoint::new(x, y))
    }

    /// The short name of a sheet.
    fn name_of(&self, tile: &Tile) -> String {
        let filling = [
            ("row", Filling::from(tile.row)),
            ("column", Filling::from(tile.column)),
        ];
        self.studio.words.word("template-sheet-short", &filling)
    }

    /// What the sheet shows and which of all it is.
    fn described(&self) -> String {
        let words = self.studio.words;
        let side = self.laid.template.side.word().into();
        let side = words.word("side-short", &[("side", side)]);
        let shown = words.word("template-shown", &[("side", side.into())]);
        if self.sheets.tiles.len() == 1 {
            return shown;
        }
        let which = words.word(
            "template-sheet",
            &[
                ("row", Filling::from(self.tile.row)),
                ("rows", Filling::from(self.sheets.rows)),
                ("column", Filling::from(self.tile.column)),
                ("columns", Filling::from(self.sheets.columns)),
                ("short", self.name_of(self.tile).into()),
            ],
        );
        format!("{which}. {shown}")
    }
}
