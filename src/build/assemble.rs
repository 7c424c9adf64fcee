//! Putting it together: joints one after another, then the parts that come out, then the steps.

use std::collections::BTreeMap;

use super::contact::{Meeting, meet};
use super::findings::{JOINED_TO_ITSELF, NOT_TOUCHING};
use super::joint::{Bench, grow, half_lap, items_of, make, strips};
use super::parts::{Parts, gather_parts};
use super::piece::Piece;
use super::steps::gather_steps;
use super::types::{
    Build, Contact, ContinuousGrain, Hardware, HardwareId, Joint, JointKind, PlacedId, PlacedPart,
    Template,
};
use crate::finding::{Finding, Findings, Outcome};
use crate::geometry::{Axis, Interval};
use crate::model::{JoinDesign, Model, PartId, TemplateWish};
use crate::source::Span;
use crate::units::{Area, Length};

/// What moves on another piece is no farther from it than this: the thickness of a runner.
const FARTHEST_MOVING: Length = Length::from_mm(25);

/// Puts a model together.
pub(super) fn assemble(model: &Model) -> Outcome<Build> {
    let mut findings = Findings::new();
    let mut pieces: Vec<Piece<'_>> = model
        .placements
        .iter()
        .filter_map(|placement| Some(Piece::new(placement, model.parts.get(placement.part.0)?)))
        .collect();
    let pairs: Vec<Pair<'_>> = model
        .joins
        .iter()
        .flat_map(|join| pairs(model, join, &pieces, &mut findings))
        .collect();
    // A piece that is let in on all four edges fills its channels' corners too: what joints add
    // is known before the first channel is cut.
    for pair in &pairs {
        if let Ok([coming, receiving]) = pieces.get_disjoint_mut([pair.part.0, pair.to.0]) {
            grow(pair.join, &pair.contact, coming, receiving);
        }
    }
    let joints = pairs
        .iter()
        .filter_map(|pair| make_joint(pair, &mut pieces, &mut findings))
        .collect();
    for piece in &mut pieces {
        piece.run_channels_out();
    }
    let parts = gather_parts(model, &pieces);
    let mut build = Build {
        plan: model.head.clone(),
        materials: model.materials.clone(),
        overall: overall(
            &parts
                .placed
                .iter()
                .map(|piece| piece.place)
                .collect::<Vec<_>>(),
        ),
        options: model.options.clone(),
        groups: model.groups.clone(),
        instances: model.instances.clone(),
        joints,
        hardware: model.hardware.clone(),
        supplies: model.supplies.clone(),
        continuous: continuous(model, &parts.placed),
        templates: templates(model, &parts),
        parts: parts.parts,
        placed: parts.placed,
        steps: Vec::new(),
    };
    gather_steps(model, &parts.first_of, &mut build);
    Outcome {
        value: build,
        findings,
    }
}

/// The templates, one for each part that comes out of the part they are asked of.
fn templates(model: &Model, parts: &Parts) -> Vec<Template> {
    let wishes = model.templates.iter();
    let of = |wish: &TemplateWish| {
        let wish = *wish;
        let made = parts.parts.iter().zip(&parts.turned).enumerate();
        made.filter(move |(_, (_, (design, _)))| *design == wish.part)
            .map(move |(number, (part, (_, flip)))| Template {
                part: PartId(number),
                side: wish.side.map_or(part.main_side(), |side| flip.side(side)),
                sheet: wish.sheet,
                span: wish.span,
            })
    };
    let mut once: Vec<Template> = Vec::new();
    for template in wishes.flat_map(of) {
        // The side that is meant where none is named may be named by another statement.
        let same = |other: &Template| other.part == template.part && other.side == template.side;
        if !once.iter().any(same) {
            once.push(template);
        }
    }
    once
}

/// The parts over which the grain runs on.
fn continuous(model: &Model, placed: &[PlacedPart]) -> Vec<ContinuousGrain> {
    let part = |piece: &PlacedId| Some(placed.get(piece.0)?.part);
    let runs = model.continuous.iter().map(|run| ContinuousGrain {
        parts: run.pieces.iter().filter_map(part).collect(),
        along: run.along,
        span: run.span,
    });
    runs.collect()
}

/// Two pieces that a statement joins.
struct Pair<'m> {
    join: &'m JoinDesign,
    part: PlacedId,
    to: PlacedId,
    contact: Contact,
    items: Vec<(HardwareId, &'m Hardware)>,
}

/// The pairs of one statement, each with its contact.
fn pairs<'m>(
    model: &'m Model,
    join: &'m JoinDesign,
    pieces: &[Piece<'_>],
    findings: &mut Findings,
) -> Vec<Pair<'m>> {
    let Ok(items) = items_of(join, &model.hardware, findings) else {
        return Vec::new();
    };
    let mut pairs = Vec::new();
    for (part, part_span) in &join.parts {
        for (to, to_span) in &join.to {
            let span = part_span.to(*to_span);
            if part == to {
                findings.push(Finding::new(
                    &JOINED_TO_ITSELF,
                    span,
                    "this joins a part to itself",
                ));
            } else if let Some(contact) = touching(pieces, (*part, *to), join, span, findings) {
                pairs.push(Pair {
                    join,
                    part: *part,
                    to: *to,
                    contact,
                    items: items.clone(),
                });
            }
        }
    }
    pairs
}

/// The joint of a pair: both pieces cut, the fasteners set.
fn make_joint<'m>(
    pair: &Pair<'m>,
    pieces: &mut [Piece<'m>],
    findings: &mut Findings,
) -> Option<Joint> {
    let [coming, receiving] = pieces.get_disjoint_mut([pair.part.0, pair.to.0]).ok()?;
    let mut bench = Bench {
        join: pair.join,
        contact: pair.contact,
        part: coming,
        to: receiving,
        part_id: pair.part,
        to_id: pair.to,
        items: &pair.items,
        fasteners: Vec::new(),
        glue_area: pair.contact.size(),
        findings,
    };
    make(&mut bench);
    let glued = is_glued(pair.join);
    Some(Joint {
        kind: pair.join.kind,
        part: pair.part,
        to: pair.to,
        contact: pair.contact,
        play: pair.join.play.map_or(Length::ZERO, |(play, _)| play),
        glued,
        glue_area: if glued { bench.glue_area } else { Area::ZERO },
        fasteners: bench.fasteners,
        span: pair.join.span,
    })
}

/// Some kinds of joint are glued without a word.
fn is_glued(join: &JoinDesign) -> bool {
    join.glue.is_some() || matches!(join.kind, JointKind::Glue | JointKind::Lamination)
}

/// Where two pieces meet for a joint, or the finding that they do not.
fn touching(
    pieces: &[Piece<'_>],
    (part, to): (PlacedId, PlacedId),
    join: &JoinDesign,
    span: Span,
    findings: &mut Findings,
) -> Option<Contact> {
    let (first, second) = (pieces.get(part.0)?, pieces.get(to.0)?);
    let (a, b) = (first.placement, second.placement);
    if join.kind == JointKind::HalfLap {
        return half_lap::meeting(join, [a, b], span, findings);
    }
    if join.kind == JointKind::Strips {
        return strips::meeting([a, b], span, findings);
    }
    let reach = if join.kind.moves() {
        FARTHEST_MOVING
    } else {
        Length::ZERO
    };
    let meeting = meet(&a.body, &b.body, reach);
    let (axis, length, message) = match meeting {
        Meeting::Touch(contact) => return Some(contact),
        Meeting::Apart(axis, gap) if gap.is_positive() => {
            let message = format!(
                "`{}` and `{}` are {} apart {}",
                a.name,
                b.name,
                gap.in_both(),
                axis.way()
            );
            (axis, gap, message)
        }
        Meeting::Apart(axis, gap) => {
            let message = format!("`{}` and `{}` meet in an edge only", a.name, b.name);
            (axis, gap, message)
        }
        Meeting::Overlap(axis, depth) => {
            let message = format!(
                "`{}` stands {} deep in `{}` {}",
                a.name,
                depth.in_both(),
                b.name,
                axis.way()
            );
            (axis, depth, message)
        }
    };
    let mut finding = Finding::new(&NOT_TOUCHING, span, message)
        .related(a.span, format!("`{}` is placed here", a.name))
        .related(b.span, format!("`{}` is placed here", b.name));
    if length.is_positive() {
        let label = if matches!(meeting, Meeting::Overlap(..)) {
            "overlap"
        } else {
            "gap"
        };
        let (own, other) = facing(a.body, b.body, axis);
        finding = finding.figure(label, length).remedy(format!(
            "locate one by a face of the other: `{own} at {}.{other}`; what a joint adds beyond the touching faces it adds by itself",
            b.name
        ));
    } else {
        finding = finding.remedy("move one along until a face of it lies on a face of the other");
    }
    findings.push(finding);
    None
}

/// The faces of two boxes that are to meet on an axis: of the first and of the second.
fn facing(first: [Interval; 3], second: [Interval; 3], axis: Axis) -> (&'static str, &'static str) {
    let middle = |of: [Interval; 3]| of.get(axis.index()).copied().unwrap_or_default().middle();
    if middle(first) >= middle(second) {
        (axis.low().word(), axis.high().word())
    } else {
        (axis.high().word(), axis.low().word())
    }
}

/// The stretch of the world that some boxes fill.
fn overall(boxes: &[[Interval; 3]]) -> Option<[Interval; 3]> {
    boxes.iter().copied().reduce(|a, b| {
        let mut whole = a;
        for (stretch, other) in whole.iter_mut().zip(b) {
            *stretch = stretch.hull(other);
        }
        whole
    })
}

/// The first part of the build that each part of the model became.
pub(super) type FirstOf = BTreeMap<usize, PartId>;
