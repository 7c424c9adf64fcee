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
/// holes each. Outer rings are turned counter-clockwise, holes clockwise.
pub(super) fn subtract(overlay: &mut Overlay<i32>, own: Rings, clips: Vec<Rings>) -> Vec<Rings> {
    let face = Outline::of(own);
    let mut open = largest_first(&face, clips);
    let mut pieces = vec![face];
    loop {
        let mut edges = 0;
        let taken = open.iter().take_while(|clip| {
            let room = edges < AT_A_TIME;
            edges += clip.corners();
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

/// A part of a face, or something that lies over it.
struct Outline {
    rings: Rings,
    bounds: Bounds,
}

impl Outline {
    fn of(rings: Rings) -> Self {
        let bounds = Bounds::around(rings.iter().flatten());
        Self { rings, bounds }
    }

    fn corners(&self) -> usize {
        self.rings.iter().map(Vec::len).sum()
    }
}

/// What lies over a face, by how much of it that can hide.
fn largest_first(face: &Outline, clips: Vec<Rings>) -> Vec<Outline> {
    let mut sorted: Vec<(f64, Outline)> = clips
        .into_iter()
        .map(|rings| {
            let clip = Outline::of(rings);
            let [width, height] = clip.bounds.shared(&face.bounds).size();
            (width * height, clip)
        })
        .collect();
    sorted.sort_by(|a, b| b.0.total_cmp(&a.0));
    sorted.into_iter().map(|(_, clip)| clip).collect()
}

/// Pieces without some clips. What none of these comes near is set aside and put back.
fn round(overlay: &mut Overlay<i32>, pieces: Vec<Outline>, clips: &[Outline]) -> Vec<Outline> {
    let near = |bounds: &Bounds| clips.iter().any(|clip| clip.bounds.overlaps(bounds));
    let mut left: Vec<Outline> = Vec::new();
    let mut holes: Rings = Vec::new();
    overlay.clear();
    for piece in pieces {
        if !clips.is_empty() && !near(&piece.bounds) {
            left.push(piece);
            continue;
        }
        let (far, cut): (Rings, Rings) = piece
            .rings
            .into_iter()
            .partition(|ring| area(ring) < 0.0 && !near(&Bounds::around(ring)));
        holes.extend(far);
        add_rings(overlay, &cut, ShapeType::Subject);
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
            .map(Outline::of),
    );
    for hole in holes {
        put_back(hole, left.get_mut(first_cut..).unwrap_or_default());
    }
    left
}

/// A hole that nothing lies over, in the one piece it is a hole of.
fn put_back(hole: Ring, pieces: &mut [Outline]) {
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

/// Rings as they are turned: counter-clockwise, and clockwise where they are holes.
pub(super) fn add_rings(overlay: &mut Overlay<i32>, rings: &Rings, role: ShapeType) {
    for ring in rings {
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
pub(super) fn on_grid(point: &[f64; 2]) -> IntPoint<i32> {
    let whole = |value: f64| {
        let kept = nearest(value).clamp(-LIMIT, LIMIT);
        i32::try_from(kept).unwrap_or_default()
    };
    IntPoint::new(whole(point[0]), whole(point[1]))
}

/// The same the other way.
pub(super) fn off_grid(point: IntPoint<i32>) -> [f64; 2] {
    [f64::from(point.x), f64::from(point.y)]
}
