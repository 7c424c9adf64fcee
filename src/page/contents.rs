//! The table of contents: entries, dot leaders, page numbers that are filled in at the end.

use crate::display::{Area, Ends, Face, Mark, Path, Pen, Spot, Tone};
use crate::document::tree::{Align, Inline};
use crate::text::TextStyle;

use super::Placed;
use super::blocks::{Column, Setter};
use super::flow::{BreakCost, PageNumber, Slab};
use super::inline::Text;
use super::structure::{ElementId, Role};
use super::style::{BODY, GRID, baseline, reading_width};

/// Room for a page number.
const NUMBER: f64 = 24.0;
/// From dot to dot.
const DOT: f64 = 4.0;
/// From baseline to baseline.
const LEADING: f64 = 14.0;

impl Setter<'_, '_> {
    pub(super) fn contents(&mut self, column: Column) {
        let entries = self.flow.entries.clone();
        let width = column.width.min(reading_width(BODY.size));
        let space = self.flow.space(0.0);
        let listed = entries.iter();
        self.flow.structure.open(Role::Contents);
        let mut listed = listed
            .filter(|entry| entry.level <= 2 && !entry.title.is_empty())
            .enumerate()
            .peekable();
        while let Some((number, entry)) = listed.next() {
            let chapter = entry.level <= 1;
            let (style, indent) = if chapter {
                (BODY.face(Face::Bold).tabular(), 0.0)
            } else {
                (BODY.size(9.5).tabular(), GRID * 2.0)
            };
            let text = [Inline::Text(entry.title.clone())];
            let text = Text::new(&text, style);
            let lines = text.lines(self.fonts, (width - indent - NUMBER * 1.5).max(40.0));
            let count = lines.len();
            let line_of = self.flow.structure.add(Role::ContentsItem);
            let link = self.flow.structure.add_in(line_of, Role::Link);
            for (i, line) in lines.into_iter().enumerate() {
                let mut slab = Slab::new(LEADING);
                slab.baseline = baseline(BODY.size, LEADING);
                let spot = Spot::new(column.x + indent, slab.baseline);
                let end = indent + line.width;
                slab.content = text.marks(self.fonts, line, spot, (width, Align::Left), &[link]);
                let area = Area {
                    x: column.x,
                    y: 0.0,
                    width,
                    height: LEADING,
                };
                let target = entry.id.clone();
                slab.content.push(Placed::Content {
                    element: link,
                    mark: Mark::Link { area, target },
                });
                if i + 1 == count {
                    number_at(&mut slab, column, (end, width), &entry.id, (style, link));
                }
                match (number, i) {
                    (0, 0) => {
                        slab.space = space;
                        slab.on_grid = true;
                    }
                    (_, 0) if chapter => slab.space = GRID,
                    (_, 0) => {}
                    _ => slab.cost = BreakCost::Tied,
                }
                self.flow.push(slab);
            }
            if chapter && listed.peek().is_some_and(|(_, next)| next.level > 1) {
                self.flow.tie();
            }
        }
        self.flow.structure.close();
        self.flow.space_after(GRID * 2.0);
    }
}

/// Dots up to the number's room, counted from the right so that all lines' dots are in line.
fn number_at(
    slab: &mut Slab<'_>,
    column: Column,
    (end, width): (f64, f64),
    target: &str,
    (style, element): (TextStyle, ElementId),
) {
    let y = slab.baseline;
    let from = Spot::new(column.x + width - NUMBER, y - 0.6);
    let to = Spot::new(column.x + end + 6.0, y - 0.6);
    if from.x - to.x > DOT * 2.0 {
        slab.content.push(Placed::Mark(Mark::Stroke {
            path: Path::polyline(&[from, to], Ends::Open),
            pen: Pen {
                width: 0.8,
                tone: Tone::grey(0.45),
                dashes: vec![0.8, DOT - 0.8],
            },
        }));
    }
    slab.numbers.push(PageNumber {
        target: target.to_owned(),
        at: Spot::new(column.x + width, y),
        style,
        element,
    });
}
