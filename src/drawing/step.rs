//! The exploded view of a step: what is there, what comes in and which way, what holds it.

use std::collections::{BTreeMap, BTreeSet};

use super::blocking::Blocking;
use super::bodies::{Grade, Standing, add_pieces};
use super::compose::{Beside, Print, Shot, Staging, Studio, bounds_of, fit};
use super::contacts::Box3;
use super::detail::too_small;
use super::explode::{Explosion, Move, Together, explode};
use super::fills::visible_fills;
use super::fittings::{add_fittings, room_for_dowels};
use super::look::{Subject, best_direction, piece_shown};
use super::picture::Ink;
use super::references::{Naming, Weight, column_mm};
use super::scene::BodyId;
use super::told;
use super::view::{View, WorldPoint};
use super::ways::ways;
use super::whole::{body, grade};
use crate::build::{PlacedId, Step};
use crate::display::PT_PER_MM;

/// Height that a step's picture may take, in millimetres, and that of its figure with an inset below it.
const STEP_MM: f64 = 98.0;
const WITH_INSET_MM: f64 = 110.0;
/// A step shows all that is there where it is no more than this; of more, the pieces around.
const MOST_BUILT: usize = 60;
/// Rings of touching pieces shown around what comes in.
const RINGS: usize = 2;
/// More references than this to what is there already would hide it.
const MOST_QUIET: usize = 6;
/// The smallest radius of a screw on paper, in millimetres.
const THINNEST_MM: f64 = 0.42;

/// A step's figure and the direction it is seen from, for the next one to follow.
pub(super) struct StagedStep {
    pub(super) shot: Shot,
    pub(super) direction: Option<[i64; 3]>,
}

/// What takes part in a step.
struct Arrangement {
    new: Vec<PlacedId>,
    built: Vec<PlacedId>,
    moves: BTreeMap<PlacedId, Move>,
    /// The ways of new pieces, by their place in `new`.
    ways: Vec<(usize, [WorldPoint; 2])>,
    subject: Subject,
}

/// Stages step `number`, of which the one before was seen from `before`.
pub(super) fn stage_step(
    studio: &Studio<'_>,
    number: usize,
    step: &Step,
    before: Option<[i64; 3]>,
    blocking: &mut Blocking<'_>,
) -> StagedStep {
    let asked = (!step.look.is_empty()).then(|| View::from_looks(&step.look));
    let usual = View::from_direction(before.unwrap_or(View::ISOMETRIC));
    let arranged = arrange(studio, number, step, &asked.unwrap_or(usual), blocking);
    let direction = match asked {
        Some(_) => None,
        None => Some(best_direction(&arranged.subject, before)),
    };
    let view = asked.unwrap_or_else(|| View::from_direction(direction.unwrap_or(View::ISOMETRIC)));
    let scale = scale_of(studio, &arranged, &view);
    let staging = stage(studio, step, &arranged, scale);
    let joints = studio.build.shown_joints(step);
    let detail = too_small(studio.build, &joints, scale)
        .map(|small| small.detail(&staging, &arranged.moves));
    let shot = Shot {
        staging,
        detail,
        view,
        prints: vec![Print {
            name: format!("step-{}", number + 1),
            ink: None,
            height_mm: studio.frame.height_mm(STEP_MM),
            with_inset_mm: studio.frame.height_mm(WITH_INSET_MM),
            beside: Beside::References(named(studio, step, &arranged)),
            alternative: told::step(studio, number, step, &arranged.moves),
        }],
    };
    StagedStep { shot, direction }
}

/// The pieces that come in with step `number` and of which less than `least` square micrometres
/// are seen from where the author says.
pub(super) fn unseen(
    studio: &Studio<'_>,
    number: usize,
    step: &Step,
    blocking: &mut Blocking<'_>,
    least: f64,
) -> Vec<PlacedId> {
    let view = View::from_looks(&step.look);
    let arranged = arrange(studio, number, step, &view, blocking);
    let towards = View::towards_looks(&step.look);
    // Samples of boxes tell most; what they do not see is looked at closely.
    let doubtful = |place: usize| piece_shown(&arranged.subject, place, towards) < least;
    if !(0..arranged.new.len()).any(doubtful) {
        return Vec::new();
    }
    let scale = scale_of(studio, &arranged, &view);
    let staging = stage(studio, step, &arranged, scale);
    let mut areas: BTreeMap<PlacedId, f64> = BTreeMap::new();
    for fill in visible_fills(&staging.scene, &view) {
        if let Some(piece) = staging.pieces.get(&fill.body) {
            *areas.entry(*piece).or_default() += fill.area();
        }
    }
    let mut pieces = arranged.new;
    pieces.retain(|piece| areas.get(piece).copied().unwrap_or(0.0) < least);
    pieces
}

fn arrange(
    studio: &Studio<'_>,
    number: usize,
    step: &Step,
    view: &View,
    blocking: &mut Blocking<'_>,
) -> Arrangement {
    let new: Vec<PlacedId> = known(studio, &studio.build.shown_adds(step));
    let joints = studio.build.shown_joints(step);
    let built = if stands_apart(studio, &joints, &new) {
        Vec::new()
    } else {
        around(studio, &earlier(studio, number, step), &new)
    };
    let moves = explode(
        studio.build,
        studio.contacts,
        blocking,
        &Explosion {
            standing: &built,
            moving: &new,
            pulls: &step.pulls,
            room: &room_for_dowels(studio.build, &joints),
            view: *view,
            together: Together::Wholes(studio.build.shown_in(step)),
        },
    );
    let there: BTreeSet<PlacedId> = built.iter().copied().collect();
    let offset_of = |other: PlacedId| {
        let standing = there.contains(&other).then_some([0.0; 3]);
        moves.get(&other).map(|moved| moved.offset).or(standing)
    };
    let mut lines = Vec::new();
    for (place, piece) in new.iter().enumerate() {
        if let Some(moved) = moves.get(piece) {
            let found = ways(*piece, moved, studio.contacts, blocking, offset_of);
            lines.extend(found.into_iter().map(|line| (place, line)));
        }
    }
    let subject = subject(studio, &new, &built, &moves);
    Arrangement {
        new,
        built,
        moves,
        ways: lines,
        subject,
    }
}

/// Ids that are pieces of the build, each once.
fn known(studio: &Studio<'_>, pieces: &[PlacedId]) -> Vec<PlacedId> {
    let mut seen = BTreeSet::new();
    pieces
        .iter()
        .filter(|piece| studio.build.piece(**piece).is_some() && seen.insert(**piece))
        .copied()
        .collect()
}

/// What the steps before have put together: into the build, or into the sub-assembly that the step
/// is about.
fn earlier(studio: &Studio<'_>, number: usize, step: &Step) -> Vec<PlacedId> {
    let into = studio.build.shown_in(step);
    let pieces = (0..studio.build.placed.len()).map(PlacedId);
    pieces
        .filter(|piece| {
            let comes = studio.build.comes(*piece, into);
            comes.is_some_and(|comes| comes < number)
        })
        .collect()
}

/// True for a step that puts pieces together without joining them to what is built: it is shown
/// by itself, as large as the page allows.
fn stands_apart(studio: &Studio<'_>, joints: &[usize], new: &[PlacedId]) -> bool {
    let own: BTreeSet<PlacedId> = new.iter().copied().collect();
    let mut joints = joints
        .iter()
        .filter_map(|index| studio.build.joints.get(*index))
        .peekable();
    joints.peek().is_some()
        && joints.all(|joint| own.contains(&joint.part) && own.contains(&joint.to))
}

/// All that is built, or of much the pieces around what comes in.
fn around(studio: &Studio<'_>, built: &[PlacedId], new: &[PlacedId]) -> Vec<PlacedId> {
    let there: BTreeSet<PlacedId> = built
        .iter()
        .filter(|piece| !new.contains(piece))
        .copied()
        .collect();
    if there.len() <= MOST_BUILT {
        return there.into_iter().collect();
    }
    let mut shown: BTreeSet<PlacedId> = BTreeSet::new();
    let mut edge: Vec<PlacedId> = new.to_vec();
    for _ in 0..RINGS {
        let mut next = Vec::new();
        for touch in edge
            .iter()
            .flat_map(|piece| studio.contacts.of_piece(*piece))
        {
            if there.contains(&touch.other) && shown.len() < MOST_BUILT && shown.insert(touch.other)
            {
                next.push(touch.other);
            }
        }
        edge = next;
    }
    if new.is_empty() {
        return there.into_iter().take(4 * MOST_BUILT).collect();
    }
    shown.into_iter().collect()
}

fn subject(
    studio: &Studio<'_>,
    new: &[PlacedId],
    built: &[PlacedId],
    moves: &BTreeMap<PlacedId, Move>,
) -> Subject {
    let there: BTreeSet<&PlacedId> = built.iter().collect();
    let place = |piece: &PlacedId| studio.contacts.place(*piece);
    Subject {
        new: new
            .iter()
            .map(|piece| {
                let offset = moves.get(piece).map_or([0.0; 3], |moved| moved.offset);
                place(piece).shifted(offset)
            })
            .collect(),
        built: built.iter().map(place).collect(),
        places: new
            .iter()
            .flat_map(|piece| studio.contacts.of_piece(*piece))
            .filter(|touch| there.contains(&touch.other))
            .map(|touch| touch.shared)
            .collect(),
    }
}

/// The scale of a step's picture, in points for a micrometre.
fn scale_of(studio: &Studio<'_>, arranged: &Arrangement, view: &View) -> f64 {
    let boxes = arranged.subject.new.iter().chain(&arranged.subject.built);
    let width = studio.frame.width_mm - 2.0 * column_mm(&studio.frame);
    fit(
        &bounds_of(boxes, view),
        width,
        studio.frame.height_mm(STEP_MM),
    )
}

/// The scene of a step, in the grade that suits its scale.
fn stage(studio: &Studio<'_>, step: &Step, arranged: &Arrangement, scale: f64) -> Staging {
    let boxes = || arranged.subject.new.iter().chain(&arranged.subject.built);
    let mut all = Box3::NONE;
    for place in boxes() {
        all.join(place);
    }
    let mut staging = Staging::default();
    let new = arranged.new.iter().map(|piece| (piece, Ink::New));
    let built = arranged.built.iter().map(|piece| (piece, Ink::Built));
    let mut standing = Vec::with_capacity(arranged.new.len() + arranged.built.len());
    for (number, (piece, ink)) in new.chain(built).enumerate() {
        let id = body(number);
        let grade = if ink == Ink::Built {
            coarser(grade(scale), arranged.built.len())
        } else {
            grade(scale)
        };
        let moved = arranged.moves.get(piece);
        standing.extend(studio.build.piece(*piece).map(|piece| Standing {
            body: id,
            piece,
            grade,
            offset: moved.map_or([0.0; 3], |moved| moved.offset),
        }));
        staging.inks.insert(id, ink);
        staging.pieces.insert(id, *piece);
    }
    add_pieces(&mut staging.scene, studio.build, studio.solids, &standing);
    for (number, line) in &arranged.ways {
        staging.scene.add_line(body(*number), *line);
    }
    let first = body(arranged.new.len() + arranged.built.len());
    let count = add_fittings(
        &mut staging.scene,
        first,
        studio.build,
        &studio.build.shown_joints(step),
        &arranged.moves,
        THINNEST_MM * PT_PER_MM / scale.max(1e-12),
        (all.diagonal() * 0.05).clamp(8_000.0, 80_000.0),
    );
    for number in first.0..first.0 + count {
        staging.inks.insert(BodyId(number), Ink::Hardware);
    }
    staging
}

/// Many pieces that are there already are drawn with small holes as marks.
const fn coarser(grade: Grade, count: usize) -> Grade {
    if count > 12 { Grade::Coarse } else { grade }
}

/// Which pieces get a reference: what comes in, and what it is joined to.
fn named(studio: &Studio<'_>, step: &Step, arranged: &Arrangement) -> BTreeMap<PlacedId, Naming> {
    let into = studio.build.shown_in(step);
    let mut named: BTreeMap<PlacedId, Naming> = arranged
        .new
        .iter()
        .map(|piece| {
            let naming = Naming {
                weight: Weight::Strong,
                whole: studio.build.comes_with(*piece, into),
            };
            (*piece, naming)
        })
        .collect();
    let mut quiet: BTreeSet<&str> = BTreeSet::new();
    let joints = studio.build.shown_joints(step);
    let joints = joints.iter().filter_map(|n| studio.build.joints.get(*n));
    for piece in joints.flat_map(|joint| [joint.part, joint.to]) {
        let Some(part) = studio.build.part_of(piece) else {
            continue;
        };
        let fits = quiet.contains(part.label.as_str()) || quiet.len() < MOST_QUIET;
        if arranged.built.contains(&piece) && fits {
            quiet.insert(&part.label);
            named.entry(piece).or_insert(Naming::alone(Weight::Quiet));
        }
    }
    named
}
