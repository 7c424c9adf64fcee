//! Item references: a part's letter in a circle beside the view, and a leader to the part.
//!
//! References stand in a column on each side (ISO 6433, ref: units-and-paper, "Item references"
//! [V]); leaders of one column cross neither each other nor those of the other (Bekos et al.
//! 2007, Boundary labeling): anchors are parted between the columns from left to right, and
//! within a column crossing leaders change places until none crosses, each change making them
//! shorter in all. Leaders end in a dot inside of the outline [V].
#![expect(
    clippy::indexing_slicing,
    reason = "rows and columns are counted from the references they come from"
)]

use super::frame::Frame;
use super::pens::{NARROW_MM, THIN_MM, line, quiet_reference, reference};
use crate::build::InstanceId;
use crate::display::{Area, Ends, Mark, PT_PER_MM, Path, Spot, Tone};
use crate::text::{Anchor, Fonts, shape_line, text_mark};

/// A part to be named.
#[derive(Clone, Debug)]
pub(super) struct Reference {
    /// Its letter.
    pub(super) label: String,
    /// How many of it are meant; printed where more than one.
    pub(super) count: usize,
    /// Where the leader ends, on paper.
    pub(super) anchor: Spot,
    /// Whether it comes in or is there already.
    pub(super) rank: Weight,
}

/// How strongly a reference is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Weight {
    /// What the drawing is about.
    Strong,
    /// What it is joined to.
    Quiet,
}

/// How a piece is named: by its part, or with the sub-assembly that it comes in with.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Naming {
    pub(super) weight: Weight,
    /// The sub-assembly that is named in its stead.
    pub(super) whole: Option<InstanceId>,
}

impl Naming {
    /// By its part.
    pub(super) const fn alone(weight: Weight) -> Self {
        Self {
            weight,
            whole: None,
        }
    }
}

/// Radius of a reference's circle, in millimetres.
const RADIUS_MM: f64 = 3.4;
/// From one reference's middle to the next, in millimetres, at the least.
const PITCH_MM: f64 = 9.0;
/// Radius of the dot at the end of a leader, in millimetres.
const DOT_MM: f64 = 0.55;
/// Width of a count beside a reference, in millimetres.
const COUNT_MM: f64 = 7.0;

/// Width that a column of references takes, in millimetres, with room for a count.
pub(super) fn column_mm(frame: &Frame) -> f64 {
    frame.clear_mm + 2.0 * RADIUS_MM + COUNT_MM
}

/// The marks of references beside a view that fills `area`.
pub(super) fn lay_references(
    fonts: &Fonts,
    references: &[Reference],
    area: Area,
    frame: &Frame,
) -> Vec<Mark> {
    let beside = (frame.clear_mm + RADIUS_MM) * PT_PER_MM;
    let mut order: Vec<usize> = (0..references.len()).collect();
    order.sort_by(|a, b| references[*a].anchor.x.total_cmp(&references[*b].anchor.x));
    let middle = area.x + area.width / 2.0;
    let left = order
        .iter()
        .filter(|number| references[**number].anchor.x < middle)
        .count();
    let room = rooms(area);
    let count = order.len();
    // Where both columns together have no room, they run over the view's height alike.
    let (least, most) = (count.saturating_sub(room), room.min(count));
    let left = if least <= most {
        left.clamp(least, most)
    } else {
        count / 2
    };
    // An uneven split is evened out, as far as anchors near the middle allow.
    let left = left.clamp(count / 3, count - count / 3);
    let (first, second) = order.split_at(left);
    let mut marks = Vec::new();
    for (column, x, side) in [
        (first, area.x - beside, Anchor::End),
        (second, area.x + area.width + beside, Anchor::Start),
    ] {
        lay_column(fonts, references, column, x, side, area, &mut marks);
    }
    marks
}

/// How many references fit beside a view.
fn rooms(area: Area) -> usize {
    super::grid::clamped(area.height / (PITCH_MM * PT_PER_MM), 40) + 1
}

fn lay_column(
    fonts: &Fonts,
    references: &[Reference],
    column: &[usize],
    x: f64,
    side: Anchor,
    area: Area,
    marks: &mut Vec<Mark>,
) {
    let anchors: Vec<Spot> = column.iter().map(|n| references[*n].anchor).collect();
    let (heights, who) = seats(&anchors, x, area);
    let mut circles = Vec::new();
    for (y, place) in heights.into_iter().zip(who) {
        let reference = &references[column[place]];
        let centre = Spot::new(x, y);
        leader(centre, reference, marks);
        circle(fonts, centre, reference, side, &mut circles);
    }
    // Circles lie over the leaders of their neighbours, should one pass behind.
    marks.extend(circles);
}

/// Heights of the seats of a column, from the top, and which anchor sits on each.
fn seats(anchors: &[Spot], x: f64, area: Area) -> (Vec<f64>, Vec<usize>) {
    let mut who: Vec<usize> = (0..anchors.len()).collect();
    who.sort_by(|a, b| anchors[*a].y.total_cmp(&anchors[*b].y));
    let wishes: Vec<f64> = who.iter().map(|number| anchors[*number].y).collect();
    let heights = spread(&wishes, PITCH_MM * PT_PER_MM, area.y, area.y + area.height);
    let mut changed = true;
    let mut rounds = 0;
    while changed && rounds < 400 {
        changed = false;
        rounds += 1;
        for i in 0..who.len() {
            for j in i + 1..who.len() {
                let (p, q) = (Spot::new(x, heights[i]), Spot::new(x, heights[j]));
                if cross(p, anchors[who[i]], q, anchors[who[j]]) {
                    who.swap(i, j);
                    changed = true;
                }
            }
        }
    }
    (heights, who)
}

/// Heights near the wished ones, in the same order, at least `pitch` apart, between `top` and
/// `bottom` where there is room: blocks of seats that push each other share the difference.
fn spread(wishes: &[f64], pitch: f64, top: f64, bottom: f64) -> Vec<f64> {
    // Each wish less its place in the row must not fall: the usual pooling of neighbours.
    let mut blocks: Vec<(f64, usize)> = Vec::new();
    for (number, wish) in (0_u32..).zip(wishes) {
        blocks.push((wish - pitch * f64::from(number), 1));
        while let [.., (before, n), (last, m)] = blocks.as_slice() {
            if before <= last {
                break;
            }
            #[expect(clippy::cast_precision_loss, reason = "counts of references")]
            let (weight, other) = (*n as f64, *m as f64);
            let merged = ((before * weight + last * other) / (weight + other), n + m);
            blocks.truncate(blocks.len() - 2);
            blocks.push(merged);
        }
    }
    let last = f64::from(u32::try_from(wishes.len().saturating_sub(1)).unwrap_or(0));
    let (low, high) = (top, (bottom - pitch * last).max(top));
    let mut heights = Vec::with_capacity(wishes.len());
    for (base, count) in blocks {
        let base = base.clamp(low, high);
        for _ in 0..count {
            let number = f64::from(u32::try_from(heights.len()).unwrap_or(0));
            heights.push(base + pitch * number);
        }
    }
    heights
}

/// True where the lines p–a and q–b cross.
fn cross(p: Spot, a: Spot, q: Spot, b: Spot) -> bool {
    let side = |o: Spot, e: Spot, r: Spot| (e.x - o.x) * (r.y - o.y) - (e.y - o.y) * (r.x - o.x);
    side(p, a, q) * side(p, a, b) < 0.0 && side(q, b, p) * side(q, b, a) < 0.0
}

/// The line from a reference to its part.
fn leader(centre: Spot, reference: &Reference, marks: &mut Vec<Mark>) {
    let (dx, dy) = (reference.anchor.x - centre.x, reference.anchor.y - centre.y);
    let length = libm::hypot(dx, dy).max(0.01);
    let rim = RADIUS_MM * PT_PER_MM / length;
    let from = centre.shifted(dx * rim, dy * rim);
    let path = Path::polyline(&[from, reference.anchor], Ends::Open);
    // A white edge keeps the leader apart from the lines of the drawing it runs over.
    marks.push(Mark::Stroke {
        path: path.clone(),
        pen: line(3.2 * THIN_MM, Tone::WHITE),
    });
    marks.push(Mark::Stroke {
        path,
        pen: line(THIN_MM, Tone::BLACK),
    });
    marks.push(Mark::Fill {
        path: Path::circle(reference.anchor, (DOT_MM + 0.2) * PT_PER_MM),
        tone: Tone::WHITE,
    });
    marks.push(Mark::Fill {
        path: Path::circle(reference.anchor, DOT_MM * PT_PER_MM),
        tone: Tone::BLACK,
    });
}

fn circle(fonts: &Fonts, centre: Spot, item: &Reference, side: Anchor, marks: &mut Vec<Mark>) {
    let (style, width, tone) = match item.rank {
        Weight::Strong => (reference(), NARROW_MM * 1.4, Tone::BLACK),
        Weight::Quiet => (quiet_reference(), THIN_MM, Tone::grey(0.3)),
    };
    let shaped = shape_line(fonts, &style, &item.label);
    // Two letters make an oval of the circle.
    let wide = (shaped.width / 2.0 + 1.2 * PT_PER_MM - RADIUS_MM * PT_PER_MM).max(0.0);
    let path = oval(centre, RADIUS_MM * PT_PER_MM, wide);
    marks.push(Mark::Fill {
        path: path.clone(),
        tone: Tone::WHITE,
    });
    marks.push(Mark::Stroke {
        path,
        pen: line(width, tone),
    });
    let rise = fonts.cap_height(style.face) * style.size / 2.0;
    let baseline = centre.shifted(0.0, rise);
    marks.push(text_mark(
        fonts,
        &style,
        Anchor::Middle,
        baseline,
        &item.label,
    ));
    if item.count > 1 {
        let away = RADIUS_MM * PT_PER_MM + wide + 1.2 * PT_PER_MM;
        let away = if side == Anchor::End { -away } else { away };
        let count = format!("\u{d7}{}", item.count);
        let style = quiet_reference().tone(tone);
        marks.push(text_mark(
            fonts,
            &style,
            side,
            baseline.shifted(away, 0.0),
            &count,
        ));
    }
}

/// A circle, drawn out by `wide` to both sides.
fn oval(centre: Spot, radius: f64, wide: f64) -> Path {
    let mut path = Path::circle(centre, radius);
    if wide > 0.0 {
        use crate::display::PathPiece::{Close, Curve, Line, Move};
        let stretch = |spot: Spot| {
            let way = (spot.x - centre.x).signum() * wide;
            spot.shifted(
                if (spot.x - centre.x).abs() < 1e-9 {
                    0.0
                } else {
                    way
                },
                0.0,
            )
        };
        path.pieces = path
            .pieces
            .iter()
            .map(|piece| match *piece {
                Move(to) => Move(stretch(to)),
                Line(to) => Line(stretch(to)),
                Curve(a, b, to) => Curve(stretch(a), stretch(b), stretch(to)),
                Close => Close,
            })
            .collect();
    }
    path
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::drawing::scenes::Dice;

    #[test]
    fn leaders_never_cross() {
        let mut dice = Dice::new(5);
        let mut number = |limit: u64| f64::from(u32::try_from(dice.roll(limit)).unwrap());
        let area = Area {
            x: 60.0,
            y: 0.0,
            width: 360.0,
            height: 280.0,
        };
        for count in 1..14 {
            for x in [10.0, 470.0] {
                let anchors: Vec<Spot> = (0..count)
                    .map(|_| Spot::new(60.0 + number(360), number(280)))
                    .collect();
                let (heights, who) = seats(&anchors, x, area);
                for i in 0..count {
                    assert!(i == 0 || heights[i] - heights[i - 1] > PITCH_MM * PT_PER_MM - 1e-6);
                    for j in 0..i {
                        let (p, q) = (Spot::new(x, heights[i]), Spot::new(x, heights[j]));
                        assert!(!cross(p, anchors[who[i]], q, anchors[who[j]]));
                    }
                }
            }
        }
    }
}
