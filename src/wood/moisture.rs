//! Wood and the damp of the air: how much water it takes up, how much it swells, what it weighs.

use super::species::Species;

/// The moisture content wood comes to in air of a temperature and a relative humidity, percent.
///
/// Below about 60 °C; humidity from 0 to just under 100 percent (ref: formulas#F16 [V], Wood
/// Handbook GTR-282 eq. 4-5).
pub fn equilibrium_percent(celsius: f64, humidity_percent: f64) -> f64 {
    let (t, h) = (celsius, humidity_percent / 100.0);
    let w = 349.0 + 1.29 * t + 0.0135 * t * t;
    let k = 0.805 + 0.000_736 * t - 0.000_002_73 * t * t;
    let k1 = 6.27 - 0.009_38 * t - 0.000_303 * t * t;
    let k2 = 1.91 + 0.0407 * t - 0.000_293 * t * t;
    let kh = k * h;
    let bound = (k1 * kh + 2.0 * k1 * k2 * kh * kh) / (1.0 + k1 * kh + k1 * k2 * kh * kh);
    1800.0 / w * (kh / (1.0 - kh) + bound)
}

/// Change of a size across the grain between two moisture contents, from the coefficient of the
/// species; both from 6 to 14 percent (ref: formulas#F12 [V], Wood Handbook GTR-190 eq. 13-2).
pub fn change_mm(size_mm: f64, coefficient: f64, from_percent: f64, to_percent: f64) -> f64 {
    size_mm * coefficient * (to_percent - from_percent)
}

/// The same outside of that range, from the shrinkage of the species; both at most 30 percent
/// (ref: formulas#F13 [V], Wood Handbook GTR-190 eq. 13-3).
pub fn change_from_shrinkage_mm(
    size_mm: f64,
    shrinkage_percent: f64,
    from_percent: f64,
    to_percent: f64,
) -> f64 {
    size_mm * (to_percent - from_percent) / (30.0 * 100.0 / shrinkage_percent - 30.0 + from_percent)
}

/// A coefficient from a shrinkage: the formula above at 10 percent (ref: formulas#F14 [D]).
pub fn coefficient(shrinkage_percent: f64, saturation_percent: f64) -> f64 {
    let (s, f) = (shrinkage_percent, saturation_percent);
    (s / f) / (100.0 - s * (f - 10.0) / f)
}

/// Shrinkage from green to a moisture content of at most 30 percent, percent
/// (ref: formulas#F15 [V], Wood Handbook GTR-282 eq. 4-9).
pub fn shrinkage_to_percent(shrinkage_percent: f64, moisture_percent: f64) -> f64 {
    shrinkage_percent * (1.0 - moisture_percent / 30.0)
}

/// Kilograms in a cubic metre of wood of a specific gravity on its volume at that moisture
/// (ref: formulas#F17 [V], Wood Handbook GTR-282 eq. 4-14).
pub fn density_kg_m3(specific_gravity: f64, moisture_percent: f64) -> f64 {
    1000.0 * specific_gravity * (1.0 + moisture_percent / 100.0)
}

/// Specific gravity at a moisture below 30 percent from the basic one
/// (ref: formulas#F18 [V], Wood Handbook GTR-282 eq. 4-13).
pub fn specific_gravity_at(basic: f64, moisture_percent: f64) -> f64 {
    basic / (1.0 - 0.265 * basic * (1.0 - moisture_percent / 30.0))
}

/// A strength at another moisture than 12 percent, from those at 12 percent and green; not for
/// impact, work or tension across the grain (ref: formulas#F19 [V], Wood Handbook GTR-282
/// eq. 5-3). `limit_percent` is where drying begins to strengthen the wood.
pub fn strength_at(at_12: f64, green: f64, limit_percent: f64, moisture_percent: f64) -> f64 {
    at_12
        * libm::pow(
            at_12 / green,
            (12.0 - moisture_percent) / (limit_percent - 12.0),
        )
}

impl Species {
    /// How much a size across the grain grows from one moisture content to another; along the
    /// rings, or square to them. None where the species has no figures.
    pub fn change_mm(
        &self,
        size_mm: f64,
        along_rings: bool,
        from_percent: f64,
        to_percent: f64,
    ) -> Option<f64> {
        let (coefficient, shrinkage) = if along_rings {
            (self.tangential_change, self.tangential_shrinkage_percent)
        } else {
            (self.radial_change, self.radial_shrinkage_percent)
        };
        let middling = 6.0..=14.0;
        if middling.contains(&from_percent) && middling.contains(&to_percent) {
            return Some(change_mm(size_mm, coefficient?, from_percent, to_percent));
        }
        Some(change_from_shrinkage_mm(
            size_mm,
            shrinkage?,
            from_percent,
            to_percent,
        ))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::wood::SPECIES;

    fn near(found: f64, wanted: f64, within: f64) {
        assert!((found - wanted).abs() <= within, "{found}, not {wanted}");
    }

    // Wood Handbook GTR-282 eq. 4-5 against a published calculator at 70 °F (ref: formulas#F16
    // [V]), and 12 percent at 20 °C and 65 percent.
    #[test]
    fn air_and_wood_come_to_an_equilibrium() {
        near(equilibrium_percent(20.0, 65.0), 12.0, 0.05);
        near(equilibrium_percent(21.1, 25.0), 5.36, 0.005);
        near(equilibrium_percent(21.1, 60.0), 10.97, 0.005);
        near(equilibrium_percent(21.1, 84.0), 17.52, 0.005);
    }

    // Wood Handbook Table 4-2, row of 70 °F, from memory (ref: formulas, "EMC" [M]).
    #[test]
    fn the_table_s_row_is_met() {
        let row = [
            (5.0, 1.3),
            (10.0, 2.5),
            (15.0, 3.5),
            (20.0, 4.5),
            (25.0, 5.4),
            (30.0, 6.2),
            (35.0, 6.9),
            (40.0, 7.7),
            (45.0, 8.5),
            (50.0, 9.2),
            (55.0, 10.1),
            (60.0, 11.0),
            (65.0, 12.0),
            (70.0, 13.1),
            (75.0, 14.4),
            (80.0, 16.0),
            (85.0, 17.9),
            (90.0, 20.5),
            (95.0, 23.9),
        ];
        for (humidity, wanted) in row {
            near(equilibrium_percent(21.1, humidity), wanted, 0.2);
        }
    }

    // Wood Handbook GTR-190 ch. 13: the printed example of white fir [V], and arithmetic [D].
    #[test]
    fn boards_swell_and_shrink() {
        near(change_mm(232.0, 0.00245, 8.0, 11.0), 1.7, 0.01);
        near(change_mm(300.0, 0.00369, 8.0, 12.0), 4.428, 1e-6);
        near(change_mm(12.0, 0.00165, 6.0, 10.0), 0.0792, 1e-6);
        near(
            change_from_shrinkage_mm(200.0, 9.9, 20.0, 8.0),
            -8.1903,
            1e-4,
        );
        near(coefficient(9.5, 30.0), 0.003_380_8, 1e-7);
        near(shrinkage_to_percent(9.9, 8.0), 7.26, 1e-9);
    }

    // Table 13-5 against Table 4-3 (ref: wood-properties, cross-check [D]): every row but those of
    // oak, which are averages of a group, and teak.
    #[test]
    fn coefficients_follow_from_shrinkage() {
        for species in SPECIES {
            let exceptions = ["red_oak_northern", "white_oak", "teak"];
            if exceptions.contains(&species.word) {
                continue;
            }
            let pairs = [
                (species.radial_shrinkage_percent, species.radial_change),
                (
                    species.tangential_shrinkage_percent,
                    species.tangential_change,
                ),
            ];
            for (shrinkage, change) in pairs {
                let Some((shrinkage, change)) = shrinkage.zip(change) else {
                    continue;
                };
                let found = coefficient(shrinkage, species.saturation_percent());
                assert!((found - change).abs() < 6e-6, "{}: {found}", species.word);
            }
        }
    }

    // Wood Handbook GTR-282 eq. 4-13, 4-14 [D]; the white ash example of ch. 5 [V].
    #[test]
    fn weight_and_strength_follow_the_moisture() {
        near(density_kg_m3(0.63, 12.0), 705.6, 0.01);
        near(specific_gravity_at(0.56, 12.0), 0.614_74, 1e-5);
        near(strength_at(103_000.0, 66_000.0, 24.0, 8.0), 119_470.0, 10.0);
    }
}
