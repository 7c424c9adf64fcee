//! Which placed pieces touch, found by their boxes.
#![expect(
    clippy::indexing_slicing,
    reason = "axes are 0, 1 and 2, pieces are numbered by the list they come from"
)]

use super::bodies::corners;
use crate::build::{Build, PlacedId};

/// A box of the world in micrometres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Box3 {
    pub(super) low: [f64; 3],
    pub(super) high: [f64; 3],
}

impl Box3 {
    /// Around nothing.
    pub(super) const NONE: Self = Self {
        low: [f64::INFINITY; 3],
        high: [f64::NEG_INFINITY; 3],
    };

    /// Moved.
    pub(super) fn shifted(&self, offset: [f64; 3]) -> Self {
        let mut moved = *self;
        for (axis, by) in offset.into_iter().enumerate() {
            moved.low[axis] += by;
            moved.high[axis] += by;
        }
        moved
    }

    /// Grown to hold another.
    pub(super) fn join(&mut self, other: &Self) {
        for axis in 0..3 {
            self.low[axis] = self.low[axis].min(other.low[axis]);
            self.high[axis] = self.high[axis].max(other.high[axis]);
        }
    }

    /// How far both share along an axis; negative where there is a gap.
    pub(super) fn shared(&self, other: &Self, axis: usize) -> f64 {
        self.high[axis].min(other.high[axis]) - self.low[axis].max(other.low[axis])
    }

    /// What both have in common.
    pub(super) fn common(&self, other: &Self) -> Self {
        let mut common = *self;
        for axis in 0..3 {
            common.low[axis] = self.low[axis].max(other.low[axis]);
            common.high[axis] = self.high[axis].min(other.high[axis]);
        }
        common
    }

    /// Its middle.
    pub(super) fn middle(&self) -> [f64; 3] {
        [0, 1, 2].map(|axis| (self.low[axis] + self.high[axis]) / 2.0)
    }

    /// Its size along an axis; zero around nothing.
    pub(super) fn size(&self, axis: usize) -> f64 {
        (self.high[axis] - self.low[axis]).max(0.0)
    }

    /// The distance between its farthest corners.
    pub(super) fn diagonal(&self) -> f64 {
        (0..3)
            .map(|axis| self.size(axis) * self.size(axis))
            .sum::<f64>()
            .sqrt()
    }

    /// All eight corners.
    pub(super) fn corners(&self) -> [[f64; 3]; 8] {
        [0, 1, 2, 3, 4, 5, 6, 7].map(|bits: usize| {
            [0, 1, 2].map(|axis| {
                if bits >> axis & 1 == 1 {
                    self.high[axis]
                } else {
                    self.low[axis]
                }
            })
        })
    }
}

/// Gaps up to this, in micrometres, count as touching.
pub(super) const TOUCHING: f64 = 60.0;

/// Where a piece touches another.
#[derive(Clone, Copy, Debug)]
pub(super) struct Touch {
    /// The other piece.
    pub(super) other: PlacedId,
    /// The axis square to the contact: where least is shared.
    pub(super) axis: usize,
    /// What both boxes share: flat, or as thick as one goes into the other.
    pub(super) shared: Box3,
}

impl Touch {
    /// The area that touches, in square micrometres.
    pub(super) fn area(&self) -> f64 {
        (0..3)
            .filter(|axis| *axis != self.axis)
            .map(|axis| self.shared.size(axis))
            .product()
    }
}

/// Boxes of all placed pieces and what each touches.
pub(super) struct Contacts {
    /// By [`PlacedId`].
    pub(super) boxes: Vec<Box3>,
    touches: Vec<Vec<Touch>>,
}

impl Contacts {
    /// All contacts of a build.
    pub(super) fn of(build: &Build) -> Self {
        let boxes: Vec<Box3> = build
            .placed
            .iter()
            .map(|piece| {
                let (low, high) = corners(&piece.place);
                Box3 { low, high }
            })
            .collect();
        let mut touches = vec![Vec::new(); boxes.len()];
        let mut order: Vec<usize> = (0..boxes.len()).collect();
        order.sort_by(|a, b| boxes[*a].low[0].total_cmp(&boxes[*b].low[0]));
        let mut open: Vec<usize> = Vec::new();
        for number in order {
            let own = &boxes[number];
            open.retain(|other| boxes[*other].high[0] + TOUCHING >= own.low[0]);
            for other in &open {
                if let Some(axis) = touching(own, &boxes[*other]) {
                    let shared = own.common(&boxes[*other]);
                    let touch = |other| Touch {
                        other: PlacedId(other),
                        axis,
                        shared,
                    };
                    touches[number].push(touch(*other));
                    touches[*other].push(touch(number));
                }
            }
            open.push(number);
        }
        for list in &mut touches {
            list.sort_by_key(|touch| touch.other);
        }
        Self { boxes, touches }
    }

    /// What a piece touches.
    pub(super) fn of_piece(&self, piece: PlacedId) -> &[Touch] {
        self.touches.get(piece.0).map_or(&[], Vec::as_slice)
    }

    /// The box of a piece.
    pub(super) fn place(&self, piece: PlacedId) -> Box3 {
        self.boxes.get(piece.0).copied().unwrap_or(Box3::NONE)
    }
}

/// The axis along which two boxes touch over some area.
fn touching(a: &Box3, b: &Box3) -> Option<usize> {
    let shared = [0, 1, 2].map(|axis| a.shared(b, axis));
    let least = (0..3).min_by(|i, j| shared[*i].total_cmp(&shared[*j]))?;
    let wide = (0..3).all(|axis| axis == least || shared[axis] > TOUCHING);
    (wide && shared[least] >= -TOUCHING).then_some(least)
}
