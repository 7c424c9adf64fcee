//! Outlines and notches sawn with a band saw or a jigsaw.

use super::sign::Sign;
use super::types::{Caution, Operation, told};
use super::work::Work;
use crate::build::SignalWord;
use crate::geometry::{PartAxis, Side};
use crate::model::{FeatureShape, SlopeKind};
use crate::units::Length;

/// A corner rounded or cut off by more than this is sawn first, a smaller one filed and sanded.
/// Common practice, no source.
const FILED: Length = Length::from_mm(10);

/// Shapes that a straight saw does not make.
pub(super) fn is_curve(shape: &FeatureShape) -> bool {
    matches!(shape, FeatureShape::Outline(_) | FeatureShape::Notch { .. })
        || matches!(shape, FeatureShape::Slope(slope) if slope.kind == SlopeKind::Taper)
        || corner(shape).is_some_and(|size| size > FILED)
}

/// The size of a corner of the outline, where an end meets an edge; none for other shapes. It
/// goes through the whole thickness: saw and file make it, no router bit.
pub(super) fn corner(shape: &FeatureShape) -> Option<Length> {
    let FeatureShape::Arris { sides, size, .. } = shape else {
        return None;
    };
    let is_broad = |side: &Side| side.axis() == PartAxis::Thickness;
    (!sides.iter().any(is_broad)).then_some(*size)
}

// ref: safety, "Operations", band saw [P].
pub(super) fn check(work: &Work) -> Option<Caution> {
    let occasions = work.occasions(is_curve);
    (!occasions.is_empty()).then(|| Caution {
        id: "curves",
        signal: SignalWord::Warning,
        hazard: told("caution-curves-hazard"),
        consequence: told("caution-curves-consequence"),
        avoidance: told("caution-curves-avoidance"),
        signs: vec![Sign::Ears, Sign::Eyes, Sign::Mask],
        operation: Operation::Sawing,
        occasions,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::ArrisForm;

    fn rounded(sides: [Side; 2], radius: i64) -> FeatureShape {
        FeatureShape::Arris {
            sides,
            size: Length::from_mm(radius),
            form: ArrisForm::Round,
        }
    }

    #[test]
    fn corners_are_told_from_edges() {
        let corner_of = |shape: &FeatureShape| corner(shape).map(|size| size.mm());
        assert_eq!(
            corner_of(&rounded([Side::Head, Side::Near], 20)),
            Some(20.0)
        );
        assert_eq!(corner_of(&rounded([Side::Near, Side::Face], 20)), None);
        assert_eq!(corner_of(&rounded([Side::Back, Side::Foot], 20)), None);
    }

    #[test]
    fn small_corners_are_not_sawn() {
        assert!(is_curve(&rounded([Side::Head, Side::Far], 20)));
        assert!(!is_curve(&rounded([Side::Head, Side::Far], 2)));
        assert!(!is_curve(&rounded([Side::Far, Side::Face], 20)));
    }
}
