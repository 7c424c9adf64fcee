//! Reads what the templates wrote: a small, strict subset of HTML, into blocks.

use std::collections::BTreeMap;

use roxmltree::{Document as Xml, Node};

use super::findings::{self, Fault};
use super::inline;
use super::references::{self, Places};
use super::tree::{Align, Block, Cell, Change, Column, Inline, ListMarker, Row, Table};
use crate::display::Figure;

/// Tags nested deeper than that are not read.
const DEEPEST: usize = 40;

/// What was read.
#[derive(Debug, Default)]
pub(super) struct Markup {
    /// Language of the words.
    pub(super) language: String,
    /// Left in the running head.
    pub(super) running: String,
    /// The blocks.
    pub(super) blocks: Vec<Block>,
    /// What figures show, in words, by their names.
    pub(super) alternatives: BTreeMap<String, String>,
    /// What could not be read, or refers to nothing.
    pub(super) faults: Vec<Fault>,
}

/// Reads a text; an error where it is no XML at all.
pub(super) fn read(text: &str, figures: &BTreeMap<String, Figure>) -> Result<Markup, Fault> {
    let xml = Xml::parse(text).map_err(|error| {
        let at = byte_at(text, error.pos());
        Fault::new(&findings::NOT_WELL_FORMED, Some(at), error.to_string())
    })?;
    let root = xml.root_element();
    let mut reader = Reader::default();
    if root.tag_name().name() != "plan" {
        reader.unknown(root, "the whole text stands in <plan>");
    }
    reader.allow(root, &["lang", "running"]);
    let mut markup = Markup {
        language: attribute(root, "lang", "en"),
        running: attribute(root, "running", ""),
        blocks: reader.blocks(root, 0),
        alternatives: BTreeMap::new(),
        faults: Vec::new(),
    };
    markup.alternatives = reader.alternatives;
    let missing = references::check(&mut markup.blocks, &reader.places, figures);
    markup.faults = reader.faults;
    markup.faults.extend(missing);
    Ok(markup)
}

fn byte_at(text: &str, position: roxmltree::TextPos) -> usize {
    let line = position.row.saturating_sub(1) as usize;
    let before: usize = text.split_inclusive('\n').take(line).map(str::len).sum();
    before + position.col as usize
}

/// Whether a word stands in its class.
fn has_class(node: Node, word: &str) -> bool {
    let classes = node.attribute("class").unwrap_or_default();
    classes.split_whitespace().any(|class| class == word)
}

pub(super) fn attribute(node: Node, name: &str, default: &str) -> String {
    node.attribute(name).unwrap_or(default).to_owned()
}

/// Reads blocks and collects what is wrong with them.
#[derive(Default)]
pub(super) struct Reader {
    pub(super) faults: Vec<Fault>,
    pub(super) places: Places,
    /// What figures show, in words, by their names.
    alternatives: BTreeMap<String, String>,
}

impl Reader {
    /// Something that is not of the subset.
    pub(super) fn unknown(&mut self, node: Node, advice: &str) {
        let name = node.tag_name().name();
        let fault = Fault::new(
            &findings::UNKNOWN_MARKUP,
            Some(node.range().start + 1),
            format!("<{name}> is not read here: {advice}"),
        );
        self.faults.push(fault);
    }

    /// Attributes other than these are not of the subset.
    pub(super) fn allow(&mut self, node: Node, names: &[&str]) {
        for attribute in node.attributes() {
            if !names.contains(&attribute.name()) {
                let advice = if names.is_empty() {
                    "it takes no attributes".to_owned()
                } else {
                    format!("it takes {}", names.join(", "))
                };
                self.unknown(node, &format!("`{}`; {advice}", attribute.name()));
            }
        }
    }

    /// The blocks inside an element; text between them becomes paragraphs of its own.
    pub(super) fn blocks(&mut self, parent: Node, depth: usize) -> Vec<Block> {
        let mut blocks = Vec::new();
        if depth > DEEPEST {
            self.unknown(parent, "tags are nested too deep");
            return blocks;
        }
        let mut run: Vec<Node> = Vec::new();
        for node in parent.children() {
            if inline::is_inline(node) {
                run.push(node);
                continue;
            }
            self.loose(&mut run, depth, &mut blocks);
            if node.is_element() {
                blocks.extend(self.block(node, depth + 1));
            }
        }
        self.loose(&mut run, depth, &mut blocks);
        blocks
    }

    /// Text that stands between blocks.
    fn loose(&mut self, run: &mut Vec<Node>, depth: usize, blocks: &mut Vec<Block>) {
        let text = inline::read(self, run, depth);
        run.clear();
        if !text.is_empty() {
            blocks.push(Block::Paragraph {
                class: String::new(),
                id: String::new(),
                text,
            });
        }
    }

    fn block(&mut self, node: Node, depth: usize) -> Option<Block> {
        let block = match node.tag_name().name() {
            "h1" => self.heading(node, 1, depth),
            "h2" => self.heading(node, 2, depth),
            "h3" => self.heading(node, 3, depth),
            "p" => {
                self.allow(node, &["class", "id"]);
                let id = attribute(node, "id", "");
                self.places.define(&id, node);
                Block::Paragraph {
                    class: attribute(node, "class", ""),
                    id,
                    text: self.text(node, depth),
                }
            }
            "ol" => self.list(node, ListMarker::Number, depth),
            "ul" if has_class(node, "tick") => self.list(node, ListMarker::Tick, depth),
            "ul" => self.list(node, ListMarker::Bullet, depth),
            "table" => Block::Table(self.table(node, depth)),
            "figure" => return self.figure(node, depth),
            "legend" => self.legend(node, depth),
            "beside" => self.beside(node, depth),
            "aside" => {
                self.allow(node, &["class"]);
                Block::Framed {
                    class: attribute(node, "class", "info"),
                    blocks: self.blocks(node, depth),
                }
            }
            "section" => {
                self.allow(node, &["class"]);
                Block::Together {
                    blocks: self.blocks(node, depth),
                }
            }
            "nav" => Block::Contents,
            "scale-check" => Block::ScaleCheck,
            "sheet" => return self.sheet(node),
            "page-break" => Block::PageBreak,
            _ => {
                self.unknown(node, "templates/README.md lists the tags there are");
                return None;
            }
        };
        Some(block)
    }

    /// The text of an element.
    fn text(&mut self, node: Node, depth: usize) -> Vec<Inline> {
        let children: Vec<Node> = node.children().collect();
        inline::read(self, &children, depth)
    }

    fn heading(&mut self, node: Node, level: u8, depth: usize) -> Block {
        self.allow(node, &["id", "class"]);
        let id = attribute(node, "id", "");
        if id.is_empty() {
            self.unknown(node, "a heading has an `id`");
        }
        self.places.define(&id, node);
        Block::Heading {
            level,
            id,
            text: self.text(node, depth),
            breaks_page: node.attribute("class") == Some("new-page"),
        }
    }

    fn list(&mut self, node: Node, marker: ListMarker, depth: usize) -> Block {
        self.allow(node, &["class"]);
        let mut items = Vec::new();
        for child in node.children().filter(Node::is_element) {
            if child.tag_name().name() == "li" {
                self.allow(child, &[]);
                items.push(self.blocks(child, depth + 1));
            } else {
                self.unknown(child, "a list holds <li>");
            }
        }
        Block::List {
            marker,
            in_columns: has_class(node, "columns"),
            items,
        }
    }

    /// Small figures with their words.
    fn legend(&mut self, node: Node, depth: usize) -> Block {
        self.allow(node, &[]);
        let mut entries = Vec::new();
        for child in node.children().filter(Node::is_element) {
            if child.tag_name().name() != "figure" {
                self.unknown(child, "a legend holds <figure>");
            } else if let Some(Block::Figure { name, caption, .. }) = self.figure(child, depth + 1)
            {
                entries.push((name, caption));
            }
        }
        Block::Legend { entries }
    }

    /// Blocks with small figures beside them.
    fn beside(&mut self, node: Node, depth: usize) -> Block {
        self.allow(node, &["figures"]);
        let mut figures: Vec<String> = Vec::new();
        for name in node.attribute("figures").unwrap_or("").split_whitespace() {
            if !figures.iter().any(|known| known == name) {
                self.places.show(name, node);
                figures.push(name.to_owned());
            }
        }
        Block::Beside {
            figures,
            blocks: self.blocks(node, depth),
        }
    }

    fn figure(&mut self, node: Node, depth: usize) -> Option<Block> {
        self.allow(node, &["name", "class", "alt"]);
        let name = attribute(node, "name", "");
        if name.is_empty() {
            self.unknown(node, "a figure has a `name`");
            return None;
        }
        self.places.show(&name, node);
        self.alternative(&name, node);
        let mut caption = Vec::new();
        for child in node.children().filter(Node::is_element) {
            if child.tag_name().name() == "figcaption" {
                self.allow(child, &[]);
                caption = self.text(child, depth);
            } else {
                self.unknown(child, "a figure holds <figcaption>");
            }
        }
        Some(Block::Figure {
            name,
            class: attribute(node, "class", ""),
            caption,
        })
    }

    /// A page that a figure fills.
    fn sheet(&mut self, node: Node) -> Option<Block> {
        self.allow(node, &["figure", "id", "title", "alt"]);
        let figure = attribute(node, "figure", "");
        if figure.is_empty() {
            self.unknown(node, "a sheet has a `figure`");
            return None;
        }
        self.places.show(&figure, node);
        self.alternative(&figure, node);
        let id = attribute(node, "id", "");
        self.places.define(&id, node);
        Some(Block::Sheet {
            figure,
            id,
            title: match attribute(node, "title", "") {
                title if title.is_empty() => Vec::new(),
                title => vec![Inline::Text(title)],
            },
        })
    }

    /// What a figure shows, in words, where a tag says it.
    fn alternative(&mut self, figure: &str, node: Node) {
        if let Some(alternative) = node.attribute("alt") {
            let words = alternative.split_whitespace().collect::<Vec<_>>().join(" ");
            self.alternatives.entry(figure.to_owned()).or_insert(words);
        }
    }

    fn table(&mut self, node: Node, depth: usize) -> Table {
        self.allow(node, &["class"]);
        let mut table = Table {
            class: attribute(node, "class", ""),
            columns: Vec::new(),
            head: Vec::new(),
            groups: Vec::new(),
        };
        for child in node.children().filter(Node::is_element) {
            match child.tag_name().name() {
                "col" => {
                    let column = self.column(child);
                    table.columns.push(column);
                }
                "thead" => table.head = self.rows(child, depth),
                "tbody" => {
                    let rows = self.rows(child, depth);
                    table.groups.push(rows);
                }
                _ => self.unknown(child, "a table holds <col>, <thead> and <tbody>"),
            }
        }
        self.check_width(&table, node);
        table
    }

    fn column(&mut self, node: Node) -> Column {
        self.allow(node, &["share", "align"]);
        let share = match node.attribute("share").map_or(Ok(0.0), str::parse::<f64>) {
            Ok(share) if share.is_finite() && share >= 0.0 => share,
            Ok(_) | Err(_) => {
                self.unknown(node, "`share` is a number, 0 or more");
                0.0
            }
        };
        let align = match node.attribute("align") {
            None | Some("left") => Align::Left,
            Some("right") => Align::Right,
            Some("centre") => Align::Centre,
            Some(_) => {
                self.unknown(node, "`align` is left, right or centre");
                Align::Left
            }
        };
        Column { share, align }
    }

    fn rows(&mut self, node: Node, depth: usize) -> Vec<Row> {
        self.allow(node, &[]);
        let mut rows = Vec::new();
        for child in node.children().filter(Node::is_element) {
            if child.tag_name().name() != "tr" {
                self.unknown(child, "rows are <tr>");
                continue;
            }
            self.allow(child, &["id"]);
            let id = attribute(child, "id", "");
            self.places.define(&id, child);
            let cells = child.children().filter(Node::is_element);
            let cells = cells
                .filter_map(|cell| self.cell(cell, depth + 1))
                .collect();
            rows.push(Row {
                id,
                cells,
                change: Change::None,
            });
        }
        rows
    }

    fn cell(&mut self, node: Node, depth: usize) -> Option<Cell> {
        let name = node.tag_name().name();
        if !matches!(name, "td" | "th") {
            self.unknown(node, "cells are <td> or <th>");
            return None;
        }
        self.allow(node, &["colspan"]);
        let span = match node.attribute("colspan").map_or(Ok(1), str::parse::<usize>) {
            Ok(span) if (1..=50).contains(&span) => span,
            Ok(_) | Err(_) => {
                self.unknown(node, "`colspan` is a whole number from 1 to 50");
                1
            }
        };
        let text = self.text(node, depth);
        let in_head = node
            .ancestors()
            .any(|above| above.tag_name().name() == "thead");
        // The page sets the head of a table in its own way; a head of a row is strong.
        let text = if name == "th" && !in_head && !text.is_empty() {
            vec![Inline::Strong(text)]
        } else {
            text
        };
        Some(Cell { span, text })
    }

    /// Every row is as wide as the table.
    fn check_width(&mut self, table: &Table, node: Node) {
        let columns = table.columns.len();
        let rows = table.head.iter().chain(table.groups.iter().flatten());
        let width = |row: &Row| -> usize { row.cells.iter().map(|cell| cell.span.max(1)).sum() };
        let odd = rows.map(width).find(|width| *width != columns);
        if let Some(odd) = odd {
            let advice = format!("a row covers {odd} columns where <col> declares {columns}");
            self.unknown(node, &advice);
        }
    }
}
