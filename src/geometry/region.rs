//! Plane regions on a grid of whole nanometres: cut, joined and measured.
//!
//! Every edge remembers the circle it is a chord of, so that areas are exact where the wood is
//! round and a drawing knows which corners are none.

use i_overlay::core::edge_data::{EdgeDataMerge, OverlayEdgeData};
use i_overlay::core::edge_overlay::{EdgeOverlay, InputEdge};
use i_overlay::core::fill_rule::FillRule;
use i_overlay::core::overlay::ShapeType;
use i_overlay::core::overlay_rule::OverlayRule;
use i_overlay::i_float::int::point::IntPoint;
use i_overlay::segm::boolean::ShapeCountBoolean;
use i_overlay::vector::edge::{SUBJ_LEFT, SUBJ_RIGHT};

use super::circle::{Arc, Circle};
use super::frame::Interval;
use super::outline::{Contour, ContourPiece, PlanePoint};
use crate::units::Length;

/// An edge of a region; the region lies on its left.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BoundaryEdge {
    /// Where it begins.
    pub from: PlanePoint,
    /// Where it ends.
    pub to: PlanePoint,
    /// The circle it is a chord of.
    pub circle: Option<Circle>,
    /// Whose boundary it was before the last operation.
    pub origin: Origin,
}

/// Whose boundary an edge was before an operation.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Origin {
    /// Of the region that was worked on, or of no operation yet.
    Own,
    /// Of what was taken out of it.
    Cut,
}

impl BoundaryEdge {
    /// Its ends in millimetres.
    fn ends_mm(self) -> [f64; 4] {
        [
            self.from.x.mm(),
            self.from.y.mm(),
            self.to.x.mm(),
            self.to.y.mm(),
        ]
    }

    /// The angle its arc turns about its centre, counter-clockwise positive; zero for a line.
    pub fn sweep(self) -> f64 {
        let Some(circle) = self.circle else {
            return 0.0;
        };
        let (ax, ay) = (
            (self.from.x - circle.centre.x).mm(),
            (self.from.y - circle.centre.y).mm(),
        );
        let (bx, by) = (
            (self.to.x - circle.centre.x).mm(),
            (self.to.y - circle.centre.y).mm(),
        );
        libm::atan2(ax * by - ay * bx, ax * bx + ay * by)
    }

    /// Its length in millimetres, along the arc where it is one.
    pub fn length_mm(self) -> f64 {
        match self.circle {
            Some(circle) => circle.radius.mm() * self.sweep().abs(),
            None => {
                let [ax, ay, bx, by] = self.ends_mm();
                libm::hypot(bx - ax, by - ay)
            }
        }
    }

    /// The unit vector square to it that points out of the region.
    pub fn outward(self) -> [f64; 2] {
        let [ax, ay, bx, by] = self.ends_mm();
        let length = libm::hypot(bx - ax, by - ay);
        if length > 0.0 {
            [(by - ay) / length, (ax - bx) / length]
        } else {
            [0.0, 0.0]
        }
    }
}

/// A closed line of edges: counter-clockwise round wood, clockwise round a hole.
pub type Ring = Vec<BoundaryEdge>;

/// A connected piece of a region: its outer ring, then its holes.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Shape {
    /// The outer ring first.
    pub rings: Vec<Ring>,
}

/// A plane region of any number of pieces.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Region {
    /// Its pieces.
    pub shapes: Vec<Shape>,
}

/// What an edge carries through an operation.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Tag(Option<Circle>);

impl OverlayEdgeData for Tag {
    type Store = ();

    fn merge(edges: EdgeDataMerge<ShapeCountBoolean, Self>, _store: &mut ()) -> Self {
        // A line on a chord is a line: the flat of one cut ends the round of the other.
        match (edges.lhs_data.0, edges.rhs_data.0) {
            (Some(a), Some(b)) if a == b => Self(Some(a)),
            (Some(a), Some(_)) => Self(Some(a)),
            (None, _) | (_, None) => Self(None),
        }
    }
}

/// Pieces under this area are the dust of rounding, in square millimetres.
const DUST_MM2: f64 = 0.001;

impl Region {
    /// No region.
    pub const EMPTY: Self = Self { shapes: Vec::new() };

    /// A rectangle.
    pub fn rectangle(x: Interval, y: Interval) -> Self {
        Self::polygon(&[
            PlanePoint::new(x.low, y.low),
            PlanePoint::new(x.high, y.low),
            PlanePoint::new(x.high, y.high),
            PlanePoint::new(x.low, y.high),
        ])
    }

    /// A polygon through points in either sense of turning.
    pub fn polygon(points: &[PlanePoint]) -> Self {
        Self::from_ring(closed_ring(points, None))
    }

    /// A disc.
    pub fn disc(circle: Circle) -> Self {
        Self::disc_in(circle, circle.chords())
    }

    /// A disc whose rim has `chords` chords.
    pub fn disc_in(circle: Circle, chords: u32) -> Self {
        Self::from_ring(closed_ring(&circle.turn_in(chords), Some(circle)))
    }

    /// A rectangle whose shorter sides are half circles, as a router leaves a mortise.
    pub fn slot(x: Interval, y: Interval) -> Self {
        let along_x = x.size() >= y.size();
        let radius = if along_x { y.size() } else { x.size() }.half();
        if along_x && x.size() == y.size() {
            return Self::disc(Circle {
                centre: PlanePoint::new(x.middle(), y.middle()),
                radius,
            });
        }
        let at = PlanePoint::new;
        let (start, pieces) = if along_x {
            let (l, r, m) = (x.low + radius, x.high - radius, y.middle());
            (
                at(l, y.low),
                [
                    line(at(r, y.low)),
                    arc(at(x.high, m), at(r, y.high)),
                    line(at(l, y.high)),
                    arc(at(x.low, m), at(l, y.low)),
                ],
            )
        } else {
            let (b, t, m) = (y.low + radius, y.high - radius, x.middle());
            (
                at(x.high, b),
                [
                    line(at(x.high, t)),
                    arc(at(m, y.high), at(x.low, t)),
                    line(at(x.low, b)),
                    arc(at(m, y.low), at(x.high, b)),
                ],
            )
        };
        Self::contour(&Contour {
            start,
            pieces: pieces.to_vec(),
        })
    }

    /// The inside of a closed outline; arcs become chords that know their circle.
    pub fn contour(contour: &Contour) -> Self {
        Self::from_ring(contour_ring(contour))
    }

    fn from_ring(mut ring: Ring) -> Self {
        if doubled_area(&ring) < 0.0 {
            ring.reverse();
            for edge in &mut ring {
                (edge.from, edge.to) = (edge.to, edge.from);
            }
        }
        if ring.len() < 3 {
            return Self::EMPTY;
        }
        Self {
            shapes: vec![Shape { rings: vec![ring] }],
        }
    }

    /// True where there is nothing.
    pub fn is_empty(&self) -> bool {
        self.shapes.is_empty()
    }

    /// All its edges.
    pub fn edges(&self) -> impl Iterator<Item = BoundaryEdge> + '_ {
        self.rings().flatten().copied()
    }

    /// All its rings.
    pub fn rings(&self) -> impl Iterator<Item = &Ring> + '_ {
        self.shapes.iter().flat_map(|shape| shape.rings.iter())
    }

    /// This without `others`.
    #[must_use]
    pub fn without(&self, others: &[&Self]) -> Self {
        if self.is_empty() || others.iter().all(|other| other.is_empty()) {
            return self.clone();
        }
        operate(self, others, OverlayRule::Difference)
    }

    /// What this and `other` have in common.
    #[must_use]
    pub fn common(&self, other: &Self) -> Self {
        operate(self, &[other], OverlayRule::Intersect)
    }

    /// This and `others` together.
    #[must_use]
    pub fn with(&self, others: &[&Self]) -> Self {
        operate(self, others, OverlayRule::Union)
    }

    /// Its area in square millimetres, arcs counted as arcs.
    pub fn area_mm2(&self) -> f64 {
        self.rings().map(|ring| ring_area_mm2(ring)).sum()
    }

    /// True where a point lies inside of it; on its boundary it may or may not.
    pub fn holds(&self, point: PlanePoint) -> bool {
        let (x, y) = (point.x.mm(), point.y.mm());
        self.edges()
            .filter(|edge| (edge.from.y > point.y) != (edge.to.y > point.y))
            .filter(|edge| {
                let [ax, ay, bx, by] = edge.ends_mm();
                x < ax + (bx - ax) * (y - ay) / (by - ay)
            })
            .count()
            % 2
            == 1
    }

    /// The same region of pieces that are more than dust.
    fn swept(self) -> Self {
        let shapes = self
            .shapes
            .into_iter()
            .filter(|shape| {
                let area: f64 = shape.rings.iter().map(|ring| doubled_area(ring)).sum();
                area.abs() / 2.0 > DUST_MM2
            })
            .collect();
        Self { shapes }
    }
}

fn line(to: PlanePoint) -> ContourPiece {
    ContourPiece::Line { to }
}

fn arc(through: PlanePoint, to: PlanePoint) -> ContourPiece {
    ContourPiece::Arc { through, to }
}

fn edge(from: PlanePoint, to: PlanePoint, circle: Option<Circle>) -> BoundaryEdge {
    BoundaryEdge {
        from,
        to,
        circle,
        origin: Origin::Own,
    }
}

fn closed_ring(points: &[PlanePoint], circle: Option<Circle>) -> Ring {
    let next = points.iter().cycle().skip(1);
    points
        .iter()
        .zip(next)
        .filter(|(a, b)| a != b)
        .map(|(a, b)| edge(*a, *b, circle))
        .collect()
}

/// The edges of a contour, in its own sense of turning.
pub fn contour_ring(contour: &Contour) -> Ring {
    let mut ring = Ring::new();
    let mut at = contour.start;
    for piece in &contour.pieces {
        let laid = match *piece {
            ContourPiece::Line { .. } => None,
            ContourPiece::Arc { through, to } => Arc::through(at, through, to),
        };
        let (points, circle) = match laid {
            Some(arc) => (arc.vertices(), Some(arc.circle)),
            None => (vec![piece.end()], None),
        };
        for point in points {
            if point != at {
                ring.push(edge(at, point, circle));
                at = point;
            }
        }
    }
    if at != contour.start {
        ring.push(edge(at, contour.start, None));
    }
    ring
}

/// Twice the area of a ring of chords in square millimetres, positive counter-clockwise.
pub fn doubled_area(ring: &[BoundaryEdge]) -> f64 {
    let Some(first) = ring.first() else {
        return 0.0;
    };
    let [ox, oy, _, _] = first.ends_mm();
    ring.iter()
        .map(|edge| {
            let [ax, ay, bx, by] = edge.ends_mm();
            (ax - ox) * (by - oy) - (bx - ox) * (ay - oy)
        })
        .sum()
}

/// The signed area of a ring in square millimetres, arcs counted as arcs.
pub fn ring_area_mm2(ring: &[BoundaryEdge]) -> f64 {
    let bulges: f64 = ring
        .iter()
        .filter_map(|edge| {
            let radius = edge.circle?.radius.mm();
            let sweep = edge.sweep();
            Some(radius * radius * (sweep - libm::sin(sweep)) / 2.0)
        })
        .sum();
    doubled_area(ring) / 2.0 + bulges
}

/// The first moments of a ring's area about the two axes in cubic millimetres: the area times
/// where its centre is, arcs counted as arcs.
pub fn ring_moments_mm3(ring: &[BoundaryEdge]) -> [f64; 2] {
    let mut moments = [0.0; 2];
    for edge in ring {
        let [ax, ay, bx, by] = edge.ends_mm();
        let cross = ax * by - ay * bx;
        for (moment, sum) in moments.iter_mut().zip([ax + bx, ay + by]) {
            *moment += sum * cross / 6.0;
        }
        let Some(circle) = edge.circle else { continue };
        // A segment of a circle: (2/3) r³ sin³(θ/2) about the centre, along the middle of its arc.
        let (radius, sweep) = (circle.radius.mm(), edge.sweep());
        let area = radius * radius * (sweep - libm::sin(sweep)) / 2.0;
        let half = libm::sin(sweep / 2.0);
        let arm = 2.0 / 3.0 * radius * radius * radius * half * half * half;
        let centre = [circle.centre.x.mm(), circle.centre.y.mm()];
        let middle = [(ax + bx) / 2.0 - centre[0], (ay + by) / 2.0 - centre[1]];
        let length = libm::hypot(middle[0], middle[1]);
        for ((moment, centre), middle) in moments.iter_mut().zip(centre).zip(middle) {
            let along = if length > 0.0 { middle / length } else { 0.0 };
            *moment += area * centre + arm * along;
        }
    }
    moments
}

fn operate(subject: &Region, clips: &[&Region], rule: OverlayRule) -> Region {
    let count = subject.edges().count();
    let mut overlay: EdgeOverlay<i64, Tag> = EdgeOverlay::new(count * 2);
    overlay.add_edges(subject.edges().map(input), ShapeType::Subject);
    for clip in clips {
        overlay.add_edges(clip.edges().map(input), ShapeType::Clip);
    }
    let shapes = overlay
        .build_vector_shapes(rule, FillRule::NonZero)
        .into_iter()
        .map(|shape| Shape {
            rings: shape
                .into_iter()
                .map(|ring| ring.into_iter().map(output).collect())
                .collect(),
        })
        .collect();
    Region { shapes }.swept()
}

fn input(edge: BoundaryEdge) -> InputEdge<i64, Tag> {
    let at = |point: PlanePoint| IntPoint::new(point.x.nm(), point.y.nm());
    InputEdge {
        a: at(edge.from),
        b: at(edge.to),
        data: Tag(edge.circle),
    }
}

fn output(edge: i_overlay::vector::edge::DataVectorEdge<i64, Tag>) -> BoundaryEdge {
    let at =
        |point: IntPoint<i64>| PlanePoint::new(Length::from_nm(point.x), Length::from_nm(point.y));
    let on_subject = (edge.fill & SUBJ_LEFT != 0) != (edge.fill & SUBJ_RIGHT != 0);
    BoundaryEdge {
        from: at(edge.a),
        to: at(edge.b),
        circle: edge.data.0,
        origin: if on_subject { Origin::Own } else { Origin::Cut },
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::f64::consts::PI;

    fn mm(mm: i64) -> Length {
        Length::from_mm(mm)
    }

    fn span(a: i64, b: i64) -> Interval {
        Interval::new(mm(a), mm(b))
    }

    fn disc(x: i64, y: i64, diameter: i64) -> Region {
        Region::disc(Circle::of_diameter(
            PlanePoint::new(mm(x), mm(y)),
            mm(diameter),
        ))
    }

    #[test]
    fn a_panel_with_holes_has_the_area_of_the_formula() {
        let panel = Region::rectangle(span(0, 600), span(0, 300));
        let holes: Vec<Region> = (0..20)
            .flat_map(|i| (0..10).map(move |j| disc(15 + 30 * i, 15 + 30 * j, 20)))
            .collect();
        let cut = panel.without(&holes.iter().collect::<Vec<_>>());
        assert_eq!(cut.shapes.len(), 1);
        assert_eq!(cut.rings().count(), 201);
        let exact = 600.0 * 300.0 - 200.0 * PI * 100.0;
        // Corners lie on whole nanometres: half of one along every rim is all that may be off.
        let rounding = 200.0 * PI * 20.0 * 0.5e-6;
        assert!((cut.area_mm2() - exact).abs() < rounding);
        assert!(
            cut.edges()
                .all(|e| (e.circle.is_some()) == (e.origin == Origin::Cut))
        );
    }

    #[test]
    fn a_slot_is_a_rectangle_and_a_disc() {
        for slot in [
            Region::slot(span(10, 50), span(5, 15)),
            Region::slot(span(5, 15), span(10, 50)),
        ] {
            assert!((slot.area_mm2() - (30.0 * 10.0 + PI * 25.0)).abs() < 1e-3);
        }
        assert!((Region::slot(span(0, 8), span(0, 8)).area_mm2() - PI * 16.0).abs() < 1e-3);
    }

    #[test]
    fn outlines_turn_either_way() {
        let quarter = |through: PlanePoint, to: PlanePoint, last: PlanePoint, start| Contour {
            start,
            pieces: vec![arc(through, to), line(last), line(start)],
        };
        let (root, r) = (Length::from_mm_f64(100.0 / 2f64.sqrt()), mm(100));
        let (o, x, y) = (
            PlanePoint::default(),
            PlanePoint::new(r, Length::ZERO),
            PlanePoint::new(Length::ZERO, r),
        );
        let through = PlanePoint::new(root, root);
        for contour in [quarter(through, y, o, x), quarter(through, x, o, y)] {
            let area = Region::contour(&contour).area_mm2();
            assert!((area - PI * 2500.0).abs() < 1e-2, "{area}");
        }
    }

    #[test]
    fn dust_is_swept_away() {
        let a = Region::rectangle(span(0, 100), span(0, 100));
        let hair = Interval::new(Length::from_nm(1), mm(100));
        let b = Region::rectangle(hair, span(0, 100));
        assert!(a.without(&[&b]).is_empty());
    }
}
