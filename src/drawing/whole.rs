//! Pictures of the whole: the shaded cover, the overview with its dimensions, the explosion.

use std::collections::BTreeMap;

use super::blocking::Blocking;
use super::bodies::{Grade, Standing, add_pieces};
use super::compose::{Beside, Print, Shot, Staging, Studio, bounds_of, fit, framed};
use super::contacts::Box3;
use super::dimensions::overall_dimensions;
use super::explode::{Explosion, Move, Together, explode};
use super::picture::{Ink, Picture, Sheet};
use super::references::{Naming, Weight};
use super::scene::{BodyId, Scene};
use super::told;
use super::view::View;
use super::ways::ways;
use crate::build::{PlacedId, Pull};
use crate::display::{Figure, PT_PER_MM, Spot};
use crate::geometry::Interval;

/// Heights that pictures of the whole may take on a page, in millimetres.
const COVER_MM: f64 = 135.0;
const OVERVIEW_MM: f64 = 125.0;
const EXPLODED_MM: f64 = 205.0;
/// Left of an overview's width for figures beside it, in millimetres.
const DIMENSIONS_MM: f64 = 34.0;
/// A hole of 5 mm is drawn as one where it is larger than this on paper, in millimetres.
const SMALLEST_HOLE_MM: f64 = 1.0;
/// Builds of more pieces are exploded from their middle: which piece frees which is no picture
/// a reader could follow.
const MOST_EXPLODED: usize = 120;

/// The grade of detail that a scale has room for.
pub(super) fn grade(scale: f64) -> Grade {
    if scale / PT_PER_MM * 5_000.0 > SMALLEST_HOLE_MM {
        Grade::Fine
    } else {
        Grade::Coarse
    }
}

/// The number of a body as an id.
pub(super) fn body(number: usize) -> BodyId {
    BodyId(u32::try_from(number).unwrap_or(u32::MAX))
}

/// All pieces in their places.
fn assembled(studio: &Studio<'_>, view: &View, height_mm: f64) -> Staging {
    let scale = fit(
        &bounds_of(studio.contacts.boxes.iter(), view),
        studio.frame.width_mm,
        height_mm,
    );
    let pieces = 0..studio.build.placed.len();
    Staging {
        scene: all_in_place(studio, grade(scale)),
        pieces: pieces
            .map(|number| (body(number), PlacedId(number)))
            .collect(),
        ..Staging::default()
    }
}

/// The scene of all pieces in their places, as seen from afar.
pub(super) fn in_place(studio: &Studio<'_>) -> Scene {
    all_in_place(studio, Grade::Coarse)
}

fn all_in_place(studio: &Studio<'_>, grade: Grade) -> Scene {
    let placed = studio.build.placed.iter().enumerate();
    let standing: Vec<Standing<'_>> = placed
        .map(|(number, piece)| Standing {
            body: body(number),
            piece,
            grade,
            offset: [0.0; 3],
        })
        .collect();
    let mut scene = Scene::new();
    add_pieces(&mut scene, studio.build, studio.solids, &standing);
    scene
}

/// The shaded view for the cover, and the same view with width, depth and height.
pub(super) fn finished(studio: &Studio<'_>) -> Shot {
    let view = View::from_direction(View::ISOMETRIC);
    let high = |mm| studio.frame.height_mm(mm);
    Shot {
        staging: assembled(studio, &view, high(COVER_MM)),
        view,
        detail: None,
        prints: vec![
            Print {
                name: "cover".to_owned(),
                ink: Some(Ink::Shaded),
                height_mm: high(COVER_MM),
                with_inset_mm: f64::INFINITY,
                beside: Beside::References(BTreeMap::new()),
                alternative: told::cover(studio),
            },
            Print {
                name: "overview".to_owned(),
                ink: Some(Ink::New),
                height_mm: high(OVERVIEW_MM),
                with_inset_mm: f64::INFINITY,
                beside: Beside::Dimensions,
                alternative: told::overview(studio),
            },
        ],
    }
}

/// A picture with the overall dimensions of the build.
pub(super) fn dimensioned_figure(
    studio: &Studio<'_>,
    shot: &Shot,
    print: &Print,
    picture: &Picture,
) -> Figure {
    let scale = fit(
        &picture.bounds,
        studio.frame.width_mm - DIMENSIONS_MM,
        print.height_mm - DIMENSIONS_MM / 2.0,
    );
    let sheet = Sheet::new(&picture.bounds, scale, Spot::default());
    let mut drawn = shot.marks(print, picture, &sheet);
    let mut overall = Box3::NONE;
    for place in &studio.contacts.boxes {
        overall.join(place);
    }
    if let Some(sizes) = studio.build.overall {
        let (dimensions, _) = overall_dimensions(
            studio.fonts,
            &overall,
            sizes.map(Interval::size),
            &shot.view,
            &sheet,
            studio.precision(),
        );
        drawn.extend(dimensions);
    }
    framed(drawn, print.alternative.clone())
}

/// Everything exploded, with a reference to every part.
pub(super) fn exploded(studio: &Studio<'_>, blocking: &mut Blocking<'_>) -> Shot {
    let view = View::from_direction(View::ISOMETRIC);
    let all: Vec<PlacedId> = in_step_order(studio);
    // The author's directions hold here too; distances are for views of one step.
    let steps = studio.build.steps.iter();
    let pulls: Vec<Pull> = steps
        .flat_map(|step| step.pulls.iter())
        .map(|pull| Pull {
            distance: None,
            ..*pull
        })
        .collect();
    let moves = if all.len() <= MOST_EXPLODED {
        explode(
            studio.build,
            studio.contacts,
            blocking,
            &Explosion {
                standing: &[],
                moving: &all,
                pulls: &pulls,
                room: &BTreeMap::new(),
                view,
                together: Together::Nothing,
            },
        )
    } else {
        from_the_middle(studio, &all)
    };
    let offset = |piece: PlacedId| moves.get(&piece).map_or([0.0; 3], |moved| moved.offset);
    let boxes: Vec<Box3> = all
        .iter()
        .map(|piece| studio.contacts.place(*piece).shifted(offset(*piece)))
        .collect();
    let height_mm = studio.frame.height_mm(EXPLODED_MM);
    let scale = fit(
        &bounds_of(boxes.iter(), &view),
        studio.frame.width_mm,
        height_mm,
    );
    let mut staging = Staging::default();
    let mut standing = Vec::with_capacity(all.len());
    for (number, piece) in all.iter().enumerate() {
        let id = body(number);
        standing.extend(studio.build.piece(*piece).map(|placed| Standing {
            body: id,
            piece: placed,
            grade: grade(scale),
            offset: offset(*piece),
        }));
        staging.pieces.insert(id, *piece);
    }
    add_pieces(&mut staging.scene, studio.build, studio.solids, &standing);
    for (number, piece) in all.iter().enumerate() {
        if let Some(moved) = moves.get(piece) {
            let known = |other: PlacedId| moves.get(&other).map(|moved| moved.offset);
            for line in ways(*piece, moved, studio.contacts, blocking, known) {
                staging.scene.add_line(body(number), line);
            }
        }
    }
    let named: BTreeMap<PlacedId, Naming> = all
        .iter()
        .map(|piece| (*piece, Naming::alone(Weight::Strong)))
        .collect();
    Shot {
        staging,
        view,
        detail: None,
        prints: vec![Print {
            name: "exploded".to_owned(),
            ink: Some(Ink::New),
            height_mm,
            with_inset_mm: f64::INFINITY,
            beside: Beside::References(named),
            alternative: told::exploded(studio),
        }],
    }
}

/// Pieces in the order of the steps, then those that no step adds.
fn in_step_order(studio: &Studio<'_>) -> Vec<PlacedId> {
    let mut order: Vec<PlacedId> = (0..studio.build.placed.len()).map(PlacedId).collect();
    order.sort_by_key(|piece| {
        let step = studio.build.piece(*piece).and_then(|placed| placed.step);
        (step.is_none(), step, piece.0)
    });
    order
}

/// Every piece pushed away from the middle, by half as much again.
fn from_the_middle(studio: &Studio<'_>, all: &[PlacedId]) -> BTreeMap<PlacedId, Move> {
    let mut overall = Box3::NONE;
    for place in &studio.contacts.boxes {
        overall.join(place);
    }
    let [cx, cy, cz] = overall.middle();
    all.iter()
        .map(|piece| {
            let [x, y, z] = studio.contacts.place(*piece).middle();
            let offset = [x - cx, y - cy, z - cz].map(|part| (part * 0.5).round());
            (*piece, Move { offset, way: None })
        })
        .collect()
}
