//! Known scenes, to measure hidden lines by: the same in any program and language.

use super::bodies::add_shell;
use super::scene::{BodyId, Scene};
use crate::build::Part;
use crate::geometry::{Interval, PlanePoint, Side};
use crate::model::{Feature, FeatureShape, HolePurpose, Holes, MaterialId};
use crate::solid::solid;
use crate::source::Span;
use crate::units::Length;

/// `boxes:N[:SEED]`, `stack` or `panel`; none for any other name.
pub fn by_name(name: &str) -> Option<Scene> {
    let mut words = name.split(':');
    match words.next()? {
        "boxes" => {
            let count = words.next()?.parse().ok()?;
            let seed = words.next().map_or(Ok(1), str::parse).ok()?;
            Some(boxes(count, seed))
        }
        "stack" => Some(stack()),
        "panel" => Some(panel()),
        _ => None,
    }
}

/// A linear congruential generator (Knuth's 64-bit multiplier), for scenes that are the same
/// everywhere.
#[derive(Clone, Debug)]
pub struct Dice(u64);

impl Dice {
    /// Dice that always roll the same for one `seed`.
    pub fn new(seed: u64) -> Self {
        Self(seed)
    }

    /// A number below `limit`, which is below 2^31.
    pub fn roll(&mut self, limit: u64) -> u64 {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33) % limit.max(1)
    }
}

#[expect(
    clippy::cast_precision_loss,
    reason = "whole micrometres far below 2^53"
)]
fn micrometres(value: u64) -> f64 {
    value as f64
}

/// Boxes of 30 to 90 mm, one in each 100 mm cell of a cube, that never touch.
pub fn boxes(count: u64, seed: u64) -> Scene {
    let mut dice = Dice::new(seed);
    let side = (1..).find(|side| side * side * side >= count).unwrap_or(1);
    let mut scene = Scene::new();
    for (number, body) in (0..count).zip(0..) {
        let cell = [number % side, number / side % side, number / side / side];
        let size = [0, 1, 2].map(|_| 30_000 + dice.roll(60_001));
        let low: Vec<u64> = cell
            .iter()
            .zip(size)
            .map(|(cell, size)| cell * 100_000 + 2_000 + dice.roll(96_000 - size + 1))
            .collect();
        if let [x, y, z] = low[..] {
            let high = [x + size[0], y + size[1], z + size[2]];
            scene.add_box(
                BodyId(body),
                [x, y, z].map(micrometres),
                high.map(micrometres),
            );
        }
    }
    scene
}

/// Five touching boxes: two boards side by side, two uprights at their ends, a shelf between.
pub fn stack() -> Scene {
    let mm = |corner: [f64; 3]| corner.map(|part| part * 1000.0);
    let mut scene = Scene::new();
    for (body, (low, high)) in (0..).zip(STACK) {
        scene.add_box(BodyId(body), mm(low), mm(high));
    }
    scene
}

/// A panel of 600 by 300 by 18 mm with 200 through holes of 20 mm, 20 by 10.
pub fn panel() -> Scene {
    let positions = (0..20)
        .flat_map(|i| (0..10).map(move |j| PlanePoint::new(mm(15 + 30 * i), mm(15 + 30 * j))))
        .collect();
    let feature = Feature {
        shape: FeatureShape::Holes(Holes {
            side: Side::Face,
            diameter: mm(20),
            depth: None,
            counterbore: None,
            countersink: None,
            positions,
            grid: None,
            purpose: HolePurpose::Described,
        }),
        span: Span::default(),
    };
    let part = Part {
        name: "panel".to_owned(),
        title: "Panel".to_owned(),
        label: "A".to_owned(),
        material: MaterialId(0),
        extent: [600, 300, 18].map(|size| Interval::of(mm(size))),
        grain_along_length: true,
        layers: 1,
        oversize: Length::ZERO,
        count: 1,
        mirrored: 0,
        note: None,
        features: vec![feature],
        bands: Vec::new(),
        span: Span::default(),
    };
    let mut scene = Scene::new();
    add_shell(&mut scene, BodyId(0), &solid(&part, None).fine, [0.0; 3]);
    scene
}

fn mm(mm: i64) -> Length {
    Length::from_mm(mm)
}

/// The boxes of [`stack`], in millimetres.
const STACK: [([f64; 3], [f64; 3]); 5] = [
    ([0.0, 0.0, 0.0], [100.0, 100.0, 18.0]),
    ([100.0, 0.0, 0.0], [200.0, 100.0, 18.0]),
    ([0.0, 0.0, 18.0], [18.0, 100.0, 118.0]),
    ([182.0, 0.0, 18.0], [200.0, 100.0, 118.0]),
    ([18.0, 0.0, 50.0], [182.0, 100.0, 68.0]),
];
