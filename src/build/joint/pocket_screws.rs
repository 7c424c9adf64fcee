//! Pocket screws: slanted, stepped holes in the coming piece, out through its end.

use super::{Bench, moved};
use crate::build::drilling::drilling;
use crate::build::findings::POCKET_FACE;
use crate::build::types::Fastener;
use crate::finding::Finding;
use crate::geometry::{Axis, Direction, Side};
use crate::model::{FeatureShape, PocketScrewHole};
use crate::units::Length;

/// Slope of the hole to the face, in degrees (ref: fasteners#M01 [P]: about 15).
const SLOPE_DEGREES: f64 = 15.0;
/// Diameter of the pocket (ref: fasteners#M01 [P]: about 9.5 mm, 3/8 in).
const POCKET: Length = Length::from_nm(9_500_000);

/// Drills the coming piece and sets the screws, half their length in each piece.
pub(super) fn make(bench: &mut Bench<'_, '_>) {
    let Some((id, screw)) = bench.item else {
        return;
    };
    let length = screw.length.unwrap_or_default();
    let pilot = drilling(screw).clearance;
    let towards = bench.contact.direction;
    let usual = bench.part.orientation().outward(Side::Back);
    let (face, span) = bench.join.from.unwrap_or((usual, bench.join.kind_span));
    if face.axis() == towards.axis() {
        tell_face(bench, face, span);
        return;
    }
    let thickness = bench.part.depth_along(face);
    let Some(along) = Axis::ALL
        .into_iter()
        .find(|axis| *axis != face.axis() && *axis != towards.axis())
    else {
        return;
    };
    let Some(stretch) = bench.contact.area.get(along.index()).copied() else {
        return;
    };
    let Some(points) = bench.points_on(along, stretch, POCKET) else {
        return;
    };
    let slope = SLOPE_DEGREES.to_radians();
    let entry = Length::from_mm_f64(thickness.mm() / 2.0 / libm::tan(slope));
    let (forward, sideways) = (
        Length::from_mm_f64(length.mm() / 2.0 * libm::cos(slope)),
        Length::from_mm_f64(length.mm() / 2.0 * libm::sin(slope)),
    );
    let (side, end) = (bench.part.side(face), bench.part.side(towards));
    let along_part = bench.part.orientation().part_axis(along);
    for point in points {
        let head = moved(moved(point, towards.opposite(), forward), face, sideways);
        let tip = moved(moved(point, towards, forward), face.opposite(), sideways);
        bench.fasteners.push(Fastener {
            hardware: id,
            from: head,
            to: tip,
            driven: towards,
        });
        let in_part = bench.part.point_in_part(&point);
        let position = in_part.get(along_part.index()).copied().unwrap_or_default();
        let hole = PocketScrewHole {
            side,
            end,
            position,
            diameter: POCKET,
            pilot,
            entry,
        };
        bench
            .part
            .cut(FeatureShape::PocketScrewHole(hole), bench.join.span);
    }
}

fn tell_face(bench: &mut Bench<'_, '_>, face: Direction, span: crate::source::Span) {
    let message = format!(
        "the {} face looks along the joint, not beside it",
        face.word()
    );
    let free: Vec<String> = Direction::ALL
        .into_iter()
        .filter(|direction| direction.axis() != bench.contact.direction.axis())
        .map(|direction| format!("`from {}`", direction.word()))
        .collect();
    bench.findings.push(
        Finding::new(&POCKET_FACE, span, message).remedy(format!("write {}", free.join(" or "))),
    );
}
