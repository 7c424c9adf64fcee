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
/// From baseline to baseline, and above a chapter: as loose as still goes on one page.
const SPACING: [(f64, f64); 3] = [(14.0, GRID), (13.0, GRID * 0.75), (12.0, GRID * 0.5)];
/// What the chapter's heading takes of that page.
const HEADING: f64 = GRID * 8.0;

impl Setter<'_, '_> {
    pub(super) fn contents(&mut self, column: Column) {
        let entries = self.flow.entries.clone();
        let width = column.width.min(reading_width(BODY.size));
        let space = self.flow.space(0.0);
        let listed = entries.iter();
        self.flow.structure.open(Role::Contents);
        let listed = listed.filter(|entry| entry.level <= 2 && !entry.title.is_empty());
        let (leading, above) = spacing(
            listed.clone().count(),
            listed.clone().filter(|entry| entry.level <= 1).count(),
            self.room - HEADING,
        );
        let mut listed = listed.enumerate().peekable();
        while let Some((number, entry)) = listed.next() {
            let chapter = entry.level <= 1;
            let (style, indent) = if chapter {
                (BODY.face(Face::Bold).tabular(), 0.0)
            } else {
                (BODY.size(9.5).tabular(), GRID * 2.0)
            };
            let text = [Inline::Text(entry.title.clone())];
            let text = Text::new(&text, style, self.document.colours);
            let lines = text.lines(self.fonts, (width - indent - NUMBER * 1.5).max(40.0));
            let count = lines.len();
            let line_of = self.flow.structure.add(Role::ContentsItem);
            let link = self.flow.structure.add_in(line_of, Role::Link);
            for (i, line) in lines.into_iter().enumerate() {
                let mut slab = Slab::new(leading);
                slab.baseline = baseline(BODY.size, leading);
                let spot = Spot::new(column.x + indent, slab.baseline);
                let end = indent + line.width;
                slab.content = text.marks(self.fonts, line, spot, (width, Align::Left), &[link]);
                let area = Area {
                    x: column.x,
                    y: 0.0,
                    width,
                    height: leading,
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
                    (_, 0) if chapter => slab.space = above,
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

/// Leading, and space above a chapter, of so many lines; the loosest where they need more pages anyway.
fn spacing(lines: usize, chapters: usize, room: f64) -> (f64, f64) {
    let many = |number: usize| f64::from(u32::try_from(number).unwrap_or(u32::MAX));
    let [loosest, ..] = SPACING;
    SPACING
        .into_iter()
        .find(|(leading, above)| many(lines) * leading + many(chapters) * above <= room)
        .unwrap_or(loosest)
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn contents_are_drawn_together_only_where_that_saves_a_page() {
        assert_eq!(spacing(30, 8, 650.0), (14.0, GRID));
        assert_eq!(spacing(45, 12, 650.0), (13.0, GRID * 0.75));
        assert_eq!(spacing(50, 12, 650.0), (12.0, GRID * 0.5));
        assert_eq!(spacing(80, 12, 650.0), (14.0, GRID));
    }
}
