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
mod cut;
pub mod findings;
#[cfg(test)]
mod kernel_tests;
mod layers;
mod measures;
mod plane_faces;
mod pocket_hole;
mod round;
#[cfg(test)]
pub(crate) mod samples;
mod stack;
#[cfg(test)]
mod tests;
mod types;
mod walls;

pub use measures::Measures;
pub use round::rod;
pub use types::{BodyEdge, BodyFace, Joining, PartSolid, Point, Round, Shell, Solids, SurfaceId};

use rayon::iter::{IntoParallelRefIterator, ParallelIterator};

use crate::build::{Build, Part};
use crate::finding::{Findings, Outcome};
use crate::model::MaterialForm;

use layers::Detail;

/// The solids of all parts of a build.
pub fn shape(build: &Build) -> Outcome<Solids> {
    let mut findings = Findings::new();
    for part in &build.parts {
        checks::check(part, &mut findings);
    }
    let parts = build
        .parts
        .par_iter()
        .map(|part| {
            let form = build.material(part.material).map(|material| material.form);
            solid(part, form)
        })
        .collect();
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
