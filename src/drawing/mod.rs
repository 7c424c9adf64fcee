//! Drawings: every figure of a plan from its build and the solids of its parts.
//!
//! In: a build, its [`Solids`], fonts. Out: [`Drawings`], display lists in points that fit the
//! text column of a page; and the safety [`signs`], which need nothing. Hidden lines and fills are exact in the plane of the view; step views
//! are exploded along ways that the parts can really go; what the author asks for wins. Never:
//! pages, anything that changes the build. Findings: views that show nothing.

mod anchor;
mod blocking;
mod bodies;
mod chains;
mod check_square;
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
mod frame;
mod free_room;
mod front;
mod grid;
mod hidden_lines;
mod inset;
mod layout;
mod look;
mod meetings;
mod merge;
mod part;
mod pens;
mod picture;
mod plates;
mod references;
mod rings;
mod scene;
pub mod scenes;
mod shots;
mod sign;
#[cfg(test)]
mod silhouette_tests;
mod silhouettes;
mod step;
mod subtract;
mod svg;
mod template;
#[cfg(test)]
mod tests;
mod thinning;
mod told;
mod view;
mod walls;
mod ways;
mod whole;
mod wholes;

use std::collections::BTreeMap;

pub use check_square::{INCHES, METRIC, SquareInk, check_square};
pub use examine::examine;
pub use fills::{VisibleFill, visible_fills};
pub use hidden_lines::{VisibleLine, drawn_lines, visible_lines};
pub use layout::cutting_layouts;
pub use part::setting_out_names;
pub use scene::{BodyId, EdgeKind, Scene, SceneEdge, SceneFace, SceneRound};
pub use sign::signs;
pub use svg::{
    DEFAULTS as SVG_DEFAULTS, SvgInPage, SvgLink, ToneOf, Toned, escaped, number, svg, svg_in_page,
};
pub use template::{sheet_name, template_name, template_sheets};
pub use view::{View, ViewPoint, WorldPoint};

use crate::build::Build;
use crate::display::Figure;
use crate::rules::SoundBuild;
use crate::solid::Solids;
use crate::text::Fonts;
use crate::words::Words;

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
pub fn draw(sound: &SoundBuild, solids: &Solids, fonts: &Fonts, words: &Words) -> Drawings {
    draw_build(sound.build(), solids, fonts, words)
}

/// Draws the cover, the overview, the exploded view and the views of all steps alone.
pub fn views(sound: &SoundBuild, solids: &Solids, fonts: &Fonts) -> Drawings {
    Drawings {
        figures: Studio::of(
            sound.build(),
            solids,
            fonts,
            &Words::english(),
            shots::views,
        ),
    }
}

/// Draws every figure of a build; tests of the drawings make theirs by hand.
fn draw_build(build: &Build, solids: &Solids, fonts: &Fonts, words: &Words) -> Drawings {
    if build.placed.is_empty() {
        return Drawings::default();
    }
    let figures = Studio::of(build, solids, fonts, words, |studio| {
        let mut figures = shots::views(studio);
        let (parts, elevations) = rayon::join(
            || {
                let templates = template::figures(studio);
                part::part_drawings(studio).into_iter().chain(templates)
            },
            || elevations::elevations(studio, &told::elevations(studio)),
        );
        figures.extend(parts);
        figures.extend(elevations.map(|figure| ("elevations".to_owned(), figure)));
        figures
    });
    Drawings { figures }
}
