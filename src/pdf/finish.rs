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
use super::{links, metadata, outline, tags};
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
    let ids: Vec<ObjectId> = document.page_iter().collect();
    let resources = used.embed(document, fonts)?;
    let resources = document.add_object(dictionary! { "Font" => resources });
    sheets(document, pages, contents, &ids, resources);
    let links = links::add(document, pages, &ids);
    let structure = tags::add(document, pages, &ids, marked, &links);
    let outline = outline::add(document, pages, &ids);
    let packet = document.add_object(metadata::packet(pages, date));
    let language = metadata::text(metadata::language(pages));
    let catalog = document.catalog_mut().map_err(|fault| fault.to_string())?;
    catalog.set("Lang", language);
    catalog.set("Metadata", packet);
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
    document.prune_objects();
    document.renumber_objects();
    compress(document);
    identify(document);
    let mut bytes = Vec::new();
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
    Ok(bytes)
}

/// How hard deflate tries: lopdf's own 9 takes five times as long for drawings, and its files are
/// smaller by one or two hundredths at most.
const DEFLATE: u32 = 4;
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
            sheet.remove(b"TrimBox");
            sheet.remove(b"CropBox");
        }
    }
}

fn information(document: &mut Document, pages: &Pages<'_>, date: Option<Date>) {
    let id = document.add_object(metadata::information(pages, date));
    document.trailer.set("Info", Object::Reference(id));
}

/// Both halves of the file's identifier from all of its content.
fn identify(document: &mut Document) {
    let mut hash = Hash::new();
    for (id, object) in &document.objects {
        hash.take(&id.0.to_be_bytes());
        match object {
            Object::Stream(stream) => {
                hash.take(&stream.content);
                take_dictionary(&mut hash, &stream.dict);
            }
            Object::Dictionary(dictionary) => take_dictionary(&mut hash, dictionary),
            Object::Null
            | Object::Boolean(_)
            | Object::Integer(_)
            | Object::Real(_)
            | Object::Name(_)
            | Object::String(..)
            | Object::Array(_)
            | Object::Reference(_) => hash.take(format!("{object:?}").as_bytes()),
        }
    }
    let value = hash.value().to_be_bytes().to_vec();
    let half = Object::String(value, StringFormat::Hexadecimal);
    document.trailer.set("ID", vec![half.clone(), half]);
}

fn take_dictionary(hash: &mut Hash, dictionary: &Dictionary) {
    for (key, value) in dictionary {
        hash.take(key);
        hash.take(format!("{value:?}").as_bytes());
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
