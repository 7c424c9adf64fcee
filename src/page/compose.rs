//! Slabs on their pages: frames, repeated heads, running heads, page numbers, places, outline.

use std::collections::BTreeMap;

use crate::display::{Area, Ends, Face, Mark, PT_PER_MM, Path, Pen, Spot};
use crate::document::tree::{Change, Document};
use crate::full_size::{EDGE, HEAD};
use crate::text::{Anchor, Fonts, text_mark};
use crate::words::Words;

use super::breaks::{Sheet, break_pages};
use super::flow::{BOX_PAD, Entry, Flow, PageNumber, Slab, moved};
use super::format::{Display, Format};
use super::inline::plain_line;
use super::margin;
use super::style::{RULE, RUNNING};
use super::{OutlineEntry, PageList, Pages, Placed};

/// Breaks the flow into pages and finishes each of them.
pub(super) fn compose<'d>(
    document: &'d Document,
    fonts: &Fonts,
    format: Format,
    mut flow: Flow<'d>,
) -> Pages<'d> {
    let area = format.area;
    let (width, height) = format.size;
    let sheets = break_pages(&flow, area.height);
    let mut slabs = std::mem::take(&mut flow.slabs).into_iter();
    let mut pages = Vec::with_capacity(sheets.len().max(1));
    let mut destinations = BTreeMap::new();
    let mut numbers = Vec::new();
    let mut heads = Vec::new();
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
        let own = taken.first().and_then(|slab| slab.page);
        page.take(taken, sheet, slabs.as_slice().first());
        let (width, height) = own.unwrap_or((width, height));
        heads.push(match own {
            None => Head::over_text(&format),
            Some((width, _)) => Head::over_sheet(width, format.natural()),
        });
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
    let page_names = (1..=pages.len()).map(|number| page_of(&document.words, number, pages.len()));
    let page_names: Vec<String> = page_names.collect();
    let named = (heads.as_slice(), page_names.as_slice());
    running_heads(&mut pages, document, fonts, &format, named);
    let enlarged = format.enlarged;
    if (enlarged - 1.0).abs() > 1e-9 {
        for page in &mut pages {
            page.enlarge(enlarged);
        }
        for (_, y) in destinations.values_mut() {
            *y *= enlarged;
        }
    }
    Pages {
        outline: outline(&flow.entries, &destinations),
        pages,
        destinations,
        title: document.title.clone(),
        author: document.author.clone(),
        language: document.language.clone(),
        structure: std::mem::take(&mut flow.structure),
        page_names,
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
    numbers: &'c mut Vec<NumberAt>,
}

/// A page number to be filled in: on which page, behind how much of its content.
struct NumberAt {
    page: usize,
    behind: usize,
    number: PageNumber,
}

impl<'d> Composer<'_, 'd> {
    fn take(&mut self, slabs: Vec<Slab<'d>>, sheet: &Sheet, next: Option<&Slab<'d>>) {
        self.repeated_head(slabs.first(), sheet);
        // Top and bottom of every box on this page.
        let mut extents: BTreeMap<usize, (f64, f64)> = BTreeMap::new();
        for (i, (slab, top)) in slabs.into_iter().zip(&sheet.tops).enumerate() {
            if slab.page.is_some() {
                // It is what it is from edge to edge.
                self.slab(slab, Spot::default());
                continue;
            }
            let y = self.area.y + top;
            self.changes.push((slab.change, y, y + slab.height));
            for number in &slab.boxes {
                let goes_on = next.is_some_and(|next| next.boxes.contains(number));
                let bottom = y + slab.height + if goes_on { BOX_PAD } else { 0.0 };
                // A box that begins the page, new or going on, begins at its very top.
                let above = if i == 0 { self.area.y } else { y };
                extents.entry(*number).or_insert((above, bottom)).1 = bottom;
            }
            self.slab(slab, Spot::new(self.area.x, y));
        }
        self.frames(&extents);
        let marks = margin::changes(self.fonts, self.area, &self.changes, self.mark);
        self.content.extend(marks.into_iter().map(Placed::Mark));
    }

    fn slab(&mut self, slab: Slab<'d>, Spot { x: dx, y: dy }: Spot) {
        let content = slab.content.into_iter();
        self.content
            .extend(content.map(|placed| moved(placed, dx, dy)));
        for place in slab.places.into_iter().filter(|place| !place.is_empty()) {
            // Of two places of one name the first one counts; `examine` reports the other.
            self.destinations.entry(place).or_insert((self.number, dy));
        }
        for number in slab.numbers {
            let at = number.at.shifted(dx, dy);
            self.numbers.push(NumberAt {
                page: self.number,
                behind: self.content.len(),
                number: PageNumber { at, ..number },
            });
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
    numbers: &[NumberAt],
) {
    // From the last to the first, so that places before stay what they are; each is read out where it stands.
    for NumberAt {
        page,
        behind,
        number,
    } in numbers.iter().rev()
    {
        let found = destinations.get(&number.target);
        if let (Some((target, _)), Some(page)) = (found, pages.get_mut(*page)) {
            let text = (target + 1).to_string();
            let mark = text_mark(fonts, &number.style, Anchor::End, number.at, &text);
            let element = number.element;
            let place = (*behind).min(page.content.len());
            page.content
                .insert(place, Placed::Content { element, mark });
        }
    }
}

/// "page 3 of 12".
fn page_of(words: &Words, number: usize, count: usize) -> String {
    words.word(
        "page-of",
        &[("number", number.into()), ("count", count.into())],
    )
}

/// Where the running head of a page stands.
#[derive(Clone, Copy)]
struct Head {
    left: f64,
    width: f64,
    /// Its baseline.
    base: f64,
    /// From there to the rule below it.
    rule: f64,
    /// The first page of a plan is its cover, and has none.
    on_first: bool,
}

impl Head {
    fn over_text(format: &Format) -> Self {
        Self {
            left: format.area.x,
            width: format.area.width,
            base: format.running,
            rule: 5.5,
            on_first: false,
        }
    }

    /// Over what fills a page of its own, inside of what a printer leaves white.
    fn over_sheet(width: f64, natural: f64) -> Self {
        let [edge, head] = [EDGE, HEAD].map(|length| length.mm() * PT_PER_MM * natural);
        Self {
            left: edge,
            width: width - 2.0 * edge,
            base: edge + head * 0.5,
            rule: head * 0.25,
            on_first: true,
        }
    }
}

/// Title and revision on the left, "page n of m" on the right, on all pages but the cover.
fn running_heads(
    pages: &mut [PageList<'_>],
    document: &Document,
    fonts: &Fonts,
    format: &Format,
    (heads, names): (&[Head], &[String]),
) {
    let bold = RUNNING.face(Face::Bold);
    let pages = pages.iter_mut().zip(heads).zip(names).enumerate();
    let headed = pages.filter(|(i, ((_, head), _))| *i > 0 || head.on_first);
    for (_, ((page, head), name)) in headed {
        let Head {
            left, width, base, ..
        } = *head;
        let right = Spot::new(left + width, base);
        let number = text_mark(fonts, &RUNNING, Anchor::End, right, name);
        let room = width - 84.0;
        let left = Spot::new(left, base);
        let (title, taken) = plain_line(fonts, &bold, &document.title, left, room);
        let gap = if taken > 0.0 { 10.0 } else { 0.0 };
        let beside = left.shifted(taken + gap, 0.0);
        // Half a date is none: on a small screen the title alone has room.
        let (running, _) = match format.display {
            Display::Large => {
                let room = room - taken - gap;
                plain_line(fonts, &RUNNING, &document.running, beside, room)
            }
            Display::Small => (None, 0.0),
        };
        let ends = [left.shifted(0.0, head.rule), right.shifted(0.0, head.rule)];
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
