//! Tables on a page that is too narrow for their columns: each row as a card, its figures named.

use crate::document::tree::{Align, Inline, Row, Table};

use super::blocks::{Column, Setter, rule};
use super::flow::BreakCost;
use super::format::Display;
use super::inline::plain;
use super::structure::Role;
use super::style::{CELL, CELL_LEADING, CELL_PAD, GRID, GUTTER, Measure, ParagraphStyle};
use super::table::{Closing, Need};

/// A column of text that gets less than this is a column of torn lines.
const LEAST_TEXT: f64 = 90.0;

/// What stands over a column.
#[derive(Clone, Debug, Default)]
struct Head {
    /// Over the column alone.
    own: String,
    /// Over it and others.
    shared: String,
}

/// The heads of a table's columns.
fn heads(table: &Table) -> Vec<Head> {
    let mut heads = vec![Head::default(); table.columns.len()];
    for row in &table.head {
        let mut at = 0;
        for cell in &row.cells {
            let span = cell.span.max(1);
            let text = plain(&cell.text);
            for head in heads.iter_mut().skip(at).take(span) {
                if span > 1 {
                    head.shared.clone_from(&text);
                } else {
                    head.own.clone_from(&text);
                }
            }
            at += span;
        }
    }
    heads
}

/// A figure with its name before it.
fn named(name: &str, text: &[Inline]) -> Vec<Inline> {
    let mut named = Vec::with_capacity(text.len() + 1);
    if !name.is_empty() {
        named.push(Inline::Styled {
            class: "second".to_owned(),
            text: vec![Inline::Text(format!("{name}\u{a0}"))],
        });
    }
    named.extend_from_slice(text);
    named
}

/// The lines of a card: what the row is about, then its figures, those under one head together.
fn lines(row: &Row, table: &Table, heads: &[Head]) -> Vec<Vec<Inline>> {
    let is_text = |column: usize| table.columns.get(column).is_some_and(|it| it.share > 0.0);
    let about = (0..table.columns.len()).find(|column| is_text(*column));
    let (mut first, mut rest): (Vec<Inline>, Vec<(String, Vec<Inline>)>) = Default::default();
    let mut column = 0;
    for cell in &row.cells {
        let at = column;
        column += cell.span.max(1);
        if plain(&cell.text).is_empty() {
            continue;
        }
        let head = heads.get(at).cloned().unwrap_or_default();
        let leads = Some(at) == about || (head.own.is_empty() && about.is_none_or(|it| at < it));
        if leads && rest.iter().all(|(_, line)| line.is_empty()) || Some(at) == about {
            if !first.is_empty() {
                first.push(Inline::Text(" ".to_owned()));
            }
            first.extend_from_slice(&cell.text);
            continue;
        }
        let figure = named(&head.own, &cell.text);
        match rest.last_mut() {
            Some((shared, line)) if *shared == head.shared && !line.is_empty() && !is_text(at) => {
                line.push(Inline::Text(" · ".to_owned()));
                line.extend(figure);
            }
            _ => rest.push((head.shared, figure)),
        }
        if is_text(at) {
            rest.push((String::new(), Vec::new()));
        }
    }
    let rest = rest.into_iter().filter(|(_, line)| !line.is_empty());
    let rest = rest.map(|(shared, line)| {
        let mut said = Vec::new();
        if !shared.is_empty() {
            said.push(Inline::Strong(vec![Inline::Text(format!("{shared}: "))]));
        }
        said.extend(line);
        said
    });
    [first]
        .into_iter()
        .chain(rest)
        .filter(|line| !line.is_empty())
        .collect()
}

impl<'d> Setter<'d, '_> {
    /// True where the columns of a table would be torn to strips.
    pub(super) fn is_cramped(&self, needs: &[Need], column: Column) -> bool {
        let asked: f64 = needs
            .iter()
            .map(|need| {
                if need.share > 0.0 {
                    need.narrowest.max(need.widest.min(LEAST_TEXT))
                } else {
                    need.widest
                }
            })
            .sum();
        let gutters: f64 = needs.iter().skip(1).map(|_| GUTTER).sum();
        self.format.display == Display::Small && needs.len() > 2 && asked + gutters > column.width
    }

    /// A table row by row, each as lines of text.
    pub(super) fn cards(&mut self, table: &'d Table, column: Column) {
        let heads = heads(table);
        let style = ParagraphStyle {
            text: CELL,
            leading: CELL_LEADING,
            before: 0.0,
            after: 0.0,
            measure: Measure::Full,
        };
        let space = self.flow.space(GRID);
        let mut slab = super::flow::Slab::new(0.5);
        slab.space = space;
        slab.content
            .push(rule(column, 0.25, 0.8, crate::display::Tone::BLACK));
        self.flow.push(slab);
        self.flow.tie();
        let groups = table.groups.len();
        self.flow.structure.open(Role::Division);
        for (number, group) in table.groups.iter().enumerate() {
            for (i, row) in group.iter().enumerate() {
                let closing = Closing::of(i + 1 == group.len(), number + 1 == groups);
                let first = self.flow.slabs.len();
                self.flow.structure.open(Role::Division);
                for line in lines(row, table, &heads) {
                    let element = self.flow.structure.add(Role::Paragraph);
                    self.lines(&line, style, column, Align::Left, element);
                }
                self.flow.structure.close();
                self.finish_card(row, first, column, closing);
            }
        }
        self.flow.structure.close();
        self.flow
            .space_after(super::style::below_table(&table.class));
    }

    /// Puts the slabs from `first` on together to a card with a rule below.
    fn finish_card(&mut self, row: &Row, first: usize, column: Column, closing: Closing) {
        for (i, slab) in self.flow.slabs.iter_mut().skip(first).enumerate() {
            slab.on_grid = false;
            if i == 0 {
                slab.space = CELL_PAD;
                slab.places.push(row.id.clone());
            }
        }
        if let Some(last) = self.flow.slabs.get_mut(first..).and_then(<[_]>::last_mut) {
            last.height += CELL_PAD;
            let (width, tone) = closing.rule();
            let below = last.height;
            last.content.push(rule(column, below, width, tone));
        }
        self.flow.keep_from(first, self.room, BreakCost::Kept);
        self.flow.mark_from(first, row.change);
    }
}
