//! The tools of the plan: those the operations need, with their figures, and the author's own.

use std::collections::BTreeMap;

use super::types::{Occasion, Phrase, Tool};
use super::work::Work;
use super::{curves, gluing, planing};
use crate::build::{JointKind, Wording, WordingPiece};
use crate::geometry::Interval;
use crate::model::{ArrisForm, FeatureShape, Pocket, PocketKind};
use crate::stock::CutDirection;
use crate::units::Length;

/// A tool that an operation needs; ordered as a builder takes them in hand.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Needed {
    Measuring,
    SheetSaw,
    Crosscutting,
    Ripping,
    Planer,
    CurveSaw,
    Router,
    ChannelBit(Length),
    MortiseBit(Length),
    RoundOverBit(Length),
    ChamferBit,
    Drill,
    Bit(Length),
    FlatBit(Length),
    Countersink,
    PocketJig(Length),
    Driver,
    Clamps(Option<Length>),
    Sanding,
    Extraction,
}

impl Needed {
    /// Its name in the plan.
    fn name(self) -> Wording {
        let phrase = match self {
            Self::Measuring => Phrase::new("Tape measure, square, marking knife and pencil"),
            Self::SheetSaw => Phrase::new("Track saw, or table saw with a helper, for sheets"),
            Self::Crosscutting => {
                Phrase::new("Mitre saw or hand saw, with a stop for equal lengths")
            }
            Self::Ripping => Phrase::new("Table saw or band saw, to rip to width"),
            Self::Planer => Phrase::new("Thickness planer or hand plane"),
            Self::CurveSaw => Phrase::new("Jigsaw or band saw"),
            Self::Router => Phrase::new("Router with guide fence"),
            Self::ChannelBit(width) => Phrase::new("Straight router bit, ")
                .length(width)
                .then(" wide, or narrower in several passes"),
            Self::MortiseBit(width) => Phrase::new("Mortise bit, ").length(width).then(" wide"),
            Self::RoundOverBit(radius) => Phrase::new("Round-over bit, radius ").length(radius),
            Self::ChamferBit => Phrase::new("Chamfer bit, 45°"),
            Self::Drill => Phrase::new("Drill with depth stop"),
            Self::Bit(diameter) => Phrase::new("Drill bit, ").length(diameter),
            Self::FlatBit(diameter) => {
                Phrase::new("Flat-bottomed bit or hole saw, ").length(diameter)
            }
            Self::Countersink => Phrase::new("Countersink bit, 90°"),
            Self::PocketJig(diameter) => Phrase::new("Pocket-hole jig with stepped bit, ")
                .length(diameter)
                .then(", and stop collar"),
            Self::Driver => Phrase::new("Screwdriver, or drill driver with clutch"),
            Self::Clamps(Some(opening)) => Phrase::new("Clamps that open ")
                .length(opening)
                .then(" or more"),
            Self::Clamps(None) => Phrase::new("Clamps"),
            Self::Sanding => Phrase::new("Sanding block or sander, grit 120 and 180"),
            Self::Extraction => Phrase::new("Dust extraction"),
        };
        phrase.done()
    }
}

/// Tools from the operations first, in the order of the work, then the author's.
pub(super) fn list(work: &Work) -> Vec<Tool> {
    let mut needed: BTreeMap<Needed, Vec<Occasion>> = BTreeMap::new();
    let mut add = |tool: Needed, when: Vec<Occasion>| {
        needed.entry(tool).or_default().extend(when);
    };
    if work.parts().next().is_none() {
        return authors(work);
    }
    add(Needed::Measuring, vec![Occasion::Cutting]);
    add(Needed::Sanding, Vec::new());
    add(Needed::Extraction, vec![Occasion::Cutting]);
    sawing(work, &mut add);
    for (part, feature) in work.features() {
        let when = work.machined(part);
        for tool in shaping(&feature.shape) {
            add(tool, vec![when]);
        }
    }
    let screws = [JointKind::Screws, JointKind::PocketScrews];
    let driven = work.steps(|step| work.makes(step, &screws));
    if !driven.is_empty() {
        add(Needed::Driver, driven);
    }
    let glued = gluing::occasions(work);
    if !glued.is_empty() {
        add(Needed::Clamps(clamp_opening(work)), glued);
    }
    let derived = needed.into_iter().map(|(tool, mut occasions)| {
        occasions.sort_unstable();
        occasions.dedup();
        Tool {
            name: tool.name(),
            occasions,
        }
    });
    derived.chain(authors(work)).collect()
}

/// What cuts stock to size.
fn sawing(work: &Work, add: &mut impl FnMut(Needed, Vec<Occasion>)) {
    let cutting = || vec![Occasion::Cutting];
    if !work.stock.sheets.is_empty() {
        add(Needed::SheetSaw, cutting());
    }
    if !work.stock.boards.is_empty() {
        add(Needed::Crosscutting, cutting());
    }
    let boards = work.stock.boards.iter().flat_map(|plan| &plan.layouts);
    let mut cuts = boards.flat_map(|layout| &layout.cuts);
    if cuts.any(|cut| cut.direction == CutDirection::Rip) {
        add(Needed::Ripping, cutting());
    }
    if !planing::planed(work).is_empty() {
        add(Needed::Planer, cutting());
    }
}

/// What makes a feature.
fn shaping(shape: &FeatureShape) -> Vec<Needed> {
    match shape {
        FeatureShape::Holes(holes) => {
            let mut tools = vec![Needed::Drill, bit(holes.diameter)];
            tools.extend(
                holes
                    .counterbore
                    .map(|(diameter, _)| Needed::FlatBit(diameter)),
            );
            tools.extend(holes.countersink.map(|_| Needed::Countersink));
            tools
        }
        FeatureShape::Pocket(pocket) => vec![Needed::Router, channel_bit(pocket)],
        FeatureShape::Notch { .. } | FeatureShape::Outline(_) => {
            debug_assert!(
                curves::is_curve(shape),
                "the caution covers what the saw is for"
            );
            vec![Needed::CurveSaw]
        }
        FeatureShape::Arris { size, form, .. } => match form {
            ArrisForm::Round => vec![Needed::Router, Needed::RoundOverBit(*size)],
            ArrisForm::Chamfer => vec![Needed::Router, Needed::ChamferBit],
        },
        FeatureShape::PocketScrewHole(hole) => {
            vec![Needed::Drill, Needed::PocketJig(hole.diameter)]
        }
    }
}

/// Twist bits end at about 13 mm, the opening of a common chuck; larger holes take another kind
/// of bit. Common practice, no source.
fn bit(diameter: Length) -> Needed {
    if diameter > Length::from_mm(13) {
        Needed::FlatBit(diameter)
    } else {
        Needed::Bit(diameter)
    }
}

/// A channel takes a bit of its narrower size.
fn channel_bit(pocket: &Pocket) -> Needed {
    let width = pocket.first.size().min(pocket.second.size());
    match pocket.kind {
        PocketKind::Mortise => Needed::MortiseBit(width),
        PocketKind::Dado | PocketKind::Groove | PocketKind::Rabbet => Needed::ChannelBit(width),
    }
}

/// How far the widest clamp opens: over all that stands when a glued joint is pressed, along
/// the joint's direction. None where only layers are glued.
fn clamp_opening(work: &Work) -> Option<Length> {
    let mut standing: Option<[Interval; 3]> = None;
    let mut widest: Option<Length> = None;
    for step in &work.build.steps {
        for piece in step.adds.iter().filter_map(|id| work.build.piece(*id)) {
            standing = Some(standing.map_or(piece.place, |hull| grown(hull, piece.place)));
        }
        let joints = step.joints.iter();
        for joint in joints.filter_map(|index| work.build.joints.get(*index)) {
            let axis = joint.contact.direction.axis().index();
            let across = standing.and_then(|hull| hull.get(axis).map(|stretch| stretch.size()));
            if joint.glued {
                widest = widest.max(across);
            }
        }
    }
    widest
}

fn grown(hull: [Interval; 3], place: [Interval; 3]) -> [Interval; 3] {
    let [a, b, c] = hull;
    let [x, y, z] = place;
    [a.hull(x), b.hull(y), c.hull(z)]
}

/// Tools the author names in steps, each once.
fn authors(work: &Work) -> Vec<Tool> {
    let mut named: Vec<(String, Tool)> = Vec::new();
    for (number, step) in work.build.steps.iter().enumerate() {
        for name in &step.tools {
            let key = name.to_lowercase();
            if let Some((_, tool)) = named.iter_mut().find(|(known, _)| *known == key) {
                tool.occasions.push(Occasion::Step(number));
                tool.occasions.dedup();
                continue;
            }
            let pieces = vec![WordingPiece::Plain(name.clone())];
            let tool = Tool {
                name: Wording { pieces },
                occasions: vec![Occasion::Step(number)],
            };
            named.push((key, tool));
        }
    }
    named.into_iter().map(|(_, tool)| tool).collect()
}
