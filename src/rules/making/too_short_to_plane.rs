//! A part must be planed thinner and is too short for the machine.

use crate::finding::{Finding, Findings, finding_pages};
use crate::model::MaterialForm;
use crate::rules::Facts;
use crate::units::Length;

finding_pages! {
    /// A part is thinner than the board it is cut from, so it is planed, and it is shorter than 300 mm (12 in).
    ///
    /// A planer's rollers hold nothing shorter: the piece tips into the knives and comes back. Plane a longer
    /// piece first and cut it to length after, and say so: then `allow` this finding.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material pine is board { section 22 mm by 95 mm; stock 2400 mm }
    /// part block from pine { length 120 mm; width 40 mm; thickness 12 mm }
    /// place left = block { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Lay" { add left; say "Lay it down." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material pine is board { section 22 mm by 95 mm; stock 2400 mm }
    /// part block from pine { length 400 mm; width 40 mm; thickness 12 mm }
    /// place left = block { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Lay" { add left; say "Lay it down." }
    /// ```
    ///
    /// Source: common practice, no source (ref: safety, "Operations" [P]: no stock shorter than 300 mm); the machine's manual wins.
    C005 TOO_SHORT_TO_PLANE Warning "a part too short for the planer" "it tips into the knives and is thrown back";
}

/// The shortest piece a planer takes (ref: safety, "Operations" [P]).
const SHORTEST: Length = Length::from_mm(300);

/// Looks at every part of a board.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for part in &facts.build.parts {
        let material = facts.build.material(part.material);
        let Some(MaterialForm::Board { thickness, .. }) = material.map(|material| material.form)
        else {
            continue;
        };
        let [length, _, thick] = part.size();
        if thick >= thickness || length >= SHORTEST || part.layers > 1 {
            continue;
        }
        let message = format!(
            "`{}` is planed from {} to {}, and is {} long",
            part.name,
            thickness.in_both(),
            thick.in_both(),
            length.in_both()
        );
        findings.push(
            Finding::new(&TOO_SHORT_TO_PLANE, part.span, message)
                .figure("length", length)
                .figure("at least", SHORTEST)
                .remedy("plane a longer piece and cut it up, and say so in a step, or take thinner stock"),
        );
    }
}
