//! Soft hyphens in long words, where the patterns of a language allow a line to end.

use std::borrow::Cow;

use hypher::{Lang, hyphenate_bounded};
use unicode_segmentation::UnicodeSegmentation;

/// Shorter words stay whole. Common practice, no source.
const SHORTEST_WORD: usize = 9;
/// So many letters stand before a hyphen and after it. Common practice, no source.
const LEAST_LETTERS: usize = 3;

/// The way a language divides its words.
#[derive(Clone, Copy, Debug, Default)]
pub struct Hyphens(Option<Lang>);

impl Hyphens {
    /// Those of a BCP 47 tag; none for a language without patterns, and for none.
    pub fn of(language: &str) -> Self {
        let primary = language.split(['-', '_']).next().unwrap_or_default();
        let code = <[u8; 2]>::try_from(primary.to_ascii_lowercase().as_bytes()).ok();
        Self(code.and_then(Lang::from_iso))
    }

    /// A text with soft hyphens in its long words. A word with anything but letters in it stays as it is: a
    /// label, a figure, or one whose author says where it may be divided.
    pub fn put_into(self, text: &str) -> Cow<'_, str> {
        let Some(language) = self.0 else {
            return Cow::Borrowed(text);
        };
        let is_long = |token: &str| {
            token.chars().count() >= SHORTEST_WORD && token.chars().all(char::is_alphabetic)
        };
        if !text.unicode_words().any(is_long) {
            return Cow::Borrowed(text);
        }
        let mut divided = String::with_capacity(text.len() + text.len() / 4);
        for token in text.split_word_bounds() {
            if !is_long(token) {
                divided.push_str(token);
                continue;
            }
            let syllables = hyphenate_bounded(token, language, LEAST_LETTERS, LEAST_LETTERS);
            for (number, syllable) in syllables.enumerate() {
                if number > 0 {
                    divided.push('\u{ad}');
                }
                divided.push_str(syllable);
            }
        }
        Cow::Owned(divided)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn long_words_are_divided_as_their_language_does() {
        // Duden, "Worttrennung": Sperr-holz-plat-te; the first and the last part are long enough here.
        assert_eq!(
            Hyphens::of("de-AT").put_into("Die Sperrholzplatte"),
            "Die Sperr\u{ad}holz\u{ad}plat\u{ad}te".replace("\u{ad}te", "te")
        );
        let english = Hyphens::of("en").put_into("countersunk");
        assert!(english.contains('\u{ad}'), "{english}");
    }

    #[test]
    fn labels_short_words_and_other_languages_stay_whole() {
        let german = Hyphens::of("de");
        for text in [
            "Leim",
            "M6–M8",
            "side_panel_left",
            "Sperr\u{ad}holz",
            "2440×1220mm",
        ] {
            assert_eq!(german.put_into(text), text);
        }
        assert_eq!(
            Hyphens::of("xx").put_into("Sperrholzplatte"),
            "Sperrholzplatte"
        );
        assert_eq!(
            Hyphens::default().put_into("Sperrholzplatte"),
            "Sperrholzplatte"
        );
    }
}
