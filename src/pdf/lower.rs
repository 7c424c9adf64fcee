//! From marks to operators, the one place where numbers are checked: every coordinate is finite
//! and rounded to 0.01 pt, and no graphics state is ever saved, so none can be left open.
//!
//! A page begins with the one transformation it has: its unit is a hundredth of a point. Whole
//! numbers are shorter than those with a point in them and sooner written. A path is one operator
//! to printpdf, whose own forms of paths leave out what drawings need: its text.
//! Consecutive strokes of one pen become one path; a drawing of thousands of lines shrinks by a
//! fifth. A figure's scale goes into its coordinates.

use std::collections::BTreeMap;
use std::fmt::Write;

use printpdf::{
    Codepoint, Color, CurTransMat, DictItem, FontId, Greyscale, LineCapStyle, LineDashPattern,
    LineJoinStyle, Op, PdfFontHandle, Point, Pt, Rgb, TextItem,
};

use super::fonts::{UsedFonts, resource_name};
use super::tags::{Marked, tag};
use crate::display::{Face, GlyphRun, Mark, Path, PathPiece, Pen, Spot, Tone};
use crate::page::{ElementId, PageList, Placed, Structure};
use crate::text::Fonts;

/// Farther out than any sheet: such a number is a fault in a drawing.
const FARTHEST: f64 = 100_000.0;
/// The unit of a page's content, in points.
const UNIT: f32 = 0.01;
/// Segments in one path; some printers give up on longer ones.
const LONGEST_PATH: usize = 4_000;
/// About as long is a piece of a path, in characters.
const PIECE_LENGTH: usize = 14;

/// A page as operators.
pub(super) struct Lowered {
    pub(super) ops: Vec<Op>,
    /// What its content belongs to, by the number it is marked with.
    pub(super) marked: Marked,
    /// Marks left out because a coordinate was no number.
    pub(super) left_out: usize,
}

/// Lowers a page.
pub(super) fn lower(
    page: &PageList<'_>,
    structure: &Structure,
    fonts: &Fonts,
    used: &mut UsedFonts,
) -> Lowered {
    let mut lowering = Lowering {
        ops: vec![Op::SetTransformationMatrix {
            matrix: CurTransMat::Raw([UNIT, 0.0, 0.0, UNIT, 0.0, 0.0]),
        }],
        structure,
        marked: Vec::new(),
        within: None,
        left_out: 0,
        fonts,
        used,
        frame: Frame {
            at: Spot::default(),
            scale: 1.0,
            height: page.height,
        },
        state: State::default(),
        open: PathText::default(),
    };
    for placed in &page.content {
        match placed {
            // A place to press lies over the page.
            Placed::Mark(Mark::Link { .. })
            | Placed::Content {
                mark: Mark::Link { .. },
                ..
            } => {}
            Placed::Mark(mark) => {
                lowering.belong(None);
                lowering.mark(mark, Cap::Butt);
            }
            Placed::Content { element, mark } => {
                lowering.belong(Some(*element));
                lowering.mark(mark, Cap::Butt);
            }
            Placed::Figure {
                figure,
                at,
                scale,
                element,
            } => {
                lowering.belong(Some(*element));
                let of_page = lowering.frame;
                lowering.frame = Frame {
                    at: *at,
                    scale: *scale,
                    ..of_page
                };
                for mark in &figure.marks {
                    lowering.mark(mark, Cap::Round);
                }
                lowering.frame = of_page;
            }
        }
    }
    lowering.end_belonging();
    Lowered {
        ops: lowering.ops,
        marked: lowering.marked,
        left_out: lowering.left_out,
    }
}

/// How marks lie on the page: PDF counts from the lower left corner, upwards.
#[derive(Clone, Copy)]
struct Frame {
    at: Spot,
    scale: f64,
    height: f64,
}

/// Lines of drawings end and turn round, so that corners of separate edges close; rules and
/// frames of pages end flat and have sharp corners.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Cap {
    Butt,
    Round,
}

/// What was last set, so that nothing is set twice.
#[derive(Default)]
struct State {
    stroke: Option<Tone>,
    fill: Option<Tone>,
    width: Option<i64>,
    dashes: Vec<i64>,
    cap: Option<Cap>,
    font: Option<(Face, i64)>,
}

struct Lowering<'l> {
    ops: Vec<Op>,
    structure: &'l Structure,
    marked: Marked,
    /// What is marked now: the content of an element, or what is the page's own.
    within: Option<Option<ElementId>>,
    left_out: usize,
    fonts: &'l Fonts,
    used: &'l mut UsedFonts,
    frame: Frame,
    state: State,
    /// The path that is still to be stroked.
    open: PathText,
}

/// A path as it is written, line by line.
#[derive(Default)]
struct PathText {
    text: String,
    /// How many pieces it has.
    pieces: usize,
}

/// A number that may stand in a PDF, in hundredths of a whole.
fn hundredths(value: f64) -> Option<i64> {
    #[expect(
        clippy::cast_possible_truncation,
        reason = "checked to be a number and below 100 000"
    )]
    let whole = libm::round(value * 100.0) as i64;
    (value.is_finite() && value.abs() <= FARTHEST).then_some(whole)
}

/// A length in the unit of the page, as printpdf takes it.
fn pt(hundredths: i64) -> Pt {
    #[expect(
        clippy::cast_precision_loss,
        reason = "below 10 000 000: a single float holds it"
    )]
    let single = hundredths as f32;
    Pt(single)
}

impl Lowering<'_> {
    /// What follows belongs to an element, or is the page's own.
    fn belong(&mut self, element: Option<ElementId>) {
        if self.within == Some(element) {
            return;
        }
        self.end_belonging();
        self.within = Some(element);
        let Some(element) = element else {
            self.ops.push(marking("BMC", "Artifact", None));
            return;
        };
        let role = self.structure.elements().get(element.number());
        let name = role.map_or("P", |element| tag(element.role));
        let number = i64::try_from(self.marked.len()).unwrap_or(i64::MAX);
        self.ops.push(marking("BDC", name, Some(number)));
        self.marked.push(element);
    }

    fn end_belonging(&mut self) {
        self.end_path();
        if self.within.take().is_some() {
            self.ops.push(operator("EMC".to_owned()));
        }
    }

    fn mark(&mut self, mark: &Mark, cap: Cap) {
        let done = match mark {
            Mark::Stroke { path, pen } => self.stroke(path, pen, cap),
            Mark::Fill { path, tone } => self.fill(path, *tone),
            Mark::Sealed { path, tone, width } => self.seal(path, *tone, *width, cap),
            Mark::Text(run) => self.text(run),
            // Links lie over the page, not in its content.
            Mark::Link { .. } => Some(()),
        };
        if done.is_none() {
            self.left_out += 1;
        }
    }

    fn spot(&self, spot: Spot) -> Option<[i64; 2]> {
        let frame = self.frame;
        Some([
            hundredths(frame.at.x + spot.x * frame.scale)?,
            hundredths(frame.height - frame.at.y - spot.y * frame.scale)?,
        ])
    }

    /// A path as text, or none if one of its numbers is none.
    fn path_text(&self, path: &Path) -> Option<PathText> {
        // A path must begin with a place; anything else is a fault a reader may stumble over.
        if !matches!(path.pieces.first(), None | Some(PathPiece::Move(_))) {
            return None;
        }
        let mut text = String::with_capacity(path.pieces.len() * PIECE_LENGTH);
        for piece in &path.pieces {
            let written = match *piece {
                PathPiece::Move(to) => {
                    let [x, y] = self.spot(to)?;
                    writeln!(text, "{x} {y} m")
                }
                PathPiece::Line(to) => {
                    let [x, y] = self.spot(to)?;
                    writeln!(text, "{x} {y} l")
                }
                PathPiece::Curve(a, b, to) => {
                    let ([ax, ay], [bx, by], [x, y]) =
                        (self.spot(a)?, self.spot(b)?, self.spot(to)?);
                    writeln!(text, "{ax} {ay} {bx} {by} {x} {y} c")
                }
                PathPiece::Close => writeln!(text, "h"),
            };
            written.ok()?;
        }
        Some(PathText {
            text,
            pieces: path.pieces.len(),
        })
    }

    fn stroke(&mut self, path: &Path, pen: &Pen, cap: Cap) -> Option<()> {
        let path = self.path_text(path)?;
        let width = hundredths(pen.width * self.frame.scale)?.max(0);
        let dashes: Vec<i64> = pen
            .dashes
            .iter()
            .map(|dash| hundredths(dash * self.frame.scale))
            .collect::<Option<_>>()?;
        // Dashes of no length at all would never end in a reader.
        let dashes = if dashes.iter().sum::<i64>() > 5 && dashes.iter().all(|dash| *dash >= 0) {
            dashes
        } else {
            Vec::new()
        };
        let cap = if dashes.is_empty() { cap } else { Cap::Butt };
        if path.pieces == 0 {
            return Some(());
        }
        self.set_pen(width, pen.tone, dashes, cap);
        self.open.pieces += path.pieces;
        self.open.text.push_str(&path.text);
        if self.open.pieces > LONGEST_PATH {
            self.end_path();
        }
        Some(())
    }

    /// Sets what differs from the pen before; that one's path is stroked first.
    fn set_pen(&mut self, width: i64, tone: Tone, dashes: Vec<i64>, cap: Cap) {
        let state = &self.state;
        let same = state.width == Some(width)
            && state.stroke == Some(tone)
            && state.dashes == dashes
            && state.cap == Some(cap);
        if same {
            return;
        }
        self.end_path();
        if self.state.width != Some(width) {
            self.ops.push(Op::SetOutlineThickness { pt: pt(width) });
            self.state.width = Some(width);
        }
        if self.state.stroke != Some(tone) {
            self.ops.push(Op::SetOutlineColor { col: colour(tone) });
            self.state.stroke = Some(tone);
        }
        if self.state.cap != Some(cap) {
            self.ops.push(Op::SetLineCapStyle {
                cap: match cap {
                    Cap::Butt => LineCapStyle::Butt,
                    Cap::Round => LineCapStyle::Round,
                },
            });
            self.ops.push(Op::SetLineJoinStyle {
                join: match cap {
                    Cap::Butt => LineJoinStyle::Miter,
                    Cap::Round => LineJoinStyle::Round,
                },
            });
            self.state.cap = Some(cap);
        }
        if self.state.dashes != dashes {
            self.ops.push(Op::SetLineDashPattern {
                dash: LineDashPattern {
                    offset: 0.0,
                    pattern: dashes.iter().map(|dash| pt(*dash).0).collect(),
                },
            });
            self.state.dashes = dashes;
        }
    }

    fn end_path(&mut self) {
        if self.open.pieces > 0 {
            let path = std::mem::take(&mut self.open);
            self.paint(path, "S");
        }
    }

    /// A path with the operator that paints it.
    fn paint(&mut self, mut path: PathText, how: &str) {
        path.text.push_str(how);
        self.ops.push(operator(path.text));
    }

    fn fill(&mut self, path: &Path, tone: Tone) -> Option<()> {
        let path = self.path_text(path)?;
        if path.pieces == 0 {
            return Some(());
        }
        self.end_path();
        self.set_fill(tone);
        self.paint(path, "f*");
        Some(())
    }

    /// Fills and strokes a path in one tone.
    fn seal(&mut self, path: &Path, tone: Tone, width: f64, cap: Cap) -> Option<()> {
        let path = self.path_text(path)?;
        let width = hundredths(width * self.frame.scale)?.max(0);
        if path.pieces == 0 {
            return Some(());
        }
        self.end_path();
        self.set_fill(tone);
        self.set_pen(width, tone, Vec::new(), cap);
        self.paint(path, "B*");
        Some(())
    }

    fn set_fill(&mut self, tone: Tone) {
        if self.state.fill != Some(tone) {
            self.ops.push(Op::SetFillColor { col: colour(tone) });
            self.state.fill = Some(tone);
        }
    }

    fn text(&mut self, run: &GlyphRun) -> Option<()> {
        let first = run.glyphs.first();
        let Some(first) = first else {
            return Some(());
        };
        let size = hundredths(run.size * self.frame.scale)?;
        if size <= 0 {
            return None;
        }
        let start = run.origin.shifted(first.offset_x, 0.0);
        let [x, y] = self.spot(start)?;
        let shown = self.shown(run)?;
        self.end_path();
        self.set_fill(run.tone);
        self.ops.push(Op::StartTextSection);
        if self.state.font != Some((run.face, size)) {
            self.ops.push(Op::SetFont {
                font: PdfFontHandle::External(FontId(resource_name(run.face).to_owned())),
                size: pt(size),
            });
            self.state.font = Some((run.face, size));
        }
        self.ops.push(Op::SetTextCursor {
            pos: Point { x: pt(x), y: pt(y) },
        });
        self.ops.extend(shown);
        self.ops.push(Op::EndTextSection);
        Some(())
    }

    /// Glyphs with the adjustments between them, in stretches of one height over the baseline.
    fn shown(&mut self, run: &GlyphRun) -> Option<Vec<Op>> {
        let per_size = 1_000.0 / run.size;
        let mut ops = Vec::with_capacity(1);
        let mut codes: Vec<Codepoint> = Vec::with_capacity(run.glyphs.len());
        let mut rise = 0;
        // Where the reader's pen is and where it should be, in thousandths of the size; what
        // rounding leaves over is carried to the next glyph, so that no line drifts.
        let (mut pen, mut meant) = (0.0_f64, 0.0_f64);
        let start = run.glyphs.first().map_or(0.0, |glyph| glyph.offset_x);
        for glyph in &run.glyphs {
            let raised = hundredths(glyph.offset_y * self.frame.scale)?;
            let wanted = (meant + glyph.offset_x - start) * per_size;
            let adjust = libm::round((pen - wanted) * 10.0) / 10.0;
            let offset = single(adjust)?;
            if offset != 0.0
                && let Some(before) = codes.last_mut()
            {
                before.offset = offset;
                pen -= adjust;
            }
            if raised != rise {
                if !codes.is_empty() {
                    ops.push(show(std::mem::take(&mut codes)));
                }
                ops.push(Op::SetLineOffset {
                    multiplier: pt(raised).0,
                });
                rise = raised;
            }
            let code = self.used.code(self.fonts, run.face, glyph);
            codes.push(Codepoint::new(code, 0.0));
            pen += self.used.width(self.fonts, run.face, glyph.id);
            meant += glyph.advance;
        }
        ops.push(show(codes));
        if rise != 0 {
            ops.push(Op::SetLineOffset { multiplier: 0.0 });
        }
        (pen.is_finite() && meant.is_finite()).then_some(ops)
    }
}

fn show(codes: Vec<Codepoint>) -> Op {
    Op::ShowText {
        items: vec![TextItem::GlyphIds(codes)],
    }
}

/// The beginning of marked content, with its number.
fn marking(key: &str, name: &str, number: Option<i64>) -> Op {
    let mut value = vec![DictItem::Name(name.as_bytes().to_vec())];
    value.extend(number.map(|number| DictItem::Dict {
        map: BTreeMap::from([("MCID".to_owned(), DictItem::Int(number))]),
    }));
    Op::Unknown {
        key: key.to_owned(),
        value,
    }
}

/// An operator, or several, as they stand in the file.
fn operator(text: String) -> Op {
    Op::Unknown {
        key: text,
        value: Vec::new(),
    }
}

/// A number that has no unit of the page, in hundredths as well.
fn single(value: f64) -> Option<f32> {
    hundredths(value).map(|whole| pt(whole).0 / 100.0)
}

fn colour(tone: Tone) -> Color {
    let channel = |level: f64| {
        let level = if level.is_finite() { level } else { 0.0 };
        single(level.clamp(0.0, 1.0)).unwrap_or(0.0)
    };
    let (red, green, blue) = (channel(tone.red), channel(tone.green), channel(tone.blue));
    #[expect(clippy::float_cmp, reason = "a grey is one number three times")]
    let is_grey = red == green && green == blue;
    if is_grey {
        Color::Greyscale(Greyscale::new(red, None))
    } else {
        Color::Rgb(Rgb::new(red, green, blue, None))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::display::Ends;
    use crate::text::{Anchor, TextStyle, text_mark};

    fn lowered(content: Vec<Placed<'_>>) -> Lowered {
        let page = PageList {
            width: 200.0,
            height: 100.0,
            content,
        };
        lower(
            &page,
            &Structure::default(),
            &Fonts::shipped().unwrap(),
            &mut UsedFonts::default(),
        )
    }

    fn line(x: f64, width: f64) -> Placed<'static> {
        Placed::Mark(Mark::Stroke {
            path: Path::polyline(&[Spot::new(x, 10.0), Spot::new(x, 20.0)], Ends::Open),
            pen: Pen {
                width,
                tone: Tone::BLACK,
                dashes: Vec::new(),
            },
        })
    }

    /// The lines of all paths.
    fn lines(lowered: &Lowered) -> Vec<&str> {
        let text = lowered.ops.iter().filter_map(|op| {
            if let Op::Unknown { key, .. } = op {
                Some(key.lines())
            } else {
                None
            }
        });
        text.flatten().collect()
    }

    fn count(lowered: &Lowered, operator: &str) -> usize {
        let ends = |line: &&&str| line.split(' ').next_back() == Some(operator);
        lines(lowered).iter().filter(ends).count()
    }

    #[test]
    fn strokes_of_one_pen_are_one_path() {
        let page = lowered(vec![
            line(1.0, 0.5),
            line(2.0, 0.5),
            line(3.0, 0.7),
            line(4.0, 0.7),
        ]);
        assert_eq!(count(&page, "S"), 2);
        assert_eq!(count(&page, "m"), 4);
        assert_eq!(page.left_out, 0);
    }

    #[test]
    fn coordinates_count_from_below_and_are_rounded() {
        let page = lowered(vec![line(1.234_567, 0.5)]);
        let all = lines(&page);
        let first = all.iter().find(|line| line.ends_with(" m"));
        assert_eq!(first, Some(&"123 9000 m"));
        assert_eq!(hundredths(-0.001), Some(0));
        assert_eq!(hundredths(f64::NAN), None);
        assert_eq!(hundredths(1e9), None);
    }

    #[test]
    fn a_line_of_text_ends_where_it_was_measured() {
        let fonts = Fonts::shipped().unwrap();
        let style = TextStyle::new(Face::Regular, 9.7).tracked(0.333);
        let mark = text_mark(
            &fonts,
            &style,
            Anchor::Start,
            Spot::new(0.0, 50.0),
            &"AVfi 1 ".repeat(40),
        );
        let Mark::Text(run) = &mark else {
            panic!("text is text");
        };
        let meant: f64 = run.glyphs.iter().map(|glyph| glyph.advance).sum();
        let last = run.glyphs.last().unwrap().advance;
        let mut used = UsedFonts::default();
        let page = PageList {
            width: 200.0,
            height: 100.0,
            content: vec![Placed::Mark(mark.clone())],
        };
        let ops = lower(&page, &Structure::default(), &fonts, &mut used).ops;
        let codes = ops.iter().find_map(|op| {
            let Op::ShowText { items } = op else {
                return None;
            };
            let Some(TextItem::GlyphIds(codes)) = items.first() else {
                return None;
            };
            Some(codes.clone())
        });
        let codes = codes.unwrap();
        let mut pen = 0.0;
        for (code, glyph) in codes.iter().zip(&run.glyphs).take(codes.len() - 1) {
            pen += used.width(&fonts, Face::Regular, glyph.id) - f64::from(code.offset);
        }
        // Within a tenth of a thousandth of the size of where the last glyph was meant to begin.
        assert!((pen * 9.7 / 1_000.0 - (meant - last)).abs() < 0.001);
    }
}
