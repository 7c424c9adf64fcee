//! A part of solid wood is short along its grain.

use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;

finding_pages! {
    /// A part of solid wood is less than half as long along its grain as across it.
    ///
    /// Wood is many times weaker across its grain than along it: such a part splits under its own clamps, and
    /// a knock breaks it.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material oak is board { section 20 mm by 80 mm; stock 2000 mm; species white_oak }
    /// part foot from oak { length 30 mm grain; width 80 mm }
    /// place left = foot { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Stand" { add left; say "Stand it up." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material oak is board { section 20 mm by 80 mm; stock 2000 mm; species white_oak }
    /// part foot from oak { length 80 mm grain; width 30 mm }
    /// place left = foot { length back; width up; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Stand" { add left; say "Stand it up." }
    /// ```
    ///
    /// Source: common practice, no source; how much weaker: Wood Handbook, tension across the grain, from memory [M].
    H010 SHORT_GRAIN Warning "short grain" "it splits under its own clamps";
}

/// Looks at every part of a board or bar.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for part in &facts.build.parts {
        let material = facts.build.material(part.material);
        if !material.is_some_and(|material| material.is_solid()) {
            continue;
        }
        let [length, width, _] = part.size();
        let (along, across) = if part.grain_along_length {
            (length, width)
        } else {
            (width, length)
        };
        if along * 2 >= across {
            continue;
        }
        let message = format!(
            "`{}` is {} along its grain and {} across it",
            part.name,
            along.in_both(),
            across.in_both()
        );
        findings.push(
            Finding::new(&SHORT_GRAIN, part.span, message)
                .figure("along the grain", along)
                .figure("across the grain", across)
                .remedy("let the grain run along the longer side, or use a sheet"),
        );
    }
}
