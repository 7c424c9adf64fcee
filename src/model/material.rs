//! Materials as the author describes them, with their values worked out.

use serde::Serialize;

use crate::source::Span;
use crate::units::{Length, Money};

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
    /// Kilograms in a cubic metre.
    pub density: Option<f64>,
    /// Where it is written.
    #[serde(skip)]
    pub span: Span,
}

impl Material {
    /// Thickness of what is bought: of a sheet, of a board; the diameter of a round bar.
    pub fn thickness(&self) -> Length {
        match self.form {
            MaterialForm::Sheet { thickness } | MaterialForm::Board { thickness, .. } => thickness,
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
    /// A round bar or dowel.
    Round {
        /// Its diameter.
        diameter: Length,
    },
}

/// Whether a material has a direction.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub enum Grain {
    /// Along the length of the piece as sold.
    AlongLength,
    /// No direction: parts may turn.
    None,
}

/// A piece as sold.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct StockPiece {
    /// Its length.
    pub length: Length,
    /// Its width: of a sheet as sold, of a board its section's.
    pub width: Length,
    /// Price of one.
    pub price: Option<Money>,
    /// Where it is written.
    #[serde(skip)]
    pub span: Span,
}
