//! A figure as SVG: the same display list that goes to the PDF.
//!
//! A drawing in a file of its own and one in a page are written alike; in a page its marks name their
//! tones as classes, so that a page can set others, and its links stand apart.

use std::collections::BTreeSet;
use std::fmt::Write as _;

use crate::display::{Area, Face, Figure, GlyphRun, Mark, Path, PathPiece, Pen, Spot, Tone};

/// The figure as an SVG document; its size is in points, text stays text.
pub fn svg(figure: &Figure) -> String {
    let inner = svg_in_page(figure);
    let (width, height) = (number(figure.width), number(figure.height));
    let defaults = DEFAULTS.map(|(name, value)| format!("{name}=\"{value}\""));
    let defaults = defaults.join(" ");
    let links: String = inner.links.into_iter().map(|link| link.markup).collect();
    format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"{width}pt\" \
         height=\"{height}pt\" viewBox=\"0 0 {width} {height}\" {defaults}>\n\
         <title>{}</title>\n{}{links}</svg>\n",
        escaped(&figure.alternative),
        inner.marks,
    )
}

/// What holds for all marks of a drawing that do not say otherwise, as attributes and their values.
pub const DEFAULTS: [(&str, &str); 3] = [
    ("stroke-linejoin", "round"),
    ("stroke-linecap", "round"),
    ("font-family", "Noto Sans, sans-serif"),
];

/// What stands inside the `svg` element of a figure.
#[derive(Clone, Debug, Default)]
pub struct SvgInPage {
    /// Its marks.
    pub marks: String,
    /// Areas that lead to places of the document.
    pub links: Vec<SvgLink>,
    /// The tones of its marks, whose [classes](ToneOf::class) the marks have.
    pub tones: BTreeSet<ToneOf>,
}

/// An area of a drawing that leads somewhere.
#[derive(Clone, Debug)]
pub struct SvgLink {
    /// The name of the place.
    pub target: String,
    /// The link with its area.
    pub markup: String,
}

/// A tone of grey, by what is in that tone.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct ToneOf {
    /// What it is the tone of.
    pub thing: Toned,
    /// From 0 for black to 100 for white.
    pub level: u8,
}

/// What has a tone.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Toned {
    /// A line.
    Line,
    /// An area.
    Area,
    /// An area and its edge.
    SealedArea,
    /// Letters.
    Text,
}

impl ToneOf {
    fn of(thing: Toned, tone: Tone) -> Self {
        // Luminance of the colour, were it not grey (ITU-R BT.709).
        let grey = 0.2126 * tone.red + 0.7152 * tone.green + 0.0722 * tone.blue;
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "between 0 and 100"
        )]
        let level = (grey.clamp(0.0, 1.0) * 100.0).round() as u8;
        Self { thing, level }
    }

    /// The class of marks of this tone.
    pub fn class(self) -> String {
        let letter = match self.thing {
            Toned::Line => 'l',
            Toned::Area => 'a',
            Toned::SealedArea => 's',
            Toned::Text => 't',
        };
        format!("{letter}{}", self.level)
    }
}

/// What is inside a figure, for an `svg` element with the [`DEFAULTS`].
pub fn svg_in_page(figure: &Figure) -> SvgInPage {
    let mut inner = SvgInPage::default();
    // Lines of one pen that follow each other are one path.
    let mut line: Option<(&Pen, String)> = None;
    for mark in &figure.marks {
        if let Mark::Stroke { path, pen } = mark {
            match &mut line {
                Some((before, way)) if *before == pen => way.push_str(&data(path)),
                _ => {
                    inner.stroke(line.take());
                    line = Some((pen, data(path)));
                }
            }
            continue;
        }
        if let Mark::Link { area, target } = mark {
            inner.links.push(link(*area, target));
            continue;
        }
        inner.stroke(line.take());
        match mark {
            Mark::Fill { path, tone } => inner.fill(path, *tone),
            Mark::Sealed { path, tone, width } => inner.sealed(path, *tone, *width),
            Mark::Text(run) => inner.text(run),
            Mark::Stroke { .. } | Mark::Link { .. } => {}
        }
    }
    inner.stroke(line);
    inner
}

impl SvgInPage {
    /// The class of a tone, which is noted.
    fn class(&mut self, thing: Toned, tone: Tone) -> String {
        let tone = ToneOf::of(thing, tone);
        self.tones.insert(tone);
        tone.class()
    }

    fn stroke(&mut self, line: Option<(&Pen, String)>) {
        let Some((pen, way)) = line else { return };
        let class = self.class(Toned::Line, pen.tone);
        // Writing to a String does not fail.
        let _ = write!(
            self.marks,
            "<path class=\"{class}\" fill=\"none\" stroke=\"{}\" stroke-width=\"{}\"",
            pen.tone.hex(),
            number(pen.width)
        );
        if !pen.dashes.is_empty() {
            let dashes: Vec<String> = pen.dashes.iter().map(|dash| number(*dash)).collect();
            let _ = write!(
                self.marks,
                " stroke-dasharray=\"{}\" stroke-linecap=\"butt\"",
                dashes.join(" ")
            );
        }
        let _ = writeln!(self.marks, " d=\"{way}\"/>");
    }

    fn fill(&mut self, path: &Path, tone: Tone) {
        let class = self.class(Toned::Area, tone);
        let _ = writeln!(
            self.marks,
            "<path class=\"{class}\" fill=\"{}\" fill-rule=\"evenodd\" d=\"{}\"/>",
            tone.hex(),
            data(path)
        );
    }

    fn sealed(&mut self, path: &Path, tone: Tone, width: f64) {
        let class = self.class(Toned::SealedArea, tone);
        let colour = tone.hex();
        let _ = writeln!(
            self.marks,
            "<path class=\"{class}\" fill=\"{colour}\" fill-rule=\"evenodd\" stroke=\"{colour}\" \
             stroke-width=\"{}\" d=\"{}\"/>",
            number(width),
            data(path)
        );
    }

    fn text(&mut self, run: &GlyphRun) {
        let class = self.class(Toned::Text, run.tone);
        let face = match run.face {
            Face::Regular => "",
            Face::Bold => " font-weight=\"bold\"",
            Face::Italic => " font-style=\"italic\"",
        };
        let _ = write!(
            self.marks,
            "<text class=\"{class}\" y=\"{}\" font-size=\"{}\"{face} fill=\"{}\"",
            number(run.origin.y),
            number(run.size),
            run.tone.hex(),
        );
        let stretches = stretches(run);
        if let [whole] = stretches.as_slice() {
            let _ = writeln!(
                self.marks,
                "{}>{}</text>",
                whole.place(),
                escaped(&whole.text)
            );
            return;
        }
        self.marks.push('>');
        for stretch in &stretches {
            let raised = run.origin.y - stretch.raised;
            let size = match stretch.size {
                size if size < run.size => {
                    format!(" y=\"{}\" font-size=\"{}\"", number(raised), number(size))
                }
                _ => format!(" y=\"{}\"", number(run.origin.y)),
            };
            let _ = write!(
                self.marks,
                "<tspan{}{size}>{}</tspan>",
                stretch.place(),
                escaped(&stretch.text)
            );
        }
        self.marks.push_str("</text>\n");
    }
}

/// Letters that follow each other in one size.
#[derive(Debug, Default, PartialEq)]
struct Stretch {
    text: String,
    x: f64,
    width: f64,
    size: f64,
    /// Above the baseline.
    raised: f64,
}

impl Stretch {
    /// Its place and its width, whatever the font it is shown in.
    fn place(&self) -> String {
        format!(
            " x=\"{}\" textLength=\"{}\" lengthAdjust=\"spacingAndGlyphs\"",
            number(self.x),
            number(self.width)
        )
    }
}

/// Figures of fractions, to those beside them, and how far the upper ones are raised, to the height of
/// letters: as in the shipped fonts, for fonts that set no fractions by themselves.
const FRACTION: (f64, f64) = (0.66, 0.25);

/// A run by the sizes of its letters.
fn stretches(run: &GlyphRun) -> Vec<Stretch> {
    let slashes: Vec<usize> = run
        .glyphs
        .iter()
        .enumerate()
        .filter_map(|(i, glyph)| (glyph.text == "\u{2044}").then_some(i))
        .collect();
    let is_figure = |i: usize| {
        let text = run.glyphs.get(i).map(|glyph| glyph.text.as_str());
        text.is_some_and(|text| text.chars().all(|c| c.is_ascii_digit()))
    };
    // Figures that end before a slash, and those that begin behind one.
    let above = |i: usize| slashes.iter().any(|s| i < *s && (i..*s).all(is_figure));
    let below = |i: usize| {
        slashes
            .iter()
            .any(|s| i > *s && (*s + 1..=i).all(is_figure))
    };
    let mut stretches: Vec<Stretch> = Vec::new();
    let mut x = run.origin.x;
    for (i, glyph) in run.glyphs.iter().enumerate() {
        let (size, raised) = match (above(i), below(i)) {
            (true, _) => (run.size * FRACTION.0, run.size * FRACTION.1),
            (false, true) => (run.size * FRACTION.0, 0.0),
            (false, false) => (run.size, 0.0),
        };
        match stretches.last_mut() {
            Some(last) if (last.size, last.raised) == (size, raised) => {
                last.text.push_str(&glyph.text);
                last.width += glyph.advance;
            }
            _ => stretches.push(Stretch {
                text: glyph.text.clone(),
                x,
                width: glyph.advance,
                size,
                raised,
            }),
        }
        x += glyph.advance;
    }
    stretches
}

/// An area that answers to a click; it is not reached by keys, since what stands in a drawing is told
/// beside it.
fn link(area: Area, target: &str) -> SvgLink {
    let markup = format!(
        "<a href=\"#{}\" tabindex=\"-1\"><rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" \
         fill=\"none\" pointer-events=\"all\"/></a>\n",
        escaped(target),
        number(area.x),
        number(area.y),
        number(area.width),
        number(area.height)
    );
    SvgLink {
        target: target.to_owned(),
        markup,
    }
}

/// The way of a path. From where a ring begins it goes by steps, which are shorter to write than places;
/// steps are between rounded places, so that nothing adds up.
fn data(path: &Path) -> String {
    let mut way = Way::default();
    for piece in &path.pieces {
        match piece {
            PathPiece::Move(to) => way.begin(place(*to)),
            PathPiece::Line(to) => way.line(place(*to)),
            PathPiece::Curve(a, b, to) => {
                let [ax, ay] = way.step(place(*a));
                let [bx, by] = way.step(place(*b));
                let [x, y] = way.step(place(*to));
                way.write('c', &[ax, ay, bx, by, x, y]);
                way.at = place(*to);
            }
            PathPiece::Close => {
                way.data.push('z');
                way.last = 'z';
                way.at = way.start;
            }
        }
    }
    way.data
}

/// A place in hundredths of a point.
fn place(spot: Spot) -> [i64; 2] {
    [spot.x, spot.y].map(hundredths)
}

/// A way that is being written.
#[derive(Default)]
struct Way {
    data: String,
    /// Where its pen is.
    at: [i64; 2],
    /// Where its ring begins.
    start: [i64; 2],
    /// The command written last: it need not be said again.
    last: char,
}

impl Way {
    fn step(&self, to: [i64; 2]) -> [i64; 2] {
        let ([x, y], [from_x, from_y]) = (to, self.at);
        [x - from_x, y - from_y]
    }

    fn begin(&mut self, at: [i64; 2]) {
        self.write('M', &at);
        // What would follow without a command of its own is no other beginning.
        self.last = ' ';
        self.at = at;
        self.start = at;
    }

    fn line(&mut self, to: [i64; 2]) {
        match self.step(to) {
            [x, 0] => self.write('h', &[x]),
            [0, y] => self.write('v', &[y]),
            step => self.write('l', &step),
        }
        self.at = to;
    }

    fn write(&mut self, command: char, figures: &[i64]) {
        let mut apart = command == self.last;
        if !apart {
            self.data.push(command);
            self.last = command;
        }
        for figure in figures {
            // A sign parts figures as well.
            if apart && *figure >= 0 {
                self.data.push(' ');
            }
            self.data.push_str(&in_points(*figure));
            apart = true;
        }
    }
}

/// A number to a hundredth, without needless zeros; zero where it is not finite.
pub fn number(value: f64) -> String {
    in_points(hundredths(value))
}

/// A number in hundredths; zero where it is not finite.
fn hundredths(value: f64) -> i64 {
    if !value.is_finite() {
        return 0;
    }
    #[expect(clippy::cast_possible_truncation, reason = "within a thousand billion")]
    let whole = (value * 100.0).round().clamp(-1e12, 1e12) as i64;
    whole
}

fn in_points(hundredths: i64) -> String {
    let sign = if hundredths < 0 { "-" } else { "" };
    let (whole, rest) = (hundredths.abs() / 100, hundredths.abs() % 100);
    match (rest / 10, rest % 10) {
        (0, 0) => format!("{sign}{whole}"),
        (tenths, 0) => format!("{sign}{whole}.{tenths}"),
        (tenths, last) => format!("{sign}{whole}.{tenths}{last}"),
    }
}

/// Text with the characters that XML gives a meaning to written out, and without those it does not allow.
pub fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for character in text.chars() {
        match character {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            // XML 1.0 allows no other control characters, and not these two of the rest.
            '\u{fffe}' | '\u{ffff}' => {}
            control if control.is_control() && !matches!(control, '\t' | '\n') => {}
            other => out.push(other),
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_figure_becomes_well_formed_xml() {
        let figure = Figure {
            width: 20.0,
            height: 10.0,
            marks: vec![
                Mark::Fill {
                    path: Path::circle(Spot::new(5.0, 5.0), 2.0),
                    tone: Tone::grey(0.5),
                },
                Mark::Stroke {
                    path: Path::polyline(
                        &[Spot::new(0.0, 1.0 / 3.0), Spot::new(f64::NAN, -0.001)],
                        Ends::Open,
                    ),
                    pen: Pen {
                        width: 1.0,
                        tone: Tone::BLACK,
                        dashes: vec![3.0, 1.5],
                    },
                },
            ],
            alternative: "Sides & <shelves>".to_owned(),
            to_scale: false,
        };
        let text = svg(&figure);
        let tree = roxmltree::Document::parse(&text).unwrap();
        let title = tree.descendants().find(|node| node.has_tag_name("title"));
        assert_eq!(title.unwrap().text(), Some("Sides & <shelves>"));
        assert!(text.contains("M0 0.33v-0.33"), "{text}");
        assert!(text.contains("stroke-dasharray=\"3 1.5\""));
        assert!(text.contains("fill=\"#808080\""));
    }

    #[test]
    fn ways_go_by_steps_between_rounded_places() {
        let at = Spot::new;
        let mut path = Path::polyline(
            &[
                at(1.0, 1.0),
                at(1.004, 2.0),
                at(3.0, 2.0),
                at(4.123, 1.5),
                at(5.0, 3.0),
            ],
            Ends::Joined,
        );
        path.pieces.extend([
            PathPiece::Line(at(1.5, 1.5)),
            PathPiece::Move(at(-0.001, 0.25)),
            PathPiece::Curve(at(1.0, 0.25), at(1.0, 1.0), at(0.0, 1.0)),
        ]);
        let expected = "M1 1v1h2l1.12-0.5 0.88 1.5zl0.5 0.5M0 0.25c1 0 1 0.75 0 0.75";
        assert_eq!(data(&path), expected);
        assert_eq!(number(-1234.5), "-1234.5");
        assert_eq!([number(-0.004), number(f64::NAN)], ["0", "0"]);
        // A thousand steps of a third end where they should.
        let spots: Vec<Spot> = (0..1000)
            .map(|i| at(f64::from(i) / 3.0, f64::from(i % 2)))
            .collect();
        let way = data(&Path::polyline(&spots, Ends::Open));
        let steps = way.split_once('l').unwrap().1.replace('-', " -");
        let across = steps.split_whitespace().step_by(2);
        let sum: f64 = across.map(|step| step.parse::<f64>().unwrap()).sum();
        assert!((sum - 333.0).abs() < 1e-6, "{sum}");
    }

    #[test]
    fn fractions_are_small_figures_in_their_places() {
        let glyph = |text: &str, advance: f64| Glyph {
            id: 1,
            advance,
            offset_x: 0.0,
            offset_y: 0.0,
            text: text.to_owned(),
        };
        let run = GlyphRun {
            origin: Spot::new(10.0, 20.0),
            face: Face::Regular,
            size: 10.0,
            tone: Tone::BLACK,
            glyphs: vec![
                glyph("3", 6.0),
                glyph("\u{202f}", 2.0),
                glyph("1", 4.0),
                glyph("\u{2044}", 2.0),
                glyph("1", 4.0),
                glyph("6", 4.0),
                glyph("\"", 3.0),
            ],
        };
        let told = stretches(&run).into_iter();
        let told: Vec<_> = told
            .map(|s| (s.text, s.x, s.width, s.size, s.raised))
            .collect();
        let expected = [
            ("3\u{202f}", 10.0, 8.0, 10.0, 0.0),
            ("1", 18.0, 4.0, 6.6, 2.5),
            ("\u{2044}", 22.0, 2.0, 10.0, 0.0),
            ("16", 24.0, 8.0, 6.6, 0.0),
            ("\"", 32.0, 3.0, 10.0, 0.0),
        ];
        let expected = expected
            .map(|(text, x, width, size, raised)| (text.to_owned(), x, width, size, raised));
        assert_eq!(told.len(), expected.len());
        for (told, expected) in told.iter().zip(&expected) {
            assert_eq!(told.0, expected.0);
            let figures = [
                (told.1, expected.1),
                (told.2, expected.2),
                (told.3, expected.3),
                (told.4, expected.4),
            ];
            assert!(
                figures.iter().all(|(a, b)| (a - b).abs() < 1e-9),
                "{told:?}"
            );
        }
        let figure = Figure {
            width: 50.0,
            height: 30.0,
            marks: vec![Mark::Text(run)],
            alternative: "A size".to_owned(),
            to_scale: false,
        };
        let text = svg(&figure);
        let tree = roxmltree::Document::parse(&text).unwrap();
        let text = tree
            .descendants()
            .find(|node| node.has_tag_name("text"))
            .unwrap();
        let words: String = text
            .descendants()
            .filter(|n| n.is_text())
            .filter_map(|n| n.text())
            .collect();
        assert_eq!(words, "3\u{202f}1\u{2044}16\"");
    }

    use crate::display::{Ends, Glyph};
}
