//! From characters to glyphs in their places.

use std::sync::Arc;

use harfrust::{Buffer, Direction, Feature, Script, ShapeOptions, ShapePlan, ShaperFont, Tag};

use super::fonts::{FaceFile, Fonts, locked};
use super::style::{Figures, TextStyle};
use super::substitute::{Over, Substitute, substitute};
use crate::display::{Face, Glyph};

/// A line of glyphs and how far it reaches.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct ShapedText {
    /// Sum of all advances, in points.
    pub width: f64,
    /// The glyphs, in order.
    pub glyphs: Vec<Glyph>,
}

/// Text of one face and size on one line, with kerning, ligatures and real fractions around
/// U+2044. A character the face lacks becomes the replacement glyph, which still says what it
/// stands for. Line ends and tabs are set as spaces.
pub fn shape(fonts: &Fonts, face: Face, size: f64, figures: Figures, text: &str) -> ShapedText {
    let style = TextStyle {
        figures,
        ..TextStyle::new(face, size)
    };
    shape_line(fonts, &style, text)
}

/// Text of one style on one line; see [`shape`].
pub fn shape_line(fonts: &Fonts, style: &TextStyle, text: &str) -> ShapedText {
    let face = fonts.face(style.face);
    let mut line = ShapedText {
        width: 0.0,
        glyphs: Vec::with_capacity(text.len()),
    };
    let mut rest = text;
    while let Some(first) = rest.chars().next() {
        let (word, after) = if is_word_space(first) {
            rest.split_at(first.len_utf8())
        } else {
            rest.split_at(rest.find(is_word_space).unwrap_or(rest.len()))
        };
        let set = if is_word_space(first) { " " } else { word };
        face.word(style.figures, set)
            .append_to(&mut line, face, style);
        rest = after;
    }
    line
}

/// Width of text on one line, in points, without making its glyphs.
pub(super) fn width(fonts: &Fonts, style: &TextStyle, text: &str) -> f64 {
    let face = fonts.face(style.face);
    let mut units = 0_i64;
    let mut glyphs = 0_usize;
    for word in text.split_inclusive(is_word_space) {
        let bare = word.trim_end_matches(is_word_space);
        if !bare.is_empty() {
            let shaped = face.word(style.figures, bare);
            units += shaped.width;
            glyphs += shaped.glyphs.len();
        }
        if bare.len() < word.len() {
            units += face.word(style.figures, " ").width;
            glyphs += 1;
        }
    }
    // A line of text has far fewer than 2^52 units and glyphs, so both are exact as f64.
    scaled(units, face, style)
        + f64::from(u32::try_from(glyphs).unwrap_or(u32::MAX)) * style.tracking
}

/// Spaces that words are shaped apart at: all that are set as U+0020.
fn is_word_space(character: char) -> bool {
    matches!(
        character,
        ' ' | '\t' | '\n' | '\r' | '\u{2028}' | '\u{2029}'
    )
}

/// Soft hyphens, joiners and marks of direction.
fn is_unseen(character: char) -> bool {
    matches!(
        character,
        '\u{ad}' | '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{2069}' | '\u{feff}'
    )
}

/// A shaped word in the face's own units, for any size.
#[derive(Debug)]
pub(super) struct Word {
    text: String,
    glyphs: Vec<WordGlyph>,
    width: i64,
}

#[derive(Debug)]
struct WordGlyph {
    id: u16,
    advance: i32,
    offset_x: i32,
    offset_y: i32,
    /// Bytes of the word it stands for.
    start: usize,
    end: usize,
}

impl WordGlyph {
    const fn plain(id: u16, advance: i32, start: usize, end: usize) -> Self {
        Self {
            id,
            advance,
            offset_x: 0,
            offset_y: 0,
            start,
            end,
        }
    }
}

impl Word {
    /// Shapes `text`, in which there is no [word space](is_word_space) beside a lone U+0020.
    pub(super) fn shaped(face: &FaceFile, figures: Figures, text: &str) -> Self {
        let mut buffer = Buffer::new();
        buffer.push_str(text);
        buffer.guess_segment_properties();
        // Right-to-left text is reported by the page stage; set from the left it is at least whole.
        buffer.set_direction(Direction::LeftToRight);
        if buffer.script().is_none() {
            buffer.set_script(Some(Script::LATIN));
        }
        let features = features(figures);
        let plan = locked(&face.plans).plan(face, figures, buffer.script(), &features);
        let options = ShapeOptions::new().plan(Some(&plan)).features(&features);
        let shaped = harfrust::shape(&ShaperFont::new(&face.font), &mut buffer, options);
        let mut word = Self {
            text: text.to_owned(),
            glyphs: Vec::with_capacity(buffer.len()),
            width: 0,
        };
        match shaped {
            Ok(()) => word.take(face, &buffer),
            Err(_) => word.take_unshaped(face),
        }
        word
    }

    fn take(&mut self, face: &FaceFile, buffer: &Buffer) {
        let mut end = self.text.len();
        let pairs = buffer.glyph_infos().iter().zip(buffer.glyph_positions());
        // From the back, since a cluster ends where the next one begins.
        for (info, position) in pairs.rev() {
            let start = (info.cluster as usize).min(self.text.len());
            if self.is_ignorable(start, end) {
                end = start;
                continue;
            }
            let end_of_it = end.max(start);
            let id = u16::try_from(info.glyph_id).unwrap_or(0);
            if id == 0 {
                self.take_lacking(face, start, end_of_it);
            } else {
                self.width += i64::from(position.x_advance);
                self.glyphs.push(WordGlyph {
                    id,
                    advance: position.x_advance,
                    offset_x: position.x_offset,
                    offset_y: position.y_offset,
                    start,
                    end: end_of_it,
                });
            }
            end = start;
        }
        self.glyphs.reverse();
        self.share_clusters();
    }

    /// Takes what stands for a character that the face lacks; its glyphs from the back.
    fn take_lacking(&mut self, face: &FaceFile, start: usize, end: usize) {
        let text = self.text.get(start..end).unwrap_or("");
        let mut characters = text.chars();
        let substitute = match (characters.next(), characters.next()) {
            (Some(character), None) => substitute(character),
            _ => None,
        };
        let glyphs = substitute.and_then(|signs| set_substitute(face, signs, start, end));
        let glyphs = glyphs.unwrap_or_else(|| {
            let advance = face.advance(face.replacement());
            vec![WordGlyph::plain(face.replacement(), advance, start, end)]
        });
        for glyph in glyphs.into_iter().rev() {
            self.width += i64::from(glyph.advance);
            self.glyphs.push(glyph);
        }
    }

    /// True for marks that say how to break or join and are never seen.
    fn is_ignorable(&self, start: usize, end: usize) -> bool {
        let text = self.text.get(start..end).unwrap_or("");
        !text.is_empty() && text.chars().all(is_unseen)
    }

    /// Glyphs of one cluster share its characters: one each, the last one all that are left, or
    /// the first one all where there are more glyphs than characters.
    fn share_clusters(&mut self) {
        let mut first = 0;
        while let Some(start) = self.glyphs.get(first).map(|glyph| glyph.start) {
            let cluster = self.glyphs.iter_mut().skip(first);
            let mut cluster: Vec<&mut WordGlyph> =
                cluster.take_while(|glyph| glyph.start == start).collect();
            let count = cluster.len();
            first += count;
            let end = cluster.iter().map(|glyph| glyph.end).max().unwrap_or(start);
            let text = self.text.get(start..end).unwrap_or("");
            let ends: Vec<usize> = text
                .char_indices()
                .map(|(at, character)| start + at + character.len_utf8())
                .collect();
            let mut from = start;
            for (i, glyph) in cluster.iter_mut().enumerate() {
                let to = match (ends.len() >= count, i + 1 == count) {
                    (true, false) => ends.get(i).copied().unwrap_or(end),
                    _ => end,
                };
                (glyph.start, glyph.end) = (from, to);
                from = to;
            }
        }
    }

    /// A shaper that gives up still leaves one replacement glyph for each character.
    fn take_unshaped(&mut self, face: &FaceFile) {
        for (start, character) in self.text.char_indices() {
            let advance = face.advance(face.replacement());
            self.width += i64::from(advance);
            let end = start + character.len_utf8();
            self.glyphs
                .push(WordGlyph::plain(face.replacement(), advance, start, end));
        }
    }

    fn append_to(&self, line: &mut ShapedText, face: &FaceFile, style: &TextStyle) {
        let scale = face.per_unit * style.size;
        for glyph in &self.glyphs {
            let advance = f64::from(glyph.advance) * scale + style.tracking;
            line.width += advance;
            line.glyphs.push(Glyph {
                id: glyph.id,
                advance,
                offset_x: f64::from(glyph.offset_x) * scale,
                offset_y: f64::from(glyph.offset_y) * scale,
                text: self
                    .text
                    .get(glyph.start..glyph.end)
                    .unwrap_or("")
                    .to_owned(),
            });
        }
    }
}

fn scaled(units: i64, face: &FaceFile, style: &TextStyle) -> f64 {
    let units = i32::try_from(units).unwrap_or(i32::MAX);
    f64::from(units) * face.per_unit * style.size
}

/// The glyphs of a sign set from others, if the face has those.
fn set_substitute(
    face: &FaceFile,
    signs: Substitute,
    start: usize,
    end: usize,
) -> Option<Vec<WordGlyph>> {
    let (first, raised) = signs.first;
    let id = face.glyph(first)?;
    let advance = face.advance(id);
    let mut first = WordGlyph::plain(id, advance, start, end);
    first.offset_y = face.units(raised);
    let mut glyphs = vec![first];
    if let Some((second, raised, over)) = signs.second {
        let id = face.glyph(second)?;
        let free = advance - face.advance(id);
        // The pen has passed the first sign; the second one goes back over it.
        let back = match over {
            Over::Left => 0,
            Over::Middle => free / 2,
            Over::Right => free,
        };
        let mut glyph = WordGlyph::plain(id, 0, start, end);
        glyph.offset_x = back - advance;
        glyph.offset_y = face.units(raised);
        glyphs.push(glyph);
    }
    Some(glyphs)
}

/// Running text takes the figures the face gives of itself: asked for proportional ones, many
/// faces set a narrow 1 that clings to the space before it ("than 1 mm").
fn features(figures: Figures) -> Vec<Feature> {
    match figures {
        Figures::Proportional => Vec::new(),
        Figures::Tabular => vec![Feature::new(Tag::new(b"tnum"), 1, ..)],
    }
}

/// Compiled plans of one face: making one costs more than shaping a word with it.
#[derive(Default)]
pub(super) struct Plans {
    kept: Vec<(Figures, Option<Script>, Arc<ShapePlan>)>,
}

impl Plans {
    fn plan(
        &mut self,
        face: &FaceFile,
        figures: Figures,
        script: Option<Script>,
        features: &[Feature],
    ) -> Arc<ShapePlan> {
        let kept = self
            .kept
            .iter()
            .find(|(f, s, _)| *f == figures && *s == script);
        if let Some((_, _, plan)) = kept {
            return Arc::clone(plan);
        }
        let direction = Direction::LeftToRight;
        let plan = Arc::new(ShapePlan::new(
            &face.font, direction, script, None, features,
        ));
        self.kept.push((figures, script, Arc::clone(&plan)));
        plan
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn shaped(figures: Figures, text: &str) -> ShapedText {
        let fonts = Fonts::shipped().unwrap();
        shape(&fonts, Face::Regular, 10.0, figures, text)
    }

    fn ids(figures: Figures, text: &str) -> Vec<u16> {
        let glyphs = shaped(figures, text).glyphs;
        glyphs.iter().map(|glyph| glyph.id).collect()
    }

    #[test]
    fn fractions_are_real_ones_and_still_read_as_typed() {
        for figures in [Figures::Proportional, Figures::Tabular] {
            let plain = ids(figures, "1113");
            let set = shaped(figures, "11\u{202f}1\u{2044}3");
            let read: String = set.glyphs.iter().map(|g| g.text.as_str()).collect();
            assert_eq!(read, "11\u{202f}1\u{2044}3");
            let fraction: Vec<u16> = set.glyphs.iter().map(|glyph| glyph.id).collect();
            assert_eq!(fraction[..2], plain[..2], "the whole number stays as it is");
            assert_ne!(fraction[3], plain[2], "the numerator is a small figure");
            assert_ne!(fraction[5], plain[3], "the denominator is a small figure");
            let full = shaped(figures, "13").width;
            assert!(set.glyphs[3].advance + set.glyphs[5].advance < full);
        }
    }

    #[test]
    fn tabular_figures_are_of_one_width() {
        let widths = |figures| -> Vec<f64> {
            let glyphs = shaped(figures, "0 1 2 3 4 5 6 7 8 9").glyphs;
            let figures = glyphs.iter().filter(|glyph| glyph.text != " ");
            figures.map(|glyph| glyph.advance).collect()
        };
        let tabular = widths(Figures::Tabular);
        assert!(tabular.iter().all(|width| *width == tabular[0]));
    }

    #[test]
    fn pairs_are_kerned_and_accents_stand_over_their_letters() {
        let pair = shaped(Figures::Proportional, "AV").width;
        let apart =
            shaped(Figures::Proportional, "A").width + shaped(Figures::Proportional, "V").width;
        assert!(pair < apart - 0.1);
        let accented = shaped(Figures::Proportional, "Ж\u{301}");
        assert_eq!(accented.glyphs[0].text, "Ж");
        assert!(accented.glyphs[1].offset_y > 0.5, "raised over the capital");
        assert_eq!(accented.glyphs[1].text, "\u{301}");
    }

    #[test]
    fn a_character_the_face_lacks_is_replaced_and_still_named() {
        let fonts = Fonts::shipped().unwrap();
        let set = shape(&fonts, Face::Bold, 10.0, Figures::Tabular, "a漢b\u{7}");
        let lacking: Vec<&str> = set
            .glyphs
            .iter()
            .filter(|glyph| fonts.is_replacement(Face::Bold, glyph.id))
            .map(|glyph| glyph.text.as_str())
            .collect();
        assert_eq!(lacking, ["漢", "\u{7}"]);
        assert!(set.width > 10.0);
    }

    #[test]
    fn signs_the_face_lacks_are_set_from_others_and_read_as_typed() {
        let fonts = Fonts::shipped().unwrap();
        for sign in ["−", "⌀", "≤", "≥", "≈", "→", "←"] {
            let set = shaped(Figures::Tabular, &format!("a{sign}1"));
            let read: String = set.glyphs.iter().map(|g| g.text.as_str()).collect();
            assert_eq!(read, format!("a{sign}1"));
            let lacking = |g: &Glyph| fonts.is_replacement(Face::Regular, g.id);
            assert!(!set.glyphs.iter().any(lacking), "{sign}");
        }
        let at_most = shaped(Figures::Tabular, "≤");
        assert_eq!(at_most.glyphs.len(), 2);
        assert!((at_most.width - shaped(Figures::Tabular, "<").width).abs() < 1e-9);
    }

    #[test]
    fn measured_widths_are_those_that_are_set() {
        let fonts = Fonts::shipped().unwrap();
        let style = TextStyle::new(Face::Italic, 9.5).tracked(0.3);
        for text in [
            "",
            " ",
            "two  words ",
            "Größe αβγ Жук\u{a0}5\u{2044}8",
            "a\u{ad}b",
        ] {
            let set = shape_line(&fonts, &style, text).width;
            assert!((width(&fonts, &style, text) - set).abs() < 1e-9, "{text:?}");
        }
    }
}
