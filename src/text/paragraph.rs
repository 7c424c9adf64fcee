//! Paragraphs: runs of text broken into lines of least raggedness.
//!
//! Every way of breaking is weighed (a dynamic programme over the places where a line may end):
//! the sum of the squared free space of all lines but the last is made smallest, as in the
//! well-known total-fit method (D. E. Knuth, M. F. Plass, "Breaking paragraphs into lines", 1981),
//! without stretching any space.

use crate::display::Glyph;

use super::fonts::Fonts;
use super::segment::{Ending, grapheme_ends, opportunities};
use super::shape::{shape_line, width};
use super::style::Run;

/// Weight of a line that is empty throughout.
const RAGGED: f64 = 100.0;
/// Every line costs this, so that a paragraph is not made longer to be smoother.
const LINE: f64 = 6.0;
/// A line that ends inside a compound.
const HYPHEN: f64 = 6.0;
/// A line that ends inside a token.
const FORCED: f64 = 30.0;
/// A last line shorter than this part of the width looks lost.
const SHORT_LAST: f64 = 0.18;
/// Added widths may differ from one shaped together by this much, in points.
const SLACK: f64 = 0.01;

/// A part of a line: glyphs of one run.
#[derive(Clone, Debug, PartialEq)]
pub struct LinePiece {
    /// Which of the paragraph's runs.
    pub run: usize,
    /// Where it begins, from the line's left end, in points, its pad included.
    pub x: f64,
    /// How wide it is, its pads included.
    pub width: f64,
    /// Free space before its glyphs.
    pub pad: f64,
    /// Its glyphs.
    pub glyphs: Vec<Glyph>,
}

/// A line.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Line {
    /// Its parts, from the left.
    pub pieces: Vec<LinePiece>,
    /// Width without the space at its end.
    pub width: f64,
}

/// Width of the widest line if lines end only where the text says so.
pub fn measure(fonts: &Fonts, runs: &[Run]) -> f64 {
    let paragraph = Measured::new(fonts, runs);
    let mut widest = 0.0_f64;
    let mut line = 0.0;
    for atom in &paragraph.atoms {
        widest = widest.max(line + atom.solid_width);
        line += atom.full_width;
        if atom.ending == Ending::Mandatory {
            line = 0.0;
        }
    }
    widest
}

/// Width of the widest piece that no line may break inside: a column narrower than this would
/// tear a word.
pub fn narrowest_width(fonts: &Fonts, runs: &[Run]) -> f64 {
    Measured::new(fonts, runs)
        .atoms
        .iter()
        .map(|atom| atom.solid_width)
        .fold(0.0, f64::max)
}

/// The paragraph's lines, none wider than `line_width` as long as one grapheme fits into it.
pub fn break_paragraph(fonts: &Fonts, runs: &[Run], line_width: f64) -> Vec<Line> {
    let mut paragraph = Measured::new(fonts, runs);
    paragraph.split_overlong(line_width);
    let ends = best_ends(&paragraph.atoms, line_width);
    let mut first = 0;
    let mut lines = Vec::with_capacity(ends.len());
    for end in ends {
        if let Some(atoms) = paragraph.atoms.get(first..=end) {
            lines.push(paragraph.line(atoms));
        }
        first = end + 1;
    }
    lines
}

/// A stretch between two places where a line may end.
#[derive(Clone, Copy, Debug)]
struct Atom {
    start: usize,
    /// Where its text ends and the space after it begins.
    solid_end: usize,
    end: usize,
    /// Width as the last of a line, with its hyphen.
    solid_width: f64,
    /// Width with its space, within a line.
    full_width: f64,
    ending: Ending,
}

/// A paragraph's text in one string and the stretches it may be broken into.
struct Measured<'a> {
    fonts: &'a Fonts,
    runs: &'a [Run],
    text: String,
    /// Where each run ends in `text`.
    run_ends: Vec<usize>,
    atoms: Vec<Atom>,
}

impl<'a> Measured<'a> {
    fn new(fonts: &'a Fonts, runs: &'a [Run]) -> Self {
        let mut text = String::with_capacity(runs.iter().map(|run| run.text.len()).sum());
        let mut run_ends = Vec::with_capacity(runs.len());
        let mut wholes = Vec::new();
        for run in runs {
            let start = text.len();
            text.push_str(&run.text);
            run_ends.push(text.len());
            if run.whole {
                wholes.push((start, text.len()));
            }
        }
        let mut measured = Self {
            fonts,
            runs,
            text,
            run_ends,
            atoms: Vec::new(),
        };
        let mut start = 0;
        for opportunity in opportunities(&measured.text) {
            let (at, ending) = (opportunity.at, opportunity.ending);
            let inside = wholes.iter().any(|(from, to)| *from < at && at < *to);
            if (inside && ending != Ending::Mandatory) || at <= start {
                continue;
            }
            let atom = measured.atom(start, at, ending);
            measured.atoms.push(atom);
            start = at;
        }
        measured
    }

    fn atom(&self, start: usize, end: usize, ending: Ending) -> Atom {
        let piece = self.text.get(start..end).unwrap_or("");
        let solid = piece.trim_end_matches([' ', '\t', '\n', '\r', '\u{2028}', '\u{2029}']);
        let solid_end = start + solid.len();
        let bare = self.width_of(start, solid_end);
        let full_width = bare + self.width_of(solid_end, end);
        let hyphen = if ending == Ending::SoftHyphen {
            self.run_at(start)
                .map_or(0.0, |run| width(self.fonts, &run.style, "-"))
        } else {
            0.0
        };
        Atom {
            start,
            solid_end,
            end,
            solid_width: bare + hyphen,
            full_width,
            ending,
        }
    }

    /// The stretches of runs between two places of the text: run number, start, end.
    fn stretches(&self, from: usize, to: usize) -> impl Iterator<Item = (usize, usize, usize)> {
        let first = self.run_ends.partition_point(|end| *end <= from);
        let ends = self.run_ends.iter().copied().enumerate().skip(first);
        let mut start = from;
        ends.map_while(move |(run, end)| {
            (start < to).then(|| {
                let piece = (run, start, end.min(to));
                start = end;
                piece
            })
        })
        .filter(|(_, start, end)| start < end)
    }

    fn run_at(&self, at: usize) -> Option<&Run> {
        self.runs
            .get(self.run_ends.partition_point(|end| *end <= at))
    }

    /// Room the run leaves before and after a stretch of it.
    fn pads(&self, run: usize, start: usize, end: usize) -> (f64, f64) {
        let pad = self.runs.get(run).map_or(0.0, |run| run.pad);
        let run_end = self.run_ends.get(run).copied().unwrap_or(0);
        let run_start = run
            .checked_sub(1)
            .and_then(|before| self.run_ends.get(before).copied())
            .unwrap_or(0);
        let at = |meets: bool| if meets { pad } else { 0.0 };
        (at(start == run_start), at(end == run_end))
    }

    fn width_of(&self, from: usize, to: usize) -> f64 {
        self.stretches(from, to)
            .map(|(run, start, end)| {
                let (before, after) = self.pads(run, start, end);
                let text = self.text.get(start..end).unwrap_or("");
                let style = self.runs.get(run).map(|run| &run.style);
                before + style.map_or(0.0, |style| width(self.fonts, style, text)) + after
            })
            .sum()
    }

    /// Breaks what is wider than a line at graphemes.
    fn split_overlong(&mut self, line_width: f64) {
        if self.atoms.iter().all(|atom| atom.solid_width <= line_width) {
            return;
        }
        let mut atoms = Vec::with_capacity(self.atoms.len());
        for atom in &self.atoms {
            if atom.solid_width <= line_width {
                atoms.push(*atom);
                continue;
            }
            let token = self.text.get(atom.start..atom.solid_end).unwrap_or("");
            let (mut start, mut before, mut filled) = (atom.start, atom.start, 0.0);
            for end in grapheme_ends(token).map(|end| atom.start + end) {
                let grapheme = self.width_of(before, end);
                if filled + grapheme > line_width && before > start {
                    atoms.push(self.atom(start, before, Ending::Forced));
                    (start, filled) = (before, 0.0);
                }
                filled += grapheme;
                before = end;
            }
            atoms.push(self.atom(start, atom.end, atom.ending));
        }
        self.atoms = atoms;
    }

    fn line(&self, atoms: &[Atom]) -> Line {
        let (Some(first), Some(last)) = (atoms.first(), atoms.last()) else {
            return Line::default();
        };
        let mut line = Line::default();
        for (run, start, end) in self.stretches(first.start, last.solid_end) {
            let Some(style) = self.runs.get(run).map(|run| &run.style) else {
                continue;
            };
            let (before, after) = self.pads(run, start, end);
            let text = self.text.get(start..end).unwrap_or("");
            let hyphenated = end == last.solid_end && last.ending == Ending::SoftHyphen;
            let mut shaped = if hyphenated {
                shape_line(self.fonts, style, &format!("{text}-"))
            } else {
                shape_line(self.fonts, style, text)
            };
            if hyphenated && let Some(hyphen) = shaped.glyphs.last_mut() {
                // Read aloud or copied, the word is whole.
                "\u{ad}".clone_into(&mut hyphen.text);
            }
            let width = before + shaped.width + after;
            line.pieces.push(LinePiece {
                run,
                x: line.width,
                width,
                pad: before,
                glyphs: shaped.glyphs,
            });
            line.width += width;
        }
        // What parts it from the next line is read, not seen.
        let parted = self.text.get(last.solid_end..last.end).unwrap_or("");
        if let Some(piece) = line.pieces.last_mut()
            && let Some(run) = self.runs.get(piece.run)
            && parted.contains([' ', '\n'])
        {
            let space = shape_line(self.fonts, &run.style, " ");
            piece.glyphs.extend(space.glyphs);
        }
        line
    }
}

/// The atoms that end the lines of the smoothest way to break.
fn best_ends(atoms: &[Atom], line_width: f64) -> Vec<usize> {
    // best[n] is the least cost of setting the first n atoms, and the first atom of its last line.
    let mut best: Vec<(f64, usize)> = Vec::with_capacity(atoms.len() + 1);
    best.push((0.0, 0));
    for (end, last) in atoms.iter().enumerate() {
        let mut least = (f64::INFINITY, end);
        let mut before = 0.0;
        for (start, first) in atoms.iter().enumerate().take(end + 1).rev() {
            if start < end {
                if first.ending == Ending::Mandatory {
                    break;
                }
                before += first.full_width;
            }
            let filled = before + last.solid_width;
            // One atom alone is set however wide it is.
            if filled > line_width + SLACK && start < end {
                break;
            }
            let ends_text = end + 1 == atoms.len() || last.ending == Ending::Mandatory;
            let earlier = best.get(start).map_or(f64::INFINITY, |(cost, _)| *cost);
            let cost = earlier + line_cost(last, filled / line_width.max(1.0), ends_text);
            if cost < least.0 {
                least = (cost, start);
            }
        }
        best.push(least);
    }
    let mut ends = Vec::new();
    let mut count = atoms.len();
    while count > 0 {
        ends.push(count - 1);
        // Every line begins before it ends, so this comes to 0.
        count = best
            .get(count)
            .map_or(0, |(_, start)| (*start).min(count - 1));
    }
    ends.reverse();
    ends
}

fn line_cost(last: &Atom, filled: f64, ends_text: bool) -> f64 {
    let free = (1.0 - filled).max(0.0);
    let ragged = match ends_text {
        true if filled < SHORT_LAST => RAGGED * (SHORT_LAST - filled) * 0.5,
        true => 0.0,
        false => RAGGED * free * free,
    };
    let ending = match last.ending {
        Ending::Word | Ending::Mandatory => 0.0,
        Ending::Hyphen | Ending::SoftHyphen => HYPHEN,
        Ending::Forced => FORCED,
    };
    LINE + ragged + ending
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::display::Face;
    use crate::text::TextStyle;

    fn fonts() -> Fonts {
        Fonts::shipped().unwrap()
    }

    fn runs(text: &str) -> Vec<Run> {
        vec![Run::new(text, TextStyle::new(Face::Regular, 10.0))]
    }

    fn read(line: &Line) -> String {
        let glyphs = line.pieces.iter().flat_map(|piece| &piece.glyphs);
        glyphs.map(|glyph| glyph.text.as_str()).collect()
    }

    #[test]
    fn lines_hold_all_of_the_text_and_fit() {
        let text = "Spread glue in the dadoes of the left side and slide the shelves in from \
                    the front, 20\u{a0}mm behind the front edge. Größe Ελληνικά и кириллица.";
        let lines = break_paragraph(&fonts(), &runs(text), 150.0);
        assert!(lines.len() > 3, "{}", lines.len());
        assert!(lines.iter().all(|line| line.width <= 150.5));
        let read: Vec<String> = lines.iter().map(read).collect();
        assert_eq!(read.concat(), text);
    }

    #[test]
    fn a_long_word_is_broken_at_graphemes() {
        let text = "e\u{301}x".repeat(5_000);
        let lines = break_paragraph(&fonts(), &runs(&text), 200.0);
        assert!(lines.len() > 100);
        assert!(lines.iter().all(|line| line.width <= 201.0));
        let read: String = lines.iter().map(read).collect();
        assert_eq!(read, text);
        assert!(
            lines
                .iter()
                .all(|line| !self::read(line).starts_with('\u{301}'))
        );
    }

    #[test]
    fn no_width_still_ends() {
        let lines = break_paragraph(&fonts(), &runs("abc de"), 0.0);
        assert_eq!(lines.len(), 5);
        assert!(break_paragraph(&fonts(), &[], 10.0).is_empty());
        assert_eq!(break_paragraph(&fonts(), &runs("\n\n"), 10.0).len(), 2);
    }

    #[test]
    fn soft_hyphens_show_only_where_a_line_ends() {
        let lines = break_paragraph(&fonts(), &runs("Sperr\u{ad}holz"), 30.0);
        assert_eq!(
            lines.iter().map(read).collect::<Vec<_>>(),
            ["Sperr\u{ad}", "holz"]
        );
        let lines = break_paragraph(&fonts(), &runs("Sperr\u{ad}holz"), 300.0);
        assert_eq!(lines.iter().map(read).collect::<Vec<_>>(), ["Sperrholz"]);
    }

    #[test]
    fn pads_and_whole_runs_are_kept() {
        let style = TextStyle::new(Face::Bold, 10.0);
        let mut label = Run::new("A B", style);
        label.whole = true;
        label.pad = 4.0;
        let fonts = fonts();
        let bare = measure(&fonts, &[Run::new("A B", style)]);
        assert!((measure(&fonts, &[label.clone()]) - bare - 8.0).abs() < 1e-9);
        assert_eq!(break_paragraph(&fonts, &[label], bare + 8.0).len(), 1);
    }

    #[test]
    fn least_raggedness_beats_first_fit() {
        let fonts = fonts();
        let runs = runs("aaa bb cc ddddd");
        let style = &runs[0].style;
        let line = width(&fonts, style, "aaa bb") + 1.0;
        let lines = break_paragraph(&fonts, &runs, line);
        let read: Vec<String> = lines.iter().map(read).collect();
        // First fit leaves "cc" alone on a line; the squares prefer an even setting.
        assert_eq!(read, ["aaa ", "bb cc ", "ddddd"]);
    }
}
