//! The model: names, kinds and lazily evaluated values.
//!
//! Takes a plan's tree with those of its libraries and the values to use in place of the author's, gives a [`Model`]:
//! materials, parts, placements, joints, hardware and steps with every value worked out, in any
//! order of declaration. What could not be worked out is left out of the model and told once.
//!
//! It knows nothing of contacts, of what joints cut, or of steps' order: that is the build.

mod choices;
mod describe;
mod design;
mod ends;
mod evaluate;
mod feature;
mod fields;
pub mod findings;
mod grid;
mod groups;
mod hardware;
mod head;
mod join;
mod kinds;
mod libraries;
mod locate;
mod material;
mod material_lines;
mod names;
mod overrides;
mod paper;
mod part;
mod place;
mod require;
mod resolve;
mod scopes;
mod sizes;
mod step;
mod step_lines;
mod supply;
mod template;
mod uses;
mod value;
mod wording;

use crate::finding::Outcome;
use crate::source::Spanned;
use crate::syntax::Forest;
use crate::syntax::tree::Expr;
use crate::units::Quantity;

pub use choices::{PlanChoice, PlanOption};
pub use feature::plane_axes;
pub use grid::ProofTriangle;
pub use groups::{Group, GroupId, Instance, InstanceId};
pub use hardware::{Hardware, HardwareId, HardwareKind};
pub use head::{PlanHead, Projection, Revision, User};
pub use join::{JoinDesign, JointKind};
pub use material::{
    Grain, Lumber, LumberMeasure, Material, MaterialForm, MaterialId, Sawn, StockPiece,
};
pub use overrides::Overrides;
pub use paper::{Margins, Paper, Sheet};
pub use part::{
    ArrisForm, Band, Feature, FeatureShape, GridPattern, HolePurpose, Holes, PartDesign, PartId,
    Pocket, PocketKind, PocketScrewHole, Slope, SlopeKind, SplineSlot, Tenon,
};
pub use place::{PlacedId, Placement};
pub use require::Requirement;
pub use step::{Pull, Said, SaidPiece, SignalWord, StepDesign};
pub use supply::{Supply, SupplyId, SupplyKind};
pub use template::TemplateWish;
pub use uses::{Allowance, Clearance, Continuous, Held, Load};

/// Everything a source describes, worked out.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Model {
    /// Title, revisions and settings.
    pub head: PlanHead,
    /// Materials, by [`MaterialId`].
    pub materials: Vec<Material>,
    /// Parts, by [`PartId`].
    pub parts: Vec<PartDesign>,
    /// Items of hardware, by [`HardwareId`].
    pub hardware: Vec<Hardware>,
    /// Supplies, by [`SupplyId`].
    pub supplies: Vec<Supply>,
    /// Placed pieces, by [`PlacedId`].
    pub placements: Vec<Placement>,
    /// What there is to choose, and what is chosen.
    pub options: Vec<PlanOption>,
    /// Sub-assemblies that are made, by [`GroupId`].
    pub groups: Vec<Group>,
    /// Every placed sub-assembly, by [`InstanceId`].
    pub instances: Vec<Instance>,
    /// Joints asked for.
    pub joins: Vec<JoinDesign>,
    /// Steps, in order.
    pub steps: Vec<StepDesign>,
    /// What the author requires.
    pub requirements: Vec<Requirement>,
    /// Pieces whose grain runs on from one to the next.
    pub continuous: Vec<Continuous>,
    /// Full-size templates to be printed.
    pub templates: Vec<TemplateWish>,
    /// Loads on pieces.
    pub loads: Vec<Load>,
    /// Gaps between what moves.
    pub clearances: Vec<Clearance>,
    /// Things that must go in.
    pub holds: Vec<Held>,
    /// Findings that the author wants.
    pub allowances: Vec<Allowance>,
    /// Params and lets that nothing asks for.
    pub idle: Vec<Spanned<String>>,
}

/// Works out a plan with its libraries, with `overrides` in place of the author's values.
///
/// Pure: the same trees and overrides give the same model and findings.
pub fn resolve(forest: &Forest, overrides: &Overrides) -> Outcome<Model> {
    resolve::resolve(forest, overrides)
}

/// Works out an expression that names nothing: the value of a setting on the command line.
pub fn constant(expr: &Expr) -> Outcome<Option<Quantity>> {
    resolve::constant(expr)
}
