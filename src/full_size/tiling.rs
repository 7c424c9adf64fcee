//! Sheets of paper over a template: how much of it each one shows, and which show nothing.

use super::Laid;
use crate::geometry::{Interval, PlanePoint};
use crate::model::Sheet;
use crate::units::Length;

/// Paper that stays free all around: printers leave up to 6.35 mm (1/4 in) white (common practice,
/// no source).
pub const EDGE: Length = Length::from_mm(10);
/// The running head, above the window.
pub const HEAD: Length = Length::from_mm(5);
/// What the sheet is, below the window.
pub const FOOT: Length = Length::from_mm(30);
/// How much of two sheets that lie over each other is on both (common practice, no source).
pub const OVERLAP: Length = Length::from_mm(10);
/// Between an outline and the edge of the outermost window.
pub const CLEAR: Length = Length::from_mm(5);

/// A page that templates are printed on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Page {
    /// The sheet.
    pub sheet: Sheet,
    /// Its width as it lies.
    pub width: Length,
    /// Its height as it lies.
    pub height: Length,
}

impl Page {
    /// A sheet that stands upright.
    pub const fn upright(sheet: Sheet) -> Self {
        let (width, height) = sheet.size();
        Self {
            sheet,
            width,
            height,
        }
    }

    /// A sheet that lies across.
    pub const fn across(sheet: Sheet) -> Self {
        let (height, width) = sheet.size();
        Self {
            sheet,
            width,
            height,
        }
    }

    /// Width and height of the window that it shows a template through.
    pub fn window(&self) -> [Length; 2] {
        [self.width - EDGE * 2, self.height - EDGE * 2 - HEAD - FOOT]
    }
}

/// Width and height of the window of a sheet that stands upright.
pub fn window_size(sheet: Sheet) -> [Length; 2] {
    Page::upright(sheet).window()
}

/// A sheet of a template.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Tile {
    /// Its row, counted from the top from 1.
    pub row: usize,
    /// Its column, counted from the left from 1.
    pub column: usize,
    /// What of the template it shows, along the lines of print and across them.
    pub window: [Interval; 2],
    /// Something is on it: it is printed.
    pub printed: bool,
}

/// The sheets of a template.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Sheets {
    /// The page of each.
    pub page: Page,
    /// How many rows.
    pub rows: usize,
    /// How many columns.
    pub columns: usize,
    /// All of them, row by row, those that are left out included.
    pub tiles: Vec<Tile>,
}

impl Sheets {
    /// Those that are printed.
    pub fn printed(&self) -> impl Iterator<Item = &Tile> {
        self.tiles.iter().filter(|tile| tile.printed)
    }

    /// The sheet of a row and a column, if it is printed.
    pub fn at(&self, row: usize, column: usize) -> Option<&Tile> {
        self.printed()
            .find(|tile| tile.row == row && tile.column == column)
    }
}

/// A template on one sheet; none where it does not go on.
pub(super) fn on_one(reach: [Interval; 2], sheet: Sheet) -> Option<Sheets> {
    let pages = [Page::upright(sheet), Page::across(sheet)];
    let page = pages.into_iter().find(|page| {
        let sizes = reach.iter().zip(page.window());
        sizes
            .into_iter()
            .all(|(own, room)| own.size() + CLEAR * 2 <= room)
    })?;
    let mut windows = reach
        .iter()
        .zip(page.window())
        .map(|(own, room)| around(*own, room));
    let window = [windows.next()?, windows.next()?];
    Some(Sheets {
        page,
        rows: 1,
        columns: 1,
        tiles: vec![Tile {
            row: 1,
            column: 1,
            window,
            printed: true,
        }],
    })
}

/// The smallest sheet that a template of this size goes on, of those the author's unit system goes
/// with; none where it goes on none.
pub fn smallest_sheet(reach: [Interval; 2], metric_first: bool) -> Option<Sheet> {
    let [x, y] = reach;
    Sheet::ALL
        .into_iter()
        .filter(|sheet| sheet.is_metric() == metric_first)
        .find(|sheet| on_one([x, y], *sheet).is_some() || on_one([y, x], *sheet).is_some())
}

/// A stretch of `room` with another in its middle.
fn around(own: Interval, room: Length) -> Interval {
    let low = own.middle() - room.half();
    Interval::new(low, low + room)
}

/// Where in the room that is left over an outline may lie, as parts of it, the best first.
const LAID: [(i64, i64); 5] = [(1, 2), (1, 4), (3, 4), (0, 1), (1, 1)];
/// A joint nearer to the middle line of a template than this is taken for it.
const NEAR_MIDDLE: Length = Length::from_mm(8);

/// The windows along one way: as few as show it all.
#[derive(Clone, Debug)]
struct Row {
    windows: Vec<Interval>,
    /// A joint lies where the middle line is drawn.
    on_middle: bool,
}

/// Ways to lay windows over a stretch; one where there is no joint.
fn rows(own: Interval, room: Length) -> Vec<Row> {
    let step = room - OVERLAP;
    let needed = own.size() + CLEAR * 2;
    let mut count: i64 = 1;
    let mut whole = room;
    while whole < needed && count < 1_000 {
        count += 1;
        whole += step;
    }
    let free = whole - needed;
    let laid = |(part, of): (i64, i64)| {
        let first = own.low - CLEAR - free * part / of;
        let windows: Vec<Interval> = (0..count)
            .map(|number| {
                let low = first + step * number;
                Interval::new(low, low + room)
            })
            .collect();
        let joints = windows
            .iter()
            .skip(1)
            .map(|window| window.low + OVERLAP.half());
        let on_middle = joints
            .into_iter()
            .any(|joint| (joint - own.middle()).abs() < NEAR_MIDDLE);
        Row { windows, on_middle }
    };
    let ways = if count == 1 { 1 } else { LAID.len() };
    LAID.into_iter().take(ways).map(laid).collect()
}

/// A template on as many sheets as it takes, laid so that as few as can be are printed.
pub(super) fn on_several(laid: &Laid, sheet: Sheet) -> Sheets {
    let page = Page::upright(sheet);
    let [width, height] = page.window();
    let [across, up] = laid.reach;
    let mut best: Option<((usize, usize), Sheets)> = None;
    let levels = rows(up, height);
    for columns in rows(across, width) {
        for rows in &levels {
            let sheets = tiled(laid, page, &columns.windows, &rows.windows);
            let on_middle = usize::from(columns.on_middle) + usize::from(rows.on_middle);
            let cost = (sheets.printed().count(), on_middle);
            if best.as_ref().is_none_or(|(least, _)| cost < *least) {
                best = Some((cost, sheets));
            }
        }
    }
    best.map_or_else(|| tiled(laid, page, &[], &[]), |(_, sheets)| sheets)
}

/// The sheets of windows over each other and side by side, each from low to high.
fn tiled(laid: &Laid, page: Page, columns: &[Interval], rows: &[Interval]) -> Sheets {
    let mut tiles = Vec::with_capacity(rows.len() * columns.len());
    // Read from the top.
    for (row, y) in rows.iter().rev().enumerate() {
        for (column, x) in columns.iter().enumerate() {
            let own = [
                core(*x, column > 0, column + 1 < columns.len()),
                core(*y, row + 1 < rows.len(), row > 0),
            ];
            tiles.push(Tile {
                row: row + 1,
                column: column + 1,
                window: [*x, *y],
                printed: shows_something(laid, own),
            });
        }
    }
    Sheets {
        page,
        rows: rows.len(),
        columns: columns.len(),
        tiles,
    }
}

/// What of a window no other one shows: from joint to joint.
fn core(window: Interval, joined_low: bool, joined_high: bool) -> Interval {
    let half = OVERLAP.half();
    let inset = |joined| if joined { half } else { Length::ZERO };
    Interval::new(
        window.low + inset(joined_low),
        window.high - inset(joined_high),
    )
}

/// True where the outline, an edge or the middle of a hole is in a part of the plane.
fn shows_something(laid: &Laid, area: [Interval; 2]) -> bool {
    let outline = laid.outline.edges().map(|edge| [edge.from, edge.to]);
    let mut lines = outline.chain(laid.edges.iter().copied());
    let [x, y] = area;
    lines.any(|ends| passes(ends, area))
        || laid
            .crosses
            .iter()
            .any(|cross| x.holds(cross.at.x) && y.holds(cross.at.y))
}

/// True where a line passes through an area or touches it.
fn passes([a, b]: [PlanePoint; 2], [x, y]: [Interval; 2]) -> bool {
    let (dx, dy) = ((b.x - a.x).mm(), (b.y - a.y).mm());
    let (mut from, mut to) = (0.0_f64, 1.0_f64);
    for (start, way, stretch) in [(a.x, dx, x), (a.y, dy, y)] {
        let (low, high) = ((stretch.low - start).mm(), (stretch.high - start).mm());
        if way.abs() < 1e-9 {
            if low > 0.0 || high < 0.0 {
                return false;
            }
            continue;
        }
        let (near, far) = (low / way, high / way);
        from = from.max(near.min(far));
        to = to.min(near.max(far));
    }
    from <= to
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mm(mm: i64) -> Length {
        Length::from_mm(mm)
    }

    #[test]
    fn windows_overlap_by_ten_millimetres_and_show_all_with_room_around() {
        for length in [100, 180, 181, 370, 371, 1_000, 1_999] {
            let own = Interval::new(mm(-20), mm(length - 20));
            for Row { windows, .. } in rows(own, mm(190)) {
                for (a, b) in windows.iter().zip(windows.iter().skip(1)) {
                    assert_eq!(a.high - b.low, OVERLAP);
                }
                let (first, last) = (windows[0], windows[windows.len() - 1]);
                assert!(own.low - first.low >= CLEAR && last.high - own.high >= CLEAR);
                // One sheet less would not do.
                let fewer = last.low - first.low + OVERLAP;
                let is_least = windows.len() == 1 || fewer < own.size() + CLEAR * 2;
                assert!(is_least, "{length}");
            }
        }
    }

    #[test]
    fn a_line_is_in_every_area_that_it_touches() {
        let at = |x, y| PlanePoint::new(mm(x), mm(y));
        let area = [Interval::new(mm(0), mm(10)), Interval::new(mm(0), mm(10))];
        assert!(passes([at(-5, 5), at(15, 5)], area));
        assert!(passes([at(-5, 10), at(15, 10)], area));
        assert!(passes([at(2, 2), at(3, 3)], area));
        assert!(passes([at(-5, 10), at(5, 20)], area) == passes([at(5, 20), at(-5, 10)], area));
        assert!(!passes([at(-6, 9), at(6, 21)], area));
        assert!(!passes([at(11, -5), at(11, 20)], area));
    }
}
