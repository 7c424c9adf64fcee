//! Part shapes after joinery: every part of a build as a solid in its own frame.
//!
//! In: a [`Build`]. Out: [`Solids`], for each part plane faces and straight edges on a grid of
//! whole nanometres, and its exact measures. A part is layers along its thickness, each a plane
//! region; holes into edges and ends have frames of their own; broken arrises are cuts by planes.
//! Findings: features that cannot be made as they are described. Never: places in the world,
//! views, anything drawn.

mod arris;
mod bore_measures;
mod bores;
mod checks;
mod cone;
mod crossing_bores;
mod cut;
mod cut_rounds;
#[cfg(test)]
mod end_tests;
pub mod findings;
mod flat_measures;
#[cfg(test)]
mod kernel_tests;
mod layers;
mod measures;
mod pieces;
mod plane_faces;
mod pocket_hole;
mod round;
#[cfg(test)]
pub(crate) mod samples;
mod section;
mod side_areas;
mod slope;
mod spline_slot;
mod stack;
mod tenon;
#[cfg(test)]
mod tests;
mod types;
mod vectors;
mod walls;

pub use measures::Measures;
pub use round::rod;
pub use section::{Section, section};
pub use types::{BodyEdge, BodyFace, Joining, PartSolid, Point, Round, Shell, Solids, SurfaceId};

use rayon::iter::{IntoParallelRefIterator, ParallelIterator};

use crate::build::{Build, Part};
use crate::finding::{Findings, Outcome};
use crate::model::MaterialForm;

use layers::Detail;

/// The solids of all parts of a build.
pub fn shape(build: &Build) -> Outcome<Solids> {
    let form = |part: &Part| build.material(part.material).map(|material| material.form);
    let shaped: Vec<(PartSolid, Findings)> = build
        .parts
        .par_iter()
        .map(|part| {
            let solid = solid(part, form(part));
            let mut findings = checks::check(part);
            // A feature that is wrong in itself is not told to part the piece as well.
            if !findings.has_errors() {
                let stack = stack::Stack::of(part, form(part), Detail::FromAfar);
                pieces::check(part, &stack, &solid.measures, &mut findings);
            }
            (solid, findings)
        })
        .collect();
    let mut findings = Findings::new();
    let mut parts = Vec::with_capacity(shaped.len());
    for (solid, found) in shaped {
        parts.push(solid);
        findings.append(found);
    }
    Outcome {
        value: Solids { parts },
        findings,
    }
}

/// One part in both grades of detail, cut from stock of a form.
pub(crate) fn solid(part: &Part, form: Option<MaterialForm>) -> PartSolid {
    let shell = |detail| {
        let stack = stack::Stack::of(part, form, detail);
        layers::shell(part, &stack, detail)
    };
    let (fine, measures) = shell(Detail::Everything);
    let coarse = if layers::is_simpler_from_afar(part, form) {
        shell(Detail::FromAfar).0
    } else {
        fine.clone()
    };
    PartSolid {
        fine,
        coarse,
        measures,
    }
}
