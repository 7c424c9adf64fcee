//! The day a plan was revised, as PDF and XMP write it.

/// A day of the calendar.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Date {
    year: u16,
    month: u8,
    day: u8,
}

impl Date {
    /// Reads YYYY-MM-DD (ISO 8601); none for anything else.
    pub fn parse(text: &str) -> Option<Self> {
        let mut parts = text.split('-');
        let mut part = |digits: usize| {
            parts
                .next()
                .filter(|part| part.len() == digits && part.bytes().all(|b| b.is_ascii_digit()))
        };
        let (year, month, day) = (part(4)?, part(2)?, part(2)?);
        let date = Self {
            year: year.parse().ok()?,
            month: month.parse().ok()?,
            day: day.parse().ok()?,
        };
        let is_day = (1..=12).contains(&date.month) && (1..=31).contains(&date.day);
        (is_day && parts.next().is_none()).then_some(date)
    }

    /// As PDF writes it: noon UTC, which is the same day nearly everywhere.
    pub(super) fn pdf(self) -> String {
        format!("D:{:04}{:02}{:02}120000Z", self.year, self.month, self.day)
    }

    /// As XMP writes it.
    pub(super) fn xmp(self) -> String {
        format!(
            "{:04}-{:02}-{:02}T12:00:00Z",
            self.year, self.month, self.day
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_whole_dates_are_read() {
        let date = Date::parse("2026-03-01").unwrap();
        assert_eq!(date.pdf(), "D:20260301120000Z");
        assert_eq!(date.xmp(), "2026-03-01T12:00:00Z");
        for wrong in [
            "",
            "2026-3-1",
            "2026-13-01",
            "2026-03-01-1",
            "2026-03-00",
            "+026-03-01",
        ] {
            assert_eq!(Date::parse(wrong), None, "{wrong}");
        }
    }
}
