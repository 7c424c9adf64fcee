//! Cautions: what can hurt the builder, from what the build really makes them do.
//!
//! Takes a [`Build`], its [`Stock`] and its [`Behaviour`], gives [`Cautions`]: one caution for each hazard that is
//! there, with the steps it concerns, the protective signs and the tools the work needs. Its words stand in
//! the catalogues (`templates/words/`), messages `caution-…` and `tool-…`. Adds no caution for work that is not done, since a reader who
//! skips one skips all. Replaces no manual and no law, and says so.
//!
//! One file a hazard. A new one takes a file with a `check`, a line in [`HAZARDS`] and a test.
//! What the author cautions of stands in the steps and is not repeated here.

mod angled_cuts;
#[cfg(test)]
mod checks;
mod childrens_use;
mod chiselling;
mod crosscutting_boards;
mod curves;
mod drilling;
mod driving_screws;
mod dust;
mod finishing;
mod food_contact;
mod gluing;
mod heavy_piece;
mod heavy_sheet;
mod large_bits;
mod magnets;
mod nailing;
mod named_tools;
mod narrow_strips;
mod planing;
mod pocket_holes;
mod routing;
mod sawing_sheets;
mod sign;
mod small_pieces;
mod splines;
mod tip_over;
mod tools;
mod types;
mod wall_fixing;
mod work;

pub use sign::{Sign, SignKind};
pub use types::{Caution, Cautions, Occasion, Operation, Purpose, Tool};

use crate::behaviour::Behaviour;
use crate::build::Build;
use crate::stock::Stock;
use work::Work;

/// Every hazard there is a file for.
const HAZARDS: [fn(&Work) -> Option<Caution>; 25] = [
    sawing_sheets::check,
    narrow_strips::check,
    heavy_sheet::check,
    crosscutting_boards::check,
    small_pieces::check,
    angled_cuts::check,
    splines::check,
    planing::check,
    curves::check,
    routing::check,
    drilling::check,
    large_bits::check,
    pocket_holes::check,
    chiselling::check,
    driving_screws::check,
    nailing::check,
    gluing::check,
    finishing::check,
    dust::check,
    heavy_piece::check,
    wall_fixing::check,
    tip_over::check,
    childrens_use::check,
    food_contact::check,
    magnets::check,
];

/// The cautions of a build, worst first, its protective signs and its tools.
pub fn gather(build: &Build, stock: &Stock, behaviour: &Behaviour) -> Cautions {
    let work = Work::new(build, stock, behaviour);
    let mut list: Vec<Caution> = HAZARDS.iter().filter_map(|check| check(&work)).collect();
    // Stable: within a signal word they stay in the order of the work.
    list.sort_by_key(|caution| caution.signal);
    let mut signs: Vec<Sign> = list
        .iter()
        .flat_map(|caution| caution.signs.clone())
        .collect();
    signs.sort();
    signs.dedup();
    Cautions {
        list,
        signs,
        tools: tools::list(&work),
        idle_tools: tools::idle(&work),
    }
}
