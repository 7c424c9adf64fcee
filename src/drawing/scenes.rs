//! Known scenes, to measure hidden lines by: the same in any program and language.

use super::scene::{BodyId, Scene};

/// `boxes:N[:SEED]` or `stack`; none for any other name.
pub fn by_name(name: &str) -> Option<Scene> {
    let mut words = name.split(':');
    match words.next()? {
        "boxes" => {
            let count = words.next()?.parse().ok()?;
            let seed = words.next().map_or(Ok(1), str::parse).ok()?;
            Some(boxes(count, seed))
        }
        "stack" => Some(stack()),
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

/// The boxes of [`stack`], in millimetres.
const STACK: [([f64; 3], [f64; 3]); 5] = [
    ([0.0, 0.0, 0.0], [100.0, 100.0, 18.0]),
    ([100.0, 0.0, 0.0], [200.0, 100.0, 18.0]),
    ([0.0, 0.0, 18.0], [18.0, 100.0, 118.0]),
    ([182.0, 0.0, 18.0], [200.0, 100.0, 118.0]),
    ([18.0, 0.0, 50.0], [182.0, 100.0, 68.0]),
];
