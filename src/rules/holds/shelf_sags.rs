//! A loaded piece bends more than it may.

use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;
use crate::units::Length;

finding_pages! {
    /// A piece that carries a load bends so far that it is seen, or farther than the author allows, or is
    /// stressed more than such stock is loaded to.
    ///
    /// Reckoned as a beam on simple supports, with the average stiffness of the species. After years under the
    /// load wood sags to twice what it did at first, particleboard to three times: that is what counts. What
    /// is seen is a six-hundredth of the span (0.02 in a foot), where the author does not say `sag`.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm; species mdf }
    /// part side from ply { length 300 mm; width 250 mm }
    /// part shelf from ply { length 800 mm; width 250 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place board = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 200 mm }
    /// place right = side { length up; width back; left at board.right; front at 0 mm; bottom at 0 mm }
    /// join board to left, right by dado { depth 6 mm; glue }
    /// load board 24 kg
    /// step "Glue" { add left, board, right; say "Glue them." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm; species mdf }
    /// part side from ply { length 300 mm; width 250 mm }
    /// part shelf from ply { length 500 mm; width 250 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place board = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 200 mm }
    /// place right = side { length up; width back; left at board.right; front at 0 mm; bottom at 0 mm }
    /// join board to left, right by dado { depth 6 mm; glue }
    /// load board 5 kg
    /// step "Glue" { add left, board, right; say "Glue them." }
    /// ```
    ///
    /// Source: Wood Handbook FPL-GTR-282 ch. 9, eq. 9-2 (ref: formulas#F03, F04 [V]); creep: ch. 5 (F10 [V]); the limit:
    /// common practice, no source (F11 [P]).
    H013 SHELF_SAGS Warning "a shelf that sags" "it sags in sight, and more every year";
}

/// Looks at every load whose piece can be reckoned.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for sag in &facts.behaviour.sags {
        let (Ok(bending), Some(load)) = (sag.bending, facts.model.loads.get(sag.load)) else {
            continue;
        };
        let name = facts.build.piece(sag.piece).map_or("", |piece| &piece.name);
        if bending.stress_mpa > bending.allowable_mpa {
            let message = format!(
                "`{name}` is stressed to {:.1} MPa ({:.0} psi), and {:.1} MPa ({:.0} psi) are allowed",
                bending.stress_mpa,
                bending.stress_mpa * PSI,
                bending.allowable_mpa,
                bending.allowable_mpa * PSI
            );
            findings.push(
                Finding::new(&SHELF_SAGS, load.span, message)
                    .figure("span", bending.span)
                    .because("a quarter of what breaks it is what clear stock is loaded to")
                    .remedy("carry it in the middle, make it thicker, or load it less"),
            );
        } else if bending.lasting_mm > bending.limit_mm {
            let lasting = Length::from_mm_f64(bending.lasting_mm);
            let message = format!("`{name}` sags {} in time", lasting.in_both());
            findings.push(
                Finding::new(&SHELF_SAGS, load.span, message)
                    .figure("span", bending.span)
                    .figure("at first", Length::from_mm_f64(bending.first_mm))
                    .figure("in time", lasting)
                    .figure("at most", Length::from_mm_f64(bending.limit_mm))
                    .remedy("carry it in the middle, make it thicker, give it a stiff front edge, or load it less"),
            );
        }
    }
}

/// Pounds on a square inch in a megapascal.
const PSI: f64 = 145.037_738;
