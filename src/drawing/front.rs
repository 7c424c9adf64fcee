//! The faces a view sees from in front: the only ones that hide anything.
#![expect(
    clippy::indexing_slicing,
    reason = "ranges and numbers come from the vectors they index, laid once in `prepare`"
)]

use std::ops::Range;

use super::grid::{Bounds, Grid, clamped};
use super::scene::{BodyId, Scene, SceneFace};
use super::view::{EDGE_ON, View, ViewPoint};

/// A face as it hides: its outline in the view, the plane it lies in.
pub(super) struct FrontFace {
    /// Whose.
    pub(super) body: BodyId,
    /// Which of the body's surfaces it is part of.
    pub(super) surface: u32,
    /// Which face of the scene it is.
    pub(super) source: usize,
    /// Its outline in the view, as lines from point to point: the outer ring counter-clockwise,
    /// holes clockwise.
    pub(super) edges: Vec<[f64; 4]>,
    /// Where each ring begins and ends among its edges.
    pub(super) rings: Vec<Range<usize>>,
    /// Around each ring.
    pub(super) ring_bounds: Vec<Bounds>,
    /// Around it.
    pub(super) bounds: Bounds,
    /// Its plane: towards the eye it lies at `plane[0] * x + plane[1] * y + plane[2]`.
    pub(super) plane: [f64; 3],
    /// Cosine of its normal with the line of sight.
    pub(super) cosine: f64,
    /// Farthest and nearest part, towards the eye.
    pub(super) depth: (f64, f64),
    /// Its one ring turns one way everywhere, counter-clockwise.
    pub(super) convex: bool,
    /// Bands of edges by height, for outlines of many edges.
    bands: Vec<Vec<u32>>,
}

/// All front faces, nearest first, and where they are.
pub(super) struct Front {
    /// Ordered by their nearest part, the nearest first.
    pub(super) faces: Vec<FrontFace>,
    /// Which of them touch a cell of the view, in the same order.
    pub(super) grid: Grid,
}

/// Outlines of more edges are searched by bands.
const EDGES_WITHOUT_BANDS: usize = 24;
/// This near to an outline, in micrometres, a point counts as outside of it.
pub(super) const OUTLINE_WIDTH: f64 = 1.0;
/// This near to an outline, in micrometres, a point is on it.
const SAME: f64 = 0.01;

impl Front {
    /// The front faces of a scene.
    pub(super) fn prepare(scene: &Scene, view: &View) -> Self {
        let mut faces: Vec<FrontFace> = scene
            .faces
            .iter()
            .enumerate()
            .filter_map(|(source, face)| {
                let normal = view.turn(face.normal);
                if normal[2] <= EDGE_ON {
                    return None;
                }
                FrontFace::new(face, source, normal, view)
            })
            .collect();
        faces.sort_by(|a, b| b.depth.1.total_cmp(&a.depth.1));
        Self::of(faces)
    }

    /// Front faces in the order of their nearest parts, with their grid.
    pub(super) fn of(faces: Vec<FrontFace>) -> Self {
        let mut bounds = Bounds::NONE;
        for face in &faces {
            bounds.join(&face.bounds);
        }
        let mut grid = Grid::new(&bounds, faces.len());
        for (number, face) in (0_u32..).zip(&faces) {
            grid.lay_polygon(number, &face.bounds, &face.edges);
        }
        Self { faces, grid }
    }
}

impl FrontFace {
    fn new(of: &SceneFace, source: usize, normal: ViewPoint, view: &View) -> Option<Self> {
        let first = view.project(*of.rings.first()?.first()?);
        let [nx, ny, nw] = normal;
        // Points are rounded to micrometres: the plane goes through the middle of them all.
        let (mut sum, mut count) = (0.0, 0.0);
        let mut bounds = Bounds::NONE;
        let mut depth = (f64::INFINITY, f64::NEG_INFINITY);
        let mut edges: Vec<[f64; 4]> = Vec::with_capacity(of.rings.iter().map(Vec::len).sum());
        let mut ranges = Vec::with_capacity(of.rings.len());
        let mut ring_bounds = Vec::with_capacity(of.rings.len());
        for ring in &of.rings {
            let start = edges.len();
            let mut own = Bounds::NONE;
            for point in ring {
                let point = view.project(*point);
                own.take(point[0], point[1]);
                depth = (depth.0.min(point[2]), depth.1.max(point[2]));
                sum += (point[0] - first[0]) * nx
                    + (point[1] - first[1]) * ny
                    + (point[2] - first[2]) * nw;
                count += 1.0;
                // Where it ends is known with the next point, and for the last one with the first.
                edges.push([point[0], point[1], 0.0, 0.0]);
            }
            close_ring(&mut edges[start..]);
            ranges.push(start..edges.len());
            bounds.join(&own);
            ring_bounds.push(own);
        }
        let offset = sum / count;
        let (sx, sy) = (-nx / nw, -ny / nw);
        let plane = [
            sx,
            sy,
            first[2] + offset / nw - sx * first[0] - sy * first[1],
        ];
        let convex = ranges.len() == 1 && turn_to_convex(&mut edges);
        if !convex {
            turn_rings(&mut edges, &ranges, &ring_bounds);
        }
        let mut face = Self {
            body: of.body,
            surface: of.surface,
            source,
            edges,
            rings: ranges,
            ring_bounds,
            bounds,
            plane,
            cosine: nw,
            depth,
            convex,
            bands: Vec::new(),
        };
        face.lay_bands();
        Some(face)
    }

    /// One face in place of several facets of one round wall, with the outline they have
    /// together, in the plane that lies in the middle of theirs.
    pub(super) fn together(facets: &[&Self], outline: Vec<[f64; 4]>) -> Option<Self> {
        let middle = facets.get(facets.len() / 2)?;
        #[expect(
            clippy::cast_precision_loss,
            reason = "a round wall has some hundred facets"
        )]
        let share = 1.0 / facets.len() as f64;
        let mean = |of: &dyn Fn(&Self) -> f64| facets.iter().map(|f| of(f)).sum::<f64>() * share;
        let mut bounds = Bounds::NONE;
        facets.iter().for_each(|facet| bounds.join(&facet.bounds));
        let far = facets
            .iter()
            .map(|facet| facet.depth.0)
            .fold(f64::INFINITY, f64::min);
        let near = facets
            .iter()
            .map(|facet| facet.depth.1)
            .fold(f64::NEG_INFINITY, f64::max);
        let mut edges = outline;
        let convex = turn_to_convex(&mut edges);
        let whole = 0..edges.len();
        if !convex {
            turn_rings(&mut edges, std::slice::from_ref(&whole), &[bounds]);
        }
        let mut face = Self {
            body: middle.body,
            surface: middle.surface,
            source: middle.source,
            edges,
            rings: std::iter::once(whole).collect(),
            ring_bounds: vec![bounds],
            bounds,
            plane: [0, 1, 2].map(|i| mean(&|facet: &Self| facet.plane[i])),
            cosine: mean(&|facet: &Self| facet.cosine),
            depth: (far, near),
            convex,
            bands: Vec::new(),
        };
        face.lay_bands();
        Some(face)
    }

    fn lay_bands(&mut self) {
        if self.convex || self.edges.len() <= EDGES_WITHOUT_BANDS {
            return;
        }
        let count = (self.edges.len() / 8).clamp(1, 256);
        let mut bands = vec![Vec::new(); count];
        for (number, edge) in (0_u32..).zip(&self.edges) {
            for band in self.band_range(edge[1].min(edge[3]), edge[1].max(edge[3]), count) {
                bands[band].push(number);
            }
        }
        self.bands = bands;
    }

    /// Which bands a stretch of heights touches, with the width of an outline to spare.
    fn band_range(&self, low: f64, high: f64, count: usize) -> std::ops::RangeInclusive<usize> {
        let height = (self.bounds.high[1] - self.bounds.low[1]).max(1.0);
        #[expect(clippy::cast_precision_loss, reason = "a count of bands up to 256")]
        let per_micrometre = count as f64 / height;
        let band = |y: f64| clamped((y - self.bounds.low[1]) * per_micrometre, count - 1);
        band(low - 2.0 * OUTLINE_WIDTH)..=band(high + 2.0 * OUTLINE_WIDTH)
    }

    /// Calls `f` with the edges that may touch a stretch of heights; some may come twice.
    pub(super) fn edges_between(&self, low: f64, high: f64, mut f: impl FnMut(&[f64; 4])) {
        if self.bands.is_empty() {
            self.edges.iter().for_each(f);
            return;
        }
        for band in self.band_range(low, high, self.bands.len()) {
            for number in &self.bands[band] {
                f(&self.edges[*number as usize]);
            }
        }
    }

    /// How far the face's plane lies before a point, square to the face, in micrometres.
    pub(super) fn before(&self, point: ViewPoint) -> f64 {
        let [a, b, c] = self.plane;
        (a * point[0] + b * point[1] + c - point[2]) * self.cosine
    }

    /// True where the point lies inside of the outline by more than the outline's width, or of a
    /// convex one exactly on it: a line that runs along the edge of something nearer is that
    /// edge's already. What is only nearly there is drawn, and falls together with the edge.
    pub(super) fn covers(&self, x: f64, y: f64) -> bool {
        if x < self.bounds.low[0] - SAME
            || x > self.bounds.high[0] + SAME
            || y < self.bounds.low[1] - SAME
            || y > self.bounds.high[1] + SAME
        {
            return false;
        }
        if self.convex {
            return self
                .edges
                .iter()
                .map(|edge| side_of(edge, x, y))
                .all(|side| side > OUTLINE_WIDTH || side.abs() < SAME);
        }
        if self.bands.is_empty() {
            return covers(self.edges.iter(), x, y);
        }
        let band = *self.band_range(y, y, self.bands.len()).start();
        let last = *self.band_range(y, y, self.bands.len()).end();
        // Crossings are counted in the one band that holds `y`, nearness in its neighbours too.
        let home = *self
            .band_range(
                y + 2.0 * OUTLINE_WIDTH,
                y + 2.0 * OUTLINE_WIDTH,
                self.bands.len(),
            )
            .start();
        let near = (band..=last).filter(|other| *other != home).any(|other| {
            self.bands[other]
                .iter()
                .any(|number| distance_to(&self.edges[*number as usize], x, y) <= OUTLINE_WIDTH)
        });
        !near
            && covers(
                self.bands[home]
                    .iter()
                    .map(|number| &self.edges[*number as usize]),
                x,
                y,
            )
    }
}

/// Edges of which each begins at a corner: lets each end where the next one begins.
fn close_ring(edges: &mut [[f64; 4]]) {
    let mut next = edges.first().copied().unwrap_or_default();
    for edge in edges.iter_mut().rev() {
        [edge[2], edge[3]] = [next[0], next[1]];
        next = *edge;
    }
}

/// Even-odd, with points on the outline counted as outside.
fn covers<'a>(edges: impl Iterator<Item = &'a [f64; 4]>, x: f64, y: f64) -> bool {
    let mut inside = false;
    for edge in edges {
        if distance_to(edge, x, y) <= OUTLINE_WIDTH {
            return false;
        }
        let [ax, ay, bx, by] = *edge;
        if (ay > y) != (by > y) && x < ax + (bx - ax) * (y - ay) / (by - ay) {
            inside = !inside;
        }
    }
    inside
}

/// How far a point lies to the left of a line.
pub(super) fn side_of(edge: &[f64; 4], x: f64, y: f64) -> f64 {
    let [ax, ay, bx, by] = *edge;
    let (dx, dy) = (bx - ax, by - ay);
    let length = (dx * dx + dy * dy).sqrt();
    if length > 0.0 {
        (dx * (y - ay) - dy * (x - ax)) / length
    } else {
        f64::INFINITY
    }
}

/// How far a point is from a line between its ends.
fn distance_to(edge: &[f64; 4], x: f64, y: f64) -> f64 {
    let [ax, ay, bx, by] = *edge;
    let (dx, dy) = (bx - ax, by - ay);
    let square = dx * dx + dy * dy;
    let t = if square > 0.0 {
        (((x - ax) * dx + (y - ay) * dy) / square).clamp(0.0, 1.0)
    } else {
        0.0
    };
    let (ex, ey) = (x - ax - t * dx, y - ay - t * dy);
    (ex * ex + ey * ey).sqrt()
}

/// Turns a convex ring counter-clockwise; false, and nothing done, where it is not convex.
fn turn_to_convex(edges: &mut [[f64; 4]]) -> bool {
    let (mut left, mut right) = (false, false);
    for (edge, next) in edges.iter().zip(edges.iter().cycle().skip(1)) {
        let bend = side_of(edge, next[2], next[3]);
        left |= bend > 1e-3 && bend.is_finite();
        right |= bend < -1e-3;
    }
    if left && right {
        return false;
    }
    if right {
        turn_round(edges);
    }
    // A ring that winds twice bends one way too, but none of four edges or fewer does.
    edges.len() <= 4 || winds_once(edges)
}

/// The same ring, gone through the other way.
fn turn_round(edges: &mut [[f64; 4]]) {
    edges.reverse();
    for edge in edges {
        *edge = [edge[2], edge[3], edge[0], edge[1]];
    }
}

/// Turns the outer one of several rings, the one around the others, counter-clockwise, and the others
/// clockwise.
fn turn_rings(edges: &mut [[f64; 4]], rings: &[Range<usize>], bounds: &[Bounds]) {
    let size = |bounds: &Bounds| bounds.size().into_iter().product::<f64>();
    let largest = rings
        .iter()
        .zip(bounds)
        .max_by(|a, b| size(a.1).total_cmp(&size(b.1)));
    for ring in rings {
        let own = &mut edges[ring.clone()];
        let twice: f64 = own.iter().map(|[ax, ay, bx, by]| ax * by - bx * ay).sum();
        let is_outer = largest.is_some_and(|(outer, _)| outer == ring);
        if (twice >= 0.0) != is_outer {
            turn_round(own);
        }
    }
}

/// True where the ring's edges turn once in all.
fn winds_once(edges: &[[f64; 4]]) -> bool {
    let turned: f64 = edges
        .iter()
        .zip(edges.iter().cycle().skip(1))
        .map(|(a, b)| {
            let (ax, ay) = (a[2] - a[0], a[3] - a[1]);
            let (bx, by) = (b[2] - b[0], b[3] - b[1]);
            libm::atan2(ax * by - ay * bx, ax * bx + ay * by)
        })
        .sum();
    turned < 1.5 * std::f64::consts::TAU
}
