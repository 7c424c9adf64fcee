//! Joints: one file a kind, each says what it cuts into both pieces, what it adds to them and
//! where its fasteners go.
//!
//! A new kind gets its word in `model::JointKind`, its file here and its line in [`make`]; the
//! compiler points at the other places. `DEVELOPERS.md` walks through one.

mod channel;
mod dado;
mod dowels;
mod glue;
mod groove;
mod inserted;
mod loose_tenons;
mod pocket_screws;
mod rabbet;
mod screws;

use super::findings::{FASTENERS_DO_NOT_FIT, JOINT_HARDWARE};
use super::piece::Piece;
use super::spacing::{Wish, long_and_short, spread};
use super::types::{Contact, Fastener, Hardware, HardwareId, HardwareKind, JointKind, PlacedId};
use crate::finding::{Finding, Findings};
use crate::geometry::{Axis, Direction};
use crate::model::JoinDesign;
use crate::units::Length;

/// Two pieces on the bench, about to be joined.
pub(super) struct Bench<'b, 'm> {
    pub(super) join: &'b JoinDesign,
    pub(super) contact: Contact,
    /// The piece that comes.
    pub(super) part: &'b mut Piece<'m>,
    /// The piece it comes to.
    pub(super) to: &'b mut Piece<'m>,
    /// The piece it comes to, by number.
    pub(super) to_id: PlacedId,
    /// The piece that comes, by number.
    pub(super) part_id: PlacedId,
    pub(super) item: Option<(HardwareId, &'b Hardware)>,
    pub(super) fasteners: Vec<Fastener>,
    pub(super) findings: &'b mut Findings,
}

/// Makes the joint: cuts both pieces, sets the fasteners.
pub(super) fn make(bench: &mut Bench<'_, '_>) {
    match bench.join.kind {
        JointKind::Glue => glue::make(bench),
        JointKind::Screws => screws::make(bench),
        JointKind::PocketScrews => pocket_screws::make(bench),
        JointKind::Dado => dado::make(bench),
        JointKind::Groove => groove::make(bench),
        JointKind::Rabbet => rabbet::make(bench),
        JointKind::Dowels => dowels::make(bench),
        JointKind::LooseTenons => loose_tenons::make(bench),
    }
}

/// Lets the coming piece grow by what the joint adds to it; done for all joints before any is made.
pub(super) fn grow(join: &JoinDesign, contact: &Contact, part: &mut Piece<'_>) {
    match join.kind {
        JointKind::Dado | JointKind::Groove | JointKind::Rabbet => {
            channel::grow(join, contact, part);
        }
        JointKind::Glue
        | JointKind::Screws
        | JointKind::PocketScrews
        | JointKind::Dowels
        | JointKind::LooseTenons => {}
    }
}

/// The kind of hardware a kind of joint is made with.
fn hardware_of(kind: JointKind) -> Option<HardwareKind> {
    match kind {
        JointKind::Screws => Some(HardwareKind::WoodScrew),
        JointKind::PocketScrews => Some(HardwareKind::PocketScrew),
        JointKind::Dowels => Some(HardwareKind::Dowel),
        JointKind::LooseTenons => Some(HardwareKind::LooseTenon),
        JointKind::Glue | JointKind::Dado | JointKind::Groove | JointKind::Rabbet => None,
    }
}

/// The item a join is made with, or the finding that it is not there or of the wrong kind.
pub(super) fn item_of<'h>(
    join: &JoinDesign,
    hardware: &'h [Hardware],
    findings: &mut Findings,
) -> Result<Option<(HardwareId, &'h Hardware)>, ()> {
    let Some(wanted) = hardware_of(join.kind) else {
        if let Some((_, span)) = join.using {
            let message = format!("a joint of kind {} uses no hardware", join.kind.word());
            findings.push(
                Finding::new(&JOINT_HARDWARE, span, message)
                    .remedy("leave `using …` out, or join by screws, dowels or loose tenons"),
            );
        }
        return Ok(None);
    };
    let Some((id, span)) = join.using else {
        let message = format!(
            "{} are made with a {}, and none is named",
            join.kind.word(),
            wanted.word()
        );
        let known: Vec<&str> = hardware
            .iter()
            .filter(|item| item.kind == wanted)
            .map(|item| item.name.as_str())
            .collect();
        let remedy = match known.first() {
            Some(name) => format!("write `by {} using {name}`", join.kind.word()),
            None => format!(
                "declare one, `hardware … is {} \"…\" {{ … }}`, and write `by {} using …`",
                wanted.word(),
                join.kind.word()
            ),
        };
        findings.push(Finding::new(&JOINT_HARDWARE, join.kind_span, message).remedy(remedy));
        return Err(());
    };
    let item = hardware.get(id.0).ok_or(())?;
    if item.kind != wanted {
        let message = format!(
            "{} are made with a {}, and `{}` is a {}",
            join.kind.word(),
            wanted.word(),
            item.name,
            item.kind.word()
        );
        findings
            .push(Finding::new(&JOINT_HARDWARE, span, message).related(item.span, "declared here"));
        return Err(());
    }
    Ok(Some((id, item)))
}

impl Bench<'_, '_> {
    /// Points of the contact where fasteners `breadth` wide go, along its longer side.
    ///
    /// None, and a finding, where they do not fit.
    fn points_along(&mut self, breadth: Length) -> Option<Vec<[Length; 3]>> {
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
    fn points_on(
        &mut self,
        axis: Axis,
        stretch: crate::geometry::Interval,
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
fn moved(mut point: [Length; 3], direction: Direction, by: Length) -> [Length; 3] {
    if let Some(slot) = point.get_mut(direction.axis().index()) {
        *slot += by * direction.sign();
    }
    point
}
