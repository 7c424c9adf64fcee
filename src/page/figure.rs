//! Figures: as large as drawn where they fit, smaller where they do not, never larger.

use crate::display::Spot;
use crate::document::tree::{Align, Inline};

use super::Placed;
use super::blocks::{Column, Setter};
use super::flow::{BreakCost, LEAST_SHRINK, Slab};
use super::inline::Text;
use super::structure::{ElementId, Role};
use super::style::{CAPTION, CAPTION_LEADING, GRID, baseline};

impl<'d> Setter<'d, '_> {
    /// The element of a figure, with what it shows: in the document's words or, where it has none, in the
    /// drawing's own.
    pub(super) fn figure_element(&mut self, name: &str) -> ElementId {
        let own = self.document.alternatives.get(name);
        let drawn = self.document.figures.get(name);
        let told = own.or_else(|| drawn.map(|figure| &figure.alternative));
        self.flow
            .structure
            .add_figure(told.map_or(name, |words| words.as_str()))
    }

    /// A page that a figure fills in its own size.
    pub(super) fn sheet(&mut self, name: &str, id: &str) {
        // A name without a figure is found by `examine`.
        let Some(figure) = self.document.figures.get(name) else {
            return;
        };
        let natural = self.format.natural();
        let element = self.figure_element(name);
        let mut slab = Slab::new(0.0);
        slab.page = Some((figure.width * natural, figure.height * natural));
        slab.places.push(id.to_owned());
        slab.places.push(name.to_owned());
        slab.content.push(Placed::Figure {
            figure,
            at: Spot::default(),
            scale: natural,
            element,
        });
        self.flow.break_page();
        self.flow.push(slab);
        self.flow.break_page();
        self.flow.space_after(0.0);
    }

    /// A figure at most `tallest` points high.
    pub(super) fn figure(&mut self, name: &str, tallest: f64, caption: &[Inline], column: Column) {
        // A name without a figure is found by `examine`; its caption still says what is missing.
        let figure = self.document.figures.get(name);
        let caption = Text::new(caption, CAPTION, self.document.colours);
        let lines = caption.lines(self.fonts, column.width);
        let below: f64 = lines.iter().map(|_| CAPTION_LEADING).sum();
        let gap = if lines.is_empty() { 0.0 } else { GRID / 2.0 };
        let on_page = (self.room - below - gap).max(GRID * 4.0);
        let room = on_page.min(tallest).max(GRID * 4.0);
        let mut space = self.flow.space(GRID);
        if let Some(figure) = figure
            && figure.width > 0.0
            && figure.height > 0.0
        {
            let widest = (column.width / figure.width).min(self.format.natural());
            let mut scale = widest.min(room / figure.height);
            // A little smaller rather than parted from the heading above it.
            let under_heading = (on_page - self.flow.tied_height() - space) / figure.height;
            let is_under = self.flow.is_tied();
            if is_under
                && !figure.to_scale
                && under_heading < scale
                && under_heading > scale * LEAST_SHRINK
            {
                scale = under_heading;
            }
            let element = self.figure_element(name);
            let mut slab = Slab::new(figure.height * scale);
            slab.space = space;
            slab.places.push(name.to_owned());
            slab.content.push(Placed::Figure {
                figure,
                at: Spot::new(column.x + (column.width - figure.width * scale) / 2.0, 0.0),
                scale,
                element,
            });
            self.flow.push(slab);
            space = gap;
            if !lines.is_empty() {
                self.flow.tie();
            }
        }
        let element = (!lines.is_empty()).then(|| self.flow.structure.add(Role::Paragraph));
        let elements = element.map(|own| caption.elements(&mut self.flow.structure, own));
        let elements = elements.unwrap_or_default();
        for (number, line) in lines.into_iter().enumerate() {
            let mut slab = Slab::new(CAPTION_LEADING);
            slab.baseline = baseline(CAPTION.size, CAPTION_LEADING);
            let spot = Spot::new(column.x, slab.baseline);
            slab.content = caption.marks(
                self.fonts,
                line,
                spot,
                (column.width, Align::Centre),
                &elements,
            );
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
