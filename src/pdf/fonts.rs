//! Fonts in the file: subsets of the glyphs used, with exact widths and the text they stand for.
//!
//! The codes in content streams are our own: one for each pair of a glyph and the text it stands
//! for, so that a glyph that is a space here and a no-break space there is copied out as what it
//! is. A table in the file leads from code to glyph. printpdf would tie code, glyph and text
//! together, cut widths to whole numbers and leave the font's measures empty, so it is not given
//! the fonts at all.

use std::collections::BTreeMap;
use std::fmt::Write;

use lopdf::{Dictionary, Document, Object, ObjectId, Stream, StringFormat, dictionary};
use subsetter::GlyphRemapper;

use crate::display::{Face, Glyph};
use crate::text::Fonts;

/// More codes than this cannot be written in two bytes; a text that needs them shares codes.
const MOST_CODES: u16 = 65_000;

/// The name of a face in content streams; none of printpdf's own.
pub(super) const fn resource_name(face: Face) -> &'static str {
    match face {
        Face::Regular => "LeafRegular",
        Face::Bold => "LeafBold",
        Face::Italic => "LeafItalic",
    }
}

/// The glyphs that pages use.
#[derive(Default)]
pub(super) struct UsedFonts {
    faces: BTreeMap<Face, UsedFace>,
}

/// The glyphs of one face that pages use.
struct UsedFace {
    /// Outlines are in a CFF table, which knows glyphs by their number alone.
    is_cff: bool,
    remapper: GlyphRemapper,
    /// For each glyph the texts it stands for, and their codes.
    codes: BTreeMap<u16, Vec<(String, u16)>>,
    /// For each code, from 1: the glyph in the subset, the one in the face, the text.
    entries: Vec<Entry>,
    widths: BTreeMap<u16, f64>,
}

struct Entry {
    in_subset: u16,
    in_face: u16,
    text: String,
}

impl UsedFonts {
    /// The code of a glyph that stands for a text.
    pub(super) fn code(&mut self, fonts: &Fonts, face: Face, glyph: &Glyph) -> u16 {
        let used = self.faces.entry(face).or_insert_with(|| UsedFace {
            is_cff: fonts.file(face).starts_with(b"OTTO"),
            remapper: GlyphRemapper::new(),
            codes: BTreeMap::new(),
            entries: Vec::new(),
            widths: BTreeMap::new(),
        });
        used.code(glyph)
    }

    /// Width of a glyph in thousandths of the size, as the file will state it.
    pub(super) fn width(&mut self, fonts: &Fonts, face: Face, glyph: u16) -> f64 {
        let found = self
            .faces
            .get(&face)
            .and_then(|used| used.widths.get(&glyph));
        if let Some(width) = found {
            return *width;
        }
        let width = stated_width(fonts, face, glyph);
        if let Some(used) = self.faces.get_mut(&face) {
            used.widths.insert(glyph, width);
        }
        width
    }

    /// Adds the fonts to a document; the dictionary of resources that names them.
    pub(super) fn embed(
        &self,
        document: &mut Document,
        fonts: &Fonts,
    ) -> Result<Dictionary, String> {
        let mut resources = Dictionary::new();
        for (face, used) in &self.faces {
            let id = used.embed(document, fonts, *face)?;
            resources.set(resource_name(*face), Object::Reference(id));
        }
        Ok(resources)
    }
}

/// Thousandths of the size, with two decimals.
fn stated_width(fonts: &Fonts, face: Face, glyph: u16) -> f64 {
    let units = f64::from(fonts.units_per_em(face)).max(1.0);
    libm::round(fonts.advance_units(face, glyph) * 100_000.0 / units) / 100.0
}

impl UsedFace {
    fn code(&mut self, glyph: &Glyph) -> u16 {
        let known = self.codes.entry(glyph.id).or_default();
        let found = known
            .iter()
            .find(|(text, _)| self.is_cff || *text == glyph.text);
        if let Some((_, code)) = found {
            return *code;
        }
        let in_subset = self.remapper.remap(glyph.id);
        let next = u16::try_from(self.entries.len() + 1).unwrap_or(u16::MAX);
        if next > MOST_CODES {
            return known.first().map_or(0, |(_, code)| *code);
        }
        // A subset of a CFF face is numbered like its codes: first used, first numbered.
        let code = if self.is_cff { in_subset } else { next };
        known.push((glyph.text.clone(), code));
        self.entries.push(Entry {
            in_subset,
            in_face: glyph.id,
            text: glyph.text.clone(),
        });
        code
    }

    fn embed(
        &self,
        document: &mut Document,
        fonts: &Fonts,
        face: Face,
    ) -> Result<ObjectId, String> {
        let metrics = fonts.metrics(face);
        let subset = subsetter::subset(fonts.file(face), 0, &self.remapper)
            .map_err(|fault| format!("the {} face cannot be embedded: {fault}", metrics.name))?;
        let name = format!("{}+{}", self.tag(), metrics.name);
        let is_cff = subset.starts_with(b"OTTO");
        let program = self.program(document, subset, is_cff);
        let number = |value: f64| real(value);
        let mut descriptor = dictionary! {
            "Type" => "FontDescriptor",
            "FontName" => Object::Name(name.clone().into_bytes()),
            // Symbolic: characters outside of the standard Latin set; and italic.
            "Flags" => if metrics.italic_angle < 0.0 { 4 | 64 } else { 4 },
            "FontBBox" => metrics.bounds.map(number).to_vec(),
            "ItalicAngle" => number(metrics.italic_angle),
            "Ascent" => number(metrics.ascent),
            "Descent" => number(metrics.descent),
            "CapHeight" => number(metrics.cap_height),
            "StemV" => if face == Face::Bold { 140 } else { 85 },
        };
        descriptor.set(if is_cff { "FontFile3" } else { "FontFile2" }, program);
        let descriptor = document.add_object(descriptor);
        let widths: Vec<Object> = self
            .entries
            .iter()
            .map(|entry| real(stated_width(fonts, face, entry.in_face)))
            .collect();
        let mut descendant = dictionary! {
            "Type" => "Font",
            "Subtype" => if is_cff { "CIDFontType0" } else { "CIDFontType2" },
            "BaseFont" => Object::Name(name.clone().into_bytes()),
            "CIDSystemInfo" => dictionary! {
                "Registry" => Object::String(b"Adobe".to_vec(), StringFormat::Literal),
                "Ordering" => Object::String(b"Identity".to_vec(), StringFormat::Literal),
                "Supplement" => 0,
            },
            "FontDescriptor" => descriptor,
            "DW" => 0,
            "W" => vec![Object::Integer(1), Object::Array(widths)],
        };
        if !is_cff {
            descendant.set("CIDToGIDMap", document.add_object(self.code_table()));
        }
        let descendant = document.add_object(descendant);
        let to_unicode = document.add_object(Stream::new(Dictionary::new(), self.to_unicode()));
        Ok(document.add_object(dictionary! {
            "Type" => "Font",
            "Subtype" => "Type0",
            "BaseFont" => Object::Name(name.into_bytes()),
            "Encoding" => "Identity-H",
            "DescendantFonts" => vec![Object::Reference(descendant)],
            "ToUnicode" => to_unicode,
        }))
    }

    fn program(&self, document: &mut Document, subset: Vec<u8>, is_cff: bool) -> ObjectId {
        let mut about = Dictionary::new();
        if is_cff {
            about.set("Subtype", "OpenType");
        } else {
            about.set("Length1", i64::try_from(subset.len()).unwrap_or(i64::MAX));
        }
        document.add_object(Stream::new(about, subset))
    }

    /// Six capitals that tell this subset from others of the same font (ISO 32000-1, 9.6.4).
    fn tag(&self) -> String {
        let mut hash = super::finish::Hash::new();
        for entry in &self.entries {
            hash.take(&entry.in_face.to_be_bytes());
        }
        let mut rest = hash.value();
        let mut tag = String::with_capacity(6);
        for _ in 0..6 {
            let letter = u8::try_from(rest % 26).unwrap_or(0);
            tag.push(char::from(b'A' + letter));
            rest /= 26;
        }
        tag
    }

    /// For each code, from 0, the number of its glyph in the subset.
    fn code_table(&self) -> Stream {
        let mut table = vec![0, 0];
        for entry in &self.entries {
            table.extend(entry.in_subset.to_be_bytes());
        }
        Stream::new(Dictionary::new(), table)
    }

    /// For each code the text it stands for (ISO 32000-1, 9.10.3).
    fn to_unicode(&self) -> Vec<u8> {
        let mut map = String::from(
            "/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n\
             /CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def\n\
             /CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n\
             1 begincodespacerange\n<0000> <FFFF>\nendcodespacerange\n",
        );
        let coded: Vec<(usize, &Entry)> = self.entries.iter().enumerate().collect();
        for block in coded.chunks(100) {
            // Writing into a string does not fail.
            let _ = writeln!(map, "{} beginbfchar", block.len());
            for (i, entry) in block {
                let _ = write!(map, "<{:04X}> <", i + 1);
                // A further glyph of a cluster stands for no text, which is written as such.
                for unit in entry.text.encode_utf16() {
                    let _ = write!(map, "{unit:04X}");
                }
                map.push_str(">\n");
            }
            map.push_str("endbfchar\n");
        }
        map.push_str("endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n");
        map.into_bytes()
    }
}

/// A number with two decimals.
pub(super) fn real(value: f64) -> Object {
    let rounded = libm::round(value * 100.0) / 100.0;
    #[expect(
        clippy::cast_possible_truncation,
        reason = "measures of fonts and pages, far below a million"
    )]
    let single = rounded as f32;
    Object::Real(single + 0.0)
}
