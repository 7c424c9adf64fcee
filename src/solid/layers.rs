//! From features to layers, and from layers to a shell.

use super::arris;
use super::bores;
use super::cone::{self, Cone};
use super::cut_rounds::{Cylinder, find_rounds};
use super::measures::Measures;
use super::plane_faces::join_strips;
use super::pocket_hole;
use super::slope;
use super::spline_slot;
use super::stack::{Stack, extent_along, other_axes, sunk};
use super::tenon;
use super::types::{Round, Shell};
use super::vectors::floats;
use super::walls;
use crate::build::Part;
use crate::geometry::{Circle, Interval, PartAxis, PlanePoint, Region, Side};
use crate::model::{Feature, FeatureShape, Holes, MaterialForm, Pocket};
use crate::units::Length;

/// How much of a part is shaped.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Detail {
    /// Every hole as a hole.
    Everything,
    /// As much as is seen from afar: small holes as marks on the surface, others of fewer chords.
    FromAfar,
}

impl Detail {
    /// How many chords stand for a hole or a round bar. From afar is a fifth of the size or
    /// smaller: half of what a chord may leave its arc by is a line's width there.
    pub(super) fn chords(self, circle: Circle) -> u32 {
        match self {
            Self::Everything => circle.chords(),
            Self::FromAfar => circle.chords_within(16, 0.2),
        }
    }
}

/// Holes up to this diameter are small: in a view of a whole piece of furniture they are dots.
const SMALL: Length = Length::from_mm(13);

/// No more round walls than this are looked at where planes cut a part.
const MOST_WALLS: usize = 200;

/// Something taken out of a stretch of the stack.
pub(super) struct Cutter {
    /// What, in the layers' plane.
    pub(super) region: Region,
    /// From which level to which.
    pub(super) reach: Interval,
}

/// A layer: a region that is the same over a stretch of the stack.
pub(super) struct Layer {
    /// The wood.
    pub(super) region: Region,
    /// From which level to which.
    pub(super) reach: Interval,
}

/// True where a part looks different from afar.
pub(super) fn is_simpler_from_afar(part: &Part, form: Option<MaterialForm>) -> bool {
    let holed = |shape: &FeatureShape| matches!(shape, FeatureShape::Holes(_));
    matches!(form, Some(MaterialForm::Round { .. }))
        || part.features.iter().any(|feature| holed(&feature.shape))
}

/// True where even the widest of a hole's diameters is small.
pub(super) fn is_small(holes: &Holes) -> bool {
    let bore = holes.counterbore.map_or(Length::ZERO, |bore| bore.0);
    let sink = holes.countersink.unwrap_or_default();
    holes.diameter.max(bore).max(sink) <= SMALL
}

/// A part's shell and its measures.
pub(super) fn shell(part: &Part, stack: &Stack, detail: Detail) -> (Shell, Measures) {
    let cutters = cutters(part, stack, detail);
    let cones = cones(part, stack, detail);
    let layers = layers(stack, &cutters);
    let mut shell = Shell::default();
    let mut measures = Measures::default();
    walls::build(stack, &layers, &cones, &mut shell, &mut measures);
    if layers.len() > 1 {
        join_strips(stack, &mut shell);
    }
    if part.layers > 1 && stack.axis == PartAxis::Thickness {
        walls::seams(stack, &layers, part.layers, &mut shell);
    }
    bores::drill(part, stack, detail, &mut shell, &mut measures);
    pocket_hole::drill(part, &mut shell, &mut measures);
    if detail == Detail::FromAfar {
        bores::mark_small(part, &cutters, stack, &mut shell);
    }
    arris::break_arrises(part, stack, &mut shell, &mut measures);
    slope::cut_slopes(part, &mut shell, &mut measures);
    spline_slot::carve_slots(part, &mut shell, &mut measures);
    find_rounds(&mut shell, &cut_walls(part, stack, &layers));
    (shell, measures)
}

/// The round walls that planes may have cut; none where no plane has.
fn cut_walls(part: &Part, stack: &Stack, layers: &[Layer]) -> Vec<Cylinder> {
    let mut walls = arris::round_overs(part, stack);
    let slopes = |feature: &Feature| matches!(feature.shape, FeatureShape::Slope(_));
    if walls.is_empty() && !part.features.iter().any(slopes) {
        return walls;
    }
    let mut circles: Vec<Circle> = Vec::new();
    for edge in layers.iter().flat_map(|layer| layer.region.edges()) {
        if let Some(circle) = edge.circle
            && !circles.contains(&circle)
            && circles.len() < MOST_WALLS
        {
            circles.push(circle);
        }
    }
    let whole = stack.reach(stack.axis);
    walls.extend(circles.into_iter().map(|circle| {
        let round = Round::of(circle, stack.plane, whole.low);
        Cylinder {
            centre: floats(&round.centre),
            radii: round.radii,
        }
    }));
    walls
}

/// The layers that a part's features leave, but for slopes and broken arrises.
pub(super) fn left_of(part: &Part, stack: &Stack, detail: Detail) -> Vec<Layer> {
    layers(stack, &cutters(part, stack, detail))
}

/// The layers that are left of a stack.
fn layers(stack: &Stack, cutters: &[Cutter]) -> Vec<Layer> {
    let whole = stack.reach(stack.axis);
    let mut levels = vec![whole.low, whole.high];
    for cutter in cutters {
        levels.extend(
            [cutter.reach.low, cutter.reach.high]
                .into_iter()
                .filter(|level| whole.low < *level && *level < whole.high),
        );
    }
    levels.sort();
    levels.dedup();
    let mut layers: Vec<Layer> = Vec::new();
    let mut before: Option<Vec<usize>> = None;
    for (low, high) in levels.iter().zip(levels.iter().skip(1)) {
        let reach = Interval::new(*low, *high);
        let inside: Vec<usize> = cutters
            .iter()
            .enumerate()
            .filter(|(_, cutter)| cutter.reach.overlap(reach).is_some())
            .map(|(number, _)| number)
            .collect();
        if let (Some(last), true) = (layers.last_mut(), before.as_ref() == Some(&inside)) {
            last.reach.high = *high;
            continue;
        }
        let taken: Vec<&Region> = inside
            .iter()
            .filter_map(|number| cutters.get(*number))
            .map(|cutter| &cutter.region)
            .collect();
        layers.push(Layer {
            region: stack.base.without(&taken),
            reach,
        });
        before = Some(inside);
    }
    layers
}

/// Everything that is cut square to the layers or in blocks.
fn cutters(part: &Part, stack: &Stack, detail: Detail) -> Vec<Cutter> {
    let mut cutters = Vec::new();
    for feature in &part.features {
        match &feature.shape {
            FeatureShape::Holes(holes) => {
                if stack.caps(holes.side) && !(detail == Detail::FromAfar && is_small(holes)) {
                    hole_cutters(holes, stack, detail, &mut cutters);
                }
            }
            FeatureShape::Pocket(pocket) => cutters.extend(pocket_cutter(pocket, stack)),
            FeatureShape::Notch {
                along_length,
                along_width,
            } => {
                if stack.axis == PartAxis::Thickness {
                    cutters.push(Cutter {
                        region: Region::rectangle(*along_length, *along_width),
                        reach: stack.reach(stack.axis),
                    });
                }
            }
            FeatureShape::Arris { sides, size, form } => {
                cutters.extend(arris::upright_cutter(*sides, *size, *form, stack));
            }
            FeatureShape::Tenon(tenon) => tenon::shoulders(tenon, stack, &mut cutters),
            FeatureShape::Outline(_)
            | FeatureShape::PocketScrewHole(_)
            | FeatureShape::Slope(_)
            | FeatureShape::SplineSlot(_) => {}
        }
    }
    cutters
}

/// Discs of one diameter at every position.
pub(super) fn discs(positions: &[PlanePoint], diameter: Length, detail: Detail) -> Region {
    let disc = |at: &PlanePoint| {
        let circle = Circle::of_diameter(*at, diameter);
        Region::disc_in(circle, detail.chords(circle)).shapes
    };
    Region {
        shapes: positions.iter().flat_map(disc).collect(),
    }
}

fn hole_cutters(holes: &Holes, stack: &Stack, detail: Detail, cutters: &mut Vec<Cutter>) {
    let whole = stack.reach(stack.axis);
    let mut take = |diameter: Length, depth: Option<Length>| {
        cutters.push(Cutter {
            region: discs(&holes.positions, diameter, detail),
            reach: depth.map_or(whole, |depth| sunk(&stack.extent, holes.side, depth)),
        });
    };
    take(holes.diameter, holes.depth);
    if let Some((diameter, depth)) = holes.counterbore {
        take(diameter, Some(depth));
    }
    if let Some(mouth) = holes.countersink {
        take(mouth, Some(cone::depth(mouth, holes.diameter)));
    }
}

fn pocket_cutter(pocket: &Pocket, stack: &Stack) -> Option<Cutter> {
    let depth = sunk(&stack.extent, pocket.side, pocket.depth);
    if stack.caps(pocket.side) {
        let region = if pocket.round_ends {
            Region::slot(pocket.first, pocket.second)
        } else {
            Region::rectangle(pocket.first, pocket.second)
        };
        return Some(Cutter {
            region,
            reach: depth,
        });
    }
    if pocket.round_ends {
        return None;
    }
    let mut block = stack.extent;
    let axes = other_axes(pocket.side.axis());
    let laid = axes.into_iter().zip([pocket.first, pocket.second]);
    for (axis, reach) in laid.chain([(pocket.side.axis(), depth)]) {
        if let Some(part) = block.get_mut(axis.index()) {
            *part = reach;
        }
    }
    let [first, second] = stack.plane.map(|axis| extent_along(&block, axis));
    Some(Cutter {
        region: Region::rectangle(first, second),
        reach: extent_along(&block, stack.axis),
    })
}

/// The conical mouths of holes that are cut square to the layers.
fn cones(part: &Part, stack: &Stack, detail: Detail) -> Vec<Cone> {
    let mut cones = Vec::new();
    for feature in &part.features {
        if let FeatureShape::Holes(holes) = &feature.shape
            && let Some(mouth) = holes.countersink
            && stack.caps(holes.side)
            && !(detail == Detail::FromAfar && is_small(holes))
        {
            let reach = sunk(
                &stack.extent,
                holes.side,
                cone::depth(mouth, holes.diameter),
            );
            cones.extend(holes.positions.iter().map(|at| Cone {
                mouth: Circle::of_diameter(*at, mouth),
                bore: Circle::of_diameter(*at, holes.diameter),
                chords: detail.chords(Circle::of_diameter(*at, mouth)),
                reach,
                opens_up: holes.side.is_high(),
            }));
        }
    }
    cones
}

/// Where the surface is that a hole from `side` begins at: lower inside of a channel.
pub(super) fn surface_level(
    cutters: &[Cutter],
    stack: &Stack,
    side: Side,
    at: PlanePoint,
) -> Length {
    let whole = stack.reach(stack.axis);
    let mut level = if side.is_high() {
        whole.high
    } else {
        whole.low
    };
    loop {
        let next = cutters
            .iter()
            .filter(|cutter| cutter.region.holds(at))
            .filter(|cutter| cutter.reach.holds(level))
            .map(|cutter| {
                if side.is_high() {
                    cutter.reach.low
                } else {
                    cutter.reach.high
                }
            })
            .find(|next| {
                if side.is_high() {
                    *next < level
                } else {
                    *next > level
                }
            });
        match next {
            Some(next) => level = next,
            None => return level,
        }
    }
}
