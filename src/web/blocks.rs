//! Blocks: headings, paragraphs, lists, boxes and groups, in the order of the document.

use crate::document::outline::{headings, plain};
use crate::document::tree::{Block, Change, Inline, ListMarker};
use crate::drawing::svg_in_page;
use crate::page;

use super::page::Writer;
use super::ticks;

impl<'d> Writer<'d> {
    pub(super) fn blocks(&mut self, blocks: &'d [Block]) {
        for block in blocks {
            self.block(block);
        }
    }

    fn block(&mut self, block: &'d Block) {
        match block {
            Block::Heading {
                level, id, text, ..
            } => self.heading(*level, id, text),
            Block::Paragraph { class, id, text } => self.paragraph(class, id, text),
            Block::List {
                marker,
                in_columns,
                items,
            } => {
                let columns = if *in_columns { "columns" } else { "" };
                match marker {
                    ListMarker::Number => self.list("ol", columns, items),
                    ListMarker::Bullet => self.list("ul", columns, items),
                    ListMarker::Tick => self.checks(items),
                }
            }
            Block::Table(table) => self.table(table),
            Block::Figure {
                name,
                class,
                caption,
            } => self.figure(name, class, caption),
            Block::Legend { entries } => self.legend(entries),
            Block::Beside { figures, blocks } => {
                self.html.open("div", &[("class", "beside")]);
                self.html.open("div", &[]);
                self.blocks(blocks);
                self.html.close("div");
                self.html.open("div", &[("class", "signs")]);
                figures.iter().for_each(|name| self.sign(name));
                self.html.close("div");
                self.html.close("div");
            }
            Block::Framed { class, blocks } => self.framed(class, blocks),
            Block::Together { blocks } => {
                self.html.open("div", &[("class", "together")]);
                self.blocks(blocks);
                self.html.close("div");
            }
            Block::Contents => self.contents(),
            Block::ScaleCheck => self.scale_check(),
            Block::Sheet { figure, id, title } => {
                if !title.is_empty() {
                    self.heading(2, id, title);
                }
                self.figure(figure, "", &[]);
            }
            Block::PageBreak => self.html.element("div", &[("class", "page-break")], ""),
            Block::Marked { change, block } => {
                let class = match change {
                    Change::None => "",
                    Change::Other => "marked changed",
                    Change::GoneAbove => "marked gone-above",
                    Change::GoneBelow => "marked gone-below",
                };
                self.html.open("div", &[("class", class)]);
                self.changed(*change);
                self.block(block);
                self.html.close("div");
            }
        }
    }

    /// Tells those who do not see the margin what stands in it.
    pub(super) fn changed(&mut self, change: Change) {
        match change {
            Change::None => {}
            Change::Other => self.unseen(&self.words.word("web-changed", &[])),
            Change::GoneAbove | Change::GoneBelow => {
                self.unseen(&self.words.word("web-left-out", &[]))
            }
        }
    }

    fn heading(&mut self, level: u8, id: &'d str, text: &[Inline]) {
        // The title of the plan is the first level; no level is left out.
        let shown = (level.clamp(1, 3) + 1).min(self.level + 1);
        self.level = shown;
        id.clone_into(&mut self.under);
        let tag = format!("h{shown}");
        let is_step = ticks::is_step(id);
        if is_step {
            self.html.open("div", &[("class", "step-head")]);
        }
        self.html.open(&tag, &[("id", id)]);
        self.inline(text);
        self.html.close(&tag);
        if is_step {
            self.step_tick(id, &plain(text));
            self.html.close("div");
        }
        self.html.line();
    }

    fn step_tick(&mut self, id: &str, title: &str) {
        let name = ticks::name(id, title);
        let label = self.words.word("web-done-step", &[("what", title.into())]);
        self.html.open("label", &[("class", "tick")]);
        let attributes = [
            ("type", "checkbox"),
            ("data-tick", name.as_str()),
            ("data-place", id),
            ("aria-label", label.as_str()),
        ];
        self.html.empty("input", &attributes);
        let words = self.words.word("web-done", &[]);
        self.html.element("span", &[], &words);
        self.html.close("label");
    }

    fn paragraph(&mut self, class: &str, id: &str, text: &[Inline]) {
        let is_title = class == "title" && !self.titled;
        let tag = if is_title { "h1" } else { "p" };
        self.titled |= is_title;
        self.html.open(tag, &[("class", class), ("id", id)]);
        self.inline(text);
        self.html.close(tag);
        self.html.line();
    }

    fn list(&mut self, tag: &str, class: &str, items: &'d [Vec<Block>]) {
        self.html.open(tag, &[("class", class)]);
        for item in items {
            self.html.open("li", &[]);
            self.blocks(item);
            self.html.close("li");
        }
        self.html.close(tag);
        self.html.line();
    }

    /// What is checked one after the other.
    fn checks(&mut self, items: &'d [Vec<Block>]) {
        self.html.open("ul", &[("class", "checks")]);
        for (number, item) in items.iter().enumerate() {
            let id = self.fresh_id();
            let place = format!("{}-check-{}", self.under, number + 1);
            let name = ticks::name(&place, &words_of(item));
            self.html.open("li", &[]);
            let attributes = [
                ("type", "checkbox"),
                ("data-tick", name.as_str()),
                ("aria-labelledby", id.as_str()),
            ];
            self.html.empty("input", &attributes);
            self.html.open("div", &[("id", &id)]);
            self.blocks(item);
            self.html.close("div");
            self.html.close("li");
        }
        self.html.close("ul");
        self.html.line();
    }

    fn legend(&mut self, entries: &'d [(String, Vec<Inline>)]) {
        self.html.open("ul", &[("class", "legend")]);
        for (name, text) in entries {
            self.html.open("li", &[]);
            self.sign(name);
            self.html.open("span", &[]);
            self.inline(text);
            self.html.close("span");
            self.html.close("li");
        }
        self.html.close("ul");
        self.html.line();
    }

    fn framed(&mut self, class: &str, blocks: &'d [Block]) {
        let (own, inside) = match blocks.split_first() {
            Some((Block::Paragraph { class, text, .. }, rest)) if class == "signal" => {
                (Some(plain(text).to_uppercase()), rest)
            }
            _ => (None, blocks),
        };
        let word = own.or_else(|| page::signal_word(self.words, class));
        let id = self.fresh_id();
        let known = match class {
            "danger" | "warning" | "caution" | "notice" | "again" => class,
            _ => "info",
        };
        let labelled = if word.is_some() { id.as_str() } else { "" };
        let attributes = [
            ("class", &*format!("box {known}")),
            ("role", "note"),
            ("aria-labelledby", labelled),
        ];
        self.html.open("section", &attributes);
        if let Some(word) = &word {
            let attributes = [("class", "signal"), ("id", id.as_str())];
            self.html.element("p", &attributes, word);
        }
        self.html.open("div", &[("class", "inside")]);
        self.blocks(inside);
        self.html.close("div");
        self.html.close("section");
        self.html.line();
    }

    /// The table of contents: chapters with their sections.
    fn contents(&mut self) {
        let listed = headings(&self.document.blocks).into_iter();
        let listed = listed.filter(|heading| heading.level <= 2 && !plain(heading.text).is_empty());
        let under = self.under.clone();
        let label = match under.as_str() {
            "" => self.words.word("contents", &[]),
            _ => String::new(),
        };
        let attributes = [
            ("aria-labelledby", under.as_str()),
            ("aria-label", label.as_str()),
        ];
        self.html.open("nav", &attributes);
        self.html.open("ul", &[]);
        // An item that is still open, and whether it holds a list of its own.
        let mut open = None;
        for heading in listed {
            let is_section = heading.level == 2 && open.is_some();
            match (is_section, open) {
                (true, Some(false)) => {
                    self.html.open("ul", &[]);
                    open = Some(true);
                }
                (true, _) => {}
                (false, Some(has_list)) => self.close_chapter(has_list),
                (false, None) => {}
            }
            self.html.open("li", &[]);
            let target = format!("#{}", heading.id);
            self.html.open("a", &[("href", &target)]);
            self.html.words(&plain(heading.text));
            self.html.close("a");
            if is_section {
                self.html.close("li");
            } else {
                open = Some(false);
            }
        }
        if let Some(has_list) = open {
            self.close_chapter(has_list);
        }
        self.html.close("ul");
        self.html.close("nav");
        self.html.line();
    }

    fn close_chapter(&mut self, has_list: bool) {
        if has_list {
            self.html.close("ul");
        }
        self.html.close("li");
    }

    /// The squares that prove a print, with what is written in them.
    fn scale_check(&mut self) {
        let words = |message: &str| self.words.word(message, &[]);
        let [metric, inch, advice] = [
            "page-metric-square",
            "page-inch-square",
            "page-scale-advice",
        ]
        .map(words);
        let figure = page::scale_squares(format!("{metric}. {inch}."));
        let inner = svg_in_page(&figure);
        self.html.open("div", &[("class", "scale-check")]);
        self.own_figure(&figure, &inner);
        self.html.open("div", &[("class", "says")]);
        for square in [metric, inch] {
            self.html.open("p", &[]);
            self.html.open("strong", &[]);
            self.html.words(&square);
            self.html.close("strong");
            self.html.close("p");
        }
        self.html.open("p", &[("class", "small")]);
        self.html.words(&advice);
        self.html.close("p");
        self.html.close("div");
        self.html.close("div");
        self.html.line();
    }
}

/// The words of blocks without tables and figures, to tell them from others.
fn words_of(blocks: &[Block]) -> String {
    let mut words = String::new();
    for block in blocks {
        match block {
            Block::Heading { text, .. } | Block::Paragraph { text, .. } => {
                words.push_str(&plain(text));
            }
            Block::List { items, .. } => {
                items
                    .iter()
                    .for_each(|item| words.push_str(&words_of(item)));
            }
            Block::Beside { blocks, .. }
            | Block::Framed { blocks, .. }
            | Block::Together { blocks } => words.push_str(&words_of(blocks)),
            Block::Marked { block, .. } => {
                words.push_str(&words_of(std::slice::from_ref(block)));
            }
            Block::Table(_)
            | Block::Figure { .. }
            | Block::Legend { .. }
            | Block::Contents
            | Block::ScaleCheck
            | Block::Sheet { .. }
            | Block::PageBreak => {}
        }
    }
    words
}
