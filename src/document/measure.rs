//! Figures as templates print them: both systems, rounded once, marked where rounding shows.

use serde::Serialize;

use crate::units::{Length, Precision};

/// A length ready to print.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub(super) struct Measure {
    /// Millimetres without the unit.
    pub(super) mm: String,
    /// Inches without the unit, with a fraction slash.
    pub(super) inch: String,
    /// The printed millimetres are not exact.
    pub(super) mm_rounded: bool,
    /// The printed inches are not exact.
    pub(super) inch_rounded: bool,
}

impl Measure {
    /// A length at the plan's precision.
    pub(super) fn of(length: Length, precision: Precision) -> Self {
        let printed = length.printed(precision);
        Self {
            mm: printed.mm,
            inch: printed.inch_set,
            mm_rounded: printed.mm_error != Length::ZERO,
            inch_rounded: printed.inch_error != Length::ZERO,
        }
    }

    /// Several lengths at the plan's precision: length, width and thickness of a part.
    pub(super) fn all(lengths: &[Length], precision: Precision) -> Vec<Self> {
        let measures = lengths.iter().map(|length| Self::of(*length, precision));
        measures.collect()
    }
}

/// A time in whole hours and minutes; the words stand in the templates.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub(super) struct Duration {
    /// Whole hours.
    pub(super) hours: i64,
    /// Minutes beside them, a started one counted as a whole.
    pub(super) minutes: i64,
}

impl Duration {
    /// A time of some seconds; none for no time at all.
    pub(super) fn of(seconds: i64) -> Option<Self> {
        let minutes = seconds.saturating_add(59) / 60;
        (minutes > 0).then_some(Self {
            hours: minutes / 60,
            minutes: minutes % 60,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn times_have_hours_and_minutes() {
        let of = |seconds| Duration::of(seconds).map(|time| (time.hours, time.minutes));
        assert_eq!(of(5_400), Some((1, 30)));
        assert_eq!(of(1_800), Some((0, 30)));
        assert_eq!(of(61), Some((0, 2)));
        assert_eq!(of(0), None);
        assert_eq!(of(-5), None);
    }

    #[test]
    fn rounded_figures_are_known_in_both_systems() {
        let metric = Measure::of(Length::from_mm(18), Precision::default());
        assert_eq!((metric.mm.as_str(), metric.mm_rounded), ("18", false));
        assert_eq!(
            (metric.inch.as_str(), metric.inch_rounded),
            ("23\u{2044}32", true)
        );
        let imperial = Measure::of(Length::from_inch(7, 2), Precision::default());
        assert_eq!((imperial.mm.as_str(), imperial.mm_rounded), ("89", true));
        assert_eq!(
            (imperial.inch.as_str(), imperial.inch_rounded),
            ("3\u{202f}1\u{2044}2", false)
        );
    }
}
