//! Boxes: a signal word, a frame, and blocks in it; told apart without any colour.

use crate::display::{Area, Ends, Face, Mark, Path, Pen, Spot, Tone};
use crate::document::tree::Block;
use crate::text::{Anchor, TextStyle, text_mark};
use crate::words::Words;

use super::Placed;
use super::blocks::{Column, Setter};
use super::flow::{BOX_PAD, Box, BreakCost, Head, Slab};
use super::inline::plain;
use super::structure::Role;
use super::style::{GRID, QUIET, baseline};

/// Height of the bar with the signal word.
const BAR: f64 = 17.5;
/// Between the frame and its text.
const INSET: f64 = 10.5;

/// A box no higher than this part of a page is kept in one piece; a higher one goes on under
/// its signal word.
const SMALL: f64 = 0.4;

/// How a class of box is drawn.
#[derive(Clone, Copy)]
struct Look {
    frame: f64,
    tone: Tone,
    /// White on a black bar, or black over a rule.
    bar: Bar,
    word: TextStyle,
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum Bar {
    Black,
    Outlined,
    None,
    /// Not even a word: the text has its own.
    Absent,
}

fn look(class: &str) -> Look {
    let word = TextStyle::new(Face::Bold, 9.5).tracked(0.8);
    match class {
        "danger" | "warning" => Look {
            frame: 1.6,
            tone: Tone::BLACK,
            bar: Bar::Black,
            word: word.tone(Tone::WHITE),
        },
        "caution" => Look {
            frame: 1.2,
            tone: Tone::BLACK,
            bar: Bar::Outlined,
            word,
        },
        "notice" => Look {
            frame: 0.7,
            tone: Tone::BLACK,
            bar: Bar::Outlined,
            word: word.face(Face::Italic),
        },
        "again" => Look {
            frame: 1.2,
            tone: Tone::BLACK,
            bar: Bar::Absent,
            word,
        },
        _ => Look {
            frame: 0.5,
            tone: Tone::grey(0.45),
            bar: Bar::None,
            word: TextStyle::new(Face::Bold, 8.0).tracked(0.6).tone(QUIET),
        },
    }
}

impl<'d> Setter<'d, '_> {
    pub(super) fn framed(&mut self, class: &str, blocks: &'d [Block], column: Column) {
        let look = look(class);
        let (word, blocks) = match blocks.split_first() {
            Some((Block::Paragraph { class, text, .. }, rest)) if class == "signal" => {
                (plain(text).to_uppercase(), rest)
            }
            _ => (signal(self.words, class), blocks),
        };
        let first = self.flow.slabs.len();
        let space = self.flow.space(GRID);
        self.flow.open_box(Box {
            x: column.x,
            width: column.width,
            pen: Pen {
                width: look.frame,
                tone: look.tone,
                dashes: Vec::new(),
            },
        });
        self.flow.structure.open(Role::Division);
        let mut slab = self.signal(look, class, &word, column);
        slab.space = space;
        let head = self.repeated(&slab);
        self.flow.push(slab);
        self.flow.tie();
        self.flow.space_after(0.0);
        self.blocks(blocks, column.inside(INSET, INSET));
        // What the last block asks for below it is the frame's own inset here.
        self.flow.space_after(0.0);
        self.flow.tie();
        self.flow.push(Slab::new(BOX_PAD));
        self.flow.close_box();
        self.flow.structure.close();
        for slab in self.flow.slabs.iter_mut().skip(first + 1) {
            slab.head.get_or_insert(head);
        }
        if self.flow.height_from(first) <= self.room * SMALL {
            self.flow.keep_from(first, self.room, BreakCost::Kept);
        }
        self.flow.space_after(GRID * 1.5);
    }

    /// Keeps the signal word for the pages on which its box goes on; its number.
    fn repeated(&mut self, signal: &Slab<'d>) -> usize {
        let marks = signal.content.iter().filter_map(Placed::mark).cloned();
        self.flow.heads.push(Head {
            height: signal.height,
            inset: 0.0,
            marks: marks.collect(),
        });
        self.flow.heads.len() - 1
    }

    /// The slab with the signal word.
    fn signal(&mut self, look: Look, class: &str, word: &str, column: Column) -> Slab<'d> {
        let has_triangle = matches!(class, "danger" | "warning" | "caution");
        let mut slab = Slab::new(match look.bar {
            Bar::Black | Bar::Outlined => BAR + BOX_PAD - 1.0,
            Bar::None => BAR + 3.0,
            Bar::Absent => return Slab::new(BOX_PAD),
        });
        let mut marks = Vec::new();
        let bar = Area {
            x: column.x,
            y: 0.0,
            width: column.width,
            height: BAR,
        };
        match look.bar {
            Bar::Black => marks.push(Mark::Fill {
                path: Path::rectangle(bar),
                tone: Tone::BLACK,
            }),
            Bar::Outlined => marks.push(Mark::Stroke {
                path: Path::polyline(
                    &[Spot::new(bar.x, BAR), Spot::new(bar.x + bar.width, BAR)],
                    Ends::Open,
                ),
                pen: Pen {
                    width: look.frame * 0.6,
                    tone: look.tone,
                    dashes: Vec::new(),
                },
            }),
            Bar::None | Bar::Absent => {}
        }
        let mut x = column.x + INSET;
        let down = if look.bar == Bar::None { 3.0 } else { 0.0 };
        let base = down + baseline(look.word.size, BAR - down);
        if has_triangle {
            let ground = if look.bar == Bar::Black {
                Tone::BLACK
            } else {
                Tone::WHITE
            };
            triangle(Spot::new(x, BAR / 2.0), look.word.tone, ground, &mut marks);
            x += TRIANGLE * 1.155 + 6.0;
        }
        let spot = Spot::new(x, base);
        slab.baseline = base;
        slab.content = marks.into_iter().map(Placed::Mark).collect();
        slab.content.push(Placed::Content {
            element: self.flow.structure.add(Role::Paragraph),
            mark: text_mark(self.fonts, &look.word, Anchor::Start, spot, word),
        });
        slab
    }
}

/// Height of the alert triangle.
const TRIANGLE: f64 = 11.5;

/// The safety alert symbol: a triangle of even sides with an exclamation mark, its left end at
/// `spot` and its middle as high as that.
fn triangle(spot: Spot, tone: Tone, ground: Tone, marks: &mut Vec<Mark>) {
    let side = TRIANGLE * 1.154_700_538;
    let (top, bottom) = (spot.y - TRIANGLE / 2.0, spot.y + TRIANGLE / 2.0);
    let middle = spot.x + side / 2.0;
    let corners = [
        Spot::new(middle, top),
        Spot::new(spot.x + side, bottom),
        Spot::new(spot.x, bottom),
    ];
    marks.push(Mark::Fill {
        path: Path::polyline(&corners, Ends::Joined),
        tone,
    });
    let stroke = [
        Spot::new(middle - 0.95, top + 3.9),
        Spot::new(middle + 0.95, top + 3.9),
        Spot::new(middle + 0.5, bottom - 3.3),
        Spot::new(middle - 0.5, bottom - 3.3),
    ];
    marks.push(Mark::Fill {
        path: Path::polyline(&stroke, Ends::Joined),
        tone: ground,
    });
    marks.push(Mark::Fill {
        path: Path::circle(Spot::new(middle, bottom - 1.8), 0.85),
        tone: ground,
    });
}

/// The word of a class of box; none where its text has one of its own.
pub(super) fn signal_word(words: &Words, class: &str) -> Option<String> {
    match look(class).bar {
        Bar::Absent => None,
        Bar::Black | Bar::Outlined | Bar::None => Some(signal(words, class)),
    }
}

/// The word of a class of box.
fn signal(words: &Words, class: &str) -> String {
    match class {
        "danger" | "warning" | "caution" | "notice" => {
            words.word("signal", &[("word", class.into())])
        }
        _ => words.word("page-info", &[]),
    }
}
