//! Bits so large that no hand holds the work against them.

use super::sign::Sign;
use super::types::{Caution, Operation, Told, told};
use super::work::Work;
use crate::build::SignalWord;
use crate::model::FeatureShape;
use crate::units::Length;

/// Larger bits want clamped work and low speed.
// ref: safety, "Operations", drill: bits over 20 mm [P].
const LARGE: Length = Length::from_mm(20);

/// The largest diameter that is bored for a shape.
fn bore(shape: &FeatureShape) -> Option<Length> {
    match shape {
        FeatureShape::Holes(holes) => {
            let mouth = holes.counterbore.map(|(diameter, _)| diameter);
            Some(mouth.map_or(holes.diameter, |mouth| mouth.max(holes.diameter)))
        }
        FeatureShape::Pocket(_)
        | FeatureShape::Notch { .. }
        | FeatureShape::Outline(_)
        | FeatureShape::Arris { .. }
        | FeatureShape::PocketScrewHole(_)
        | FeatureShape::Slope(_)
        | FeatureShape::SplineSlot(_)
        | FeatureShape::Tenon(_) => None,
    }
}

pub(super) fn check(work: &Work) -> Option<Caution> {
    let bores = work
        .features()
        .filter_map(|(_, feature)| bore(&feature.shape));
    let largest = bores.max().filter(|largest| *largest > LARGE)?;
    Some(Caution {
        id: "large-bits",
        signal: SignalWord::Warning,
        hazard: Told::new("caution-large-bits-hazard")
            .length("largest", largest)
            .done(),
        consequence: told("caution-large-bits-consequence"),
        avoidance: told("caution-large-bits-avoidance"),
        signs: vec![Sign::Eyes, Sign::NoGloves],
        operation: Operation::Drilling,
        occasions: work.occasions(|shape| bore(shape).is_some_and(|bore| bore > LARGE)),
    })
}
