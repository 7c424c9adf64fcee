//! The last pass over the document: fonts, links, outline, labels, metadata, and an identifier
//! that depends on nothing but what is in the file.

use std::io::Write;

use flate2::Compression;
use flate2::write::ZlibEncoder;
use lopdf::{
    Dictionary, Document, Object, ObjectId, SaveOptions, Stream, StringFormat, dictionary,
};
use rayon::iter::{IntoParallelIterator, ParallelIterator};

use super::date::Date;
use super::fonts::{UsedFonts, real};
use super::tags::Marked;
use super::{colour, links, metadata, outline, tags};
use crate::page::Pages;
use crate::text::Fonts;

/// Finishes a document and writes it.
///
/// # Errors
/// Says which font cannot be embedded, or that the document could not be written.
pub(super) fn finish(
    document: &mut Document,
    contents: Vec<Vec<u8>>,
    marked: &[Marked],
    pages: &Pages<'_>,
    fonts: &Fonts,
    used: &UsedFonts,
    date: Option<Date>,
) -> Result<Vec<u8>, String> {
    document.version = "1.7".to_owned();
    // What printpdf puts into every document and this one has its own of goes, while there is little to
    // search; all that is added after this is referred to.
    strip(document);
    let ids: Vec<ObjectId> = document.page_iter().collect();
    let resources = used.embed(document, fonts)?;
    let resources = document.add_object(dictionary! { "Font" => resources });
    sheets(document, pages, contents, &ids, resources);
    let links = links::add(document, pages, &ids);
    let structure = tags::add(document, pages, &ids, marked, &links);
    let outline = outline::add(document, pages, &ids);
    let packet = document.add_object(metadata::packet(pages, date));
    let intents = colour::intents(document);
    let language = metadata::text(metadata::language(pages));
    let catalog = document.catalog_mut().map_err(|fault| fault.to_string())?;
    catalog.set("Lang", language);
    catalog.set("Metadata", packet);
    catalog.set("OutputIntents", intents);
    catalog.set("StructTreeRoot", structure);
    catalog.set("MarkInfo", dictionary! { "Marked" => true });
    catalog.set(
        "ViewerPreferences",
        dictionary! { "DisplayDocTitle" => true },
    );
    // Pages are numbered from 1, the cover included, as the running head does.
    let from_first = dictionary! { "S" => "D", "St" => 1 };
    catalog.set(
        "PageLabels",
        dictionary! { "Nums" => vec![Object::Integer(0), Object::Dictionary(from_first)] },
    );
    if let Some(outline) = outline {
        catalog.set("Outlines", outline);
        catalog.set("PageMode", "UseOutlines");
    }
    information(document, pages, date);
    compress(document);
    let unknown = Object::String(UNKNOWN.to_vec(), StringFormat::Hexadecimal);
    document.trailer.set("ID", vec![unknown.clone(), unknown]);
    let lengths = document.objects.values().map(|object| {
        let stream = object.as_stream();
        stream.map_or(OBJECT_LENGTH, |stream| stream.content.len())
    });
    let mut bytes = Vec::with_capacity(lengths.sum());
    // The many small dictionaries of the structure are deflated together.
    let options = SaveOptions::builder()
        .use_object_streams(true)
        .use_xref_streams(true)
        .max_objects_per_stream(IN_ONE_STREAM)
        .compression_level(DEFLATE)
        .build();
    document
        .save_with_options(&mut bytes, options)
        .map_err(|fault| fault.to_string())?;
    identify(&mut bytes);
    Ok(bytes)
}

/// Leaves of a document its pages alone.
fn strip(document: &mut Document) {
    let ids: Vec<ObjectId> = document.page_iter().collect();
    for id in ids {
        if let Ok(page) = document.get_dictionary_mut(id) {
            for own in [
                &b"Resources"[..],
                b"Contents",
                b"Annots",
                b"TrimBox",
                b"CropBox",
            ] {
                page.remove(own);
            }
        }
    }
    document.trailer.remove(b"Info");
    document.prune_objects();
    document.renumber_objects();
}

/// How hard deflate tries: lopdf's own 9 takes several times as long for drawings, and its files are
/// smaller by a quarter; a page is a fifth of what it may be.
const DEFLATE: u32 = 1;
/// About as long is an object that is no stream, deflated with others.
const OBJECT_LENGTH: usize = 16;
/// Objects that are deflated together: a reader inflates all of them to find one.
const IN_ONE_STREAM: usize = 200;

/// Deflates every stream that gains by it. The deflate in use is the portable one: those made for
/// one kind of processor find other matches on another, and the bytes would differ.
///
/// Streams are shared out among the processor's cores; each is deflated for itself, so that it
/// does not show which core did it.
fn compress(document: &mut Document) {
    let streams: Vec<&mut Stream> = document
        .objects
        .values_mut()
        .filter_map(|object| object.as_stream_mut().ok())
        .filter(|stream| stream.allows_compression && !stream.dict.has(b"Filter"))
        .collect();
    streams.into_par_iter().for_each(deflate);
}

/// Deflates a stream where that makes it smaller.
fn deflate(stream: &mut Stream) {
    let room = Vec::with_capacity(stream.content.len() / 3);
    let mut encoder = ZlibEncoder::new(room, Compression::new(DEFLATE));
    let written = encoder.write_all(&stream.content);
    if let (Ok(()), Ok(small)) = (written, encoder.finish())
        && small.len() + 20 < stream.content.len()
    {
        stream.dict.set("Filter", "FlateDecode");
        stream.set_content(small);
    }
}

/// Content, exact sizes, and the resources every page shares.
fn sheets(
    document: &mut Document,
    pages: &Pages<'_>,
    contents: Vec<Vec<u8>>,
    ids: &[ObjectId],
    resources: ObjectId,
) {
    for ((page, content), id) in pages.pages.iter().zip(contents).zip(ids) {
        let content = document.add_object(Stream::new(Dictionary::new(), content));
        if let Ok(sheet) = document.get_dictionary_mut(*id) {
            let size = [0.0, 0.0, page.width, page.height];
            sheet.set("MediaBox", size.map(real).to_vec());
            sheet.set("Resources", resources);
            sheet.set("Contents", content);
        }
    }
}

fn information(document: &mut Document, pages: &Pages<'_>, date: Option<Date>) {
    let id = document.add_object(metadata::information(pages, date));
    document.trailer.set("Info", Object::Reference(id));
}

/// Stands in the file for its identifier until that is known.
const UNKNOWN: [u8; 16] = [0; 16];

/// Both halves of the file's identifier, from every byte of the file. They stand near its end, in the
/// dictionary of the last stream, which is not deflated.
fn identify(bytes: &mut [u8]) {
    let mut hash = Hash::new();
    hash.take(bytes);
    let value = format!("{:032X}", hash.value());
    let unknown = "0".repeat(2 * UNKNOWN.len());
    let mut end = bytes.len();
    for _ in 0..2 {
        let before = bytes.get(..end).unwrap_or_default();
        let found = before
            .windows(unknown.len())
            .rposition(|window| window == unknown.as_bytes());
        let Some(at) = found else { return };
        if let Some(place) = bytes.get_mut(at..at + unknown.len()) {
            place.copy_from_slice(value.as_bytes());
        }
        end = at;
    }
}

/// The FNV-1a hash of 128 bits: not for secrets, but the same everywhere and short.
pub(super) struct Hash(u128);

impl Hash {
    pub(super) const fn new() -> Self {
        Self(0x6c62_272e_07bb_0142_62b8_2175_6295_c58d)
    }

    pub(super) fn take(&mut self, bytes: &[u8]) {
        for byte in bytes {
            self.0 = (self.0 ^ u128::from(*byte))
                .wrapping_mul(0x0000_0000_0100_0000_0000_0000_0000_013b);
        }
    }

    pub(super) const fn value(&self) -> u128 {
        self.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_hash_is_fnv_1a() {
        // Published test vector of the Fowler/Noll/Vo hash for "a", 128 bits.
        let mut hash = Hash::new();
        hash.take(b"a");
        assert_eq!(hash.value(), 0xd228_cb69_6f1a_8caf_7891_2b70_4e4a_8964);
    }
}
