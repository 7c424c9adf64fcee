//! A placed part touches nothing.

use super::sweep::near_pairs;
use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;
use crate::units::Length;

finding_pages! {
    /// A placed part touches no other part of the build.
    ///
    /// It is held by nothing. Most often it is located from the wrong face, or a gap was left
    /// where two parts should meet. A part that lies in the build loosely on purpose says so with
    /// `removable`, and is then expected to rest on something all the same.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place second = side { length up; width back; left at 300 mm; front at 0 mm; bottom at 0 mm }
    /// step "Stand them up" { add left; add second; say "Stand both up." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place second = side { length up; width back; left at left.right; front at 0 mm; bottom at 0 mm }
    /// step "Stand them up" { add left; add second; say "Stand both up." }
    /// ```
    ///
    /// Source: common practice, no source.
    F002 PART_FLOATS_FREE Warning "a part that touches nothing" "what touches nothing is held by nothing";
}

/// A part farther than this from all others floats: a fifth of a millimetre is a sliding fit.
const REACH: Length = Length::from_nm(200_000);

/// Looks for pieces without a neighbour; a build of one piece has none and needs none.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    let placed = &facts.build.placed;
    if placed.len() < 2 {
        return;
    }
    let mut touched = vec![false; placed.len()];
    near_pairs(placed, REACH, |a, b| {
        for id in [a, b] {
            if let Some(slot) = touched.get_mut(id.0) {
                *slot = true;
            }
        }
    });
    // What moves on another part keeps a gap to it.
    for joint in &facts.build.joints {
        for id in [joint.part, joint.to] {
            if let Some(slot) = touched.get_mut(id.0) {
                *slot = true;
            }
        }
    }
    for (piece, touched) in placed.iter().zip(touched) {
        if !touched {
            let message = format!("`{}` touches no other part", piece.name);
            findings.push(
                Finding::new(&PART_FLOATS_FREE, piece.span, message)
                    .remedy("locate it by the face of the part it stands on or is joined to"),
            );
        }
    }
}
