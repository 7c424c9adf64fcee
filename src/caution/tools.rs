//! The tools of the plan: those the operations need, with their figures, and the author's own.

use std::collections::{BTreeMap, BTreeSet};

use super::named_tools::{idle_tools, named_tools};
use super::types::{Occasion, Purpose, Told, Tool};
use super::work::Work;
use super::{curves, gluing, planing};
use crate::build::{HardwareKind, JointKind, PlacedId, Wording};
use crate::geometry::Interval;
use crate::model::{ArrisForm, FeatureShape, Pocket, PocketKind, SlopeKind};
use crate::source::Spanned;
use crate::stock::CutDirection;
use crate::units::Length;

/// A tool that an operation needs; ordered as a builder takes them in hand.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Needed {
    Measuring,
    SheetSaw,
    Crosscutting,
    Ripping,
    AngledSaw,
    TenonSaw,
    CurveSaw,
    Planer,
    Chisel,
    Files,
    Drill,
    Bit(Length),
    FlatBit(Length),
    Countersink,
    PocketJig,
    SteppedBit(Length),
    FlushSaw,
    Router,
    ChannelBit(Length),
    MortiseBit(Length),
    RoundOverBit(Length),
    ChamferBit,
    SlotJig,
    Driver,
    Hammer,
    Spanner,
    InsertDriver,
    WallFinder,
    Clamps(Option<Length>),
    Sanding,
    Extraction,
}

impl Needed {
    /// Its name in the plan.
    fn name(self) -> Wording {
        let told = match self {
            Self::Measuring => Told::new("tool-measuring"),
            Self::SheetSaw => Told::new("tool-sheet-saw"),
            Self::Crosscutting => Told::new("tool-crosscutting"),
            Self::Ripping => Told::new("tool-ripping"),
            Self::AngledSaw => Told::new("tool-angled-saw"),
            Self::TenonSaw => Told::new("tool-tenon-saw"),
            Self::CurveSaw => Told::new("tool-curve-saw"),
            Self::Planer => Told::new("tool-planer"),
            Self::Chisel => Told::new("tool-chisel"),
            Self::Files => Told::new("tool-files"),
            Self::Drill => Told::new("tool-drill"),
            Self::Bit(diameter) => Told::new("tool-bit").length("diameter", diameter),
            Self::FlatBit(diameter) => Told::new("tool-flat-bit").length("diameter", diameter),
            Self::Countersink => Told::new("tool-countersink"),
            Self::PocketJig => Told::new("tool-pocket-jig"),
            Self::SteppedBit(diameter) => {
                Told::new("tool-stepped-bit").length("diameter", diameter)
            }
            Self::Router => Told::new("tool-router"),
            Self::ChannelBit(width) => Told::new("tool-channel-bit").length("width", width),
            Self::MortiseBit(width) => Told::new("tool-mortise-bit").length("width", width),
            Self::RoundOverBit(radius) => Told::new("tool-round-over-bit").length("radius", radius),
            Self::ChamferBit => Told::new("tool-chamfer-bit"),
            Self::FlushSaw => Told::new("tool-flush-saw"),
            Self::SlotJig => Told::new("tool-slot-jig"),
            Self::Hammer => Told::new("tool-hammer"),
            Self::Spanner => Told::new("tool-spanner"),
            Self::InsertDriver => Told::new("tool-insert-driver"),
            Self::WallFinder => Told::new("tool-wall-finder"),
            Self::Driver => Told::new("tool-driver"),
            Self::Clamps(Some(opening)) => {
                Told::new("tool-clamps-opening").length("opening", opening)
            }
            Self::Clamps(None) => Told::new("tool-clamps"),
            Self::Sanding => Told::new("tool-sanding"),
            Self::Extraction => Told::new("tool-extraction"),
        };
        told.done()
    }

    const fn purpose(self) -> Purpose {
        match self {
            Self::Measuring => Purpose::Measure,
            Self::SheetSaw
            | Self::Crosscutting
            | Self::Ripping
            | Self::AngledSaw
            | Self::TenonSaw
            | Self::CurveSaw => Purpose::Saw,
            Self::Planer | Self::Chisel | Self::Files => Purpose::Shape,
            Self::Drill
            | Self::Bit(_)
            | Self::FlatBit(_)
            | Self::Countersink
            | Self::PocketJig
            | Self::SteppedBit(_) => Purpose::Drill,
            Self::FlushSaw | Self::SlotJig => Purpose::Saw,
            Self::Router
            | Self::ChannelBit(_)
            | Self::MortiseBit(_)
            | Self::RoundOverBit(_)
            | Self::ChamferBit => Purpose::Rout,
            Self::Driver | Self::Hammer | Self::Spanner | Self::InsertDriver => Purpose::Join,
            Self::WallFinder => Purpose::Measure,
            Self::Clamps(_) => Purpose::Clamp,
            Self::Sanding => Purpose::Finish,
            Self::Extraction => Purpose::Protect,
        }
    }
}

/// Tools by purpose: those the operations need in the order of the work, then the author's.
///
/// What the author names takes the place of what was worked out: everywhere under a bare name,
/// else in the steps that name it.
pub(super) fn list(work: &Work) -> Vec<Tool> {
    let mut named = named_tools(work);
    let mut tools = Vec::new();
    for (needed, mut occasions) in needed(work) {
        if let Some(own) = named.iter_mut().find(|own| own.replaces(needed)) {
            own.add(&occasions);
            continue;
        }
        let others: Vec<_> = named.iter().filter(|own| own.covers(needed)).collect();
        occasions.retain(|when| others.iter().all(|own| !own.tool.occasions.contains(when)));
        if occasions.is_empty() && !others.is_empty() {
            continue;
        }
        tools.push(Tool {
            name: needed.name(),
            purpose: needed.purpose(),
            occasions,
        });
    }
    tools.extend(named.into_iter().map(|own| own.tool));
    tools.sort_by_key(|tool| tool.purpose);
    tools
}

/// Tools the author names for work that the build has none of.
pub(super) fn idle(work: &Work) -> Vec<Spanned<String>> {
    let needed: Vec<Needed> = needed(work).into_iter().map(|(needed, _)| needed).collect();
    idle_tools(work, &needed)
}

/// What the operations need, and when.
fn needed(work: &Work) -> Vec<(Needed, Vec<Occasion>)> {
    let mut needed: BTreeMap<Needed, BTreeSet<Occasion>> = BTreeMap::new();
    if work.parts().next().is_none() {
        return Vec::new();
    }
    let mut add = |tool: Needed, when: Vec<Occasion>| {
        needed.entry(tool).or_default().extend(when);
    };
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
    joining(work, &mut add);
    let openings = clamp_openings(work);
    for when in gluing::occasions(work) {
        let opening = openings.get(&when).copied();
        add(Needed::Clamps(opening), vec![when]);
    }
    let listed = needed.into_iter();
    listed
        .map(|(tool, occasions)| (tool, occasions.into_iter().collect()))
        .collect()
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

/// What drives, turns and trims the hardware of joints.
fn joining(work: &Work, add: &mut impl FnMut(Needed, Vec<Occasion>)) {
    const DRIVEN: [JointKind; 4] = [
        JointKind::Screws,
        JointKind::PocketScrews,
        JointKind::Hinges,
        JointKind::Runners,
    ];
    let makes = |kinds: &[JointKind]| work.steps(|step| work.makes(step, kinds));
    let uses = |kind: HardwareKind| work.steps(|step| work.uses(step, kind));
    let slotted = work.steps(|step| {
        work.makes(step, &[JointKind::Mitre]) && work.uses(step, HardwareKind::Spline)
    });
    for (tool, when) in [
        (Needed::Driver, makes(&DRIVEN)),
        (Needed::Hammer, makes(&[JointKind::Nails])),
        (Needed::Spanner, makes(&[JointKind::Bolts])),
        (Needed::InsertDriver, uses(HardwareKind::Insert)),
        (Needed::FlushSaw, uses(HardwareKind::Plug)),
        (Needed::SlotJig, slotted),
        (Needed::WallFinder, work.fitted(HardwareKind::WallFixing)),
    ] {
        if !when.is_empty() {
            add(tool, when);
        }
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
        FeatureShape::Arris { .. } if curves::corner(shape).is_some() => {
            let mut tools = vec![Needed::Files];
            tools.extend(curves::is_curve(shape).then_some(Needed::CurveSaw));
            tools
        }
        FeatureShape::Arris { size, form, .. } => match form {
            ArrisForm::Round => vec![Needed::Router, Needed::RoundOverBit(*size)],
            ArrisForm::Chamfer => vec![Needed::Router, Needed::ChamferBit],
        },
        FeatureShape::Slope(slope) => match slope.kind {
            SlopeKind::Mitre | SlopeKind::Bevel => vec![Needed::AngledSaw],
            SlopeKind::Taper => vec![Needed::CurveSaw, Needed::Planer],
        },
        // The jig comes with the joint.
        FeatureShape::SplineSlot(_) => Vec::new(),
        FeatureShape::Tenon(_) => vec![Needed::TenonSaw, Needed::Chisel],
        FeatureShape::PocketScrewHole(hole) => {
            vec![
                Needed::Drill,
                Needed::PocketJig,
                Needed::SteppedBit(hole.diameter),
            ]
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
        PocketKind::Lap => Needed::TenonSaw,
        PocketKind::Recess => Needed::Chisel,
    }
}

/// How far clamps open in each step with glued joints: over all that hangs together by glue,
/// along the direction of the joint.
fn clamp_openings(work: &Work) -> BTreeMap<Occasion, Length> {
    let mut assemblies: Vec<BTreeSet<PlacedId>> = Vec::new();
    let mut openings = BTreeMap::new();
    for (number, step) in work.build.steps.iter().enumerate() {
        let joints = step.joints.iter();
        let glued: Vec<_> = joints
            .filter_map(|index| work.build.joints.get(*index))
            .filter(|joint| joint.glued)
            .collect();
        for joint in &glued {
            let is_apart =
                |one: &BTreeSet<PlacedId>| !one.contains(&joint.part) && !one.contains(&joint.to);
            let (apart, joined) = assemblies.into_iter().partition(is_apart);
            assemblies = apart;
            let mut all: BTreeSet<PlacedId> = joined.into_iter().flatten().collect();
            all.extend([joint.part, joint.to]);
            assemblies.push(all);
        }
        let widest = glued.iter().filter_map(|joint| {
            let assembly = assemblies.iter().find(|one| one.contains(&joint.part))?;
            let pieces = assembly.iter().filter_map(|id| work.build.piece(*id));
            let hull = pieces.map(|piece| piece.place).reduce(grown)?;
            let across = hull.get(joint.contact.direction.axis().index())?;
            Some(across.size())
        });
        if let Some(widest) = widest.max() {
            openings.insert(Occasion::Step(number), whole(work, widest));
        }
    }
    openings
}

/// The next 50 mm, or 2 in: nobody looks for a clamp of 1056 mm.
fn whole(work: &Work, opening: Length) -> Length {
    let step = if work.build.plan.precision.metric_first {
        Length::from_mm(50)
    } else {
        Length::from_inch(2, 1)
    };
    let steps = (opening.nm() + step.nm() - 1) / step.nm();
    step * steps
}

fn grown(hull: [Interval; 3], place: [Interval; 3]) -> [Interval; 3] {
    let [a, b, c] = hull;
    let [x, y, z] = place;
    [a.hull(x), b.hull(y), c.hull(z)]
}
