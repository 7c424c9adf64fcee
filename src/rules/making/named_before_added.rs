//! A step speaks of a part that is not there yet.

use std::collections::BTreeSet;

use crate::build::WordingPiece;
use crate::finding::{Finding, Findings, finding_pages};
use crate::model::PartId;
use crate::rules::Facts;

finding_pages! {
    /// The text of a step that adds parts names another part, none of which has come in yet.
    ///
    /// A reader who does as the step says has nothing to do it with. A step that adds nothing may name what
    /// it prepares.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part lid from ply { length 300 mm; width 200 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place cover = lid { length right; width back; left at 0 mm; front at 0 mm; bottom at left.top }
    /// join cover to left by glue
    /// step "First" { add left; say "Stand {left} up and glue {cover} on." }
    /// step "Second" { add cover; say "Clamp it." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part lid from ply { length 300 mm; width 200 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place cover = lid { length right; width back; left at 0 mm; front at 0 mm; bottom at left.top }
    /// join cover to left by glue
    /// step "First" { add left; say "Stand {left} up." }
    /// step "Second" { add cover; say "Glue {cover} on." }
    /// ```
    ///
    /// Source: the language itself.
    C009 NAMED_BEFORE_ADDED Note "a step that speaks of a later part" "the reader has nothing to do it with";
}

/// Looks at the texts of steps that add something.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    let mut there: BTreeSet<PartId> = BTreeSet::new();
    for step in &facts.build.steps {
        let added = step.adds.iter().filter_map(|id| facts.build.piece(*id));
        there.extend(added.map(|piece| piece.part));
        if step.adds.is_empty() {
            continue;
        }
        let mut told = BTreeSet::new();
        for piece in step.says.iter().flat_map(|text| &text.pieces) {
            let part = match piece {
                WordingPiece::Part(part, _) => *part,
                WordingPiece::Plain(_)
                | WordingPiece::Length(_)
                | WordingPiece::Value(_)
                | WordingPiece::Message(_)
                | WordingPiece::Whole(..) => continue,
            };
            let comes = facts.build.placed.iter().filter(|one| one.part == part);
            let Some(later) = comes.filter_map(|one| one.step).min() else {
                continue;
            };
            if there.contains(&part) || !told.insert(part) {
                continue;
            }
            let title = facts.build.part(part).map_or("", |part| &part.title);
            let message = format!("\"{title}\" first comes in in step {}", later + 1);
            findings.push(
                Finding::new(&NAMED_BEFORE_ADDED, step.span, message)
                    .remedy("tell it in that step, or add the part in this one"),
            );
        }
    }
}
