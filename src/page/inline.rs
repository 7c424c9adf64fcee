//! Inline text: from strong, linked and styled stretches to runs, and from lines to marks.

use crate::display::{Area, Colours, Face, GlyphRun, Mark, Path, PathPiece, Pen, Spot, Tone};
use crate::document::tree::{Align, Inline};
use crate::text::{
    Anchor, Fonts, Hyphens, Line, LinePiece, Run, TextStyle, break_paragraph, measure, shape_line,
    text_mark,
};

use super::Placed;
use super::structure::{ElementId, Role, Structure};
use super::style::SECOND;

/// What is drawn around a run.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Look {
    Plain,
    /// A ring, or a rounded outline around several letters.
    Label,
    /// A rounded outline.
    Tag,
}

/// A stretch of text ready to be broken into lines.
#[derive(Debug)]
pub(super) struct Text {
    runs: Vec<Run>,
    looks: Vec<Look>,
    links: Vec<Option<String>>,
    hyphens: Hyphens,
    /// The tone of links.
    accent: Tone,
}

/// What inlines around a text do to it.
#[derive(Clone, Copy)]
struct Around<'i> {
    style: TextStyle,
    look: Look,
    link: Option<&'i str>,
}

impl Text {
    /// The text of `inlines`, plain stretches in `style`.
    pub(super) fn new(inlines: &[Inline], style: TextStyle, colours: Colours) -> Self {
        Self::hyphenated(inlines, style, colours, Hyphens::default())
    }

    /// The same with long words that may be divided.
    pub(super) fn hyphenated(
        inlines: &[Inline],
        style: TextStyle,
        colours: Colours,
        hyphens: Hyphens,
    ) -> Self {
        let mut text = Self {
            runs: Vec::new(),
            looks: Vec::new(),
            links: Vec::new(),
            hyphens,
            accent: colours.accent,
        };
        let around = Around {
            style,
            look: Look::Plain,
            link: None,
        };
        text.take(inlines, around);
        text
    }

    fn take(&mut self, inlines: &[Inline], around: Around<'_>) {
        for inline in inlines {
            match inline {
                Inline::Text(text) => self.push(text, around),
                Inline::Break => self.runs_push("\n".to_owned(), around),
                Inline::Strong(inner) => {
                    let style = around.style.face(Face::Bold);
                    self.take(inner, Around { style, ..around });
                }
                Inline::Emphasis(inner) => {
                    let face = match around.style.face {
                        Face::Regular | Face::Italic => Face::Italic,
                        Face::Bold => Face::Bold,
                    };
                    let style = around.style.face(face);
                    self.take(inner, Around { style, ..around });
                }
                Inline::Link { target, text } => {
                    let link = Some(target.as_str());
                    let style = around.style.tone(self.accent);
                    self.take(
                        text,
                        Around {
                            link,
                            style,
                            ..around
                        },
                    );
                }
                Inline::Styled { class, text } => {
                    self.take(text, styled(class, around));
                }
            }
        }
    }

    /// Takes text in, with every stretch of spaces and line ends as one space.
    fn push(&mut self, text: &str, around: Around<'_>) {
        let ends_in_space = self
            .runs
            .last()
            .is_none_or(|run| run.text.ends_with([' ', '\n']));
        let mut after_space = ends_in_space && around.look == Look::Plain;
        let mut collapsed = String::with_capacity(text.len());
        for character in text.chars() {
            let is_space = matches!(character, ' ' | '\t' | '\n' | '\r');
            if is_space && !after_space {
                collapsed.push(' ');
            } else if !is_space {
                collapsed.push(character);
            }
            after_space = is_space;
        }
        if around.look == Look::Plain {
            collapsed = self.hyphens.put_into(&collapsed).into_owned();
        }
        if !collapsed.is_empty() {
            self.runs_push(collapsed, around);
        }
    }

    fn runs_push(&mut self, text: String, around: Around<'_>) {
        let size = around.style.size;
        let mut run = Run::new(text, around.style);
        match around.look {
            Look::Plain => {}
            Look::Label => {
                run.whole = true;
                run.pad = label_pad(&run.text, size);
            }
            Look::Tag => {
                run.whole = true;
                run.pad = size * 0.45;
            }
        }
        self.runs.push(run);
        self.looks.push(around.look);
        self.links.push(around.link.map(str::to_owned));
    }

    /// Width on one line.
    pub(super) fn widest(&self, fonts: &Fonts) -> f64 {
        measure(fonts, &self.runs)
    }

    /// Width below which a word would be torn.
    pub(super) fn narrowest(&self, fonts: &Fonts) -> f64 {
        crate::text::narrowest_width(fonts, &self.runs)
    }

    /// Broken into lines.
    pub(super) fn lines(&self, fonts: &Fonts, width: f64) -> Vec<Line> {
        break_paragraph(fonts, &self.runs, width)
    }

    /// The element of each run: the text's own, or in it a link.
    pub(super) fn elements(&self, structure: &mut Structure, own: ElementId) -> Vec<ElementId> {
        let mut before: Option<(&String, ElementId)> = None;
        let links = self.links.iter().map(|link| {
            before = link.as_ref().map(|target| match before {
                Some((same, element)) if same == target => (target, element),
                _ => (target, structure.add_in(own, Role::Link)),
            });
            before.map_or(own, |(_, element)| element)
        });
        links.collect()
    }

    /// The marks of a line: its baseline begins at `spot` in a column of `width`; `elements` are those of
    /// the runs.
    pub(super) fn marks<'d>(
        &self,
        fonts: &Fonts,
        line: Line,
        spot: Spot,
        (width, align): (f64, Align),
        elements: &[ElementId],
    ) -> Vec<Placed<'d>> {
        let free = width - line.width;
        let left = spot.x
            + match align {
                Align::Left => 0.0,
                Align::Centre => free / 2.0,
                Align::Right => free,
            };
        let mut marks = Vec::with_capacity(line.pieces.len());
        for piece in line.pieces {
            let element = elements.get(piece.run).copied();
            let element = element.unwrap_or(ElementId::ROOT);
            let mut drawn = Vec::new();
            self.piece_marks(fonts, piece, Spot::new(left, spot.y), &mut drawn);
            let content = drawn.into_iter();
            marks.extend(content.map(|mark| Placed::Content { element, mark }));
        }
        marks
    }

    fn piece_marks(&self, fonts: &Fonts, piece: LinePiece, start: Spot, marks: &mut Vec<Mark>) {
        let (Some(run), Some(look), Some(link)) = (
            self.runs.get(piece.run),
            self.looks.get(piece.run),
            self.links.get(piece.run),
        ) else {
            return;
        };
        let style = &run.style;
        let area = Area {
            x: start.x + piece.x,
            y: start.y - style.size,
            width: piece.width,
            height: style.size * 1.3,
        };
        let cap_height = fonts.cap_height(style.face) * style.size;
        let middle = start.y - cap_height / 2.0;
        match look {
            Look::Plain => {}
            Look::Label => marks.push(outline(area, middle, style.size * LABEL_HEIGHT, style)),
            Look::Tag => marks.push(outline(area, middle, style.size * TAG_HEIGHT, style)),
        }
        marks.push(Mark::Text(GlyphRun {
            origin: Spot::new(start.x + piece.x + piece.pad, start.y),
            face: style.face,
            size: style.size,
            tone: style.tone,
            glyphs: piece.glyphs,
        }));
        if let Some(target) = link {
            marks.push(Mark::Link {
                area,
                target: target.clone(),
            });
        }
    }
}

/// Height of a label's ring at size 1.
const LABEL_HEIGHT: f64 = 1.55;
/// Height of a tag's outline at size 1.
const TAG_HEIGHT: f64 = 1.5;

/// Room beside a label's letters: a single one stands in a ring.
fn label_pad(text: &str, size: f64) -> f64 {
    let mut letters = text.chars();
    match (letters.next(), letters.next()) {
        (Some(letter), None) => {
            // Bold capitals at size 1; the run is as wide as its ring, drawn around its middle.
            let width = match letter {
                'I' | 'J' | '1' => 0.36,
                'M' | 'W' => 0.94,
                'O' | 'Q' | 'G' | 'N' | 'H' | 'U' | 'D' => 0.77,
                _ => 0.6,
            };
            size * (LABEL_HEIGHT + 0.1 - width) / 2.0
        }
        _ => size * 0.5,
    }
}

fn styled<'i>(class: &str, around: Around<'i>) -> Around<'i> {
    let style = around.style;
    match class {
        "label" => Around {
            style: style
                .face(Face::Bold)
                .size((style.size * 0.82).max(7.0))
                .tone(Tone::BLACK),
            look: Look::Label,
            ..around
        },
        "tag" => Around {
            style: style.size((style.size * 0.8).max(7.0)),
            look: Look::Tag,
            ..around
        },
        "second" => Around {
            style: style.tone(SECOND),
            ..around
        },
        "big" => Around {
            style: style.face(Face::Bold).size(style.size * 1.5),
            ..around
        },
        _ => around,
    }
}

/// A rounded outline as high as `height` around `middle`, or a ring where the run is no wider.
fn outline(area: Area, middle: f64, height: f64, style: &TextStyle) -> Mark {
    // A wide letter still stands in a ring, not in an egg.
    let width = if area.width < height * 1.3 {
        height
    } else {
        area.width - 1.0
    };
    let centre = area.x + area.width / 2.0;
    Mark::Stroke {
        path: rounded(Area {
            x: centre - width / 2.0,
            y: middle - height / 2.0,
            width,
            height,
        }),
        pen: Pen {
            width: 0.6,
            tone: style.tone,
            dashes: Vec::new(),
        },
    }
}

/// A rectangle with half circles (Bézier curves within 0.03 %) for its left and right sides.
fn rounded(area: Area) -> Path {
    let r = area.height / 2.0;
    let k = r * 0.552_284_749_830_793_6;
    let (left, right) = (area.x + r, area.x + area.width - r);
    let (top, middle, bottom) = (area.y, area.y + r, area.y + area.height);
    let at = Spot::new;
    Path {
        pieces: vec![
            PathPiece::Move(at(left, top)),
            PathPiece::Line(at(right, top)),
            PathPiece::Curve(
                at(right + k, top),
                at(right + r, middle - k),
                at(right + r, middle),
            ),
            PathPiece::Curve(
                at(right + r, middle + k),
                at(right + k, bottom),
                at(right, bottom),
            ),
            PathPiece::Line(at(left, bottom)),
            PathPiece::Curve(
                at(left - k, bottom),
                at(left - r, middle + k),
                at(left - r, middle),
            ),
            PathPiece::Curve(at(left - r, middle - k), at(left - k, top), at(left, top)),
            PathPiece::Close,
        ],
    }
}

/// The words of inlines, for outlines and contents.
pub(super) fn plain(inlines: &[Inline]) -> String {
    let text = Text::new(inlines, super::style::BODY, Colours::default());
    let joined: String = text.runs.iter().map(|run| run.text.as_str()).collect();
    joined.replace('\n', " ").trim().to_owned()
}

/// Text on one line from `spot` on, cut to `room` with an ellipsis; its mark and its width.
pub(super) fn plain_line(
    fonts: &Fonts,
    style: &TextStyle,
    text: &str,
    spot: Spot,
    room: f64,
) -> (Option<Mark>, f64) {
    let mut text = text.to_owned();
    let mut width = shape_line(fonts, style, &text).width;
    if width > room {
        let ends: Vec<usize> = text.char_indices().map(|(at, _)| at).collect();
        // The longest beginning that fits with its ellipsis.
        let fits = ends.partition_point(|end| {
            let cut = format!("{}…", text.get(..*end).unwrap_or("").trim_end());
            shape_line(fonts, style, &cut).width <= room
        });
        let end = fits.checked_sub(1).and_then(|last| ends.get(last)).copied();
        let Some(end) = end.filter(|end| *end > 0) else {
            return (None, 0.0);
        };
        text = format!("{}…", text.get(..end).unwrap_or("").trim_end());
        width = shape_line(fonts, style, &text).width;
    }
    if text.trim().is_empty() {
        return (None, 0.0);
    }
    (
        Some(text_mark(fonts, style, Anchor::Start, spot, &text)),
        width,
    )
}
