//! How far loaded pieces bend between what they lie on.
//!
//! A shelf is reckoned as a beam on simple supports: what a dado or a screw does against turning
//! is not counted on (ref: formulas#F05 [V]: a dadoed or screwed shelf sits between the two).

use super::{Bending, NotJudged, Sag};
use crate::build::{Build, Joint, PlacedId, PlacedPart};
use crate::geometry::{Axis, Interval, PartAxis};
use crate::model::{Load, Model};
use crate::units::Length;
use crate::wood::bending::{ALLOWABLE_OF_RUPTURE, Beam, Loading, VISIBLE_SAG_OF_SPAN};
use crate::wood::stability::GRAVITY;

/// What comes this near from below carries.
const NEAR: Length = Length::from_nm(200_000);

/// Each load of a model with what it does.
pub(super) fn sags(model: &Model, build: &Build) -> Vec<Sag> {
    let below = Below::of(build);
    let loads = model.loads.iter().enumerate();
    loads
        .map(|(index, load)| Sag {
            load: index,
            piece: load.piece,
            bending: bending(build, load, &below),
        })
        .collect()
}

/// Joints by piece, so that each load looks at its own alone.
struct Below<'b> {
    joints: Vec<Vec<&'b Joint>>,
}

impl<'b> Below<'b> {
    fn of(build: &'b Build) -> Self {
        let mut joints = vec![Vec::new(); build.placed.len()];
        for joint in &build.joints {
            for id in [joint.part, joint.to] {
                if let Some(list) = joints.get_mut(id.0) {
                    list.push(joint);
                }
            }
        }
        Self { joints }
    }
}

fn bending(build: &Build, load: &Load, below: &Below<'_>) -> Result<Bending, NotJudged> {
    let piece = build.piece(load.piece).ok_or(NotJudged::NoSupports)?;
    let part = build.part(piece.part).ok_or(NotJudged::NoSupports)?;
    let material = build.material(part.material);
    let supports = supports(build, load.piece, piece, below);
    let (axis, span) = [Axis::Across, Axis::Deep]
        .into_iter()
        .filter_map(|axis| Some((axis, clear_span(piece, &supports, axis)?)))
        .min_by_key(|(_, span)| *span)
        .ok_or(NotJudged::NoSupports)?;
    let material = material.ok_or(NotJudged::NoSpecies)?;
    let wood = material.wood().ok_or(NotJudged::NoSpecies)?;
    let size = |axis: Axis| {
        piece
            .body
            .get(axis.index())
            .map_or(0.0, |reach| reach.size().mm())
    };
    let across = if axis == Axis::Across {
        Axis::Deep
    } else {
        Axis::Across
    };
    let grain = if part.grain_along_length {
        PartAxis::Length
    } else {
        PartAxis::Width
    };
    let along_grain = piece.orientation.part_axis(axis) == grain;
    let depth_mm = size(Axis::High);
    let beam = Beam {
        span_mm: span.mm(),
        breadth_mm: size(across),
        depth_mm,
        modulus_mpa: wood.modulus_mpa(material.thickness().mm(), along_grain),
    };
    let (newtons, loading) = (
        load.kg * GRAVITY,
        if load.at_middle {
            Loading::Midspan
        } else {
            Loading::Uniform
        },
    );
    let first_mm = beam.sag_mm(newtons, loading);
    Ok(Bending {
        span,
        first_mm,
        lasting_mm: first_mm * wood.creep(),
        limit_mm: load.sag.map_or(span.mm() * VISIBLE_SAG_OF_SPAN, Length::mm),
        stress_mpa: beam.stress_mpa(newtons, loading),
        allowable_mpa: wood.rupture_mpa(material.thickness().mm(), along_grain)
            * ALLOWABLE_OF_RUPTURE,
    })
}

/// Where a piece is carried: the level stretches of what is below it and of the joints at its
/// ends and edges.
fn supports(
    build: &Build,
    id: PlacedId,
    piece: &PlacedPart,
    below: &Below<'_>,
) -> Vec<[Interval; 2]> {
    let [x, y, z] = piece.body;
    let mut supports = Vec::new();
    for (index, other) in build.placed.iter().enumerate() {
        let [ox, oy, oz] = other.body;
        if PlacedId(index) != id
            && (oz.high - z.low).abs() <= NEAR
            && let (Some(across), Some(deep)) = (x.overlap(ox), y.overlap(oy))
        {
            supports.push([across, deep]);
        }
    }
    for joint in below.joints.get(id.0).into_iter().flatten() {
        if joint.contact.direction.axis() != Axis::High {
            let [across, deep, _] = joint.contact.area;
            supports.push([across, deep]);
        }
    }
    supports
}

/// The widest gap along an axis between supports that hold the piece there; none with fewer than
/// two. A support that runs along the axis holds the piece the other way.
fn clear_span(piece: &PlacedPart, supports: &[[Interval; 2]], axis: Axis) -> Option<Length> {
    let (along, across) = if axis == Axis::Across { (0, 1) } else { (1, 0) };
    let whole = |index: usize| {
        piece
            .body
            .get(index)
            .map_or(Length::ZERO, |reach| reach.size())
    };
    let mut stretches: Vec<Interval> = supports
        .iter()
        .filter_map(|support| {
            let (own, other) = (support.get(along)?, support.get(across)?);
            // Shares of the piece: (own / whole) against (other / whole), without division.
            let own_share = i128::from(own.size().nm()) * i128::from(whole(across).nm());
            let other_share = i128::from(other.size().nm()) * i128::from(whole(along).nm());
            (own_share <= other_share || own.size() * 4 <= whole(along)).then_some(*own)
        })
        .collect();
    stretches.sort_by_key(|stretch| stretch.low);
    let mut reached = stretches.first()?.high;
    let (mut widest, mut several) = (Length::ZERO, false);
    for stretch in stretches.iter().skip(1) {
        if stretch.low > reached {
            widest = widest.max(stretch.low - reached);
            several = true;
        }
        reached = reached.max(stretch.high);
    }
    several.then_some(widest)
}
