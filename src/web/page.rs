//! The frame of a page: what stands before the document and after it, and its chapters.

use std::collections::{BTreeMap, BTreeSet};

use rayon::iter::{IntoParallelRefIterator, ParallelIterator};

use crate::document::outline::unmarked;
use crate::document::tree::{Block, Document};
use crate::drawing::{SvgInPage, ToneOf, Toned, svg_in_page};
use crate::words::Words;

use super::gather::Gathered;
use super::html::Html;
use super::{policy, ticks, tones};

const STYLE: &str = include_str!("../../templates/web/plan.css");
const SCRIPT: &str = include_str!("../../templates/web/plan.js");

/// The scale-check is drawn in black lines alone, and is in no list of figures.
const SCALE_CHECK: ToneOf = ToneOf {
    thing: Toned::Line,
    level: 0,
};

/// Writes the page from top to bottom.
pub(super) struct Writer<'d> {
    pub(super) document: &'d Document,
    pub(super) words: &'d Words,
    pub(super) html: Html,
    pub(super) gathered: Gathered<'d>,
    /// What is inside figures, by their names.
    pub(super) drawn: BTreeMap<&'d str, SvgInPage>,
    /// The ids of figures that are kept once, by their names.
    pub(super) kept: BTreeMap<&'d str, String>,
    /// The level of the heading above.
    pub(super) level: u8,
    /// The name of the heading above.
    pub(super) under: String,
    /// The plan's title was written.
    pub(super) titled: bool,
    /// How many ids of its own it has.
    own_ids: usize,
}

/// The document as a page.
pub(super) fn write(document: &Document, issue: &str) -> String {
    let gathered = Gathered::of(document);
    let shown: Vec<&str> = gathered.shown.keys().copied().collect();
    let drawn = shown.par_iter().filter_map(|name| {
        let figure = document.figures.get(*name)?;
        Some((*name, svg_in_page(figure)))
    });
    let mut writer = Writer {
        document,
        words: &document.words,
        html: Html::default(),
        drawn: drawn.collect(),
        gathered,
        kept: BTreeMap::new(),
        level: 1,
        under: String::new(),
        titled: false,
        own_ids: 0,
    };
    writer.page(issue);
    writer.html.into_text()
}

impl<'d> Writer<'d> {
    /// An id that no place of the document has.
    pub(super) fn fresh_id(&mut self) -> String {
        loop {
            self.own_ids += 1;
            let id = format!("web-{}", self.own_ids);
            if !self.gathered.places.contains(id.as_str()) {
                return id;
            }
        }
    }

    fn page(&mut self, issue: &str) {
        let main = self.fresh_id();
        let language = self.document.language.as_str();
        self.html.markup("<!DOCTYPE html>\n");
        let key = ticks::key(self.document, issue);
        let attributes = [
            ("xmlns", "http://www.w3.org/1999/xhtml"),
            ("lang", language),
            ("data-ticks", key.as_str()),
        ];
        self.html.open("html", &attributes);
        self.html.line();
        self.head();
        let chapters = chapters(&self.document.blocks);
        let contents = chapters.iter().find(|chapter| has_contents(chapter));
        let contents = contents.and_then(|chapter| chapter_id(chapter));
        let class = if contents.is_some() {
            "with-contents"
        } else {
            ""
        };
        self.html.open("body", &[("class", class)]);
        self.html.line();
        let skip = self.words.word("web-skip", &[]);
        let target = format!("#{main}");
        self.html
            .element("a", &[("class", "skip"), ("href", &target)], &skip);
        self.html.line();
        self.kept_figures();
        self.banner(contents);
        self.html.open("main", &[("id", &main), ("tabindex", "-1")]);
        self.html.line();
        for chapter in chapters {
            self.chapter(chapter);
        }
        self.html.close("main");
        self.html.line();
        self.foot();
        self.html.open("script", &[]);
        self.html.markup(SCRIPT);
        self.html.close("script");
        self.html.line();
        self.html.close("body");
        self.html.line();
        self.html.close("html");
        self.html.line();
    }

    fn head(&mut self) {
        let document = self.document;
        let title = match document.running.as_str() {
            "" => document.title.clone(),
            running => format!("{} – {running}", document.title),
        };
        let tones = self.drawn.values().flat_map(|drawn| &drawn.tones).copied();
        let tones: BTreeSet<ToneOf> = tones.chain([SCALE_CHECK]).collect();
        let accent = tones::accent(self.document.colours);
        let style = format!("{STYLE}{accent}{}", tones::dark(&tones));
        let policy = policy::policy(&style, SCRIPT);
        let metas: [&[(&str, &str)]; 6] = [
            &[("charset", "utf-8")],
            &[
                ("http-equiv", "Content-Security-Policy"),
                ("content", &policy),
            ],
            &[
                ("name", "viewport"),
                ("content", "width=device-width, initial-scale=1"),
            ],
            &[("name", "color-scheme"), ("content", "light dark")],
            &[("name", "generator"), ("content", "Leafwright")],
            &[("name", "author"), ("content", &document.author)],
        ];
        self.html.open("head", &[]);
        self.html.line();
        for meta in metas {
            // A name without a content says nothing.
            if meta.iter().all(|(_, value)| !value.is_empty()) {
                self.html.empty("meta", meta);
                self.html.line();
            }
        }
        self.html.element("title", &[], &title);
        self.html.line();
        self.html.open("style", &[]);
        self.html.markup(&style);
        self.html.close("style");
        self.html.line();
        self.html.close("head");
        self.html.line();
    }

    /// The plan's name, its revision and the way to its contents; `contents` is their place.
    fn banner(&mut self, contents: Option<&str>) {
        let document = self.document;
        let has_title = document.blocks.iter().any(is_title);
        // Every page has one heading of the first level.
        let name = if has_title { "p" } else { "h1" };
        self.titled = !has_title;
        self.html.open("header", &[]);
        self.html
            .element(name, &[("class", "name")], &document.title);
        if !document.running.is_empty() {
            self.html
                .element("p", &[("class", "running")], &document.running);
        }
        if let Some(id) = contents {
            let words = self.words.word("contents", &[]);
            let target = format!("#{id}");
            let attributes = [("class", "to-contents"), ("href", target.as_str())];
            self.html.element("a", &attributes, &words);
        }
        self.html.close("header");
        self.html.line();
    }

    /// What is told of ticks, where a script keeps them.
    fn foot(&mut self) {
        let kept = self.words.word("web-ticks-kept", &[]);
        let clear = self.words.word("web-clear", &[]);
        let ask = self.words.word("web-clear-ask", &[]);
        self.html.open("footer", &[("hidden", "hidden")]);
        self.html.element("p", &[], &kept);
        let attributes = [("type", "button"), ("data-ask", ask.as_str())];
        self.html.element("button", &attributes, &clear);
        self.html.close("footer");
        self.html.line();
    }

    fn chapter(&mut self, chapter: &'d [Block]) {
        let label = chapter_id(chapter).unwrap_or_default();
        let mut classes = vec!["chapter"];
        if label.is_empty() {
            classes.push("cover");
        }
        if has_contents(chapter) {
            classes.push("contents");
        }
        if begins_page(chapter) {
            classes.push("new-page");
        }
        let attributes = [("class", &*classes.join(" ")), ("aria-labelledby", label)];
        self.html.open("section", &attributes);
        self.html.line();
        self.blocks(chapter);
        self.html.close("section");
        self.html.line();
    }
}

/// The title of the plan, marked or not.
fn is_title(block: &Block) -> bool {
    matches!(unmarked(block), Block::Paragraph { class, .. } if class == "title")
}

/// The document by its chapters; what stands before the first is one of its own.
fn chapters(blocks: &[Block]) -> Vec<&[Block]> {
    let opens = |block: &Block| matches!(unmarked(block), Block::Heading { level: 0 | 1, .. });
    let mut chapters = Vec::new();
    let mut rest = blocks;
    while !rest.is_empty() {
        let next = rest.iter().skip(1).position(opens);
        let (chapter, later) = rest.split_at(next.map_or(rest.len(), |before| before + 1));
        chapters.push(chapter);
        rest = later;
    }
    chapters
}

/// The name of a chapter's place.
fn chapter_id(chapter: &[Block]) -> Option<&str> {
    let Block::Heading {
        level: 0 | 1, id, ..
    } = unmarked(chapter.first()?)
    else {
        return None;
    };
    (!id.is_empty()).then_some(id)
}

fn has_contents(chapter: &[Block]) -> bool {
    let blocks = chapter.iter().map(unmarked);
    blocks.into_iter().any(|block| *block == Block::Contents)
}

fn begins_page(chapter: &[Block]) -> bool {
    let first = chapter.first().map(unmarked);
    matches!(
        first,
        Some(Block::Heading {
            breaks_page: true,
            ..
        })
    )
}
