//! In how many pieces a part comes out: what its features leave hangs together, or does not.

use std::collections::BTreeMap;
use std::collections::btree_map::Entry;

use super::findings::PART_IN_PIECES;
use super::layers::{Detail, Layer, left_of};
use super::measures::Measures;
use super::slope;
use super::stack::Stack;
use crate::build::Part;
use crate::finding::{Finding, Findings};
use crate::geometry::{Interval, PartAxis, Region};
use crate::model::FeatureShape;

/// Less than this in common holds nothing together: square millimetres.
const HOLDS_MM2: f64 = 0.01;

/// Checks that a part is there, and in one piece.
pub(super) fn check(part: &Part, stack: &Stack, measures: &Measures, findings: &mut Findings) {
    let cuts = |shape: &FeatureShape| match shape {
        FeatureShape::Pocket(_)
        | FeatureShape::Notch { .. }
        | FeatureShape::Outline(_)
        | FeatureShape::Slope(_)
        | FeatureShape::Tenon(_) => true,
        FeatureShape::Holes(holes) => holes.positions.len() > 1,
        FeatureShape::Arris { .. }
        | FeatureShape::PocketScrewHole(_)
        | FeatureShape::SplineSlot(_) => false,
    };
    // The last of the features that can part a piece stands for all.
    let Some(last) = part.features.iter().rev().find(|f| cuts(&f.shape)) else {
        return;
    };
    let pieces = of(part, stack, &left_of(part, stack, Detail::FromAfar));
    let whole = PartAxis::ALL
        .map(|axis| stack.reach(axis).size().mm())
        .iter()
        .product::<f64>();
    let nothing = measures.volume_mm3 < whole * 1e-6;
    let finding = match pieces.last() {
        _ if nothing => {
            let message = format!("nothing is left of \u{201c}{}\u{201d}", part.title);
            sized(
                Finding::new(&PART_IN_PIECES, last.span, message),
                "part",
                PartAxis::ALL.map(|axis| stack.reach(axis)),
            )
        }
        Some(smallest) if pieces.len() > 1 => {
            let message = format!(
                "\u{201c}{}\u{201d} comes out in {} pieces",
                part.title,
                pieces.len()
            );
            sized(
                Finding::new(&PART_IN_PIECES, last.span, message),
                "smallest piece",
                smallest.reach,
            )
        }
        _ => return,
    };
    findings.push(
        finding
            .remedy("cut less deep, less wide, or not from both sides in one place")
            .remedy("describe each piece as a part of its own"),
    );
}

fn sized(finding: Finding, of: &str, reach: [Interval; 3]) -> Finding {
    let sizes = PartAxis::ALL.into_iter().zip(reach);
    sizes.fold(finding, |finding, (axis, reach)| {
        finding.figure(format!("{} of the {of}", axis.word()), reach.size())
    })
}

/// A piece that hangs together.
struct Piece {
    volume_mm3: f64,
    /// Along length, width and thickness.
    reach: [Interval; 3],
}

/// The pieces of a part's layers, the largest first; slopes that stand square to the layers are
/// taken off them.
fn of(part: &Part, stack: &Stack, layers: &[Layer]) -> Vec<Piece> {
    let slopes: Vec<Region> = part
        .features
        .iter()
        .filter_map(|feature| match &feature.shape {
            FeatureShape::Slope(slope) => slope::section(slope, stack.plane),
            FeatureShape::Holes(_)
            | FeatureShape::Pocket(_)
            | FeatureShape::Notch { .. }
            | FeatureShape::Outline(_)
            | FeatureShape::Arris { .. }
            | FeatureShape::PocketScrewHole(_)
            | FeatureShape::SplineSlot(_)
            | FeatureShape::Tenon(_) => None,
        })
        .collect();
    let taken: Vec<&Region> = slopes.iter().collect();
    let mut shapes: Vec<(usize, Region, Piece)> = Vec::new();
    for (number, layer) in layers.iter().enumerate() {
        let region = layer.region.without(&taken);
        for shape in region.shapes {
            let shape = Region {
                shapes: vec![shape],
            };
            let piece = piece(&shape, stack, layer);
            shapes.push((number, shape, piece));
        }
    }
    // Every shape hangs with those of the next layer that it lies on.
    let mut group: Vec<usize> = (0..shapes.len()).collect();
    for (i, (low, a, _)) in shapes.iter().enumerate() {
        for (j, (high, b, _)) in shapes.iter().enumerate().skip(i + 1) {
            if *high == low + 1 && a.common(b).area_mm2() > HOLDS_MM2 {
                let (one, two) = (root(&group, i), root(&group, j));
                if let Some(slot) = group.get_mut(one.max(two)) {
                    *slot = one.min(two);
                }
            }
        }
    }
    let mut pieces: BTreeMap<usize, Piece> = BTreeMap::new();
    for (number, (_, _, piece)) in shapes.into_iter().enumerate() {
        match pieces.entry(root(&group, number)) {
            Entry::Vacant(slot) => {
                slot.insert(piece);
            }
            Entry::Occupied(mut slot) => {
                let whole = slot.get_mut();
                whole.volume_mm3 += piece.volume_mm3;
                for (reach, more) in whole.reach.iter_mut().zip(piece.reach) {
                    *reach = reach.hull(more);
                }
            }
        }
    }
    let mut pieces: Vec<Piece> = pieces.into_values().collect();
    pieces.sort_by(|a, b| b.volume_mm3.total_cmp(&a.volume_mm3));
    pieces
}

fn piece(shape: &Region, stack: &Stack, layer: &Layer) -> Piece {
    let mut reach = [layer.reach; 3];
    let [first, second] = stack.plane;
    let axes = [first, second].map(PartAxis::index);
    let mut met = false;
    for edge in shape.edges() {
        for (axis, value) in axes.into_iter().zip([edge.from.x, edge.from.y]) {
            if let Some(slot) = reach.get_mut(axis) {
                let point = Interval::new(value, value);
                *slot = if met { slot.hull(point) } else { point };
            }
        }
        met = true;
    }
    Piece {
        volume_mm3: shape.area_mm2() * layer.reach.size().mm(),
        reach,
    }
}

fn root(group: &[usize], mut at: usize) -> usize {
    while let Some(&up) = group.get(at) {
        if up == at {
            break;
        }
        at = up;
    }
    at
}
