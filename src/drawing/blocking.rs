//! What keeps a piece from moving along a direction.
//!
//! A piece is blocked where one of its faces that looks ahead would meet a face that looks back
//! (Wilson and Latombe 1994, Geometric reasoning about mechanical assembly). The faces are the
//! real ones, so a shelf slides out of its dadoes towards the front and not upwards.
#![expect(
    clippy::indexing_slicing,
    reason = "axes are 0, 1 and 2; rings are taken by their own length"
)]

use std::collections::BTreeMap;

use i_overlay::core::fill_rule::FillRule;
use i_overlay::core::overlay::{Overlay, ShapeType};
use i_overlay::core::overlay_rule::OverlayRule;

use super::bodies::{Grade, Standing, add_pieces};
use super::contacts::{Box3, Contacts, TOUCHING};
use super::grid::Bounds;
use super::rings::{Ring, Rings, area, inside};
use super::scene::{BodyId, Scene};
use super::subtract::{off_grid, on_grid};
use crate::build::{Build, PlacedId};
use crate::geometry::Direction;
use crate::solid::Solids;

/// Faces that overlap by less than this on each side, in micrometres, pass each other: a tight
/// fit is no obstacle.
const PLAY: f64 = 250.0;
/// Faces that share less than this, in square micrometres, pass each other.
const LEAST_AREA: f64 = 4e6;

/// A face seen along a direction of movement.
#[derive(Clone, Debug)]
struct Flat {
    /// Lowest and highest corner across the direction.
    low: [f64; 2],
    high: [f64; 2],
    /// Its stretch along the direction.
    reach: (f64, f64),
    /// Its rings, where it is more than a rectangle.
    rings: Option<Rings>,
}

/// Faces of pieces by the direction they look in, worked out when they are asked for.
pub(super) struct Blocking<'b> {
    build: &'b Build,
    solids: &'b Solids,
    contacts: &'b Contacts,
    flats: BTreeMap<(PlacedId, Direction), Vec<Flat>>,
    /// What has been found: steps ask again and again, and pieces stay where they are.
    found: BTreeMap<(PlacedId, PlacedId, Direction), bool>,
}

impl<'b> Blocking<'b> {
    /// Nothing is worked out yet.
    pub(super) fn new(build: &'b Build, solids: &'b Solids, contacts: &'b Contacts) -> Self {
        Self {
            build,
            solids,
            contacts,
            flats: BTreeMap::new(),
            found: BTreeMap::new(),
        }
    }

    /// True where `piece` meets `other` on its way along `direction`.
    pub(super) fn blocks(
        &mut self,
        piece: PlacedId,
        other: PlacedId,
        direction: Direction,
    ) -> bool {
        let (own, its) = (self.contacts.place(piece), self.contacts.place(other));
        if !in_the_way(&own, &its, direction) {
            return false;
        }
        if let Some(found) = self.found.get(&(piece, other, direction)) {
            return *found;
        }
        let found = self.meets(piece, other, direction);
        self.found.insert((piece, other, direction), found);
        found
    }

    fn meets(&mut self, piece: PlacedId, other: PlacedId, direction: Direction) -> bool {
        self.look_up(piece, direction);
        self.look_up(other, direction.opposite());
        let (Some(ahead), Some(facing)) = (
            self.flats.get(&(piece, direction)),
            self.flats.get(&(other, direction.opposite())),
        ) else {
            return false;
        };
        ahead.iter().any(|a| facing.iter().any(|b| meet(a, b)))
    }

    /// True where a face of `piece` that looks along `direction` lies at a point.
    pub(super) fn holds(&mut self, piece: PlacedId, direction: Direction, point: [f64; 3]) -> bool {
        self.look_up(piece, direction);
        let along = direction.axis().index();
        let sign = if direction.is_positive() { 1.0 } else { -1.0 };
        let level = point[along] * sign;
        let (x, y) = (point[(along + 1) % 3], point[(along + 2) % 3]);
        self.flats
            .get(&(piece, direction))
            .into_iter()
            .flatten()
            .any(|flat| {
                let near = flat.reach.0 - TOUCHING <= level && level <= flat.reach.1 + TOUCHING;
                let inside =
                    flat.low[0] < x && x < flat.high[0] && flat.low[1] < y && y < flat.high[1];
                near && inside
                    && flat
                        .rings
                        .as_ref()
                        .is_none_or(|rings| super::anchor::distance_inside(rings, [x, y]) > 0.0)
            })
    }

    fn look_up(&mut self, piece: PlacedId, direction: Direction) {
        if self.flats.contains_key(&(piece, direction)) {
            return;
        }
        let mut scene = Scene::new();
        if let Some(placed) = self.build.piece(piece) {
            let own = Standing {
                body: BodyId(0),
                piece: placed,
                grade: Grade::Coarse,
                offset: [0.0; 3],
            };
            add_pieces(&mut scene, self.build, self.solids, &[own]);
        }
        for way in Direction::ALL {
            self.flats.insert((piece, way), flats_towards(&scene, way));
        }
    }
}

/// True where the box of `its` lies ahead of or around the box of `own`.
fn in_the_way(own: &Box3, its: &Box3, direction: Direction) -> bool {
    let along = direction.axis().index();
    let across = (0..3).filter(|axis| *axis != along);
    let beside = across.into_iter().any(|axis| own.shared(its, axis) <= PLAY);
    let behind = if direction.is_positive() {
        its.high[along] <= own.low[along] + PLAY
    } else {
        its.low[along] >= own.high[along] - PLAY
    };
    !beside && !behind
}

/// The faces of a scene that look in a direction.
fn flats_towards(scene: &Scene, direction: Direction) -> Vec<Flat> {
    let along = direction.axis().index();
    let sign = if direction.is_positive() { 1.0 } else { -1.0 };
    let (i, j) = ((along + 1) % 3, (along + 2) % 3);
    scene
        .faces
        .iter()
        .filter(|face| face.normal[along] * sign > 0.05)
        .map(|face| {
            let mut low = [f64::INFINITY; 2];
            let mut high = [f64::NEG_INFINITY; 2];
            let mut reach = (f64::INFINITY, f64::NEG_INFINITY);
            for point in face.rings.iter().flatten() {
                for (k, axis) in [i, j].into_iter().enumerate() {
                    low[k] = low[k].min(point[axis]);
                    high[k] = high[k].max(point[axis]);
                }
                let level = point[along] * sign;
                reach = (reach.0.min(level), reach.1.max(level));
            }
            let rings: Rings = face
                .rings
                .iter()
                .map(|ring| ring.iter().map(|point| [point[i], point[j]]).collect())
                .collect();
            let plain = matches!(rings.as_slice(), [ring] if ring.len() == 4 && {
                let covered = area(ring).abs();
                covered > (high[0] - low[0]) * (high[1] - low[1]) * 0.9999
            });
            Flat {
                low,
                high,
                reach,
                rings: (!plain).then_some(rings),
            }
        })
        .collect()
}

/// True where face `a`, moving on, meets face `b`.
fn meet(a: &Flat, b: &Flat) -> bool {
    // Both are measured along the way each looks: ahead of `a` lies the turned stretch of `b`.
    if -b.reach.0 < a.reach.0 - PLAY {
        return false;
    }
    let shared = [0, 1].map(|k| a.high[k].min(b.high[k]) - a.low[k].max(b.low[k]));
    if shared[0] <= 2.0 * PLAY || shared[1] <= 2.0 * PLAY || shared[0] * shared[1] <= LEAST_AREA {
        return false;
    }
    match (&a.rings, &b.rings) {
        (None, None) => true,
        (None, Some(rings)) => area_within(rings, a) > LEAST_AREA,
        (Some(rings), None) => area_within(rings, b) > LEAST_AREA,
        (Some(own), Some(its)) => shared_area(own, its) > LEAST_AREA,
    }
}

/// What of an outline less its holes lies in a rectangle, in square micrometres.
fn area_within(rings: &[Vec<[f64; 2]>], rectangle: &Flat) -> f64 {
    let bounds = Bounds {
        low: rectangle.low,
        high: rectangle.high,
    };
    let size = |ring: &Vec<[f64; 2]>| area(ring).abs();
    let outer = rings.iter().map(size).fold(0.0, f64::max);
    rings
        .iter()
        .map(|ring| {
            let is_hole = size(ring) < outer;
            let kept = size(&inside(ring, &bounds, 0.0));
            if is_hole { -kept } else { kept }
        })
        .sum()
}

/// The area two faces share, in square micrometres.
fn shared_area(own: &[Vec<[f64; 2]>], its: &[Vec<[f64; 2]>]) -> f64 {
    let mut overlay: Overlay<i32> = Overlay::new(64);
    for (rings, role) in [(own, ShapeType::Subject), (its, ShapeType::Clip)] {
        for ring in rings {
            overlay.add_path_iter(ring.iter().map(on_grid), role);
        }
    }
    overlay
        .overlay(OverlayRule::Intersect, FillRule::EvenOdd)
        .iter()
        .flatten()
        .map(|ring| {
            let points: Ring = ring.iter().copied().map(off_grid).collect();
            area(&points)
        })
        .sum()
}
