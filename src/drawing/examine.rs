//! What a step's view shows, where the author says from which side.

use std::collections::BTreeMap;

use super::blocking::Blocking;
use super::compose::Studio;
use super::contacts::Contacts;
use super::fills::visible_fills;
use super::findings::VIEW_OF_NOTHING;
use super::scene::BodyId;
use super::step::stage_step;
use crate::build::{Build, Part, PlacedId, Step};
use crate::finding::{Finding, Findings};
use crate::geometry::PartAxis;
use crate::solid::Solids;
use crate::text::Fonts;

/// Less than this of a piece, in square micrometres of the view, shows nothing: a square of a
/// millimetre.
const SEEN: f64 = 1e6;

/// Looks at every step from where the author says, and tells of pieces that come in unseen.
pub fn examine(build: &Build, solids: &Solids) -> Findings {
    let mut findings = Findings::new();
    if build.steps.iter().all(|step| step.look.is_empty()) {
        return findings;
    }
    let Ok(fonts) = Fonts::shipped() else {
        return findings;
    };
    let contacts = Contacts::of(build);
    let mut blocking = Blocking::new(build, solids, &contacts);
    let studio = Studio {
        build,
        solids,
        fonts: &fonts,
        contacts: &contacts,
    };
    for (number, step) in build.steps.iter().enumerate() {
        if step.look.is_empty() {
            continue;
        }
        if step.adds.is_empty() && step.joints.is_empty() {
            findings.push(shows_nothing(step));
            continue;
        }
        for piece in unseen(&studio, number, step, &mut blocking) {
            if let Some(finding) = hidden(build, step, piece) {
                findings.push(finding);
            }
        }
    }
    findings
}

/// The pieces that come in with a step and are not seen in its view.
fn unseen(
    studio: &Studio<'_>,
    number: usize,
    step: &Step,
    blocking: &mut Blocking<'_>,
) -> Vec<PlacedId> {
    let shot = stage_step(studio, number, step, None, blocking).shot;
    let mut areas: BTreeMap<BodyId, f64> = BTreeMap::new();
    for fill in visible_fills(&shot.staging.scene, &shot.view) {
        *areas.entry(fill.body).or_default() += fill.area();
    }
    let pieces = shot.staging.pieces.iter();
    pieces
        .filter(|(body, piece)| {
            step.adds.contains(piece) && areas.get(body).copied().unwrap_or(0.0) < SEEN
        })
        .map(|(_, piece)| *piece)
        .collect()
}

fn shows_nothing(step: &Step) -> Finding {
    let message = format!(
        "the step \u{201c}{}\u{201d} says where to look from, and has nothing to show",
        step.title
    );
    Finding::new(&VIEW_OF_NOTHING, step.span, message)
        .remedy("leave `look` out, or let the step add the parts it works on")
}

fn hidden(build: &Build, step: &Step, piece: PlacedId) -> Option<Finding> {
    let (placed, part) = (build.piece(piece)?, build.part_of(piece)?);
    let from: Vec<&str> = step.look.iter().map(|look| look.word()).collect();
    let message = format!(
        "nothing of `{}` is seen from the {}",
        placed.name,
        from.join(" ")
    );
    let finding = Finding::new(&VIEW_OF_NOTHING, step.span, message)
        .related(placed.span, format!("`{}` is placed here", placed.name));
    Some(
        sized(finding, part)
            .remedy("look from the other side, or leave `look` out: the best side is then chosen")
            .remedy(format!("draw it away: `pull {} …`", placed.name)),
    )
}

fn sized(finding: Finding, part: &Part) -> Finding {
    let sizes = PartAxis::ALL.into_iter().zip(part.size());
    sizes.fold(finding, |finding, (axis, size)| {
        finding.figure(format!("{} of the hidden part", axis.word()), size)
    })
}
