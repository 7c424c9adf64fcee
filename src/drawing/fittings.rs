//! Screws, dowels, hinges and the like where they go: small solids, drawn back along their axis or with the
//! piece they are screwed to.

use std::collections::BTreeMap;

use super::bodies::{add_shell, length, of_micrometres};
use super::explode::Move;
use super::plates::{self, GoesWith, along, slab};
use super::scene::{BodyId, Scene};
use super::view::{WorldPoint, dot, minus, plus, times};
use crate::build::{Build, Fastener, Hardware, HardwareKind, Joint, PlacedId};
use crate::geometry::Interval;
use crate::solid::{Shell, rod};
use crate::units::Length;

/// A step shows no more of them than this; a plan of a thousand screws shows the first.
const MOST: u32 = 60;

/// A body of a fastener as it is drawn.
struct Drawn {
    shell: Shell,
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
    let shown = joints.iter().filter_map(|index| build.joints.get(*index));
    let shown = shown.flat_map(|joint| joint.fasteners.iter().map(move |it| (joint, it)));
    let mut next = body.0;
    for (joint, fastener) in shown {
        let Some(hardware) = build.hardware.get(fastener.hardware.0) else {
            continue;
        };
        let fitting = Fitting {
            build,
            joint,
            fastener,
            hardware,
            offsets: (offset(joint.part), offset(joint.to)),
            thinnest,
            gap,
        };
        for drawn in fitting.drawn() {
            add_shell(scene, BodyId(next), &drawn.shell, drawn.offset);
            for axis in drawn.axes {
                scene.add_line(BodyId(next), axis);
            }
            next += 1;
        }
        if next - body.0 >= MOST {
            break;
        }
    }
    next - body.0
}

/// A fastener of a joint, and how its pieces are drawn.
struct Fitting<'f> {
    build: &'f Build,
    joint: &'f Joint,
    fastener: &'f Fastener,
    hardware: &'f Hardware,
    /// Where the piece that comes and the one it comes to are drawn, away from their places.
    offsets: ([f64; 3], [f64; 3]),
    thinnest: f64,
    gap: f64,
}

fn point(lengths: [Length; 3]) -> WorldPoint {
    lengths.map(length)
}

impl Fitting<'_> {
    /// Its bodies; none for what lies along an edge or comes from elsewhere.
    fn drawn(&self) -> Vec<Drawn> {
        let (from, to) = (point(self.fastener.from), point(self.fastener.to));
        let run = minus(to, from);
        let long = dot(run, run).sqrt();
        if long <= 0.0 {
            return Vec::new();
        }
        let centre = times(plus(from, to), 0.5);
        match self.hardware.kind {
            HardwareKind::Goods | HardwareKind::EdgeBand | HardwareKind::WallFixing => Vec::new(),
            HardwareKind::Hinge => {
                let [Some(part), Some(other)] = self.places() else {
                    return Vec::new();
                };
                let places = [part, other];
                self.with(plates::hinge(
                    &places,
                    self.hardware,
                    self.fastener,
                    self.joint,
                ))
            }
            HardwareKind::Runner => {
                self.with(plates::runner(self.hardware, self.fastener, self.joint))
            }
            HardwareKind::Spline => plates::spline(self.hardware, self.fastener, self.joint)
                .map(|(shell, reach)| self.between(shell, centre, reach))
                .into_iter()
                .collect(),
            HardwareKind::Dowel | HardwareKind::LooseTenon => {
                vec![self.between(self.shape(), centre, run)]
            }
            HardwareKind::Insert | HardwareKind::Magnet | HardwareKind::ShelfPin => {
                vec![self.before_its_mouth(from, run, long)]
            }
            HardwareKind::WoodScrew
            | HardwareKind::PocketScrew
            | HardwareKind::Nail
            | HardwareKind::Bolt
            | HardwareKind::Plug => vec![self.behind_its_head(from, run, long)],
        }
    }

    fn shape(&self) -> Shell {
        shape(self.hardware, self.fastener, self.thinnest)
    }

    /// Where the piece that comes and the one it comes to are.
    fn places(&self) -> [Option<[Interval; 3]>; 2] {
        [self.joint.part, self.joint.to].map(|id| self.build.piece(id).map(|piece| piece.place))
    }

    /// Bodies drawn each with the piece that it is fitted to.
    fn with(&self, bodies: impl IntoIterator<Item = (GoesWith, Shell)>) -> Vec<Drawn> {
        let (of_part, of_other) = self.offsets;
        let drawn = |(with, shell)| Drawn {
            shell,
            offset: match with {
                GoesWith::Part => of_part,
                GoesWith::Other => of_other,
            },
            axes: Vec::new(),
        };
        bodies.into_iter().map(drawn).collect()
    }

    /// Into one piece, before the other comes: out of its mouth and a little away.
    fn before_its_mouth(&self, from: WorldPoint, run: [f64; 3], long: f64) -> Drawn {
        let (of_part, of_other) = self.offsets;
        let near = plus(from, times(run, 0.9));
        let [part, _] = self.places();
        let inside = part.is_some_and(|place| holds(&place, near));
        let base = if inside { of_part } else { of_other };
        let axis = times(run, 1.0 / long);
        let offset = plus(base, times(axis, -(long * 1.6 + self.gap)));
        Drawn {
            shell: self.shape(),
            offset,
            axes: vec![[plus(plus(from, run), offset), plus(from, base)]],
        }
    }

    /// It comes from outside of the piece that its head rests in.
    fn behind_its_head(&self, from: WorldPoint, run: [f64; 3], long: f64) -> Drawn {
        let (of_part, of_other) = self.offsets;
        let near = plus(from, times(run, 0.1));
        let axis = times(run, 1.0 / long);
        let [in_part, in_other] = self
            .places()
            .map(|place| place.filter(|place| holds(place, near)));
        let base = if in_part.is_some() { of_part } else { of_other };
        // Out of the wood altogether: a pocket screw comes a long way at a slant.
        let out = in_part
            .or(in_other)
            .map_or(long, |place| way_out(&place, near, axis) + long * 0.9);
        let back = times(axis, -(out.min(4.0 * long) + self.gap));
        let offset = plus(base, back);
        Drawn {
            shell: self.shape(),
            offset,
            axes: vec![[plus(plus(from, run), offset), plus(from, base)]],
        }
    }

    /// In both pieces, which come together along `run`: in the air between them.
    fn between(&self, shell: Shell, centre: WorldPoint, run: [f64; 3]) -> Drawn {
        let (of_part, of_other) = self.offsets;
        let long = dot(run, run).sqrt();
        let along = dot(minus(of_part, of_other), run) / long;
        if along.abs() < long * 0.8 {
            // Both pieces come together sideways: it stands in the piece it comes to.
            return Drawn {
                shell,
                offset: of_other,
                axes: Vec::new(),
            };
        }
        let middle = times(plus(of_part, of_other), 0.5);
        let end = |part: f64| plus(plus(centre, times(run, part)), middle);
        // From each of its ends to the piece on that side.
        let (ahead, behind) = if along > 0.0 {
            (of_part, of_other)
        } else {
            (of_other, of_part)
        };
        Drawn {
            shell,
            offset: middle,
            axes: vec![
                [end(0.5), plus(centre, ahead)],
                [end(-0.5), plus(centre, behind)],
            ],
        }
    }
}

fn holds(place: &[Interval; 3], point: WorldPoint) -> bool {
    place
        .iter()
        .zip(point)
        .all(|(reach, value)| length(reach.low) - 1.0 <= value && value <= length(reach.high) + 1.0)
}

/// How far back along an axis a point leaves a box.
fn way_out(place: &[Interval; 3], point: WorldPoint, axis: [f64; 3]) -> f64 {
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
        // Plates have solids of their own.
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
        .map(|(along, radius)| (of_micrometres(along), of_micrometres(radius)))
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
    let thickness = hardware.thickness.map_or(0.0, length).max(thinnest * 2.0);
    let width = hardware.width.map_or(0.0, length).max(thickness);
    let (from, to) = (point(fastener.from), point(fastener.to));
    let half = times(minus(to, from), 0.5);
    // Across and deep lie level; the width takes the first of them the axis leaves free.
    let wide = if axis == 0 { 1 } else { 0 };
    let thin = 3 - axis - wide;
    let centre = times(plus(from, to), 0.5);
    slab(
        centre,
        [half, along(wide, width / 2.0), along(thin, thickness / 2.0)],
    )
}
