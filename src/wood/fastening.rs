//! What screws and nails hold in wood: averages at failure, and the few design values there are.

use super::kind::Tree;

/// Loads at failure are divided by this before anything is hung on them (ref: formulas, head
/// [P]: design values are about a fifth of ultimate ones).
pub const LOAD_DIVISOR: f64 = 5.0;
/// A screw in end grain holds this share of one in side grain, and erratically
/// (ref: fasteners#M24 [V], NDS 2018).
pub const END_GRAIN_SHARE: f64 = 0.75;
/// Root of a wood screw's thread as a share of its shank (ref: fasteners#M21 [V], Wood Handbook
/// ch. 8).
pub const ROOT_OF_SHANK: f64 = 2.0 / 3.0;
/// Length of the thread as a share of the screw's (ref: fasteners#M22 [M], ASME B18.6.1).
pub const THREAD_OF_LENGTH: f64 = 2.0 / 3.0;

/// Pilot hole as a share of the root (ref: fasteners#M20 [V], Wood Handbook 8-10).
pub fn pilot_of_root(tree: Tree) -> f64 {
    match tree {
        Tree::Softwood => 0.7,
        Tree::Hardwood => 0.9,
    }
}

/// Withdrawal of a wood screw from side grain, at failure, N: shank diameter and threaded
/// penetration in mm (ref: formulas#F20 [V], Wood Handbook GTR-282 eq. 8-10).
pub fn screw_withdrawal_n(specific_gravity: f64, diameter_mm: f64, thread_mm: f64) -> f64 {
    108.25 * specific_gravity * specific_gravity * diameter_mm * thread_mm
}

/// The design value of the same, N, before factors of duration and service (ref: formulas#F21
/// [V], NDS: 2850 G² D pounds to an inch of thread).
pub fn screw_withdrawal_design_n(specific_gravity: f64, diameter_mm: f64, thread_mm: f64) -> f64 {
    // 2850 lbf/in² in N/mm².
    let psi = 0.006_894_757_293;
    2850.0 * psi * specific_gravity * specific_gravity * diameter_mm * thread_mm
}

/// Withdrawal of a plain nail from side grain, at failure, N; nothing in end grain
/// (ref: formulas#F22 [V], Wood Handbook GTR-282 eq. 8-1).
pub fn nail_withdrawal_n(specific_gravity: f64, diameter_mm: f64, penetration_mm: f64) -> f64 {
    54.12 * libm::pow(specific_gravity, 2.5) * diameter_mm * penetration_mm
}

/// The same of a ring-shank nail: root diameter, ringed part alone (ref: formulas#F23 [V], Wood
/// Handbook GTR-282 eq. 8-2a).
pub fn ring_nail_withdrawal_n(specific_gravity: f64, root_mm: f64, ringed_mm: f64) -> f64 {
    77.57 * specific_gravity * specific_gravity * root_mm * ringed_mm
}

/// Withdrawal of a lag screw, at failure, N (ref: formulas#F24 [V], Wood Handbook GTR-282
/// eq. 8-14).
pub fn lag_withdrawal_n(specific_gravity: f64, diameter_mm: f64, thread_mm: f64) -> f64 {
    125.4 * libm::pow(specific_gravity, 1.5) * libm::pow(diameter_mm, 0.75) * thread_mm
}

/// What a fastener bears sideways.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sideways {
    /// A nail.
    Nail,
    /// A wood screw.
    Screw,
    /// A lag screw.
    Lag,
}

/// Load across a fastener at about 0.4 mm of slip, N, where it is deep enough: a screw 7, a nail
/// 10 to 14 of its diameters (ref: formulas#F25 [V], Wood Handbook GTR-282 eq. 8-2, 8-13 and
/// Table 8-4). For woods between two rows of the table, the lower row.
pub fn lateral_n(sideways: Sideways, tree: Tree, specific_gravity: f64, diameter_mm: f64) -> f64 {
    // From that specific gravity on: nails, screws, lags.
    let rows: &[(f64, [f64; 3])] = match tree {
        Tree::Hardwood => &[
            (0.0, [50.04, 23.17, 26.34]),
            (0.48, [69.5, 31.99, 29.51]),
            (0.57, [94.52, 44.13, 34.13]),
        ],
        Tree::Softwood => &[
            (0.0, [50.04, 23.17, 23.3]),
            (0.43, [62.55, 29.79, 26.34]),
            (0.48, [76.45, 36.4, 29.51]),
        ],
    };
    let row = rows
        .iter()
        .rev()
        .find(|(from, _)| specific_gravity >= *from);
    let [nail, screw, lag] = row.map_or([0.0; 3], |(_, row)| *row);
    match sideways {
        Sideways::Nail => nail * libm::pow(diameter_mm, 1.5),
        Sideways::Screw => screw * diameter_mm * diameter_mm,
        Sideways::Lag => lag * diameter_mm * diameter_mm,
    }
}

/// Bearing strength of wood under a nail or small screw, MPa (ref: formulas#F26 [V], Wood
/// Handbook GTR-282 eq. 8-3).
pub fn bearing_mpa(specific_gravity: f64) -> f64 {
    114.5 * libm::pow(specific_gravity, 1.84)
}

/// A strength at an angle to the grain, from those along and across it (Hankinson; ref:
/// formulas#F27 [V], Wood Handbook GTR-282 eq. 8-16).
pub fn at_angle(along: f64, across: f64, degrees: f64) -> f64 {
    let (sin, cos) = (
        libm::sin(degrees.to_radians()),
        libm::cos(degrees.to_radians()),
    );
    along * across / (along * sin * sin + across * cos * cos)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn near(found: f64, wanted: f64) {
        assert!((found / wanted - 1.0).abs() < 2e-4, "{found}, not {wanted}");
    }

    // Wood Handbook GTR-282 ch. 8, worked numbers (ref: formulas#F20 to F27 [D]); the first of
    // each pair read on engineering pages [V].
    #[test]
    fn screws_hold_against_pull() {
        let pound = 4.448_221_615;
        // 15 700 psi is 108.25 MPa to five figures.
        near(screw_withdrawal_n(0.7, 0.164 * 25.4, 25.4) / pound, 1261.7);
        near(screw_withdrawal_n(0.63, 4.17, 25.0), 4479.0);
        near(screw_withdrawal_n(0.42, 4.17, 25.0), 1990.7);
        near(
            screw_withdrawal_design_n(0.45, 0.19 * 25.4, 25.4) / pound,
            109.65,
        );
    }

    #[test]
    fn nails_and_lags_hold_against_pull() {
        near(nail_withdrawal_n(0.51, 3.33, 38.0), 1272.1);
        near(lag_withdrawal_n(0.51, 6.35, 40.0), 7307.9);
        // Arithmetic of the formula [D].
        near(ring_nail_withdrawal_n(0.5, 3.0, 30.0), 77.57 * 0.25 * 90.0);
    }

    #[test]
    fn fasteners_bear_sideways() {
        near(
            lateral_n(Sideways::Screw, Tree::Hardwood, 0.63, 4.17),
            767.37,
        );
        near(
            lateral_n(Sideways::Screw, Tree::Softwood, 0.35, 4.17),
            402.9,
        );
        near(bearing_mpa(0.5), 31.982);
        near(at_angle(50.0, 10.0, 45.0), 16.667);
    }

    #[test]
    fn pilots_follow_the_root() {
        // ref: fasteners, "Inch wood screws", number 8: root 0.131 in, 70 and 90 percent [D].
        let root_mm = 0.131 * 25.4;
        assert!((root_mm * pilot_of_root(Tree::Softwood) - 2.33).abs() < 0.005);
        assert!((root_mm * pilot_of_root(Tree::Hardwood) - 2.99).abs() < 0.006);
    }
}
