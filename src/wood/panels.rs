//! Panels: plywoods and boards made of strands, fibres or chips.
//!
//! Low figures of the ranges that are published, or the least a standard allows. They hold for dry
//! rooms. A maker's own figures are better where there are any.

/// What a panel bears up to a thickness, MPa.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PanelStrength {
    /// The thickest panel the row is used for, mm.
    pub up_to_mm: f64,
    /// Modulus of elasticity for a span along the panel's strong direction (the face grain).
    pub modulus_along_mpa: f64,
    /// Modulus of elasticity for a span across it.
    pub modulus_across_mpa: f64,
    /// Modulus of rupture for a span along the strong direction.
    pub rupture_along_mpa: f64,
    /// Modulus of rupture for a span across it.
    pub rupture_across_mpa: f64,
}

/// A kind of panel.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PanelProduct {
    /// Its word in the language.
    pub word: &'static str,
    /// Its English name.
    pub name: &'static str,
    /// Kilograms in a cubic metre, the mean of the usual range.
    pub density_kg_m3: Option<f64>,
    /// Oven-dry weight over volume, the low end of its range, for what holds in it.
    pub specific_gravity: f64,
    /// Whether it is made of plies or strands, so that screws and nails hold in it about as in
    /// solid wood of its weight. In fibres and chips they hold less, least in the edge.
    pub holds_like_wood: bool,
    /// Whether its veneers are of hardwood.
    pub hardwood: bool,
    /// What it bears: by thickness, the thinnest first.
    pub strength: &'static [PanelStrength],
    /// After years a constant load sags it this many times as far as at first.
    pub creep: f64,
}

impl PanelProduct {
    /// What a panel of that thickness bears: the thickest row for everything thicker.
    pub fn strength_at(&self, thickness_mm: f64) -> Option<&'static PanelStrength> {
        let fits = |row: &&PanelStrength| thickness_mm <= row.up_to_mm;
        self.strength.iter().find(fits).or(self.strength.last())
    }
}

/// A row of a panel that is as strong along as across.
const fn even(up_to_mm: f64, modulus_mpa: f64, rupture_mpa: f64) -> PanelStrength {
    row(up_to_mm, [modulus_mpa; 2], [rupture_mpa; 2])
}

/// A row: modulus and rupture along and across.
const fn row(up_to_mm: f64, modulus_mpa: [f64; 2], rupture_mpa: [f64; 2]) -> PanelStrength {
    let ([modulus_along_mpa, modulus_across_mpa], [rupture_along_mpa, rupture_across_mpa]) =
        (modulus_mpa, rupture_mpa);
    PanelStrength {
        up_to_mm,
        modulus_along_mpa,
        modulus_across_mpa,
        rupture_along_mpa,
        rupture_across_mpa,
    }
}

/// Birch plywood of 12, 15, 18 and 21 mm, characteristic values, each used for the thicknesses
/// nearest to it (ref: wood-properties, "Panels" [M], Handbook of Finnish Plywood).
const BIRCH_PLYWOOD: &[PanelStrength] = &[
    row(13.5, [10_719.0, 6_781.0], [42.9, 33.2]),
    row(16.5, [10_316.0, 7_184.0], [41.3, 33.8]),
    row(19.5, [10_048.0, 7_452.0], [40.2, 34.1]),
    row(f64::INFINITY, [9_858.0, 7_642.0], [39.4, 34.3]),
];

/// Softwood plywood: low end of the range along the face grain (ref: wood-properties, "Panels"
/// [M], Wood Handbook Table 12-1). Across it three tenths: five equal plies with the cross stiffness
/// of solid wood come to 0.31 [D]; a panel of three plies has less.
const SOFTWOOD_PLYWOOD: &[PanelStrength] = &[row(f64::INFINITY, [6_960.0, 2_088.0], [33.7, 10.1])];

/// OSB/3 of 10 to 18 mm, the least the standard allows (ref: wood-properties, "Panels" [M],
/// EN 300). Below all mill averages read in the Wood Handbook's Table 12-3 [V].
const OSB: &[PanelStrength] = &[row(f64::INFINITY, [3_500.0, 1_400.0], [20.0, 10.0])];

/// The least the standard allows for dry use (ref: wood-properties, "Panels" [M], EN 622-5). The
/// row of 12 to 19 mm serves for thinner panels, that of 19 to 30 mm for thicker ones.
const MDF: &[PanelStrength] = &[
    even(19.0, 2_200.0, 20.0),
    even(f64::INFINITY, 2_100.0, 18.0),
];

/// P2 of 13 to 20 mm, the least the standard allows (ref: wood-properties, "Panels" [M], EN 312).
const PARTICLEBOARD: &[PanelStrength] = &[even(f64::INFINITY, 1_600.0, 11.0)];

/// Low end of the range (ref: wood-properties, "Panels" [M], Wood Handbook Table 12-1).
const HARDBOARD: &[PanelStrength] = &[even(f64::INFINITY, 3_100.0, 31.0)];

/// All panels.
///
/// Creep: twice the first sag, three times for particleboard (ref: wood-properties, "Panels" [P],
/// at least that). Densities: middle of the usual range [M]; softwood plywood and hardboard from
/// their range of specific gravity [D].
pub const PANELS: &[PanelProduct] = &[
    PanelProduct {
        word: "birch_plywood",
        name: "birch plywood",
        density_kg_m3: Some(680.0),
        // 680 kg/m3 at 12 % moisture [D].
        specific_gravity: 0.60,
        holds_like_wood: true,
        hardwood: true,
        strength: BIRCH_PLYWOOD,
        creep: 2.0,
    },
    PanelProduct {
        word: "softwood_plywood",
        name: "softwood plywood",
        density_kg_m3: Some(560.0),
        specific_gravity: 0.40,
        holds_like_wood: true,
        hardwood: false,
        strength: SOFTWOOD_PLYWOOD,
        creep: 2.0,
    },
    PanelProduct {
        word: "osb",
        name: "oriented strand board (OSB)",
        density_kg_m3: Some(625.0),
        specific_gravity: 0.51,
        holds_like_wood: true,
        hardwood: false,
        strength: OSB,
        creep: 2.0,
    },
    PanelProduct {
        word: "mdf",
        name: "medium-density fibreboard (MDF)",
        density_kg_m3: Some(740.0),
        specific_gravity: 0.70,
        holds_like_wood: false,
        hardwood: false,
        strength: MDF,
        creep: 2.0,
    },
    PanelProduct {
        word: "particleboard",
        name: "particleboard",
        density_kg_m3: Some(660.0),
        specific_gravity: 0.60,
        holds_like_wood: false,
        hardwood: false,
        strength: PARTICLEBOARD,
        creep: 3.0,
    },
    PanelProduct {
        word: "hardboard",
        name: "hardboard",
        density_kg_m3: Some(950.0),
        specific_gravity: 0.90,
        holds_like_wood: false,
        hardwood: false,
        strength: HARDBOARD,
        creep: 2.0,
    },
];

#[cfg(test)]
mod tests {
    use super::*;

    fn of(word: &str) -> &'static PanelProduct {
        PANELS.iter().find(|panel| panel.word == word).unwrap()
    }

    #[test]
    fn a_plywood_bears_what_its_thickness_bears() {
        // ref: wood-properties, "Panels" [M] (Handbook of Finnish Plywood).
        let along = |mm| {
            of("birch_plywood")
                .strength_at(mm)
                .unwrap()
                .modulus_along_mpa
        };
        let rows = [
            (12.0, 10_719.0),
            (15.0, 10_316.0),
            (18.0, 10_048.0),
            (21.0, 9_858.0),
        ];
        for (thickness, modulus) in rows {
            assert!((along(thickness) - modulus).abs() < 1e-9);
        }
        assert!((along(6.5) - 10_719.0).abs() < 1e-9);
        assert!((along(40.0) - 9_858.0).abs() < 1e-9);
        assert!((along(f64::NAN) - 9_858.0).abs() < 1e-9);
        // ref: wood-properties, "Panels" [M] (EN 622-5).
        let mdf = |mm| of("mdf").strength_at(mm).unwrap().modulus_along_mpa;
        assert!((mdf(19.0) - 2_200.0).abs() < 1e-9);
        assert!((mdf(22.0) - 2_100.0).abs() < 1e-9);
    }

    #[test]
    fn five_equal_plies_across_the_face_grain() {
        // [D]: second moments of the plies, each stiff along its grain and a twentieth as stiff
        // across it: 99 and 26 parts of 125.
        let share = (26.0 + 99.0 / 20.0) / (99.0 + 26.0 / 20.0);
        let plywood = of("softwood_plywood").strength_at(18.0).unwrap();
        let ratio = plywood.modulus_across_mpa / plywood.modulus_along_mpa;
        assert!(ratio <= share && ratio > 0.95 * share);
    }

    #[test]
    fn the_standard_is_below_what_mills_make() {
        // ref: wood-properties#osb-wh [V] (Wood Handbook GTR-190 Table 12-3): lowest averages.
        let osb = of("osb").strength_at(18.0).unwrap();
        assert!(osb.modulus_along_mpa <= 4_410.0 && osb.modulus_across_mpa <= 1_920.0);
        assert!(osb.rupture_along_mpa <= 21.8 && osb.rupture_across_mpa <= 14.4);
        // ref: wood-properties#ply-sheathing [V] (open data sheet, ASTM D3043): along the face.
        let plywood = of("softwood_plywood").strength_at(18.0).unwrap();
        assert!(plywood.modulus_along_mpa <= 8_200.0 && plywood.rupture_along_mpa <= 48.3);
    }
}
