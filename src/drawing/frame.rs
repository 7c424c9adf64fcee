//! How much room the pages of a plan have for figures.
//!
//! Figures are drawn for the page they stand on: what is larger than its text column would be
//! printed smaller, lettering and scale with it.

use super::part::SCALES;
use crate::build::Paper;

/// The room for figures on a page.
#[derive(Clone, Copy, Debug)]
pub(super) struct Frame {
    /// Width of the text column, in millimetres: figures are no wider.
    pub(super) width_mm: f64,
    /// How many times as high as on a sheet of A4 or Letter a figure may be.
    high: f64,
    /// Room beside a view for a reference and its leader, in millimetres, from the outline to the
    /// circle.
    pub(super) clear_mm: f64,
    /// Whether the page is read on a screen: nothing on it is true to scale.
    pub(super) on_screen: bool,
}

impl Frame {
    /// Of a plan's paper.
    pub(super) const fn of(paper: Paper) -> Self {
        // Text columns of `Paper::margins`; the narrower one where two papers are one format in
        // two systems.
        let (width_mm, high) = match paper {
            Paper::A4 | Paper::Letter => (175.0, 1.0),
            Paper::A3 => (262.0, 1.55),
            Paper::Tabloid => (244.0, 1.6),
            Paper::Phone => (80.0, 0.66),
            Paper::Tablet => (149.0, 0.8),
        };
        Self {
            width_mm,
            high,
            clear_mm: if width_mm < 100.0 { 3.0 } else { 6.0 },
            on_screen: paper.is_screen(),
        }
    }

    /// The height of a figure that is `mm` high on a sheet of A4 at the most.
    pub(super) fn height_mm(&self, mm: f64) -> f64 {
        mm * self.high
    }

    /// Reductions that a drawing may have, the largest drawing first: the standard's (ISO 5455,
    /// ref: units-and-paper, "Scales" [V]), and on a screen, where nothing has a scale, finer ones.
    pub(super) const fn reductions(&self) -> &'static [u32] {
        if self.on_screen {
            &[
                1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 22, 25, 28, 32, 36, 40, 45, 50,
            ]
        } else {
            &SCALES
        }
    }

    /// How many sizes a part drawing shows along its length and along its width, beside the whole
    /// ones: more would hide the part, and the table has them all.
    pub(super) fn most_sizes(&self) -> [usize; 2] {
        if self.is_narrow() { [2, 1] } else { [7, 3] }
    }

    /// True where a page is so narrow that rows of figures are broken.
    pub(super) fn is_narrow(&self) -> bool {
        self.width_mm < 100.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn figures_are_no_wider_than_the_text_column() {
        for paper in Paper::ALL {
            let margins = paper.margins();
            let column = paper.size().0 - margins.left - margins.right;
            let frame = Frame::of(paper);
            assert!(frame.width_mm <= column.mm(), "{paper:?}");
            assert!(frame.width_mm > column.mm() - 6.0, "{paper:?}");
        }
    }
}
