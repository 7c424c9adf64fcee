//! A dowel or tenon is too thick for the wood around it.

use crate::build::{Build, Joint, JointKind};
use crate::finding::{Finding, Findings, finding_pages};
use crate::model::{FeatureShape, PocketKind};
use crate::rules::Facts;
use crate::units::Length;

finding_pages! {
    /// A dowel or loose tenon is thicker than half of the part it is let into, or a tenon thicker than two
    /// fifths.
    ///
    /// A third is usual: the cheeks beside it must bear as much as it does.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 600 mm; width 200 mm }
    /// hardware peg is dowel { diameter 10 mm; length 20 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 100 mm }
    /// join low to left by dowels using peg { count 2; glue }
    /// step "Join" { add left, low; say "Join them." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 600 mm; width 200 mm }
    /// hardware peg is dowel { diameter 8 mm; length 20 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 100 mm }
    /// join low to left by dowels using peg { count 2; glue }
    /// step "Join" { add left, low; say "Join them." }
    /// ```
    ///
    /// Source: common practice, no source (ref: fasteners#M04, M08 [P]: dowels a third to half of the thickness,
    /// tenons about a third and not over half).
    H007 INSERTED_TOO_THICK Warning "a dowel or tenon too thick" "its cheeks split before it breaks";
}

/// Looks at every joint with something let in.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for joint in &facts.build.joints {
        let Some(thick) = thickness(facts.build, joint) else {
            continue;
        };
        // The breadth of what both have in common: the thinner part's thickness.
        let Some(around) = shorter_side(joint) else {
            continue;
        };
        let (most, of) = most_of(joint.kind);
        if thick * of <= around * most {
            continue;
        }
        let message = format!(
            "this is {} thick in wood that is {} thick",
            thick.in_both(),
            around.in_both()
        );
        findings.push(
            Finding::new(&INSERTED_TOO_THICK, joint.span, message)
                .figure("its thickness", thick)
                .figure("wood around it", around)
                .remedy(format!(
                    "a third, {}, is usual; {} at most",
                    (around / 3).in_both(),
                    (around * most / of).in_both()
                )),
        );
    }
}

/// The most of the wood's thickness that something let in takes.
fn most_of(kind: JointKind) -> (i64, i64) {
    if kind == JointKind::MortiseAndTenon {
        (2, 5)
    } else {
        (1, 2)
    }
}

/// How thick the dowel, loose tenon or tenon of a joint is.
fn thickness(build: &Build, joint: &Joint) -> Option<Length> {
    let item = || build.hardware.get(joint.fasteners.first()?.hardware.0);
    match joint.kind {
        JointKind::Dowels => item()?.diameter,
        JointKind::LooseTenons => item()?.thickness,
        JointKind::MortiseAndTenon => {
            let part = build.part_of(joint.to)?;
            part.features
                .iter()
                .find_map(|feature| match &feature.shape {
                    FeatureShape::Pocket(pocket)
                        if pocket.kind == PocketKind::Mortise && feature.span == joint.span =>
                    {
                        Some(pocket.first.size().min(pocket.second.size()))
                    }
                    FeatureShape::Pocket(_)
                    | FeatureShape::Holes(_)
                    | FeatureShape::Notch { .. }
                    | FeatureShape::Outline(_)
                    | FeatureShape::Arris { .. }
                    | FeatureShape::PocketScrewHole(_)
                    | FeatureShape::Slope(_)
                    | FeatureShape::SplineSlot(_)
                    | FeatureShape::Tenon(_) => None,
                })
        }
        JointKind::Glue
        | JointKind::Screws
        | JointKind::PocketScrews
        | JointKind::Dado
        | JointKind::Groove
        | JointKind::Rabbet
        | JointKind::HalfLap
        | JointKind::BoxJoint
        | JointKind::Mitre
        | JointKind::TongueAndGroove
        | JointKind::Lamination
        | JointKind::Bolts
        | JointKind::Nails
        | JointKind::Hinges
        | JointKind::Runners
        | JointKind::Strips
        | JointKind::ShelfPins
        | JointKind::Magnets => None,
    }
}

fn shorter_side(joint: &Joint) -> Option<Length> {
    let sizes = joint.contact.area.iter().map(|reach| reach.size());
    sizes.filter(|size| size.is_positive()).min()
}
