//! Conical mouths: a countersink of 90 degrees in place of the step that layers would make.

use super::measures::Measures;
use super::stack::{Stack, following};
use super::types::{BodyEdge, BodyFace, Joining, Shell, SurfaceId};
use crate::geometry::{BoundaryEdge, Circle, Interval, Shape};
use crate::units::Length;

/// A cone that narrows from the mouth to the bore.
pub(super) struct Cone {
    /// Its circle at the surface.
    pub(super) mouth: Circle,
    /// Its circle at the bottom: the hole's own.
    pub(super) bore: Circle,
    /// How many facets it has.
    pub(super) chords: u32,
    /// From which level to which it reaches.
    pub(super) reach: Interval,
    /// The mouth is at the upper end.
    pub(super) opens_up: bool,
}

/// How deep a cone of 90 degrees is from one diameter to another.
pub(super) fn depth(mouth: Length, bore: Length) -> Length {
    (mouth - bore).half()
}

/// True where a ring is one whole circle.
pub(super) fn is_circle(ring: &[BoundaryEdge], circle: Circle) -> bool {
    // A ring of nothing but chords of one circle goes all the way round.
    ring.iter().all(|edge| edge.circle == Some(circle))
}

impl Cone {
    /// True where a flat shape is the step this cone takes the place of.
    pub(super) fn replaces(&self, shape: &Shape) -> bool {
        matches!(shape.rings.as_slice(), [outer, inner]
            if is_circle(outer, self.mouth) && is_circle(inner, self.bore))
    }

    /// The level of the step that layers make at the bottom of the cone.
    pub(super) fn bottom(&self) -> Length {
        if self.opens_up {
            self.reach.low
        } else {
            self.reach.high
        }
    }

    fn top(&self) -> Length {
        if self.opens_up {
            self.reach.high
        } else {
            self.reach.low
        }
    }

    /// Facets from the mouth to the bore, with their edges and measures.
    pub(super) fn lay(
        &self,
        stack: &Stack,
        surface: SurfaceId,
        shell: &mut Shell,
        measures: &mut Measures,
    ) {
        let chords = self.chords;
        let (outer, inner) = (self.mouth.turn_in(chords), self.bore.turn_in(chords));
        let up = if self.opens_up { 1.0 } else { -1.0 };
        // A facet is a little steeper than the cone, as its chords are nearer to the axis.
        let narrow = libm::cos(std::f64::consts::PI / f64::from(chords));
        let (level, upright) = (
            1.0 / libm::hypot(1.0, narrow),
            narrow / libm::hypot(1.0, narrow),
        );
        let normal = |step: f64| {
            let angle = std::f64::consts::TAU * step / f64::from(chords);
            let mut normal = stack.across([-libm::cos(angle) * level, -libm::sin(angle) * level]);
            for (part, lift) in normal.iter_mut().zip(stack.along(up * upright)) {
                *part += lift;
            }
            normal
        };
        let flat = |step: f64| {
            let angle = std::f64::consts::TAU * step / f64::from(chords);
            stack.across([-libm::cos(angle), -libm::sin(angle)])
        };
        let (outer_next, inner_next) = (following(&outer), following(&inner));
        let [top, bottom] = [(self.mouth, self.top()), (self.bore, self.bottom())]
            .map(|(circle, level)| shell.circle(Some(circle), stack.plane, level));
        let stands = top.zip(bottom).map(|(top, bottom)| [top, bottom]);
        let steps = (0..chords).map(f64::from);
        let sides = outer
            .iter()
            .zip(outer_next)
            .zip(inner.iter().zip(inner_next));
        for (step, ((a, b), (c, d))) in steps.zip(sides) {
            let [a, b] = [*a, b].map(|point| stack.point(point, self.top()));
            let [c, d] = [*c, d].map(|point| stack.point(point, self.bottom()));
            shell.faces.push(BodyFace {
                surface,
                normal: normal(step + 0.5),
                rings: vec![vec![a, b, d, c]],
            });
            shell.edges.push(BodyEdge {
                joining: Joining::Smooth,
                ends: [a, c],
                normals: [normal(step - 0.5), normal(step + 0.5)],
                round: None,
                stands,
            });
            shell.edges.push(BodyEdge {
                joining: Joining::Sharp,
                ends: [c, d],
                normals: [normal(step + 0.5), flat(step + 0.5)],
                round: bottom,
                stands: None,
            });
        }
        let (r, s, height) = (
            self.mouth.radius.mm(),
            self.bore.radius.mm(),
            self.reach.size().mm(),
        );
        let pi = std::f64::consts::PI;
        // The layers took a cylinder and left its wall and the step; a frustum is less.
        let cylinder = pi * r * r * height;
        let frustum = pi * height * (r * r + r * s + s * s) / 3.0;
        let deep = height / 4.0 * (r * r + 2.0 * r * s + 3.0 * s * s) / (r * r + r * s + s * s);
        let below = |depth: f64| {
            let level = self.top().mm() - up * depth;
            stack.middle_of(self.mouth.centre, level)
        };
        measures.add_volume(cylinder, below(height / 2.0));
        measures.add_volume(-frustum, below(deep));
        measures.surface_mm2 += pi * (r + s) * libm::hypot(r - s, height)
            - 2.0 * pi * r * height
            - pi * (r * r - s * s);
    }
}
