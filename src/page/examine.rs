//! What is wrong on finished pages: characters no font has, text from the right, dead links,
//! names used twice, missing figures, drawings made too small.

use std::collections::{BTreeMap, BTreeSet};

use crate::display::{GlyphRun, Mark};
use crate::document::tree::{Block, Document, Inline, Row};
use crate::finding::{Finding, Findings};
use crate::source::Span;
use crate::text::Fonts;

use super::findings::{
    DEAD_LINK, DRAWING_TOO_SMALL, MISSING_CHARACTER, MISSING_FIGURE, PLACE_NAMED_TWICE,
    RIGHT_TO_LEFT,
};
use super::{Pages, Placed};

/// Lettering below this cannot be read at arm's length, in points.
const SMALLEST_LETTERING: f64 = 6.0;
/// Longest part of a text that is quoted, in characters.
const LONGEST_QUOTE: usize = 60;

/// Everything that is wrong on the pages.
pub(super) fn examine(document: &Document, fonts: &Fonts, pages: &Pages<'_>) -> Findings {
    let mut findings = Findings::new();
    characters(fonts, pages, &mut findings);
    names(document, pages, &mut findings);
    drawings(document, pages, &mut findings);
    findings
}

/// Where a character was met first: page, from 1, and the text around it.
type Met = BTreeMap<String, (usize, String)>;

fn characters(fonts: &Fonts, pages: &Pages<'_>, findings: &mut Findings) {
    let (mut lacking, mut from_right) = (Met::new(), Met::new());
    for (i, page) in pages.pages.iter().enumerate() {
        for placed in &page.content {
            for mark in placed.marks() {
                if let Mark::Text(run) = mark {
                    examine_run(fonts, run, i + 1, &mut lacking, &mut from_right);
                }
            }
        }
    }
    for (_, (page, text)) in from_right.into_iter().take(1) {
        let message = format!("“{text}” on page {page} runs from right to left");
        findings.push(
            Finding::new(&RIGHT_TO_LEFT, Span::default(), message)
                .remedy("write it in a script that runs from left to right"),
        );
    }
    for (character, (page, text)) in lacking {
        let codes: Vec<String> = character
            .chars()
            .map(|c| format!("U+{:04X}", u32::from(c)))
            .collect();
        let message = format!(
            "no font of the plan has “{}” ({}), which stands in “{text}” on page {page}",
            character.escape_debug(),
            codes.join(" ")
        );
        findings.push(
            Finding::new(&MISSING_CHARACTER, Span::default(), message)
                .remedy("write it in other words, or build with fonts that have it"),
        );
    }
}

fn examine_run(fonts: &Fonts, run: &GlyphRun, page: usize, lacking: &mut Met, right: &mut Met) {
    for glyph in &run.glyphs {
        let met = if glyph.text.chars().any(is_from_right) {
            &mut *right
        } else if fonts.is_replacement(run.face, glyph.id) {
            &mut *lacking
        } else {
            continue;
        };
        met.entry(glyph.text.clone())
            .or_insert_with(|| (page, quote(run)));
    }
}

fn quote(run: &GlyphRun) -> String {
    let text: String = run.glyphs.iter().map(|glyph| glyph.text.as_str()).collect();
    let short: String = text.chars().take(LONGEST_QUOTE).collect();
    let short: String = short.chars().filter(|c| !c.is_control()).collect();
    if short.len() < text.len() {
        format!("{short}…")
    } else {
        short
    }
}

/// Letters of scripts from the right: bidirectional classes R and AL, by block.
fn is_from_right(character: char) -> bool {
    matches!(
        character,
        '\u{590}'..='\u{8ff}'
            | '\u{fb1d}'..='\u{fdff}'
            | '\u{fe70}'..='\u{fefe}'
            | '\u{10800}'..='\u{10fff}'
            | '\u{1e800}'..='\u{1efff}'
    )
}

/// Names of places, and links to them.
#[derive(Default)]
struct Names<'d> {
    places: BTreeSet<&'d str>,
    twice: BTreeSet<&'d str>,
    links: BTreeSet<&'d str>,
    figures: BTreeSet<&'d str>,
}

fn names(document: &Document, pages: &Pages<'_>, findings: &mut Findings) {
    let mut names = Names::default();
    names.blocks(&document.blocks);
    for figure in &names.figures {
        if let Some(figure) = document.figures.get(*figure) {
            names
                .links
                .extend(figure.marks.iter().filter_map(|mark| match mark {
                    Mark::Link { target, .. } => Some(target.as_str()),
                    Mark::Stroke { .. }
                    | Mark::Fill { .. }
                    | Mark::Sealed { .. }
                    | Mark::Text(_) => None,
                }));
        }
    }
    for link in &names.links {
        if !pages.destinations.contains_key(*link) {
            let message = format!("a link leads to “{link}”, and no place has that name");
            findings.push(Finding::new(&DEAD_LINK, Span::default(), message));
        }
    }
    for place in &names.twice {
        let message = format!("two places are named “{place}”");
        findings.push(Finding::new(&PLACE_NAMED_TWICE, Span::default(), message));
    }
    for figure in &names.figures {
        if !document.figures.contains_key(*figure) {
            let message = format!("there is no figure “{figure}”");
            findings.push(Finding::new(&MISSING_FIGURE, Span::default(), message));
        }
    }
}

impl<'d> Names<'d> {
    fn blocks(&mut self, blocks: &'d [Block]) {
        for block in blocks {
            match block {
                Block::Heading { id, text, .. } => {
                    self.place(id);
                    self.inlines(text);
                }
                Block::Paragraph { text, .. } => self.inlines(text),
                Block::List { items, .. } => items.iter().for_each(|item| self.blocks(item)),
                Block::Table(table) => {
                    let rows = table.head.iter().chain(table.groups.iter().flatten());
                    rows.for_each(|row| self.row(row));
                }
                Block::Figure { name, caption, .. } => {
                    self.figures.insert(name);
                    self.inlines(caption);
                }
                Block::Legend { entries } => {
                    for (name, text) in entries {
                        self.figures.insert(name);
                        self.inlines(text);
                    }
                }
                Block::Beside { figures, blocks } => {
                    self.figures.extend(figures.iter().map(String::as_str));
                    self.blocks(blocks);
                }
                Block::Framed { blocks, .. } | Block::Together { blocks } => self.blocks(blocks),
                Block::Marked { block, .. } => self.blocks(std::slice::from_ref(block)),
                Block::Sheet { figure, id, .. } => {
                    self.place(id);
                    self.figures.insert(figure);
                }
                Block::Contents | Block::ScaleCheck | Block::PageBreak => {}
            }
        }
    }

    fn row(&mut self, row: &'d Row) {
        self.place(&row.id);
        row.cells.iter().for_each(|cell| self.inlines(&cell.text));
    }

    fn place(&mut self, name: &'d str) {
        if !name.is_empty() && !self.places.insert(name) {
            self.twice.insert(name);
        }
    }

    fn inlines(&mut self, inlines: &'d [Inline]) {
        for inline in inlines {
            match inline {
                Inline::Link { target, text } => {
                    self.links.insert(target);
                    self.inlines(text);
                }
                Inline::Strong(text) | Inline::Emphasis(text) | Inline::Styled { text, .. } => {
                    self.inlines(text);
                }
                Inline::Text(_) | Inline::Break => {}
            }
        }
    }
}

fn drawings(document: &Document, pages: &Pages<'_>, findings: &mut Findings) {
    for (i, page) in pages.pages.iter().enumerate() {
        for placed in &page.content {
            let Placed::Figure { figure, scale, .. } = placed else {
                continue;
            };
            let sizes = figure.marks.iter().filter_map(|mark| match mark {
                Mark::Text(run) => Some(run.size),
                Mark::Stroke { .. }
                | Mark::Fill { .. }
                | Mark::Sealed { .. }
                | Mark::Link { .. } => None,
            });
            let smallest = sizes.fold(f64::INFINITY, f64::min) * scale;
            if *scale < 1.0 && smallest < SMALLEST_LETTERING {
                let name = document
                    .figures
                    .iter()
                    .find(|(_, known)| std::ptr::eq(*known, *figure))
                    .map_or("", |(name, _)| name.as_str());
                let message = format!(
                    "the figure “{name}” on page {} is printed at {:.0} % to fit, with lettering of {smallest:.1} points",
                    i + 1,
                    scale * 100.0
                );
                findings.push(
                    Finding::new(&DRAWING_TOO_SMALL, Span::default(), message)
                        .remedy("draw it at a smaller scale, or in two parts"),
                );
            }
        }
    }
}
