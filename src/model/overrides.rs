//! Values put in place of the author's, so that the same build can be made again otherwise.

use std::collections::BTreeMap;

use crate::geometry::PartAxis;
use crate::units::{Length, Quantity};

/// What a run takes in place of what the source says.
///
/// The road has no other state: the same tree with the same overrides gives the same model.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Overrides {
    /// Values of params and lets, by name.
    pub values: BTreeMap<String, Quantity>,
    /// What is chosen, by the names of option and choice.
    pub choices: BTreeMap<String, String>,
    /// Thicknesses of sheets and boards, by the material's name: the sheet at hand measures
    /// 17.5 mm.
    pub thicknesses: BTreeMap<String, Length>,
    /// Sizes of parts, by the part's name: what a reader really cuts.
    pub sizes: BTreeMap<(String, PartAxis), Length>,
}
