//! Measures of parts against a general-purpose geometry kernel.
//!
//! The figures are Open CASCADE's, through cadquery-ocp-novtk 8.0.1.1.0 from PyPI, as
//! `tests/kernel/volumes.py` prints them: volume, surface and centre of mass in the part's frame.

use super::end_tests::slope;
use super::samples::{at, bracket, empty, holes, mm, part, pocket, span};
use super::shape;
use crate::build::Part;
use crate::geometry::{Interval, PlanePoint, Side};
use crate::model::{
    ArrisForm, FeatureShape, MaterialId, PocketKind, PocketScrewHole, SlopeKind, Tenon,
};

/// What the kernel says of a part.
struct Known {
    part: Part,
    volume_mm3: f64,
    surface_mm2: f64,
    centre_mm: [f64; 3],
    /// How far ours may be from it, as a share of it.
    within: f64,
}

/// Closed formulas on both sides; ours come from corners in whole nanometres.
const EXACT: f64 = 1e-7;
/// Where a pocket cuts a bore at a chord and not at its circle.
const CHORDS: f64 = 2e-5;

fn block() -> Part {
    part("Block", [200.0, 100.0, 20.0])
}

fn named(title: &str, part: Part) -> Part {
    Part {
        title: title.to_owned(),
        ..part
    }
}

fn drilled(side: Side, diameter: f64, depth: Option<f64>, points: &[PlanePoint]) -> FeatureShape {
    FeatureShape::Holes(holes(side, diameter, depth, points))
}

fn channel(side: Side, first: Interval, second: Interval, depth: f64) -> FeatureShape {
    FeatureShape::Pocket(pocket(PocketKind::Groove, side, first, second, depth))
}

fn known(
    title: &str,
    part: Part,
    [volume_mm3, surface_mm2]: [f64; 2],
    centre_mm: [f64; 3],
    within: f64,
) -> Known {
    Known {
        part: named(title, part),
        volume_mm3,
        surface_mm2,
        centre_mm,
        within,
    }
}

fn holed() -> Vec<Known> {
    let mut bored = holes(Side::Face, 10.0, Some(15.0), &[at(50.0, 50.0)]);
    bored.counterbore = Some((mm(24.0), mm(6.0)));
    let mut sunk = holes(Side::Face, 5.0, None, &[at(50.0, 50.0)]);
    sunk.countersink = Some(mm(15.0));
    let mut edge_sunk = holes(Side::Near, 5.0, Some(30.0), &[at(100.0, 10.0)]);
    edge_sunk.countersink = Some(mm(11.0));
    let grid: Vec<PlanePoint> = (0..20)
        .flat_map(|i| (0..10).map(move |j| (f64::from(i) + 0.5, f64::from(j) + 0.5)))
        .map(|(i, j)| at(30.0 * i, 30.0 * j))
        .collect();
    let mut rod = part("Rod", [300.0, 20.0, 20.0]);
    rod.material = MaterialId(1);
    vec![
        known(
            "through holes",
            block()
                .cut(drilled(Side::Face, 10.0, None, &[at(50.0, 50.0)]))
                .cut(drilled(Side::Face, 12.0, None, &[at(150.0, 30.0)])),
            [396_167.256_963, 52_999.026_464],
            [99.912770, 50.114192, 10.0],
            EXACT,
        ),
        known(
            "counterbored blind hole",
            block().cut(FeatureShape::Holes(bored)),
            [396_578.805_600, 52_735.132_681],
            [100.431339, 50.0, 9.952981],
            EXACT,
        ),
        known(
            "countersunk hole",
            block().cut(FeatureShape::Holes(sunk)),
            [399_280.051_684, 52_261.414_055],
            [100.090156, 50.0, 9.993033],
            EXACT,
        ),
        known(
            "hole grid",
            part("Panel", [600.0, 300.0, 18.0]).cut(drilled(Side::Face, 20.0, None, &grid)),
            [2_109_026.644_708, 492_930.964_915],
            [300.0, 150.0, 9.0],
            EXACT,
        ),
        known(
            "holes in the head",
            block().cut(drilled(
                Side::Head,
                8.0,
                Some(30.0),
                &[at(30.0, 10.0), at(70.0, 10.0)],
            )),
            [396_984.071_053, 53_507.964_474],
            [99.354246, 50.0, 10.0],
            EXACT,
        ),
        known(
            "countersunk hole in an edge",
            block().cut(FeatureShape::Holes(edge_sunk)),
            [399_311.991_209, 52_455.345_975],
            [100.0, 50.063792, 10.0],
            EXACT,
        ),
        known(
            "edge holes through a groove",
            block()
                .cut(channel(
                    Side::Face,
                    span(0.0, 200.0),
                    span(20.0, 30.0),
                    12.0,
                ))
                .cut(drilled(Side::Near, 8.0, Some(40.0), &[at(60.0, 10.0)]))
                .cut(drilled(Side::Near, 8.0, Some(25.0), &[at(140.0, 10.0)])),
            [373_339.321_513, 57_676.623_620],
            [100.059119, 51.852932, 9.743975],
            CHORDS,
        ),
        known(
            "pocket-screw hole",
            block().cut(FeatureShape::PocketScrewHole(PocketScrewHole {
                side: Side::Back,
                end: Side::Foot,
                position: mm(50.0),
                diameter: mm(9.5),
                pilot: mm(3.7),
                entry: mm(34.0),
            })),
            [398_415.860_780, 52_574.238_128],
            [100.301134, 50.0, 10.024811],
            EXACT,
        ),
        known(
            "bar with a cross hole",
            rod.cut(drilled(Side::Face, 8.0, None, &[at(150.0, 10.0)])),
            [93_262.999_919, 19_857.102_388],
            [150.0, 10.0, 10.0],
            EXACT,
        ),
    ]
}

fn shaped() -> Vec<Known> {
    let mut mortise = pocket(
        PocketKind::Mortise,
        Side::Near,
        span(40.0, 80.0),
        span(5.0, 15.0),
        25.0,
    );
    mortise.round_ends = true;
    let arris = |sides, size, form| FeatureShape::Arris {
        sides,
        size: mm(size),
        form,
    };
    let dado = |to: f64| channel(Side::Face, span(50.0, 68.0), span(0.0, to), 6.0);
    let groove = || channel(Side::Face, span(0.0, 200.0), span(40.0, 60.0), 6.0);
    vec![
        known(
            "groove",
            block().cut(groove()),
            [376_000.0, 54_160.0],
            [100.0, 50.0, 9.553191],
            EXACT,
        ),
        known(
            "stopped dado",
            block().cut(dado(70.0)),
            [392_440.0, 52_840.0],
            [100.789828, 50.288961, 9.865151],
            EXACT,
        ),
        known(
            "rabbet",
            block().cut(channel(
                Side::Face,
                span(0.0, 200.0),
                span(88.0, 100.0),
                8.0,
            )),
            [380_800.0, 51_808.0],
            [100.0, 47.781513, 9.697479],
            EXACT,
        ),
        known(
            "notches",
            block()
                .cut(FeatureShape::Notch {
                    along_length: span(150.0, 200.0),
                    along_width: span(0.0, 30.0),
                })
                .cut(FeatureShape::Notch {
                    along_length: span(60.0, 100.0),
                    along_width: span(80.0, 100.0),
                }),
            [354_000.0, 48_200.0],
            [94.548023, 51.158192, 10.0],
            EXACT,
        ),
        known(
            "bracket",
            bracket(160.0),
            [257_224.796_047, 39_173.452_960],
            [56.992823, 56.992823, 9.0],
            EXACT,
        ),
        known(
            "chamfer and round-over",
            block()
                .cut(arris([Side::Face, Side::Near], 8.0, ArrisForm::Chamfer))
                .cut(arris([Side::Face, Side::Far], 5.0, ArrisForm::Round)),
            [392_526.990_817, 50_558.807_935],
            [100.0, 50.638125, 9.856150],
            EXACT,
        ),
        known(
            "rounded corner",
            block().cut(arris([Side::Head, Side::Far], 30.0, ArrisForm::Round)),
            [396_137.166_941, 51_356.194_490],
            [99.090218, 49.577781, 10.0],
            EXACT,
        ),
        known(
            "round-ended mortise",
            block().cut(FeatureShape::Pocket(mortise)),
            [390_536.504_592, 54_285.398_163],
            [100.969282, 50.908701, 10.0],
            EXACT,
        ),
        known(
            "crossing dado, groove and hole",
            block().cut(dado(100.0)).cut(groove()).cut(drilled(
                Side::Face,
                14.0,
                None,
                &[at(59.0, 50.0)],
            )),
            [365_204.867_440, 54_995.876_080],
            [101.211924, 50.0, 9.392082],
            EXACT,
        ),
    ]
}

fn ended() -> Vec<Known> {
    let mitre = || slope(SlopeKind::Mitre, Side::Head, Side::Far, 100.0, 100.0);
    let taper = |side, deep, inset, run| slope(SlopeKind::Taper, side, deep, inset, run);
    let along = [span(0.0, 200.0), span(40.0, 48.0)];
    vec![
        known(
            "mitred end",
            block().cut(mitre()),
            [300_000.0, 40_828.427_125],
            [77.777778, 44.444444, 10.0],
            EXACT,
        ),
        known(
            "mitred end through a hole",
            block()
                .cut(drilled(Side::Face, 16.0, None, &[at(150.0, 50.0)]))
                .cut(mitre()),
            [297_989.380_702, 40_810.020_019],
            [77.306673, 44.423159, 10.0],
            5.0 * CHORDS,
        ),
        known(
            "two tapers and a groove",
            block()
                .cut(channel(Side::Face, along[0], along[1], 6.0))
                .cut(taper(Side::Near, Side::Foot, 10.0, 150.0))
                .cut(taper(Side::Far, Side::Head, 20.0, 200.0)),
            [335_400.0, 48_230.609_524],
            [98.260783, 47.090837, 9.799642],
            EXACT,
        ),
        known(
            "edge hole into a face hole",
            block()
                .cut(drilled(Side::Face, 14.0, None, &[at(100.0, 50.0)]))
                .cut(drilled(Side::Near, 8.0, Some(50.0), &[at(100.0, 10.0)])),
            [394_744.805_519, 53_564.977_686],
            [100.0, 50.156306, 10.0],
            CHORDS,
        ),
        known(
            "tenon",
            block().cut(FeatureShape::Tenon(Tenon {
                end: Side::Head,
                along: span(170.0, 200.0),
                width: span(20.0, 80.0),
                thickness: span(4.0, 16.0),
            })),
            [361_600.0, 49_120.0],
            [90.973451, 50.0, 10.0],
            EXACT,
        ),
    ]
}

#[test]
fn measures_agree_with_a_geometry_kernel() {
    let known: Vec<Known> = holed().into_iter().chain(shaped()).chain(ended()).collect();
    let mut build = empty("Test");
    for known in &known {
        build.add(known.part.clone());
    }
    let solids = shape(&build).value;
    let mut off = Vec::new();
    for (known, solid) in known.iter().zip(&solids.parts) {
        let (volume, surface) = (solid.measures.volume_mm3, solid.measures.surface_mm2);
        let by = [
            volume / known.volume_mm3 - 1.0,
            surface / known.surface_mm2 - 1.0,
        ];
        let centre = solid.measures.centre_mm().unwrap();
        let away = (0..3).map(|k| (centre[k] - known.centre_mm[k]).abs());
        if away.fold(0.0, f64::max) > 3e-5 + known.within * 100.0 {
            off.push(format!("{}: centre at {centre:?}", known.part.title));
        }
        if by[0].abs().max(by[1].abs()) > known.within {
            off.push(format!(
                "{}: {volume} {surface}, by {by:?}",
                known.part.title
            ));
        }
    }
    assert!(off.is_empty(), "{}", off.join("\n"));
}
