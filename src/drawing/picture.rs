//! A scene as marks: fills by tone, then lines by pen.

use std::borrow::Cow;
use std::collections::BTreeMap;

use super::chains::{Stretch, chain};
use super::curves;
use super::fills::{VisibleFill, visible_among};
use super::front::Front;
use super::grid::Bounds;
use super::hidden_lines::{VisibleLine, drawn_before};
use super::pens::{MEDIUM_MM, NARROW_MM, PALE_INK, THIN_MM, TRACE_INK, WIDE_MM, dash_dot, line};
use super::scene::{BodyId, EdgeKind, Scene, SceneEdge};
use super::silhouettes::with_exact_silhouettes;
use super::thinning::thinned_ring;
use super::view::{EDGE_ON, View};
use super::walls::with_walls_together;
use crate::display::{Ends, Mark, PT_PER_MM, Path, PathPiece, Pen, Spot, Tone};

/// How a body is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Ink {
    /// Strong tones by face, medium lines: the picture on the cover.
    Shaded,
    /// White, wide lines: what comes in, or what is shown for itself.
    New,
    /// Pale grey, thin lines: what is there already.
    Built,
    /// A screw, dowel or tenon.
    Hardware,
}

/// What is drawn of a scene, in micrometres of the view.
pub(super) struct Picture {
    /// The scene, its silhouettes where they are seen.
    pub(super) scene: Scene,
    /// Visible lines.
    pub(super) lines: Vec<VisibleLine>,
    /// Visible parts of faces.
    pub(super) fills: Vec<VisibleFill>,
    /// Around it all.
    pub(super) bounds: Bounds,
}

impl Picture {
    /// What is seen of a scene.
    pub(super) fn take(scene: Scene, view: &View) -> Self {
        let scene = with_exact_silhouettes(Cow::Owned(scene), view).into_owned();
        let front = Front::prepare(&scene, view);
        let lines = drawn_before(&scene, view, &front);
        let fills = visible_among(&with_walls_together(front));
        let mut bounds = Bounds::NONE;
        for line in &lines {
            for [x, y] in line.ends {
                bounds.take(x, y);
            }
        }
        Self {
            scene,
            lines,
            fills,
            bounds,
        }
    }
}

/// Where a view lies on paper.
#[derive(Clone, Copy, Debug)]
pub(super) struct Sheet {
    /// Points on paper for a micrometre of the view.
    pub(super) scale: f64,
    /// Where the view's own zero is.
    pub(super) origin: Spot,
}

impl Sheet {
    /// A view's `bounds` with its upper left corner at `corner`.
    pub(super) fn new(bounds: &Bounds, scale: f64, corner: Spot) -> Self {
        let [left, top] = [bounds.low[0], bounds.high[1]];
        Self {
            scale,
            origin: Spot::new(corner.x - left * scale, corner.y + top * scale),
        }
    }

    /// A point of the view on paper.
    pub(super) fn spot(&self, [x, y]: [f64; 2]) -> Spot {
        Spot::new(
            self.origin.x + x * self.scale,
            self.origin.y - y * self.scale,
        )
    }
}

/// Lines that come to less than this on paper, in millimetres, are left out.
const SHORTEST_MM: f64 = 0.05;
/// Width of the line in a fill's own tone that closes the hair between two fills.
const SEAL_PT: f64 = 0.35;

/// The marks of a picture, each body in its ink.
pub(super) fn marks(
    view: &View,
    picture: &Picture,
    ink: impl Fn(BodyId) -> Ink,
    sheet: &Sheet,
) -> Vec<Mark> {
    let scene = &picture.scene;
    let mut marks = Vec::new();
    lay_fills(scene, view, &picture.fills, &ink, sheet, &mut marks);
    let wide = edge_width(picture, sheet);
    let mut groups: BTreeMap<(Rank, BodyId), Vec<Stretch>> = BTreeMap::new();
    for line in &picture.lines {
        if let Some(edge) = scene.edges.get(line.edge) {
            let rank = Rank::of(ink(edge.body), edge.kind, is_outline(edge, view));
            // Bodies of one rank are chained apart, so that a chain is one thing's outline.
            let stretch = Stretch {
                ends: line.ends,
                round: edge.round,
            };
            groups.entry((rank, edge.body)).or_default().push(stretch);
        }
    }
    let mut paths: BTreeMap<Rank, Path> = BTreeMap::new();
    for ((rank, _), lines) in &groups {
        for chain in chain(lines) {
            if chain.run() * sheet.scale < SHORTEST_MM * PT_PER_MM {
                continue;
            }
            let path = curves::path(&chain, &scene.rounds, view, sheet);
            paths.entry(*rank).or_default().pieces.extend(path.pieces);
        }
    }
    for (rank, path) in paths {
        marks.push(Mark::Stroke {
            path,
            pen: rank.pen(wide),
        });
    }
    marks
}

/// Wide lines where there is room between them, medium ones in a dense drawing.
fn edge_width(picture: &Picture, sheet: &Sheet) -> f64 {
    let total: f64 = picture.lines.iter().map(VisibleLine::length).sum::<f64>() * sheet.scale;
    let [width, height] = picture.bounds.size();
    let area = (width * height * sheet.scale * sheet.scale).max(1.0);
    // Points of line in a square of 10 mm, on an average.
    let density = total / area * (10.0 * PT_PER_MM) * (10.0 * PT_PER_MM);
    if density < 4.2 * 10.0 * PT_PER_MM {
        WIDE_MM
    } else {
        MEDIUM_MM
    }
}

/// True where a body ends in the view: only one of the faces that meet in the edge is seen.
fn is_outline(edge: &SceneEdge, view: &View) -> bool {
    let [a, b] = edge.normals.map(|normal| view.towards_eye(normal));
    (a > EDGE_ON) != (b > EDGE_ON)
}

/// Lines of one pen, in the order they are drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Rank {
    BuiltSeam,
    BuiltEdge,
    BuiltOutline,
    Way,
    Seam,
    Hardware,
    ShadedEdge,
    ShadedOutline,
    NewEdge,
    NewOutline,
}

impl Rank {
    const fn of(ink: Ink, kind: EdgeKind, outline: bool) -> Self {
        match (ink, kind) {
            (_, EdgeKind::Free) => Self::Way,
            (Ink::Built, EdgeKind::Seam) => Self::BuiltSeam,
            (_, EdgeKind::Seam) => Self::Seam,
            (Ink::Built, EdgeKind::Sharp | EdgeKind::Smooth) if outline => Self::BuiltOutline,
            (Ink::Built, EdgeKind::Sharp | EdgeKind::Smooth) => Self::BuiltEdge,
            (Ink::Shaded, EdgeKind::Sharp | EdgeKind::Smooth) if outline => Self::ShadedOutline,
            (Ink::Shaded, EdgeKind::Sharp | EdgeKind::Smooth) => Self::ShadedEdge,
            (Ink::Hardware, EdgeKind::Sharp | EdgeKind::Smooth) => Self::Hardware,
            (Ink::New, EdgeKind::Sharp | EdgeKind::Smooth) if outline => Self::NewOutline,
            (Ink::New, EdgeKind::Sharp | EdgeKind::Smooth) => Self::NewEdge,
        }
    }

    fn pen(self, wide_mm: f64) -> Pen {
        match self {
            Self::BuiltSeam => line(0.13, PALE_INK),
            Self::BuiltEdge => line(THIN_MM, PALE_INK),
            Self::BuiltOutline => line(NARROW_MM, PALE_INK),
            Self::Way => dash_dot(THIN_MM, TRACE_INK),
            Self::Seam | Self::Hardware => line(THIN_MM, Tone::BLACK),
            // Where two seen faces meet, the narrow line of the pair: a groove stays a groove.
            Self::ShadedEdge | Self::NewEdge => line(wide_mm / 2.0, Tone::BLACK),
            Self::ShadedOutline => line(wide_mm * 0.7, Tone::BLACK),
            Self::NewOutline => line(wide_mm, Tone::BLACK),
        }
    }
}

/// Light comes from the upper left, over the reader's shoulder.
const LIGHT: [f64; 3] = [-0.45, 0.78, 0.43];

/// The tone of a face that looks along `normal` in the view, in hundredths of white.
fn tone(ink: Ink, normal: [f64; 3]) -> u8 {
    let [x, y, w] = normal;
    let [lx, ly, lw] = LIGHT;
    let lit = (x * lx + y * ly + w * lw).clamp(-0.2, 1.0);
    let (dark, light) = match ink {
        Ink::Shaded => (74.0, 97.0),
        Ink::New => (95.0, 100.0),
        Ink::Built => (85.0, 94.0),
        Ink::Hardware => (62.0, 92.0),
    };
    let level: f64 = dark + (light - dark) * (lit + 0.2) / 1.2;
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "between 0 and 100"
    )]
    let whole = level.round().clamp(0.0, 100.0) as u8;
    whole
}

fn lay_fills(
    scene: &Scene,
    view: &View,
    fills: &[VisibleFill],
    ink: impl Fn(BodyId) -> Ink,
    sheet: &Sheet,
    marks: &mut Vec<Mark>,
) {
    let mut groups: BTreeMap<(BodyId, u8), Path> = BTreeMap::new();
    for fill in fills {
        let Some(face) = scene.faces.get(fill.face) else {
            continue;
        };
        let tone = tone(ink(fill.body), view.turn(face.normal));
        let pieces = &mut groups.entry((fill.body, tone)).or_default().pieces;
        for ring in fill.pieces.iter().flatten() {
            let spots: Vec<Spot> = ring.iter().map(|point| sheet.spot(*point)).collect();
            pieces.extend(Path::polyline(&thinned_ring(&spots), Ends::Joined).pieces);
        }
    }
    for ((_, level), path) in groups {
        let tone = Tone::grey(f64::from(level) / 100.0);
        if path.pieces.iter().any(|piece| *piece != PathPiece::Close) {
            marks.push(Mark::Sealed {
                path,
                tone,
                width: SEAL_PT,
            });
        }
    }
}
