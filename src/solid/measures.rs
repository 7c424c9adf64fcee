//! Volume and surface, from the features themselves.

/// Exact measures of a part: arcs count as arcs, cylinders as cylinders.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Measures {
    /// Volume in cubic millimetres.
    pub volume_mm3: f64,
    /// Surface all round in square millimetres, holes and channels included.
    pub surface_mm2: f64,
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
}
