//! Facets of small round walls put together to one face.
//!
//! A hole of 20 mm has some thirty facets that are seen; filling each for itself costs thirty
//! plane operations for two millimetres on paper. Put together they are one face with one tone.
//! Lines do not come this way: silhouettes and hidden lines are found among the facets.

use std::collections::BTreeMap;

use super::front::{Front, FrontFace};
use super::grid::{Bounds, nearest};
use super::scene::BodyId;

/// Round walls larger than this in the view, in micrometres, keep their facets and their shading.
const LARGEST: f64 = 60_000.0;
/// Fewer facets are filled one by one.
const FEWEST: usize = 3;

/// A point of the view on the grid of whole micrometres.
type GridPoint = (i64, i64);

/// The front faces with the facets of small round walls put together.
pub(super) fn with_walls_together(front: Front) -> Front {
    let mut groups: BTreeMap<(BodyId, u32), Vec<FrontFace>> = BTreeMap::new();
    for face in front.faces {
        groups
            .entry((face.body, face.surface))
            .or_default()
            .push(face);
    }
    let mut faces: Vec<FrontFace> = groups
        .into_values()
        .flat_map(connected)
        .flat_map(together)
        .collect();
    faces.sort_by(|a, b| {
        b.depth
            .1
            .total_cmp(&a.depth.1)
            .then(a.source.cmp(&b.source))
    });
    Front::of(faces)
}

/// Facets of one surface sorted into those that share edges: the holes of a row are one surface
/// to the solid, and each is a wall of its own to the eye.
fn connected(facets: Vec<FrontFace>) -> Vec<Vec<FrontFace>> {
    if facets.len() < 2 * FEWEST {
        return vec![facets];
    }
    let mut parent: Vec<usize> = (0..facets.len()).collect();
    let mut edges: Vec<((GridPoint, GridPoint), usize)> = Vec::new();
    for (number, facet) in facets.iter().enumerate() {
        edges.extend(facet.edges.iter().map(|[ax, ay, bx, by]| {
            let (a, b) = (on_grid(*ax, *ay), on_grid(*bx, *by));
            ((a.min(b), a.max(b)), number)
        }));
    }
    edges.sort_unstable();
    let pairs = edges.iter().zip(edges.iter().skip(1));
    for ((_, one), (_, two)) in pairs.filter(|(one, two)| one.0 == two.0) {
        let (one, two) = (root(&parent, *one), root(&parent, *two));
        if let Some(slot) = parent.get_mut(one.max(two)) {
            *slot = one.min(two);
        }
    }
    let mut walls: BTreeMap<usize, Vec<FrontFace>> = BTreeMap::new();
    for (number, facet) in facets.into_iter().enumerate() {
        walls.entry(root(&parent, number)).or_default().push(facet);
    }
    walls.into_values().collect()
}

/// The first facet of the wall that a facet belongs to.
fn root(parent: &[usize], number: usize) -> usize {
    let mut at = number;
    while let Some(next) = parent.get(at).copied().filter(|next| *next != at) {
        at = next;
    }
    at
}

/// One face in place of the facets of a small round wall, or the facets as they are.
fn together(facets: Vec<FrontFace>) -> Vec<FrontFace> {
    if facets.len() < FEWEST || !facets.iter().all(|facet| facet.convex) {
        return facets;
    }
    let mut bounds = Bounds::NONE;
    facets.iter().for_each(|facet| bounds.join(&facet.bounds));
    let [width, height] = bounds.size();
    if width.max(height) > LARGEST {
        return facets;
    }
    let all: Vec<&FrontFace> = facets.iter().collect();
    let merged = outline(&all).and_then(|outline| FrontFace::together(&all, outline));
    match merged {
        Some(face) => vec![face],
        None => facets,
    }
}

/// The one ring around facets that share edges; none where they make more than one ring.
fn outline(facets: &[&FrontFace]) -> Option<Vec<[f64; 4]>> {
    // Each edge from its lower end, and whether it is gone through that way or the other.
    let mut edges: Vec<((GridPoint, GridPoint), i32)> = Vec::new();
    for [ax, ay, bx, by] in facets.iter().flat_map(|facet| &facet.edges) {
        let (a, b) = (on_grid(*ax, *ay), on_grid(*bx, *by));
        if a != b {
            edges.push(((a.min(b), a.max(b)), if a < b { 1 } else { -1 }));
        }
    }
    edges.sort_unstable();
    let mut next: Vec<(GridPoint, GridPoint)> = Vec::new();
    for same in edges.chunk_by(|one, other| one.0 == other.0) {
        // An edge of two facets is gone through once in each direction.
        let ((low, high), _) = *same.first()?;
        match same.iter().map(|(_, way)| way).sum() {
            0 => {}
            1 => next.push((low, high)),
            -1 => next.push((high, low)),
            _ => return None,
        }
    }
    next.sort_unstable();
    let (start, _) = *next.first()?;
    let mut at = start;
    let mut ring = Vec::with_capacity(next.len());
    while ring.len() < next.len() {
        let from = next.partition_point(|(from, _)| *from < at);
        let (_, to) = *next.get(from).filter(|(from, _)| *from == at)?;
        ring.push([at, to]);
        at = to;
        if at == start {
            break;
        }
    }
    let closed = at == start && ring.len() == next.len();
    closed.then(|| ring.into_iter().map(as_edge).collect())
}

fn on_grid(x: f64, y: f64) -> GridPoint {
    (nearest(x), nearest(y))
}

#[expect(
    clippy::cast_precision_loss,
    reason = "micrometres of a view are far below 2^53"
)]
fn as_edge([(ax, ay), (bx, by)]: [GridPoint; 2]) -> [f64; 4] {
    [ax as f64, ay as f64, bx as f64, by as f64]
}
