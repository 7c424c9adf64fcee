//! The words of a document and those of its page, in their order.

use leafwright::document::outline::{headings, plain};
use leafwright::document::tree::{Block, Document, Inline, Table};
use leafwright::page;
use roxmltree::Node;

/// The words of a document as a page has to say them, without white space.
pub(super) fn of_document(document: &Document) -> String {
    let mut words = String::new();
    blocks(document, &document.blocks, &mut words);
    without_spaces(&words)
}

fn blocks(document: &Document, of: &[Block], words: &mut String) {
    for block in of {
        match block {
            Block::Heading { text, .. } | Block::Paragraph { text, .. } => inline(text, words),
            Block::List { items, .. } => {
                items.iter().for_each(|item| blocks(document, item, words))
            }
            Block::Table(of) => table(of, words),
            Block::Figure { caption, .. } => inline(caption, words),
            Block::Legend { entries } => entries.iter().for_each(|(_, text)| inline(text, words)),
            Block::Beside { blocks: inner, .. } | Block::Together { blocks: inner } => {
                blocks(document, inner, words);
            }
            Block::Framed {
                class,
                blocks: inner,
            } => {
                let own = match inner.first() {
                    Some(Block::Paragraph { class, text, .. }) if class == "signal" => {
                        Some(plain(text))
                    }
                    Some(_) | None => None,
                };
                let rest = if own.is_some() { &inner[1..] } else { inner };
                let word = own.or_else(|| page::signal_word(&document.words, class));
                words.push_str(&word.unwrap_or_default().to_uppercase());
                blocks(document, rest, words);
            }
            Block::Contents => {
                for heading in headings(&document.blocks) {
                    if heading.level <= 2 {
                        inline(heading.text, words);
                    }
                }
            }
            Block::ScaleCheck => {
                for message in [
                    "page-metric-square",
                    "page-inch-square",
                    "page-scale-advice",
                ] {
                    words.push_str(&document.words.word(message, &[]));
                }
            }
            Block::Sheet { title, .. } => inline(title, words),
            Block::PageBreak => {}
            Block::Marked { block, .. } => blocks(document, std::slice::from_ref(block), words),
        }
    }
}

fn table(of: &Table, words: &mut String) {
    let rows = of.head.iter().chain(of.groups.iter().flatten());
    rows.flat_map(|row| &row.cells)
        .for_each(|cell| inline(&cell.text, words));
}

fn inline(text: &[Inline], words: &mut String) {
    words.push_str(&plain(text));
}

/// The words of a page's plan, without white space, what is of the page alone, and the lettering of drawings.
pub(super) fn of_page(page: &roxmltree::Document) -> String {
    let mut words = String::new();
    let main = page
        .descendants()
        .find(|node| node.has_tag_name(("http://www.w3.org/1999/xhtml", "main")));
    nodes(main.unwrap(), &mut words);
    without_spaces(&words)
}

fn nodes(of: Node, words: &mut String) {
    for node in of.children() {
        if let Some(text) = node.text().filter(|_| node.is_text()) {
            words.push_str(text);
        }
        let class = node.attribute("class").unwrap_or_default();
        let of_page = ["unseen", "tick"].contains(&class) && node.tag_name().name() != "td";
        if !of_page && !["svg", "button"].contains(&node.tag_name().name()) {
            nodes(node, words);
        }
    }
}

fn without_spaces(text: &str) -> String {
    text.chars().filter(|c| !c.is_whitespace()).collect()
}
