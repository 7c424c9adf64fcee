//! The PDF: pages as a file that prints the same everywhere.
//!
//! In: [`Pages`], the fonts they are set in, the day the plan was revised. Out: the bytes of a
//! PDF 1.7 with embedded font subsets, links, outline, page labels and metadata; the same pages
//! give the same bytes. Never: layout, a clock, a disk, references to anything outside.
//!
//! The road inside: `lower.rs` turns marks into printpdf's operators, checking every number;
//! printpdf writes content streams and the page tree; the other files finish the document with
//! the same lopdf that printpdf uses. A tree of structure (tagged PDF) would be built between
//! `lower.rs`, which would mark content as it lowers it, and `finish.rs`.
//!
//! Findings: P007 and P008, pages in `page/findings.rs`.

mod date;
mod finish;
mod fonts;
mod links;
mod lower;
mod metadata;
mod outline;

use printpdf::{Mm, PdfDocument, PdfPage, PdfSaveOptions};

use crate::finding::{Finding, Outcome};
use crate::page::Pages;
use crate::page::findings::{FONT_NOT_EMBEDDED, NOT_A_NUMBER};
use crate::source::Span;
use crate::text::Fonts;

pub use date::Date;

/// Writes pages as a PDF, dated `date`; without one it carries no date.
pub fn write(pages: &Pages<'_>, fonts: &Fonts, date: Option<Date>) -> Outcome<Vec<u8>> {
    let mut outcome = Outcome::clean(Vec::new());
    let mut used = fonts::UsedFonts::default();
    let mut document = PdfDocument::new("");
    for (i, page) in pages.pages.iter().enumerate() {
        let lowered = lower::lower(page, fonts, &mut used);
        if lowered.left_out > 0 {
            let (count, number) = (lowered.left_out, i + 1);
            let message =
                format!("{count} marks of page {number} have coordinates that are no numbers");
            let finding = Finding::new(&NOT_A_NUMBER, Span::default(), message);
            outcome.findings.push(finding);
        }
        // The size is set exactly when the document is finished.
        let sheet = PdfPage::new(Mm(1.0), Mm(1.0), lowered.ops);
        document.pages.push(sheet);
    }
    // `secure` would drop the operators of paths, which printpdf has no whole form of.
    let options = PdfSaveOptions {
        secure: false,
        ..PdfSaveOptions::default()
    };
    let mut finished = document.to_lopdf_document(&options, &mut Vec::new());
    drop(document);
    let made = finish::finish(&mut finished, pages, fonts, &used, date);
    match made {
        Ok(bytes) => outcome.value = bytes,
        Err(fault) => {
            let finding = Finding::new(&FONT_NOT_EMBEDDED, Span::default(), fault);
            outcome.findings.push(finding);
        }
    }
    outcome
}
