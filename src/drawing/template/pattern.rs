//! What a template shows, at its full size: outline, edges, middles of holes, centre lines.
//!
//! In points from the origin of the side as it is seen, y downwards. Arcs are drawn as Bézier
//! curves of an eighth of a turn at the most, which leave them by four millionths of their radius.

use std::f64::consts::{FRAC_PI_4, TAU};

use super::super::bodies::add_shell;
use super::super::chains::{Stretch, chain};
use super::super::curves;
use super::super::hidden_lines::drawn_lines;
use super::super::picture;
use super::super::scene::{BodyId, Scene};
use super::super::view::{View, WorldPoint};
use crate::display::{Ends, PT_PER_MM, Path, PathPiece, Spot};
use crate::full_size::{Cross, Laid};
use crate::geometry::region::BoundaryEdge;
use crate::geometry::{Circle, PlanePoint};
use crate::solid::Shell;

/// How far the arms of a cross reach beyond the rim of its hole, in millimetres.
const ARMS_MM: f64 = 3.0;
/// How far a centre line reaches beyond the outline, in millimetres.
const BEYOND_MM: f64 = 3.0;

/// The lines of a template, by the pen that draws them.
pub(super) struct Pattern {
    /// Where the piece is cut.
    pub(super) outline: Path,
    /// Edges of what is cut into it.
    pub(super) edges: Path,
    /// Middles of holes.
    pub(super) crosses: Path,
    /// The middles of its length and its width.
    pub(super) centre_lines: Path,
}

impl Pattern {
    pub(super) fn of(laid: &Laid, shell: &Shell) -> Self {
        Self {
            outline: outline(laid),
            edges: edges(laid, shell),
            crosses: crosses(&laid.crosses),
            centre_lines: centre_lines(laid),
        }
    }

    /// Every path moved.
    pub(super) fn shifted(&self, dx: f64, dy: f64) -> Self {
        let moved = |path: &Path| path.clone().shifted(dx, dy);
        Self {
            outline: moved(&self.outline),
            edges: moved(&self.edges),
            crosses: moved(&self.crosses),
            centre_lines: moved(&self.centre_lines),
        }
    }
}

/// A point of the template on paper.
pub(super) fn spot(point: PlanePoint) -> Spot {
    Spot::new(point.x.mm() * PT_PER_MM, -point.y.mm() * PT_PER_MM)
}

/// The outline, lines as lines and chords of circles as the arcs they stand for.
fn outline(laid: &Laid) -> Path {
    let mut path = Path::default();
    for ring in laid.outline.rings() {
        // From where one circle or line ends and another begins, if there is such a place.
        let turn = (0..ring.len()).find(|place| {
            let before = place.checked_sub(1).unwrap_or(ring.len() - 1);
            let circle = |place: usize| ring.get(place).and_then(|edge| edge.circle);
            circle(before) != circle(*place) || circle(*place).is_none()
        });
        let mut ring: Vec<BoundaryEdge> = ring.clone();
        ring.rotate_left(turn.unwrap_or(0));
        let mut rest = ring.as_slice();
        let Some(first) = rest.first() else { continue };
        path.pieces.push(PathPiece::Move(spot(first.from)));
        while let Some(edge) = rest.first() {
            let run = match edge.circle {
                None => 1,
                Some(circle) => {
                    let same = |other: &&BoundaryEdge| other.circle == Some(circle);
                    rest.iter().take_while(same).count()
                }
            };
            let (run, left) = rest.split_at(run.max(1));
            match edge.circle {
                None => path.pieces.push(PathPiece::Line(spot(edge.to))),
                Some(circle) => arc(circle, run, &mut path),
            }
            rest = left;
        }
        path.pieces.push(PathPiece::Close);
    }
    path
}

/// The arc that a run of chords stands for.
fn arc(circle: Circle, run: &[BoundaryEdge], path: &mut Path) {
    let Some(first) = run.first() else { return };
    let radius = circle.radius.mm() * PT_PER_MM;
    let centre = spot(circle.centre);
    let from = spot(first.from);
    // On paper y runs downwards.
    let start = libm::atan2(-(from.y - centre.y), from.x - centre.x);
    let sweep: f64 = run.iter().map(|edge| edge.sweep()).sum();
    let sweep = if (sweep.abs() - TAU).abs() < 1e-4 {
        TAU * sweep.signum()
    } else {
        sweep
    };
    let count = libm::ceil(sweep.abs() / FRAC_PI_4 - 1e-6).max(1.0);
    let step = sweep / count;
    let reach = 4.0 / 3.0 * libm::tan(step / 4.0);
    let at = |cosine: f64, sine: f64| centre.shifted(radius * cosine, -radius * sine);
    let (mut angle, mut left) = (start, count);
    while left > 0.5 {
        let ((s, c), (t, d)) = (libm::sincos(angle), libm::sincos(angle + step));
        path.pieces.push(PathPiece::Curve(
            at(c - reach * s, s + reach * c),
            at(d + reach * t, t - reach * d),
            at(d, t),
        ));
        angle += step;
        left -= 1.0;
    }
}

/// Every edge that is seen: those of the outline lie under it.
fn edges(laid: &Laid, shell: &Shell) -> Path {
    let vector = |way: [i64; 3]| -> WorldPoint {
        way.map(|part| match part {
            1 => 1.0,
            -1 => -1.0,
            _ => 0.0,
        })
    };
    let view = View::from_axes(vector(laid.seen.right), vector(laid.seen.up));
    let mut scene = Scene::new();
    add_shell(&mut scene, BodyId(0), shell, [0.0; 3]);
    let sheet = picture::Sheet {
        scale: PT_PER_MM / 1_000.0,
        origin: Spot::default(),
    };
    let stretches: Vec<Stretch> = drawn_lines(&scene, &view)
        .iter()
        .map(|line| Stretch {
            ends: line.ends,
            round: scene.edges.get(line.edge).and_then(|edge| edge.round),
        })
        .collect();
    let mut path = Path::default();
    for chain in chain(&stretches) {
        let own = curves::path(&chain, &scene.rounds, &view, &sheet);
        path.pieces.extend(own.pieces);
    }
    path
}

/// A cross at the middle of every hole.
fn crosses(crosses: &[Cross]) -> Path {
    let mut path = Path::default();
    for cross in crosses {
        let at = spot(cross.at);
        let reach = (cross.radius.mm() + ARMS_MM) * PT_PER_MM;
        for (dx, dy) in [(reach, 0.0), (0.0, reach)] {
            let ends = [at.shifted(-dx, -dy), at.shifted(dx, dy)];
            path.pieces.extend(Path::polyline(&ends, Ends::Open).pieces);
        }
    }
    path
}

/// The middle lines of what the outline fills.
fn centre_lines(laid: &Laid) -> Path {
    let [across, up] = laid.reach;
    let corner = |x, y| spot(PlanePoint::new(x, y));
    let beyond = BEYOND_MM * PT_PER_MM;
    let middle = corner(across.middle(), up.middle());
    let (low, high) = (corner(across.low, up.low), corner(across.high, up.high));
    let lines = [
        [
            Spot::new(low.x - beyond, middle.y),
            Spot::new(high.x + beyond, middle.y),
        ],
        [
            Spot::new(middle.x, high.y - beyond),
            Spot::new(middle.x, low.y + beyond),
        ],
    ];
    let mut path = Path::default();
    for ends in lines {
        path.pieces.extend(Path::polyline(&ends, Ends::Open).pieces);
    }
    path
}
