//! How a build behaves: what it weighs, how far shelves sag, how much solid wood moves in a year,
//! whether it stays on its feet, how much is glued and finished.
//!
//! Takes a [`Model`], its [`Build`] and its [`Solids`], gives [`Behaviour`]. Reckons with average
//! figures of clear wood and says nothing where a figure is not known: what must be judged is
//! judged by the rules, and printed by `check --figures`.

mod mass;
mod movement;
mod sag;
mod standing;

use crate::build::{Build, PlacedId};
use crate::geometry::Direction;
use crate::model::Model;
use crate::solid::Solids;
use crate::units::Length;

/// How a build behaves.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Behaviour {
    /// Kilograms of each placed piece; none where its density is not known.
    pub kg: Vec<Option<f64>>,
    /// The centre of mass of the whole build in the world, mm; none where a mass is not known.
    pub centre_mm: Option<[f64; 3]>,
    /// How it stands on its feet; none where a mass is not known or nothing is placed.
    pub standing: Option<Standing>,
    /// Each load of the model, with what it does.
    pub sags: Vec<Sag>,
    /// Each placed piece of solid wood whose species is known.
    pub movements: Vec<Movement>,
    /// Area to be glued: joints, and layers of one part on another. Square metres.
    pub glue_m2: f64,
    /// Surface of all placed pieces, square metres.
    pub surface_m2: f64,
}

impl Behaviour {
    /// The mass of the whole build in kilograms; none where that of a piece is not known.
    pub fn total_kg(&self) -> Option<f64> {
        let mut sum = 0.0;
        for kg in &self.kg {
            sum += (*kg)?;
        }
        (!self.kg.is_empty()).then_some(sum)
    }
}

/// How a piece of furniture stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Standing {
    /// The side it tips over most easily.
    pub towards: Direction,
    /// How far its centre of mass lies inside of its feet there, mm.
    pub inside_mm: f64,
    /// How high its centre of mass is above the floor, mm.
    pub high_mm: f64,
    /// The angle at which it tips by itself, degrees.
    pub degrees: f64,
    /// The pull at its upper front edge that tips it forward, N.
    pub front_pull_n: f64,
}

/// What a load does to the piece that carries it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sag {
    /// Which load of the model.
    pub load: usize,
    /// The piece.
    pub piece: PlacedId,
    /// What is known of it.
    pub bending: Result<Bending, NotJudged>,
}

/// How far a loaded piece bends.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bending {
    /// The clear distance between its supports.
    pub span: Length,
    /// At first.
    pub first_mm: f64,
    /// After years under the load.
    pub lasting_mm: f64,
    /// The most it may: the author's, or what the eye sees.
    pub limit_mm: f64,
    /// The greatest stress from bending.
    pub stress_mpa: f64,
    /// The stress such stock is loaded to.
    pub allowable_mpa: f64,
}

/// Why nothing can be said of a load.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NotJudged {
    /// The piece lies on nothing, or on one support.
    NoSupports,
    /// The material states no species.
    NoSpecies,
}

/// How much a piece of solid wood moves across its grain.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Movement {
    /// The piece.
    pub piece: PlacedId,
    /// One of the two directions along which it moves.
    pub along: Direction,
    /// Its size that way.
    pub size: Length,
    /// From the driest to the dampest of the year.
    pub change_mm: f64,
    /// Its moisture content then, percent.
    pub moisture_percent: [f64; 2],
}

/// Works it all out.
pub fn work_out(model: &Model, build: &Build, solids: &Solids) -> Behaviour {
    let kg = mass::kilograms(build, solids);
    let centre_mm = mass::centre_mm(build, solids, &kg);
    Behaviour {
        standing: standing::standing(build, &kg, centre_mm),
        centre_mm,
        sags: sag::sags(model, build),
        movements: movement::movements(build),
        glue_m2: mass::glue_m2(build),
        surface_m2: mass::surface_m2(build, solids),
        kg,
    }
}
