//! The format of a page: its size, its margins, and how large type is on it.
//!
//! Pages are set at the type sizes of `style.rs`, on a sheet that is as much smaller as type is to
//! be larger, and enlarged as a whole at the end. Figures alone keep their size.

use crate::build::Paper;
use crate::display::{Area, PT_PER_MM};
use crate::units::{Length, NM_PER_MM};

/// How large titles and headings are beside the text.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Display {
    /// As on a sheet of paper.
    Large,
    /// As on a small screen, where a word of them must still fit on a line.
    Small,
}

/// A page's format, in points of the page as it is set.
#[derive(Clone, Copy, Debug)]
pub(super) struct Format {
    /// How many times its size as set type is printed: on a large sheet it is read from farther
    /// away.
    pub(super) enlarged: f64,
    /// Width and height.
    pub(super) size: (f64, f64),
    /// The part that blocks are set in.
    pub(super) area: Area,
    /// Baseline of the running head.
    pub(super) running: f64,
    /// How large titles are.
    pub(super) display: Display,
    /// How high the figure of a step may be.
    pub(super) tallest_step: f64,
    /// Whether it is read on a screen.
    pub(super) on_screen: bool,
}

/// How high the figure of a step may be on a sheet of A4 or Letter.
const STEP: f64 = 112.0 * PT_PER_MM;
/// Type on large sheets, which hang on a wall or lie across a bench.
const LARGE_SHEET: f64 = 1.25;
/// Part of a phone's page that the figure of a step may take.
const PHONE_STEP: f64 = 0.8;
/// Height of the text on a sheet of Letter, as set.
const USUAL_HEIGHT: f64 = 240.0 * PT_PER_MM;

impl Format {
    /// Of a paper.
    pub(super) fn of(paper: Paper) -> Self {
        let enlarged = match paper {
            Paper::A3 | Paper::Tabloid => LARGE_SHEET,
            Paper::A4 | Paper::Letter | Paper::Phone | Paper::Tablet => 1.0,
        };
        // Top of the text and baseline of the running head above it.
        let (top, running, display) = match paper {
            Paper::A4 | Paper::Letter | Paper::A3 | Paper::Tabloid => (70.0, 46.0, Display::Large),
            Paper::Tablet => (49.0, 28.0, Display::Large),
            Paper::Phone => (35.0, 17.5, Display::Small),
        };
        let set = |length: Length| points(length) / enlarged;
        let (width, height) = paper.size();
        let (width, height) = (set(width), set(height));
        let margins = paper.margins();
        let x = set(margins.left);
        let free = height - top - set(margins.bottom);
        let area = Area {
            x,
            y: top,
            width: width - x - set(margins.right),
            height: libm::floor(free / super::style::GRID) * super::style::GRID,
        };
        let tallest_step = match paper {
            Paper::A4 | Paper::Letter | Paper::Tablet => STEP,
            Paper::A3 | Paper::Tabloid => STEP * area.height / USUAL_HEIGHT,
            // The text of a step is on the next page, whatever is done.
            Paper::Phone => area.height * PHONE_STEP,
        };
        Self {
            enlarged,
            size: (width, height),
            area,
            running,
            display,
            tallest_step,
            on_screen: paper.is_screen(),
        }
    }

    /// How high a figure of a class may be.
    pub(super) fn tallest(&self, class: &str) -> f64 {
        match class {
            "step" => self.tallest_step,
            _ => f64::INFINITY,
        }
    }

    /// The scale at which a figure is as large as it is drawn.
    pub(super) fn natural(&self) -> f64 {
        1.0 / self.enlarged
    }
}

/// A length in points.
fn points(length: Length) -> f64 {
    let micrometres = i32::try_from(length.nm() / 1_000).unwrap_or(i32::MAX);
    f64::from(micrometres) * PT_PER_MM * 1_000.0 / NM_PER_MM_F64
}

/// Nanometres in a millimetre, for lengths already in floating point.
const NM_PER_MM_F64: f64 = 1_000_000.0;
const _: () = assert!(NM_PER_MM == 1_000_000);

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn text_areas_keep_the_margins() {
        // ref: units-and-paper, "Paper" [V, M].
        for (paper, width, height) in [
            (Paper::A4, 595.276, 841.890),
            (Paper::Letter, 612.0, 792.0),
            (Paper::A3, 841.890, 1190.551),
            (Paper::Tabloid, 792.0, 1224.0),
        ] {
            let format = Format::of(paper);
            let real = |set: f64| set * format.enlarged;
            assert!((real(format.size.0) - width).abs() < 0.001, "{paper:?}");
            assert!((real(format.size.1) - height).abs() < 0.001, "{paper:?}");
            let area = format.area;
            assert!((real(area.x) - 56.693).abs() < 0.001);
            assert!((width - real(area.x + area.width) - 42.520).abs() < 0.001);
            assert!(height - real(area.y + area.height) >= 42.519);
        }
    }

    #[test]
    fn lettering_on_screens_is_seen_under_sixteen_minutes_of_arc_at_least() {
        // Widths of screens and distances of reading: common practice, no source. Sixteen minutes
        // at the least, twenty for text: ISO 9241-303, from memory.
        for (paper, screen_mm, distance_mm) in
            [(Paper::Phone, 70.0, 300.0), (Paper::Tablet, 155.0, 400.0)]
        {
            let shown = screen_mm / paper.size().0.mm();
            let minutes = |size_pt: f64| {
                let capitals_mm = size_pt / PT_PER_MM * 0.714 * shown;
                libm::atan(capitals_mm / distance_mm).to_degrees() * 60.0
            };
            assert!(minutes(super::super::style::BODY.size) >= 20.0, "{paper:?}");
            let smallest = if paper == Paper::Phone { 7.0 } else { 8.0 };
            assert!(
                minutes(smallest) >= 15.5,
                "{paper:?}: {}",
                minutes(smallest)
            );
        }
    }
}
