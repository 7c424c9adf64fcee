//! Lamination: broad side on broad side, glued over the whole contact.

use super::bench::Bench;
use crate::build::findings::JOINT_LIE;
use crate::finding::Finding;
use crate::geometry::PartAxis;

/// Nothing is cut; the pieces must lie broad side to broad side.
pub(super) fn make(bench: &mut Bench<'_, '_>) {
    let towards = bench.contact.direction;
    let sides = [bench.part.side(towards), bench.to.side(towards.opposite())];
    if sides.iter().all(|side| side.axis() == PartAxis::Thickness) {
        return;
    }
    let message = "these two do not lie broad side to broad side";
    bench.findings.push(
        Finding::new(&JOINT_LIE, bench.join.kind_span, message)
            .remedy("join an edge or an end by `glue`, or place the parts face to face"),
    );
}
