//! The letters of parts run against the steps.

use std::collections::BTreeMap;

use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;
use crate::source::Span;

finding_pages! {
    /// A part is described after another one, and comes in in an earlier step.
    ///
    /// Letters follow the order of the source. Where the steps follow it too, the reader takes A, B and C from
    /// the heap first, and finds the next letter next.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part lid from ply { length 300 mm; width 200 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place cover = lid { length right; width back; left at 0 mm; front at 0 mm; bottom at left.top }
    /// join cover to left by glue
    /// step "First" { add left; say "Stand it up." }
    /// step "Second" { add cover; say "Glue it on." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part lid from ply { length 300 mm; width 200 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place cover = lid { length right; width back; left at 0 mm; front at 0 mm; bottom at left.top }
    /// join cover to left by glue
    /// step "First" { add left; say "Stand it up." }
    /// step "Second" { add cover; say "Glue it on." }
    /// ```
    ///
    /// Source: common practice, no source.
    R007 LETTERS_OUT_OF_ORDER Note "letters that jump" "the reader searches the heap for every part";
}

/// Looks at the first step of every part, in the order of the letters.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    let build = facts.build;
    // One part of the source may be made in several forms: the first of them to come in counts.
    // Parts of a sub-assembly are described apart from the plan's, and compared among themselves.
    let mut first: BTreeMap<(Option<Span>, Span), (usize, usize)> = BTreeMap::new();
    for piece in &build.placed {
        if let (Some(step), Some(part)) = (piece.step, build.part(piece.part)) {
            let group = piece
                .within
                .and_then(|id| Some(build.instances.get(id.0)?.group));
            let described = group.and_then(|id| Some(build.groups.get(id.0)?.span));
            let known = first
                .entry((described, part.span))
                .or_insert((piece.part.0, step));
            *known = (known.0.min(piece.part.0), known.1.min(step));
        }
    }
    let mut latest: Option<(usize, usize)> = None;
    let mut of = None;
    for ((described, _), (index, step)) in first {
        if of != described {
            (of, latest) = (described, None);
        }
        match latest {
            Some((before, late)) if step < late => {
                let (Some(part), Some(other)) = (build.parts.get(index), build.parts.get(before))
                else {
                    continue;
                };
                let message = format!(
                    "part {} comes in in step {}, and part {} in step {}",
                    part.label,
                    step + 1,
                    other.label,
                    late + 1
                );
                findings.push(
                    Finding::new(&LETTERS_OUT_OF_ORDER, part.span, message)
                        .related(other.span, "described before")
                        .remedy("describe parts in the order of the steps"),
                );
                // One move in the source often mends all that follow.
                return;
            }
            Some(_) | None => latest = Some((index, step)),
        }
    }
}
