//! A face less what lies over it.

use i_overlay::core::fill_rule::FillRule;
use i_overlay::core::overlay::{Overlay, ShapeType};
use i_overlay::core::overlay_rule::OverlayRule;
use i_overlay::i_float::int::point::IntPoint;

use super::anchor::distance_inside;
use super::grid::{Bounds, nearest};
use super::rings::{Ring, Rings, area, girth};

/// Pieces narrower than this on an average, in micrometres, are slits between faces that meet,
/// left by rounding.
const SLIT: f64 = 4.0;
/// Edges that are taken off at one time.
///
/// A plane operation compares edges with edges. What the largest faces hide is gone when the
/// small ones come, and these meet only the pieces they lie over.
const AT_A_TIME: usize = 64;

/// What is left of the outline `own` without `clips`: connected pieces, an outer ring and its
/// holes each.
pub(super) fn subtract(overlay: &mut Overlay<i32>, own: Rings, clips: Vec<Rings>) -> Vec<Rings> {
    let mut open = largest_first(&own, clips);
    let mut pieces = vec![Piece::of(own)];
    loop {
        let mut edges = 0;
        let taken = open.iter().take_while(|clip| {
            let room = edges < AT_A_TIME;
            edges += clip.corners;
            room
        });
        let rest = open.split_off(taken.count());
        pieces = round(overlay, pieces, &open);
        open = rest;
        open.retain(|clip| {
            pieces
                .iter()
                .any(|piece| piece.bounds.overlaps(&clip.bounds))
        });
        if open.is_empty() || pieces.is_empty() {
            break;
        }
    }
    pieces.into_iter().map(|piece| piece.rings).collect()
}

/// Something that lies over a face.
struct Clip {
    rings: Rings,
    bounds: Bounds,
    corners: usize,
}

/// A part of a face.
struct Piece {
    rings: Rings,
    bounds: Bounds,
}

impl Piece {
    fn of(rings: Rings) -> Self {
        let bounds = Bounds::around(rings.iter().flatten());
        Self { rings, bounds }
    }
}

/// What lies over an outline, by how much of it that can hide.
fn largest_first(own: &Rings, clips: Vec<Rings>) -> Vec<Clip> {
    let around = Bounds::around(own.iter().flatten());
    let mut sorted: Vec<(f64, Clip)> = clips
        .into_iter()
        .map(|rings| {
            let bounds = Bounds::around(rings.iter().flatten());
            let [width, height] = bounds.shared(&around).size();
            let corners = rings.iter().map(Vec::len).sum();
            let clip = Clip {
                rings,
                bounds,
                corners,
            };
            (width * height, clip)
        })
        .collect();
    sorted.sort_by(|a, b| b.0.total_cmp(&a.0));
    sorted.into_iter().map(|(_, clip)| clip).collect()
}

/// Pieces without some clips. What none of these comes near is set aside and put back.
fn round(overlay: &mut Overlay<i32>, pieces: Vec<Piece>, clips: &[Clip]) -> Vec<Piece> {
    let near = |bounds: &Bounds| clips.iter().any(|clip| clip.bounds.overlaps(bounds));
    let mut left: Vec<Piece> = Vec::new();
    let mut holes: Rings = Vec::new();
    overlay.clear();
    for piece in pieces {
        if !clips.is_empty() && !near(&piece.bounds) {
            left.push(piece);
            continue;
        }
        let outer = outer_of(&piece.rings);
        for (number, ring) in piece.rings.into_iter().enumerate() {
            let is_hole = Some(number) != outer;
            if is_hole && !near(&Bounds::around(&ring)) {
                holes.push(ring);
            } else {
                add_ring(overlay, &ring, is_hole, ShapeType::Subject);
            }
        }
    }
    for clip in clips {
        add_rings(overlay, &clip.rings, ShapeType::Clip);
    }
    let first_cut = left.len();
    left.extend(
        overlay
            .overlay(OverlayRule::Difference, FillRule::NonZero)
            .into_iter()
            .map(|shape| {
                let ring = |points: Vec<IntPoint<i32>>| points.into_iter().map(off_grid).collect();
                shape.into_iter().map(ring).collect::<Rings>()
            })
            .filter(is_more_than_a_slit)
            .map(Piece::of),
    );
    for hole in holes {
        put_back(hole, left.get_mut(first_cut..).unwrap_or_default());
    }
    left
}

/// A hole that nothing lies over, in the one piece it is a hole of.
fn put_back(mut hole: Ring, pieces: &mut [Piece]) {
    if area(&hole) > 0.0 {
        hole.reverse();
    }
    let around = Bounds::around(&hole);
    let holder = match (pieces, hole.first()) {
        ([only], _) => Some(only),
        (several, Some(point)) => several.iter_mut().find(|piece| {
            let outer = piece.rings.get(..1).unwrap_or_default();
            piece.bounds.holds(&around) && distance_inside(outer, *point) > 0.0
        }),
        (_, None) => None,
    };
    if let Some(piece) = holder {
        piece.rings.push(hole);
    }
}

/// Which ring of an outline is the outer one: the largest.
fn outer_of(rings: &Rings) -> Option<usize> {
    let sizes = rings.iter().map(|ring| area(ring).abs()).enumerate();
    let largest = sizes.max_by(|a, b| a.1.total_cmp(&b.1));
    largest.map(|(number, _)| number)
}

/// Rings of one face: the largest is the outer one, all others are holes in it.
pub(super) fn add_rings(overlay: &mut Overlay<i32>, rings: &Rings, role: ShapeType) {
    let outer = outer_of(rings);
    for (number, ring) in rings.iter().enumerate() {
        add_ring(overlay, ring, Some(number) != outer, role);
    }
}

/// A ring, turned counter-clockwise, or clockwise where it is a hole.
fn add_ring(overlay: &mut Overlay<i32>, ring: &Ring, is_hole: bool, role: ShapeType) {
    if (area(ring) >= 0.0) == is_hole {
        overlay.add_path_iter(ring.iter().rev().map(on_grid), role);
    } else {
        overlay.add_path_iter(ring.iter().map(on_grid), role);
    }
}

/// True for pieces with some width.
fn is_more_than_a_slit(rings: &Rings) -> bool {
    let covered = rings.iter().map(|ring| area(ring)).sum::<f64>().abs();
    let around: f64 = rings.iter().map(|ring| girth(ring)).sum();
    // A long strip is half as wide as its area over its girth says.
    covered > around * SLIT / 2.0
}

/// What the plane operations can hold, in micrometres: a kilometre.
const LIMIT: i64 = 1_000_000_000;

/// A point on the grid of whole micrometres, kept inside of what the plane operations can hold.
fn on_grid(point: &[f64; 2]) -> IntPoint<i32> {
    let whole = |value: f64| {
        let kept = nearest(value).clamp(-LIMIT, LIMIT);
        i32::try_from(kept).unwrap_or_default()
    };
    IntPoint::new(whole(point[0]), whole(point[1]))
}

fn off_grid(point: IntPoint<i32>) -> [f64; 2] {
    [f64::from(point.x), f64::from(point.y)]
}
