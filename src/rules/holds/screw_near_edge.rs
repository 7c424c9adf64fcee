//! A screw or nail sits too near an edge of the wood it bites in.

use super::screwed::screwed;
use crate::build::Contact;
use crate::finding::{Finding, Findings, finding_pages};
use crate::geometry::{Axis, Interval, PartAxis};
use crate::rules::Facts;
use crate::units::Length;

finding_pages! {
    /// A screw or nail sits nearer to an edge of the part it bites in than two of its diameters, or in solid
    /// wood nearer to an end than five.
    ///
    /// Sheet goods bulge and split along their layers, solid wood splits along its grain.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 600 mm; width 200 mm }
    /// hardware screw is wood_screw { diameter 4 mm; length 45 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 100 mm }
    /// join low to left by screws using screw { count 2; inset 6 mm }
    /// step "Join" { add left, low; say "Join them." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 600 mm; width 200 mm }
    /// hardware screw is wood_screw { diameter 4 mm; length 45 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 100 mm }
    /// join low to left by screws using screw { count 2; inset 30 mm }
    /// step "Join" { add left, low; say "Join them." }
    /// ```
    ///
    /// Source: common practice, no source (ref: fasteners, "Furniture rule" [P]); five diameters from an end with a
    /// pilot hole: NDS commentary, from memory [M].
    H003 SCREW_NEAR_EDGE Warning "a screw too near an edge" "it splits the wood or bulges its face";
}

/// Looks at every screw and nail of every joint, in the piece it bites in.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for screw in screwed(facts.build) {
        let Some(diameter) = screw.item.diameter else {
            continue;
        };
        let [_, second] = screw.pieces;
        let (Some(piece), Some(part)) = (facts.build.piece(second), facts.build.part_of(second))
        else {
            continue;
        };
        let solid = facts
            .build
            .material(part.material)
            .is_some_and(|material| material.is_solid());
        let grain = if part.grain_along_length {
            PartAxis::Length
        } else {
            PartAxis::Width
        };
        let driven = screw.joint.contact.direction.axis();
        let mut worst: Option<(Length, Length, &str)> = None;
        for axis in Axis::ALL.into_iter().filter(|axis| *axis != driven) {
            let at_end = solid && piece.orientation.part_axis(axis) == grain;
            let (needed, what) = if at_end {
                (diameter * 5, "end")
            } else {
                (diameter * 2, "edge")
            };
            let reach: Interval = piece.place.get(axis.index()).copied().unwrap_or_default();
            for fastener in &screw.all {
                // A slanted screw is measured where it crosses from one piece to the other.
                let at = crossing(fastener.from, fastener.to, axis, screw.joint.contact);
                let distance = (at - reach.low).min(reach.high - at);
                if distance < needed && worst.is_none_or(|(least, ..)| distance < least) {
                    worst = Some((distance, needed, what));
                }
            }
        }
        if let Some((distance, needed, what)) = worst {
            let message = format!(
                "`{}` sits {} from an {what} of `{}`",
                screw.item.name,
                distance.in_both(),
                piece.name
            );
            findings.push(
                Finding::new(&SCREW_NEAR_EDGE, screw.joint.span, message)
                    .figure("distance", distance)
                    .figure("at least", needed)
                    .remedy(
                        "set `inset` larger, use a thinner screw, or let the part reach farther",
                    ),
            );
        }
    }
}

/// Where a fastener crosses the contact, along an axis of it.
fn crossing(from: [Length; 3], to: [Length; 3], axis: Axis, contact: Contact) -> Length {
    let at = |ends: [Length; 3], axis: Axis| ends.get(axis.index()).copied().unwrap_or_default();
    let through = contact.direction.axis();
    let (start, end) = (at(from, through), at(to, through));
    let run = end - start;
    if run == Length::ZERO {
        return at(from, axis);
    }
    let share = (contact.position - start).mm() / run.mm();
    at(from, axis) + Length::from_mm_f64((at(to, axis) - at(from, axis)).mm() * share)
}
