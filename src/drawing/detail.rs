//! Which detail of a step is too small to be seen, and where it shows best.

use std::collections::BTreeMap;

use super::bodies::{Grade, Standing, add_part_of_piece, length};
use super::compose::{Shot, Staging, Studio};
use super::explode::Move;
use super::grid::Bounds;
use super::picture::{Ink, Picture};
use super::scene::{BodyId, EdgeKind, Scene};
use super::view::{View, WorldPoint, dot, minus, plus};
use crate::build::{Build, Joint, JointKind, PlacedId};
use crate::display::PT_PER_MM;
use crate::geometry::Interval;

/// A detail smaller than this on paper, in millimetres, is drawn once more, enlarged.
const LEGIBLE_MM: f64 = 4.0;
/// Enlarged, it is about this large, in millimetres.
const ENLARGED_MM: f64 = 9.0;
/// Enlargements: whole numbers that a reader can take off.
const TIMES: [f64; 5] = [2.0, 3.0, 4.0, 5.0, 8.0];

/// Joints whose detail would be too small on paper.
pub(super) struct Detail {
    /// How far each piece is drawn from its place, in micrometres.
    moves: BTreeMap<PlacedId, [f64; 3]>,
    /// The bodies that show it, each with how much its lines count.
    bodies: BTreeMap<BodyId, f64>,
    /// Where it might be shown, in micrometres of the world.
    spots: Vec<WorldPoint>,
    /// How large the detail is, in micrometres.
    size: f64,
}

/// Joints with the size of what they are about.
pub(super) struct Small<'j> {
    joints: Vec<&'j Joint>,
    size: f64,
}

/// The joints of a step with the smallest detail, if that is too small at `scale`, in points for
/// a micrometre.
pub(super) fn too_small<'j>(build: &'j Build, joints: &[usize], scale: f64) -> Option<Small<'j>> {
    let known = joints.iter().filter_map(|index| build.joints.get(*index));
    let sized: Vec<(&Joint, f64)> = known
        .filter_map(|joint| Some((joint, size_of(joint)?)))
        .collect();
    let size = sized.iter().map(|(_, size)| *size).min_by(f64::total_cmp)?;
    let like = |(joint, own): &(&'j Joint, f64)| (*own < size * 1.02).then_some(*joint);
    (size * scale < LEGIBLE_MM * PT_PER_MM).then(|| Small {
        joints: sized.iter().filter_map(like).collect(),
        size,
    })
}

/// How large the thing is that a reader must make out: a fastener's length, or a channel's width.
fn size_of(joint: &Joint) -> Option<f64> {
    let fastener = joint.fasteners.first().map(|fastener| {
        let run = minus(fastener.to.map(length), fastener.from.map(length));
        dot(run, run).sqrt()
    });
    let across = || {
        let sizes = joint.contact.area.iter().map(|reach| length(reach.size()));
        sizes.filter(|size| *size > 0.0).min_by(f64::total_cmp)
    };
    match joint.kind {
        JointKind::Dado
        | JointKind::Groove
        | JointKind::Rabbet
        | JointKind::MortiseAndTenon
        | JointKind::TongueAndGroove
        | JointKind::HalfLap
        | JointKind::BoxJoint
        | JointKind::Mitre
        | JointKind::Strips => across(),
        JointKind::Glue
        | JointKind::Lamination
        | JointKind::Screws
        | JointKind::PocketScrews
        | JointKind::Dowels
        | JointKind::LooseTenons
        | JointKind::Bolts
        | JointKind::Nails
        | JointKind::Hinges
        | JointKind::Runners
        | JointKind::ShelfPins
        | JointKind::Magnets => fastener,
    }
}

impl Small<'_> {
    /// The detail, with where its pieces are drawn.
    pub(super) fn detail(&self, staging: &Staging, moves: &BTreeMap<PlacedId, Move>) -> Detail {
        let bodies_of = |piece: PlacedId| {
            let all = staging.pieces.iter();
            all.filter(move |(_, other)| **other == piece)
                .map(|(body, _)| *body)
        };
        let mut bodies = BTreeMap::new();
        let mut spots = Vec::new();
        let fastened = self.joints.iter().any(|joint| !joint.fasteners.is_empty());
        if fastened {
            // Screws and dowels as they are drawn: on their way.
            for (body, middle) in middles(staging) {
                bodies.insert(body, 3.0);
                spots.push(middle);
            }
        }
        let drawn = !spots.is_empty();
        for joint in &self.joints {
            for (piece, weight) in [(joint.part, 0.4), (joint.to, 1.0)] {
                let offset = moves.get(&piece).map_or([0.0; 3], |moved| moved.offset);
                bodies.extend(bodies_of(piece).map(|body| (body, weight)));
                // Without a fastener in the picture, the channel or the holes it goes into.
                if !drawn && (fastened || piece == joint.to) {
                    spots.extend(corners(&joint.contact.area).map(|at| plus(at, offset)));
                }
            }
        }
        Detail {
            moves: moves
                .iter()
                .map(|(piece, moved)| (*piece, moved.offset))
                .collect(),
            bodies,
            spots,
            size: self.size,
        }
    }
}

/// The middle of each screw, dowel or tenon that is drawn.
fn middles(staging: &Staging) -> BTreeMap<BodyId, WorldPoint> {
    let mut reach: BTreeMap<BodyId, [WorldPoint; 2]> = BTreeMap::new();
    for edge in &staging.scene.edges {
        let drawn =
            edge.kind != EdgeKind::Free && staging.inks.get(&edge.body) == Some(&Ink::Hardware);
        for end in edge.ends.iter().filter(|_| drawn) {
            let [low, high] = reach.entry(edge.body).or_insert([*end, *end]);
            for ((low, high), value) in low.iter_mut().zip(high).zip(end) {
                *low = low.min(*value);
                *high = high.max(*value);
            }
        }
    }
    let middle = |[low, high]: [WorldPoint; 2]| plus(low, high).map(|sum| sum / 2.0);
    reach
        .into_iter()
        .map(|(body, reach)| (body, middle(reach)))
        .collect()
}

/// The corners of a contact, once or twice each.
fn corners(area: &[Interval; 3]) -> impl Iterator<Item = WorldPoint> {
    let ends = area.map(|reach| [length(reach.low), length(reach.high)]);
    (0_u8..8).map(move |number| {
        let mut corner = [0.0; 3];
        for (bit, (part, [low, high])) in corner.iter_mut().zip(ends).enumerate() {
            *part = if number >> bit & 1 == 1 { high } else { low };
        }
        corner
    })
}

/// A round piece of a view that is drawn once more, larger.
#[derive(Clone, Copy, Debug)]
pub(super) struct Lens {
    /// Its middle, in micrometres of the view.
    pub(super) centre: [f64; 2],
    /// How many times as large it is drawn.
    pub(super) times: f64,
}

impl Detail {
    /// Where to look closely in a picture at `scale`, when `radius` micrometres on paper at that
    /// scale are shown; none where nothing of the joint is seen.
    pub(super) fn lens(
        &self,
        shot: &Shot,
        picture: &Picture,
        scale: f64,
        radius: impl Fn(f64) -> f64,
    ) -> Option<Lens> {
        let on_paper = self.size * scale / PT_PER_MM;
        let enough = |times: &f64| on_paper * times >= ENLARGED_MM;
        let times = TIMES.into_iter().find(enough).unwrap_or(8.0);
        let mut best: Option<([f64; 2], f64)> = None;
        for spot in &self.spots {
            let [x, y, _] = shot.view.project(*spot);
            let shown = self.shown([x, y], radius(times), shot, picture);
            if shown > best.map_or(0.0, |best| best.1) {
                best = Some(([x, y], shown));
            }
        }
        best.map(|(centre, _)| Lens { centre, times })
    }

    /// How much a circle shows of the joint: of each of its bodies as much line as counts.
    fn shown(&self, centre: [f64; 2], radius: f64, shot: &Shot, picture: &Picture) -> f64 {
        let mut lengths: BTreeMap<BodyId, f64> = BTreeMap::new();
        for line in &picture.lines {
            let edge = picture.scene.edges.get(line.edge);
            let own = edge
                .filter(|edge| edge.kind != EdgeKind::Free && self.bodies.contains_key(&edge.body));
            if let (Some(edge), Some([[ax, ay], [bx, by]])) =
                (own, super::inset::within(line.ends, centre, radius))
            {
                *lengths.entry(edge.body).or_default() += libm::hypot(bx - ax, by - ay);
            }
        }
        let hardware = |body: &BodyId| shot.staging.inks.get(body) == Some(&Ink::Hardware);
        let wanted = self.bodies.keys().any(hardware);
        if wanted && !lengths.keys().any(hardware) {
            // Wood alone says nothing of how it is held.
            return 0.0;
        }
        let counted = lengths.into_iter().map(|(body, length)| {
            let most = if hardware(&body) { 5.0 } else { 2.0 };
            let weight = self.bodies.get(&body).copied().unwrap_or_default();
            weight * length.min(most * radius)
        });
        counted.sum()
    }
}

/// A square of a view.
struct Square<'v> {
    view: &'v View,
    centre: [f64; 2],
    half: f64,
}

impl Square<'_> {
    /// True where the bounds of points as seen reach into it.
    fn meets(&self, points: impl Iterator<Item = WorldPoint>) -> bool {
        let mut bounds = Bounds::NONE;
        for point in points {
            let [x, y, _] = self.view.project(point);
            bounds.take(x, y);
        }
        let reach = bounds.low.into_iter().zip(bounds.high).zip(self.centre);
        reach
            .into_iter()
            .all(|((low, high), centre)| low <= centre + self.half && high >= centre - self.half)
    }

    /// What of a scene reaches into it.
    fn part_of(&self, scene: &Scene, wanted: impl Fn(BodyId) -> bool) -> Scene {
        let faces = scene.faces.iter().filter(|face| wanted(face.body));
        let edges = scene.edges.iter().filter(|edge| wanted(edge.body));
        Scene {
            faces: faces
                .filter(|face| self.meets(face.rings.iter().flatten().copied()))
                .cloned()
                .collect(),
            edges: edges
                .filter(|edge| self.meets(edge.ends.into_iter()))
                .copied()
                .collect(),
            rounds: scene.rounds.clone(),
        }
    }
}

impl Detail {
    /// What a shot shows in a square around a point, with every feature.
    pub(super) fn close_by(
        &self,
        studio: &Studio<'_>,
        shot: &Shot,
        picture: &Picture,
        centre: [f64; 2],
        half: f64,
    ) -> Scene {
        let square = Square {
            view: &shot.view,
            centre,
            half,
        };
        let pieces = &shot.staging.pieces;
        // Screws and dowels as they are; lines in the air belong to pieces too.
        let mut scene = square.part_of(&picture.scene, |body| !pieces.contains_key(&body));
        let air = picture.scene.edges.iter();
        scene.edges.extend(air.filter(|edge| {
            edge.kind == EdgeKind::Free
                && pieces.contains_key(&edge.body)
                && square.meets(edge.ends.into_iter())
        }));
        for (body, piece) in pieces {
            let offset = self.moves.get(piece).copied().unwrap_or_default();
            let place = studio.contacts.place(*piece).shifted(offset);
            if let Some(placed) = studio.build.piece(*piece)
                && square.meets(place.corners().into_iter())
            {
                let (build, solids) = (studio.build, studio.solids);
                let own = Standing {
                    body: *body,
                    piece: placed,
                    grade: Grade::Fine,
                    offset,
                };
                add_part_of_piece(&mut scene, build, solids, &own, |points| {
                    square.meets(points)
                });
            }
        }
        scene
    }
}
