//! Tables: widths of columns, rows of wrapped cells, heads that come again on every page.

use crate::display::{Mark, Spot, Tone};
use crate::document::tree::{Align, Row, Table};
use crate::text::{Line, TextStyle};

use super::Placed;
use super::blocks::{Column, Setter};
use super::flow::{BOX_PAD, BreakCost, Head, Slab};
use super::inline::Text;
use super::structure::{ElementId, Heads, Role};
use super::style::{self, CELL, CELL_HEAD, CELL_LEADING, CELL_PAD, GRID, GUTTER, RULE, baseline};

/// A table no higher than this part of a page is kept in one piece.
const SMALL: f64 = 0.25;

/// A column in its place.
#[derive(Clone, Copy, Debug)]
struct Place {
    /// Left end of its text, from the left of the text area.
    x: f64,
    width: f64,
    align: Align,
}

/// A cell broken into lines.
struct SetCell {
    text: Text,
    lines: Vec<Line>,
    /// Of each of its runs.
    elements: Vec<ElementId>,
    place: Place,
    /// Covers more than one column.
    spans: bool,
}

/// Whether a row belongs to the head.
#[derive(Clone, Copy, PartialEq, Eq)]
enum InHead {
    Yes,
    /// Its first cell does.
    First,
    No,
}

impl<'d> Setter<'d, '_> {
    pub(super) fn table(&mut self, table: &'d Table, column: Column) {
        let needs = self.needs(table);
        if self.is_cramped(&needs, column) {
            self.cards(table, column);
            return;
        }
        let places = places(table, &needs, column);
        let Some(last) = places.last() else {
            return;
        };
        let extent = column.wide(column.x, last.x + last.width - column.x);
        let first = self.flow.slabs.len();
        let space = self.flow.space(GRID);
        self.flow.structure.open(Role::Table);
        let head = self.head(table, &places, extent, space);
        if head.is_none() && table.class != "key" {
            // A rule at the top, as over a head.
            let mut slab = Slab::new(0.5);
            slab.space = space;
            slab.content
                .push(super::blocks::rule(extent, 0.25, 0.8, Tone::BLACK));
            self.flow.push(slab);
            self.flow.tie();
        } else if head.is_none() {
            self.flow.space_after(space);
        }
        let room = self.room - head.map_or(0.0, |head| self.head_height(head));
        let groups = table.groups.len();
        let mut rows = Vec::new();
        for (number, group) in table.groups.iter().enumerate() {
            let group_first = self.flow.slabs.len();
            self.flow.structure.open(Role::Rows);
            for (i, row) in group.iter().enumerate() {
                let closing = Closing::of(i + 1 == group.len(), number + 1 == groups);
                let style = RowStyle {
                    head,
                    closing,
                    room,
                };
                rows.push(self.flow.slabs.len());
                self.row(row, table, &places, extent, style);
            }
            self.flow.structure.close();
            self.flow.keep_from(group_first, room, BreakCost::InGroup);
        }
        // No row stands alone at the foot of a page or at the head of the next.
        for beside_end in [rows.get(1), rows.last()].into_iter().flatten() {
            self.flow.keep_at(*beside_end, BreakCost::Kept);
        }
        self.flow.structure.close();
        if self.flow.height_from(first) <= self.room * SMALL {
            self.flow.keep_from(first, self.room, BreakCost::Kept);
        }
        self.flow.space_after(style::below_table(&table.class));
    }

    fn head_height(&self, head: usize) -> f64 {
        self.flow.heads.get(head).map_or(0.0, |head| head.height)
    }

    /// Sets the head and keeps it for the pages that follow; its number.
    fn head(
        &mut self,
        table: &Table,
        places: &[Place],
        extent: Column,
        space: f64,
    ) -> Option<usize> {
        if table.head.is_empty() {
            return None;
        }
        let mut height = CELL_PAD / 2.0;
        let mut content = vec![super::blocks::rule(extent, 0.0, 0.8, Tone::BLACK)];
        self.flow.structure.open(Role::Head);
        for row in &table.head {
            let cells = self.cells(row, places, InHead::Yes, |_| CELL_HEAD);
            let lines = cells.iter().map(|cell| cell.lines.len()).max().unwrap_or(1);
            for cell in cells {
                // Heads stand on the line below them; one over several columns has a rule of
                // its own that says which.
                let down = height + CELL_PAD + leading(lines - cell.lines.len().min(lines));
                if cell.spans && !cell.lines.is_empty() {
                    let below = height + CELL_PAD * 1.5 + leading(lines);
                    let under = extent.wide(cell.place.x, cell.place.width);
                    content.push(super::blocks::rule(under, below, 0.35, RULE));
                }
                self.cell_marks(cell, down, &mut content);
            }
            height += leading(lines.max(1)) + CELL_PAD * 1.5;
        }
        self.flow.structure.close();
        content.push(super::blocks::rule(extent, height, 0.5, Tone::BLACK));
        // On the pages that follow it is the page's own: it was read once.
        let marks: Vec<Mark> = content.iter().filter_map(Placed::mark).cloned().collect();
        let mut slab = Slab::new(height);
        slab.space = space;
        slab.content = content;
        slab.places = table
            .head
            .iter()
            .map(|row| row.id.clone())
            .filter(|id| !id.is_empty())
            .collect();
        // A head higher than half a page would leave no room for rows: it is set once.
        let repeated = height <= self.room / 2.0;
        self.flow.push(slab);
        self.flow.tie();
        repeated.then(|| {
            self.flow.heads.push(Head {
                height,
                inset: BOX_PAD,
                marks,
            });
            self.flow.heads.len() - 1
        })
    }

    fn row(&mut self, row: &Row, table: &Table, places: &[Place], extent: Column, style: RowStyle) {
        let is_key = table.class == "key";
        let in_head = if is_key { InHead::First } else { InHead::No };
        let cells = self.cells(row, places, in_head, |column| {
            if is_key && column == 0 {
                CELL.face(crate::display::Face::Bold)
            } else {
                CELL
            }
        });
        let lines = cells
            .iter()
            .map(|cell| cell.lines.len())
            .max()
            .unwrap_or(0)
            .max(1);
        let height = leading(lines) + CELL_PAD * 2.0;
        let whole = height <= style.room;
        // A row higher than a page goes line by line; its lines are set on one grid.
        let slices = if whole { 1 } else { lines };
        let mut slabs: Vec<Slab<'d>> = (0..slices)
            .map(|slice| {
                let top = if slice == 0 { CELL_PAD } else { 0.0 };
                let bottom = if slice + 1 == slices { CELL_PAD } else { 0.0 };
                let inner = if whole { leading(lines) } else { CELL_LEADING };
                let mut slab = Slab::new(top + inner + bottom);
                slab.baseline = top + baseline(CELL.size, CELL_LEADING);
                slab.head = style.head;
                if slice > 0 {
                    slab.cost = BreakCost::InGroup;
                }
                slab
            })
            .collect();
        for cell in cells {
            if whole {
                if let Some(slab) = slabs.first_mut() {
                    self.cell_marks(cell, CELL_PAD, &mut slab.content);
                }
            } else {
                self.sliced_marks(cell, &mut slabs);
            }
        }
        if let Some(slab) = slabs.first_mut()
            && !row.id.is_empty()
        {
            slab.places.push(row.id.clone());
        }
        if let Some(slab) = slabs.last_mut() {
            let (width, tone) = style.closing.rule();
            let y = slab.height;
            slab.content
                .push(super::blocks::rule(extent, y, width, tone));
        }
        let first = self.flow.slabs.len();
        for (number, mut slab) in slabs.into_iter().enumerate() {
            if number == 0 {
                slab.space = self.flow.space(0.0);
            }
            self.flow.push(slab);
        }
        self.flow.mark_from(first, row.change);
    }

    /// The cells of a row in their columns, broken into lines.
    fn cells(
        &mut self,
        row: &Row,
        places: &[Place],
        is_head: InHead,
        style: impl Fn(usize) -> TextStyle,
    ) -> Vec<SetCell> {
        let mut cells = Vec::with_capacity(row.cells.len());
        let mut column = 0;
        self.flow.structure.open(Role::Row);
        for cell in &row.cells {
            let span = cell.span.clamp(1, places.len().max(1));
            let (Some(from), Some(to)) = (
                places.get(column),
                places.get((column + span - 1).min(places.len().saturating_sub(1))),
            ) else {
                break;
            };
            let place = Place {
                width: to.x + to.width - from.x,
                align: if span > 1 && is_head == InHead::Yes {
                    Align::Centre
                } else {
                    from.align
                },
                ..*from
            };
            let text = Text::hyphenated(
                &cell.text,
                style(column),
                self.document.colours,
                self.hyphens,
            );
            let lines = text.lines(self.fonts, place.width);
            let element = self.flow.structure.add(match is_head {
                InHead::Yes => Role::HeadCell {
                    of: Heads::Column,
                    span,
                },
                InHead::First if column == 0 => Role::HeadCell {
                    of: Heads::Row,
                    span,
                },
                InHead::First | InHead::No => Role::Cell { span },
            });
            let elements = text.elements(&mut self.flow.structure, element);
            cells.push(SetCell {
                text,
                lines,
                elements,
                place,
                spans: span > 1,
            });
            column += span;
        }
        self.flow.structure.close();
        cells
    }

    fn cell_marks(&self, cell: SetCell, down: f64, content: &mut Vec<Placed<'d>>) {
        let place = cell.place;
        for (number, line) in cell.lines.into_iter().enumerate() {
            let y = down + leading(number) + baseline(CELL.size, CELL_LEADING);
            let spot = Spot::new(place.x, y);
            let within = (place.width, place.align);
            let marks = cell
                .text
                .marks(self.fonts, line, spot, within, &cell.elements);
            content.extend(marks);
        }
    }

    fn sliced_marks(&self, cell: SetCell, slabs: &mut [Slab<'d>]) {
        let place = cell.place;
        for (line, slab) in cell.lines.into_iter().zip(slabs) {
            let spot = Spot::new(place.x, slab.baseline);
            let within = (place.width, place.align);
            let marks = cell
                .text
                .marks(self.fonts, line, spot, within, &cell.elements);
            slab.content.extend(marks);
        }
    }

    /// What each column asks for, by its share and by what is in it.
    fn needs(&self, table: &Table) -> Vec<Need> {
        let mut needs = vec![Need::default(); table.columns.len()];
        let rows = table.groups.iter().flatten().map(|row| (row, CELL));
        for (row, style) in table.head.iter().map(|row| (row, CELL_HEAD)).chain(rows) {
            let mut at = 0;
            for cell in &row.cells {
                let span = cell.span.max(1);
                if let (1, Some(need)) = (span, needs.get_mut(at)) {
                    let face = if table.class == "key" && at == 0 {
                        style.face(crate::display::Face::Bold)
                    } else {
                        style
                    };
                    let text =
                        Text::hyphenated(&cell.text, face, self.document.colours, self.hyphens);
                    need.narrowest = need.narrowest.max(text.narrowest(self.fonts));
                    need.widest = need.widest.max(text.widest(self.fonts));
                }
                at += span;
            }
        }
        for (need, column) in needs.iter_mut().zip(&table.columns) {
            need.share = if column.share.is_finite() {
                column.share.clamp(0.0, 1_000.0)
            } else {
                1.0
            };
        }
        needs
    }
}

/// Where each column stands.
fn places(table: &Table, needs: &[Need], column: Column) -> Vec<Place> {
    let count = needs.len();
    let gutters = GUTTER * count_f64(count.saturating_sub(1));
    let widths = widths(needs, (column.width - gutters).max(count_f64(count)));
    let mut x = column.x;
    let columns = table.columns.iter().zip(widths);
    columns
        .map(|(set, width)| {
            let place = Place {
                x,
                width,
                align: set.align,
            };
            x += width + GUTTER;
            place
        })
        .collect()
}

/// How a row is set.
#[derive(Clone, Copy)]
struct RowStyle {
    head: Option<usize>,
    closing: Closing,
    room: f64,
}

/// What ends below a row.
#[derive(Clone, Copy)]
pub(super) enum Closing {
    Row,
    Group,
    Table,
}

impl Closing {
    /// Below a row that may be the last of its group, and the group of the table.
    pub(super) const fn of(last_of_group: bool, last_group: bool) -> Self {
        match (last_of_group, last_group) {
            (true, true) => Self::Table,
            (true, false) => Self::Group,
            (false, _) => Self::Row,
        }
    }

    /// Width and tone of the rule below it.
    pub(super) const fn rule(self) -> (f64, Tone) {
        match self {
            Self::Row => (0.35, RULE),
            Self::Group => (0.6, Tone::grey(0.25)),
            Self::Table => (0.8, Tone::BLACK),
        }
    }
}

/// What a column's cells ask for.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Need {
    /// Below this a word is torn.
    pub(super) narrowest: f64,
    /// Above this nothing is gained.
    pub(super) widest: f64,
    /// Its share of the width; zero for as narrow as its text.
    pub(super) share: f64,
}

/// Widths of columns that together take no more than `room`.
fn widths(needs: &[Need], room: f64) -> Vec<f64> {
    // A hair more than measured, so that a line never wraps by a rounding.
    let hair = 0.05;
    let least = |need: &Need| {
        let width = if need.share > 0.0 {
            need.narrowest
        } else {
            need.widest
        };
        width + hair
    };
    let asked: f64 = needs.iter().map(least).sum();
    if asked <= room {
        return shared(needs, room, least);
    }
    // Too much text: every column gives way between its widest and its narrowest.
    let narrow: f64 = needs.iter().map(|need| need.narrowest + hair).sum();
    let wide: f64 = needs.iter().map(|need| need.widest + hair).sum();
    if narrow <= room && wide > narrow {
        let part = ((room - narrow) / (wide - narrow)).min(1.0);
        return needs
            .iter()
            .map(|need| need.narrowest + hair + (need.widest - need.narrowest) * part)
            .collect();
    }
    // Even torn words do not fit side by side: columns shrink alike, down to what is left.
    let evenly = room / count_f64(needs.len());
    let small: f64 = needs
        .iter()
        .map(|need| (need.narrowest + hair).min(evenly))
        .sum();
    let large: f64 = needs
        .iter()
        .map(|need| (need.narrowest + hair - evenly).max(0.0))
        .sum();
    let part = if large > 0.0 {
        ((room - small) / large).clamp(0.0, 1.0)
    } else {
        0.0
    };
    needs
        .iter()
        .map(|need| {
            let width = need.narrowest + hair;
            width.min(evenly) + (width - evenly).max(0.0) * part
        })
        .collect()
}

/// What is left over goes to the columns with shares, none of them below what it needs.
fn shared(needs: &[Need], room: f64, least: impl Fn(&Need) -> f64) -> Vec<f64> {
    let mut set: Vec<Option<f64>> = needs
        .iter()
        .map(|need| (need.share <= 0.0).then(|| least(need)))
        .collect();
    // Each round settles at least one column that needs more than its share.
    for _ in 0..=needs.len() {
        let taken: f64 = set.iter().flatten().sum();
        let shares: f64 = needs
            .iter()
            .zip(&set)
            .filter(|(_, set)| set.is_none())
            .map(|(n, _)| n.share)
            .sum();
        let unit = (room - taken) / shares.max(1e-9);
        let tight = needs
            .iter()
            .zip(&mut set)
            .find(|(need, set)| set.is_none() && need.share * unit < least(need));
        let Some((need, place)) = tight else {
            let filled = needs.iter().zip(&set);
            return filled
                .map(|(need, set)| set.unwrap_or(need.share * unit))
                .collect();
        };
        *place = Some(least(need));
    }
    needs.iter().map(least).collect()
}

fn leading(lines: usize) -> f64 {
    count_f64(lines) * CELL_LEADING
}

fn count_f64(count: usize) -> f64 {
    f64::from(u32::try_from(count).unwrap_or(u32::MAX))
}

#[cfg(test)]
mod tests {
    use super::*;

    const fn need(narrowest: f64, widest: f64, share: f64) -> Need {
        Need {
            narrowest,
            widest,
            share,
        }
    }

    #[test]
    fn narrow_columns_take_their_text_and_shares_the_rest() {
        let needs = [
            need(10.0, 30.0, 0.0),
            need(20.0, 300.0, 2.0),
            need(5.0, 9.0, 1.0),
        ];
        let widths = widths(&needs, 330.05);
        assert!((widths[0] - 30.05).abs() < 1e-9);
        assert!((widths[1] - 200.0).abs() < 1e-9);
        assert!((widths[2] - 100.0).abs() < 1e-9);
    }

    #[test]
    fn a_share_gives_way_to_a_long_word() {
        let needs = [need(150.0, 300.0, 1.0), need(5.0, 50.0, 3.0)];
        let widths = widths(&needs, 200.0);
        assert!((widths[0] - 150.05).abs() < 1e-9);
        assert!((widths.iter().sum::<f64>() - 200.0).abs() < 1e-9);
    }

    #[test]
    fn too_much_text_still_keeps_to_the_room() {
        for room in [10.0, 50.0, 120.0] {
            let needs = [
                need(40.0, 300.0, 0.0),
                need(900.0, 900.0, 0.0),
                need(20.0, 30.0, 1.0),
            ];
            let total: f64 = widths(&needs, room).iter().sum();
            assert!(total <= room + 1e-6, "{total} in {room}");
        }
        let needs = [need(40.0, 300.0, 0.0), need(30.0, 100.0, 0.0)];
        let total: f64 = widths(&needs, 200.0).iter().sum();
        assert!((total - 200.0).abs() < 1e-6);
    }
}
