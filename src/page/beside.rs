//! Small figures with text: a legend that tells what they mean, and blocks they stand beside.

use crate::display::{Figure, Spot};
use crate::document::tree::{Align, Block, Inline};

use super::Placed;
use super::blocks::{Column, Setter};
use super::flow::{BreakCost, Slab};
use super::format::Display;
use super::inline::Text;
use super::structure::{ElementId, Role};
use super::style::{BESIDE, BODY, GRID, LEGEND, LEGEND_LEADING, LEGEND_TEXT, baseline};

/// Most figures in a line of a legend, and how much room each has at the least.
const MOST_IN_LEGEND: usize = 4;
const IN_LEGEND: f64 = 105.0;
/// Most figures in a line beside blocks.
const MOST_BESIDE: usize = 6;
/// Between two figures that stand beside blocks.
const GAP: f64 = 3.0;
/// Into the free space above and below a short text they reach this far.
const OVERHANG: f64 = 3.0;
/// Height of capitals at size 1.
const CAPITALS: f64 = 0.714;

/// A figure no wider and no higher than `room`, its upper left corner at `at`; `natural` is the
/// scale at which it is as large as it is drawn.
fn small(figure: &Figure, at: Spot, room: f64, natural: f64, element: ElementId) -> Placed<'_> {
    Placed::Figure {
        figure,
        at,
        scale: (room / figure.width.max(figure.height)).min(natural),
        element,
    }
}

/// A small count.
fn count(number: usize) -> f64 {
    u32::try_from(number).map_or(f64::from(u32::MAX), f64::from)
}

/// Each thing with its column and its line, `columns` to a line.
fn in_lines<T>(things: Vec<T>, columns: usize) -> impl Iterator<Item = (T, f64, f64)> {
    let columns = columns.max(1);
    let numbered = things.into_iter().enumerate();
    numbered.map(move |(i, thing)| (thing, count(i % columns), count(i / columns)))
}

impl<'d> Setter<'d, '_> {
    /// The figure of a name; none where it is not there or has no extent, which `examine` finds.
    fn drawn(&self, name: &str) -> Option<&'d Figure> {
        let figure = self.document.figures.get(name);
        figure.filter(|figure| figure.width > 0.0 && figure.height > 0.0)
    }

    /// Figures with their words to the right, in lines of even length.
    pub(super) fn legend(&mut self, entries: &'d [(String, Vec<Inline>)], column: Column) {
        let natural = self.format.natural();
        let most = (2..=MOST_IN_LEGEND)
            .rev()
            .find(|n| count(*n) * IN_LEGEND <= column.width);
        let rows = entries.len().div_ceil(most.unwrap_or(1)).max(1);
        let columns = entries.len().div_ceil(rows).max(1);
        let width = column.width / count(columns);
        let first = self.flow.slabs.len();
        let mut space = self.flow.space(GRID);
        self.flow.structure.open(Role::Division);
        for row in entries.chunks(columns) {
            let beside = LEGEND + GRID;
            let room = (width - beside - GRID).max(1.0);
            let set = row.iter().map(|(name, text)| {
                let text = Text::new(text, LEGEND_TEXT, self.document.colours);
                let lines = text.lines(self.fonts, room);
                let height = count(lines.len()) * LEGEND_LEADING;
                (name, text, lines, height)
            });
            let set: Vec<_> = set.collect();
            let height = set.iter().fold(LEGEND, |highest, one| highest.max(one.3));
            let mut slab = Slab::new(height);
            slab.space = space;
            for ((name, text, lines, text_height), across, _) in in_lines(set, columns) {
                let left = column.x + across * width;
                let top = (height - LEGEND) / 2.0;
                if let Some(figure) = self.drawn(name) {
                    let element = self.figure_element(name);
                    let at = Spot::new(left, top);
                    let placed = small(figure, at, LEGEND, natural, element);
                    slab.content.push(placed);
                }
                let own = self.flow.structure.add(Role::Paragraph);
                let elements = text.elements(&mut self.flow.structure, own);
                let mut down = (height - text_height) / 2.0;
                for line in lines {
                    let base = down + baseline(LEGEND_TEXT.size, LEGEND_LEADING);
                    let spot = Spot::new(left + beside, base);
                    let marks = text.marks(self.fonts, line, spot, (room, Align::Left), &elements);
                    slab.content.extend(marks);
                    down += LEGEND_LEADING;
                }
            }
            self.flow.push(slab);
            space = GRID;
        }
        self.flow.structure.close();
        self.flow.keep_from(first, self.room, BreakCost::Kept);
        self.flow.space_after(GRID * 1.5);
    }

    /// Blocks with figures to their right, which are never parted from their first lines.
    pub(super) fn beside(&mut self, figures: &'d [String], blocks: &'d [Block], column: Column) {
        let mut drawn: Vec<(&Figure, ElementId)> = Vec::new();
        for name in figures {
            if let Some(figure) = self.drawn(name) {
                drawn.push((figure, self.figure_element(name)));
            }
        }
        let figures = drawn;
        if figures.is_empty() {
            self.blocks(blocks, column);
            return;
        }
        let each = BESIDE + GAP;
        // At least half of the column is left to the text, of a narrow one as much as can be.
        let most = match self.format.display {
            Display::Large => MOST_BESIDE,
            Display::Small => 1,
        };
        let most = (1..=most)
            .rev()
            .find(|n| count(*n) * each <= column.width / 2.0);
        let columns = figures.len().min(most.unwrap_or(1));
        let taken = count(columns) * each - GAP;
        let first = self.flow.slabs.len();
        self.blocks(blocks, column.inside(0.0, taken + GRID));
        if self.flow.slabs.len() == first {
            self.flow.push(Slab::new(0.0));
        }
        let rows = count(figures.len().div_ceil(columns));
        let high = rows * each - GAP;
        let left = column.x + column.width - taken;
        let text = self.flow.pad_from(first, high - 2.0 * OVERHANG);
        let Some(slab) = self.flow.slabs.get_mut(first) else {
            return;
        };
        // Level with the capitals of the first line, or with the middle of a short text.
        let capitals = (slab.baseline - BODY.size * CAPITALS).max(0.0);
        let top = capitals.min((text - high) / 2.0);
        let natural = self.format.natural();
        let placed = in_lines(figures, columns).map(|((figure, element), across, down)| {
            let at = Spot::new(left + across * each, top + down * each);
            small(figure, at, BESIDE, natural, element)
        });
        slab.content.extend(placed);
        self.flow.tie_from(first, top + high);
    }
}
