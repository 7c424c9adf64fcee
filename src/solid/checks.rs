//! Features that cannot be made as they are described.

use super::findings::{CUT_TOO_DEEP, FEATURE_OUTSIDE, HOLE_BREAKS_EDGE, OUTLINE_CROSSES};
use super::spline_slot::left_over;
use super::stack::{extent_along, other_axes};
use crate::build::Part;
use crate::finding::{Finding, Findings};
use crate::geometry::region::contour_ring;
use crate::geometry::{BoundaryEdge, Contour, Interval, PlanePoint};
use crate::model::{
    Feature, FeatureShape, HolePurpose, Holes, Pocket, PocketKind, Slope, SlopeKind, SplineSlot,
};
use crate::source::Span;
use crate::units::Length;

/// Checks every feature of a part.
pub(super) fn check(part: &Part) -> Findings {
    let mut found = Findings::new();
    let findings = &mut found;
    for feature in &part.features {
        match &feature.shape {
            FeatureShape::Holes(holes) => check_holes(part, holes, feature, findings),
            FeatureShape::Pocket(pocket) => check_pocket(part, pocket, feature, findings),
            FeatureShape::Notch {
                along_length,
                along_width,
            } => {
                let [length, width, _] = part.extent;
                let pairs = [(*along_length, length), (*along_width, width)];
                if pairs.iter().any(|(cut, wood)| cut.overlap(*wood).is_none()) {
                    findings.push(outside(part, "a notch", feature.span, &pairs));
                }
            }
            FeatureShape::Outline(contour) => check_outline(part, contour, feature, findings),
            FeatureShape::Slope(slope) => check_slope(part, slope, feature, findings),
            FeatureShape::SplineSlot(slot) => check_spline_slot(part, slot, feature, findings),
            FeatureShape::Tenon(_)
            | FeatureShape::Arris { .. }
            | FeatureShape::PocketScrewHole(_) => {}
        }
    }
    found
}

/// A finding about something that lies outside; with how far, and how large the part is there.
fn outside(part: &Part, what: &str, span: Span, pairs: &[(Interval, Interval)]) -> Finding {
    let mut finding = Finding::new(
        &FEATURE_OUTSIDE,
        span,
        format!(
            "{what} lies outside of the part \u{201c}{}\u{201d}",
            part.title
        ),
    );
    for (cut, wood) in pairs {
        if cut.overlap(*wood).is_none() {
            let away = if cut.low >= wood.high {
                cut.low - wood.low
            } else {
                cut.high - wood.low
            };
            finding = finding
                .figure("where it is", away)
                .figure("size of the part there", wood.size());
        }
    }
    finding.remedy("measure it from a side of the part, or make the part larger")
}

fn check_holes(part: &Part, holes: &Holes, feature: &Feature, findings: &mut Findings) {
    let through = extent_along(&part.extent, holes.side.axis()).size();
    // Of a screw that comes through, its rule tells more.
    if let Some(depth) = holes.depth
        && depth >= through
        && holes.purpose != HolePurpose::Pilot
    {
        let finding = Finding::new(
            &CUT_TOO_DEEP,
            feature.span,
            format!(
                "a hole on the {} of \u{201c}{}\u{201d} is as deep as the part or deeper",
                holes.side.word(),
                part.title
            ),
        );
        findings.push(
            finding
                .figure("depth of the hole", depth)
                .figure("thickness it is drilled into", through)
                .remedy("leave the depth out for a hole that goes through")
                .remedy("make the hole less deep"),
        );
    }
    // One finding a line of holes: the first that is wrong stands for the others.
    let reaches = other_axes(holes.side.axis()).map(|axis| extent_along(&part.extent, axis));
    let [first, second] = reaches;
    let inside = |at: &PlanePoint| first.holds(at.x) && second.holds(at.y);
    if let Some(at) = holes.positions.iter().find(|at| !inside(at)) {
        let flat = |value: Length| Interval {
            low: value,
            high: value,
        };
        let pairs = [(flat(at.x), first), (flat(at.y), second)];
        let misses: Vec<(Interval, Interval)> = pairs
            .into_iter()
            .filter(|(cut, wood)| !wood.holds(cut.low))
            .collect();
        findings.push(outside(part, "a hole", feature.span, &misses));
        return;
    }
    let widest = holes
        .counterbore
        .map_or(Length::ZERO, |bore| bore.0)
        .max(holes.countersink.unwrap_or_default())
        .max(holes.diameter);
    let margin = |at: &PlanePoint| {
        [
            at.x - first.low,
            first.high - at.x,
            at.y - second.low,
            second.high - at.y,
        ]
        .into_iter()
        .min()
        .unwrap_or_default()
    };
    let nearest = holes.positions.iter().map(margin).min();
    if let Some(distance) = nearest
        && distance < widest.half()
    {
        let finding = Finding::new(
            &HOLE_BREAKS_EDGE,
            feature.span,
            format!(
                "a hole on the {} of \u{201c}{}\u{201d} breaks through an edge",
                holes.side.word(),
                part.title
            ),
        );
        findings.push(
            finding
                .figure("diameter of the hole", widest)
                .figure("from its centre to the edge", distance)
                .remedy(format!(
                    "move it at least {} away from the edge",
                    widest.half().in_both()
                ))
                .remedy("drill a smaller hole"),
        );
    }
}

fn check_pocket(part: &Part, pocket: &Pocket, feature: &Feature, findings: &mut Findings) {
    let word = match pocket.kind {
        PocketKind::Dado => "a dado",
        PocketKind::Groove => "a groove",
        PocketKind::Rabbet => "a rabbet",
        PocketKind::Mortise => "a mortise",
        PocketKind::Lap => "a lap",
        PocketKind::Recess => "a recess",
    };
    let through = extent_along(&part.extent, pocket.side.axis()).size();
    if pocket.depth >= through {
        let finding = Finding::new(
            &CUT_TOO_DEEP,
            feature.span,
            format!(
                "{word} on the {} of \u{201c}{}\u{201d} is as deep as the part or deeper",
                pocket.side.word(),
                part.title
            ),
        );
        findings.push(
            finding
                .figure("depth of the cut", pocket.depth)
                .figure("size of the part there", through)
                .remedy("cut less deep, or make the part thicker"),
        );
    }
    let axes = other_axes(pocket.side.axis());
    let [first, second] = axes.map(|axis| extent_along(&part.extent, axis));
    let pairs = [(pocket.first, first), (pocket.second, second)];
    if pairs.iter().any(|(cut, wood)| cut.overlap(*wood).is_none()) {
        findings.push(outside(part, word, feature.span, &pairs));
    }
}

/// A slope takes no more off a side than the part has there, and runs out within it.
fn check_slope(part: &Part, slope: &Slope, feature: &Feature, findings: &mut Findings) {
    let word = match slope.kind {
        SlopeKind::Mitre => "a mitre",
        SlopeKind::Bevel => "a bevel",
        SlopeKind::Taper => "a taper",
    };
    let across = extent_along(&part.extent, slope.side.axis()).size();
    let along = extent_along(&part.extent, slope.deep.axis()).size();
    if slope.inset > across {
        let message = format!(
            "{word} at the {} of \u{201c}{}\u{201d} takes more than there is",
            slope.side.word(),
            part.title
        );
        findings.push(
            Finding::new(&CUT_TOO_DEEP, feature.span, message)
                .figure("what it takes off", slope.inset)
                .figure("size of the part there", across)
                .remedy("choose a smaller angle, or take off less"),
        );
    }
    if slope.run > along {
        let message = format!(
            "{word} of the {} of \u{201c}{}\u{201d} runs out beyond the part",
            slope.side.word(),
            part.title
        );
        findings.push(
            Finding::new(&FEATURE_OUTSIDE, feature.span, message)
                .figure("how far it runs", slope.run)
                .figure("size of the part there", along)
                .remedy("let it run out within the part; leave `over` out for its whole length"),
        );
    }
}

/// A slot for a spline leaves wood between itself and the other sides.
fn check_spline_slot(part: &Part, slot: &SplineSlot, feature: &Feature, findings: &mut Findings) {
    let Some(left) = left_over(part, slot).filter(|left| !left.is_positive()) else {
        return;
    };
    let message = format!(
        "the slot for a spline at the {} of \u{201c}{}\u{201d} comes through",
        slot.slope.side.word(),
        part.title
    );
    findings.push(
        Finding::new(&CUT_TOO_DEEP, feature.span, message)
            .figure("depth of the slot", slot.depth)
            .figure("how far it comes through", -left)
            .remedy("use a narrower or a thinner spline, or thicker stock"),
    );
}

fn check_outline(part: &Part, contour: &Contour, feature: &Feature, findings: &mut Findings) {
    let ring = contour_ring(contour);
    let [length, width, _] = part.extent;
    if let Some(first) = ring.first() {
        let mut reach = [
            Interval::new(first.from.x, first.from.x),
            Interval::new(first.from.y, first.from.y),
        ];
        for edge in &ring {
            let at = [edge.to.x, edge.to.y];
            for (reach, value) in reach.iter_mut().zip(at) {
                *reach = reach.hull(Interval::new(value, value));
            }
        }
        for (reach, wood, word) in [(reach[0], length, "length"), (reach[1], width, "width")] {
            // Chords are rounded to nanometres: a micrometre over is none.
            let slack = Length::from_nm(1_000);
            if reach.low + slack < wood.low || reach.high > wood.high + slack {
                let finding = Finding::new(
                    &FEATURE_OUTSIDE,
                    feature.span,
                    format!(
                        "the outline of \u{201c}{}\u{201d} reaches over the part\u{2019}s {word}",
                        part.title
                    ),
                );
                findings.push(
                    finding
                        .figure(format!("{word} of the outline"), reach.size())
                        .figure(format!("{word} of the part"), wood.size())
                        .remedy(format!(
                            "make the {word} of the part as large as its outline"
                        )),
                );
            }
        }
    }
    if let Some(at) = self_crossing(&ring) {
        let finding = Finding::new(
            &OUTLINE_CROSSES,
            feature.span,
            format!(
                "the outline of \u{201c}{}\u{201d} crosses itself",
                part.title
            ),
        );
        findings.push(
            finding
                .figure("where, along the length", at.x)
                .figure("where, along the width", at.y)
                .remedy("follow the outline round once, in one sense, point after point"),
        );
    }
}

/// Where two edges of a ring that are not neighbours meet; its start where it encloses nothing.
fn self_crossing(ring: &[BoundaryEdge]) -> Option<PlanePoint> {
    let first = ring.first()?;
    if crate::geometry::region::doubled_area(ring).abs() < 0.002 {
        return Some(first.from);
    }
    // Sorted by where they begin along x, edges are compared only with those they may reach.
    let low = |edge: &BoundaryEdge| edge.from.x.min(edge.to.x);
    let high = |edge: &BoundaryEdge| edge.from.x.max(edge.to.x);
    let mut order: Vec<(usize, &BoundaryEdge)> = ring.iter().enumerate().collect();
    order.sort_by_key(|(number, edge)| (low(edge), *number));
    for (place, (i, a)) in order.iter().enumerate() {
        for (j, b) in order.iter().skip(place + 1) {
            if low(b) > high(a) {
                break;
            }
            let apart = i.abs_diff(*j);
            let neighbours = apart == 1 || apart + 1 == ring.len();
            if !neighbours && meet(a, b) {
                return Some(b.from);
            }
        }
    }
    None
}

/// True where two lines have a point in common.
fn meet(a: &BoundaryEdge, b: &BoundaryEdge) -> bool {
    let side = |from: PlanePoint, to: PlanePoint, point: PlanePoint| -> i128 {
        let part = |a: Length, b: Length| i128::from((b - a).nm());
        part(from.x, to.x) * part(from.y, point.y) - part(from.y, to.y) * part(from.x, point.x)
    };
    let (p, q) = (side(a.from, a.to, b.from), side(a.from, a.to, b.to));
    let (r, s) = (side(b.from, b.to, a.from), side(b.from, b.to, a.to));
    if p == 0 && q == 0 {
        let overlap = |a: Interval, b: Interval| a.low <= b.high && b.low <= a.high;
        return overlap(
            Interval::new(a.from.x, a.to.x),
            Interval::new(b.from.x, b.to.x),
        ) && overlap(
            Interval::new(a.from.y, a.to.y),
            Interval::new(b.from.y, b.to.y),
        );
    }
    p.signum() * q.signum() <= 0 && r.signum() * s.signum() <= 0
}
