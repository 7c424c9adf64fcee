//! Box joint: square fingers on the ends of both pieces, each in the gaps of the other.

use super::bench::Bench;
use super::corner::corner;
use crate::build::findings::{JOINT_LIE, JOINT_SIZES};
use crate::build::piece::Piece;
use crate::finding::Finding;
use crate::geometry::{Interval, PartAxis};
use crate::model::FeatureShape;
use crate::source::Span;
use crate::units::Area;

/// Most fingers of one corner.
const MOST_FINGERS: i64 = 199;

/// Cuts the gaps of both pieces; the first and the last finger are the coming piece's.
pub(super) fn make(bench: &mut Bench<'_, '_>) {
    let Some(corner) = corner(bench) else { return };
    let Some(stretch) = bench.contact.area.get(corner.along.index()).copied() else {
        return;
    };
    let towards = bench.contact.direction;
    let flat = |piece: &Piece<'_>, direction| piece.side(direction).axis();
    let broad = [
        bench.part.orientation().part_axis(corner.outward.axis()),
        flat(bench.to, towards),
    ];
    if broad.iter().any(|axis| *axis != PartAxis::Thickness) {
        let message = "fingers are cut through the thickness of both parts, and one lies on edge";
        bench.findings.push(
            Finding::new(&JOINT_LIE, bench.join.kind_span, message)
                .remedy("let the broad sides of both parts look into the box"),
        );
        return;
    }
    let usual = corner.coming.min(corner.receiving);
    let (wanted, span) = bench.join.width.unwrap_or((usual, bench.join.kind_span));
    let pairs = (stretch.size().nm() / wanted.nm().max(1) - 1) / 2;
    let count = pairs.clamp(0, MOST_FINGERS / 2) * 2 + 1;
    if count < 3 {
        let message = "there is no room for three fingers";
        bench.findings.push(
            Finding::new(&JOINT_SIZES, span, message)
                .figure("length of the corner", stretch.size())
                .figure("width of a finger", wanted)
                .remedy("state a smaller `width`"),
        );
        return;
    }
    let finger = |number: i64| {
        let at = |count_of: i64| stretch.low + stretch.size() * count_of / count;
        Interval::new(at(number), at(number + 1))
    };
    let statement = bench.join.span;
    for number in 0..count {
        let gap = finger(number);
        if number % 2 == 0 {
            notch(
                bench.to,
                bench.contact.area,
                corner.along.index(),
                gap,
                statement,
            );
        } else {
            let mut area = bench.contact.area;
            if let Some(slot) = area.get_mut(towards.axis().index()) {
                let beyond = bench.contact.position;
                *slot = if towards.is_positive() {
                    Interval::new(beyond, beyond + corner.receiving)
                } else {
                    Interval::new(beyond - corner.receiving, beyond)
                };
            }
            notch(bench.part, area, corner.along.index(), gap, statement);
        }
    }
    // Both ends' contact and the flanks of all fingers.
    let flanks = (corner.coming * corner.receiving).nm2() * i128::from(count - 1);
    bench.glue_area = Area::from_nm2(bench.contact.size().nm2() + flanks);
}

/// A gap through a piece's thickness.
fn notch(piece: &mut Piece<'_>, mut area: [Interval; 3], axis: usize, gap: Interval, span: Span) {
    if let Some(slot) = area.get_mut(axis) {
        *slot = gap;
    }
    let shape = FeatureShape::Notch {
        along_length: piece.in_part_frame(PartAxis::Length, &area),
        along_width: piece.in_part_frame(PartAxis::Width, &area),
    };
    piece.cut(shape, span);
}
