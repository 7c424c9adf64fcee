//! A round inset: what is too small in a picture, once more and larger (a detail view of ISO 128-3:
//! the place is ringed by a narrow line, and the enlargement stands with it [M]).

use i_overlay::core::fill_rule::FillRule;
use i_overlay::core::overlay_rule::OverlayRule;
use i_overlay::float::single::SingleFloatOverlay;

use super::compose::{Print, Shot, Studio};
use super::detail::Lens;
use super::fills::VisibleFill;
use super::free_room::FreeRoom;
use super::grid::Bounds;
use super::hidden_lines::VisibleLine;
use super::pens::{NARROW_MM, THIN_MM, line, second_dimension};
use super::picture::{Picture, Sheet, marks};
use crate::display::{Area, Ends, Mark, PT_PER_MM, Path, Spot, Tone};
use crate::text::{Anchor, Fonts, shape_line, text_mark};

/// Radius of an inset, in millimetres.
const RADIUS_MM: f64 = 18.0;
/// Between an inset and what is drawn around it, in millimetres.
const CLEAR_MM: f64 = 2.0;
/// Corners of the ring that fills are cut by.
const CORNERS: u32 = 96;

/// The inset of a figure whose marks are `drawn` so far, with its `references`; none where the step has no small detail.
pub(super) fn inset(
    studio: &Studio<'_>,
    shot: &Shot,
    print: &Print,
    picture: &Picture,
    sheet: &Sheet,
    [drawn, references]: [&[Mark]; 2],
    area: Area,
) -> Vec<Mark> {
    let radius = RADIUS_MM * PT_PER_MM;
    let within = |times: f64| radius / (sheet.scale * times);
    let lens = shot
        .detail
        .as_ref()
        .and_then(|detail| detail.lens(shot, picture, sheet.scale, within));
    let (Some(detail), Some(lens)) = (&shot.detail, lens) else {
        return Vec::new();
    };
    let reach = within(lens.times);
    let scene = detail.close_by(studio, shot, picture, lens.centre, reach);
    let close = clipped(Picture::take(scene, &shot.view), lens.centre, reach);
    if close.lines.is_empty() {
        return Vec::new();
    }
    let place = sheet.spot(lens.centre);
    let room = FreeRoom::of(drawn, references, area, radius + CLEAR_MM * PT_PER_MM);
    let middle = room.nearest(place);
    let scale = sheet.scale * lens.times;
    let [x, y] = lens.centre;
    let own = Sheet {
        scale,
        origin: Spot::new(middle.x - x * scale, middle.y + y * scale),
    };
    let mut found = ring_and_leader(place, reach * sheet.scale, middle, radius);
    found.push(Mark::Fill {
        path: Path::circle(middle, radius),
        tone: Tone::WHITE,
    });
    let staged = |body| shot.staging.inks.get(&body).copied();
    let ink = |body| {
        print
            .ink
            .or(staged(body))
            .unwrap_or(super::picture::Ink::New)
    };
    found.extend(marks(&shot.view, &close, ink, &own));
    found.push(Mark::Stroke {
        path: Path::circle(middle, radius),
        pen: line(NARROW_MM, Tone::BLACK),
    });
    found.extend(enlargement(studio.fonts, lens, middle, radius));
    found
}

/// The ring round the place in the picture, and a line from it to the inset.
fn ring_and_leader(place: Spot, ring: f64, middle: Spot, radius: f64) -> Vec<Mark> {
    let mut found = vec![Mark::Stroke {
        path: Path::circle(place, ring),
        pen: line(NARROW_MM, Tone::BLACK),
    }];
    let (dx, dy) = (middle.x - place.x, middle.y - place.y);
    let length = libm::hypot(dx, dy);
    if length > ring + radius {
        let at = |far: f64| place.shifted(dx / length * far, dy / length * far);
        found.push(Mark::Stroke {
            path: Path::polyline(&[at(ring), at(length - radius)], Ends::Open),
            pen: line(THIN_MM, Tone::BLACK),
        });
    }
    found
}

/// "3×" on the ring of the inset, at its lower right.
fn enlargement(fonts: &Fonts, lens: Lens, middle: Spot, radius: f64) -> Vec<Mark> {
    let style = second_dimension();
    let text = format!("{:.0}\u{d7}", lens.times);
    let width = shape_line(fonts, &style, &text).width;
    let corner = middle.shifted(radius * 0.72, radius * 0.72);
    let box_of = Area {
        x: corner.x - width / 2.0 - 2.0,
        y: corner.y - 6.5,
        width: width + 4.0,
        height: 11.0,
    };
    vec![
        Mark::Fill {
            path: Path::rectangle(box_of),
            tone: Tone::WHITE,
        },
        text_mark(
            fonts,
            &style,
            Anchor::Middle,
            corner.shifted(0.0, 2.0),
            &text,
        ),
    ]
}

/// An outline and the holes in it.
type Rings = Vec<Vec<[f64; 2]>>;

/// How a piece of a fill lies to a circle.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Place {
    Inside,
    Outside,
    /// Its outline may cross the circle, or go round it.
    Across,
}

/// Most pieces are told from the circle by their corners alone.
fn place_in(piece: &Rings, [x, y]: [f64; 2], radius: f64) -> Place {
    let Some(outer) = piece.first() else {
        return Place::Outside;
    };
    let bounds = Bounds::around(outer);
    // The ring that cuts is a polygon in the circle.
    let is_inside = |[px, py]: &[f64; 2]| libm::hypot(px - x, py - y) < radius * 0.999;
    let nearest = [
        x.clamp(bounds.low[0], bounds.high[0]),
        y.clamp(bounds.low[1], bounds.high[1]),
    ];
    if outer.iter().all(is_inside) {
        Place::Inside
    } else if libm::hypot(nearest[0] - x, nearest[1] - y) >= radius {
        Place::Outside
    } else {
        Place::Across
    }
}

/// What of a picture lies in a circle.
fn clipped(picture: Picture, centre: [f64; 2], radius: f64) -> Picture {
    let lines = picture.lines.iter().filter_map(|line| {
        let ends = within(line.ends, centre, radius)?;
        Some(VisibleLine { ends, ..*line })
    });
    let [x, y] = centre;
    let ring: Vec<[f64; 2]> = (0..CORNERS)
        .map(|step| {
            let angle = std::f64::consts::TAU * f64::from(step) / f64::from(CORNERS);
            [x + radius * libm::cos(angle), y + radius * libm::sin(angle)]
        })
        .collect();
    let fills = picture.fills.iter().filter_map(|fill| {
        let pieces: Vec<Rings> = fill
            .pieces
            .iter()
            .flat_map(|piece| match place_in(piece, centre, radius) {
                Place::Inside => vec![piece.clone()],
                Place::Outside => Vec::new(),
                Place::Across => piece.overlay(&ring, OverlayRule::Intersect, FillRule::EvenOdd),
            })
            .collect();
        (!pieces.is_empty()).then_some(VisibleFill { pieces, ..*fill })
    });
    let mut bounds = Bounds::NONE;
    bounds.take(x - radius, y - radius);
    bounds.take(x + radius, y + radius);
    Picture {
        lines: lines.collect(),
        fills: fills.collect(),
        scene: picture.scene,
        bounds,
    }
}

/// The stretch of a line that lies in a circle.
pub(super) fn within(
    [[ax, ay], [bx, by]]: [[f64; 2]; 2],
    [x, y]: [f64; 2],
    radius: f64,
) -> Option<[[f64; 2]; 2]> {
    let (dx, dy) = (bx - ax, by - ay);
    let (fx, fy) = (ax - x, ay - y);
    let a = dx * dx + dy * dy;
    let b = fx * dx + fy * dy;
    let root = b * b - a * (fx * fx + fy * fy - radius * radius);
    if a <= 0.0 || root <= 0.0 {
        return None;
    }
    let root = root.sqrt();
    let (from, to) = (((-b - root) / a).max(0.0), ((-b + root) / a).min(1.0));
    let at = |t: f64| [ax + dx * t, ay + dy * t];
    (from < to).then(|| [at(from), at(to)])
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn pieces_are_told_from_the_circle_by_their_corners() {
        let square = |x: f64, y: f64, half: f64| {
            vec![vec![
                [x - half, y - half],
                [x + half, y - half],
                [x + half, y + half],
                [x - half, y + half],
            ]]
        };
        let place = |piece| place_in(&piece, [0.0, 0.0], 10.0);
        assert_eq!(place(square(2.0, 1.0, 5.0)), Place::Inside);
        assert_eq!(place(square(20.0, 0.0, 5.0)), Place::Outside);
        // Its box reaches into the box of the circle, but not into the circle.
        assert_eq!(place(square(12.5, 12.5, 5.0)), Place::Outside);
        assert_eq!(place(square(7.0, 0.0, 5.0)), Place::Across);
        assert_eq!(place(square(0.0, 0.0, 50.0)), Place::Across);
    }

    #[test]
    fn lines_are_cut_by_the_ring() {
        let cut = |ends| within(ends, [0.0, 0.0], 5.0);
        assert_eq!(
            cut([[-10.0, 3.0], [10.0, 3.0]]),
            Some([[-4.0, 3.0], [4.0, 3.0]])
        );
        assert_eq!(
            cut([[0.0, 0.0], [10.0, 0.0]]),
            Some([[0.0, 0.0], [5.0, 0.0]])
        );
        assert_eq!(cut([[6.0, -9.0], [6.0, 9.0]]), None);
        assert_eq!(cut([[6.0, 0.0], [9.0, 0.0]]), None);
    }
}
