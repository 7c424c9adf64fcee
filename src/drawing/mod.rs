//! Drawings: every figure of a plan from its build and the solids of its parts.
//!
//! In: a build, its [`Solids`], fonts. Out: [`Drawings`], display lists in points that fit the
//! text column of a page. Hidden lines and fills are exact in the plane of the view; step views
//! are exploded along ways that the parts can really go; what the author asks for wins. Never:
//! pages, findings, anything that changes the build.

mod anchor;
mod blocking;
mod bodies;
mod chains;
mod compose;
mod contacts;
mod dimensions;
mod explode;
mod fills;
mod fittings;
mod front;
mod grid;
mod hidden_lines;
mod layout;
mod look;
mod merge;
mod pens;
mod picture;
mod references;
mod scene;
pub mod scenes;
mod step;
mod svg;
#[cfg(test)]
mod tests;
mod thinning;
mod view;
mod walls;
mod ways;
mod whole;
mod words;

use std::collections::BTreeMap;

pub use fills::{VisibleFill, visible_fills};
pub use hidden_lines::{VisibleLine, drawn_lines, visible_lines};
pub use layout::cutting_layouts;
pub use scene::{BodyId, EdgeKind, Scene, SceneEdge, SceneFace};
pub use svg::svg;
pub use view::{View, ViewPoint, WorldPoint};

use crate::build::Build;
use crate::display::Figure;
use crate::rules::SoundBuild;
use crate::solid::Solids;
use crate::text::Fonts;

use compose::{Shot, Studio};

/// So many figures are staged at a time: enough to share out, few enough to hold.
const BATCH: usize = 16;

/// The figures of a plan by name: `cover`, `overview`, `exploded`, and `step-1`, `step-2`, … for
/// the steps that have something to show.
#[derive(Clone, Debug, Default)]
pub struct Drawings {
    /// The figures.
    pub figures: BTreeMap<String, Figure>,
}

/// Draws every figure of a build that passed the rules.
pub fn draw(sound: &SoundBuild, solids: &Solids, fonts: &Fonts) -> Drawings {
    draw_build(sound.build(), solids, fonts)
}

/// Draws every figure of a build; tests of the drawings make theirs by hand.
fn draw_build(build: &Build, solids: &Solids, fonts: &Fonts) -> Drawings {
    let mut figures = BTreeMap::new();
    if build.placed.is_empty() {
        return Drawings { figures };
    }
    let contacts = contacts::Contacts::of(build);
    let mut blocking = blocking::Blocking::new(build, solids, &contacts);
    let studio = Studio {
        build,
        solids,
        fonts,
        contacts: &contacts,
    };
    let mut staged: Vec<(String, Shot)> = vec![
        ("cover".to_owned(), whole::cover(&studio)),
        ("overview".to_owned(), whole::overview(&studio)),
        (
            "exploded".to_owned(),
            whole::exploded(&studio, &mut blocking),
        ),
    ];
    let mut before = None;
    for (number, step) in build.steps.iter().enumerate() {
        // A step that adds nothing and joins nothing has nothing to show.
        if step.adds.is_empty() && step.joints.is_empty() {
            continue;
        }
        let next = step::stage_step(&studio, number, step, before, &mut blocking);
        before = next.direction.or(before);
        staged.push((format!("step-{}", number + 1), next.shot));
        if staged.len() >= BATCH {
            draw_staged(&studio, &mut staged, &mut figures);
        }
    }
    draw_staged(&studio, &mut staged, &mut figures);
    Drawings { figures }
}

/// Draws what is staged, and clears the stage; figures of which nothing is seen are left out.
fn draw_staged(
    studio: &Studio<'_>,
    staged: &mut Vec<(String, Shot)>,
    figures: &mut BTreeMap<String, Figure>,
) {
    let (names, shots): (Vec<String>, Vec<Shot>) = staged.drain(..).unzip();
    let drawn = compose::figures(studio, &shots);
    let seen = names
        .into_iter()
        .zip(drawn)
        .filter(|(_, figure)| !figure.marks.is_empty());
    figures.extend(seen);
}
