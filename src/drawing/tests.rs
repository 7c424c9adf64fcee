//! Whole figures of small builds.

use super::{Drawings, draw_build};
use crate::build::Build;
use crate::solid::samples::shelf_unit;
use crate::solid::shape;
use crate::text::Fonts;
use crate::words::Words;

fn drawings(build: &Build) -> Drawings {
    let fonts = Fonts::shipped().unwrap();
    draw_build(build, &shape(build).value, &fonts, &Words::english())
}

#[test]
fn a_shelf_unit_is_drawn() {
    let build = shelf_unit();
    let drawings = drawings(&build);
    let names: Vec<&str> = drawings.figures.keys().map(String::as_str).collect();
    assert_eq!(
        names,
        [
            "cover",
            "elevations",
            "exploded",
            "overview",
            "part-A",
            "part-B",
            "part-C",
            "part-D",
            "part-E",
            "step-1",
            "step-2",
            "step-3",
            "step-4",
            "step-5"
        ]
    );
    for (name, figure) in &drawings.figures {
        assert_eq!(
            figure.to_scale,
            name.starts_with("part-") || name == "elevations"
        );
    }
}
