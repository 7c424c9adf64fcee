//! Cutting layouts to scale: a sheet or board as bought, the blanks on it, and what is left.
//!
//! Sheets are drawn with their length across the page. Boards and bars too thin to write on are
//! drawn wider than they are; their lengths stay to scale. On a page that is narrow, sheets stand
//! upright.

use std::collections::BTreeMap;

use super::frame::Frame;
use crate::build::Build;
use crate::display::{Area, Ends, Face, Figure, Mark, PT_PER_MM, Path, Pen, Spot, Tone};
use crate::model::Grain;
use crate::stock::{CutDirection, Layout, Placement, Stock};
use crate::text::{Anchor, Fonts, TextStyle, shape_line, text_mark};
use crate::units::{Length, Precision};
use crate::words::Words;

/// Left of the text column's width beside a piece of stock for its width figure, in points.
const BESIDE_PT: f64 = 66.0;
/// How long a sheet that stands upright is on a narrow page, in points: its heading and the line
/// below it have room on the same page.
const UPRIGHT_PT: f64 = 300.0;
/// A piece of stock stands upright if it is at least this part of its length wide.
const UPRIGHT_SHARE: f64 = 0.2;
/// Boards are drawn at least that high, in points: two lines of small text.
const LEAST_HEIGHT_PT: f64 = 30.0;
/// Sheets are drawn at most that high on A4, in points: two stand on one page.
const MOST_HEIGHT_PT: f64 = 240.0;
/// Room around the piece, in points.
const ROOM_LEFT: f64 = 2.0;
const ROOM_RIGHT: f64 = 70.0;
const ROOM_TOP: f64 = 16.0;
const ROOM_BELOW: f64 = 18.0;
/// A blank is paler than its outline and darker than an offcut, on any copier.
const BLANK: Tone = Tone::grey(0.88);
/// Letters of parts and figures of sizes, in points.
const LETTER: f64 = 10.0;
const FIGURE: f64 = 7.5;
/// The number of a setting on its cut, and the disc it stands on, in points.
const NUMBER: f64 = 6.5;
const DISC: f64 = 4.3;
/// From the beginning of a cut to the middle of its disc, in points.
const ALONG_CUT: f64 = 7.0;

/// The figures of all layouts, by the names the plan gives them.
pub fn cutting_layouts(
    fonts: &Fonts,
    build: &Build,
    stock: &Stock,
    words: &Words,
) -> BTreeMap<String, Figure> {
    let figures = stock.named_layouts();
    figures
        .map(|(name, layout)| (name, cutting_layout(fonts, build, layout, words)))
        .collect()
}

/// One sheet or board with all its blanks.
fn cutting_layout(fonts: &Fonts, build: &Build, layout: &Layout, words: &Words) -> Figure {
    let precision = build.plan.precision.with_mark(words.decimal_mark());
    let sheet = Sheet::new(fonts, build, layout, precision);
    let mut marks = vec![Mark::Stroke {
        path: Path::rectangle(sheet.whole()),
        pen: pen(0.5),
    }];
    sheet.trim(&mut marks);
    for placement in &layout.placements {
        sheet.blank(placement, &mut marks);
    }
    sheet.offcuts(&mut marks);
    sheet.numbers(&mut marks);
    sheet.measures(&mut marks);
    let whole = sheet.whole();
    let beside = if sheet.frame.is_narrow() {
        ROOM_LEFT
    } else {
        ROOM_RIGHT
    };
    Figure {
        width: whole.x + whole.width + beside,
        height: whole.y + whole.height + ROOM_BELOW,
        marks,
        alternative: sheet.alternative(words),
        to_scale: false,
    }
}

fn pen(width_mm: f64) -> Pen {
    Pen {
        width: width_mm * PT_PER_MM,
        tone: Tone::BLACK,
        dashes: Vec::new(),
    }
}

/// A layout and the two scales it is drawn at.
struct Sheet<'a> {
    fonts: &'a Fonts,
    build: &'a Build,
    layout: &'a Layout,
    precision: Precision,
    frame: Frame,
    lie: Lie,
    /// Points in a millimetre of the stock, along and across.
    scale: (f64, f64),
}

/// How a piece of stock lies on the page.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Lie {
    /// Its length runs across the page.
    Across,
    /// Its length runs down the page.
    Upright,
}

impl<'a> Sheet<'a> {
    fn new(fonts: &'a Fonts, build: &'a Build, layout: &'a Layout, precision: Precision) -> Self {
        let [length, width] = layout.size.map(|size| size.mm().max(1.0));
        let frame = Frame::of(build.plan.paper);
        let column = frame.width_mm * PT_PER_MM;
        let upright = frame.is_narrow() && width / length >= UPRIGHT_SHARE;
        let (lie, along) = if upright {
            let along = (UPRIGHT_PT / length).min((column - 2.0 * ROOM_LEFT) / width);
            (Lie::Upright, along)
        } else {
            let beside = if frame.is_narrow() {
                2.0 * ROOM_LEFT
            } else {
                BESIDE_PT
            };
            let most = frame.height_mm(MOST_HEIGHT_PT);
            let along = ((column - beside) / length).min(most / width);
            (Lie::Across, along)
        };
        let across = along.max(LEAST_HEIGHT_PT / width);
        Self {
            fonts,
            build,
            layout,
            precision,
            frame,
            lie,
            scale: (along, across),
        }
    }

    fn whole(&self) -> Area {
        let [length, width] = self.layout.size;
        self.area(Length::ZERO, Length::ZERO, length, width)
    }

    /// A rectangle of the stock on paper.
    fn area(&self, x: Length, y: Length, length: Length, width: Length) -> Area {
        let [x, length] = [x, length].map(|own| own.mm() * self.scale.0);
        let [y, width] = [y, width].map(|own| own.mm() * self.scale.1);
        let (x, y, width, height) = match self.lie {
            Lie::Across => (x, y, length, width),
            Lie::Upright => (y, x, width, length),
        };
        Area {
            x: ROOM_LEFT + x,
            y: ROOM_TOP + y,
            width,
            height,
        }
    }

    /// Dotted lines where the edges are trimmed off.
    fn trim(&self, marks: &mut Vec<Mark>) {
        let [ends, edges] = self.layout.trim;
        let [length, width] = self.layout.size;
        if !ends.is_positive() && !edges.is_positive() {
            return;
        }
        let inside = self.area(ends, edges, length - ends * 2, width - edges * 2);
        marks.push(Mark::Stroke {
            path: Path::rectangle(inside),
            pen: Pen {
                dashes: vec![0.7, 2.2],
                ..pen(0.25)
            },
        });
    }

    /// A blank with its letter, and its size where there is room for it.
    fn blank(&self, placement: &Placement, marks: &mut Vec<Mark>) {
        let area = self.area(placement.x, placement.y, placement.length, placement.width);
        let path = Path::rectangle(area);
        marks.push(Mark::Fill {
            path: path.clone(),
            tone: BLANK,
        });
        marks.push(Mark::Stroke {
            path,
            pen: pen(0.35),
        });
        let Some(part) = self.build.part(placement.part) else {
            return;
        };
        let letter = TextStyle::new(Face::Bold, LETTER);
        let sizes = [placement.length, placement.width];
        self.lines(area, Some((&part.label, letter)), sizes, marks);
        marks.push(Mark::Link {
            area,
            target: format!("part-{}", part.label),
        });
    }

    /// Offcuts large enough to write on carry their size.
    fn offcuts(&self, marks: &mut Vec<Mark>) {
        for offcut in &self.layout.offcuts {
            let area = self.area(offcut.x, offcut.y, offcut.length, offcut.width);
            self.lines(area, None, [offcut.length, offcut.width], marks);
        }
    }

    /// On every cut the number of its setting, in the order of the list below the figure. A cut
    /// too short for its disc carries none.
    fn numbers(&self, marks: &mut Vec<Mark>) {
        let settings = self.layout.settings();
        let style = TextStyle::new(Face::Bold, NUMBER);
        let mut discs: Vec<Spot> = Vec::new();
        let half_kerf = self.layout.kerf / 2;
        for cut in &self.layout.cuts {
            let number = settings
                .iter()
                .position(|one| one.direction == cut.direction && one.at == cut.setting);
            let Some(number) = number else { continue };
            let middle = cut.at + half_kerf;
            let area = match cut.direction {
                CutDirection::Rip => self.area(cut.from, middle, cut.to - cut.from, Length::ZERO),
                CutDirection::Crosscut => {
                    self.area(middle, cut.from, Length::ZERO, cut.to - cut.from)
                }
            };
            let start = Spot::new(area.x, area.y);
            let across = (cut.direction == CutDirection::Rip) == (self.lie == Lie::Across);
            let (run, way) = if across {
                (area.width, (1.0, 0.0))
            } else {
                (area.height, (0.0, 1.0))
            };
            let is_clear = |spot: Spot| {
                let far = |disc: &Spot| libm::hypot(disc.x - spot.x, disc.y - spot.y) > 2.2 * DISC;
                discs.iter().all(far)
            };
            let places = [ALONG_CUT, ALONG_CUT + 2.5 * DISC, run - ALONG_CUT];
            let spots = places.map(|along| start.shifted(way.0 * along, way.1 * along));
            let fitting = spots.into_iter().find(|spot| is_clear(*spot));
            let Some(spot) = fitting.filter(|_| run > 2.0 * ALONG_CUT) else {
                continue;
            };
            discs.push(spot);
            marks.push(Mark::Fill {
                path: Path::circle(spot, DISC),
                tone: Tone::WHITE,
            });
            marks.push(Mark::Stroke {
                path: Path::circle(spot, DISC),
                pen: pen(0.18),
            });
            let below = spot.shifted(0.0, NUMBER * 0.36);
            let text = (number + 1).to_string();
            marks.push(text_mark(self.fonts, &style, Anchor::Middle, below, &text));
        }
    }

    /// A letter over the size in both systems, as many of the lines as the area holds, in its
    /// middle. A letter alone shrinks until it fits.
    fn lines(
        &self,
        area: Area,
        letter: Option<(&str, TextStyle)>,
        [length, width]: [Length; 2],
        marks: &mut Vec<Mark>,
    ) {
        let small = TextStyle::new(Face::Regular, FIGURE);
        let [first, second] = self.sizes(length, width);
        let one = format!("{first} ({second})");
        let letter_line = letter.map(|(text, style)| vec![(text.to_owned(), style)]);
        let letter_line = letter_line.unwrap_or_default();
        let with = |lines: &[&str]| {
            let sizes = lines.iter().map(|line| ((*line).to_owned(), small));
            letter_line.iter().cloned().chain(sizes).collect::<Vec<_>>()
        };
        let choices = [with(&[&first, &second]), with(&[&one]), with(&[&first])];
        let fitting = choices.iter().find(|lines| self.fits(area, lines));
        let fallback = letter_line.into_iter().map(|(text, style)| {
            let room = (area.width * 0.9).min(area.height * 1.2);
            let wide = shape_line(self.fonts, &style, &text).width.max(1.0);
            let size = (style.size * room / wide.max(style.size)).min(style.size);
            (text, style.size(size.max(3.0)))
        });
        let lines = fitting.cloned().unwrap_or_else(|| fallback.collect());
        self.centred(area, &lines, marks);
    }

    fn fits(&self, area: Area, lines: &[(String, TextStyle)]) -> bool {
        let height: f64 = lines.iter().map(|(_, style)| style.size * 1.15).sum();
        let width = lines
            .iter()
            .map(|(text, style)| shape_line(self.fonts, style, text).width)
            .fold(0.0, f64::max);
        width + 4.0 <= area.width && height + 2.0 <= area.height
    }

    fn centred(&self, area: Area, lines: &[(String, TextStyle)], marks: &mut Vec<Mark>) {
        let height: f64 = lines.iter().map(|(_, style)| style.size * 1.15).sum();
        let mut y = area.y + (area.height - height) / 2.0;
        for (text, style) in lines {
            // The baseline of a line stands about nine tenths of its size below its top.
            let spot = Spot::new(area.x + area.width / 2.0, y + style.size * 0.93);
            marks.push(text_mark(self.fonts, style, Anchor::Middle, spot, text));
            y += style.size * 1.15;
        }
    }

    /// Both sizes in the author's system first and the other second, with units.
    fn sizes(&self, length: Length, width: Length) -> [String; 2] {
        let mark = |rounded: bool| if rounded { "~" } else { "" };
        let (a, b) = (
            length.printed(self.precision),
            width.printed(self.precision),
        );
        let exact = |error: Length| error != Length::ZERO;
        let mm = format!(
            "{}{} × {}{}\u{a0}mm",
            mark(exact(a.mm_error)),
            a.mm,
            mark(exact(b.mm_error)),
            b.mm
        );
        let inch = format!(
            "{}{} × {}{}\u{a0}in",
            mark(exact(a.inch_error)),
            a.inch_set,
            mark(exact(b.inch_error)),
            b.inch_set
        );
        if self.precision.metric_first {
            [mm, inch]
        } else {
            [inch, mm]
        }
    }

    /// One length in both systems, one under the other.
    fn both(&self, length: Length) -> [String; 2] {
        let printed = length.printed(self.precision);
        let mark = |error: Length| if error == Length::ZERO { "" } else { "~" };
        let mm = format!("{}{}\u{a0}mm", mark(printed.mm_error), printed.mm);
        let inch = format!("{}{}\u{a0}in", mark(printed.inch_error), printed.inch_set);
        if self.precision.metric_first {
            [mm, inch]
        } else {
            [inch, mm]
        }
    }

    /// Length and width of the piece as bought, and the arrow of its grain.
    fn measures(&self, marks: &mut Vec<Mark>) {
        let whole = self.whole();
        let small = TextStyle::new(Face::Regular, FIGURE + 1.0);
        let [length, width] = self.layout.size;
        let below = Spot::new(whole.x + whole.width / 2.0, whole.y + whole.height + 12.0);
        self.grain(&whole, marks);
        if self.frame.is_narrow() {
            let [first, second] = self.sizes(length, width);
            let line = format!("{first} ({second})");
            marks.push(text_mark(self.fonts, &small, Anchor::Middle, below, &line));
            return;
        }
        let [first, second] = self.both(length);
        let line = format!("{first} ({second})");
        marks.push(text_mark(self.fonts, &small, Anchor::Middle, below, &line));
        let [first, second] = self.both(width);
        let beside = Spot::new(whole.x + whole.width + 6.0, whole.y + whole.height / 2.0);
        marks.push(text_mark(self.fonts, &small, Anchor::Start, beside, &first));
        let second = format!("({second})");
        let under = beside.shifted(0.0, 10.0);
        marks.push(text_mark(self.fonts, &small, Anchor::Start, under, &second));
    }

    /// The arrow of the grain, beside the piece where that lies and at its upper end where it
    /// stands.
    fn grain(&self, whole: &Area, marks: &mut Vec<Mark>) {
        let material = self.build.material(self.layout.material);
        if material.is_some_and(|material| material.grain == Grain::AlongLength) {
            let middle = Spot::new(whole.x + whole.width / 2.0, ROOM_TOP / 2.0);
            let way = match self.lie {
                Lie::Across => [GRAIN, 0.0],
                Lie::Upright => [0.0, ROOM_TOP / 2.0 - 1.0],
            };
            grain_arrow(middle, way, marks);
        }
    }

    /// What a reader hears who does not see the figure.
    fn alternative(&self, words: &Words) -> String {
        let mut counts: BTreeMap<&str, usize> = BTreeMap::new();
        for placement in &self.layout.placements {
            if let Some(part) = self.build.part(placement.part) {
                *counts.entry(part.label.as_str()).or_default() += 1;
            }
        }
        let parts: Vec<String> = counts
            .iter()
            .map(|(label, count)| format!("{count} × {label}"))
            .collect();
        let [first, second] = self.sizes(self.layout.size[0], self.layout.size[1]);
        let size = format!("{first} ({second})");
        let places = [("size", size.into()), ("parts", parts.join(", ").into())];
        words.word("figure-layout", &places)
    }
}

/// Half of a grain arrow's length, in points.
const GRAIN: f64 = 26.0;

/// A double arrow along the grain; `way` leads from its middle to one of its tips.
pub(super) fn grain_arrow(middle: Spot, [x, y]: [f64; 2], marks: &mut Vec<Mark>) {
    let half = libm::hypot(x, y).max(0.01);
    let (x, y) = (x / half, y / half);
    let (head, rise) = (5.0, 2.2);
    let shaft = [-half, half].map(|along| middle.shifted(along * x, along * y));
    marks.push(Mark::Stroke {
        path: Path::polyline(&shaft, Ends::Open),
        pen: pen(0.25),
    });
    for side in [-1.0, 1.0] {
        let tip = middle.shifted(half * side * x, half * side * y);
        let barb = |up: f64| {
            let back = -head * side;
            tip.shifted(back * x - up * y, back * y + up * x)
        };
        let barbs = [barb(-rise), tip, barb(rise)];
        marks.push(Mark::Stroke {
            path: Path::polyline(&barbs, Ends::Open),
            pen: pen(0.25),
        });
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::solid::Solids;
    use crate::stock::{lay_out, sample};

    /// Corners of all filled and stroked rectangles and the extent of all texts.
    fn extent(figure: &Figure) -> Vec<(f64, f64)> {
        let mut spots = Vec::new();
        for mark in &figure.marks {
            match mark {
                Mark::Text(run) => {
                    let width: f64 = run.glyphs.iter().map(|glyph| glyph.advance).sum();
                    spots.push((run.origin.x, run.origin.y));
                    spots.push((run.origin.x + width, run.origin.y));
                }
                Mark::Link { area, .. } => {
                    spots.push((area.x, area.y));
                    spots.push((area.x + area.width, area.y + area.height));
                }
                Mark::Stroke { .. } | Mark::Fill { .. } | Mark::Sealed { .. } => {}
            }
        }
        spots
    }

    #[test]
    fn every_layout_is_drawn_inside_its_figure() {
        let build = sample::shelf_unit();
        let stock = lay_out(&build, &Solids::default()).value;
        let fonts = Fonts::shipped().unwrap();
        let figures = cutting_layouts(&fonts, &build, &stock, &Words::english());
        let names: Vec<&str> = figures.keys().map(String::as_str).collect();
        assert_eq!(names, ["layout-1", "layout-2", "layout-3"]);
        for figure in figures.values() {
            for (x, y) in extent(figure) {
                assert!(x >= 0.0 && x <= figure.width, "{x} of {}", figure.width);
                assert!(y >= 0.0 && y <= figure.height, "{y} of {}", figure.height);
            }
        }
    }

    #[test]
    fn every_blank_leads_to_its_row() {
        let build = sample::shelf_unit();
        let stock = lay_out(&build, &Solids::default()).value;
        let fonts = Fonts::shipped().unwrap();
        let figures = cutting_layouts(&fonts, &build, &stock, &Words::english());
        let links = figures.values().flat_map(|figure| &figure.marks);
        let count = links
            .filter(|mark| matches!(mark, Mark::Link { .. }))
            .count();
        let blanks: usize = stock
            .plans()
            .flat_map(|plan| &plan.layouts)
            .map(|layout| layout.placements.len())
            .sum();
        assert_eq!(count, blanks);
    }

    #[test]
    fn lengths_are_to_scale() {
        let build = sample::shelf_unit();
        let stock = lay_out(&build, &Solids::default()).value;
        let fonts = Fonts::shipped().unwrap();
        let layout = &stock.sheets[0].layouts[0];
        let sheet = Sheet::new(&fonts, &build, layout, build.plan.precision);
        let whole = sheet.whole();
        for placement in &layout.placements {
            let area = sheet.area(placement.x, placement.y, placement.length, placement.width);
            let share = placement.length.mm() / layout.size[0].mm();
            assert!((area.width / whole.width - share).abs() < 1e-9);
            let share = placement.width.mm() / layout.size[1].mm();
            assert!((area.height / whole.height - share).abs() < 1e-9);
        }
    }
}
