//! How far a shelf sags and what it bears: straight beams of rectangular section.

/// Shear modulus as a share of the modulus of elasticity where it was not measured
/// (ref: formulas#F02 [V], Wood Handbook GTR-282 ch. 9, by transcription).
const SHEAR_SHARE: f64 = 1.0 / 16.0;
/// The part of a rectangular section that takes the shear (ref: formulas#F02 [V], same chapter).
const SHEAR_SECTION: f64 = 5.0 / 6.0;
/// Sag that the eye sees, as a share of the span: 0.02 in a foot. Common practice, no source
/// (ref: formulas#F11 [P]); stricter and looser choices are 1/360 and 1/240 of the total.
pub const VISIBLE_SAG_OF_SPAN: f64 = 1.0 / 600.0;
/// Clear furniture stock is loaded to at most this share of its modulus of rupture. Common
/// practice, no source (ref: formulas#F09 [P]).
pub const ALLOWABLE_OF_RUPTURE: f64 = 1.0 / 4.0;

/// How a beam is loaded and held. A dadoed or screwed shelf lies between simple supports and
/// clamped ends: check it with simple ones.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Loading {
    /// Spread evenly; loose on pins or cleats.
    Uniform,
    /// Spread evenly; neither end can turn.
    UniformClamped,
    /// In the middle of the span; loose on pins or cleats.
    Midspan,
    /// In the middle of the span; neither end can turn.
    MidspanClamped,
    /// Half at each outer quarter point; loose.
    QuarterPoints,
    /// Half at each outer quarter point; neither end can turn. Deflection under the loads.
    QuarterPointsClamped,
    /// Spread evenly over an arm held at one end.
    UniformCantilever,
    /// At the free end of an arm held at one end.
    EndCantilever,
    /// Spread evenly over one of two equal spans, both loaded: a shelf with a support in the
    /// middle. Span and load are those of one half.
    UniformTwoSpans,
}

impl Loading {
    /// `kb`, the share of `W L³ / E I` that bending adds to the greatest deflection.
    ///
    /// ref: formulas, "Table 9-1 constants" [V] (Wood Handbook GTR-282, by transcription); two
    /// spans: formulas#F08 [M] (strength-of-materials handbooks).
    fn bending_constant(self) -> f64 {
        match self {
            Self::Uniform => 5.0 / 384.0,
            Self::UniformClamped => 1.0 / 384.0,
            Self::Midspan => 1.0 / 48.0,
            Self::MidspanClamped => 1.0 / 192.0,
            Self::QuarterPoints => 11.0 / 768.0,
            Self::QuarterPointsClamped => 1.0 / 96.0 / 4.0,
            Self::UniformCantilever => 1.0 / 8.0,
            Self::EndCantilever => 1.0 / 3.0,
            Self::UniformTwoSpans => 1.0 / 185.0,
        }
    }

    /// `ks`, the share of `W L / G A'` that shear adds. Same table; two spans: that of one simple
    /// span, more than theirs [D].
    fn shear_constant(self) -> f64 {
        match self {
            Self::Uniform
            | Self::UniformClamped
            | Self::QuarterPoints
            | Self::QuarterPointsClamped
            | Self::UniformTwoSpans => 1.0 / 8.0,
            Self::Midspan | Self::MidspanClamped => 1.0 / 4.0,
            Self::UniformCantilever => 1.0 / 2.0,
            Self::EndCantilever => 1.0,
        }
    }

    /// The greatest bending moment as a share of `W L`: simple spans ref: formulas#F09 [V]; the
    /// others from statics [M] (strength-of-materials texts).
    fn moment_constant(self) -> f64 {
        match self {
            Self::Uniform | Self::QuarterPoints | Self::MidspanClamped | Self::UniformTwoSpans => {
                1.0 / 8.0
            }
            Self::Midspan => 1.0 / 4.0,
            Self::UniformClamped => 1.0 / 12.0,
            Self::QuarterPointsClamped => 3.0 / 32.0,
            Self::UniformCantilever => 1.0 / 2.0,
            Self::EndCantilever => 1.0,
        }
    }
}

/// A shelf or rail of rectangular section, loaded square to its breadth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Beam {
    /// Clear distance between its supports, or its free length.
    pub span_mm: f64,
    /// Square to span and load.
    pub breadth_mm: f64,
    /// In the direction of the load: a shelf's thickness.
    pub depth_mm: f64,
    /// Modulus of elasticity along the span.
    pub modulus_mpa: f64,
}

impl Beam {
    /// `b h³ / 12`, mm⁴ (ref: formulas#F01 [V], Wood Handbook GTR-282 ch. 9).
    pub fn second_moment_mm4(self) -> f64 {
        self.breadth_mm * libm::pow(self.depth_mm, 3.0) / 12.0
    }

    /// The greatest deflection under a total load, from bending alone (ref: formulas#F03 to F08,
    /// Wood Handbook GTR-282 ch. 9, eq. 9-2 with Table 9-1). A modulus from centre-loaded beams
    /// has the shear in it.
    pub fn sag_mm(self, load_n: f64, loading: Loading) -> f64 {
        let stiffness = self.modulus_mpa * self.second_moment_mm4();
        loading.bending_constant() * load_n * libm::pow(self.span_mm, 3.0) / stiffness
    }

    /// What shear adds to the deflection where the modulus is free of it (ref: formulas#F02 [V],
    /// same chapter).
    pub fn shear_sag_mm(self, load_n: f64, loading: Loading) -> f64 {
        let section = SHEAR_SECTION * self.breadth_mm * self.depth_mm;
        let shear = self.modulus_mpa * SHEAR_SHARE;
        loading.shear_constant() * load_n * self.span_mm / (shear * section)
    }

    /// The greatest bending moment, N mm (ref: formulas#F09 [V], strength-of-materials texts).
    pub fn moment_n_mm(self, load_n: f64, loading: Loading) -> f64 {
        loading.moment_constant() * load_n * self.span_mm
    }

    /// The greatest stress from bending (ref: formulas#F09 [V]).
    pub fn stress_mpa(self, load_n: f64, loading: Loading) -> f64 {
        let section = self.breadth_mm * self.depth_mm * self.depth_mm / 6.0;
        self.moment_n_mm(load_n, loading) / section
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn near(found: f64, wanted: f64) {
        assert!((found / wanted - 1.0).abs() < 1e-4, "{found}, not {wanted}");
    }

    const INCH: f64 = 25.4;
    /// One pound-force in newtons.
    const POUND: f64 = 4.448_221_615;
    /// One pound-force on a square inch in megapascals.
    const PSI: f64 = 0.006_894_757_293;

    fn oak_shelf() -> Beam {
        Beam {
            span_mm: 914.4,
            breadth_mm: 254.0,
            depth_mm: 19.05,
            modulus_mpa: 12_548.0,
        }
    }

    // Wood Handbook GTR-282 ch. 9, Table 9-1, worked numbers (ref: formulas#F01 to F09 [D]).
    #[test]
    fn second_moments() {
        let mm = Beam {
            breadth_mm: 250.0,
            depth_mm: 18.0,
            ..oak_shelf()
        };
        near(mm.second_moment_mm4(), 121_500.0);
        let inch = Beam {
            breadth_mm: 10.0,
            depth_mm: 0.75,
            ..oak_shelf()
        };
        near(inch.second_moment_mm4(), 0.35156);
    }

    #[test]
    fn shelves_sag() {
        // Any consistent units: inches and pounds here.
        let inch = Beam {
            span_mm: 36.0,
            breadth_mm: 10.0,
            depth_mm: 0.75,
            modulus_mpa: 1_820_000.0,
        };
        near(inch.sag_mm(60.0, Loading::Uniform), 0.056_967);
        near(inch.shear_sag_mm(60.0, Loading::Uniform), 0.000_379_78);
        near(inch.sag_mm(60.0, Loading::UniformClamped), 0.011_393);
        near(
            oak_shelf().sag_mm(0.291_88 * 914.4, Loading::Uniform),
            1.447,
        );
        let mdf = Beam {
            span_mm: 800.0,
            breadth_mm: 250.0,
            depth_mm: 18.0,
            modulus_mpa: 2_200.0,
        };
        near(mdf.sag_mm(240.0, Loading::Uniform), 5.9858);
        near(oak_shelf().sag_mm(200.0, Loading::Midspan), 1.7349);
        let arm = Beam {
            span_mm: 300.0,
            breadth_mm: 200.0,
            depth_mm: 25.0,
            modulus_mpa: 12_548.0,
        };
        near(arm.sag_mm(100.0, Loading::EndCantilever), 0.275_42);
        // Strength-of-materials handbooks, from memory [M]: w L⁴ / 185 E I.
        let two = oak_shelf().sag_mm(185.0, Loading::UniformTwoSpans);
        near(
            two,
            libm::pow(914.4, 3.0) / (12_548.0 * oak_shelf().second_moment_mm4()),
        );
    }

    #[test]
    fn shelves_are_stressed() {
        let inch = Beam {
            span_mm: 36.0,
            breadth_mm: 10.0,
            depth_mm: 0.75,
            modulus_mpa: 1.0,
        };
        let load = 1.6667 * 36.0;
        near(inch.moment_n_mm(load, Loading::Uniform), 270.0);
        near(inch.stress_mpa(load, Loading::Uniform), 288.0);
        near(
            oak_shelf().stress_mpa(load * POUND, Loading::Uniform),
            288.0 * PSI,
        );
        near(INCH * 36.0, 914.4);
    }

    // Common practice, no source (ref: formulas#F11 [P]).
    #[test]
    fn sag_is_seen_beyond_a_600th_of_the_span() {
        near(36.0 * VISIBLE_SAG_OF_SPAN, 0.06);
        near(800.0 * VISIBLE_SAG_OF_SPAN, 1.3333);
    }
}
