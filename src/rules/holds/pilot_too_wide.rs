//! A pilot hole is wider than the root of its screw.

use crate::build::HardwareKind;
use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;
use crate::units::Length;
use crate::wood::WOOD_SCREWS;

finding_pages! {
    /// A screw states a pilot hole that is wider than the root of its thread.
    ///
    /// The root is what is left of the screw between its threads. In a hole as wide as that, only the tips of
    /// the threads hold; in a wider one nearly nothing does. Usual are 70 per cent of the root in softwood,
    /// 90 per cent in hardwood.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 600 mm; width 200 mm }
    /// hardware screw is wood_screw { diameter 4 mm; length 45 mm; pilot 3.5 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 100 mm }
    /// join low to left by screws using screw
    /// step "Join" { add left, low; say "Join them." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 600 mm; width 200 mm }
    /// hardware screw is wood_screw { diameter 4 mm; length 45 mm; pilot 2.5 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 100 mm }
    /// join low to left by screws using screw
    /// step "Join" { add left, low; say "Join them." }
    /// ```
    ///
    /// Source: Wood Handbook ch. 8: root about two thirds of the shank, pilots 70 and 90 per cent of it (ref:
    /// fasteners#M20, M21 [V]); roots by number: NDS Table L3 [M].
    H005 PILOT_TOO_WIDE Error "a pilot hole wider than the root" "the thread bites in air";
}

/// Looks at every screw that states its pilot hole.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for item in &facts.build.hardware {
        let screws = [HardwareKind::WoodScrew, HardwareKind::PocketScrew];
        let (true, Some(diameter), Some(pilot)) =
            (screws.contains(&item.kind), item.diameter, item.pilot)
        else {
            continue;
        };
        let root = root(diameter);
        if pilot <= root {
            continue;
        }
        let message = format!(
            "the pilot hole of `{}` is {}, and the root of its thread about {}",
            item.name,
            pilot.in_both(),
            root.in_both()
        );
        findings.push(
            Finding::new(&PILOT_TOO_WIDE, item.span, message)
                .figure("pilot hole", pilot)
                .figure("root", root)
                .remedy("leave `pilot` out, and the usual hole is drilled"),
        );
    }
}

/// The root of a screw of a diameter: by its number, or two thirds of the shank.
fn root(diameter: Length) -> Length {
    let numbered = WOOD_SCREWS.iter().find(|screw| screw.shank() == diameter);
    numbered.map_or(diameter * 2 / 3, |screw| screw.root())
}
