//! Where exploded pieces go: along directions they can really travel.
//!
//! Again and again a piece that nothing blocks is taken away along the direction with the least
//! way out (Li et al. 2008, Automated Generation of Interactive 3D Exploded View Diagrams); its
//! offset is that of what it comes off, plus the way out, plus a gap. An author's `pull` wins.

use std::collections::{BTreeMap, BTreeSet};

use super::blocking::Blocking;
use super::bodies::length;
use super::contacts::{Box3, Contacts, Touch};
use super::view::{View, dot, plus, times};
use super::wholes::Wholes;
use crate::build::{Build, InstanceId, PlacedId, Pull};
use crate::geometry::Direction;

/// How a piece is drawn away from its place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Move {
    /// Away from its place, in micrometres.
    pub(super) offset: [f64; 3],
    /// What it comes off, and where its own way goes; none for a piece that stays.
    pub(super) way: Option<Way>,
}

/// The way of a piece off another.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Way {
    /// Off which piece, if it touches any.
    pub(super) parent: Option<PlacedId>,
    /// Where to.
    pub(super) direction: Direction,
    /// How far, in micrometres.
    pub(super) distance: f64,
}

/// What is exploded.
pub(super) struct Explosion<'e> {
    /// Stays where it is.
    pub(super) standing: &'e [PlacedId],
    /// Is drawn away; what was added last goes first.
    pub(super) moving: &'e [PlacedId],
    /// The author's wishes.
    pub(super) pulls: &'e [Pull],
    /// The least gap a piece needs, in micrometres: room for a dowel between it and its place.
    pub(super) room: &'e BTreeMap<PlacedId, f64>,
    /// From where it is seen.
    pub(super) view: View,
    /// Whether sub-assemblies travel as one.
    pub(super) together: Together,
}

/// What travels as one.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Together {
    /// Every piece goes by itself.
    Nothing,
    /// What comes as a whole into the build, or into one sub-assembly of it.
    Wholes(Option<InstanceId>),
}

/// Unit vector of a direction.
pub(super) fn unit(direction: Direction) -> [f64; 3] {
    let mut vector = [0.0; 3];
    if let Some(part) = vector.get_mut(direction.axis().index()) {
        *part = if direction.is_positive() { 1.0 } else { -1.0 };
    }
    vector
}

/// Moves of every moving piece.
pub(super) fn explode(
    build: &Build,
    contacts: &Contacts,
    blocking: &mut Blocking<'_>,
    explosion: &Explosion<'_>,
) -> BTreeMap<PlacedId, Move> {
    let mut removal = Removal::new(build, contacts, blocking, explosion);
    let mut taken = Vec::new();
    while let Some(step) = removal.next() {
        taken.push(step);
    }
    let mut moves: BTreeMap<PlacedId, Move> = BTreeMap::new();
    // The last piece taken away is the nearest: its offset is known first.
    for step in taken.into_iter().rev() {
        let moved = removal.settle(&step, &moves);
        moves.insert(step.piece, moved);
    }
    let mut all = BTreeMap::new();
    for (first, moved) in moves {
        // A whole travels as one.
        let members = removal.wholes.members(first).iter();
        all.extend(members.map(|piece| (*piece, moved)));
    }
    all
}

/// Where a piece goes and how far; none where it stays.
type Escape = Option<(Direction, f64)>;

/// What a piece may come off: the touched or blocked piece, and what speaks for it.
struct Parent {
    piece: PlacedId,
    /// It goes later, and would run into the piece if that did not go along.
    runs_into: bool,
    /// How far it has gone the same way, and in all.
    ahead: f64,
    astray: f64,
    area: f64,
}

/// A piece taken away, and what was left then.
struct Taken {
    piece: PlacedId,
    way: Escape,
    rest: BTreeSet<PlacedId>,
}

/// The state of taking pieces away.
struct Removal<'r> {
    wholes: Wholes,
    explosion: &'r Explosion<'r>,
    /// Pieces not yet taken away, in the order they came.
    left: Vec<PlacedId>,
    /// Everything that is still there.
    rest: BTreeSet<PlacedId>,
    /// What keeps a piece from going each way.
    blockers: BTreeMap<(PlacedId, Direction), Vec<PlacedId>>,
    /// The piece that stays, where nothing stands yet.
    base: Option<PlacedId>,
    gap: f64,
    farthest: f64,
}

impl<'r> Removal<'r> {
    fn new(
        build: &Build,
        contacts: &'r Contacts,
        blocking: &mut Blocking<'_>,
        explosion: &'r Explosion<'r>,
    ) -> Self {
        let pieces = [explosion.moving, explosion.standing];
        let wholes = Wholes::of(build, contacts, pieces, explosion.together);
        let left = wholes.firsts(explosion.moving);
        let rest: BTreeSet<PlacedId> = left.iter().chain(explosion.standing).copied().collect();
        let mut all = Box3::NONE;
        for piece in &rest {
            all.join(&wholes.place(*piece));
        }
        let mut blockers = BTreeMap::new();
        for piece in &left {
            for way in Direction::ALL {
                let mut list: Vec<PlacedId> = Vec::new();
                for other in rest.iter().filter(|other| *other != piece) {
                    if wholes.blocks(blocking, [*piece, *other], way) {
                        list.push(*other);
                    }
                }
                blockers.insert((*piece, way), list);
            }
        }
        let volume = |piece: &PlacedId| {
            let place = wholes.place(*piece);
            (0..3).map(|axis| place.size(axis)).product::<f64>()
        };
        let base = if explosion.standing.is_empty() {
            // Of what comes first, the largest.
            let step = |piece: &PlacedId| match explosion.together {
                Together::Nothing => build.piece(*piece)?.step,
                Together::Wholes(into) => build.comes(*piece, into),
            };
            let first = left.first().map(step);
            let early = || left.iter().filter(|piece| Some(step(piece)) == first);
            let most = early().map(volume).fold(0.0, f64::max);
            early().find(|piece| volume(piece) >= most * 0.999).copied()
        } else {
            None
        };
        let diagonal = all.diagonal();
        Self {
            wholes,
            explosion,
            left,
            rest,
            blockers,
            base,
            gap: (diagonal * 0.09).clamp(15_000.0, 160_000.0),
            farthest: diagonal * 0.7,
        }
    }

    /// The next piece to go; none when all have gone.
    fn next(&mut self) -> Option<Taken> {
        let candidates: Vec<PlacedId> = self
            .left
            .iter()
            .rev()
            .filter(|piece| self.left.len() == 1 || Some(**piece) != self.base)
            .copied()
            .collect();
        let mut best: Option<(f64, PlacedId, Escape)> = None;
        for (late, piece) in (0_u32..).zip(candidates) {
            if Some(piece) == self.base && self.left.len() == 1 {
                best = Some((0.0, piece, self.wish(piece)));
                continue;
            }
            let (cost, way) = self.cheapest(piece);
            // What came in last goes first, unless another is much easier to take.
            let cost = cost + f64::from(late) * self.gap * 0.5;
            if best.as_ref().is_none_or(|(least, _, _)| cost < *least) {
                best = Some((cost, piece, way));
            }
        }
        let (_, piece, way) = best?;
        self.left.retain(|other| *other != piece);
        self.rest.remove(&piece);
        Some(Taken {
            piece,
            way,
            rest: self.rest.clone(),
        })
    }

    /// The move of a piece, from those of all that are nearer.
    fn settle(&self, step: &Taken, moves: &BTreeMap<PlacedId, Move>) -> Move {
        let offset_of = |piece: PlacedId| moves.get(&piece).map_or([0.0; 3], |moved| moved.offset);
        let parent = self.parent(step, moves);
        let Some((direction, distance)) = step.way else {
            return Move {
                offset: parent.map_or([0.0; 3], offset_of),
                way: None,
            };
        };
        // A distance that the author states is from the piece's place, whatever else moves.
        let base = if self.states_distance(step.piece) {
            [0.0; 3]
        } else {
            parent.map_or([0.0; 3], offset_of)
        };
        Move {
            offset: plus(base, times(unit(direction), distance)),
            way: Some(Way {
                parent,
                direction,
                distance,
            }),
        }
    }

    fn states_distance(&self, piece: PlacedId) -> bool {
        self.explosion
            .pulls
            .iter()
            .any(|pull| self.wholes.first(pull.piece) == piece && pull.distance.is_some())
    }

    /// What a piece comes off, of all that was still there.
    fn parent(&self, step: &Taken, moves: &BTreeMap<PlacedId, Move>) -> Option<PlacedId> {
        let way = step.way.map_or([0.0; 3], |(direction, _)| unit(direction));
        let stated = self.states_distance(step.piece);
        let candidate = |piece: PlacedId, area: f64| {
            let moved = moves.get(&piece);
            let offset = moved.map_or([0.0; 3], |moved| moved.offset);
            Parent {
                piece,
                runs_into: !stated && self.runs_into(piece, moved, step.piece),
                ahead: if stated { 0.0 } else { dot(offset, way) },
                astray: offset.iter().map(|part| part.abs()).sum(),
                area,
            }
        };
        let touched = self
            .wholes
            .touches(step.piece)
            .iter()
            .filter(|touch| step.rest.contains(&touch.other))
            .map(|touch| candidate(touch.other, touch.area()));
        let in_the_way = moves
            .keys()
            .filter(|piece| step.rest.contains(piece))
            .map(|piece| candidate(*piece, 0.0))
            .filter(|candidate| candidate.runs_into);
        touched
            .chain(in_the_way)
            .min_by(|a, b| {
                // Off what would run into it; else off what has gone farthest the same way, or
                // two would meet; else off what has stayed nearest to its place.
                let farther = |a: &Parent, b: &Parent| b.astray.total_cmp(&a.astray);
                b.runs_into
                    .cmp(&a.runs_into)
                    .then_with(|| {
                        if a.runs_into && b.runs_into {
                            farther(a, b)
                        } else {
                            std::cmp::Ordering::Equal
                        }
                    })
                    .then(b.ahead.total_cmp(&a.ahead))
                    .then(a.astray.total_cmp(&b.astray))
                    .then(b.area.total_cmp(&a.area))
            })
            .map(|parent| parent.piece)
    }

    /// True where `mover` goes far enough to run into the place of `piece`.
    fn runs_into(&self, mover: PlacedId, moved: Option<&Move>, piece: PlacedId) -> bool {
        let Some(Move {
            offset,
            way: Some(way),
        }) = moved
        else {
            return false;
        };
        let blocked = self
            .blockers
            .get(&(mover, way.direction))
            .is_some_and(|list| list.contains(&piece));
        let start = self.wholes.place(mover);
        let mut swept = start;
        swept.join(&start.shifted(*offset));
        let place = self.wholes.place(piece);
        blocked && (0..3).all(|axis| swept.shared(&place, axis) > 0.0)
    }

    /// The author's wish for a piece.
    fn wish(&self, piece: PlacedId) -> Option<(Direction, f64)> {
        let pull = self
            .explosion
            .pulls
            .iter()
            .find(|pull| self.wholes.first(pull.piece) == piece)?;
        let distance = pull.distance.map_or_else(
            || self.distance(piece, pull.direction),
            |distance| length(distance.abs()),
        );
        Some((pull.direction, distance))
    }

    /// The best way for a piece, and what it costs.
    fn cheapest(&self, piece: PlacedId) -> (f64, Option<(Direction, f64)>) {
        if let Some(wish) = self.wish(piece) {
            // What the author wishes is done, but first whatever is in the way goes.
            return (self.stuck(piece, wish.0), Some(wish));
        }
        let touches = self.touches(piece).count();
        if touches == 0 {
            return (0.0, None);
        }
        let mut best: Option<(f64, Direction)> = None;
        for way in Direction::ALL {
            let cost =
                self.stuck(piece, way) + self.distance(piece, way) + self.dislike(piece, way);
            if best.is_none_or(|(least, _)| cost < least) {
                best = Some((cost, way));
            }
        }
        match best {
            Some((cost, way)) => (cost, Some((way, self.distance(piece, way)))),
            None => (0.0, None),
        }
    }

    /// What it costs that others are still in the way: more than any distance.
    fn stuck(&self, piece: PlacedId, way: Direction) -> f64 {
        let in_the_way = self
            .blockers
            .get(&(piece, way))
            .into_iter()
            .flatten()
            .filter(|other| self.rest.contains(other))
            .count();
        1e9 * f64::from(u32::try_from(in_the_way).unwrap_or(u32::MAX))
    }

    fn touches(&self, piece: PlacedId) -> impl Iterator<Item = &Touch> {
        self.wholes
            .touches(piece)
            .iter()
            .filter(|touch| self.rest.contains(&touch.other))
    }

    /// How far a piece goes along a direction until it is clear of what it touches, and a gap.
    fn distance(&self, piece: PlacedId, way: Direction) -> f64 {
        let own = self.wholes.place(piece);
        let axis = way.axis().index();
        let pick = |ends: [f64; 3]| ends.get(axis).copied().unwrap_or_default();
        let out = self
            .touches(piece)
            .map(|touch| {
                let its = self.wholes.place(touch.other);
                let beside = (0..3).any(|other| other != axis && own.shared(&its, other) <= 500.0);
                if beside {
                    return 0.0;
                }
                if way.is_positive() {
                    pick(its.high) - pick(own.low)
                } else {
                    pick(own.high) - pick(its.low)
                }
            })
            .fold(0.0, f64::max);
        let rooms = self.wholes.members(piece).iter();
        let room = rooms
            .filter_map(|member| self.explosion.room.get(member).copied())
            .fold(0.0, f64::max);
        let gap = self.gap.max(room);
        (out + gap).min(self.farthest.max(gap))
    }

    /// What speaks against a direction beside its length: out of the reader's sight, through the
    /// floor, or along a face it touches where it could come straight off.
    fn dislike(&self, piece: PlacedId, way: Direction) -> f64 {
        let away = -self.explosion.view.towards_eye(unit(way));
        let floor = if way == Direction::Bottom { 2.5 } else { 0.0 };
        let off = |touch: &Touch| {
            let its = self.wholes.place(touch.other);
            let own = self.wholes.place(piece);
            let axis = way.axis().index();
            let pick = |middle: [f64; 3]| middle.get(axis).copied().unwrap_or_default();
            let apart = (pick(own.middle()) - pick(its.middle()))
                * if way.is_positive() { 1.0 } else { -1.0 };
            touch.axis == axis && apart > 0.0
        };
        let touched: f64 = self.touches(piece).map(Touch::area).sum();
        let straight: f64 = self
            .touches(piece)
            .filter(|t| off(t))
            .map(Touch::area)
            .sum();
        let sideways = if touched > 0.0 {
            1.0 - straight / touched
        } else {
            0.0
        };
        self.gap * (away.max(0.0) * 2.0 + floor + sideways * 2.0)
    }
}
