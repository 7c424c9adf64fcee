//! What is looked at: plane faces and straight edges in the world, each of a body.

use super::view::{WorldPoint, plus};

/// Which body of a scene a face or an edge belongs to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct BodyId(pub u32);

/// A plane face with any number of rings, filled by the even-odd rule.
#[derive(Clone, Debug)]
pub struct SceneFace {
    /// Whose.
    pub body: BodyId,
    /// Which of the body's surfaces it is part of: the facets of one round wall share theirs.
    pub surface: u32,
    /// Unit vector square to it, out of the wood.
    pub normal: [f64; 3],
    /// Its rings, in micrometres.
    pub rings: Vec<Vec<WorldPoint>>,
}

/// When an edge is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum EdgeKind {
    /// Two faces meet at an angle: drawn where one of them is seen.
    Sharp,
    /// Two facets of one round face meet: drawn where only one of them is seen.
    Smooth,
    /// A line on a face, such as the seam between two layers: drawn thin where it is seen.
    Seam,
    /// A line in the air: drawn wherever nothing is before it.
    Free,
}

/// A circle or an ellipse that edges are chords of.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SceneRound {
    /// Its middle, in micrometres.
    pub centre: WorldPoint,
    /// Two conjugate half diameters, in micrometres.
    pub radii: [[f64; 3]; 2],
}

/// A straight edge between two faces.
#[derive(Clone, Copy, Debug)]
pub struct SceneEdge {
    /// Whose.
    pub body: BodyId,
    /// When it is drawn.
    pub kind: EdgeKind,
    /// Its ends, in micrometres.
    pub ends: [WorldPoint; 2],
    /// Unit vectors square to the two faces that meet in it.
    pub normals: [[f64; 3]; 2],
    /// Which of the scene's rounds it is a chord of.
    pub round: Option<u32>,
    /// Between two facets of one round wall: the scene's rounds that its ends lie on, each at
    /// the same angle.
    pub stands: Option<[u32; 2]>,
}

/// Everything that is looked at.
#[derive(Clone, Debug, Default)]
pub struct Scene {
    /// Faces, in any order.
    pub faces: Vec<SceneFace>,
    /// Edges, in any order; earlier ones are kept where two fall on one line.
    pub edges: Vec<SceneEdge>,
    /// What edges that are chords stand for.
    pub rounds: Vec<SceneRound>,
}

impl Scene {
    /// Nothing yet.
    pub fn new() -> Self {
        Self::default()
    }

    /// A box from `low` to `high` in micrometres.
    pub fn add_box(&mut self, body: BodyId, low: WorldPoint, high: WorldPoint) {
        let corner = |bits: usize| -> WorldPoint {
            let pick = |axis: usize, a: f64, b: f64| if bits >> axis & 1 == 1 { b } else { a };
            let ([ax, ay, az], [bx, by, bz]) = (low, high);
            [pick(0, ax, bx), pick(1, ay, by), pick(2, az, bz)]
        };
        let unit = |axis: usize, sign: f64| {
            let mut normal = [0.0; 3];
            if let Some(part) = normal.get_mut(axis) {
                *part = sign;
            }
            normal
        };
        let mut surface = 0;
        for axis in 0..3_usize {
            let (i, j) = (1 << ((axis + 1) % 3), 1 << ((axis + 2) % 3));
            for (side, sign) in [(0, -1.0), (1 << axis, 1.0)] {
                let ring = [0, i, i | j, j].map(|bits| corner(side | bits)).to_vec();
                surface += 1;
                self.faces.push(SceneFace {
                    body,
                    surface,
                    normal: unit(axis, sign),
                    rings: vec![ring],
                });
            }
            for (u, su) in [(0, -1.0), (i, 1.0)] {
                for (v, sv) in [(0, -1.0), (j, 1.0)] {
                    self.edges.push(SceneEdge {
                        body,
                        kind: EdgeKind::Sharp,
                        ends: [corner(u | v), corner(u | v | 1 << axis)],
                        normals: [unit((axis + 1) % 3, su), unit((axis + 2) % 3, sv)],
                        round: None,
                        stands: None,
                    });
                }
            }
        }
    }

    /// A line in the air.
    pub fn add_line(&mut self, body: BodyId, ends: [WorldPoint; 2]) {
        self.edges.push(SceneEdge {
            body,
            kind: EdgeKind::Free,
            ends,
            normals: [[0.0; 3]; 2],
            round: None,
            stands: None,
        });
    }

    /// Every point put through `f`, and every normal through `turn`.
    #[must_use]
    pub fn mapped(
        &self,
        f: impl Fn(WorldPoint) -> WorldPoint,
        turn: impl Fn([f64; 3]) -> [f64; 3],
    ) -> Self {
        let faces = self
            .faces
            .iter()
            .map(|face| SceneFace {
                body: face.body,
                surface: face.surface,
                normal: turn(face.normal),
                rings: face
                    .rings
                    .iter()
                    .map(|ring| ring.iter().map(|point| f(*point)).collect())
                    .collect(),
            })
            .collect();
        let edges = self
            .edges
            .iter()
            .map(|edge| SceneEdge {
                ends: edge.ends.map(&f),
                normals: edge.normals.map(&turn),
                ..*edge
            })
            .collect();
        let rounds = self
            .rounds
            .iter()
            .map(|round| SceneRound {
                centre: f(round.centre),
                radii: round.radii.map(&turn),
            })
            .collect();
        Self {
            faces,
            edges,
            rounds,
        }
    }

    /// Every point moved by `offset`.
    #[must_use]
    pub fn shifted(&self, offset: [f64; 3]) -> Self {
        self.mapped(|point| plus(point, offset), |normal| normal)
    }
}
