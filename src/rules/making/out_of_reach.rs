//! No cutter reaches the floor of a cut.

use crate::finding::{Finding, Findings, finding_pages};
use crate::model::{FeatureShape, HolePurpose, PocketKind};
use crate::rules::Facts;
use crate::units::Length;

finding_pages! {
    /// A channel or mortise is more than five times as deep as it is wide, or a blind hole other than a
    /// screw's pilot more than twelve times as deep as its diameter.
    ///
    /// Router bits and twist drills are not made longer for their width: they bend, burn and break.
    /// Laps are sawn, and may be as deep as they like.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material oak is board { section 60 mm by 60 mm; stock 2000 mm }
    /// part post from oak { length 300 mm; groove on face at 20 mm from near width 4 mm depth 30 mm }
    /// place left = post { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Stand" { add left; say "Stand it up." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material oak is board { section 60 mm by 60 mm; stock 2000 mm }
    /// part post from oak { length 300 mm; groove on face at 20 mm from near width 4 mm depth 12 mm }
    /// place left = post { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Stand" { add left; say "Stand it up." }
    /// ```
    ///
    /// Source: common practice, no source.
    C006 OUT_OF_REACH Warning "a cut that no cutter reaches" "a bit that long for its width bends, burns and breaks";
}

/// Depth of a channel in widths, of a hole in diameters (common practice, no source).
const DEEPEST_CHANNEL: i64 = 5;
const DEEPEST_HOLE: i64 = 12;

/// Looks at every channel and blind hole.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for part in &facts.build.parts {
        for feature in &part.features {
            let (what, width, depth, times) = match &feature.shape {
                // A lap is sawn.
                FeatureShape::Pocket(pocket) if pocket.kind == PocketKind::Lap => continue,
                FeatureShape::Pocket(pocket) => {
                    let width: Length = pocket.first.size().min(pocket.second.size());
                    ("channel", width, pocket.depth, DEEPEST_CHANNEL)
                }
                FeatureShape::Holes(holes) if holes.purpose == HolePurpose::Pilot => continue,
                FeatureShape::Holes(holes) => match holes.depth {
                    Some(depth) => ("hole", holes.diameter, depth, DEEPEST_HOLE),
                    None => continue,
                },
                FeatureShape::Notch { .. }
                | FeatureShape::Outline(_)
                | FeatureShape::Arris { .. }
                | FeatureShape::PocketScrewHole(_)
                | FeatureShape::Slope(_)
                | FeatureShape::SplineSlot(_)
                | FeatureShape::Tenon(_) => continue,
            };
            if depth <= width * times {
                continue;
            }
            let message = format!(
                "a {what} in `{}` is {} wide and {} deep",
                part.name,
                width.in_both(),
                depth.in_both()
            );
            findings.push(
                Finding::new(&OUT_OF_REACH, feature.span, message)
                    .figure("width", width)
                    .figure("depth", depth)
                    .figure("at most", width * times)
                    .remedy("make it wider or less deep"),
            );
        }
    }
}
