//! Figures: as large as drawn where they fit, smaller where they do not, never larger.

use crate::display::Spot;
use crate::document::tree::{Align, Inline};

use super::Placed;
use super::blocks::{Column, Setter};
use super::flow::{BreakCost, LEAST_SHRINK, Slab};
use super::inline::Text;
use super::style::{CAPTION, CAPTION_LEADING, GRID, baseline};

impl<'d> Setter<'d, '_> {
    /// A figure at most `tallest` points high.
    pub(super) fn figure(&mut self, name: &str, tallest: f64, caption: &[Inline], column: Column) {
        // A name without a figure is found by `examine`; its caption still says what is missing.
        let figure = self.document.figures.get(name);
        let caption = Text::new(caption, CAPTION);
        let lines = caption.lines(self.fonts, column.width);
        let below: f64 = lines.iter().map(|_| CAPTION_LEADING).sum();
        let gap = if lines.is_empty() { 0.0 } else { GRID / 2.0 };
        let room = (self.room - below - gap).min(tallest).max(GRID * 4.0);
        let mut space = self.flow.space(GRID);
        if let Some(figure) = figure
            && figure.width > 0.0
            && figure.height > 0.0
        {
            let widest = (column.width / figure.width).min(1.0);
            let mut scale = widest.min(room / figure.height);
            // A little smaller rather than parted from the heading above it.
            let under_heading = (room - self.flow.tied_height() - space) / figure.height;
            let is_under = self.flow.is_tied();
            if is_under
                && !figure.to_scale
                && under_heading < scale
                && under_heading > scale * LEAST_SHRINK
            {
                scale = under_heading;
            }
            let mut slab = Slab::new(figure.height * scale);
            slab.space = space;
            slab.places.push(name.to_owned());
            slab.content.push(Placed::Figure {
                figure,
                at: Spot::new(column.x + (column.width - figure.width * scale) / 2.0, 0.0),
                scale,
            });
            self.flow.push(slab);
            space = gap;
            if !lines.is_empty() {
                self.flow.tie();
            }
        }
        for (number, line) in lines.into_iter().enumerate() {
            let mut slab = Slab::new(CAPTION_LEADING);
            slab.baseline = baseline(CAPTION.size, CAPTION_LEADING);
            let spot = Spot::new(column.x, slab.baseline);
            slab.content = caption.marks(self.fonts, line, spot, (column.width, Align::Centre));
            if number == 0 {
                slab.space = space;
            } else {
                slab.cost = BreakCost::Tied;
            }
            self.flow.push(slab);
        }
        self.flow.space_after(GRID * 1.5);
    }
}
