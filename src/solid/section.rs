//! A part cut open: what is left of it behind a plane, and the face of the cut.

use super::cut::{Plane, cut};
use super::plane_faces::{faces_of, region_of};
use super::stack::{other_axes, outward};
use super::types::{Shell, SurfaceId};
use crate::geometry::{Region, Side};
use crate::units::Length;

/// A shell cut by a plane square to an axis of the part.
#[derive(Clone, Debug, Default)]
pub struct Section {
    /// What lies behind the plane, closed by the cut.
    pub shell: Shell,
    /// The cut itself, in the plane of the two axes that the plane runs along, in the part's
    /// order.
    pub face: Region,
}

/// The surface of a cut.
const CUT_SURFACE: SurfaceId = SurfaceId(u32::MAX);
/// How far the plane is from where it is asked for, in whole nanometres: corners of chords and
/// walls in the middle of a part do not lie in it, and a drawing cannot show it.
const ASIDE_NM: i64 = 1_000;

/// Cuts a part's shell by the plane `at` a level, and takes away what lies towards `side`.
pub fn section(shell: &Shell, side: Side, at: Length) -> Section {
    let plane = other_axes(side.axis());
    let normal = outward(side);
    let aside = Length::from_nm(if side.is_high() { ASIDE_NM } else { -ASIDE_NM });
    let level = at + aside;
    let distance = level.mm() * 1e6;
    let mut left = shell.clone();
    let before = Plane {
        normal,
        // Half a nanometre more: no corner lies in the plane.
        offset: if side.is_high() { distance } else { -distance } + 0.5,
    };
    cut(&mut left, &before, CUT_SURFACE);
    let mut cuts = Vec::new();
    left.faces.retain(|face| {
        let is_cut = face.surface == CUT_SURFACE;
        if is_cut {
            cuts.push(region_of(face, plane));
        }
        !is_cut
    });
    let face = Region::EMPTY.with(&cuts.iter().collect::<Vec<_>>());
    left.faces
        .extend(faces_of(&face, plane, level, normal, CUT_SURFACE));
    Section { shell: left, face }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::build::Part;
    use crate::model::{FeatureShape, MaterialForm, PocketKind};
    use crate::solid::samples::{at, holes, mm, part, pocket, span};
    use crate::solid::solid;

    fn cut_area(part: &Part, side: Side, at: f64) -> f64 {
        section(&solid(part, None).fine, side, mm(at))
            .face
            .area_mm2()
    }

    fn near(found: f64, exact: f64) {
        // Chords of the circles, and the plane a thousandth of a millimetre aside.
        assert!((found - exact).abs() < 1e-3 * exact, "{found}, not {exact}");
    }

    /// Rectangles and triangles by their formulas: nothing here is taken from the solid.
    #[test]
    fn the_cut_of_a_board_is_its_rectangle_less_what_is_drilled() {
        let board = part("Board", [600.0, 100.0, 18.0]);
        near(cut_area(&board, Side::Near, 50.0), 600.0 * 18.0);
        near(cut_area(&board, Side::Head, 50.0), 100.0 * 18.0);
        let mut stepped = holes(
            Side::Face,
            10.0,
            Some(15.0),
            &[at(100.0, 50.0), at(300.0, 50.0)],
        );
        stepped.counterbore = Some((25.0, 6.0)).map(|(wide, deep)| (mm(wide), mm(deep)));
        let drilled = board.clone().cut(FeatureShape::Holes(stepped));
        // Each is 25 by 6 and under it 10 by 9; beside them the board is whole.
        let cut = 600.0 * 18.0 - 2.0 * (25.0 * 6.0 + 10.0 * 9.0);
        for side in [Side::Near, Side::Far] {
            near(cut_area(&drilled, side, 50.0), cut);
        }
        near(cut_area(&drilled, Side::Near, 20.0), 600.0 * 18.0);
        let mut sunk = holes(Side::Back, 5.0, None, &[at(100.0, 50.0)]);
        sunk.countersink = Some(mm(11.0));
        let sunk = board.cut(FeatureShape::Holes(sunk));
        // A cone of 90 degrees: on either side of the hole a triangle of 3 by 3.
        near(
            cut_area(&sunk, Side::Near, 50.0),
            600.0 * 18.0 - 5.0 * 18.0 - 3.0 * 3.0,
        );
    }

    #[test]
    fn holes_in_edges_and_stopped_channels_are_cut_open() {
        let leg = part("Leg", [800.0, 70.0, 45.0])
            .cut(FeatureShape::Holes(holes(
                Side::Near,
                8.0,
                Some(22.0),
                &[at(40.0, 22.5), at(90.0, 22.5)],
            )))
            .cut(FeatureShape::Pocket(pocket(
                PocketKind::Dado,
                Side::Face,
                span(85.0, 95.0),
                span(30.0, 60.0),
                9.0,
            )));
        near(cut_area(&leg, Side::Head, 40.0), 70.0 * 45.0 - 8.0 * 22.0);
        // At 90 the dado is there too, 30 long and 9 deep.
        near(
            cut_area(&leg, Side::Head, 90.0),
            70.0 * 45.0 - 8.0 * 22.0 - 30.0 * 9.0,
        );
        // Seen from the edge the dowel holes are two discs in the wood.
        let discs = 2.0 * std::f64::consts::PI * 16.0;
        let open = section(&solid(&leg, None).fine, Side::Near, mm(10.0));
        assert!((800.0 * 45.0 - open.face.area_mm2() - discs).abs() < 0.01 * discs);
        assert_eq!(open.face.rings().count(), 3);
    }

    #[test]
    fn a_round_bar_is_cut_along_its_axis() {
        let round = Some(MaterialForm::Round { diameter: mm(20.0) });
        let bar = part("Bar", [300.0, 20.0, 20.0]).cut(FeatureShape::Holes(holes(
            Side::Foot,
            6.0,
            Some(30.0),
            &[at(10.0, 10.0)],
        )));
        let open = section(&solid(&bar, round).fine, Side::Near, mm(10.0));
        near(open.face.area_mm2(), 300.0 * 20.0 - 6.0 * 30.0);
    }
}
