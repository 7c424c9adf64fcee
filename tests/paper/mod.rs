//! Documents as paper: set, paginated, written and read back.

mod archive;
mod hostile;
mod look;
pub(crate) mod sample;
mod tags;

use leafwright::build::Paper;
use leafwright::document::tree::Document;
use leafwright::finding::Findings;
use leafwright::page::paginate;
use leafwright::pdf::{Date, write};
use leafwright::text::Fonts;

/// A document as PDF, with everything found on the way.
fn print(document: &Document, fonts: &Fonts, paper: Paper) -> (Vec<u8>, Findings) {
    let pages = paginate(document, fonts, paper);
    let mut findings = pages.findings;
    let written = write(&pages.value, fonts, Date::parse("2026-03-01"));
    findings.append(written.findings);
    (written.value, findings)
}

/// What a stream of a PDF holds.
fn inflated(stream: &lopdf::Stream) -> Vec<u8> {
    let inflated = stream.decompressed_content();
    inflated.unwrap_or_else(|_| stream.content.clone())
}

fn codes(findings: &Findings) -> Vec<&'static str> {
    findings.iter().map(|finding| finding.page.code).collect()
}

/// The sample as PDF; nothing is wrong with it.
fn sample_pdf(paper: Paper) -> Vec<u8> {
    let fonts = Fonts::shipped().unwrap();
    let (bytes, findings) = print(&sample::document(&fonts, 4), &fonts, paper);
    assert_eq!(codes(&findings), Vec::<&str>::new());
    bytes
}

/// What a reader copies out of a PDF, line by line, with single spaces.
fn read_back(bytes: &[u8]) -> String {
    let text = pdf_extract::extract_text_from_mem(bytes).unwrap();
    let lines = text.lines().map(|line| {
        let words: Vec<&str> = line.split(' ').filter(|word| !word.is_empty()).collect();
        words.join(" ")
    });
    lines.collect::<Vec<_>>().join("\n")
}

#[test]
fn the_same_document_gives_the_same_bytes() {
    for (paper, name) in [(Paper::A4, "sample-a4"), (Paper::Letter, "sample-letter")] {
        let first = sample_pdf(paper);
        assert!(first == sample_pdf(paper));
        keep_to_look_at(name, &first);
    }
}

/// Leaves a PDF in the build folder, for people to judge its looks.
#[expect(
    clippy::disallowed_methods,
    reason = "a test may write into the build folder"
)]
fn keep_to_look_at(name: &str, bytes: &[u8]) {
    let folder = std::path::Path::new(env!("CARGO_TARGET_TMPDIR"));
    std::fs::write(folder.join(format!("{name}.pdf")), bytes).unwrap();
}

#[test]
fn text_is_read_back_as_it_was_written() {
    let text = read_back(&sample_pdf(Paper::A4));
    for expected in [
        "Seedling shelf for two windows",
        "900 × 300 × 720\u{a0}mm (35\u{202f}7\u{2044}16 × 11\u{202f}13\u{2044}16 × 28\u{202f}11\u{2044}32\u{a0}in)",
        "Größe, Länge und Faserrichtung stehen im Plan",
        "Μήκος και",
        "Длина и ширина указаны в миллиметрах",
        "±0.5\u{a0}mm (1\u{2044}64\u{a0}in)",
        "≤ 1\u{a0}mm, ≥ 0, ≈ 0.6, −0.2, ⌀\u{202f}5, left → right ← back",
        "page\u{a0}2 of 13",
        "Final checks",
    ] {
        assert!(text.contains(expected), "{expected} is not in:\n{text}");
    }
}

#[test]
fn tables_are_read_back_row_by_row() {
    let text = read_back(&sample_pdf(Paper::A4));
    let words: Vec<&str> = text.split_whitespace().collect();
    let text = words.join(" ");
    let mut from = 0;
    for n in 0..60 {
        // Length, width and thickness in millimetres, then the length in inches.
        let row = format!(
            "{} {} 18 {}\u{202f}21\u{2044}32",
            296 + n * 7,
            120 + n * 3,
            11 + n
        );
        let row: Vec<&str> = row.split_whitespace().collect();
        let row = row.join(" ");
        let found = text[from..].find(&row);
        assert!(found.is_some(), "row {n}, {row}, is not after byte {from}");
        from += found.unwrap();
    }
}

#[test]
fn links_outline_and_metadata_are_there() {
    let bytes = sample_pdf(Paper::A4);
    let document = lopdf::Document::load_mem(&bytes).unwrap();
    assert_eq!(document.version, "1.7");
    let catalog = document.catalog().unwrap();
    assert_eq!(catalog.get(b"Lang").unwrap().as_str().unwrap(), b"en");
    for key in [
        &b"Outlines"[..],
        b"PageLabels",
        b"Metadata",
        b"ViewerPreferences",
    ] {
        assert!(catalog.has(key), "{}", String::from_utf8_lossy(key));
    }
    let outlines = catalog.get(b"Outlines").unwrap().as_reference().unwrap();
    let outlines = document.get_dictionary(outlines).unwrap();
    assert_eq!(outlines.get(b"Count").unwrap().as_i64().unwrap(), 6);
    let targets = |page: u32| {
        let id = document.get_pages()[&page];
        let annotations = document.get_page_annotations(id).unwrap();
        let pages: Vec<u32> = annotations
            .iter()
            .map(|link| {
                let place = link.get(b"Dest").unwrap().as_array().unwrap();
                let target = place[0].as_reference().unwrap();
                let found = document
                    .get_pages()
                    .into_iter()
                    .find(|(_, id)| *id == target);
                found.unwrap().0
            })
            .collect();
        pages
    };
    // Contents on page 4: every entry leads to the page whose number it prints.
    assert_eq!(targets(4), [2, 3, 4, 5, 8, 8, 9, 10, 11, 12, 13]);
    // The cover's drawing links the ring with the letter to its row of the cut list.
    assert_eq!(targets(1), [5]);
    let text = read_back(&bytes);
    assert!(text.contains("Read this first"));
}

#[test]
fn nothing_in_the_file_leads_outside() {
    let bytes = sample_pdf(Paper::A4);
    let document = lopdf::Document::load_mem(&bytes).unwrap();
    for object in document.objects.values() {
        if let Ok(dictionary) = object.as_dict() {
            // What an element of the structure has under this key are its attributes, not an action.
            let is_element = dictionary
                .get_type()
                .is_ok_and(|kind| kind == b"StructElem");
            for key in [&b"URI"[..], b"A", b"AA", b"OpenAction", b"JS", b"F"] {
                let is_flag = dictionary
                    .get(key)
                    .is_ok_and(|value| value.as_i64().is_ok());
                let is_told = is_element && key == b"A";
                assert!(!dictionary.has(key) || is_flag || is_told, "{dictionary:?}");
            }
        }
    }
}

#[test]
fn fonts_are_cut_down_to_what_is_used() {
    let bytes = sample_pdf(Paper::A4);
    assert!(bytes.len() < 120_000, "{}", bytes.len());
}
