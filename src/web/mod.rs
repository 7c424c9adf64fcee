//! The web edition: a document as one page for browsers, which needs nothing from anywhere else.
//!
//! In: a [`Document`] and what its issue is known by. Out: the text of a page that is HTML and well-formed
//! XML alike; the same document gives the same bytes. Never: figures of the build, pages of paper, a
//! reference to anything outside the page. Drawings are those of the PDF, as SVG in the page.
//!
//! The road inside: `page.rs` frames what `blocks.rs`, `table.rs`, `figure.rs` and `inline.rs` write with
//! `html.rs`, the only file that knows how a text is escaped; `gather.rs` looks through the document
//! beforehand. `ticks.rs` names what a reader may tick, `tones.rs` sets drawings for a dark page,
//! `policy.rs` says what the page may load. Its looks and its script stand in `templates/web/`.

mod blocks;
mod figure;
mod gather;
mod html;
mod inline;
mod page;
mod policy;
mod table;
mod ticks;
mod tones;

use crate::document::tree::Document;

/// A document as a page.
///
/// `issue` tells its revision from others, as "B 2026-03-01": what a reader ticks is kept by the plan's
/// author, its title and that.
pub fn write(document: &Document, issue: &str) -> String {
    page::write(document, issue)
}
