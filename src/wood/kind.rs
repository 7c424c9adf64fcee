//! A wood by its word: solid or a panel.

use super::panels::{PANELS, PanelProduct};
use super::species::{SPECIES, Species};

/// Solid wood is this many times stiffer along its grain than across it. Common practice, no
/// source; published ratios run from about 6 to 25 (Wood Handbook Table 5-1 [M]).
const STIFFER_ALONG: f64 = 20.0;
/// Solid wood breaks across its grain at this share of its strength along it. Common practice, no
/// source, on the low side.
const STRONGER_ALONG: f64 = 30.0;
/// Solid wood under a constant load sags in years to this many times its first sag
/// (ref: formulas#F10 [V], Wood Handbook ch. 5, dry rooms).
const SOLID_CREEP: f64 = 2.0;

/// What parts are made of, as far as its figures go.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Wood {
    /// Solid wood.
    Solid(&'static Species),
    /// A panel.
    Panel(&'static PanelProduct),
}

/// The two kinds of tree that tables of fasteners tell apart.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Tree {
    /// It bears broad leaves.
    Hardwood,
    /// It bears needles.
    Softwood,
}

impl Wood {
    /// The wood that word stands for.
    pub fn by_word(word: &str) -> Option<Self> {
        Self::all().find(|wood| wood.word() == word)
    }

    /// All woods: solid ones first.
    pub fn all() -> impl Iterator<Item = Self> {
        let panels = PANELS.iter().map(Self::Panel);
        SPECIES.iter().map(Self::Solid).chain(panels)
    }

    /// Their words.
    pub fn words() -> impl Iterator<Item = &'static str> {
        Self::all().map(Self::word)
    }

    /// Its word in the language.
    pub fn word(self) -> &'static str {
        match self {
            Self::Solid(species) => species.word,
            Self::Panel(panel) => panel.word,
        }
    }

    /// Its English name, for sentences.
    pub fn name(self) -> &'static str {
        match self {
            Self::Solid(species) => species.name,
            Self::Panel(panel) => panel.name,
        }
    }

    /// Kilograms in a cubic metre, at 12 % moisture for solid wood.
    pub fn density_kg_m3(self) -> Option<f64> {
        match self {
            Self::Solid(species) => Some(species.density_kg_m3),
            Self::Panel(panel) => panel.density_kg_m3,
        }
    }

    /// Oven-dry weight over the volume at 12 % moisture; the low end of its range for a panel.
    pub fn specific_gravity(self) -> f64 {
        match self {
            Self::Solid(species) => species.specific_gravity,
            Self::Panel(panel) => panel.specific_gravity,
        }
    }

    /// Modulus of elasticity of a piece that thick, MPa, for a span along the grain or across it.
    pub fn modulus_mpa(self, thickness_mm: f64, along_grain: bool) -> f64 {
        match (self, along_grain) {
            (Self::Solid(species), true) => species.modulus_mpa,
            (Self::Solid(species), false) => species.modulus_mpa / STIFFER_ALONG,
            (Self::Panel(panel), true) => panel
                .strength_at(thickness_mm)
                .map_or(0.0, |row| row.modulus_along_mpa),
            (Self::Panel(panel), false) => panel
                .strength_at(thickness_mm)
                .map_or(0.0, |row| row.modulus_across_mpa),
        }
    }

    /// Modulus of rupture of a piece that thick, MPa, for a span along the grain or across it: the
    /// stress at which it breaks, not one to load it with (`bending::allowable_stress_mpa`).
    pub fn rupture_mpa(self, thickness_mm: f64, along_grain: bool) -> f64 {
        match (self, along_grain) {
            (Self::Solid(species), true) => species.rupture_mpa,
            (Self::Solid(species), false) => species.rupture_mpa / STRONGER_ALONG,
            (Self::Panel(panel), true) => panel
                .strength_at(thickness_mm)
                .map_or(0.0, |row| row.rupture_along_mpa),
            (Self::Panel(panel), false) => panel
                .strength_at(thickness_mm)
                .map_or(0.0, |row| row.rupture_across_mpa),
        }
    }

    /// After years a constant load sags it this many times as far as at first.
    pub fn creep(self) -> f64 {
        match self {
            Self::Solid(_) => SOLID_CREEP,
            Self::Panel(panel) => panel.creep,
        }
    }

    /// Whether it swells and shrinks so much in its plane that joints must leave it room.
    pub fn moves(self) -> bool {
        matches!(self, Self::Solid(_))
    }

    /// Whether screws and nails hold in it about as the formulas for solid wood say.
    pub fn holds_like_wood(self) -> bool {
        match self {
            Self::Solid(_) => true,
            Self::Panel(panel) => panel.holds_like_wood,
        }
    }

    /// The kind of tree it comes from.
    pub fn tree(self) -> Tree {
        let hardwood = match self {
            Self::Solid(species) => species.hardwood,
            Self::Panel(panel) => panel.hardwood,
        };
        if hardwood {
            Tree::Hardwood
        } else {
            Tree::Softwood
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_word_finds_its_wood() {
        for word in Wood::words() {
            assert_eq!(Wood::by_word(word).unwrap().word(), word);
        }
        let mut words: Vec<_> = Wood::words().collect();
        words.sort_unstable();
        words.dedup();
        assert_eq!(words.len(), SPECIES.len() + PANELS.len());
        assert_eq!(Wood::by_word("oak"), None);
    }

    #[test]
    fn nothing_is_stiffer_across_than_along() {
        for wood in Wood::all() {
            for thickness in [3.0, 12.0, 18.0, 25.0] {
                let [along, across] = [true, false].map(|along| wood.modulus_mpa(thickness, along));
                assert!(across > 0.0 && across <= along, "{}", wood.word());
                let [along, across] = [true, false].map(|along| wood.rupture_mpa(thickness, along));
                assert!(across > 0.0 && across <= along, "{}", wood.word());
            }
            assert!(wood.density_kg_m3().is_some());
        }
    }

    #[test]
    fn solid_wood_moves_and_panels_do_not() {
        assert!(Wood::by_word("white_oak").unwrap().moves());
        assert!(!Wood::by_word("mdf").unwrap().moves());
    }

    #[test]
    fn sag_after_years() {
        // ref: formulas#F10 [V] (Wood Handbook ch. 5); wood-properties, "Panels" [P].
        let creep = |word| Wood::by_word(word).unwrap().creep();
        assert!((creep("white_oak") - 2.0).abs() < 1e-9);
        assert!((creep("mdf") - 2.0).abs() < 1e-9);
        assert!((creep("particleboard") - 3.0).abs() < 1e-9);
    }
}
