//! The block with the squares that prove a print's scale, and what they are.

use crate::display::{Face, Figure, Spot, Tone};
use crate::document::tree::{Align, Inline};
use crate::drawing::{INCHES, METRIC, SquareInk, check_square};
use crate::text::TextStyle;

use super::Placed;
use super::blocks::{Column, Setter};
use super::flow::Slab;
use super::inline::Text;
use super::structure::Role;
use super::style::{GRID, QUIET, baseline};

impl<'d> Setter<'d, '_> {
    /// On a page for a screen, or in a column that is too narrow, there is nothing to prove.
    pub(super) fn scale_check(&mut self, column: Column) {
        let natural = self.format.natural();
        let [metric, inches] = [METRIC, INCHES].map(|side| side * natural);
        if self.format.on_screen || column.width < inches + 1.0 {
            return;
        }
        // Half a pen width is left free on every side.
        let mut slab: Slab<'d> = Slab::new(inches + 1.0);
        slab.space = self.flow.space(GRID);
        let corner = Spot::new(column.x + 0.5, inches + 0.5);
        let told = ["page-metric-square", "page-inch-square"];
        let told = told.map(|message| self.words.word(message, &[])).join(" ");
        let element = self.flow.structure.add_figure(&told);
        let content = check_square(corner, natural, INK).into_iter();
        slab.content = content
            .map(|mark| Placed::Content { element, mark })
            .collect();
        let bold = TextStyle::new(Face::Bold, 9.0);
        let quiet = TextStyle::new(Face::Regular, 8.5).tone(QUIET);
        let words = self.words;
        let left = corner.x + GRID * 4.0;
        let mut down = corner.y - metric + GRID * 5.0;
        for (message, style) in [
            ("page-metric-square", bold),
            ("page-inch-square", bold),
            ("page-scale-advice", quiet),
        ] {
            let text = [Inline::Text(words.word(message, &[]))];
            let text = Text::new(&text, style, self.document.colours);
            let width = metric - GRID * 8.0;
            let own = self.flow.structure.add(Role::Paragraph);
            for line in text.lines(self.fonts, width) {
                let spot = Spot::new(left, down + baseline(style.size, 14.0));
                let placed = text.marks(self.fonts, line, spot, (width, Align::Left), &[own]);
                slab.content.extend(placed);
                down += 14.0;
            }
            down += GRID;
        }
        self.flow.push(slab);
        self.flow.space_after(GRID * 2.0);
    }
}

/// How the squares are drawn.
const INK: SquareInk = SquareInk {
    width: 0.7,
    tone: Tone::BLACK,
};

/// The squares alone, as a figure of their size.
pub(super) fn figure(alternative: String) -> Figure {
    Figure {
        width: INCHES + 1.0,
        height: INCHES + 1.0,
        marks: check_square(Spot::new(0.5, INCHES + 0.5), 1.0, INK),
        alternative,
        to_scale: true,
    }
}
