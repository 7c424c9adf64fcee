//! The few words that pages set themselves, in the language of the document.

/// Words of one language.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Words {
    pub(super) danger: &'static str,
    pub(super) warning: &'static str,
    pub(super) caution: &'static str,
    pub(super) notice: &'static str,
    pub(super) info: &'static str,
    /// "page", "of" around the numbers.
    page: (&'static str, &'static str),
    pub(super) metric_square: &'static str,
    pub(super) inch_square: &'static str,
    pub(super) scale_advice: &'static str,
}

const ENGLISH: Words = Words {
    danger: "DANGER",
    warning: "WARNING",
    caution: "CAUTION",
    notice: "NOTICE",
    info: "GOOD TO KNOW",
    page: ("page", "of"),
    metric_square: "Solid square: 100\u{a0}mm, ticks every 10\u{a0}mm",
    inch_square: "Dashed square: 4\u{a0}in, ticks every 1\u{2044}2\u{a0}in",
    scale_advice: "Lay a rule along both edges from the lower left corner. If the print is not \
                   exact, print again at 100\u{a0}% (“actual size”) and measure no drawing of this print.",
};

const GERMAN: Words = Words {
    danger: "GEFAHR",
    warning: "WARNUNG",
    caution: "VORSICHT",
    notice: "HINWEIS",
    info: "GUT ZU WISSEN",
    page: ("Seite", "von"),
    metric_square: "Durchgezogenes Quadrat: 100\u{a0}mm, Striche alle 10\u{a0}mm",
    inch_square: "Gestricheltes Quadrat: 4\u{a0}in, Striche alle 1\u{2044}2\u{a0}in",
    scale_advice: "Einen Maßstab von der linken unteren Ecke aus an beide Kanten legen. Stimmt der Druck \
                   nicht genau, mit 100\u{a0}% („tatsächliche Größe“) neu drucken und aus diesem \
                   Druck nichts abmessen.",
};

/// The words for a BCP 47 tag; English where there are none.
pub(super) fn words(language: &str) -> Words {
    match language.split(['-', '_']).next() {
        Some(primary) if primary.eq_ignore_ascii_case("de") => GERMAN,
        _ => ENGLISH,
    }
}

impl Words {
    /// "page 3 of 12".
    pub(super) fn page_of(&self, number: usize, count: usize) -> String {
        let (page, of) = self.page;
        format!("{page}\u{a0}{number} {of} {count}")
    }

    /// The word of a class of box.
    pub(super) fn signal(&self, class: &str) -> &'static str {
        match class {
            "danger" => self.danger,
            "warning" => self.warning,
            "caution" => self.caution,
            "notice" => self.notice,
            _ => self.info,
        }
    }
}
