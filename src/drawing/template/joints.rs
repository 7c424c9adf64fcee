//! Where sheets meet: a dashed line that both have, rings and crosses on it, and who comes next.

use super::super::pens::{THIN_MM, dashed, line};
use super::ink::Ink;
use super::{Leaf, points};
use crate::display::{Area, Ends, Mark, PT_PER_MM, Path, Spot, Tone};
use crate::full_size::{OVERLAP, Tile};
use crate::geometry::Interval;
use crate::text::{Anchor, TextStyle, shape_line, text_mark};

/// Radius of a register mark's ring and half of its cross, in millimetres.
pub(super) const RING_MM: f64 = 2.5;
const ARM_MM: f64 = 4.5;
/// Where on a joint register marks stand, as parts of its length.
const MARKED: [f64; 3] = [0.125, 0.5, 0.875];
/// Where the name of the next sheet may stand on it.
const NAMED: [f64; 5] = [0.42, 0.58, 0.3, 0.7, 0.2];
/// From a joint to the name of the sheet behind it, in millimetres.
const NAME_MM: f64 = 3.0;

/// A joint of a sheet with the one next to it.
struct Joint<'l> {
    /// The line both have, from end to end, on this sheet.
    ends: [Spot; 2],
    /// Which way the other sheet lies.
    way: [f64; 2],
    other: &'l Tile,
}

/// The joints of a sheet with those around it that are printed.
fn joints<'l>(leaf: &Leaf<'_, 'l>) -> Vec<Joint<'l>> {
    let Tile {
        row,
        column,
        window: [x, y],
        ..
    } = *leaf.tile;
    let half = OVERLAP.half();
    let at = |x, y| leaf.spot(x, y);
    let upright = |x| [at(x, y.high), at(x, y.low)];
    let level = |y| [at(x.low, y), at(x.high, y)];
    let around = [
        (
            Some(row),
            column.checked_sub(1),
            upright(x.low + half),
            [-1.0, 0.0],
        ),
        (
            Some(row),
            Some(column + 1),
            upright(x.high - half),
            [1.0, 0.0],
        ),
        (
            row.checked_sub(1),
            Some(column),
            level(y.high - half),
            [0.0, -1.0],
        ),
        (Some(row + 1), Some(column), level(y.low + half), [0.0, 1.0]),
    ];
    let found = around.into_iter().filter_map(|(row, column, ends, way)| {
        let other = leaf.sheets.at(row?, column?)?;
        Some(Joint { ends, way, other })
    });
    found.collect()
}

/// The lines, marks and names of all joints of a sheet.
pub(super) fn marks(leaf: &Leaf<'_, '_>, ink: &Ink) -> Vec<Mark> {
    let mut marks = Vec::new();
    let (mut lines, mut rings) = (Path::default(), Path::default());
    for joint in joints(leaf) {
        let [from, to] = joint.ends;
        lines
            .pieces
            .extend(Path::polyline(&[from, to], Ends::Open).pieces);
        let along = |part: f64| {
            Spot::new(
                from.x + (to.x - from.x) * part,
                from.y + (to.y - from.y) * part,
            )
        };
        for part in MARKED {
            rings.pieces.extend(register(along(part)).pieces);
        }
        let names = NAMED.map(|part| name(leaf, &joint, along(part)));
        let clear = |named: &&(Area, Vec<Mark>)| ink.within(&named.0) == 0;
        let chosen = names.iter().find(clear).or(names.first());
        marks.extend(
            chosen
                .into_iter()
                .flat_map(|(_, marks)| marks.iter().cloned()),
        );
    }
    marks.push(Mark::Stroke {
        path: lines,
        pen: dashed(THIN_MM, Tone::BLACK),
    });
    marks.push(Mark::Stroke {
        path: rings,
        pen: line(THIN_MM, Tone::BLACK),
    });
    marks
}

/// A ring with a cross through it.
fn register(at: Spot) -> Path {
    let mut path = Path::circle(at, RING_MM * PT_PER_MM);
    let arm = ARM_MM * PT_PER_MM;
    for (dx, dy) in [(arm, 0.0), (0.0, arm)] {
        let ends = [at.shifted(-dx, -dy), at.shifted(dx, dy)];
        path.pieces.extend(Path::polyline(&ends, Ends::Open).pieces);
    }
    path
}

/// The name of the sheet behind a joint, inside of it, with an arrow to it; and what it takes.
fn name(leaf: &Leaf<'_, '_>, joint: &Joint<'_>, at: Spot) -> (Area, Vec<Mark>) {
    let style = TextStyle::new(crate::display::Face::Regular, 8.0);
    let text = leaf.name_of(joint.other);
    let fonts = leaf.studio.fonts;
    let width = shape_line(fonts, &style, &text).width;
    let [wx, wy] = joint.way;
    let (away, arrow) = (NAME_MM * PT_PER_MM, 5.0);
    // The tip of the arrow, and the middle of the text behind it.
    let tip = at.shifted(-wx * away, -wy * away);
    let rise = fonts.cap_height(style.face) * style.size;
    let back = if wx == 0.0 {
        arrow + 3.0 + rise / 2.0
    } else {
        arrow + 3.0 + width / 2.0
    };
    let middle = tip.shifted(-wx * back, -wy * back);
    let base = [
        tip.shifted(-wx * arrow - wy * 2.0, -wy * arrow - wx * 2.0),
        tip.shifted(-wx * arrow + wy * 2.0, -wy * arrow + wx * 2.0),
    ];
    let [a, b] = base;
    let marks = vec![
        Mark::Fill {
            path: Path::polyline(&[tip, a, b], Ends::Joined),
            tone: Tone::BLACK,
        },
        text_mark(
            fonts,
            &style,
            Anchor::Middle,
            middle.shifted(0.0, rise / 2.0),
            &text,
        ),
    ];
    let corner = |spot: Spot| [spot.x, spot.y];
    let [x, y] = corner(middle);
    let [tx, ty] = corner(tip);
    let (left, right) = ((x - width / 2.0).min(tx), (x + width / 2.0).max(tx));
    let (top, bottom) = ((y - rise).min(ty), (y + rise).max(ty));
    let area = Area {
        x: left - 2.0,
        y: top - 2.0,
        width: right - left + 4.0,
        height: bottom - top + 4.0,
    };
    (area, marks)
}

/// The strip along an edge of a window that its neighbour shows too is no place for anything else.
pub(super) fn inner(leaf: &Leaf<'_, '_>) -> Area {
    let [x, y] = leaf.tile.window;
    let inset = |has: bool| {
        if has {
            OVERLAP
        } else {
            crate::units::Length::ZERO
        }
    };
    let has = |way: [f64; 2]| joints(leaf).iter().any(|joint| joint.way == way);
    let x = Interval::new(
        x.low + inset(has([-1.0, 0.0])),
        x.high - inset(has([1.0, 0.0])),
    );
    let y = Interval::new(
        y.low + inset(has([0.0, 1.0])),
        y.high - inset(has([0.0, -1.0])),
    );
    let corner = leaf.spot(x.low, y.high);
    Area {
        x: corner.x,
        y: corner.y,
        width: points(x.size()),
        height: points(y.size()),
    }
}
