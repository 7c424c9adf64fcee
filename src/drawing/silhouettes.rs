//! Silhouettes of round walls where they are, not where the nearest facet ends.
//!
//! A round wall is facets, and its silhouette would be the edge between the last facet that is
//! seen and the first that is not: off by up to half a facet. Before anything else is worked out
//! in a view, that edge is moved along its round to where the line of sight touches the wall,
//! with every point of its body that lies where its ends did. The body stays closed, its facets
//! stay plane, and arcs end exactly where silhouettes begin.
//!
//! Edges are moved and none are put in, so that edges and faces keep their numbers: what is found
//! in the view still belongs to the scene it was asked of. A facet next to a silhouette is up to
//! half wider for it. Sides of facets do not change, so that normals at edges, of which only the
//! sign is asked, stay as they are.
//!
//! Where a wall runs out into a flat, the flat holds the first edge. A silhouette between that edge and
//! the middle of the first facet is found by the facet's other edge, and the facet turns with it.
//!
//! An edge stays where it is if something else holds an end of it.

use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};

use super::meetings::Meetings;
use super::scene::{BodyId, EdgeKind, Scene, SceneEdge, SceneFace, SceneRound};
use super::view::{EDGE_ON, View, WorldPoint, cross, dot, minus, plus, times};

/// An end of an edge this far from its round, in micrometres, is not on it: more than the
/// rounding of its corners.
const OFF_ROUND: f64 = 2.0;
/// Moves of less than this, in micrometres, are not worth it; corners are rounded to more.
const NOT_WORTH_IT: f64 = 0.25;

/// A point by its bits: points of one corner are the same to the last.
pub(super) type Key = [u64; 3];

pub(super) fn key(point: WorldPoint) -> Key {
    // Zero has two signs.
    point.map(|part| (part + 0.0).to_bits())
}

/// The scene with the silhouettes of its round walls where a view sees them. A borrowed one is copied
/// only if something in it moves.
pub(super) fn with_exact_silhouettes<'s>(mut scene: Cow<'s, Scene>, view: &View) -> Cow<'s, Scene> {
    let mut moves = moves_for(&scene, view);
    if moves.is_empty() {
        return scene;
    }
    let moved = scene.to_mut();
    for face in &mut moved.faces {
        if let Some(moves) = moves.get_mut(&face.body) {
            moves.apply_to_face(face);
        }
    }
    for edge in &mut moved.edges {
        if let Some(moves) = moves.get(&edge.body) {
            moves.apply_to_edge(edge);
        }
    }
    scene
}

/// What moves so that silhouettes are where a view sees them, by its body.
fn moves_for(scene: &Scene, view: &View) -> BTreeMap<BodyId, Moves> {
    let [_, _, sight] = view.axes();
    let mut wanted: BTreeMap<BodyId, Vec<Wanted>> = BTreeMap::new();
    let mut first = 0;
    for own in scene.edges.chunk_by(|a, b| a.body == b.body) {
        for (number, edge) in (first..).zip(own) {
            if !is_taken_for_silhouette(edge, view) {
                continue;
            }
            let found = match edge.stands {
                Some(_) => touching_angle(scene, edge, sight).map(|angle| (number, angle, None)),
                None => beside_flat(scene, (first, own), edge, sight),
            };
            if let Some((number, angle, turns)) = found {
                let run = minus(edge.ends[1], edge.ends[0]);
                wanted.entry(edge.body).or_default().push(Wanted {
                    edge: number,
                    angle,
                    length: dot(run, run),
                    turns,
                });
            }
        }
        first += own.len();
    }
    if wanted.is_empty() {
        return BTreeMap::new();
    }
    let corners = Corners::of(scene, &wanted.keys().copied().collect());
    let mut moves: BTreeMap<BodyId, Moves> = BTreeMap::new();
    for (body, mut wanted) in wanted {
        // Where a cone and a cylinder ask for the same edge, the longer has it.
        wanted.sort_by(|a, b| b.length.total_cmp(&a.length));
        let moves = moves.entry(body).or_default();
        for one in wanted {
            let turned = corners.turn(scene, body, one.edge, one.angle, moves);
            moves.turned.extend(one.turns.filter(|_| turned));
        }
    }
    moves
}

/// An edge that should be at another angle of its rounds.
struct Wanted {
    edge: usize,
    angle: f64,
    /// The square of its length.
    length: f64,
    /// The facet between it and a flat, which turns when the edge moves.
    turns: Option<Turned>,
}

/// A facet that the move of its farther edge turns towards the eye or away from it: by its normal before,
/// and an end of the edge that it has in common with a flat.
struct Turned {
    normal: [f64; 3],
    corner: WorldPoint,
    /// The normal it has then, and its corners before; none until it has been moved.
    then: Option<([f64; 3], BTreeSet<Key>)>,
}

impl SceneRound {
    fn at(&self, angle: f64) -> WorldPoint {
        let (sine, cosine) = libm::sincos(angle);
        let [a, b] = self.radii;
        plus(self.centre, plus(times(a, cosine), times(b, sine)))
    }

    /// Along the round at an angle.
    fn tangent(&self, angle: f64) -> [f64; 3] {
        let (sine, cosine) = libm::sincos(angle);
        let [a, b] = self.radii;
        plus(times(a, -sine), times(b, cosine))
    }

    /// The angle of a point; none where it is not on the round.
    fn angle(&self, point: WorldPoint) -> Option<f64> {
        let [a, b] = self.radii;
        let out = minus(point, self.centre);
        let (aa, ab, bb) = (dot(a, a), dot(a, b), dot(b, b));
        let (pa, pb) = (dot(out, a), dot(out, b));
        let area = aa * bb - ab * ab;
        if area <= 1e-9 * aa * bb {
            return None;
        }
        let angle = libm::atan2((pb * aa - pa * ab) / area, (pa * bb - pb * ab) / area);
        let off = minus(self.at(angle), point);
        (dot(off, off) < OFF_ROUND * OFF_ROUND).then_some(angle)
    }
}

/// The rounds that an edge stands on, and the one angle of its ends.
fn standing<'s>(scene: &'s Scene, edge: &SceneEdge) -> Option<([&'s SceneRound; 2], f64)> {
    let [low, high] = edge.stands?;
    let round = |number: u32| scene.rounds.get(usize::try_from(number).ok()?);
    let rounds = [round(low)?, round(high)?];
    let [a, b] = edge.ends;
    let angle = rounds[0].angle(a)?;
    // Both angles are the same but for the rounding of the points.
    let off = minus(rounds[1].at(angle), b);
    (rounds[1].angle(b).is_some() && dot(off, off) < 4.0 * OFF_ROUND * OFF_ROUND)
        .then_some((rounds, angle))
}

/// The angle at which the line of sight touches the wall nearest to an edge that is taken for
/// its silhouette; none for other edges and where the edge is there already.
fn touching_angle(scene: &Scene, edge: &SceneEdge, sight: [f64; 3]) -> Option<f64> {
    let [before, after] = edge.normals;
    let ([low, high], from) = standing(scene, edge)?;
    let turn = libm::acos(dot(before, after).clamp(-1.0, 1.0));
    // There the wall's own two directions, along the round and up the wall, and the line of
    // sight lie in one plane.
    let mut angle = from;
    for _ in 0..8 {
        let along = low.tangent(angle);
        let bend = minus(low.centre, low.at(angle));
        let up = minus(high.at(angle), low.at(angle));
        let lean = minus(high.tangent(angle), along);
        let off = triple(along, up, sight);
        let slope = triple(bend, up, sight) + triple(along, lean, sight);
        if slope == 0.0 {
            return None;
        }
        let step = off / slope;
        angle -= step;
        if (angle - from).abs() > turn {
            return None;
        }
        if step.abs() < 1e-12 {
            break;
        }
    }
    let off = |round: &SceneRound, end: WorldPoint| {
        let step = minus(round.at(angle), end);
        dot(step, step) > NOT_WORTH_IT * NOT_WORTH_IT
    };
    let [a, b] = edge.ends;
    (off(low, a) || off(high, b)).then_some(angle)
}

/// True for an edge between facets, or beside one, where what is seen ends.
fn is_taken_for_silhouette(edge: &SceneEdge, view: &View) -> bool {
    let [before, after] = edge.normals;
    edge.kind == EdgeKind::Smooth
        && (view.towards_eye(before) > EDGE_ON) != (view.towards_eye(after) > EDGE_ON)
}

/// For an edge between a flat and a facet of which one is seen: the facet's other edge, and the angle to
/// which it goes if the line of sight touches the wall between the two. The facet turns with it, so that
/// the silhouette is there. The edges of the body are those from number `first` on.
fn beside_flat(
    scene: &Scene,
    (first, own): (usize, &[SceneEdge]),
    edge: &SceneEdge,
    sight: [f64; 3],
) -> Option<(usize, f64, Option<Turned>)> {
    let [start, end] = edge.ends;
    (first..).zip(own).find_map(|(number, other)| {
        if other.kind != EdgeKind::Smooth || other.stands.is_none() {
            return None;
        }
        let facet = edge
            .normals
            .into_iter()
            .find(|own| other.normals.contains(own))?;
        let ([low, high], from) = standing(scene, other)?;
        // The flat's edge stands on the same rounds, at the angle where the wall begins.
        let held = low.angle(start).or_else(|| low.angle(end))?;
        high.angle(end).or_else(|| high.angle(start))?;
        let angle = touching_angle(scene, other, sight)?;
        let (way, gone) = (turn_between(held, from), turn_between(held, angle));
        let between = gone * way > 0.0 && gone.abs() < way.abs();
        let turned = Turned {
            normal: facet,
            corner: start,
            then: None,
        };
        between.then_some((number, angle, Some(turned)))
    })
}

/// From one angle to another the shorter way round.
fn turn_between(from: f64, to: f64) -> f64 {
    let (sine, cosine) = libm::sincos(to - from);
    libm::atan2(sine, cosine)
}

/// The volume that three vectors span.
fn triple(a: [f64; 3], b: [f64; 3], c: [f64; 3]) -> f64 {
    dot(cross(a, b), c)
}

/// Which edges of round walls meet at the corners of some bodies.
struct Corners(Meetings<(BodyId, Key)>);

impl Corners {
    fn of(scene: &Scene, bodies: &BTreeSet<BodyId>) -> Self {
        let numbered = scene.edges.iter().enumerate();
        let round = numbered
            .filter(|(_, edge)| edge.kind == EdgeKind::Smooth && bodies.contains(&edge.body));
        Self(Meetings::of(round.flat_map(|(number, edge)| {
            edge.ends.map(|end| ((edge.body, key(end)), number))
        })))
    }

    /// Moves an edge to an angle, and with it all that continue it over other walls: a bevel, or
    /// the next layer. Nothing, and false, where one of them cannot follow.
    fn turn(&self, scene: &Scene, body: BodyId, first: usize, to: f64, moves: &mut Moves) -> bool {
        let start = scene
            .edges
            .get(first)
            .and_then(|edge| standing(scene, edge));
        let Some((_, start)) = start else {
            return false;
        };
        let mut points: BTreeMap<Key, WorldPoint> = BTreeMap::new();
        let mut lines = Vec::new();
        let mut open = vec![(first, to)];
        let mut met = BTreeSet::from([first]);
        while let Some((number, angle)) = open.pop() {
            let Some(edge) = scene.edges.get(number) else {
                return false;
            };
            let Some((rounds, from)) = standing(scene, edge) else {
                return false;
            };
            // One angle does for all where rounds begin alike, as those of neighbours do.
            if libm::cos(from - start) < 0.999_9 {
                return false;
            }
            let ends = rounds.map(|round| round.at(angle));
            lines.push((edge.ends, ends));
            for (end, point) in edge.ends.into_iter().zip(ends) {
                if moves.points.contains_key(&key(end)) {
                    return false;
                }
                points.entry(key(end)).or_insert(point);
                for other in self.0.at((body, key(end))) {
                    if met.insert(other) {
                        open.push((other, angle));
                    }
                }
            }
        }
        moves.points.append(&mut points);
        moves.lines.append(&mut lines);
        true
    }
}

/// Where the points of a body go.
#[derive(Default)]
struct Moves {
    points: BTreeMap<Key, WorldPoint>,
    /// Edges as they were and as they are.
    lines: Vec<([WorldPoint; 2], [WorldPoint; 2])>,
    /// Facets that look elsewhere now.
    turned: Vec<Turned>,
}

impl Moves {
    fn of(&self, point: WorldPoint) -> Option<WorldPoint> {
        self.points.get(&key(point)).copied()
    }

    /// Moves the corners of a face, and remembers how it looks if it is one that turns.
    fn apply_to_face(&mut self, face: &mut SceneFace) {
        let Self { points, turned, .. } = self;
        let corners =
            || -> BTreeSet<Key> { face.rings.iter().flatten().copied().map(key).collect() };
        let turning = turned
            .iter_mut()
            .filter(|turned| turned.then.is_none() && turned.normal == face.normal)
            .map(|turned| (corners(), turned))
            .find(|(corners, turned)| corners.contains(&key(turned.corner)));
        let mut touched = false;
        for point in face.rings.iter_mut().flatten() {
            if let Some(moved) = points.get(&key(*point)) {
                *point = *moved;
                touched = true;
            }
        }
        if touched {
            face.normal = normal_of(face);
        }
        if let Some((corners, turned)) = turning {
            turned.then = Some((face.normal, corners));
        }
    }

    fn apply_to_edge(&self, edge: &mut SceneEdge) {
        for turned in &self.turned {
            if let Some((normal, corners)) = &turned.then
                && edge.ends.iter().all(|end| corners.contains(&key(*end)))
            {
                for own in &mut edge.normals {
                    if *own == turned.normal {
                        *own = *normal;
                    }
                }
            }
        }
        let seam = edge.kind == EdgeKind::Seam;
        for end in &mut edge.ends {
            let along = || seam.then(|| self.along(*end)).flatten();
            if let Some(moved) = self.of(*end).or_else(along) {
                *end = moved;
            }
        }
    }

    /// Where a point between the ends of a moved edge goes.
    fn along(&self, point: WorldPoint) -> Option<WorldPoint> {
        self.lines.iter().find_map(|([a, b], [c, d])| {
            let (run, out) = (minus(*b, *a), minus(point, *a));
            let part = dot(out, run) / dot(run, run);
            let off = minus(out, times(run, part));
            let on = (0.0..=1.0).contains(&part) && dot(off, off) < OFF_ROUND * OFF_ROUND;
            on.then(|| plus(*c, times(minus(*d, *c), part)))
        })
    }
}

/// The normal of a face whose corners have moved: of the plane through them (Newell's formula),
/// on the side it was; the same as before where that has not changed.
fn normal_of(face: &SceneFace) -> [f64; 3] {
    let Some(ring) = face.rings.first() else {
        return face.normal;
    };
    let start = ring.first().copied().unwrap_or_default();
    let mut sum = [0.0; 3];
    for (a, b) in ring.iter().zip(ring.iter().cycle().skip(1)) {
        sum = plus(sum, cross(minus(*a, start), minus(*b, start)));
    }
    let side = dot(sum, face.normal);
    let length = dot(sum, sum).sqrt();
    if length <= 0.0 || side.abs() > length * (1.0 - 1e-10) {
        return face.normal;
    }
    times(sum, side.signum() / length)
}
