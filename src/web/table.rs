//! Tables: head cells that say what they are heads of, and boxes to tick before rows.

use crate::document::outline::plain;
use crate::document::tree::{Align, Cell, Change, Inline, Row, Table};

use super::page::Writer;
use super::ticks::{self, RowTicks};

/// A cell of no more characters is not broken into lines: a size in three of them is three sizes.
const SHORT: usize = 32;

/// What holds for all rows of a table.
#[derive(Clone, Copy)]
struct Shape<'t> {
    table: &'t Table,
    ticks: Option<RowTicks>,
    /// The column whose cells say what their rows are about.
    naming: usize,
}

impl Writer<'_> {
    pub(super) fn table(&mut self, table: &Table) {
        let under = self.under.clone();
        let left = |column: &&crate::document::tree::Column| column.align == Align::Left;
        let naming = table.columns.iter().take_while(|one| !left(one)).count();
        let shape = Shape {
            table,
            ticks: RowTicks::of(&table.class),
            naming: if naming < table.columns.len() {
                naming
            } else {
                0
            },
        };
        // Wider than the screen it is moved by itself.
        self.html.open("div", &[("class", "scroll")]);
        let attributes = [
            ("class", table.class.as_str()),
            ("aria-labelledby", under.as_str()),
        ];
        self.html.open("table", &attributes);
        if !table.head.is_empty() {
            self.html.open("thead", &[]);
            for (number, row) in table.head.iter().enumerate() {
                self.head_row(row, shape, number + 1 == table.head.len());
            }
            self.html.close("thead");
        }
        for (number, group) in table.groups.iter().enumerate() {
            self.html.open("tbody", &[]);
            for (i, row) in group.iter().enumerate() {
                self.row(row, shape, names(group, i, shape.naming), (number, i));
            }
            self.html.close("tbody");
            self.html.line();
        }
        self.html.close("table");
        self.html.close("div");
        self.html.line();
    }

    fn head_row(&mut self, row: &Row, shape: Shape<'_>, is_last: bool) {
        self.html.open("tr", &[("id", &row.id)]);
        match shape.ticks {
            Some(_) if is_last => {
                self.html.open("th", &[("scope", "col"), ("class", "tick")]);
                self.unseen(&self.words.word("web-done", &[]));
                self.html.close("th");
            }
            Some(_) => self.html.element("td", &[], ""),
            None => {}
        }
        for (column, cell) in placed(row) {
            let span = span(cell);
            let class = classes(shape, column, cell);
            let mut attributes = vec![("class", class.as_str()), ("colspan", span.as_str())];
            let tag = if plain(&cell.text).is_empty() {
                "td"
            } else {
                attributes.push(("scope", "col"));
                "th"
            };
            self.html.open(tag, &attributes);
            self.inline(&cell.text);
            self.html.close(tag);
        }
        self.html.close("tr");
    }

    fn row(&mut self, row: &Row, shape: Shape<'_>, names: &str, place: (usize, usize)) {
        let class = match row.change {
            Change::None => "",
            Change::Other => "changed",
            Change::GoneAbove => "gone-above",
            Change::GoneBelow => "gone-below",
        };
        self.html.open("tr", &[("id", &row.id), ("class", class)]);
        if let Some(kind) = shape.ticks {
            self.html.open("td", &[("class", "tick")]);
            if kind == RowTicks::Bought || !row.id.is_empty() {
                self.row_tick(row, shape, kind, place);
            }
            self.html.close("td");
        }
        for (column, cell) in placed(row) {
            let span = span(cell);
            let class = classes(shape, column, cell);
            let mut attributes = vec![("class", class.as_str()), ("colspan", span.as_str())];
            let is_name = column == shape.naming && !plain(&cell.text).is_empty();
            let tag = if is_name && !names.is_empty() {
                attributes.push(("scope", names));
                "th"
            } else {
                "td"
            };
            self.html.open(tag, &attributes);
            if column == 0 {
                self.changed(row.change);
            }
            self.inline(&cell.text);
            self.html.close(tag);
        }
        self.html.close("tr");
    }

    fn row_tick(&mut self, row: &Row, shape: Shape<'_>, kind: RowTicks, place: (usize, usize)) {
        let says: Vec<String> = row.cells.iter().map(|cell| plain(&cell.text)).collect();
        let name = if row.id.is_empty() {
            let (group, number) = place;
            let place = format!("{}-{group}-{number}", self.under);
            ticks::name(&place, &says.join(" "))
        } else {
            ticks::name(&row.id, &says.join(" "))
        };
        let mut what = String::new();
        for (column, cell) in placed(row) {
            // Its letter, and the first line of its name.
            if column == shape.naming || (column == 0 && has_label(cell)) {
                what.push(' ');
                what.push_str(&first_line(&cell.text));
            }
        }
        let label = kind.label(self.words, what.trim());
        self.html.empty(
            "input",
            &[
                ("type", "checkbox"),
                ("data-tick", &name),
                ("aria-label", &label),
            ],
        );
    }
}

/// Cells with the columns they begin in.
fn placed(row: &Row) -> impl Iterator<Item = (usize, &Cell)> {
    row.cells.iter().scan(0, |next, cell| {
        let column = *next;
        *next += cell.span.max(1);
        Some((column, cell))
    })
}

/// How many columns a cell covers, where it is more than one.
fn span(cell: &Cell) -> String {
    if cell.span > 1 {
        cell.span.to_string()
    } else {
        String::new()
    }
}

/// How a cell is set.
fn classes(shape: Shape<'_>, column: usize, cell: &Cell) -> String {
    let Some(set) = shape.table.columns.get(column) else {
        return String::new();
    };
    let mut classes = Vec::new();
    match set.align {
        _ if cell.span > 1 => {}
        Align::Left => {}
        Align::Right => classes.push("right"),
        Align::Centre => classes.push("centre"),
    }
    if column == shape.naming {
        classes.push("name");
    }
    if set.share > 0.0 {
        classes.push("wide");
    } else if plain(&cell.text).chars().count() <= SHORT && !cell.text.contains(&Inline::Break) {
        classes.push("short");
    }
    classes.join(" ")
}

/// What the name in a row of a group is the head of: its row, or the whole group where the others have no
/// name of their own; empty where there is none.
fn names(group: &[Row], number: usize, naming: usize) -> &'static str {
    let has_name = |row: &Row| {
        placed(row).any(|(column, cell)| column == naming && !plain(&cell.text).is_empty())
    };
    let alone = group.len() > 1 && !group.iter().skip(1).any(has_name);
    match (alone, number) {
        (true, 0) => "rowgroup",
        (true, _) => "",
        (false, _) => "row",
    }
}

fn has_label(cell: &Cell) -> bool {
    cell.text.iter().any(|inline| match inline {
        Inline::Styled { class, .. } => class == "label",
        Inline::Link { text, .. } => text
            .iter()
            .any(|inner| matches!(inner, Inline::Styled { class, .. } if class == "label")),
        Inline::Text(_) | Inline::Strong(_) | Inline::Emphasis(_) | Inline::Break => false,
    })
}

/// The words before the first end of a line.
fn first_line(text: &[Inline]) -> String {
    let end = text.iter().position(|inline| *inline == Inline::Break);
    plain(text.get(..end.unwrap_or(text.len())).unwrap_or(text))
}
