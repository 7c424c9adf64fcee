//! The one colour of a document, and how well it is read.

/// A colour or tone: red, green, blue from 0 to 1.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tone {
    /// Red.
    pub red: f64,
    /// Green.
    pub green: f64,
    /// Blue.
    pub blue: f64,
}

impl Tone {
    /// Black.
    pub const BLACK: Self = Self::grey(0.0);
    /// White.
    pub const WHITE: Self = Self::grey(1.0);

    /// A grey from 0 (black) to 1 (white).
    pub const fn grey(level: f64) -> Self {
        Self {
            red: level,
            green: level,
            blue: level,
        }
    }
}

/// The colours of a document. All else is black, white and grey.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Colours {
    /// Bars over chapters, and links.
    pub accent: Tone,
}

impl Default for Colours {
    /// A muted green-blue, dark enough to print as a sound grey.
    fn default() -> Self {
        Self {
            accent: Tone {
                red: 0.14,
                green: 0.37,
                blue: 0.40,
            },
        }
    }
}

impl Tone {
    /// Reads `#rrggbb`, each part a number of two hexadecimal digits; none for anything else.
    pub fn from_hex(text: &str) -> Option<Self> {
        let digits = text.strip_prefix('#')?;
        if digits.len() != 6 || !digits.bytes().all(|byte| byte.is_ascii_hexdigit()) {
            return None;
        }
        let part = |at: usize| {
            let pair = digits.get(at..at + 2)?;
            Some(f64::from(u8::from_str_radix(pair, 16).ok()?) / 255.0)
        };
        Some(Self {
            red: part(0)?,
            green: part(2)?,
            blue: part(4)?,
        })
    }

    /// As `#rrggbb`.
    pub fn hex(self) -> String {
        let part = |level: f64| {
            #[expect(
                clippy::cast_possible_truncation,
                clippy::cast_sign_loss,
                reason = "between 0 and 255"
            )]
            let whole = (level.clamp(0.0, 1.0) * 255.0).round() as u8;
            whole
        };
        let [red, green, blue] = [self.red, self.green, self.blue].map(part);
        format!("#{red:02x}{green:02x}{blue:02x}")
    }

    /// How well one is told from another, from 1 (not at all) to 21 (black and white): the contrast
    /// ratio of WCAG 2.2 [from memory].
    pub fn contrast(self, other: Self) -> f64 {
        let (a, b) = (self.luminance(), other.luminance());
        (a.max(b) + 0.05) / (a.min(b) + 0.05)
    }

    /// Relative luminance of a tone of sRGB (WCAG 2.2 [from memory]).
    fn luminance(self) -> f64 {
        let linear = |part: f64| {
            if part <= 0.04045 {
                part / 12.92
            } else {
                libm::pow((part + 0.055) / 1.055, 2.4)
            }
        };
        0.2126 * linear(self.red) + 0.7152 * linear(self.green) + 0.0722 * linear(self.blue)
    }

    /// The same in black or white, whichever is farther from `ground`, mixed in until letters of it are
    /// read there.
    #[must_use]
    pub fn readable_on(self, ground: Self) -> Self {
        let [black, white] = [Self::BLACK, Self::WHITE];
        let far = if ground.contrast(white) >= ground.contrast(black) {
            white
        } else {
            black
        };
        (0..=20)
            .map(|step| self.mixed(far, f64::from(step) / 20.0))
            .find(|mixed| mixed.contrast(ground) >= LETTERS)
            .unwrap_or(far)
    }

    fn mixed(self, other: Self, share: f64) -> Self {
        let mix = |a: f64, b: f64| a + (b - a) * share;
        Self {
            red: mix(self.red, other.red),
            green: mix(self.green, other.green),
            blue: mix(self.blue, other.blue),
        }
    }
}

/// The least contrast of letters with what is behind them (WCAG 2.2, success criterion 1.4.3 [from
/// memory]).
pub const LETTERS: f64 = 4.5;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn contrast_is_that_of_the_guidelines() {
        // Black on white is 21 to 1, the most there is; and #767676 is the lightest grey that is read
        // on white, as is widely published (WCAG 2.2 [from memory]).
        assert!((Tone::BLACK.contrast(Tone::WHITE) - 21.0).abs() < 1e-9);
        let grey = |hex| Tone::from_hex(hex).unwrap().contrast(Tone::WHITE);
        assert!(grey("#767676") >= LETTERS);
        assert!(grey("#777777") < LETTERS);
        assert!(Colours::default().accent.contrast(Tone::WHITE) > LETTERS);
    }

    #[test]
    fn tones_are_written_as_they_are_read() {
        for hex in ["#000000", "#ffffff", "#245e66", "#7a3b12"] {
            assert_eq!(Tone::from_hex(hex).unwrap().hex(), hex);
        }
        for wrong in [
            "", "#fff", "245e66", "#245e6", "#245e667", "#24 e66", "#+45e66", "#ééé",
        ] {
            assert_eq!(Tone::from_hex(wrong), None, "{wrong}");
        }
    }

    #[test]
    fn a_dark_tone_turns_light_on_a_dark_page_and_keeps_its_hue() {
        let page = Tone::from_hex("#191b1c").unwrap();
        let brown = Tone::from_hex("#7a3b12").unwrap();
        let light = brown.readable_on(page);
        assert!(light.contrast(page) >= LETTERS);
        assert!(light.red > light.green && light.green > light.blue);
        assert_eq!(brown.readable_on(Tone::WHITE), brown);
    }
}
