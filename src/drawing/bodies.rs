//! Parts in their places: shells brought from a part's frame into the world.

use super::scene::{BodyId, EdgeKind, Scene, SceneEdge, SceneFace, SceneRound};
use super::view::WorldPoint;
use crate::build::{Build, Part, PlacedPart};
use crate::geometry::{Axis, Interval};
use crate::solid::{Joining, Point, Shell, Solids};
use crate::units::Length;

/// Which grade of a part's solid is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Grade {
    /// With every feature.
    Fine,
    /// With small holes as marks.
    Coarse,
}

/// Nanometres to the nearest micrometre.
#[expect(
    clippy::cast_precision_loss,
    reason = "worlds are below 2^53 µm, nine million kilometres"
)]
pub(super) fn micrometres(nm: i64) -> f64 {
    nm.saturating_add(500).div_euclid(1_000) as f64
}

/// A length of the world in micrometres.
pub(super) fn length(length: Length) -> f64 {
    micrometres(length.nm())
}

/// Micrometres as a length of the world.
pub(super) fn of_micrometres(micrometres: f64) -> Length {
    Length::from_mm_f64(micrometres / 1000.0)
}

/// How a part's frame lies in the world, for each world axis.
struct Lie([Along; 3]);

/// What runs along a world axis.
#[derive(Clone, Copy)]
struct Along {
    /// Which axis of the part.
    axis: usize,
    positive: bool,
    /// Where the part's own zero is on the world axis, in nanometres.
    zero: i64,
}

impl Lie {
    fn of(piece: &PlacedPart, part: &Part) -> Self {
        Self(Axis::ALL.map(|world| {
            let along = piece.orientation.part_axis(world);
            let place = reach(&piece.place, world.index());
            let start = reach(&part.extent, along.index()).low.nm();
            let positive = piece.orientation.direction(along).is_positive();
            let zero = if positive {
                place.low.nm() - start
            } else {
                place.high.nm() + start
            };
            Along {
                axis: along.index(),
                positive,
                zero,
            }
        }))
    }

    fn point(&self, point: &Point) -> WorldPoint {
        self.0.map(|along| {
            let own = point.get(along.axis).copied().unwrap_or_default();
            micrometres(if along.positive {
                along.zero + own
            } else {
                along.zero - own
            })
        })
    }

    fn vector(&self, vector: [f64; 3]) -> [f64; 3] {
        self.0.map(|along| {
            let own = vector.get(along.axis).copied().unwrap_or_default();
            if along.positive { own } else { -own }
        })
    }
}

fn reach(intervals: &[Interval; 3], index: usize) -> Interval {
    intervals.get(index).copied().unwrap_or_default()
}

/// Adds a placed piece to a scene, moved by `offset` micrometres.
pub(super) fn add_piece(
    scene: &mut Scene,
    body: BodyId,
    build: &Build,
    solids: &Solids,
    piece: &PlacedPart,
    grade: Grade,
    offset: [f64; 3],
) {
    let (Some(part), Some(solid)) = (build.part(piece.part), solids.part(piece.part)) else {
        return;
    };
    let shell = match grade {
        Grade::Fine => &solid.fine,
        Grade::Coarse => &solid.coarse,
    };
    let lie = Lie::of(piece, part);
    let [dx, dy, dz] = offset;
    let point = |point: &Point| {
        let [x, y, z] = lie.point(point);
        [x + dx, y + dy, z + dz]
    };
    add_mapped(scene, body, shell, point, |vector| lie.vector(vector));
}

/// Adds a shell that is in the world already, moved by `offset` micrometres.
pub(super) fn add_shell(scene: &mut Scene, body: BodyId, shell: &Shell, offset: [f64; 3]) {
    let [dx, dy, dz] = offset;
    let point = |point: &Point| {
        let [x, y, z] = point.map(micrometres);
        [x + dx, y + dy, z + dz]
    };
    add_mapped(scene, body, shell, point, |vector| vector);
}

fn add_mapped(
    scene: &mut Scene,
    body: BodyId,
    shell: &Shell,
    point: impl Fn(&Point) -> WorldPoint,
    vector: impl Fn([f64; 3]) -> [f64; 3],
) {
    scene.faces.reserve(shell.faces.len());
    scene.edges.reserve(shell.edges.len());
    for face in &shell.faces {
        scene.faces.push(SceneFace {
            body,
            surface: face.surface.0,
            normal: vector(face.normal),
            rings: face
                .rings
                .iter()
                .map(|ring| ring.iter().map(&point).collect())
                .collect(),
        });
    }
    let first = u32::try_from(scene.rounds.len()).unwrap_or(u32::MAX);
    let numbered = |round: u32| first.checked_add(round);
    for round in &shell.rounds {
        scene.rounds.push(SceneRound {
            centre: point(&round.centre),
            radii: round
                .radii
                .map(|radius| vector(radius).map(|nm| nm / 1_000.0)),
        });
    }
    for edge in &shell.edges {
        let [a, b] = &edge.ends;
        scene.edges.push(SceneEdge {
            body,
            kind: match edge.joining {
                Joining::Sharp => EdgeKind::Sharp,
                Joining::Smooth => EdgeKind::Smooth,
                Joining::Seam => EdgeKind::Seam,
            },
            ends: [point(a), point(b)],
            normals: edge.normals.map(&vector),
            round: edge.round.and_then(numbered),
            stands: edge
                .stands
                .and_then(|[a, b]| Some([numbered(a)?, numbered(b)?])),
        });
    }
}

/// Lowest and highest corner of a piece in micrometres.
pub(super) fn corners(place: &[Interval; 3]) -> (WorldPoint, WorldPoint) {
    (
        place.map(|reach| length(reach.low)),
        place.map(|reach| length(reach.high)),
    )
}
