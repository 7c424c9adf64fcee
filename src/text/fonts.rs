//! The three faces, as files handed in, with the measures text is set by.

use std::collections::BTreeMap;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use skrifa::Font;

use super::shape::{Plans, Word};
use super::style::Figures;
use crate::display::Face;

/// The shipped faces (SIL Open Font License 1.1, see `templates/fonts/OFL.txt`).
const SHIPPED: [&[u8]; 3] = [
    include_bytes!("../../templates/fonts/NotoSans-Regular.ttf"),
    include_bytes!("../../templates/fonts/NotoSans-Bold.ttf"),
    include_bytes!("../../templates/fonts/NotoSans-Italic.ttf"),
];

/// Words longer than this are shaped anew each time, so that a hostile text cannot fill memory.
const LONGEST_KEPT_WORD: usize = 64;

/// A font file that is none.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct UnreadableFont(
    /// The face it was meant for.
    pub Face,
);

/// What a font file says of itself, in thousandths of its size, for those who embed it.
#[derive(Clone, Debug, PartialEq)]
pub struct FaceMetrics {
    /// Its PostScript name: letters, digits and hyphens alone.
    pub name: String,
    /// How far it reaches above the baseline.
    pub ascent: f64,
    /// How far it reaches below, negative.
    pub descent: f64,
    /// Height of capitals.
    pub cap_height: f64,
    /// Left, bottom, right, top of the box around every glyph.
    pub bounds: [f64; 4],
    /// Slant in degrees from upright, negative to the right.
    pub italic_angle: f64,
}

/// One face.
pub(super) struct FaceFile {
    pub(super) font: Font,
    /// Points in the font's own units at size 1.
    pub(super) per_unit: f64,
    /// Drawn in place of a character the font does not have.
    replacement: u16,
    cap_height: f64,
    x_height: f64,
    words: Mutex<[BTreeMap<String, Arc<Word>>; 2]>,
    pub(super) plans: Mutex<Plans>,
}

/// The three faces of a plan's text. Shaped words are kept, since a plan repeats most of them;
/// nothing else is remembered, and what is kept changes no result.
pub struct Fonts {
    faces: [FaceFile; 3],
}

impl Fonts {
    /// The fonts that ship with the tool.
    ///
    /// # Errors
    /// Names the face whose file cannot be read; a test proves that none is.
    pub fn shipped() -> Result<Self, UnreadableFont> {
        let [regular, bold, italic] = SHIPPED;
        Ok(Self {
            faces: [
                FaceFile::new(Font::new(regular, 0), Face::Regular)?,
                FaceFile::new(Font::new(bold, 0), Face::Bold)?,
                FaceFile::new(Font::new(italic, 0), Face::Italic)?,
            ],
        })
    }

    /// Fonts of the user's own: an upright, a bold and an italic face, TrueType or OpenType.
    ///
    /// # Errors
    /// Names the first face whose file cannot be read.
    pub fn from_files(
        regular: Vec<u8>,
        bold: Vec<u8>,
        italic: Vec<u8>,
    ) -> Result<Self, UnreadableFont> {
        Ok(Self {
            faces: [
                FaceFile::new(Font::new(regular, 0), Face::Regular)?,
                FaceFile::new(Font::new(bold, 0), Face::Bold)?,
                FaceFile::new(Font::new(italic, 0), Face::Italic)?,
            ],
        })
    }

    pub(super) fn face(&self, face: Face) -> &FaceFile {
        let [regular, bold, italic] = &self.faces;
        match face {
            Face::Regular => regular,
            Face::Bold => bold,
            Face::Italic => italic,
        }
    }

    /// The file of a face, for embedding.
    pub fn file(&self, face: Face) -> &[u8] {
        match self.face(face).font.source() {
            skrifa::font::Source::Blob(blob) => blob,
            skrifa::font::Source::TableFunction(_) => &[],
        }
    }

    /// Units of the face's own to its size.
    pub fn units_per_em(&self, face: Face) -> u16 {
        self.face(face).font.units_per_em()
    }

    /// Height of its capitals at size 1.
    pub fn cap_height(&self, face: Face) -> f64 {
        self.face(face).cap_height
    }

    /// Height of its small letters at size 1.
    pub fn x_height(&self, face: Face) -> f64 {
        self.face(face).x_height
    }

    /// True for the glyph that stands where the face lacks a character.
    pub fn is_replacement(&self, face: Face, glyph: u16) -> bool {
        glyph == 0 || glyph == self.face(face).replacement
    }

    /// What the face's file says of itself.
    pub fn metrics(&self, face: Face) -> FaceMetrics {
        let file = self.face(face);
        let metrics = file.font.metrics();
        let thousandths = |units: f64| units * file.per_unit * 1_000.0;
        let line = metrics.typo_line.or(metrics.hhea_line);
        let bounds = metrics.bounds;
        let corners = [bounds.x_min, bounds.y_min, bounds.x_max, bounds.y_max];
        let name = file
            .font
            .names()
            .get(skrifa::font::name::NameId::POSTSCRIPT_NAME)
            .and_then(|name| name.english_or_first())
            .map(|name| name.name().chars().collect::<String>())
            .unwrap_or_default();
        let plain = |c: &char| c.is_ascii_alphanumeric() || *c == '-';
        let name: String = name.chars().filter(plain).take(63).collect();
        FaceMetrics {
            name: if name.is_empty() {
                format!("{face:?}")
            } else {
                name
            },
            ascent: thousandths(line.map_or(900.0, |line| line.ascender.to_f64())),
            descent: thousandths(line.map_or(-250.0, |line| line.descender.to_f64())),
            cap_height: file.cap_height * 1_000.0,
            bounds: corners.map(|corner| thousandths(corner.to_f64())),
            italic_angle: file
                .font
                .style_metrics()
                .italic_angle
                .map_or(0.0, |angle| angle.to_f64()),
        }
    }

    /// How far a glyph moves the pen on, in the face's own units.
    pub fn advance_units(&self, face: Face, glyph: u16) -> f64 {
        self.face(face).advance_units(glyph)
    }
}

impl FaceFile {
    fn new(font: Option<Font>, face: Face) -> Result<Self, UnreadableFont> {
        let font = font.ok_or(UnreadableFont(face))?;
        let units = font.units_per_em();
        // A PDF font file needs outlines, a character map and a size to scale by.
        if units == 0 || font.num_glyphs() == 0 || !font.charmap().has_unicode() {
            return Err(UnreadableFont(face));
        }
        let per_unit = 1.0 / f64::from(units);
        let replacement = font
            .charmap()
            .map_unicode('\u{fffd}')
            .and_then(|glyph| u16::try_from(glyph.to_u32()).ok())
            .unwrap_or(0);
        let height = |value: Option<f64>, usual: f64| {
            value
                .map_or(usual, |units| units * per_unit)
                .clamp(0.2, 1.5)
        };
        let metrics = font.metrics();
        let cap_height = height(metrics.cap_height.map(|h| h.to_f64()), 0.7);
        let x_height = height(metrics.x_height.map(|h| h.to_f64()), 0.5);
        Ok(Self {
            per_unit,
            replacement,
            cap_height,
            x_height,
            words: Mutex::new([BTreeMap::new(), BTreeMap::new()]),
            plans: Mutex::new(Plans::default()),
            font,
        })
    }

    pub(super) fn replacement(&self) -> u16 {
        self.replacement
    }

    /// The glyph of a character on its own.
    pub(super) fn glyph(&self, character: char) -> Option<u16> {
        let glyph = self.font.charmap().map_unicode(character)?;
        u16::try_from(glyph.to_u32()).ok().filter(|id| *id != 0)
    }

    /// Thousandths of the size in the face's own units.
    pub(super) fn units(&self, thousandths: f64) -> i32 {
        whole(thousandths / 1_000.0 / self.per_unit)
    }

    /// How far a glyph on its own moves the pen on, in the face's own units.
    pub(super) fn advance(&self, glyph: u16) -> i32 {
        whole(self.advance_units(glyph))
    }

    pub(super) fn advance_units(&self, glyph: u16) -> f64 {
        let glyph = skrifa::GlyphId::from(glyph);
        f64::from(self.font.glyph_metrics().h_advance(glyph))
    }

    /// The shaped word, from memory where it was met before.
    pub(super) fn word(&self, figures: Figures, text: &str) -> Arc<Word> {
        if text.len() > LONGEST_KEPT_WORD {
            return Arc::new(Word::shaped(self, figures, text));
        }
        let kept = self.kept(figures, text);
        kept.unwrap_or_else(|| {
            let word = Arc::new(Word::shaped(self, figures, text));
            let [proportional, tabular] = &mut *locked(&self.words);
            let words = match figures {
                Figures::Proportional => proportional,
                Figures::Tabular => tabular,
            };
            words.insert(text.to_owned(), Arc::clone(&word));
            word
        })
    }

    fn kept(&self, figures: Figures, text: &str) -> Option<Arc<Word>> {
        let [proportional, tabular] = &*locked(&self.words);
        match figures {
            Figures::Proportional => proportional.get(text).cloned(),
            Figures::Tabular => tabular.get(text).cloned(),
        }
    }
}

#[expect(
    clippy::cast_possible_truncation,
    reason = "measures of a font file fit into 16 bits, and a cast of a float saturates"
)]
fn whole(units: f64) -> i32 {
    libm::round(units) as i32
}

/// What is kept is only ever added to whole, so a thread that died leaves it sound.
pub(super) fn locked<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}
