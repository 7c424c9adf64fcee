//! What dowels and loose tenons have in common: half in each piece, as far as the thinner allows.

use super::Bench;
use crate::build::findings::FASTENERS_DO_NOT_FIT;
use crate::finding::Finding;
use crate::units::Length;

/// Room for glue at the bottom of each hole (ref: fasteners#M05 [P]: 1 to 2 mm).
pub(super) const GLUE_ROOM: Length = Length::from_mm(1);
/// Wood left under a blind hole (ref: fasteners#M05 [P]: never closer than 3 mm to the far face).
const FLOOR: Length = Length::from_mm(3);

/// How far an inserted fastener goes into each piece.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Insertion {
    /// Into the piece that comes.
    pub(super) part: Length,
    /// Into the piece it comes to.
    pub(super) to: Length,
}

/// Halves a fastener between the pieces; the thinner takes less where it must.
pub(super) fn halve(bench: &mut Bench<'_, '_>, length: Length) -> Option<Insertion> {
    let towards = bench.contact.direction;
    let room = |depth: Length| depth - FLOOR - GLUE_ROOM;
    let part_room = room(bench.part.depth_along(towards));
    let to_room = room(bench.to.depth_along(towards));
    let to = length.half().min(to_room).max(length - part_room);
    let part = length - to;
    if to <= to_room && part <= part_room && part.is_positive() && to.is_positive() {
        return Some(Insertion { part, to });
    }
    let message = format!("{} is too long for these two parts", length.in_both());
    bench.findings.push(
        Finding::new(&FASTENERS_DO_NOT_FIT, bench.join.kind_span, message)
            .figure("room in the part that comes", part_room)
            .figure("room in the part it comes to", to_room)
            .because("a hole needs glue room and 3 mm (about 1/8 in) of wood under it")
            .remedy("use a shorter one"),
    );
    None
}
