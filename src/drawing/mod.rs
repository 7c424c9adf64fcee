//! Drawings: every figure of a plan from its build and the solids of its parts.
//!
//! In: a build, its [`Solids`], fonts. Out: [`Drawings`], display lists in points that fit the
//! text column of a page. Hidden lines and fills are exact in the plane of the view; step views
//! are exploded along ways that the parts can really go; what the author asks for wins. Never:
//! pages, anything that changes the build. Findings: views that show nothing.

mod anchor;
mod blocking;
mod bodies;
mod chains;
mod compose;
mod contacts;
mod curves;
mod detail;
mod dimensions;
mod elevations;
mod examine;
mod explode;
mod fills;
pub mod findings;
mod fittings;
mod free_room;
mod front;
mod grid;
mod hidden_lines;
mod inset;
mod layout;
mod look;
mod merge;
mod part;
mod pens;
mod picture;
mod references;
mod scene;
pub mod scenes;
mod shots;
#[cfg(test)]
mod silhouette_tests;
mod silhouettes;
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

use rayon::iter::{
    IndexedParallelIterator, IntoParallelRefIterator, ParallelBridge, ParallelIterator,
};

pub use examine::examine;
pub use fills::{VisibleFill, visible_fills};
pub use hidden_lines::{VisibleLine, drawn_lines, visible_lines};
pub use layout::cutting_layouts;
pub use part::setting_out_names;
pub use scene::{BodyId, EdgeKind, Scene, SceneEdge, SceneFace, SceneRound};
pub use svg::svg;
pub use view::{View, ViewPoint, WorldPoint};

use crate::build::Build;
use crate::display::Figure;
use crate::model::PartId;
use crate::rules::SoundBuild;
use crate::solid::Solids;
use crate::text::Fonts;

use blocking::Blocking;
use compose::Studio;

/// The figures of a plan by name: `cover`, `overview`, `elevations`, `exploded`, `step-1`, `step-2`, … for the
/// steps that have something to show, `part-A`, … for the parts that are more than plain, and
/// `setting-out-A`, … for their grids of holes.
#[derive(Clone, Debug, Default)]
pub struct Drawings {
    /// The figures.
    pub figures: BTreeMap<String, Figure>,
}

/// Draws every figure of a build that passed the rules.
pub fn draw(sound: &SoundBuild, solids: &Solids, fonts: &Fonts) -> Drawings {
    draw_build(sound.build(), solids, fonts)
}

/// Draws the cover, the overview, the exploded view and the views of all steps alone.
pub fn views(sound: &SoundBuild, solids: &Solids, fonts: &Fonts) -> Drawings {
    let build = sound.build();
    let contacts = contacts::Contacts::of(build);
    let studio = Studio {
        build,
        solids,
        fonts,
        contacts: &contacts,
    };
    Drawings {
        figures: views_of(&studio),
    }
}

/// Staging goes from step to step, each seen from where the last one was if that does; taking the
/// pictures is shared out. Which core took one does not show in it.
fn views_of(studio: &Studio<'_>) -> BTreeMap<String, Figure> {
    let blocking = Blocking::new(studio.build, studio.solids, studio.contacts);
    shots::shots(studio, blocking)
        .par_bridge()
        .flat_map_iter(|shot| shot.figures(studio))
        .collect()
}

/// Draws every figure of a build; tests of the drawings make theirs by hand.
fn draw_build(build: &Build, solids: &Solids, fonts: &Fonts) -> Drawings {
    if build.placed.is_empty() {
        return Drawings::default();
    }
    let contacts = contacts::Contacts::of(build);
    let studio = Studio {
        build,
        solids,
        fonts,
        contacts: &contacts,
    };
    let mut figures = views_of(&studio);
    let (parts, elevations) = rayon::join(
        || part_drawings(&studio),
        || elevations::elevations(&studio, &words::elevations(build)),
    );
    figures.extend(parts);
    figures.extend(elevations.map(|figure| ("elevations".to_owned(), figure)));
    Drawings { figures }
}

/// The drawings of all parts that are more than plain, and of their grids.
fn part_drawings(studio: &Studio<'_>) -> Vec<(String, Figure)> {
    studio
        .build
        .parts
        .par_iter()
        .enumerate()
        .flat_map_iter(|(number, own)| {
            let id = PartId(number);
            let drawn = part::part_figure(studio, id);
            let drawn = drawn.map(|figure| (part::name_of(own), figure));
            drawn
                .into_iter()
                .chain(part::setting_out_figures(studio, id))
        })
        .collect()
}
