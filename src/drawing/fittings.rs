//! Screws, dowels and loose tenons where they go in: small solids drawn back along their axis.

use std::collections::BTreeMap;

use super::bodies::{add_shell, length};
use super::explode::Move;
use super::scene::{BodyId, Scene};
use super::view::{WorldPoint, dot, minus, plus, times};
use crate::build::{Build, Fastener, Hardware, HardwareKind, Joint, PlacedId};
use crate::solid::{BodyEdge, BodyFace, Joining, Shell, SurfaceId, rod};
use crate::units::Length;

/// A step shows no more of them than this; a plan of a thousand screws shows the first.
const MOST: usize = 60;

/// What a fastener needs to be drawn.
struct Drawn<'f> {
    fastener: &'f Fastener,
    hardware: &'f Hardware,
    /// Away from its place.
    offset: [f64; 3],
    /// Lines in the air that show where it goes.
    axes: Vec<[WorldPoint; 2]>,
}

/// Adds the fasteners of joints to a scene; `thinnest` is the smallest radius that is still
/// seen on paper, in micrometres. Gives how many bodies were added from `body` on.
pub(super) fn add_fittings(
    scene: &mut Scene,
    body: BodyId,
    build: &Build,
    joints: &[usize],
    moves: &BTreeMap<PlacedId, Move>,
    thinnest: f64,
    gap: f64,
) -> u32 {
    let offset = |piece: PlacedId| moves.get(&piece).map_or([0.0; 3], |moved| moved.offset);
    let mut drawn = Vec::new();
    for joint in joints.iter().filter_map(|index| build.joints.get(*index)) {
        for fastener in &joint.fasteners {
            let Some(hardware) = build.hardware.get(fastener.hardware.0) else {
                continue;
            };
            let offsets = (offset(joint.part), offset(joint.to));
            drawn.extend(drawn_back(build, joint, fastener, hardware, offsets, gap));
        }
    }
    let mut next = body.0;
    for drawn in drawn.into_iter().take(MOST) {
        let shell = shape(drawn.hardware, drawn.fastener, thinnest);
        add_shell(scene, BodyId(next), &shell, drawn.offset);
        for axis in drawn.axes {
            scene.add_line(BodyId(next), axis);
        }
        next += 1;
    }
    next - body.0
}

fn point(lengths: [Length; 3]) -> WorldPoint {
    lengths.map(length)
}

/// Where a fastener is drawn; none where it would only be in the way.
fn drawn_back<'f>(
    build: &Build,
    joint: &Joint,
    fastener: &'f Fastener,
    hardware: &'f Hardware,
    (of_part, of_other): ([f64; 3], [f64; 3]),
    gap: f64,
) -> Option<Drawn<'f>> {
    let (from, to) = (point(fastener.from), point(fastener.to));
    let run = minus(to, from);
    let long = dot(run, run).sqrt();
    if long <= 0.0 {
        return None;
    }
    let axis = times(run, 1.0 / long);
    match hardware.kind {
        // Along an edge, on both pieces at once, or no solid of their own.
        HardwareKind::Goods
        | HardwareKind::Hinge
        | HardwareKind::Runner
        | HardwareKind::Spline
        | HardwareKind::EdgeBand
        | HardwareKind::WallFixing => None,
        HardwareKind::Insert | HardwareKind::Magnet | HardwareKind::ShelfPin => {
            // Into one piece, before the other comes: out of its mouth and a little away.
            let near = plus(from, times(run, 0.9));
            let part = build.piece(joint.part).map(|piece| piece.place);
            let inside = part.is_some_and(|place| holds(&place, near));
            let base = if inside { of_part } else { of_other };
            let offset = plus(base, times(axis, -(long * 1.6 + gap)));
            Some(Drawn {
                fastener,
                hardware,
                offset,
                axes: vec![[plus(to, offset), plus(from, base)]],
            })
        }
        HardwareKind::WoodScrew
        | HardwareKind::PocketScrew
        | HardwareKind::Nail
        | HardwareKind::Bolt
        | HardwareKind::Plug => {
            // It comes from outside of the piece that its head rests in.
            let near = plus(from, times(run, 0.1));
            let places = [joint.part, joint.to].map(|id| build.piece(id).map(|piece| piece.place));
            let [in_part, in_other] = places.map(|place| place.filter(|place| holds(place, near)));
            let base = if in_part.is_some() { of_part } else { of_other };
            // Out of the wood altogether: a pocket screw comes a long way at a slant.
            let out = in_part
                .or(in_other)
                .map_or(long, |place| way_out(&place, near, axis) + long * 0.9);
            let back = times(axis, -(out.min(4.0 * long) + gap));
            let offset = plus(base, back);
            Some(Drawn {
                fastener,
                hardware,
                offset,
                axes: vec![[plus(to, offset), plus(from, base)]],
            })
        }
        HardwareKind::Dowel | HardwareKind::LooseTenon => {
            let apart = minus(of_part, of_other);
            let along = dot(apart, axis);
            if along.abs() < long * 0.8 {
                // Both pieces come together sideways: it stands in the piece it comes to.
                return Some(Drawn {
                    fastener,
                    hardware,
                    offset: of_other,
                    axes: Vec::new(),
                });
            }
            let middle = times(plus(of_part, of_other), 0.5);
            let centre = times(plus(from, to), 0.5);
            let end = |part: f64| plus(plus(centre, times(run, part)), middle);
            // From each of its ends to the piece on that side.
            let (ahead, behind) = if along > 0.0 {
                (of_part, of_other)
            } else {
                (of_other, of_part)
            };
            Some(Drawn {
                fastener,
                hardware,
                offset: middle,
                axes: vec![
                    [end(0.5), plus(centre, ahead)],
                    [end(-0.5), plus(centre, behind)],
                ],
            })
        }
    }
}

fn holds(place: &[crate::geometry::Interval; 3], point: WorldPoint) -> bool {
    place
        .iter()
        .zip(point)
        .all(|(reach, value)| length(reach.low) - 1.0 <= value && value <= length(reach.high) + 1.0)
}

/// How far back along an axis a point leaves a box.
fn way_out(place: &[crate::geometry::Interval; 3], point: WorldPoint, axis: [f64; 3]) -> f64 {
    let sides = place.iter().zip(point.into_iter().zip(axis));
    sides
        .filter(|(_, (_, part))| part.abs() > 1e-9)
        .map(|(reach, (value, part))| {
            let end = if part > 0.0 { reach.low } else { reach.high };
            (value - length(end)) / part
        })
        .fold(f64::INFINITY, f64::min)
        .max(0.0)
}

/// The gap that pieces need so that the dowels and tenons between them are seen.
pub(super) fn room_for_dowels(build: &Build, joints: &[usize]) -> BTreeMap<PlacedId, f64> {
    let mut room: BTreeMap<PlacedId, f64> = BTreeMap::new();
    for joint in joints.iter().filter_map(|index| build.joints.get(*index)) {
        for fastener in &joint.fasteners {
            let kind = build
                .hardware
                .get(fastener.hardware.0)
                .map(|item| item.kind);
            if matches!(kind, Some(HardwareKind::Dowel | HardwareKind::LooseTenon)) {
                let run = minus(point(fastener.to), point(fastener.from));
                let wanted = dot(run, run).sqrt() * 2.2;
                for piece in [joint.part, joint.to] {
                    let entry = room.entry(piece).or_default();
                    *entry = entry.max(wanted);
                }
            }
        }
    }
    room
}

/// The solid of a fastener in its place.
fn shape(hardware: &Hardware, fastener: &Fastener, thinnest: f64) -> Shell {
    let mm = |micrometres: f64| Length::from_mm_f64(micrometres / 1000.0);
    let run = minus(point(fastener.to), point(fastener.from));
    let long = dot(run, run).sqrt();
    let diameter = hardware.diameter.map_or(long / 8.0, length);
    let radius = (diameter / 2.0).max(thinnest);
    let profile: Vec<(f64, f64)> = match hardware.kind {
        HardwareKind::WoodScrew | HardwareKind::Nail => {
            let head = hardware.head.map_or(diameter, |head| length(head) / 2.0);
            let head = head.max(radius * 1.8);
            let sunk = (head - radius).min(long / 3.0);
            let tip = (radius * 3.0).min(long / 4.0);
            vec![
                (0.0, head),
                (sunk, radius),
                (long - tip, radius),
                (long, radius * 0.1),
            ]
        }
        HardwareKind::PocketScrew | HardwareKind::Bolt => {
            let head = hardware.head.map_or(diameter, |head| length(head) / 2.0);
            let head = head.max(radius * 1.8);
            let thick = (head * 0.6).min(long / 4.0);
            let tip = (radius * 3.0).min(long / 4.0);
            vec![
                (0.0, head),
                (thick, head),
                (thick, radius),
                (long - tip, radius),
                (long, radius * 0.1),
            ]
        }
        HardwareKind::Dowel
        | HardwareKind::Plug
        | HardwareKind::Insert
        | HardwareKind::ShelfPin
        | HardwareKind::Magnet
        | HardwareKind::Spline
        | HardwareKind::Hinge
        | HardwareKind::Runner
        | HardwareKind::EdgeBand
        | HardwareKind::WallFixing
        | HardwareKind::Goods => {
            let bevel = (radius * 0.25).min(long / 6.0);
            vec![
                (0.0, radius - bevel),
                (bevel, radius),
                (long - bevel, radius),
                (long, radius - bevel),
            ]
        }
        HardwareKind::LooseTenon => return tenon(hardware, fastener, thinnest),
    };
    let widest = profile
        .iter()
        .map(|(_, radius)| *radius)
        .fold(0.0, f64::max);
    let profile: Vec<(Length, Length)> = profile
        .into_iter()
        .map(|(along, radius)| (mm(along), mm(radius)))
        .collect();
    rod(
        fastener.from,
        fastener.to,
        &profile,
        facets(widest / thinnest),
    )
}

/// Facets of a turned body `size` times as thick as the thinnest that is still seen: no more
/// than its outline on paper has a use for.
fn facets(size: f64) -> u32 {
    if size < 2.0 {
        12
    } else if size < 4.0 {
        16
    } else if size < 7.0 {
        24
    } else {
        32
    }
}

/// A loose tenon: a block about its axis, its width along the longer of the other two axes that
/// lie level, its thickness along the third.
fn tenon(hardware: &Hardware, fastener: &Fastener, thinnest: f64) -> Shell {
    let axis = fastener.driven.axis().index();
    let least = Length::from_mm_f64(thinnest * 2.0 / 1000.0);
    let thickness = hardware.thickness.unwrap_or_default().max(least);
    let width = hardware.width.unwrap_or_default().max(thickness);
    let mut low = [0_i64; 3];
    let mut high = [0_i64; 3];
    // Across and deep lie level; the width takes the first of them the axis leaves free.
    let wide = if axis == 0 { 1 } else { 0 };
    for k in 0..3 {
        let pick = |ends: &[Length; 3]| ends.get(k).copied().unwrap_or_default().nm();
        let (a, b) = (pick(&fastener.from), pick(&fastener.to));
        let grown = if k == axis {
            0
        } else if k == wide {
            width.nm() / 2
        } else {
            thickness.nm() / 2
        };
        if let (Some(low), Some(high)) = (low.get_mut(k), high.get_mut(k)) {
            *low = a.min(b) - grown;
            *high = a.max(b) + grown;
        }
    }
    block(low, high)
}

/// A box between two corners, in nanometres.
fn block(low: [i64; 3], high: [i64; 3]) -> Shell {
    let corner = |bits: usize| {
        let mut corner = low;
        for (k, part) in corner.iter_mut().enumerate() {
            if bits >> k & 1 == 1 {
                *part = high.get(k).copied().unwrap_or_default();
            }
        }
        corner
    };
    let unit = |axis: usize, sign: f64| {
        let mut normal = [0.0; 3];
        if let Some(part) = normal.get_mut(axis) {
            *part = sign;
        }
        normal
    };
    let mut shell = Shell::default();
    for axis in 0..3_usize {
        let (i, j) = (1 << ((axis + 1) % 3), 1 << ((axis + 2) % 3));
        for (side, sign) in [(0, -1.0), (1 << axis, 1.0)] {
            shell.faces.push(BodyFace {
                surface: SurfaceId(0),
                normal: unit(axis, sign),
                rings: vec![[0, i, i | j, j].map(|bits| corner(side | bits)).to_vec()],
            });
        }
        for (u, su) in [(0, -1.0), (i, 1.0)] {
            for (v, sv) in [(0, -1.0), (j, 1.0)] {
                shell.edges.push(BodyEdge {
                    joining: Joining::Sharp,
                    ends: [corner(u | v), corner(u | v | 1 << axis)],
                    normals: [unit((axis + 1) % 3, su), unit((axis + 2) % 3, sv)],
                    round: None,
                    stands: None,
                });
            }
        }
    }
    shell
}
