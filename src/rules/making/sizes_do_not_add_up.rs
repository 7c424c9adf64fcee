//! Rounded sizes that make something else than the rounded whole.

use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;
use crate::stock::Sum;
use crate::units::Length;

finding_pages! {
    /// Every size is rounded by itself. Added up again as they are printed, the sizes of a row of parts can
    /// miss the size printed for the whole, and who cuts by those figures gets a gap, or a part that does
    /// not go in.
    ///
    /// One step of the rounding is left to the builder's fitting, and the cut list names the part to fit.
    /// This finding tells of more.
    ///
    /// ```wright,bad
    /// plan "Rack" {
    ///     revision "A" on 2026-01-15
    ///     round inches to 1/16 in
    /// }
    /// material ply is sheet { thickness 12 mm; stock 2440 mm by 1220 mm }
    /// part floor from ply { length 337 mm; width 200 mm }
    /// part upright from ply { length 150 mm; width 200 mm }
    /// part bay from ply { length from left.right to middle.left; width 200 mm }
    /// place base = floor { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place left = upright { length up; width back; left at 0 mm; front at 0 mm; bottom at base.top }
    /// place middle = upright { length up; width back; left at 162.5 mm; front at 0 mm; bottom at base.top }
    /// place right = upright { length up; width back; right at base.right; front at 0 mm; bottom at base.top }
    /// place near = bay { length right; width back; left at left.right; front at 0 mm; bottom at base.top + 60 mm }
    /// place far = bay { length right; width back; left at middle.right; front at 0 mm; bottom at base.top + 60 mm }
    /// join left, middle, right to base by glue
    /// join near to left, middle by glue
    /// join far to middle, right by glue
    /// step "Glue" { add base, left, middle, right, near, far; say "Glue it up." }
    /// ```
    /// ```wright,good
    /// plan "Rack" {
    ///     revision "A" on 2026-01-15
    ///     round inches to 1/64 in
    /// }
    /// material ply is sheet { thickness 12 mm; stock 2440 mm by 1220 mm }
    /// part floor from ply { length 337 mm; width 200 mm }
    /// part upright from ply { length 150 mm; width 200 mm }
    /// part bay from ply { length from left.right to middle.left; width 200 mm }
    /// place base = floor { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place left = upright { length up; width back; left at 0 mm; front at 0 mm; bottom at base.top }
    /// place middle = upright { length up; width back; left at 162.5 mm; front at 0 mm; bottom at base.top }
    /// place right = upright { length up; width back; right at base.right; front at 0 mm; bottom at base.top }
    /// place near = bay { length right; width back; left at left.right; front at 0 mm; bottom at base.top + 60 mm }
    /// place far = bay { length right; width back; left at middle.right; front at 0 mm; bottom at base.top + 60 mm }
    /// join left, middle, right to base by glue
    /// join near to left, middle by glue
    /// join far to middle, right by glue
    /// step "Glue" { add base, left, middle, right, near, far; say "Glue it up." }
    /// ```
    ///
    /// Source: arithmetic of the rounding (ref: units-and-paper, "Factors" [V]).
    C011 SIZES_DO_NOT_ADD_UP Warning "rounded sizes do not add up" "who cuts by these figures gets a gap or a part that does not go in";
}

/// Looks at every row of parts that does not add up as it is printed.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    let precision = facts.model.head.precision;
    let inch_step = Length::from_inch(1, precision.inch_denominator);
    for sum in &facts.stock.open_sums {
        if sum.inch_open.abs() > inch_step {
            tell(facts, sum, "inches", sum.inch_open, findings);
        }
        if sum.mm_open.abs() > precision.metric_step {
            tell(facts, sum, "millimetres", sum.mm_open, findings);
        }
    }
}

fn tell(facts: &Facts<'_>, sum: &Sum, figures: &str, open: Length, findings: &mut Findings) {
    let parts: Vec<_> = sum
        .parts
        .iter()
        .filter_map(|part| facts.build.part(*part))
        .collect();
    let names: Vec<String> = parts
        .iter()
        .map(|part| format!("`{}`", part.name))
        .collect();
    let Some(whole) = facts.build.part(sum.whole_of) else {
        return;
    };
    let fitted = sum.to_fit.and_then(|part| facts.build.part(part));
    let Some(at) = fitted.or_else(|| parts.first().copied()) else {
        return;
    };
    let message = format!(
        "{} make {} {} `{}` in the printed {figures}",
        names.join(", "),
        open.abs().in_both(),
        if open > Length::ZERO {
            "more than"
        } else {
            "less than"
        },
        whole.name
    );
    findings.push(
        Finding::new(&SIZES_DO_NOT_ADD_UP, at.span, message)
            .figure("what they make together", sum.whole)
            .figure("difference in print", open.abs())
            .remedy(format!(
                "round {figures} more finely in the plan block, or choose sizes that are whole steps in both systems"
            )),
    );
}
