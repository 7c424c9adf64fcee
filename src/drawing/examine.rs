//! What a step's view shows, where the author says from which side.

use super::blocking::Blocking;
use super::compose::Studio;
use super::contacts::Contacts;
use super::findings::VIEW_OF_NOTHING;
use super::frame::Frame;
use super::step::unseen;
use crate::build::{Build, Part, PlacedId, Step};
use crate::finding::{Finding, Findings};
use crate::geometry::PartAxis;
use crate::solid::Solids;
use crate::text::Fonts;
use crate::words::Words;

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
        frame: Frame::of(build.plan.paper),
        words: &Words::english(),
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
        for piece in unseen(&studio, number, step, &mut blocking, SEEN) {
            if let Some(finding) = hidden(build, step, piece) {
                findings.push(finding);
            }
        }
    }
    findings
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
