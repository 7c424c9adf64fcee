//! Pocket screws: slanted, stepped holes in the coming piece, out through its end.

use super::bench::{Bench, moved};
use crate::build::drilling::drilling;
use crate::build::findings::POCKET_FACE;
use crate::build::types::{Fastener, HardwareKind};
use crate::finding::Finding;
use crate::geometry::{Axis, Direction, Side};
use crate::model::{FeatureShape, PocketScrewHole};
use crate::units::Length;

/// Slope of the hole to the face, in degrees (ref: fasteners#M01 [P]: about 15).
const SLOPE_DEGREES: f64 = 15.0;
/// Diameter of the pocket (ref: fasteners#M01 [P]: about 9.5 mm, 3/8 in).
const POCKET: Length = Length::from_nm(9_500_000);

/// Wood left before the point (ref: fasteners#M18 [P]).
const FLOOR: Length = Length::from_mm(3);

/// Drills the coming piece and sets the screws.
pub(super) fn make(bench: &mut Bench<'_, '_>) {
    let Some((id, screw)) = bench.item(HardwareKind::PocketScrew) else {
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
    let (cos, sin) = (libm::cos(slope), libm::sin(slope));
    let entry = Length::from_mm_f64(thickness.mm() / 2.0 / libm::tan(slope));
    // The drill's stop is set so that half the screw bites, less where the other part is thin.
    let room = (bench.to.depth_along(towards) - FLOOR).mm() / cos;
    let bite = (length.mm() / 2.0).min(room).max(0.0);
    let along_slope = |mm: f64| (Length::from_mm_f64(mm * cos), Length::from_mm_f64(mm * sin));
    let (ahead, behind) = (along_slope(bite), along_slope(length.mm() - bite));
    let (side, end) = (bench.part.side(face), bench.part.side(towards));
    let along_part = bench.part.orientation().part_axis(along);
    for point in points {
        let head = moved(moved(point, towards.opposite(), behind.0), face, behind.1);
        let tip = moved(moved(point, towards, ahead.0), face.opposite(), ahead.1);
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
