//! The PDF: pages as a file that prints the same everywhere.
//!
//! In: [`Pages`], the fonts they are set in, the day the plan was revised. Out: the bytes of a
//! tagged PDF 1.7 with embedded font subsets, links, outline, page labels and metadata, by the rules of
//! PDF/UA-1 and PDF/A-2a; the same pages give the same bytes. Never: layout, a clock, a disk, references to anything outside.
//!
//! The road inside: `lower.rs` turns marks into printpdf's operators, checking every number;
//! printpdf writes content streams, page by page and side by side, and the page tree; the other files finish the document with
//! the same lopdf that printpdf uses. `lower.rs` marks content as it lowers it; `tags.rs` makes the tree of
//! structure that owns it.
//!
//! Findings: P007 and P008, pages in `page/findings.rs`.

mod colour;
mod date;
mod finish;
mod fonts;
mod links;
mod lower;
mod metadata;
mod outline;
mod tags;

use printpdf::{Mm, Op, PdfDocument, PdfPage, PdfSaveOptions};
use rayon::iter::{IntoParallelIterator, ParallelExtend, ParallelIterator};

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
    let mut contents = Vec::with_capacity(pages.pages.len());
    let mut marked = Vec::with_capacity(pages.pages.len());
    let mut number = 0;
    for some in pages.pages.chunks(AT_ONCE) {
        let mut sheets = Vec::with_capacity(AT_ONCE);
        for page in some {
            number += 1;
            let lowered = lower::lower(page, &pages.structure, fonts, &mut used);
            if lowered.left_out > 0 {
                let count = lowered.left_out;
                let message =
                    format!("{count} marks of page {number} have coordinates that are no numbers");
                let finding = Finding::new(&NOT_A_NUMBER, Span::default(), message);
                outcome.findings.push(finding);
            }
            sheets.push(lowered.ops);
            marked.push(lowered.marked);
        }
        // Content is the long part, and no page knows of another.
        contents.par_extend(sheets.into_par_iter().map(content));
    }
    let mut finished = document_of(vec![Vec::new(); contents.len()]);
    let made = finish::finish(&mut finished, contents, &marked, pages, fonts, &used, date);
    match made {
        Ok(bytes) => outcome.value = bytes,
        Err(fault) => {
            let finding = Finding::new(&FONT_NOT_EMBEDDED, Span::default(), fault);
            outcome.findings.push(finding);
        }
    }
    outcome
}

/// Pages that are operators at a time: a page's are many times as long as what is written of them.
const AT_ONCE: usize = 8;

/// A document of pages, as printpdf writes it; their sizes are set when it is finished.
fn document_of(pages: Vec<Vec<Op>>) -> lopdf::Document {
    let mut document = PdfDocument::new("");
    for ops in pages {
        document.pages.push(PdfPage::new(Mm(1.0), Mm(1.0), ops));
    }
    // `secure` would drop the operators of paths, which printpdf has no whole form of.
    let options = PdfSaveOptions {
        secure: false,
        ..PdfSaveOptions::default()
    };
    document.to_lopdf_document(&options, &mut Vec::new())
}

/// The content stream of one page.
fn content(ops: Vec<Op>) -> Vec<u8> {
    let document = document_of(vec![ops]);
    document
        .page_iter()
        .map(|page| document.get_page_content(page))
        .collect::<Vec<_>>()
        .concat()
}
