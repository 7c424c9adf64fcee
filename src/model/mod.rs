//! The model: names, kinds and lazily evaluated values.
//!
//! Takes the syntax tree, gives materials, parts and placements with every value worked out.

mod material;
mod part;

pub use material::{Grain, Material, MaterialForm, MaterialId, StockPiece};
pub use part::{
    ArrisForm, Feature, FeatureShape, GridPattern, HolePurpose, Holes, PartDesign, PartId, Pocket,
    PocketKind, PocketScrewHole,
};
