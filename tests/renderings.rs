//! Pages of the examples against small renderings of them, drawn by a rasteriser that knows nothing of
//! how they were made.
//!
//! `UPDATE=1 cargo test renderings` draws the renderings anew; look at them before they are committed. A
//! page may differ by a little everywhere (another processor rounds otherwise) and nowhere by much.

#![expect(
    clippy::cast_possible_truncation,
    reason = "pixels and levels of grey of small pictures"
)]

use std::fs;
use std::path::PathBuf;
use std::process::Command;
use std::sync::Arc;

use hayro::hayro_interpret::InterpreterSettings;
use hayro::hayro_syntax::Pdf;
use hayro::{RenderSettings, render_pdf};

use crate::shell::folder;

/// Pixels to a point: a page of A4 is 179 by 253.
const SCALE: f32 = 0.3;
/// Pages in a row of a sheet of renderings.
const IN_A_ROW: usize = 8;
/// A square of so many pixels is compared as a whole.
const BLOCK: usize = 8;
/// Levels of grey, of 255, that the mean of such a square may differ by.
const IN_A_BLOCK: f64 = 14.0;
/// And that the mean of a page may.
const IN_A_PAGE: f64 = 0.5;

/// A page in levels of grey.
#[derive(Clone)]
struct Grey {
    width: usize,
    height: usize,
    levels: Vec<u8>,
}

impl Grey {
    fn white(width: usize, height: usize) -> Self {
        Self {
            width,
            height,
            levels: vec![255; width * height],
        }
    }

    /// Lays another one over it.
    fn put(&mut self, other: &Self, x: usize, y: usize) {
        for row in 0..other.height {
            let from = &other.levels[row * other.width..][..other.width];
            self.levels[(y + row) * self.width + x..][..other.width].copy_from_slice(from);
        }
    }

    fn cut_out(&self, x: usize, y: usize, width: usize, height: usize) -> Self {
        let rows = (0..height).flat_map(|row| {
            let start = (y + row) * self.width + x;
            self.levels[start..start + width].iter().copied()
        });
        Self {
            width,
            height,
            levels: rows.collect(),
        }
    }

    fn mean(&self) -> f64 {
        let sum: f64 = self.levels.iter().map(|level| f64::from(*level)).sum();
        sum / self.levels.len() as f64
    }
}

/// The pages of a PDF.
fn drawn(bytes: Vec<u8>) -> Vec<Grey> {
    let pdf = Pdf::new(Arc::new(bytes)).unwrap();
    let settings = InterpreterSettings::default();
    let drawn = render_pdf(&pdf, SCALE, settings, &RenderSettings::default(), None).unwrap();
    let grey = |map: &hayro::vello_cpu::Pixmap| {
        let levels = map.data_as_u8_slice().chunks(4).map(|pixel| {
            // Luma of Rec. ITU-R BT.601; the page is white behind.
            let [r, g, b] = [pixel[0], pixel[1], pixel[2]].map(f64::from);
            (0.299 * r + 0.587 * g + 0.114 * b).round() as u8
        });
        Grey {
            width: usize::from(map.width()),
            height: usize::from(map.height()),
            levels: levels.collect(),
        }
    };
    drawn.iter().map(grey).collect()
}

/// All pages on one sheet.
fn sheet(pages: &[Grey]) -> Grey {
    let (width, height) = (pages[0].width, pages[0].height);
    let rows = pages.len().div_ceil(IN_A_ROW);
    let mut sheet = Grey::white(width * IN_A_ROW, height * rows);
    for (number, page) in pages.iter().enumerate() {
        sheet.put(page, number % IN_A_ROW * width, number / IN_A_ROW * height);
    }
    sheet
}

fn write(path: &PathBuf, picture: &Grey) {
    let file = fs::File::create(path).unwrap();
    let mut encoder = png::Encoder::new(file, picture.width as u32, picture.height as u32);
    encoder.set_color(png::ColorType::Grayscale);
    encoder.set_compression(png::Compression::High);
    let mut writer = encoder.write_header().unwrap();
    writer.write_image_data(&picture.levels).unwrap();
}

fn read(path: &PathBuf) -> Grey {
    let file = std::io::BufReader::new(fs::File::open(path).unwrap());
    let mut reader = png::Decoder::new(file).read_info().unwrap();
    let mut levels = vec![0; reader.output_buffer_size().unwrap()];
    let info = reader.next_frame(&mut levels).unwrap();
    Grey {
        width: info.width as usize,
        height: info.height as usize,
        levels,
    }
}

/// Where two pages differ the most, and by how much; in millimetres from the upper left.
fn difference(was: &Grey, now: &Grey) -> (f64, [usize; 2]) {
    let mut most = (0.0, [0, 0]);
    for y in (0..now.height).step_by(BLOCK) {
        for x in (0..now.width).step_by(BLOCK) {
            let (wide, high) = (BLOCK.min(now.width - x), BLOCK.min(now.height - y));
            let mean = |page: &Grey| page.cut_out(x, y, wide, high).mean();
            let by = (mean(was) - mean(now)).abs();
            if by > most.0 {
                let mm = |pixels: usize| (pixels as f64 / f64::from(SCALE) / 72.0 * 25.4) as usize;
                most = (by, [mm(x), mm(y)]);
            }
        }
    }
    most
}

fn check(example: &str) {
    let root = PathBuf::from(env!("CARGO_MANIFEST_DIR"));
    let plan = folder(&format!("rendering-{example}")).join("plan.pdf");
    let built = Command::new(env!("CARGO_BIN_EXE_leafwright"))
        .arg("build")
        .arg(root.join(format!("examples/{example}/{example}.wright")))
        .arg("-o")
        .arg(&plan)
        .output()
        .unwrap();
    assert!(built.status.success());
    let pages = drawn(fs::read(plan).unwrap());
    let stored = root.join(format!("tests/renderings/{example}.png"));
    if std::env::var_os("UPDATE").is_some() {
        write(&stored, &sheet(&pages));
        return;
    }
    let was = read(&stored);
    let (width, height) = (pages[0].width, pages[0].height);
    let rows = pages.len().div_ceil(IN_A_ROW);
    assert_eq!(
        (was.width, was.height),
        (width * IN_A_ROW, height * rows),
        "{example} has more or fewer pages; UPDATE=1 draws them anew"
    );
    for (number, page) in pages.iter().enumerate() {
        let (x, y) = (number % IN_A_ROW * width, number / IN_A_ROW * height);
        let before = was.cut_out(x, y, width, height);
        let (by, at) = difference(&before, page);
        let whole = (before.mean() - page.mean()).abs();
        assert!(
            by < IN_A_BLOCK && whole < IN_A_PAGE,
            "{example}, page {}: {by:.1} levels of 255 other at {} mm from the left and {} mm from the top, \
             {whole:.2} on the whole; UPDATE=1 draws it anew",
            number + 1,
            at[0],
            at[1]
        );
    }
}

#[test]
fn the_potting_bench_looks_as_it_did() {
    check("potting-bench");
}

#[test]
fn the_seed_cabinet_looks_as_it_did() {
    check("seed-cabinet");
}

/// The comparison sees what a reader would: a line that is missing, a word that moved.
#[test]
fn a_missing_line_is_seen() {
    let page = Grey::white(100, 100);
    let mut lined = page.clone();
    lined.levels[40 * 100 + 10..40 * 100 + 60].fill(0);
    assert!(difference(&page, &lined).0 > IN_A_BLOCK);
    assert!(difference(&page, &page).0 < f64::EPSILON);
}
