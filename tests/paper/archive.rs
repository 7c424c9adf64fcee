//! PDF/A-2a: what ISO 19005-2 asks of a file that is to be read in fifty years, as far as a program can look
//! it up there. The clauses are named from memory of the standard.

use std::collections::{BTreeMap, BTreeSet};

use leafwright::build::Paper;
use lopdf::content::Content;
use lopdf::{Dictionary, Document, Object};
use moxcms::{ColorProfile, DataColorSpace, Layout, ProfileClass, TransformOptions};

use super::{inflated, sample_pdf};

fn file() -> Document {
    Document::load_mem(&sample_pdf(Paper::A4)).unwrap()
}

fn packet(file: &Document) -> String {
    let packet = file.catalog().unwrap().get(b"Metadata").unwrap();
    let packet = file.dereference(packet).unwrap().1.as_stream().unwrap();
    // 6.6.2: readable without a reader of PDF.
    assert!(!packet.dict.has(b"Filter"));
    String::from_utf8(packet.content.clone()).unwrap()
}

/// Calls `see` for everything in the file, however deep.
fn each(file: &Document, see: &mut dyn FnMut(&Object)) {
    fn within(object: &Object, see: &mut dyn FnMut(&Object)) {
        see(object);
        if let Ok(held) = object.as_array() {
            held.iter().for_each(|held| within(held, see));
        }
        if let Some(held) = dictionary(object) {
            held.iter().for_each(|(_, held)| within(held, see));
        }
    }
    file.objects.values().for_each(|object| within(object, see));
}

/// A dictionary, or that of a stream.
fn dictionary(object: &Object) -> Option<&Dictionary> {
    let own = object.as_dict().ok();
    own.or_else(|| object.as_stream().ok().map(|stream| &stream.dict))
}

fn dictionaries(file: &Document, see: &mut dyn FnMut(&Dictionary)) {
    each(file, &mut |object| {
        if let Some(held) = dictionary(object) {
            see(held);
        }
    });
}

fn holds_none(dictionary: &Dictionary, names: &[&[u8]]) {
    for name in names {
        assert!(!dictionary.has(name), "{}", String::from_utf8_lossy(name));
    }
}

#[test]
fn the_file_is_whole_and_open() {
    let bytes = sample_pdf(Paper::A4);
    // 6.1.2: the header, and a comment that tells programs the file is binary.
    assert!(bytes.starts_with(b"%PDF-1.7\n%"));
    assert!(bytes[10..14].iter().all(|byte| *byte > 127));
    // 6.1.3: nothing after the last mark but the end of its line.
    let text = String::from_utf8_lossy(&bytes[bytes.len() - 16..]).into_owned();
    assert!(text.trim_end().ends_with("%%EOF"), "{text}");
    let file = file();
    let id = file.trailer.get(b"ID").unwrap().as_array().unwrap();
    assert!(id.len() == 2 && id[0].as_str().unwrap().iter().any(|byte| *byte != 0));
    assert!(!file.trailer.has(b"Encrypt"));
    // 6.1.7: every stream is in the file and deflated at most.
    each(&file, &mut |object| {
        if let Object::Stream(stream) = object {
            for outside in [&b"F"[..], b"FFilter", b"FDecodeParms"] {
                assert!(!stream.dict.has(outside));
            }
            if let Ok(filter) = stream.dict.get(b"Filter") {
                assert_eq!(filter.as_name().unwrap(), b"FlateDecode");
            }
        }
    });
}

#[test]
fn numbers_and_texts_keep_to_the_limits() {
    // 6.1.13.
    let file = file();
    each(&file, &mut |object| {
        if let Object::Integer(whole) = object {
            assert!(i32::try_from(*whole).is_ok());
        }
        if let Object::Real(real) = object {
            assert!(real.is_finite() && real.abs() < 32_767.0);
        }
        if let Object::Name(name) = object {
            assert!(name.len() <= 127);
        }
        if let Object::String(text, _) = object {
            assert!(text.len() <= 32_767);
        }
    });
    assert!(file.objects.len() < 8_388_607);
    for page in file.page_iter() {
        let page = file.get_dictionary(page).unwrap();
        let sheet = page.get(b"MediaBox").unwrap().as_array().unwrap();
        for side in &sheet[2..] {
            assert!((3.0..=14_400.0).contains(&side.as_float().unwrap()));
        }
    }
}

#[test]
fn colours_mean_the_same_everywhere() {
    let file = file();
    let intents = file.catalog().unwrap().get(b"OutputIntents").unwrap();
    let [intent] = intents.as_array().unwrap().as_slice() else {
        panic!("one output intent");
    };
    let intent = file.dereference(intent).unwrap().1.as_dict().unwrap();
    assert_eq!(intent.get(b"S").unwrap().as_name().unwrap(), b"GTS_PDFA1");
    let profile = intent.get(b"DestOutputProfile").unwrap();
    let profile = file.dereference(profile).unwrap().1.as_stream().unwrap();
    assert_eq!(profile.dict.get(b"N").unwrap().as_i64().unwrap(), 3);
    let bytes = inflated(profile);
    // 6.2.3: of a version that PDF/A-2 knows, 4.2 at most.
    assert!(bytes[8] < 4 || (bytes[8] == 4 && bytes[9] <= 0x20));
    let profile = ColorProfile::new_from_slice(&bytes).unwrap();
    assert_eq!(profile.color_space, DataColorSpace::Rgb);
    assert_eq!(profile.profile_class, ProfileClass::DisplayDevice);
    // Another library's sRGB gives the same colours, within one of 255.
    let same = ColorProfile::new_srgb()
        .create_transform_8bit(
            Layout::Rgb,
            &profile,
            Layout::Rgb,
            TransformOptions::default(),
        )
        .unwrap();
    let colours: Vec<u8> = (0..=255).flat_map(|x| [x, 255 - x, x / 2]).collect();
    let mut seen = vec![0; colours.len()];
    same.transform(&colours, &mut seen).unwrap();
    let off = colours.iter().zip(&seen).map(|(a, b)| a.abs_diff(*b)).max();
    assert!(off <= Some(1), "{off:?}");
}

/// Operators of content (ISO 32000-1, Annex A) that a plan needs. None of them brings another colour space,
/// an image or a transparency with it.
const OPERATORS: [&str; 34] = [
    "q", "Q", "cm", "w", "J", "j", "M", "d", "m", "l", "c", "h", "re", "S", "s", "f", "f*", "B",
    "B*", "n", "W", "W*", "g", "G", "rg", "RG", "BT", "ET", "Tf", "Td", "TD", "Tm", "Tj", "TJ",
];

#[test]
fn content_is_lines_fills_and_text() {
    // 6.2: no operator that the standard does not know, no colour that depends on a device unknown.
    let file = file();
    let known: BTreeSet<&str> = OPERATORS.into_iter().collect();
    let marking = ["BMC", "BDC", "EMC", "Ts", "TL", "Tc", "Tw", "Tz", "Tr"];
    for page in file.page_iter() {
        let content = Content::decode(&file.get_page_content(page)).unwrap();
        let (mut depth, mut deepest) = (0_u32, 0);
        for operation in content.operations {
            let name = operation.operator.as_str();
            assert!(known.contains(name) || marking.contains(&name), "{name}");
            match name {
                "q" => depth += 1,
                "Q" => depth -= 1,
                _ => {}
            }
            deepest = deepest.max(depth);
        }
        assert!(depth == 0 && deepest <= 28);
    }
    dictionaries(&file, &mut |dictionary| {
        holds_none(
            dictionary,
            &[
                b"SMask",
                b"CA",
                b"ca",
                b"BM",
                b"XObject",
                b"ExtGState",
                b"Pattern",
                b"Shading",
            ],
        );
    });
}

#[test]
fn nothing_in_the_file_does_anything() {
    // 6.5 and 6.8 to 6.10: links lead to places, and that is all.
    let file = file();
    dictionaries(&file, &mut |dictionary| {
        holds_none(
            dictionary,
            &[
                b"AA",
                b"OpenAction",
                b"JS",
                b"JavaScript",
                b"EmbeddedFiles",
                b"EF",
                b"AcroForm",
                b"XFA",
                b"OCProperties",
                b"URI",
            ],
        );
        if dictionary.has_type(b"Annot") {
            let kind = dictionary.get(b"Subtype").unwrap().as_name().unwrap();
            assert_eq!(kind, b"Link");
            // 6.3.2: it is printed, and never hidden.
            let flags = dictionary.get(b"F").unwrap().as_i64().unwrap();
            assert_eq!(flags & 0b10_0111, 0b100);
            assert!(!dictionary.has(b"A"));
        }
    });
}

#[test]
fn fonts_are_in_the_file_and_say_what_they_write() {
    // 6.2.11.
    let file = file();
    let mut fonts = 0;
    dictionaries(&file, &mut |dictionary| {
        let subtype = dictionary
            .get(b"Subtype")
            .and_then(Object::as_name)
            .unwrap_or(b"");
        if !dictionary.has_type(b"Font") {
            return;
        }
        if subtype == b"Type0" {
            fonts += 1;
            let map = dictionary.get(b"ToUnicode").unwrap();
            let map = inflated(file.dereference(map).unwrap().1.as_stream().unwrap());
            let map = String::from_utf8(map).unwrap();
            for line in map.lines().filter_map(|line| line.split_once("> <")) {
                let units = line.1.trim_end_matches('>').to_ascii_uppercase();
                for nothing in ["0000", "FEFF", "FFFE"] {
                    assert!(!units.starts_with(nothing), "{units}");
                }
            }
            return;
        }
        let descriptor = dictionary.get(b"FontDescriptor").unwrap();
        let descriptor = file.dereference(descriptor).unwrap().1.as_dict().unwrap();
        assert!(descriptor.has(b"FontFile2") || descriptor.has(b"FontFile3"));
        if subtype == b"CIDFontType2" {
            assert!(dictionary.has(b"CIDToGIDMap"));
        }
    });
    assert!(fonts > 0);
}

/// What a packet says, by namespace and name.
fn told(packet: &str) -> BTreeMap<(String, String), String> {
    let tree = roxmltree::Document::parse(packet).unwrap();
    let description = tree
        .descendants()
        .find(|node| node.tag_name().name() == "Description");
    let properties = description.unwrap().children().filter(|n| n.is_element());
    properties
        .map(|node| {
            let text: String = node
                .descendants()
                .filter(|inner| inner.is_text())
                .filter_map(|inner| inner.text())
                .collect();
            let name = node.tag_name();
            let space = name.namespace().unwrap_or_default().to_owned();
            ((space, name.name().to_owned()), text.trim().to_owned())
        })
        .collect()
}

const ARCHIVE: &str = "http://www.aiim.org/pdfa/ns/id/";
const READERS: &str = "http://www.aiim.org/pdfua/ns/id/";

#[test]
fn the_file_says_what_it_keeps_to_and_the_same_twice() {
    let file = file();
    let packet = packet(&file);
    // 6.6.2.1: the packet's head says neither its length nor how it is coded.
    let head = packet.lines().next().unwrap();
    assert!(!head.contains("bytes=") && !head.contains("encoding="));
    let said = told(&packet);
    let say = |space: &str, name: &str| said.get(&(space.to_owned(), name.to_owned())).cloned();
    assert_eq!(say(ARCHIVE, "part").as_deref(), Some("2"));
    assert_eq!(say(ARCHIVE, "conformance").as_deref(), Some("A"));
    assert_eq!(say(READERS, "part").as_deref(), Some("1"));
    // 6.6.2.3: what XMP itself does not know is described in the packet.
    let known = [
        "http://purl.org/dc/elements/1.1/",
        "http://ns.adobe.com/xap/1.0/",
        "http://ns.adobe.com/pdf/1.3/",
        "http://www.aiim.org/pdfa/ns/extension/",
        ARCHIVE,
    ];
    for (space, name) in said.keys() {
        let described = packet.contains(&format!(">{space}</pdfaSchema:namespaceURI>"))
            && packet.contains(&format!("<pdfaProperty:name>{name}</pdfaProperty:name>"));
        assert!(
            known.contains(&space.as_str()) || described,
            "{space}{name}"
        );
    }
    // 6.6.2.2: the older dictionary says the same.
    let info = file.trailer.get(b"Info").unwrap();
    let info = file.dereference(info).unwrap().1.as_dict().unwrap();
    let [dublin, basic, pdf] = [known[0], known[1], known[2]];
    for (old, space, name) in [
        (&b"Title"[..], dublin, "title"),
        (b"Author", dublin, "creator"),
        (b"Creator", basic, "CreatorTool"),
        (b"Producer", pdf, "Producer"),
    ] {
        let old = info
            .get(old)
            .ok()
            .map(|text| lopdf::decode_text_string(text).unwrap());
        assert_eq!(old, say(space, name), "{name}");
    }
    for (old, name) in [
        (&b"CreationDate"[..], "CreateDate"),
        (b"ModDate", "ModifyDate"),
    ] {
        let old = lopdf::decode_text_string(info.get(old).unwrap()).unwrap();
        let digits = |text: &str| -> String { text.chars().filter(char::is_ascii_digit).collect() };
        assert_eq!(digits(&old), digits(&say(basic, name).unwrap()));
    }
    assert!(file.catalog().unwrap().has(b"Lang"));
}
