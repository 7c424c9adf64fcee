//! Circles and arcs laid out as chords that always begin at the same angles.
//!
//! A hole and the dowel in it, or an arc and its mirror image, get the same vertices, so that
//! their edges lie on each other in every view.

use std::f64::consts::TAU;

use super::outline::PlanePoint;
use crate::units::Length;

/// The circle a chord belongs to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Circle {
    /// Its centre.
    pub centre: PlanePoint,
    /// Its radius.
    pub radius: Length,
}

/// Chords in a full turn of the smallest circles.
const FEWEST_CHORDS: u32 = 32;
/// Chords in a full turn of the largest circles.
const MOST_CHORDS: u32 = 512;
/// How far a chord may leave its arc before a circle gets more of them, in millimetres.
const SAGITTA_MM: f64 = 0.06;

impl Circle {
    /// The circle of `diameter` about `centre`.
    pub fn of_diameter(centre: PlanePoint, diameter: Length) -> Self {
        Self {
            centre,
            radius: diameter.half(),
        }
    }

    /// How many chords a full turn has: 32, or twice as many until no chord leaves its arc by
    /// more than 0.06 mm.
    pub fn chords(self) -> u32 {
        self.chords_within(FEWEST_CHORDS, SAGITTA_MM)
    }

    /// `fewest` chords, or twice as many until none leaves its arc by more than `sagitta_mm`.
    pub fn chords_within(self, fewest: u32, sagitta_mm: f64) -> u32 {
        let mut chords = fewest;
        while chords < MOST_CHORDS {
            let half_angle = TAU / f64::from(chords) / 2.0;
            if self.radius.mm() * (1.0 - libm::cos(half_angle)) <= sagitta_mm {
                break;
            }
            chords *= 2;
        }
        chords
    }

    /// The point at step `step` of `chords` round the circle, from the first axis to the second.
    pub fn vertex(self, step: u32, chords: u32) -> PlanePoint {
        let angle = TAU * f64::from(step % chords) / f64::from(chords);
        let along = |part: f64| Length::from_mm_f64(self.radius.mm() * part);
        PlanePoint::new(
            self.centre.x + along(libm::cos(angle)),
            self.centre.y + along(libm::sin(angle)),
        )
    }

    /// All vertices of a full turn, counter-clockwise.
    pub fn turn(self) -> Vec<PlanePoint> {
        self.turn_in(self.chords())
    }

    /// The vertices of a full turn in `chords` chords.
    pub fn turn_in(self, chords: u32) -> Vec<PlanePoint> {
        (0..chords).map(|step| self.vertex(step, chords)).collect()
    }

    /// The angle at which the circle's centre sees `point`, from 0 to a full turn.
    fn angle_of(self, point: PlanePoint) -> f64 {
        let angle = libm::atan2(
            (point.y - self.centre.y).mm(),
            (point.x - self.centre.x).mm(),
        );
        if angle < 0.0 { angle + TAU } else { angle }
    }
}

/// An arc given by its ends and a point between them.
#[derive(Clone, Copy, Debug)]
pub struct Arc {
    /// Its circle.
    pub circle: Circle,
    from: PlanePoint,
    to: PlanePoint,
    from_angle: f64,
    /// Signed: positive counter-clockwise.
    sweep: f64,
}

impl Arc {
    /// The arc from `from` through `through` to `to`; none where the three lie on one line.
    pub fn through(from: PlanePoint, through: PlanePoint, to: PlanePoint) -> Option<Self> {
        let (ax, ay) = ((through.x - from.x).mm(), (through.y - from.y).mm());
        let (bx, by) = ((to.x - from.x).mm(), (to.y - from.y).mm());
        let cross = ax * by - ay * bx;
        let (aa, bb) = (ax * ax + ay * ay, bx * bx + by * by);
        if cross.abs() <= 1e-9 * aa.max(bb).max(1e-9) {
            return None;
        }
        let cx = (by * aa - ay * bb) / (2.0 * cross);
        let cy = (ax * bb - bx * aa) / (2.0 * cross);
        let circle = Circle {
            centre: PlanePoint::new(
                from.x + Length::from_mm_f64(cx),
                from.y + Length::from_mm_f64(cy),
            ),
            radius: Length::from_mm_f64(libm::hypot(cx, cy)),
        };
        let from_angle = circle.angle_of(from);
        let turn = circle.angle_of(to) - from_angle;
        let sweep = if cross > 0.0 {
            turn.rem_euclid(TAU)
        } else {
            -(-turn).rem_euclid(TAU)
        };
        Some(Self {
            circle,
            from,
            to,
            from_angle,
            sweep,
        })
    }

    /// The arc's vertices after its beginning, up to and with its end.
    pub fn vertices(&self) -> Vec<PlanePoint> {
        let chords = self.circle.chords();
        let step = TAU / f64::from(chords);
        let mut points = Vec::new();
        let mut last = self.from;
        for turn in 1..=chords {
            // Vertices at whole steps only, so that equal circles agree wherever they begin.
            let k = f64::from(turn);
            let reached = if self.sweep > 0.0 {
                (libm::floor(self.from_angle / step) + k) * step - self.from_angle
            } else {
                (libm::ceil(self.from_angle / step) - k) * step - self.from_angle
            };
            if reached.abs() >= self.sweep.abs() - 1e-3 * step {
                break;
            }
            if reached.abs() < 1e-3 * step {
                continue;
            }
            let angle = self.from_angle + reached;
            let whole = libm::round(angle / step).rem_euclid(f64::from(chords));
            #[expect(
                clippy::cast_possible_truncation,
                clippy::cast_sign_loss,
                reason = "a whole number from 0 up to the number of chords"
            )]
            let point = self.circle.vertex(whole as u32, chords);
            if point != last {
                points.push(point);
                last = point;
            }
        }
        points.push(self.to);
        points
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(x: i64, y: i64) -> PlanePoint {
        PlanePoint::new(Length::from_mm(x), Length::from_mm(y))
    }

    #[test]
    fn three_points_give_the_circle() {
        let arc = Arc::through(at(10, 0), at(0, 10), at(-10, 0)).unwrap();
        assert_eq!(arc.circle.centre, at(0, 0));
        assert_eq!(arc.circle.radius, Length::from_mm(10));
        assert_eq!(arc.vertices().len(), 16);
        assert_eq!(arc.vertices().last(), Some(&at(-10, 0)));
        assert!(Arc::through(at(0, 0), at(5, 5), at(9, 9)).is_none());
    }

    #[test]
    fn arcs_share_the_vertices_of_their_circle() {
        let circle = Circle {
            centre: at(3, 4),
            radius: Length::from_mm(25),
        };
        let turn = circle.turn();
        let backwards = Arc::through(at(28, 4), at(3, -21), at(-22, 4)).unwrap();
        for point in backwards.vertices() {
            assert!(turn.contains(&point), "{point:?}");
        }
    }

    #[test]
    fn large_circles_get_finer_chords() {
        let chords = |mm| {
            Circle {
                centre: at(0, 0),
                radius: Length::from_mm(mm),
            }
            .chords()
        };
        assert_eq!((chords(3), chords(300), chords(9000)), (32, 256, 512));
    }
}
