//! Nothing can be said of a load.

use crate::behaviour::NotJudged;
use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;

finding_pages! {
    /// A load stands on a piece that lies on fewer than two supports, or whose material states no species.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 300 mm; width 250 mm }
    /// part shelf from ply { length 500 mm; width 250 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place board = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 200 mm }
    /// place right = side { length up; width back; left at board.right; front at 0 mm; bottom at 0 mm }
    /// join board to left, right by dado { depth 6 mm; glue }
    /// load board 12 kg
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
    /// load board 12 kg
    /// step "Glue" { add left, board, right; say "Glue them." }
    /// ```
    ///
    /// Source: the language itself.
    H014 LOAD_NOT_JUDGED Note "a load that is not judged" "nobody has checked that it holds";
}

/// Looks at every load whose piece cannot be reckoned.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for sag in &facts.behaviour.sags {
        let (Err(why), Some(load)) = (sag.bending, facts.model.loads.get(sag.load)) else {
            continue;
        };
        let name = facts.build.piece(sag.piece).map_or("", |piece| &piece.name);
        let (message, remedy) = match why {
            NotJudged::NoSupports => (
                format!("`{name}` lies on fewer than two supports"),
                "load the piece that lies on others, or join it to what carries it",
            ),
            NotJudged::NoSpecies => (
                format!("the stiffness of `{name}` is not known"),
                "add a line `species …` to its material; `leafwright explain species` lists them",
            ),
        };
        findings.push(Finding::new(&LOAD_NOT_JUDGED, load.span, message).remedy(remedy));
    }
}
