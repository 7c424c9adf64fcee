//! A piece that is too small to hold while it is sawn.

use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;
use crate::stock::{Cut, Layout};
use crate::units::Length;

finding_pages! {
    /// A layout has a cut through a piece that is shorter than 300 mm (12 in): too short to guide along a fence,
    /// or short both ways where it is cut across.
    ///
    /// A short piece turns at the fence, is caught by the back of the blade and thrown, and the hands that hold it
    /// are close to the teeth. Layouts avoid such cuts where they can. Where they cannot, take longer stock, or
    /// make the cut with a hand saw or in a jig that holds the piece, say so in a step, and `allow` this finding.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 6 mm; stock 250 mm by 250 mm }
    /// part lid from ply { length 200 mm; width 120 mm }
    /// place top = lid { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Lay" { add top; say "Lay it down." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 6 mm; stock 1200 mm by 600 mm }
    /// part lid from ply { length 200 mm; width 120 mm }
    /// place top = lid { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Lay" { add top; say "Lay it down." }
    /// ```
    ///
    /// Source: common practice, no source (ref: layout-practice#P14 [P]: keep pieces above 300 mm); the machine's manual wins.
    C012 CUT_TOO_SMALL_TO_HOLD Warning "a piece too small to hold at the saw" "it turns at the fence and is thrown, with the hands close to the blade";
}

/// Looks at every cut; the smallest piece of a material is told.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for plan in facts.stock.plans() {
        let Some(material) = facts.build.material(plan.material) else {
            continue;
        };
        let small: Vec<(&Layout, &Cut)> = plan
            .layouts
            .iter()
            .flat_map(|layout| layout.cuts.iter().map(move |cut| (layout, cut)))
            .filter(|(_, cut)| cut.is_too_small_to_hold())
            .collect();
        let smallest = small.iter().min_by_key(|(_, cut)| (cut.piece, cut.setting));
        let Some((layout, cut)) = smallest else {
            continue;
        };
        let (count, go) = match small.len() {
            1 => ("a cut".to_owned(), "goes"),
            many => (format!("{many} cuts"), "go"),
        };
        let [length, width] = cut.piece.map(Length::in_both);
        let message = format!(
            "{count} of `{}` {go} through a piece too small to hold: {length} by {width} at the smallest",
            material.name
        );
        let stock = material.stock.get(layout.stock);
        let span = stock.map_or(material.span, |piece| piece.span);
        findings.push(
            Finding::new(&CUT_TOO_SMALL_TO_HOLD, span, message)
                .figure("length at the saw", cut.piece[0])
                .figure("at least", Cut::SAFE)
                .remedy(
                    "take longer stock, or saw these by hand or in a jig, and say so in a step",
                ),
        );
    }
}
