//! Pages a plan is set on: paper that people print on, and pages in the shape of a screen.

use serde::Serialize;

use crate::units::Length;

/// The pages of a plan.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
pub enum Paper {
    /// 210 by 297 mm (ISO 216; ref: units-and-paper, "Paper" [V]).
    #[default]
    A4,
    /// 8-1/2 by 11 in, ANSI A (ANSI/ASME Y14.1; ref: units-and-paper, "Paper" [M]).
    Letter,
    /// 297 by 420 mm (ISO 216; ref: units-and-paper, "Paper" [V]): a plan for the wall.
    A3,
    /// 11 by 17 in, ANSI B (ANSI/ASME Y14.1; ref: units-and-paper, "Paper" [M]).
    Tabloid,
    /// 90 by 180 mm, for reading on a phone held upright.
    ///
    /// Screens of phones are 65 to 72 mm wide and a good two times as high, so that a page as
    /// wide as the screen is shown at about three quarters of its size and leaves room for the
    /// reader's bars. Body text of 10 points then has capitals of 2 mm, which from 300 mm are seen
    /// under 22 minutes of arc, and the smallest lettering of 7 points has 1.4 mm and nearly 16:
    /// 20 to 22 are good to read and 16 are the least (ISO 9241-303, from memory).
    Phone,
    /// 165 by 220 mm, for reading on a tablet held upright.
    ///
    /// Screens of 10 to 11 in are 150 to 165 mm wide and, in their long-lived shape of 3 to 4,
    /// 200 to 220 mm high. A page is shown at nearly its own size and read from 400 mm: capitals
    /// of body text are seen under 20 minutes of arc, those of remarks, of 8 points, under 16.
    Tablet,
}

/// Free edges of a page; how far down the text begins is a matter of the running head.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Margins {
    /// Left: sheets are bound or filed there.
    pub left: Length,
    /// Right.
    pub right: Length,
    /// Below the text.
    pub bottom: Length,
}

impl Paper {
    /// All, in the order they are offered.
    pub const ALL: [Self; 6] = [
        Self::A4,
        Self::Letter,
        Self::A3,
        Self::Tabloid,
        Self::Phone,
        Self::Tablet,
    ];

    /// Width and height, upright.
    pub const fn size(self) -> (Length, Length) {
        match self {
            Self::A4 => (Length::from_mm(210), Length::from_mm(297)),
            Self::Letter => (Length::from_inch(17, 2), Length::from_inch(11, 1)),
            Self::A3 => (Length::from_mm(297), Length::from_mm(420)),
            Self::Tabloid => (Length::from_inch(11, 1), Length::from_inch(17, 1)),
            Self::Phone => (Length::from_mm(90), Length::from_mm(180)),
            Self::Tablet => (Length::from_mm(165), Length::from_mm(220)),
        }
    }

    /// The margins: on paper the left one takes the holes of a file, whose middles are 12 mm from
    /// the edge (ISO 838; ref: units-and-paper#R03 [M]); nobody punches a screen.
    pub const fn margins(self) -> Margins {
        let (left, others) = match self {
            Self::A4 | Self::Letter | Self::A3 | Self::Tabloid => (20, 15),
            Self::Phone => (5, 5),
            Self::Tablet => (8, 8),
        };
        Margins {
            left: Length::from_mm(left),
            right: Length::from_mm(others),
            bottom: Length::from_mm(others),
        }
    }

    /// Read on a screen, where nothing is true to scale.
    pub const fn is_screen(self) -> bool {
        match self {
            Self::A4 | Self::Letter | Self::A3 | Self::Tabloid => false,
            Self::Phone | Self::Tablet => true,
        }
    }

    /// The author's word.
    pub const fn word(self) -> &'static str {
        match self {
            Self::A4 => "A4",
            Self::Letter => "Letter",
            Self::A3 => "A3",
            Self::Tabloid => "Tabloid",
            Self::Phone => "phone",
            Self::Tablet => "tablet",
        }
    }
}

/// A single sheet that a full-size template goes on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
pub enum Sheet {
    /// 210 by 297 mm (ISO 216; ref: units-and-paper, "Paper" [V], as are the others).
    A4,
    /// 8-1/2 by 11 in, ANSI A (ANSI/ASME Y14.1; ref: units-and-paper, "Paper" [M], as are the
    /// others).
    Letter,
    /// 297 by 420 mm.
    A3,
    /// 11 by 17 in, ANSI B.
    Tabloid,
    /// 420 by 594 mm.
    A2,
    /// 17 by 22 in.
    AnsiC,
    /// 594 by 841 mm.
    A1,
    /// 22 by 34 in.
    AnsiD,
    /// 841 by 1189 mm.
    A0,
    /// 34 by 44 in.
    AnsiE,
}

impl Sheet {
    /// All, the smaller before the larger.
    pub const ALL: [Self; 10] = [
        Self::A4,
        Self::Letter,
        Self::A3,
        Self::Tabloid,
        Self::A2,
        Self::AnsiC,
        Self::A1,
        Self::AnsiD,
        Self::A0,
        Self::AnsiE,
    ];

    /// Width and height, upright.
    pub const fn size(self) -> (Length, Length) {
        let (width, height) = match self {
            Self::A4 => return Paper::A4.size(),
            Self::Letter => return Paper::Letter.size(),
            Self::A3 => return Paper::A3.size(),
            Self::Tabloid => return Paper::Tabloid.size(),
            Self::A2 => (Length::from_mm(420), Length::from_mm(594)),
            Self::AnsiC => (Length::from_inch(17, 1), Length::from_inch(22, 1)),
            Self::A1 => (Length::from_mm(594), Length::from_mm(841)),
            Self::AnsiD => (Length::from_inch(22, 1), Length::from_inch(34, 1)),
            Self::A0 => (Length::from_mm(841), Length::from_mm(1189)),
            Self::AnsiE => (Length::from_inch(34, 1), Length::from_inch(44, 1)),
        };
        (width, height)
    }

    /// The author's word.
    pub const fn word(self) -> &'static str {
        match self {
            Self::A4 => "A4",
            Self::Letter => "Letter",
            Self::A3 => "A3",
            Self::Tabloid => "Tabloid",
            Self::A2 => "A2",
            Self::AnsiC => "ANSI_C",
            Self::A1 => "A1",
            Self::AnsiD => "ANSI_D",
            Self::A0 => "A0",
            Self::AnsiE => "ANSI_E",
        }
    }

    /// True for a size of ISO 216.
    pub const fn is_metric(self) -> bool {
        match self {
            Self::A4 | Self::A3 | Self::A2 | Self::A1 | Self::A0 => true,
            Self::Letter | Self::Tabloid | Self::AnsiC | Self::AnsiD | Self::AnsiE => false,
        }
    }

    /// What it is called in print.
    pub const fn title(self) -> &'static str {
        match self {
            Self::AnsiC => "ANSI C",
            Self::AnsiD => "ANSI D",
            Self::AnsiE => "ANSI E",
            Self::A4 | Self::Letter | Self::A3 | Self::Tabloid | Self::A2 | Self::A1 | Self::A0 => {
                self.word()
            }
        }
    }

    /// The sheets that a template in a plan on this paper is put together of: of the plan's own
    /// paper; beside a plan for a screen, of what the author's unit system goes with.
    pub const fn of_tiles(paper: Paper, metric_first: bool) -> Self {
        match paper {
            Paper::A4 => Self::A4,
            Paper::Letter => Self::Letter,
            Paper::A3 => Self::A3,
            Paper::Tabloid => Self::Tabloid,
            Paper::Phone | Paper::Tablet => {
                if metric_first {
                    Self::A4
                } else {
                    Self::Letter
                }
            }
        }
    }
}
