//! Which stretches of which edges are seen.
//!
//! Edges between two faces that look away are left out, as are the facet edges of round faces
//! away from their silhouette. The rest is split where it crosses the outline of a front face and
//! where it passes through the face's plane, and each piece is judged by its middle. Distances
//! are measured square to the face, so that faces seen at a slant are no more forgiving than
//! others.
#![expect(
    clippy::indexing_slicing,
    reason = "numbers of faces and cells come from the grid that was made of them"
)]

use std::borrow::Cow;

use super::front::{Front, FrontFace};
use super::grid::Bounds;
use super::merge::{between, merge};
use super::scene::{EdgeKind, Scene, SceneEdge};
use super::silhouettes::with_exact_silhouettes;
use super::view::{EDGE_ON, View, ViewPoint};

/// A stretch of an edge that is seen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct VisibleLine {
    /// Which edge of the scene.
    pub edge: usize,
    /// Its ends in the view, in micrometres.
    pub ends: [[f64; 2]; 2],
}

impl VisibleLine {
    /// Its length in the view, in micrometres.
    pub fn length(&self) -> f64 {
        let [[ax, ay], [bx, by]] = self.ends;
        libm::hypot(bx - ax, by - ay)
    }
}

/// A point this far behind a face, square to it and in micrometres, is behind it: more than the
/// rounding of three corners to whole micrometres, less than a sheet of paper.
const BEHIND: f64 = 3.5;
/// Visible pieces shorter than this, in micrometres, are left out: at an edge's end the rounding
/// of its corner to a whole micrometre makes and unmakes them.
const SHORTEST: f64 = 2.0;
/// The same for a piece in the midst of an edge, between two faces that hide the rest.
const SHORTEST_BETWEEN: f64 = 0.5;

/// Everything of a scene's edges that is seen, edge by edge: where several fall together, each
/// is there.
pub fn visible_lines(scene: &Scene, view: &View) -> Vec<VisibleLine> {
    let scene = with_exact_silhouettes(Cow::Borrowed(scene), view);
    visible_before(&scene, view, &Front::prepare(&scene, view))
}

/// The lines of a scene as they are drawn: one where several fall together.
pub fn drawn_lines(scene: &Scene, view: &View) -> Vec<VisibleLine> {
    let scene = with_exact_silhouettes(Cow::Borrowed(scene), view);
    drawn_before(&scene, view, &Front::prepare(&scene, view))
}

/// The same for front faces that are prepared already.
pub(super) fn drawn_before(scene: &Scene, view: &View, front: &Front) -> Vec<VisibleLine> {
    let lines = visible_before(scene, view, front);
    merge(lines, |line| priority(scene, line), SHORTEST)
}

/// A seam gives way to an edge of the wood, and a line in the air to both.
fn priority(scene: &Scene, line: &VisibleLine) -> u8 {
    match scene.edges.get(line.edge).map(|edge| edge.kind) {
        Some(EdgeKind::Sharp | EdgeKind::Smooth) => 0,
        Some(EdgeKind::Seam) => 1,
        Some(EdgeKind::Free) | None => 2,
    }
}

/// The lines of a scene as they are drawn, and the edges that are hidden and on which no drawn
/// line falls; none of both where they would fall on another of their kind.
pub(super) fn lines_with_hidden(
    scene: &Scene,
    view: &View,
) -> (Vec<VisibleLine>, Vec<VisibleLine>) {
    let scene = with_exact_silhouettes(Cow::Borrowed(scene), view);
    let front = Front::prepare(&scene, view);
    let drawn = drawn_before(&scene, view, &front);
    let mut seen = vec![u32::MAX; front.faces.len()];
    let (mut hidden, mut stretches) = (Vec::new(), Vec::new());
    for (number, (index, edge)) in (0_u32..).zip(scene.edges.iter().enumerate()) {
        let ends = edge.ends.map(|end| view.project(end));
        let shown = may_be_seen(edge, view);
        match edge.kind {
            EdgeKind::Sharp if !shown => lay_visible(index, &ends, &mut [], &mut hidden),
            EdgeKind::Sharp | EdgeKind::Smooth if shown => {
                hidden_stretches(&ends, &front, &mut seen, number, &mut stretches);
                lay_hidden(index, &ends, &mut stretches, &mut hidden);
            }
            EdgeKind::Sharp | EdgeKind::Smooth | EdgeKind::Seam | EdgeKind::Free => {}
        }
    }
    // Numbers of hidden lines go on behind those of the edges while both are merged.
    let count = scene.edges.len();
    let mut all = drawn.clone();
    all.extend(hidden.into_iter().map(|line| VisibleLine {
        edge: line.edge + count,
        ..line
    }));
    let merged = merge(all, |line| u8::from(line.edge >= count), SHORTEST);
    let hidden = merged
        .into_iter()
        .filter(|line| line.edge >= count)
        .map(|line| VisibleLine {
            edge: line.edge - count,
            ..line
        })
        .collect();
    (drawn, hidden)
}

fn visible_before(scene: &Scene, view: &View, front: &Front) -> Vec<VisibleLine> {
    let mut seen = vec![u32::MAX; front.faces.len()];
    let (mut lines, mut hidden) = (Vec::new(), Vec::new());
    for (number, (index, edge)) in (0_u32..).zip(scene.edges.iter().enumerate()) {
        if !may_be_seen(edge, view) {
            continue;
        }
        let ends = edge.ends.map(|end| view.project(end));
        hidden_stretches(&ends, front, &mut seen, number, &mut hidden);
        lay_visible(index, &ends, &mut hidden, &mut lines);
    }
    lines
}

/// True where the faces at an edge let it be drawn at all.
fn may_be_seen(edge: &SceneEdge, view: &View) -> bool {
    let [a, b] = edge.normals.map(|normal| view.towards_eye(normal));
    match edge.kind {
        EdgeKind::Free => true,
        EdgeKind::Sharp | EdgeKind::Seam => a > EDGE_ON || b > EDGE_ON,
        EdgeKind::Smooth => (a > EDGE_ON) != (b > EDGE_ON),
    }
}

/// The stretches of a line, from 0 to 1 along it, that faces hide, in place of those in `hidden`.
fn hidden_stretches(
    ends: &[ViewPoint; 2],
    front: &Front,
    seen: &mut [u32],
    stamp: u32,
    hidden: &mut Vec<(f64, f64)>,
) {
    let [p, q] = ends;
    let line = [p[0], p[1], q[0], q[1]];
    let mut bounds = Bounds::NONE;
    bounds.take(p[0], p[1]);
    bounds.take(q[0], q[1]);
    let farthest = p[2].min(q[2]);
    hidden.clear();
    let mut is_all_hidden = |cell| {
        for number in front.grid.things(cell) {
            let face = &front.faces[*number as usize];
            if face.depth.1 <= farthest {
                break;
            }
            if seen[*number as usize] == stamp {
                continue;
            }
            seen[*number as usize] = stamp;
            if touches(&face.bounds, &bounds) {
                hide(ends, face, hidden);
                if matches!(hidden.last(), Some((a, b)) if *a <= 0.0 && *b >= 1.0) {
                    return true;
                }
            }
        }
        false
    };
    front.grid.cells_on(line).any(&mut is_all_hidden);
}

fn touches(a: &Bounds, b: &Bounds) -> bool {
    a.low[0] <= b.high[0] && b.low[0] <= a.high[0] && a.low[1] <= b.high[1] && b.low[1] <= a.high[1]
}

/// Adds the stretches of a line that one face hides.
fn hide(ends: &[ViewPoint; 2], face: &FrontFace, hidden: &mut Vec<(f64, f64)>) {
    let [p, q] = *ends;
    let (at_p, at_q) = (face.before(p), face.before(q));
    if at_p.max(at_q) <= BEHIND {
        return;
    }
    // The line is cut where it passes through the plane, at exactly zero …
    let cut = at_p / (at_p - at_q);
    let (start, end) = if at_p >= 0.0 && at_q >= 0.0 {
        (0.0, 1.0)
    } else if at_p > 0.0 {
        (0.0, cut)
    } else {
        (cut, 1.0)
    };
    // … but a piece counts as behind only where some of it is clearly so.
    let behind = |a: f64, b: f64| {
        let depth = |t: f64| at_p + (at_q - at_p) * t;
        depth(a).max(depth(b)) > BEHIND
    };
    let mut judge = |a: f64, b: f64| {
        let middle = (a + b) / 2.0;
        let (x, y) = (p[0] + (q[0] - p[0]) * middle, p[1] + (q[1] - p[1]) * middle);
        if b > a && behind(a, b) && face.covers(x, y) {
            hidden.push((a, b));
        }
    };
    if face.convex {
        if let Some((a, b)) = inside_convex(face, p, q, start, end) {
            judge(a, b);
        }
        return;
    }
    let mut cuts = vec![start, end];
    let at = |t: f64| p[1] + (q[1] - p[1]) * t;
    let (low, high) = (at(start).min(at(end)), at(start).max(at(end)));
    face.edges_between(low, high, |edge| {
        if let Some(t) = crossing(p, q, edge)
            && t > start
            && t < end
        {
            cuts.push(t);
        }
    });
    cuts.sort_by(f64::total_cmp);
    for pair in cuts.windows(2) {
        judge(pair[0], pair[1]);
    }
}

/// The stretch of a line inside a convex outline.
fn inside_convex(
    face: &FrontFace,
    p: ViewPoint,
    q: ViewPoint,
    mut start: f64,
    mut end: f64,
) -> Option<(f64, f64)> {
    for edge in &face.edges {
        let (dx, dy) = (edge[2] - edge[0], edge[3] - edge[1]);
        let side = |point: ViewPoint| dx * (point[1] - edge[1]) - dy * (point[0] - edge[0]);
        let (a, b) = (side(p), side(q));
        if a < 0.0 && b < 0.0 {
            return None;
        }
        if a < 0.0 {
            start = start.max(a / (a - b));
        } else if b < 0.0 {
            end = end.min(a / (a - b));
        }
    }
    (start < end).then_some((start, end))
}

/// Where along the line from `p` to `q` an edge of an outline crosses it.
fn crossing(p: ViewPoint, q: ViewPoint, edge: &[f64; 4]) -> Option<f64> {
    let (dx, dy) = (q[0] - p[0], q[1] - p[1]);
    let side = |x: f64, y: f64| dx * (y - p[1]) - dy * (x - p[0]);
    let (a, b) = (side(edge[0], edge[1]), side(edge[2], edge[3]));
    if (a > 0.0) == (b > 0.0) {
        return None;
    }
    let t = a / (a - b);
    let (x, y) = (
        edge[0] + (edge[2] - edge[0]) * t,
        edge[1] + (edge[3] - edge[1]) * t,
    );
    let square = dx * dx + dy * dy;
    (square > 0.0).then(|| ((x - p[0]) * dx + (y - p[1]) * dy) / square)
}

/// What is left of a line between its hidden stretches.
fn lay_visible(
    edge: usize,
    ends: &[ViewPoint; 2],
    hidden: &mut [(f64, f64)],
    lines: &mut Vec<VisibleLine>,
) {
    let [p, q] = *ends;
    let (dx, dy) = (q[0] - p[0], q[1] - p[1]);
    let length = (dx * dx + dy * dy).sqrt();
    let lay = |a: f64, b: f64| {
        let least = if a > 0.0 && b < 1.0 {
            SHORTEST_BETWEEN
        } else {
            SHORTEST
        };
        if (b - a) * length >= least {
            let at = |t: f64| match t {
                t if t <= 0.0 => [p[0], p[1]],
                t if t >= 1.0 => [q[0], q[1]],
                t => [p[0] + dx * t, p[1] + dy * t],
            };
            lines.push(VisibleLine {
                edge,
                ends: [at(a), at(b)],
            });
        }
    };
    between(hidden, lay);
}

/// The hidden stretches of a line, as one where they overlap.
fn lay_hidden(
    edge: usize,
    ends: &[ViewPoint; 2],
    hidden: &mut [(f64, f64)],
    lines: &mut Vec<VisibleLine>,
) {
    hidden.sort_by(|a, b| a.0.total_cmp(&b.0));
    let mut joined: Vec<(f64, f64)> = Vec::new();
    for &mut (a, b) in hidden {
        match joined.last_mut() {
            Some(last) if a <= last.1 => last.1 = last.1.max(b),
            _ => joined.push((a.max(0.0), b)),
        }
    }
    let [p, q] = *ends;
    let at = |t: f64| {
        let t = t.clamp(0.0, 1.0);
        [p[0] + (q[0] - p[0]) * t, p[1] + (q[1] - p[1]) * t]
    };
    for (a, b) in joined {
        let line = VisibleLine {
            edge,
            ends: [at(a), at(b)],
        };
        if line.length() >= SHORTEST {
            lines.push(line);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::drawing::merge::{TOGETHER, merge_within};
    use crate::drawing::scenes::{Dice, boxes, stack};
    use crate::drawing::view::dot;

    fn total_mm(lines: &[VisibleLine]) -> f64 {
        lines.iter().map(VisibleLine::length).sum::<f64>() / 1000.0
    }

    /// Visible length and pieces from a general-purpose geometry kernel's exact hidden-line
    /// algorithm (cadquery-ocp-novtk from PyPI) on the same scenes, seen isometrically.
    #[test]
    fn known_scenes_agree_with_a_geometry_kernel() {
        let view = View::from_direction(View::ISOMETRIC);
        for (scene, length, pieces) in [
            (boxes(100, 1), 19_824.553, 547),
            (boxes(100, 7), 18_449.478, 500),
            (boxes(100, 11), 18_665.229, 521),
            (boxes(100, 23), 19_480.619, 542),
            (boxes(300, 7), 42_979.056, 1252),
            (boxes(300, 11), 43_462.189, 1262),
            (boxes(300, 23), 42_999.337, 1238),
            (boxes(1000, 1), 102_903.424, 3064),
            (boxes(1000, 5), 101_925.721, 3094),
            (boxes(1000, 42), 101_937.432, 3044),
            (stack(), 2059.204, 37),
            // With edges that fall together in the view, and a piece of 0.8 µm.
            (boxes(1000, 7), 102_877.742, 3113),
            (boxes(1000, 101), 102_476.867, 3079),
            (boxes(1000, 202), 101_808.773, 3047),
            (boxes(1000, 303), 99_264.557, 2929),
            (boxes(300, 99), 43_352.046, 1264),
        ] {
            let lines = visible_lines(&scene, &view);
            assert_eq!(lines.len(), pieces);
            assert!(
                (total_mm(&lines) - length).abs() < 0.001,
                "{}",
                total_mm(&lines)
            );
        }
    }

    #[test]
    fn touching_boxes_keep_their_lines_in_any_pose() {
        // Of these six thousand poses one lies between merging two lines and not.
        let doubts: Vec<usize> = [11, 12, 13].map(poses_in_doubt).to_vec();
        assert_eq!(doubts, [1, 0, 0]);
    }

    /// Looks at two thousand poses; how many are within 0.2 mm only if two lines as far apart as
    /// lines may be that fall together are taken either way.
    fn poses_in_doubt(seed: u64) -> usize {
        let scene = stack();
        let mut dice = Dice::new(seed);
        let mut number = || f64::from(u32::try_from(dice.roll(2_000_001)).unwrap()) / 1e6 - 1.0;
        let (mut poses, mut ties) = (0, 0);
        while poses < 2000 {
            let quaternion = [number(), number(), number(), number()];
            let Some(rows) = rotation(quaternion) else {
                continue;
            };
            poses += 1;
            let towards = [0.577_350_269, -0.577_350_269, 0.577_350_269];
            let turned = |v: [f64; 3]| rows.map(|row| dot(row, v));
            // The same pose twice: the corners turned and rounded to whole micrometres, or the
            // eye turned the other way round and nothing rounded.
            let rounded = scene.mapped(|point| turned(point).map(f64::round), turned);
            let eye = [0, 1, 2].map(|i| (0..3).map(|k| rows[k][i] * towards[k]).sum());
            let posed = drawn_lines(&rounded, &View::from_vector(towards));
            let view = View::from_vector(eye);
            let raw = visible_lines(&scene, &view);
            let off = |apart| {
                let lines = merge_within(apart, raw.clone(), |l| priority(&scene, l), SHORTEST);
                total_mm(&posed) - total_mm(&lines)
            };
            let exact = off(TOGETHER);
            if exact.abs() >= 0.2 {
                // Two lines that lie as far apart as lines may that fall together do one or the
                // other; each corner has moved by up to 0.9 µm.
                let [less, more] = [-2.0, 2.0].map(|moved| off(TOGETHER + moved));
                let between = less.min(more) < 0.2 && less.max(more) > -0.2;
                assert!(between, "{exact} mm in {quaternion:?}");
                ties += 1;
            }
        }
        ties
    }

    /// The rows of the matrix that turns as a quaternion does.
    fn rotation(q: [f64; 4]) -> Option<[[f64; 3]; 3]> {
        let square: f64 = q.iter().map(|part| part * part).sum();
        if !(0.01..=1.0).contains(&square) {
            return None;
        }
        let [w, x, y, z] = q.map(|part| part / square.sqrt());
        Some([
            [
                1.0 - 2.0 * (y * y + z * z),
                2.0 * (x * y - z * w),
                2.0 * (x * z + y * w),
            ],
            [
                2.0 * (x * y + z * w),
                1.0 - 2.0 * (x * x + z * z),
                2.0 * (y * z - x * w),
            ],
            [
                2.0 * (x * z - y * w),
                2.0 * (y * z + x * w),
                1.0 - 2.0 * (x * x + y * y),
            ],
        ])
    }

    #[test]
    fn flush_boards_show_one_seam() {
        let view = View::from_direction(View::ISOMETRIC);
        let scene = stack();
        let raw = visible_lines(&scene, &view);
        let drawn = drawn_lines(&scene, &view);
        // Each stretch that two boxes share is there once: nothing is drawn over another line.
        assert!(total_mm(&drawn) < total_mm(&raw) - 100.0);
        let again = merge(drawn.clone(), |_| 0, SHORTEST);
        assert!((total_mm(&again) - total_mm(&drawn)).abs() < 1e-6);
    }
}
