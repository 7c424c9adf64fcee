//! Figures and days as a language writes them.

use super::{Filling, Words};

impl Words {
    /// A text whose figures have a decimal point, with the mark of the language: `36.7 kg` is `36,7 kg` in German.
    pub fn figure(&self, text: &str) -> String {
        if self.decimal_mark == '.' {
            return text.to_owned();
        }
        let after = text.chars().skip(1).map(Some).chain([None]);
        let mut before = None;
        let mut written = String::with_capacity(text.len());
        for (one, next) in text.chars().zip(after) {
            let is_digit = |c: Option<char>| c.is_some_and(|c| c.is_ascii_digit());
            let is_mark = one == '.' && is_digit(before) && is_digit(next);
            written.push(if is_mark { self.decimal_mark } else { one });
            before = Some(one);
        }
        written
    }

    /// A day, written year, month, day with hyphens between (ISO 8601), as the language writes it; what is no
    /// day stays as it is.
    pub fn date(&self, day: &str) -> String {
        let mut numbers = day.splitn(3, '-').map(str::parse::<i64>);
        let (Some(Ok(year)), Some(Ok(month)), Some(Ok(number))) =
            (numbers.next(), numbers.next(), numbers.next())
        else {
            return day.to_owned();
        };
        let fillings = [
            // No marks between the thousands of a year.
            ("year", Filling::Words(year.to_string())),
            ("month", Filling::Count(month)),
            ("day", Filling::Count(number)),
        ];
        self.say("date", &fillings)
            .unwrap_or_else(|_| day.to_owned())
    }
}
