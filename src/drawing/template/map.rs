//! A small map of all sheets of a template: which is this one, and which are left out.

use super::super::pens::{NARROW_MM, THIN_MM, line};
use super::{Leaf, points};
use crate::display::{Area, Ends, Face, Mark, Path, Spot, Tone};
use crate::full_size::{OVERLAP, Tile};
use crate::geometry::Interval;
use crate::text::{Anchor, TextStyle, text_mark};

/// Room for the numbers of rows and columns, in points.
const NUMBERS: f64 = 10.0;
/// The sheet that holds the map, on any copier.
const THIS: Tone = Tone::grey(0.8);

/// The map in its room.
pub(super) fn map(leaf: &Leaf<'_, '_>, room: Area) -> Vec<Mark> {
    let tiles = &leaf.sheets.tiles;
    let (Some(first), Some(last)) = (tiles.first(), tiles.last()) else {
        return Vec::new();
    };
    // Rows are counted from the top.
    let [left, top] = first.window;
    let [right, low] = last.window;
    let whole = [
        Interval::new(left.low, right.high),
        Interval::new(low.low, top.high),
    ];
    let [width, height] = whole.map(|way| points(way.size()));
    let scale = ((room.width - NUMBERS) / width).min((room.height - NUMBERS) / height);
    let [x, y] = whole;
    let corner = Spot::new(
        room.x + NUMBERS - points(x.low) * scale,
        room.y + NUMBERS + points(y.high) * scale,
    );
    let area = |tile: &Tile| {
        let [x, y] = own(leaf, tile);
        Area {
            x: corner.x + points(x.low) * scale,
            y: corner.y - points(y.high) * scale,
            width: points(x.size()) * scale,
            height: points(y.size()) * scale,
        }
    };
    let mut marks = vec![Mark::Fill {
        path: Path::rectangle(area(leaf.tile)),
        tone: THIS,
    }];
    let mut grid = Path::default();
    for tile in tiles {
        let area = area(tile);
        grid.pieces.extend(Path::rectangle(area).pieces);
        if !tile.printed {
            grid.pieces.extend(crossed_out(area).pieces);
        }
    }
    let small = leaf.pattern.outline.clone().scaled(scale);
    marks.push(Mark::Stroke {
        path: grid,
        pen: line(THIN_MM * 0.7, Tone::grey(0.3)),
    });
    marks.push(Mark::Stroke {
        path: small.shifted(corner.x, corner.y),
        pen: line(NARROW_MM, Tone::BLACK),
    });
    marks.extend(numbers(leaf, area));
    marks
}

/// What of a template is shown by a sheet alone: from joint to joint.
fn own(leaf: &Leaf<'_, '_>, tile: &Tile) -> [Interval; 2] {
    let half = OVERLAP.half();
    let sheets = leaf.sheets;
    let [x, y] = tile.window;
    let inset = |joined: bool| {
        if joined {
            half
        } else {
            crate::units::Length::ZERO
        }
    };
    [
        Interval::new(
            x.low + inset(tile.column > 1),
            x.high - inset(tile.column < sheets.columns),
        ),
        Interval::new(
            y.low + inset(tile.row < sheets.rows),
            y.high - inset(tile.row > 1),
        ),
    ]
}

/// Two diagonals.
fn crossed_out(area: Area) -> Path {
    let (right, bottom) = (area.x + area.width, area.y + area.height);
    let mut path = Path::default();
    for ends in [
        [Spot::new(area.x, area.y), Spot::new(right, bottom)],
        [Spot::new(area.x, bottom), Spot::new(right, area.y)],
    ] {
        path.pieces.extend(Path::polyline(&ends, Ends::Open).pieces);
    }
    path
}

/// The numbers of columns over the map and of rows beside it.
fn numbers(leaf: &Leaf<'_, '_>, area: impl Fn(&Tile) -> Area) -> Vec<Mark> {
    let regular = TextStyle::new(Face::Regular, 7.0);
    let bold = TextStyle::new(Face::Bold, 7.0);
    let mut marks = Vec::new();
    for tile in &leaf.sheets.tiles {
        let area = area(tile);
        let mut number = |number: usize, own: bool, at: Spot| {
            let style = if own { &bold } else { &regular };
            let text = number.to_string();
            marks.push(text_mark(
                leaf.studio.fonts,
                style,
                Anchor::Middle,
                at,
                &text,
            ));
        };
        if tile.row == 1 {
            let at = Spot::new(area.x + area.width / 2.0, area.y - 2.5);
            number(tile.column, tile.column == leaf.tile.column, at);
        }
        if tile.column == 1 {
            let at = Spot::new(area.x - 5.0, area.y + area.height / 2.0 + 2.5);
            number(tile.row, tile.row == leaf.tile.row, at);
        }
    }
    marks
}
