//! Hinges, runners and splines: flat hardware that lies between two pieces and belongs to both.
//!
//! Half of a runner and one leaf of a hinge go with each piece; a spline stands in the air between them, as
//! dowels do.

use super::bodies::{length, of_micrometres};
use super::view::{WorldPoint, cross, dot, minus, plus, times};
use crate::build::{Fastener, Hardware, Joint};
use crate::geometry::{Axis, Interval};
use crate::solid::{BodyEdge, BodyFace, Joining, Shell, SurfaceId, rod};

/// Height of a runner, in micrometres, where there is room for it: what those with balls commonly have.
/// Common practice, no source.
const RUNNER: f64 = 45_000.0;
/// How much of the thickness that touches a runner covers at most.
const RUNNER_SHARE: f64 = 0.8;
/// Thickness of a hinge's leaf, in micrometres, where its maker's is not said, and of a knuckle over that of
/// a leaf. Common practice, no source.
const LEAF: f64 = 2_000.0;
const KNUCKLE: f64 = 2.5;
/// Facets of a knuckle.
const FACETS: u32 = 16;

/// Which piece of a joint something goes with.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum GoesWith {
    /// The piece that comes.
    Part,
    /// The piece it comes to.
    Other,
}

/// The plane that two pieces have in common, in micrometres of the world.
struct Between {
    /// The axis from the first piece to the second, and which way it goes.
    axis: usize,
    sign: f64,
    /// The face of the first piece and that of the second, along it.
    faces: [f64; 2],
    /// Lowest and highest corner of what touches.
    area: [WorldPoint; 2],
}

impl Between {
    fn of(joint: &Joint) -> Self {
        let contact = &joint.contact;
        let axis = contact.direction.axis().index();
        let sign = if contact.direction.is_positive() {
            1.0
        } else {
            -1.0
        };
        let near = length(contact.position);
        Self {
            axis,
            sign,
            faces: [near, near + sign * length(contact.gap)],
            area: [
                contact.area.map(|reach| length(reach.low)),
                contact.area.map(|reach| length(reach.high)),
            ],
        }
    }

    fn size(&self, axis: usize) -> f64 {
        let [low, high] = self.area.map(|corner| part(corner, axis));
        high - low
    }
}

fn part(point: WorldPoint, axis: usize) -> f64 {
    point.get(axis).copied().unwrap_or_default()
}

/// A vector along one axis.
pub(super) fn along(axis: usize, size: f64) -> WorldPoint {
    let mut vector = [0.0; 3];
    if let Some(slot) = vector.get_mut(axis) {
        *slot = size;
    }
    vector
}

/// The axis that is neither.
const fn third(a: usize, b: usize) -> usize {
    3 - a - b
}

/// The two halves of a runner, each on the face of its piece.
pub(super) fn runner(
    hardware: &Hardware,
    fastener: &Fastener,
    joint: &Joint,
) -> [(GoesWith, Shell); 2] {
    let between = Between::of(joint);
    let (from, to) = (fastener.from.map(length), fastener.to.map(length));
    let run = times(minus(to, from), 0.5);
    let lies = axis_of(run);
    let across = third(lies, between.axis);
    let height = RUNNER.min(between.size(across) * RUNNER_SHARE);
    let [near, far] = between.faces;
    let gap = (far - near).abs();
    // Where the pieces touch, the maker's own thickness is let into neither: half of it on each.
    let thick = if gap > 0.0 {
        gap
    } else {
        hardware.thickness.map_or(LEAF, length)
    };
    let centre = times(plus(from, to), 0.5);
    let half = |face: f64, sign: f64| {
        let at = face + sign * thick / 4.0;
        let middle = plus(centre, along(between.axis, at - part(centre, between.axis)));
        slab(
            middle,
            [
                run,
                along(across, height / 2.0),
                along(between.axis, thick / 4.0),
            ],
        )
    };
    let sign = between.sign;
    [
        (GoesWith::Part, half(near, sign)),
        (GoesWith::Other, half(far, -sign)),
    ]
}

/// The leaves of a hinge, each on the face of its piece, and its knuckle, which goes with the piece that
/// stays.
///
/// They swing where both pieces end, in the places they have.
pub(super) fn hinge(
    places: &[[Interval; 3]; 2],
    hardware: &Hardware,
    fastener: &Fastener,
    joint: &Joint,
) -> [(GoesWith, Shell); 3] {
    let between = Between::of(joint);
    let (from, to) = (fastener.from.map(length), fastener.to.map(length));
    let run = times(minus(to, from), 0.5);
    let across = third(axis_of(run), between.axis);
    let wide = hardware.width.map_or(f64::INFINITY, length);
    let wide = wide.min(between.size(across));
    let thick = hardware.thickness.map_or(LEAF, length);
    let at_high = Axis::ALL
        .get(across)
        .is_some_and(|axis| joint.contact.swings_at_high(places, *axis));
    let [low, high] = between.area.map(|corner| part(corner, across));
    let (edge, inward) = if at_high { (high, -1.0) } else { (low, 1.0) };
    let centre = times(plus(from, to), 0.5);
    let placed = |across_at: f64, between_at: f64| {
        let sideways = along(across, across_at - part(centre, across));
        let ahead = along(between.axis, between_at - part(centre, between.axis));
        plus(centre, plus(sideways, ahead))
    };
    let sign = between.sign;
    let leaf = |face: f64, out: f64| {
        // A leaf lies on its face, or as deep in it as it was let in.
        let middle = placed(edge + inward * wide / 2.0, face + out * thick / 2.0);
        let halves = [
            run,
            along(across, wide / 2.0),
            along(between.axis, thick / 2.0),
        ];
        slab(middle, halves)
    };
    let [near, far] = between.faces;
    let radius = thick * KNUCKLE / 2.0;
    let pin = placed(edge - inward * radius, (near + far) / 2.0);
    let [foot, head] = [minus(pin, run), plus(pin, run)].map(|end| end.map(of_micrometres));
    let long = 2.0 * dot(run, run).sqrt();
    let profile = [0.0, long].map(|at| (of_micrometres(at), of_micrometres(radius)));
    [
        (GoesWith::Part, leaf(near, sign)),
        (GoesWith::Other, leaf(far, -sign)),
        (GoesWith::Other, rod(foot, head, &profile, FACETS)),
    ]
}

/// A spline: its body, the direction in which the pieces come onto it, and how far it reaches that way.
pub(super) fn spline(
    hardware: &Hardware,
    fastener: &Fastener,
    joint: &Joint,
) -> Option<(Shell, WorldPoint)> {
    let between = Between::of(joint);
    let (from, to) = (fastener.from.map(length), fastener.to.map(length));
    let run = minus(to, from);
    let corner = fastener.driven.axis().index();
    let wide = hardware.width.map(length)?;
    let thick = hardware.thickness.map(length)?;
    let lies_along = is_along(run, corner);
    let (up, second) = if lies_along {
        // A third up the slant from its inner edge: what is missing to that edge is a third of it.
        let out = third(corner, between.axis);
        let [low, high] = between.area.map(|end| part(end, out));
        let outward = if part(from, out) < (low + high) / 2.0 {
            high - low
        } else {
            low - high
        };
        let ahead = 3.0 * (part(from, between.axis) - part(between.area[0], between.axis));
        let up = plus(along(out, outward), along(between.axis, ahead));
        (up, run)
    } else {
        (run, along(corner, 1.0))
    };
    let across = unit(cross(up, second))?;
    let thin = if lies_along {
        unit(up)?
    } else {
        along(corner, 1.0)
    };
    let halves = [
        times(run, 0.49),
        times(thin, thick / 2.0),
        times(across, wide / 2.0),
    ];
    let centre = times(plus(from, to), 0.5);
    Some((slab(centre, halves), times(across, wide)))
}

fn is_along(run: WorldPoint, axis: usize) -> bool {
    let own = part(run, axis);
    dot(run, run) - own * own < 1.0
}

/// The axis along which a vector is longest.
fn axis_of(vector: WorldPoint) -> usize {
    (0..3)
        .max_by(|a, b| part(vector, *a).abs().total_cmp(&part(vector, *b).abs()))
        .unwrap_or_default()
}

fn unit(vector: WorldPoint) -> Option<WorldPoint> {
    let long = dot(vector, vector).sqrt();
    (long > 0.0).then(|| times(vector, 1.0 / long))
}

/// A block about a centre, reaching by three half sides that are square to each other, in micrometres.
pub(super) fn slab(centre: WorldPoint, halves: [WorldPoint; 3]) -> Shell {
    let corner = |bits: usize| {
        let mut corner = centre;
        for (k, half) in halves.iter().enumerate() {
            let sign = if bits >> k & 1 == 1 { 1.0 } else { -1.0 };
            corner = plus(corner, times(*half, sign));
        }
        corner.map(|part| of_micrometres(part).nm())
    };
    let normals = halves.map(|half| unit(half).unwrap_or_default());
    let normal = |axis: usize, sign: f64| {
        let normal = normals.get(axis % 3).copied().unwrap_or_default();
        times(normal, sign)
    };
    let mut shell = Shell::default();
    for axis in 0..3_usize {
        let (i, j) = (1 << ((axis + 1) % 3), 1 << ((axis + 2) % 3));
        for (side, sign) in [(0, -1.0), (1 << axis, 1.0)] {
            shell.faces.push(BodyFace {
                surface: SurfaceId(0),
                normal: normal(axis, sign),
                rings: vec![[0, i, i | j, j].map(|bits| corner(side | bits)).to_vec()],
            });
        }
        for (u, su) in [(0, -1.0), (i, 1.0)] {
            for (v, sv) in [(0, -1.0), (j, 1.0)] {
                shell.edges.push(BodyEdge {
                    joining: Joining::Sharp,
                    ends: [corner(u | v), corner(u | v | 1 << axis)],
                    normals: [normal(axis + 1, su), normal(axis + 2, sv)],
                    round: None,
                    stands: None,
                });
            }
        }
    }
    shell
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::build::{Contact, HardwareId, HardwareKind, JointKind, PlacedId};
    use crate::geometry::Direction;
    use crate::source::Span;
    use crate::units::{Area, Length};

    fn mm(mm: i64) -> Length {
        Length::from_mm(mm)
    }

    fn joint(kind: JointKind, area: [[i64; 2]; 3], direction: Direction, gap: i64) -> Joint {
        let area = area.map(|[low, high]| Interval::new(mm(low), mm(high)));
        let contact = Contact {
            direction,
            position: area[direction.axis().index()].low,
            area,
            gap: mm(gap),
        };
        Joint {
            kind,
            part: PlacedId(0),
            to: PlacedId(1),
            contact,
            play: Length::ZERO,
            glued: false,
            glue_area: Area::default(),
            fasteners: Vec::new(),
            span: Span::default(),
        }
    }

    fn hardware(kind: HardwareKind, [length, width, thickness]: [Option<i64>; 3]) -> Hardware {
        Hardware {
            name: String::new(),
            title: String::new(),
            kind,
            diameter: None,
            length: length.map(mm),
            width: width.map(mm),
            thickness: thickness.map(mm),
            head: None,
            pilot: None,
            clearance: None,
            pack: None,
            price: None,
            count: 1,
            span: Span::default(),
        }
    }

    fn fastener(from: [i64; 3], to: [i64; 3], driven: Direction) -> Fastener {
        Fastener {
            hardware: HardwareId(0),
            from: from.map(mm),
            to: to.map(mm),
            driven,
        }
    }

    /// Lowest and highest corner of a shell in millimetres.
    fn bounds(shell: &Shell) -> [[f64; 2]; 3] {
        let corners = || {
            shell
                .faces
                .iter()
                .flat_map(|face| face.rings.iter().flatten())
        };
        [0, 1, 2].map(|axis| {
            #[expect(clippy::cast_precision_loss, reason = "a few metres in nanometres")]
            let along = corners().map(|corner| corner[axis] as f64 / 1e6);
            let low = along.clone().fold(f64::INFINITY, f64::min);
            [low, along.fold(f64::NEG_INFINITY, f64::max)]
        })
    }

    fn near(found: [[f64; 2]; 3], wanted: [[f64; 2]; 3]) {
        for (found, wanted) in found.iter().flatten().zip(wanted.iter().flatten()) {
            assert!((found - wanted).abs() < 0.01, "{found} is not {wanted}");
        }
    }

    #[test]
    fn half_a_runner_is_on_each_face_and_they_fill_the_gap() {
        // A drawer's side at 300 mm across, the case 12 mm farther.
        let touching = [[300, 300], [0, 400], [50, 150]];
        let joint = joint(JointKind::Runners, touching, Axis::Across.high(), 12);
        let runner = hardware(HardwareKind::Runner, [Some(350), None, Some(12)]);
        let set = fastener([300, 0, 100], [300, 350, 100], Axis::Across.high());
        let [(one, own), (two, its)] = super::runner(&runner, &set, &joint);
        assert_eq!((one, two), (GoesWith::Part, GoesWith::Other));
        near(bounds(&own), [[300.0, 306.0], [0.0, 350.0], [77.5, 122.5]]);
        near(bounds(&its), [[306.0, 312.0], [0.0, 350.0], [77.5, 122.5]]);
    }

    #[test]
    fn a_hinge_swings_where_both_pieces_end() {
        // The front edge of a case's right side, 18 mm thick, and a door before it.
        let touching = [[482, 500], [0, 0], [0, 600]];
        let joint = joint(JointKind::Hinges, touching, Axis::Deep.high(), 0);
        let span = |low, high| Interval::new(mm(low), mm(high));
        let door = [span(0, 500), span(-20, 0), span(0, 600)];
        let side = [span(482, 500), span(0, 300), span(0, 600)];
        let hinge = hardware(HardwareKind::Hinge, [Some(50), Some(15), Some(2)]);
        let set = fastener([491, 0, 75], [491, 0, 125], Axis::Deep.high());
        let [(_, own), (_, its), (with, pin)] = super::hinge(&[door, side], &hinge, &set, &joint);
        near(bounds(&own), [[485.0, 500.0], [0.0, 2.0], [75.0, 125.0]]);
        near(bounds(&its), [[485.0, 500.0], [-2.0, 0.0], [75.0, 125.0]]);
        assert_eq!(with, GoesWith::Other);
        let [[low, high], ..] = bounds(&pin);
        assert!(
            (low - 500.0).abs() < 0.2 && (high - 505.0).abs() < 0.2,
            "{low} {high}"
        );
    }

    #[test]
    fn a_spline_stands_square_to_the_slant() {
        // The corner of a case of 12 mm: the slant runs from (12, 8) to (0, -4), and a third up it is (8, 4).
        let touching = [[0, 12], [0, 200], [8, 8]];
        let joint = joint(JointKind::Mitre, touching, Axis::High.low(), 0);
        let spline = hardware(HardwareKind::Spline, [None, Some(16), Some(4)]);
        let set = fastener([8, 0, 4], [8, 200, 4], Axis::Deep.high());
        let (shell, reach) = super::spline(&spline, &set, &joint).unwrap();
        // 16 mm long at 45 degrees, and square to the slant.
        assert!((dot(reach, reach).sqrt() - 16_000.0).abs() < 1.0);
        assert!((reach[0].abs() - reach[2].abs()).abs() < 1.0);
        assert!(dot(reach, [-1.0, 0.0, -1.0]).abs() < 1.0, "{reach:?}");
        let half = (8.0 + 2.0) * std::f64::consts::FRAC_1_SQRT_2;
        near(
            bounds(&shell),
            [
                [8.0 - half, 8.0 + half],
                [2.0, 198.0],
                [4.0 - half, 4.0 + half],
            ],
        );
    }
}
