//! Which sides of a part are shown, and where each view stands on the sheet.

use super::super::view::{View, WorldPoint, cross};
use crate::build::{Part, Projection};
use crate::geometry::{PartAxis, Side};
use crate::model::{Feature, FeatureShape};

/// 1 where a view stands on the side it is seen from, -1 where it stands opposite.
pub(in crate::drawing) const fn sign(projection: Projection) -> f64 {
    match projection {
        Projection::FirstAngle => -1.0,
        Projection::ThirdAngle => 1.0,
    }
}

/// A view square to one side of a part.
#[derive(Clone, Copy, Debug)]
pub(super) struct PartView {
    /// The side that is seen.
    pub(super) side: Side,
    /// How it is looked at, the part's own axes being those of the world.
    pub(super) view: View,
}

/// The views of a part: of its broad side first, then of an edge, then of an end.
pub(super) fn needed(part: &Part, round: bool) -> Vec<PartView> {
    let on = |side: Side| {
        part.features
            .iter()
            .filter(|feature| feature.opens_on() == Some(side))
            .count()
    };
    let main = part.main_side();
    let mut views = vec![seen_from(main, main)];
    for pair in [[Side::Near, Side::Far], [Side::Foot, Side::Head]] {
        let shows = |side: Side| part.features.iter().any(|f| is_seen_on(part, f, side));
        let [first, second] = pair;
        let end_of_bar = round && first == Side::Foot;
        if end_of_bar || shows(first) || shows(second) {
            let more = on(second) > on(first) || (!shows(first) && shows(second));
            views.push(seen_from(if more { second } else { first }, main));
        }
    }
    views
}

/// The axis along which a view shows a feature best; none where the main view does.
pub(super) fn looked_along(feature: &Feature) -> Option<PartAxis> {
    if let FeatureShape::SplineSlot(slot) = &feature.shape {
        // Up a frame's mitre it is seen from the end; along a case's in the profile of the mitre.
        return Some(if slot.runs_up() {
            slot.slope.side.axis()
        } else {
            slot.axis()
        });
    }
    if let FeatureShape::Slope(slope) = &feature.shape {
        let axes = [slope.side.axis(), slope.deep.axis()];
        return PartAxis::ALL.into_iter().find(|axis| !axes.contains(axis));
    }
    feature.opens_on().map(Side::axis)
}

/// True where a view of an edge or an end shows a feature: it is made from there, or leaves its
/// profile there.
fn is_seen_on(part: &Part, feature: &Feature, side: Side) -> bool {
    if feature.opens_on() == Some(side) {
        return true;
    }
    match &feature.shape {
        FeatureShape::Pocket(pocket) => {
            let axes = PartAxis::ALL
                .into_iter()
                .filter(|axis| *axis != pocket.side.axis());
            axes.zip([pocket.first, pocket.second])
                .any(|(axis, reach)| {
                    let own = part.extent.get(axis.index()).copied().unwrap_or_default();
                    axis == side.axis()
                        && if side.is_high() {
                            reach.high >= own.high
                        } else {
                            reach.low <= own.low
                        }
                })
        }
        // A broken arris is seen where it ends.
        FeatureShape::Arris { sides, .. } => sides.iter().all(|s| s.axis() != side.axis()),
        FeatureShape::Slope(slope) => {
            slope.side.axis() != side.axis() && slope.deep.axis() != side.axis()
        }
        FeatureShape::SplineSlot(slot) => side.axis() == slot.axis(),
        // Its cheeks are seen from an edge.
        FeatureShape::Tenon(_) => side.axis() == PartAxis::Width,
        FeatureShape::Holes(_)
        | FeatureShape::Notch { .. }
        | FeatureShape::Outline(_)
        | FeatureShape::PocketScrewHole(_) => false,
    }
}

/// The view of a side that lines up with the view of `main`.
pub(super) fn seen_from(side: Side, main: Side) -> PartView {
    // In the main view the length runs to the right; the width follows from that.
    let right: WorldPoint = [1.0, 0.0, 0.0];
    let up = cross(outward(main), right);
    let towards = outward(side);
    let (right, up) = match side.axis() {
        PartAxis::Thickness | PartAxis::Width => (right, cross(towards, right)),
        PartAxis::Length => (cross(up, towards), up),
    };
    PartView {
        side,
        view: View::from_axes(right, up),
    }
}

/// The unit vector out of a side, in the part's frame.
pub(super) fn outward(side: Side) -> WorldPoint {
    let mut vector = [0.0; 3];
    if let Some(part) = vector.get_mut(side.axis().index()) {
        *part = if side.is_high() { 1.0 } else { -1.0 };
    }
    vector
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn views_share_the_axis_they_line_up_along() {
        let corner = [300.0, 70.0, 18.0];
        for main in [Side::Face, Side::Back] {
            let [x, y, _] = seen_from(main, main).view.project(corner);
            assert!((x - 300.0).abs() < 1e-9);
            for edge in [Side::Near, Side::Far] {
                let [across, _, depth] = seen_from(edge, main).view.project(corner);
                assert!((across - x).abs() < 1e-9);
                assert!((depth.abs() - 70.0).abs() < 1e-9);
            }
            for end in [Side::Foot, Side::Head] {
                let [_, up, depth] = seen_from(end, main).view.project(corner);
                assert!((up - y).abs() < 1e-9);
                assert!((depth.abs() - 300.0).abs() < 1e-9);
            }
        }
    }
}
