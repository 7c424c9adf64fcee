//! Two fasteners meet in the wood.

use crate::build::{Fastener, HardwareKind};
use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;
use crate::source::Span;
use crate::units::Length;

finding_pages! {
    /// Two fasteners of different joints come so near to each other that their holes run into one another: one
    /// driven from the side and one from the front, most often.
    ///
    /// The second bit runs off into the first hole, or the screw stops on the steel of the other.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 100 mm }
    /// part shelf from ply { length 300 mm; width 100 mm }
    /// hardware screw is wood_screw { diameter 4 mm; length 70 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 100 mm }
    /// place wall = shelf { length right; width up; left at left.right; front at low.back; bottom at 60 mm }
    /// join low to left by screws using screw { count 2; inset 40 mm; through left }
    /// join low to wall by screws using screw { count 2; inset 40 mm; through wall }
    /// step "Screw" { add left, low, wall; say "Screw them." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 100 mm }
    /// part shelf from ply { length 300 mm; width 100 mm }
    /// hardware screw is wood_screw { diameter 4 mm; length 70 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 100 mm }
    /// place wall = shelf { length right; width up; left at left.right; front at low.back; bottom at 60 mm }
    /// join low to left by screws using screw { count 2; inset 40 mm; through left }
    /// join low to wall by screws using screw { count 2; inset 80 mm; through wall }
    /// step "Screw" { add left, low, wall; say "Screw them." }
    /// ```
    ///
    /// Source: common practice, no source.
    F007 FASTENERS_COLLIDE Error "fasteners that collide" "the second one does not go in";
}

/// A fastener in its place, as a line with a radius, in millimetres.
struct Rod {
    joint: usize,
    span: Span,
    name: usize,
    ends: [[f64; 3]; 2],
    radius: f64,
}

impl Rod {
    /// Its stretch along an axis, radius included.
    fn reach(&self, axis: usize) -> (f64, f64) {
        let [a, b] = self
            .ends
            .map(|end| end.get(axis).copied().unwrap_or_default());
        (a.min(b) - self.radius, a.max(b) + self.radius)
    }
}

/// Compares fasteners of different joints that come near each other, from left to right.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    let mut rods: Vec<Rod> = Vec::new();
    for (index, joint) in facts.build.joints.iter().enumerate() {
        let fasteners = joint.fasteners.iter();
        rods.extend(fasteners.filter_map(|fastener| rod(facts, index, joint.span, fastener)));
    }
    rods.sort_by(|a, b| a.reach(0).0.total_cmp(&b.reach(0).0));
    let mut open: Vec<&Rod> = Vec::new();
    for rod in &rods {
        let (low, _) = rod.reach(0);
        open.retain(|other| other.reach(0).1 >= low);
        for other in &open {
            if other.joint == rod.joint || !near(rod, other) {
                continue;
            }
            let apart = distance(rod.ends, other.ends);
            let needed = rod.radius + other.radius;
            if apart < needed - TOUCH_MM {
                tell(facts, [other, rod], apart, needed, findings);
            }
        }
        open.push(rod);
    }
}

/// Whether the boxes of two rods meet beside and above.
fn near(a: &Rod, b: &Rod) -> bool {
    [1, 2].into_iter().all(|axis| {
        let ((low, high), (other_low, other_high)) = (a.reach(axis), b.reach(axis));
        low <= other_high && other_low <= high
    })
}

/// What takes room in the wood; none for hinges and the like, which lie between the pieces.
fn rod(facts: &Facts<'_>, joint: usize, span: Span, fastener: &Fastener) -> Option<Rod> {
    let item = facts.build.hardware.get(fastener.hardware.0)?;
    let across = match item.kind {
        HardwareKind::LooseTenon => item.thickness?,
        HardwareKind::Insert => item.pilot.or(item.diameter)?,
        HardwareKind::WoodScrew
        | HardwareKind::PocketScrew
        | HardwareKind::Dowel
        | HardwareKind::Nail
        | HardwareKind::Bolt
        | HardwareKind::ShelfPin
        | HardwareKind::Magnet => item.diameter?,
        HardwareKind::Plug
        | HardwareKind::Spline
        | HardwareKind::Hinge
        | HardwareKind::Runner
        | HardwareKind::EdgeBand
        | HardwareKind::WallFixing
        | HardwareKind::Goods => return None,
    };
    let radius = across.mm() / 2.0;
    Some(Rod {
        joint,
        span,
        name: fastener.hardware.0,
        ends: flat_ended(
            [fastener.from, fastener.to].map(|end| end.map(Length::mm)),
            radius,
        ),
        radius,
    })
}

/// A line so much shorter at both ends that its round ends are where the flat ones were: screws
/// that stand head to head on one line do not meet.
fn flat_ended([from, to]: [[f64; 3]; 2], radius: f64) -> [[f64; 3]; 2] {
    let squares = from.iter().zip(to).map(|(a, b)| (a - b) * (a - b));
    let long = squares.sum::<f64>().sqrt();
    let share = if long > 0.0 {
        (radius / long).min(0.5)
    } else {
        0.0
    };
    let between = |a: [f64; 3], b: [f64; 3]| {
        let mut point = a;
        for (slot, other) in point.iter_mut().zip(b) {
            *slot += (other - *slot) * share;
        }
        point
    };
    [between(from, to), between(to, from)]
}

/// A touch is not a collision.
const TOUCH_MM: f64 = 0.01;

fn tell(
    facts: &Facts<'_>,
    [first, second]: [&Rod; 2],
    apart: f64,
    needed: f64,
    findings: &mut Findings,
) {
    let name = |rod: &Rod| {
        let item = facts.build.hardware.get(rod.name);
        item.map_or("", |item| item.name.as_str())
    };
    let [earlier, later] = if first.joint < second.joint {
        [first, second]
    } else {
        [second, first]
    };
    let message = format!(
        "`{}` runs into `{}` of another joint",
        name(later),
        name(earlier)
    );
    findings.push(
        Finding::new(&FASTENERS_COLLIDE, later.span, message)
            .figure("distance of their axes", Length::from_mm_f64(apart))
            .figure("at least", Length::from_mm_f64(needed))
            .related(earlier.span, "the other joint is here")
            .remedy("give one of the joints another `inset` or `count`"),
    );
}

/// The shortest distance of two stretches of straight lines (Sunday's algorithm of closest
/// approach; any text on computational geometry).
fn distance([p0, p1]: [[f64; 3]; 2], [q0, q1]: [[f64; 3]; 2]) -> f64 {
    let minus = |a: [f64; 3], b: [f64; 3]| {
        let [[ax, ay, az], [bx, by, bz]] = [a, b];
        [ax - bx, ay - by, az - bz]
    };
    let dot = |a: [f64; 3], b: [f64; 3]| a.iter().zip(b).map(|(a, b)| a * b).sum::<f64>();
    let along = |from: [f64; 3], way: [f64; 3], t: f64| {
        let mut point = from;
        for (slot, part) in point.iter_mut().zip(way) {
            *slot += part * t;
        }
        point
    };
    let (u, v, w) = (minus(p1, p0), minus(q1, q0), minus(p0, q0));
    let (a, b, c, d, e) = (dot(u, u), dot(u, v), dot(v, v), dot(u, w), dot(v, w));
    let denominator = a * c - b * b;
    let clamped = |t: f64| t.clamp(0.0, 1.0);
    let mut s = if denominator > 1e-9 {
        clamped((b * e - c * d) / denominator)
    } else {
        0.0
    };
    let t = if c > 1e-9 {
        clamped((b * s + e) / c)
    } else {
        0.0
    };
    if a > 1e-9 {
        s = clamped((b * t - d) / a);
    }
    let between = minus(along(p0, u, s), along(q0, v, t));
    dot(between, between).sqrt()
}

#[cfg(test)]
mod tests {
    use super::distance;

    #[test]
    fn lines_in_the_air_are_measured() {
        let crossing = distance(
            [[0.0, 0.0, 0.0], [10.0, 0.0, 0.0]],
            [[5.0, -5.0, 3.0], [5.0, 5.0, 3.0]],
        );
        assert!((crossing - 3.0).abs() < 1e-9);
        let beside = distance(
            [[0.0, 0.0, 0.0], [10.0, 0.0, 0.0]],
            [[0.0, 4.0, 0.0], [10.0, 4.0, 0.0]],
        );
        assert!((beside - 4.0).abs() < 1e-9);
        let behind = distance(
            [[0.0, 0.0, 0.0], [10.0, 0.0, 0.0]],
            [[13.0, 4.0, 0.0], [20.0, 4.0, 0.0]],
        );
        assert!((behind - 5.0).abs() < 1e-9);
    }
}
