//! Volumes and surfaces against closed formulas, and shells that are closed.

use std::f64::consts::PI;

use super::samples::{at, bracket, empty, holes, mm, part, pocket, span};
use super::{PartSolid, Shell, shape};
use crate::build::{Build, Part};
use crate::geometry::{PlanePoint, Side};
use crate::model::{ArrisForm, FeatureShape, MaterialId, PocketKind};

pub(super) fn solid(part: Part) -> PartSolid {
    let mut build: Build = empty("Test");
    build.add(part);
    let outcome = shape(&build);
    outcome.value.parts.into_iter().next().unwrap()
}

/// The codes of what is found in a part.
pub(super) fn found(part: Part) -> Vec<&'static str> {
    let mut build = empty("Test");
    build.add(part);
    shape(&build)
        .findings
        .iter()
        .map(|finding| finding.page.code)
        .collect()
}

/// Volume and surface of a shell's polygons by the divergence theorem, and what is left of the
/// sum of its area vectors: nothing, where it is closed.
fn by_faces(shell: &Shell) -> (f64, f64, f64) {
    let (mut volume, mut surface, mut sum) = (0.0, 0.0, [0.0; 3]);
    for face in &shell.faces {
        let mut areas: Vec<f64> = Vec::new();
        let mut depth = 0.0;
        for ring in &face.rings {
            let mut vector = [0.0; 3];
            for (a, b) in ring.iter().zip(ring.iter().cycle().skip(1)) {
                let (a, b) = (a.map(|p| p as f64 / 1e6), b.map(|p| p as f64 / 1e6));
                for (k, part) in vector.iter_mut().enumerate() {
                    let (i, j) = ((k + 1) % 3, (k + 2) % 3);
                    *part += (a[i] * b[j] - a[j] * b[i]) / 2.0;
                }
            }
            let area = (0..3)
                .map(|k| vector[k] * face.normal[k])
                .sum::<f64>()
                .abs();
            areas.push(area);
            let point = ring[0].map(|p| p as f64 / 1e6);
            depth = (0..3).map(|k| point[k] * face.normal[k]).sum();
        }
        let largest = areas.iter().copied().fold(0.0, f64::max);
        let area = 2.0 * largest - areas.iter().sum::<f64>();
        volume += depth * area / 3.0;
        surface += area;
        for (part, normal) in sum.iter_mut().zip(face.normal) {
            *part += area * normal;
        }
    }
    (
        volume,
        surface,
        sum.iter().map(|part| part * part).sum::<f64>().sqrt(),
    )
}

/// How much of a shell is open, in square millimetres.
pub(super) fn open_mm2(shell: &Shell) -> f64 {
    by_faces(shell).2
}

pub(super) fn check(part: Part, volume: f64, surface: f64) {
    let title = part.title.clone();
    let solid = solid(part);
    let measures = solid.measures;
    assert!(
        (measures.volume_mm3 - volume).abs() < volume * 1e-7,
        "{title}: {} is not {volume}",
        measures.volume_mm3
    );
    assert!(
        (measures.surface_mm2 - surface).abs() < surface * 1e-6,
        "{title}: {} is not {surface}",
        measures.surface_mm2
    );
    // Chords and marks in place of small holes take or leave a little; sixteen chords of a
    // circle enclose a fortieth less than it does.
    for (shell, little) in [(&solid.fine, 0.01), (&solid.coarse, 0.03)] {
        let (by_polygons, around, open) = by_faces(shell);
        assert!(
            (by_polygons - volume).abs() < volume * little,
            "{title}: {by_polygons} by its faces"
        );
        assert!(
            (around - surface).abs() < surface * 0.06,
            "{title}: {around} by its faces"
        );
        assert!(open < 0.01, "{title}: {open} mm2 open");
    }
}

pub(super) fn block(cut: FeatureShape) -> Part {
    part("Block", [200.0, 100.0, 20.0]).cut(cut)
}

pub(super) const BLOCK: f64 = 400_000.0;
pub(super) const AROUND: f64 = 2.0 * (20_000.0 + 4_000.0 + 2_000.0);

#[test]
fn plain_and_drilled_parts() {
    check(part("Plain", [200.0, 100.0, 20.0]), BLOCK, AROUND);
    let grid: Vec<PlanePoint> = (0..20)
        .flat_map(|i| {
            (0..10).map(move |j| at(30.0 * (f64::from(i) + 0.5), 30.0 * (f64::from(j) + 0.5)))
        })
        .collect();
    // The panel of the hidden-line scenes: 600 by 300 by 18 mm, 200 holes of 20 mm.
    check(
        part("Panel", [600.0, 300.0, 18.0]).cut(FeatureShape::Holes(holes(
            Side::Face,
            20.0,
            None,
            &grid,
        ))),
        3_240_000.0 - 200.0 * PI * 100.0 * 18.0,
        2.0 * (180_000.0 - 200.0 * PI * 100.0) + 2.0 * 900.0 * 18.0 + 200.0 * PI * 20.0 * 18.0,
    );
    let one = [at(50.0, 50.0)];
    check(
        block(FeatureShape::Holes(holes(
            Side::Back,
            10.0,
            Some(12.0),
            &one,
        ))),
        BLOCK - PI * 25.0 * 12.0,
        AROUND + PI * 10.0 * 12.0,
    );
    let mut bored = holes(Side::Face, 10.0, None, &one);
    bored.counterbore = Some((mm(24.0), mm(6.0)));
    check(
        block(FeatureShape::Holes(bored)),
        BLOCK - PI * (25.0 * 14.0 + 144.0 * 6.0),
        AROUND + PI * (24.0 * 6.0 + 10.0 * 14.0) - 2.0 * PI * 25.0,
    );
    let mut sunk = holes(Side::Face, 5.0, None, &one);
    sunk.countersink = Some(mm(15.0));
    let frustum = PI * 5.0 / 3.0 * (7.5 * 7.5 + 7.5 * 2.5 + 2.5 * 2.5);
    let slope = PI * 10.0 * 50f64.sqrt();
    check(
        block(FeatureShape::Holes(sunk)),
        BLOCK - frustum - PI * 6.25 * 15.0,
        AROUND + slope + PI * 5.0 * 15.0 - PI * (7.5 * 7.5 + 2.5 * 2.5),
    );
}

#[test]
fn holes_into_edges_and_ends() {
    let two = [at(30.0, 10.0), at(70.0, 10.0)];
    check(
        block(FeatureShape::Holes(holes(
            Side::Head,
            8.0,
            Some(30.0),
            &two,
        ))),
        BLOCK - 2.0 * PI * 16.0 * 30.0,
        AROUND + 2.0 * PI * 8.0 * 30.0,
    );
    check(
        block(FeatureShape::Holes(holes(Side::Near, 14.0, None, &two))),
        BLOCK - 2.0 * PI * 49.0 * 100.0,
        AROUND + 2.0 * PI * 14.0 * 100.0 - 4.0 * PI * 49.0,
    );
    let mut mortise = pocket(
        PocketKind::Mortise,
        Side::Near,
        span(40.0, 80.0),
        span(5.0, 15.0),
        25.0,
    );
    let girth = 60.0 + PI * 10.0;
    mortise.round_ends = true;
    check(
        block(FeatureShape::Pocket(mortise)),
        BLOCK - (300.0 + PI * 25.0) * 25.0,
        AROUND + girth * 25.0,
    );
    let mut counterbored = holes(Side::Near, 6.0, Some(40.0), &[at(100.0, 10.0)]);
    counterbored.counterbore = Some((mm(16.0), mm(10.0)));
    check(
        block(FeatureShape::Holes(counterbored)),
        BLOCK - PI * (64.0 * 10.0 + 9.0 * 30.0),
        AROUND + PI * (16.0 * 10.0 + 6.0 * 30.0),
    );
}

#[test]
fn channels_and_notches() {
    let dado = pocket(
        PocketKind::Dado,
        Side::Face,
        span(50.0, 68.0),
        span(0.0, 100.0),
        6.0,
    );
    check(
        block(FeatureShape::Pocket(dado)),
        BLOCK - 10_800.0,
        AROUND + 2.0 * 600.0 - 2.0 * 108.0,
    );
    let rabbet = pocket(
        PocketKind::Rabbet,
        Side::Near,
        span(0.0, 200.0),
        span(12.0, 20.0),
        10.0,
    );
    check(
        block(FeatureShape::Pocket(rabbet)),
        BLOCK - 16_000.0,
        AROUND - 2.0 * 80.0,
    );
    let groove = pocket(
        PocketKind::Groove,
        Side::Near,
        span(0.0, 200.0),
        span(7.0, 13.0),
        10.0,
    );
    check(
        block(FeatureShape::Pocket(groove)),
        BLOCK - 12_000.0,
        AROUND + 2.0 * 2_000.0 - 2.0 * 60.0,
    );
    // A dado that crosses a groove, a hole in the crossing: what overlaps is taken once.
    let crossing = block(FeatureShape::Pocket(dado))
        .cut(FeatureShape::Pocket(pocket(
            PocketKind::Groove,
            Side::Face,
            span(0.0, 200.0),
            span(40.0, 60.0),
            6.0,
        )))
        .cut(FeatureShape::Holes(holes(
            Side::Face,
            14.0,
            None,
            &[at(59.0, 50.0)],
        )));
    let taken = 6.0 * (18.0 * 100.0 + 20.0 * 200.0 - 18.0 * 20.0) + PI * 49.0 * 14.0;
    let walls = 6.0 * (2.0 * 100.0 + 2.0 * 200.0 - 2.0 * 18.0 - 2.0 * 20.0)
        - 6.0 * (2.0 * 18.0 + 2.0 * 20.0);
    check(
        crossing,
        BLOCK - taken,
        AROUND + walls + PI * 14.0 * 14.0 - 2.0 * PI * 49.0,
    );
    let notch = FeatureShape::Notch {
        along_length: span(150.0, 200.0),
        along_width: span(0.0, 30.0),
    };
    check(block(notch), BLOCK - 30_000.0, AROUND - 2.0 * 1_500.0);
}

#[test]
fn shaped_and_round_parts() {
    let arc = PI * 120.0 * 120.0 / 4.0;
    let area = 160.0 * 160.0 - arc;
    check(
        bracket(160.0),
        area * 18.0,
        2.0 * area + 18.0 * (2.0 * 160.0 + 2.0 * 40.0 + PI * 60.0),
    );
    let mut rod = part("Rod", [300.0, 20.0, 20.0]);
    rod.material = MaterialId(1);
    check(rod, PI * 100.0 * 300.0, PI * (20.0 * 300.0 + 200.0));
}

#[test]
fn broken_arrises() {
    let arris = |sides, form| FeatureShape::Arris {
        sides,
        size: mm(8.0),
        form,
    };
    let along = [Side::Face, Side::Near];
    check(
        block(arris(along, ArrisForm::Chamfer)),
        BLOCK - 32.0 * 200.0,
        AROUND - (16.0 - 8.0 * 2f64.sqrt()) * 200.0 - 64.0,
    );
    let corner = 64.0 * (1.0 - PI / 4.0);
    check(
        block(arris(along, ArrisForm::Round)),
        BLOCK - corner * 200.0,
        AROUND - (16.0 - 4.0 * PI) * 200.0 - 2.0 * corner,
    );
    check(
        block(arris([Side::Head, Side::Far], ArrisForm::Round)),
        BLOCK - corner * 20.0,
        AROUND - (16.0 - 4.0 * PI) * 20.0 - 2.0 * corner,
    );
    check(
        block(arris([Side::Near, Side::Foot], ArrisForm::Chamfer)),
        BLOCK - 32.0 * 20.0,
        AROUND - (16.0 - 8.0 * 2f64.sqrt()) * 20.0 - 64.0,
    );
}

#[test]
fn pocket_holes_leave_a_closed_shell() {
    let build = super::samples::shelf_unit();
    for (part, solid) in build.parts.iter().zip(shape(&build).value.parts) {
        let (volume, _, open) = by_faces(&solid.fine);
        assert!(open < 0.5, "{}: {open} mm2 open", part.title);
        let exact = solid.measures.volume_mm3;
        assert!(
            (volume - exact).abs() < exact * 0.002,
            "{}: {volume} is not {exact}",
            part.title
        );
    }
}

#[test]
fn what_cannot_be_made_is_found() {
    let hole =
        |x: f64, y: f64, depth| FeatureShape::Holes(holes(Side::Face, 10.0, depth, &[at(x, y)]));
    assert_eq!(found(block(hole(250.0, 50.0, None))), ["D001"]);
    assert_eq!(found(block(hole(50.0, 50.0, Some(20.0)))), ["D002"]);
    assert_eq!(found(block(hole(50.0, 4.0, Some(10.0)))), ["D004"]);
    assert!(found(block(hole(50.0, 5.0, Some(10.0)))).is_empty());
    let deep = pocket(
        PocketKind::Groove,
        Side::Face,
        span(0.0, 200.0),
        span(10.0, 20.0),
        20.0,
    );
    assert_eq!(found(block(FeatureShape::Pocket(deep))), ["D002"]);
    let bow = |points: &[PlanePoint]| {
        let start = points[0];
        let pieces = points[1..]
            .iter()
            .map(|to| crate::geometry::ContourPiece::Line { to: *to })
            .collect();
        FeatureShape::Outline(crate::geometry::Contour { start, pieces })
    };
    let crossed = [
        at(0.0, 0.0),
        at(200.0, 100.0),
        at(200.0, 0.0),
        at(0.0, 100.0),
    ];
    assert_eq!(found(block(bow(&crossed))), ["D003"]);
    let large = [at(0.0, 0.0), at(210.0, 0.0), at(200.0, 100.0)];
    assert_eq!(found(block(bow(&large))), ["D001"]);
    assert!(found(bracket(160.0)).is_empty());
    assert!(shape(&super::samples::shelf_unit()).findings.is_empty());
}
