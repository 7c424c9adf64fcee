//! Slabs on their pages: frames, repeated heads, running heads, page numbers, places, outline.

use std::collections::BTreeMap;

use crate::build::Paper;
use crate::display::{Area, Ends, Face, Mark, Path, Pen, Spot};
use crate::document::tree::{Change, Document};
use crate::text::{Anchor, Fonts, text_mark};
use crate::words::{Filling, Words};

use super::breaks::{Sheet, break_pages};
use super::flow::{BOX_PAD, Entry, Flow, PageNumber, Slab, moved};
use super::inline::plain_line;
use super::margin;
use super::style::{self, RULE, RUNNING, RUNNING_BASELINE};
use super::{OutlineEntry, PageList, Pages, Placed};

/// Breaks the flow into pages and finishes each of them.
pub(super) fn compose<'d>(
    document: &'d Document,
    fonts: &Fonts,
    paper: Paper,
    mut flow: Flow<'d>,
) -> Pages<'d> {
    let area = style::text_area(paper);
    let (width, height) = style::paper_size(paper);
    let sheets = break_pages(&flow, area.height);
    let mut slabs = std::mem::take(&mut flow.slabs).into_iter();
    let mut pages = Vec::with_capacity(sheets.len().max(1));
    let mut destinations = BTreeMap::new();
    let mut numbers = Vec::new();
    for (number, sheet) in sheets.iter().enumerate() {
        let mut page = Composer {
            flow: &flow,
            fonts,
            mark: &document.change_mark,
            area,
            changes: Vec::new(),
            number,
            content: Vec::new(),
            destinations: &mut destinations,
            numbers: &mut numbers,
        };
        let taken: Vec<Slab<'d>> = slabs.by_ref().take(sheet.tops.len()).collect();
        page.take(taken, sheet, slabs.as_slice().first());
        pages.push(PageList {
            width,
            height,
            content: page.content,
        });
    }
    if pages.is_empty() {
        pages.push(PageList {
            width,
            height,
            content: Vec::new(),
        });
    }
    fill_numbers(&mut pages, fonts, &destinations, &numbers);
    running_heads(&mut pages, document, fonts, area);
    Pages {
        outline: outline(&flow.entries, &destinations),
        pages,
        destinations,
        title: document.title.clone(),
        author: document.author.clone(),
        language: document.language.clone(),
    }
}

/// A page in the making.
struct Composer<'c, 'd> {
    flow: &'c Flow<'d>,
    fonts: &'c Fonts,
    /// The mark of the revision that made the changes.
    mark: &'c str,
    area: Area,
    /// What the margin tells, with the top and the bottom of what it tells of.
    changes: Vec<(Change, f64, f64)>,
    number: usize,
    content: Vec<Placed<'d>>,
    destinations: &'c mut BTreeMap<String, (usize, f64)>,
    numbers: &'c mut Vec<(usize, PageNumber)>,
}

impl<'d> Composer<'_, 'd> {
    fn take(&mut self, slabs: Vec<Slab<'d>>, sheet: &Sheet, next: Option<&Slab<'d>>) {
        self.repeated_head(slabs.first(), sheet);
        // Top and bottom of every box on this page.
        let mut extents: BTreeMap<usize, (f64, f64)> = BTreeMap::new();
        for (i, (slab, top)) in slabs.into_iter().zip(&sheet.tops).enumerate() {
            let y = self.area.y + top;
            self.changes.push((slab.change, y, y + slab.height));
            for number in &slab.boxes {
                let goes_on = next.is_some_and(|next| next.boxes.contains(number));
                let bottom = y + slab.height + if goes_on { BOX_PAD } else { 0.0 };
                // A box that begins the page, new or going on, begins at its very top.
                let above = if i == 0 { self.area.y } else { y };
                extents.entry(*number).or_insert((above, bottom)).1 = bottom;
            }
            self.slab(slab, y);
        }
        self.frames(&extents);
        let marks = margin::changes(self.fonts, self.area, &self.changes, self.mark);
        self.content.extend(marks.into_iter().map(Placed::Mark));
    }

    fn slab(&mut self, slab: Slab<'d>, y: f64) {
        let (dx, dy) = (self.area.x, y);
        let content = slab.content.into_iter();
        self.content
            .extend(content.map(|placed| moved(placed, dx, dy)));
        for place in slab.places.into_iter().filter(|place| !place.is_empty()) {
            // Of two places of one name the first one counts; `examine` reports the other.
            self.destinations.entry(place).or_insert((self.number, y));
        }
        for number in slab.numbers {
            let at = number.at.shifted(dx, dy);
            self.numbers
                .push((self.number, PageNumber { at, ..number }));
        }
    }

    fn repeated_head(&mut self, first: Option<&Slab<'d>>, sheet: &Sheet) {
        let head = first
            .and_then(|slab| slab.head)
            .and_then(|head| self.flow.heads.get(head));
        if let (Some(head), Some(top)) = (head, sheet.tops.first()) {
            let y = self.area.y + top - head.height;
            let marks = head
                .marks
                .iter()
                .map(|mark| mark.clone().shifted(self.area.x, y));
            self.content.extend(marks.map(Placed::Mark));
        }
    }

    fn frames(&mut self, extents: &BTreeMap<usize, (f64, f64)>) {
        for (number, (top, bottom)) in extents {
            let Some(frame) = self.flow.boxes.get(*number) else {
                continue;
            };
            let half = frame.pen.width / 2.0;
            // The pen lies inside the box, so that frames end where text columns do.
            let area = Area {
                x: self.area.x + frame.x + half,
                y: top + half,
                width: frame.width - frame.pen.width,
                height: bottom - top - frame.pen.width,
            };
            self.content.push(Placed::Mark(Mark::Stroke {
                path: Path::rectangle(area),
                pen: frame.pen.clone(),
            }));
        }
    }
}

/// Page numbers of the contents, from 1.
fn fill_numbers(
    pages: &mut [PageList<'_>],
    fonts: &Fonts,
    destinations: &BTreeMap<String, (usize, f64)>,
    numbers: &[(usize, PageNumber)],
) {
    for (page, number) in numbers {
        let found = destinations.get(&number.target);
        if let (Some((target, _)), Some(page)) = (found, pages.get_mut(*page)) {
            let text = (target + 1).to_string();
            let mark = text_mark(fonts, &number.style, Anchor::End, number.at, &text);
            page.content.push(Placed::Mark(mark));
        }
    }
}

/// "page 3 of 12".
fn page_of(words: &Words, number: usize, count: usize) -> String {
    let counted = |count: usize| Filling::Count(i64::try_from(count).unwrap_or(i64::MAX));
    words.word(
        "page-of",
        &[("number", counted(number)), ("count", counted(count))],
    )
}

/// Title and revision on the left, "page n of m" on the right, on all pages but the first.
fn running_heads(pages: &mut [PageList<'_>], document: &Document, fonts: &Fonts, area: Area) {
    let words = &document.words;
    let count = pages.len();
    let bold = RUNNING.face(Face::Bold);
    for (i, page) in pages.iter_mut().enumerate().skip(1) {
        let right = Spot::new(area.x + area.width, RUNNING_BASELINE);
        let number = text_mark(
            fonts,
            &RUNNING,
            Anchor::End,
            right,
            &page_of(words, i + 1, count),
        );
        let room = area.width - 84.0;
        let left = Spot::new(area.x, RUNNING_BASELINE);
        let (title, taken) = plain_line(fonts, &bold, &document.title, left, room);
        let gap = if taken > 0.0 { 10.0 } else { 0.0 };
        let beside = left.shifted(taken + gap, 0.0);
        let (running, _) = plain_line(
            fonts,
            &RUNNING,
            &document.running,
            beside,
            room - taken - gap,
        );
        let ends = [
            Spot::new(area.x, RUNNING_BASELINE + 5.5),
            Spot::new(area.x + area.width, RUNNING_BASELINE + 5.5),
        ];
        let rule = Mark::Stroke {
            path: Path::polyline(&ends, Ends::Open),
            pen: Pen {
                width: 0.35,
                tone: RULE,
                dashes: Vec::new(),
            },
        };
        let marks = [Some(rule), title, running, Some(number)];
        page.content
            .extend(marks.into_iter().flatten().map(Placed::Mark));
    }
}

/// Headings of level 1 with those of level 2 below them.
fn outline(entries: &[Entry], destinations: &BTreeMap<String, (usize, f64)>) -> Vec<OutlineEntry> {
    let mut outline: Vec<OutlineEntry> = Vec::new();
    for entry in entries.iter().filter(|entry| entry.level <= 2) {
        let Some((page, y)) = destinations.get(&entry.id).copied() else {
            continue;
        };
        let made = OutlineEntry {
            title: entry.title.clone(),
            page,
            y,
            children: Vec::new(),
        };
        match outline.last_mut() {
            Some(chapter) if entry.level == 2 => chapter.children.push(made),
            _ => outline.push(made),
        }
    }
    outline
}
