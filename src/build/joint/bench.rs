//! Two pieces on the bench, and where fasteners go on what they have in common.

use crate::build::findings::FASTENERS_DO_NOT_FIT;
use crate::build::piece::Piece;
use crate::build::spacing::{Wish, long_and_short, spread};
use crate::build::types::{Contact, Fastener, Hardware, HardwareId, HardwareKind, PlacedId};
use crate::finding::{Finding, Findings};
use crate::geometry::{Axis, Direction, Interval, PlanePoint, Side};
use crate::model::{JoinDesign, plane_axes};
use crate::units::{Area, Length};

/// Two pieces on the bench, about to be joined.
pub(in crate::build) struct Bench<'b, 'm> {
    pub(in crate::build) join: &'b JoinDesign,
    pub(in crate::build) contact: Contact,
    /// The piece that comes.
    pub(in crate::build) part: &'b mut Piece<'m>,
    /// The piece it comes to.
    pub(in crate::build) to: &'b mut Piece<'m>,
    /// The piece it comes to, by number.
    pub(in crate::build) to_id: PlacedId,
    /// The piece that comes, by number.
    pub(in crate::build) part_id: PlacedId,
    /// What the joint is made with, each of a kind it uses.
    pub(in crate::build) items: &'b [(HardwareId, &'m Hardware)],
    pub(in crate::build) fasteners: Vec<Fastener>,
    /// Where glue goes if the joint is glued; the contact, unless the joint says otherwise.
    pub(in crate::build) glue_area: Area,
    pub(in crate::build) findings: &'b mut Findings,
}

/// How a fastener passes through one piece into the other.
#[derive(Clone, Copy, Debug)]
pub(super) struct Passing {
    /// The coming piece is the first.
    pub(super) through_part: bool,
    /// The way it is driven.
    pub(super) driven: Direction,
    /// How thick the first piece is.
    pub(super) thickness: Length,
}

impl<'m> Bench<'_, 'm> {
    /// The item of a kind that the joint is made with.
    pub(super) fn item(&self, kind: HardwareKind) -> Option<(HardwareId, &'m Hardware)> {
        let mut items = self.items.iter();
        items.find(|(_, item)| item.kind == kind).copied()
    }

    /// Which piece a screw, nail or bolt passes through first, which way and how far: the thinner
    /// one, unless the author says otherwise.
    pub(super) fn passing(&self) -> Passing {
        let towards = self.contact.direction;
        let depths = [self.part.depth_along(towards), self.to.depth_along(towards)];
        let [part, to] = depths;
        let through_part = if self.join.through.contains(&self.part_id) {
            true
        } else if self.join.through.contains(&self.to_id) {
            false
        } else {
            part <= to
        };
        let (driven, thickness) = if through_part {
            (towards, part)
        } else {
            (towards.opposite(), to)
        };
        Passing {
            through_part,
            driven,
            thickness,
        }
    }

    /// Points of the contact where fasteners `breadth` wide go, along its longer side.
    ///
    /// None, and a finding, where they do not fit.
    pub(super) fn points_along(&mut self, breadth: Length) -> Option<Vec<[Length; 3]>> {
        let [(long_axis, long), (_, short)] = long_and_short(&self.contact)?;
        self.points_on(long_axis, long, breadth).filter(|_| {
            // A fastener wider than the contact breaks through beside it.
            let fits = breadth < short.size();
            if !fits {
                let message = "these are wider than what the two parts have in common";
                self.findings.push(
                    Finding::new(&FASTENERS_DO_NOT_FIT, self.join.kind_span, message)
                        .figure("breadth of the fastener", breadth)
                        .figure("breadth of the contact", short.size())
                        .remedy("use a smaller one, or let the parts touch on more breadth"),
                );
            }
            fits
        })
    }

    /// Points on the middle line of the contact along one of its axes.
    pub(super) fn points_on(
        &mut self,
        axis: Axis,
        stretch: Interval,
        breadth: Length,
    ) -> Option<Vec<[Length; 3]>> {
        let wish = Wish {
            count: self.join.count.map(|(count, _)| count),
            inset: self.join.inset.map(|(inset, _)| inset),
        };
        let places = spread(stretch, wish);
        let spacing = places
            .iter()
            .zip(places.iter().skip(1))
            .map(|(a, b)| *b - *a)
            .min()
            .unwrap_or(Length::LIMIT);
        let outside = places.iter().any(|at| !stretch.holds(*at));
        if spacing < breadth * 2 || outside {
            let message = format!(
                "{} fasteners do not fit along {}",
                places.len(),
                stretch.size().in_both()
            );
            let span = self
                .join
                .count
                .map_or(self.join.kind_span, |(_, span)| span);
            self.findings.push(
                Finding::new(&FASTENERS_DO_NOT_FIT, span, message)
                    .figure("length of the contact", stretch.size())
                    .figure("spacing they would have", spacing)
                    .figure("least spacing, two breadths", breadth * 2)
                    .remedy("use fewer, or set `inset` smaller"),
            );
            return None;
        }
        let middle = self.contact.area.map(|area| area.middle());
        let at_place = |place: Length| {
            let mut point = middle;
            if let Some(slot) = point.get_mut(axis.index()) {
                *slot = place;
            }
            point
        };
        Some(places.into_iter().map(at_place).collect())
    }
}

/// A point moved along a direction.
pub(super) fn moved(mut point: [Length; 3], direction: Direction, by: Length) -> [Length; 3] {
    if let Some(slot) = point.get_mut(direction.axis().index()) {
        *slot += by * direction.sign();
    }
    point
}

/// Points of the part's frame as positions in the plane of a side.
pub(super) fn on_plane(side: Side, points: impl Iterator<Item = [Length; 3]>) -> Vec<PlanePoint> {
    let [x, y] = plane_axes(side);
    points
        .map(|point| {
            let at = |index: usize| point.get(index).copied().unwrap_or_default();
            PlanePoint::new(at(x.index()), at(y.index()))
        })
        .collect()
}
