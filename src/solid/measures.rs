//! Volume, surface and centre of mass, from the features themselves.

use super::stack::place_vector;
use crate::geometry::{Interval, PartAxis, Region, Ring};

/// Exact measures of a part: arcs count as arcs, cylinders as cylinders.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Measures {
    /// Volume in cubic millimetres.
    pub volume_mm3: f64,
    /// Surface all round in square millimetres, holes and channels included.
    pub surface_mm2: f64,
    /// Volume times where its centre is, along length, width and thickness of the part's frame.
    pub moment_mm4: [f64; 3],
}

impl Measures {
    /// Volume in cubic metres.
    pub fn volume_m3(&self) -> f64 {
        self.volume_mm3 / 1e9
    }

    /// Surface in square metres.
    pub fn surface_m2(&self) -> f64 {
        self.surface_mm2 / 1e6
    }

    /// The centre of mass in millimetres of the part's frame, the wood being alike all through;
    /// none for a part of which nothing is left.
    pub fn centre_mm(&self) -> Option<[f64; 3]> {
        (self.volume_mm3 > 0.0).then(|| self.moment_mm4.map(|moment| moment / self.volume_mm3))
    }

    /// Adds a volume whose centre is known; a negative one takes it away.
    pub(super) fn add_volume(&mut self, volume_mm3: f64, centre_mm: [f64; 3]) {
        self.volume_mm3 += volume_mm3;
        for (moment, centre) in self.moment_mm4.iter_mut().zip(centre_mm) {
            *moment += volume_mm3 * centre;
        }
    }

    /// Adds a prism over the area inside of a ring, `sign` times.
    pub(super) fn add_prism(
        &mut self,
        ring: &Ring,
        plane: [PartAxis; 2],
        reach: Interval,
        sign: f64,
    ) {
        let height = reach.size().mm() * sign;
        let volume = crate::geometry::region::ring_area_mm2(ring) * height;
        let moments = crate::geometry::region::ring_moments_mm3(ring);
        self.volume_mm3 += volume;
        let across = place_vector(plane, moments.map(|moment| moment * height));
        let mut along = [volume * reach.middle().mm(); 3];
        for axis in plane {
            if let Some(part) = along.get_mut(axis.index()) {
                *part = 0.0;
            }
        }
        for (moment, part) in self
            .moment_mm4
            .iter_mut()
            .zip(across.into_iter().zip(along))
        {
            *moment += part.0 + part.1;
        }
    }

    /// Adds a prism over a region.
    pub(super) fn add_region(&mut self, region: &Region, plane: [PartAxis; 2], reach: Interval) {
        for ring in region.rings() {
            self.add_prism(ring, plane, reach, 1.0);
        }
    }

    /// Takes in what a change of a shell's flat faces changed: `after` in place of `before`, the
    /// volume that went `round` times as large as flat facets make it.
    pub(super) fn change(&mut self, before: &Self, after: &Self, round: f64) {
        self.volume_mm3 += (after.volume_mm3 - before.volume_mm3) * round;
        self.surface_mm2 += after.surface_mm2 - before.surface_mm2;
        let pairs = after.moment_mm4.into_iter().zip(before.moment_mm4);
        for (moment, (after, before)) in self.moment_mm4.iter_mut().zip(pairs) {
            *moment += (after - before) * round;
        }
    }
}
