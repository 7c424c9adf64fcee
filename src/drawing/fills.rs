//! Which part of each front face is seen.
//!
//! A face less everything nearer that lies over it.
#![expect(
    clippy::indexing_slicing,
    reason = "numbers of faces and cells come from the grid that was made of them"
)]

use std::borrow::Cow;

use i_overlay::core::overlay::Overlay;

use super::front::{Front, FrontFace, side_of};
use super::grid::Bounds;
use super::rings::{Ring, Rings, area, inside, keep_positive};
use super::scene::{BodyId, Scene};
use super::silhouettes::with_exact_silhouettes;
use super::subtract::subtract;
use super::view::View;

/// What is seen of a face.
#[derive(Clone, Debug)]
pub struct VisibleFill {
    /// Whose.
    pub body: BodyId,
    /// Which face of the scene.
    pub face: usize,
    /// Connected pieces: an outer ring, then its holes; in micrometres of the view.
    pub pieces: Vec<Vec<Vec<[f64; 2]>>>,
}

impl VisibleFill {
    /// The area that is seen, in square micrometres of the view.
    pub fn area(&self) -> f64 {
        self.pieces.iter().flatten().map(|ring| area(ring)).sum()
    }
}

/// How much nearer, square to a face and in micrometres, another must be to lie over it.
const OVER: f64 = 3.5;

/// The visible part of every front face of a scene; faces of which nothing is seen are left out.
pub fn visible_fills(scene: &Scene, view: &View) -> Vec<VisibleFill> {
    let scene = with_exact_silhouettes(Cow::Borrowed(scene), view);
    visible_among(&Front::prepare(&scene, view))
}

/// The same for front faces that are prepared already.
pub(super) fn visible_among(front: &Front) -> Vec<VisibleFill> {
    let mut seen = vec![usize::MAX; front.faces.len()];
    let mut found: Vec<Found> = Vec::with_capacity(front.faces.len());
    let mut fills: Vec<VisibleFill> = Vec::new();
    let mut overlay: Overlay<i32> = Overlay::new(256);
    for (number, face) in front.faces.iter().enumerate() {
        let Some(clips) = nearer_parts(front, number, &mut seen, &found, &fills) else {
            found.push(Found::Hidden);
            continue;
        };
        let own = rings_of(face);
        let pieces = if clips.is_empty() && face.convex {
            vec![own]
        } else {
            subtract(&mut overlay, own, clips)
        };
        let corners: usize = pieces.iter().flatten().map(Vec::len).sum();
        found.push(if pieces.is_empty() {
            Found::Hidden
        } else if corners < face.edges.len() {
            Found::Less(fills.len())
        } else {
            Found::Whole
        });
        if !pieces.is_empty() {
            fills.push(VisibleFill {
                body: face.body,
                face: face.source,
                pieces,
            });
        }
    }
    fills
}

/// What was found of a face. Whatever the hidden part of it would hide, the faces that hide it
/// hide too: what is seen is enough, where that is simpler.
#[derive(Clone, Copy, PartialEq)]
enum Found {
    /// Nothing of it is seen.
    Hidden,
    /// A part of fewer corners than the whole is: the fill of this number.
    Less(usize),
    /// It is best taken as it is.
    Whole,
}

/// What lies over a face; none where a single other face covers it all.
fn nearer_parts(
    front: &Front,
    number: usize,
    seen: &mut [usize],
    found: &[Found],
    fills: &[VisibleFill],
) -> Option<Vec<Rings>> {
    let face = &front.faces[number];
    let mut clips: Vec<Rings> = Vec::new();
    for cell in front.grid.cells_in(&face.bounds) {
        for other in front.grid.things(cell) {
            let other = *other as usize;
            let over = &front.faces[other];
            if over.depth.1 <= face.depth.0 {
                break;
            }
            if seen[other] == number || other == number {
                continue;
            }
            seen[other] = number;
            let found = found.get(other).copied().unwrap_or(Found::Whole);
            let hidden = found == Found::Hidden;
            if hidden || !over.bounds.overlaps(&face.bounds) || apart(over, face) {
                continue;
            }
            let parts = match found {
                Found::Less(fill) => fills[fill]
                    .pieces
                    .iter()
                    .map(|piece| piece_around(piece, &face.bounds))
                    .collect(),
                Found::Whole | Found::Hidden => vec![around(over, &face.bounds)],
            };
            for rings in parts {
                match nearer_part(over, face, rings) {
                    Nearer::Nothing => {}
                    Nearer::All(rings) => {
                        if over.convex && within(face, over) {
                            return None;
                        }
                        clips.push(rings);
                    }
                    Nearer::Some(rings) => clips.push(rings),
                }
            }
        }
    }
    Some(clips)
}

/// True where a side of one convex outline has all of the other on its outer side.
fn apart(a: &FrontFace, b: &FrontFace) -> bool {
    if a.edges.len() + b.edges.len() > 4 * EDGES_KEPT_WHOLE {
        return false;
    }
    let separates = |face: &FrontFace, other: &FrontFace| {
        face.convex
            && face.edges.iter().any(|edge| {
                let side = |x: f64, y: f64| side_of(edge, x, y);
                other.edges.iter().all(|line| side(line[0], line[1]) <= 0.5)
            })
    };
    separates(a, b) || separates(b, a)
}

/// True where all of `face` lies inside the convex outline of `over`.
fn within(face: &FrontFace, over: &FrontFace) -> bool {
    face.edges.iter().all(|line| {
        over.edges
            .iter()
            .all(|edge| side_of(edge, line[0], line[1]) >= -0.5)
    })
}

/// How much of a face is nearer than another.
enum Nearer {
    Nothing,
    All(Rings),
    Some(Rings),
}

/// What of `rings`, which lie in the plane of `over`, is nearer to the eye than that of `face`.
fn nearer_part(over: &FrontFace, face: &FrontFace, rings: Rings) -> Nearer {
    let slopes: [f64; 3] = [0, 1, 2].map(|i| over.plane[i] - face.plane[i]);
    let margin = OVER / face.cosine;
    let gap = |x: f64, y: f64| slopes[0] * x + slopes[1] * y + slopes[2] - margin;
    let (mut any, mut all) = (false, true);
    for [x, y] in rings.iter().flatten() {
        let nearer = gap(*x, *y) > 0.0;
        any |= nearer;
        all &= nearer;
    }
    if !any {
        return Nearer::Nothing;
    }
    if all {
        return Nearer::All(rings);
    }
    let rings = rings
        .into_iter()
        .map(|ring| keep_positive(&ring, gap))
        .filter(|ring| ring.len() > 2)
        .collect();
    Nearer::Some(rings)
}

/// Outlines of more edges are cut down to what lies around the face they may hide.
const EDGES_KEPT_WHOLE: usize = 8;

/// The rings of a face as far as they matter inside of `bounds`: a panel with two hundred holes
/// hides the wall of one hole by the rim of that hole alone.
fn around(face: &FrontFace, bounds: &Bounds) -> Rings {
    if face.edges.len() <= EDGES_KEPT_WHOLE {
        return rings_of(face);
    }
    face.rings
        .iter()
        .zip(&face.ring_bounds)
        .filter(|(_, own)| own.overlaps(bounds))
        .map(|(range, own)| {
            let corners = face.edges[range.clone()].iter();
            ring_around(
                corners.map(|edge| [edge[0], edge[1]]).collect(),
                own,
                bounds,
            )
        })
        .filter(|ring| ring.len() > 2)
        .collect()
}

/// The same of what is seen of a face.
fn piece_around(piece: &Rings, bounds: &Bounds) -> Rings {
    if piece.iter().map(Vec::len).sum::<usize>() <= EDGES_KEPT_WHOLE {
        return piece.clone();
    }
    piece
        .iter()
        .filter_map(|ring| {
            let own = Bounds::around(ring);
            let near = own.overlaps(bounds);
            near.then(|| ring_around(ring.clone(), &own, bounds))
        })
        .filter(|ring| ring.len() > 2)
        .collect()
}

/// What of a ring with its `own` bounds lies inside of `bounds`, with a little to spare.
fn ring_around(ring: Ring, own: &Bounds, bounds: &Bounds) -> Ring {
    if bounds.holds(own) {
        ring
    } else {
        inside(&ring, bounds, 1.0)
    }
}

fn rings_of(face: &FrontFace) -> Rings {
    face.rings
        .iter()
        .map(|range| {
            face.edges[range.clone()]
                .iter()
                .map(|edge| [edge[0], edge[1]])
                .collect()
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use i_overlay::core::fill_rule::FillRule;
    use i_overlay::core::overlay::ShapeType;
    use i_overlay::core::overlay_rule::OverlayRule;

    use super::*;
    use crate::drawing::scenes::{boxes, panel, stack};
    use crate::drawing::subtract::{add_rings, off_grid};

    /// Fills neither overlap nor leave gaps: together they cover what all faces together cover.
    #[test]
    fn fills_cover_the_outline_once() {
        for scene in [boxes(100, 3), stack(), panel()] {
            for direction in [View::ISOMETRIC, [-2, -1, 1], [3, -7, 2]] {
                let view = View::from_direction(direction);
                let seen: f64 = visible_fills(&scene, &view)
                    .iter()
                    .map(VisibleFill::area)
                    .sum();
                let front = Front::prepare(&scene, &view);
                let mut overlay: Overlay<i32> = Overlay::new(1000);
                for face in &front.faces {
                    add_rings(&mut overlay, &rings_of(face), ShapeType::Subject);
                }
                let outline: f64 = overlay
                    .overlay(OverlayRule::Subject, FillRule::Positive)
                    .into_iter()
                    .flatten()
                    .map(|ring| {
                        let ring: Ring = ring.into_iter().map(off_grid).collect();
                        area(&ring)
                    })
                    .sum();
                // Where faces meet, each reaches a few micrometres under the other.
                let difference = (seen - outline).abs() / outline;
                assert!(difference < 5e-4, "{difference}: {seen} of {outline}");
            }
        }
    }
}
