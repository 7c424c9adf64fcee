//! Reads stretches of text: spaces as in HTML, strong, em, links, styled spans and line ends.

use roxmltree::Node;

use super::markup::{Reader, attribute};
use super::tree::Inline;

/// Elements that stand in a line of text.
const NAMES: [&str; 5] = ["strong", "em", "a", "span", "br"];

/// True for text and for the elements of a line.
pub(super) fn is_inline(node: Node) -> bool {
    node.is_text() || (node.is_element() && NAMES.contains(&node.tag_name().name()))
}

/// Spaces, tabs and line ends between words count as one space; no-break spaces stay.
const fn is_space(c: char) -> bool {
    matches!(c, ' ' | '\t' | '\n' | '\r')
}

/// The text of some neighbours, without spaces at its ends.
pub(super) fn read(reader: &mut Reader, nodes: &[Node], depth: usize) -> Vec<Inline> {
    // At the beginning of a line a space says nothing.
    let mut spaces = Spaces {
        pending: false,
        at_start: true,
    };
    let mut text = Vec::new();
    for node in nodes {
        one(reader, *node, depth, &mut spaces, &mut text);
    }
    text
}

/// What is known of the spaces just before.
struct Spaces {
    /// A space was read and is written once a word follows.
    pending: bool,
    /// Nothing stands on the line yet.
    at_start: bool,
}

fn one(reader: &mut Reader, node: Node, depth: usize, spaces: &mut Spaces, out: &mut Vec<Inline>) {
    if node.is_text() {
        words(node.text().unwrap_or(""), spaces, out);
        return;
    }
    if !node.is_element() {
        return;
    }
    if depth > 60 {
        reader.unknown(node, "tags are nested too deep");
        return;
    }
    let name = node.tag_name().name();
    if name == "br" {
        reader.allow(node, &[]);
        out.push(Inline::Break);
        *spaces = Spaces {
            pending: false,
            at_start: true,
        };
        return;
    }
    // A space before an element belongs before it, not into it.
    if spaces.pending && !spaces.at_start && begins_with_word(node) {
        push_text(" ", out);
        spaces.pending = false;
        spaces.at_start = false;
    }
    let mut inside = Vec::new();
    for child in node.children() {
        one(reader, child, depth + 1, spaces, &mut inside);
    }
    match name {
        "strong" => {
            reader.allow(node, &[]);
            out.push(Inline::Strong(inside));
        }
        "em" => {
            reader.allow(node, &[]);
            out.push(Inline::Emphasis(inside));
        }
        "span" => {
            reader.allow(node, &["class"]);
            out.push(Inline::Styled {
                class: attribute(node, "class", ""),
                text: inside,
            });
        }
        "a" => {
            reader.allow(node, &["href"]);
            link(reader, node, inside, out);
        }
        _ => reader.unknown(node, "a line of text holds strong, em, a, span and br"),
    }
}

/// Leads to a place of the document; a plan on paper leads nowhere else.
fn link(reader: &mut Reader, node: Node, text: Vec<Inline>, out: &mut Vec<Inline>) {
    let href = attribute(node, "href", "");
    match href.strip_prefix('#') {
        Some(target) if !target.is_empty() => {
            reader.places.refer(target, node);
            out.push(Inline::Link {
                target: target.to_owned(),
                text,
            });
        }
        Some(_) | None => {
            reader.unknown(node, "`href` names a place of the plan, `#cut-list`");
            out.extend(text);
        }
    }
}

/// True where the first text inside an element does not begin with a space.
fn begins_with_word(node: Node) -> bool {
    node.descendants()
        .filter(Node::is_text)
        .find_map(|text| text.text().and_then(|text| text.chars().next()))
        .is_some_and(|first| !is_space(first))
}

fn words(text: &str, spaces: &mut Spaces, out: &mut Vec<Inline>) {
    let mut collapsed = String::with_capacity(text.len());
    for c in text.chars() {
        if is_space(c) {
            spaces.pending = true;
            continue;
        }
        if spaces.pending && !spaces.at_start {
            collapsed.push(' ');
        }
        collapsed.push(c);
        spaces.pending = false;
        spaces.at_start = false;
    }
    if !collapsed.is_empty() {
        push_text(&collapsed, out);
    }
}

/// Joins text to text: a reader of the tree meets no needless seams.
fn push_text(text: &str, out: &mut Vec<Inline>) {
    if let Some(Inline::Text(last)) = out.last_mut() {
        last.push_str(text);
    } else {
        out.push(Inline::Text(text.to_owned()));
    }
}
