//! Materials as the author describes them, with their values worked out.

use serde::Serialize;

use crate::source::Span;
use crate::units::{Length, Money};
use crate::wood::Wood;

/// Index of a material in its plan.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(transparent)]
pub struct MaterialId(pub usize);

/// Something parts are cut from.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Material {
    /// The name in the source.
    pub name: String,
    /// The printed name.
    pub title: String,
    /// Its form.
    pub form: MaterialForm,
    /// Pieces it is sold in, as listed.
    pub stock: Vec<StockPiece>,
    /// Width of the saw cut.
    pub kerf: Length,
    /// Cut off every edge of a sheet and both ends of a board before use.
    pub trim: Length,
    /// Whether parts must keep a direction on it.
    pub grain: Grain,
    /// Kilograms in a cubic metre: as stated, or as usual for the species.
    pub density: Option<f64>,
    /// The word of its species or panel, one that [`Wood::by_word`] knows.
    pub species: Option<String>,
    /// How the rings of a board lie.
    pub sawn: Sawn,
    /// How often the saw cuts of a sheet may change between ripping and crosscutting.
    pub stages: Option<u8>,
    /// Boards bought beside those that are laid out, and for how many of them.
    pub defects: Option<(i64, i64)>,
    /// How it is measured and paid, where it is lumber.
    pub lumber: Lumber,
    /// Where it is written.
    #[serde(skip)]
    pub span: Span,
}

impl Material {
    /// What is known of its species or panel.
    pub fn wood(&self) -> Option<Wood> {
        Wood::by_word(self.species.as_deref()?)
    }

    /// True for boards and bars: wood that moves with the damp, unlike a panel.
    pub fn is_solid(&self) -> bool {
        !matches!(self.form, MaterialForm::Sheet { .. })
    }

    /// Thickness of what is bought: of a sheet, of a board; the diameter of a round bar.
    pub fn thickness(&self) -> Length {
        match self.form {
            MaterialForm::Sheet { thickness }
            | MaterialForm::Board { thickness, .. }
            | MaterialForm::Lumber { thickness } => thickness,
            MaterialForm::Round { diameter } => diameter,
        }
    }
}

/// The form a material is sold in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub enum MaterialForm {
    /// A panel.
    Sheet {
        /// Its thickness.
        thickness: Length,
    },
    /// A board or bar of rectangular section.
    Board {
        /// The smaller size of its section.
        thickness: Length,
        /// The larger size of its section.
        width: Length,
    },
    /// Boards of random width, bought by volume or surface.
    Lumber {
        /// Their thickness as sawn, before they are planed.
        thickness: Length,
    },
    /// A round bar or dowel.
    Round {
        /// Its diameter.
        diameter: Length,
    },
}

/// How lumber of random widths is measured and paid.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Lumber {
    /// How much longer and wider than the part a piece is sawn (ref: layout-practice#P17 [P]: 25
    /// to 50 mm and 6 mm).
    pub allowance: [Length; 2],
    /// How much is lost for how much that stays (ref: layout-practice#P18 [P]: 20 to 30 %).
    pub waste: (i64, i64),
    /// Price of one measure.
    pub price: Option<(Money, LumberMeasure)>,
}

impl Default for Lumber {
    fn default() -> Self {
        Self {
            allowance: [Length::from_mm(40), Length::from_mm(6)],
            waste: (3, 10),
            price: None,
        }
    }
}

/// What lumber is paid by.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum LumberMeasure {
    /// The cubic metre.
    CubicMetre,
    /// The square metre of one broad side.
    SquareMetre,
    /// 144 cubic inches as sawn.
    BoardFoot,
}

impl LumberMeasure {
    /// All measures.
    pub const ALL: [Self; 3] = [Self::CubicMetre, Self::SquareMetre, Self::BoardFoot];

    /// The author's word.
    pub const fn word(self) -> &'static str {
        match self {
            Self::CubicMetre => "m3",
            Self::SquareMetre => "m2",
            Self::BoardFoot => "board_foot",
        }
    }
}

/// How the rings of a board lie to its face; decides how much it moves across its width.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
pub enum Sawn {
    /// Along the face: the width moves as the rings' own direction does.
    #[default]
    Flat,
    /// Upright to the face: the width moves less, as from bark to heart.
    Quarter,
}

/// Whether a material has a direction.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub enum Grain {
    /// Along the length of the piece as sold.
    AlongLength,
    /// No direction: parts may turn.
    None,
}

/// A piece as sold or on hand; of lumber, the largest board to be had.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct StockPiece {
    /// Its length.
    pub length: Length,
    /// Its width: of a sheet as sold, of a board its section's.
    pub width: Length,
    /// Price of one.
    pub price: Option<Money>,
    /// How many there are; none where any number can be had.
    pub count: Option<i64>,
    /// An offcut on hand: nothing to buy.
    pub on_hand: bool,
    /// Where it is written.
    #[serde(skip)]
    pub span: Span,
}
