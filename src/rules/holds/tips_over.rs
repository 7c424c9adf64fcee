//! A tall, shallow piece is not tied to the wall.

use crate::build::HardwareKind;
use crate::finding::{Finding, Findings, finding_pages};
use crate::geometry::Axis;
use crate::rules::Facts;
use crate::units::Length;
use crate::wood::stability::SAFE_MARGIN;

finding_pages! {
    /// A piece 27 in (686 mm) high or more is pulled over by 15 lbf (67 N) at its upper front edge, and nothing
    /// ties it to a wall.
    ///
    /// That is a child who leans on it. A cupboard that falls kills. A piece is tied to the wall by an item of
    /// hardware of the kind `wall_fixing` that the build uses.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm; species birch_plywood }
    /// part side from ply { length 1200 mm; width 150 mm }
    /// part shelf from ply { length 300 mm; width 150 mm }
    ///
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place board = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 200 mm }
    /// place right = side { length up; width back; left at board.right; front at 0 mm; bottom at 0 mm }
    /// join board to left, right by dado { depth 6 mm; glue }
    /// step "Glue" { add left, board, right; say "Glue them." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm; species birch_plywood }
    /// part side from ply { length 1200 mm; width 150 mm }
    /// part shelf from ply { length 300 mm; width 150 mm }
    /// hardware strap is wall_fixing { use 1 }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place board = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 200 mm }
    /// place right = side { length up; width back; left at board.right; front at 0 mm; bottom at 0 mm }
    /// join board to left, right by dado { depth 6 mm; glue }
    /// step "Glue" { add left, board, right; say "Glue them." }
    /// ```
    ///
    /// Source: statics (ref: formulas#F29 [D]); height: 16 CFR 1261 (ref: safety#L17 [V]); a push of 10 lbf as in ASTM
    /// F2057-23, from memory [M], with half as much again for safety [P].
    H016 TIPS_OVER Warning "a piece that tips over" "furniture that falls kills small children";
}

/// Free-standing pieces from that height on are tested (ref: safety#L17 [V], 16 CFR 1261).
const TALL: Length = Length::from_inch(27, 1);
/// A push of 10 lbf, N (ASTM F2057-23, from memory [M]).
const PUSH_N: f64 = 44.5;

/// Looks at the whole build.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    let (Some(overall), Some(standing)) = (facts.build.overall, facts.behaviour.standing) else {
        return;
    };
    let height = overall
        .get(Axis::High.index())
        .map_or(Length::ZERO, |reach| reach.size());
    let tied = facts
        .build
        .hardware
        .iter()
        .any(|item| item.kind == HardwareKind::WallFixing && item.count > 0);
    if tied || height < TALL || standing.front_pull_n >= PUSH_N * SAFE_MARGIN {
        return;
    }
    let message = format!(
        "a pull of {:.0} N ({:.0} lbf) at the upper front edge tips it over",
        standing.front_pull_n,
        standing.front_pull_n / 4.448
    );
    findings.push(
        Finding::new(&TIPS_OVER, facts.model.head.span, message)
            .figure("height", height)
            .figure("centre of mass above the floor", Length::from_mm_f64(standing.high_mm))
            .remedy("tie it to the wall: `hardware strap is wall_fixing { use 2 }`, make it deeper or lower"),
    );
}
