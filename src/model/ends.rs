//! Ends and edges that are not square: mitres, bevels, tapers and tenons.

use super::design::PartFrame;
use super::evaluate::Evaluator;
use super::findings::{NOT_POSITIVE, WORD_OUT_OF_PLACE};
use super::part::{FeatureShape, Slope, SlopeKind, Tenon};
use crate::finding::Finding;
use crate::geometry::{Interval, PartAxis, Side};
use crate::source::Span;
use crate::syntax::tree::{Expr, Name};
use crate::units::Length;

/// Steeper cuts than this, from square, leave a point that no shop can hold: degrees.
const STEEPEST: f64 = 80.0;

impl Evaluator<'_> {
    /// `mitre at head 45 deg long near`, `bevel at head 15 deg long face`
    pub(super) fn angled(
        &self,
        frame: &PartFrame<'_>,
        word: &Name,
        [side, long]: [&Name; 2],
        angle: &Expr,
    ) -> Option<FeatureShape> {
        let degrees = self.slant(angle);
        let (cut, kept) = (self.side(frame, side), self.side(frame, long));
        let (degrees, cut, kept) = (degrees?, cut?, kept?);
        let (kind, fits, remedy) = if word.value == "mitre" {
            let fits = cut.axis() == PartAxis::Length && kept.axis() == PartAxis::Width;
            let remedy = "a mitre is at foot or head, and the part stays long at near or far: \
                          `mitre at head 45 deg long near`";
            (SlopeKind::Mitre, fits, remedy)
        } else {
            let fits = cut.axis() != PartAxis::Thickness && kept.axis() == PartAxis::Thickness;
            let remedy = "a bevel is at an end or an edge, and the part stays long at face or \
                          back: `bevel at head 15 deg long face`";
            (SlopeKind::Bevel, fits, remedy)
        };
        if !fits {
            let message = format!(
                "a {} is not cut at the {} and long at the {}",
                word.value,
                cut.word(),
                kept.word()
            );
            let span = side.span.to(long.span);
            self.tell(Finding::new(&WORD_OUT_OF_PLACE, span, message).remedy(remedy));
            return None;
        }
        let run = frame.along(kept.axis());
        let inset = Length::from_mm_f64(run.mm() * libm::tan(degrees.to_radians()));
        Some(FeatureShape::Slope(slope(
            frame,
            kind,
            [cut, kept.opposite()],
            inset,
            run,
        )))
    }

    /// `taper near by 15 mm at foot over 600 mm`
    pub(super) fn taper(
        &self,
        frame: &PartFrame<'_>,
        [side, at]: [&Name; 2],
        by: &Expr,
        over: Option<&Expr>,
    ) -> Option<FeatureShape> {
        let inset = self.positive_length(by, None, "the taper");
        let (cut, deep) = (self.side(frame, side), self.side(frame, at));
        let (inset, cut, deep) = (inset?, cut?, deep?);
        if cut.axis() == deep.axis() {
            let message = format!(
                "a taper of the {} does not begin at the {}",
                cut.word(),
                deep.word()
            );
            let remedy = "it begins at a side that meets the one it is cut from: \
                          `taper near by 15 mm at foot`";
            let span = side.span.to(at.span);
            self.tell(Finding::new(&WORD_OUT_OF_PLACE, span, message).remedy(remedy));
            return None;
        }
        let run = match over {
            Some(over) => self.positive_length(over, None, "the length of the taper")?,
            None => frame.along(deep.axis()),
        };
        Some(FeatureShape::Slope(slope(
            frame,
            SlopeKind::Taper,
            [cut, deep],
            inset,
            run,
        )))
    }

    /// `tenon at head length 30 mm thickness 12 mm width 60 mm`
    pub(super) fn tenon(
        &self,
        frame: &PartFrame<'_>,
        end: &Name,
        [length, thickness]: [&Expr; 2],
        width: Option<&Expr>,
    ) -> Option<FeatureShape> {
        let side = self.side(frame, end);
        let sizes = [
            self.tenon_size(frame, PartAxis::Length, length),
            self.tenon_size(frame, PartAxis::Thickness, thickness),
            match width {
                Some(width) => self.tenon_size(frame, PartAxis::Width, width),
                None => Some(frame.along(PartAxis::Width)),
            },
        ];
        let side = side?;
        if side.axis() != PartAxis::Length {
            let message = format!("a tenon is not cut at the {}", side.word());
            self.tell(
                Finding::new(&WORD_OUT_OF_PLACE, end.span, message)
                    .remedy("cut it at foot or head"),
            );
            return None;
        }
        let [Some(length), Some(thickness), Some(width)] = sizes else {
            return None;
        };
        let whole = frame.along(PartAxis::Length);
        let middle = |axis: PartAxis, size: Length| {
            let start = (frame.along(axis) - size).half();
            Interval::new(start, start + size)
        };
        Some(FeatureShape::Tenon(Tenon {
            end: side,
            along: if side.is_high() {
                Interval::new(whole - length, whole)
            } else {
                Interval::of(length)
            },
            width: middle(PartAxis::Width, width),
            thickness: middle(PartAxis::Thickness, thickness),
        }))
    }

    /// A size of a tenon, which is no more than the part's.
    fn tenon_size(&self, frame: &PartFrame<'_>, axis: PartAxis, size: &Expr) -> Option<Length> {
        let what = format!("the {} of the tenon", axis.word());
        let value = self.positive_length(size, None, &what)?;
        let whole = frame.along(axis);
        // A tenon takes the whole width, but not the whole length.
        if value < whole || (value == whole && axis != PartAxis::Length) {
            return Some(value);
        }
        let message = format!(
            "{what} is {}, and the part has {} there",
            value.in_both(),
            whole.in_both()
        );
        self.tell(
            Finding::new(&NOT_POSITIVE, size.span, message)
                .figure(what, value)
                .figure(format!("{} of the part", axis.word()), whole)
                .remedy("a tenon is cut within the part's own size: make the part larger"),
        );
        None
    }

    /// An angle from square, in degrees.
    fn slant(&self, angle: &Expr) -> Option<f64> {
        let degrees = self.degrees(angle)?;
        if degrees > 0.0 && degrees <= STEEPEST {
            return Some(degrees);
        }
        self.tell_slant(degrees, angle.span);
        None
    }

    fn tell_slant(&self, degrees: f64, span: Span) {
        let message = format!(
            "the angle is {degrees:.1}\u{b0}, and must be above 0\u{b0} and at most 80\u{b0}"
        );
        self.tell(
            Finding::new(&NOT_POSITIVE, span, message)
                .remedy("count it from a square cut: 45 deg for the corner of a picture frame"),
        );
    }
}

fn slope(
    frame: &PartFrame<'_>,
    kind: SlopeKind,
    [side, deep]: [Side; 2],
    inset: Length,
    run: Length,
) -> Slope {
    let level = |side: Side| {
        if side.is_high() {
            frame.along(side.axis())
        } else {
            Length::ZERO
        }
    };
    Slope {
        kind,
        side,
        level: level(side),
        deep,
        deep_level: level(deep),
        inset,
        run,
    }
}
