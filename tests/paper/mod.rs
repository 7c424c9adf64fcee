//! Documents as paper: set, paginated, written and read back.

mod sample;

use leafwright::build::Paper;
use leafwright::page::paginate;
use leafwright::pdf::{Date, write};
use leafwright::text::Fonts;

fn pdf(paper: Paper) -> Vec<u8> {
    let fonts = Fonts::shipped().unwrap();
    let document = sample::document(&fonts, 4);
    let pages = paginate(&document, &fonts, paper);
    let messages: Vec<&String> = pages.findings.iter().map(|f| &f.message).collect();
    assert!(messages.is_empty(), "{messages:?}");
    let written = write(&pages.value, &fonts, Date::parse("2026-03-01"));
    assert!(written.findings.is_empty());
    written.value
}

#[test]
fn the_same_document_gives_the_same_bytes() {
    let first = pdf(Paper::A4);
    assert!(first == pdf(Paper::A4));
    std::fs::write(std::env::temp_dir().join("leafwright-sample.pdf"), &first).unwrap();
    std::fs::write(
        std::env::temp_dir().join("leafwright-letter.pdf"),
        pdf(Paper::Letter),
    )
    .unwrap();
}
