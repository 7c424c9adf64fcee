//! A figure as SVG: the same display list that goes to the PDF.

use std::fmt::Write as _;

use crate::display::{Area, Face, Figure, GlyphRun, Mark, Path, PathPiece, Pen, Spot, Tone};

/// The figure as an SVG document; its size is in points, text stays text.
pub fn svg(figure: &Figure) -> String {
    let mut out = String::new();
    let (width, height) = (number(figure.width), number(figure.height));
    // Writing to a String does not fail.
    let _ = writeln!(
        out,
        "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"{width}pt\" \
         height=\"{height}pt\" viewBox=\"0 0 {width} {height}\" stroke-linejoin=\"round\" \
         stroke-linecap=\"round\">"
    );
    let _ = writeln!(out, "<title>{}</title>", escaped(&figure.alternative));
    for mark in &figure.marks {
        match mark {
            Mark::Stroke { path, pen } => stroke(&mut out, path, pen),
            Mark::Fill { path, tone } => {
                let _ = writeln!(
                    out,
                    "<path d=\"{}\" fill=\"{}\" fill-rule=\"evenodd\"/>",
                    data(path),
                    colour(*tone)
                );
            }
            Mark::Sealed { path, tone, width } => {
                let tone = colour(*tone);
                let _ = writeln!(
                    out,
                    "<path d=\"{}\" fill=\"{tone}\" fill-rule=\"evenodd\" stroke=\"{tone}\" \
                     stroke-width=\"{}\"/>",
                    data(path),
                    number(*width)
                );
            }
            Mark::Text(run) => text(&mut out, run),
            Mark::Link { area, target } => link(&mut out, *area, target),
        }
    }
    out.push_str("</svg>\n");
    out
}

fn stroke(out: &mut String, path: &Path, pen: &Pen) {
    let _ = write!(
        out,
        "<path d=\"{}\" fill=\"none\" stroke=\"{}\" stroke-width=\"{}\"",
        data(path),
        colour(pen.tone),
        number(pen.width)
    );
    if !pen.dashes.is_empty() {
        let dashes: Vec<String> = pen.dashes.iter().map(|dash| number(*dash)).collect();
        let _ = write!(
            out,
            " stroke-dasharray=\"{}\" stroke-linecap=\"butt\"",
            dashes.join(" ")
        );
    }
    out.push_str("/>\n");
}

fn text(out: &mut String, run: &GlyphRun) {
    let words: String = run.glyphs.iter().map(|glyph| glyph.text.as_str()).collect();
    let (weight, slant) = match run.face {
        Face::Regular => ("normal", "normal"),
        Face::Bold => ("bold", "normal"),
        Face::Italic => ("normal", "italic"),
    };
    let width: f64 = run.glyphs.iter().map(|glyph| glyph.advance).sum();
    let _ = writeln!(
        out,
        "<text x=\"{}\" y=\"{}\" font-family=\"Noto Sans, sans-serif\" font-size=\"{}\" \
         font-weight=\"{weight}\" font-style=\"{slant}\" fill=\"{}\" textLength=\"{}\" \
         lengthAdjust=\"spacingAndGlyphs\">{}</text>",
        number(run.origin.x),
        number(run.origin.y),
        number(run.size),
        colour(run.tone),
        number(width),
        escaped(&words)
    );
}

fn link(out: &mut String, area: Area, target: &str) {
    let _ = writeln!(
        out,
        "<a href=\"#{}\"><rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" fill=\"none\" \
         pointer-events=\"all\"/></a>",
        escaped(target),
        number(area.x),
        number(area.y),
        number(area.width),
        number(area.height)
    );
}

fn data(path: &Path) -> String {
    let mut data = String::new();
    let at = |spot: &Spot| format!("{} {}", number(spot.x), number(spot.y));
    for piece in &path.pieces {
        match piece {
            PathPiece::Move(to) => {
                let _ = write!(data, "M{}", at(to));
            }
            PathPiece::Line(to) => {
                let _ = write!(data, "L{}", at(to));
            }
            PathPiece::Curve(a, b, to) => {
                let _ = write!(data, "C{} {} {}", at(a), at(b), at(to));
            }
            PathPiece::Close => data.push('Z'),
        }
    }
    data
}

/// A number to a hundredth, without needless zeros; zero where it is not finite.
fn number(value: f64) -> String {
    if !value.is_finite() {
        return "0".to_owned();
    }
    let text = format!("{value:.2}");
    let short = text.trim_end_matches('0').trim_end_matches('.');
    if short == "-0" {
        "0".to_owned()
    } else {
        short.to_owned()
    }
}

fn colour(tone: Tone) -> String {
    let part = |value: f64| {
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "between 0 and 255"
        )]
        let whole = (value.clamp(0.0, 1.0) * 255.0).round() as u8;
        whole
    };
    format!(
        "#{:02x}{:02x}{:02x}",
        part(tone.red),
        part(tone.green),
        part(tone.blue)
    )
}

/// Text with the characters that XML gives a meaning to written out.
fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for character in text.chars() {
        match character {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            // XML 1.0 allows no other control characters.
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
        assert!(text.contains("M0 0.33L0 0"));
        assert!(text.contains("stroke-dasharray=\"3 1.5\""));
        assert!(text.contains("fill=\"#808080\""));
    }

    use crate::display::Ends;
}
