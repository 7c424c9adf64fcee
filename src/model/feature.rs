//! The author's features, line by line, in the part's own frame.

use super::design::PartFrame;
use super::evaluate::Evaluator;
use super::findings::{LACKING, NOT_POSITIVE, WORD_OUT_OF_PLACE};
use super::part::{
    ArrisForm, Feature, FeatureShape, GridPattern, HolePurpose, Holes, Pocket, PocketKind,
};
use crate::finding::Finding;
use crate::geometry::{Contour, ContourPiece, Interval, PartAxis, PlanePoint, Side};
use crate::source::Span;
use crate::syntax::tree::{Expr, HoleGrid, Name, Offset, OutlinePiece, PartLine, PartLineKind};
use crate::units::Length;

/// The most holes one line may drill.
const MOST_HOLES: i64 = 10_000;

impl<'t> Evaluator<'t> {
    /// The feature of a line.
    pub(super) fn feature(&self, frame: &PartFrame<'_>, line: &'t PartLine) -> Option<Feature> {
        let shape = match &line.kind {
            PartLineKind::Holes { .. } => self.holes(frame, line),
            PartLineKind::Channel {
                word,
                side,
                at,
                width,
                depth,
                stopped,
            } => {
                let kind = if word.value == "dado" {
                    PocketKind::Dado
                } else {
                    PocketKind::Groove
                };
                let stopped = stopped.as_ref();
                self.channel(frame, kind, side, at, [width, depth], stopped, line.span)
            }
            PartLineKind::Rabbet {
                side,
                along,
                width,
                depth,
            } => self.rabbet(frame, [side, along], [width, depth], line.span),
            PartLineKind::Notch {
                sides,
                at,
                first,
                second,
            } => self.notch(frame, sides, at.as_ref(), [first, second], line.span),
            PartLineKind::Outline { start, pieces } => self.outline(start, pieces),
            PartLineKind::Edge { word, sides, size } => {
                let ends = self.edge_between(frame, sides);
                let size = self.positive_length(size, None, "the size of the edge");
                let form = if word.value == "chamfer" {
                    ArrisForm::Chamfer
                } else {
                    ArrisForm::Round
                };
                let (first, second) = ends?;
                Some(FeatureShape::Arris {
                    sides: [first, second],
                    size: size?,
                    form,
                })
            }
            PartLineKind::Angled {
                word,
                side,
                angle,
                long,
            } => self.angled(frame, word, [side, long], angle),
            PartLineKind::Taper { side, by, at, over } => {
                self.taper(frame, [side, at], by, over.as_ref())
            }
            PartLineKind::Tenon {
                end,
                length,
                thickness,
                width,
            } => self.tenon(frame, end, [length, thickness], width.as_ref()),
            PartLineKind::Size { .. }
            | PartLineKind::Layers { .. }
            | PartLineKind::Extra(_)
            | PartLineKind::Call { .. }
            | PartLineKind::Note(_)
            | PartLineKind::Band { .. }
            | PartLineKind::Allow(_) => None,
        };
        shape.map(|shape| Feature {
            shape,
            span: line.span,
        })
    }

    fn holes(&self, frame: &PartFrame<'_>, line: &'t PartLine) -> Option<FeatureShape> {
        let PartLineKind::Holes {
            side,
            diameter,
            depth,
            counterbore,
            countersink,
            grid,
            at,
        } = &line.kind
        else {
            return None;
        };
        let side = self.side(frame, side);
        let diameter = self.positive_length(diameter, None, "the diameter");
        let depth = match depth {
            Some(depth) => Some(self.positive_length(depth, None, "the depth")?),
            None => None,
        };
        let counterbore = match counterbore {
            Some((wide, deep)) => Some((
                self.positive_length(wide, None, "the diameter of the counterbore")?,
                self.positive_length(deep, None, "the depth of the counterbore")?,
            )),
            None => None,
        };
        let countersink = match countersink {
            Some(wide) => {
                Some(self.positive_length(wide, None, "the diameter of the countersink")?)
            }
            None => None,
        };
        let side = side?;
        let (references, first) = self.hole_position(frame, side, at, line.span)?;
        let (positions, grid) = match grid {
            None => (vec![first], None),
            Some(grid) => {
                let counted_first = self.side(frame, &at.first()?.from)?;
                let pattern = self.hole_grid(grid, references, first, counted_first, line.span)?;
                (positions_of(&pattern), Some(pattern))
            }
        };
        Some(FeatureShape::Holes(Holes {
            side,
            diameter: diameter?,
            depth,
            counterbore,
            countersink,
            positions,
            grid,
            purpose: HolePurpose::Described,
        }))
    }

    /// The sides that a hole's two distances are taken from, in the order of the side's plane,
    /// and the position they give.
    fn hole_position(
        &self,
        frame: &PartFrame<'_>,
        side: Side,
        at: &[Offset],
        span: Span,
    ) -> Option<([Side; 2], PlanePoint)> {
        let [x_axis, y_axis] = plane_axes(side);
        let mut found: [Option<(Side, Length)>; 2] = [None; 2];
        for offset in at {
            let (from, coordinate) = self.coordinate(frame, offset)?;
            let slot =
                if from.axis() == x_axis {
                    found.first_mut()
                } else if from.axis() == y_axis {
                    found.last_mut()
                } else {
                    let message = format!(
                        "a hole in the {} is not located from the {}",
                        side.word(),
                        from.word()
                    );
                    self.tell(
                        Finding::new(&WORD_OUT_OF_PLACE, offset.from.span, message).remedy(
                            format!("measure its {} and its {}", x_axis.word(), y_axis.word()),
                        ),
                    );
                    return None;
                }?;
            if slot.replace((from, coordinate)).is_some() {
                let what = format!("the distance along the {}", from.axis().word());
                self.tell_twice(&what, at.first()?.from.span, offset.from.span);
                return None;
            }
        }
        if let [Some((first, x)), Some((second, y))] = found {
            return Some(([first, second], PlanePoint::new(x, y)));
        }
        let missing = if found.first()?.is_none() {
            x_axis
        } else {
            y_axis
        };
        let message = format!("where the hole is along the {} is not said", missing.word());
        let remedy = format!(
            "add `… from {}` or `… from {}`",
            missing.low().word(),
            missing.high().word()
        );
        self.tell(Finding::new(&LACKING, span, message).remedy(remedy));
        None
    }

    fn hole_grid(
        &self,
        grid: &HoleGrid,
        references: [Side; 2],
        first: PlanePoint,
        counted_first: Side,
        span: Span,
    ) -> Option<GridPattern> {
        let a = self.count(&grid.first_count, None, 1, "the number of holes");
        let b = self.count(&grid.second_count, None, 1, "the number of holes");
        let a_pitch = self.positive_length(&grid.first_pitch, None, "the pitch");
        let b_pitch = self.positive_length(&grid.second_pitch, None, "the pitch");
        let (a, b, a_pitch, b_pitch) = (a?, b?, a_pitch?, b_pitch?);
        if a * b > MOST_HOLES {
            let message = format!("{} holes in one grid are more than {MOST_HOLES}", a * b);
            self.tell(Finding::new(&NOT_POSITIVE, span, message));
            return None;
        }
        // The author counts in the order of the two distances; the plane has its own order.
        let [x_side, _] = references;
        let in_order = counted_first.axis() == x_side.axis();
        let (counts, pitches) = if in_order {
            ((a, b), (a_pitch, b_pitch))
        } else {
            ((b, a), (b_pitch, a_pitch))
        };
        Some(GridPattern {
            first,
            counts,
            pitches,
            references,
        })
    }

    #[expect(
        clippy::too_many_arguments,
        reason = "one line of the language has these seven parts"
    )]
    fn channel(
        &self,
        frame: &PartFrame<'_>,
        kind: PocketKind,
        side: &Name,
        at: &Offset,
        [width, depth]: [&Expr; 2],
        stopped: Option<&(Expr, Expr)>,
        span: Span,
    ) -> Option<FeatureShape> {
        let side = self.side(frame, side);
        let located = self.coordinate(frame, at);
        let width = self.positive_length(width, None, "the width of the channel");
        let depth = self.positive_length(depth, None, "the depth of the channel");
        let (side, (from, edge), width) = (side?, located?, width?);
        let [x_axis, y_axis] = plane_axes(side);
        let other_edge = if from.is_high() {
            edge - width
        } else {
            edge + width
        };
        let across = Interval::new(edge, other_edge);
        let along_axis = if from.axis() == x_axis {
            y_axis
        } else if from.axis() == y_axis {
            x_axis
        } else {
            let message = format!(
                "a channel in the {} is not located from the {}",
                side.word(),
                from.word()
            );
            self.tell(Finding::new(&WORD_OUT_OF_PLACE, at.from.span, message));
            return None;
        };
        let along = match stopped {
            None => Interval::of(frame.along(along_axis)),
            Some((start, end)) => {
                let start = self.length_from_zero(start, None, "the start of the channel")?;
                let end = self.length_from_zero(end, None, "the end of the channel")?;
                Interval::new(start, end)
            }
        };
        if along.size() == Length::ZERO {
            self.tell(Finding::new(
                &NOT_POSITIVE,
                span,
                "this channel has no length",
            ));
            return None;
        }
        let (first, second) = if along_axis == x_axis {
            (along, across)
        } else {
            (across, along)
        };
        let depth = depth?;
        Some(FeatureShape::Pocket(Pocket {
            kind,
            side,
            first,
            second,
            depth,
            round_ends: false,
        }))
    }

    fn rabbet(
        &self,
        frame: &PartFrame<'_>,
        [side, along]: [&Name; 2],
        [width, depth]: [&Expr; 2],
        span: Span,
    ) -> Option<FeatureShape> {
        let side = self.side(frame, side);
        let edge = self.side(frame, along);
        let width = self.positive_length(width, None, "the width of the rabbet");
        let depth = self.positive_length(depth, None, "the depth of the rabbet");
        let (side, edge, width, depth) = (side?, edge?, width?, depth?);
        if side.axis() == edge.axis() {
            let message = format!("the {} and the {} do not meet", side.word(), edge.word());
            self.tell(Finding::new(&WORD_OUT_OF_PLACE, span, message));
            return None;
        }
        let [x_axis, y_axis] = plane_axes(side);
        let whole = frame.along(edge.axis());
        let across = if edge.is_high() {
            Interval::new(whole - width, whole)
        } else {
            Interval::of(width)
        };
        let (first, second) = if edge.axis() == x_axis {
            (across, Interval::of(frame.along(y_axis)))
        } else {
            (Interval::of(frame.along(x_axis)), across)
        };
        let kind = PocketKind::Rabbet;
        Some(FeatureShape::Pocket(Pocket {
            kind,
            side,
            first,
            second,
            depth,
            round_ends: false,
        }))
    }

    fn notch(
        &self,
        frame: &PartFrame<'_>,
        sides: &[Name],
        at: Option<&Offset>,
        [first, second]: [&Expr; 2],
        span: Span,
    ) -> Option<FeatureShape> {
        let a = self.positive_length(first, None, "the size of the notch");
        let b = self.positive_length(second, None, "the size of the notch");
        let found: Vec<Option<Side>> = sides.iter().map(|word| self.side(frame, word)).collect();
        let found = found.into_iter().collect::<Option<Vec<Side>>>()?;
        let (a, b) = (a?, b?);
        let from_side = |side: Side, size: Length| {
            let whole = frame.along(side.axis());
            if side.is_high() {
                Interval::new(whole - size, whole)
            } else {
                Interval::of(size)
            }
        };
        let flat = found.iter().all(|side| side.axis() != PartAxis::Thickness);
        let (along_length, along_width) = match (found.as_slice(), at) {
            ([one, two], None) if flat && one.axis() != two.axis() => {
                let (end, edge) = if one.axis() == PartAxis::Length {
                    (*one, *two)
                } else {
                    (*two, *one)
                };
                (from_side(end, a), from_side(edge, b))
            }
            ([edge], Some(at)) if flat => {
                let (from, start) = self.coordinate(frame, at)?;
                if from.axis() == edge.axis() || from.axis() == PartAxis::Thickness {
                    self.tell_notch(span);
                    return None;
                }
                let end = if from.is_high() { start - a } else { start + a };
                let along = Interval::new(start, end);
                if edge.axis() == PartAxis::Width {
                    (along, from_side(*edge, b))
                } else {
                    (from_side(*edge, b), along)
                }
            }
            _ => {
                self.tell_notch(span);
                return None;
            }
        };
        Some(FeatureShape::Notch {
            along_length,
            along_width,
        })
    }

    fn tell_notch(&self, span: Span) {
        let message = "a notch is cut at a corner or in an edge";
        self.tell(Finding::new(&WORD_OUT_OF_PLACE, span, message).remedy(
            "write `notch at foot.near 30 mm by 40 mm` or `notch in near at 100 mm from foot 50 mm by 20 mm`",
        ));
    }

    fn outline(&self, start: &'t (Expr, Expr), pieces: &'t [OutlinePiece]) -> Option<FeatureShape> {
        let start = self.outline_point(start)?;
        let mut contour = Contour {
            start,
            pieces: Vec::new(),
        };
        for piece in pieces {
            let to = self.outline_point(&piece.to)?;
            contour.pieces.push(match &piece.through {
                None => ContourPiece::Line { to },
                Some(through) => ContourPiece::Arc {
                    through: self.outline_point(through)?,
                    to,
                },
            });
        }
        let end = contour.pieces.last().map_or(start, |piece| piece.end());
        if end != start {
            contour.pieces.push(ContourPiece::Line { to: start });
        }
        Some(FeatureShape::Outline(contour))
    }

    fn outline_point(&self, point: &'t (Expr, Expr)) -> Option<PlanePoint> {
        let (x, y) = (self.length(&point.0, None), self.length(&point.1, None));
        Some(PlanePoint::new(x?, y?))
    }
}

/// The two axes of the plane of a side, in the order length, width, thickness.
pub fn plane_axes(side: Side) -> [PartAxis; 2] {
    match side.axis() {
        PartAxis::Length => [PartAxis::Width, PartAxis::Thickness],
        PartAxis::Width => [PartAxis::Length, PartAxis::Thickness],
        PartAxis::Thickness => [PartAxis::Length, PartAxis::Width],
    }
}

/// The holes of a grid, row by row from the first.
fn positions_of(pattern: &GridPattern) -> Vec<PlanePoint> {
    let [x_side, y_side] = pattern.references;
    let step = |side: Side, pitch: Length| if side.is_high() { -pitch } else { pitch };
    let (dx, dy) = (
        step(x_side, pattern.pitches.0),
        step(y_side, pattern.pitches.1),
    );
    let columns = 0..pattern.counts.0;
    (0..pattern.counts.1)
        .flat_map(|row| columns.clone().map(move |column| (column, row)))
        .map(|(column, row)| {
            PlanePoint::new(pattern.first.x + dx * column, pattern.first.y + dy * row)
        })
        .collect()
}
