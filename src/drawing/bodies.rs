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

/// A placed piece as a body of a scene.
#[derive(Clone, Copy)]
pub(super) struct Standing<'p> {
    pub(super) body: BodyId,
    pub(super) piece: &'p PlacedPart,
    pub(super) grade: Grade,
    /// How far it is from its place, in micrometres.
    pub(super) offset: [f64; 3],
}

/// Adds placed pieces to a scene.
pub(super) fn add_pieces(
    scene: &mut Scene,
    build: &Build,
    solids: &Solids,
    pieces: &[Standing<'_>],
) {
    let known: Vec<(&Standing<'_>, &Part, &Shell)> = pieces
        .iter()
        .filter_map(|own| {
            let (part, shell) = shell_of(build, solids, own)?;
            Some((own, part, shell))
        })
        .collect();
    // Scenes are long: room is made once for all.
    let faces = known.iter().map(|(_, _, shell)| shell.faces.len()).sum();
    let edges = known.iter().map(|(_, _, shell)| shell.edges.len()).sum();
    scene.faces.reserve_exact(faces);
    scene.edges.reserve_exact(edges);
    for (own, part, shell) in known {
        add_placed(scene, own, part, shell, |_| true);
    }
}

/// Adds those faces and edges of a placed piece of which `wanted` says so, by their points.
pub(super) fn add_part_of_piece(
    scene: &mut Scene,
    build: &Build,
    solids: &Solids,
    own: &Standing<'_>,
    wanted: impl Fn(&mut dyn Iterator<Item = WorldPoint>) -> bool,
) {
    if let Some((part, shell)) = shell_of(build, solids, own) {
        add_placed(scene, own, part, shell, wanted);
    }
}

/// The part that a piece is of, and its solid in the grade that is drawn.
fn shell_of<'s>(
    build: &'s Build,
    solids: &'s Solids,
    own: &Standing<'_>,
) -> Option<(&'s Part, &'s Shell)> {
    let solid = solids.part(own.piece.part)?;
    let shell = match own.grade {
        Grade::Fine => &solid.fine,
        Grade::Coarse => &solid.coarse,
    };
    Some((build.part(own.piece.part)?, shell))
}

fn add_placed(
    scene: &mut Scene,
    own: &Standing<'_>,
    part: &Part,
    shell: &Shell,
    wanted: impl Fn(&mut dyn Iterator<Item = WorldPoint>) -> bool,
) {
    let lie = Lie::of(own.piece, part);
    let [dx, dy, dz] = own.offset;
    let point = |point: &Point| {
        let [x, y, z] = lie.point(point);
        [x + dx, y + dy, z + dz]
    };
    let vector = |vector| lie.vector(vector);
    add_mapped(scene, own.body, shell, (point, vector), wanted);
}

/// Adds a shell that is in the world already, moved by `offset` micrometres.
pub(super) fn add_shell(scene: &mut Scene, body: BodyId, shell: &Shell, offset: [f64; 3]) {
    let [dx, dy, dz] = offset;
    let point = |point: &Point| {
        let [x, y, z] = point.map(micrometres);
        [x + dx, y + dy, z + dz]
    };
    scene.faces.reserve(shell.faces.len());
    scene.edges.reserve(shell.edges.len());
    add_mapped(scene, body, shell, (point, |vector| vector), |_| true);
}

fn add_mapped(
    scene: &mut Scene,
    body: BodyId,
    shell: &Shell,
    (point, vector): (impl Fn(&Point) -> WorldPoint, impl Fn([f64; 3]) -> [f64; 3]),
    wanted: impl Fn(&mut dyn Iterator<Item = WorldPoint>) -> bool,
) {
    for face in &shell.faces {
        if !wanted(&mut face.rings.iter().flatten().map(&point)) {
            continue;
        }
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
        let ends = edge.ends.each_ref().map(&point);
        if !wanted(&mut ends.into_iter()) {
            continue;
        }
        scene.edges.push(SceneEdge {
            body,
            kind: match edge.joining {
                Joining::Sharp => EdgeKind::Sharp,
                Joining::Smooth => EdgeKind::Smooth,
                Joining::Seam => EdgeKind::Seam,
            },
            ends,
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
