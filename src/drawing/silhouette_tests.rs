//! Silhouettes of round walls against what touching an ellipse means.

use std::borrow::Cow;
use std::collections::BTreeMap;

use super::bodies::add_shell;
use super::hidden_lines::drawn_lines;
use super::scene::{BodyId, EdgeKind, Scene, SceneRound};
use super::silhouettes::{Key, key, with_exact_silhouettes};
use super::view::{EDGE_ON, View, dot, minus, plus};
use crate::geometry::Side;
use crate::model::{ArrisForm, FeatureShape, PocketScrewHole, Slope, SlopeKind};
use crate::solid::samples::{at, holes, mm, part};
use crate::solid::{rod, solid};

const ALONG: [[f64; 3]; 5] = [
    [40.0, 0.0, 0.0],
    [0.0, 40.0, 0.0],
    [0.0, 0.0, 40.0],
    [33.0, 0.0, 14.0],
    [21.0, -9.0, 31.0],
];

/// A rod from a corner that is no round figure, in as many chords as asked.
fn turned(along: [f64; 3], profile: &[(f64, f64)], chords: u32) -> Scene {
    let from = [3.117, 2.781, 1.442];
    let profile: Vec<_> = profile.iter().map(|(at, r)| (mm(*at), mm(*r))).collect();
    let shell = rod(from.map(mm), plus(from, along).map(mm), &profile, chords);
    let mut scene = Scene::new();
    add_shell(&mut scene, BodyId(0), &shell, [0.0; 3]);
    scene
}

fn plain(along: [f64; 3], chords: u32) -> Scene {
    let length = dot(along, along).sqrt();
    turned(along, &[(0.0, 4.0), (length, 4.0)], chords)
}

/// The silhouette lines that are drawn of a scene, from left to right, and their edges.
fn silhouettes(scene: &Scene, view: &View) -> Vec<(usize, [[f64; 2]; 2])> {
    let mut lines: Vec<_> = drawn_lines(scene, view)
        .into_iter()
        .filter(|line| scene.edges[line.edge].kind == EdgeKind::Smooth)
        .map(|line| (line.edge, line.ends))
        .collect();
    lines.sort_by(|(_, a), (_, b)| a[0][0].total_cmp(&b[0][0]));
    lines
}

fn rounds_of(scene: &Scene, edge: usize) -> [SceneRound; 2] {
    let stands = scene.edges[edge].stands.unwrap();
    stands.map(|round| scene.rounds[round as usize])
}

/// How far a line is from touching the ellipse of a round in a view, in micrometres: a line
/// square to n touches it at the distance √((a·n)² + (b·n)²) from its centre.
fn off_tangent(round: &SceneRound, [a, b]: [[f64; 2]; 2], view: &View) -> f64 {
    let (dx, dy) = (b[0] - a[0], b[1] - a[1]);
    let length = libm::hypot(dx, dy);
    let n = [-dy / length, dx / length];
    let [p, q] = round.radii.map(|radius| {
        let [x, y, _] = view.turn(radius);
        x * n[0] + y * n[1]
    });
    let [x, y, _] = view.project(round.centre);
    let distance = ((a[0] - x) * n[0] + (a[1] - y) * n[1]).abs();
    (distance - libm::hypot(p, q)).abs()
}

/// How far a point of a view is from the ellipse of a round, by its two coordinates along
/// the half diameters, in micrometres.
fn off_ellipse(round: &SceneRound, point: [f64; 2], view: &View) -> f64 {
    let [[ax, ay, _], [bx, by, _]] = round.radii.map(|radius| view.turn(radius));
    let [cx, cy, _] = view.project(round.centre);
    let (x, y) = (point[0] - cx, point[1] - cy);
    let area = ax * by - ay * bx;
    let (u, v) = ((x * by - y * bx) / area, (ax * y - ay * x) / area);
    (libm::hypot(u, v) - 1.0).abs() * libm::hypot(ax, ay).max(libm::hypot(bx, by))
}

#[test]
fn the_lines_of_a_dowel_are_its_diameter_apart_and_end_on_its_ellipses() {
    let view = View::from_direction(View::ISOMETRIC);
    for along in ALONG {
        for chords in [12, 16, 24, 32, 50] {
            let scene = plain(along, chords);
            let lines = silhouettes(&scene, &view);
            let [(edge, one), (_, two)] = lines[..] else {
                panic!("{} lines", lines.len());
            };
            let (dx, dy) = (one[1][0] - one[0][0], one[1][1] - one[0][1]);
            for end in two {
                let aside = dx * (end[1] - one[0][1]) - dy * (end[0] - one[0][0]);
                let apart = (aside / libm::hypot(dx, dy)).abs();
                assert!((apart - 8_000.0).abs() < 1.0, "{apart} of {chords}");
            }
            for end in one.into_iter().chain(two) {
                let off = rounds_of(&scene, edge).map(|round| off_ellipse(&round, end, &view));
                assert!(off[0].min(off[1]) < 1.0, "{off:?}");
            }
        }
    }
}

#[test]
fn silhouettes_of_cones_and_cylinders_touch_the_ellipses_at_both_ends() {
    let screw = [(0.0, 4.0), (2.2, 2.0), (30.0, 2.0), (36.0, 0.2)];
    let dowel = [(0.0, 3.0), (1.0, 4.0), (35.0, 4.0), (36.0, 3.0)];
    for direction in [View::ISOMETRIC, [-1, -1, 1], [3, -7, 2]] {
        let view = View::from_direction(direction);
        for (along, profile) in ALONG.iter().flat_map(|a| [(a, screw), (a, dowel)]) {
            let scene = turned(*along, &profile, 24);
            let lines = silhouettes(&scene, &view);
            let off = |edge: usize, ends| {
                let off = rounds_of(&scene, edge).map(|round| off_tangent(&round, ends, &view));
                off[0].max(off[1])
            };
            let longest = lines
                .iter()
                .map(|(edge, _)| length_of(&scene, *edge))
                .fold(0.0, f64::max);
            for (edge, ends) in &lines {
                // Where two walls ask for one edge, the longer has it.
                let long = length_of(&scene, *edge) > longest - 10.0;
                let most = if long { 1.0 } else { 200.0 };
                let off = off(*edge, *ends);
                assert!(off < most, "{off} in {direction:?} along {along:?}");
            }
        }
    }
}

fn length_of(scene: &Scene, edge: usize) -> f64 {
    let [a, b] = scene.edges[edge].ends;
    dot(minus(b, a), minus(b, a)).sqrt()
}

#[test]
fn walls_of_holes_and_curved_outlines_have_theirs_too() {
    let mut sunk = holes(Side::Face, 14.0, None, &[at(120.0, 60.0)]);
    sunk.countersink = Some(mm(30.0));
    let pierced = part("Pierced", [200.0, 120.0, 60.0])
        .cut(FeatureShape::Holes(holes(
            Side::Face,
            40.0,
            None,
            &[at(50.0, 50.0)],
        )))
        .cut(FeatureShape::Holes(sunk))
        .cut(FeatureShape::Holes(holes(
            Side::Near,
            30.0,
            Some(50.0),
            &[at(170.0, 30.0)],
        )))
        .cut(FeatureShape::PocketScrewHole(PocketScrewHole {
            side: Side::Face,
            end: Side::Foot,
            position: mm(90.0),
            diameter: mm(9.5),
            pilot: mm(3.7),
            entry: mm(34.0),
        }));
    let rounded = part("Rounded", [200.0, 120.0, 20.0]).cut(FeatureShape::Arris {
        sides: [Side::Head, Side::Near],
        size: mm(50.0),
        form: ArrisForm::Round,
    });
    for (part, least) in [(pierced, 16), (rounded, 2)] {
        let solid = solid(&part, None);
        for shell in [&solid.fine, &solid.coarse] {
            let mut scene = Scene::new();
            add_shell(&mut scene, BodyId(0), shell, [0.0; 3]);
            let mut count = 0;
            for direction in [[2, -2, 3], [-5, -2, 1], [2, 3, 5], [3, -7, 2]] {
                let view = View::from_direction(direction);
                // No silhouette of a hole is seen; it is there all the same, and may be dashed.
                for edge in &with_exact_silhouettes(Cow::Borrowed(&scene), &view).edges {
                    let [a, b] = edge.normals.map(|normal| view.towards_eye(normal) > 0.0);
                    let Some(stands) = edge.stands.filter(|_| a != b) else {
                        continue;
                    };
                    let ends = edge.ends.map(|end| {
                        let [x, y, _] = view.project(end);
                        [x, y]
                    });
                    for round in stands {
                        let off = off_tangent(&scene.rounds[round as usize], ends, &view);
                        assert!(off < 1.0, "{}: {off} {direction:?}", part.title);
                    }
                    count += 1;
                }
            }
            assert!(count >= least, "{}: {count}", part.title);
        }
    }
}

#[test]
fn every_grade_has_the_same_silhouettes() {
    let view = View::from_direction([3, -7, 2]);
    for along in ALONG {
        let (coarse, fine) = (plain(along, 12), plain(along, 32));
        let (coarse, fine) = (silhouettes(&coarse, &view), silhouettes(&fine, &view));
        assert_eq!((coarse.len(), fine.len()), (2, 2));
        let ends = |lines: &[(usize, [[f64; 2]; 2])]| -> Vec<[f64; 2]> {
            lines.iter().flat_map(|(_, ends)| *ends).collect()
        };
        for (a, b) in ends(&coarse).into_iter().zip(ends(&fine)) {
            let apart = libm::hypot(a[0] - b[0], a[1] - b[1]);
            assert!(apart < 1.5, "{apart}: {a:?} {b:?}");
        }
    }
}

#[test]
fn moved_bodies_stay_closed_and_their_faces_plane() {
    let screw = [(0.0, 4.0), (2.2, 4.0), (2.2, 2.0), (30.0, 2.0), (36.0, 0.2)];
    for direction in [View::ISOMETRIC, [3, -7, 2], [-5, 1, 4]] {
        let view = View::from_direction(direction);
        let scene = turned(ALONG[4], &screw, 16);
        let moved = with_exact_silhouettes(Cow::Borrowed(&scene), &view);
        assert!(matches!(moved, Cow::Owned(_)));
        closed_and_plane(&moved);
    }
}

fn closed_and_plane(scene: &Scene) {
    let mut sides: BTreeMap<(Key, Key), u32> = BTreeMap::new();
    for face in &scene.faces {
        let ring = &face.rings[0];
        for (a, b) in ring.iter().zip(ring.iter().cycle().skip(1)) {
            // Corners that have not moved are rounded to whole micrometres.
            assert!(dot(minus(*a, ring[0]), face.normal).abs() < 3.0);
            let (a, b) = (key(*a), key(*b));
            // A side of less than a micrometre is a corner.
            if a == b {
                continue;
            }
            *sides.entry((a.min(b), a.max(b))).or_insert(0) += 1;
        }
    }
    assert!(sides.values().all(|count| *count == 2), "{sides:?}");
}

#[test]
fn views_along_and_across_the_axis_leave_a_body_as_it_is() {
    let scene = plain(ALONG[2], 12);
    for direction in [[0, 0, 1], [0, -1, 0], [1, 0, 0]] {
        let view = View::from_direction(direction);
        let moved = with_exact_silhouettes(Cow::Borrowed(&scene), &view);
        for (a, b) in moved.edges.iter().zip(&scene.edges) {
            for (p, q) in a.ends.iter().zip(b.ends) {
                let step = minus(*p, q);
                assert!(dot(step, step) < 1.0);
            }
        }
    }
}

/// A rail of 200 by 100 by 20 mm with an arris rounded along its length, square at its foot and mitred or
/// bevelled at its head.
fn rounded_rail(kind: SlopeKind, deep: Side, run: f64, radius: f64) -> Scene {
    let size = [200.0, 100.0, 20.0];
    let part = part("Rail", size)
        .cut(FeatureShape::Arris {
            sides: [Side::Face, Side::Near],
            size: mm(radius),
            form: ArrisForm::Round,
        })
        .cut(FeatureShape::Slope(Slope {
            kind,
            side: Side::Head,
            level: mm(200.0),
            deep,
            deep_level: mm(if deep.is_high() {
                size[deep.axis().index()]
            } else {
                0.0
            }),
            inset: mm(30.0),
            run: mm(run),
        }));
    let mut scene = Scene::new();
    add_shell(&mut scene, BodyId(0), &solid(&part, None).fine, [0.0; 3]);
    scene
}

/// Directions all round, from a sequence that fills the square evenly: the multiples of two powers of the
/// plastic number (Roberts, "The unreasonable effectiveness of quasirandom sequences" [from memory]).
fn all_round(count: u32) -> impl Iterator<Item = [i64; 3]> {
    (0..count).map(|number| {
        let [u, v] =
            [0.754_877_666_2, 0.569_840_290_9].map(|step| (f64::from(number) * step).fract());
        let (up, turn) = (2.0 * u - 1.0, std::f64::consts::TAU * v);
        let out = (1.0 - up * up).sqrt();
        #[expect(clippy::cast_possible_truncation, reason = "thousandths of one")]
        let whole = |part: f64| (part * 1_000.0).round() as i64;
        [out * libm::cos(turn), out * libm::sin(turn), up].map(whole)
    })
}

#[test]
fn silhouettes_of_round_overs_are_where_the_line_of_sight_touches_them() {
    let rails = [
        (SlopeKind::Mitre, Side::Far, 100.0),
        (SlopeKind::Mitre, Side::Near, 100.0),
        (SlopeKind::Bevel, Side::Back, 20.0),
        (SlopeKind::Bevel, Side::Face, 20.0),
    ];
    let (mut found, mut beside_flats) = (0, 0);
    for ((kind, deep, run), radius) in rails
        .into_iter()
        .flat_map(|rail| [(rail, 5.0), (rail, 9.0)])
    {
        let scene = rounded_rail(kind, deep, run, radius);
        let facet = std::f64::consts::FRAC_PI_2 / if radius > 6.0 { 16.0 } else { 8.0 };
        for direction in all_round(150) {
            let view = View::from_direction(direction);
            let [_, _, sight] = view.axes();
            // The wall looks from the near side (−y) round to the face (+z).
            let touched = libm::atan2(sight[1], sight[2]);
            let angle = [
                touched,
                touched + std::f64::consts::PI,
                touched - std::f64::consts::PI,
            ]
            .into_iter()
            .find(|angle| (0.0..std::f64::consts::FRAC_PI_2).contains(angle));
            let moved = with_exact_silhouettes(Cow::Borrowed(&scene), &view);
            let lines = moved.edges.iter().filter(|edge| {
                let [a, b] = edge
                    .normals
                    .map(|normal| view.towards_eye(normal) > EDGE_ON);
                edge.kind == EdgeKind::Smooth && a != b
            });
            let lines: Vec<_> = lines.collect();
            let Some(angle) = angle else {
                assert!(lines.is_empty(), "{direction:?}: {lines:?}");
                continue;
            };
            // Nearly along a flat, rounding decides.
            if angle.min(std::f64::consts::FRAC_PI_2 - angle) < 0.002 {
                continue;
            }
            let [line] = lines[..] else {
                panic!("{} lines from {direction:?} at {angle}", lines.len());
            };
            let ends = line.ends.map(|end| {
                let [x, y, _] = view.project(end);
                [x, y]
            });
            let Some(stands) = line.stands else {
                panic!("nothing to stand on from {direction:?} at {angle}");
            };
            for round in stands {
                let off = off_tangent(&scene.rounds[round as usize], ends, &view);
                assert!(off < 1.5, "{off} from {direction:?} at {angle}");
            }
            found += 1;
            let beside = angle.min(std::f64::consts::FRAC_PI_2 - angle) < facet / 2.0;
            beside_flats += u32::from(beside);
            closed_and_plane(&moved);
        }
    }
    assert!(found > 300 && beside_flats > 10, "{found}, {beside_flats}");
}

#[test]
fn the_ends_of_a_round_over_are_arcs() {
    for (kind, deep, run) in [
        (SlopeKind::Mitre, Side::Far, 100.0),
        (SlopeKind::Bevel, Side::Back, 20.0),
    ] {
        let scene = rounded_rail(kind, deep, run, 5.0);
        let rims = scene.edges.iter().filter(|edge| edge.round.is_some());
        // Eight chords at the foot and eight at the head.
        assert_eq!(rims.count(), 16);
    }
}
