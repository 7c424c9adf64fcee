//! A finished piece too heavy for one person.

use super::heavy_sheet::ONE_PERSON_KG;
use super::sign::Sign;
use super::types::{Caution, Occasion, Operation, Phrase, plain};
use super::work::Work;
use crate::build::SignalWord;
use crate::units::Mass;

/// The mass of all placed pieces as full rectangles; none where a density is not known.
fn kilograms(work: &Work) -> Option<f64> {
    let mut sum = 0.0;
    for piece in &work.build.placed {
        let part = work.build.part(piece.part)?;
        let [length, width, thickness] = part.size();
        let density = work.build.material(part.material)?.density?;
        sum += (length * width * thickness).m3() * density;
    }
    Some(sum)
}

// ref: safety#L15 [M] (NIOSH lifting equation).
pub(super) fn check(work: &Work) -> Option<Caution> {
    let kilograms = kilograms(work).filter(|kilograms| *kilograms > ONE_PERSON_KG)?;
    let last = work.build.steps.len().checked_sub(1);
    Some(Caution {
        id: "heavy-piece",
        name: "weight of the piece",
        signal: SignalWord::Caution,
        hazard: Phrase::new("The finished piece weighs about ")
            .value(Mass::from_kg_f64(kilograms).in_both())
            .then(".")
            .done(),
        consequence: plain("It strains backs and crushes feet and fingers."),
        avoidance: plain(
            "Turn, lift and carry it with two people, and build it close to where it will stand.",
        ),
        signs: vec![Sign::CrushedHands, Sign::Feet],
        operation: Operation::Lifting,
        occasions: last
            .map(Occasion::Step)
            .into_iter()
            .chain([Occasion::Use])
            .collect(),
    })
}
