//! Hole sizes for screws where the author states none.

use super::types::Hardware;
use crate::units::Length;
use crate::wood;

/// Holes for a screw.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Drilling {
    /// Hole the screw bites in.
    pub(super) pilot: Length,
    /// Hole the screw passes through.
    pub(super) clearance: Length,
    /// Diameter of the countersink.
    pub(super) head: Length,
}

/// Metric wood screws in tenths of a millimetre: diameter, pilot for softwood and sheet goods,
/// clearance, countersink (ref: fasteners, "Metric wood screws" [P]).
const METRIC: [(i64, i64, i64, i64); 6] = [
    (30, 15, 35, 60),
    (35, 20, 40, 70),
    (40, 20, 45, 80),
    (45, 25, 50, 90),
    (50, 30, 55, 100),
    (60, 35, 65, 120),
];

/// The holes of a screw: the author's, or the usual ones of the nearest size in the table.
pub(super) fn drilling(screw: &Hardware) -> Drilling {
    let diameter = screw.diameter.unwrap_or_default();
    let tenths = |count: i64| Length::from_nm(count * 100_000);
    let nearest = METRIC
        .into_iter()
        .min_by_key(|row| (tenths(row.0) - diameter).abs());
    let (_, pilot, clearance, head) = nearest.unwrap_or((40, 20, 45, 80));
    Drilling {
        pilot: screw.pilot.unwrap_or(tenths(pilot)).min(diameter),
        clearance: screw.clearance.unwrap_or(tenths(clearance)).max(diameter),
        head: screw.head.unwrap_or(tenths(head)).max(diameter),
    }
}

/// The hole a bolt passes through: the author's, or half a millimetre more than its diameter.
pub(super) fn bolt_clearance(bolt: &Hardware) -> Length {
    let diameter = bolt.diameter.unwrap_or_default();
    let usual = diameter + Length::from_nm(500_000);
    bolt.clearance.unwrap_or(usual).max(diameter)
}

/// The hole of a threaded insert: the author's, or the usual one for the bolt it takes.
pub(super) fn insert_hole(insert: &Hardware) -> Length {
    let bolt = insert.diameter.unwrap_or_default();
    insert.pilot.unwrap_or_else(|| wood::insert_hole(bolt))
}
