//! From where a step is seen best.
//!
//! The reader should see what comes in and where it goes (Agrawala et al. 2003, Designing
//! Effective Step-by-Step Assembly Instructions): of the isometric views the one that shows the
//! most of both, with a liking for the front and for the view of the step before.
#![expect(clippy::indexing_slicing, reason = "axes are 0, 1 and 2")]

use super::contacts::{Box3, TOUCHING};
use super::view::View;

/// The isometric views, the usual ones first, with how much each is liked.
const VIEWS: [([i64; 3], f64); 8] = [
    ([1, -1, 1], 1.0),
    ([-1, -1, 1], 0.93),
    ([1, 1, 1], 0.72),
    ([-1, 1, 1], 0.70),
    ([1, -1, -1], 0.55),
    ([-1, -1, -1], 0.52),
    ([1, 1, -1], 0.40),
    ([-1, 1, -1], 0.38),
];

/// How much more the view of the step before is liked.
const STEADY: f64 = 1.15;
/// Points along each side of a face that are looked at.
const SAMPLES: u8 = 4;

/// What a view should show.
pub(super) struct Subject {
    /// What comes in, where it is drawn.
    pub(super) new: Vec<Box3>,
    /// What is there.
    pub(super) built: Vec<Box3>,
    /// Where both will touch, in place.
    pub(super) places: Vec<Box3>,
}

/// The direction towards the eye that shows a subject best.
pub(super) fn best_direction(subject: &Subject, before: Option<[i64; 3]>) -> [i64; 3] {
    let mut best = (f64::NEG_INFINITY, View::ISOMETRIC);
    for (direction, liking) in VIEWS {
        let steady = if before == Some(direction) {
            STEADY
        } else {
            1.0
        };
        let score = shown(subject, direction) * liking * steady;
        if score > best.0 * (1.0 + 1e-9) || best.0 == f64::NEG_INFINITY {
            best = (score, direction);
        }
    }
    best.1
}

/// The area a view shows of one piece that comes in, in square micrometres, by samples of its box.
pub(super) fn piece_shown(subject: &Subject, own: usize, direction: [i64; 3]) -> f64 {
    #[expect(clippy::cast_precision_loss, reason = "parts are 1 or -1")]
    let eye = direction.map(|part| part as f64);
    let others = || {
        let news = subject.new.iter().enumerate();
        news.filter(|(number, _)| *number != own)
            .map(|(_, other)| other)
            .chain(&subject.built)
    };
    let faces = |piece: &Box3| -> f64 {
        (0..3)
            .map(|axis| face_shown(piece, axis, eye, others))
            .sum()
    };
    subject.new.get(own).map_or(0.0, faces)
}

/// The area a view shows of what comes in and of where it goes, in square micrometres.
fn shown(subject: &Subject, direction: [i64; 3]) -> f64 {
    #[expect(clippy::cast_precision_loss, reason = "parts are 1 or -1")]
    let eye = direction.map(|part| part as f64);
    let mut area: f64 = (0..subject.new.len())
        .map(|number| piece_shown(subject, number, direction))
        .sum();
    for place in &subject.places {
        // A place is seen from the side it faces; it counts half as much as what comes in.
        for axis in 0..3 {
            if place.size(axis) <= TOUCHING {
                area += 0.5 * face_shown(place, axis, eye, || subject.built.iter());
            }
        }
    }
    area
}

/// How much of the face of a box across `axis` that looks at the eye is seen.
fn face_shown<'b, I: Iterator<Item = &'b Box3>>(
    own: &Box3,
    axis: usize,
    eye: [f64; 3],
    others: impl Fn() -> I,
) -> f64 {
    let (i, j) = ((axis + 1) % 3, (axis + 2) % 3);
    let area = own.size(i) * own.size(j);
    let level = if eye[axis] > 0.0 {
        own.high[axis] + 1.0
    } else {
        own.low[axis] - 1.0
    };
    let mut free = 0.0;
    for u in 0..SAMPLES {
        for v in 0..SAMPLES {
            let part = |k: u8| (f64::from(k) + 0.5) / f64::from(SAMPLES);
            let mut point = [level; 3];
            point[i] = own.low[i] + own.size(i) * part(u);
            point[j] = own.low[j] + own.size(j) * part(v);
            if !others().any(|other| hides(other, point, eye)) {
                free += 1.0;
            }
        }
    }
    area * free / f64::from(SAMPLES * SAMPLES)
}

/// True where a box lies between a point and the eye.
fn hides(other: &Box3, point: [f64; 3], eye: [f64; 3]) -> bool {
    let (mut enter, mut leave) = (0.0_f64, f64::INFINITY);
    for axis in 0..3 {
        let (a, b) = (
            (other.low[axis] - point[axis]) / eye[axis],
            (other.high[axis] - point[axis]) / eye[axis],
        );
        enter = enter.max(a.min(b));
        leave = leave.min(a.max(b));
    }
    leave > enter + 1.0
}
