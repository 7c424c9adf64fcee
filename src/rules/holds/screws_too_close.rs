//! Screws or nails of one joint are too close together.

use super::screwed::screwed;
use crate::build::Fastener;
use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;
use crate::units::Length;

finding_pages! {
    /// Screws or nails of one joint stand closer together than five of their diameters.
    ///
    /// Each takes a bite out of the wood that the next one holds in, and a row of them splits it.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 600 mm; width 200 mm }
    /// hardware screw is wood_screw { diameter 4 mm; length 45 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 100 mm }
    /// join low to left by screws using screw { count 10; inset 30 mm }
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
    /// join low to left by screws using screw { count 3; inset 30 mm }
    /// step "Join" { add left, low; say "Join them." }
    /// ```
    ///
    /// Source: NDS commentary, five diameters across the grain with a lead hole, from memory [M] (ref: fasteners,
    /// "Spacing, NDS commentary"); 40 mm apart is usual in furniture, common practice, no source.
    H004 SCREWS_TOO_CLOSE Warning "screws too close together" "a row of them splits the wood";
}

/// Measures from each screw to the next.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for screw in screwed(facts.build) {
        let Some(diameter) = screw.item.diameter else {
            continue;
        };
        let neighbours = screw.all.iter().zip(screw.all.iter().skip(1));
        let apart = |(a, b): (&&Fastener, &&Fastener)| {
            let ways = a.from.iter().zip(b.from).map(|(a, b)| (*a - b).abs());
            ways.max().unwrap_or_default()
        };
        let Some(closest) = neighbours.map(apart).min() else {
            continue;
        };
        let needed: Length = diameter * 5;
        if closest >= needed {
            continue;
        }
        let message = format!(
            "{} of `{}` stand {} apart",
            screw.all.len(),
            screw.item.name,
            closest.in_both()
        );
        findings.push(
            Finding::new(&SCREWS_TOO_CLOSE, screw.joint.span, message)
                .figure("distance", closest)
                .figure("at least, five diameters", needed)
                .remedy("use fewer"),
        );
    }
}
