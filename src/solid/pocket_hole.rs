//! Slanted holes for pocket screws.
//!
//! The pocket is a slanted cylinder that ends in a square shoulder; a pilot runs on from there
//! to the end of the part. Seen from the side it enters, its mouth is a long oval.

use std::f64::consts::{PI, TAU};

use super::bores::SLANTED_SURFACE;
use super::measures::Measures;
use super::stack::{extent_along, following, level_of, outward};
use super::types::{BodyEdge, BodyFace, Joining, Point, Round, Shell, SurfaceId};
use crate::build::Part;
use crate::geometry::{PlanePoint, Region, Side};
use crate::model::{FeatureShape, PocketScrewHole};
use crate::units::Length;

/// Facets of a pocket.
const CHORDS: u32 = 64;
/// What is left between the shoulder and the end of the part, in millimetres, at the least.
const LEAST_SHOULDER_MM: f64 = 3.0;

/// Cuts every pocket of a part into its shell.
pub(super) fn drill(part: &Part, shell: &mut Shell, measures: &mut Measures) {
    for feature in &part.features {
        if let FeatureShape::PocketScrewHole(hole) = &feature.shape
            && let Some(pocket) = Slanted::of(part, hole)
        {
            pocket.cut(shell, measures);
        }
    }
}

/// A pocket in a frame of its own, in millimetres: `inward` into the part from its end, `up` out
/// of the side, `aside` along the third axis, from the point where the axis leaves the end.
struct Slanted {
    side: Side,
    origin: [f64; 3],
    inward: [f64; 3],
    up: [f64; 3],
    aside: [f64; 3],
    /// How far below the side the axis leaves the end.
    drop: f64,
    /// How far from the end the axis meets the side.
    entry: f64,
    radius: f64,
    pilot: f64,
}

impl Slanted {
    fn of(part: &Part, hole: &PocketScrewHole) -> Option<Self> {
        if hole.side.axis() == hole.end.axis() {
            return None;
        }
        let third = 3 - hole.side.axis().index() - hole.end.axis().index();
        let end = level_of(&part.extent, hole.end).mm();
        let across = extent_along(&part.extent, hole.side.axis());
        let mut origin = [0.0; 3];
        *origin.get_mut(hole.end.axis().index())? = end;
        *origin.get_mut(hole.side.axis().index())? = across.middle().mm();
        *origin.get_mut(third)? = hole.position.mm();
        let mut aside = [0.0; 3];
        *aside.get_mut(third)? = 1.0;
        let slanted = Self {
            side: hole.side,
            origin,
            inward: outward(hole.end).map(|part| -part),
            up: outward(hole.side),
            aside,
            drop: across.size().mm() / 2.0,
            entry: hole.entry.mm(),
            radius: hole.diameter.mm() / 2.0,
            pilot: hole.pilot.mm() / 2.0,
        };
        (slanted.entry > 0.0 && slanted.drop > 0.0 && slanted.radius > 0.0).then_some(slanted)
    }

    /// Sine and cosine of the axis with the side.
    fn slope(&self) -> (f64, f64) {
        let length = libm::hypot(self.entry, self.drop);
        (self.drop / length, self.entry / length)
    }

    /// A point from how far along the axis it is and where it is round it.
    fn at(&self, along: f64, up: f64, aside: f64) -> Point {
        self.point_mm(along, up, aside)
            .map(|mm| Length::from_mm_f64(mm).nm())
    }

    fn point_mm(&self, along: f64, up: f64, aside: f64) -> [f64; 3] {
        let (sine, cosine) = self.slope();
        let (x, z) = (along * cosine - up * sine, along * sine + up * cosine);
        let mut point = [0.0; 3];
        for (k, part) in point.iter_mut().enumerate() {
            let of = |v: &[f64; 3]| v.get(k).copied().unwrap_or_default();
            *part = of(&self.origin)
                + x * of(&self.inward)
                + z * of(&self.up)
                + aside * of(&self.aside);
        }
        point
    }

    fn vector(&self, up: f64, aside: f64) -> [f64; 3] {
        let (sine, cosine) = self.slope();
        let mut vector = [0.0; 3];
        for (k, part) in vector.iter_mut().enumerate() {
            let of = |v: &[f64; 3]| v.get(k).copied().unwrap_or_default();
            *part = -up * sine * of(&self.inward)
                + up * cosine * of(&self.up)
                + aside * of(&self.aside);
        }
        vector
    }

    /// Where on the axis the shoulder is: deep enough that its whole circle is below the side.
    fn shoulder(&self) -> f64 {
        let (sine, cosine) = self.slope();
        let whole = (self.drop - self.radius * cosine) / sine;
        (whole * 0.8).max(LEAST_SHOULDER_MM)
    }

    fn cut(&self, shell: &mut Shell, measures: &mut Measures) {
        let (sine, cosine) = self.slope();
        let shoulder = self.shoulder();
        let rim = |angle: f64| {
            let (up, aside) = (
                self.radius * libm::sin(angle),
                self.radius * libm::cos(angle),
            );
            // The line along the wall meets the side where its height is the side's.
            let mouth = (self.drop - up * cosine) / sine;
            (up, aside, mouth.max(shoulder))
        };
        let angle = |step: u32| TAU * f64::from(step % CHORDS) / f64::from(CHORDS);
        let mut mouth: Vec<Point> = Vec::new();
        let mut floor: Vec<Point> = Vec::new();
        let mut length = 0.0;
        for step in 0..CHORDS {
            let (up, aside, out) = rim(angle(step));
            mouth.push(self.at(out, up, aside));
            floor.push(self.at(shoulder, up, aside));
            length += (out - shoulder) / f64::from(CHORDS);
        }
        self.open(&mouth, shell);
        let middle = |step: f64| {
            let angle = TAU * step / f64::from(CHORDS);
            self.vector(-libm::sin(angle), -libm::cos(angle))
        };
        let steps = (0..CHORDS).map(f64::from);
        let (mouth_next, floor_next) = (following(&mouth), following(&floor));
        let sides = mouth
            .iter()
            .zip(mouth_next)
            .zip(floor.iter().zip(floor_next));
        let axis = self.axis();
        // Where the shoulder is the mouth's own end too, that is no ellipse.
        let oval = (self.drop - self.radius * cosine) / sine >= shoulder;
        let mouth_round = oval
            .then(|| shell.round(self.round(self.drop / sine, self.radius, -cosine / sine)))
            .flatten();
        let floor_round = shell.round(self.round(shoulder, self.radius, 0.0));
        let stands = mouth_round
            .zip(floor_round)
            .map(|(mouth, floor)| [mouth, floor]);
        for (step, ((a, b), (c, d))) in steps.zip(sides) {
            let normal = middle(step + 0.5);
            shell.faces.push(BodyFace {
                surface: SurfaceId(SLANTED_SURFACE),
                normal,
                rings: vec![vec![*a, b, d, *c]],
            });
            shell.edges.push(BodyEdge {
                joining: Joining::Smooth,
                ends: [*a, *c],
                normals: [middle(step - 0.5), normal],
                round: None,
                stands,
            });
            for (ends, other, round) in [
                ([*c, d], axis, floor_round),
                ([*a, b], outward(self.side), mouth_round),
            ] {
                shell.edges.push(BodyEdge {
                    joining: Joining::Sharp,
                    ends,
                    normals: [normal, other],
                    round,
                    stands: None,
                });
            }
        }
        shell.faces.push(BodyFace {
            surface: SurfaceId(SLANTED_SURFACE + 1),
            normal: axis,
            rings: vec![floor],
        });
        self.mark_pilot(shoulder, shell);
        // A cylinder cut off at a slant: the middle moves by r² tan / 4 L across and r² tan² / 8 L
        // along it, the tangent being that of the cut.
        let lean = cosine / sine;
        let square = self.radius * self.radius;
        let middle = self.point_mm(
            shoulder + length / 2.0 + square * lean * lean / (8.0 * length),
            -square * lean / (4.0 * length),
            0.0,
        );
        measures.add_volume(-PI * square * length, middle);
        let pilot = PI * self.pilot * self.pilot * shoulder;
        measures.add_volume(-pilot, self.point_mm(shoulder / 2.0, 0.0, 0.0));
        measures.surface_mm2 += TAU * self.radius * length + TAU * self.pilot * shoulder;
        // The shoulder comes in, but for the pilot's mouth; both mouths are ellipses that go.
        let (wide, narrow) = (PI * self.radius * self.radius, PI * self.pilot * self.pilot);
        measures.surface_mm2 += wide - narrow - wide / sine - narrow / cosine;
    }

    /// The axis, from the end into the part.
    fn axis(&self) -> [f64; 3] {
        let (sine, cosine) = self.slope();
        let mut axis = [0.0; 3];
        for (k, part) in axis.iter_mut().enumerate() {
            let of = |v: &[f64; 3]| v.get(k).copied().unwrap_or_default();
            *part = cosine * of(&self.inward) + sine * of(&self.up);
        }
        axis
    }

    /// The circle of a radius about the axis, or the ellipse that a plane cuts out of its
    /// cylinder: `slant` is how far that plane runs along the axis for each step up.
    fn round(&self, along: f64, radius: f64, slant: f64) -> Round {
        let upwards = self.vector(1.0, 0.0).into_iter().zip(self.axis());
        let mut up = [0.0; 3];
        for (part, (square, axis)) in up.iter_mut().zip(upwards) {
            *part = (square + axis * slant) * radius * 1e6;
        }
        Round {
            centre: self.at(along, 0.0, 0.0),
            radii: [self.aside.map(|part| part * radius * 1e6), up],
        }
    }

    /// The pilot's mouths, on the shoulder and on the end: circles too small for more.
    fn mark_pilot(&self, shoulder: f64, shell: &mut Shell) {
        let (sine, cosine) = self.slope();
        let end = self.inward.map(|part| -part);
        let circle = |on_end: bool| -> Vec<Point> {
            (0..CHORDS / 4)
                .map(|step| {
                    let angle = TAU * f64::from(step) / f64::from(CHORDS / 4);
                    let up = self.pilot * libm::sin(angle);
                    // The end cuts the pilot at a slant.
                    let along = if on_end { up * sine / cosine } else { shoulder };
                    self.at(along, up, self.pilot * libm::cos(angle))
                })
                .collect()
        };
        for (ring, normal, round) in [
            (
                circle(true),
                end,
                self.round(0.0, self.pilot, sine / cosine),
            ),
            (
                circle(false),
                self.axis(),
                self.round(shoulder, self.pilot, 0.0),
            ),
        ] {
            let round = shell.round(round);
            for (a, b) in ring.iter().zip(ring.iter().cycle().skip(1)) {
                shell.edges.push(BodyEdge {
                    joining: Joining::Seam,
                    ends: [*a, *b],
                    normals: [normal; 2],
                    round,
                    stands: None,
                });
            }
        }
    }

    /// Takes the mouth out of the faces it lies on.
    fn open(&self, mouth: &[Point], shell: &mut Shell) {
        let normal = outward(self.side);
        let plane = super::stack::other_axes(self.side.axis());
        let Some(level) = mouth
            .first()
            .and_then(|point| point.get(self.side.axis().index()))
            .copied()
        else {
            return;
        };
        let flat = |point: &Point| {
            let [first, second] = plane.map(|axis| point.get(axis.index()).copied());
            PlanePoint::new(
                Length::from_nm(first.unwrap_or_default()),
                Length::from_nm(second.unwrap_or_default()),
            )
        };
        let hole = Region::polygon(&mouth.iter().map(flat).collect::<Vec<_>>());
        let mut opened = Vec::new();
        shell.faces.retain(|face| {
            let near = |point: &Point| {
                point
                    .get(self.side.axis().index())
                    .is_some_and(|value| (value - level).abs() < 2_000)
            };
            if face.normal != normal || !face.rings.iter().flatten().all(near) {
                return true;
            }
            let rings: Vec<Region> = face
                .rings
                .iter()
                .map(|ring| Region::polygon(&ring.iter().map(flat).collect::<Vec<_>>()))
                .collect();
            let Some((outer, holes)) = rings.split_first() else {
                return true;
            };
            let mut taken: Vec<&Region> = holes.iter().collect();
            taken.push(&hole);
            let level = face.rings.first().and_then(|ring| ring.first()).copied();
            for shape in outer.without(&taken).shapes {
                let place = |at: PlanePoint| {
                    let height = level
                        .and_then(|point| point.get(self.side.axis().index()).copied())
                        .unwrap_or_default();
                    super::stack::place(plane, at, Length::from_nm(height))
                };
                opened.push(BodyFace {
                    surface: face.surface,
                    normal,
                    rings: shape
                        .rings
                        .iter()
                        .map(|ring| ring.iter().map(|edge| place(edge.from)).collect())
                        .collect(),
                });
            }
            false
        });
        shell.faces.extend(opened);
    }
}
