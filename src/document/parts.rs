//! Part drawings with their tables: what is cut into each part, where and how deep.

use serde::Serialize;

use super::context::Facts;
use super::full_size::{self, FullSize, PartTemplate};
use super::measure::Measure;
use crate::build::Part;
use crate::drawing::setting_out_names;
use crate::geometry::region::contour_ring;
use crate::geometry::{Contour, ContourPiece, Interval, PartAxis, PlanePoint, Side};
use crate::model::{
    ArrisForm, Feature, FeatureShape, Holes, Pocket, PocketKind, Slope, SlopeKind, SplineSlot,
};
use crate::units::Length;

/// A part that has a drawing.
#[derive(Clone, Debug, Serialize)]
pub(super) struct DrawnPart {
    label: String,
    title: String,
    material: String,
    /// Pieces as drawn.
    count: i64,
    /// Pieces as the mirror image.
    mirrored: i64,
    size: Vec<Measure>,
    figure: String,
    /// On a narrow page: the figures of its sections, which stand by themselves.
    sections: Vec<Section>,
    /// Its full-size templates.
    templates: Vec<PartTemplate>,
    cuts: Vec<Cut>,
    /// The corners of an outline other than the rectangle.
    outline: Vec<Corner>,
}

/// A section through a part.
#[derive(Clone, Debug, Serialize)]
struct Section {
    letter: String,
    figure: String,
}

/// One thing that is cut into a part, by the number it has in the drawing.
#[derive(Clone, Debug, Default, Serialize)]
struct Cut {
    /// One number, or those of pocket holes that differ in their places alone.
    numbers: Vec<usize>,
    kind: &'static str,
    /// Into which side, or along which edge.
    sides: Vec<&'static str>,
    count: usize,
    /// Diameter, width or radius.
    across: Option<Measure>,
    /// How long, where it does not go from side to side.
    long: Option<Measure>,
    /// None where it goes through.
    depth: Option<Measure>,
    /// A wider mouth: its diameter, and its depth where it has a floor.
    mouth: Option<Measure>,
    mouth_depth: Option<Measure>,
    /// The angle of a slope, in degrees.
    angle: Option<String>,
    /// From the inner edge of a slanting face to the middle of the slot in it.
    inner: Option<Measure>,
    /// The sides that places are measured from.
    from: Vec<&'static str>,
    places: Vec<Place>,
    grid: Option<Grid>,
}

/// Distances from one side or from both, each with those that share the other one.
#[derive(Clone, Debug, Default, Serialize)]
struct Place {
    first: Vec<Measure>,
    second: Vec<Measure>,
}

/// A regular grid of holes.
#[derive(Clone, Debug, Serialize)]
struct Grid {
    counts: [i64; 2],
    pitches: Vec<Measure>,
    /// From corner hole to corner hole; none for a single row.
    diagonal: Option<Measure>,
    /// Holes further along both ways, and how far apart they then are.
    proof: Option<Proof>,
    /// Its setting-out drawing; none for a small one.
    figure: Option<String>,
    /// The two sides it is set out from.
    references: Vec<&'static str>,
}

/// A right triangle of whole pitches.
#[derive(Clone, Debug, Serialize)]
struct Proof {
    steps: [i64; 2],
    legs: Vec<Measure>,
    long: Measure,
    /// Three to four to five.
    three_four_five: bool,
}

/// A corner of an outline, and the radius of the arc that leads to it.
#[derive(Clone, Debug, Serialize)]
struct Corner {
    at: Vec<Measure>,
    radius: Option<Measure>,
}

pub(super) fn of(facts: &Facts, templates: &[FullSize]) -> Vec<DrawnPart> {
    let drawn = facts.build.parts.iter().filter_map(|part| {
        let figure = format!("part-{}", part.label);
        facts.figures.contains_key(&figure).then(|| DrawnPart {
            label: part.label.clone(),
            title: part.title.clone(),
            material: facts
                .build
                .material(part.material)
                .map(|material| material.title.clone())
                .unwrap_or_default(),
            count: part.count,
            mirrored: part.mirrored,
            size: Measure::all(&part.size(), facts.precision()),
            figure,
            sections: sections(facts, part),
            templates: full_size::of_part(templates, &part.label),
            cuts: cuts(facts, part),
            outline: outline(facts, part),
        })
    });
    drawn.collect()
}

fn sections(facts: &Facts, part: &Part) -> Vec<Section> {
    let before = format!("section-{}-", part.label);
    let named = facts.figures.keys().filter_map(|figure| {
        let letter = figure.strip_prefix(&before)?;
        Some(Section {
            letter: letter.to_owned(),
            figure: figure.clone(),
        })
    });
    named.collect()
}

fn cuts(facts: &Facts, part: &Part) -> Vec<Cut> {
    let mut cuts: Vec<Cut> = Vec::new();
    let named = setting_out_names(part);
    for ((number, feature), figure) in (1..).zip(&part.features).zip(named) {
        let Some(mut next) = cut(facts, part, feature) else {
            continue;
        };
        if let Some(grid) = &mut next.grid {
            grid.figure = figure.filter(|name| facts.figures.contains_key(name));
        }
        match cuts.last_mut() {
            Some(last) if next.is_pocket_hole() && last.is_like(&next) => {
                last.numbers.push(number);
                last.count += 1;
                let more = next.places.into_iter().flat_map(|place| place.first);
                if let Some(place) = last.places.first_mut() {
                    place.first.extend(more);
                }
            }
            Some(last) if last.is_in_row_with(&next) => {
                last.numbers.push(number);
                last.count += 1;
                let more = next.places.into_iter().flat_map(|place| place.second);
                if let Some(place) = last.places.first_mut() {
                    place.second.extend(more);
                }
            }
            _ => cuts.push(Cut {
                numbers: vec![number],
                ..next
            }),
        }
    }
    cuts
}

impl Cut {
    fn is_pocket_hole(&self) -> bool {
        self.kind == "pocket-hole"
    }

    /// True for two notches as far from the first side, as those between the fingers of a box
    /// joint.
    fn is_in_row_with(&self, other: &Self) -> bool {
        let first = |cut: &Self| cut.places.first().map(|place| place.first.clone());
        self.kind == "notch"
            && self.is_like(other)
            && self.long == other.long
            && first(self) == first(other)
    }

    /// True for two cuts that differ in their places alone.
    fn is_like(&self, other: &Self) -> bool {
        self.kind == other.kind
            && self.sides == other.sides
            && self.across == other.across
            && self.mouth == other.mouth
    }
}

fn cut(facts: &Facts, part: &Part, feature: &Feature) -> Option<Cut> {
    Some(match &feature.shape {
        FeatureShape::Holes(holes) => holes_cut(facts, part, holes),
        FeatureShape::Pocket(pocket) => pocket_cut(facts, part, pocket),
        FeatureShape::Notch {
            along_length,
            along_width,
        } => {
            let plane = [PartAxis::Length, PartAxis::Width];
            let at = PlanePoint::new(along_length.low, along_width.low);
            Cut {
                kind: "notch",
                count: 1,
                across: Some(facts.measure(along_width.size())),
                long: Some(facts.measure(along_length.size())),
                from: words(plane),
                places: places(facts, part, plane, &[at]),
                ..Cut::default()
            }
        }
        FeatureShape::Arris { sides, size, form } => Cut {
            kind: match form {
                ArrisForm::Round => "round-over",
                ArrisForm::Chamfer => "chamfer",
            },
            sides: sides.iter().map(|side| side.word()).collect(),
            count: 1,
            across: Some(facts.measure(*size)),
            ..Cut::default()
        },
        FeatureShape::PocketScrewHole(hole) => {
            let axis = PartAxis::ALL
                .into_iter()
                .find(|axis| *axis != hole.side.axis() && *axis != hole.end.axis())?;
            let low = extent(part, axis).low;
            Cut {
                kind: "pocket-hole",
                sides: vec![hole.side.word(), hole.end.word()],
                count: 1,
                across: Some(facts.fine_measure(hole.diameter)),
                mouth: Some(facts.fine_measure(hole.pilot)),
                from: vec![axis.low().word()],
                places: vec![Place {
                    first: vec![facts.measure(hole.position - low)],
                    second: Vec::new(),
                }],
                ..Cut::default()
            }
        }
        FeatureShape::Slope(slope) => slope_cut(facts, slope),
        FeatureShape::SplineSlot(slot) => spline_slot_cut(facts, part, slot),
        FeatureShape::Tenon(tenon) => Cut {
            kind: "tenon",
            sides: vec![tenon.end.word()],
            count: 1,
            across: Some(facts.fine_measure(tenon.thickness.size())),
            long: Some(facts.measure(tenon.width.size())),
            depth: Some(facts.measure(tenon.along.size())),
            ..Cut::default()
        },
        FeatureShape::Outline(_) => return None,
    })
}

fn slope_cut(facts: &Facts, slope: &Slope) -> Cut {
    let taper = slope.kind == SlopeKind::Taper;
    let (kind, other) = match slope.kind {
        SlopeKind::Mitre => ("mitre", slope.long()),
        SlopeKind::Bevel => ("bevel", slope.long()),
        SlopeKind::Taper => ("taper", slope.deep),
    };
    Cut {
        kind,
        sides: vec![slope.side.word(), other.word()],
        count: 1,
        across: Some(facts.measure(slope.inset)),
        long: taper.then(|| facts.measure(slope.run)),
        angle: Some(slope.printed_degrees()),
        ..Cut::default()
    }
}

fn spline_slot_cut(facts: &Facts, part: &Part, slot: &SplineSlot) -> Cut {
    let up = slot.runs_up();
    let (thick, run) = if up {
        (slot.along, slot.across)
    } else {
        (slot.across, slot.along)
    };
    let stopped = !up && run != extent(part, slot.axis());
    Cut {
        kind: "spline-slot",
        sides: vec![slot.slope.side.word()],
        count: 1,
        across: Some(facts.fine_measure(thick.size())),
        long: stopped.then(|| facts.measure(run.size())),
        depth: Some(facts.measure(slot.depth)),
        inner: (!up).then(|| facts.measure(thick.middle())),
        ..Cut::default()
    }
}

fn holes_cut(facts: &Facts, part: &Part, holes: &Holes) -> Cut {
    let plane = plane(holes.side);
    let grid = holes.grid.map(|grid| Grid {
        counts: [grid.counts.0, grid.counts.1],
        pitches: Measure::all(&[grid.pitches.0, grid.pitches.1], facts.precision()),
        diagonal: grid.diagonal().map(|diagonal| facts.measure(diagonal)),
        proof: grid.proof().map(|proof| Proof {
            steps: proof.steps,
            legs: Measure::all(&proof.legs, facts.precision()),
            long: facts.measure(proof.long),
            three_four_five: proof.three_four_five,
        }),
        figure: None,
        references: grid.references.iter().map(|side| side.word()).collect(),
    });
    let first = holes.positions.first().copied();
    let shown: Vec<PlanePoint> = if grid.is_some() {
        first.into_iter().collect()
    } else {
        holes.positions.clone()
    };
    let mouth = holes.counterbore.map(|bore| bore.0).or(holes.countersink);
    Cut {
        kind: if holes.countersink.is_some() {
            "countersunk-hole"
        } else {
            "hole"
        },
        sides: vec![holes.side.word()],
        count: holes.positions.len(),
        across: Some(facts.fine_measure(holes.diameter)),
        depth: holes.depth.map(|depth| facts.measure(depth)),
        mouth: mouth.map(|mouth| facts.fine_measure(mouth)),
        mouth_depth: holes.counterbore.map(|bore| facts.measure(bore.1)),
        from: words(plane),
        places: places(facts, part, plane, &shown),
        grid,
        ..Cut::default()
    }
}

fn pocket_cut(facts: &Facts, part: &Part, pocket: &Pocket) -> Cut {
    let plane = plane(pocket.side);
    let reaches = [pocket.first, pocket.second];
    let [first, second] = reaches.map(Interval::size);
    // Of the part's own size along a channel no word is lost.
    let runs = plane.into_iter().zip(reaches).any(|(axis, reach)| {
        let own = extent(part, axis);
        reach.low <= own.low && reach.high >= own.high
    });
    let at = PlanePoint::new(pocket.first.low, pocket.second.low);
    Cut {
        kind: match pocket.kind {
            PocketKind::Dado => "dado",
            PocketKind::Groove => "groove",
            PocketKind::Rabbet => "rabbet",
            PocketKind::Mortise => "mortise",
            PocketKind::Lap => "lap",
            PocketKind::Recess => "recess",
        },
        sides: vec![pocket.side.word()],
        count: 1,
        across: Some(facts.fine_measure(first.min(second))),
        long: (!runs).then(|| facts.measure(first.max(second))),
        depth: Some(facts.measure(pocket.depth)),
        from: words(plane),
        places: places(facts, part, plane, &[at]),
        ..Cut::default()
    }
}

fn outline(facts: &Facts, part: &Part) -> Vec<Corner> {
    let contour = part
        .features
        .iter()
        .find_map(|feature| match &feature.shape {
            FeatureShape::Outline(contour) => Some(contour),
            FeatureShape::Holes(_)
            | FeatureShape::Pocket(_)
            | FeatureShape::Notch { .. }
            | FeatureShape::Arris { .. }
            | FeatureShape::PocketScrewHole(_)
            | FeatureShape::Slope(_)
            | FeatureShape::SplineSlot(_)
            | FeatureShape::Tenon(_) => None,
        });
    let Some(contour) = contour else {
        return Vec::new();
    };
    let plane = [PartAxis::Length, PartAxis::Width];
    let mut from = contour.start;
    let mut corners = vec![Corner {
        at: place(facts, part, plane, contour.start),
        radius: None,
    }];
    for piece in &contour.pieces {
        let to = piece.end();
        if to != contour.start || matches!(piece, ContourPiece::Arc { .. }) {
            corners.push(Corner {
                at: place(facts, part, plane, to),
                radius: radius(from, *piece).map(|radius| facts.measure(radius)),
            });
        }
        from = to;
    }
    corners
}

/// The radius of an arc; none for a line.
fn radius(from: PlanePoint, piece: ContourPiece) -> Option<Length> {
    let one = Contour {
        start: from,
        pieces: vec![piece],
    };
    contour_ring(&one)
        .first()?
        .circle
        .map(|circle| circle.radius)
}

/// How far a point is from the low sides of its plane.
fn place(facts: &Facts, part: &Part, plane: [PartAxis; 2], at: PlanePoint) -> Vec<Measure> {
    let axes = plane.into_iter().zip([at.x, at.y]);
    axes.map(|(axis, value)| facts.measure(value - extent(part, axis).low))
        .collect()
}

/// Places in as few lines as can be: one where all lie in a row along a side.
fn places(facts: &Facts, part: &Part, plane: [PartAxis; 2], at: &[PlanePoint]) -> Vec<Place> {
    let [x, y] = plane.map(|axis| extent(part, axis).low);
    let first = |point: &PlanePoint| facts.measure(point.x - x);
    let second = |point: &PlanePoint| facts.measure(point.y - y);
    let Some(one) = at.first() else {
        return Vec::new();
    };
    if at.iter().all(|point| point.y == one.y) {
        vec![Place {
            first: at.iter().map(first).collect(),
            second: vec![second(one)],
        }]
    } else if at.iter().all(|point| point.x == one.x) {
        vec![Place {
            first: vec![first(one)],
            second: at.iter().map(second).collect(),
        }]
    } else {
        let each = at.iter().map(|point| Place {
            first: vec![first(point)],
            second: vec![second(point)],
        });
        each.collect()
    }
}

fn words(plane: [PartAxis; 2]) -> Vec<&'static str> {
    plane.iter().map(|axis| axis.low().word()).collect()
}

fn extent(part: &Part, axis: PartAxis) -> Interval {
    part.extent.get(axis.index()).copied().unwrap_or_default()
}

/// The axes of a side's plane, in the part's order.
fn plane(side: Side) -> [PartAxis; 2] {
    match side.axis() {
        PartAxis::Length => [PartAxis::Width, PartAxis::Thickness],
        PartAxis::Width => [PartAxis::Length, PartAxis::Thickness],
        PartAxis::Thickness => [PartAxis::Length, PartAxis::Width],
    }
}
