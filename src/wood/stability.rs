//! Whether a piece of furniture stays on its feet.

/// Gravity, m/s².
pub const GRAVITY: f64 = 9.806_65;
/// A piece is called steady where what holds it down is this many times what tips it (common
/// practice, no source; ref: formulas#F29 [P]).
pub const SAFE_MARGIN: f64 = 1.5;

/// A mass and how far it lies behind the line the piece would tip over; below zero in front of it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Resting {
    /// Kilograms.
    pub kg: f64,
    /// Distance behind the line.
    pub behind_mm: f64,
}

/// What turns the piece back on its feet and what tips it, N mm (ref: formulas#F29 [D], statics;
/// a stiff floor, no anchor). Masses in front of the line tip it.
pub fn moments_n_mm(masses: &[Resting]) -> (f64, f64) {
    let moment = |mass: &Resting| mass.kg * GRAVITY * mass.behind_mm;
    let (mut restoring, mut overturning) = (0.0, 0.0);
    for mass in masses {
        let moment = moment(mass);
        if moment >= 0.0 {
            restoring += moment;
        } else {
            overturning -= moment;
        }
    }
    (restoring, overturning)
}

/// The angle at which a piece tips by itself: its centre of mass so far behind the line it tips
/// over and so high, degrees.
pub fn tipping_degrees(behind_mm: f64, high_mm: f64) -> f64 {
    libm::atan2(behind_mm, high_mm).to_degrees()
}

/// The push at a height that tips a piece of a mass, N.
pub fn tipping_push_n(kg: f64, behind_mm: f64, push_high_mm: f64) -> f64 {
    kg * GRAVITY * behind_mm / push_high_mm
}

#[cfg(test)]
mod tests {
    use super::*;

    // ref: formulas#F29 [D]: a body of 40 kg, drawers of 12 kg pulled out, 60 lbf on their front.
    #[test]
    fn open_drawers_tip() {
        let body = Resting {
            kg: 40.0,
            behind_mm: 225.0,
        };
        let drawers = Resting {
            kg: 12.0,
            behind_mm: -150.0,
        };
        let (restoring, pulled) = moments_n_mm(&[body, drawers]);
        assert!((restoring - 88_260.0).abs() < 1.0);
        let overturning = pulled + 266.9 * 250.0;
        assert!((overturning - 84_377.0).abs() < 1.0);
    }

    #[test]
    fn a_cube_tips_at_45_degrees() {
        assert!((tipping_degrees(50.0, 50.0) - 45.0).abs() < 1e-9);
        let push = tipping_push_n(10.0, 50.0, 100.0);
        assert!((push - 49.033).abs() < 0.001);
    }
}
