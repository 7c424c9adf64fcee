//! Solid woods: what clear, dry wood of a species weighs, bears and does when the air changes.
//!
//! Averages of small clear specimens at 12 % moisture content. They are not design values: a board
//! with knots is weaker, and half of all boards are below an average. The modulus comes from
//! centre-loaded beams and has the shear in it, so sag reckoned with it needs no shear term.

/// A solid wood, or a group of woods that is sold as one.
///
/// Sources: specific gravity, modulus and rupture from the Wood Handbook FPL-GTR-282, Table 5-3b
/// (teak 5-5b), converted from inch units; shrinkage from its Table 4-3 (teak 4-4), coefficients
/// from Table 13-5; density is `1000 × SG × 1.12`. Status of each row: the tests of this file.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Species {
    /// Its word in the language.
    pub word: &'static str,
    /// Its English name.
    pub name: &'static str,
    /// Whether its tree bears broad leaves. That says nothing about how hard the wood is.
    pub hardwood: bool,
    /// Oven-dry weight over the volume at 12 % moisture, against water.
    pub specific_gravity: f64,
    /// Kilograms in a cubic metre at 12 % moisture.
    pub density_kg_m3: f64,
    /// Modulus of elasticity along the grain, MPa.
    pub modulus_mpa: f64,
    /// Modulus of rupture along the grain, MPa.
    pub rupture_mpa: f64,
    /// Shrinkage across the rings from green to oven-dry, percent. White spruce has none of these
    /// four in the tables at hand: use those of Engelmann or Sitka spruce, and say so.
    pub radial_shrinkage_percent: Option<f64>,
    /// Shrinkage along the rings from green to oven-dry, percent.
    pub tangential_shrinkage_percent: Option<f64>,
    /// Change of a size across the rings per percent of moisture, as a share of that size.
    pub radial_change: Option<f64>,
    /// Change of a size along the rings per percent of moisture, as a share of that size.
    pub tangential_change: Option<f64>,
}

impl Species {
    /// The moisture content above which the wood no longer swells, percent.
    ///
    /// ref: formulas#F14: 30 [D]; 22 for western redcedar and redwood [M].
    pub fn saturation_percent(&self) -> f64 {
        match self.word {
            "western_redcedar" | "redwood_old_growth" => 22.0,
            _ => 30.0,
        }
    }

    /// The moisture content above which the wood loses no more strength, percent.
    ///
    /// ref: formulas#F19 [V] (Wood Handbook Table 5-13, by transcription).
    pub fn strength_limit_percent(&self) -> f64 {
        match self.word {
            "white_ash" | "douglas_fir_coast" => 24.0,
            "yellow_birch" => 27.0,
            "loblolly_pine" | "longleaf_pine" | "southern_pine" => 21.0,
            _ => 25.0,
        }
    }
}

/// Rows of a table: word, name, kind of tree, `[specific gravity, density, modulus, rupture]`,
/// `[radial, tangential]` shrinkage and `[radial, tangential]` change, `-` where there is none.
macro_rules! species {
    ($($word:ident, $name:literal, $tree:ident, [$gravity:literal, $density:literal,
        $modulus:literal, $rupture:literal], $shrinkage:tt, $change:tt;)*) => {
        /// All solid woods, hardwoods first, the groups of the trade last.
        ///
        /// "Southern pine" and "SPF" name market groups: their rows hold the lowest figures of the
        /// members that bear, and the highest of those that move [D]. Teak is uncertain: only its
        /// green specific gravity is published (0.55); the dry one is reckoned from it (formulas
        /// F18 [D]), and its shrinkage and its coefficients do not agree.
        pub const SPECIES: &[Species] = &[$(Species {
            word: stringify!($word),
            name: $name,
            hardwood: species!(@hardwood $tree),
            specific_gravity: $gravity,
            density_kg_m3: $density,
            modulus_mpa: $modulus,
            rupture_mpa: $rupture,
            radial_shrinkage_percent: species!(@first $shrinkage),
            tangential_shrinkage_percent: species!(@second $shrinkage),
            radial_change: species!(@first $change),
            tangential_change: species!(@second $change),
        },)*];
    };
    (@hardwood hardwood) => { true };
    (@hardwood softwood) => { false };
    (@first -) => { None };
    (@second -) => { None };
    (@first [$first:literal, $second:literal]) => { Some($first) };
    (@second [$first:literal, $second:literal]) => { Some($second) };
}

// ref: wood-properties, "Solid wood, mechanical" [V] and "Shrinkage" [V]; shrinkage [M] of red
// maple, eastern white, ponderosa pine, Sitka spruce, redwood, teak; coefficients [M] of Engelmann
// and Sitka spruce, redwood, teak.
species! {
red_oak_northern,    "northern red oak",              hardwood, [0.63, 706.0, 12548.0, 98.6], [4.0, 8.6], [0.00158, 0.00369];
white_oak,           "white oak",                     hardwood, [0.68, 762.0, 12273.0, 104.8], [5.6, 10.5], [0.00180, 0.00365];
hard_maple,          "hard maple",                    hardwood, [0.63, 706.0, 12617.0, 108.9], [4.8, 9.9], [0.00165, 0.00353];
red_maple,           "red maple",                     hardwood, [0.54, 605.0, 11307.0, 92.4], [4.0, 8.2], [0.00137, 0.00289];
yellow_birch,        "yellow birch",                  hardwood, [0.62, 694.0, 13858.0, 114.5], [7.3, 9.5], [0.00256, 0.00338];
paper_birch,         "paper birch",                   hardwood, [0.55, 616.0, 10963.0, 84.8], [6.3, 8.6], [0.00219, 0.00304];
black_walnut,        "black walnut",                  hardwood, [0.55, 616.0, 11583.0, 100.7], [5.5, 7.8], [0.00190, 0.00274];
black_cherry,        "black cherry",                  hardwood, [0.50, 560.0, 10273.0, 84.8], [3.7, 7.1], [0.00126, 0.00248];
white_ash,           "white ash",                     hardwood, [0.60, 672.0, 11997.0, 106.2], [4.9, 7.8], [0.00169, 0.00274];
american_beech,      "American beech",                hardwood, [0.64, 717.0, 11859.0, 102.7], [5.5, 11.9], [0.00190, 0.00431];
yellow_poplar,       "yellow-poplar",                 hardwood, [0.42, 470.0, 10894.0, 69.6], [4.6, 8.2], [0.00158, 0.00289];
red_alder,           "red alder",                     hardwood, [0.41, 459.0, 9515.0, 67.6], [4.4, 7.3], [0.00151, 0.00256];
basswood,            "American basswood",             hardwood, [0.37, 414.0, 10066.0, 60.0], [6.6, 9.3], [0.00230, 0.00330];
pecan,               "pecan hickory",                 hardwood, [0.66, 739.0, 11928.0, 94.5], [4.9, 8.9], [0.00169, 0.00315];
douglas_fir_coast,   "coast Douglas-fir",             softwood, [0.48, 538.0, 13445.0, 85.5], [4.8, 7.6], [0.00165, 0.00267];
loblolly_pine,       "loblolly pine",                 softwood, [0.51, 571.0, 12342.0, 88.3], [4.8, 7.4], [0.00165, 0.00259];
shortleaf_pine,      "shortleaf pine",                softwood, [0.51, 571.0, 12066.0, 90.3], [4.6, 7.7], [0.00158, 0.00271];
longleaf_pine,       "longleaf pine",                 softwood, [0.59, 661.0, 13652.0, 100.0], [5.1, 7.5], [0.00176, 0.00263];
eastern_white_pine,  "eastern white pine",            softwood, [0.35, 392.0, 8549.0, 59.3], [2.1, 6.1], [0.00071, 0.00212];
ponderosa_pine,      "ponderosa pine",                softwood, [0.40, 448.0, 8894.0, 64.8], [3.9, 6.2], [0.00133, 0.00216];
lodgepole_pine,      "lodgepole pine",                softwood, [0.41, 459.0, 9239.0, 64.8], [4.3, 6.7], [0.00148, 0.00234];
white_spruce,        "white spruce",                  softwood, [0.36, 403.0, 9860.0, 64.8], -, -;
engelmann_spruce,    "Engelmann spruce",              softwood, [0.35, 392.0, 8963.0, 64.1], [3.8, 7.1], [0.00130, 0.00248];
sitka_spruce,        "Sitka spruce",                  softwood, [0.40, 448.0, 10825.0, 70.3], [4.3, 7.5], [0.00148, 0.00263];
balsam_fir,          "balsam fir",                    softwood, [0.35, 392.0, 9997.0, 63.4], [2.9, 6.9], [0.00099, 0.00241];
western_hemlock,     "western hemlock",               softwood, [0.45, 504.0, 11238.0, 77.9], [4.2, 7.8], [0.00144, 0.00274];
western_redcedar,    "western redcedar",              softwood, [0.32, 358.0, 7653.0, 51.7], [2.4, 5.0], [0.00111, 0.00234];
redwood_old_growth,  "old-growth redwood",            softwood, [0.40, 448.0, 9239.0, 68.9], [2.6, 4.4], [0.00120, 0.00205];
teak,                "teak",                          hardwood, [0.60, 675.0, 10687.0, 100.7], [2.5, 5.8], [0.00101, 0.00186];
southern_pine,       "southern pine",                 softwood, [0.51, 571.0, 12066.0, 88.3], [5.1, 7.7], [0.00176, 0.00271];
spruce_pine_fir,     "spruce, pine or fir (SPF)",     softwood, [0.35, 392.0, 8963.0, 63.4], [4.3, 7.1], [0.00148, 0.00248];}

#[cfg(test)]
mod tests {
    use super::*;

    fn of(word: &str) -> &'static Species {
        SPECIES.iter().find(|species| species.word == word).unwrap()
    }

    #[test]
    fn words_are_words_of_the_language_and_not_twice() {
        let mut words: Vec<_> = SPECIES.iter().map(|species| species.word).collect();
        assert!(
            words
                .iter()
                .all(|word| word.chars().all(|c| c.is_ascii_lowercase() || c == '_'))
        );
        words.sort_unstable();
        words.dedup();
        assert_eq!(words.len(), SPECIES.len());
    }

    #[test]
    fn density_is_that_of_wood_with_its_water() {
        // ref: formulas#F17 [V] (Wood Handbook Eq. 4-14, by transcription), rounded to whole kg.
        for species in SPECIES {
            let reckoned = 1120.0 * species.specific_gravity;
            assert!(
                (species.density_kg_m3 - reckoned).abs() <= 0.51
                    // Teak's specific gravity is rounded, its density is not.
                    || species.word == "teak" && (species.density_kg_m3 - 675.0).abs() < 0.5,
                "{}",
                species.word
            );
        }
    }

    #[test]
    fn converted_figures_agree_with_the_printed_metric_ones() {
        // ref: wood-properties, "Solid wood, mechanical" [V] (Wood Handbook Table 5-3a, by
        // transcription): MPa as printed there, rounded to hundreds.
        let printed = [
            ("red_oak_northern", 12_500.0, 99.0),
            ("white_oak", 12_300.0, 105.0),
            ("hard_maple", 12_600.0, 109.0),
            ("red_maple", 11_300.0, 92.0),
            ("black_cherry", 10_300.0, 85.0),
            ("white_ash", 12_000.0, 106.0),
            ("american_beech", 11_900.0, 103.0),
            ("yellow_poplar", 10_900.0, 70.0),
            ("douglas_fir_coast", 13_400.0, 85.0),
            ("loblolly_pine", 12_300.0, 88.0),
            ("shortleaf_pine", 12_100.0, 90.0),
            ("longleaf_pine", 13_700.0, 100.0),
            ("ponderosa_pine", 8_900.0, 65.0),
            ("lodgepole_pine", 9_200.0, 65.0),
            ("engelmann_spruce", 8_900.0, 64.0),
            ("balsam_fir", 10_000.0, 63.0),
            ("western_hemlock", 11_300.0, 78.0),
            ("redwood_old_growth", 9_200.0, 69.0),
        ];
        for (word, modulus, rupture) in printed {
            // Both columns were rounded from the same tests: half a step of each.
            assert!((of(word).modulus_mpa - modulus).abs() <= 70.0, "{word}");
            assert!((of(word).rupture_mpa - rupture).abs() <= 0.6, "{word}");
        }
    }

    #[test]
    fn moduli_are_the_inch_figures_converted() {
        // ref: wood-properties, "Solid wood, mechanical" [V] (Wood Handbook Table 5-3b, by
        // transcription): 10^6 psi and psi.
        let inch = [
            ("red_oak_northern", 1.82, 14_300.0),
            ("yellow_birch", 2.01, 16_600.0),
            ("paper_birch", 1.59, 12_300.0),
            ("black_walnut", 1.68, 14_600.0),
            ("red_alder", 1.38, 9_800.0),
            ("basswood", 1.46, 8_700.0),
            ("pecan", 1.73, 13_700.0),
            ("eastern_white_pine", 1.24, 8_600.0),
            ("white_spruce", 1.43, 9_400.0),
            ("sitka_spruce", 1.57, 10_200.0),
            ("western_redcedar", 1.11, 7_500.0),
            ("teak", 1.55, 14_600.0),
        ];
        for (word, mega_psi, psi) in inch {
            assert!(
                (of(word).modulus_mpa - mega_psi * 6894.757).abs() < 0.6,
                "{word}"
            );
            assert!(
                (of(word).rupture_mpa - psi * 0.006_894_757).abs() < 0.06,
                "{word}"
            );
        }
    }

    #[test]
    fn only_white_spruce_lacks_its_shrinkage() {
        for species in SPECIES {
            let known = species.word != "white_spruce";
            assert_eq!(species.radial_shrinkage_percent.is_some(), known);
            assert_eq!(species.tangential_shrinkage_percent.is_some(), known);
            assert_eq!(species.radial_change.is_some(), known);
            assert_eq!(species.tangential_change.is_some(), known);
        }
    }

    #[test]
    fn a_group_is_as_weak_as_its_weakest_and_moves_as_its_liveliest() {
        // ref: wood-properties, note on market groups [D].
        let groups: [(&str, &[&str]); 2] = [
            (
                "southern_pine",
                &["loblolly_pine", "shortleaf_pine", "longleaf_pine"],
            ),
            (
                "spruce_pine_fir",
                &[
                    "lodgepole_pine",
                    "white_spruce",
                    "engelmann_spruce",
                    "balsam_fir",
                ],
            ),
        ];
        type Figure = fn(&Species) -> Option<f64>;
        let bears: [Figure; 4] = [
            |of| Some(of.specific_gravity),
            |of| Some(of.density_kg_m3),
            |of| Some(of.modulus_mpa),
            |of| Some(of.rupture_mpa),
        ];
        let moves: [Figure; 4] = [
            |of| of.radial_shrinkage_percent,
            |of| of.tangential_shrinkage_percent,
            |of| of.radial_change,
            |of| of.tangential_change,
        ];
        for (group, members) in groups {
            let all = |figure: Figure| members.iter().filter_map(move |word| figure(of(word)));
            for figure in bears {
                assert_eq!(
                    figure(of(group)),
                    all(figure).min_by(f64::total_cmp),
                    "{group}"
                );
            }
            for figure in moves {
                assert_eq!(
                    figure(of(group)),
                    all(figure).max_by(f64::total_cmp),
                    "{group}"
                );
            }
        }
    }
}
