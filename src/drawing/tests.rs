//! Whole figures of small builds.

use super::{Drawings, draw, svg};
use crate::build::Build;
use crate::solid::samples::shelf_unit;
use crate::solid::shape;
use crate::text::Fonts;

fn drawings(build: &Build) -> Drawings {
    let fonts = Fonts::shipped().unwrap();
    draw(build, &shape(build).value, &fonts)
}

/// Writes figures to look at, where LOOK_AT names a folder.
fn look_at(drawings: &Drawings, prefix: &str) {
    if let Some(folder) = option_env!("LOOK_AT") {
        for (name, figure) in &drawings.figures {
            let path = std::path::Path::new(folder).join(format!("{prefix}{name}.svg"));
            std::fs::write(path, svg(figure)).unwrap();
        }
    }
}

#[test]
fn a_shelf_unit_is_drawn() {
    let build = shelf_unit();
    let drawings = drawings(&build);
    look_at(&drawings, "unit-");
    let names: Vec<&str> = drawings.figures.keys().map(String::as_str).collect();
    assert_eq!(
        names,
        [
            "cover", "exploded", "overview", "step-1", "step-2", "step-3", "step-4", "step-5"
        ]
    );
}
