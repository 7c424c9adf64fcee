//! Where a part is cut open: the planes that pass through its blind features.

use std::collections::BTreeSet;

use super::tags::{extent, plane};
use crate::build::Part;
use crate::geometry::{Interval, PartAxis, Side};
use crate::model::{FeatureShape, Holes, Pocket, PocketKind};
use crate::units::Length;

/// A depth that a builder sets a stop to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Depth {
    /// From the side.
    pub(super) depth: Length,
    /// What is taken out at its floor, along the two axes of the side, about the middle.
    pub(super) floor: [Length; 2],
    /// It is the depth of a bit's cone: as fine a figure as a bit's.
    pub(super) cone: bool,
}

/// One place where something is sunk into a side and does not come out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Blind {
    /// Into which side.
    pub(super) side: Side,
    /// Its mouth, along the two axes of the side.
    pub(super) mouth: [Interval; 2],
    /// Its depths, in order.
    pub(super) depths: Vec<Depth>,
    /// How far down it goes, through the part or not.
    pub(super) deep: Length,
    /// It is round, or its ends are: only a plane through its middle shows its width.
    round: bool,
    /// A channel or a mortise, not a hole.
    channel: Option<PocketKind>,
}

impl Blind {
    /// Its reach along an axis that is not its side's.
    pub(super) fn along(&self, axis: PartAxis) -> Option<Interval> {
        let mut axes = plane(self.side).into_iter().zip(self.mouth);
        axes.find(|(own, _)| *own == axis).map(|(_, reach)| reach)
    }

    /// True where a plane square to `axis` shows its depth and its width.
    fn is_cut_by(&self, axis: PartAxis, at: Length) -> bool {
        self.along(axis).is_some_and(|reach| {
            if self.round {
                reach.middle() == at
            } else {
                reach.low < at && at < reach.high
            }
        })
    }

    /// True for two that are made alike.
    fn is_like(&self, other: &Self) -> bool {
        let sizes = |blind: &Self| blind.mouth.map(Interval::size);
        self.side.axis() == other.side.axis()
            && self.channel == other.channel
            && self.depths == other.depths
            && sizes(self) == sizes(other)
    }
}

/// A plane that cuts a part.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct CuttingPlane {
    /// The axis it is square to: the length or the width.
    pub(super) axis: PartAxis,
    /// Where along it.
    pub(super) at: Length,
    /// What it shows: one of each kind, in order.
    pub(super) shown: Vec<Blind>,
}

/// No more sections than these.
const MOST_PLANES: usize = 2;

/// The planes that show the blind features of a part: the one through the most kinds first, a
/// second one where that leaves some.
pub(super) fn planes(part: &Part) -> Vec<CuttingPlane> {
    let blinds = blind_features(part);
    // The kind of each is the number of the first that is like it.
    let mut firsts: Vec<&Blind> = Vec::new();
    let mut kinds = Vec::with_capacity(blinds.len());
    for blind in &blinds {
        let known = firsts.iter().position(|first| first.is_like(blind));
        kinds.push(known.unwrap_or(firsts.len()));
        if known.is_none() {
            firsts.push(blind);
        }
    }
    // Along the length before across it: the cut lies as the part does.
    let mut wanted: BTreeSet<(bool, PartAxis, Length)> = BTreeSet::new();
    for blind in &blinds {
        for axis in [PartAxis::Width, PartAxis::Length] {
            if let Some(reach) = blind.along(axis) {
                wanted.insert((axis == PartAxis::Length, axis, reach.middle()));
            }
        }
    }
    let mut left: BTreeSet<usize> = kinds.iter().copied().collect();
    let mut found = Vec::new();
    while !left.is_empty() && found.len() < MOST_PLANES {
        let mut best: Option<(usize, CuttingPlane)> = None;
        for (_, axis, at) in &wanted {
            let mut seen = BTreeSet::new();
            let cut = blinds.iter().zip(&kinds).filter(|(blind, kind)| {
                left.contains(kind) && blind.is_cut_by(*axis, *at) && seen.insert(**kind)
            });
            let shown: Vec<Blind> = cut.map(|(blind, _)| blind.clone()).collect();
            if best.as_ref().is_none_or(|(most, _)| shown.len() > *most) {
                let plane = CuttingPlane {
                    axis: *axis,
                    at: *at,
                    shown,
                };
                best = Some((plane.shown.len(), plane));
            }
        }
        let Some((1.., plane)) = best else {
            break;
        };
        for (blind, kind) in blinds.iter().zip(&kinds) {
            if blind.is_cut_by(plane.axis, plane.at) {
                left.remove(kind);
            }
        }
        found.push(plane);
    }
    found
}

/// Everything a plane cuts, whatever its kind: for centre lines.
pub(super) fn cut_by(part: &Part, plane: &CuttingPlane) -> Vec<Blind> {
    let mut blinds = blind_features(part);
    blinds.retain(|blind| blind.is_cut_by(plane.axis, plane.at));
    blinds
}

impl Blind {
    /// True for a hole, which has an axis.
    pub(super) const fn is_hole(&self) -> bool {
        self.channel.is_none()
    }
}

fn blind_features(part: &Part) -> Vec<Blind> {
    let mut blinds = Vec::new();
    for feature in &part.features {
        match &feature.shape {
            FeatureShape::Holes(holes) => blind_holes(part, holes, &mut blinds),
            FeatureShape::Pocket(pocket) => blinds.extend(blind_pocket(part, pocket)),
            FeatureShape::Notch { .. }
            | FeatureShape::Outline(_)
            | FeatureShape::Arris { .. }
            | FeatureShape::PocketScrewHole(_)
            | FeatureShape::Slope(_)
            | FeatureShape::SplineSlot(_)
            | FeatureShape::Tenon(_) => {}
        }
    }
    blinds
}

fn blind_holes(part: &Part, holes: &Holes, blinds: &mut Vec<Blind>) {
    let through = extent(part, holes.side.axis()).size();
    let mut depths = Vec::new();
    let mut take = |depth: Length, width: Length, cone: bool| {
        if depth.is_positive() && depth < through {
            depths.push(Depth {
                depth,
                floor: [width; 2],
                cone,
            });
        }
    };
    if let Some((wide, deep)) = holes.counterbore {
        take(deep, wide, false);
    } else if let Some(mouth) = holes.countersink {
        // A cone of 90 degrees is as deep as it is wider on one side.
        take((mouth - holes.diameter).half(), holes.diameter, true);
    }
    if let Some(depth) = holes.depth {
        take(depth, holes.diameter, false);
    }
    if depths.is_empty() {
        return;
    }
    let bore = holes.counterbore.map_or(Length::ZERO, |bore| bore.0);
    let mouth = holes.countersink.unwrap_or_default();
    let wide = holes.diameter.max(bore).max(mouth);
    for at in &holes.positions {
        let about = |middle: Length| Interval::new(middle - wide.half(), middle + wide.half());
        blinds.push(Blind {
            side: holes.side,
            mouth: [about(at.x), about(at.y)],
            depths: depths.clone(),
            deep: holes.depth.unwrap_or(through),
            round: true,
            channel: None,
        });
    }
}

/// A mortise, or a channel that stops.
fn blind_pocket(part: &Part, pocket: &Pocket) -> Option<Blind> {
    let reaches = [pocket.first, pocket.second];
    let runs_out = plane(pocket.side)
        .into_iter()
        .zip(reaches)
        .any(|(axis, reach)| {
            let own = extent(part, axis);
            reach.low <= own.low && reach.high >= own.high
        });
    let closed = pocket.kind == PocketKind::Mortise || !runs_out;
    let blind = pocket.depth < extent(part, pocket.side.axis()).size();
    (closed && blind && pocket.kind != PocketKind::Rabbet).then(|| Blind {
        side: pocket.side,
        mouth: reaches,
        depths: vec![Depth {
            depth: pocket.depth,
            floor: reaches.map(Interval::size),
            cone: false,
        }],
        deep: pocket.depth,
        round: pocket.round_ends,
        channel: Some(pocket.kind),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::solid::samples::{at, holes, mm, part, pocket, span};

    #[test]
    fn the_plane_passes_through_the_most_kinds() {
        let board = part("Board", [600.0, 200.0, 18.0])
            .cut(FeatureShape::Holes(holes(
                Side::Face,
                35.0,
                Some(12.0),
                &[at(100.0, 30.0), at(500.0, 30.0)],
            )))
            .cut(FeatureShape::Holes(holes(
                Side::Face,
                5.0,
                Some(10.0),
                &[at(100.0, 150.0), at(100.0, 60.0)],
            )))
            .cut(FeatureShape::Holes(holes(
                Side::Foot,
                8.0,
                Some(25.0),
                &[at(170.0, 9.0)],
            )));
        let found = planes(&board);
        assert_eq!(found.len(), 2);
        // Across the part, both kinds of holes in the face lie in one row.
        assert_eq!((found[0].axis, found[0].at), (PartAxis::Length, mm(100.0)));
        assert_eq!(found[0].shown.len(), 2);
        // The hole in the end shows its depth in a plane along the length alone.
        assert_eq!((found[1].axis, found[1].at), (PartAxis::Width, mm(170.0)));
        assert_eq!(found[1].shown.len(), 1);
    }

    #[test]
    fn what_goes_through_or_runs_out_is_not_cut_open() {
        let plain = part("Side", [600.0, 200.0, 18.0])
            .cut(FeatureShape::Holes(holes(
                Side::Face,
                20.0,
                None,
                &[at(100.0, 30.0)],
            )))
            .cut(FeatureShape::Pocket(pocket(
                PocketKind::Dado,
                Side::Face,
                span(100.0, 118.0),
                span(0.0, 200.0),
                6.0,
            )));
        assert!(planes(&plain).is_empty());
        let stopped = plain.cut(FeatureShape::Pocket(pocket(
            PocketKind::Dado,
            Side::Face,
            span(300.0, 318.0),
            span(20.0, 200.0),
            6.0,
        )));
        let found = planes(&stopped);
        assert_eq!(found.len(), 1);
        assert_eq!((found[0].axis, found[0].at), (PartAxis::Width, mm(110.0)));
    }
}
