//! A grid of holes leaves too little wood at an edge.

use crate::finding::{Finding, Findings, finding_pages};
use crate::geometry::PlanePoint;
use crate::model::{FeatureShape, plane_axes};
use crate::rules::Facts;
use crate::units::Length;

finding_pages! {
    /// Between the outer holes of a grid and the part's edge there is less wood than a hole is wide.
    ///
    /// Wood as thin as that breaks out when the bit comes through, or when a clamp pulls at the hole.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm
    ///     holes on face diameter 20 mm grid 3 by 2 pitch 96 mm by 96 mm at 25 mm from foot, 50 mm from near
    /// }
    /// place left = side { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Lay" { add left; say "Lay it down." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm
    ///     holes on face diameter 20 mm grid 3 by 2 pitch 96 mm by 96 mm at 48 mm from foot, 50 mm from near
    /// }
    /// place left = side { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Lay" { add left; say "Lay it down." }
    /// ```
    ///
    /// Source: common practice, no source (ref: layout-practice#P30 [P]: one diameter of wood to any edge).
    F009 GRID_NEAR_EDGE Warning "a grid of holes near an edge" "the wood between hole and edge breaks out";
}

/// Looks at the grids of every part.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for part in &facts.build.parts {
        for feature in &part.features {
            let FeatureShape::Holes(holes) = &feature.shape else {
                continue;
            };
            if holes.grid.is_none() {
                continue;
            }
            let margin = |at: &PlanePoint| -> Option<Length> {
                let ways = plane_axes(holes.side).into_iter().zip([at.x, at.y]);
                ways.filter_map(|(axis, middle)| {
                    let reach = part.extent.get(axis.index())?;
                    Some((middle - reach.low).min(reach.high - middle) - holes.diameter.half())
                })
                .min()
            };
            let Some(least) = holes.positions.iter().filter_map(margin).min() else {
                continue;
            };
            // A hole that breaks through the edge has a finding of its own.
            if !least.is_positive() || least >= holes.diameter {
                continue;
            }
            let message = format!(
                "the outer holes leave {} of wood at the edge",
                least.in_both()
            );
            findings.push(
                Finding::new(&GRID_NEAR_EDGE, feature.span, message)
                    .figure("wood at the edge", least)
                    .figure("at least, one diameter", holes.diameter)
                    .remedy("begin the grid farther in, or take a row out"),
            );
        }
    }
}
