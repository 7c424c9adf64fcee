//! Sizes of what people buy and the holes it needs: wood screws, nails, inserts, dowels.

use super::kind::Tree;
use crate::units::Length;

/// A wood screw of a number (gauge), with its usual holes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct WoodScrew {
    /// Its number.
    pub gauge: i64,
    /// Diameter of the shank, thousandths of an inch.
    shank_mils: i64,
    /// Root of the thread, where the table has it.
    root_mils: Option<i64>,
    /// Largest head of a flat-head screw.
    head_mils: Option<i64>,
    /// Pilot holes in softwood and hardwood, sixty-fourths of an inch.
    pilots: Option<(i64, i64)>,
    /// Clearance hole that is not below the shank, sixty-fourths of an inch.
    clearance: i64,
}

const fn screw(
    gauge: i64,
    shank_mils: i64,
    root_mils: Option<i64>,
    head_mils: Option<i64>,
    pilots: Option<(i64, i64)>,
    clearance: i64,
) -> WoodScrew {
    WoodScrew {
        gauge,
        shank_mils,
        root_mils,
        head_mils,
        pilots,
        clearance,
    }
}

/// Inch wood screws: shank by ASME B18.6.1 (0.060 + 0.013 in for each number), head by ASME B18.6
/// as a supplier prints it [V], root by NDS Table L3 [M], pilots by the usual chart [P], clearance
/// the smallest sixty-fourth that is not below the shank [D] (ref: fasteners, "Inch wood screws").
pub const WOOD_SCREWS: &[WoodScrew] = &[
    screw(2, 86, None, Some(172), None, 6),
    screw(3, 99, None, None, None, 7),
    screw(4, 112, Some(84), Some(225), Some((4, 5)), 8),
    screw(5, 125, None, Some(252), None, 8),
    screw(6, 138, Some(113), Some(279), Some((5, 6)), 9),
    screw(7, 151, Some(122), Some(305), None, 10),
    screw(8, 164, Some(131), Some(332), Some((6, 7)), 11),
    screw(9, 177, Some(142), Some(358), None, 12),
    screw(10, 190, Some(152), Some(385), Some((7, 8)), 13),
    screw(11, 203, None, None, None, 13),
    screw(12, 216, Some(171), Some(438), Some((8, 9)), 14),
    screw(14, 242, Some(196), Some(491), Some((9, 10)), 16),
    screw(16, 268, Some(209), None, None, 18),
    screw(18, 294, Some(232), None, None, 19),
    screw(20, 320, Some(255), None, None, 21),
    screw(24, 372, Some(298), None, None, 24),
];

impl WoodScrew {
    /// The screw of a number.
    pub fn by_gauge(gauge: i64) -> Option<&'static Self> {
        WOOD_SCREWS.iter().find(|screw| screw.gauge == gauge)
    }

    /// Diameter of its shank.
    pub const fn shank(&self) -> Length {
        Length::from_inch(self.shank_mils, 1000)
    }

    /// Diameter of its flat head.
    pub fn head(&self) -> Option<Length> {
        self.head_mils.map(|mils| Length::from_inch(mils, 1000))
    }

    /// Root of its thread; two thirds of the shank where no table has it.
    pub fn root(&self) -> Length {
        self.root_mils
            .map_or(self.shank() * 2 / 3, |mils| Length::from_inch(mils, 1000))
    }

    /// The usual pilot hole.
    pub fn pilot(&self, tree: Tree) -> Option<Length> {
        let (soft, hard) = self.pilots?;
        let of = match tree {
            Tree::Softwood => soft,
            Tree::Hardwood => hard,
        };
        Some(Length::from_inch(of, 64))
    }

    /// The hole its shank passes.
    pub const fn clearance(&self) -> Length {
        Length::from_inch(self.clearance, 64)
    }
}

/// Common nails: pennyweight, length and diameter in hundredths of a millimetre (ref: fasteners,
/// "Common nails" [V], Wood Handbook Table 8-1).
pub const COMMON_NAILS: &[(i64, i64, i64)] = &[
    (6, 5080, 287),
    (8, 6350, 333),
    (10, 7620, 376),
    (12, 8260, 376),
    (16, 8890, 411),
    (20, 10160, 488),
];

/// Inserts: bolt and largest usual hole in tenths of a millimetre (ref: fasteners#M10 [P], common
/// practice; the supplier's drawing wins).
const INSERT_HOLES: [(i64, i64); 5] = [(40, 60), (50, 70), (60, 85), (64, 95), (80, 110)];

/// The hole of a threaded insert for a bolt; for others than M4, M5, M6, 1/4 in and M8 that of the
/// nearest, in proportion.
pub fn insert_hole(bolt: Length) -> Length {
    let tenths = |count: i64| Length::from_nm(count * 100_000);
    let near = INSERT_HOLES
        .into_iter()
        .min_by_key(|(thread, _)| (tenths(*thread) - bolt).abs());
    let (thread, hole) = near.unwrap_or((60, 85));
    // 1/4 in is 6.35 mm: within a tenth of its row.
    if (tenths(thread) - bolt).abs() <= Length::from_nm(100_000) {
        tenths(hole)
    } else {
        bolt * hole / thread
    }
}

/// The shortest and longest usual pocket screw for a thickness of stock: that of the nearest row
/// (ref: fasteners, "Pocket screws by stock thickness" [P], common practice).
pub fn pocket_screw_lengths(stock: Length) -> (Length, Length) {
    const ROWS: [(i64, i64, i64); 8] = [
        (12, 19, 25),
        (16, 25, 32),
        (18, 32, 32),
        (19, 32, 32),
        (22, 38, 38),
        (25, 38, 38),
        (32, 51, 51),
        (38, 64, 64),
    ];
    let near = ROWS
        .into_iter()
        .min_by_key(|(thickness, ..)| (Length::from_mm(*thickness) - stock).abs());
    let (_, low, high) = near.unwrap_or((18, 32, 32));
    (Length::from_mm(low), Length::from_mm(high))
}

#[cfg(test)]
mod tests {
    use super::*;

    // ASME B18.6.1: shank = 0.060 in + 0.013 in for each number; Wood Handbook Table 8-9 agrees
    // within 0.01 mm (ref: fasteners, "Inch wood screws" [V]).
    #[test]
    fn shanks_follow_their_number() {
        for screw in WOOD_SCREWS {
            assert_eq!(screw.shank_mils, 60 + 13 * screw.gauge);
            assert!(screw.clearance() >= screw.shank());
            assert!(screw.clearance() - screw.shank() < Length::from_inch(1, 64));
            assert!(screw.root() < screw.shank());
        }
        let eight = WoodScrew::by_gauge(8).unwrap();
        assert!((eight.shank().mm() - 4.17).abs() < 0.01);
        assert_eq!(eight.pilot(Tree::Softwood), Some(Length::from_inch(3, 32)));
        assert_eq!(eight.head().map(Length::mm), Some(8.4328));
        assert_eq!(WoodScrew::by_gauge(1), None);
    }

    // ref: fasteners#M10 [P].
    #[test]
    fn inserts_take_their_hole() {
        assert_eq!(insert_hole(Length::from_mm(6)).mm(), 8.5);
        assert_eq!(insert_hole(Length::from_inch(1, 4)).mm(), 9.5);
        assert!(insert_hole(Length::from_mm(10)) > Length::from_mm(11));
    }

    // ref: fasteners, "Pocket screws by stock thickness" [P].
    #[test]
    fn pocket_screws_fit_their_stock() {
        let (low, high) = pocket_screw_lengths(Length::from_inch(3, 4));
        assert_eq!((low, high), (Length::from_mm(32), Length::from_mm(32)));
    }

    // Wood Handbook Table 8-1: an inch of length is 2d more up to 10d [V].
    #[test]
    fn nails_are_as_long_as_their_name() {
        for (penny, length, _) in COMMON_NAILS.iter().take(3) {
            let inches = 1.0 + f64::from(i32::try_from(*penny).unwrap() - 2) / 4.0;
            let found = f64::from(i32::try_from(*length).unwrap()) / 100.0;
            assert!((inches * 25.4 - found).abs() < 0.05, "{penny}d");
        }
    }
}
