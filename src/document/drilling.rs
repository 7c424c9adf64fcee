//! The drilling schedule: every bit with its depths, and where it drills how many holes, so that
//! a bit is chucked and its stop set once.

use std::collections::BTreeMap;

use serde::Serialize;

use super::context::Facts;
use super::measure::Measure;
use crate::build::Part;
use crate::geometry::Side;
use crate::model::{FeatureShape, HolePurpose};
use crate::units::Length;

/// A bit at one depth.
#[derive(Clone, Debug, Serialize)]
pub(super) struct Bit {
    diameter: Measure,
    /// None for holes that go through.
    depth: Option<Measure>,
    /// What the holes are for: `screw`, `bite`, `dowel`, `bolt`, `insert`, `pin`, `magnet`,
    /// `pocket`, `mouth` or `plain`.
    purpose: &'static str,
    /// A stepped bit, guided by a jig.
    stepped: bool,
    places: Vec<BitPlace>,
    /// Holes of all pieces.
    holes: i64,
}

/// Where a bit drills.
#[derive(Clone, Debug, Serialize)]
struct BitPlace {
    label: String,
    title: String,
    side: &'static str,
    /// Holes of one piece.
    each: i64,
    pieces: i64,
}

/// What tells bits and their stops apart; in the order of the schedule.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
struct Setting {
    diameter: Length,
    /// Blind holes first, the shallowest first of all.
    depth: (bool, Length),
    stepped: bool,
    purpose: &'static str,
}

impl Setting {
    fn new(diameter: Length, depth: Option<Length>, purpose: &'static str) -> Self {
        Self {
            diameter,
            depth: (depth.is_none(), depth.unwrap_or(Length::ZERO)),
            stepped: false,
            purpose,
        }
    }
}

/// Holes of each part and side, by setting.
type Schedule = BTreeMap<Setting, BTreeMap<(usize, Side), i64>>;

/// The bits of all parts, narrow ones first.
pub(super) fn of(facts: &Facts) -> Vec<Bit> {
    let mut schedule = Schedule::new();
    for (index, part) in facts.build.parts.iter().enumerate() {
        if part.pieces() > 0 {
            drill(&mut schedule, index, part);
        }
    }
    let bits = schedule.into_iter().map(|(setting, holes)| {
        let places: Vec<BitPlace> = holes
            .into_iter()
            .filter_map(|((index, side), each)| {
                let part = facts.build.parts.get(index)?;
                Some(BitPlace {
                    label: part.label.clone(),
                    title: part.title.clone(),
                    side: side.word(),
                    each,
                    pieces: part.pieces(),
                })
            })
            .collect();
        let (through, depth) = setting.depth;
        Bit {
            diameter: facts.fine_measure(setting.diameter),
            depth: (!through).then(|| facts.measure(depth)),
            purpose: setting.purpose,
            stepped: setting.stepped,
            holes: places.iter().map(|place| place.each * place.pieces).sum(),
            places,
        }
    });
    bits.collect()
}

fn drill(schedule: &mut Schedule, index: usize, part: &Part) {
    let mut add = |setting: Setting, side: Side, count: usize| {
        let count = i64::try_from(count).unwrap_or(i64::MAX);
        let holes = schedule.entry(setting).or_default();
        let holes = holes.entry((index, side)).or_default();
        *holes = holes.saturating_add(count);
    };
    for feature in &part.features {
        match &feature.shape {
            FeatureShape::Holes(holes) => {
                let count = holes.positions.len();
                if let Some((diameter, depth)) = holes.counterbore {
                    add(
                        Setting::new(diameter, Some(depth), "mouth"),
                        holes.side,
                        count,
                    );
                }
                let purpose = word(holes.purpose);
                add(
                    Setting::new(holes.diameter, holes.depth, purpose),
                    holes.side,
                    count,
                );
            }
            FeatureShape::PocketScrewHole(hole) => {
                let setting = Setting {
                    stepped: true,
                    ..Setting::new(hole.diameter, None, "pocket")
                };
                add(setting, hole.side, 1);
            }
            FeatureShape::Pocket(_)
            | FeatureShape::Notch { .. }
            | FeatureShape::Arris { .. }
            | FeatureShape::Slope(_)
            | FeatureShape::SplineSlot(_)
            | FeatureShape::Tenon(_)
            | FeatureShape::Outline(_) => {}
        }
    }
}

const fn word(purpose: HolePurpose) -> &'static str {
    match purpose {
        HolePurpose::Described => "plain",
        HolePurpose::Clearance => "screw",
        HolePurpose::Pilot => "bite",
        HolePurpose::Dowel => "dowel",
        HolePurpose::Bolt => "bolt",
        HolePurpose::Insert => "insert",
        HolePurpose::Pin => "pin",
        HolePurpose::Magnet => "magnet",
    }
}
