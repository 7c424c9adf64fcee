//! Sections through blind features: a part cut open, its depths dimensioned.
//!
//! At the scale of the part's drawing where depths are large enough on paper to be read; else
//! larger, and then what lies around the features alone, ended by break lines.

use super::super::bodies::{add_shell, length, micrometres};
use super::super::compose::{Studio, area_around};
use super::super::frame::Frame;
use super::super::hidden_lines::{VisibleLine, drawn_lines};
use super::super::scene::{BodyId, Scene};
use super::super::view::{View, WorldPoint};
use super::dimension_rows::Lettering;
use super::planes::{Blind, CuttingPlane, cut_by, planes};
use super::section_window::Window;
use super::tags::{extent, plane};
use super::views::{outward, seen_from};
use crate::build::Part;
use crate::display::{Ends, Mark, PT_PER_MM, Path, PathPiece, Spot, Tone};
use crate::geometry::{Interval, PartAxis, Region, Side};
use crate::solid::{Shell, section};
use crate::text::{Anchor, TextStyle, text_mark};
use crate::units::Length;

/// Depths and wood that come to as much as these on paper are read at the scale of the part's
/// drawing, in millimetres.
const LEAST_DEPTH_MM: f64 = 4.0;
const LEAST_WOOD_MM: f64 = 8.0;
/// An enlarged section shows depths and wood as large as these, and wood no larger than that, in
/// millimetres.
const LARGE_DEPTH_MM: f64 = 6.0;
const LARGE_WOOD_MM: f64 = 12.0;
const MOST_WOOD_MM: f64 = 40.0;
/// A section that is as high as its part is wide is turned if it were higher, in millimetres.
const UPRIGHT_MM: f64 = 45.0;
/// A whole section that is enlarged is no wider, in millimetres.
const WHOLE_MM: f64 = 80.0;
/// Around a feature, in millimetres on paper.
const AROUND_MM: f64 = 7.0;
/// Of a long channel no more is shown than its end, in millimetres on paper.
const LONGEST_MM: f64 = 32.0;
/// Between two windows and two sections, in millimetres.
const GAP_MM: f64 = 6.0;
/// From a section's title to the section, in millimetres.
const UNDER_TITLE_MM: f64 = 4.0;

/// Scales of drawings as how much one is of the other (ISO 5455, ref: units-and-paper,
/// "Scales" [V]; enlargements [M]).
const SCALES: [(u32, u32); 10] = [
    (1, 100),
    (1, 50),
    (1, 20),
    (1, 10),
    (1, 5),
    (1, 2),
    (1, 1),
    (2, 1),
    (5, 1),
    (10, 1),
];

/// How much room sections have on their sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Room {
    /// They may be as large as is good.
    Ample,
    /// They are as small as can be read.
    Scarce,
}

impl Room {
    /// The least depth and wood of an enlarged section, in millimetres on paper.
    const fn least_mm(self) -> (f64, f64) {
        match self {
            Self::Ample => (LARGE_DEPTH_MM, LARGE_WOOD_MM),
            Self::Scarce => (LEAST_DEPTH_MM, LEAST_WOOD_MM),
        }
    }
}

/// A cut through a part, ready to be drawn.
pub(super) struct Cut {
    /// Its letter.
    pub(super) letter: char,
    /// Where it is.
    pub(super) plane: CuttingPlane,
    /// The side that is looked from.
    pub(super) eye: Side,
    /// Everything that it passes through.
    pub(super) blinds: Vec<Blind>,
    /// The face of the cut, in the plane of the part's other two axes.
    pub(super) face: Region,
    pub(super) scene: Scene,
}

/// A cut as it lies on paper: upright as the part stands in its main view, or with its long side
/// along the lines of text.
pub(super) struct Laying<'c> {
    pub(super) cut: &'c Cut,
    pub(super) view: View,
    pub(super) lines: Vec<VisibleLine>,
    /// Points on paper for a micrometre.
    pub(super) scale: f64,
}

/// The cuts that show the blind features of a part; `main` is the side of its first view.
pub(super) fn cuts(part: &Part, shell: &Shell, main: Side) -> Vec<Cut> {
    let eye = |axis: PartAxis| match (axis, main) {
        (PartAxis::Length, _) => Side::Head,
        // From below on paper, so that what is up in the section is the side of the main view.
        (PartAxis::Width | PartAxis::Thickness, Side::Back) => Side::Far,
        (PartAxis::Width | PartAxis::Thickness, _) => Side::Near,
    };
    let lettered = planes(part).into_iter().zip('A'..);
    let cuts = lettered.map(|(plane, letter)| {
        let eye = eye(plane.axis);
        let open = section(shell, eye, plane.at);
        let mut scene = Scene::new();
        add_shell(&mut scene, BodyId(0), &open.shell, [0.0; 3]);
        Cut {
            letter,
            eye,
            blinds: cut_by(part, &plane),
            plane,
            face: open.face,
            scene,
        }
    });
    cuts.filter(|cut| !cut.face.is_empty()).collect()
}

/// The sections of a part whose drawing is made at one to `reduction`, each by itself.
pub(super) fn sections(
    studio: &Studio<'_>,
    part: &Part,
    cuts: &[Cut],
    main: Side,
    (reduction, room): (u32, Room),
) -> Vec<Vec<Mark>> {
    let lettering = Lettering {
        fonts: studio.fonts,
        precision: studio.precision(),
    };
    let drawn = |cut| {
        titled(
            &lettering,
            part,
            cut,
            main,
            (reduction, room),
            &studio.frame,
        )
    };
    cuts.iter().map(drawn).collect()
}

/// Blocks of marks in rows from the left, as many in each as the width has room for.
pub(super) fn in_rows(blocks: impl Iterator<Item = Vec<Mark>>, width_mm: f64) -> Vec<Mark> {
    let gap = GAP_MM * PT_PER_MM;
    let (mut x, mut y, mut row) = (0.0, 0.0, 0.0);
    let mut marks = Vec::new();
    for block in blocks {
        let Some(area) = area_around(&block) else {
            continue;
        };
        if x > 0.0 && x + area.width > width_mm * PT_PER_MM - 3.0 {
            (x, y, row) = (0.0, y + row + gap, 0.0);
        }
        let (dx, dy) = (x - area.x, y - area.y);
        marks.extend(block.into_iter().map(|mark| mark.shifted(dx, dy)));
        x += area.width + gap;
        row = area.height.max(row);
    }
    marks
}

/// A section under its title.
fn titled(
    lettering: &Lettering<'_>,
    part: &Part,
    cut: &Cut,
    main: Side,
    (reduction, room): (u32, Room),
    frame: &Frame,
) -> Vec<Mark> {
    let width_mm = frame.width_mm;
    let wood = extent(part, PartAxis::Thickness).size().mm();
    let depths = cut.plane.shown.iter().flat_map(|blind| &blind.depths);
    let least = depths
        .map(|depth| depth.depth.mm())
        .fold(f64::INFINITY, f64::min);
    let of = |(up, down): (u32, u32)| f64::from(up) / f64::from(down);
    let own = (1, reduction);
    let (large_depth, large_wood) = room.least_mm();
    let reads =
        |scale: &(u32, u32)| least * of(*scale) >= large_depth && wood * of(*scale) >= large_wood;
    let larger = |scale: &(u32, u32)| of(*scale) > of(own) && wood * of(*scale) <= MOST_WOOD_MM;
    let enlarged = || {
        let mut scales = SCALES.into_iter().filter(larger);
        scales
            .find(reads)
            .or_else(|| SCALES.into_iter().rfind(larger))
    };
    let scale = if least * of(own) >= LEAST_DEPTH_MM && wood * of(own) >= LEAST_WOOD_MM {
        own
    } else {
        enlarged().unwrap_or(own)
    };
    let along = run(cut.plane.axis);
    let whole = extent(part, along);
    let size = whole.size().mm() * of(scale);
    let is_whole = size
        <= if scale == own {
            width_mm - 45.0
        } else {
            WHOLE_MM.min(width_mm - 45.0)
        };
    let turned = cut.plane.axis == PartAxis::Length && !(is_whole && size <= UPRIGHT_MM);
    let laying = Laying::new(cut, main, turned, of(scale) * PT_PER_MM / 1000.0);
    let reaches = if is_whole {
        vec![whole]
    } else {
        windows(cut, whole, AROUND_MM / of(scale), LONGEST_MM / of(scale))
    };
    let thick = extent(part, PartAxis::Thickness);
    let drawn = reaches
        .into_iter()
        .map(|reach| Window::new(&laying, [reach, thick], whole).marks(lettering));
    let mut marks = in_rows(drawn, width_mm);
    let Some(area) = area_around(&marks) else {
        return marks;
    };
    let letter = cut.letter;
    let mut title = format!("{letter}–{letter}");
    if scale != own && !frame.on_screen {
        title = format!("{title} ({}:{})", scale.0, scale.1);
    }
    let style = title_style();
    let middle = if turned { 3.5 } else { 0.0 } * PT_PER_MM;
    let spot = Spot::new(
        area.x + area.width / 2.0 - middle,
        area.y - UNDER_TITLE_MM * PT_PER_MM,
    );
    let text = text_mark(lettering.fonts, &style, Anchor::Middle, spot, &title);
    if turned && let Some(own) = area_around(std::slice::from_ref(&text)) {
        let centre = Spot::new(own.x + own.width + 3.5 * PT_PER_MM, spot.y - 3.0);
        marks.extend(turn_symbol(centre));
    }
    marks.push(text);
    marks
}

/// Letters of sections and their titles: larger than figures (ISO 128-3 [M]).
pub(super) const fn title_style() -> TextStyle {
    TextStyle::new(crate::display::Face::Bold, 10.0)
}

/// The sign that a section is turned clockwise out of how it lies in its part (ISO 128-3: an arc
/// with an arrow [M]).
fn turn_symbol(centre: Spot) -> [Mark; 2] {
    let r = 1.6 * PT_PER_MM;
    let k = r * 0.552_284_749_830_793_6;
    let at = |x: f64, y: f64| centre.shifted(x, y);
    let arc = vec![
        PathPiece::Move(at(-r, 0.0)),
        PathPiece::Curve(at(-r, -k), at(-k, -r), at(0.0, -r)),
        PathPiece::Curve(at(k, -r), at(r, -k), at(r, 0.0)),
    ];
    let (long, half) = (1.8 * PT_PER_MM, 0.6 * PT_PER_MM);
    let head = [
        at(r, long * 0.6),
        at(r - half, -long * 0.4),
        at(r + half, -long * 0.4),
    ];
    [
        Mark::Stroke {
            path: Path { pieces: arc },
            pen: super::super::pens::line(super::super::pens::NARROW_MM, Tone::BLACK),
        },
        Mark::Fill {
            path: Path::polyline(&head, Ends::Joined),
            tone: Tone::BLACK,
        },
    ]
}

/// The axis that a cut runs along, beside the thickness.
pub(super) const fn run(axis: PartAxis) -> PartAxis {
    match axis {
        PartAxis::Length => PartAxis::Width,
        PartAxis::Width | PartAxis::Thickness => PartAxis::Length,
    }
}

/// What is shown of a cut that is too long to be shown whole: the stretches around its features.
fn windows(cut: &Cut, whole: Interval, around: f64, longest: f64) -> Vec<Interval> {
    let axis = run(cut.plane.axis);
    let (around, longest) = (Length::from_mm_f64(around), Length::from_mm_f64(longest));
    let mut reaches: Vec<Interval> = Vec::new();
    for blind in &cut.plane.shown {
        let reach = sunk_along(blind, axis, whole);
        // Of a long channel the end where it stops.
        let reach = if blind.is_hole() || reach.size() <= longest {
            reach
        } else if reach.low > whole.low {
            Interval::new(reach.low, reach.low + longest)
        } else {
            Interval::new(reach.high - longest, reach.high)
        };
        // What little would be left up to an end of the part is shown too.
        let near = around * 2;
        reaches.push(Interval {
            low: if reach.low - near < whole.low {
                whole.low
            } else {
                reach.low - around
            },
            high: if reach.high + near > whole.high {
                whole.high
            } else {
                reach.high + around
            },
        });
    }
    reaches.sort();
    let mut joined: Vec<Interval> = Vec::new();
    for reach in reaches {
        match joined.last_mut() {
            Some(last) if reach.low <= last.high => *last = last.hull(reach),
            _ => joined.push(reach),
        }
    }
    joined
}

/// The reach of a feature along the axis that a cut runs along: its mouth, or from its side to
/// its floor.
pub(super) fn sunk_along(blind: &Blind, axis: PartAxis, whole: Interval) -> Interval {
    blind.along(axis).unwrap_or_else(|| {
        let depth = blind.depths.iter().map(|depth| depth.depth).max();
        let depth = depth.unwrap_or_default();
        if blind.side.is_high() {
            Interval::new(whole.high - depth, whole.high)
        } else {
            Interval::new(whole.low, whole.low + depth)
        }
    })
}

impl<'c> Laying<'c> {
    fn new(cut: &'c Cut, main: Side, turned: bool, scale: f64) -> Self {
        let view = if turned {
            // A quarter turn clockwise: the side of the main view is up.
            let [ax, ay, az] = outward(main);
            let [bx, by, bz] = outward(cut.eye);
            let right = [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx];
            View::from_axes(right, outward(main))
        } else {
            seen_from(cut.eye, main).view
        };
        Self {
            cut,
            view,
            lines: drawn_lines(&cut.scene, &view),
            scale,
        }
    }

    /// A point of the cut in the view, in micrometres: its place along the two axes of the cut,
    /// in the part's order.
    pub(super) fn seen(&self, at: [Length; 2]) -> [f64; 2] {
        let mut point: WorldPoint = [0.0; 3];
        for (axis, value) in plane(self.cut.eye).into_iter().zip(at) {
            if let Some(slot) = point.get_mut(axis.index()) {
                *slot = length(value);
            }
        }
        if let Some(slot) = point.get_mut(self.cut.plane.axis.index()) {
            *slot = micrometres(self.cut.plane.at.nm());
        }
        let [x, y, _] = self.view.project(point);
        [x, y]
    }
}
