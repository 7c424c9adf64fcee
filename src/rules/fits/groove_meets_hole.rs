//! A channel and a hole of a joint run into each other.

use crate::build::Part;
use crate::finding::{Finding, Findings, finding_pages};
use crate::geometry::{Interval, Side};
use crate::model::{Feature, FeatureShape, HolePurpose, Holes, Pocket, plane_axes};
use crate::rules::Facts;
use crate::units::Length;

finding_pages! {
    /// In one part, a channel or mortise and a joint's hole take the same wood.
    ///
    /// The bit runs off where it meets the channel, the screw has nothing to hold in, and glue runs out of the
    /// hole. Holes that the author describes may lie in channels: slots and pin rows often do.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm
    ///     groove on face at 38 mm from near width 6 mm depth 6 mm
    /// }
    /// part shelf from ply { length 300 mm; width 200 mm }
    /// hardware screw is wood_screw { diameter 4 mm; length 50 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 100 mm }
    /// join low to left by screws using screw { count 2; inset 40 mm; through left }
    /// step "Screw" { add left, low; say "Screw them." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm
    ///     groove on face at 90 mm from near width 6 mm depth 6 mm
    /// }
    /// part shelf from ply { length 300 mm; width 200 mm }
    /// hardware screw is wood_screw { diameter 4 mm; length 50 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 100 mm }
    /// join low to left by screws using screw { count 2; inset 40 mm; through left }
    /// step "Screw" { add left, low; say "Screw them." }
    /// ```
    ///
    /// Source: common practice, no source.
    F008 GROOVE_MEETS_HOLE Warning "a groove that meets a hole" "the bit runs off, and the screw holds in air";
}

/// Looks at every part with both.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for part in &facts.build.parts {
        let pockets = part
            .features
            .iter()
            .filter_map(|feature| match &feature.shape {
                FeatureShape::Pocket(pocket) => Some((feature, pocket)),
                FeatureShape::Holes(_)
                | FeatureShape::Notch { .. }
                | FeatureShape::Outline(_)
                | FeatureShape::Arris { .. }
                | FeatureShape::PocketScrewHole(_)
                | FeatureShape::Slope(_)
                | FeatureShape::SplineSlot(_)
                | FeatureShape::Tenon(_) => None,
            });
        for (feature, pocket) in pockets {
            let taken = pocket_box(part, pocket);
            let met = part
                .features
                .iter()
                .find(|other| other.span != feature.span && meets(part, other, &taken));
            if let Some(hole) = met {
                let message = format!("in `{}`, a joint's hole runs into this", part.name);
                let later = if hole.span > feature.span {
                    hole
                } else {
                    feature
                };
                let earlier = if hole.span > feature.span {
                    feature
                } else {
                    hole
                };
                findings.push(
                    Finding::new(&GROOVE_MEETS_HOLE, later.span, message)
                        .related(earlier.span, "and this is what it meets")
                        .remedy("move the groove, or give the joint another `inset` or `count`"),
                );
            }
        }
    }
}

/// The wood that a pocket takes.
fn pocket_box(part: &Part, pocket: &Pocket) -> [Interval; 3] {
    let mut taken = part.extent;
    for (axis, stretch) in plane_axes(pocket.side)
        .into_iter()
        .zip([pocket.first, pocket.second])
    {
        if let Some(slot) = taken.get_mut(axis.index()) {
            *slot = stretch;
        }
    }
    from_side(&mut taken, pocket.side, pocket.depth);
    taken
}

/// Keeps of a box what is not deeper than `depth` under a side.
fn from_side(taken: &mut [Interval; 3], side: Side, depth: Length) {
    if let Some(slot) = taken.get_mut(side.axis().index()) {
        if side.is_high() {
            slot.low = slot.low.max(slot.high - depth);
        } else {
            slot.high = slot.high.min(slot.low + depth);
        }
    }
}

/// Whether a hole that a joint drills takes of the same wood.
fn meets(part: &Part, feature: &Feature, taken: &[Interval; 3]) -> bool {
    let FeatureShape::Holes(holes) = &feature.shape else {
        return false;
    };
    if holes.purpose == HolePurpose::Described {
        return false;
    }
    (0..holes.positions.len()).any(|index| {
        let own = hole_box(part, holes, index);
        own.iter().zip(taken).all(|(a, b)| a.overlap(*b).is_some())
    })
}

fn hole_box(part: &Part, holes: &Holes, index: usize) -> [Interval; 3] {
    let mut own = part.extent;
    let Some(at) = holes.positions.get(index) else {
        return own;
    };
    for (axis, middle) in plane_axes(holes.side).into_iter().zip([at.x, at.y]) {
        if let Some(slot) = own.get_mut(axis.index()) {
            *slot = Interval::of(holes.diameter).shifted(middle - holes.diameter.half());
        }
    }
    if let Some(depth) = holes.depth {
        from_side(&mut own, holes.side, depth);
    }
    own
}
